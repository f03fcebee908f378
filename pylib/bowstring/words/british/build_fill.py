"""A slab that fills its curve, where Britain says something else."""

MESSAGES = {
    "fill.most_every_straight": "No straight side of a bay is over {most}, as you said.",
    "fill.curved_side": "The longest curved side is {curved}: ask, or use more bays.",
    "fill.shape_cut": "Bays that the curve cuts aren't counted in that.",
    "fill.centre_row": "Needs the edge, not the centreline",
    "fill.panels": "{columns} by {rows} bays",
    "fill.one_panel": "One bay, no joint",
    "fill.too_long": "Bays over {most}",
    "fill.joints_more": "bays {wide} by {deep}",
    "fill.joints": "{columns} bays along A to B by {rows} out from it,\n{panel} by {across}",
    "fill.joints_one_row": "{columns} bays along A to B,\n{panel} by {across}",
    "fill.joints_none": "One bay, no joint:\n{wide} along A to B, {deep} out from it",
    "fill.stop_long": "Bays are {longest} on a side; {most} is the usual limit. Use more bays.",
    "fill.most_every": "No side of a bay is over {most}, as you said.",
    "fill.shape": "Bays are {ratio} to 1, over 1.5: the slab is shallow. Ask the designer where joints go.",
    "fill.clash_crown_head": "A camber on a filled curve?",
    "fill.clash_crown_text": "A camber is given. A slab that fills its curve is one plane here.",
    "fill.clash_crown_why": "Give its slope off the string instead, or ask the designer for spot levels.",
    "fill.water_end": "Water runs towards {end}, along A to B.",
    "fill.screw_all": "Screw every stake of all forms: the screws hold the level.",
    "fill.clash_crown_short": "A camber on a filled curve?",
}
