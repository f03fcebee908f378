"""The common blunders: what differs on a British site."""

MESSAGES = {
    "mistake.arc_for_chord": (
        "The arc length was set out instead of the chord: B stands {wrong} from {start} instead of {right}."
    ),
    "mistake.wrong_hand": "The whole curve was set out on the wrong side.",
    "mistake.wrong_radius": "The drawing's radius ({wrong}) was measured from the centre; the stakes' own is {right}.",
}
