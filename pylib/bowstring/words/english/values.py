"""What stands in files for other programs: the stakes as values, and the layout as a drawing."""

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
    "csv.name": "name",
    "csv.axis_northing": "northing {unit}",
    "csv.axis_easting": "easting {unit}",
    "csv.axis_x": "x {unit}",
    "csv.axis_y": "y {unit}",
    "csv.told": "{name}: {shown}",
    # a drawing for other programs
    "dxf.made": "Written by Bowstring",
    "dxf.units": "Units: {unit}.",
    "dxf.unit_ft": "feet (1 ft = 0.3048 m)",
    "dxf.unit_m": "meters",
    "dxf.frame": "A is at 0, 0; B lies along x; y is to the left of A to B.",
    "dxf.frame_drawn": "Coordinates are the drawing's own: x is easting, y is northing.",
}
