"""A gauge for the stretch of cloth: where a fold is held, how far it reaches relaxed, and how far it must be drawn.

Stretch is (stretched - relaxed) / relaxed. Only lengths that lie on the same picture are compared, so that it holds
however large it is printed.
"""

from __future__ import annotations

from kit.geometry import Line, Point
from kit.language import say
from kit.picture.drawing import Drawing, Fill, Item, Label, Stroke
from kit.picture.place import rectangle
from kit.units import System, both

RELAXED = 100.0
"""mm of the fold that are laid on it."""
_HIGH, _TICK, _END = 8.0, 5.0, 12.0


def stretch_gauge(stretch: float, system: System = "cm") -> Drawing:
    """The gauge for cloth that must stretch by `stretch` (0.4: 10 cm become 14), in mm.

    >>> from kit.geometry import Line
    >>> marks = [item.curves[0].start.x for item in stretch_gauge(0.4).items if getattr(item, "name", "") == "mark"]
    >>> marks
    [0.0, 100.0, 140.0]
    """
    reach = RELAXED * (1.0 + stretch)
    bar = rectangle(0.0, 0.0, RELAXED, _HIGH)
    more = rectangle(RELAXED, 0.0, reach, _HIGH)
    items: list[Item] = [Fill(bar, "frame"), Fill(more, "paper")]
    items += [Stroke(bar, "edge", closed=True), Stroke(more, "edge", closed=True)]
    items.append(Stroke((Line(Point(RELAXED + 4.0, _HIGH / 2), Point(reach - 4.0, _HIGH / 2)),), "new", arrow="end"))
    texts = (
        (0.0, say("booklet.stretch_here")),
        (RELAXED, say("booklet.stretch_relaxed", length=both(RELAXED, system))),
        (reach, say("booklet.stretch_reach", length=both(reach, system))),
    )
    for number, (x, text) in enumerate(texts):
        up = number == 1
        ends = (_HIGH, _HIGH + _TICK) if up else (0.0, -_TICK)
        items.append(Stroke((Line(Point(x, ends[0]), Point(x, ends[1])),), "edge", name="mark"))
        y = _HIGH + _TICK + 4.0 if up else -_TICK - 4.0
        items.append(Label(text, Point(x, y), "small"))
    return Drawing(
        tuple(items),
        alt=say("booklet.stretch_gauge_alt"),
        title=say("booklet.stretch_gauge"),
        bounds=(-_END, -_TICK - 9.0, reach + _END, _HIGH + _TICK + 9.0),
    )
