"""The sentences of the steps of every method but halving, and why a method is none for an arc."""

MESSAGES = {
    "step.centre_behind": (
        "C, the centre: hold one tape at {start} and one at {end}, and cross them at {length0} on either, on the {other_hand} of "
        "somebody at A who faces B: behind the chord, away from the curve. Drive a pin at C; both tapes must still read {length0}."
    ),
    "step.centre_inside": (
        "C, the centre: hold one tape at {start} and one at {end}, and cross them at {length0} on either, on the {hand} of somebody "
        "at A who faces B: on the curve's own side, since it turns more than half round. Drive a pin at C; both tapes must still "
        "read {length0}."
    ),
    "step.centre_half": (
        "C, the centre: the middle of the string from {start} to {end}, {length0} from either end. Drive a pin at C."
    ),
    "step.centre_near": (
        "C, the centre: from the middle of the string from {start} to {end}, {length0} from either end, square off to the "
        "{other_hand} of somebody at A who faces B, away from the curve, {length1}. Slide it until both ends read {length2} to it. "
        "Drive a pin at C."
    ),
    "step.centre_near_inside": (
        "C, the centre: from the middle of the string from {start} to {end}, {length0} from either end, square off to the {hand} of "
        "somebody at A who faces B, toward the curve, {length1}. Slide it until both ends read {length2} to it. Drive a pin at C."
    ),
    "step.swing": (
        "{stake}: hook the tape on C and hold it at {length0}. Swing it until {other} to {stake} measures {length1}, on the B "
        "side. Drive {stake}."
    ),
    "step.ordinate": (
        "{stake}: on the string from {start} toward {end} mark {length0}. There square off to the {hand} (facing B from A) {length1}. "
        "Drive {stake}."
    ),
    "step.cross": (
        "{stake}: cross {length0} from {start} with {length1} from {end}, on the {cross_hand} (facing {end} from {start}). Drive {stake}."
    ),
    "step.polar": (
        "{stake}: instrument over {start}, sighted on {end}: turn {angle0} to the {turn_hand}. On that line tape {length0}. Drive {stake}."
    ),
    "step.peg": (
        "{peg}, a peg on the tangent at {start}: along the string from {start} toward {end} mark {length0}, there square off toward "
        "the curve's side {length1}. Drive {peg} and stretch a string from {start} to it: the curve leaves {start} along it."
    ),
    "step.peg_back": (
        "{peg}, a peg on the tangent at {start}: carry the string from {end} on past {start} for {length0}, there square off toward "
        "the curve's side {length1}. Drive {peg} and stretch a string from {start} to it: the curve leaves {start} along it."
    ),
    "step.peg_square": (
        "{peg}, a peg on the tangent at {start}: at {start} square off the string to {end}, toward the curve's side, {length0}. "
        "Drive {peg} and stretch a string from {start} to it: the curve leaves {start} along it."
    ),
    "step.tangent_offset": (
        "{stake}: on the tangent from {start} toward {other} mark {length0}. There square off to the {off_hand} (facing {other} from "
        "{start}), toward the chord, {length1}. Drive {stake}."
    ),
    "step.tangent_offset_past": (
        "{stake}: carry the straight from {other} on past {start} for {length0}. There square off to the {off_hand} (facing away from {other}), "
        "toward the chord, {length1}. Drive {stake}."
    ),
    "step.produce_first": (
        "{stake}: on the tangent from {start} toward {other} mark {length0}. Hold zero at {start} and swing {length0} until it "
        "is {length2} from the mark, toward the chord. Drive {stake}."
    ),
    "step.produce_straight": (
        "{stake}: carry the straight from {other} on past {start} for {length0} and mark it. Hold zero at {start} and swing "
        "{length0} until it is {length2} from the mark, toward the curve. Drive {stake}."
    ),
    "step.produce": (
        "{stake}: carry the line from {other} through {start} on for {length0} and mark it. Hold zero at {start} and swing "
        "{length1} until it is {length2} from the mark, toward the chord. Drive {stake}."
    ),
    "step.sight": (
        "{stake}: set the instrument over {start} and sight {end}. Turn {angle0} to the {hand}. Measure {length0} from {other} "
        "to that line, taking the crossing farther from {start}. Drive {stake}."
    ),
    "method.centre_unreached.wrong": "Nobody has said that the arc's center can be reached.",
    "method.centre_unreached.remedy": "Say in the form that it can, or choose another method.",
    "method.ordinates_overhang.wrong": "This arc turns more than half round, so it overhangs its chord: no ordinate reaches all of it.",
    "method.ordinates_overhang.remedy": "Use halving, two tapes or a swing from the centre.",
    "method.tangent_overhang.wrong": "This arc turns more than half round, so it bends back past its tangents.",
    "method.tangent_overhang.remedy": "Use halving, two tapes or a swing from the centre.",
    "method.tangent_overhang_one.wrong": "This arc turns more than a quarter round, so it bends back past one end's tangent.",
    "method.tangent_overhang_one.remedy": "Take offsets from the tangents at both ends.",
    "method.angles_turn_back.wrong": (
        "Toward the end of this arc the gap from the stake before turns back along the line of sight, and can't tell the stake."
    ),
    "method.angles_turn_back.remedy": "Use halving, two tapes or a swing from the centre.",
    "method.chain_long.wrong": "So many stakes, each set from the one before it, would end nowhere near their places.",
    "method.chain_long.remedy": "Ask for wider gaps, or use another method.",
    "method.too_many.wrong": "It would take more stakes than anybody drives to keep the gaps that narrow.",
    "method.too_many.remedy": "Ask for wider gaps, or use another method.",
    "method.too_small.wrong": "Its steps are smaller here than the marks of the tape: two marks would come to one place.",
    "method.too_small.remedy": "Hold to a finer mark, drive fewer stakes, or use another method.",
    "method.marks_are_one.wrong": "The two marks that it works from are one and the same place.",
    "method.marks_are_one.remedy": "Name two marks that stand apart.",
    "method.marks_in_line.wrong": "The two marks that the tapes are held at lie in line with the arc's middle: the tapes don't cross.",
    "method.marks_in_line.remedy": "Hold the tapes at marks that stand off to the side.",
    "method.control_on_stake.wrong": "The control mark under the instrument stands where a stake belongs.",
    "method.control_on_stake.remedy": "Set the instrument up on the other mark.",
}
