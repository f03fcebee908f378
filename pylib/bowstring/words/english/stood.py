"""Stakes that stand by old numbers: what was set back for them, and what every face says of them."""

MESSAGES = {
    "stood.set_back": "Set back: {what}.",
    "stood.set_back_none": "The old numbers are back.",
    "stood.from_to": "{label} {before} to {after}",
    "stood.got": "what you got at {stake}",
    "stood.more": "{names} and {count} more",
}
