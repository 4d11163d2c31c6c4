"""The picture of cloth that is cut: what is hatched, which lines are drawn how, and that distances are those told."""

from __future__ import annotations

import pytest
from shapely.geometry import MultiPolygon, Polygon

from kit.picture.drawing import Dimension, Drawing, Fill, Stroke
from kit.picture.recut import recut_drawing
from kit.picture.sewing import scene_drawing
from kit.picture.svg_pen import svg
from kit.piece.recut import PieceChange, areas
from kit.prose import scene_alt
from kit.units import System, both, cm
from tests.fitted import tunic


def sewn(make, front, back):
    make.plain_seam(front.side, back.side, allowance=1.5 * cm)


def nothing(make, front, back):
    """The sides are sewn before."""


def drawn(was: float, system: System = "cm", **more) -> tuple[Drawing, object]:
    pattern = tunic(lambda make: make.try_on(top_width=(was * cm, 25 * cm)), **more).work()
    scenes = [scene for scene in pattern.sewing[1].operations[0].scenes(pattern) if scene.recut]
    assert [scene.recut.now.name for scene in scenes] == ["front", "back"]
    assert scene_alt(pattern, scenes[0]).startswith("Front as it was cut")
    return scene_drawing(scenes[0], pattern, system), scenes[0].recut


def strokes(drawing: Drawing) -> dict[str, str]:
    return {item.name: item.role for item in drawing.items if isinstance(item, Stroke)}


def texts(drawing: Drawing) -> list[str]:
    return [item.text for item in drawing.items if isinstance(item, Dimension)]


def trimmed(change: PieceChange) -> MultiPolygon:
    found = areas(change)
    assert found is not None
    return MultiPolygon([Polygon(ring) for ring in found.off.rings])


def area(item: Fill) -> float:
    return Polygon([(curve.start.x, curve.start.y) for curve in item.curves]).area


@pytest.mark.parametrize("system", ["cm", "inch"])
def test_taken_in(system: System) -> None:
    drawing, change = drawn(28, system, before=sewn, seam=nothing)
    lines = strokes(drawing)
    assert lines["front.side"] == "new" and lines["front.side.before"] == "old_row" and lines["front.cut"] == "cut"
    assert "front.top.before" not in lines and "front.lack" not in lines and "front.hatch" in lines
    assert texts(drawing) == [both(abs(change.edge("side").start.off), system)]
    off = [area(item) for item in drawing.items if isinstance(item, Fill) and item.name == "front.trimmed"]
    assert sum(off) == pytest.approx(trimmed(change).area, rel=0.01) and sum(off) > 4000


def test_an_old_line_without_stitching_is_no_stitching() -> None:
    drawing, _ = drawn(28)
    assert strokes(drawing)["front.side.before"] == "hidden"


def test_cloth_that_lacks_and_cloth_that_is_left() -> None:
    drawing, _ = drawn(20)
    assert "front.lack" in strokes(drawing) and "3.4 cm (1 3/8 in) lacking" in texts(drawing)
    drawing, _ = drawn(24)
    assert "5 mm (3/16 in) left" in texts(drawing)


def test_hatching_lies_on_what_is_trimmed_alone() -> None:
    drawing, change = drawn(28, extra=4 * cm, after=lambda make, front, back: make.trim_to_fit(front.side, back.side))
    off = trimmed(change).buffer(0.01)
    lines = [item for item in drawing.items if isinstance(item, Stroke) and item.name == "front.hatch"]
    assert len(lines) > 20
    from shapely import LineString

    for line in lines:
        (curve,) = line.curves
        assert off.covers(LineString([(curve.start.x, curve.start.y), (curve.end.x, curve.end.y)]))


def test_no_cut_line_runs_along_the_fold() -> None:
    drawing, _ = drawn(28)
    cut = [item for item in drawing.items if isinstance(item, Stroke) and item.name.startswith("front.cut")]
    assert {item.role for item in cut} == {"cut", "kept"}
    assert not any(abs(curve.start.x) + abs(curve.end.x) < 1 for item in cut for curve in item.curves)
    assert strokes(drawing)["front.centre"] == "fold"


def test_all_of_it_lies_in_the_picture() -> None:
    for before in (20, 24, 28):
        drawing, change = drawn(before)
        assert drawing == recut_drawing(change, title="Front") and drawing.bounds is not None
        x0, y0, x1, y1 = drawing.bounds
        for item in drawing.items:
            for curve in getattr(item, "curves", ()):
                a, b, c, d = curve.bounds()
                assert x0 <= a and y0 <= b and c <= x1 and d <= y1
        assert "<svg" in svg(drawing)
