"""A thicker stretch of a slab, and its measured depths, where Britain says something else."""

MESSAGES = {
    "deep.bed_under": "Apron: {apron}. The sub-base steps down there, *{gap} under the foot*.",
    "deep.bed_at": "Apron: {apron}. The sub-base steps down there, to the foot.",
    "deep.bed_over": "Apron: {apron}. The sub-base steps down there, *{gap} over the foot*.",
    "deep.step": "The sub-base steps straight down at its ends; a sloped step takes more.",
    "deep.joints_stand": (
        "*Joints {first} and {last} stand at the apron's ends:* isolation, {gap} wide, unless the "
        "specification says otherwise."
    ),
    "deep.joint_stands": (
        "*Joint {joint} stands at the apron's end:* isolation, {gap} wide, unless the specification says otherwise."
    ),
    "deep.joint_none": (
        "*No joint at {where}, where the apron ends:* add one, isolation, {gap} wide, unless the "
        "specification says otherwise."
    ),
    "deep.crown": "The camber stands above a string across the forms: measure from the cambered screed instead.",
    "deep.cut_beside": (
        "Cut and fill {where} are to the bottom of the trench, *{deep}* under the tops. At A-2 and B-2 they are "
        "to the underside of the sub-base."
    ),
    "deep.past_held": "Past it dig only to the board's foot, no sub-base.",
    "deep.edge_bed": "Thick edge, {where}: {wide} wide, there the sub-base is *{depth} under the form tops*.",
    "deep.sign_apron": "Sub-base under top, apron",
    "deep.edges_taken": "Thick edges are taken to be off as much as the sub-base beside them.",
    "deep.thin_limit": (
        "ACI 117-10, 4.5.4, as quoted: up to {mean} thin on average, {one} at one place. Your specification governs."
    ),
    "deep.thin_over": (
        "*That is past ACI 117-10, 4.5.4, as quoted:* {mean} on average, {one} at one place. Trim the sub-base."
    ),
    "deep.fills": "{order} fills a sub-base up to {low} lower than measured, nothing spilled.",
    "deep.panels": "The bays take from *{least}* to *{most}*, as the depth changes.",
    "deep.depth_step_more": "The sub-base steps at {at}: measure to one side of it.",
}
