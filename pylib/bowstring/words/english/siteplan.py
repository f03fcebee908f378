"""The plan of the site that is drawn on, and what can be wrong with what was tapped on it."""

MESSAGES = {
    "siteplan.title": "Plan of the site, to scale",
    "siteplan.desc.tape": "{what} blocks tape and feet",
    "siteplan.desc.feet": "{what} blocks feet only",
    "siteplan.key.tape": "blocks tape and feet",
    "siteplan.key.feet": "blocks feet; a tape passes over",
    "siteplan.no_centre": "The arc's center is too far behind the chord to be shown.",
    "siteplan.centre": "center {mark}",
    "siteplan.more": "And {count} more.",
    "siteplan.tapping.tape": "Wall: tap its corners in order around it. So far:",
    "siteplan.tapping.feet": "Pond: tap its corners in order around it. So far:",
    "siteplan.tapping.round": "Tree or post: tap its center, then its edge. So far:",
    "siteplan.round_taps": "Something round takes two taps: its center, then its edge. Undo the others, or tap on.",
    "siteplan.round_small": "Its edge is nearly at its center. Undo one, and tap farther out.",
    "siteplan.name.round": "tree",
    "siteplan.name.tape": "wall",
    "siteplan.name.feet": "pond",
    "siteplan.few": "An outline needs three corners or more. Keep tapping.",
    "siteplan.many": "An outline has at most {most} corners. Undo some.",
    "siteplan.thin": (
        "There is no ground between these corners. Undo some, or tap one to the side: a wall has a thickness."
    ),
    "siteplan.crossed": (
        "The outline crosses or touches itself. Undo some, and tap the corners in the order in which you walk around "
        "it."
    ),
    "siteplan.full": "There are {most} obstacles already. Clear one first.",
    "siteplan.ways": "All methods side by side",
}
