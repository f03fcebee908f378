"""How true the stakes will be."""

MESSAGES = {
    "todo.pin": "Bare pins",
    "todo.marked": "Stakes marked on top after driving",
    "todo.hub": "Hubs and tacks, read again after driving",
    "todo.board": "Form boards",
    "todo.read_to": "{driven}, the tape read to {mark}",
    "todo.expect": "{driven}: expect the worst about {worst} off.",
    "todo.holds": "{driven}: {tolerance} holds in {share}.",
    "todo.at_best": "{driven}: at best {tolerance} holds in {share}.",
    "todo.no_finer": "Nothing finer is offered: {tolerance} holds in {share}. Check every stake and move what is off.",
    "todo.share": "{part} of {of} layouts",
    "todo.share_one": "1 of {of} layouts",
    "todo.hardly": "hardly any layout",
    "accuracy.fair": (
        "Off the fair curve: 19 times in 20 stake {at} is within {miss} of the mid-ordinate over its two neighbors."
    ),
    "accuracy.fair_holds": (
        "Off the fair curve: 19 times in 20 stake {at} is within {miss} of the mid-ordinate over its two neighbors. Allowed is {limit}."
    ),
    "accuracy.fair_over": (
        "Off the fair curve: stake {at} may be {miss} off the mid-ordinate over its two neighbors, and {limit} is allowed. "
        "Sight along the stakes, tape that mid-ordinate, and move what stands out of line."
    ),
    "accuracy.worst": (
        "The stake that may be farthest off is {at}. 19 times in 20 it stands within {miss} of its true place across the arc."
    ),
    "accuracy.all": (
        "All {count} stakes at once: 19 layouts in 20 have every one within {miss}. That is wider than for one stake, because "
        "any of them can be the one that is off."
    ),
    "accuracy.chance": "Every stake within the tolerance of {tolerance}: {chance} of layouts.",
    "accuracy.chance_poor": (
        "Only {chance} of layouts have every stake within {tolerance}. Take more care: plumb each stake, and read to a finer "
        "mark."
    ),
    "accuracy.over": "more than {percent}",
    "accuracy.under": "less than {percent}",
    "accuracy.unreliable": (
        "Don't rely on these figures. The tapes cross so flat, or the errors build up so far, that the error estimate no longer "
        "holds. Use another method."
    ),
    "accuracy.scale_shown": "{part} parts per million, {size} on {on}",
    "accuracy.given": "your figure",
    "accuracy.usual": "usual value",
    "accuracy.error_read": "reading the tape, at each end",
    "accuracy.error_scale": "the tape itself, the same for every pull",
    "accuracy.error_stake": "plumbing and driving a stake, in each direction",
    "accuracy.error_line": "staying on a string, sideways",
    "accuracy.error_angle": "turning one angle",
    "bias.slope": (
        "Level figures held with the tape on the slope: up to {miss} at {at}. Use the slope figures, or hold the tape"
        " level."
    ),
    "bias.sag": "A tape hanging free under a 15 lb (67 N) pull: up to {miss} at {at}. Lay it down or support it.",
    "bias.wind": (
        "A 10 mph (16 km/h) crosswind on the strings: up to {miss} at {at}. Pin long strings every 25 ft (8 m)."
    ),
}
