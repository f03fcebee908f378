"""The table of the stakes as values, for a file."""

MESSAGES = {
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
