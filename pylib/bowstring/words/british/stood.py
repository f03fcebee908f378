"""What differs from ``english.stood``."""

MESSAGES = {
    "stood.edge_centre": "Your stakes stand on the old centreline. It is {off} of them now.",
    "stood.edge_line_centre": "Your stakes stand on the old centreline. They are an edge now.",
}
