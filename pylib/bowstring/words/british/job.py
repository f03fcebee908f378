"""What can be wrong with a job: what differs on a British site."""

MESSAGES = {
    "job.offset_alone.wrong": "The offset is given, but not towards which side.",
    "job.offset_alone.remedy": "Say towards the centre or towards the outside.",
    "job.thick_pin.remedy": "Give the pin's own diameter, such as 16 mm or 5/8 in, and check the unit.",
    "job.depth_deep.wrong": "No sub-base is that deep: at most {most}.",
    "offset.over_radius.wrong": "The offset towards the centre is as much as the radius ({radius}) or more.",
    "offset.over_radius.remedy": "Give a smaller offset, or towards the outside.",
    "job.rod_instrument.wrong": "Staff readings say nothing without the height of collimation.",
    "job.rod_instrument.remedy": "Give it in the same levels as the tops.",
    "job.rod_minus.wrong": "A staff reading has no minus.",
    "job.rod_minus.remedy": "Give what the staff read, or say that these are levels.",
    "got.unknown_stake.wrong": "No stake of this setting out is called {stake}.",
}
