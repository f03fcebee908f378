"""A line of several pieces and the slab along it."""

MESSAGES = {
    "lined.arc": "Arc {number}",
    "lined.straight": "Straight {number}",
    "lined.arc_text": "R {radius}, {angle} {hand}, {length}",
    "lined.kink": "{angle} {hand}",
    "lined.looks": "{off} off in {length}",
    "lined.row": "{length}, {count} pieces",
    "lined.row_tangent": "Tangent all along, no kink",
    "lined.row_kinks": "*Kinks:* {count}",
    "lined.conclusion": "The line is *{length}* long, in {count} pieces.",
    "lined.none": "straight",
    "lined.head_piece": "Piece",
    "lined.head_station": "Ends at",
    "lined.head_radius": "R",
    "lined.head_chord": "Chord",
    "lined.pieces": "Along the line",
    "lined.kink_at": "At {station}, piece {piece} kinks {kink}: {looks}.",
    "lined.order": "Lay out the pieces in order. Each begins where the one before ends.",
    "lined.first_straight": "piece 1",
    "lined.first_arc": "the tangent of piece 1",
    "lined.begins_head": "Where each piece begins: from the start, looking along {first}",
    "lined.head_begins": "Begins",
    "lined.head_ahead": "Ahead",
    "lined.head_off": "Left or right",
    "lined.behind": "{size} behind",
    "lined.off_left": "{size} left",
    "lined.off_right": "{size} right",
    "lined.straight_on": (
        "*{straight}:* {arc}'s PI is {tangent} straight past its A. From the PI, sight through its B: it runs on there."
    ),
    "lined.ends_on": "At the start, looking along {first}, the line ends {ahead} straight ahead.",
    "lined.ends_left": "At the start, looking along {first}, the line ends {ahead} ahead and {off} to your LEFT.",
    "lined.ends_right": "At the start, looking along {first}, the line ends {ahead} ahead and {off} to your RIGHT.",
    "lined.ends_back_on": "At the start, looking along {first}, the line ends {ahead} straight behind you.",
    "lined.ends_back_left": (
        "At the start, looking along {first}, the line ends {ahead} behind you and {off} to your LEFT."
    ),
    "lined.ends_back_right": (
        "At the start, looking along {first}, the line ends {ahead} behind you and {off} to your RIGHT."
    ),
    "lined.overlap": "The slab lies over itself: piece {first} and piece {second}. Check the drawing.",
    "lined.no_edge": "No slab along this line",
    "lined.edges_row": "Edges {left}, {right}",
    # both edges
    "lined.edges_more": "left and right; {width} wide",
    "lined.edges_tight": "inner R {radius} at piece {piece}: tight",
    "lined.edges_conclusion": "The left edge is *{left}* long, the right edge *{right}*, {width} apart.",
    "lined.left_edge": "Left edge, walking along the line",
    "lined.right_edge": "Right edge, walking along the line",
    "lined.head_long": "Long",
    "lined.stick_line": "the line",
    "lined.how_halved": "The stick gives each edge, {width} off the line.",
    "lined.first_left": "Set the left board first: the line is its face. The stick gives the right one, {width} off.",
    "lined.first_right": "Set the right board first: the line is its face. The stick gives the left one, {width} off.",
    "lined.how_square": "Hold the stick level and square to the line. On an arc it points at the center.",
    "lined.first_off": "Set one board off your stakes. The stick gives the other, {width} off.",
    "lined.edges_off": "Off your stakes, walking along the line: edges {at}.",
    "lined.faces_off": "Off your stakes, walking along the line: wall faces {at}.",
    "lined.footing_off": "Footing edges {at}.",
    "lined.dig_off": "Dig lines {at}.",
    "lined.pair_left": "{near} and {far} to the LEFT",
    "lined.pair_right": "{near} and {far} to the RIGHT",
    "lined.pair_both": "{left} to the LEFT and {right} to the RIGHT",
    "lined.tape_square": "Tape level, and square to the line. On an arc tape toward the center, or away from it.",
    "lined.miter": (
        "Where {piece} begins, both forms meet on a miter. The {outer} one runs {on} past square across the kink, on "
        "both pieces. The {inner} one stops short: {before} before it, {after} after it."
    ),
    "lined.miter_run": (
        "Where {piece} begins, the {outer} form runs {on} past square across the kink, on both pieces, to its miter. "
        "The {inner} one turns at the line's own corner."
    ),
    "lined.miter_cut": (
        "Where {piece} begins, the {inner} form stops short of square across the kink: {before} before it, {after} "
        "after it. The {outer} one turns at the line's own corner."
    ),
    "lined.miter_how": "At a kink don't use the stick: string the edges of both pieces until the strings cross.",
    "lined.swing": "{piece} has a tight inner edge. If you can reach its center, swing it at {radius}.",
    "lined.dig_all": "Inside {piece} the dig reaches the center: dig it all.",
    "lined.dig_deep": "Dig to *{deep}* below the form tops: {thickness} of slab on {base} of base.",
    "lined.dig_bare": "Dig to *{deep}* below the form tops: there is no base.",
    "lined.dig_no_base": "Dig to *{thickness}* below the form tops, deeper for a base: none is given.",
    "lined.dig_edges": "Along both forms, {wide} wide, to *{deep}*.",
    "lined.dig_apron": "There it is *{deep}* below the form tops.",
    "lined.dig_apron_no_base": "There it is *{deep}* below the form tops, before any base.",
    "lined.ends_square": "Both ends of the slab are square to the line.",
    "lined.beside": "{what}: {off} off the form, {dig} off the dig line.",
    "lined.beside_left": "{what} at {at}: {off} off the left form, {dig} off the dig line.",
    "lined.beside_right": "{what} at {at}: {off} off the right form, {dig} off the dig line.",
    # the joints
    "lined.joints_row": "{count} panels, up to {longest}",
    "lined.joints_one": "One panel, {longest} long",
    "lined.joints_more": "shortest {shortest}; cut {depth} deep or more",
    "lined.joints_shortest": "shortest side {shortest}",
    "lined.joints_no_joint": "no joint",
    "lined.joints_corner": "a corner of {corner} at a kink: ask",
    "lined.joints_ratio_near": "panel {number}: {ratio} to 1, limit 1.5",
    "lined.joints_ratio_over": "panel {number}: {ratio} to 1, over 1.5",
    "lined.joints_conclusion": "*{count} panels*, none longer than {longest}. The shortest side is {shortest}.",
    "lined.joints_conclusion_one": "*One panel*, no joint: {longest} on its longer side, {shortest} on the other.",
    "lined.joints_long": "Panels over {most} at {thickness}",
    "lined.joints_long_plain": "Panels over {most}",
    "lined.joints_long_more": "the longest is {longest}: add a joint",
    "lined.joints_stop": "The longest panel is {longest}; {most} is the usual limit. Use more panels.",
    "lined.left_form": "left form, from the start",
    "lined.right_form": "right form, from the start",
    "lined.there": "what is there",
    "lined.begins": "{piece} begins",
    "lined.the_end": "the end",
    "lined.joints_taped": (
        "Tape each from the line's start, never mark to mark, on the *concrete face* of the board. On the outside of "
        "an arc the board's back runs longer."
    ),
    "lined.joints_square": (
        "Snap mark to mark, straight across, square to both edges. On an arc that line points at the center."
    ),
    "lined.joints_miter": "At a kink the joint is on the miter, from corner to corner.",
    "lined.joints_corner_sharp": "A miter leaves a corner of only {corner}. Under 60° it breaks off: ask the designer.",
    "lined.joints_meet": "There is a joint wherever two pieces meet.",
    "lined.shape_long": "Panel {number} is {ratio} to 1, over 1.5: too long. Use more panels.",
    "lined.shape_short": (
        "Panel {number} is {ratio} to 1, over 1.5: too short for its width. Make panels longer, or ask the designer."
    ),
    "lined.shape_odd": "Panel {number} is {ratio} to 1, over 1.5: ask the designer where joints go.",
    "lined.most_every": "Panels are at most {most} along either form, as you said.",
    "lined.count_taken": "You said {said} panels. With a joint wherever two pieces meet, it's {count}.",
    "lined.kink_longer": "Beside a kink one is longer: {longest}.",
    # the concrete
    "lined.counted_twice": "The slab lies over itself: the order counts that place twice.",
    "lined.call_left": "When to call the plant: distances on the left form from the start",
    "lined.call_right": "When to call the plant: distances on the right form from the start",
    "lined.reach_left": (
        "Pour from the start. Short of that mark, the order won't reach the end. Past it, it will if the base stays "
        "the same. Ask how much he's unloaded; measure along the left form."
    ),
    "lined.reach_right": (
        "Pour from the start. Short of that mark, the order won't reach the end. Past it, it will if the base stays "
        "the same. Ask how much he's unloaded; measure along the right form."
    ),
    "lined.panels_take": "The panels take from *{least}* to *{most}*.",
    "lined.panels_bags": "The panels take from *{least}* to *{most} bags*.",
    "lined.bulkhead_left": (
        "Have a bulkhead ready at *joint {joint}*: {left} on the left form, {right} on the right. "
        "With the base {low} low all over, this order ends at {ends} on the left form."
    ),
    "lined.bulkhead_right": (
        "Have a bulkhead ready at *joint {joint}*: {left} on the left form, {right} on the right. "
        "With the base {low} low all over, this order ends at {ends} on the right form."
    ),
    "lined.bulkhead_short": "Have a bulkhead ready at *joint {joint}*.",
    "lined.bulkhead_last": (
        "Have a bulkhead ready at *joint {joint}*: {left} on the left form, {right} on the right. "
        "A short load ends there."
    ),
}
