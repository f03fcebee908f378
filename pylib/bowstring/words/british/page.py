"""What the page says around the form and the sheet: what differs on a British site."""

MESSAGES = {
    "page.description": (
        "From a drawing's arc to tape-ready stakes, when the centre can't be reached: exact halving, checks and "
        "drawings."
    ),
}
