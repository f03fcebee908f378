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
    "step.have_straight": (
        "Find {start}{first_landmark} and the straight that ends there. Mark S on the straight, well back from {start}: "
        "S and {start} show its direction."
    ),
    "step.from_straight": (
        "Run the straight on past {start}, in line with S, for {length0}: mark F. At F square off to the {turn} "
        "(facing away from S) {length1}: set {end}{second_landmark}. Move {end} until {start} to {end} reads {length2}."
    ),
    "step.from_straight_back": (
        "From {start} measure back along the straight, toward S, {length0}: mark F. At F square off to the {turn} "
        "(facing away from S) {length1}: set {end}{second_landmark}. Move {end} until {start} to {end} reads {length2}."
    ),
    "step.have_corner": (
        "Find the corner P where the two straights meet. Mark S on the straight on A's side{first_landmark} and T on the "
        "straight on B's side{second_landmark}. Set each well back from P."
    ),
    "step.from_corner": (
        "From P measure back toward S {length0}: set {start}. From P measure back toward T {length1}: set {end}. Check: "
        "{start} to {end} must read {length2}; if it doesn't, the straights don't meet at the drawing's angle: ask. Stand at {start}, face {end}: P must be on your {hand}, the curve's side; if it "
        "isn't, stop."
    ),
    "step.from_corner_open": (
        "From P measure back toward S {length0}: set {start}. From P measure back toward T {length1}: set {end}. Check: "
        "{start} to {end} must read {length2}; if it doesn't, the straights don't meet at the drawing's angle: ask."
    ),
    "step.offset_away_arc": (
        "{end}: extend the line from {other} past {start} by {length0} and set a mark there. From it square off {length1} "
        "toward the curve's side: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_away_back": (
        "{end}: extend the line from {other} past {start} by {length0} and set a mark there. From it square off {length1} away "
        "from the curve: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_toward_arc": (
        "{end}: from {start} measure {length0} toward {other} and set a mark there. From it square off {length1} toward the "
        "curve's side: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_toward_back": (
        "{end}: from {start} measure {length0} toward {other} and set a mark there. From it square off {length1} away from the "
        "curve: set {end}. {start} to {end} must read {length2}."
    ),
    "step.offset_away": "{end}: extend the line from {other} past {start} by {length0}. Set {end} there.",
    "step.offset_toward": "{end}: from {start} measure {length0} toward {other}. Set {end} there.",
    "step.string": "Stretch the string from {start} to {end}. {told}",
    "step.string_taped": (
        "Stretch the string from {start} to {end} and tape it, level: it must read {length0}. If it doesn't, set both ends again. "
        "{told}"
    ),
    "step.stake_back": (
        "{stake}: string from {start} to {end}. Its midpoint is {length0} from either end. CAREFUL: the string lies outside the "
        "arc here. From the midpoint square off {length1} the OTHER way, to the {hand} (facing {end} from {start}). Drive "
        "{stake}."
    ),
    "step.stake": (
        "{stake}: string from {start} to {end}. Its midpoint is {length0} from either end. There square off {length1} to the "
        "{hand} (facing {end} from {start}). Holding that distance, move {stake} sideways until {start} to {stake} and {stake} "
        "to {end} read the same ({half_chord}). Drive {stake}."
    ),
    "step.got_short": "is at {shown}",
    "step.back_short": "{shown}, the OTHER way ({hand})",
    "step.stake_got": (
        "{stake}: string from {start} to {end}. Its midpoint is {length0} from either end. {stake} should be {wanted} out, to "
        "the {hand}. It is {length1}, which is {off}. The numbers after this one start from where it stands."
    ),
}
