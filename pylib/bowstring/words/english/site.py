"""What can be wrong with what a job says of the site."""

MESSAGES = {
    "site.whole.wrong": "This isn't a whole number.",
    "site.whole.remedy": "Give a whole number.",
    "site.rows.wrong": "This should be a list of at most {most} entries.",
    "site.rows.remedy": "Give a list, or leave it out.",
    "site.stops_unsaid.wrong": "What this obstacle blocks isn't given.",
    "site.stops_unsaid.remedy": (
        "Say tape for what no tape or sight passes (a wall, a shed). Say feet for what you can't stand in but a tape can cross "
        "(a pond, a bed)."
    ),
    "site.outline_short.wrong": "An outline needs three corners or more.",
    "site.outline_short.remedy": "Give the corners in order, each as a pair: along the chord from A, and off it.",
    "site.outline_thin.wrong": "This outline has no width that a tape could show.",
    "site.outline_thin.remedy": "Give a fence or a wall its thickness: 4 in or 100 mm will do, if it is thinner.",
    "site.outline_crossed.wrong": "This outline crosses or touches itself.",
    "site.outline_crossed.remedy": "Give the corners in the order in which you walk around it.",
    "site.outline_and_circle.wrong": "This obstacle has corners, and also a center or a diameter.",
    "site.outline_and_circle.remedy": (
        "Give one or the other: corners for a wall or a bed, center and diameter for a tree."
    ),
    "site.circle_half.wrong": "A round obstacle needs its center and its diameter, and one of them is missing.",
    "site.circle_half.remedy": "Give where its center is (along the chord from A, and off it) and how wide it is.",
    "site.circle_small.wrong": "Nothing that thin is in the way.",
    "site.circle_small.remedy": "Give {least} or more, and check the unit.",
    "site.obstacle": "Obstacle {number}",
    "site.obstacle_name.wrong": '"{name}" could be taken for a point of the layout.',
    "site.obstacle_name.remedy": "Call it what it is, such as shed, pond or old oak.",
    "site.obstacle_twice.wrong": "Two obstacles are called {name}.",
    "site.obstacle_twice.remedy": "Give each its own name, so the sheet can say which one is in the way.",
    "site.error_large.wrong": "That is no small error: at most {most}.",
    "site.error_large.remedy": "Give how far off the crew usually is, and check the unit.",
    "site.angle_large.wrong": "That is no small error for an angle: at most {most} degrees.",
    "site.angle_large.remedy": "Give how far off a turned angle usually is, such as 0°1' or 0.02.",
    "site.known_name.wrong": 'A known point can\'t have the name "{name}".',
    "site.known_name.remedy": (
        "Use a name that isn't a point of the layout, such as hydrant or wall corner. A and B are the ends."
    ),
    "site.known_twice.wrong": "Two known points are called {name}.",
    "site.known_twice.remedy": "Give each its own name.",
    "site.known_place.wrong": "The position of the known point {name} isn't given.",
    "site.known_place.remedy": "Give x (along the chord from A) and y (off it, toward the curve).",
    "site.known_off.wrong": "The known point {name} is {off} from the layout's own {name}.",
    "site.known_off.remedy": (
        "An end given as a known point needs its place in the layout, x {x} and y 0. If it is elsewhere, give the measured "
        "chord, or another name."
    ),
    "site.no_such_mark.wrong": "There is no such point on the ground.",
    "site.no_such_mark.remedy": "Use one of: {known}.",
    "site.mark_twice.wrong": "{mark} is named twice.",
    "site.mark_twice.remedy": "Name two different points.",
    "site.control_place.wrong": "The drawing's coordinates of this point aren't given.",
    "site.control_place.remedy": "Give {axes}.",
    "site.control_axes.wrong": "This coordinate doesn't belong to the axes chosen.",
    "site.control_axes.remedy": "Give {axes} and nothing else, or choose the other axes.",
    "site.control_far.wrong": (
        "By the drawing's coordinates the two control points are {drawn} apart. In the layout they are {here}: {off} between "
        "them."
    ),
    "site.control_far.remedy": (
        "Check which points they are, the order of the axes and the unit. Then ask the designer."
    ),
    "site.first_gap_alone.wrong": "A first gap needs a spacing for the gaps after it, and no rounds of halving.",
    "site.first_gap_alone.remedy": "Give the spacing, or leave the first gap out.",
    "site.first_gap_long.wrong": "The first gap, {gap}, is no shorter than the arc's whole chord.",
    "site.first_gap_long.remedy": "Give a gap that leaves room for a stake.",
    "site.first_gap_wide.wrong": "The first gap, {gap}, is wider than the maximum spacing, {spacing}.",
    "site.first_gap_wide.remedy": "Give a shorter first gap, or a wider spacing.",
    "site.first_gap_method.wrong": "A first gap belongs to methods that go by equal gaps.",
    "site.first_gap_method.remedy": (
        "Choose the swing, two tapes, chords produced, deflection angles or coordinates, or leave it out."
    ),
    "site.stations_none.wrong": "The list of stations is empty.",
    "site.stations_none.remedy": "Give one or more, or leave the list out.",
    "site.stations_twice.wrong": "Two stations are at {station}.",
    "site.stations_twice.remedy": "Give each station once.",
    "site.stations_off.wrong": "A station at {station} isn't between the chord's ends.",
    "site.stations_off.remedy": "Give distances from A along the chord, more than 0 and less than {chord}.",
    "site.stations_method.wrong": "Chosen stations belong to ordinates from the long chord.",
    "site.stations_method.remedy": "Choose ordinates, or leave the stations out.",
    "site.parallel_close.wrong": "That string is the chord A-B itself, or hardly off it.",
    "site.parallel_close.remedy": (
        "Give {least} or more, with a minus behind the chord. For ordinates from A-B leave it out."
    ),
    "site.halve_first_method.wrong": "Halving before another method is for ordinates only.",
    "site.halve_first_method.remedy": "Choose ordinates, or leave it out.",
    "site.halve_first_stations.wrong": "Stations along the long chord and halving first don't go together.",
    "site.halve_first_stations.remedy": "Leave one of the two out.",
    "site.halve_first_levels.wrong": "There can't be more first rounds of halving than rounds in all.",
    "site.halve_first_levels.remedy": "Give more rounds, or halve less often.",
    "site.got_method.wrong": "A mid-ordinate and short chords are read at stakes set by halving.",
    "site.got_method.remedy": "Give what this step tapes, as measures.",
}
