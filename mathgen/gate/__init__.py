"""The gate: whether a problem's numbers, forms and structure belong in a grade."""
