"""The forms' cards along a line of several pieces: what differs on a British site."""

MESSAGES = {
    "forming.hubs_ends": "At each straight's free end, square off past the dig. Drive a peg.",
    "forming.label.hub_left": "stake to peg, to the left",
    "forming.label.hub_right": "stake to peg, to the right",
    "forming.label.hub_back_left": "back from each peg, to the left, except as noted",
    "forming.label.hub_back_right": "back from each peg, to the right, except as noted",
    "forming.label.hubs_left": "peg to the left edge",
    "forming.label.hubs_right": "peg to the right edge",
    "forming.label.call_left": "{out} out, left form from the start: ring if short of",
    "forming.label.call_right": "{out} out, right form from the start: ring if short of",
    "forming.right.hub_own": "{stake}'s peg to {to}: {shown}",
    "forming.note.hub_none": "{stake}'s peg has no room: tie that stake to two others.",
    "forming.note.hub_else": "{stake}'s peg: {off} instead.",
    "forming.note.hub_square": "{stake}'s peg is square to {piece}.",
    "forming.note.hubs_listed": "Pegs differ: each has its own distance on it.",
    "forming.note.back_else": "{place}: from its peg {back}.",
    "forming.note.back_else_a": "{place}: from its pegs {back} (A: {first}).",
    "forming.note.back_own": "{place}: each peg's own distance, as written on it.",
    "forming.note.back_none": "{place}: no peg. Set it again from its two ties.",
    "forming.note.dig_arcs": "Not before every arc has its pegs.",
    "forming.note.apron_line": "Apron, {stretch} along the line: dig {deep} down. The sub-base steps.",
}
