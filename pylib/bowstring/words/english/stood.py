"""Stakes that stand by old numbers: what was set back for them, and what every face says of them."""

MESSAGES = {
    "stood.set_back": "Set back: {what}.",
    "stood.set_back_none": "The old numbers are back.",
    "stood.from_to": "{label} {before} to {after}",
    "stood.got": "what you got at {stake}",
    "stood.more": "{names} and {count} more",
    "stood.state": "Old numbers: {names}",
    "stood.state_more": "Old numbers: {names} +{count}",
    "stood.arc": "arc {number}",
    "stood.of_arc": "Arc {number}. {told}",
    "stood.on_side": "{told}. The numbers here are newer: don't build off those stakes.",
    "stood.told": "{told} The numbers here are newer.",
}
