"""Heads and cells of the tables of stakes: what differs on a British site."""

MESSAGES = {
    "table.from_toward": "from {start} towards {other}",
    "table.start_toward": "{start} towards {end}",
    "table.middle_toward": "midpoint towards {end}",
    "table.off_toward": "{shown} towards A-B",
}
