"""A layout in sentences and shown numbers: the answer and its parts."""
