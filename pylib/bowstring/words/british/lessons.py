"""The six lessons: what differs on a British site."""

MESSAGES = {
    "lesson.1.job_word": "On site we say mid-ordinate.",
    "lesson.1.on_the_job": "On site: the mid-ordinate.",
    "lesson.5.step_moved": "By halving only its neighbours {stakes}: {off} off each",
}
