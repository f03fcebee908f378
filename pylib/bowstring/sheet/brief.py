"""What a short sheet says of an answer: for paper and for the terminal, in the order in which a crew needs it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from bowstring.methods.catalogue import BY_NAME
from bowstring.report.alone import drawn_line, edges_of, pour_of
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.checks import CheckRow
from bowstring.report.forms.got import GotRow
from bowstring.report.forms.read import ReadRow
from bowstring.report.own import is_advised, is_own, own_row
from bowstring.report.read import OUT
from bowstring.sheet.facing import away_hand, curve_hand
from bowstring.sheet.of_line import title_of
from bowstring.words import say

MOST_NAMES = 6
"""Stakes that are told by name in one line."""

MOST_STATIONS = 17
"""Stakes whose stations stand on the front: as many as its tables have rows, and A."""


@dataclass(frozen=True)
class Check:
    """A check: what is taped, what it must read, by how much it may be out, and what was read, if anything.
    ``is_in``: by that it is in."""

    what: str
    reads: str
    limit: str
    was: str = ""
    is_in: bool = False


def title(answer: Answer) -> str:
    """Return the job's title, or what an arc or a line without one is called."""
    return title_of(answer)


def measures(answer: Answer) -> list[str]:
    """Return the stakes' arc in four measures, each with its name; the first says whose, where the stakes stand off the
    drawing's line."""
    shown = answer["staked_shown"]
    named = (
        (say("measure.chord"), shown["chord"]),
        (say("measure.sagitta"), shown["sagitta"]),
        (say("measure.radius"), shown["radius"]),
        (say("paper.arc"), shown["arc_length"]),
    )
    told = [say("paper.measure", name=name, shown=text) for name, text in named if text is not None]
    if answer["offset"] and told:
        told[0] = say("paper.stakes_measure", measure=told[0])
    return told


def stakes_radius(answer: Answer) -> str:
    """Return the radius of the stakes' own line, where they stand off the drawing's; empty otherwise."""
    radius = answer["staked_shown"]["radius"]
    if not answer["offset"] or radius is None:
        return ""
    return say("paper.stakes_measure", measure=say("paper.measure", name=say("measure.radius"), shown=radius))


def drawing(answer: Answer, *, on_it: bool = False) -> str:
    """Return the radius of the drawing's own line and which line that is, where the stakes stand off it; empty where
    they stand on it, unless it is asked for ``on_it``: their radius is the drawing's then."""
    radius = answer["arc_shown"]["radius"]
    if radius is None or not (answer["offset"] or on_it):
        return ""
    edges = edges_of(answer)
    wall = edges is not None and edges["faces"] and answer["drawn_to"] == "face"
    faced = edges["edge"] if edges is not None and wall else ""
    line = faced if faced in ("outside", "inside") else drawn_line(answer)
    return say(f"paper.drawing_{line}", radius=radius)


def line(answer: Answer) -> list[str]:
    """Return which line the drawing has, how far off it the stakes stand, and which point of them is on their line; the
    first stands with the drawing's radius, where that is told (``drawing``)."""
    offset = answer["offset"]
    drawn = [] if drawing(answer) and not answer["stops"] else [say(f"paper.line_{drawn_line(answer)}")]
    off = [say(f"paper.off_{offset['toward']}", shown=offset["shown"])] if offset else []
    return [*drawn, *off, answer["on_line"]["point"]]


def wall(answer: Answer) -> list[str]:
    """Return what is built of a wall: how thick and high, to which side of the drawing's line, and its footing."""
    edges, pour = edges_of(answer), pour_of(answer)
    if edges is None or not edges["faces"]:
        return []
    thick = say("forms.wall_thick", width=edges["width_shown"])
    if edges["far_width"] is not None:
        thick = say("forms.wall_tapers", width=edges["width_shown"], far=edges["far_width_shown"])
    size = say("forms.wall_high", thick=thick, height=pour["depth_shown"]) if pour else thick
    told = [say(f"forms.wall_{edges['edge']}", size=size)]
    if edges["footing_shown"]:
        wide, deep = edges["footing_shown"]
        told.append(say("forms.wall_footing", width=wide, depth=deep))
    return told


