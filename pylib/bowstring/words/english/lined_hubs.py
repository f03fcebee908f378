"""Hubs outside the dig of a line of several pieces."""

MESSAGES = {
    "lined.hubs_first": "Before you dig, set a hub *{off}* of each stake and piece end: the dig takes them.",
    "lined.hubs_square": "Hubs stand square to the line. On an arc that's toward its center, or away from it.",
    "lined.hubs_kink": "At a kink the hub is square to the arc, else to the piece before.",
    "lined.hubs_prove": "Hub to next hub must read as listed: no step measured it.",
    "lined.hubs_straight": "Set a stake as far off the line here, too, before you dig: {places}. No arc's card does.",
    "lined.hubs_no_room": "*{place}:* a hub has no room. Tie that mark to two that stay.",
    "lined.hubs_table": "Hubs outside the dig",
    "lined.head_where": "Where",
    "lined.head_hub": "Hub",
    "lined.head_next": "To the next hub",
    "lined.hub_start": "the start",
    "lined.hub_none": "no room",
    "lined.hub_no_tape": "-",
    "lined.hubs_except": "Except: {places}.",
    "lined.hub_off": "{place}, *{off}*",
    "lined.hub_off_but": "{place}, *{off}* (its A: *{other}*, square to {piece})",
    "lined.hubs_arcs": "Stake every arc and set its hubs before anyone digs.",
    "lined.head_hub_to_hub": "Hub to hub",
}
