"""A line of several pieces and the slab along it, where Britain says something else."""

MESSAGES = {
    "lined.tape_square": "Tape level, and square to the line. On an arc tape towards the centre, or away from it.",
    "lined.how_square": "Hold the stick level and square to the line. On an arc it points at the centre.",
    "lined.swing": "{piece} has a tight inner edge. If you can reach its centre, swing it at {radius}.",
    "lined.dig_deep": "Dig to *{deep}* below the form tops: {thickness} of slab on {base} of sub-base.",
    "lined.dig_bare": "Dig to *{deep}* below the form tops: there is no sub-base.",
    "lined.dig_no_base": "Dig to *{thickness}* below the form tops, deeper for a sub-base: none is given.",
    "lined.dig_apron_no_base": "There it is *{deep}* below the form tops, before any sub-base.",
    "lined.dig_all": "Inside {piece} the dig reaches the centre: dig it all.",
    "lined.joints_row": "{count} bays, up to {longest}",
    "lined.joints_one": "One bay, {longest} long",
    "lined.joints_ratio_near": "bay {number}: {ratio} to 1, limit 1.5",
    "lined.joints_ratio_over": "bay {number}: {ratio} to 1, over 1.5",
    "lined.joints_conclusion": "*{count} bays*, none longer than {longest}. The shortest side is {shortest}.",
    "lined.joints_conclusion_one": "*One bay*, no joint: {longest} on its longer side, {shortest} on the other.",
    "lined.joints_long": "Bays over {most} at {thickness}",
    "lined.joints_long_plain": "Bays over {most}",
    "lined.joints_stop": "The longest bay is {longest}; {most} is the usual limit. Use more bays.",
    "lined.joints_square": (
        "Snap mark to mark, straight across, square to both edges. On an arc that line points at the centre."
    ),
    "lined.miter": (
        "Where {piece} begins, both forms meet on a mitre. The {outer} one runs {on} past square across the kink, on "
        "both pieces. The {inner} one stops short: {before} before it, {after} after it."
    ),
    "lined.miter_run": (
        "Where {piece} begins, the {outer} form runs {on} past square across the kink, on both pieces, to its mitre. "
        "The {inner} one turns at the line's own corner."
    ),
    "lined.joints_miter": "At a kink the joint is on the mitre, from corner to corner.",
    "lined.joints_corner_sharp": "A mitre leaves a corner of only {corner}. Under 60° it breaks off: ask the designer.",
    "lined.shape_long": "Bay {number} is {ratio} to 1, over 1.5: too long. Use more bays.",
    "lined.shape_short": (
        "Bay {number} is {ratio} to 1, over 1.5: too short for its width. Make bays longer, or ask the designer."
    ),
    "lined.shape_odd": "Bay {number} is {ratio} to 1, over 1.5: ask the designer where joints go.",
    "lined.most_every": "Bays are at most {most} along either form, as you said.",
    "lined.count_taken": "You said {said} bays. With a joint wherever two pieces meet, it's {count}.",
    "lined.call_left": "When to ring the plant: distances on the left form from the start",
    "lined.call_right": "When to ring the plant: distances on the right form from the start",
    "lined.reach_left": (
        "Pour from the start. Short of that mark, the order won't reach the end. Past it, it will if the sub-base "
        "stays the same. Ask how much he's unloaded; measure along the left form."
    ),
    "lined.reach_right": (
        "Pour from the start. Short of that mark, the order won't reach the end. Past it, it will if the sub-base "
        "stays the same. Ask how much he's unloaded; measure along the right form."
    ),
    "lined.panels_take": "The bays take from *{least}* to *{most}*.",
    "lined.panels_bags": "The bays take from *{least}* to *{most} bags*.",
    "lined.bulkhead_left": (
        "Have a stop end ready at *joint {joint}*: {left} on the left form, {right} on the right. "
        "With the sub-base {low} low all over, this order ends at {ends} on the left form."
    ),
    "lined.bulkhead_right": (
        "Have a stop end ready at *joint {joint}*: {left} on the left form, {right} on the right. "
        "With the sub-base {low} low all over, this order ends at {ends} on the right form."
    ),
    "lined.bulkhead_short": "Have a stop end ready at *joint {joint}*.",
    "lined.bulkhead_last": (
        "Have a stop end ready at *joint {joint}*: {left} on the left form, {right} on the right. "
        "A short load ends there."
    ),
}
