"""The joints, in words."""

MESSAGES = {
    "joints.title": "Joints",
    "joints.open": "Needs the width",
    "joints.open_edge": "Needs the side the slab is on",
    "joints.open_more": "usual: at most {most} apart at {thickness}",
    "joints.open_plain": "usual: at most {most} apart",
    "joints.no_inner": "No slab: the width reaches the center",
    "joints.too_many": "Over {most} panels: break the line up",
    "joints.too_long": "Outside over {most} at {thickness}",
    "joints.too_long_plain": "Outside over {most}",
    "joints.one": "One panel, {outside} outside",
    "joints.panels": "{count} panels, {outside} outside",
    "joints.panels_upto": "{count} panels, up to {outside}",
    "joints.conclusion": "{count} panels, {outside} outside,\n{inside} inside",
    "joints.conclusion_taper": "{count} panels, up to {outside} outside,\nup to {inside} inside",
    "joints.conclusion_one": "One panel, no joint:\n{outside} outside, {inside} inside",
    "joints.stop_more": "panels are {outside}: add a joint",
    "joints.ratio_near": "{inside} inside: {ratio} to 1, limit 1.5",
    "joints.ratio_over": "{inside} inside: {ratio} to 1, over 1.5",
    "joints.inside_only": "{inside} inside; no joint",
    "joints.inside_depth": "{inside} inside; cut {depth} deep or more",
    "joints.inside_plain": "{inside} inside; needs the thickness",
    "joints.inside_wall": "{inside} inside; joints as drawn",
    "joints.most_every": "Panels are at most {most} along the outer form, as you said.",
    "joints.most_count": "{count} panels, as you said. The usual limit is {limit} long.",
    "joints.count_taken": "You said {said} panels. With a joint at each end of the apron, it's {count}.",
    "joints.most_width": "Panels are no longer than the slab is wide: {most}. The usual limit is {limit}.",
    "joints.most_width_taper": (
        "Panels are no longer than the slab is wide halfway along: {most}. The usual limit is {limit}."
    ),
    "joints.most_thickness": "Panels are at most {most}, the usual limit for {thickness}.",
    "joints.most_thickness_thin": "Panels are at most {most}, the usual limit for {thickness}: no thickness is given.",
    "joints.most_band": (
        "This narrow, it's a curb or a band: panels as long as wide don't suit it. Joints are at most {most} apart."
    ),
    "joints.taped": (
        "Tape each from A, never mark to mark, on the *concrete face* of the board. "
        "The back of the outer board runs {longer} longer."
    ),
    "joints.joint": "joint",
    "joints.outer_form": "outer form, from A",
    "joints.inner_form": "inner form, from A",
    "joints.at": "at {stake}",
    "joints.table": "Joints: running distances along both forms",
    "joints.how_many": "How many panels",
    "joints.offer": "{count} panels",
    "joints.offer_one": "1 panel",
    "joints.offer_more": "{outside} outside",
    "joints.offer_over": "{outside} outside, over your {most}",
    "joints.cut": "Cut them",
    "joints.square": (
        "Mark to mark, straight across: that line points at the center. "
        "It meets both edges square, so no corner is sharp."
    ),
    "joints.corners": (
        "Mark to mark, straight across: that line points at the center. The width changes, so its corners aren't "
        "square: {corner} or more. Under 60° they break off."
    ),
    "joints.corners_sharp": (
        "Mark to mark, straight across: that line points at the center. "
        "The width changes so fast that a corner is only {corner}. Under 60° it breaks off: ask the designer."
    ),
    "joints.deep": "Cut at least *{depth} deep*, a quarter of {thickness}.",
    "joints.deep_short": "Cut at least *{depth} deep*.",
    "joints.deep_wall": "The drawing says how its joints are made.",
    "joints.deep_open": "Cut at least a quarter of the thickness deep.",
    "joints.shape": "Panels are {ratio} to 1 at the most; keep under 1.5.",
    "joints.shape_never": (
        "Panels are {ratio} to 1, over 1.5. The curve is too tight for any number of panels to fix that: ask the "
        "designer."
    ),
    "joints.shape_taper": "Panels run to {ratio} to 1, over 1.5: ask the designer where joints go.",
    "joints.shape_apron": (
        "Panel {number} is {ratio} to 1, over 1.5: the apron ends too near. Move that end, or ask the designer."
    ),
    "joints.shape_short": (
        "Panels {first} to {last} are {ratio} to 1, over 1.5: too short for the width. {count} panels, up to {outside}, "
        "are {then} to 1."
    ),
    "joints.shape_short_ask": (
        "Panels {first} to {last} are {ratio} to 1, over 1.5: too short for the width. Ask the designer."
    ),
    "joints.shape_wide": (
        "Panels are {ratio} to 1, over 1.5: too wide. Add a joint along the middle, or ask the designer."
    ),
    "joints.shape_long": "Panels are {ratio} to 1, over 1.5: too long. Use more panels.",
    "joints.isolation": (
        "*{gap} isolation joint* only against a building, a drive or an old slab, or where the spec says."
    ),
    "joints.silica": "*Sawing makes silica dust.* Water on the blade, respirator where the rule requires one.",
    "joints.stop_text": "Panels are {outside} outside; {most} is the usual limit. Use more panels.",
    "joints.stop_many": "Joints are marked from one end here, {most} at the most.",
}
