"""What walks over a construction: the rule of thumb, rounding, checks, squaring, the story stick, field fit."""
