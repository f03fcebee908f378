"""A slab with one rounded end or two, its straight sides run back from the string, in words."""

MESSAGES = {
    # what can't be
    "pad.no_fill.wrong": "Straight sides run back from a curve that the slab fills, and this slab is a band along it.",
    "pad.no_fill.remedy": "Say that the slab is all inside the curve, or leave the straight sides out.",
    "pad.no_length.wrong": "Two rounded ends need straight sides between them.",
    "pad.no_length.remedy": "Give how long the sides are, from A to the other curve.",
    "pad.no_sides": "No straight sides here",
    "pad.no_sides_more": "the curve is over a half circle",
    "pad.change": "Change the slab",
    "pad.without": "Leave the straight sides out",
    "pad.no_form_sheet": "No form sheet until that is settled: straight sides take a half circle at most.",
    # the rows of the first screen: about 34 letters, the second line about 40
    "pad.row_one": "End R {radius}, sides {sides}",
    "pad.row_both": "Ends R {radius}, sides {sides}",
    "pad.row_more": "{chord} wide, {deep} long overall",
    "pad.back_of": "{stake}-2",
    # the edges
    "pad.conclusion_one": "Rounded end R {radius}, straight sides {sides}, back {chord}; {deep} overall",
    "pad.conclusion_both": "Both ends R {radius}, straight sides {sides}, {chord} apart; {deep} overall",
    "pad.line_sides": "Straight sides",
    "pad.line_back": "Back edge",
    "pad.line_other_curve": "The other curve",
    "pad.note_straight": "concrete; {board} behind it, stakes {size} off, dug {past} past",
    "pad.note_other_curve": "the first curve turned over",
    "pad.square_back": "square back of {a} and {b}",
    "pad.across": "from A-2 to B-2",
    "pad.off_other_curve": "on A-2 and B-2",
    "pad.tangent": "At {a} and {b} the curve runs straight on into the sides: tangent, no corner.",
    "pad.corner": "At {a} and {b} the curve meets the sides at {corner}, inside the slab.",
    "pad.square": (
        "Square the sides off the string at {a} and at {b}, {shape}: {along} on the string, {out} back, {long_side} across."
    ),
    "pad.square_past": (
        "Square the sides off the string at {a} and at {b}, {shape}: {along} on the string, {out} back, {long_side} "
        "across. The leg back runs past the corner."
    ),
    "pad.square_blade": "Square the sides off the string at {a} and at {b} with a framing square.",
    "pad.pull": "Pull {sides} back from each: corner A-2 is straight back of {a}, B-2 of {b}.",
    "pad.stand_straight": "Form stakes of the sides and the back stand {size} off the edge: the {board} goes between.",
    "pad.stand_sides": "Form stakes of the sides stand {size} off the edge: the {board} goes between.",
    "pad.stand_beside": (
        "The first {past} of a side next to the curve, they stand {size} off: the curved {board} is there."
    ),
    "pad.no_back.wrong": "A square end stands behind straight sides, and this slab has none.",
    "pad.no_back.remedy": "Give the sides' length and one rounded end, or leave the square end out.",
    "pad.no_along.wrong": "How far round a thick edge runs is asked behind straight sides, and this slab has none.",
    "pad.no_along.remedy": "Give the sides' length, or leave out how far round the thick edge runs.",
    "pad.line_against": "Edge at the building",
    "pad.note_against": "no form, and no dig past it",
    "pad.against": (
        "The square end is against the building: no back form, no form stakes and no dig past it. The side forms "
        "end at its face."
    ),
    "pad.against_strip": "Isolation strip along the building: {gap} thick, {chord} long, {deep}.",
    "pad.strip_deep": "{deep} deep",
    "pad.strip_ends": "{deep} deep, *{edge} deep* for {ends} at A-2 and at B-2",
    "pad.strip_full": "as deep as the concrete",
    "pad.strip_signed": "{gap}; {deep}",
    "pad.strip_signed_ends": "{gap}; {deep}, ends {edge}",
    "pad.against_length": (
        "The strip comes out of the length: {sides} to the building leaves {left} of concrete ({gap} less)."
    ),
    "pad.short_building": "Water runs to the building",
    "pad.more_building": "the back is low by {slope}: ask",
    "pad.water_building": "Water runs to the building. Slope it away, or ask the designer.",
    "pad.set_back": "The back form runs between the side forms, A-2 to B-2: {chord}.",
    "pad.set_other": (
        "Set the other curve with the same numbers, A-2 for {a} and B-2 for {b}. It rounds to the other side."
    ),
    "pad.other_left": "Stand at A-2, face B-2: the other curve is on your LEFT.",
    "pad.other_right": "Stand at A-2, face B-2: the other curve is on your RIGHT.",
    "pad.sides_head": "The straight sides",
    "pad.check_head": "Check: diagonals and length",
    "pad.check": ("A-2 to B-2 must read {chord}. Both diagonals, {a} to B-2 and {b} to A-2, must read {diagonal}."),
    "pad.check_deep": "Square off the middle of the back, the curve is {deep} away.",
    "pad.check_deep_both": "From the middle of one curve to the middle of the other is {deep}.",
    # the boards
    "pad.other_curve": "Other curve",
    "pad.two_curves": "Both curves are bent, R {radius}; the sides are straight.",
    "pad.straight_forms": "straight: sides, back",
    "pad.side_forms": "straight: sides",
    "pad.back_form": "straight: back",
    "pad.carry_tangent": (
        "Carry the curved board {past} past {a} and {b}, down the sides. Butt the side forms to its ends."
    ),
    "pad.carry_corner": "Carry the curved board {past} past {a} and {b}, straight on: there it stays in the dig.",
    "pad.bevel": "Butt the side forms to its face: bevel their ends {angle} off square, {face} to the face.",
    "pad.bevel_marked": "Where the saw won't tilt so far, mark {face} to the face and cut along the mark.",
    "pad.long_point": "The long point is on the concrete, at {a} and at {b}; the back is {shorter} shorter.",
    "pad.cut_long": "Side forms are measured to the long point.",
    "pad.no_overrun_tangent": (
        "Your boards stop at {a} and {b}. Carry the curved one {past} past them, down the sides, to fix that."
    ),
    "pad.no_overrun_corner": (
        "Your boards stop at {a} and {b}. Carry the curved one {past} past them, straight on, to fix that."
    ),
    "pad.no_room": "The curved board stops at {a} and {b}: the dig has no room for it past them.",
    "pad.stakes_sides": "Side forms: every {gap}, {spaces} on each.",
    "pad.stakes_back": "Back form: every {gap}, {spaces}.",
    # the concrete
    "pad.call_back": "from the back edge, toward the curve",
    "pad.call_building": "from the building, toward the curve",
    "pad.strip_out": "The isolation strip at the building, {gap}, is taken out of the concrete.",
    "pad.buy_strip": "Buy isolation strip, too: {chord} of {gap}, {deep}.",
    "pad.call_other": "from the other curve's middle, toward A and B",
    "pad.reach_note_both": (
        "Start at the other curve and keep the front parallel to A to B. Short of that mark, the order won't fill it."
        " Ask how much he's unloaded; measure down the middle of the slab."
    ),
    "pad.reach_note": (
        "Start at the square end and keep the front parallel to A to B. Short of that mark, the order won't fill it. "
        "Ask how much he's unloaded; measure down the middle of the slab."
    ),
    # the joints
    "pad.joints": "{columns} panels wide by {rows} long,\n{panel} by {across}",
    "pad.joints_one_row": "{columns} panels, side by side,\n{panel} by {across}",
    "pad.joints_one_column": "{rows} panels, one behind the other,\n{panel} by {across}",
    "pad.joints_none": "One panel, no joint:\n{wide} wide, {deep} long overall",
    "pad.taped_both": (
        "Tape from A's side along the string and both curves, and down both sides, on the *concrete face*. The back "
        "of the curved board runs {longer} longer."
    ),
    "pad.taped": (
        "Tape from A's side along the string, the back and the curve, and down both sides, on the *concrete face*. "
        "The back of the curved board runs {longer} longer."
    ),
    "pad.joint_building": (
        "*{gap} isolation joint* at the building, A-2 to B-2, the concrete's full depth. Elsewhere only where the spec "
        "says."
    ),
    "pad.end_row": "The row at the curve is {deep} in its middle, so that no joint meets the curve under 60°.",
    "pad.on_string": "A joint runs where the curve begins: panels are {behind} behind it, {beyond} beyond.",
    "pad.shape": "Panels are {ratio} to 1, over 1.5. Ask the designer where joints go.",
    "pad.on_sides": "sides",
    "pad.ahead": "{size} out",
    "pad.behind": "{size} back",
    "pad.at_string": "{a} to {b}",
    "pad.at_other": "A-2 to B-2",
    # the grades
    "pad.water_back": "Water runs off the back edge, square to it.",
    "pad.water_back_end": "Water runs to the back edge on {end}'s side: {slope}, at {angle} to the string.",
    "pad.water_other": "Water runs off the other curve, square to A to B.",
    "pad.water_other_end": "Water runs to the other curve on {end}'s side: {slope}, at {angle} to the string.",
    "pad.total_fall": "Total fall over the slab: {fall}.",
    "pad.string_top": "The straight forms' tops run straight from corner to corner: string them.",
    "pad.names_one": "A-2 and B-2 are the back corners, straight back of {a} and {b}.",
    "pad.names_both": "A name with -2 is the other curve's: that stake is straight back of the first curve's.",
    # the paper
    "pad.paper_one": "Pad {chord} x {deep}, rounded at one end; sides {sides} back from {a} and {b}.",
    "pad.paper_both": "Pad {chord} x {deep}, rounded at both ends; sides {sides}.",
    "pad.sign_tops": "Tops at A-2; B-2",
    "pad.far_tops": "{first}; {last}",
    "pad.sign_strip": "Isolation strip, A-2 to B-2",
    "pad.sign_deep": "Length overall, in the middle",
    "pad.sign_sides": "Both sides; back, A-2 to B-2",
    "pad.sign_diagonals": "Diagonals; apart at most",
    # drawn
    "pad.draw_sides": "sides {sides}, {a} to {b} {chord}",
    "pad.draw_diagonal": "diagonal {shown}",
    "pad.draw_building": "building",
}
