"""The ends of a slab that meets concrete which stands there, where Britain says something else."""

MESSAGES = {
    "ends.lap": (
        "At {ends} lap the boards along the old concrete's edge. Against a kerb or a wall, cut them there and stake "
        "the ends."
    ),
    "ends.top_open": "At {end} the outer top comes to {first}, the inner to {last}. Take a level on the old concrete.",
    "ends.top_open.of_line": (
        "At {end} the left top comes to {first}, the right to {last}. Take a level on the old concrete."
    ),
    "ends.top_met": (
        "At {end} the outer top is the one you gave: it meets if that was measured there. Measure the inner, too: it "
        "comes to {last}."
    ),
    "ends.top_met.of_line": (
        "At {end} the left top is the one you gave: it meets if that was measured there. Measure the right, too: it "
        "comes to {last}."
    ),
}