def turns(answer: Answer) -> str:
    """Return to which hand the curve turns for who walks from A to B, empty where that isn't known."""
    return say("paper.turns", turn=away_hand(answer)) if answer["side"] else ""


def stand(answer: Answer) -> str:
    """Return where to stand and what to face, up to the hand itself."""
    ends = answer["ends"]
    first, second = (_end(answer, end, landmark) for end, landmark in (("A", ends["A"]), ("B", ends["B"])))
    return say("paper.stand" if answer["side"] else "paper.stand_unknown", first=first, second=second)


def _end(answer: Answer, end: str, landmark: str | None) -> str:
    """An end with its landmark; where the stakes stand off the line, its ends' own are told with the steps."""
    if not landmark or (answer["offset"] and not answer["stops"]):
        return end
    return say("paper.end_off" if answer["offset"] else "paper.end", name=end, landmark=landmark)


def ties(answer: Answer) -> list[str]:
    """Return the ties of each end, from the drawn line's ends where the stakes stand off it."""
    drawn = "0" if answer["offset"] else ""
    found = []
    for end in ("A", "B"):
        rows = answer["ties"].get(end, ())
        if rows:
            each = "; ".join(say("paper.tie_one", to=tie["to"], shown=tie["shown"]) for tie in rows)
            found.append(say("paper.tie", end=end + drawn, ties=each))
    return found


def checks(answer: Answer) -> list[Check]:
    """Return the checks to make first, and the gap that closes the work."""
    rows = [
        check
        for check in answer["checks"]
        if check["kind"] == "closing" or (check["recommended"] and not check["blind"])
    ]
    was = {row["check"]: row for row in answer["read"]["rows"]}
    return [_check(check, was.get(check["key"])) for check in rows]


def _check(check: CheckRow, read: ReadRow | None) -> Check:
    told = (read["value_shown"] or "", read["verdict"] == "in") if read else ("", False)
    return Check(_what(check), check["shown"], _limit(check), *told)


def reads_out(answer: Answer) -> str:
    """Return which check was read and isn't in, or how many, and what to do, and behind it which wait; empty for none.
    With those that prove a pad's far corners, its two diagonals held against each other, or a line of pieces as a
    whole."""
    wait = dict.fromkeys((answer["read"]["waits"], answer["far_checks"]["waits"]))
    return " ".join(text for text in (_outs(answer), *wait) if text)


def _outs(answer: Answer) -> str:
    far = answer["far_checks"]
    rows = [row for row in [*answer["read"]["rows"], *far["read"]] if row["verdict"] in OUT]
    if len(rows) + outs_apart(answer) != 1:
        return say("paper.checks_out", count=len(rows) + outs_apart(answer)) if rows else ""
    if far["apart"] and far["apart"]["out"]:
        return say("paper.apart_out", shown=far["apart"]["over_shown"], limit=far["apart"]["limit_shown"])
    (check,) = (one for one in [*answer["checks"], *far["rows"]] if one["key"] == rows[0]["check"])
    what = say("face_checks.straight", start=check["from"], end=check["to"]) if check in far["rows"] else _what(check)
    return say("paper.check_out", what=what, shown=rows[0]["value_shown"] or "", must=check["shown"])


def outs_apart(answer: Answer) -> int:
    """Return 1 where a pad's two diagonals, each of them in, differ by too much, otherwise 0."""
    apart = answer["far_checks"]["apart"]
    return int(apart is not None and apart["out"])


def quarter_names(answer: Answer) -> list[str]:
    """Return the stakes that are nearest to the quarters of the arc, A, the middle one and B among them."""
    return list(dict.fromkeys(_nearest(answer, quarter / 4) for quarter in range(5)))


def middle_name(answer: Answer) -> str:
    """Return the stake that is nearest to the arc's middle."""
    return _nearest(answer, 0.5)


def _nearest(answer: Answer, share: float) -> str:
    off = [abs(row["along"] - answer["staked"]["arc_length"] * share) for row in answer["stakes"]]
    return answer["stakes"][off.index(min(off))]["name"]


