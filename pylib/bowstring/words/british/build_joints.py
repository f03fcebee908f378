"""The joints, where Britain says something else."""

MESSAGES = {
    "joints.no_inner": "No slab: the width reaches the centre",
    "joints.most_width": "Bays are no longer than the slab is wide: {most}. The usual limit is {limit}.",
    "joints.most_every": "Bays are at most {most} along the outer form, as you said.",
    "joints.most_count": "{count} bays, as you said. The usual limit is {limit} long.",
    "joints.count_taken": "You said {said} bays. With a joint at each end of the apron, it's {count}.",
    "joints.most_width_taper": (
        "Bays are no longer than the slab is wide halfway along: {most}. The usual limit is {limit}."
    ),
    "joints.most_thickness": "Bays are at most {most}, the usual limit for {thickness}.",
    "joints.most_thickness_thin": "Bays are at most {most}, the usual limit for {thickness}: no thickness is given.",
    "joints.most_band": (
        "This narrow, it's a kerb or a band: bays as long as wide don't suit it. Joints are at most {most} apart."
    ),
    "joints.too_many": "Over {most} bays: break the line up",
    "joints.one": "One bay, {outside} outside",
    "joints.panels": "{count} bays, {outside} outside",
    "joints.panels_upto": "{count} bays, up to {outside}",
    "joints.conclusion": "{count} bays, {outside} outside,\n{inside} inside",
    "joints.conclusion_taper": "{count} bays, up to {outside} outside,\nup to {inside} inside",
    "joints.conclusion_one": "One bay, no joint:\n{outside} outside, {inside} inside",
    "joints.stop_more": "bays are {outside}: add a joint",
    "joints.how_many": "How many bays",
    "joints.offer": "{count} bays",
    "joints.offer_one": "1 bay",
    "joints.square": (
        "Mark to mark, straight across: that line points at the centre. "
        "It meets both edges square, so no corner is sharp."
    ),
    "joints.corners": (
        "Mark to mark, straight across: that line points at the centre. The width changes, so its corners aren't "
        "square: {corner} or more. Under 60° they break off."
    ),
    "joints.corners_sharp": (
        "Mark to mark, straight across: that line points at the centre. "
        "The width changes so fast that a corner is only {corner}. Under 60° it breaks off: ask the designer."
    ),
    "joints.shape": "Bays are {ratio} to 1 at the most; keep under 1.5.",
    "joints.shape_never": (
        "Bays are {ratio} to 1, over 1.5. The curve is too tight for any number of bays to fix that: ask the designer."
    ),
    "joints.shape_taper": "Bays run to {ratio} to 1, over 1.5: ask the designer where joints go.",
    "joints.shape_apron": (
        "Bay {number} is {ratio} to 1, over 1.5: the apron ends too near. Move that end, or ask the designer."
    ),
    "joints.shape_short": (
        "Bays {first} to {last} are {ratio} to 1, over 1.5: too short for the width. {count} bays, up to {outside}, "
        "are {then} to 1."
    ),
    "joints.shape_short_ask": (
        "Bays {first} to {last} are {ratio} to 1, over 1.5: too short for the width. Ask the designer."
    ),
    "joints.shape_wide": (
        "Bays are {ratio} to 1, over 1.5: too wide. Add a joint along the middle, or ask the designer."
    ),
    "joints.shape_long": "Bays are {ratio} to 1, over 1.5: too long. Use more bays.",
    "joints.silica": (
        "*Sawing makes silica dust.* Water on the blade, and a mask that fits: RPE to the risk assessment."
    ),
    "joints.stop_text": "Bays are {outside} outside; {most} is the usual limit. Use more bays.",
}
