"""What the activity calls its things and what happens to them, as data."""
