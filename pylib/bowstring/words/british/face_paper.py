"""The sheet of paper that goes along, and the terminal's short sheet: what differs on a British site."""

# Of the services' sentences the order (plans, locate, mark, permit) was held against HSE's guidance on underground
# services (HSG47); the wording is from memory.

MESSAGES = {
    "paper.line_centre": "Drawn to the CENTRELINE.",
    "paper.line_flow line": "Drawn to the CHANNEL LINE.",
    "paper.drawing_centre": "Drawing: R {radius} to the CENTRELINE",
    "paper.drawing_flow line": "Drawing: R {radius} to the CHANNEL LINE",
    "paper.services": "Services located? CAT scan done? Permit to dig",
    "paper.ticket": "Services located. Permit {ticket}.",
    "paper.called": "issued {date}",
    "paper.services_short": (
        "Services located by CAT scan, marks in? Permit to dig issued? Write down the permit's number."
    ),
    "paper.first.prove_beside": (
        "Away from the curve cross {m0} from {start}, {m1} from {end}: {beside}. Mark {toward} at {m2} towards "
        "{start}, {other} at {m3} towards {end}. {toward} to {other} must read {m4}. If not, STOP."
    ),
    "paper.first.prove_beside_inside": (
        "On the curve's side cross {m0} from {start}, {m1} from {end}: {beside}. Mark {toward} at {m2} towards "
        "{start}, {other} at {m3} towards {end}. {toward} to {other} must read {m4}. If not, STOP."
    ),
    "paper.first.prove_corner": (
        "From P mark {toward} at {m0} towards S, {other} at {m1} towards T. {toward} to {other} must read {m2}. If "
        "not, STOP."
    ),
    "paper.first.have_straight": "Find {start} (TP). Mark S on the straight, at least {back} back.",
    "paper.first.from_straight": (
        "Past {start}, in line with S, {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (TP). "
        "{start} to {end} must read {m2}."
    ),
    "paper.first.from_straight_back": (
        "From {start} back towards S {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (TP). "
        "{start} to {end} must read {m2}."
    ),
    "paper.first.from_straight_untaped": (
        "Past {start}, in line with S, {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (TP)."
    ),
    "paper.first.from_straight_back_untaped": (
        "From {start} back towards S {m0}: F. At F square off {m1} {turn}, facing away from S: {end} (TP)."
    ),
    "paper.first.have_corner": "Find corner P (IP). Mark S on A's straight, T on B's, at least {back} back.",
    "paper.first.from_corner": (
        "From P towards S {m0}: {start} (TP). Towards T {m1}: {end} (TP). {start} to {end} must read {m2}. If "
        "not, STOP. At {start}, facing {end}, P is on your {hand}."
    ),
    "paper.first.from_corner_untaped": (
        "From P towards S {m0}: {start} (TP). Towards T {m1}: {end} (TP). At {start}, facing {end}, P is on your "
        "{hand}."
    ),
    "paper.first.offset_away_arc": (
        "{end}: from {other} past {start} by {m0}, square off {m1} towards the curve. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_toward_arc": (
        "{end}: from {start} towards {other} {m0}, square off {m1} towards the curve. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_toward_back": (
        "{end}: from {start} towards {other} {m0}, square off {m1} away from the curve. {start} to {end} must read "
        "{m2}."
    ),
    "paper.first.offset_square_out": "{end}: at {start} square off the straight {m0}, away from the curve's centre.",
    "paper.first.offset_square_in": "{end}: at {start} square off the straight {m0}, towards the curve's centre.",
    "paper.first.offset_toward_near": (
        "{end}: from {start} towards {other} {m0}, square off {m1} on {far}'s side. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_toward_far": (
        "{end}: from {start} towards {other} {m0}, square off {m1} away from {far}. {start} to {end} must read {m2}."
    ),
    "paper.first.offset_toward": "{end}: from {start} towards {other} {m0}.",
    "paper.first.parallel_crossed_curve": "{peg}: cross {m0} from {start}, {m1} from {end}, towards the curve.",
    "paper.first.parallel_squared_curve": "{peg}: at {start} square off {m0}, towards the curve.",
    "paper.first.peg": (
        "Pin {peg}: from {start} towards {end} {m0}, square off {m1} towards the curve. String {start} to {peg}."
    ),
    "paper.first.peg_back": (
        "Pin {peg}: from {end} past {start} by {m0}, square off {m1} towards the curve. String {start} to {peg}."
    ),
    "paper.first.peg_square": "Pin {peg}: at {start} square off {m0} towards the curve. String {start} to {peg}.",
    "paper.first.centre_behind": (
        "C, the centre: cross {m0} from {start} and {end}, AWAY from the curve ({away}). Both tapes must "
        "still read that."
    ),
    "paper.first.centre_inside": (
        "C, the centre: cross {m0} from {start} and {end}, on the curve's side ({hand}). Both tapes must "
        "still read that."
    ),
    "paper.first.centre_half": "C, the centre: the string's midpoint, {m0} from either end.",
    "paper.first.centre_near": (
        "C, the centre: from the string's midpoint, {m0}, square off {m1} AWAY from the curve ({away}). C to "
        "{start} and C to {end} must each read {m2}."
    ),
    "paper.first.centre_near_inside": (
        "C, the centre: from the string's midpoint, {m0}, square off {m1} towards the curve ({hand}). C to "
        "{start} and C to {end} must each read {m2}."
    ),
    "paper.how.sight_back": (
        "Instrument over {start}, sighted back on {end}. Transit, turn the deflection {hand}. Tape the gap onto "
        "that line."
    ),
    "paper.hubs": "Read each nail once more. If it's off, move the nail, not the peg.",
    "paper.built_grade": "level",
    "paper.stick": "Storey rod: mark a lath, all from one end",
    "paper.safe_authority": (
        "The drawing, the specification, British Standards and the engineer in charge govern, not this sheet."
    ),
    "paper.safe_services": (
        "Services located by CAT scan and marked, and a permit to dig, before any stake or pin goes in."
    ),
    "paper.safe_level": "Hold the tape level. If you start at 1 ft or 10 cm, subtract it.",
}
