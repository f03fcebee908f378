"""Both edges, where Britain says something else."""

MESSAGES = {
    "edges.more_tight": "use the centre",
    "edges.line_centre": "Centreline",
    "edges.note_drawn.back": "the drawing's line: back of kerb",
    "edges.note_drawn.flow line": "the drawing's line: channel line",
    "edges.yours_hub": "your pegs",
    "edges.form_pull_pin": (
        "Pull each pin as the board comes to it: the board's face goes where its centre was. Mark the place on top."
    ),
    "edges.held_pin_past": "your pins, centres half a pin behind it",
    "edges.held_hub": "your pegs",
    "edges.pins_back": "Your pins hold a board: set each pin's edge on the line, not its centre.",
    "edges.pins_past": "Your pins hold a board: their centres stand half a pin behind its back.",
    "edges.off_hub": "{stake} stands {miss}: set its peg {off}, and write {usual} on it.",
    "edges.hubs_first": "Set pegs outside the dig first: your stakes get dug out.",
    "edges.line_again": "After the dig and the sub-base, set the line again from the pegs.",
    "edges.line_again_stakes": "After the dig and the sub-base, set the line again from your stakes.",
    "edges.ends_head": "{edge}: its ends, no centre needed",
    "edges.end_in": "{mark}: {width} from {near}, towards the centre, and {diagonal} from {far}.",
    "edges.end_out": "{mark}: {width} from {near}, away from the centre, and {diagonal} from {far}.",
    "edges.swing": "The inner edge is tight. If you can reach the centre, swing it at {radius}.",
    "edges.dig_all": "Inside, the dig reaches the centre: dig it all.",
    "edges.curb_lines": (
        "The drawing gives one line of the kerb. The other lines are on its detail: none is assumed here."
    ),
    "edges.footing_middle": "The footing is taken as centred under the wall, {past} past each face.",
    "edges.footing_narrow": "The footing is taken as centred under the wall, {past} inside each face.",
    "edges.footing_toe": (
        "Which edge is the toe depends on which side the earth is on. See the drawing; an off-centre footing changes "
        "both."
    ),
    "edges.more_bays": "stick for width; diagonals stake to stake",
    "edges.check_alike": ("Inner form to outer form at the next stake, both directions: {diagonal}, {count} times."),
    "edges.check_each": "Inner form to outer form at the next stake, both directions, all along.",
    "edges.footing_tapers": "The footing is taken as centred under the wall, as wide all along.",
}
