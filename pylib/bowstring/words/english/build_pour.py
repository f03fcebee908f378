"""The concrete, in words."""

MESSAGES = {
    "pour.open": "Needs width and thickness",
}
