"""On which hand the curve is."""

MESSAGES = {
    "hand.standing": "At A, facing B: the curve is on your {hand}, and it turns {turn}.",
    "hand.walking": (
        "Walking along the straight toward the arc: it turns {turn}. At A, facing B, the curve is on your {hand}."
    ),
    "hand.walking_arc": (
        "Walking along the line into this arc: it turns {turn}. At A, facing B, the curve is on your {hand}."
    ),
    "hand.unknown": "On which side of A-B the curve belongs isn't given. Ask before building.",
    # in place of a hand that isn't known
    "hand.curve": "curve's side",
    "hand.away": "side away from the curve",
    "hand.open": "side still to be settled",
    "job.turn_and_side.wrong": (
        "A curve that turns {turn} is on the {other} at A, facing B, and the job's side says {side}."
    ),
    "job.turn_and_side.remedy": "Give one of the two: side with both ends, turn with one end and its straight.",
}
