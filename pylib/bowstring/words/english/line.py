"""What can be wrong with a line of straights and arcs, and what it leaves open."""

MESSAGES = {
    "line.with_arc.wrong": "The job has both an arc and a line.",
    "line.with_arc.remedy": "Give one of them. An arc can be a piece of the line.",
    "line.beside.wrong": "With a line, each arc has its own.",
    "line.beside.remedy": "Give it with that arc's piece of the line.",
    "line.no_arc.wrong": "The line has no arc.",
    "line.no_arc.remedy": "Add an arc: straights alone need no layout.",
    "line.at_no_arc.wrong": "This piece of the line isn't an arc.",
    "line.at_no_arc.remedy": "Take one of the arcs: {arcs}.",
    "line.at_alone.wrong": "The job has no line, so there is no piece to pick.",
    "line.at_alone.remedy": "Leave this out, or give the line.",
    "line.empty.wrong": "The line has no pieces.",
    "line.empty.remedy": "Give straights and arcs in the order in which you walk them.",
    "line.piece_kind.wrong": "A piece is one straight or one arc.",
    "line.piece_kind.remedy": 'Give {{"straight": "20 ft"}}, or {{"arc": {{"radius": "31 ft", "central_angle": 70}}, "turn": "left"}}.',
    "line.no_turn.wrong": "This arc doesn't say whether it turns left or right.",
    "line.no_turn.remedy": "Give its turn as somebody walking along the line has it.",
    "line.turn_of_straight.wrong": "A straight doesn't turn.",
    "line.turn_of_straight.remedy": "Leave the turn out, or give the angle of the kink before it.",
    "line.turn_and_points.wrong": "The three points turn {points}, and this arc says {turn}.",
    "line.turn_and_points.remedy": "Check the order of the points, or leave the turn out.",
    "line.first_kink.wrong": "Nothing comes before the first piece, so it can't have a kink.",
    "line.first_kink.remedy": "Leave the kink out.",
    "line.kink_sharp.wrong": "A kink of more than {most} turns nearly straight back.",
    "line.kink_sharp.remedy": "Give how far the line turns off straight ahead, not the angle between its legs.",
    "line.kink_hands.wrong": "{typed} and what stands with it don't agree on left or right.",
    "line.kink_hands.remedy": "Say left or right once, and no minus.",
    "line.no_radius.wrong": (
        "Piece {piece} has no {hand} edge: the slab reaches its center, and its radius is {radius}."
    ),
    "line.no_radius.remedy": "Give a smaller width, or run the line along the other edge.",
    "line.no_taper.wrong": "The slab tapers, and the line has several pieces.",
    "line.no_taper.remedy": "Leave out the width at B: a line's slab has one width.",
    "line.no_fill.wrong": "A slab that fills its curve has a single arc, and this line has several pieces.",
    "line.no_fill.remedy": "Give the slab a width, or lay out the arc alone.",
    "line.no_fill_sides.wrong": "A pad has a single arc, and straight sides of its own: no straight pieces.",
    "line.no_fill_sides.remedy": "Take the straights out. Give the pad's sides under “{panel}”.",
    "line.no_room.wrong": "At piece {piece} the {hand} edge has no room: its pieces are too short for the width there.",
    "line.no_room.remedy": "Give a smaller width or longer pieces, or put an arc in place of the kink.",
    # a question that stops the sheet
    "line.kink_at_end": (
        "Don't build yet: the line kinks at {end}, so the straight there isn't this arc's tangent. Start from both ends."
    ),
    "line.arc_at_end": "At {end} piece {piece} is an arc. Sight along its tangent there, never along that arc.",
    "line.kink_asked": "Walking along the line, does piece {piece} kink left or right at {station}?",
}
