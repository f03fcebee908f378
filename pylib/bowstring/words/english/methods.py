"""The sentences of the steps of every method but halving, and why a method is none for an arc."""

MESSAGES = {
    "step.centre_behind": (
        "C, the center: hold one tape at {start} and one at {end}, and cross them at {length0} each. C is on the {other_hand}, "
        "standing at A and facing B: behind the chord, away from the curve. Drive a pin at C; both tapes must still read "
        "{length0}."
    ),
    "step.centre_inside": (
        "C, the center: hold one tape at {start} and one at {end}, and cross them at {length0} each. C is on the {hand}, "
        "standing at A and facing B. That is the curve's side: the arc is over a half circle. Drive a pin at C; both tapes must "
        "still read {length0}."
    ),
    "step.centre_half": (
        "C, the center: the midpoint of the string from {start} to {end}, {length0} from either end. Drive a pin at C."
    ),
    "step.centre_near": (
        "C, the center: start at the midpoint of the string from {start} to {end}, {length0} from either end. Square off "
        "{length1} to the {other_hand}, standing at A and facing B: away from the curve. Move C sideways until it is {length2} "
        "from both ends. Drive a pin at C."
    ),
    "step.centre_near_inside": (
        "C, the center: start at the midpoint of the string from {start} to {end}, {length0} from either end. Square off "
        "{length1} to the {hand}, standing at A and facing B: toward the curve. Move C sideways until it is {length2} from both "
        "ends. Drive a pin at C."
    ),
    "step.swing": (
        "{stake}: hook the tape on C and hold it at {length0}. Swing it to the {swing_hand} (facing {other} from C) "
        "until {other} to {stake} measures {length1}. Drive {stake}."
    ),
    "step.swing_beside": (
        "{stake}: hold the tape on C, where its pin is now, at {length0}. Swing it to the {swing_hand} (facing "
        "{other} from C) until {other} to {stake} measures {length1}. Drive {stake}."
    ),
    "step.ordinate": (
        "{stake}: string from {first} to {last}. On it mark {length0} from {start}. There square off {length1} to the {off_hand} "
        "(facing {last} from {first}). Drive {stake}."
    ),
    "step.cross": (
        "{stake}: cross {length0} from {start} with {length1} from {end}, on the {cross_hand} (facing {end} from {start}). Drive {stake}."
    ),
    "step.polar": (
        "{stake}: instrument over {start}, sighted on {end}. Turn {angle0} to the {turn_hand}. On that line tape {length0}. "
        "Drive {stake}."
    ),
    "step.peg": (
        "{peg}, a pin on the tangent at {start}: on the string from {start} toward {end}, mark {length0}. There "
        "square off {length1} to the {off_hand} (facing {end} from {start}). Drive {peg} and stretch a string from "
        "{start} to it: the curve leaves {start} along it."
    ),
    "step.peg_back": (
        "{peg}, a pin on the tangent at {start}: extend the string from {end} past {start} by {length0}. There square "
        "off {length1} to the {off_hand} (facing {end} from {start}). Drive {peg} and stretch a string from {start} "
        "to it: the curve leaves {start} along it."
    ),
    "step.peg_square": (
        "{peg}, a pin on the tangent at {start}: at {start}, square off {length0} from the string to {end}. Go to the "
        "{off_hand} (facing {end} from {start}). Drive {peg} and stretch a string from {start} to it: the curve "
        "leaves {start} along it."
    ),
    "step.tangent_offset": (
        "{stake}: string from {start} to {other}, along the tangent. On it mark {length0} from {start}. There square off "
        "{length1} to the {off_hand} (facing {other} from {start}), toward the chord. Drive {stake}."
    ),
    "step.tangent_offset_past": (
        "{stake}: extend the straight from {other} past {start} by {length0}. There square off {length1} to the {off_hand} "
        "(facing away from {other}), toward the chord. Drive {stake}."
    ),
    "step.tangent_offset_out": (
        "{stake}: string from {start} to {other}. On it mark {length0} from {start}. There square off {length1} to the "
        "{off_hand} (facing {other} from {start}), away from the chord. Drive {stake}."
    ),
    "step.produce_first": (
        "{stake}: on the tangent from {start} toward {other} mark {length0}. Hold zero at {start} and swing {length0} until it "
        "is {length2} from the mark. Swing to the {swing_hand} (facing the mark from {start}). Drive {stake}."
    ),
    "step.produce_straight": (
        "{stake}: extend the straight from {other} past {start} by {length0} and mark it. Hold zero at {start} and swing "
        "{length0} until it is {length2} from the mark. Swing to the {swing_hand} (facing the mark from {start}). Drive {stake}."
    ),
    "step.produce": (
        "{stake}: extend the line from {other} past {start} by {length0} and mark it. Hold zero at {start} and swing "
        "{length1} until it is {length2} from the mark. Swing to the {swing_hand} (facing the mark from {start}). "
        "Drive {stake}."
    ),
    "step.sight": (
        "{stake}, deflection {deflection} off the tangent: instrument over {start}, sighted on {end}. Turn {angle0} to the "
        "{turn_hand}, off the long chord. {onto} Drive {stake}."
    ),
    "step.sight_ahead": (
        "{stake}, deflection {deflection} off the tangent: instrument over {start} (PC), sighted on {end} (PI). Turn {angle0} "
        "to the {turn_hand}; off the long chord it is {off_chord}. {onto} Drive {stake}."
    ),
    "step.sight_back": (
        "{stake}, deflection {deflection} off the tangent: instrument over {start} (PC). Sight back on {end}, plunge, and turn "
        "{deflection} to the {deflection_hand}. Without plunging it is {angle0} to the {turn_hand}; off the long chord it is "
        "{off_chord}. {onto} Drive {stake}."
    ),
    "step.onto_first": "Measure {length} along that line.",
    "step.onto_next": "Measure {length} from {other} to that line, taking the crossing farther from {start}.",
    "method.centre_unreached.wrong": "Nobody has said that the arc's center can be reached.",
    "method.centre_unreached.remedy": "Say in the form that it can, or choose another method.",
    "method.ordinates_overhang.wrong": (
        "This arc turns more than half a circle, so it overhangs its chord: no ordinate reaches all of it."
    ),
    "method.ordinates_overhang.remedy": "Use halving, two tapes or a swing from the center.",
    "method.tangent_overhang.wrong": "This arc turns more than half a circle, so it bends back past its tangents.",
    "method.tangent_overhang.remedy": "Use halving, two tapes or a swing from the center.",
    "method.tangent_overhang_one.wrong": (
        "This arc turns more than a quarter circle, so it bends back past one end's tangent."
    ),
    "method.tangent_overhang_one.remedy": "Take offsets from the tangents at both ends.",
    "method.angles_turn_back.wrong": (
        "Near the end of this arc the gap runs back along the sight line, so it can't fix the stake."
    ),
    "method.angles_turn_back.remedy": "Use halving, two tapes or a swing from the center.",
    "method.chain_long.wrong": "With this many stakes, each set from the one before, errors would build up too far.",
    "method.chain_long.remedy": "Use a wider spacing, or another method.",
    "method.too_many.wrong": "Gaps that narrow would take more stakes than anyone drives.",
    "method.too_many.remedy": "Use a wider spacing, or another method.",
    "method.too_small.wrong": "Its steps are smaller here than the tape's marks: two points would fall in one place.",
    "method.too_small.remedy": "Read to a finer mark, drive fewer stakes, or use another method.",
    "method.marks_are_one.wrong": "The two points it works from are in the same place.",
    "method.marks_are_one.remedy": "Name two points that are apart.",
    "method.marks_in_line.wrong": "The two tape points line up with the middle of the arc: the tapes don't cross.",
    "method.marks_in_line.remedy": "Hold the tapes at points off to the side.",
    "method.control_on_stake.wrong": "The control point under the instrument is where a stake belongs.",
    "method.control_on_stake.remedy": "Set up on the other point.",
}
