"""The signs of the pictures, each as a small drawn example with its words: of those that a booklet uses and no others.

A sign is a fill or a line of a role that has a meaning of its own; outlines, leaders, letters and signs that look like
what they are (a button, a hook) have none. The words are the messages picture-legend_....
"""

from __future__ import annotations

import math
from collections.abc import Collection, Iterable
from dataclasses import dataclass
from typing import Literal, cast, get_args

from kit.geometry import Arc, Cubic, Line, Point, Vector
from kit.language import say
from kit.picture.drawing import Dot, Drawing, Fill, FillRole, Item, Stroke, StrokeRole
from kit.picture.place import rectangle
from kit.picture.scene_signs import CUT

CLOTH: tuple[FillRole, ...] = ("right_side", "wrong_side", "interfacing", "facing", "strip", "lining")
LINES: tuple[StrokeRole, ...] = (
    "cut",
    "stitch",
    "fold",
    "grain",
    "notch",
    "mark",
    "lengthen",
    "placement",
    "pleat",
    "new",
    "kept",
    "traced",
    "aid",
    "check",
    "lens",
    "removed",
    "guide",
    "row",
    "row_sign",
    "baste",
    "hand",
    "old_row",
    "hidden",
    "crease",
    "press",
    "pin",
)
CUT_THROUGH = ("ply", "ply_face", "needle", "cut_mark")
POINTS = ("point_new", "point_kept")
CORNERS = ("sign_square", "sign_tangent")
SIGNS: tuple[str, ...] = (*CLOTH, *LINES, *CORNERS, *POINTS, *CUT_THROUGH)
"""Every sign that has an example, in the order they are listed."""
PLAIN: tuple[str, ...] = ("symbol", "leader", "edge", "trim", "page", "paper", "frame", "row_ground")
"""Roles that mean nothing beyond what they show."""
WIDE, HIGH = 24.0, 8.0
"""mm that an example takes on the page."""


@dataclass(frozen=True)
class Example:
    """A sign, what it means, and how it looks."""

    sign: str
    said: str
    drawing: Drawing


def signs_in(drawing: Drawing) -> frozenset[str]:
    """The signs that a drawing uses.

    >>> line = (Line(Point(0, 0), Point(9, 0)),)
    >>> sorted(signs_in(Drawing((Stroke(line, "press"), Stroke(line, "edge"), Dot(Point(0, 0), "new")))))
    ['point_new', 'press']
    """
    return frozenset(sign for sign in map(_sign, drawing.items) if sign in SIGNS)


def _sign(item: Item) -> str:
    if isinstance(item, Dot):
        return f"point_{item.role}"
    if isinstance(item, Stroke):
        if item.role == "sign":
            return "sign_tangent" if ".tangent." in item.name else "sign_square"
        if item.name == CUT:
            return "cut_mark"
        return "ply" if item.role.startswith("ply_") and item.role != "ply_face" else item.role
    return item.role if isinstance(item, Fill) else ""


def legend(signs: Collection[str] | None = None) -> tuple[Example, ...]:
    """An example of each of the `signs`, of all when None, in the order of the list."""
    wanted = SIGNS if signs is None else [sign for sign in SIGNS if sign in signs]
    if signs is not None and "ply_face" in signs:  # it shows cloth that is cut through as well
        wanted = [sign for sign in wanted if sign != "ply"]
    return tuple(_example(sign) for sign in wanted)


def _example(sign: str) -> Example:
    said = say(f"picture.legend_{sign}")
    bounds = (0.0, 0.0, WIDE, HIGH)
    return Example(sign, said, Drawing(tuple(_items(sign)), alt=said, title=said, bounds=bounds))


