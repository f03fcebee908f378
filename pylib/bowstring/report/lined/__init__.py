"""What is told of a line of several pieces: the line itself, its edges, boards, joints, grades, and the concrete."""
