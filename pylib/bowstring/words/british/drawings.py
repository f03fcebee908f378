"""Words on the drawings, and what a person is told who can't see them: what differs on a British site."""

MESSAGES = {
    "draw.centre": "centre",
    "draw.level.desc": (
        "{hand} {strings} from stake to stake. From the midpoint of each, square off it towards the curve, a "
        "mid-ordinate sets {names}."
    ),
    "draw.triangle.square.desc": (
        "A builder's square with its corner at the midpoint of the string from {start} to {end}. One blade is on "
        "the string; the other points to {name}, {sagitta} away."
    ),
    "draw.stick.title": "Storey rod",
    "draw.scatter.desc": (
        "Each stake is within the ellipse around it 19 times in 20. The widest across the arc is at {at}: one "
        "standard deviation is {across}."
    ),
    "draw.scatter.enlarged": (
        "Each stake is within its ellipse 19 times in 20. The ellipses are drawn {factor} times too large against "
        "the arc."
    ),
}
