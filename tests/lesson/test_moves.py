"""Block moves against exact geometry: shapely's own rotate is the independent check of every turned part."""

from __future__ import annotations

import math
from dataclasses import replace
from functools import partial

import pytest
import shapely
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import affinity
from shapely.geometry import Polygon

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson import moves, shaping
from kit.lesson.bench import BenchPiece
from kit.piece.dart import closed_edge, dart_of, intake, legs, mouth, sewn_length
from kit.piece.piece import CutPlan, Edge, Notch, Piece
from kit.units import cm

CENTRE = Point(0.0, 0.0)
GRID = 1e-6


def polygon_piece(corners: list[Point]) -> Piece:
    paths = [Path.line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)]
    return Piece("p", "Piece", tuple(Edge(f"e{i}", path) for i, path in enumerate(paths)))


@st.composite
def stars(draw: st.DrawFn) -> list[Point]:
    """Corners of a polygon that is seen whole from the origin, either way round, in mm."""
    count = draw(st.integers(4, 8))
    radii = [draw(st.floats(150, 400)) for _ in range(count)]
    step = 2 * math.pi / count
    turns = [i * step + draw(st.floats(-0.2, 0.2)) * step for i in range(count)]
    corners = [Point(r * math.cos(a), r * math.sin(a)) for r, a in zip(radii, turns, strict=True)]
    return corners if draw(st.booleans()) else corners[::-1]


def with_dart(corners: list[Point]) -> Piece:
    piece = polygon_piece(corners)
    path = piece.edge("e0").path
    foot = path.nearest(CENTRE)
    assume(40 < foot < path.length - 40)
    return moves.add_dart(piece, "dart", "e0", at=foot, intake=30.0, apex=CENTRE)


def cloth(piece: Piece) -> float:
    """Outline less the wedges, mm2."""
    area = abs(piece.outline.area)
    for dart in piece.darts:
        one, two = mouth(piece, dart)
        area -= abs((one - dart.apex).cross(two - dart.apex)) / 2
    return area


def lengths(piece: Piece) -> list[float]:
    return [sewn_length(piece, edge.name) for edge in piece.edges]


def shape(piece: Piece) -> Polygon:
    return Polygon([(p.x, p.y) for p in piece.outline.points(0.01)])


def test_a_notch_in_the_old_mouth_comes_to_lie_where_the_legs_meet() -> None:
    corners = [Point(-200.0, -150.0), Point(200.0, -150.0), Point(200.0, 150.0), Point(-200.0, 150.0)]
    piece = moves.add_dart(polygon_piece(corners), "dart", "e0", at=240.0, intake=30.0, apex=CENTRE)
    dart = dart_of(piece, "dart")
    leg = CENTRE.distance(mouth(piece, dart)[0])
    piece = replace(piece, notches=(Notch("e0", (dart.start + dart.end) / 2, name="inside"),))
    moved = moves.move_dart(piece, "dart", "e0", 80.0)
    (notch,) = moved.notches
    assert CENTRE.distance(moved.edge("e0").path.at(notch.distance)) == pytest.approx(leg, abs=1e-6)


@settings(max_examples=40, deadline=None)
@given(stars(), st.integers(1, 3), st.floats(0.15, 0.85))
def test_moving_a_dart_keeps_cloth_and_seams(corners: list[Point], to: int, share: float) -> None:
    piece = with_dart(corners)
    at = piece.edge(f"e{to}").path.length * share
    place = piece.edge(f"e{to}").path.at(at)
    pivot = moves.move_dart(piece, "dart", f"e{to}", at)
    slash = moves.move_dart(piece, "dart", f"e{to}", at, way="slash")
    for a, b in zip(pivot.outline.points(), slash.outline.points(), strict=True):
        assert a.distance(b) < 0.01
    assert cloth(pivot) == pytest.approx(cloth(piece), abs=0.01)
    assert lengths(pivot) == pytest.approx(lengths(piece), abs=1e-3)
    new = dart_of(pivot, "dart")
    one, two = legs(pivot, new)
    assert one.length == pytest.approx(two.length, abs=1e-6) == pytest.approx(CENTRE.distance(place), abs=1e-6)

    # The angle at the apex is the old one (law of cosines on the mouths alone).
    def angle(p: Piece) -> float:
        a, _ = mouth(p, dart_of(p, "dart"))
        return 2 * math.asin(intake(p, dart_of(p, "dart")) / 2 / CENTRE.distance(a))

    assert angle(pivot) == pytest.approx(angle(piece), abs=1e-6)

    # Independently: the piece cut by shapely along both lines, one part turned by shapely about the apex.
    old_one, old_two = mouth(piece, dart_of(piece, "dart"))

    def ring(start: Point, end: Point) -> Polygon:
        points = [(start.x, start.y)]  # then the outline's corners between start and end
        names = [e.name for e in piece.edges]
        walk = [*names, *names]
        first = 0 if start is old_two else to
        last = walk.index(f"e{to}", first) if start is old_two else walk.index("e0", first)
        points += [(piece.edge(n).path.end.x, piece.edge(n).path.end.y) for n in walk[first:last]]
        return Polygon([*points, (end.x, end.y), (0.0, 0.0)])

    ahead, behind = ring(old_two, place), ring(place, old_one)
    turn = (old_two - CENTRE).turn_to(old_one - CENTRE)
    # Overlays on a grid of a millionth of a millimetre: corners that all but coincide upset them otherwise.
    joined = partial(shapely.union, grid_size=GRID)
    turned = joined(affinity.rotate(ahead, turn, origin=(0, 0), use_radians=True), behind)
    back = joined(affinity.rotate(behind, -turn, origin=(0, 0), use_radians=True), ahead)
    wedge = Polygon([(0, 0), *((p.x, p.y) for p in mouth(pivot, new))])
    result = shapely.difference(shape(pivot), wedge, grid_size=GRID)
    off = [shapely.symmetric_difference(result, other, grid_size=GRID).area for other in (turned, back)]
    assert min(off) < 1.0


