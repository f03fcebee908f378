"""The steps of every method but halving: what differs on a British site."""

MESSAGES = {
    "step.centre_behind": (
        "C, the centre: hold one tape at {start} and one at {end}, and cross them at {length0} each. C is on the "
        "{other_hand}, standing at A and facing B: behind the chord, away from the curve. Drive a pin at C; both "
        "tapes must still read {length0}."
    ),
    "step.centre_inside": (
        "C, the centre: hold one tape at {start} and one at {end}, and cross them at {length0} each. C is on the "
        "{hand}, standing at A and facing B. That is the curve's side: the arc is over a half circle. Drive a pin "
        "at C; both tapes must still read {length0}."
    ),
    "step.centre_half": (
        "C, the centre: the midpoint of the string from {start} to {end}, {length0} from either end. Drive a pin at C."
    ),
    "step.centre_near": (
        "C, the centre: start at the midpoint of the string from {start} to {end}, {length0} from either end. "
        "Square off {length1} to the {other_hand}, standing at A and facing B: away from the curve. Move C "
        "sideways until it is {length2} from both ends. Drive a pin at C."
    ),
    "step.centre_near_inside": (
        "C, the centre: start at the midpoint of the string from {start} to {end}, {length0} from either end. "
        "Square off {length1} to the {hand}, standing at A and facing B: towards the curve. Move C sideways until "
        "it is {length2} from both ends. Drive a pin at C."
    ),
    "step.peg": (
        "{peg}, a pin on the tangent at {start}: on the string from {start} towards {end}, mark {length0}. "
        "There square off {length1} to the {off_hand} (facing {end} from {start}). Drive {peg} and stretch a "
        "string from {start} to it: the curve leaves {start} along it."
    ),
    "step.tangent_offset": (
        "{stake}: string from {start} to {other}, along the tangent. On it mark {length0} from {start}. There "
        "square off {length1} to the {off_hand} (facing {other} from {start}), towards the chord. Drive {stake}."
    ),
    "step.tangent_offset_past": (
        "{stake}: extend the straight from {other} past {start} by {length0}. There square off {length1} to the "
        "{off_hand} (facing away from {other}), towards the chord. Drive {stake}."
    ),
    "step.produce_first": (
        "{stake}: on the tangent from {start} towards {other} mark {length0}. Hold zero at {start} and swing "
        "{length0} until it is {length2} from the mark. Swing to the {swing_hand} (facing the mark from {start}). "
        "Drive {stake}."
    ),
    "step.sight_ahead": (
        "{stake}, deflection {deflection} off the tangent: instrument over {start} (TP), sighted on {end} (IP). "
        "Turn {angle0} to the {turn_hand}; off the long chord it is {off_chord}. {onto} Drive {stake}."
    ),
    "step.sight_back": (
        "{stake}, deflection {deflection} off the tangent: instrument over {start} (TP). Sight back on {end}, "
        "transit, and turn {deflection} to the {deflection_hand}. Without transiting it is {angle0} to the "
        "{turn_hand}; off the long chord it is {off_chord}. {onto} Drive {stake}."
    ),
    "method.centre_unreached.wrong": "Nobody has said that the arc's centre can be reached.",
    "method.ordinates_overhang.remedy": "Use halving, two tapes or a swing from the centre.",
    "method.tangent_overhang.remedy": "Use halving, two tapes or a swing from the centre.",
    "method.angles_turn_back.remedy": "Use halving, two tapes or a swing from the centre.",
}
