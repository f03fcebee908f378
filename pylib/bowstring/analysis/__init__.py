"""What goes over a construction: replay, checks, squaring, scatter, what the ground lets through."""
