"""Methods side by side, what is in the way, and the advice: what differs on a British site."""

MESSAGES = {
    "method.name.centre": "a swing from the centre",
    "method.parallel": "ordinates from a string parallel to A-B, {size} beyond it towards the curve",
    "advice.fair_holds": (
        "No stake is more than {fair} off the fair curve through its neighbours, and {limit} is allowed."
    ),
    "advice.fair_over": (
        "A stake may be {fair} off the fair curve through its neighbours, and {limit} is allowed. Sight along the "
        "stakes, and check each over its neighbours."
    ),
    "advice.none_alone": (
        " Or say that the arc's centre can be reached: one person can swing the arc from a pin there. It is {size} "
        "from the curve."
    ),
}
