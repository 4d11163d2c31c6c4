"""A traced outline with its corners numbered, for choosing its edges."""

from __future__ import annotations

from collections.abc import Mapping

from kit.blocks.traced_outline import TracedOutline
from kit.geometry import Vector
from kit.language import called, say
from kit.picture.drawing import Dot, Drawing, Item, Label, Stroke

_AWAY = 0.05


def corners_drawing(outline: TracedOutline, names: Mapping[int, str] | None = None) -> Drawing:
    """The outline as drawn, each corner with its number just inside; `names` writes an edge's name beside it, by the
    corner it starts from."""
    path, n = outline.path, len(outline.corners)
    x0, y0, x1, y1 = path.bounds()
    away = _AWAY * max(x1 - x0, y1 - y0)
    items: list[Item] = [Stroke(path.curves, "new", closed=True)]
    for i, along in enumerate(outline.corners):
        at = path.at(along)
        inward = _inward(path.tangent_at((along - 1e-3) % path.length), path.tangent_at(along))
        items += [Dot(at, "new"), Label(str(i + 1), at + inward * away, "number")]
        name = (names or {}).get(i + 1, "")
        if name:
            run = (outline.corners[(i + 1) % n] - along) % path.length or path.length
            middle = (along + run / 2) % path.length
            # The path runs clockwise, so the outside lies on the left; names are wider than high.
            out = path.normal_at(middle)
            wide = 0.35 * len(name) * abs(out.x)
            items.append(Label(called(name), path.at(middle) + out * (away * (0.7 + wide)), "name"))
    alt = say("picture.outline", outline=str(outline.number), corners=n)
    margin = away * (2.0 + 0.5 * max((len(name) for name in (names or {}).values()), default=0))
    return Drawing(tuple(items), alt=alt, bounds=(x0 - margin, y0 - 2 * away, x1 + margin, y1 + 2 * away))


def _inward(before: Vector, after: Vector) -> Vector:
    """From a corner of a clockwise outline into the piece, longer (up to double) where the corner is sharp, so that
    what stands there keeps off both edges. Inside, numbers on both legs of a dart do not meet."""
    both = before.right() + after.right()
    if both.length < 1e-6:
        return before * -2.0
    return both.unit() * min(2.5, 2.4 / both.length)
