"""The common blunders: what was done, what sees it, and what does where no check sees it."""

MESSAGES = {
    "mistake.burned_foot": (
        "The tape was held at the {burn} mark once and not corrected: {mark} needs {right}, only {wrong} was measured."
    ),
    "mistake.burned_foot.instead": "Call out the mark you hold, every time, and measure again from the tape's end.",
    "mistake.burned_foot_all": (
        "The tape was held at the {burn} mark for every long measurement and not corrected: each one is {short} short."
    ),
    "mistake.burned_foot_all.instead": (
        "Call out the mark you hold, every time, and measure one again from the tape's end."
    ),
    "mistake.tenths_as_inches": (
        "Decimal feet were read as feet and inches every time: for {mark}, {right} was measured as {wrong}."
    ),
    "mistake.tenths_as_inches.instead": "Check which tape it is: feet in inches, or feet in tenths.",
    "mistake.wrong_leg": (
        "Each squaring triangle ({along} along, {out} out, long side {long_side}) was laid with its long side along the string. "
        "No offset is square."
    ),
    "mistake.wrong_leg_first": (
        "The first mid-ordinate was squared by a triangle ({along} along, {out} out, long side {long_side}). The long side was "
        "laid along the string, so it isn't square."
    ),
    "mistake.wrong_leg.instead": "Measure all three sides of the triangle again.",
    "mistake.arc_for_chord": (
        "The arc length was laid off instead of the chord: B stands {wrong} from {start} instead of {right}."
    ),
    "mistake.arc_for_chord.instead": "Tape the ends before anything else.",
    "mistake.arc_for_gaps": "The arc length was held for each straight gap: for {mark}, {wrong} instead of {right}.",
    "mistake.arc_for_gaps.instead": "Tape the last gap to B as well.",
    "mistake.wrong_hand": "The whole curve was laid out on the wrong side.",
    "mistake.wrong_hand.instead": "{told}",
    "mistake.wrong_hand.unseen": "NO check on this sheet catches it: every distance still reads what it should. {told}",
    "mistake.diameter": "The diameter was measured for the radius: {wrong} instead of {right}.",
    "mistake.diameter.instead": "Ask whether the drawing's number is a radius or a diameter.",
    "mistake.wrong_radius": "The drawing's radius ({wrong}) was measured from the center; the stakes' own is {right}.",
    "mistake.wrong_radius.instead": "Measure from the drawn line to the stakes: it must be {offset} everywhere.",
    "mistake.no_offset": (
        "The {offset} offset from the drawn line was forgotten. Its ends A0 and B0 were taken for A and B, and the rest "
        "followed this sheet."
    ),
    "mistake.no_offset.instead": "Measure from the drawn line to A and to B: it must be {offset}.",
    "mistake.seen.alternate": (
        "The string {pair} catches it: its midpoint to {end} would read {reads}; it must read {should}."
    ),
    "mistake.seen.ordinate": (
        "The string A to B catches it. At {along} from A, square off to {end} would read {reads}; it must read {should}."
    ),
    "mistake.seen.cross": "The tape from {start} to {end} catches it: it would read {reads}; it must read {should}.",
    "mistake.seen.half": "The tape from {start} to {end} catches it: it would read {reads}; it must read {should}.",
    "mistake.seen.closing": (
        "The closing gap, {start} to {end}, catches it: it would read {reads}; it must read {should}."
    ),
    "mistake.seen.gap": "The gap from {start} to {end} catches it: it would read {reads}; it must read {should}.",
    "mistake.seen.external": (
        "The tape from the corner P to {end} catches it: it would read {reads}; it must read {should}."
    ),
    "mistake.string_proof": (
        "{start} to {end} catches it before any stake is set: it would read {reads}; it must read {should}."
    ),
    "mistake.string": "Taping A to B catches it before any stake is set: it would read {reads}; it must read {should}.",
    "mistake.unseen": "NO check on this sheet catches it, and {at} would stand {miss} off the line. {instead}",
    "mistake.unseen_along": (
        "NO check on this sheet catches it. All stakes stand on the line, but {at} is {miss} along it from its place. {instead}"
    ),
    "mistake.unseen_within": (
        "NO check on this sheet catches it. The worst stake, {at}, would stand {miss} off the line, and {tolerance} is allowed."
    ),
    "mistake.later": "No later check would, and {at} would stand {miss} off the line.",
    "mistake.later_along": (
        "No later check would: all stakes stand on the line, but {at} is {miss} along it from its place."
    ),
    "mistake.later_within": (
        "No later check would. The worst stake, {at}, would stand {miss} off the line, and {tolerance} is allowed."
    ),
    "mistake.slid": "Its own step shows it: {start} to {end} would read {reads}; it must read {should}.",
    "mistake.draw.title": "What if: the stakes after a blunder",
    "mistake.draw.desc": "{text} {told} {hand}",
    "mistake.draw.each": "{name} would stand {shown} from its place.",
    "mistake.draw.square": "square: where the stake belongs",
    "mistake.draw.cross": "cross: where it would stand",
    "mistake.draw.off": "{shown} off",
    "mistake.draw.larger": "The distance from square to cross is drawn {factor} times too large.",
    "mistake.draw.smaller": "The distance from square to cross is cut short: it is {factor} times as long.",
    "mistake.draw.some": "Not every stake is drawn.",
}
