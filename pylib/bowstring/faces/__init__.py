"""An answer as faces: one screen or one sheet of paper each, made when it is looked at."""
