"""Proof: independent routes to the answer, one file a route, and the record of what they say."""
