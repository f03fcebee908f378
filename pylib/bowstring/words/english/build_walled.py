"""A wall and its footing, in words."""

MESSAGES = {
    "walled.asked": "{thickness} thick: is it a wall?",
    "walled.asked_more": "no order till that is answered",
    "walled.first": "Slab or wall?",
    "walled.is_wall": "A wall, {thickness} high",
    "walled.is_slab": "A slab, {thickness} thick",
    "walled.told": "{thickness} thick: is it a wall?|Or are thickness and width swapped?",
    "walled.line": "The wall: {width} thick, {height} high",
    "walled.line_footing": "footing {width} x {depth}",
    "walled.blank": "?",
    "walled.swapped": "{width} thick and {height} high|Are the two swapped?",
    "walled.narrow": "Footing {footing} wide, wall {width} thick|The footing is narrower than the wall on it.",
}
