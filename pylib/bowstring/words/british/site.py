"""What can be wrong with what a job says of the site: what differs on a British site."""

MESSAGES = {
    "site.outline_thin.remedy": "Give a fence or a wall its thickness: 100 mm or 4 in will do, if it is thinner.",
    "site.outline_and_circle.wrong": "This obstacle has corners, and also a centre or a diameter.",
    "site.outline_and_circle.remedy": (
        "Give one or the other: corners for a wall or a bed, centre and diameter for a tree."
    ),
    "site.circle_half.wrong": "A round obstacle needs its centre and its diameter, and one of them is missing.",
    "site.circle_half.remedy": "Give where its centre is (along the chord from A, and off it) and how wide it is.",
    "site.obstacle_name.wrong": '"{name}" could be taken for a point of the setting out.',
    "site.error_large.remedy": "Give how far off the gang usually is, and check the unit.",
    "site.known_name.remedy": (
        "Use a name that isn't a point of the setting out, such as hydrant or wall corner. A and B are the ends."
    ),
    "site.known_place.remedy": "Give x (along the chord from A) and y (off it, towards the curve).",
    "site.known_off.wrong": "The known point {name} is {off} from the setting out's own {name}.",
    "site.known_off.remedy": (
        "An end given as a known point needs its place in the setting out, x {x} and y 0. If it is elsewhere, give "
        "the measured chord, or another name."
    ),
    "site.control_far.wrong": (
        "By the drawing's coordinates the two control points are {drawn} apart. In the setting out they are "
        "{here}: {off} between them."
    ),
}
