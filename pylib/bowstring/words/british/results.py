"""The rule of thumb, slips, offsets: what differs on a British site."""

MESSAGES = {
    "rule.planned": "This compares the rule with the setting out as planned, before any as-built stake was entered.",
    "fit.kink": "{degrees}°, {off} off line after 3.05 m (10 ft)",
    "slip.inch": "an inch miscounted, or started from and not subtracted: it would be {would_be}.",
    "slip.metre": "a metre miscounted: it would be {would_be}.",
    "slip.decimetre": "a tenth of a metre miscounted: it would be {would_be}.",
    "check.alternate_inside": (
        "String {start_pair}: {end} is inside it, towards the centre. Its midpoint to {end} must read {shown}."
    ),
    "offset.centre": "The {driven} are {shown} off the drawn line, towards the centre, on an arc of their own.",
    "offset.outside": "The {driven} are {shown} off the drawn line, away from the centre, on an arc of their own.",
    "driven.hub": "pegs",
}
