"""The sentences of ordinates from the middle of a string, and from a string parallel to the chord."""

MESSAGES = {
    "note.steep": (
        "Between {start} and {end} the straight gap is {gap}: the curve runs steep to its string there. For closer "
        "stakes enter a maximum stake spacing, or set them by halving."
    ),
    "note.halve_first_wins": "Both halving first and a parallel string were given. Halving first was used.",
    "step.string_middle": (
        "Mark the midpoint of the string from {start} to {end}: {length0} from either end. Zero the tape there for the "
        "distances below."
    ),
    "step.ordinate_mid": (
        "{stake}: from the string's midpoint toward {end} mark {length0}. There square off {length1} to the {hand} "
        "(facing B from A). Drive {stake}."
    ),
    "step.ordinate_middle": (
        "{stake}: at the string's midpoint square off {length0} to the {hand} (facing B from A). Drive {stake}."
    ),
    "step.parallel_crossed_curve": (
        "{peg}, an end of the parallel string: cross {length0} from {start} with {length1} from {end}. It is on "
        "the {hand} (facing B from A), the curve's side. Drive a pin at {peg}."
    ),
    "step.parallel_crossed_behind": (
        "{peg}, an end of the parallel string: cross {length0} from {start} with {length1} from {end}. It is on "
        "the {other_hand} (facing B from A), away from the curve. Drive a pin at {peg}."
    ),
    "step.parallel_squared_curve": (
        "{peg}, an end of the parallel string: at {start} square off the string A-B {length0}. It is on the {hand} "
        "(facing B from A), the curve's side. Drive a pin at {peg}."
    ),
    "step.parallel_squared_behind": (
        "{peg}, an end of the parallel string: at {start} square off the string A-B {length0}. It is on the "
        "{other_hand} (facing B from A), away from the curve. Drive a pin at {peg}."
    ),
    "step.parallel_crossed": (
        "Tape {start} to {end}: it must read {length0}, the same as A to B. A to {end} and B to {start} must read "
        "the same as each other. If not, set both pins again. Stretch the string from {start} to {end}: it is "
        "parallel to A-B."
    ),
    "step.parallel_squared": (
        "Tape {start} to {end}: it must read {length0}, the same as A to B. If not, square both again. Stretch the "
        "string from {start} to {end}: it is parallel to A-B."
    ),
    "step.parallel_leaning": (
        "Stretch the string from {start} to {end}. On it mark {seen}, {length0} from {start}. Tape {eye} to {seen}: it "
        "must read {length1}. If not, set both pins again. The string is parallel to A-B."
    ),
    "step.parallel_strung": (
        "Stretch the string from {start} to {end}. The tape doesn't reach from one to the other: square each corner "
        "twice."
    ),
    "step.parallel_stood": (
        "Tape {start} to {end}: it must read {length0}. If not, tape again where both pins are. Stretch the string "
        "between them. One of its pins is off its place, so the string isn't parallel to A-B. The distances below "
        "allow for that."
    ),
    "step.parallel_stood_strung": (
        "Stretch the string from {start} to {end}. One of its pins is off its place, so the string isn't parallel to "
        "A-B. The distances below allow for that."
    ),
    "step.parallel_toward_on": (
        "{stake}: on the parallel string from {start} toward {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), toward A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_away_on": (
        "{stake}: on the parallel string from {start} toward {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), away from A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_toward_past": (
        "{stake}: carry the parallel string from {end} on past {start} for {length0}. There square off to the "
        "{cross_hand} (facing as from {start} to {end}), toward A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_away_past": (
        "{stake}: carry the parallel string from {end} on past {start} for {length0}. There square off to the "
        "{cross_hand} (facing as from {start} to {end}), away from A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_toward_end": (
        "{stake}: at {start} square off the parallel string to the {cross_hand} (facing {end} from {start}), "
        "toward A-B, {length0}. Drive {stake}."
    ),
    "step.parallel_away_end": (
        "{stake}: at {start} square off the parallel string to the {cross_hand} (facing {end} from {start}), away "
        "from A-B, {length0}. Drive {stake}."
    ),
    "step.parallel_toward_mid": (
        "{stake}: from the parallel string's midpoint toward {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), toward A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_away_mid": (
        "{stake}: from the parallel string's midpoint toward {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), away from A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_toward_middle": (
        "{stake}: at the parallel string's midpoint square off to the {cross_hand} (facing {end} from {start}), "
        "toward A-B, {length0}. Drive {stake}."
    ),
    "step.parallel_away_middle": (
        "{stake}: at the parallel string's midpoint square off to the {cross_hand} (facing {end} from {start}), "
        "away from A-B, {length0}. Drive {stake}."
    ),
    "step.parallel_over_on": (
        "{stake}: on the parallel string from {start} toward {end} mark {length0}. Drive {stake} there, on the string."
    ),
    "step.parallel_over_past": (
        "{stake}: carry the parallel string from {end} on past {start} for {length0}. Drive {stake} there, on its line."
    ),
    "step.parallel_over_end": "{stake} is at {start} itself: drive it there.",
    "step.parallel_over_mid": (
        "{stake}: from the parallel string's midpoint toward {end} mark {length0}. Drive {stake} there, on the string."
    ),
    "step.parallel_over_middle": "{stake}: drive it at the parallel string's midpoint, on the string.",
}
