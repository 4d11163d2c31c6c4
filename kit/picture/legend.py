"""The legend of cloth fills and lines, printed once in each booklet."""

from __future__ import annotations

from kit.geometry import Line, Point
from kit.picture.drawing import Drawing, Fill, FillRole, Item, Label, Stroke, StrokeRole
from kit.picture.place import rectangle

_CLOTH: tuple[tuple[FillRole, str], ...] = (
    ("right_side", "right side"),
    ("wrong_side", "wrong side"),
    ("interfacing", "interfacing"),
    ("facing", "facing"),
    ("strip", "strip"),
    ("lining", "lining"),
)
_LINES: tuple[tuple[StrokeRole, str], ...] = (
    ("cut", "cut line"),
    ("stitch", "stitch line"),
    ("fold", "fold"),
    ("mark", "marking"),
    ("placement", "piece laid on here"),
    ("pleat", "pleat or tuck line"),
    ("new", "new in this step"),
    ("removed", "taken away"),
    ("guide", "guide line"),
    ("row", "stitching of this step"),
    ("baste", "basting or gathering"),
    ("hand", "hand stitches"),
    ("old_row", "stitching done before"),
    ("hidden", "lies underneath"),
    ("press", "press this way"),
)
_COLUMNS = 3


def legend(words: dict[str, str] | None = None) -> Drawing:
    """What each cloth fill and each line means. `words` gives other wording by role."""
    said = words or {}
    items: list[Item] = []
    for number, (role, text) in enumerate(_CLOTH):
        x = number * 40.0
        box = rectangle(x, 0.0, x + 30.0, 14.0)
        items.append(Fill(box, role))
        items.append(Stroke(box, "edge", closed=True))
        items.append(Label(said.get(role, text), Point(x + 15.0, -5.0), "small"))
    for number, (line, text) in enumerate(_LINES):
        column, row = number % _COLUMNS, number // _COLUMNS
        x, y = column * 80.0, -18.0 - row * 9.0
        arrow = "end" if line == "press" else ""
        items.append(Stroke((Line(Point(x, y), Point(x + 24.0, y)),), line, arrow=arrow))  # type: ignore[arg-type]
        items.append(Label(said.get(line, text), Point(x + 28.0, y), "small", anchor="start"))
    names = [said.get(role, text) for role, text in (*_CLOTH, *_LINES)]
    return Drawing(tuple(items), alt=f"Legend: {', '.join(names)}.", title=said.get("legend", "Legend"))
