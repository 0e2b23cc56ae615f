"""Asks: what a question asks, as a small expression without words or layout."""