def _items(sign: str) -> Iterable[Item]:
    middle = HIGH / 2
    if sign in CLOTH:
        box = rectangle(1.0, 0.6, WIDE - 1.0, HIGH - 0.6)
        return [Fill(box, sign), Stroke(box, "edge", closed=True)]
    if sign in POINTS:
        return [Dot(Point(WIDE / 2, middle), "new" if sign == "point_new" else "kept")]
    if sign == "ply":
        return [_line(2.0, middle, WIDE - 2.0, middle, "ply_main", 2.4)]
    if sign == "ply_face":
        ply = _line(2.0, middle, WIDE - 2.0, middle, "ply_main", 2.4)
        return [ply, _line(2.0, middle + 1.2, WIDE - 2.0, middle + 1.2, "ply_face")]
    if sign == "cut_mark":
        ends = [_line(WIDE / 2, y, WIDE / 2, y + way * 2.0, "symbol") for y, way in ((middle, 1.0), (middle, -1.0))]
        tips = [Point(WIDE / 2, middle + way * 2.0) for way in (1.0, -1.0)]
        looks = [Stroke((Line(tip, tip + Vector(3.2, 0.0)),), "symbol", arrow="end") for tip in tips]
        return [*ends, *looks]
    if sign == "needle":
        return [
            _line(2.0, middle + 1.7, WIDE - 2.0, middle + 1.7, "ply_main", 2.0),
            _line(2.0, middle - 1.7, WIDE - 2.0, middle - 1.7, "ply_main", 2.0),
            _line(WIDE / 2, 0.3, WIDE / 2, HIGH - 0.3, "needle"),
        ]
    if sign == "sign_square":
        foot, side = Point(WIDE * 0.4, 1.0), 2.4
        legs = [_line(foot.x, foot.y, foot.x + 9.0, foot.y, "kept"), _line(foot.x, foot.y, foot.x, HIGH - 0.5, "new")]
        corner = Point(foot.x + side, foot.y + side)
        return [
            *legs,
            _line(foot.x, corner.y, corner.x, corner.y, "sign"),
            _line(corner.x, foot.y, corner.x, corner.y, "sign"),
        ]
    if sign == "sign_tangent":
        x, y = WIDE / 2, middle - 1.4
        curve = Cubic(Point(x, y), Point(x + 4.0, y), Point(x + 7.0, y + 1.0), Point(WIDE - 2.0, HIGH - 0.5))
        bars = [_line(x - 2.2, y + off, x + 2.2, y + off, "sign") for off in (-1.0, 1.0)]
        return [_line(2.0, y, x, y, "kept"), Stroke((curve,), "new"), *bars]
    if sign == "row_sign":
        tip = Point(WIDE * 0.55, middle)
        barbs = [_line(tip.x - 1.8, middle + side * 1.5, tip.x, middle, "row_sign") for side in (1.0, -1.0)]
        row = _line(2.0, middle, WIDE - 2.0, middle, "row")
        return [row, Dot(Point(2.0, middle), "new"), *barbs, _line(WIDE - 2.0, 2.0, WIDE - 2.0, HIGH - 2.0, "row_sign")]
    if sign == "lens":
        ring = (Arc(Point(WIDE / 2, middle), HIGH / 2 - 0.6, 0.0, math.tau),)
        return [Stroke(ring, "lens", closed=True)]
    if sign == "notch":
        ticks = [_line(x, middle, x, middle + 2.2, "notch") for x in (WIDE * 0.3, WIDE * 0.66, WIDE * 0.66 + 1.8)]
        return [_line(1.0, middle, WIDE - 1.0, middle, "cut"), *ticks]
    if sign == "lengthen":
        return [_line(1.0, middle + off, WIDE - 1.0, middle + off, "lengthen") for off in (-1.2, 1.2)]
    if sign == "pin":
        head = Point(WIDE * 0.32, middle)
        return [_line(head.x, middle, WIDE * 0.68, middle, "pin"), Dot(head, "mark")]
    arrows: dict[str, Literal["end", "both"]] = {"press": "end", "grain": "both"}
    line = (Line(Point(1.0, middle), Point(WIDE - 1.0, middle)),)
    return [Stroke(line, cast("StrokeRole", sign), arrow=arrows.get(sign, ""))]


def _line(x0: float, y0: float, x1: float, y1: float, role: StrokeRole, thick: float = 0.0) -> Stroke:
    return Stroke((Line(Point(x0, y0), Point(x1, y1)),), role, thickness=thick)


def unexplained() -> set[str]:
    """Roles of strokes and fills that are neither a sign nor plain: none, or a role was added without its meaning.

    >>> unexplained()
    set()
    """
    roles = {*get_args(StrokeRole), *get_args(FillRole)} - set(PLAIN)
    return {role for role in roles if not role.startswith("ply_")} - {*SIGNS, "sign"}
