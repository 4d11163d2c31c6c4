"""What measures the soundness of patterns sees what is unsound: a sound napkin and skirt, with one thing made wrong."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache

import pytest

from kit.geometry import Cubic, Path, Point
from kit.lesson.pattern import Pattern
from kit.piece.piece import Piece
from tests.example import EXAMPLE, notebook_names

from . import soundness
from .soundness import faults, length, seams


@cache
def tote() -> Pattern:
    made: Pattern = notebook_names(EXAMPLE.with_name("ferry_tote.ipynb"))["lesson"].work()
    return made


def changed(change: Callable[[Piece], Piece]) -> Pattern:
    first, *rest = tote().pieces
    return replace(tote(), pieces=(change(first), *rest))


def longer(piece: Piece) -> Piece:
    """Everything stretched by a hundredth upwards, so that its seams grow and stay closed."""

    def up(point: Point) -> Point:
        return Point(point.x, point.y * 1.01)

    edges = []
    for edge in piece.edges:
        curves = [c for curve in edge.path.curves for c in curve.as_cubics()]
        edges.append(replace(edge, path=Path(tuple(Cubic(*map(up, (c.start, c.c1, c.c2, c.end))) for c in curves))))
    return replace(piece, edges=tuple(edges))


def test_a_sound_pattern_has_no_faults_and_its_seams_are_measured() -> None:
    assert faults(tote()) == []
    found = list(seams(tote()))
    assert len(found) >= 2 and all(one > 50 for _, one, _, _ in found)


def test_a_quarter_circle_is_as_long_as_euclid_says() -> None:
    k = 400 * 0.5522847498  # the usual handle: within 3 parts in ten thousand of the circle
    path = Path((Cubic(Point(400, 0), Point(400, k), Point(k, 400), Point(0, 400)),))
    assert length(path) == pytest.approx(400 * 3.14159265 / 2, rel=3e-4)


def test_a_seam_that_grew_is_seen() -> None:
    assert any(" mm on " in text for text in faults(changed(longer)))


def test_an_outline_that_crosses_itself_is_seen() -> None:
    def crossed(piece: Piece) -> Piece:
        one, two, *rest = piece.edges
        a, b, c = one.path.start, one.path.end, two.path.end
        over = Path((Cubic(a, c, Point(a.x - 3 * (b.x - a.x), a.y - 3 * (b.y - a.y) - 200), b),))
        return replace(piece, edges=(replace(one, path=over), two, *rest))

    assert any("no simple outline" in text or "crosses" in text for text in faults(changed(crossed)))


def test_an_allowance_that_is_cut_short_or_wide_is_seen(monkeypatch: pytest.MonkeyPatch) -> None:
    """The cut line of another piece, whose edges have 3 mm more or less than they are to have."""
    real = soundness.cut_line
    for more, words in ((3.0, "wider"), (-3.0, "lacks")):

        def wrong(piece: Piece, by: float = more) -> object:
            kept = tuple(
                e if e.name == piece.fold or (e.allowance or 0) < 4 else replace(e, allowance=(e.allowance or 0) + by)
                for e in piece.edges
            )
            return real(replace(piece, edges=kept))

        monkeypatch.setattr(soundness, "cut_line", wrong)
        assert any(words in text for text in faults(tote())), words
