"""The legend of cloth fills and lines, printed once in each booklet. Its words are the messages picture-legend_...."""

from __future__ import annotations

from typing import Literal

from kit.geometry import Line, Point
from kit.language import say
from kit.picture.drawing import Drawing, Fill, FillRole, Item, Label, Stroke, StrokeRole
from kit.picture.place import rectangle

_CLOTH: tuple[FillRole, ...] = ("right_side", "wrong_side", "interfacing", "facing", "strip", "lining")
_LINES: tuple[StrokeRole, ...] = (
    "cut",
    "stitch",
    "fold",
    "mark",
    "placement",
    "pleat",
    "new",
    "removed",
    "guide",
    "row",
    "baste",
    "hand",
    "old_row",
    "hidden",
    "press",
)
_COLUMNS = 3


def legend() -> Drawing:
    """What each cloth fill and each line means."""
    said = {role: say(f"picture.legend_{role}") for role in (*_CLOTH, *_LINES)}
    items: list[Item] = []
    for number, cloth in enumerate(_CLOTH):
        x = number * 40.0
        box = rectangle(x, 0.0, x + 30.0, 14.0)
        items.append(Fill(box, cloth))
        items.append(Stroke(box, "edge", closed=True))
        items.append(Label(said[cloth], Point(x + 15.0, -5.0), "small"))
    for number, line in enumerate(_LINES):
        column, row = number % _COLUMNS, number // _COLUMNS
        x, y = column * 80.0, -18.0 - row * 9.0
        arrow: Literal["", "end"] = "end" if line == "press" else ""
        items.append(Stroke((Line(Point(x, y), Point(x + 24.0, y)),), line, arrow=arrow))
        items.append(Label(said[line], Point(x + 28.0, y), "small", anchor="start"))
    alt = say("picture.legend_alt", names=", ".join(said.values()))
    return Drawing(tuple(items), alt=alt, title=say("picture.legend"))
