"""Figures as plain data, one a file, each with its alt text: what a blind reader is told in place of the picture, and never the answer."""
