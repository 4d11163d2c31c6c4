"""Folded layers, pins, rows of other stitches and what is sewn on, from the real pieces."""

from __future__ import annotations

from xml.etree import ElementTree

import pytest
from shapely.geometry import Polygon

from kit.geometry import Curve, Path, Point
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Fill, Stroke
from kit.picture.laid import place_all
from kit.picture.sewing import scene_drawing
from kit.picture.svg_pen import svg
from kit.prose.alt import scene_alt
from kit.sewing.operations.trimming import snips
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene, Thing

SIDE = Run("front", ("side",), "right")
FOLD = Path.line(Point(120.0, -140.0), Point(120.0, 200.0))


def area(curves: tuple[Curve, ...]) -> float:
    return Polygon([(p.x, p.y) for c in curves for p in c.points(0.1)[:-1]]).buffer(0).area


def test_a_folded_layer_keeps_its_cloth(wrap_top: Pattern) -> None:
    """Nothing is lost or added by folding: what stays and what is turned over make up the piece."""
    (flat,) = place_all(Scene((Layer(SIDE),)), wrap_top)
    (folded,) = place_all(Scene((Layer(SIDE, fold=FOLD),)), wrap_top)
    parts = area(folded.outline) + sum(area(flap) for flap in folded.flaps)
    assert parts == pytest.approx(area(flat.outline), rel=1e-3)
    assert area(folded.outline) < area(flat.outline) - 1000


def test_what_is_folded_over_shows_its_other_side(wrap_top: Pattern) -> None:
    drawing = scene_drawing(Scene((Layer(SIDE, up="right", fold=FOLD),)), wrap_top)
    fills = {item.name: item.role for item in drawing.items if isinstance(item, Fill)}
    assert (fills["front"], fills["front.turned"]) == ("right_side", "wrong_side")


def test_a_fold_that_misses_the_piece_changes_nothing(wrap_top: Pattern) -> None:
    far = Path.line(Point(9000.0, 0.0), Point(9000.0, 10.0))
    (flat,) = place_all(Scene((Layer(SIDE),)), wrap_top)
    (folded,) = place_all(Scene((Layer(SIDE, fold=far),)), wrap_top)
    assert folded.outline == flat.outline and folded.flaps == []


def test_pins_cross_the_edge(wrap_top: Pattern) -> None:
    drawing = scene_drawing(Scene((Layer(SIDE),), pins=(SIDE,)), wrap_top)
    pins = [item for item in drawing.items if isinstance(item, Stroke) and item.name == "pin"]
    assert len(pins) == 5
    (placed,) = place_all(Scene((Layer(SIDE),)), wrap_top)
    edge = wrap_top.piece("front").edge("side").path.moved(placed.motion)
    for pin in pins:
        (line,) = pin.curves
        foot, head = Path((line,)), line.start
        assert foot.crossings(edge), "the pin holds both layers at the stitch line"
        assert not placed.piece.outline.contains(placed.motion.inverse()(head))


@pytest.mark.parametrize(
    ("style", "role"), [("machine", "row"), ("baste", "baste"), ("gather", "baste"), ("hand", "hand")]
)
def test_rows_tell_their_stitches_apart(wrap_top: Pattern, style: str, role: str) -> None:
    row = Row(SIDE, style=style)  # type: ignore[arg-type]
    drawing = scene_drawing(Scene((Layer(SIDE),), (row,)), wrap_top)
    assert role in {item.role for item in drawing.items if isinstance(item, Stroke) and item.name == SIDE.said}


def test_a_row_can_follow_a_line_of_the_draft(wrap_top: Pattern) -> None:
    leg = Path.line(Point(100.0, 0.0), Point(140.0, -100.0))
    drawing = scene_drawing(Scene((Layer(SIDE),), (Row(SIDE, line=leg),)), wrap_top)
    (row,) = [item for item in drawing.items if isinstance(item, Stroke) and item.role == "row"]
    (placed,) = place_all(Scene((Layer(SIDE),)), wrap_top)
    assert row.curves[0].start.distance(placed.motion(leg.start)) < 1e-6


@pytest.mark.parametrize("kind", ["zip", "button", "buttonhole", "elastic", "cord", "binding"])
def test_every_thing_is_drawn_in_its_place_and_said(wrap_top: Pattern, kind: str) -> None:
    line = Path.line(Point(100.0, 0.0), Point(100.0, 60.0))
    scene = Scene((Layer(SIDE),), things=(Thing(kind, SIDE, line, 8.0),))  # type: ignore[arg-type]
    drawing = scene_drawing(scene, wrap_top)
    ElementTree.fromstring(svg(drawing))
    (placed,) = place_all(scene, wrap_top)
    named = [i for i in drawing.items if isinstance(i, Stroke | Fill) and i.name == f"{kind} on front"]
    spot = placed.motion(line.start)
    assert min(p.distance(spot) for item in named for c in item.curves for p in c.points(0.5)) < 9.0
    assert kind.split("_")[0] in scene_alt(wrap_top, scene)


@pytest.mark.parametrize(("kind", "corners"), [("clips", 2), ("wedges", 3)])
def test_what_is_snipped_lies_in_the_allowance(wrap_top: Pattern, kind: str, corners: int) -> None:
    """Each cut begins outside the stitch line and goes outwards, as far from the next as is asked."""
    (thing,) = snips(wrap_top, SIDE, 20.0, kind)  # type: ignore[arg-type]
    scene = Scene((Layer(SIDE),), things=(thing,))
    (placed,) = place_all(scene, wrap_top)
    stitches = wrap_top.piece("front").edge("side").path.moved(placed.motion)
    piece = wrap_top.piece("front").outline.moved(placed.motion)
    cuts = [i for i in scene_drawing(scene, wrap_top).items if isinstance(i, Stroke) and i.name == f"{kind} on front"]
    assert len(cuts) == pytest.approx(thing.line.length / 20.0, abs=2)
    for cut in cuts:
        places = [cut.curves[0].start, *(curve.end for curve in cut.curves)]
        assert len({(round(p.x, 6), round(p.y, 6)) for p in places}) == corners
        assert not any(piece.contains(place) for place in places)
        off = sorted({round(stitches.distance_to(place), 1) for place in places})
        assert off[0] == pytest.approx(1.5, abs=0.3)
        near = [place for place in places if stitches.distance_to(place) < 2.5]
        assert len({(round(p.x, 3), round(p.y, 3)) for p in near}) == 1, "a wedge comes to its point at the stitch line"
    assert {"clips": "clips", "wedges": "wedges"}[kind] in scene_alt(wrap_top, scene)
