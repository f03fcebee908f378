"""The sentences of the construction's steps."""

MESSAGES = {
    "hand.left": "left",
    "hand.right": "right",
    "landmark": " ({landmark})",
    "step.have_ends": (
        "Find the marks {start}{first_landmark} and {end}{second_landmark}. Tape from {start} to {end}, level: it should read "
        "{length0}. If it doesn't, stop and enter what you measured."
    ),
    "step.set_ends": (
        "Neither end is on the ground yet. Set {start}{first_landmark} and {end}{second_landmark}, each from the drawing's "
        "dimensions to two fixed objects. If the drawing has none, ask. Then tape from {start} to {end}, level: it must read "
        "{length0}."
    ),
    "step.have_ends_untaped": (
        "Find the marks {start}{first_landmark} and {end}{second_landmark}. No single pull goes between them here. The next "
        "step proves them."
    ),
    "step.set_ends_untaped": (
        "Neither end is on the ground yet. Set {start}{first_landmark} and {end}{second_landmark}, each from the drawing's "
        "dimensions to two fixed objects. If the drawing has none, ask. No single pull goes between them here. The next step "
        "proves them."
    ),
    "step.prove_two": (
        "Stretch the string from {start} to {end}. Along it, level, set nail {nail} at {length0} from {start}. {nail} "
        "to {end} must read {rest}; both pulls together are {whole}. If it doesn't, stop and enter what both pulls "
        "add up to."
    ),
    "step.prove_parts": (
        "Stretch the string from {start} to {end}. Along it, level, set nails {nail} to {last} every {length0} from "
        "{start}. {last} to {end} must read {rest}; all pulls together are {whole}. If it doesn't, stop and enter "
        "what they add up to."
    ),
    "step.prove_beside": (
        "Prove {start} and {end} from a point {beside}, on the side away from the curve. Cross {length0} from {start} with "
        "{length1} from {end}: set {beside}. From {beside} mark {toward} at {length2} toward {start}, and {other} at {length3} "
        "toward {end}. {toward} to {other} must read {length4}, {part} of {whole}. If it doesn't, stop. Multiply what you "
        "read by {times} and enter that as the measured chord."
    ),
    "step.prove_beside_inside": (
        "Prove {start} and {end} from a point {beside}, on the curve's side. Cross {length0} from {start} with {length1} from "
        "{end}: set {beside}. From {beside} mark {toward} at {length2} toward {start}, and {other} at {length3} toward {end}. "
        "{toward} to {other} must read {length4}, {part} of {whole}. If it doesn't, stop. Multiply what you read by {times} "
        "and enter that as the measured chord."
    ),
    "proof.part_2": "half",
    "proof.part_3": "a third",
    "proof.part_4": "a quarter",
    "step.prove_corner": (
        "Prove the corner. From P mark {toward} at {length0} toward S, and {other} at {length1} toward T. {toward} to {other} "
        "must read {length2}. If it doesn't, the straights don't meet at the drawing's angle: ask."
    ),
    "step.have_straight": (
        "Find {start}{first_landmark}, the PC: the straight ends there and the curve begins. Mark S on the straight, at least {back} "
        "back from {start}: S and {start} show its direction."
    ),
    "step.have_straight_short": (
        "Find {start}{first_landmark}: the straight ends there and the curve begins. Set S where that straight begins, "
        "{length0} back from {start}: S and {start} show its direction."
    ),
    "step.have_arc": (
        "Find {start}{first_landmark} and D, the ends of piece {piece}, an arc. Its tangent at {start} leads into this one. "
        "From {start} measure {length0} along the line to D and set a mark. From it square off {length1} to the {off_hand}, "
        "facing D: set S. Holding that distance, move S until {start} to S reads {length2}. {far_check}"
    ),
    "step.have_arc_past": (
        "Find {start}{first_landmark} and D, the ends of piece {piece}, an arc. Its tangent at {start} leads into this one. "
        "Extend the line from D past {start} by {length0} and set a mark. From it square off {length1} to the {off_hand}, "
        "facing D: set S. Holding that distance, move S until {start} to S reads {length2}. {far_check}"
    ),
    "step.have_arc_square": (
        "Find {start}{first_landmark} and D, the ends of piece {piece}, an arc. Its tangent at {start} leads into this one. "
        "At {start} square off {length0} from the line to D, to the {off_hand}, facing D: set S. {far_check}"
    ),
    "step.far_check": "Check: {last} to S must read {length}. If it doesn't, set S again.",
    # B from the piece before the arc
    "kinked.back": "{end} not set yet? Mark {mark} on straight {piece}, {back} back from {start}.",
    "kinked.whole": "{end} not set yet? Set {mark} where straight {piece} begins, {back} back from {start}.",
    "kinked.begins": "{end} not set yet? Find {mark}, where arc {piece} begins.",
    "kinked.on": (
        "Run the line from {mark} past {start} by {along}. From there square off {off} to the {hand}, your back to "
        "{mark}: {end}."
    ),
    "kinked.behind": (
        "From {start} measure back {along} on the line to {mark}. From there square off {off} to the {hand}, your back to "
        "{mark}: {end}."
    ),
    "kinked.straight": "Run the line from {mark} past {start} by {along}: {end}.",
    "kinked.check": "Check: {mark} to {end} must read {check}.",
    "kinked.short_back": "No {end}? Set {mark} {back} back on straight {piece}.",
    "kinked.short_whole": "No {end}? Set {mark} where straight {piece} begins, {back} back.",
    "kinked.short_begins": "No {end}? Find {mark}, where arc {piece} begins.",
    "kinked.short_on": "Run {along} past {start}. Your back to {mark}, square {hand} {off} to {end}.",
    "kinked.short_behind": "Go {along} from {start} toward {mark}. Your back to {mark}, square {hand} {off} to {end}.",
    "kinked.short_straight": "In line with {mark}, run {along} past {start} to {end}.",
    "kinked.short_check": "{mark}-{end}: {check}.",
    "step.from_straight": (
        "Run the straight on past {start}, in line with S, for {length0}: mark F. At F square off {length1} to the "
        "{turn} (facing away from S): set {end}{second_landmark}, the PT. Holding that distance from F, move {end} until "
        "{start} to {end} reads {length2}."
    ),
    "step.from_straight_back": (
        "From {start} measure back along the straight, toward S, {length0}: mark F. At F square off {length1} to the "
        "{turn} (facing away from S): set {end}{second_landmark}, the PT. Holding that distance from F, move {end} until "
        "{start} to {end} reads {length2}."
    ),
    "step.from_straight_untaped": (
        "Run the straight on past {start}, in line with S, for {length0}: mark F. At F square off {length1} to the "
        "{turn} (facing away from S): set {end}{second_landmark}, the PT. Square it with {square}. The next step "
        "proves it."
    ),
    "step.from_straight_back_untaped": (
        "From {start} measure back along the straight, toward S, {length0}: mark F. At F square off {length1} to the "
        "{turn} (facing away from S): set {end}{second_landmark}, the PT. Square it with {square}. The next step "
        "proves it."
    ),
    "step.have_corner": (
        "Find the corner P, the PI, where the two straights meet. Mark S on the straight on A's side{first_landmark} and T on the "
        "straight on B's side{second_landmark}. Set each at least {back} back from P."
    ),
    "step.corner_hand": "Stand at {start}, face {end}: P must be on your {hand}, the curve's side; if it isn't, stop.",
    "step.from_corner": (
        "From P measure back toward S {length0}: set {start} (PC). From P measure back toward T {length1}: set {end} (PT). Check: "
        "{start} to {end} must read {length2}; if it doesn't, the straights don't meet at the drawing's angle: ask. {corner_hand}"
    ),
    "step.from_corner_untaped": (
        "From P measure back toward S {length0}: set {start} (PC). From P measure back toward T {length1}: set {end} (PT). "
        "{corner_hand}"
    ),
    "step.offset_away_arc": (
        "{end}: extend the line from {other} past {start} by {length0} and set a mark there. From it square off {length1} to "
        "the {off_hand} (facing {other} from {start}), the curve's side: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_away_back": (
        "{end}: extend the line from {other} past {start} by {length0} and set a mark there. From it square off {length1} to "
        "the {off_hand} (facing {other} from {start}), away from the curve: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_toward_arc": (
        "{end}: from {start} measure {length0} toward {other} and set a mark there. From it square off {length1} to the "
        "{off_hand} (facing {other} from {start}), the curve's side: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_toward_back": (
        "{end}: from {start} measure {length0} toward {other} and set a mark there. From it square off {length1} to the "
        "{off_hand} (facing {other} from {start}), away from the curve: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_square_out": (
        "{end}: at {start} square off the straight {length0}, away from the curve's center. Set {end} there."
    ),
    "step.offset_square_in": (
        "{end}: at {start} square off the straight {length0}, toward the curve's center. Set {end} there."
    ),
    "step.offset_toward_near": (
        "{end}: from {start} measure {length0} toward {other} and set a mark there. From it square off {length1} on the side of "
        "{far}: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_toward_far": (
        "{end}: from {start} measure {length0} toward {other} and set a mark there. From it square off {length1} on the side "
        "away from {far}: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_away_near": (
        "{end}: extend the line from {other} past {start} by {length0} and set a mark there. From it square off {length1} on "
        "the side of {far}: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_away_far": (
        "{end}: extend the line from {other} past {start} by {length0} and set a mark there. From it square off {length1} on "
        "the side away from {far}: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_away": "{end}: extend the line from {other} past {start} by {length0}. Set {end} there.",
    "step.offset_toward": "{end}: from {start} measure {length0} toward {other}. Set {end} there.",
    "step.string": "Stretch the string from {start} to {end}. {told}",
    "step.no_string": "{told}",
    "step.ends_taped": (
        "Tape from {start} to {end}, level: it must read {length0}. If it doesn't, set both ends again. {told}"
    ),
    "step.string_up": "Leave the string from {start} to {end} up. {told}",
    "step.string_none": ("No string goes straight from {start} to {end} here. {told}"),
    "step.string_taped": (
        "Stretch the string from {start} to {end} and tape it, level: it must read {length0}. If it doesn't, set both ends again. "
        "{told}"
    ),
    "step.stake_back": (
        "{stake}: string from {start} to {end}. Its midpoint is {length0} from either end. CAREFUL: the string lies outside the "
        "arc here. From the midpoint square off {length1} the OTHER way, to the {hand} (facing {end} from {start}). Drive "
        "{stake}. Tape the {length1} a second time."
    ),
    "step.stake": (
        "{stake}: string from {start} to {end}. Its midpoint is {length0} from either end. There square off {length1} "
        "to the {hand} (facing {end} from {start}). Holding that distance, move {stake} sideways until {start} to "
        "{stake} and {stake} to {end} read the same ({half_chord}). That only squares it: tape the {length1} a second "
        "time. Drive {stake}."
    ),
    "step.stake_crossed": (
        "{stake}: the string's midpoint can't be used here. Cross {length0} from {start} with {length1} from {end}, "
        "on the {cross_hand} (facing {end} from {start}). Drive {stake}, and tape both a second time."
    ),
    "step.got_short": "is at {shown}",
    "step.back_short": "{shown}, the OTHER way ({hand})",
    "step.stands": "{stake} is already set, {off}. The numbers after this one start from where it is.",
    "step.stands_alone": "{stake} is already set, {off}. No other stake's number changes.",
    "step.stands_helper": "{mark} is already set. The numbers after this one start from where it is.",
    "step.stake_got": (
        "{stake}: string from {start} to {end}. Its midpoint is {length0} from either end. {stake} should be {wanted} "
        "out, to the {hand}. It is {length1}, which is {off}. The numbers after this one start from where it is."
    ),
    "step.stake_got_alone": (
        "{stake}: string from {start} to {end}. Its midpoint is {length0} from either end. {stake} should be {wanted} "
        "out, to the {hand}. It is {length1}, which is {off}. No other stake's number changes."
    ),
}
