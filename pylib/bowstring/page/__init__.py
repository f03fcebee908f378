"""The page: its form, and what its script asks."""
