"""Both edges, in words."""

MESSAGES = {
    "edges.open": "Needs the width and the side",
}
