"""The parts of a build along an arc alone: none of them where the job has a line of several pieces."""

from __future__ import annotations

from collections.abc import Sequence

from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_boards import BoardsPart
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_grades import GradesPart, TopPart, TopRow
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import PourPart
from bowstring.words import say


def line_ends_of(answer: Answer) -> dict[str, str]:
    """Return what the ends of the drawn line are called, see ``report.forming.plan.line_ends``."""
    return {end.lower(): f"{end}0" if answer["offset"] else end for end in ("A", "B")}


def edges_of(answer: Answer) -> EdgesPart | None:
    """Return the edges of an arc alone."""
    part = answer["edges"]
    return part if part is not None and "lines" in part else None


def boards_of(answer: Answer) -> BoardsPart | None:
    """Return the boards of an arc alone."""
    part = answer["boards"]
    return part if part is not None and "rows" in part else None


def joints_of(answer: Answer) -> JointsPart | None:
    """Return the joints of an arc alone."""
    part = answer["joints"]
    return part if part is not None and "rows" in part else None


def wanted_joints(answer: Answer) -> JointsPart | None:
    """Return the joints to be marked: of a wall none that nobody asked for, since the drawing has its own."""
    part = joints_of(answer)
    return None if part is not None and is_wall(answer) and not part["asked"] else part


def grades_of(answer: Answer) -> GradesPart | None:
    """Return the grades of an arc alone."""
    part = answer["grades"]
    return part if part is not None and "rows" in part else None


def pour_of(answer: Answer) -> PourPart | None:
    """Return the concrete of an arc alone."""
    part = answer["pour"]
    return part if part is not None and "reach" in part else None


def is_wall(answer: Answer) -> bool:
    """Tell whether a wall's faces are told of an arc alone."""
    edges = edges_of(answer)
    return edges is not None and bool(edges["faces"])


def drawn_line(answer: Answer) -> str:
    """Return which line the drawing has: a word of ``drawn_to``, ``unsure`` where nothing says it; of a slab's face, as
    of one that is walked on, ``edge``."""
    line, part, sheet = answer["drawn_to"] or "unsure", answer["lined"], answer["lined_sheet"]
    lined = part is not None and sheet is not None and bool(sheet["width_shown"]) and not part["wall_shown"]
    edged = lined or (edges_of(answer) is not None and not is_wall(answer))
    return "edge" if line == "face" and edged else line


def untitled(answer: Answer) -> str:
    """Return what an arc alone is called that has no title: a slab with straight sides is no arc."""
    edges = edges_of(answer)
    return say("sheet.untitled" if edges is None or edges["sides"] is None else "sheet.untitled_pad")


def called(answer: Answer, key: str) -> str:
    """Return what a row of the build and its page are called: a wall has forms that are no boards, of a line, too."""
    if key != "boards":
        return say(f"build.{key}")
    wall = bool(answer["lined"]["wall_shown"]) if answer["lined"] else is_wall(answer)
    return say("walled.row_forms" if wall else "build.boards")


def standing_in(answer: Answer) -> list[str]:
    """Return the names of what stands in the concrete or in the dig, of an arc alone or of a line."""
    lined, edges = answer["lined"], edges_of(answer)
    return [row["name"] for row in (lined["standing"] if lined else edges["standing"] if edges else ())]


def has_ground(rows: Sequence[TopRow]) -> bool:
    """Tell whether the ground's own height is told under any top: of a wall's dig."""
    return any(top["ground"] for row in rows for top in (row["outside"], row["inside"]) if top)


def digs_called(rows: Sequence[TopRow]) -> str:
    """Return what a table of cut and fill is called."""
    return say("walled.digs" if has_ground(rows) else "grades.digs")


def dug_at(top: TopPart) -> str:
    """Return how much is cut or filled under a top, with the ground's own height where it is told."""
    return say("walled.ground_at", dig=top["dig"], level=top["ground"]) if top["ground"] and top["dig"] else top["dig"]
