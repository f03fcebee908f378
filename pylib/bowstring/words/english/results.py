"""The rule of thumb, rounding, checks, what is left between stakes, the story stick, field fit, offsets."""

MESSAGES = {
    "miss.inside": "{miss} inside the arc",
    "miss.outside": "{miss} outside the arc",
    "miss.none": "exactly on the arc",
    "rule.inside": "inside",
    "rule.outside": "outside",
    "rule.one_level": "With this many rounds the quarter rule and the exact figures are the same.",
    "rule.no_tolerance": "Quartering would put stake {at} {worst} {where} the true arc.",
    "rule.holds": "Quartering would put stake {at} {worst} {where} the true arc: within the {tolerance} allowed.",
    "rule.fails": (
        "Don't quarter here: stake {at} would stand {worst} {where} the true arc, and {tolerance} is allowed."
    ),
    "rule.alternate": (
        "Equal gaps won't show it; the mid-ordinate over alternate stakes does. It is {true} everywhere on the arc, but {wrong} "
        "at {at} after quartering ({apart} apart)."
    ),
    "rule.good_up_to": (
        "On a chord of {chord}, quartering stays within {tolerance} up to a mid-ordinate of {rise} ({ratio} of the chord). Here "
        "it is {here}."
    ),
    "rule.good_always": (
        "On a chord of {chord}, quartering stays within {tolerance} for any mid-ordinate up to a half circle."
    ),
    "rule.planned": "This compares the rule with the layout as planned, before any as-built stake was entered.",
    "rounding.fine": "Held to the shown numbers ({mark}), the worst stake, {at}, is {worst} off from rounding alone.",
    "rounding.eats": (
        "Held to the shown numbers ({mark}), stake {at} is {worst} off. Rounding uses up more than half of the {tolerance} "
        "allowed. Read the tape to {finer}."
    ),
    "rounding.eats_all": (
        "Held to the shown numbers ({mark}), stake {at} is {worst} off. Rounding uses up more than half of the {tolerance} "
        "allowed. No finer mark is offered: use fewer rounds."
    ),
    "check.to": " to ",
    "check.alternate": "String {start_pair}: its midpoint to {end} must read {shown}.",
    "check.alternate_inside": (
        "String {start_pair}: {end} is inside it, toward the center. Its midpoint to {end} must read {shown}."
    ),
    "check.ordinate": "On the string A to B at {along} from A, square off to {end}: must read {shown}.",
    "check.ordinate_inside": (
        "On the string A to B at {along} from A, square off to {end}, away from the curve. It must read {shown}."
    ),
    "check.cross": "{start} to {end}: must read {shown}.",
    "check.half": "{start} to {end}: must read {shown}.",
    "check.far": "{start} to {end}: must read {shown}.",
    "check.gap": "{start} to {end}: must read {shown}.",
    "check.closing": "The closing gap, {start} to {end}, taped last: must read {shown}.",
    "check.no_judge": "It can't judge: readings scatter by more than half of that.",
    "check.external": "Corner P to {end}: must read {shown}.",
    "gap.left": (
        "Stakes are {gap} apart, measured straight. Straight pieces would miss the arc by {rise} at their midpoints; "
        "a sprung board follows it far better."
    ),
    "gap.left_got": (
        "Stakes are up to {gap} apart, measured straight. A straight piece there would miss the arc by {rise} at its "
        "midpoint; a sprung board follows it far better."
    ),
    "stick.level": "round {level}: {stakes}",
    "stick.to": "{first} to {last}",
    "fit.hold_radius": "hold the radius",
    "fit.hold_sagitta": "hold the mid-ordinate",
    "fit.hold_arc_length": "hold the arc length",
    "fit.hold_directions": "hold the end directions",
    "fit.kink": "{degrees}°, {off} off line after 10 ft (3.05 m)",
    "fit.agrees": "The measured chord is {found}, the drawn one {drawn}: they agree, and the drawn arc stands.",
    "fit.apart": (
        "The two measurements of the chord are {apart} apart: measure it again, from both ends. Until they agree, this sheet "
        "uses the drawn arc. Don't build from it."
    ),
    "fit.slip": (
        "The measured chord ({found}) is {difference} from the drawn one ({drawn}): that looks like a slip of the tape. Measure "
        "again. Until you are sure, this sheet uses the drawn arc. Don't build from it."
    ),
    "fit.choose": (
        "The measured chord is {found}, the drawn one {drawn} ({difference}). Choose what to hold. Until then, this sheet uses "
        "the drawn arc. Don't build from it."
    ),
    "fit.looks_like": "It looks like this: {slip}",
    "fit.taken": "The measured chord is {found}, the drawn one {drawn}: the arc was worked out again over it ({hold}).",
    "fit.do_not_build": (
        "Do not build this: ask. Over the measured chord ({found}, drawn {drawn}) the ends would kink by {kink} or the curve "
        "would change shape."
    ),
    "slip.stakes_chord": "the chord between the stakes taken for A0 to B0 on the drawn line: it would be {would_be}.",
    "slip.foot": "a foot miscounted: it would be {would_be}.",
    "slip.inch": "an inch miscounted, or burned and not corrected: it would be {would_be}.",
    "slip.metre": "a meter miscounted: it would be {would_be}.",
    "slip.decimetre": "a tenth of a meter miscounted: it would be {would_be}.",
    "slip.arc_for_chord": "the arc length taken for the chord: it would be {would_be}.",
    "slip.tenths_as_inches": "tenths of a foot read as inches: it would be {would_be}.",
    "slip.inches_as_tenths": "inches read as tenths of a foot: it would be {would_be}.",
    "slip.swapped_digits": "two digits swapped: it would be {would_be}.",
    "offset.centre": "The {driven} are {shown} off the drawn line, toward the center, on an arc of their own.",
    "offset.outside": "The {driven} are {shown} off the drawn line, away from the center, on an arc of their own.",
    "driven.pin": "pins",
    "driven.marked": "marked stakes",
    "driven.board": "stakes behind the board",
    "driven.hub": "hubs",
}
