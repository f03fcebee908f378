"""The plan of the site that is drawn on: what differs on a British site."""

MESSAGES = {
    "siteplan.no_centre": "The arc's centre is too far behind the chord to be shown.",
    "siteplan.centre": "centre {mark}",
    "siteplan.tapping.round": "Tree or post: tap its centre, then its edge. So far:",
    "siteplan.round_taps": "Something round takes two taps: its centre, then its edge. Undo the others, or tap on.",
    "siteplan.round_small": "Its edge is nearly at its centre. Undo one, and tap farther out.",
}
