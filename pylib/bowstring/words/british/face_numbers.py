"""The numbers face: its lines, its help, and what is told of a measure: what differs on a British site."""

MESSAGES = {
    "numbers.tell.radius": "centre to arc",
    "numbers.line_edge": "Centreline, {width} wide: which edge?",
    "numbers.pins_centers": "Set centres {size} off",
    "numbers.edge_none": "The centreline",
    "numbers.driven.hub": "pegs",
    "numbers.way_centre": "centre in reach",
    "numbers.walk": "Walk along the straight towards the arc.",
    "numbers.picture_walking": "Walking towards the arc, it turns {hand}.",
    "numbers.side_centre": "{offset} towards the centre",
    "numbers.side_outside": "{offset} towards the outside",
}
