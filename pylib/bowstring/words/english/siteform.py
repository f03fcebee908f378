"""The form's words for the method, and for what it is told of the site and of the crew."""

MESSAGES = {
    # headings and folds
    "form.section_options": "Method options",
    "form.section_options.help": "Leave these blank unless you have a reason; the usual values are used.",
    "form.section_tape": "Tape and crew",
    "form.section_tape.help": "These decide which methods are possible, and how accurate the stakes will be.",
    "form.section_room": "Room to work",
    "form.section_known": "Known points",
    "form.section_known.help": "Points already on the ground. Tapes and an instrument can work from them.",
    "form.section_fall": "The slope of the ground",
    "form.section_fall.help": (
        "A tape along a slope reads long. The sheet then says what to tape for each level length."
    ),
    "form.section_errors": "How accurately you work",
    "form.section_errors.help": (
        "One standard deviation each: two tries in three are better than that. Blank: the usual value. They change the accuracy "
        "shown, not where the stakes go."
    ),
    "form.section_control": "The drawing's coordinates",
    "form.section_control.help": (
        "Two points whose coordinates the drawing gives: x and y, or northing and easting. The sheet then shows the stakes in "
        "these coordinates too."
    ),
    "form.row_ground": "Obstacle {number}",
    "form.row_known": "Point {number}",
    "form.row_control": "Control point {number}",
    # the method and its options
    "form.method": "Method",
    "form.method.centre": "swing from the center",
    "form.method.none": "the recommended one",
    "form.method.halving": "halving",
    "form.method.rule": "quarter rule, not exact",
    "form.method.ordinates": "ordinates from the long chord",
    "form.method.tangent": "offsets from the tangents",
    "form.method.tapes": "two tapes",
    "form.method.produced": "chords produced",
    "form.method.angles": "deflection angles",
    "form.method.coordinates": "coordinates",
    "form.method_apart": "Instrument and road methods:",
    "form.tangent_from": "Tangent offsets from",
    "form.tangent_from.help": "Both ends make them shorter. Use one end where the other has no room.",
    "form.tangent_from.both": "both ends",
    "form.tangent_from.A": "end A",
    "form.tangent_from.B": "end B",
    "form.tapes_from_0": "First tape held at",
    "form.tapes_from_0.help": "A, B or a known point, for two tapes. Blank: A.",
    "form.tapes_from_1": "Second tape held at",
    "form.tapes_from_1.help": "Another point. Blank: B.",
    "form.halve_first": "Rounds of halving first",
    "form.halve_first.help": "0 to 6, for ordinates. They are then shorter, from each short chord.",
    "form.stations": "Ordinates at",
    "form.stations.help": "Distances from A along the chord, with ; between them. They replace the equal spacing.",
    "form.first_gap": "First gap",
    "form.first_gap.help": "Distance from A to the first stake; the last gap takes the remainder.",
    # tape and hands
    "form.tape_length": "Longest tape",
    "form.tape_length.help": "Blank: 100 ft. Anything longer is reported as not possible.",
    "form.tape_length.help.metric": "Blank: 30.48 m. Anything longer is reported as not possible.",
    "form.centre_reachable": "The arc's center",
    "form.centre_reachable.help": "Only after you have seen that a pin can stand there, with a clear swing.",
    "form.centre_reachable.none": "out of reach, or not known",
    "form.centre_reachable.reachable": "can be reached",
    "form.tape_class": "Tape accuracy class",
    "form.tape_class.help": (
        "Printed near the tape's zero: I, II or III. A better class makes long pulls more accurate."
    ),
    "form.tape_class.none": "the usual class",
    "form.tape_class.I": "I",
    "form.tape_class.II": "II",
    "form.tape_class.III": "III",
    "form.hands": "How many people",
    "form.hands.help": "Blank: 2. Alone, you can only swing from the center.",
    # what is in the way
    "form.ground_name": "Name",
    "form.ground_name.help": "What the sheet calls it.",
    "form.ground_stops": "What it blocks",
    "form.ground_stops.help": "Strings and tapes pass at least 3 in from what blocks them.",
    "form.ground_stops.help.metric": "Strings and tapes pass at least 75 mm from what blocks them.",
    "form.ground_stops.short": "What it blocks",
    "form.ground_stops.none": "choose",
    "form.ground_stops.removed": "nothing: remove it",
    "form.ground_stops.tape": "tape and feet (a wall)",
    "form.ground_stops.feet": "feet only (a pond)",
    "form.ground_at": "Center, if it is round",
    "form.ground_at.help": "A tree, post, box or manhole: x, y of its center, like 12, -3.",
    "form.ground_diameter": "Its diameter",
    "form.ground_diameter.help": "With the center, in place of corners. Take the widest.",
    "form.ground_outline": "Corners, in order",
    "form.ground_outline.help": (
        "Each as x, y with ; between. x runs along the chord from A; y runs off it toward the curve, with a minus behind the "
        "chord. Like 12, -3; 20, -3; 16, -8."
    ),
    "form.room_behind": "Room behind the chord",
    "form.room_behind.help": "How far back anyone can go. Blank: unlimited.",
    "form.room_inside": "Room inside the curve",
    "form.room_inside.help": "From the curve toward its center.",
    "form.room_outside": "Room outside the curve",
    "form.room_outside.help": "From the curve away from its center.",
    "form.parallel": "String parallel to A-B: how far from it",
    "form.parallel.help": (
        "For ordinates where A-B itself is blocked. A minus is behind A-B, like -8; without it the string is toward "
        "the curve. The sheet compares it with the other methods. To use it, choose ordinates."
    ),
    # known marks
    "form.known_name": "Name",
    "form.known_name.help": "A name of your own, such as hydrant; A and B for the ends.",
    "form.known_x": "Along the chord",
    "form.known_x.help": "x, from A toward B.",
    "form.known_y": "Off the chord",
    "form.known_y.help": "y, toward the curve; minus behind the chord.",
    "form.known_sigma": "How far off it may be",
    "form.known_sigma.help": "One standard deviation in x and in y. Blank: it is exact.",
    # the slope
    "form.fall_along": "Fall from A to B",
    "form.fall_along.help": "Minus where the ground rises.",
    "form.fall_across": "Fall away from the chord",
    "form.fall_across.help": "Toward the curve's side; minus where it rises.",
    # errors
    "form.error_read": "Reading the tape",
    "form.error_read.help": "At one end of one pull. It matters most where many short lengths add up.",
    "form.error_scale": "The tape's scale",
    "form.error_scale.help": "As a decimal: 0.0002 is 1 part in 5,000. It matters on long pulls.",
    "form.error_stake": "Plumbing and driving",
    "form.error_stake.help": "How far a stake ends up from where it was held.",
    "form.error_line": "Staying on a string",
    "form.error_line.help": "Sideways off it.",
    "form.error_angle": "Turning an angle",
    "form.error_angle.help": "The instrument's, in degrees. It matters for deflection angles and coordinates only.",
    # control
    "form.control_mark": "Point",
    "form.control_mark.help": "A, B or a known point.",
    "form.control_x": "x (east)",
    "form.control_y": "y (north)",
    "form.control_n": "Northing",
    "form.control_e": "Easting",
    "form.beside.percent": "%",
    # drawing on the plan
    "form.draw_tape": "Wall: stops tape and feet",
    "form.draw_feet": "Pond: stops feet only",
    "form.draw_round": "Tree or post",
    "form.draw_undo": "Undo",
    "form.draw_done": "Done drawing",
    "form.draw_cancel": "Cancel",
    "form.no_plan": "No plan to draw on yet. Give the arc's numbers and answer which side first.",
    # what can be wrong
    "form.outline_pair.wrong": "Corner {number} isn't two lengths with a comma between them.",
    "form.outline_pair.remedy": "Write each corner as x, y with ; between corners. Like 12, -3; 20, -3; 16, -8.",
    "form.outline_comma.wrong": (
        "Corner {number} has a comma right between two digits: it could separate two lengths or be a decimal comma."
    ),
    "form.outline_comma.remedy": (
        "Put a space after a comma that separates x from y, and write decimals with a point: 1.5, 2."
    ),
    "form.place_one.wrong": "That is more than one place.",
    "form.place_one.remedy": "Give the center alone, as x, y: 12, -3. Corners go into their own field.",
    "form.stations_comma.wrong": "The comma could separate two distances or be a decimal comma.",
    "form.stations_comma.remedy": "Put ; between two distances, and a point for decimals.",
    "form.two_marks.wrong": "Two tapes are held at two points, and this one is blank.",
    "form.two_marks.remedy": "Name both, or clear both for A and B.",
    "form.control_both.wrong": "Both pairs are filled in, x and y and northing and easting: only one can hold.",
    "form.control_both.remedy": "Clear x and y of both points, or northing and easting of both.",
}
