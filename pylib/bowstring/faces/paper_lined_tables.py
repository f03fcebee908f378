"""The tables of a line's form sheet, each place once: what its pages tell of the same piece or the same place stands in
one row."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from html import escape
from itertools import zip_longest

from bowstring.faces.paper_flow import Band, Grid
from bowstring.faces.paper_sizes import PAGE_WIDE, width
from bowstring.report.forms.build_lined import LinedPart, LinedPlace, LinedSheet, LinedSpot, LinedTable
from bowstring.sheet.markup import marked
from bowstring.words import say

_NONE = "-"
"""Where a straight has no radius and no chord, and a kink leaves no form."""

_SPOT = ("along", "top", "feet", "level", "rod")
"""What is told of a place on a form, in the order of its columns."""

_SLOPES_TYPE, _SLOPES_SIDES, SLOPES_ROW = 13.0, 11.0, 18.0


def table_of(part: LinedPart, key: str) -> LinedTable | None:
    """Return one of the tables of a line's pages, ``None`` where it isn't told."""
    return next((table for page in part["pages"] for table in page["tables"] if table["key"] == key), None)


def hubs_told(part: LinedPart) -> str:
    """Return how far it is from hub to hub, in a sentence, where all hubs of a line stand alike; empty otherwise: a
    table then tells where each stands."""
    hubs = table_of(part, "hubs")
    if hubs is None or len(hubs["heads"]) > 2:
        return ""
    return f"{say('lined.head_hub_to_hub')}: {', '.join(f'*{apart}*' for _place, apart in hubs['rows'][:-1])}."


def bands_of(part: LinedPart, sheet: LinedSheet, *, feet: bool, apart: bool) -> list[Band]:
    """Return all tables that may stand on either side, in the order in which they are used; ``feet``: with the tops in
    hundredths of a foot beside the inches, where the answer has them; ``apart``: where each piece begins is a table of
    its own with its hub, else it stands in the row of the piece that ends there, the hubs in a table."""
    begins, hubs = table_of(part, "begins"), None if hubs_told(part) else table_of(part, "hubs")
    cuts = tuple(_as_grid(table) for key in ("cut", "stakes") if (table := table_of(part, key)))
    if apart and begins:
        found: list[Band] = [(_pieces(part, sheet, None),), (_begins(begins, hubs),)]
    else:
        found = [(_pieces(part, sheet, begins),)]
        found += [(_as_grid(hubs),)] if hubs else []
    found += [cuts] if cuts else []
    found += [(places,) for places in [_places(sheet, feet)] if places.rows]
    stakes = table_of(part, "at_stakes")
    piece = part["pieces"][part["at"] - 1]["name"]
    return [*found, (_at_stakes(stakes, piece, feet),)] if stakes else found


def _as_grid(table: LinedTable) -> Grid:
    return Grid(table["title"], tuple(table["heads"]), tuple(map(tuple, table["rows"])))


def _begins(begins: LinedTable, hubs: LinedTable | None) -> Grid:
    """Where each piece begins, with its hub and how far it is from there to the next one."""
    if hubs is None:
        return _as_grid(begins)
    first, *others = [row[1:] for row in hubs["rows"]]
    none = [_NONE] * len(first)
    rows = [(hubs["rows"][0][0], *[_NONE] * (len(begins["heads"]) - 1), *first)]
    rows += [(*row, *more) for row, more in zip_longest(begins["rows"], others[: len(begins["rows"])], fillvalue=none)]
    return Grid(begins["title"], (*begins["heads"], *hubs["heads"][1:]), tuple(rows))


def _pieces(part: LinedPart, sheet: LinedSheet, begins: LinedTable | None) -> Grid:
    """Each piece: the line, the joint at its end, where that is from the line's start, and both edges beside each
    other."""
    line, edges = table_of(part, "pieces"), [(hand, table_of(part, hand)) for hand in ("left", "right")]
    told = [(hand, edge) for hand, edge in edges if edge]
    joints = [place["label"] for place in sheet["places"] if place["begins"] or place["kind"] == "end"]
    jointed = any(place["kind"] == "joint" for place in sheet["places"])
    rows = []
    for number, (name, ends, radius, chord, *_more) in enumerate(line["rows"] if line else []):
        row = [name, radius, *([] if begins else [_bare(chord)]), ends, *joints[number : number + jointed]]
        row += begins["rows"][number][2:] if begins else []
        for _hand, edge in told:
            _name, edge_radius, _long, edge_ends = edge["rows"][number]
            row += [_bare(edge_radius), edge_ends]
        rows.append(tuple(row))
    two = [say("lined.head_radius"), say("lined.head_to")]
    chorded = [] if begins else [say("lined.head_chord")]  # each arc's own sheet has it, too
    heads = [say("lined.head_piece"), two[0], *chorded, two[1]]
    heads += [say("lined.place")] * jointed
    over = [(sheet["from_start"], 2)] * bool(begins) + [(say(f"lined.head_edge_{hand}"), 2) for hand, _edge in told]
    groups = (("", 1), (say("lined.on_line"), len(heads) - 1), *over) if over else ()
    there = begins["heads"][2:] if begins else []
    return Grid("", (*heads, *there, *(two * len(told))), tuple(rows), groups)


def _bare(text: str) -> str:
    return _NONE if text == say("lined.none") else text


def _places(sheet: LinedSheet, feet: bool) -> Grid:
    """Every place along both forms, where it is and how high its top stands."""
    places = sheet["places"]
    columns = [one for one in _SPOT if (feet or one != "feet") and any(_told(place, one) for place in places)]
    rows = [(place["label"], *(cell for hand in _hands(place) for cell in _cells(hand, columns))) for place in places]
    heads = [say("lined.place"), *([say(f"lined.spot_{one}") for one in columns] * 2)]
    groups = (("", 1), *((say(f"lined.head_{hand}"), len(columns)) for hand in ("left", "right")))
    begins = tuple(number for number, place in enumerate(places) if place["begins"])
    title = ". ".join(text for text in (say("lined.places"), sheet["read_from"]) if text)
    return Grid(title, tuple(heads), tuple(rows), groups, begins)


def _hands(place: LinedPlace) -> tuple[LinedSpot | None, LinedSpot | None]:
    return place["left"], place["right"]


def _told(place: LinedPlace, column: str) -> bool:
    return any(_cells(spot, [column])[0] not in ("", _NONE) for spot in _hands(place))


def _cells(spot: LinedSpot | None, columns: Sequence[str]) -> list[str]:
    """What is told of a place on one form."""
    if spot is None:
        return [_NONE] * len(columns)
    told = {"along": spot["along_shown"], "top": spot["top_shown"], "feet": spot["feet_shown"],
            "level": spot["level_shown"], "rod": spot["rod_shown"]}  # fmt: skip
    return [told[one] or _NONE for one in columns]


def _at_stakes(table: LinedTable, piece: str, feet: bool) -> Grid:
    """The tops at the stakes of the arc that is staked."""
    hundredths = say("grades.feet")
    keep = [number for number, head in enumerate(table["heads"]) if feet or number == 0 or head != hundredths]
    rows = tuple(tuple(row[number] for number in keep) for row in table["rows"])
    short = {say(f"lined.head_{hand}"): say(f"hand.{hand}") for hand in ("left", "right")}
    heads = tuple(short.get(table["heads"][number], table["heads"][number]) for number in keep)
    return Grid(say("lined.tops_at", piece=piece), heads, rows)


def slopes_html(part: LinedPart) -> tuple[str, float]:
    """Return the slopes of both forms side by side, piece by piece, and how high they stand; nothing where the line is
    level."""
    table = table_of(part, "slopes")
    if table is None:
        return "", 0.0
    blocks = [*_blocks(table["rows"])]
    names = [say("lined.slopes_of"), *table["heads"][1:]]
    made, number = "", 0
    for block in blocks:
        numbers = [f"{number + one}" for one in range(1, len(block) + 1)]
        number += len(block)
        cells = [numbers, [row[1] for row in block], [row[2] for row in block]]
        body = "".join(
            f'<tr><th scope="row">{escape(name)}</th>{"".join(f"<td>{marked(text)}</td>" for text in texts)}</tr>'
            for name, texts in zip(names, cells, strict=True)
        )
        made += f'<table class="joint-tops"><tbody>{body}</tbody></table>'
    return f"<div>{made}</div>", len(blocks) * (3 * SLOPES_ROW + 3.0)


def _blocks(rows: list[list[str]]) -> Iterator[list[list[str]]]:
    """The pieces in as many equal blocks as it takes for each to stand side by side."""
    widest = max(width(cell, _SLOPES_TYPE) for row in rows for cell in row[1:])
    first = max(width(say(f"lined.{name}"), _SLOPES_TYPE) for name in ("head_left", "head_right", "slopes_of"))
    wide = max(1, int((PAGE_WIDE - first - 20.0) / (widest + _SLOPES_SIDES)))
    each = -(-len(rows) // -(-len(rows) // wide))
    for start in range(0, len(rows), each):
        yield rows[start : start + each]


def splices_told(part: LinedPart) -> Iterator[str]:
    """Return where the boards of each form meet, a sentence a form."""
    table = table_of(part, "splices")
    found: dict[str, list[str]] = {}
    for form, at, _piece in table["rows"] if table else []:
        found.setdefault(form, []).append(at)
    for form, places in found.items():
        yield say("lined.splices_at", form=form, places=", ".join(places))


def bought(part: LinedPart, sheet: LinedSheet) -> str:
    """Return what is bought of boards and form stakes, empty where no board is told."""
    table = table_of(part, "buy")
    found: dict[str, list[str]] = {}
    for board, length, count in table["rows"] if table else []:
        found.setdefault(board, []).append(say("lined.bought", count=count, length=length))
    told = [say("lined.bought_of", board=board, lengths=", ".join(lengths)) for board, lengths in found.items()]
    stakes = [say("forms.form_stakes", count=sheet["stakes"])] if sheet["stakes"] else []
    return "; ".join([*told, *stakes])