@settings(max_examples=25, deadline=None)
@given(stars(), st.floats(0.2, 0.8))
def test_splitting_keeps_cloth_seam_and_angle(corners: list[Point], share: float) -> None:
    piece = with_dart(corners)
    dart = dart_of(piece, "dart")
    room = piece.edge("e0").path.length - dart.end
    assume(room > 30)
    two = moves.split_dart(piece, "dart", apart=15.0, share=share)
    assert [d.name for d in two.darts] == ["dart", "dart_2"]
    assert cloth(two) == pytest.approx(cloth(piece), abs=0.01)
    assert lengths(two) == pytest.approx(lengths(piece), abs=1e-3)

    def angle(p: Piece, name: str) -> float:
        a, b = mouth(p, dart_of(p, name))
        return abs((a - CENTRE).turn_to(b - CENTRE))

    assert angle(two, "dart") + angle(two, "dart_2") == pytest.approx(angle(piece, "dart"), abs=1e-6)
    assert angle(two, "dart_2") == pytest.approx(share * angle(piece, "dart"), abs=1e-6)


@settings(max_examples=25, deadline=None)
@given(stars(), st.sampled_from(["start", "end"]), st.floats(0, 40))
def test_a_cap_meets_both_legs_and_lies_on_the_folded_edge(corners: list[Point], side: str, short: float) -> None:
    piece = moves.shorten_dart(with_dart(corners), "dart", short)
    trued = moves.true_dart(piece, "dart", side)  # type: ignore[arg-type]
    dart = dart_of(trued, "dart")
    assert lengths(trued) == pytest.approx(lengths(piece), abs=1e-3)
    for a, b in zip(mouth(trued, dart), mouth(piece, dart_of(piece, "dart")), strict=True):
        assert a.distance(b) < 0.01
    # Folded: the half of the cap next to the leg it is pressed over, mirrored in that leg, lies on the edge there.
    cap = trued.edge("e0").path.between(dart.start, dart.end)
    leg = legs(trued, dart)[0 if side == "start" else 1]
    near_leg = cap.at(3.0) if side == "start" else cap.at(cap.length - 3.0)
    folded = Path.line(near_leg, near_leg + (near_leg - leg.start)).mirrored(leg.curves[0]).start  # type: ignore[arg-type]
    assert piece.edge("e0").path.distance_to(folded) < 0.05


@settings(max_examples=25, deadline=None)
@given(stars(), st.floats(0.3, 0.7), st.floats(0.3, 0.7), st.floats(5, 60))
def test_slash_and_spread_adds_what_it_says(corners: list[Point], one: float, two: float, amount: float) -> None:
    piece = polygon_piece(corners)
    a, b = piece.edge("e0").path.length * one, piece.edge("e2").path.length * two
    p, q = piece.edge("e0").path.at(a), piece.edge("e2").path.at(b)
    try:
        parallel = shaping.spread(piece, ("e0", a), ("e2", b), amount)
        hinged = shaping.spread(piece, ("e0", a), ("e2", b), amount, hinged=True)
    except KitError:
        assume(False)
    area, slash = abs(piece.outline.area), p.distance(q)
    assert abs(parallel.outline.area) == pytest.approx(area + slash * amount, rel=1e-6)
    angle = 2 * math.asin(amount / 2 / slash)
    assert abs(hinged.outline.area) == pytest.approx(area + slash**2 * math.sin(angle) / 2, rel=1e-6)
    old = lengths(piece)
    assert lengths(parallel) == pytest.approx([old[0] + amount, old[1], old[2] + amount, *old[3:]], abs=1e-3)
    assert lengths(hinged) == pytest.approx([old[0] + amount, *old[1:]], abs=1e-3)


