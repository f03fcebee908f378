"""The construction on a wall: what differs on a British site."""

MESSAGES = {
    "wall.ends.told": (
        "Two stakes, a string of {chord} between them, the wanted arc dotted, and its centre out of reach."
    ),
    "wall.ends.center": "No swing from the centre: nobody can stand there.",
    "wall.ends.away": "its centre: {away} off the string, and we never go there",
    "wall.ends.inside": "its centre: {away} past the string, and we never go there",
    "wall.ends.middle": "its centre: the middle of this very string",
}
