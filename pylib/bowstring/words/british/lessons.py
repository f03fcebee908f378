"""The six lessons: what differs on a British site."""

MESSAGES = {
    "lesson.5.step_moved": "By halving only its neighbours {stakes}: {off} off each",
}
