"""What stands on each fold of Why: its conclusion in a dozen words, the number in it bold, and whether it warns."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from itertools import pairwise
from math import hypot
from typing import NamedTuple

from bowstring.methods.catalogue import BY_NAME
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.stakes import StakeRow
from bowstring.report.own import is_advised, is_own
from bowstring.sheet import outline
from bowstring.sheet.blocks import Table
from bowstring.sheet.method import halves
from bowstring.units.tape import Tape, make_tape
from bowstring.units.worst import worst_shown
from bowstring.words import say


class Told(NamedTuple):
    """A conclusion: ``*`` stands around what is bold in it; ``warns``: it is no comfort."""

    text: str
    warns: bool = False


def conclusion(answer: Answer, key: str) -> Told | None:
    """Return a fold's conclusion, or ``None`` where this answer has nothing for that fold."""
    return _CONCLUDED[key](answer)


def tape_of(answer: Answer) -> Tape:
    """Return the tape that an answer's texts are written with."""
    return make_tape(answer["unit"], answer["mark"])


def _rule(answer: Answer) -> Told | None:
    rule = answer["rule"]
    if not halves(answer):
        return None
    if not rule["worst_miss"] or answer["levels"] == 1:
        return Told(say("why.rule.one"))
    values = {"at": rule["at"], "miss": tape_of(answer).show_near(rule["worst_miss"]),
              "where": say("rule.inside" if rule["worst_miss"] < 0 else "rule.outside")}  # fmt: skip
    holds = rule["holds"]
    if holds is None:
        return Told(say("why.rule.would", **values))
    return Told(say("why.rule.holds" if holds else "why.rule.fails", **values), holds is False and not _exact(answer))


def _exact(answer: Answer) -> bool:
    return BY_NAME[answer["method"]].exact


def _accuracy(answer: Answer) -> Told:
    """Place and fairness: the worst to expect; no percentage here."""
    accuracy, tape = answer["accuracy"], tape_of(answer)
    miss = worst_shown(tape, accuracy["miss_95"], answer["tolerance"])
    values = {"miss": miss, "fair": worst_shown(tape, accuracy["fair_95"])}
    if not accuracy["reliable"]:
        return Told(say("why.accuracy.unreliable"), warns=True)
    tolerance = answer["tolerance"]
    if tolerance is not None and accuracy["miss_95"] > tolerance:
        hubs = answer["driven"] in ("pin", "marked")
        return Told(say("why.accuracy.over_hubs" if hubs else "why.accuracy.over", **values), warns=True)
    return Told(say("why.accuracy.expect" if len(answer["stakes"]) > 3 else "why.accuracy.one", **values))


def _methods(answer: Answer) -> Told:
    rows, advice = answer["methods"], answer["advice"]
    able = sum(row["possible"] and row["reliable"] is not False for row in rows)
    advised = next((row for row in rows if is_advised(answer, row)), None)
    own = next((row for row in rows if is_own(answer, row)), None)
    if advice["method"] is None:
        return Told(say("why.methods.none", count=len(rows)), warns=True)
    name = say(f"why.method.{advice['method']}")
    if own is not None and (not own["possible"] or own["reliable"] is False):
        return Told(say("why.methods.blocked", own=say(f"why.method.{own['method']}"), name=name), warns=True)
    key = "why.methods.taken" if advised is not None and advised is own else "why.methods.other"
    return Told(say(key, able=able, count=len(rows), name=name))


def _site(answer: Answer) -> Told | None:
    site = answer["site"]
    names = [one["name"] for one in site["obstacles"]]
    if not names:
        return Told(say("why.site.known", count=len(site["known"]))) if site["known"] else None
    if len(names) == 1:
        return Told(say("why.site.one", name=names[0]))
    return Told(say("why.site.some", name=names[0], count=len(names) - 1))


def _square(answer: Answer) -> Told | None:
    if halves(answer):
        return Told(say("why.square.slide")) if any(row["how"] for row in answer["halving"]) else None
    return Told(say("why.square.triangle")) if answer["square"] else None


def _mistakes(answer: Answer) -> Told | None:
    rows = answer["mistakes"]
    missed = [row for row in rows if not row["caught"]]
    caught = len(rows) - len(missed)
    if not rows:
        return None
    if not missed:
        return Told(say("why.mistakes.all", count=len(rows)))
    # The wrong hand first: nothing else that is missed throws the whole curve off.
    missed.sort(key=lambda row: row["kind"] != "wrong_hand")
    name = say(f"why.mistake.{missed[0]['kind']}")
    key = "why.mistakes.one" if len(missed) == 1 else "why.mistakes.more"
    return Told(say(key, caught=caught, count=len(rows), name=name, more=len(missed) - 1), warns=True)


def _checks(answer: Answer) -> Told:
    rows = [row for row in answer["checks"] if not row["blind"] or row["kind"] == "closing"]
    first = sum(row["recommended"] for row in rows)
    if not first:
        return Told(say("why.checks.none"), warns=True)
    return Told(say("why.checks.told", count=len(rows), first=first))


