"""The ends of a slab that meets concrete which stands there, in words."""

MESSAGES = {
    # what can't be
    "ends.no_fill.wrong": "A slab that fills its curve has no end of its own at A or B.",
    "ends.no_fill.remedy": "Leave that end out, or say that the slab is a strip along the curve.",
    "ends.no_closed.wrong": "This line closes on itself, so it has no end that meets old concrete.",
    "ends.no_closed.remedy": "Leave both ends out.",
    # what they are called
    "ends.both": "A and B",
    "ends.both_of_line": "both ends",
    "ends.of_line.A": "the start",
    "ends.of_line.B": "the end",
    "ends.draw": "old concrete",
    "ends.draw_hatched": "hatched: old concrete",
    # the edges and the dig
    "ends.told": (
        "At {ends}, against the old concrete: no end form, no dig past it. The isolation strip comes out of the length."
    ),
    "ends.told_wall": (
        "At {ends}, against the old concrete: no end form, no dig past it. The joint: as the drawing says."
    ),
    "ends.dig_stops": "At {ends} stop at the old concrete; don't undercut it.",
    "ends.sign": "Strip at {ends}; tops meet",
    # the boards
    "ends.lap": (
        "At {ends} lap the boards along the old concrete's edge. Against a curb or a wall, cut them there and stake "
        "the ends."
    ),
    "ends.no_lap": "At {ends} stake the boards' ends, tight to the old concrete.",
    "ends.first_lap": "Clamp one end at {end}, along the old concrete's edge, and screw it.",
    "ends.past_lap": "Past {ends}, stakes for the lap are counted. Where you cut the boards, leave them out.",
    "ends.form": "end form at {ends}",
    "ends.stakes": "End form at {ends}: every {gap}, {spaces}, ends included.",
    "ends.wall_form": "End form at {ends} only: {width} wide, {height} high.",
    "ends.wall_none": "No end forms: both ends meet the old concrete.",
    "ends.buy": "Buy isolation strip, too: {pieces}, {gap} thick, {deep} deep.",
    "ends.buy_full": "Buy isolation strip, too: {pieces}, {gap} thick, as deep as the concrete.",
    # the joints
    "ends.joint": (
        "*{gap} isolation joint at {end}*, against the old concrete: {width} long, {deep} deep, the full depth."
    ),
    "ends.joint_full": (
        "*{gap} isolation joint at {end}*, against the old concrete: {width} long, as deep as the concrete."
    ),
    "ends.dowels": "Dowels there or none: as the drawing says.",
    "ends.joint_wall": "At {ends}, against the old concrete: the joint and its dowels as the drawing says.",
    # the tops
    "ends.top_open": "At {end} the outer top comes to {first}, the inner to {last}. Shoot the old concrete there.",
    "ends.top_open.of_line": (
        "At {end} the left top comes to {first}, the right to {last}. Shoot the old concrete there."
    ),
    "ends.lip": "A lip trips.",
    "ends.top_met": (
        "At {end} the outer top is the one you gave: it meets if you shot it there. Shoot the inner, too: it comes to "
        "{last}."
    ),
    "ends.top_met.of_line": (
        "At {end} the left top is the one you gave: it meets if you shot it there. Shoot the right, too: it comes to "
        "{last}."
    ),
}
