"""What can be wrong with a line of straights and arcs: what differs on a British site."""

MESSAGES = {
    "line.piece_kind.remedy": (
        'Give {{"straight": "6 m"}}, or {{"arc": {{"radius": "9.5 m", "central_angle": 70}}, "turn": "left"}}.'
    ),
    "line.no_radius.wrong": (
        "Piece {piece} has no {hand} edge: the slab reaches its centre, and its radius is {radius}."
    ),
}
