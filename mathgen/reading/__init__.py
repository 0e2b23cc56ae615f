"""From printed sentences and a results table back to the question: a program that sees what a pupil sees."""
