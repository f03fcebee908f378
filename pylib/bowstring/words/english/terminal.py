"""The terminal's own words."""

MESSAGES = {
    "terminal.what": "The field sheet of an arc, from the drawing's numbers to the stakes.",
    "terminal.job": "a path to a job file, - for standard input, or a link",
    "terminal.json": "the answer as one JSON object",
    "terminal.link": "the job's link text, the part after #",
    "terminal.not_utf8": "it isn't UTF-8 text",
    "terminal.method": "set it out by this method, whatever the job says: {methods}",
    "terminal.csv": "print the stakes as comma-separated values",
    "csv.stake": "stake",
    "csv.along": "along the arc from A (m)",
    "csv.x": "along the string A to B (m)",
    "csv.y": "square off it (m)",
    "csv.across": "standard deviation across (m)",
    "csv.along_off": "standard deviation along (m)",
    "csv.metres": "{name} (m)",
    "csv.stopped": "DON'T BUILD FROM THIS TABLE YET. {why}",
    "csv.status": "status",
    "csv.status_stop": "don't build",
    "csv.status_ready": "ready",
    "csv.reading": "reading {number}",
    "csv.told": "{name}: {shown}",
}
