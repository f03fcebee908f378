"""The form sheet on paper, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "forms.title": "Hoja de ~formas~",
}
