"""The numbers face: what is told of the slab: what differs on a British site."""

MESSAGES = {
    "numbers.line_slab": "Slab, kerb or wall",
    "numbers.slab_conflict": "Centreline drawn: which side?",
    "numbers.slab_no_inner": "No inner edge|The slab reaches the arc's centre. Check the width and the side.",
    "numbers.slab_centre": "Half to each side|Your drawing is to the centreline, so the slab lies on both sides of it.",
    "numbers.slab_which": (
        "Which side is the slab on?|Your drawing is to the centreline, but the slab is on one side of it."
    ),
    "numbers.slab_no_inner.of_wall": (
        "No inner face|The wall reaches the arc's centre. Check the thickness and the side."
    ),
    "numbers.slab_centre.of_wall": (
        "Half to each side|Your drawing is to the centreline, so the wall lies on both sides of it."
    ),
    "numbers.slab_which.of_wall": (
        "Which side is the wall on?|Your drawing is to the centreline, but the wall is on one side of it."
    ),
    "numbers.picture_slab.outside": "The slab lies from your line towards the centre.",
    "numbers.picture_slab.inside": "The slab lies from your line away from the centre.",
    "numbers.picture_center": "centre",
    "numbers.lies_small.outside": "towards the centre",
    "numbers.slope_crown": "camber {crown}",
}
