"""The concrete, in words."""

MESSAGES = {
    "pour.title": "Concrete",
    "pour.open": "Needs width and thickness",
    "pour.open_width": "Needs the width",
    "pour.open_edge": "Needs the side the slab is on",
    "pour.open_thickness": "Needs the thickness",
    "pour.open_more": "no order without both",
    "pour.no_inner": "No order: the width reaches the center",
    "pour.order_yards": "Order {number} yards",
    "pour.order_metres": "Order {number} m³",
    "pour.bags": "{count} bags of {bag}",
    "pour.unit_yards": "yards to order",
    "pour.unit_metres": "m³ to order",
    "pour.unit_bags": "bags of {bag}",
    "pour.more": "{volume} in the forms, {waste} waste",
    "pour.tight": "{waste} with waste: next is {next}",
    "pour.feet2": "{area} ft²",
    "pour.metres2": "{area} m²",
    "pour.yards3": "{volume} yd³",
    "pour.metres3": "{volume} m³",
    "pour.why_quarter": "{area} at {depth} is {volume}; {waste} waste makes {with_waste}; up to the next quarter yard.",
    "pour.why_quarter_metre": (
        "{area} at {depth} is {volume}; {waste} waste makes {with_waste}; up to the next quarter m³."
    ),
    "pour.why_step": "{area} at {depth} is {volume}; {waste} waste makes {with_waste}; up to the next {step}.",
    "pour.why_bags": "{area} at {depth} is {volume}; {waste} waste makes {with_waste}.",
    "pour.call": "Call the plant",
    "pour.call_small": "outer form, from A",
    "pour.call_table": "When to call the plant; distances: {where}",
    "pour.out": "truck out",
    "pour.on_plan": "on track at",
    "pour.call_at": "call if short of",
    "pour.out_half": "1/2",
    "pour.out_three_quarters": "3/4",
    "pour.out_full": "all of truck {number}",
    "pour.out_last_half": "1/2 of truck {number}",
    "pour.out_last_three_quarters": "3/4 of truck {number}",
    "pour.at_joint": "joint {joint}",
    "pour.reach_note": (
        "Pour from A. Short of that mark, the order won't reach B. Past it, it will if the base stays the same. "
        "Ask how much he's unloaded; measure along the outer form."
    ),
    "pour.bulkhead": (
        "Have a bulkhead ready at *joint {joint}*: {outside} outside, {inside} inside. "
        "With the base {low} low all over, this order ends at {ends}."
    ),
    "pour.bulkhead_last": (
        "Have a bulkhead ready at *joint {joint}*, {outside} outside, {inside} inside. A short load ends there."
    ),
    "pour.changes": "What changes it",
    "pour.if": "if",
    "pour.then_yards": "order, yd³",
    "pour.then_metres": "order, m³",
    "pour.then_bags": "bags",
    "pour.depth_edges": "{depth}, edges {edge},",
    "pour.if_low": "base {low} low all over",
    "pour.if_thick": "{thickness} thick",
    "pour.if_wide": "{width} wide",
    "pour.if_wider": "{more} wider all along",
    "pour.if_waste": "{waste} waste",
    "pour.low_over": "+{extra}: more than the waste",
    "pour.low_under": "+{extra}: out of the waste",
    "pour.fills": "{order} fills a base up to {low} low on average, nothing spilled.",
    "pour.fills_bags": "{order} bags fill a base up to {low} low on average, nothing spilled.",
    "pour.fills_none": "{order}: just enough to fill the forms as drawn.",
    "pour.measure": "Measure the base at every stake before you call it in.",
    "pour.comes": "How it comes",
    "pour.one_truck": "*One truck* of up to {truck}.",
    "pour.trucks": "*{count} trucks* of {truck}, {last} on the last. Ask the plant how it splits and spaces them.",
    "pour.small_load": "By the truck it's *{order}*: ask the plant for its short-load charge.",
    "pour.panel": "Each panel takes *{panel}*; {one} reaches *{reach}* of outer form.",
    "pour.panel_one": "It takes *{panel}*; {one} reaches *{reach}* of outer form.",
    "pour.panels_taper": "The panels take from *{least}* to *{most}*, as the width changes.",
    "pour.panel_bags": "Each panel takes about *{count} bags*.",
    "pour.one_yard": "one yard",
    "pour.one_metre": "one m³",
    "pour.bag_feet": "0.60 ft³",
    "pour.bag_litres": "11.5 litres",
    "pour.bag_makes": "One bag of {bag} is figured to make {made}: check the bag.",
    "pour.bags_many": "*{count} bags of {bag}*: order a truck.",
    "pour.form_even": "The form is {height} high, as deep as the slab.",
    "pour.form_short": "The form is {height} high: the base is {off} below its foot. Bank earth against it.",
    "pour.form_measured": (
        "The form is {height} high: as measured the base is up to {off} below its foot. Bank earth against it."
    ),
    "pour.form_low": "A form {height} high leaves {off} open under its foot: use a taller board.",
    "pour.form_deep": "The form is {height} high: its foot goes {off} into the base.",
    "pour.edges": ("Edges {depth} deep for {wide} {where} add *{extra}*, sides plumb: sloped sides take more."),
    "pour.footing": (
        "The footing, {wide} wide and {depth} thick under the middle, takes {volume}. It is poured first: order "
        "*{order}* for it, {waste} waste included."
    ),
    "pour.form_wall": "Its forms and bracing are designed, not boards on stakes.",
    "pour.base_dug": "*Base {base}:* {volume} in place, over the dig.",
    "pour.base_slab": "*Base {base}:* {volume} in place, under the slab.",
    "pour.bed_dug": (
        "A {base} base is {volume} in place under the slab, {dug} over the whole dig. Order more: it packs down."
    ),
    "pour.bed": "A {base} base under the slab is {volume} in place. Order more: it packs down.",
    "pour.both": "{order} is {other}.",
    "pour.taken_waste": "{waste} waste is assumed; 5 to 10% is usual.",
    "pour.taken_step": "Figured in steps of {step}: ask your plant how it sells.",
    "pour.burns": "*Wet cement burns and doesn't hurt at first.* Gloves, boots, kneepads; wash it off.",
    "pour.mix": "The mix, air, slump and curing are the spec's and the plant's. Nothing here sets them.",
}
