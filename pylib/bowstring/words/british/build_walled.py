"""A wall and its footing, where Britain says something else."""

MESSAGES = {
    "walled.panel": "Each bay takes *{volume}*.",
    "walled.bed": "A {base} sub-base under the footing is {volume} in place. Order more: it packs down.",
    "walled.line_again": "After the footing's pour, set the line again on it, from the pegs.",
    "walled.below_base": (
        "Top of footing *{footing}* below top of wall, its underside {under}. Bottom of dig *{dig}* below top of wall, "
        "sub-base included."
    ),
    "walled.levels": "Levels, {unit}: {told}.",
    "walled.rods": "Staff reads: {told}.",
    "walled.head_level": "level, {unit}",
    "walled.head_rod": "staff; instrument {hi}",
    "walled.call_half": "Half the wagon out: *{plan}* up, all along. Ring the plant if it is under *{call}*.",
    "walled.call_last": "Half of wagon {number} out: *{plan}* up, all along. Ring the plant if it is under *{call}*.",
    "walled.to_base": "Cut and fill are to the underside of the sub-base, under the footing.",
    "walled.no_base": "No sub-base is given: cut and fill are to the underside of the footing.",
    "walled.designed": "Pressure, ties and bracing: the form supplier and a temporary works designer.",  # from memory
    "in_dig.hint": "As it is: set pegs before you dig.",
    "in_dig.hint_deep": "As far back as it is deep ({deep} taken). Or set pegs first.",
}
