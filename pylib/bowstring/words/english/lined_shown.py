"""How a line of several pieces is shown: its drawing, which arc is staked, its paper."""

MESSAGES = {
    "lined.draw_title": "The line and the slab along it",
    "lined.draw_start": "start",
    "lined.draw_end": "end",
    "lined.draw_left": "left edge",
    "lined.draw_right": "right edge",
    "lined.staked": "Arc {at} of {count} pieces: A is where piece {before} ends.",
    "lined.staked_first": "Arc {at} of {count} pieces: A is where the line starts.",
    "lined.own_sheets": "Sheets of their own: {arcs}.",
    "lined.stake_other": "Stake arc {number}",
    "lined.other_arcs": "The other arcs of this line",
    "lined.how": "How and why",
    "lined.front_title": "{title}: the line",
    "lined.back_title": "{title}: grade and pour",
    "lined.sign_line": "Line: piece ends, mid-arc",
    "lined.sign_kinks": "Kinks",
    "lined.sign_width": "Width at piece ends",
    "lined.sign_tops": "Tops: ends, every joint",
    "lined.sign_slope": "Steepest edge",
    "lined.most": "{slope}; max {limit}",
}
