"""Cautions and notes."""

MESSAGES = {
    "top.authority": (
        "The drawings, specification, local code and the engineer in charge govern. Where they differ from this sheet, follow "
        "them."
    ),
    "top.services": (
        "Have buried utilities located and marked before driving anything, pins included. US: call 811, allow a few working "
        "days for the marks, and write down the ticket number. UK: CAT scan and permit to dig."
    ),
    "top.stakes": (
        "Cap each steel stake or pin as it is driven. Where somebody could fall on one, use a cap made to stop impalement: a "
        "plain plastic one only stops scratches. A bent board is a spring: fix one end first and stand clear of its sweep."
    ),
    "caution.odd_one": (
        "The other givens agree with each other, but not with the {field}. It was given as {value}; they make it {computed}. It "
        "is likely the wrong one: ask, or leave it out. Don't build from this sheet until that is settled."
    ),
    "caution.odd_one_none": (
        "The other givens agree with each other, but not with the {field}. It was given as {value}; their arc turns 180° or more "
        "and has none. It is likely the wrong one. Don't build from this sheet until that is settled."
    ),
    "caution.differs": (
        "The {field} was given as {value}; {pair} make it {computed}. That is within its rounding on the drawing, but "
        "more than a tape mark."
    ),
    "caution.disagrees": (
        "The givens don't agree. The {field} was given as {value}, but {pair} make it {computed}. Ask which one is correct before "
        "building."
    ),
    "caution.disagrees_none": (
        "The givens don't agree. The {field} was given as {value}, but {pair} make an arc of 180° or more, which has none. Ask "
        "before building."
    ),
    "caution.two_arcs": (
        "Two arcs fit these numbers. This sheet uses {angle}, radius {radius}, mid-ordinate {sagitta}. The other is "
        "{other_angle}, radius {other_radius}, mid-ordinate {other_sagitta}. Make sure which one is drawn."
    ),
    "caution.hand_unsaid": (
        "Don't build yet: which side the curve is on isn't given (standing at A, facing B). This sheet names no side."
    ),
    "caution.turn_unsaid": (
        "Don't build yet: which side it turns to isn't given (walking along the straight toward the arc). This sheet "
        "names no side."
    ),
    "caution.points_hand": (
        "By the three points, the curve is on the {points}, standing at A and facing B. That takes x as east (right) and y as "
        "north (ahead); swapped, they flip the curve. Look at the drawing before you drive a stake."
    ),
    "caution.points_other_hand": (
        "The three points put the curve on the {points} (x east, y north), but the job says {side}. This sheet "
        "follows the job. Don't build until you know which one is correct."
    ),
    "caution.degree": (
        "Degree of curve is for roads and railroads. It was read as degrees per 100 ft of arc: a radius of {radius}. Railroads "
        "count it over a 100-ft chord. If the drawing's angle is for the whole arc, it is the central angle."
    ),
    "caution.degree_chord": (
        "Degree of curve is for roads and railroads. It was read as degrees over a 100-ft chord: a radius of {radius}. Roads "
        "count it per 100 ft of arc. If the drawing's angle is for the whole arc, it is the central angle."
    ),
    "caution.line_unsure": (
        "Don't build yet: ask which line the drawing is dimensioned to (face, back, centerline, flow line or lip)."
    ),
    "caution.line_unsaid": (
        "Don't build yet: which line the drawing is dimensioned to isn't given (face, back, centerline, flow line or lip)."
    ),
    "caution.board_on_back": (
        "The drawing is dimensioned to the back, so the board here is taken to form the back. If it forms the face instead, add "
        "the wall thickness to the offset."
    ),
    "caution.board_on_centre": (
        "Don't build yet: the drawing is dimensioned to the centerline, and no board stands on that. The offset ({shown}) must "
        "be centerline-to-face plus the board thickness."
    ),
    "caution.board_from_centre": (
        "The drawing is dimensioned to the centerline. The offset ({shown}) is taken as centerline-to-face plus the board "
        "thickness."
    ),
    "caution.landmark_same": (
        "Don't build yet: both ends have the same landmark, or two that look alike. Swapping them flips the curve. Give them "
        "different landmarks."
    ),
    "caution.landmark_swapped": (
        "Don't build yet: the landmark at {end} is the other end's own name ({landmark}). Make sure which end is which, and name "
        "what really stands there."
    ),
    "caution.landmark_mark": (
        "Don't build yet: the landmark at {end} ({landmark}) reads like a mark on this sheet. Name what really stands "
        "there."
    ),
    "caution.landmark_blank": "Don't build yet: the landmark at {end} can't be seen on paper. Type it again.",
    "caution.landmark_tie": (
        "Both ties of end {end} go to the same object: one tie can't relocate it. Tie it to two different objects."
    ),
    "caution.tie_over_tape": (
        "The tie from {end} to {to} is {shown}, and the tape is only {tape}. Tie {end} to something nearer."
    ),
    "caution.tie_blocked": "{what} is in the way of the tie from {end} to {to}. Tie {end} to something else.",
    "caution.unlikely_board": "A board {shown} thick? Check its unit before building.",
    "caution.unlikely_hub": "Hubs {shown} off the line? Check the unit before building.",
    "caution.unlikely_tolerance": (
        "A tolerance of {shown}? Check its unit before building: a check that allows that much catches nothing."
    ),
    "caution.got_over": "Don't build yet: stake {stake} is {off}, and only {tolerance} is allowed. Move it, or ask.",
    "caution.got_astray": "Don't build yet: {mark} is {off}. That's too far off. Tape it again.",
    "caution.got_astray_sure": "Don't build yet: {mark} is {off}, taped twice. Set it again, or ask.",
    "caution.got_unusual": "Stakes usually stand within {usual} of the arc, and {stake} doesn't. Move it back, or ask.",
    "caution.got": "Stake {stake} is {off}: {stands} instead of {wanted}. The numbers after it allow for that.",
    "caution.got_stands": "Stake {stake} is {off}. The numbers after it allow for that.",
    "caution.got_alone": "Stake {stake} is {off}. No other stake's number depends on it.",
    "caution.got_helper": "{mark} is {off} out of place. The numbers after it allow for that.",
    "caution.got_bump": (
        "Over its neighbors stake {stake} makes a bump of {bump}, and only {fair} is allowed. Move it back onto the "
        "arc."
    ),
    "caution.got_apart": (
        "Don't build yet: the readings at {mark} disagree by {apart}. One is misread: tape them all again."
    ),
    "caution.got_slip": "Don't build yet: the reading at {mark} may be a slip. {slip}",
    "caution.got_likely": "The reading at {mark} may be a slip. {slip}",
    "caution.got_aside": (
        "Stake {stake} is {aside} off its string's midpoint, toward {end}. That hardly moves it off the arc, but the "
        "gaps beside it are no longer equal."
    ),
    "caution.got_far": (
        "Stake {stake} measured {stands} where {wanted} was called for, {off}: that looks like a slip. Measure it "
        "again before going on."
    ),
    "caution.sensitive": "One tape mark ({mark}) in the {field} changes the radius by {change}. {better}",
    "caution.sensitive_all": "One tape mark ({mark}) in the {field} makes a different arc or none at all. {better}",
    "caution.better": "Better: get the {field} (about {value}), where one mark changes the radius by {change}.",
    "caution.better_three_sides": "Better: tape the chord and its mid-ordinate.",
    "caution.better_points": (
        "Use points farther apart, with the middle one near the middle, or get the radius from the drawing."
    ),
    "caution.services": (
        "Before the first stake: are buried utilities located and marked, and is the ticket number written down? Cap each steel "
        "stake as you drive it."
    ),
    "caution.tape_zero": (
        "Know where the tape's zero is (hook, ring or mark). If you burn a foot (hold at 1 ft or 10 cm), subtract it from the "
        "reading."
    ),
    "caution.slope": "Hold the tape level: along sloping ground it reads long.",
    "caution.no_better": (
        "No other tape measurement does much better here: get the radius or the central angle from the drawing."
    ),
    "caution.straight": (
        "The whole mid-ordinate ({sagitta}) is under one tape mark ({mark}): this tape can't tell the arc from a straight line."
    ),
    "caution.small_sagitta": (
        "From round {level} on, the mid-ordinates ({sagitta}) are under {few} tape marks ({mark}): mostly rounding. Stop at "
        "fewer rounds and spring a board through the stakes."
    ),
    "caution.tolerance_under_mark": (
        "The tolerance ({tolerance}) is finer than the tape's mark ({mark}): no check with this tape can hold it."
    ),
    "caution.one_level": (
        "With one round, only the short chords check the stake. A second round adds checks that catch more."
    ),
    "caution.wind": (
        "A string of {chord} bows {bow} in a {wind} crosswind at a pull of {pull}. Line it in with pins, and don't measure a "
        "mid-ordinate off it in wind."
    ),
    "caution.over_half": (
        "This arc turns {angle}, past a half circle. It bulges beyond the chord's ends, where no offset from the string A "
        "to B reaches. Check the room on both sides."
    ),
    "note.settled": "The arc was worked out from {pair}.",
    "note.resolved": "Then it was worked out again over the measured chord, to {hold}.",
    "note.settled_points": "The arc was worked out from three points; the first is A, the third B.",
    "note.settled_sides": "The arc was worked out from three taped sides.",
    "note.levels_win": "Both rounds and a spacing were given: the rounds ({levels}) were used.",
    "note.rounds_many": "{levels} rounds are asked for, so the method is halving.",
    "note.rounds_one": "One round is asked for, so the method is halving.",
    "note.rounds_usual": "Rounds of halving are asked for, so the method is halving.",
    "note.landmarks": "Give each end a landmark, so nobody starts from the wrong one.",
    "note.ties": "Tie each end to two fixed objects before digging, so it can be relocated.",
    "note.offset": (
        "From the drawn arc to the stakes' arc, the chord changes by {chord} and the mid-ordinate by {sagitta}. Never add the "
        "offset to the mid-ordinate."
    ),
    "note.tolerance": "No tolerance was given, so this sheet can't say whether a miss matters.",
    "note.spring": (
        "A sprung board bends evenly between stakes but runs straight at its ends. Carry it past each clear end "
        "of the arc."
    ),
    "note.square": "A mid-ordinate out of square hardly shows at its own stake; it shows one round later.",
    "caution.method_blocked": (
        "Don't build from this sheet: you can't use {method} on this ground. {why} See the advice."
    ),
    "caution.method_hands": "Don't build from this sheet: {method} takes {hands} people, and you have {there}.",
    "caution.method_unreliable": (
        "Don't build from this sheet: with {method}, small errors grow out of control here. See the advice."
    ),
    "caution.method_misses": (
        "Laid out by this method, {method}, the worst stake may be {miss} off, and {tolerance} is allowed. Careful "
        "work won't make up for that."
    ),
    "caution.method_hopeless": (
        "Don't build from this sheet: by this method, {method}, the worst stake may be {miss} off, and {tolerance} is "
        "allowed. Careful work won't make up for that. Use {advised}: 19 times in 20 its worst stake is within "
        "{best}."
    ),
    "caution.rule_over": (
        "Don't build from this sheet: these are the quarter rule's numbers. They miss the arc by up to {worst} at "
        "{at}, and {tolerance} is allowed. Halving with exact numbers is no more work."
    ),
    "caution.rule": (
        "These are the quarter rule's numbers: they miss the arc by up to {worst} at {at}. Halving with exact numbers "
        "is no more work."
    ),
    "caution.slope_numbers": (
        "The ground slopes. Dimensions are horizontal; if the tape lies on the slope, use the slope figure in parentheses. A "
        "triangle squared on the slope isn't square from above: keep its sides level."
    ),
    "caution.chord_over_tape": (
        "A to B is {chord} and the tape is {tape}. Taping it takes more than one pull, in line, each with its own "
        "error."
    ),
}
