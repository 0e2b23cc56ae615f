"""The records of a problem: what paper, marking and proof need, as frozen data."""
