"""Thumbnails of the cut parts: every one of them, at one scale, told by its number in letters that can be read."""

from __future__ import annotations

from functools import cache

import pytest

from kit.lesson.pattern import Pattern
from kit.picture.drawing import Drawing, Label, Stroke
from kit.picture.svg_pen import svg
from kit.picture.thumbnails import ROOM, Thumbnail, thumbnails
from kit.piece.allowance import cut_line
from kit.units import show
from kit.wording.names import edge_label
from tests.example import GARMENTS
from tests.renamed import plain_lesson, work

ALL = [(lesson, size) for lesson in GARMENTS for size in ("W1", "W4", "W10")]
LEAST = 7 / 72 * 96  # px of seven points, the least that print is read at (common practice, no source)


@cache
def worked(lesson: str, size: str) -> tuple[Pattern, tuple[Thumbnail, ...]]:
    pattern = work(plain_lesson(f"{lesson}.ipynb"), size)
    return pattern, thumbnails(pattern)


def scale(drawing: Drawing) -> float:
    """mm that a px stands for, where the drawing fills the room's width."""
    assert drawing.bounds is not None
    return (drawing.bounds[2] - drawing.bounds[0]) / ROOM[0]


def outline(drawing: Drawing) -> tuple[float, float]:
    """Width and height of the cut outline, mm."""
    boxes = [
        c.bounds() for i in drawing.items if isinstance(i, Stroke) and i.role in ("edge", "fold") for c in i.curves
    ]
    return max(b[2] for b in boxes) - min(b[0] for b in boxes), max(b[3] for b in boxes) - min(b[1] for b in boxes)


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_every_cut_part_has_one(lesson: str, size: str) -> None:
    pattern, made = worked(lesson, size)
    parts = [(piece.number, piece.title) for piece in pattern.pieces] + [(s.number, s.title) for s in pattern.strips]
    assert [(small.number, small.title) for small in made] == sorted(parts)


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_all_are_at_one_scale_and_in_their_own_size(lesson: str, size: str) -> None:
    """Against the cut line of each paper piece, and the cut size of each strip."""
    pattern, made = worked(lesson, size)
    assert max(scale(small.drawing) for small in made) == pytest.approx(min(scale(small.drawing) for small in made))
    sizes = {strip.name: (strip.cut_length, strip.width) for strip in pattern.strips}
    for piece in pattern.pieces:
        boxes = [curve.bounds() for curve in cut_line(piece).curves]
        sizes[piece.name] = (
            max(b[2] for b in boxes) - min(b[0] for b in boxes),
            max(b[3] for b in boxes) - min(b[1] for b in boxes),
        )
    whole = 0
    for small in made:
        wide, high = outline(small.drawing)
        broken = any(isinstance(item, Stroke) and item.name == "break" for item in small.drawing.items)
        whole += not broken
        long, short = max(sizes[small.name]), min(sizes[small.name])
        if broken:
            assert (wide, high) == (
                pytest.approx(ROOM[0] * scale(small.drawing), rel=0.05),
                pytest.approx(short, rel=0.01),
            )
            assert long > 3 * short and long > wide
        else:
            assert sorted((wide, high)) == pytest.approx([short, long], rel=0.02)
    assert whole >= len(made) / 2


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_each_carries_its_number_alone_and_that_can_be_read(lesson: str, size: str) -> None:
    for small in worked(lesson, size)[1]:
        texts = [item for item in small.drawing.items if isinstance(item, Label)]
        assert [text.text for text in texts] == [str(small.number)]
        assert texts[0].size / scale(small.drawing) >= LEAST
        assert small.title in small.drawing.alt


@pytest.mark.parametrize("lesson", GARMENTS)
def test_letters_grow_with_the_form_and_all_fits_its_room(lesson: str) -> None:
    pattern, _ = worked(lesson, "W4")
    for room, letters in (((200.0, 190.0), 1.0), ((620.0, 300.0), 1.7)):
        for small in thumbnails(pattern, room, letters):
            assert small.drawing.bounds is not None
            x0, y0, x1, y1 = small.drawing.bounds
            px = (x1 - x0) / room[0]
            assert (y1 - y0) / px <= room[1] + 25.0 * letters  # a number below its part takes a line more
            assert min(i.size for i in small.drawing.items if isinstance(i, Label)) / px >= LEAST * letters
            assert svg(small.drawing, width=room[0]).startswith("<svg")


@pytest.mark.parametrize(("lesson", "size"), ALL)
def test_each_shows_its_grain(lesson: str, size: str) -> None:
    for small in worked(lesson, size)[1]:
        assert any(isinstance(item, Stroke) and item.name == "grainline" for item in small.drawing.items), small.title


@pytest.mark.parametrize("lesson", sorted({lesson for lesson, _ in ALL}))
def test_whoever_does_not_see_it_is_told_of_its_edges_and_darts(lesson: str) -> None:
    """The letters on a thumbnail are few; what they left out is said."""
    pattern, made = worked(lesson, "W4")
    told = {small.name: small.drawing.alt for small in made}
    for piece in pattern.pieces:
        for edge in piece.edges:
            assert edge_label(edge) in told[piece.name]
            if edge.allowance and edge.name != piece.fold:
                assert show(edge.allowance, "cm", "allowance") in told[piece.name]
        for dart in piece.darts:
            assert dart.label in told[piece.name]
