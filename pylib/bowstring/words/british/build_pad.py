"""A slab with rounded ends, where Britain says something else."""

MESSAGES = {
    "pad.joints": "{columns} bays along A to B by {rows} square to it,\n{panel} by {across}",
    "pad.joints_one_row": "{columns} bays along A to B,\n{panel} by {across}",
    "pad.joints_one_column": "{rows} bays, one behind the other,\n{panel} by {across}",
    "pad.joints_none": "One bay, no joint:\n{wide} along A to B, {deep} overall",
    "pad.shape": "Bays are {ratio} to 1, over 1.5. Ask the designer where joints go.",
    "pad.call_back": "from the back edge, towards the curve",
    "pad.call_other": "from the other curve's middle, towards A and B",
}
