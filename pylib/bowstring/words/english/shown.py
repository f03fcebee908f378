"""The words for a job that is shown in another unit than its own."""

MESSAGES = {
    "shown.in": "Shown in {shown}. The job is in {own}.",
    "shown.coarser": "Rounded to {mark}, coarser than the job's {own}: work to it only where that is fine enough.",
    "shown.echo": "{own}; shown as {shown}",
    "shown.label": "Show lengths in",
    "shown.own": "the job's own unit",
    "shown.unit_ft_in": "feet and inches",
    "shown.unit_ft": "decimal feet",
    "shown.unit_m": "meters",
    "shown.unit_mm": "millimeters",
}
