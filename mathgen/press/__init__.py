"""Plain data to file formats, and files to disk."""
