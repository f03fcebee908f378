"""A line of straights and arcs: its pieces in order, its edges, its slab, and how a drawing gives them."""
