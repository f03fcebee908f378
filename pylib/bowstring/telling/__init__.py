"""Telling: a layout's numbers turned into the sentences and shown numbers of an answer."""
