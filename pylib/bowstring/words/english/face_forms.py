"""The form sheet on paper, in words."""

MESSAGES = {
    "forms.title": "Form sheet",
}
