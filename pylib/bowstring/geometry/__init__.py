"""Points in the plane, and the arc from whatever a drawing gives."""
