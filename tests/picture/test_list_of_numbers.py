"""The list below a picture stands inside its frame, however narrow the height leaves it."""

from __future__ import annotations

from dataclasses import replace
from itertools import combinations

import pytest

from kit.geometry import Line, Point
from kit.picture.drawing import Dimension, Drawing, Label, Stroke
from kit.picture.lettered import lettered
from kit.picture.lettering import overlap, text_box, text_width


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


@pytest.mark.parametrize("room", [(230.0, 420.0), (180.0, 300.0)])
def test_what_is_wider_than_the_room_stands_in_two_lines(room: tuple[float, float]) -> None:
    """As the name and value of a measurement on a phone: every word is there, in the frame, and no line on another."""
    said = iter([f"{where}, all round under the arms 126.5 cm" for where in ("Chest", "Bust", "Back")])
    drawing = crowded(3)
    names = tuple(replace(item, text=next(said)) if isinstance(item, Label) else item for item in drawing.items)
    every = [item.text for item in names if isinstance(item, Label)]
    found = lettered(replace(drawing, items=names), *room)
    x0, y0, x1, y1 = found.bounds
    texts = [text for text in found.texts if text.listed and not text.ringed]
    boxes = [text_box(text.x, text.y, text.wide, text.high, 0.0) for text in texts]
    assert len(texts) > 2 and all(x0 <= b[0] and b[2] <= x1 + 0.01 and y0 <= b[1] and b[3] <= y1 for b in boxes)
    assert not any(overlap(a, b) for a, b in combinations(boxes, 2))
    lines = [text.text for text in texts]
    together = [f"{a} {b}" for a, b in zip(lines[::2], lines[1::2], strict=True)]
    assert len(together) > 1 and together == [text for text in every if text in together]


def test_what_reads_alike_has_one_number() -> None:
    drawing = crowded(6)
    names = tuple(
        replace(item, text="edge of the facing at the " + ("hip", "waist")[n % 2]) if isinstance(item, Label) else item
        for n, item in enumerate(drawing.items)
    )
    found = lettered(replace(drawing, items=names), 420.0, 160.0)
    listed = [text.text for text in found.texts if text.listed and not text.ringed]
    assert len(listed) == len(set(listed)) == 2
    signs = [text.text for text in found.texts if text.listed and text.ringed]
    assert signs == [str(n) for n in range(1, len(signs) + 1)]
    shown = [text.text for text in found.texts if text.ringed and not text.listed]
    assert set(shown) == set(signs) and len(shown) > 2


@pytest.mark.parametrize("wide", [20.0, 120.0, 400.0])
def test_a_text_with_a_size_of_its_own_leaves_the_lines_their_room(wide: float) -> None:
    """A column of words beside a line of 100 mm: they grow with it, and fill the room with it."""
    line = Stroke((Line(Point(0, 0), Point(100, 0)),), "edge")
    size = wide / text_width("neck to hem", 1.0)
    found = lettered(Drawing((line, Label("neck to hem", Point(110, 0), "small", size=size, anchor="start"))), 600.0)
    assert found.unit == pytest.approx((110 + wide) / 600, rel=0.08)
