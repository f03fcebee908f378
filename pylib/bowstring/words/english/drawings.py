"""Words on the drawings, and what a person is told who can't see them."""

MESSAGES: dict[str, str] = {
    "draw.stopped": "Don't build from this yet.",
    "draw.some_levels": "Stakes beyond round {level} are not drawn.",
    "draw.at_left": "A is drawn at the left, with the curve above the string.",
    "draw.at_right": "A is drawn at the right, with the curve above the string.",
    # labels
    "draw.chord": "chord {shown}",
    "draw.sagitta": "mid-ord",
    "draw.sagitta.shown": "mid-ord {shown}",
    "draw.half.each": "each half {shown}",
    "draw.half_chord.both": "both short chords {shown}",
    "draw.half_chord.two": "short chords {first} and {second}",
    "draw.half_chords": "Short chords, from the string's ends to {name}: both {shown}.",
    "draw.centre": "center",
    "draw.tangents": "tangents at the ends",
    "draw.straights.corner": "straights, meeting at the corner P",
    "draw.straights.off": "straights to the corner P, cut short: P is off the drawing",
    "draw.straights.one_end": "straight through S and {start}; square off it at F to {end}",
    "draw.parallel": "string {start} to {end}, parallel to A-B, {shown} beyond it",
    "draw.parallel.behind": "string {start} to {end}, parallel to A-B, {shown} behind it",
    "draw.obstacle.row": "{number} {name}",
    "draw.obstacle.away": "In the way, but off this plan: {names}.",
    "draw.to": "to {name}",
    "draw.arc": "arc, radius {radius}",
    "draw.arc.staked": "staked arc, radius {radius}",
    "draw.arc.drawn": "drawn arc, radius {radius}",
    "draw.arc.gap": "Staked arc and drawn arc are {shown} apart.",
    "draw.arc.gap.forced": "Staked arc and drawn arc are {shown} apart: that gap is not drawn to scale.",
    "draw.end": "{name}: {landmark}",
    "draw.scale.number.ft": "{number} ft",
    "draw.scale.number.in": "{number} in",
    "draw.scale.number.m": "{number} m",
    "draw.scale.number.mm": "{number} mm",
    "draw.scale": "Drawn to scale.",
    "draw.stretch": "Curve drawn {factor}x so you can see it; the bar holds along the chord only.",
    "draw.stretch.level": "Curve drawn {factor}x so you can see it.",
    "draw.low.gap": "Gap between the arcs not to scale.",
    "draw.not_to_scale": "Not to scale.",
    # plan
    "draw.plan.title": "Plan of the arc",
    "draw.plan.title.named": "Plan of the arc: {title}",
    "draw.plan.desc": ("{hand} Chord {chord}, mid-ordinate {sagitta} at its midpoint. Stakes from A to B: {names}."),
    "draw.plan.desc.end": " {name} is at: {landmark}.",
    "draw.plan.desc.corner": "The straights through {start} and {end} meet at the corner P.",
    "draw.plan.desc.corner.off": (
        "The straights through {start} and {end} are cut short: the corner P, where they meet, is off the drawing."
    ),
    "draw.plan.desc.one_end": "The straight runs through S and {start}; from F on it, {end} is squared off.",
    # one level
    "draw.level.title": "Round {level}: chords and mid-ordinates",
    "draw.level.desc": (
        "{hand} {strings} from stake to stake. From "
        "the midpoint of each, square off it toward the curve, a mid-ordinate sets {names}."
    ),
    "draw.level.strings.one": "One string",
    "draw.level.strings.many": "{count} strings",
    "draw.level.detail.one": "The string from {start} to {end}, not to scale",
    "draw.level.detail.two": ("One of 2 strings, {start} to {end}, not to scale; the other reads the same"),
    "draw.level.detail.many": ("One of {count} strings, {start} to {end}, not to scale; the others read the same"),
    "draw.level.detail.differ": "The strings differ. Take each one's own numbers:",
    "draw.level.each": "{name}: {numbers}",
    # keeping square
    "draw.triangle.title": "Round {level}: keeping the mid-ordinate square",
    "draw.triangle.slide.desc": (
        "The string from {start} to {end} with its midpoint marked, and {name}, {sagitta} from it."
    ),
    "draw.triangle.found": "As built: short chords {first} and {second}.",
    "draw.triangle.slide.alike": "Move the stake sideways until both short chords read alike.",
    "draw.triangle.alone": "For {name} only: the other strings of this round have their own numbers.",
    "draw.triangle.slide": "Move the stake sideways until both short chords read {half_chord}.",
    "draw.triangle.triangle.desc": (
        "A right triangle with its corner at the midpoint of the string from {start} to {end}. It is {along} along the string, "
        "{out} out, with a long side of {long_side}. The stake {name} is on the line of the leg out, {sagitta} from the string."
    ),
    "draw.triangle.along": "along {shown}",
    "draw.triangle.out": "out {shown}",
    "draw.triangle.out.stake": "out to {name} {shown}",
    "draw.triangle.long_side": "long side {shown}",
    "draw.triangle.square": "Square's corner at the midpoint, one blade on the string.",
    "draw.triangle.square.desc": (
        "A framing square with its corner at the midpoint of the string from {start} to {end}. One blade is on the string; the "
        "other points to {name}, {sagitta} away."
    ),
    "draw.triangle.whole": "{whole} triangle",
    # the story stick
    "draw.stick.title": "Story stick",
    "draw.stick.desc": "A lath with every mark measured from its zero end: {marks}.",
    "draw.stick.zero": "zero end",
    "draw.stick.mark": "{label}: {shown}",
    "draw.stick.stale": (
        "{names}: off the arc as built. Mid-ordinates after that have their own numbers in the steps; don't take them from this "
        "stick."
    ),
    "draw.stick.note": "Measure every mark from the zero end.",
    "draw.way.title": "How the stakes are set",
    "draw.way.desc": ("{hand} The string A to B and the arc, with every line that is taped."),
    "draw.way.one": "Thick lines: what sets {stake}, with its numbers. Thin lines: the same for the others.",
    "draw.way.deflection": "{angle} off the tangent",
    "draw.way.cut": "A line with a zigzag goes on beyond the drawing.",
    "draw.scatter.title": "Where the stakes may end up",
    "draw.scatter.desc": (
        "An ellipse around each stake holds 19 layouts in 20. The widest across the arc is at {at}: one standard "
        "deviation is {across}."
    ),
    "draw.scatter.enlarged": "Each ellipse holds 19 layouts in 20, drawn {factor} times too large against the arc.",
    "draw.some_stakes": "Only some of the stakes are drawn.",
}
