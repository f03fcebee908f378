"""The joints, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "joints.open": "Falta el ancho",
}
