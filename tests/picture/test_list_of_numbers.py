"""The list below a picture stands inside its frame, however narrow the height leaves it."""

from __future__ import annotations

import pytest

from kit.geometry import Line, Point
from kit.picture.drawing import Dimension, Drawing, Label, Stroke
from kit.picture.lettered import lettered
from kit.picture.lettering import text_box


def crowded(texts: int) -> Drawing:
    """A tall narrow piece full of lines, so that its names fit nowhere."""
    lines = [Stroke((Line(Point(0, y), Point(60, y + 40)),), "edge") for y in range(0, 400, 6)]
    lines += [Stroke((Line(Point(x, 0), Point(x, 440)),), "edge") for x in range(0, 61, 5)]
    spots = [Point(30, 20 + 40 * n) for n in range(texts)]
    names = [Label(f"edge of the facing number {n}", at, "name", of=at) for n, at in enumerate(spots)]
    return Drawing((*lines, *names))


@pytest.mark.parametrize("room", [(600.0, 220.0), (420.0, 160.0), (640.0, None), (300.0, 420.0)])
@pytest.mark.parametrize("texts", [2, 6])
def test_every_line_of_the_list_is_inside_the_frame(texts: int, room: tuple[float, float | None]) -> None:
    found = lettered(crowded(texts), *room)
    x0, y0, x1, y1 = found.bounds
    assert (x1 - x0) / found.unit <= room[0] + 0.5
    listed = [text for text in found.texts if text.listed]
    for text in listed:
        box = text_box(text.x, text.y, text.wide, text.high, text.angle)
        assert x0 <= box[0] and box[2] <= x1 + 0.01 and y0 <= box[1] and box[3] <= y1, text.text
    said = [text for text in found.texts if text.ringed and not text.listed]
    assert len(listed) == 2 * len(said)


@pytest.mark.parametrize("end", [Point(0, 100), Point(100, 0), Point(0, 0), Point(0.001, 300)])
@pytest.mark.parametrize("room", [(900.0, None), (900.0, 400.0), (None, 400.0)])
def test_a_line_without_width_or_height_is_shown_at_a_sane_scale(end: Point, room: tuple[float, float]) -> None:
    """100 mm in 900 px are at most 9 px a mm, twenty times that where it stands upright."""
    found = lettered(Drawing((Dimension(Point(0, 0), end, "12 cm"),)), *room)
    assert found.unit > max(end.y, end.x, 1.0) / 900 / 20
    assert [text.text for text in found.texts] == ["12 cm"]


def test_some_become_numbers() -> None:
    assert any(text.listed for text in lettered(crowded(6), 420.0, 160.0).texts)
