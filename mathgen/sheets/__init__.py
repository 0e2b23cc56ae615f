"""Worksheet and answer key as plain data: what a page says, not how it looks."""
