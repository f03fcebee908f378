"""Reads a drawing back: what a test can say about an SVG text without trusting the code that wrote it."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from dataclasses import dataclass

SVG = "{http://www.w3.org/2000/svg}"
Point = tuple[float, float]


@dataclass(frozen=True)
class Words:
    """One text of a drawing with its place, its anchor, its kind's classes and the stake it names."""

    text: str
    at: Point
    anchor: str
    classes: frozenset[str]
    stake: str | None


class Read:
    """A parsed drawing."""

    def __init__(self, svg: str) -> None:
        self.root = ET.fromstring(svg)
        left, top, width, height = (float(side) for side in self.root.attrib["viewBox"].split())
        self.box = (left, top, left + width, top + height)

    @property
    def elements(self) -> int:
        return sum(1 for _ in self.root.iter())

    def described(self) -> tuple[str, str]:
        """Title and description, found through the references a screen reader follows."""
        parts = {element.attrib["id"]: element.text or "" for element in self.root.iter() if "id" in element.attrib}
        title, description = (parts[name] for name in self.root.attrib["aria-labelledby"].split())
        return title, description

    def words(self) -> list[Words]:
        return [
            Words(
                element.text or "",
                (float(element.attrib["x"]), float(element.attrib["y"])),
                element.attrib["text-anchor"],
                frozenset(element.attrib["class"].split()),
                element.attrib.get("data-for"),
            )
            for element in self.root.iter(f"{SVG}text")
        ]

    def all_text(self) -> str:
        return "\n".join(words.text for words in self.words())

    def flowing_text(self) -> str:
        """Every text in order, as if it had not been broken into lines."""
        return " ".join(words.text for words in self.words())

    def stakes(self) -> dict[str, list[Point]]:
        """The middles of the stakes' squares by name."""
        found: dict[str, list[Point]] = {}
        for element in self.root.iter(f"{SVG}rect"):
            if "data-stake" in element.attrib:
                x, y, width, height = (float(element.attrib[key]) for key in ("x", "y", "width", "height"))
                found.setdefault(element.attrib["data-stake"], []).append((x + width / 2, y + height / 2))
        return found

    def classes_of_stake(self, name: str) -> list[set[str]]:
        every = self.root.iter(f"{SVG}rect")
        return [set(element.attrib["class"].split()) for element in every if element.attrib.get("data-stake") == name]

    def crosses(self) -> list[Point]:
        """The middles of the marks that are no stakes, drawn as crosses of 8 units."""
        shapes = [path for path in self.paths("line") if len(path) == 4]
        middles = [tuple(sum(point[axis] for point in path) / 4 for axis in (0, 1)) for path in shapes]
        return [
            (x, y)
            for path, (x, y) in zip(shapes, middles, strict=True)
            if all(abs(abs(px - x) - 4) < 0.01 and abs(abs(py - y) - 4) < 0.01 for px, py in path)
        ]

    def paths(self, name: str) -> list[list[Point]]:
        """The points of each path of a class (curves' control points included)."""
        found = []
        for element in self.root.iter(f"{SVG}path"):
            if f"bd-{name}" in element.attrib["class"].split():
                pairs = re.findall(r"(-?[\d.]+),(-?[\d.]+)", element.attrib["d"])
                found.append([(float(x), float(y)) for x, y in pairs])
        return found
