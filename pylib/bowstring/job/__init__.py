"""What was asked: a job read and refused, its file and its link."""
