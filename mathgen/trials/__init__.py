"""The class's results table: reading it from messy files, its totals, and the shadow table."""
