"""A job carried through to marks and figures, all as numbers."""
