"""The halving worked by hand, and the ways to keep a sagitta square."""

MESSAGES = {
    "level.how_one": (
        "On the string, mark the midpoint, {half} from either end. Square off {sagitta} there to the {hand}. Holding "
        "that distance, move the stake sideways until both short chords read {half_chord}. That only squares it: tape "
        "the {sagitta} twice."
    ),
    "level.how": (
        "On each string, mark the midpoint, {half} from either end. Square off {sagitta} there to the {hand}. Holding "
        "that distance, move the stake sideways until both short chords read {half_chord}. That only squares it: tape "
        "the {sagitta} twice."
    ),
    "level.hand": "{hand} (standing at the end nearer A, facing the other)",
    "hand_work.first": (
        "The first mid-ordinate comes from the drawing: nothing to work out. Other names for it are sagitta, rise and middle "
        "ordinate."
    ),
    "hand_work.first_root": "From the radius and half the chord: square root of ({radius}² - {half}²) = {root} {unit}.",
    "hand_work.first_under": (
        "First mid-ordinate: {half}² ÷ ({radius} + {root}) = {half}² ÷ {total} = {first} {unit}, to the nearest mark {shown}."
    ),
    "hand_work.first_over": (
        "First mid-ordinate, past a half circle: {radius} + {root} = {first} {unit}, to the nearest mark {shown}."
    ),
    "hand_work.chord": "Short chord: square root of ({half}² + {sagitta}²) = {chord} {unit}.",
    "hand_work.sagitta": (
        "Next mid-ordinate: {chord} × ({chord} - {half}) ÷ (2 × {sagitta}) = {chord} × {more} ÷ {twice} = {next} {unit}, to the "
        "nearest mark {shown}."
    ),
    "hand_work.flat": (
        "Next mid-ordinate: {chord} × {sagitta} ÷ (2 × ({chord} + {half})) = {chord} × {sagitta} ÷ {both} = {next} {unit}, to "
        "the nearest mark {shown}."
    ),
    "square.prefer_slide": "Go by the short chords; use the triangle only when one end can't be reached.",
    "square.prefer_square": "A framing square will do here. Where there is time, match the short chords too.",
    "square.slide": (
        "Move the stake sideways until both short chords read the same ({half_chord}). If they differ by a mark:"
    ),
    "square.triangle_whole": (
        "{shape} triangle: {along} along the string from the midpoint, {out} out, long side {long_side}. One mark out:"
    ),
    "square.triangle_computed": (
        "Triangle: {along} along the string from the midpoint, {out} out, long side {long_side}. One mark out:"
    ),
    "square.blade": "Framing square on the string. One mark out over its {blade} blade:",
    "square.eye": "By eye, out by {degrees}° (common practice, no source):",
    "square.cost": "the stake goes {aside} along the arc and {here} off it. The next round's stakes go {next} off.",
    "square.cost_last": "the stake goes {aside} along the arc and {here} off it.",
    "square.each": (
        "Square each offset with a {shape} triangle where it leaves the string. Lay {along} along the longer part of "
        "the string, and {out} out; the long side is {long_side}."
    ),
    "square.own": "For {marks} instead: {square}.",
    "square.with_triangle": (
        "a {shape} triangle, {along} along the line toward {toward}, {out} out, long side {long_side}"
    ),
    "square.with_blade": "a framing square, its {blade} blade on the line",
    "square.each_cost": (
        "One mark ({mark}) wrong in the long side moves {stake}, the farthest one out ({offset}), {aside} along the "
        "arc."
    ),
    "square.each_short": "For offsets up to {enough} hold a {blade} framing square against the string.",
}
