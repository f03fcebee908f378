"""The arc's measures by name, and why givens make none."""

MESSAGES = {
    "measure.radius": "radius",
    "measure.diameter": "diameter",
    "measure.degree": "degree of curve",
    "measure.chord": "chord",
    "measure.sagitta": "mid-ordinate",
    "measure.arc_length": "arc length",
    "measure.central_angle": "central angle",
    "measure.tangent_length": "tangent length",
    "measure.external": "external",
    "measure.points": "middle point",
    "measure.three_sides": "three taped sides",
    "and": "{first} and {second}",
    "arc.nothing": "nothing",
    "arc.missing.wrong": "The job has no arc.",
    "arc.missing.remedy": (
        "Give any two of radius, chord, mid-ordinate, arc length, central angle, tangent length and external. "
        "Three points or three taped sides do too."
    ),
    "arc.too_few.wrong": "This alone doesn't fix an arc: {fields}.",
    "arc.too_few.remedy": "Give one more of: {others}.",
    "arc.full_circle.wrong": "A central angle of 360° or more has no two ends.",
    "arc.full_circle.remedy": "Give an angle under 360°, such as half the circle at a time.",
    "arc.beside_points.wrong": "Three points already fix the arc.",
    "arc.beside_points.remedy": "Give the points or the dimensions, not both.",
    "arc.beside_sides.wrong": "Three taped sides already fix the arc.",
    "arc.beside_sides.remedy": "Give the three sides or the dimensions, not both.",
    "arc.sides_open.wrong": "These three distances make no triangle: one is longer than the other two together.",
    "arc.sides_open.remedy": "Give them in this order: A to C, C to B, A to B. C is on the arc between the ends.",
    "arc.sides_straight.wrong": "By these three distances, C is in line with A and B.",
    "arc.sides_straight.remedy": "Tape them again, with C well off the string from A to B.",
    "arc.twice.wrong": "One quantity is given twice, as {one} and as {other}.",
    "arc.twice.remedy": "Give it once.",
    "arc.letters.wrong": "The letters {letters} stand for the {other}, and this is the {own}.",
    "arc.letters.remedy": "Give the number where it belongs, or without its letters if it is the {own}.",
    "arc.degree_by_alone.wrong": "It says how a degree of curve is counted, and no degree is given.",
    "arc.degree_by_alone.remedy": "Give the degree of curve, or leave this out.",
    "arc.degree_by_chord.wrong": "No chord of 100 ft spans more than 180°.",
    "arc.degree_by_chord.remedy": (
        "Check the degree of curve. If the angle is for the whole arc, it is the central angle."
    ),
    "arc.points_same.wrong": "Two of the three points are the same.",
    "arc.points_same.remedy": "Give three different points: one end, any point between, the other end.",
    "arc.points_straight.wrong": "The three points are in a straight line.",
    "arc.points_straight.remedy": "Give a middle point that is off the line from end to end.",
    "pair.chord_over_diameter.wrong": (
        "The chord is longer than the diameter ({limit}): it doesn't fit in a circle of that radius."
    ),
    "pair.chord_over_diameter.remedy": (
        "Check that the radius isn't short and that the chord isn't really an arc length."
    ),
    "pair.sagitta_over_diameter.wrong": (
        "The mid-ordinate is as much as the diameter ({limit}) or more: that is a whole circle."
    ),
    "pair.sagitta_over_diameter.remedy": (
        "A mid-ordinate is less than twice the radius; check both numbers and their units."
    ),
    "pair.arc_over_circle.wrong": "The arc length is a full circle of this radius ({limit}) or more.",
    "pair.arc_over_circle.remedy": "Check both numbers and their units, and whether a diameter was halved twice.",
    "pair.arc_under_chord.wrong": "The arc length isn't longer than the chord ({limit}), so there is no curve.",
    "pair.arc_under_chord.remedy": "An arc is always longer than its chord; check whether the two were swapped.",
    "pair.chord_over_tangents.wrong": "The chord is as long as both tangents together ({limit}) or longer.",
    "pair.chord_over_tangents.remedy": "A chord is less than twice the tangent length; check both numbers.",
    "pair.sagitta_over_arc.wrong": "The mid-ordinate is too large for this arc length: the most it can be is {limit}.",
    "pair.sagitta_over_arc.remedy": "Check both numbers and their units.",
    "pair.sagitta_over_tangent.wrong": (
        "The mid-ordinate is too large for this tangent length: the most it can be is {limit}."
    ),
    "pair.sagitta_over_tangent.remedy": "Check both numbers and their units.",
    "pair.sagitta_over_external.wrong": (
        "The mid-ordinate is as much as the external ({limit}) or more; it is always the smaller one."
    ),
    "pair.sagitta_over_external.remedy": (
        "Check whether mid-ordinate (chord to arc) and external (corner to arc) were swapped."
    ),
    "pair.arc_over_tangents.wrong": "The arc length is as long as both tangents together ({limit}) or longer.",
    "pair.arc_over_tangents.remedy": "An arc is shorter than going around by the corner; check both numbers.",
    "pair.no_corner.wrong": (
        "At 180° or more the end tangents never meet on the curve's side: no tangent length, no external."
    ),
    "pair.no_corner.remedy": "Check the angle, or give the radius, chord, mid-ordinate or arc length instead.",
    "pair.external_over_tangent.wrong": (
        "The external is as much as the tangent ({limit}) or more; it is always the smaller one."
    ),
    "pair.external_over_tangent.remedy": (
        "Check whether tangent length (corner to end) and external (corner to arc) were swapped."
    ),
}
