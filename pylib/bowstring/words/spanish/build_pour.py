"""The concrete, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "pour.open": "Faltan ancho y espesor",
}
