"""On which hand the curve is: what differs on a British site."""

MESSAGES = {
    "hand.walking": (
        "Walking along the straight towards the arc: it turns {turn}. At A, facing B, the curve is on your {hand}."
    ),
}
