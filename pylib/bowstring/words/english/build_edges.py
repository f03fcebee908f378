"""Both edges, in words."""

MESSAGES = {
    # the row of the first screen: about 34 letters, the second line about 40
    "edges.open": "Needs the width and the side",
    "edges.open_width": "Needs the width",
    "edges.open_side": "Needs the side",
    "edges.row_inside": "Inner R {radius}, {width} off",
    "edges.row_outside": "Outer R {radius}, {width} off",
    "edges.row_both": "R {outer} and {inner}",
    "edges.row_tight": "Inner R {radius}: tight",
    "edges.row_tapers": "{first} at A, {last} at B",
    "edges.more": "stick for width; diagonals {diagonal}",
    "edges.more_both": "{width} wide; diagonals {diagonal}",
    "edges.more_bays": "stick for width; diagonals bay by bay",
    "edges.more_tapers": "its own width at every stake",
    "edges.more_tight": "use the center",
    "edges.no_inner": "No inner edge: too wide for R",
    "edges.no_inner_more": "{width} wide, R {radius}",
    "edges.no_inner_half": "half of {width}, R {radius}",
    # the page
    "edges.title": "Edges",
    "edges.other_inside": "Inner edge R {radius}, {width} off",
    "edges.other_outside": "Outer edge R {radius}, {width} off",
    "edges.both": "Outer edge R {outer}, inner R {inner}, {width} wide",
    "edges.tapers": "{first} wide at A, {last} at B",
    "edges.off_head": "Every line off your stakes",
    "edges.line": "line",
    "edges.radius": "radius",
    "edges.chord": "chord, A to B",
    "edges.mid_ordinate": "mid-ord.",
    "edges.arc": "arc",
    "edges.off": "off your stakes",
    "edges.line_footing_outside": "Footing, outside edge",
    "edges.line_footing_inside": "Footing, inside edge",
    "edges.line_dig_outside": "Dig line, outside",
    "edges.line_outer_form": "Outer form stakes",
    "edges.line_outside": "Outer edge",
    "edges.line_centre": "Centerline",
    "edges.line_inside": "Inner edge",
    "edges.line_inner_form": "Inner form stakes",
    "edges.line_dig_inside": "Dig line, inside",
    "edges.line_stakes": "Layout stakes",
    "edges.note_dig": "edge and {size} more",
    "edges.note_dig_footing": "footing and {size} more",
    "edges.note_footing": "{width} wide, under the middle",
    "edges.note_back": "back of the {board}",
    "edges.note_edge": "concrete, {what}",
    "edges.note_both": "{first}, {other}",
    "edges.note_drawn": "the drawing's line",
    "edges.note_drawn.back": "the drawing's line: back of curb",
    "edges.note_drawn.flow line": "the drawing's line: flow line",
    "edges.note_drawn.lip": "the drawing's line: lip",
    "edges.note_marks": "{first} to {last}",
    "edges.yours_pin": "your pins",
    "edges.yours_marked": "your stakes",
    "edges.yours_hub": "your hubs",
    "edges.yours_board": "your stakes",
    "edges.held_pin": "your pins' edges",
    "edges.held_pin_past": "your pins, centers half a pin behind it",
    "edges.held_marked": "your marks",
    "edges.held_hub": "your hubs",
    "edges.held_board": "your stakes",
    "edges.what": "what stands there",
    "edges.stopped": "{text}: {more}.",
    "edges.change": "Change the width",
    "edges.none": "-",
    "edges.off_none": "0",
    "edges.off_out": "{size} outside",
    "edges.off_in": "{size} inside",
    "edges.off_tapers": "{first} to {last}",
    "edges.mark_inside": "{stake} in",
    "edges.mark_outside": "{stake} out",
    # form stakes, and the two passes
    "edges.form_outside": "Outer form stakes stand {size} outside your stakes: the {board} goes between.",
    "edges.form_inside": "Inner form stakes stand {size} inside your stakes: the {board} goes between.",
    "edges.form_pull": "Screw the board, mark each layout stake on the board's top, then pull the stake.",
    "edges.form_pull_pin": (
        "Pull each pin as the board comes to it: the board's face goes where its center was. Mark the place on top."
    ),
    "edges.form_pull_marked": (
        "Pull each layout stake as the board comes to it: the board's face goes where its mark was. Mark the place on top."
    ),
    "edges.pins_back": "Your pins hold a board: set each pin's edge on the line, not its center.",
    "edges.pins_past": "Your pins hold a board: their centers stand half a pin behind its back.",
    "edges.in_the_way_pin": "Your pins stand in a board's place: pull each before its board.",
    "edges.in_the_way_marked": "Your stakes stand in a board's place: pull each before its board.",
    "edges.form_behind": "Form stakes stand {size} behind each edge: the {board} goes between.",
    "edges.passes": "Two passes",
    "edges.hubs_first": "Set hubs outside the dig first: your stakes get dug out.",
    "edges.paint": "Paint the dig line {size} past each edge, and dig.",
    "edges.paint_ends": "Past {ends}, too: {size}.",
    "edges.paint_at": "Paint the dig line along each edge, and dig.",
    "edges.paint_footing": "Paint the dig line {size} past each edge of the footing, and dig.",
    "edges.paint_footing_at": "Paint the dig line along each edge of the footing, and dig.",
    "edges.line_again": "After the dig and the base, set the line again from the hubs.",
    "edges.clear_of_dig": "Your stakes stand clear of the dig.",
    "edges.line_again_stakes": "After the dig and the base, set the line again from your stakes.",
    # the stick
    "edges.stick": "Width stick: {length}",
    "edges.stick_tapers": "Width stick: a mark for every stake",
    "edges.stick_first": "face of the first board",
    "edges.stick_line": "the line of your stakes",
    "edges.stick_other": "face of the other board",
    "edges.stick_form": "its stakes, behind the {board}",
    "edges.stick_edge": "face of each board",
    "edges.stick_at": "{size}: {what}",
    "edges.stick_drawn": "A stick with three marks: {marks}.",
    "edges.first_outside": "Set the outer board first.",
    "edges.first_inside": "Set the inner board first.",
    "edges.how_halved": "The stick gives each edge, half the width off your stakes.",
    "edges.how_square": "Hold the stick level, and square to the curve by eye.",
    "edges.long_stick": "That is long for a stick: a tape does it, pulled tight and level.",
    "edges.proves_square": "To prove it square: its tip to the next stake reads {length}, on either side.",
    "edges.proves_square_both": "To prove it square: its tip to the next stake reads {outer} outside, {inner} inside.",
    "edges.proves_square_each": "To prove it square, tape its tip to the next stakes: the diagonals are below.",
    "edges.from_stakes": "Straight from your stakes: outer edge {outer}, inner edge {inner}.",
    "edges.off_hub": "{stake} stands {miss}: set its hub {off}, and write {usual} on it.",
    "edges.off_gauge": "{stake} stands {miss}: from it the outer edge is {outer}, the inner edge {inner}.",
    "edges.off_curve": "{stake} stands {miss}: from it the curved edge is {edge}.",
    "edges.got": "A stake that stands off the arc takes the other edge with it: gauge from the board there.",
    "edges.slip": "A tip {slip} out of square makes the concrete narrow by less than {narrow}.",
    # the ends
    "edges.ends_head": "{edge}: its ends, no center needed",
    "edges.end_in": "{mark}: {width} from {near}, toward the center, and {diagonal} from {far}.",
    "edges.end_out": "{mark}: {width} from {near}, away from the center, and {diagonal} from {far}.",
    "edges.end_same": "{mark}: the same from {near} and {far}.",
    "edges.chord_reads": "Then {first} to {last} must read {chord}.",
    "edges.ends_by_stick": (
        "{first} and {last}: by the stick, square to the curve. Then {first} to {last} must read {chord}."
    ),
    "edges.string_stopped": "The string {first} to {last} is blocked by {what}: use the stick.",
    "edges.string_no_room": "There is no room for the string {first} to {last}: use the stick.",
    # the diagonals
    "edges.check_head": "Check: the diagonals",
    "edges.check_alike": (
        "Inner form to outer form at the next stake, both directions: {diagonal} in all {count} bays."
    ),
    "edges.check_each": "In each bay, inner form to outer form at the next stake, both directions.",
    "edges.check_taper": "The two differ where the width changes: each must read as listed.",
    "edges.check_where": "The list: Build, Edges.",
    "edges.check_slid": "If one differs, a stake has slid along the curve.",
    "edges.diagonal": "{start} to {end}",
    "edges.bay": "diagonal",
    "edges.reads": "must read",
    "edges.some": "The first {shown} of {count}: the sheet has no room for all.",
    # off its own string
    "edges.own": "{edge} off its own string, square off to the {hand}",
    "edges.stake": "stake",
    "edges.along": "along, from {first}",
    "edges.square_off": "square off",
    "edges.width": "slab width",
    "edges.width_of_wall": "wall thickness",
    "edges.from_stake": "off its stake",
    "edges.before": "{size} before {mark}",
    "edges.past": "{size} past {mark}",
    "edges.other_side": "{size}, other side",
    # a width that tapers
    "edges.taper_even": "The width changes evenly along the curve: {first} at A, {last} at B.",
    "edges.taper_one": "The tapered edge isn't a true arc: set it by the widths, and spring the board fair.",
    "edges.taper_both": "Neither edge is a true arc: set both by the widths, and spring the boards fair.",
    "edges.taper_dig": "Along a tapered edge, form stakes stand the board's thickness off it, the dig line {size} off.",
    # what else holds
    "edges.level": "All of these are level lengths: on this slope, hold the tape level.",
    "edges.swing": "The inner edge is tight. If you can reach the center, swing it at {radius}.",
    "edges.dig_all": "Inside, the dig reaches the center: dig it all.",
    "edges.curb_lines": (
        "The drawing gives one line of the curb. The other lines are on its detail: none is assumed here."
    ),
    "edges.footing_middle": "The footing is taken as centered under the wall, {past} past each face.",
    "edges.footing_narrow": "The footing is taken as centered under the wall, {past} inside each face.",
    "edges.footing_toe": (
        "Which edge is the toe depends on which side the earth is on. See the drawing; an off-center footing changes "
        "both."
    ),
    "edges.footing_tapers": "The footing is taken as centered under the wall, as wide all along.",
    "edges.overdig_taken": "The dig runs {size} past each edge unless you say otherwise.",
    "edges.in_the_concrete": "The {what} stands in the concrete.",
    "edges.in_the_wall": "The {what} stands in the wall.",
    "edges.in_the_dig": "The {what} stands in the dig.",
    "edges.dig_thing": "The {what} stands in the dig. Hold the dig back there. Ask before you cut roots or move it.",
    "edges.dig_thing_outside": (
        "The {what} stands in the dig at {at}: {deep} inside the outer dig line. "
        "Hold the dig back there. Ask before you cut roots or move it."
    ),
    "edges.dig_thing_inside": (
        "The {what} stands in the dig at {at}: {deep} inside the inner dig line. "
        "Hold the dig back there. Ask before you cut roots or move it."
    ),
    "edges.dig_thing_left": (
        "The {what} stands in the dig at {at}: {deep} inside the left dig line. "
        "Hold the dig back there. Ask before you cut roots or move it."
    ),
    "edges.dig_thing_right": (
        "The {what} stands in the dig at {at}: {deep} inside the right dig line. "
        "Hold the dig back there. Ask before you cut roots or move it."
    ),
    "edges.dig_thing_end": (
        "The {what} stands in the dig past {end}, {deep} inside the dig line. "
        "Hold the dig back there. Ask before you cut roots or move it."
    ),
    "edges.stands": "{mark} lands on {what}. Ask before you dig.",
}
