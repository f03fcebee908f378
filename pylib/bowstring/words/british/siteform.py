"""The form's words for the method, the site and the gang: what differs on a British site."""

MESSAGES = {
    "form.section_tape": "Tape and gang",
    "form.method.centre": "swing from the centre",
    "form.centre_reachable": "The arc's centre",
    "form.hands.help": "Blank: 2. Alone, you can only swing from the centre.",
    "form.ground_at": "Centre, if it is round",
    "form.ground_at.help": "A tree, post, box or manhole: x, y of its centre, like 12, -3.",
    "form.ground_diameter.help": "With the centre, in place of corners. Take the widest.",
    "form.ground_outline.help": (
        "Each as x, y with ; between. x runs along the chord from A; y runs off it towards the curve, with a minus "
        "behind the chord. Like 12, -3; 20, -3; 16, -8."
    ),
    "form.room_inside.help": "From the curve towards its centre.",
    "form.room_outside.help": "From the curve away from its centre.",
    "form.parallel.help": (
        "For ordinates where A-B itself is blocked. A minus is behind A-B, like -8; without it the string is "
        "towards the curve. The sheet compares it with the other methods. To use it, choose ordinates."
    ),
    "form.known_x.help": "x, from A towards B.",
    "form.known_y.help": "y, towards the curve; minus behind the chord.",
    "form.fall_across.help": "Towards the curve's side; minus where it rises.",
    "form.place_one.remedy": "Give the centre alone, as x, y: 12, -3. Corners go into their own field.",
}
