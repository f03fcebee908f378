"""The faces of a job: each shows one part of the work, made when it is looked at."""
