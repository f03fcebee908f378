"""Spanish, as spoken on construction sites in the United States."""
