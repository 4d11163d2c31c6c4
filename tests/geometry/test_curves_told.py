"""Curves and paths told in full: every question that can be asked of one, its parallels, where any two meet, what a
path of several is, and what is refused.

What stands in `curves_told` was made by the kit, and is held besides to shapely, svgpathtools and elementary geometry
in the files beside this one. Read here: lines and arcs, whose answers are those of a ruler and a pair of compasses.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import partial
from pathlib import Path as File
from typing import Any

import pytest

from kit.geometry import (
    Arc,
    Cubic,
    Curve,
    Line,
    Motion,
    Outline,
    Path,
    Point,
    Vector,
    meet,
    meet_lines,
    parallel,
    square_curve,
)
from kit.geometry.guide import guide_points, on_ruler
from kit.geometry.meet import only_meet_at
from kit.geometry.roots import cubic_roots, quadratic_roots
from tests.exact import exact, tried
from tests.told import Kept

TOLD = File(__file__).with_name("curves_told")
CURVES: dict[str, Curve] = {
    "level line": Line(Point(0, 0), Point(120, 0)),
    "slanting line": Line(Point(10, -40), Point(90, 80)),
    "line of no length": Line(Point(10, 10), Point(10, 10)),
    "quarter": Arc(Point(60, 0), 50.0, math.pi / 2, -math.pi / 2),
    "three quarters": Arc(Point(40, 20), 30.0, -0.5, 1.5 * math.pi),
    "whole circle": Arc(Point(50, 0), 40.0, 0.3, 2 * math.pi),
    "armhole": Cubic(Point(0, 100), Point(-5, 50), Point(20, 10), Point(80, 0)),
    "bow": Cubic(Point(0, 0), Point(30, 60), Point(80, 60), Point(110, 10)),
    "double bend": Cubic(Point(0, 0), Point(70, 90), Point(30, -80), Point(110, 20)),
    "loop": Cubic(Point(0, 0), Point(150, 90), Point(-40, 90), Point(110, 0)),
    "cusp": Cubic(Point(0, 0), Point(100, 80), Point(0, 80), Point(100, 0)),
    "straight cubic": Cubic(Point(0, 20), Point(30, 20), Point(70, 20), Point(100, 20)),
    "doubling back": Cubic(Point(0, 30), Point(160, 30), Point(-60, 30), Point(100, 30)),
    "blunt start": Cubic(Point(0, 0), Point(0, 0), Point(60, 50), Point(100, 50)),
    "blunt end": Cubic(Point(0, 0), Point(40, 50), Point(100, 50), Point(100, 50)),
}
SPOTS = (Point(40, 15), Point(-20, 60), Point(130, -10), Point(60, 0))
SHARES = (0.0, 0.1, 0.5, 0.8, 1.0)


def _of(curve: Curve) -> Iterator[str]:
    yield f"{exact(curve)}, {exact(curve.length)} long in {exact(curve.bounds())}"
    for name in ("point", "derivative", "tangent", "normal", "curvature"):
        yield f"{name} {tried(lambda name=name: [getattr(curve, name)(t) for t in SHARES])}"  # type: ignore[misc]
    yield f"t at mm {tried(lambda: [curve.t_at(curve.length * share) for share in SHARES])}"
    yield f"place at mm {tried(lambda: [curve.at(curve.length * share) for share in SHARES])}"
    yield f"beyond its ends {tried(lambda: [curve.t_at(-5.0), curve.t_at(curve.length + 5.0)])}"
    yield f"nearest {tried(lambda: [curve.nearest(spot) for spot in SPOTS])}"
    yield f"back {exact(curve.reversed())}"
    yield f"part {exact(curve.between(0.2, 0.7))}; part back {exact(curve.between(0.7, 0.2))}"
    yield f"split {exact(curve.split(0.3))}"
    yield f"mirrored {exact(curve.mirrored(Line(Point(0, 0), Point(1, 1))))}; area {exact(curve.area_term())}"
    turn = Motion.rotation(0.4, Point(20, 10)).then(Motion.translation(Vector(5, -7)))
    flip = Motion.reflection(Point(0, 9), Point(20, 0))
    yield f"moved {exact(curve.moved(turn))}; flipped {exact(curve.moved(flip))}"
    for tol in (0.01, 1.0):
        yield f"points for {tol}: {len(list(curve.points(tol)))}; {exact(list(curve.points(tol))[1])}"
    yield f"as cubics {tried(curve.as_cubics)}"
    for far in (4.0, -4.0, 45.0, -45.0):
        yield f"parallel {exact(far)}: {tried(lambda far=far: curve.parallel(far))}"  # type: ignore[misc]
    if isinstance(curve, Cubic):
        yield f"crosses itself {exact(curve.self_crossing())}, doubles back {exact(curve.doubling_back())}"
        bends = [curve.tightest(left) for left in (True, False)]  # at a cusp a number without end
        yield f"tightest {exact([(t, bend) if bend < 1000.0 else (t, 'a point') for t, bend in bends])}"


@pytest.mark.parametrize("name", CURVES)
def test_a_curve(name: str) -> None:
    Kept(TOLD / f"{name.replace(' ', '_')}.txt").holds({name: "\n".join(_of(CURVES[name]))})


def test_where_any_two_meet() -> None:
    names, lines = list(CURVES), []
    for number, one in enumerate(names):
        for two in names[number + 1 :]:
            found = meet(CURVES[one], CURVES[two])
            lines.append(f"{one}, {two}: {exact([tuple(each) for each in found])}")
            back = meet(CURVES[two], CURVES[one])
            assert len(back) == len(found), (one, two)
    lines.append(f"lines: {exact(meet_lines(Point(0, 0), Vector(1, 0.5), Point(40, 0), Vector(0, 1)))}")
    lines.append(f"alike: {exact(meet_lines(Point(0, 0), Vector(1, 0.5), Point(40, 0), Vector(2, 1)))}")
    for name in ("level line", "armhole", "quarter"):
        for other in ("slanting line", "bow", "double bend"):
            hub = CURVES[name].end
            beside = CURVES[other].moved(Motion.translation(hub - CURVES[other].start))
            lines.append(f"only at the end of {name}, {other}: {only_meet_at(hub, CURVES[name], beside)}")
    Kept(TOLD / "meeting.txt").holds({"two": "\n".join(lines)})


# ---- paths ------------------------------------------------------------------------------------------------------


def _joined(*curves: Curve) -> Path:
    """Curves set end to end, each moved to where the one before ends."""
    row = [curves[0]]
    for curve in curves[1:]:
        row.append(curve.moved(Motion.translation(row[-1].end - curve.start)))
    return Path(tuple(row))


PATHS = {
    "one line": Path((CURVES["slanting line"],)),
    "a corner": _joined(CURVES["level line"], CURVES["slanting line"], CURVES["bow"]),
    "hollow": _joined(CURVES["armhole"], CURVES["level line"]),
    "round": _joined(CURVES["quarter"], CURVES["double bend"], CURVES["quarter"]),
    "closed": Path.line(Point(0, 0), Point(90, 0))
    + Path.line(Point(90, 0), Point(60, 70))
    + Path.line(Point(60, 70), Point(0, 0)),
    "through points": Path.through([Point(0, 0), Point(40, 50), Point(100, 40), Point(140, 0)]),
    "through points, with ends": Path.through([Point(0, 0), Point(60, 40), Point(120, 0)], Vector(0, 1), Vector(0, -1)),
    "nearly straight": _joined(Line(Point(0, 0), Point(60, 0)), Line(Point(0, 0), Point(60, 0.5))),
}


WALL = Path.line(Point(-500, 130), Point(900, 140))


def _of_path(path: Path) -> Iterator[str]:
    yield f"{exact(path)}"
    yield f"{exact(path.length)} long, marks {exact(path.marks)}, corners {exact(path.corners)}"
    yield f"in {exact(path.bounds())}"
    yield f"closed {path.is_closed}, straight {path.is_straight}; {exact((path.start_tangent, path.end_tangent))}"
    steps = [path.length * share for share in (0.0, 0.2, 0.5, 0.77, 1.0)]
    for name in ("at", "tangent_at", "normal_at"):
        yield f"{name} {exact([getattr(path, name)(step) for step in steps])}"
    yield f"off its ends {tried(lambda: path.at(-1.0))} {tried(lambda: path.at(path.length + 1.0))}"
    yield f"nearest {exact([(path.nearest(spot), path.distance_to(spot)) for spot in SPOTS])}"
    yield f"split {tried(lambda: path.split(path.length * 0.4))}"
    yield f"between {exact(path.between(steps[1], steps[3]))}; back {exact(path.between(steps[3], steps[1]))}"
    yield f"between alike {tried(lambda: path.between(20.0, 20.0))}; beyond {tried(lambda: path.between(-9.0, 9e9))}"
    yield f"reversed {exact(path.reversed())}; mirrored {exact(path.mirrored(Line(Point(0, 0), Point(2, 1))))}"
    for end in ("start", "end"):
        yield f"carried on at its {end} {tried(lambda end=end: path.extended(25.0, end))}"  # type: ignore[misc]
        yield f"to a line from its {end} {tried(lambda end=end: path.to(WALL, end))}"  # type: ignore[misc]
    yield f"not carried on {tried(lambda: path.extended(0.0))} {tried(lambda: path.extended(-3.0))}"
    for far in (6.0, -6.0, 40.0, -40.0):
        yield f"parallel {exact(far)}: {tried(lambda far=far: parallel(path, far))}"  # type: ignore[misc]
    for other in ("a corner", "round"):
        yield f"meets {other} {tried(lambda other=other: path.meetings(PATHS[other]))}"  # type: ignore[misc]
    for system in ("cm", "inch"):
        yield f"set out in {system} {tried(lambda system=system: guide_points(path, system))}"  # type: ignore[misc]


@pytest.mark.parametrize("name", PATHS)
def test_a_path(name: str) -> None:
    Kept(TOLD / f"path_{name.replace(' ', '_').replace(',', '')}.txt").holds({name: "\n".join(_of_path(PATHS[name]))})


def test_outlines() -> None:
    def outline(*points: tuple[float, float]) -> Outline:
        at = [Point(*point) for point in points]
        rows = zip("abcdefgh", at, [*at[1:], at[0]], strict=False)
        return Outline(tuple((name, Path.line(one, two)) for name, one, two in rows))

    lines = []
    for title, made in {
        "oblong": outline((0, 0), (100, 0), (100, 60), (0, 60)),
        "the other way round": outline((0, 60), (100, 60), (100, 0), (0, 0)),
        "an L": outline((0, 0), (100, 0), (100, 30), (40, 30), (40, 90), (0, 90)),
        "crossing": outline((0, 0), (100, 60), (100, 0), (0, 60)),
    }.items():
        lines.append(f"{title}: area {exact(made.area)}, {exact(made.perimeter)} round, in {exact(made.bounds())}")
        lines.append(f"  {exact(made.names)}; label at {tried(lambda made=made: made.label_point())}")  # type: ignore[misc]
        lines.append(
            f"  holds {[made.contains(spot) for spot in (*SPOTS, Point(100, 30), Point(50, 60), Point(0, 0))]}"
        )
        lines.append(f"  crosses {exact(made.self_crossing())}")
        lines.append(f"  oriented {exact(made.oriented().names)} {exact(made.oriented().area)}")
        flipped = made.mirrored(Line(Point(0, 0), Point(0, 1)))
        lines.append(f"  mirrored {exact(flipped.bounds())}; {tried(partial(made.edge, 'q'))}")
    gap = tuple(
        (name, Path.line(*ends))
        for name, ends in (("a", (Point(0, 0), Point(9, 0))), ("b", (Point(9, 2), Point(0, 0))))
    )
    lines.append(f"open: {tried(lambda: Outline(gap))}")
    lines.append(f"twice: {tried(lambda: Outline((gap[0], gap[0])))}; nothing: {tried(lambda: Outline(()))}")
    Kept(TOLD / "outlines.txt").holds({"outlines": "\n".join(lines)})


SQUARES = ((1.0, -3.0, 2.0), (1.0, 2.0, 1.0), (1.0, 0.0, 1.0), (0.0, 2.0, -1.0), (0.0, 0.0, 1.0), (1e-14, 1.0, -1.0))
CUBES = (
    (1.0, -6.0, 11.0, -6.0),
    (1.0, 0.0, 0.0, -8.0),
    (1.0, -3.0, 3.0, -1.0),
    (0.0, 1.0, -3.0, 2.0),
    (1.0, -4.0, 5.0, -2.0),
)


def test_square_curves_roots_and_readings() -> None:
    neck, side = Path.line(Point(0, 100), Point(0, 0)), PATHS["hollow"]
    lines = []
    for more in ({}, {"fullness": 0.4}, {"fullness": 1.0}):
        for one, two in ((Point(0, 80), Point(60, 20)), (Point(0, 80), Point(90, 90))):
            lines.append(f"square {more} {exact(one)} {exact(two)}: {_square(one, two, neck, side, more)}")
    for squares in SQUARES:
        lines.append(f"roots of {squares}: {exact(quadratic_roots(*squares))}")
    for cubes in CUBES:
        lines.append(f"roots of {cubes}: {exact(cubic_roots(*cubes))}")
    for value in (0.2, 3.3, 12.4, 47.0, 101.6, 1000.3):
        lines.append(f"{value} on a ruler: {exact(on_ruler(value))} {exact(on_ruler(value, 'inch'))}")
    one, two = Vector(3, 4), Vector(-1, 2)
    sums = [one + two, one - two, -one, one * 2, one / 4, one.unit(), one.rotated(0.5), one.left(), one.right()]
    lines.append(f"vectors {exact(sums)}")
    of_them = [one.dot(two), one.cross(two), one.length, one.angle, one.turn_to(two), two.turn_to(one)]
    lines.append(f"of them {exact(of_them)}")
    between = [SPOTS[0].toward(SPOTS[1], 7.0), SPOTS[0].mid(SPOTS[1]), SPOTS[0].lerp(SPOTS[1], 0.3)]
    lines.append(f"points {exact(between)}")
    lines.append(f"none {tried(lambda: Vector(0, 0).unit())}; {tried(lambda: Point(0, float('nan')))}")
    motion = Motion.matching(Point(0, 0), Point(10, 0), Point(5, 5), Point(5, 25), flip=True)
    motions = [motion, motion.inverse(), motion.then(motion), Motion.rotation(1.0), Motion.identity()]
    lines.append(f"motions {exact(motions)} {exact(motion.angle)}")
    Kept(TOLD / "numbers.txt").holds({"numbers": "\n".join(lines)})


def _square(one: Point, two: Point, first: Path, second: Path, more: dict[str, Any]) -> str:
    return tried(lambda: square_curve(one, first, two, second, **more))
