"""British English: only the modules and sentences that differ from the American ones."""
