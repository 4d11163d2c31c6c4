"""Slits and fasteners drawn on a flap of 200 mm by 60: where they lie, which way they point, what is refused."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece
from kit.piece.piece import CutPlan, Edge, Piece
from kit.units import cm, mm


def flap(fold: str = "", backward: bool = False) -> BenchPiece:
    """Its edges run round with the cloth to their left, or `backward` with it to their right."""
    corners = [Point(0, 0), Point(200, 0), Point(200, 60), Point(0, 60)]
    paths = [Path.line(a, b) for a, b in zip(corners, [*corners[1:], corners[0]], strict=True)]
    named = list(zip(("lower", "far", "upper", "near"), paths, strict=True))
    if backward:
        named = [(name, path.reversed()) for name, path in reversed(named)]
    return BenchPiece(Piece("flap", "Flap", tuple(Edge(n, p, 10.0) for n, p in named), cut=CutPlan(1, fold=fold)))


# ---- fasteners --------------------------------------------------------------------------------------------------


def test_a_hook_points_to_the_edge_and_a_bar_lies_along_it() -> None:
    paper = flap()
    place = paper.far.middle.into(2 * cm)
    paper.fastener("hook", place, kind="hook", toward="far", size=8 * mm)
    paper.fastener("bar", place.into(5 * cm), kind="bar", toward="far", size=12 * mm)
    hook, bar = paper.freeze().marks
    assert (hook.path.start, hook.path.end) == (Point(176, 30), Point(184, 30))  # towards the far edge at x = 200
    assert (bar.path.start, bar.path.end) == (Point(130, 24), Point(130, 36))


def test_without_an_edge_the_nearest_is_meant_and_never_the_fold() -> None:
    paper = flap(fold="lower")
    paper.fastener("hook", paper.lower.at(10 * cm).up(5 * mm), kind="hook")
    (hook,) = paper.freeze().marks
    assert hook.path.end.y > hook.path.start.y and hook.path.length == pytest.approx(10.0), "up, away from the fold"
    other = flap()
    other.fastener("eye", other.lower.at(10 * cm).up(1 * cm), kind="eye")
    (eye,) = other.freeze().marks
    assert (eye.path.start, eye.path.end) == (Point(100, 15), Point(100, 5))


def test_one_on_the_edge_itself_lies_along_it() -> None:
    paper = flap()
    paper.fastener("hook", paper.lower.at(10 * cm), kind="hook", toward="lower")
    (hook,) = paper.freeze().marks
    assert (hook.path.start, hook.path.end) == (Point(95, 0), Point(105, 0))


@pytest.mark.parametrize("kind", ["snap", "socket", "eyelet"])
def test_a_snap_and_an_eyelet_are_points(kind: str) -> None:
    paper = flap()
    paper.fastener("one", paper.lower.at(10 * cm).up(1 * cm), kind=kind, said="closing point")
    (mark,) = paper.freeze().marks
    assert (mark.kind, mark.point, mark.path, mark.said) == (kind, Point(100, 10), None, "closing point")


def test_what_reaches_out_of_the_piece_is_refused() -> None:
    paper = flap()
    near = paper.far.middle.into(3 * mm)
    paper.fastener("eye", near, kind="eye", toward="far")  # its loop may reach beyond the edge
    with pytest.raises(KitError, match="outside") as caught:
        paper.fastener("hook", near, kind="hook", toward="far")
    assert caught.value.where == "Flap" and caught.value.do
    with pytest.raises(KitError, match="outside"):
        paper.fastener("snap", paper.far.middle.out(4 * mm), kind="snap")
    for kind, match in (("hok", "Did you mean 'hook'"), ("eye", "already marked")):
        with pytest.raises(KitError, match=match):
            paper.fastener("eye", near, kind=kind, toward="far")
    with pytest.raises(KitError) as nothing:
        paper.fastener("other", near, kind="bar", size=0 * mm)
    assert nothing.value.do and len(paper.freeze().marks) == 1


# ---- slits ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize("backward", [False, True])
def test_a_slit_runs_square_into_the_cloth(backward: bool) -> None:
    paper = flap(backward=backward)
    at = 14 * cm if backward else 6 * cm
    paper.slit("slit", "lower", at=at, size=4 * cm, said="opening")
    (mark,) = paper.freeze().marks
    assert (mark.kind, mark.said) == ("slit", "opening")
    assert mark.path.start.close_to(Point(60, 0), 1e-9) and mark.path.end.close_to(Point(60, 40), 1e-9)


@pytest.mark.parametrize(("size", "fits"), [(50 * mm, True), (50.5 * mm, False), (70 * mm, False)])
def test_a_centimetre_of_cloth_must_lie_beyond_it(size: object, fits: bool) -> None:
    paper = flap()
    if fits:
        paper.slit("slit", paper.lower, at=10 * cm, size=size)
        return
    with pytest.raises(KitError, match="lower") as caught:
        paper.slit("slit", paper.lower, at=10 * cm, size=size)
    assert "1 cm" in caught.value.do and caught.value.where == "Flap" and not paper.freeze().marks


def test_a_slit_beside_another_edge_is_too_near_it() -> None:
    paper = flap()
    with pytest.raises(KitError):
        paper.slit("slit", "lower", at=5 * mm, size=2 * cm)


def test_a_slit_needs_a_length_and_a_name_of_its_own() -> None:
    paper = flap()
    with pytest.raises(KitError) as nothing:
        paper.slit("slit", "lower", at=10 * cm, size=0 * mm)
    assert nothing.value.do
    paper.slit("slit", "lower", at=10 * cm, size=2 * cm)
    with pytest.raises(KitError, match="already marked"):
        paper.slit("slit", "upper", at=10 * cm, size=2 * cm)
