"""Curricula as data: what each grade may meet, which skill serves which standard, and how long its texts may be."""
