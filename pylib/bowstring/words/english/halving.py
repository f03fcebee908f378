"""The halving worked by hand, and the ways to keep a sagitta square."""

MESSAGES = {
    "level.how_one": (
        "Middle of the string at {half} from either end. From it square off {sagitta} to the {hand} (standing at the end nearer A, facing "
        "the other). Slide the tip until both half chords read {half_chord}: that says it is square. Tape the {sagitta} twice."
    ),
    "level.how": (
        "Each string: its middle is at {half} from either end. From it square off {sagitta} to the {hand} (standing at the end nearer A, "
        "facing the other). Slide the tip until both half chords read {half_chord}: that says it is square. Tape the {sagitta} twice."
    ),
    "hand_work.first": "The first sagitta comes from the drawing: nothing to work out.",
    "hand_work.first_root": "From radius and half chord: square root of ({radius}² - {half}²) = {root} {unit}.",
    "hand_work.first_under": "First sagitta: {half}² ÷ ({radius} + {root}) = {half}² ÷ {total} = {first} {unit}, to the nearest mark {shown}.",
    "hand_work.first_over": "First sagitta, past a half circle: {radius} + {root} = {first} {unit}, to the nearest mark {shown}.",
    "hand_work.chord": "New chord: square root of ({half}² + {sagitta}²) = {chord} {unit}.",
    "hand_work.sagitta": "Next sagitta: {chord} × ({chord} - {half}) ÷ (2 × {sagitta}) = {chord} × {more} ÷ {twice} = {next} {unit}, to the nearest mark {shown}.",
    "hand_work.flat": "Next sagitta: {chord} × {sagitta} ÷ (2 × ({chord} + {half})) = {chord} × {sagitta} ÷ {both} = {next} {unit}, to the nearest mark {shown}.",
    "square.prefer_slide": "Slide the tip; the triangle is for when only one end can be reached.",
    "square.prefer_square": "Short enough for a framing square; slide the tip where there is time.",
    "square.slide": "Slide the tip until both half chords read the same ({half_chord}). Out by a mark between the two:",
    "square.triangle_whole": (
        "{shape} triangle: {along} along the string from the middle, {out} out, long side {long_side}. Out by a mark:"
    ),
    "square.triangle_computed": (
        "Triangle: {along} along the string from the middle, {out} out, long side {long_side}. Out by a mark:"
    ),
    "square.blade": "Framing square on the string, out by a mark over its {blade} blade:",
    "square.eye": "By eye, out by {degrees}° (common practice, no source):",
    "square.cost": "the tip slips {aside} aside, this stake moves {here} off the arc, the next level's {next}.",
    "square.cost_last": "the tip slips {aside} aside, this stake moves {here} off the arc.",
    "square.each": (
        "Square each offset with a {shape} triangle at its foot: {along} along the string, on the side where it is longer, {out} "
        "out, and the long side {long_side}."
    ),
    "square.own": "For {marks} instead: {square}.",
    "square.with_triangle": (
        "a {shape} triangle, {along} along the line toward {toward}, {out} out, and the long side {long_side}"
    ),
    "square.with_blade": "a framing square with its {blade} blade on the line",
    "square.each_cost": (
        "One mark ({mark}) wrong in the long side puts {stake}, the farthest one out ({offset}), {aside} aside along the arc."
    ),
    "square.each_short": "For offsets up to {enough} hold a {blade} framing square against the string.",
}
