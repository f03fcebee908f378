"""The plan of the site that is drawn on, and what can be wrong with what was tapped on it."""

MESSAGES = {
    "siteplan.title": "Plan of the site, to scale",
    "siteplan.desc.tape": "{what} stops tape and feet",
    "siteplan.desc.feet": "{what} stops feet only",
    "siteplan.key.tape": "stops tape and feet",
    "siteplan.key.feet": "stops feet; a tape passes over",
    "siteplan.no_centre": "The arc's centre is too far behind the chord to be shown.",
    "siteplan.centre": "centre {mark}",
    "siteplan.more": "And {count} more.",
    "siteplan.tapping.tape": "Wall: tap its corners, in order round it. So far:",
    "siteplan.tapping.feet": "Pond: tap its corners, in order round it. So far:",
    "siteplan.name.tape": "wall",
    "siteplan.name.feet": "pond",
    "siteplan.few": "An outline needs three corners or more. Tap on.",
    "siteplan.many": "An outline has at most {most} corners. Undo some.",
    "siteplan.thin": "There is no ground between these corners. Undo some, or tap one to the side: a wall has a thickness.",
    "siteplan.crossed": "The outline crosses or touches itself. Undo some, and tap the corners in the order in which you walk round it.",
    "siteplan.full": "There are {most} obstacles already. Empty one first.",
    "siteplan.ways": "All ways side by side",
}
