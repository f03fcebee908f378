"""What is said about lengths, angles and tape marks: how they were read, and why one can't be."""

_LENGTH_EXAMPLE = "a length with its unit, like 40' 6-1/2\", 40.54 ft, 12.35 m or 12350 mm"
_ANGLE_EXAMPLE = "degrees, like 45.5, or degrees, minutes and seconds, like 45°40'12\""
_DIGITS = "Use the digits 0 to 9 with a point as the decimal mark"

_LENGTHS: dict[str, tuple[str, str]] = {
    "kind": ("This is {kind}, not a length.", f"Write {_LENGTH_EXAMPLE}."),
    "empty": ("This is blank.", f"Write {_LENGTH_EXAMPLE}."),
    "long": ("{typed} is longer than {limit} characters.", f"Write {_LENGTH_EXAMPLE}."),
    "giant": ("This number is far larger than any length.", f"Write {_LENGTH_EXAMPLE}."),
    "not_finite": ("This is not a finite number.", f"Write {_LENGTH_EXAMPLE}."),
    "character": ("{typed} has {sign} in it, which no length has.", f"Write {_LENGTH_EXAMPLE}."),
    "exponent": ("{typed} has an exponent.", "Write the number out, like 0.001 m."),
    "no_number": ("{typed} has no number in it.", f"Write {_LENGTH_EXAMPLE}."),
    "clinging": (
        "In {typed} a point or comma touches a unit: it may end the unit or begin the number.",
        "Put a space after the unit, and write a number under one with its zero, like 40' 0.5\".",
    ),
    "unreadable": ("{typed} is not a length.", f"Write {_LENGTH_EXAMPLE}."),
    "grouping": (
        "In {typed} the points or commas aren't where a number has them.",
        f"{_DIGITS}, like 1234.5 ft.",
    ),
    "comma": (
        "In {typed} the comma may be the decimal mark or may group thousands.",
        "Write {readings}.",
    ),
    "zero_below": ("{typed} has a fraction over zero.", "Write a fraction like 1/2 or 3/8."),
    "mixed_decimal": (
        "In {typed} a fraction follows a number that isn't plain digits.",
        "Use either decimals or a fraction, like 6.5 in or 6-1/2 in.",
    ),
    "improper": (
        "In {typed} the fraction after the whole number is one or more.",
        "Correct the fraction, or if you mean that, write {readings}.",
    ),
    "sign": ("{typed} has a plus or minus sign, and a size has none.", "Write it without the sign."),
    "zero": ("{typed} is no length.", "Write a length above zero."),
    "size": (
        "{typed} is too small or too large for any layout.",
        "Stay between {smallest} m and {largest} m, and check the unit.",
    ),
    "unit": (
        "{typed} has the unit {unit}, which isn't known here.",
        "Use ft, in, m, cm or mm, or the signs ' for feet and \" for inches.",
    ),
    "bare": ("{typed} has no unit, and could be feet or inches.", "Write {readings}."),
    "bare_fraction": ("{typed} is a fraction without a unit.", "Write {readings}."),
    "bare_comma": (
        "In {typed} the comma may be a decimal mark or separate feet and inches.{apart}",
        "Write {readings}.",
    ),
    "broken_feet": (
        "{typed} has a fraction of a foot, and inches as well.",
        "Write whole feet with inches, like 40' 6\", or decimal feet alone, like 40.5 ft.",
    ),
    "feet_fraction": ("In {typed} the part after the feet has no unit.{apart}", "Write {readings}."),
    "twelve": (
        "{typed} has twelve inches or more after its feet.",
        "Correct the inches, or if you mean that, write {readings}.",
    ),
    "apart": ("{typed} has more than one number, and not each has its unit.{apart}", "Write {readings}."),
    "mixed_units": (
        "{typed} has several numbers in units that don't go together.",
        "Use one unit, like 12.35 m, or feet and inches, like 40' 6\".",
    ),
    "repeated": ("{typed} has the same unit twice.", "Write one length, like 40' 6-1/2\"."),
    "order": ("{typed} has its units in the wrong order.", "Write the feet first, then the inches."),
}

