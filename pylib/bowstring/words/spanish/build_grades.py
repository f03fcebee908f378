"""The tops of the forms, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "grades.open": "Falta la pendiente",
}
