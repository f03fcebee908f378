"""Headings and labels of the sheet, the same in text and in HTML: what differs on a British site."""

MESSAGES = {
    "sheet.short": "Setting out at a glance",
    "sheet.short_caption": "Each stake: from the midpoint of its string, square off towards the curve",
    "sheet.neighbours": "each pair of neighbours",
    "sheet.stick": "Storey rod",
    "sheet.drawn_to_centre": "The drawing is dimensioned to the centreline.",
    "sheet.drawn_to_flow line": "The drawing is dimensioned to the channel line.",
    "sheet.drawn_to_lip": "The drawing is dimensioned to the lip of the channel.",
    "sheet.every_string": "The same for all {count} strings between neighbouring stakes, {first} to {last}.",
    "sheet.check_gap": "gap between neighbours",
    "sheet.rule_caption": (
        "Staked by quartering, how far each stake would be off the arc; a minus is inside, towards the centre"
    ),
    "sheet.ways_caption": (
        "Worst stake: 19 times in 20 the stake that may be farthest off is within this, rounding included. In "
        "brackets: the same off the mid-ordinate over its two neighbours. Readings: everything taped, turned and "
        "squared for all stakes."
    ),
    "sheet.off_fair": "off its neighbours' curve",
}
