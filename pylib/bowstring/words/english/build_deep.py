"""A thicker stretch of a slab, and the depths measured down to its base, in words."""

MESSAGES = {
    "deep.apron_title": "The apron",
    "deep.apron_short": "{depth} thick {stretch} on the outer form",
    "deep.on_paper": "Apron {depth}: outer {outer}, inner {inner}.",
    "deep.stretch": "from {first} to {last}",
    "deep.on_both": "From A: {outer_first} to {outer_last} on the outer form, {first} to {last} on the inner.",
    "deep.on_line": "Given along the drawing's line: {first} to {last}. A wider slab leaves it there.",
    "deep.on_outer": "Given along the outer form. Taped along the drawing's line instead? Say so with the slab.",
    "deep.depth_apron": "{depth}, apron {apron},",
    "deep.depth_mean": "{mean}, the average of {count} depths,",
    "deep.draw": "apron {depth}",
    "deep.bed_under": "Apron: {apron}. The base steps down there, *{gap} under the foot*.",
    "deep.bed_at": "Apron: {apron}. The base steps down there, to the foot.",
    "deep.bed_over": "Apron: {apron}. The base steps down there, *{gap} over the foot*.",
    "deep.dig": "*Apron, {stretch} along the outer form:* dig {deeper} deeper between the forms.",
    "deep.dig_line": "*Apron, {stretch} along the line:* dig {deeper} deeper between the forms.",
    "deep.step": "The base steps straight down at its ends; a sloped step takes more.",
    "deep.apron_takes": "The apron is {area}, {depth} thick: *{extra}* more than the slab alone.",
    "deep.apron_forms": (
        "Over the apron the forms stay the same height. What they stand on stays: cut the deeper part inside the forms."
    ),
    "deep.begins": "apron begins",
    "deep.ends": "apron ends",
    "deep.joints_stand": (
        "*Joints {first} and {last} stand at the apron's ends:* isolation, {gap} wide, unless the spec says otherwise."
    ),
    "deep.joint_stands": (
        "*Joint {joint} stands at the apron's end:* isolation, {gap} wide, unless the spec says otherwise."
    ),
    "deep.joints_short": "*Joints {joints}, at the apron's ends:* isolation, {gap}. Within it {depth} deep.",
    "deep.joint_none": (
        "*No joint at {where}, where the apron ends:* add one, isolation, {gap} wide, unless the spec says otherwise."
    ),
    "deep.end_arc": "{outside} outside, {inside} inside",
    "deep.end_line": "{at}: left form {left}, right form {right}",
    "deep.joint_depth": "Joints within the apron are cut *{depth} deep*.",
    "deep.no_joint": "the apron's ends have no joint",
    "deep.sign_both": "{depth}, apron {apron}",
    "deep.sign_apron": "Base under top, apron",
    "deep.measured_title": "The measured depths",
    "deep.by_depths": "by {count} measured depths, average {mean}",
    "deep.one": "one depth measured: it takes two",
    "deep.crown": "The crown stands above a string across the forms: measure from the crowned screed instead.",
    "deep.two_needed": "One depth is measured. It takes {least}, so the order goes by the drawing.",
    "deep.drawn_yards": "The drawing's thickness alone would order {order} yards.",
    "deep.drawn_metres": "The drawing's thickness alone would order {order} m³.",
    "deep.drawn_bags": "The drawing's thickness alone would take {order} bags.",
    "deep.ends_taken": (
        "Between two depths it changes evenly, by area. Past the first and the last it stays as measured."
    ),
    "deep.edges_taken": "Thick edges are taken to be off as much as the base beside them.",
    "deep.mean_before": "Before the apron: {mean} on average, from {count} measured.",
    "deep.mean_apron": "In the apron: {mean} on average, from {count} measured.",
    "deep.mean_after": "After the apron: {mean} on average, from {count} measured.",
    "deep.unread_before": "Before the apron nothing is measured: {mean} as drawn.",
    "deep.unread_apron": "In the apron nothing is measured: {mean} as drawn.",
    "deep.unread_after": "After the apron nothing is measured: {mean} as drawn.",
    "deep.thin": "*Thin here: at {at} only {depth} of {drawn}.*",
    "deep.thin_limit": (
        "ACI 117-10, 4.5.4, as quoted: up to {mean} thin on average, {one} at one place. Your spec governs."
    ),
    "deep.thin_over": (
        "*That is past ACI 117-10, 4.5.4, as quoted:* {mean} on average, {one} at one place. Trim the base."
    ),
    "deep.fills": "{order} fills a base up to {low} lower than measured, nothing spilled.",
    "deep.if_drawn": "{thickness} as drawn, nothing measured",
    "deep.panels": "The panels take from *{least}* to *{most}*, as the depth changes.",
    "deep.wall": "No order: a wall has no apron",
    "deep.wall_more": "Take the apron out.",
    "deep.wall_depths": "No order: a wall takes no measured depths",
    "deep.wall_depths_more": "Take the depths out.",
    "deep.fill": "No order: no apron in a slab that fills its curve",
    "deep.fill_more": "Take it out, and figure that stretch by itself.",
    "deep.fill_depths": "No order: no measured depths in a slab that fills its curve",
    "deep.fill_depths_more": "Take the depths out.",
    "deep.apron_past": "No order: the apron runs past B",
    "deep.apron_past_more": "It is given to {at}; the outer form is {length} long.",
    "deep.apron_past_line": "No order: the apron runs past the line's end",
    "deep.apron_past_line_more": "It is given to {at}; the line is {length} long.",
    "deep.apron_kink": "No order: the apron ends in the corner of a kink",
    "deep.apron_kink_more": "It can't end square there: move that end along the line.",
    "deep.apron_none": "No order: the apron has no length",
    "deep.apron_none_more": "It begins where the slab ends, at {at}.",
    "deep.depth_past": "No order: a depth is given past B",
    "deep.depth_past_more": "It is given at {at}; the outer form is {length} long.",
    "deep.depth_past_line": "No order: a depth is given past the line's end",
    "deep.depth_past_line_more": "It is given at {at}; the line is {length} long.",
    "deep.depth_step": "No order: a depth stands right on the apron's end",
    "deep.depth_step_more": "The base steps at {at}: measure to one side of it.",
    "deep.depth_kink": "No order: two depths stand in the corner of one kink",
    "deep.depth_kink_more": "Leave one of them out.",
    "deep.change": "Change the slab",
    # a thick edge
    "deep.edge_band": "along both forms",
    "deep.edge_string": "along the curve and the string",
    "deep.edge_back": "along the curve, sides and back",
    "deep.edge_both": "along both curves and the sides",
    "deep.edge_building": "along the curve, sides and building",
    "deep.edge_dug": "*Thick edge:* trench {where}, inside the forms, *{wide}* wide, *{deep}* under the tops.",
    "deep.edge_no_base": (
        "*Thick edge:* trench {where}, inside the forms, *{wide}* wide; {depth} of concrete under the tops."
    ),
    "deep.edge_footing": "Don't dig under the building's footing.",
    "deep.edge_signed": "{depth}; {wide}",
    "deep.edge_bed": "Thick edge, {where}: {wide} wide, there the base is *{depth} under the form tops*.",
    "deep.edge_curve": "along the curve",
    "deep.edge_curves": "along both curves",
    "deep.edge_sides": "along the curve and both sides",
    "deep.cut": "Cut and fill {where} are to the bottom of the trench, *{deep}* under the tops.",
    "deep.cut_beside": (
        "Cut and fill {where} are to the bottom of the trench, *{deep}* under the tops. At A-2 and B-2 they are "
        "to the underside of the base."
    ),
    "deep.past_held": "Past it dig only to the board's foot, no base.",
    "deep.past_boards": "Dig it out to the dig line: its boards stand {foot} down.",
    "deep.edge_asked": "*Thick edge all round, as figured?*",
    "deep.edge_or": "Only {where}: *{order}*.",
}
