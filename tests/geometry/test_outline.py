"""Closed outlines, checked against shapely (GEOS) for area, containment and crossings."""

from __future__ import annotations

import math
import pickle
import random

import pytest
from shapely import Point as Spot

from kit.errors import KitError
from kit.geometry import RIGHT, UP, Arc, Cubic, Line, Motion, Outline, Path, Point, Vector

FRONT = Outline(
    (
        ("neck", Path((Cubic.square(Point(0, 320), RIGHT, Point(70, 400), UP),))),
        ("shoulder", Path.line(Point(70, 400), Point(180, 370))),
        ("armhole", Path((Cubic(Point(180, 370), Point(165, 300), Point(180, 220), Point(240, 210)),))),
        ("side", Path.of(Line(Point(240, 210), Point(215, 0)), Line(Point(215, 0), Point(250, -180)))),
        ("hem", Path.line(Point(250, -180), Point(0, -180))),
        ("centre", Path.line(Point(0, -180), Point(0, 320))),
    )
)


def test_area_and_perimeter_against_shapely() -> None:
    want = FRONT.polygon(0.0005)
    assert FRONT.area == pytest.approx(-want.area, rel=1e-6)  # it runs clockwise
    assert FRONT.perimeter == pytest.approx(want.exterior.length, abs=0.02)
    assert FRONT.oriented().area == pytest.approx(want.area, rel=1e-6)
    assert FRONT.bounds() == pytest.approx(want.bounds, abs=0.01)


def test_areas_by_formula() -> None:
    disc = Outline((("rim", Path((Arc(Point(500, 900), 70, 1, 2 * math.pi),))),))
    assert disc.area == pytest.approx(math.pi * 70**2) and disc.perimeter == pytest.approx(2 * math.pi * 70)
    assert disc.self_crossing() is None
    half = Outline(
        (("arc", Path((Arc(Point(0, 0), 70, 0, -math.pi),))), ("flat", Path.line(Point(-70, 0), Point(70, 0))))
    )
    assert half.area == pytest.approx(-math.pi * 70**2 / 2)


def test_contains_against_shapely() -> None:
    shape, rng = FRONT.polygon(0.001), random.Random(7)
    for _ in range(300):
        p = Point(rng.uniform(-20, 270), rng.uniform(-200, 420))
        if shape.exterior.distance(Spot(p.x, p.y)) > 0.02:
            assert FRONT.contains(p) == shape.contains(Spot(p.x, p.y))
    assert FRONT.contains(Point(0, 0)) and FRONT.contains(Point(70, 400)) and not FRONT.contains(Point(-0.1, 0))


def test_label_point_has_room() -> None:
    spot = FRONT.label_point()
    room = min(path.distance_to(spot) for _, path in FRONT.edges)
    assert FRONT.contains(spot) and room > 100
    crescent = Outline(
        (
            ("outer", Path((Arc(Point(0, 0), 100, 0, math.pi),))),
            ("tip", Path.line(Point(-100, 0), Point(-90, 0))),
            ("inner", Path((Arc(Point(0, 0), 90, math.pi, -math.pi),))),
            ("end", Path.line(Point(90, 0), Point(100, 0))),
        )
    )
    assert crescent.contains(crescent.label_point())  # the middle of its box lies outside


def test_sides_and_copies() -> None:
    mirror = FRONT.mirrored(Line(Point(0, 0), Point(0, 1)))
    assert mirror.area == pytest.approx(-FRONT.area) and mirror.names == FRONT.names
    assert mirror.edge("shoulder") == Path.line(Point(-70, 400), Point(-180, 370))
    slid = FRONT.moved(Motion.translation(Vector(1000, -50)))
    assert slid.area == pytest.approx(FRONT.area) and slid.bounds()[0] == pytest.approx(1000)
    assert FRONT.oriented().names == tuple(reversed(FRONT.names)) and FRONT.oriented().oriented() == FRONT.oriented()
    assert pickle.loads(pickle.dumps(FRONT)) == FRONT and len({FRONT, FRONT.moved(Motion.identity())}) == 1


def with_edge(name: str, path: Path, **others: Path) -> Outline:
    changes = {name: path, **others}
    return Outline(tuple((known, changes.get(known, old)) for known, old in FRONT.edges))


def test_crossings_are_named() -> None:
    assert FRONT.self_crossing() is None and FRONT.polygon().is_valid
    deep = with_edge("armhole", Path((Cubic(Point(180, 370), Point(-250, 300), Point(-180, 220), Point(240, 210)),)))
    found = deep.self_crossing()
    assert found is not None and set(found[:2]) <= {"neck", "armhole", "centre", "shoulder"}
    assert not deep.polygon().is_valid  # shapely agrees
    looped = with_edge("armhole", Path((Cubic(Point(180, 370), Point(420, 180), Point(0, 160), Point(240, 210)),)))
    assert looped.edge("armhole").curves[0].self_crossing() is not None  # type: ignore[attr-defined]
    crossing = looped.self_crossing()
    assert crossing is not None and crossing[:2] == ("armhole", "armhole")
    touching = Outline(
        (
            ("base", Path.line(Point(0, 0), Point(100, 0))),
            ("right", Path.of(Line(Point(100, 0), Point(100, 50)), Line(Point(100, 50), Point(50, 0)))),
            ("left", Path.of(Line(Point(50, 0), Point(0, 50)), Line(Point(0, 50), Point(0, 0)))),
        )
    )
    found = touching.self_crossing()
    assert found is not None and found[0] == "base" and found[2].close_to(Point(50, 0))


def test_neighbours_lying_on_each_other_are_found() -> None:
    folded = Outline(
        (
            ("there", Path.line(Point(0, 0), Point(100, 0))),
            ("back", Path.line(Point(100, 0), Point(40, 0))),
            ("home", Path.of(Line(Point(40, 0), Point(40, 60)), Line(Point(40, 60), Point(0, 0)))),
        )
    )
    found = folded.self_crossing()
    assert found is not None and found[2].close_to(Point(40, 0))


def test_small_gaps_are_closed() -> None:
    nearly = with_edge("hem", Path.line(Point(250, -180.04), Point(0, -180.04)))
    assert nearly.area == pytest.approx(FRONT.area, abs=15) and nearly.self_crossing() is None


def test_refusals_name_edges_gap_and_place() -> None:
    with pytest.raises(KitError) as caught:
        with_edge("hem", Path.line(Point(250, -183), Point(0, -180)))
    assert "the side seam ends 3 mm from where the hem begins" in str(caught.value)
    assert caught.value.where == "25 cm (9 7/8 in) across, -18 cm (-7 1/8 in) up"
    with pytest.raises(KitError, match="Did you mean 'shoulder'"):
        FRONT.edge("sholder")
    with pytest.raises(KitError, match="two edges are called 'neck'"):
        Outline((FRONT.edges[0], FRONT.edges[0]))
    with pytest.raises(KitError, match="needs edges"):
        Outline(())
    with pytest.raises(KitError, match="the strap does not close: it ends 50 mm"):
        Outline((("strap", Path.line(Point(0, 0), Point(50, 0))),))
