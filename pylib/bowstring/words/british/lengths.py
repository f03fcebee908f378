"""What is said about lengths, angles and tape marks: what differs on a British site."""

MESSAGES = {
    "length.size.wrong": "{typed} is too small or too large to set out.",
    "angle.size.wrong": "{typed} is too small or too large to set out.",
}
