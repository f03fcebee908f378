"""The halving worked by hand, and the ways to keep a sagitta square."""

MESSAGES = {
    "level.how_one": (
        "On the string, mark the midpoint, {half} from either end. Square off {sagitta} there to the {hand} (standing at the "
        "end nearer A, facing the other). Move the stake sideways until both short chords read {half_chord}."
    ),
    "level.how": (
        "On each string, mark the midpoint, {half} from either end. Square off {sagitta} there to the {hand} (standing at the "
        "end nearer A, facing the other). Move the stake sideways until both short chords read {half_chord}."
    ),
    "hand_work.first": "The first sagitta comes from the drawing: nothing to work out.",
    "hand_work.first_root": "From radius and half chord: square root of ({radius}² - {half}²) = {root} {unit}.",
    "hand_work.first_under": "First sagitta: {half}² ÷ ({radius} + {root}) = {half}² ÷ {total} = {first} {unit}, to the nearest mark {shown}.",
    "hand_work.first_over": "First sagitta, past a half circle: {radius} + {root} = {first} {unit}, to the nearest mark {shown}.",
    "hand_work.chord": "New chord: square root of ({half}² + {sagitta}²) = {chord} {unit}.",
    "hand_work.sagitta": "Next sagitta: {chord} × ({chord} - {half}) ÷ (2 × {sagitta}) = {chord} × {more} ÷ {twice} = {next} {unit}, to the nearest mark {shown}.",
    "hand_work.flat": "Next sagitta: {chord} × {sagitta} ÷ (2 × ({chord} + {half})) = {chord} × {sagitta} ÷ {both} = {next} {unit}, to the nearest mark {shown}.",
    "square.prefer_slide": "Move the stake sideways until both end distances match; use the triangle only when one end can't be reached.",
    "square.prefer_square": "Short enough for a framing square; still, match both end distances where there is time.",
    "square.slide": "Slide the tip until both half chords read the same ({half_chord}). Out by a mark between the two:",
    "square.triangle_whole": (
        "{shape} triangle: {along} along the string from the middle, {out} out, long side {long_side}. Out by a mark:"
    ),
    "square.triangle_computed": (
        "Triangle: {along} along the string from the middle, {out} out, long side {long_side}. Out by a mark:"
    ),
    "square.blade": "Framing square on the string, out by a mark over its {blade} blade:",
    "square.eye": "By eye, out by {degrees}° (common practice, no source):",
    "square.cost": "the stake goes {aside} along the arc and {here} off it; the next round's stakes go {next} off.",
    "square.cost_last": "the stake goes {aside} along the arc and {here} off it.",
    "square.each": (
        "Square each offset with a {shape} triangle at its foot: {along} along the string, {out} out, and the long side {long_side}. The "
        "larger, the truer."
    ),
    "square.each_cost": (
        "One mark ({mark}) wrong in the long side puts {stake}, the farthest one out ({offset}), {aside} aside along the arc."
    ),
    "square.each_short": "For short offsets a {blade} framing square against the string is enough.",
}
