"""What was got at a stake: what differs on a British site."""

MESSAGES = {
    "got.along": "It is {along} past its place, towards {end}.",
    "got.bump": "Against its neighbours that is a bump of {bump}.",
    "got.slip.metre_more": "{what}: 1 m more. Was a metre misread?",
    "got.slip.metre_less": "{what}: 1 m less. Was a metre misread?",
}
