"""The faces of a job: what a phone shows one at a time, each made when it is looked at."""
