"""x"""

MESSAGES: dict[str, str] = {}
