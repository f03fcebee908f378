"""The lessons on paper, and the page with string and chalk."""

MESSAGES = {
    "handout.answers": "ANSWERS",
    "handout.name": "Name",
    "handout.exercise": "Work it out",
    "handout.answer": "Answer:",
    "handout.1.parts": "The bow is the {arc}. Its string is the {chord}. Its arrow is the mid-ordinate.",
    "handout.1.arc": "arc",
    "handout.1.chord": "chord",
    "handout.1.product": "Left times right: {half} × {half} = {square}.",
    "handout.1.rest": "Up times down is the same: {square} ÷ {out} = {rest}, what is left of the line across.",
    "handout.1.radius": "Half of the whole line: ({rest} + {out}) ÷ 2 = {radius} {unit}, the radius.",
    "handout.2.slip": "The long side of each triangle is taped {error} too long. How far is its line off at {far}?",
    "handout.2.rule": "Off by: {error} × long side ÷ first side ÷ second side × {far}.",
    "handout.2.one": "{sides}: off by {off}",
    "handout.2.where": (
        "A lean at M slides the stake along the arc and costs {at_m}. Near an end it takes the stake {end}."
    ),
    "handout.2.nothing": "nothing",
    "handout.2.off": "off the arc",
    "handout.3.round": "Round {round}: middle at {half}, square off {out}, both short chords {long}.",
    "handout.3.half": "The middle of round 2 is {word} of round 1's short chord.",
    "handout.3.half_word": "half",
    "handout.3.proof": "Equal short chords prove that M is {square}. They don't prove its {length}: tape that twice.",
    "handout.3.square": "square",
    "handout.3.length": "mid-ordinate",
    "handout.4.names": (
        "On a string of {chord}, a is half of it: {half} {unit}. s is the mid-ordinate, h the short chord."
    ),
    "handout.4.why": (
        "A mid-ordinate goes with its short chord times itself. Half as long: {half} × {other} = {quarter}."
    ),
    "handout.4.climb": (
        "Where s is the second in the table: half of h is {half}. The next short chord is √(half² + {next}²) = {long}."
    ),
    "handout.4.more": "So it is {longer} than half of h, and next is {more} than a quarter.",
    "handout.4.longer": "longer",
    "handout.4.more_word": "more",
    "handout.4.out": "s",
    "handout.4.bend": "bend",
    "handout.4.long": "h = √(a² + s²)",
    "handout.4.past": "h − a",
    "handout.4.next": "h × (h − a) ÷ 2s",
    "handout.4.quarter": "s ÷ 4",
    "handout.4.miss": "miss",
    "handout.5.given": "By halving, M is set {wrong} too far out. All else is done right.",
    "handout.5.hint": "A stake set over a string takes on about half of what each of its ends is off.",
    "handout.5.one": "{stake} is off by {off}",
    "handout.5.count": "Stakes dragged along: by halving {halving}, by ordinates {ordinates}.",
    "handout.6.given": "The string is {chord}, the mid-ordinate {out}.",
    "handout.6.quarters": "A quarter of the mid-ordinate is {quarter}. A quarter of that is {again}.",
    "handout.6.up": "Straight up {away} from the middle the parabola is at {parabola}.",
    "handout.6.circle": "The circle is there at {circle}. So they are {gap} apart.",
    "handout.6.differ": "Square off the short chord, as in lesson 4, a quarter is only {there} too little.",
    "handout.6.share": "For that the exact share is {share} and not a quarter.",
    "chalk.title": "Try it with string and chalk",
    "chalk.room_feet": "for a floor 10 ft across",
    "chalk.room_metres": "for a floor 3 m across",
    "chalk.needs": "You need",
    "chalk.need_1": "a string, a tape, chalk, and tape to hold the string's ends",
    "chalk.need_2": "a framing square, or a sheet of paper with a square corner",
    "chalk.need_3": "two people, better three",
    "chalk.need_4": "a thin lath or a strip of cardboard to bend along the marks",
    "chalk.do": "Do this",
    "chalk.ends": "Mark A and B {chord} apart. Stretch the string between them.",
    "chalk.middle": "Mark its middle at {half}. Go square off {out} and mark M. Both short chords must read {long}.",
    "chalk.second": (
        "Stretch the string from A to M. Middle at {half}, square off {out}: mark Q1. The same from M to B: Q2."
    ),
    "chalk.third": "Once more on all four strings. Middle at {half}, square off {out}.",
    "chalk.join": "Bend the lath along the marks and draw the arc with chalk.",
    "chalk.prove": (
        "Prove it. From M over the middle go on, {center} past the string. From there a string of {radius} touches "
        "every mark."
    ),
    "chalk.quarter": "Try a quarter in round 2: {quarter}. That is {miss} too little. Do you see it?",
}
