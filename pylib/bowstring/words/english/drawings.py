"""Words on the drawings, and what a person is told who can't see them."""

MESSAGES: dict[str, str] = {
    "draw.some_levels": "Stakes beyond level {level} are not drawn.",
    "draw.above": "A is drawn at the left, so the curve is above the string.",
    "draw.below": "A is drawn at the left, so the curve is below the string.",
    # labels
    "draw.chord": "chord {shown}",
    "draw.sagitta": "sagitta",
    "draw.sagitta.shown": "sagitta {shown}",
    "draw.half.each": "each half {shown}",
    "draw.half_chord.both": "both half chords {shown}",
    "draw.half_chord.two": "half chords {first} and {second}",
    "draw.half_chords": "Half chords, from the string's ends to {name}: both {shown}.",
    "draw.centre": "centre",
    "draw.tangents": "tangents at the ends",
    "draw.straights.corner": "straights, meeting at the corner P",
    "draw.straights.off": "straights to the corner P, cut short: P is off the drawing",
    "draw.straights.one_end": "straight through S and {start}; square off it at F to {end}",
    "draw.to": "to {name}",
    "draw.arc": "arc, radius {radius}",
    "draw.arc.staked": "staked arc, radius {radius}",
    "draw.arc.drawn": "drawn arc, radius {radius}",
    "draw.arc.gap": "Staked arc and drawn arc stand {shown} apart.",
    "draw.arc.gap.forced": ("Staked arc and drawn arc stand {shown} apart: that gap is not drawn to scale."),
    "draw.end": "{name}: {landmark}",
    "draw.scale.number.ft": "{number} ft",
    "draw.scale.number.in": "{number} in",
    "draw.scale.number.m": "{number} m",
    "draw.scale.number.mm": "{number} mm",
    "draw.scale": "Drawn to scale.",
    "draw.stretch": "Rise drawn {factor} times too large; the bar holds along the chord only.",
    "draw.stretch.level": "Rise drawn {factor} times too large.",
    "draw.not_to_scale": "Not to scale.",
    # plan
    "draw.plan.title": "Plan of the arc",
    "draw.plan.title.named": "Plan of the arc: {title}",
    "draw.plan.desc": "{hand} Chord {chord}, sagitta {sagitta} at the chord's middle. Stakes from A to B: {names}.",
    "draw.plan.desc.end": " {name} is at: {landmark}.",
    "draw.plan.desc.corner": "The straights through {start} and {end} meet at the corner P.",
    "draw.plan.desc.corner.off": (
        "The straights through {start} and {end} are cut short: the corner P, where they meet, is off the drawing."
    ),
    "draw.plan.desc.one_end": "The straight runs through S and {start}; from F on it, {end} is squared off.",
    # one level
    "draw.level.title": "Level {level}: chords and sagittae",
    "draw.level.desc": (
        "{hand} {strings} from stake to "
        "stake; from the middle of each, square off it toward the curve, a sagitta sets {names}."
    ),
    "draw.level.strings.one": "One string",
    "draw.level.strings.many": "{count} strings",
    "draw.level.detail.one": "The string from {start} to {end}, not to scale",
    "draw.level.detail.two": ("One of 2 strings, {start} to {end}, not to scale; the other reads the same"),
    "draw.level.detail.many": ("One of {count} strings, {start} to {end}, not to scale; the others read the same"),
    "draw.level.detail.differ": "The strings differ. Take each one's own numbers:",
    "draw.level.each": "{name}: {numbers}",
    # keeping square
    "draw.triangle.title": "Level {level}: keeping the sagitta square",
    "draw.triangle.slide.desc": (
        "The string from {start} to {end} with its middle marked, and the tip at {name}, {sagitta} from it."
    ),
    "draw.triangle.found": "Found here: half chords {first} and {second}.",
    "draw.triangle.slide.alike": "Slide the tip until both half chords read alike.",
    "draw.triangle.alone": "For {name} only: the other strings of this level have numbers of their own.",
    "draw.triangle.slide": "Slide the tip until both half chords read {half_chord}.",
    "draw.triangle.triangle.desc": (
        "A right triangle with its corner at the middle of the string from {start} to {end}: {along} "
        "along the string, "
        "{out} out, {long_side} the long side. The stake {name} is on the line of the leg out, "
        "{sagitta} from the string."
    ),
    "draw.triangle.along": "along {shown}",
    "draw.triangle.out": "out {shown}",
    "draw.triangle.out.stake": "out to {name} {shown}",
    "draw.triangle.long_side": "long side {shown}",
    "draw.triangle.square": "Square's corner at the middle, one blade on the string.",
    "draw.triangle.square.desc": (
        "A framing square with its corner at the middle of the string from {start} to {end} and one "
        "blade on the string; "
        "the other blade points to {name}, {sagitta} away."
    ),
    "draw.triangle.whole": "{whole} triangle",
    # the story stick
    "draw.stick.title": "Story stick",
    "draw.stick.desc": "A lath with every mark measured from its zero end: {marks}.",
    "draw.stick.zero": "zero end",
    "draw.stick.mark": "{label}: {shown}",
    "draw.stick.stale": (
        "{names}: found off the arc. Sagittae after that have numbers of their own in the steps; "
        "don't take them from this stick."
    ),
    "draw.stick.note": "Measure every mark from the zero end.",
    "draw.way.title": "How the stakes are set",
    "draw.way.desc": "{hand} The string A to B and the arc, with every line that is taped.",
    "draw.way.one": "Thick lines: what sets {stake}, with its numbers. Thin lines: the same for the others.",
    "draw.way.cut": "A line with a zigzag goes on beyond the drawing.",
    "draw.scatter.title": "Where the stakes may come to stand",
    "draw.scatter.desc": "An ellipse around each stake holds 19 layouts in 20. The widest across the arc is at {at}: one standard deviation is {across}.",
    "draw.scatter.enlarged": "Each ellipse holds 19 layouts in 20, drawn {factor} times too large against the arc.",
    "draw.some_stakes": "Only some of the stakes are drawn.",
}
