"""The sheet as plain text for messages: every sign counts, so these are short.

Whatever stands here is written out in the signs that every phone's text messages have.
"""

MESSAGES = {
    "messages.head": "{number}/{count} {title} {code}: ",
    "messages.head_stop": "{number}/{count} {title} {code} STOP: ",
    "messages.stop": "Build nothing from this.",
    "messages.ends": "A: {first}. B: {second}.",
    "messages.ends_off": "A is off {first}. B is off {second}.",
    "messages.no_landmark": "as marked",
    "messages.hand": "At A, facing B: curve on your {hand}, turns {turn}.",
    "messages.hand_open": "At A, facing B: on which hand is the curve? ASK.",
    "messages.services": "Utilities located? Call 811 (US) first.",
    "messages.sentence": "{told}.",
    "messages.square": "Square when short chords match; tape square-off again.",
    "messages.half": "midpoint",
    "messages.half_chord": "short chords",
    "messages.first_string": "{stake} ({head} {cell})",
    "messages.string": "{stake} ({cell})",
    "messages.cell": "{head} {cell}",
    "messages.stakes": "{stakes}: {cells}.",
    "messages.check": "Check {what}: {reads} +-{limit}.",
    "messages.check_blunt": "Check {what}: {reads} (can't judge).",
}
