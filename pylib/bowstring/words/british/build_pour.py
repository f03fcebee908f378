"""The concrete, where Britain says something else."""

MESSAGES = {
    "pour.no_inner": "No order: the width reaches the centre",
    "pour.why_quarter_metre": (
        "{area} at {depth} is {volume}; {waste} waste makes {with_waste}; up to the next 0.25 m³."
    ),
    "pour.reach_note": (
        "Pour from A. Short of that mark, the order won't reach B. Past it, it will if the sub-base stays the same. "
        "Ask how much he's unloaded; measure along the outer form."
    ),
    "pour.bulkhead": (
        "Have a stop end ready at *joint {joint}*: {outside} outside, {inside} inside. "
        "With the sub-base {low} low all over, this order ends at {ends}."
    ),
    "pour.bulkhead_last": (
        "Have a stop end ready at *joint {joint}*, {outside} outside, {inside} inside. A short load ends there."
    ),
    "pour.if_low": "sub-base {low} low all over",
    "pour.fills": "{order} fills a sub-base up to {low} low on average, nothing spilled.",
    "pour.fills_bags": "{order} bags fill a sub-base up to {low} low on average, nothing spilled.",
    "pour.measure": "Measure the sub-base at every stake before you ring the order in.",
    "pour.call": "Ring the plant",
    "pour.call_table": "When to ring the plant; distances: {where}",
    "pour.call_at": "ring if short of",
    "pour.small_load": "By the wagon it's *{order}*: ask the plant for its part-load charge.",
    "pour.one_truck": "*One wagon* of up to {truck}.",
    "pour.trucks": "*{count} wagons* of {truck}, {last} on the last. Ask the plant how it splits and spaces them.",
    "pour.out": "wagon out",
    "pour.out_full": "all of wagon {number}",
    "pour.out_last_half": "1/2 of wagon {number}",
    "pour.out_last_three_quarters": "3/4 of wagon {number}",
    "pour.panel": "Each bay takes *{panel}*; {one} reaches *{reach}* of outer form.",
    "pour.panels_taper": "The bays take from *{least}* to *{most}*, as the width changes.",
    "pour.panel_bags": "Each bay takes about *{count} bags*.",
    "pour.bags_many": "*{count} bags of {bag}*: order a wagon.",
    "pour.form_short": "The form is {height} high: the sub-base is {off} below its foot. Bank earth against it.",
    "pour.form_measured": (
        "The form is {height} high: as measured the sub-base is up to {off} below its foot. Bank earth against it."
    ),
    "pour.form_deep": "The form is {height} high: its foot goes {off} into the sub-base.",
    "pour.base_dug": "*Sub-base {base}:* {volume} in place, over the dig.",
    "pour.base_slab": "*Sub-base {base}:* {volume} in place, under the slab.",
    "pour.bed_dug": (
        "A {base} sub-base is {volume} in place under the slab, {dug} over the whole dig. Order more: it packs down."
    ),
    "pour.bed": "A {base} sub-base under the slab is {volume} in place. Order more: it packs down.",
    "pour.burns": "*Wet cement burns and doesn't hurt at first.* Gloves, wellingtons, kneepads; wash it off.",
    "pour.mix": "The mix, air, slump and curing are the specification's and the plant's. Nothing here sets them.",
}
