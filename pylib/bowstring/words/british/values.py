"""What stands in files for other programs: what differs on a British site."""

MESSAGES = {
    "dxf.unit_m": "metres",
}
