"""What an entry of a job is called, where Britain says something else."""

MESSAGES = {
    "entry.joints.every": "longest bay, outer edge",
    "entry.of_line.joints.every": "longest bay, either edge",
    "entry.grade.crown": "camber",
}
