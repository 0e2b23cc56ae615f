"""Problem models, one file a strand, and the catalogue of slips. A model offers a space of asks; the bank chooses."""
