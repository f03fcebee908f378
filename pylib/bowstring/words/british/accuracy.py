"""How true the stakes will be: what differs on a British site."""

MESSAGES = {
    "todo.hub": "Pegs and nails, read again after driving",
    "todo.board": "Shutter boards",
    "todo.share": "{part} of {of} jobs",
    "todo.share_one": "1 of {of} jobs",
    "todo.hardly": "hardly any job",
    "accuracy.fair": (
        "Off the fair curve: 19 times in 20 stake {at} is within {miss} of the mid-ordinate over its two neighbours."
    ),
    "accuracy.fair_holds": (
        "Off the fair curve: 19 times in 20 stake {at} is within {miss} of the mid-ordinate over its two "
        "neighbours. Allowed is {limit}."
    ),
    "accuracy.fair_over": (
        "Off the fair curve: stake {at} may be {miss} off the mid-ordinate over its two neighbours, and {limit} is "
        "allowed. Sight along the stakes, tape that mid-ordinate, and move what stands out of line."
    ),
    "accuracy.all": (
        "All {count} stakes at once: 19 jobs in 20 have every one within {miss}. That is wider than for one stake, "
        "because any of them can be the one that is off."
    ),
    "accuracy.chance": "Every stake within the tolerance of {tolerance}: {chance} of jobs.",
    "accuracy.chance_poor": (
        "Only {chance} of jobs have every stake within {tolerance}. Take more care: plumb each stake, and read to "
        "a finer mark."
    ),
    "bias.sag": "A tape hanging free under a 67 N (15 lb) pull: up to {miss} at {at}. Lay it down or support it.",
    "bias.wind": (
        "A 10 mph (16 km/h) crosswind on the strings: up to {miss} at {at}. Pin long strings every 8 m (25 ft)."
    ),
}
