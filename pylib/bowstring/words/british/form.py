"""The form's headings, labels, help lines and choices: what differs on a British site."""

MESSAGES = {
    "form.section_degree": "Degree of curve: roads and railways only",
    "form.section_got.help": (
        "For a stake that can't be moved: enter its mid-ordinate, or both short chords, as measured. The numbers "
        "after it then bring the setting out back onto the arc."
    ),
    "form.degree_by.chord": "a chord of 100 ft (railways)",
    "form.offset.help": "How far out the pegs stand, or the board's thickness. Blank: on the line itself.",
    "form.diameter.help": "Write its unit. Where a board follows, the pin's centre goes half of this off the line.",
    "form.toward": "Offset towards",
    "form.toward.help": (
        "The centre: inside the curve. The outside: away from the centre. Stakes behind a board go on the side "
        "away from the concrete."
    ),
    "form.fair.help": "How far off the mid-ordinate over its two neighbours a stake may be. Blank: half the tolerance.",
    "form.unit.m": "metres",
    "form.unit.mm": "millimetres",
    "form.drawn_to.back": "back of wall or kerb",
    "form.drawn_to.centre": "centreline",
    "form.drawn_to.flow line": "channel line of a kerb",
    "form.drawn_to.lip": "lip of a channel",
    "form.driven.hub": "a peg with a nail",
    "form.driven.board": "a shutter board, its concrete side",
    "form.toward.centre": "the centre",
}
