"""Lines of sizes that bunch: the order told beside them is that in which its leader crosses them."""

from __future__ import annotations

import itertools
import math

import pytest
import shapely

from kit.geometry import Line, Point
from kit.paper.bunched import NEAR, Orders, bunched, orders
from kit.paper.nested import Nest, nest
from kit.paper.pdf_pen import label_size
from kit.paper.shared_lines import SharedPart
from kit.picture.drawing import Label, Stroke
from tests.example import EXAMPLE, notebook_names

PAPER = shapely.box(-20, -40, 220, 40)
NAMES = tuple(f"W{i}" for i in range(1, 7))
PLACES = tuple(range(1, 7))


def parts(*lines: Line) -> list[SharedPart]:
    return [SharedPart((i,), (Stroke((line,), "cut"),)) for i, line in enumerate(lines)]


def level(at: float, begin: float = 0.0, end: float = 100.0) -> Line:
    return Line(Point(begin, at), Point(end, at))


def said(found: Orders) -> list[str]:
    return [item.text for part in found.parts for item in part.items if isinstance(item, Label)]


def crossed(leader: Stroke, drawn: list[SharedPart] | tuple[SharedPart, ...]) -> list[tuple[float, int]]:
    """The sizes of the cut lines a leader crosses, each with how far from its beginning."""
    (way,) = leader.curves
    ray = shapely.LineString([(way.start.x, way.start.y), (way.end.x, way.end.y)])
    met = []
    for part in drawn:
        for item in part.items:
            if isinstance(item, Stroke) and item.role == "cut":
                line = shapely.LineString([(p.x, p.y) for curve in item.curves for p in curve.points(0.05)])
                met += [
                    (ray.project(point), size)
                    for point in shapely.get_parts(ray.intersection(line))
                    if not point.is_empty
                    for size in part.sizes
                ]
    return sorted(met)


def read(text: str) -> list[int]:
    """The places of the sizes that an order names."""
    found: list[int] = []
    for run in text.split(", "):
        first, _, last = run.partition(" to ")
        one, two = int(first[1:]) - 1, int((last or first)[1:]) - 1
        found += range(one, two + 1) if one <= two else range(one, two - 1, -1)
    return found


def test_lines_that_lie_apart_and_lines_that_cross_are_no_bunch() -> None:
    apart = parts(level(0), level(NEAR + 0.1), level(2 * NEAR + 0.2))
    steep = parts(level(0), Line(Point(40, -10), Point(60, 10)))
    short = parts(level(0, 0, 15), level(0.5, 0, 15))
    for drawn in (apart, steep, short):
        assert orders(bunched(drawn, len(drawn)), NAMES[: len(drawn)], PLACES[: len(drawn)], PAPER, ()) == Orders()
    assert orders(bunched(parts(level(0), level(0.5)), 2), NAMES[:2], PLACES[:2], PAPER, ()).share == 1.0


def test_an_order_is_told_once_for_a_short_bunch_and_oftener_for_a_long_one() -> None:
    for long, times in ((100.0, 1), (200.0, 1), (400.0, 3)):
        drawn = parts(*(level(0.6 * i, 0, long) for i in range(4)))
        paper = shapely.box(0, -40, long, 40)
        assert len(orders(bunched(drawn, 4), NAMES[:4], PLACES[:4], paper, ()).parts) == times, long


def test_runs_up_and_down_the_chart_are_drawn_together() -> None:
    """The words stand above, on the only paper: lines are named from the top down."""
    heights = {0: 0.0, 1: 1.0, 2: 2.0, 5: -1.0, 4: -2.0, 3: -3.0}
    drawn = parts(*(level(heights[i]) for i in range(6)))
    (told,) = said(orders(bunched(drawn, 6), NAMES, PLACES, shapely.box(0, -3.5, 100, 40), ()))
    assert told == "W3 to W1, W6 to W4"


def test_lines_within_a_pens_width_go_by_the_chart() -> None:
    drawn = parts(level(0.0), level(0.1), level(-0.1), level(-1.2))
    (told,) = said(orders(bunched(drawn, 4), NAMES[:4], PLACES[:4], shapely.box(0, -2, 100, 40), ()))
    assert told == "W1 to W4"


def test_words_keep_clear_of_words_and_stay_on_the_paper() -> None:
    drawn = parts(level(0), level(0.8))
    there = Label("a note that stands above all of it already, quite long", Point(50, 5), "new", 0.0, 6.0)
    (found,) = orders(bunched(drawn, 2), NAMES[:2], PLACES[:2], shapely.box(0, -30, 100, 30), [there]).parts
    (label,) = [item for item in found.items if isinstance(item, Label)]
    wide, high = label_size(there)
    assert label.at.y < 0 or label.at.y > 5 + high / 2 or abs(label.at.x - 50) > wide / 2
    assert orders(bunched(drawn, 2), NAMES[:2], PLACES[:2], shapely.box(0, -1, 100, 1.5), ()).parts == ()


@pytest.fixture(scope="module")
def made() -> Nest:
    lesson = notebook_names(EXAMPLE)["lesson"]
    names = lesson.sizes.names
    return nest([lesson.work(body=lesson.sizes[size], values={}) for size in names], names)


def test_every_order_of_the_example_is_that_of_its_lines(made: Nest) -> None:
    checked = 0
    for each in made.pieces:
        paper = shapely.union_all([area for area in each.areas if area is not None]).buffer(0.5)
        boxes = []
        for part in each.orders:
            leader, label = part.items
            assert isinstance(leader, Stroke) and isinstance(label, Label)
            met = crossed(leader, each.parts)
            told = read(label.text)
            assert sorted(told) == sorted(size for _, size in met) and set(told) == set(part.sizes), label.text
            where = dict((size, at) for at, size in met)
            assert all(where[b] > where[a] - 0.45 for a, b in itertools.pairwise(told)), label.text
            (way,) = leader.curves
            assert way.start.distance(label.at) < 4.0  # its words stand at its beginning
            wide, high = label_size(label)
            room = shapely.affinity.rotate(
                shapely.box(-wide / 2, -high / 2, wide / 2, high / 2), math.degrees(label.angle), origin=(0, 0)
            )
            room = shapely.affinity.translate(room, label.at.x, label.at.y)
            assert paper.covers(room) and not any(room.intersects(other) for other in boxes)
            boxes.append(room)
            checked += 1
    assert checked >= 10
    facing = next(each for each in made.pieces if each.piece.name == "back_facing")
    assert facing.thin and facing.orders


def test_a_lengthen_line_serves_all_sizes(made: Nest) -> None:
    """On paper one line lies where ten would blacken it; in each size it stands between the same two levels."""
    for each in made.pieces:
        if each.piece.name not in ("front", "back"):
            continue
        heights = {
            round((curve.start.y + curve.end.y) / 2, 1)
            for part in each.parts
            for item in part.items
            if isinstance(item, Stroke) and item.role == "lengthen"
            for curve in item.curves
        }
        counts = {len(piece.lengthen or ()) for piece in each.pieces if piece is not None}
        assert counts == {len(heights) // 2} and len(heights) in (2, 4), heights
