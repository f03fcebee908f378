"""The cards of work on the ground: what differs on a British site."""

# Of the services' sentences the order (plans, locate, mark, permit) was held against HSE's guidance on underground
# services (HSG47); the wording is from memory.

MESSAGES = {
    "card.locate": "Locate buried services by CAT scan. Permit to dig issued? Marks on the ground?",
    "card.prove_beside_across": "From {beside} mark {toward} towards {start} and {other} towards {end}. Tape across.",
    "card.prove_corner": "From P mark {toward} towards S and {other} towards T. Tape across.",
    "card.from_straight_back": "Tape {start}-F towards S. Your back to S, square off {hand}. Set {end}.",
    "card.from_corner": "From P tape back towards S and T. Set {start} and {end}.",
    "card.offset_toward": "From {start} tape towards {other}. Set {end}.",
    "card.offset_square_out": "At {start} square off the straight, away from the curve's centre. Set {end}.",
    "card.offset_square_in": "At {start} square off the straight, towards the curve's centre. Set {end}.",
    "card.offset_toward_off": "From {start} tape towards {other}. Facing {other}, square off {hand}. Set {end}.",
    "card.centre_half": "String {start} to {end}. Drive {peg}, the centre, at its midpoint.",
    "card.ordinate_mid": "From the string's midpoint go towards {end}. Facing B, square off {hand}. Drive {stake}.",
    "card.parallel_mid": "From the string's midpoint go towards {end}. Square off {hand}. Drive {stake}.",
    "card.parallel_over_mid": "From the string's midpoint go towards {end}. Drive {stake} on the string.",
    "card.sight_back": "Over {start}, sight back on {end}. Transit, turn {hand}. Tape. Drive {stake}.",
    "card.label.back_straight": "{start} back to F, towards S",
    "card.label.toward": "from {start}, towards {other}",
    "card.label.toward_start": "from {beside} towards {start}",
    "card.label.toward_end": "from {beside} towards {end}",
    "card.label.toward_s": "from P towards S",
    "card.label.toward_t": "from P towards T",
    "card.label.turn_plunged": "transited, turn to the {hand}",
    "card.right.square": "Square: {along} along towards {toward}, {out} out, {across} across must meet.",
    "card.right.blade": "Square it with a {blade} builder's square.",
    "card.ticket": "Permit number",
    "card.called": "When issued",
    "card.note.days": "Wait for the service plans and the marks on the ground.",
    "card.title.locate": "Permit to dig and marks",
}
