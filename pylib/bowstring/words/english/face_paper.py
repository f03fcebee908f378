"""The sheet of paper that goes along, front and back, and the terminal's short sheet."""

MESSAGES = {
    "paper.front": "FRONT",
    "paper.back": "BACK",
    "paper.more": "STAKES, page {number}",
    "paper.one_sheet": "FRONT, 1 sheet",
    "paper.turn_over": "Turn over: cautions, as-built",
    "paper.turn_over_stopped": "Turn over: cautions, notes",
    "paper.built_title": "{title}: as built",
    "paper.of": "{title}, {date}",
    "paper.measure": "{name} {shown}",
    "paper.arc": "arc",
    # where the stakes stand off the drawing's line: both, each by its name
    "paper.stakes_measure": "Stakes' line: {measure}",
    "paper.drawing_face": "Drawing: R {radius} to the FACE",
    "paper.drawing_outside": "Drawing: R {radius} to the OUTER FACE",
    "paper.drawing_inside": "Drawing: R {radius} to the INNER FACE",
    "paper.drawing_back": "Drawing: R {radius} to the BACK",
    "paper.drawing_centre": "Drawing: R {radius} to the CENTERLINE",
    "paper.drawing_flow line": "Drawing: R {radius} to the FLOW LINE",
    "paper.drawing_lip": "Drawing: R {radius} to the LIP",
    "paper.drawing_unsure": "Drawing: R {radius}",
    # which line, and what stands on it
    "paper.drawing_edge": "Drawing: R {radius} to the EDGE",
    "paper.line_edge": "Drawn to the EDGE of the concrete.",
    "paper.line_face": "Drawn to the FACE of the concrete.",
    "paper.line_back": "Drawn to the BACK.",
    "paper.line_centre": "Drawn to the CENTERLINE.",
    "paper.line_flow line": "Drawn to the FLOW LINE.",
    "paper.line_lip": "Drawn to the LIP.",
    "paper.line_unsure": "Which line is drawn? ASK.",
    "paper.off_outside": "Stakes are {shown} OUTSIDE the drawing's line.",
    "paper.off_centre": "Stakes are {shown} INSIDE the drawing's line.",
    # the hand
    "paper.stand": "Stand at {first}, face {second}. The curve is on your",
    "paper.stand_unknown": "Stand at {first}, face {second}. On which hand is the curve?",
    "paper.end": "{name} ({landmark})",
    "paper.end_off": "{name} (off {landmark})",
    "paper.seen": "seen on the ground",
    "paper.turns": "turns {turn}",
    "paper.sign_hand": "Where the curve lies",
    "paper.sign_line": "Which point is on the line",
    "paper.hand_unknown": "ASK",
    "paper.left": "LEFT",
    "paper.right": "RIGHT",
    # before the first stake
    "paper.services": "Utilities located? Call 811 (US) days ahead. Ticket",
    "paper.ticket": "Utilities located. Ticket {ticket}.",
    "paper.called": "called {date}",
    "paper.services_short": "Utilities located, marks in? Call 811 (US) days ahead; write down the ticket.",
    "paper.marks_in": "marks in",
    "paper.ties": "Ties, level.",
    "paper.tie": "{end}: {ties}.",
    "paper.tie_one": "{to} {shown}",
    "paper.first.have_ends": "Tape {start} to {end} twice, level: {m0}. If not, STOP.",
    "paper.first.set_ends": (
        "Set {start} and {end} from the drawing's dimensions. Tape twice, level: {m0}. If not, STOP."
    ),
    "paper.first.have_ends_untaped": "Find {start} and {end}. No single pull joins them.",
    "paper.first.set_ends_untaped": "Set {start} and {end} from the drawing's dimensions. No single pull joins them.",
    "paper.first.prove_two": (
        "On string {start} to {end} set nail {nail} at {m0}. {nail} to {end} must read {rest}. If not, STOP."
    ),
    "paper.first.prove_parts": (
        "On string {start} to {end} set nails {nail} to {last} every {m0} from {start}. {last} to {end} must read "
        "{rest}. If not, STOP."
    ),
    "paper.first.prove_beside": (
        "Away from the curve cross {m0} from {start}, {m1} from {end}: {beside}. Mark {toward} at {m2} toward {start}, {other} at "
        "{m3} toward {end}. {toward} to {other} must read {m4}. If not, STOP."
    ),
    "paper.first.prove_beside_inside": (
        "On the curve's side cross {m0} from {start}, {m1} from {end}: {beside}. Mark {toward} at {m2} toward {start}, {other} at "
        "{m3} toward {end}. {toward} to {other} must read {m4}. If not, STOP."
    ),
    "paper.first.prove_corner": (
        "From P mark {toward} at {m0} toward S, {other} at {m1} toward T. {toward} to {other} must read {m2}. If not, STOP."
    ),
    "paper.first.have_straight": "Find {start} (PC). Mark S on the straight, at least {back} back.",
    "paper.first.have_straight_short": "Find {start}, where the straight ends. S where it begins, {m0} back.",
    "paper.first.have_arc": (
        "{start} and D: ends of piece {piece}. From {start} on the line to D {m0}, square off {m1} {bend_hand}, facing D: S. "
        "{start} to S must read {m2}, D to S {m3}."
    ),
    "paper.first.have_arc_past": (
        "{start} and D: ends of piece {piece}. From D past {start} by {m0}, square off {m1} {bend_hand}, facing D: S. "
        "{start} to S must read {m2}, D to S {m3}."
    ),
    "paper.first.have_arc_square": (
        "{start} and D: ends of piece {piece}. At {start} square off {m0} from the line to D, {bend_hand}, facing D: S. "
        "D to S must read {m1}."
    ),
    "paper.first.from_straight": (
        "Past {start}, in line with S, {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (PT). {start} to {end} must "
        "read {m2}."
    ),
    "paper.first.from_straight_back": (
        "From {start} back toward S {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (PT). {start} to {end} must "
        "read {m2}."
    ),
    "paper.first.from_straight_untaped": (
        "Past {start}, in line with S, {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (PT)."
    ),
    "paper.first.from_straight_back_untaped": (
        "From {start} back toward S {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (PT)."
    ),
    "paper.first.have_corner": "Find corner P (PI). Mark S on A's straight, T on B's, at least {back} back.",
    "paper.first.from_corner": (
        "From P toward S {m0}: {start} (PC). Toward T {m1}: {end} (PT). {start} to {end} must read {m2}. If not, "
        "STOP. At {start}, facing {end}, P is on your {hand}."
    ),
    "paper.first.from_corner_untaped": (
        "From P toward S {m0}: {start} (PC). Toward T {m1}: {end} (PT). At {start}, facing {end}, P is on your {hand}."
    ),
    "paper.first.offset_away_arc": (
        "{end}: from {other} past {start} by {m0}, square off {m1} toward the curve. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_away_back": (
        "{end}: from {other} past {start} by {m0}, square off {m1} away from the curve. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_toward_arc": (
        "{end}: from {start} toward {other} {m0}, square off {m1} toward the curve. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_toward_back": (
        "{end}: from {start} toward {other} {m0}, square off {m1} away from the curve. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_square_out": "{end}: at {start} square off the straight {m0}, away from the curve's center.",
    "paper.first.offset_square_in": "{end}: at {start} square off the straight {m0}, toward the curve's center.",
    "paper.first.offset_toward_near": (
        "{end}: from {start} toward {other} {m0}, square off {m1} on {far}'s side. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_toward_far": (
        "{end}: from {start} toward {other} {m0}, square off {m1} away from {far}. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_away_near": (
        "{end}: from {other} past {start} by {m0}, square off {m1} on {far}'s side. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_away_far": (
        "{end}: from {other} past {start} by {m0}, square off {m1} away from {far}. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_away": "{end}: from {other} past {start} by {m0}.",
    "paper.first.offset_toward": "{end}: from {start} toward {other} {m0}.",
    "paper.first.string": "String {start} to {end}, tight. Know the tape's zero.",
    "paper.first.string_up": "Leave string {start} to {end} up. Know the tape's zero.",
    "paper.first.string_none": "No string goes straight from {start} to {end}.",
    "paper.first.no_string_yet": "No string {start} to {end} yet: the forms square off it.",
    "paper.first.no_string": "No string {start} to {end} is needed.",
    "paper.first.ends_taped": "Tape {start} to {end}, level: {m0}. If not, set both again.",
    "paper.first.string_taped": "String {start} to {end}, tight. It must read {m0}. If not, set both again.",
    "paper.first.string_middle": "Mark the string's midpoint, {m0} from either end. Zero the tape there.",
    "paper.first.parallel_crossed_curve": "{peg}: cross {m0} from {start}, {m1} from {end}, toward the curve.",
    "paper.first.parallel_crossed_behind": "{peg}: cross {m0} from {start}, {m1} from {end}, away from the curve.",
    "paper.first.parallel_squared_curve": "{peg}: at {start} square off {m0}, toward the curve.",
    "paper.first.parallel_squared_behind": "{peg}: at {start} square off {m0}, away from the curve.",
    "paper.first.parallel_crossed": (
        "{start} to {end} must read {m0}, and A to {end} the same as B to {start}. String {start} to {end}."
    ),
    "paper.first.parallel_squared": (
        "{start} to {end} must read {m0}. If not, square both again. String {start} to {end}."
    ),
    "paper.first.parallel_leaning": (
        "String {start} to {end}; {seen} on it, {m0} from {start}. {eye} to {seen} must read {m1}."
    ),
    "paper.first.parallel_strung": "String {start} to {end}. Square each corner twice.",
    "paper.first.peg": (
        "Pin {peg}: from {start} toward {end} {m0}, square off {m1} toward the curve. String {start} to {peg}."
    ),
    "paper.first.peg_back": (
        "Pin {peg}: from {end} past {start} by {m0}, square off {m1} toward the curve. String {start} to {peg}."
    ),
    "paper.first.peg_square": "Pin {peg}: at {start} square off {m0} toward the curve. String {start} to {peg}.",
    "paper.first.centre_behind": (
        "C, the center: cross {m0} from {start} and {end}, AWAY from the curve ({away}). Both tapes must still read "
        "that."
    ),
    "paper.first.centre_inside": (
        "C, the center: cross {m0} from {start} and {end}, on the curve's side ({hand}). Both tapes must still read "
        "that."
    ),
    "paper.first.centre_half": "C, the center: the string's midpoint, {m0} from either end.",
    "paper.first.centre_near": (
        "C, the center: from the string's midpoint, {m0}, square off {m1} AWAY from the curve ({away}). C to {start} "
        "and C to {end} must each read {m2}."
    ),
    "paper.first.centre_near_inside": (
        "C, the center: from the string's midpoint, {m0}, square off {m1} toward the curve ({hand}). C to {start} and "
        "C to {end} must each read {m2}."
    ),
    # how each row of a table goes
    "paper.how.stake": "Square when both short chords match. Tape the square-off again.",
    "paper.how.stake_crossed": "Cross both short chords, {hand}, facing along the string from A. Tape both again.",
    "paper.how.ordinate": "Mark along the string. There square off {hand}, facing as from A to B.",
    "paper.how.ordinate_mid": "Mark along the string from its midpoint. There square off {hand}, facing B from A.",
    "paper.how.parallel": "Mark along the parallel string. There square off as the row says.",
    "paper.and": " and ",
    "paper.how.tangent_offset": "String {strings}, tight. Mark along, facing as you mark.",
    "paper.how.cross": "Cross both tapes, {hand}, facing {end} from {start}.",
    "paper.how.polar": "Instrument over {start}, sighted on {end}. Turn {hand}, then tape.",
    "paper.how.sight": (
        "Instrument over {start}, sighted on {end}. Turn {hand} off the long chord. Tape the gap onto that line."
    ),
    "paper.how.sight_ahead": (
        "Instrument over {start}, sighted on {end}. Turn the deflection {hand}. Tape the gap onto that line."
    ),
    "paper.how.sight_back": (
        "Instrument over {start}, sighted back on {end}. Plunge, turn the deflection {hand}. Tape the gap onto that "
        "line."
    ),
    "paper.how.swing": "Hook on C. Swing {hand}, facing the last stake, until both tapes read as the row says.",
    "paper.how.produce": "Carry the line on and mark it. Hold zero at the last stake, swing {hand}, facing the mark.",
    "paper.each_hand": "as the row says",
    "paper.off_string": "{string} (off {hand})",
    "paper.head_hand": "{head}, {hand}",
    "paper.cross_both": "cross {shown}",
    "paper.cross_two": "cross {first}, {second}",
    "paper.none": "none",
    "paper.slope": "{level} (slope {slope})",
    "paper.done": "done",
    "paper.goes_on": "Stakes go on: page {page}.",
    "paper.check_out": "{what} reads {shown}, must be {must}. Settle it before anybody builds.",
    "paper.checks_out": "{count} checks are OUT. Settle them before anybody builds.",
    "paper.apart_out": "The diagonals differ by {shown}, {limit} allowed. Square the sides before anybody builds.",
    "paper.no_check_read": "No check read. Tape the checks before anybody builds.",
    "paper.no_stake_check_read": "No check of the stakes read. Tape the checks before anybody builds.",
    "paper.stands_off": "{stake} stands {shown}. Move it, or ask.",
    "paper.stand_off": "{stakes} stand off the arc. Move them, or ask.",
    "paper.stakes_count": "{count} stakes",
    "paper.some_rows": "The first {shown} of {count} stakes.",
    # checks
    "paper.checks": "Checks: no step used these",
    "paper.must_read": "must read",
    "paper.may_be_out": "may be out",
    "paper.you_read": "you read",
    "paper.in": "in",
    "paper.check.alternate": "String {string}: midpoint to {stake}",
    "paper.check.alternate_inside": "String {string}: midpoint to {stake}, INSIDE the string",
    "paper.check.ordinate": "{stake} off A-B, at {along} from A",
    "paper.check.ordinate_inside": "{stake} off A-B, at {along} from A, AWAY from the curve",
    "paper.check.line": "{start} to {end}",
    "paper.check.closing": "Last gap, {start} to {end}",
    "paper.no_check": "No check can judge here. Tape every stake again from A and B.",
    "paper.no_check_left": "Every distance here is read by a step. Tape each number twice.",
    "paper.no_check_tolerance": "No check catches a miss within the tolerance. Use a finer tape.",
    # the end
    "paper.spring": "Spring the board. Carry it past each clear end. Fix one end first; stand clear.",
    "paper.hubs": "Read each tack once more. If it's off, move the tack, not the hub.",
    "paper.back_stick": "Cut a stick {shown} long. Swing it from each stake back to the line.",
    "paper.within": "Within {tolerance}; numbers to {mark}. Out by more: find out why.",
    "paper.to_mark": "Numbers to {mark}. A check out by more than it may be: find out why.",
    # a stop
    "paper.stop": "STOP",
    "paper.stop_do": "Build nothing from this. It gives no numbers until this is settled:",
    "paper.stop_take": "{method}: use that here, and print again.",
    "paper.stop_asked": "asked (name)",
    "paper.stop_answer": "the answer",
    # the back
    "paper.built_must": "must be, on string A to B",
    "paper.built_is": "as built",
    "paper.built_grade": "grade",
    "paper.built_drawing": "on the drawing",
    "paper.stake": "stake",
    "paper.along": "along",
    "paper.square_off": "square off",
    "paper.off_by": "off by",
    "paper.off_out": "{off} outside",
    "paper.off_in": "{off} inside",
    "paper.off_on": "none",
    "paper.stake_top": "stake top",
    "paper.cut_fill": "cut / fill",
    "paper.stick": "Story stick: mark a lath, all from one end",
    "paper.stick_mark": "{shown} {stakes}",
    "paper.safe_authority": "The drawing, the spec, local code and the engineer in charge govern, not this sheet.",
    "paper.safe_services": "Utilities located and marked before any stake or pin goes in (US: call 811).",
    "paper.safe_caps": "Cap each steel stake as it is driven.",
    "paper.safe_board": "A bent board is a spring. Fix one end first, stand clear of its sweep.",
    "paper.safe_level": "Hold the tape level. If you burn a foot, subtract it.",
    "paper.safe_hand": "No check catches a curve on the wrong hand. At A, facing B, it's {hand}, turns {turn}.",
    "paper.safe_one_more": "{count} more caution is on the long sheet. Read it.",
    "paper.safe_more": "{count} more cautions are on the long sheet. Read them.",
    "paper.scan": "Scan the code to open this job:",
    "paper.no_code": "This job, too long for a code:",
    "paper.notes": "Notes",
    "paper.by": "set by (initials)",
    "paper.checked": "checked by (initials)",
    "paper.date": "date",
    "paper.tape": "tape used, its length",
    # the terminal
    "paper.all": "Add --all for every part: how accurate, all methods, squaring, blunders, positions.",
    "paper.first_title": "First",
    "paper.foot_of_arc": "{arc}. {told}",
    "paper.title_of_arc": "{title}: {arc}",
    "paper.first_after": "After {before}: {told}",
    "paper.stakes_title": "Stakes, in order",
    "paper.cautions_title": "Cautions",
}
