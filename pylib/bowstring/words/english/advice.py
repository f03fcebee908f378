"""Methods side by side, what is in the way, and the advice."""

MESSAGES = {
    "method.name.centre": "a swing from the center",
    "method.name.halving": "halving",
    "method.name.rule": "the quarter rule",
    "method.name.ordinates": "ordinates from the long chord",
    "method.name.tangent": "offsets from the tangents",
    "method.name.tapes": "two tapes",
    "method.name.produced": "chords produced",
    "method.name.angles": "deflection angles",
    "method.name.coordinates": "coordinates from an instrument",
    "method.parallel": "ordinates from a string parallel to A-B, {size} beyond it toward the curve",
    "method.parallel_behind": "ordinates from a string parallel to A-B, {size} behind it",
    "method.mixed_once": "halving once, then ordinates from each short chord",
    "method.mixed": "{times} rounds of halving, then ordinates from each short chord",
    "method.few_hands": "It takes {hands} people.",
    "block.tape": "The pull from {start} to {end} is {size}; the tape is only {there}.",
    "block.pull": "The tape from {start} to {end} is blocked by {what}.",
    "block.pull_out": "The tape out to {end} is blocked by {what}.",
    "block.string": "The string from {start} to {end} is blocked by {what}.",
    "block.sight": "The sight from {start} to {end} is blocked by {what}.",
    "block.pull_near": "The tape from {start} to {end} passes {gap} from {what}; it needs {clear}.",
    "block.pull_out_near": "The tape out to {end} passes {gap} from {what}; it needs {clear}.",
    "block.string_near": "The string from {start} to {end} passes {gap} from {what}; it needs {clear}.",
    "block.sight_near": "The sight from {start} to {end} passes {gap} from {what}; it needs {clear}.",
    "block.triangle": "At {start} {what} leaves no room for a squaring triangle.",
    "block.triangle_room": "There is no room for a squaring triangle at {start}.",
    "block.feet": "At {start} nobody can stand: {what}.",
    "block.behind": "The line {start} to {end} needs {size} behind the chord; only {there} is clear.",
    "block.inside": "The line {start} to {end} needs {size} inside the curve; only {there} is clear.",
    "block.outside": "The line {start} to {end} needs {size} outside the curve; only {there} is clear.",
    "place.mid": "the midpoint for {stake}",
    "place.foot": "{stake}'s mark on the string",
    "place.par": "{stake}'s mark on the parallel string",
    "place.tan": "{stake}'s mark on the tangent",
    "place.ahead": "the mark ahead for {stake}",
    "advice.take": "Use {method}: {reason}. {miss}{blocked}",
    "advice.miss": "19 times in 20 its worst stake is within {miss}.",
    "advice.miss_holds": "19 times in 20 its worst stake is within {miss}, and {tolerance} is allowed.",
    "advice.miss_over": (
        "19 times in 20 its worst stake is within {miss}. No method here reliably holds your {tolerance}: take more care, and "
        "check every stake."
    ),
    "advice.miss_far": (
        "19 times in 20 its worst stake is within {miss}. No method here comes close to your {tolerance}: ask the "
        "designer or surveyor for other control."
    ),
    "advice.miss_misses": "19 times in 20 its worst stake is within {miss}; {tolerance} is allowed.",
    "advice.fair_holds": (
        "No stake is more than {fair} off the fair curve through its neighbors, and {limit} is allowed."
    ),
    "advice.fair_over": (
        "A stake may be {fair} off the fair curve through its neighbors, and {limit} is allowed. Sight along the stakes, and "
        "check each over its neighbors."
    ),
    "advice.decided_place": "Place on the drawing decided it.",
    "advice.decided_fair": "The fair curve decided it.",
    "advice.only": "it is the only workable method here",
    "advice.plain": "it is the only method here without an instrument or chords produced",
    "advice.fewest": "it needs the fewest readings ({count}) of the {good} most accurate methods",
    "advice.fewest_near": (
        "it needs the fewest readings ({count}) of the {good} methods that come nearest to both limits"
    ),
    "advice.fewest_hold": "it needs the fewest readings ({count}) of the {good} methods that hold both limits",
    "advice.truest": "it is the most accurate method that works here",
    "advice.truest_near": "it comes nearest to both limits, place and fair curve",
    "advice.truest_hold": "it is the one that holds both limits, place and fair curve",
    "advice.instead": "Quicker, but not possible here: {method}. {why}",
    "advice.none": (
        "No method works on this ground, and no single change would fix that. Ask the designer or surveyor for other "
        "control."
    ),
    "advice.none_but": (
        "No method works as things are. Any one change would fix that: {changes}.{alone} Otherwise ask the designer "
        "or surveyor for other control."
    ),
    "advice.none_string": "{why} Instead: {string}.{others} Otherwise ask the designer or surveyor for other control.",
    "advice.others": "Or: {changes}.",
    "advice.none_alone": (
        " Or say that the arc's center can be reached: one person can swing the arc from a pin there. It is {size} from the curve."
    ),
    "advice.none_service": (
        "No method works on this ground. What is in the way may be a service: {what}. Don't move it. Ask the designer or "
        "surveyor for other control."
    ),
    "advice.or": "; or ",
    "advice.change_tape": "a tape of {size}, for {method}",
    "advice.change_obstacle": "{what} cleared (ask first), for {method}",
    "advice.change_string": "{method}",
    "advice.string_toward": "String {size} off A-B, on the curve's side",
    "advice.string_behind": "String {size} off A-B, behind it",
    "advice.change_start_ends": "both ends already marked on the ground, for {method}",
    "advice.change_start_corner": "both ends set from the corner of the two straights, for {method}",
    "advice.change_start_one-end": "the far end set from one end and its straight, for {method}",
    "advice.change_levels": "stakes {size} apart, for {method}",
    "advice.change_hands": "{size} people, for {method}",
    "advice.change_room_behind": "room of {size} behind the chord, for {method}",
    "advice.change_room_inside": "room of {size} inside the curve, for {method}",
    "advice.change_room_outside": "room of {size} outside the curve, for {method}",
}
