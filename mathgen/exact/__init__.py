"""Exact numbers in school forms: text to number, number to text, rounding, speech, and what the words demand."""
