# Stands for sha256 44f1dd075f61930212ad38dfe555492e0fd89f114cf9eaab2e3960945112383d
"""Names that the event loop's signatures have: a page starts no other program."""

PIPE = -1
STDOUT = -2
DEVNULL = -3
