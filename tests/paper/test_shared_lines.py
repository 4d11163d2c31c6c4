"""What several sizes draw alike is drawn once, and the parts of one size are that size's drawing."""

from __future__ import annotations

import math

import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.geometry import Line, Point
from kit.paper.shared_lines import shared
from kit.picture.drawing import Dot, Label, Stroke


def line(*corners: tuple[float, float], closed: bool = False, role: str = "cut") -> Stroke:
    points = [Point(*corner) for corner in corners]
    after = [*points[1:], points[0]] if closed else points[1:]
    return Stroke(tuple(Line(a, b) for a, b in zip(points, after, strict=False)), role, closed=closed)  # type: ignore[arg-type]


def drawn(strokes: list[Stroke]) -> shapely.Geometry:
    return shapely.union_all(
        [
            shapely.LineString([(curve.start.x, curve.start.y), (curve.end.x, curve.end.y)])
            for stroke in strokes
            for curve in stroke.curves
        ]
    )


SPANS = st.lists(st.tuples(st.integers(0, 9), st.integers(10, 20)), min_size=2, max_size=5)


@given(SPANS, st.floats(0, math.pi))
@settings(max_examples=60)
def test_the_parts_of_a_size_are_its_drawing_and_nothing_is_drawn_twice(
    spans: list[tuple[int, int]], angle: float
) -> None:
    cos, sin = math.cos(angle), math.sin(angle)
    # Every other one is drawn from the far end: there and back is one line.
    sizes = [
        [line(*[(30 * at * cos, 30 * at * sin) for at in (span if number % 2 else span[::-1])])]
        for number, span in enumerate(spans)
    ]
    parts = shared(sizes)
    for size, items in enumerate(sizes):
        own = [item for part in parts if size in part.sizes for item in part.items if isinstance(item, Stroke)]
        assert drawn(own).hausdorff_distance(drawn(items)) < 0.05
    lengths = sum(curve.length for part in parts for item in part.items for curve in item.curves)  # type: ignore[union-attr]
    first, last = min(start for start, _ in spans), max(end for _, end in spans)
    assert math.isclose(lengths, 30 * (last - first), abs_tol=0.1), "all spans overlap in 9 to 10"
    counts = [len(part.sizes) for part in parts]
    assert counts == sorted(counts, reverse=True)


def test_a_side_that_does_not_change_is_shared_and_the_others_are_not() -> None:
    small = line((0, 0), (100, 0), (100, 200), (0, 200), closed=True)
    large = line((0, 0), (100, 0), (120, 200), (0, 200), closed=True)
    found = {part.sizes: part.items for part in shared([[small], [large]])}
    assert set(found) == {(0, 1), (0,), (1,)}
    both = found[0, 1]
    assert drawn(list(both)).equals(  # type: ignore[arg-type]
        shapely.union_all(
            [shapely.LineString([(0, 200), (0, 0), (100, 0)]), shapely.LineString([(0, 200), (100, 200)])]
        )
    )
    assert drawn(list(found[1,])).length > 200  # type: ignore[arg-type]


def test_equal_outlines_stay_closed_and_other_roles_are_kept_apart() -> None:
    outline = line((0, 0), (100, 0), (100, 200), closed=True)
    (part,) = shared([[outline], [outline], [outline]])
    assert part.sizes == (0, 1, 2) and part.items == (outline,)
    fold = line((0, 0), (0, 200), role="fold")
    grain = line((0, 0), (0, 200), role="grain")
    assert {part.sizes for part in shared([[fold], [grain]])} == {(0,), (1,)}


def test_text_and_points_once() -> None:
    said = [Label("Front", Point(0, float(size))) for size in range(3)]
    dots = [Dot(Point(5.0, 0.001 * size)) for size in range(3)]
    (part,) = shared([[label, dot] for label, dot in zip(said, dots, strict=True)])
    assert part.items == (dots[0], said[1]), "words from the middle size"