def half_bodice() -> Piece:
    """A plain half with its fold at x = 0, clockwise like the blocks (our own figures)."""
    corners = [Point(0, 380), Point(70, 420), Point(190, 380), Point(240, 200), Point(220, 0), Point(0, 0)]
    names = ["neck", "shoulder", "armhole", "side", "waist", "centre"]
    paths = [Path.line(a, b) for a, b in zip(corners, corners[1:] + corners[:1], strict=True)]
    edges = tuple(Edge(n, p) for n, p in zip(names, paths, strict=True))
    return Piece("front", "Front", edges, cut=CutPlan(fold="centre"), points=(("bust_point", Point(95, 170)),))


def test_bench_verbs_and_the_fold_stays() -> None:
    front = BenchPiece(half_bodice())
    front.notch("armhole", 4 * cm)
    front.add_dart("waist_dart", "waist", at=12.5 * cm, intake=3 * cm, apex=front.bust_point)
    before = front.freeze()
    front.move_dart("waist_dart", to="shoulder", at=6 * cm, pressed="centre")
    after = front.freeze()
    assert after.edge("centre").path == before.edge("centre").path
    assert dart_of(after, "waist_dart").pressed == "start"
    assert float(front.sewn_length("shoulder")) == pytest.approx(sewn_length(before, "shoulder"), abs=0.01)
    notch: Notch = after.notches[0]
    assert notch.distance == pytest.approx(40, abs=1e-6)
    # And back again gives the draft we came from.
    waist = before.edge("waist").path
    front.move_dart("waist_dart", to="waist", at=dart_of(before, "waist_dart").start * 1.0 * cm / 10)
    again = front.freeze()
    assert waist.length == pytest.approx(again.edge("waist").path.length, abs=0.05)
    assert abs(again.outline.area) == pytest.approx(abs(before.outline.area), rel=1e-4)


def test_dart_to_gathers_marks_the_amount() -> None:
    front = BenchPiece(half_bodice())
    front.add_dart("waist_dart", "waist", at=12.5 * cm, intake=3 * cm, apex=front.bust_point)
    taken = sewn_length(front.freeze(), "waist")
    front.dart_to_gathers("waist_dart", over=12 * cm)
    piece = front.freeze()
    assert not piece.darts
    assert piece.edge("waist").path.length == pytest.approx(taken + 30, abs=0.01)
    assert "gather in 3 cm" in piece.marks[0].said
    one, two = piece.notches
    assert two.distance - one.distance == pytest.approx(120)


def test_hem_neck_and_ease() -> None:
    front = BenchPiece(half_bodice())
    area = abs(front.freeze().outline.area)
    front.extend_hem("waist", 5 * cm)
    assert front.freeze().outline.bounds()[1] == pytest.approx(-50)
    assert abs(front.freeze().outline.area) == pytest.approx(area + 50 * (220 + (220 - 50 * 20 / 200)) / 2, rel=1e-6)
    front = BenchPiece(half_bodice())
    front.add_ease(1 * cm)
    assert abs(front.freeze().outline.area) == pytest.approx(area + 10 * 200, rel=1e-6)
    front = BenchPiece(half_bodice())
    front.lower_neckline(3 * cm, wider=1 * cm)
    piece = front.freeze()
    assert piece.edge("centre").path.length == pytest.approx(350)
    assert piece.edge("shoulder").path.length == pytest.approx(half_bodice().edge("shoulder").path.length - 10)
    assert piece.outline.self_crossing() is None


def test_closed_edge_of_a_square_dart_is_the_edge_less_its_mouth() -> None:
    front = BenchPiece(half_bodice())
    front.add_dart("waist_dart", "waist", at=12.5 * cm, intake=3 * cm, apex=front.bust_point)
    piece = front.freeze()
    assert closed_edge(piece, "waist").length == pytest.approx(sewn_length(piece, "waist"), abs=1e-6)


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (lambda f: f.move_dart("wast_dart", to="side", at=5 * cm), "waist_dart"),
        (lambda f: f.move_dart("waist_dart", to="centre", at=5 * cm), "fold"),
        (lambda f: f.move_dart("waist_dart", to="side", at=50 * cm), "50 cm"),
        (lambda f: f.move_dart("waist_dart", to="side", at=5), "unit"),
        (lambda f: f.add_dart("b", "side", at=1 * cm, intake=5 * cm, apex=f.bust_point), "does not fit"),
        (lambda f: f.shorten_dart("waist_dart", 20 * cm), "Shorten it less"),
        (lambda f: f.extend_hem("waist", 2 * cm), "Move the dart"),
        (lambda f: f.move_dart("waist_dart", to="side", at=5 * cm, pressed="left"), "not pressed"),
    ],
)
def test_refusals_say_what_to_do(change, words: str) -> None:  # type: ignore[no-untyped-def]
    front = BenchPiece(half_bodice())
    front.add_dart("waist_dart", "waist", at=12.5 * cm, intake=3 * cm, apex=front.bust_point)
    with pytest.raises(KitError) as caught:
        change(front)
    assert words in str(caught.value)
