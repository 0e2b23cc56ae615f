"""How hard a problem is for its grade: a score in quarter points, and three levels."""
