"""From stakes to a pour, as geometry: both edges of a slab on an arc, its boards, joints, grades and concrete."""
