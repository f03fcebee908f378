"""What can be wrong with what a job says of the site."""

MESSAGES = {
    "site.hands.wrong": "This isn't a whole number.",
    "site.hands.remedy": "Give a whole number.",
    "site.rows.wrong": "This should be a list of at most {most} entries.",
    "site.rows.remedy": "Give a list, or leave it out.",
    "site.stops_unsaid.wrong": "It isn't said what this obstacle stops.",
    "site.stops_unsaid.remedy": (
        "Say tape for what no tape or sight passes (a wall, a shed), feet for what nobody can stand in but a tape can cross "
        "(a pond, a bed)."
    ),
    "site.outline_short.wrong": "An outline needs three corners or more.",
    "site.outline_short.remedy": "Give the corners in order, each as a pair: along the chord from A, and off it.",
    "site.known_name.wrong": "A known mark can't have the name \"{name}\".",
    "site.known_name.remedy": "Use a word that isn't a mark of the layout, such as hydrant or wall corner. A and B are the ends.",
    "site.known_twice.wrong": "Two known marks are called {name}.",
    "site.known_twice.remedy": "Give each a name of its own.",
    "site.known_place.wrong": "Where the known mark {name} stands isn't given.",
    "site.known_place.remedy": "Give x (along the chord from A) and y (off it, toward the curve).",
    "site.known_off.wrong": "The known mark {name} stands {off} from the layout's own {name}.",
    "site.known_off.remedy": (
        "An end that is given as a known mark is given with its place in the layout, x {x} and y 0; if it stands elsewhere, give "
        "the chord that you found, or another name."
    ),
    "site.no_such_mark.wrong": "There is no such mark on the ground.",
    "site.no_such_mark.remedy": "Use one of: {known}.",
    "site.mark_twice.wrong": "{mark} is named twice.",
    "site.mark_twice.remedy": "Name two different marks.",
    "site.control_place.wrong": "The drawing's coordinates of this mark aren't given.",
    "site.control_place.remedy": "Give {axes}.",
    "site.control_far.wrong": (
        "By the drawing's coordinates the two control marks are {drawn} apart, in the layout {here}: {off} between them."
    ),
    "site.control_far.remedy": "Check which marks they are, the order of the axes and the unit; then ask whoever drew it.",
    "site.first_gap_alone.wrong": "A first gap of its own needs a spacing for the gaps after it, and no levels.",
    "site.first_gap_alone.remedy": "Give the spacing, or leave the first gap out.",
    "site.first_gap_long.wrong": "The first gap, {gap}, is no shorter than the arc's whole chord.",
    "site.first_gap_long.remedy": "Give a gap that leaves room for a stake.",
    "site.stations_off.wrong": "A station at {station} isn't between the chord's ends.",
    "site.stations_off.remedy": "Give distances from A along the chord, more than 0 and less than {chord}.",
    "site.stations_method.wrong": "Chosen stations belong to ordinates from the long chord.",
    "site.stations_method.remedy": "Choose ordinates, or leave the stations out.",
    "site.halve_first_method.wrong": "Halving first and then another way is for ordinates only.",
    "site.halve_first_method.remedy": "Choose ordinates, or leave it out.",
    "site.got_method.wrong": "What was got at a stake can be worked in by halving only.",
    "site.got_method.remedy": "Set the rest out by halving, or leave out what was got.",
}
