"""The joints, in words."""

MESSAGES = {
    "joints.open": "Needs the width",
}
