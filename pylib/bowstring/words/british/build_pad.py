"""A slab with rounded ends, where Britain says something else."""

MESSAGES = {
    "pad.joints": "{columns} bays wide by {rows} long,\n{panel} by {across}",
    "pad.joints_one_row": "{columns} bays, side by side,\n{panel} by {across}",
    "pad.joints_one_column": "{rows} bays, one behind the other,\n{panel} by {across}",
    "pad.joints_none": "One bay, no joint:\n{wide} wide, {deep} long overall",
    "pad.joint_building": (
        "*{gap} isolation joint* at the building, A-2 to B-2, the concrete's full depth. Elsewhere only where the "
        "specification says."
    ),
    "pad.on_string": "A joint runs where the curve begins: bays are {behind} behind it, {beyond} beyond.",
    "pad.shape": "Bays are {ratio} to 1, over 1.5. Ask the designer where joints go.",
    "pad.call_back": "from the back edge, towards the curve",
    "pad.call_building": "from the building, towards the curve",
    "pad.call_other": "from the other curve's middle, towards A and B",
}
