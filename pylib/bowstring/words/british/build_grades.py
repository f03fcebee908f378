"""The tops of the forms, where Britain says something else."""

MESSAGES = {
    "grades.title": "Levels",
    "grades.open_no_inner": "No inner edge to set levels on",
    "grades.has_crown": "camber {height}",
    "grades.more_over": "{center} on centreline; edges max {limit}",
    "grades.short_cross_over": "Crossfall {slope}: too steep",
    "grades.short_crown_over": "Camber falls {slope}: too steep",
    "grades.short_cross_near": "Crossfall {slope}, max {limit}",
    "grades.short_crown_near": "Camber falls {slope}, max {limit}",
    "grades.cross_ok_feet": "Crossfall: aim *{drop}* under a 4-ft level; {most} is the limit ({limit}).",
    "grades.cross_ok_metric": "Crossfall: aim *{drop}* under a 1.2-m level; {most} is the limit ({limit}).",
    "grades.cross_over_feet": "Crossfall: *{drop}* under a 4-ft level, max {most} ({limit}): *too steep*.",
    "grades.cross_over_metric": "Crossfall: *{drop}* under a 1.2-m level, max {most} ({limit}): *too steep*.",
    "grades.crown_ok": "Camber: it falls {slope} at the edges, max {limit}: *ok*.",
    "grades.crown_over": "Camber: it falls {slope} at the edges, max {limit}: *too steep*.",
    "grades.too_steep_inside_walk": "The inner edge runs {slope}. A footpath may run {limit} at most, 1 in 20.",
    "grades.too_steep_outside_walk": "The outer edge runs {slope}. A footpath may run {limit} at most, 1 in 20.",
    "grades.less_length": "{slope} is on the centreline; the inner edge climbs as high in less length.",
    "grades.hold_or_ask": "Hold the centreline to {slope}, or ask.",
    "grades.no_slope_holds": "The taper and the crossfall alone are past it: change one of them, or ask.",
    "grades.none_yet": "No levels until this is settled. Edges, boards and joints are still good.",
    "grades.clash_crown_head": "Camber or crossfall?",
    "grades.clash_crown_text": "A camber is given, and a crossfall or a low edge. A slab has one or the other.",
    "grades.clash_crown_why": "A camber sheds water to both edges, a crossfall to one.",
    "grades.clash_crown_short": "Camber or crossfall?",
    "grades.clash_steep_text": "By the tops at A and B the centreline would run {tops_slope}.",
    "grades.way_hold": "Hold {slope} on the centreline",
    "grades.way_hold_crown": "Hold a camber of {height}",
    "grades.way_keep_crown": "Keep the camber",
    "grades.way_keep_cross": "Keep the crossfall",
    "grades.slope_follows": "The slope follows from both tops: {slope} on the centreline.",
    "grades.on_line": "Your slope of {slope} is along the drawing's line, not the centreline.",
    "grades.along": "The centreline runs {center}, the outer edge {outside}, the inner edge {inside}.",
    "grades.along_taper": (
        "The centreline runs {center}, the outer edge up to {outside}, the inner edge up to {inside}."
    ),
    "grades.quarter_rule": (
        "The camber is a parabola: midway to an edge it is down a quarter. Here the quarter rule is exact."
    ),
    "grades.slow_metric": "It falls less than 10 mm per metre: water may stand on it.",
    "grades.elevation": "level, {unit}",
    "grades.elevations": "Levels, {unit}",
    "grades.rod": "staff",
    "grades.rods": "Staff readings",
    "grades.rod_at_A": "On the outer form at A the staff reads {reading}.",
    "grades.inches_govern": (
        "Where the two differ, the inches govern: a form is set by them. A staff is read in hundredths."
    ),
    "grades.instrument_low": "The instrument stands lower than the top at {stake}: no staff can be read there.",
    "grades.instrument_far": (
        "The staff would read more than a staff has. Are instrument and tops from the same benchmark?"
    ),
    "grades.across_table": "Across the camber",
    "grades.bed": "The sub-base is *{thickness} under the form tops*.",
    "grades.needs_thickness": "Needs the thickness, for the sub-base and for cut and fill.",
    "grades.no_base": "No sub-base is given: cut and fill are to the underside of the slab.",
    "grades.to_base": "Cut and fill are to the underside of the sub-base.",
    "grades.base": "Sub-base",
}