_ANGLES: dict[str, tuple[str, str]] = {
    "kind": ("This is {kind}, not an angle.", f"Write {_ANGLE_EXAMPLE}."),
    "empty": ("This is blank.", f"Write {_ANGLE_EXAMPLE}."),
    "long": ("{typed} is longer than {limit} characters.", f"Write {_ANGLE_EXAMPLE}."),
    "giant": ("This number is far larger than any angle.", f"Write {_ANGLE_EXAMPLE}."),
    "not_finite": ("This is not a finite number.", f"Write {_ANGLE_EXAMPLE}."),
    "character": ("{typed} has {sign} in it, which no angle has.", f"Write {_ANGLE_EXAMPLE}."),
    "exponent": ("{typed} has an exponent.", "Write the number out, like 0.25."),
    "no_number": ("{typed} has no number in it.", f"Write {_ANGLE_EXAMPLE}."),
    "clinging": (
        "In {typed} a point or comma touches a sign or word: it may end that or begin the number.",
        f"Write {_ANGLE_EXAMPLE}.",
    ),
    "unreadable": ("{typed} is not an angle.", f"Write {_ANGLE_EXAMPLE}."),
    "grouping": (
        "In {typed} the points or commas aren't where a number has them.",
        f"Write {_ANGLE_EXAMPLE}.",
    ),
    "comma": ("In {typed} the comma may be the decimal mark or may group thousands.", "Write {readings}."),
    "zero_below": ("{typed} has a fraction over zero.", "Write a fraction like 1/2 or 1/4."),
    "mixed_decimal": (
        "In {typed} a fraction follows a number that isn't plain digits.",
        "Use either decimals or a fraction, like 6.5° or 6-1/2°.",
    ),
    "improper": (
        "In {typed} the fraction after the whole number is one or more.",
        "Correct the fraction, or if you mean that, write {readings}.",
    ),
    "sign": ("{typed} has a plus or minus sign, and the size of an angle has none.", "Write it without the sign."),
    "zero": ("{typed} is no angle.", "Write an angle above zero."),
    "size": (
        "{typed} is too small or too large for any layout.",
        "Stay between {smallest} and {largest} degrees.",
    ),
    "unit": (
        "{typed} has the unit {unit}, which isn't known here.",
        f"Write {_ANGLE_EXAMPLE}.",
    ),
    "other_unit": (
        "{typed} is in {unit}, not in degrees.",
        f"Turn it into degrees and write {_ANGLE_EXAMPLE}.",
    ),
    "bare_fraction": ("{typed} is a fraction without a degree sign.", "Write {readings}."),
    "no_degrees": (
        "{typed} has minutes or seconds but no degrees, and could also be a length.",
        "Write the degrees too, like 0°40'.",
    ),
    "apart": (
        "{typed} has more than one number, and not each has its sign.",
        "Write {readings}.",
    ),
    "order": (
        "{typed} doesn't go from degrees to minutes to seconds, each once.",
        "Write degrees, then minutes, then seconds, none left out, like 45°00'12\".",
    ),
    "broken_part": (
        "{typed} has decimals or a fraction in front of a smaller part.",
        "Only the last part may have decimals, like 45°40.2'.",
    ),
    "sixty": (
        "{typed} has sixty or more minutes or seconds.",
        "Carry them over: 60 seconds are a minute, 60 minutes a degree.",
    ),
}

MESSAGES: dict[str, str] = {
    "length.or": "{one} or {other}",
    "length.example": _LENGTH_EXAMPLE,
    "length.differ": " What it could mean is {apart} {unit} apart.",
    "length.kind_nothing": "nothing",
    "length.kind_truth": "true or false",
    "length.kind_list": "a list",
    "length.kind_group": "a group of values",
    "length.kind_thing": "something else",
    "angle.example": _ANGLE_EXAMPLE,
    "angle.both": "{decimal} = {dms}",
    "angle.reading": "{reading} (= {other})",
    "angle.reading_about": "{reading} (about {other})",
    "tape.both_exact": "{inches} = {feet}",
    "tape.both_about": "about {inches} = {feet}",
    "tape.metric": "{first} = {other}",
    "tape.metric_about": "about {first} = {other}",
    "tape.with_inches": "{metric} ({inches})",
    "tape.with_inches_about": "{metric} (about {inches})",
    "tape.less_than": "less than {least}",
    "tape.inches": "{inches} in",
    "tape.sized": "{number}-{unit}",
    "tape.marks": "Write {marks}.",
    "tape.no_mark.wrong": "{typed} is not one of the marks for this unit's tape.",
    "tape.no_mark.remedy": "Write {marks}.",
}
for _topic, _refusals in (("length", _LENGTHS), ("angle", _ANGLES)):
    for _name, (_wrong, _remedy) in _refusals.items():
        MESSAGES[f"{_topic}.{_name}.wrong"] = _wrong
        MESSAGES[f"{_topic}.{_name}.remedy"] = _remedy
