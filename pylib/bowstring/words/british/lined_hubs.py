"""Pegs outside the dig of a line of several pieces, where Britain says something else."""

MESSAGES = {
    "lined.hubs_first": "Before you dig, set a peg *{off}* of each stake and piece end: the dig takes them.",
    "lined.hubs_square": "Pegs stand square to the line. On an arc that's towards its centre, or away from it.",
    "lined.hubs_kink": "At a kink the peg is square to the arc, else to the piece before.",
    "lined.hubs_prove": "Peg to next peg must read as listed: no step measured it.",
    "lined.hubs_no_room": "*{place}:* a peg has no room. Tie that mark to two that stay.",
    "lined.hubs_table": "Pegs outside the dig",
    "lined.head_hub": "Peg",
    "lined.head_next": "To the next peg",
    "lined.hubs_arcs": "Stake every arc and set its pegs before anyone digs.",
    "lined.head_hub_to_hub": "Peg to peg",
}
