"""The tops of the forms, in words."""

MESSAGES = {
    "grades.open": "Needs the slope",
}
