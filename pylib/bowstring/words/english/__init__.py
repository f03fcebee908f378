"""English, the first language of the catalogue."""
