"""The sheet as plain text for messages: what differs on a British site."""

MESSAGES = {
    "messages.services": "Services located? CAT scan and permit to dig first.",
}
