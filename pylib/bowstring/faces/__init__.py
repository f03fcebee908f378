<<<<<<< HEAD
"""The faces of a job: each shows one part of the work, made when it is looked at."""
=======
"""An answer as faces: one screen or one sheet of paper each, made when it is looked at."""
>>>>>>> paper14
