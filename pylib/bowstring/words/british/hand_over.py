"""Handing a job over: what differs on a British site."""

MESSAGES = {
    "hand_over.drawings": "The plan, and the setting out for drawing programs:",
    "hand_over.file.dxf": "Setting out (DXF)",
}
