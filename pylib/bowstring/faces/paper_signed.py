"""What is signed off before the truck comes, by whom: a row each, what it is and what it must be."""

from __future__ import annotations

from html import escape

from bowstring.faces.paper_wall import is_wall
from bowstring.faces.paper_wall_tops import sizes
from bowstring.report.alone import edges_of, grades_of, pour_of, standing_in, wanted_joints
from bowstring.report.forms.answer import Answer
from bowstring.report.forms.build_edges import EdgesPart
from bowstring.report.forms.build_joints import JointsPart
from bowstring.report.forms.build_pour import PourPart
from bowstring.sheet import brief
from bowstring.sheet.markup import marked
from bowstring.words import say


def standing_rows(answer: Answer) -> list[tuple[str, str]]:
    """Return the row of what stands in the concrete or in the dig, empty where nothing does: somebody signs for it."""
    names = standing_in(answer)
    return [(say("forms.sign_standing"), ", ".join(names))] if names else []


def sign_rows(answer: Answer) -> list[tuple[str, str]]:
    """What is signed off before the truck comes: what it is, and what it must be."""
    edges, joints, pour, shown = edges_of(answer), wanted_joints(answer), pour_of(answer), answer["staked_shown"]
    tolerance, depth = answer["tolerance_shown"], pour["depth_shown"] if pour else ""
    quarters = ", ".join(brief.quarter_names(answer))
    rows = [(say("forms.sign_arc", stakes=quarters), say("forms.within", tolerance=tolerance) if tolerance else "")]
    rows += [(say("forms.sign_chord"), f"{shown['chord']}; {shown['sagitta']}")]
    if edges:
        rows += sizes(answer) if is_wall(answer) else [*_sizes_of(edges), *_far_of(answer, edges)]
    rows += _slopes(answer)
    if joints and not joints["stop"]:
        rows += [(say("walled.joints" if is_wall(answer) else "forms.sign_joints"), _joints_cut(joints, pour))]
    if is_wall(answer):
        return (
            rows
            + standing_rows(answer)
            + [(say(f"forms.sign_{name}"), "") for name in ("sleeves", "services", "booked")]
        )
    rows += [(say("forms.sign_base"), _with_apron(depth, pour["deep"]["apron_depth"] if pour else ""))]
    rows += [(say("forms.sign_edge"), pour["deep"]["edge_signed"])] if pour and pour["deep"]["edge_signed"] else []
    rows += [(_strip_of(edges), edges["strip_shown"])] if edges and edges["strip_shown"] else []
    rows += standing_rows(answer)
    return rows + [(say(f"forms.sign_{name}"), "") for name in ("stakes", "sleeves", "services", "booked")]


def _strip_of(edges: EdgesPart) -> str:
    """What the isolation strip is at: a pad's back, or the ends of a slab that meet old concrete."""
    ends = say("ends.both") if len(edges["ends"]["against"]) > 1 else "".join(edges["ends"]["against"])
    return say("ends.sign", ends=ends) if ends else say("pad.sign_strip")


def _sizes_of(edges: EdgesPart) -> list[tuple[str, str]]:
    """The width, or how deep a slab is that fills its curve."""
    far = edges["far_width_shown"] if edges["far_width"] is not None else ""
    name = say("forms.sign_width" if edges["stick"] is not None else _deep(edges))
    return [(name, say("forms.tapers", near=edges["width_shown"], far=far) if far else edges["width_shown"])]


def _far_of(answer: Answer, edges: EdgesPart) -> list[tuple[str, str]]:
    """What proves a pad's far corners: both sides, the back, both diagonals, and by how much those may differ."""
    far = {row["key"]: row for row in answer["far_checks"]["rows"]}
    apart = answer["far_checks"]["apart"]
    if edges["sides"] is None or apart is None:
        return []
    side, across, diagonal = far["A-A-2"], far["A-2-B-2"], far["A-B-2"]
    return [
        (say("pad.sign_sides"), f"{side['shown']}; {across['shown']}"),
        (say("pad.sign_diagonals"), f"{diagonal['shown']}; {apart['limit_shown']}"),
    ]


def _deep(edges: EdgesPart) -> str:
    return "fill.sign_deep" if edges["sides"] is None else "pad.sign_deep"


def _joints_cut(joints: JointsPart, pour: PourPart | None) -> str:
    """How many joints there are and how deep they are cut, in an apron, too."""
    count = str(_joint_count(joints))
    if joints["depth"] is None:
        return count
    depth, deeper = joints["depth_shown"], pour["deep"]["apron_joint"] if pour else ""
    return f"{count}; {_with_apron(depth, deeper)}"


def _with_apron(depth: str, apron: str) -> str:
    return say("deep.sign_both", depth=depth, apron=apron) if apron else depth


def _joint_count(joints: JointsPart) -> int:
    """How many joints there are: one less than panels in a row, or all that cross a slab which fills its curve."""
    return len(joints["grid"]) if joints["grid"] or not joints["rows"] else joints["count"] - 1


def _slopes(answer: Answer) -> list[tuple[str, str]]:
    """The tops and the two slopes, where the grades may be used."""
    grades = grades_of(answer)
    if grades is None or grades["stop"]:
        return []
    if is_wall(answer):  # nobody walks on one: its slopes are told, not judged
        tops = "forms.sign_tops" if wanted_joints(answer) else "forms.sign_tops_alone"
        return [(say(tops, middle=brief.middle_name(answer)), say("forms.as_above"))]
    steepest = next((one["shown"] for one in grades["slopes"] if one["line"] == grades["steepest"]), "")
    level = say("forms.level_feet" if answer["unit"] in ("ft-in", "ft") else "forms.level_metric")
    back = [row["outside"]["tight"] for row in grades["rows"] if row["kind"] == "back"]
    far = say("pad.far_tops", first=back[0], last=back[-1]) if back else ""
    return [
        (say("forms.sign_tops", middle=brief.middle_name(answer)), say("forms.as_above")),
        *([(say("pad.sign_tops"), far)] if far else []),
        (say("forms.sign_slopes", level=level), f"{steepest}; {grades['drop']}"),
    ]


def sign_off(rows: list[tuple[str, str]]) -> str:
    """Return what is signed off: what it is, and what it must be."""
    heads = "".join(f'<th scope="col">{escape(say(f"forms.{name}"))}</th>' for name in ("what", "must", "got", "init"))
    body = "".join(
        f'<tr><th scope="row">{marked(what)}</th><td class="big">{marked(must)}</td>'
        '<td class="write"></td><td class="write"></td></tr>'
        for what, must in rows
    )
    return (
        f'<div><h3>{escape(say("forms.sign_off"))}</h3><table class="sign-off"><thead><tr>{heads}</tr></thead>'
        f"<tbody>{body}</tbody></table></div>"
    )


def signatures() -> str:
    """Return where whoever answers for the forms signs."""
    names = ("paper.by", "paper.checked", "forms.date_time", "forms.may_pour")
    return f'<div class="signs">{"".join(f"<p>{escape(say(name))}</p>" for name in names)}</div>'
