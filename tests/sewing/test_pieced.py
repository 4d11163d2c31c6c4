"""Strips pieced from several lengths: what is said and drawn of joining their ends.

That ends cut at 45 degrees are laid at a right angle, a point standing out at either side, so that the long edges
meet on the stitch line, is common practice (no source); here it is held to the geometry: cloth folded over along the
seam must go on in one straight strip.
"""

from __future__ import annotations

import pytest
from shapely import Polygon, affinity

from kit.picture.drawing import Fill, Stroke
from kit.picture.strip_alone import BREAK, LONGEST, strip_alone
from kit.picture.strip_pieced import strip_pieced
from kit.piece.piece import CutPlan, Strip
from kit.sewing.scene import StripShape
from kit.units import mm


def _strip(**more: object) -> Strip:
    usual: dict[str, object] = {"name": "binding", "title": "Binding", "length": 900.0, "width": 40.0, "count": 1}
    usual |= {"finished_length": 880.0, "finished_width": 10.0, "fold": "single_binding", "grain": "bias"}
    usual |= {"joins": 2, "each": 320.0, "join": "diagonal", "join_allowance": 6.0}
    return Strip(**(usual | more))  # type: ignore[arg-type]


@pytest.fixture(scope="module")
def panel(garments):
    corners = [(0, 0), (150, 0), (150, -200), (0, -200)]
    edges = {"top": 0, "side": 15, "hem": 30, "centre": 0}
    return (garments.polygon("panel", corners, edges, cut=CutPlan(fold="centre")),)


@pytest.mark.parametrize(
    ("way", "cut"),
    [
        ("bias", {}),
        ("corner", {"grain": "crosswise"}),
        ("straight", {"grain": "crosswise", "join": "straight"}),
    ],
)
def test_how_the_lengths_are_joined_is_said_first(sewn, panel, way, cut):
    strip = _strip(**cut)
    found = sewn(
        panel, lambda make, panel, binding: make.bind(panel.top, strip=binding, finished=10 * mm), strips=(strip,)
    )
    keys = [sentence.key for sentence in found.last.sentences(found.pattern)]
    assert keys[:4] == [f"pieced.{way}_lay", f"pieced.{way}_sew", f"pieced.{way}_open", "pieced.again"]
    assert found.last.scenes(found.pattern)[0].shape == StripShape(pieced=way)


def test_a_strip_in_one_length_is_not_joined(sewn, panel):
    strip = _strip(joins=0)
    found = sewn(
        panel, lambda make, panel, binding: make.bind(panel.top, strip=binding, finished=10 * mm), strips=(strip,)
    )
    assert not [text for text in found.said if "right angle" in text]
    assert found.last.scenes(found.pattern)[0].shape is None


def test_lengths_are_joined_once_for_all_strips_of_them(sewn, panel):
    strip = _strip(count=2)

    def bound(make, panel, binding):
        make.bind(panel.top, strip=binding, finished=10 * mm)
        make.bind(panel.side, strip=binding, finished=10 * mm, trim=15 * mm)

    found = sewn(panel, bound, strips=(strip,))
    first, second = found.pattern.sewing[0].operations
    assert any(s.key.startswith("pieced") for s in first.sentences(found.pattern))
    assert not any(s.key.startswith("pieced") for s in second.sentences(found.pattern))


def test_one_join_is_not_done_again(sewn, panel):
    found = sewn(
        panel,
        lambda make, panel, binding: make.bind(panel.top, strip=binding, finished=10 * mm),
        strips=(_strip(joins=1, each=460.0),),
    )
    assert [s.key for s in found.last.sentences(found.pattern)].count("pieced.again") == 0


def test_a_tube_of_a_square_is_sewn_and_cut(sewn, panel):
    strip = _strip(joins=0, each=0.0, square=300.0)
    found = sewn(
        panel, lambda make, panel, binding: make.bind(panel.top, strip=binding, finished=10 * mm), strips=(strip,)
    )
    keys = [sentence.key for sentence in found.last.sentences(found.pattern)]
    assert keys[:5] == [f"pieced.square_{key}" for key in ("halve", "seam", "rule", "tube", "cut")]


def _shapes(way: str, strip: Strip) -> tuple[Polygon, Polygon, Stroke]:
    """The two lengths as they are laid, and the row."""
    items, _ = strip_pieced(strip, way)
    under, over = (
        Polygon([(c.start.x, c.start.y) for c in item.curves]) for item in items[:8] if isinstance(item, Fill)
    )
    return under, over, next(item for item in items if isinstance(item, Stroke) and item.role == "row")


@pytest.mark.parametrize("way", ["bias", "corner"])
def test_what_is_laid_at_a_right_angle_opens_to_one_straight_strip(way):
    strip = _strip()
    under, over, row = _shapes(way, strip)
    (line,) = row.curves
    way_x, way_y = line.end.x - line.start.x, line.end.y - line.start.y
    assert abs(way_x) == pytest.approx(abs(way_y)), "the seam lies at 45 degrees"
    # Turned over along the seam: mirrored about the 45 degree line through its start, (x, y) becomes (c - y, c - x).
    c = line.start.x + line.start.y
    opened = affinity.affine_transform(over, [0, -1, -1, 0, c, c])
    low, high = 0.0, strip.width
    for shape, name in ((under, "under"), (opened, "over")):
        inside = shape.bounds
        assert inside[1] == pytest.approx(low, abs=0.01) and inside[3] == pytest.approx(high, abs=0.01), name
    assert opened.bounds[2] > under.bounds[2], "it goes on beyond the first"


def test_points_stand_out_and_long_edges_cross_on_the_row():
    strip = _strip()
    under, over, row = _shapes("bias", strip)
    (line,) = row.curves
    for end in (line.start, line.end):
        crossing = Polygon([(end.x - 0.01, end.y - 0.01), (end.x + 0.01, end.y - 0.01), (end.x, end.y + 0.01)])
        assert under.exterior.intersects(crossing) and over.exterior.intersects(crossing)
    assert under.difference(over).area > 0 and over.difference(under).area > 0


def test_a_long_strip_is_broken_and_a_short_one_is_whole():
    def broken(strip: Strip) -> bool:
        items, box = strip_alone(strip, StripShape())
        assert box[2] - box[0] < strip.width * (LONGEST + 4)
        return any(getattr(item, "name", "") == BREAK for item in items)

    assert broken(_strip(length=1335.0, width=48.0, fold="in_four"))
    assert not broken(_strip(length=48.0 * LONGEST, finished_length=400.0, width=48.0, fold="in_four"))
