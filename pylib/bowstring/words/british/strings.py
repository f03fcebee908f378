"""Ordinates from the middle of a string, and from a string parallel to the chord: what differs on a British site."""

MESSAGES = {
    "step.ordinate_mid": (
        "{stake}: from the string's midpoint towards {end} mark {length0}. There square off {length1} to the "
        "{hand} (facing B from A). Drive {stake}."
    ),
    "step.parallel_toward_on": (
        "{stake}: on the parallel string from {start} towards {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), towards A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_away_on": (
        "{stake}: on the parallel string from {start} towards {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), away from A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_toward_past": (
        "{stake}: carry the parallel string from {end} on past {start} for {length0}. There square off to the "
        "{cross_hand} (facing as from {start} to {end}), towards A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_toward_end": (
        "{stake}: at {start} square off the parallel string to the {cross_hand} (facing {end} from {start}), "
        "towards A-B, {length0}. Drive {stake}."
    ),
    "step.parallel_toward_mid": (
        "{stake}: from the parallel string's midpoint towards {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), towards A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_away_mid": (
        "{stake}: from the parallel string's midpoint towards {end} mark {length0}. There square off to the "
        "{cross_hand} (facing {end} from {start}), away from A-B, {length1}. Drive {stake}."
    ),
    "step.parallel_toward_middle": (
        "{stake}: at the parallel string's midpoint square off to the {cross_hand} (facing {end} from {start}), "
        "towards A-B, {length0}. Drive {stake}."
    ),
    "step.parallel_over_on": (
        "{stake}: on the parallel string from {start} towards {end} mark {length0}. Drive {stake} there, on the string."
    ),
    "step.parallel_over_mid": (
        "{stake}: from the parallel string's midpoint towards {end} mark {length0}. Drive {stake} there, on the string."
    ),
}
