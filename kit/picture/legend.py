"""The legend of cloth fills and lines, printed once in each booklet. Its words are the messages picture-legend_...."""

from __future__ import annotations

from typing import Literal

from kit.geometry import Line, Point
from kit.language import say
from kit.picture.drawing import Drawing, Fill, FillRole, Item, Label, Stroke, StrokeRole
from kit.picture.lettering import text_width
from kit.picture.place import rectangle
from kit.wording.lists import strung

_CLOTH: tuple[FillRole, ...] = ("right_side", "wrong_side", "interfacing", "facing", "strip", "lining")
_LINES: tuple[StrokeRole, ...] = (
    "cut",
    "stitch",
    "fold",
    "mark",
    "placement",
    "pleat",
    "new",
    "traced",
    "aid",
    "sign",
    "check",
    "removed",
    "guide",
    "row",
    "baste",
    "hand",
    "old_row",
    "hidden",
    "press",
)
_LETTERS = 4.3
_BOX, _SAMPLE = 30.0, 24.0
_CLOTH_STEP, _LINE_STEP = 40.0, 80.0  # where the words are short


def legend() -> Drawing:
    """What each cloth fill and each line means, in columns as wide as their words."""
    cloth = {role: say(f"picture.legend_{role}") for role in _CLOTH}
    lines = {role: say(f"picture.legend_{role}") for role in _LINES}
    wide = max(text_width(said, _LETTERS) for said in cloth.values())
    step = max(_CLOTH_STEP, wide + 5.0)
    items: list[Item] = []
    for number, (role, said) in enumerate(cloth.items()):
        middle = number * step + _BOX / 2
        box = rectangle(middle - _BOX / 2, 0.0, middle + _BOX / 2, 14.0)
        items.append(Fill(box, role))
        items.append(Stroke(box, "edge", closed=True))
        items.append(Label(said, Point(middle, -5.0), "small", size=_LETTERS))
    across = max(_LINE_STEP, _SAMPLE + 10.0 + max(text_width(said, _LETTERS) for said in lines.values()))
    columns = 3 if across * 3 <= max(len(_CLOTH) * step, 270.0) else 2
    for number, (line, said) in enumerate(lines.items()):
        column, row = number % columns, number // columns
        x, y = column * across, -18.0 - row * 9.0
        arrow: Literal["", "end"] = "end" if line == "press" else ""
        items.append(Stroke((Line(Point(x, y), Point(x + _SAMPLE, y)),), line, arrow=arrow))
        items.append(Label(said, Point(x + _SAMPLE + 4.0, y), "small", size=_LETTERS, anchor="start"))
    alt = say("picture.legend_alt", names=strung((*cloth.values(), *lines.values())))
    return Drawing(tuple(items), alt=alt, title=say("picture.legend"))
