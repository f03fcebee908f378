"""The form boards, in words."""

MESSAGES = {
    "boards.open": "Needs the width and the side",
}
