"""The form's words for the slab: what differs on a British site."""

MESSAGES = {
    "form.section_depths": "Depths measured to the sub-base",
    "form.section_boards": "Shutter boards",
    "form.section_crown": "Or a camber",
    "form.edge.help": "Coloured: your drawing's line.",
    "form.slab_fills.none": "A path, kerb or strip along the curve",
    "form.slab_poured.help": "A kerb here is one width, one thickness: a channel's shape isn't figured.",
    "form.slab_poured.slab": "A slab or a kerb",
    "form.board_level.none": "not given: site timber",
    "form.board_level.job lumber": "site timber",
    "form.board_level": "How good is the timber?",
    "form.joints_every": "Longest bay, outer edge",
    "form.joints_every.of_line": "Longest bay, either edge",
    "form.joints_panels": "Or how many bays",
    "form.grade_crown": "Camber",
    "form.grade_instrument": "Height of collimation",
    "form.grade_instrument.help": "In the same heights as the tops. The staff readings follow.",
    "form.grade_ground_by.none": "Levels",
    "form.grade_ground_by.rod": "Staff readings from this height",
    "form.section_limits.help": (
        "The drawing, the specification and the regulations govern. Your tops are checked against these."
    ),
    "form.slab_footing_width.help": "Centred under it. Write its unit.",
    "form.board_level.clear": "clear timber",
}
