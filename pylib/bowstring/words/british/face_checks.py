"""Checks as they are read: what must be read, in or out, and what to set again: what differs on a British site."""

MESSAGES = {
    "read.right_on": "Spot on",
    "read.bump": "But {stake} is out of line with its neighbours: the fair curve allows {fair}. Sight along them.",
    "face_checks.far_toward": "{size} towards {other}",
    "face_checks.far_lean": "A-2 and B-2 stand about {size} towards {end}'s side: square both sides again.",
    "read.way_along": "too far towards {end}",
    "read.ends_off": "A to B was set out wrong by about {shown}, or an end has moved.",
    "face_checks.string_middle_inside": "its midpoint to {stake}, which is INSIDE the string, towards the centre",
    "face_checks.lost": "{count} readings belong to another setting out of this job.",
}
