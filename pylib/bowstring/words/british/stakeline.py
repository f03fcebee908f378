"""Which point of the stake is on the line, and how to work with it: what differs on a British site."""

MESSAGES = {
    "on_line.pin": "The line is the centre of each pin.",
    "on_line.hub": "The line is the nail in each peg.",
    "on_line.board_off": "The line is the face of each stake, towards the board.",
    "on_line.pin_back": "The line is each pin's edge towards the board, not its centre.",
    "on_line.pin_maybe": (
        "The line is the centre of each pin. Where a board goes against the pins, it's their edge towards the board."
    ),
    "on_line.pin_centers": "To work by centres instead, set the offset to {size}.",
    "on_line.pin_past": "Centres half a pin behind the board's back: set there, the pins hold the board on its line.",
    "on_line.pin_back_first": "Plumb each pin, and read the tape at its edge towards the board.",
    "on_line.card_back": "On the line: the edge towards the board, not the centre.",
    "on_line.pin_first": "Plumb each pin, and read the tape at its centre.",
    "on_line.pin_held": (
        "Where a board follows, the pin's edge towards the board is the line: set the centre {half} off it. A "
        "{size} pin centred on the line holds the board {half} off."
    ),
    "on_line.pin_feet": (
        "Where a board follows, the pin's edge towards the board is the line. A pin centred on the line holds the "
        "board off by half the pin: 5/16 in for a 5/8-in pin."
    ),
    "on_line.pin_metric": (
        "Where a board follows, the pin's edge towards the board is the line. A pin centred on the line holds the "
        "board off by half the pin: 8 mm for a 16-mm pin."
    ),
    "on_line.hub_first": "Drive the peg nearly flush. Then read the tape again on top of it, and set the nail.",
    "on_line.hub_then": "Read to the nail once more. If it's off, move the nail, not the peg.",
    "on_line.drawn_to_centre": (
        "The drawing's line is the centreline. Each face is half the width away: to stake a face, put that in the "
        "offset."
    ),
    "on_line.drawn_to_flow line": (
        "The drawing's line is the channel line, where the channel meets the kerb. The back of the kerb and the "
        "lip are other lines: to stake one, put its distance in the offset."
    ),
    "on_line.drawn_to_lip": (
        "The drawing's line is the lip, the channel's outer edge. The channel line and the kerb's back are other "
        "lines: to stake one, put its distance in the offset."
    ),
    "on_line.width": "At {width} wide, each face is {half} from the centreline.",
    "on_line.each_pin": "the centre of each pin",
    "on_line.each_pin_back": "each pin's edge towards the board",
    "on_line.each_hub": "each nail",
    "draw.on_line.hub": "peg",
    "draw.on_line.tack": "nail",
}
