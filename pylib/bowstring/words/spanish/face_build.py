"""The face of the build, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "build.title": "Construir",
}
