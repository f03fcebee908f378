"""The terminal's own words."""

MESSAGES = {
    "terminal.what": "The field sheet of an arc, from the drawing's numbers to the stakes.",
    "terminal.job": "a path to a job file, - for standard input, or a link",
    "terminal.all": "print every part of the sheet, not the short one",
    "terminal.json": "the answer as one JSON object",
    "terminal.link": "the job's link text, the part after #",
    "terminal.not_utf8": "it isn't UTF-8 text",
    "terminal.method": "set it out by this method, whatever the job says: {methods}",
    "terminal.csv": "print the stakes as comma-separated values",
    "terminal.messages": "the sheet as text messages of at most 160 characters",
}
