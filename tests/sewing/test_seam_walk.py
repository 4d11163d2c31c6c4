"""Walking a seam: lengths and places against an independent Bezier library, the rolling as a rigid motion, and what
stands where on two edges."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st
from svgpathtools import CubicBezier

from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.sleeve import with_sleeve
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Cubic, Line, Motion, Path, Point
from kit.lesson.bench import BenchPiece
from kit.piece.dart import sewn_length
from kit.piece.darts_and_pleats import Dart
from kit.piece.folded import cloth_left, corner_at, folded
from kit.piece.piece import Declared, Edge, Mark, Notch, Piece
from kit.sewing.run import Run
from kit.sewing.seam_walk import walk, walk_folded
from kit.units import cm


def panel(name: str, edge: Path, far: float) -> Piece:
    """A piece whose edge `seam` runs from first to last and whose other three sides lie `far` to the side."""
    a, b = edge.start, edge.end
    c, d = Point(b.x + far, b.y), Point(a.x + far, a.y)
    rest = (Edge("low", Path.line(b, c)), Edge("back", Path.line(c, d)), Edge("top", Path.line(d, a)))
    return Piece(name, name.capitalize(), (Edge("seam", edge), *rest))


SPOT = st.floats(-60, 60)


@st.composite
def cubics(draw: st.DrawFn) -> Cubic:
    """A curve of some length that nowhere comes to a stop, in mm."""
    points = [Point(draw(SPOT), 300.0 - 100.0 * i + draw(SPOT)) for i in range(4)]
    cubic = Cubic(*points)
    assume(all(cubic.derivative(i / 40).length > 30.0 for i in range(41)))
    return cubic


@given(cubics(), cubics(), st.floats(0.01, 0.99))
def test_lengths_and_places_agree_with_svgpathtools(one: Cubic, other: Cubic, share: float) -> None:
    """svgpathtools 1.8 (MIT) finds arc lengths by numerical integration of its own."""
    found = walk([panel("a", Path((one,)), 200), panel("b", Path((other,)), 200)], "a.seam", "b.seam", turned=False)
    for run, cubic in ((found.a, one), (found.b, other)):
        theirs = CubicBezier(*(complex(p.x, p.y) for p in (cubic.start, cubic.c1, cubic.c2, cubic.end)))
        assert run.length == pytest.approx(theirs.length(error=1e-6), abs=0.05)
        at = theirs.point(theirs.ilength(share * run.length, s_tol=1e-5))
        mine = run.path.at(share * run.length)
        assert math.hypot(mine.x - at.real, mine.y - at.imag) <= 0.05
    assert found.difference == pytest.approx(found.b.length - found.a.length)


@given(cubics(), cubics(), st.floats(0, 1), st.booleans(), st.sampled_from([-1.0, 1.0]))
def test_the_rolling_piece_touches_and_runs_alike(
    one: Cubic, other: Cubic, share: float, turned: bool, side: float
) -> None:
    """Wherever it has rolled to: rigid, touching at equal distances, tangent, and on the other side of the line."""
    found = walk(
        [panel("a", Path((one,)), 200), panel("b", Path((other,)), 200 * side)], "a.seam", "b.seam", turned=turned
    )
    d = share * min(found.a.length, found.b.length)
    motion = found.motion(d)
    assert motion(found.b.path.at(d)).distance(found.a.path.at(d)) < 1e-6
    assert motion.vector(found.b.path.tangent_at(d)).dot(found.a.path.tangent_at(d)) == pytest.approx(1.0)
    corners = [edge.path.start for edge in found.b.piece.edges]
    for p in corners:
        for q in corners:
            assert motion(p).distance(motion(q)) == pytest.approx(p.distance(q), abs=1e-6)
    into = found.b.path.normal_at(d) * (1.0 if found.b.cloth_left else -1.0)
    own = found.a.path.normal_at(d) * (1.0 if found.a.cloth_left else -1.0)
    assert motion.vector(into).dot(own) == pytest.approx(-1.0)


def test_a_rolling_piece_rolls_without_slipping() -> None:
    """A circle of radius r rolled outside a straight line: its centre runs level, r above the line (a cycloid's
    generating circle; elementary geometry)."""
    r = 50.0
    arc = Path.through([Point(r * math.sin(a), r - r * math.cos(a)) for a in [i * math.pi / 40 for i in range(41)]])
    wheel = Piece("b", "B", (Edge("seam", arc), Edge("back", Path.line(arc.end, arc.start))))
    road = panel("a", Path.line(Point(0, 0), Point(200, 0)), 0)
    road = Piece(
        "a",
        "A",
        (
            Edge("seam", Path.line(Point(0, 0), Point(200, 0))),
            Edge("side", Path.line(Point(200, 0), Point(200, -90))),
            Edge("low", Path.line(Point(200, -90), Point(0, -90))),
            Edge("end", Path.line(Point(0, -90), Point(0, 0))),
        ),
    )
    found = walk([road, wheel], "a.seam", "b.seam", turned=False)
    for d in (0.0, 30.0, 80.0, 140.0):
        centre = found.motion(d)(Point(0, r))
        assert centre.x == pytest.approx(d, abs=0.05) and centre.y == pytest.approx(r, abs=0.05)


@pytest.fixture(scope="module")
def sleeved() -> tuple[Piece, ...]:
    return tuple(with_sleeve(darted_bodice_block)(workshop_chart()["W4"]))


def test_darts_are_closed(sleeved) -> None:
    found = walk(sleeved, "front.side", "back.side")
    assert found.difference == pytest.approx(0.0, abs=0.01)
    front = next(p for p in sleeved if p.name == "front")
    assert found.a.length == pytest.approx(sewn_length(front, "side"))
    (dart,) = [s for s in found.stations if s.what == "fold"]
    assert dart.on == "a" and dart.name == "bust dart"


def test_the_cap_is_longer_by_its_ease_and_flat_below_the_notch(sleeved) -> None:
    front = walk(sleeved, "front.armhole", "sleeve.front_cap")
    back = walk(sleeved, "back.armhole", "sleeve.back_cap")
    assert front.difference + back.difference == pytest.approx(30.0, abs=0.05)  # the block's own cap ease
    for found in (front, back):
        (notch,) = [s for s in found.stations if s.what == "notch"]
        assert notch.difference == pytest.approx(found.difference, abs=0.01)  # all of it lies over the top
        assert not found.unmatched


def test_distances_come_over_and_back(sleeved) -> None:
    front = next(p for p in sleeved if p.name == "front")
    for run in (folded(front, ("side",)), folded(front, ("armhole", "side")), folded(front, ("side",)).reversed()):
        for share in (0.0, 0.2, 0.5, 0.9, 1.0):
            edge, at = run.drafted(share * run.length)
            assert run.sewn(edge, at) == pytest.approx(share * run.length, abs=1e-6)


def test_stations_name_notches_corners_seams_and_marks() -> None:
    bent = Path((Line(Point(0, 300), Point(10, 200)), Line(Point(10, 200), Point(0, 0))))
    a = replace(
        panel("a", bent, 200),
        notches=(Notch("seam", 50.0), Notch("seam", 150.0, name="waist")),
        marks=(
            Mark("tie", "opening", edge="seam", start=60.0, end=90.0),
            Mark("pocket", "drill", point=Point(5, 250)),
        ),
    )
    b = replace(
        panel("b", Path.line(Point(0, 300), Point(0, 0)), 200),
        notches=(Notch("seam", 52.0, "double"), Notch("seam", 149.0, "double", name="waist")),
    )
    found = walk([a, b], "a.seam", "b.seam")
    said = [(s.what, s.on, round(s.a, 1), round(s.b, 1)) for s in found.stations if s.what == "notch"]
    assert said == [("notch", "both", 50.0, 52.0), ("notch", "both", 150.0, 149.0)]
    assert [round(s.difference, 1) for s in found.stations if s.what == "notch"] == [2.0, -1.0]
    assert {s.name for s in found.stations if s.what == "mark"} == {"start of the tie", "end of the tie", "pocket"}
    (corner,) = [s for s in found.stations if s.what == "corner"]
    assert corner.a == pytest.approx(math.hypot(10, 100)) and corner.on == "a"
    assert corner.b == pytest.approx(52 + (corner.a - 50) * 97 / 100)  # in proportion between the notches
    assert found.stations[0].what == "start" and found.stations[-1].what == "end"


def test_the_ends_that_meet_are_found_or_said() -> None:
    a = panel("a", Path.line(Point(0, 300), Point(0, 0)), 100)
    b = replace(panel("b", Path.line(Point(0, 0), Point(0, 300)), -100), notches=(Notch("seam", 100.0),))
    (notch,) = [s for s in walk([a, b], "a.seam", "b.seam").stations if s.what == "notch"]
    assert notch.b == pytest.approx(200.0)
    (notch,) = [s for s in walk([a, b], "a.seam", "b.seam", turned=False).stations if s.what == "notch"]
    assert notch.b == pytest.approx(100.0)


def test_several_edges_and_parts_are_walked() -> None:
    pieces = bodice_block(workshop_chart()["W4"])
    whole = walk(pieces, "front.armhole + front.side", "back.armhole + back.side")
    assert [s.name for s in whole.stations if s.what == "seam"]
    part = walk(pieces, Run("front", ("side",), None, 20.0, 120.0), Run("back", ("side",), None, 20.0, 120.0))
    assert part.a.length == pytest.approx(100.0) and part.difference == pytest.approx(0.0)


@pytest.mark.parametrize(
    ("first", "second", "told"),
    [
        ("frnt.side", "back.side", "front"),
        ("front.sid", "back.side", "side"),
        ("front", "back.side", "does not name an edge"),
        ("front.side", "front.side", "along itself"),
        ("front.neck + front.side", "back.side", "do not follow one another"),
        (7, "back.side", "is not an edge"),
    ],
)
def test_bad_names_are_told(first, second, told) -> None:
    with pytest.raises(KitError, match=told):
        walk(bodice_block(workshop_chart()["W4"]), first, second)


def test_legs_that_differ_are_told() -> None:
    piece = panel("a", Path.line(Point(0, 300), Point(0, 0)), 200)
    spoilt = replace(piece, darts=(Dart("dart", "seam", Point(60, 190), 50.0, 80.0),))
    with pytest.raises(KitError, match="legs of the dart"):
        walk([spoilt, panel("b", Path.line(Point(0, 300), Point(0, 0)), 200)], "a.seam", "b.seam")


# ---- corners ----------------------------------------------------------------------------------------------


@given(st.floats(20, 340), st.booleans(), st.floats(0, 6.28))
def test_inside_angles_are_measured_whichever_way_the_outline_runs(angle: float, other_way: bool, turn: float) -> None:
    assume(abs(angle - 180) > 5)
    tip = Point(0, 0)
    arms = [Point(100, 0), Point(100 * math.cos(math.radians(angle)), 100 * math.sin(math.radians(angle)))]
    inner = math.radians(angle / 2)
    middle = Point(300 * math.cos(inner), 300 * math.sin(inner))
    way = Motion.rotation(turn)
    ring = [tip, arms[0], middle, arms[1]]
    ring = [way(p) for p in (ring[::-1] if other_way else ring)]
    ends = zip("abcd", ring, ring[1:] + ring[:1], strict=True)
    edges = tuple(Edge(name, Path.line(one, other)) for name, one, other in ends)
    piece = Piece("p", "P", edges)
    assume(cloth_left(piece) != other_way)
    at = way(tip)
    name = next(e.name for e in edges if e.path.start.distance(at) < 1e-9)
    found = corner_at(folded(piece, (name,)), False)
    assert found is not None and math.degrees(found.angle) == pytest.approx(angle, abs=1e-6)
    back = corner_at(folded(piece, (name,)).reversed(), True)
    assert back is not None and back.angle == pytest.approx(found.angle)
    declared = replace(piece, declared=(Declared(found.before, found.after, "V point"),))
    assert found.declared(declared) and not found.declared(piece)


def test_a_dart_at_the_very_corner_is_folded_shut_first() -> None:
    """The edge beside a corner opens with a dart: what counts is the line beyond it, turned by the dart's angle."""
    apex, left, right = Point(50, 100), Point(50 - 10, 0), Point(50 + 10, 0)
    beyond = Point(200, 0)
    waist = Path((Line(left, right), Line(right, beyond)))
    corners = [beyond, Point(200, 200), Point(left.x, 200)]
    piece = Piece(
        "p",
        "P",
        (
            Edge("waist", waist),
            Edge("right", Path.line(corners[0], corners[1])),
            Edge("top", Path.line(corners[1], corners[2])),
            Edge("seam", Path.line(corners[2], left)),
        ),
        darts=(Dart("dart", "waist", apex, 0.0, 20.0),),
    )
    found = corner_at(folded(piece, ("seam",)), True)
    assert found is not None
    shut = 2 * math.degrees(math.atan(10 / 100))
    assert math.degrees(found.angle) == pytest.approx(90.0 + shut, abs=1e-6)


