"""The form boards, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "boards.open": "Falta el ancho y el lado",
}