def stations(answer: Answer) -> str:
    """Return the stations of the stakes in their order, of more than a sheet has room for those of A and B; empty where
    the job says no starting one."""
    told = [say("station.of", name=row["name"], station=row["station_shown"])
            for row in answer["stakes"] if "station_shown" in row]  # fmt: skip
    shown = told if len(told) <= MOST_STATIONS else [told[0], told[-1]]
    return say("station.stakes", stations=", ".join(shown)) if told else ""


def off_arc(answer: Answer) -> list[GotRow]:
    """Return the stakes that something else was got at and that stand too far off the arc, or make a bump."""
    return [row for row in answer["got"] if row["at"] and False in (row["within"], row["usual"], row["fair"])]


def off_names(rows: Sequence[GotRow]) -> str:
    """Return the names of stakes, or how many there are where a line has no room for all."""
    if len(rows) > MOST_NAMES:
        return say("paper.stakes_count", count=len(rows))
    return ", ".join(row["at"] or "" for row in rows)


def stands_off(answer: Answer) -> str:
    """Return which stakes stand off the arc, and what to do, empty for none: the checks follow them as they stand."""
    rows = off_arc(answer)
    if len(rows) == 1:
        return say("paper.stands_off", stake=rows[0]["at"], shown=rows[0]["shown"])
    return say("paper.stand_off", stakes=off_names(rows)) if rows else ""


def no_check(answer: Answer) -> str:
    """Return why there is no check to make, and what to do instead."""
    seen = [check for check in answer["checks"] if not check["blind"]]
    if seen:
        return say("paper.no_check")
    return say("paper.no_check_tolerance" if answer["checks"] else "paper.no_check_left")


def _limit(check: CheckRow) -> str:
    return check["limit_shown"] if check["judges"] else say("sheet.cant_judge")


def _what(check: CheckRow) -> str:
    start, end = check["from"], check["to"]
    side = "_inside" if check["inside"] else ""
    if check["kind"] == "alternate":
        first, last = start.removeprefix("mid ").split("-")
        return say(f"paper.check.alternate{side}", string=say("sheet.from_to", start=first, end=last), stake=end)
    if check["kind"] == "ordinate":
        return say(f"paper.check.ordinate{side}", stake=end, along=check["along_shown"])
    return say("paper.check.closing" if check["kind"] == "closing" else "paper.check.line", start=start, end=end)


def last(answer: Answer) -> str:
    """Return what is done when the stakes stand."""
    offset, driven = answer["offset"], answer["driven"]
    if offset and driven != "board":
        return say("paper.back_stick", shown=offset["shown"])
    return say("paper.hubs" if driven == "hub" else "paper.spring")


def foot(answer: Answer) -> str:
    """Return how true the stakes have to be, and how fine the numbers are."""
    tolerance = answer["tolerance_shown"]
    if tolerance is None:
        return say("paper.to_mark", mark=answer["mark"])
    return say("paper.within", tolerance=tolerance, mark=answer["mark"])


def cautions(answer: Answer) -> list[str]:
    """Return the cautions of this job, after those of every job and before those of its own ground and numbers."""
    return [*safe(answer), *own_cautions(answer)]


def safe(answer: Answer) -> list[str]:
    """Return the cautions that every sheet has."""
    usual = [say(f"paper.safe_{name}") for name in ("authority", "services", "caps", "board", "level")]
    return [*usual, say("paper.safe_hand", hand=curve_hand(answer), turn=away_hand(answer))]


def own_cautions(answer: Answer) -> list[str]:
    """Return the job's own cautions that are no stops."""
    return [text for text in answer["cautions"] if text not in answer["stops"]]


def way_out(answer: Answer) -> Iterator[str]:
    """Yield the method to take instead, where a stop is that this one can't be done here."""
    row = own_row(answer)
    done = row["possible"] and row["reliable"] is not False and row["hands"] <= answer["site"]["hands"]
    if done and BY_NAME[answer["method"]].exact:
        return
    advised = next((row for row in answer["methods"] if is_advised(answer, row) and not is_own(answer, row)), None)
    if advised:
        yield say("paper.stop_take", method=advised["name"][:1].upper() + advised["name"][1:])
    elif answer["advice"]["method"] is None:
        yield answer["advice"]["text"]
