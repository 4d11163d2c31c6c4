"""A traced outline with its corners numbered, for choosing its edges."""

from __future__ import annotations

from collections.abc import Mapping

from kit.blocks.traced_outline import TracedOutline
from kit.geometry import Vector
from kit.picture.drawing import Dot, Drawing, Item, Label, Stroke

_AWAY = 0.045


def corners_drawing(outline: TracedOutline, names: Mapping[int, str] | None = None) -> Drawing:
    """The outline as drawn, each corner with its number just outside; `names` writes an edge's name inside it, by the
    corner it starts from."""
    path, n = outline.path, len(outline.corners)
    x0, y0, x1, y1 = path.bounds()
    away = _AWAY * max(x1 - x0, y1 - y0)
    items: list[Item] = [Stroke(path.curves, "new", closed=True)]
    for i, along in enumerate(outline.corners):
        at = path.at(along)
        out = _outward(path.tangent_at((along - 1e-3) % path.length), path.tangent_at(along))
        items += [Dot(at, "new"), Label(str(i + 1), at + out * away, "number")]
        name = (names or {}).get(i + 1, "")
        if name:
            run = (outline.corners[(i + 1) % n] - along) % path.length or path.length
            middle = (along + run / 2) % path.length
            # The path runs clockwise, so the inside lies on the right.
            items.append(Label(name.replace("_", " "), path.at(middle) + path.normal_at(middle) * -away, "name"))
    alt = f"Outline {outline.number} with {n} corners, numbered clockwise from the lowest left one"
    margin = 2.2 * away
    return Drawing(tuple(items), alt=alt, bounds=(x0 - margin, y0 - margin, x1 + margin, y1 + margin))


def _outward(before: Vector, after: Vector) -> Vector:
    """Away from a clockwise outline at a corner."""
    both = before.left() + after.left()
    return both.unit() if both.length > 1e-6 else before
