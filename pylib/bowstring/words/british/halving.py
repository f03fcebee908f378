"""The halving worked by hand, and the ways to keep a sagitta square: what differs on a British site."""

MESSAGES = {
    "square.prefer_square": "A builder's square will do here. Where there is time, match the short chords too.",
    "square.blade": "Builder's square on the string. One mark out over its {blade} blade:",
    "square.with_triangle": (
        "a {shape} triangle, {along} along the line towards {toward}, {out} out, long side {long_side}"
    ),
    "square.with_blade": "a builder's square, its {blade} blade on the line",
    "square.each_short": "For offsets up to {enough} hold a {blade} builder's square against the string.",
}
