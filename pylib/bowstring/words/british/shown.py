"""The words for a job that is shown in another unit than its own, where Britain says something else."""

MESSAGES = {
    "shown.unit_m": "metres",
    "shown.unit_mm": "millimetres",
}
