"""Both edges, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "edges.open": "Falta el ancho y el lado",
}
