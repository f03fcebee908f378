"""Text and numbers: how a crew writes and reads lengths and angles, and the marks of its tape."""
