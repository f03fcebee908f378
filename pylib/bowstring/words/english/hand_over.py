"""Handing a job over: its code, its messages, its files."""

MESSAGES = {
    "hand_over.qr_title": "QR code of this job's link",
    "hand_over.qr_how": "Point the other phone's camera at it. Turn this screen up to full brightness.",
    "hand_over.qr_low": "A long job makes a fine code. Hold both phones still, out of the glare.",
    "hand_over.qr_long": "This job is too long for a code that a phone can read. Send the link or a file instead.",
    "hand_over.qr_no_address": "This copy doesn't know the page's address, so the code holds the job alone.",
    "hand_over.messages_how": "Send these as texts, in order: the stakes alone. Width, tops, concrete: send the link.",
    "hand_over.copy": "Copy",
    "hand_over.copy_one": "Copy text {number}",
    "hand_over.stopped": "This job is stopped: no file to set out by is made before that is settled.",
    "hand_over.people": "The stakes with their readings, for a spreadsheet:",
    "hand_over.file.people": "Stakes as values (CSV)",
    "hand_over.drawings": "The plan, and the layout for drawing programs:",
    "hand_over.instrument": "For an instrument. Which columns does it read? A is at 0, 0, and B lies along x (east).",
    "hand_over.instrument_drawn": "For an instrument, in the drawing's coordinates. Which columns does it read?",
    "hand_over.file.svg": "Plan (SVG)",
    "hand_over.file.png": "Picture, 300 dpi (PNG)",
    "hand_over.file.dxf": "Layout (DXF)",
    "hand_over.file.instrument-n-e": "name, northing, easting",
    "hand_over.file.instrument-x-y": "name, x, y",
}
