"""Methods side by side, what is in the way, and the advice: what differs on a British site."""

MESSAGES = {
    "method.name.centre": "a swing from the centre",
    "method.parallel": "ordinates from a string parallel to A-B, {size} beyond it towards the curve",
    "advice.miss_far": (
        "19 times in 20 its worst stake is within {miss}. No method here comes close to your {tolerance}: ask "
        "the designer or the site engineer for other control points."
    ),
    "advice.fair_holds": (
        "No stake is more than {fair} off the fair curve through its neighbours, and {limit} is allowed."
    ),
    "advice.fair_over": (
        "A stake may be {fair} off the fair curve through its neighbours, and {limit} is allowed. Sight along the "
        "stakes, and check each over its neighbours."
    ),
    "advice.none": (
        "No method works on this ground, and no single change would fix that. Ask the designer or the site "
        "engineer for other control points."
    ),
    "advice.none_but": (
        "No method works as things are. Any one change would fix that: {changes}.{alone} Otherwise ask the "
        "designer or the site engineer for other control points."
    ),
    "advice.none_string": (
        "{why} {string} instead.{others} Otherwise ask the designer or the site engineer for other control points."
    ),
    "advice.none_alone": (
        " Or say that the arc's centre can be reached: one person can swing the arc from a pin there. It is {size} "
        "from the curve."
    ),
    "advice.none_service": (
        "No method works on this ground. What is in the way may be a service: {what}. Don't move it. Ask the "
        "designer or the site engineer for other control points."
    ),
}
