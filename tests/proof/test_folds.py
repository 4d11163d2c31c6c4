"""The fold-true test: ends that lie on the garment's edge, curves that lie flat or do not."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.body.body import Body
from kit.geometry import Arc, Path, Point
from kit.lesson.cornered import with_corners
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.allowance import cut_line
from kit.piece.corner import Corner, Declared
from kit.piece.piece import CutPlan, Edge, Piece
from kit.proof.curved_folds import EASES, curved_edges
from kit.proof.finding import Finding
from kit.proof.folds import FoldedEnd, fold_true, folded_ends
from kit.sewing.ends import turnings
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make
from kit.units import mm


def skirt(lean: float, hem: float, *, droop: float = 0.0, **more: object) -> Piece:
    """A half on the fold, its side leaning out by `lean` over 300, its hem dropping by `droop` at the centre."""
    points = [Point(0, -droop), Point(0, 300), Point(100, 300), Point(100 + lean, 0)]
    names = {"centre": 0.0, "waist": 10.0, "side": 15.0, "hem": hem}
    edges = tuple(
        Edge(edge, Path.line(a, b), width)
        for (edge, width), a, b in zip(names.items(), points, [*points[1:], points[0]], strict=True)
    )
    return replace(Piece("skirt", "Skirt", edges, cut=CutPlan(fold="centre")), **more)  # type: ignore[arg-type]


def circle(radius: float, hem: float, hollow: bool = False) -> Piece:
    """A quarter of a ring on the fold, its hem the outer arc, or the inner one where `hollow`."""
    waist, low = (radius + 300, radius) if hollow else (radius - 150, radius)
    edges = (
        Edge("centre", Path.line(Point(0, -low), Point(0, -waist)), 0.0),
        Edge("waist", Path((Arc(Point(0, 0), waist, -math.pi / 2, math.pi / 3),)), 10.0),
        Edge("side", _ray(waist, low), 15.0),
        Edge("hem", Path((Arc(Point(0, 0), low, -math.pi / 6, -math.pi / 3),)), hem),
    )
    return Piece("skirt", "Skirt", edges, cut=CutPlan(fold="centre"))


def _ray(start: float, end: float) -> Path:
    way = (math.cos(-math.pi / 6), math.sin(-math.pi / 6))
    return Path.line(Point(way[0] * start, way[1] * start), Point(way[0] * end, way[1] * end))


def sewn(piece: Piece, first: float, second: float = 0.0) -> Pattern:
    """Its hem turned; the other edges seamed to a copy."""
    pieces = (piece, replace(piece, name="back", title="Back"))
    make = Make(pieces)
    front, back = (PieceHandle(p) for p in pieces)
    make.plain_seam(front.side, back.side, allowance=15 * mm)
    make.hem(front.hem, first=first * mm, second=second * mm)
    record = SewRecord("hem", "Hem", "", "", tuple(make.operations))
    return with_corners(Pattern(LessonInfo("Trial", "trial"), Body("W4", ()), (), pieces, (), (), (record,)))


def findings(pattern: Pattern) -> list[Finding]:
    return fold_true(pattern, pattern.pieces)


@pytest.mark.parametrize("lean", [-60.0, -15.0, 0.0, 20.0, 90.0])
@pytest.mark.parametrize(("first", "second"), [(40.0, 0.0), (10.0, 30.0), (6.0, 6.0)])
def test_hems_as_the_sewing_order_has_them_are_true(lean: float, first: float, second: float) -> None:
    pattern = sewn(skirt(lean, first + second), first, second)
    assert findings(pattern) == []
    piece = pattern.piece("skirt")
    ends = list(folded_ends(piece, cut_line(piece), turnings(pattern)))
    assert {(end.edge.name, end.neighbour.name) for end in ends} == {("hem", "side"), ("hem", "centre")}
    assert all(end.beyond < 0.01 and end.short < 0.01 and end.degrees < 0.1 for end in ends)


@pytest.mark.parametrize(("lean", "way"), [(45.0, "sticks out"), (-45.0, "falls short")])
def test_a_mitred_hem_on_a_slanted_side_is_told_with_its_amount(lean: float, way: str) -> None:
    """By trigonometry: the mitre runs on along the side, and mirrors to twice the depth's slant."""
    piece = skirt(lean, 40.0, corners=(Corner("side", "hem", "mitre", by_hand=True),))
    (found,) = findings(sewn(piece, 40.0))
    slant = math.atan2(abs(lean), 300)
    assert found.code == "hem_not_true"
    assert way in found.what
    assert (found.piece, found.edge, found.step) == ("skirt", "hem", "hem")
    assert found.amount == pytest.approx(2 * 40.0 * math.tan(slant) * math.cos(slant), abs=0.05)
    assert found.do


def test_a_hem_shaped_for_one_turn_is_not_true_turned_twice() -> None:
    piece = skirt(60.0, 40.0, corners=(Corner("side", "hem", "turned", turned="hem", by_hand=True),))
    assert findings(sewn(piece, 40.0)) == []
    (found,) = findings(sewn(piece, 15.0, 25.0))
    assert found.code == "hem_not_true"


def test_a_hem_that_meets_the_fold_aslant_is_told_unless_declared() -> None:
    piece = skirt(0.0, 30.0, droop=8.0)
    (found,) = findings(sewn(piece, 30.0))
    assert "right angle" in found.what
    assert found.amount == pytest.approx(60.0 * math.sin(math.atan2(8, 100)), abs=0.2)
    meant = replace(piece, declared=(Declared("hem", "centre", "V point"),))
    assert findings(sewn(meant, 30.0)) == []