def test_two_walks_of_a_run_as_sewn_are_the_same_length() -> None:
    piece = next(p for p in darted_bodice_block(workshop_chart()["W7"]) if p.name == "front")
    run = folded(piece, ("side",))
    assert walk_folded(run, run.reversed(), turned=False).difference == pytest.approx(0.0, abs=1e-6)


def test_pleats_are_folded_shut() -> None:
    """A skirt front with a pleat at the waist, walked along the back that has none: the pleat's intake is gone, and the
    run lies without a gap."""
    front = BenchPiece(skirt())
    back = replace(skirt(), name="back", title="Back")
    front.add_pleat("pleat", "waist", at=6 * cm, intake=4 * cm, laid="side", along=front.centre)
    piece = front.freeze()
    assert piece.edge("waist").path.length > 230
    found = walk([piece, back], "front.waist", "back.waist")
    assert found.difference == pytest.approx(0.0, abs=0.1)
    (fold,) = [s for s in found.stations if s.what == "fold"]
    assert fold.name == "pleat" and fold.a == pytest.approx(60.0, abs=20.1)
    assert found.a.path.start.distance(found.a.path.end) == pytest.approx(200.0, abs=0.1)


def skirt() -> Piece:
    a, b, c, d = Point(0, 0), Point(200, 0), Point(200, -500), Point(0, -500)
    sides = zip(("waist", "side", "hem", "centre"), ((a, b), (b, c), (c, d), (d, a)), strict=True)
    return Piece("front", "Front", tuple(Edge(name, Path.line(p, q)) for name, (p, q) in sides))
