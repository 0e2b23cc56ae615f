"""What a route says of a problem that it finds right. Anything else it says is what is wrong."""

AGREES = "agrees"
