"""The sentences of the construction's steps: what differs on a British site."""

MESSAGES = {
    "step.prove_beside": (
        "Prove {start} and {end} from a point {beside}, on the side away from the curve. Cross {length0} from "
        "{start} with {length1} from {end}: set {beside}. From {beside} mark {toward} at {length2} towards "
        "{start}, and {other} at {length3} towards {end}. {toward} to {other} must read {length4}, {part} of "
        "{whole}. If it doesn't, stop. Multiply what you read by {times} and enter that as the measured chord."
    ),
    "step.prove_beside_inside": (
        "Prove {start} and {end} from a point {beside}, on the curve's side. Cross {length0} from {start} with "
        "{length1} from {end}: set {beside}. From {beside} mark {toward} at {length2} towards {start}, and {other} "
        "at {length3} towards {end}. {toward} to {other} must read {length4}, {part} of {whole}. If it doesn't, "
        "stop. Multiply what you read by {times} and enter that as the measured chord."
    ),
    "step.prove_corner": (
        "Prove the corner. From P mark {toward} at {length0} towards S, and {other} at {length1} towards T. "
        "{toward} to {other} must read {length2}. If it doesn't, the straights don't meet at the drawing's angle: "
        "ask."
    ),
    "step.have_straight": (
        "Find {start}{first_landmark}, the tangent point (TP): the straight ends there and the curve begins. "
        "Mark S on the straight, at least {back} back from {start}: S and {start} show its direction."
    ),
    "kinked.short_behind": "Go {along} from {start} towards {mark}. Your back to {mark}, square {hand} {off} to {end}.",
    "step.from_straight": (
        "Run the straight on past {start}, in line with S, for {length0}: mark F. At F square off {length1} to "
        "the {turn} (facing away from S): set {end}{second_landmark}, the other TP. Holding that distance from "
        "F, move {end} until {start} to {end} reads {length2}."
    ),
    "step.from_straight_back": (
        "From {start} measure back along the straight, towards S, {length0}: mark F. At F square off {length1} "
        "to the {turn} (facing away from S): set {end}{second_landmark}, the other TP. Holding that distance "
        "from F, move {end} until {start} to {end} reads {length2}."
    ),
    "step.from_straight_untaped": (
        "Run the straight on past {start}, in line with S, for {length0}: mark F. At F square off {length1} to "
        "the {turn} (facing away from S): set {end}{second_landmark}, the other TP. Square it with {square}. The "
        "next step proves it."
    ),
    "step.from_straight_back_untaped": (
        "From {start} measure back along the straight, towards S, {length0}: mark F. At F square off {length1} "
        "to the {turn} (facing away from S): set {end}{second_landmark}, the other TP. Square it with {square}. "
        "The next step proves it."
    ),
    "step.have_corner": (
        "Find the corner P, the intersection point (IP), where the two straights meet. Mark S on the straight on "
        "A's side{first_landmark} and T on the straight on B's side{second_landmark}. Set each at least {back} "
        "back from P."
    ),
    "step.from_corner": (
        "From P measure back towards S {length0}: set {start} (TP). From P measure back towards T {length1}: set "
        "{end} (TP). Check: {start} to {end} must read {length2}; if it doesn't, the straights don't meet at the "
        "drawing's angle: ask. {corner_hand}"
    ),
    "step.from_corner_untaped": (
        "From P measure back towards S {length0}: set {start} (TP). From P measure back towards T {length1}: set "
        "{end} (TP). {corner_hand}"
    ),
    "step.offset_toward_arc": (
        "{end}: from {start} measure {length0} towards {other} and set a mark there. From it square off {length1} "
        "to the {off_hand} (facing {other} from {start}), the curve's side: set {end}. {start} to {end} must read "
        "{length2}."
    ),
    "step.offset_toward_back": (
        "{end}: from {start} measure {length0} towards {other} and set a mark there. From it square off {length1} "
        "to the {off_hand} (facing {other} from {start}), away from the curve: set {end}. {start} to {end} must "
        "read {length2}."
    ),
    "step.offset_square_out": (
        "{end}: at {start} square off the straight {length0}, away from the curve's centre. Set {end} there."
    ),
    "step.offset_square_in": (
        "{end}: at {start} square off the straight {length0}, towards the curve's centre. Set {end} there."
    ),
    "step.offset_toward_near": (
        "{end}: from {start} measure {length0} towards {other} and set a mark there. From it square off {length1} "
        "on the side of {far}: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_toward_far": (
        "{end}: from {start} measure {length0} towards {other} and set a mark there. From it square off {length1} "
        "on the side away from {far}: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_toward": "{end}: from {start} measure {length0} towards {other}. Set {end} there.",
}
