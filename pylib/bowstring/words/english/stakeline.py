"""Which point of the stake is on the line, and how to work with it."""

MESSAGES = {
    "on_line.pin": "The line is the center of each pin.",
    "on_line.marked": "The line is the mark on top of each stake, not the stake's face.",
    "on_line.hub": "The line is the tack in each hub.",
    "on_line.board": "The line is the concrete side of the board.",
    "on_line.board_off": "The line is the face of each stake, toward the board.",
    "on_line.pin_back": "The line is each pin's edge toward the board, not its center.",
    "on_line.pin_maybe": (
        "The line is the center of each pin. Where a board goes against the pins, it's their edge toward the board."
    ),
    "on_line.pin_centers": "To work by centers instead, set the offset to {size}.",
    "on_line.pin_past": "Centers half a pin behind the board's back: set there, the pins hold the board on its line.",
    "on_line.pin_back_first": "Plumb each pin, and read the tape at its edge toward the board.",
    "on_line.card_back": "On the line: the edge toward the board, not the center.",
    "on_line.card_maybe": "If a board goes against it: its edge is on the line.",
    "on_line.pin_first": "Plumb each pin, and read the tape at its center.",
    "on_line.pin_held": (
        "Where a board follows, the pin's edge toward the board is the line: set the center {half} off it. A {size} pin centered "
        "on the line holds the board {half} off."
    ),
    "on_line.pin_feet": (
        "Where a board follows, the pin's edge toward the board is the line. A pin centered on the line holds the board off by "
        "half the pin: 5/16 in for a 5/8-in pin."
    ),
    "on_line.pin_metric": (
        "Where a board follows, the pin's edge toward the board is the line. A pin centered on the line holds the board off by "
        "half the pin: 8 mm for a 16-mm pin."
    ),
    "on_line.marked_first": "Drive the stake first. Then read the tape again, and mark the line on its top.",
    "on_line.marked_then": "Work from the mark only. From a stake's face to its middle is {size}.",
    "on_line.size_feet": "3/4 in on a 2x2",
    "on_line.size_metric": "25 mm on a 50-mm stake",
    "on_line.hub_first": "Drive the hub nearly flush. Then read the tape again on top of it, and set the tack.",
    "on_line.hub_then": "Read to the tack once more. If it's off, move the tack, not the hub.",
    "on_line.board_first": "Set the line on temporary pins, and spring the board to them.",
    "on_line.board_off_first": (
        "Better without an offset: set the face line on temporary pins, and spring the board to them."
    ),
    "on_line.board_then": (
        "Gauge the stakes behind the board with a scrap of the same board. Don't square them off by its thickness."
    ),
    "on_line.drawn_to_face": "The drawing's line is the face or edge of the concrete. An offset is measured from it.",
    "on_line.drawn_to_back": (
        "The drawing's line is the back. The face is the concrete's thickness away: to stake the face, put that in the offset."
    ),
    "on_line.drawn_to_centre": (
        "The drawing's line is the centerline. Each face is half the width away: to stake a face, put that in the offset."
    ),
    "on_line.drawn_to_flow line": (
        "The drawing's line is the flow line, where the gutter meets the curb. The back of the curb and the lip are other lines: "
        "to stake one, put its distance in the offset."
    ),
    "on_line.drawn_to_lip": (
        "The drawing's line is the lip, the gutter's outer edge. The flow line and the curb's back are other lines: to stake one, "
        "put its distance in the offset."
    ),
    "on_line.width": "At {width} wide, each face is {half} from the centerline.",
    "on_line.come_back": (
        "To come back to the line, cut a stick {offset} long. Swing it from {each}: the board just touches every sweep."
    ),
    "on_line.each_pin": "the center of each pin",
    "on_line.each_pin_back": "each pin's edge toward the board",
    "on_line.each_marked": "the mark on each stake",
    "on_line.each_hub": "each tack",
    "on_line.overrun": "Where the work runs on straight, run the board on {length} past {ends}, on the tangent.",
    "on_line.string": "the string",
    "on_line.line": "the line A-B",
    "on_line.overrun_past": (
        "Its stake: carry {line} on past the end for {along}, then square off {off}, away from the curve. The end to it reads "
        "{length}."
    ),
    "on_line.overrun_before": (
        "Its stake: from the end, back along {line} for {along}, then square off {off}, away from the curve. "
        "The end to it reads {length}."
    ),
    "on_line.overrun_square": "Its stake: at the end, square off {line} {off}, away from the curve.",
    "on_line.overrun_straight": "Its stake: in line with the straight, {length} from the end.",
    "on_line.overrun_lap": "At {end} lap it along the old concrete's edge, or cut it there and brace its end.",
    "on_line.overrun_blocked": "Past {end} {what} is in the way: run nothing on there.",
    "on_line.brace": "Against concrete nothing runs on: brace the board's end to the arc.",
    "draw.on_line.title": "Which point is on the line",
    "draw.on_line.desc": (
        "Seen from the side, a {driven} in the ground, the line plumb through the point that counts. {point}"
    ),
    "draw.on_line.line": "the line",
    "draw.on_line.ground": "ground",
    "draw.on_line.pin": "pin",
    "draw.on_line.marked": "stake",
    "draw.on_line.hub": "hub",
    "draw.on_line.tack": "tack",
    "draw.on_line.board": "board",
    "draw.on_line.stake": "stake",
    "draw.on_line.concrete": "concrete",
    "draw.on_line.mark": "mark",
    "draw.on_line.where_board": "where a board follows",
}
