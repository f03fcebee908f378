"""The sheet as plain text for messages: what differs on a British site."""

MESSAGES = {
    "messages.services": "Services scanned? Permit to dig issued?",
}
