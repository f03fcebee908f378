"""From stakes to a pour: both edges, boards, joints, grades and concrete, in sentences and shown numbers."""
