"""What walks over a construction: replay, the rule of thumb, checks, squaring, field fit, wind."""
