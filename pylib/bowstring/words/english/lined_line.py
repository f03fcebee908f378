"""Where the concrete lies along a line, and where its pieces begin."""

MESSAGES = {
    "lined.concrete_left": "Walking from the start, the concrete is on your *{hand}*: the line is its left edge.",
    "lined.concrete_right": "Walking from the start, the concrete is on your *{hand}*: the line is its right edge.",
    "lined.concrete_both": "Walking from the start, the concrete is on *BOTH hands*, {half} each.",
    "lined.concrete_middle": "Walking from the start, the concrete is on *BOTH hands*: the line is its middle.",
    "lined.arc_outer": "Walking A to B, the concrete is on your {hand}: {arc} is its OUTSIDE edge.",
    "lined.arc_inner": "Walking A to B, the concrete is on your {hand}: {arc} is its INSIDE edge.",
    "lined.arc_both": "Walking A to B, the concrete is on BOTH hands, {half} each: {arc} is its middle.",
    "lined.this_arc": "this arc",
    "lined.drawn_arc": "the drawing's arc",
    "lined.from_start": "From the start, along {first}",
    "lined.begins_at": "At",
}
