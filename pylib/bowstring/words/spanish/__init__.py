"""The sentences in Spanish as on US sites."""
