"""Cautions and notes: what differs on a British site."""

# Of the services' sentences the order (plans, locate, mark, permit) was held against HSE's guidance on underground
# services (HSG47); the wording is from memory, and so is what a CAT doesn't find.

MESSAGES = {
    "top.authority": (
        "The drawings, the specification, British Standards, the Building Regulations and the engineer in charge "
        "govern. Where they differ from this sheet, follow them."
    ),
    "top.services": (
        "Get the plans of buried services. Before driving anything, pins included, locate the services by CAT "
        "scan and mark them. A CAT doesn't find plastic pipes: see the plans. Drive nothing without a permit to "
        "dig, and write down the permit's number."
    ),
    "caution.turn_unsaid": (
        "Don't build yet: which side it turns to isn't given (walking along the straight towards the arc). "
        "This sheet names no side."
    ),
    "caution.degree": (
        "Degree of curve is for roads and railways. It was read as degrees per 100 ft of arc: a radius of "
        "{radius}. Railways count it over a 100-ft chord. If the drawing's angle is for the whole arc, it is the "
        "central angle."
    ),
    "caution.degree_chord": (
        "Degree of curve is for roads and railways. It was read as degrees over a 100-ft chord: a radius of "
        "{radius}. Roads count it per 100 ft of arc. If the drawing's angle is for the whole arc, it is the "
        "central angle."
    ),
    "caution.line_unsure": (
        "Don't build yet: ask which line the drawing is dimensioned to (face, back, centreline, channel line or lip)."
    ),
    "caution.line_unsaid": (
        "Don't build yet: which line the drawing is dimensioned to isn't given (face, back, centreline, channel "
        "line or lip)."
    ),
    "caution.board_on_centre": (
        "Don't build yet: the drawing is dimensioned to the centreline, and no board stands on that. The offset "
        "({shown}) must be centreline-to-face plus the board thickness."
    ),
    "caution.board_from_centre": (
        "The drawing is dimensioned to the centreline. The offset ({shown}) is taken as centreline-to-face plus "
        "the board thickness."
    ),
    "caution.unlikely_hub": "Pegs {shown} off the line? Check the unit before building.",
    "caution.got_bump": (
        "Over its neighbours stake {stake} makes a bump of {bump}, and only {fair} is allowed. Move it back "
        "onto the arc."
    ),
    "caution.got_aside": (
        "Stake {stake} is {aside} off its string's midpoint, towards {end}. That hardly moves it off the "
        "arc, but the gaps beside it are no longer equal."
    ),
    "caution.services": (
        "Before the first stake: are buried services CAT scanned and marked, and is the permit's number written "
        "down? Cap each steel stake as you drive it."
    ),
    "caution.tape_zero": (
        "Know where the tape's zero is (hook, ring or mark). If you hold at 1 ft or 10 cm instead, subtract it "
        "from the reading."
    ),
    "caution.method_misses": (
        "Set out by this method, {method}, the worst stake may be {miss} off, and {tolerance} is allowed. "
        "Careful work won't make up for that."
    ),
    "caution.slope_numbers": (
        "The ground slopes. Dimensions are horizontal; if the tape lies on the slope, use the slope figure in "
        "brackets. A triangle squared on the slope isn't square from above: keep its sides level."
    ),
}