def test_a_seam_shaped_by_hand_is_left_alone() -> None:
    piece = skirt(20.0, 30.0, corners=(Corner("waist", "side", "squared", turned="side", by_hand=True),))
    assert findings(sewn(piece, 30.0)) == []


@pytest.mark.parametrize(("radius", "depth"), [(500.0, 30.0), (900.0, 15.0)])
def test_the_surplus_of_a_round_hem_is_that_of_two_circles(radius: float, depth: float) -> None:
    """Circumference: an arc of the ring turned at r is longer outside by angle x depth, shorter inside by as much."""
    pattern = sewn(circle(radius, depth), depth)
    (fit,) = (f for f in curved_edges(pattern.piece("skirt"), turnings(pattern)))
    outside, inside = (radius + depth) * math.pi / 3, (radius - depth) * math.pi / 3
    assert fit.surplus == pytest.approx(outside - inside, rel=1e-6)
    assert fit.share == pytest.approx(outside / inside - 1, rel=1e-6)
    assert fit.sharp_share == pytest.approx(fit.share, rel=1e-6)
    assert 2 * fit.widest / (radius - fit.widest) == pytest.approx(EASES)


def test_a_deep_round_hem_is_told_and_the_widest_named() -> None:
    (found,) = findings(sewn(circle(500.0, 40.0), 40.0))
    assert (found.code, found.level) == ("hem_not_flat", "warning")
    assert "longer" in found.what and "pleats" in found.what
    assert "1.2 cm" in found.do
    assert findings(sewn(circle(500.0, 12.0), 12.0)) == []
    assert findings(sewn(circle(500.0, 18.0), 6.0, 12.0)) == []  # the second turn is what lies on the garment


@pytest.mark.parametrize("spread", [0.05, 0.1, -0.1])
def test_the_end_of_a_round_hem_on_a_slanted_side_lies_twice_the_slant_off(spread: float) -> None:
    """By trigonometry: a mitre runs on along the side, and mirrored in the hem it leans as much the other way. So its
    far end lies the depth times the sine of twice the slant off; it is looked at in quarters of that depth."""
    plain, low = circle(500.0, 30.0), math.pi / 6 - spread
    start, corner = plain.edge("side").path.start, Point(500 * math.cos(low), -500 * math.sin(low))
    paths = {"side": Path.line(start, corner), "hem": Path((Arc(Point(0, 0), 500.0, -low, low - math.pi / 2),))}
    edges = tuple(replace(edge, path=paths.get(edge.name, edge.path)) for edge in plain.edges)
    piece = replace(plain, edges=edges, corners=(Corner("side", "hem", "mitre", by_hand=True),))
    pattern = sewn(piece, 30.0)
    piece = pattern.piece("skirt")
    (end,) = (e for e in folded_ends(piece, cut_line(piece), turnings(pattern)) if e.neighbour.name == "side")
    slant = math.acos((corner - start).unit().dot((corner - Point(0, 0)).unit()))
    assert end.degrees == pytest.approx(math.degrees(2 * slant))
    assert 0.75 * 30.0 * math.cos(slant) < end.slant / math.sin(2 * slant) <= 30.0
    found = next(f for f in findings(pattern) if f.code == "hem_end_angle")
    assert f"{math.degrees(2 * slant):.0f} degrees" in found.what


def test_a_hollow_hem_pulls() -> None:
    (found,) = findings(sewn(circle(400.0, 30.0, hollow=True), 30.0))
    assert "shorter" in found.what and "pull" in found.what
    pattern = sewn(circle(400.0, 30.0, hollow=True), 30.0)
    (fit,) = curved_edges(pattern.piece("skirt"), turnings(pattern))
    assert fit.surplus == pytest.approx(-2 * 30.0 * math.pi / 3, rel=1e-6)


def test_the_example_is_true_in_every_size() -> None:
    """Its curved hem says in a note what is to be eased; nothing lies beside an edge."""
    from tests.example import EXAMPLE, notebook_names

    lesson = notebook_names(EXAMPLE)["lesson"]
    for size in lesson.sizes.names:
        pattern = lesson.work(body=lesson.sizes[size], values={})
        assert {f.level for f in findings(pattern)} <= {"note"}
        assert {f.code for f in findings(pattern)} <= {"hem_not_flat"}


def test_a_hem_deeper_than_its_garment_sticks_out_at_the_top() -> None:
    """A band 20 high with 10 of allowance at its top edge: a hem of 40 folded up reaches 10 beyond it. A hem turned
    twice reaches no farther than it is deep. Of a round one only its ends are looked at here."""
    low = [Point(0, 0), Point(0, 20), Point(200, 20), Point(200, 0)]
    straight = skirt(0.0, 40.0)
    straight = replace(
        straight,
        edges=tuple(
            replace(edge, path=Path.line(a, b))
            for edge, a, b in zip(straight.edges, low, [*low[1:], low[0]], strict=True)
        ),
    )
    for first, second, beyond in ((40.0, 0.0, 10.0), (10.0, 30.0, 0.0)):
        ends = hem_ends(sewn(straight, first, second))
        assert [end.beyond for end in ends] == pytest.approx([beyond, beyond], abs=0.01), (first, second)
    assert [end.beyond for end in hem_ends(sewn(circle(500.0, 170.0), 170.0))] == pytest.approx([0.0, 0.0], abs=0.01)


def hem_ends(pattern: Pattern) -> list[FoldedEnd]:
    piece = pattern.piece("skirt")
    ends = [end for end in folded_ends(piece, cut_line(piece), turnings(pattern)) if end.edge.name == "hem"]
    assert len(ends) == 2
    return ends
