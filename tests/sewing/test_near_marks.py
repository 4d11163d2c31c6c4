"""How much of an edge is shown beside buttons and what else is worked at marks."""

from __future__ import annotations

from types import SimpleNamespace

import pytest

from kit.body.body import Body
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern
from kit.piece.piece import Edge, Piece
from kit.sewing.operations.buttons import _near
from kit.sewing.run import Run


def pattern(long: float) -> Pattern:
    """A front `long` mm long, its centre drawn upward from the hem."""
    corners = (Point(0, 0), Point(0, long), Point(200, long), Point(200, 0))
    names = ("centre", "neck", "side", "hem")
    edges = tuple(
        Edge(name, Path.line(start, end))
        for name, start, end in zip(names, corners, (*corners[1:], corners[0]), strict=True)
    )
    return Pattern(LessonInfo("Trial", "trial"), Body("W4", ()), (), (Piece("front", "Front", edges),), (), (), ())


def shown(long: float, *heights: float) -> tuple[float, float] | None:
    """From where to where of the centre is shown, with a button at each height; None: all of the piece."""
    buttons = [SimpleNamespace(line=Path.line(Point(15, high), Point(25, high))) for high in heights]
    part = _near(pattern(long), Run("front", ("centre",)), buttons)  # type: ignore[arg-type]
    return None if part is None else (part.start or 0.0, long if part.end is None else part.end)


@pytest.mark.parametrize(
    ("long", "heights", "part"),
    [
        (1000.0, (500.0,), (455.0, 545.0)),
        (1000.0, (300.0, 700.0), (255.0, 745.0)),  # two fifths of the edge: still a part of it
        (1000.0, (300.0, 701.0), None),
        (1000.0, (100.0, 900.0), None),
        (1000.0, (20.0,), (0.0, 65.0)),
        (1000.0, (990.0,), (945.0, 1000.0)),
        (180.0, (90.0,), (45.0, 135.0)),  # as long as the part four times half: the shortest edge shown in part
        (179.9, (90.0,), (0.0, 179.9)),  # the end of a band: all of the end, and not all of the band
        (1000.0, (), None),
    ],
)
def test_what_is_worked_close_together_is_shown_with_its_part(
    long: float, heights: tuple[float, ...], part: tuple[float, float] | None
) -> None:
    assert shown(long, *heights) == (part if part is None else pytest.approx(part))