def _stick(answer: Answer) -> Told | None:
    shown = [mark["shown"] for mark in answer["stick"]["marks"]]
    if not shown:
        return None
    if len(shown) <= 3:
        key = "why.stick.one" if len(shown) == 1 else "why.stick.few"
        return Told(say(key, count=len(shown), marks=", ".join(shown)))
    return Told(say("why.stick.many", count=len(shown), first=shown[0], last=shown[-1]))


def _rounding(answer: Answer) -> Told:
    rounding = answer["rounding"]
    values = {"mark": answer["mark"], "miss": tape_of(answer).show_near(rounding["worst_miss"]), "at": rounding["at"]}
    return Told(
        say("why.rounding.eats" if rounding["eats_half"] else "why.rounding.costs", **values), rounding["eats_half"]
    )


def _by_hand(answer: Answer) -> Told | None:
    worked = [row for row in answer["halving"] if row["by_hand"]] if halves(answer) else []
    return Told(say("why.by_hand.told", count=len(worked))) if worked else None


def _stakes(answer: Answer) -> Told:
    count = sum(stake["level"] > 0 for stake in answer["stakes"])
    for key, gaps in (("apart", _gaps(answer)), ("along", _along(answer))):
        if len({*gaps}) == 1 and key == "apart":
            return Told(say("why.stakes.told", count=count, gap=gaps[0]))
        if len(gaps) > 3 and len({*gaps[1:-1]}) == 1:
            ends = ", ".join(dict.fromkeys((gaps[0], gaps[-1])))
            return Told(say(f"why.stakes.{key}", count=count, gap=gaps[1], ends=ends))
    return Told(say("why.stakes.up_to", count=count, gap=answer["gap"]["shown"]))


def _gaps(answer: Answer) -> list[str]:
    """What each stake is from the next, straight across, from A to B, as it is shown."""
    apart = (hypot(after["x"] - one["x"], after["y"] - one["y"]) for one, after in _neighbors(answer))
    return [tape_of(answer).show(gap) for gap in apart]


def _along(answer: Answer) -> list[str]:
    """The same along the string from A to B."""
    return [tape_of(answer).show(after["x"] - one["x"]) for one, after in _neighbors(answer)]


def _neighbors(answer: Answer) -> Iterator[tuple[StakeRow, StakeRow]]:
    return pairwise(sorted(answer["stakes"], key=lambda stake: stake["along"]))


def _on_line(answer: Answer) -> Told:
    pins = answer["on_line"]["pins"]
    if pins in ("back", "maybe"):
        return Told(say(f"why.on_line.pin_{pins}"))
    return Told(
        say(f"why.on_line.{answer['driven']}{'_off' if answer['driven'] == 'board' and answer['offset'] else ''}")
    )


def _arc(answer: Answer) -> Told:
    shown = answer["arc_shown"]
    wrong = next((row for row in answer["given"] if not row["agrees"]), None)
    if wrong is not None:
        return Told(say("why.arc.differs", name=say(f"measure.{wrong['field']}")), warns=True)
    key = "why.arc.agrees" if answer["given"] else "why.arc.told"
    return Told(say(key, radius=shown["radius"], length=shown["arc_length"]))


def _found(answer: Answer) -> Told | None:
    fit = answer["fit"]
    if fit is None:
        return None
    taken = next((option for option in fit["options"] if option["taken"]), None)
    key = "why.found.taken" if taken else "why.found.asks"
    return Told(say(key, found=fit["found_shown"], drawn=fit["drawn_shown"]), warns=taken is None)


def _ends(answer: Answer) -> Told:
    ties = sum(len(rows) for rows in answer["ties"].values())
    return Told(say("why.ends.tied" if ties else "why.ends.untied", chord=answer["staked_shown"]["chord"], count=ties))


def _readings(answer: Answer) -> Told:
    # An outline's corners are one entry.
    section = outline.part(answer, "readings")
    rows = [len(block.rows) for block in section.blocks if isinstance(block, Table)] if section else []
    return Told(say("why.readings.told", count=sum(rows)))


def _before(answer: Answer) -> Told:
    count = len(answer["cautions"]) + len(answer["warnings_top"])
    return Told(say("why.before.told", count=count))


def _notes(answer: Answer) -> Told:
    return Told(say("why.notes.told", count=len(answer["notes"])))


_CONCLUDED: dict[str, Callable[[Answer], Told | None]] = {
    "rule": _rule,
    "accuracy": _accuracy,
    "methods": _methods,
    "site": _site,
    "square": _square,
    "mistakes": _mistakes,
    "checks": _checks,
    "stick": _stick,
    "rounding": _rounding,
    "by-hand": _by_hand,
    "stakes": _stakes,
    "on-line": _on_line,
    "arc": _arc,
    "found": _found,
    "ends": _ends,
    "readings": _readings,
    "before": _before,
    "notes": _notes,
}
"""In the order in which the folds stand."""

FOLDS = tuple(_CONCLUDED)
