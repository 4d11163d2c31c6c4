"""The placer: what it reckons is held to shapely, what it chooses to what a reader needs."""

from __future__ import annotations

import heapq
import math
import random
from functools import partial
from itertools import chain, combinations, pairwise
from typing import Any

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st
from shapely import affinity

from kit.geometry import Line, Point
from kit.picture.drawing import Area, Dimension, Drawing, Fill, Label, Stroke
from kit.picture.drawn_lines import DrawnLines, inside_span
from kit.picture.free_places import Around
from kit.picture.in_the_way import SeenCloth
from kit.picture.lettered import lettered
from kit.picture.place import rectangle
from kit.picture.placing import TextPlace, WaitingText, arrange
from kit.picture.standing import (
    NUMBERED,
    WalkedLine,
    along_line,
    as_number,
    at_dimension,
    in_margin,
    near_first,
    round_point,
    round_window,
    within,
)
from tests.picture.label_rules import broken, finished

number = st.floats(-40, 40)
spots = st.lists(st.tuples(number, number), min_size=2, max_size=7)
boxes = st.tuples(
    number, number, st.floats(0.5, 40), st.floats(0.5, 12), st.sampled_from([0.0, 0.3, math.pi / 2, -1.1])
)


def turned(box: Any) -> Any:
    x, y, wide, high, angle = box
    flat = shapely.box(-wide / 2, -high / 2, wide / 2, high / 2)
    return affinity.translate(affinity.rotate(flat, angle, (0, 0), use_radians=True), x, y)


@given(spots, boxes, st.floats(2, 20))
def test_length_of_lines_under_a_box(points: Any, box: Any, cell: float) -> None:
    """Reference: shapely."""
    lines = DrawnLines(cell)
    lines.add(points, 1.5)
    wanted = sum(shapely.LineString(two).intersection(turned(box)).length for two in pairwise(points))
    assert lines.under(*box) == pytest.approx(1.5 * wanted, abs=1e-5)
    assert lines.under(*box, owner=-1) == 0.0


@given(spots, boxes, st.floats(2, 20))
def test_what_is_quickly_known_of_lines_under_a_box(points: Any, box: Any, cell: float) -> None:
    """The least and the most stand on either side of what lies there."""
    lines = DrawnLines(cell, worth=0)
    lines.add(points, 1.5)
    least, most = lines.between(*box)
    assert least - 1e-6 <= lines.under(*box) <= most + 1e-6
    assert lines.between(*box, owner=-1)[0] == pytest.approx(0.0, abs=1e-6)


@given(st.lists(st.tuples(number, number), min_size=3, max_size=9, unique=True), boxes)
def test_how_much_of_a_box_is_cloth(points: Any, box: Any) -> None:
    """Reference: shapely, to a cell of the grid round the cloth's edge."""
    area = shapely.Polygon(points)
    if not area.is_valid or area.area < 1.0:
        return
    curves = tuple(Line(Point(*a), Point(*b)) for a, b in pairwise([*points, points[0]]))
    cloth = SeenCloth(Drawing((Fill(curves, "right_side"),)), 0.5)
    x0, y0, x1, y1 = turned(box).bounds
    level = shapely.box(x0, y0, x1, y1)
    least = area.buffer(-1.2 * cloth.cell).intersection(level.buffer(-0.1 * cloth.cell)).area
    most = area.buffer(1.2 * cloth.cell).intersection(level.buffer(1.2 * cloth.cell)).area
    share = cloth.share(box) * level.area
    assert min(least, level.area) - 1e-6 <= share <= most + 1e-6


@given(spots, boxes, boxes)
def test_lines_under_paper_are_in_nobodys_way(points: Any, box: Any, paper: Any) -> None:
    """Reference: shapely."""
    flat = (paper[0], paper[1], paper[0] + paper[2], paper[1] + paper[3])
    lines = DrawnLines(7.0)
    lines.add(points, 1.0, covers=[flat])
    left = [shapely.LineString(two).difference(shapely.box(*flat)) for two in pairwise(points)]
    assert lines.under(*box) == pytest.approx(sum(p.intersection(turned(box)).length for p in left), abs=1e-5)


@given(st.tuples(number, number, number, number), st.tuples(number, number, st.floats(0.1, 30), st.floats(0.1, 30)))
def test_the_stretch_inside_a_box(line: Any, box: Any) -> None:
    x0, y0, wide, high = box
    t0, t1 = inside_span(*line, x0, y0, x0 + wide, y0 + high)
    inside = shapely.LineString([line[:2], line[2:]]).intersection(shapely.box(x0, y0, x0 + wide, y0 + high))
    assert (t1 - t0) * math.dist(line[:2], line[2:]) == pytest.approx(inside.length, abs=1e-6)


@given(st.lists(st.tuples(number, number), min_size=3, max_size=9, unique=True), number, number)
def test_inside_an_outline(points: Any, x: float, y: float) -> None:
    """Reference: shapely, where the outline does not cross itself."""
    area = shapely.Polygon(points)
    if area.is_valid and area.boundary.distance(shapely.Point(x, y)) > 1e-6:
        assert within(points, x, y) == area.contains(shapely.Point(x, y))


def test_of_two_texts_the_one_without_choice_gets_the_place() -> None:
    free = TextPlace(0, 0, 20, 4, 0, 0.0)
    only = WaitingText(lambda: (free,), 4.0)
    easy = WaitingText(lambda: (free, TextPlace(0, 6, 20, 4, 0, 0.5)), 4.0)
    for waiting in ([only, easy], [easy, only]):
        found = arrange(waiting, DrawnLines(8.0))
        assert sum(cost for _, cost in found) == 0.5


def test_two_texts_move_together_where_one_alone_cannot() -> None:
    """Three places in a row; the middle one is dear for the second, so that both must give way at once."""
    lines = DrawnLines(8.0)
    lines.add(((-5.0, 8.0), (5.0, 8.0)), 1.0)
    a = WaitingText(
        lambda: (TextPlace(0, 0, 20, 4, 0, 0.0), TextPlace(0, 4.5, 20, 4, 0, 1.0), TextPlace(0, 20, 20, 4, 0, 3.0)), 4.0
    )
    b = WaitingText(lambda: (TextPlace(0, 1, 20, 4, 0, 0.0), TextPlace(0, 5.0, 20, 4, 0, 1.0)), 4.0)
    (one, _), (two, _) = arrange([a, b], lines)
    assert abs(one.y - two.y) >= 4.0


def crowd(seed: int) -> Drawing:
    """A square with names on its sides and corners, points inside it and measures beside it."""
    draw = random.Random(seed)
    items: list[Any] = [Stroke(rectangle(0, 0, 200, 150), "kept", closed=True)]
    for n in range(6):
        at = Point(draw.uniform(10, 190), draw.uniform(10, 140))
        items.append(Label(f"point {n}", at + (Point(0, 4) - Point(0, 0)), "small", of=at))
    for n, curve in enumerate(rectangle(0, 0, 200, 150)):
        items.append(Stroke((curve,), "new"))
        items.append(Label(f"side number {n}", Point(100, 75), "new", of=(curve,)))
        items.append(Dimension(curve.start, curve.end, f"long side {n} 20 cm", -8.0))
    items.append(Label("The piece itself", Point(100, 75), "ghost", of=Area(rectangle(0, 0, 200, 150))))
    return Drawing(tuple(items))


@pytest.mark.parametrize("seed", range(8))
def test_a_crowded_square_breaks_no_rule(seed: int) -> None:
    assert not broken(finished("crowd", crowd(seed), 420.0, None), 8.0)


def test_the_same_picture_gets_the_same_places() -> None:
    one, two = (lettered(crowd(3), 420.0).texts for _ in range(2))
    assert one == two


def test_names_without_room_become_numbers_with_a_list() -> None:
    """A comb of lines so close that no name fits between them, in a picture without margins to speak of."""
    items: list[Any] = [Stroke((Line(Point(x, 0), Point(x, 300)),), "new") for x in range(0, 301, 10)]
    items += [
        Label(f"line {x}, as it is called", Point(x, 150), "new", of=items[x // 10].curves) for x in range(0, 301, 10)
    ]
    picture = finished("comb", Drawing(tuple(items)), 300.0, None)
    told = [text for text in picture.texts if text.note]
    assert told
    keys = [text.text for text in told if len(text.text) <= 2]
    assert all(keys.count(key) == 2 for key in keys)  # once in the picture, once in the list
    for a, b in combinations(picture.texts, 2):
        assert a.box.intersection(b.box).area <= 0.02 * min(a.box.area, b.box.area), (a.text, b.text)


def test_no_text_lies_on_cloth_where_paper_is_free() -> None:
    cloth = rectangle(0, 0, 100, 60)
    names = [Label(f"layer {n}", Point(50, 30), "name", of=Area(cloth)) for n in range(3)]
    drawing = Drawing(
        (Fill(cloth, "right_side"), Stroke(cloth, "edge", closed=True), *names), bounds=(-80, -40, 180, 100)
    )
    assert not broken(finished("cloth", drawing, 400.0, None), 8.0)


def test_leaders_run_level_upright_or_at_45_degrees() -> None:
    way = WalkedLine(((0.0, 0.0), (30.0, 10.0)))
    every = [
        *along_line(way, (40, 5), 5.0),
        *round_point((3, 4), (40, 5), 5.0),
        *at_dimension(way, (40, 5), 5.0, 2.0, 1.0),
    ]
    every += in_margin((3, 4), (40, 5), 5.0, (-60, -60, 60, 60))
    led = [place for place in every if place.leader]
    assert len(led) > 50
    for place in led:
        for (ax, ay), (bx, by) in pairwise(place.leader):
            assert min(abs(bx - ax), abs(by - ay), abs(abs(bx - ax) - abs(by - ay))) < 1e-6


def test_places_come_cheapest_first() -> None:
    way = WalkedLine(((0.0, 0.0), (30.0, 10.0), (50.0, -8.0)))
    for places in (
        along_line(way, (40, 5), 5.0, (0.0, 1.0)),
        round_point((3, 4), (40, 5), 5.0, (1.0, 0.0)),
        at_dimension(way, (40, 5), 5.0, 2.0, 1.0),
        in_margin((3, 4), (40, 5), 5.0, (-60, -60, 60, 60)),
    ):
        costs = [place.cost for place in places]
        assert costs == sorted(costs)


@given(st.lists(st.integers(0, 6), max_size=8), st.lists(st.lists(st.integers(0, 6), max_size=6), max_size=3))
def test_ways_to_places_are_joined_as_the_library_merges(near: list[int], later: list[list[int]]) -> None:
    """By rising cost, and of those that cost alike the ones of an earlier way first (heapq.merge)."""

    def places(way: int, costs: list[int]) -> list[TextPlace]:
        return [TextPlace(way, at, 4.0, 2.0, 0.0, float(cost)) for at, cost in enumerate(sorted(costs))]

    ways = [places(way, costs) for way, costs in enumerate([near, *later])]
    found = near_first(ways[0], 3.0, *(partial(iter, way) for way in ways[1:]))
    first = [place for place in ways[0] if place.cost <= 3.0]
    rest = [place for place in ways[0] if place.cost > 3.0]
    assert list(found) == [*first, *heapq.merge(rest, *ways[1:], key=lambda place: place.cost)]


def test_places_asked_for_one_after_another_are_the_best() -> None:
    """Drawn at random, from free paper to lines everywhere, with numbers as the last resort: in the order of what they
    cost, and none is left out that costs less, but of two that cost alike either may be the last."""
    chance = random.Random(5)
    resorts = 0
    for case in range(60):
        lines = DrawnLines(8.0, worth=chance.choice([0, 40, 10_000]))
        for _ in range(chance.choice([1, 6, 40])):
            lines.add([(chance.uniform(-60, 60), chance.uniform(-60, 60)) for _ in range(3)], chance.uniform(0.2, 2.0))
        spot, em = (chance.uniform(-20, 20), chance.uniform(-20, 20)), 5.0
        size, sign = (chance.uniform(10, 50), 6.0), (6.5, 6.5)
        cloth = (lambda box: 0.5 if box[0] > 0 else 0.0) if case % 3 else None
        around = Around(lines, (-70.0, -50.0, 60.0, 70.0), [(5.0, 5.0, 20.0, 6.0, 0.0)], cloth)

        def places(spot: Any = spot, size: Any = size, sign: Any = sign) -> Any:
            return chain(round_point(spot, size, 5.0), as_number(round_point(spot, sign, 5.0), 3.0))

        text = WaitingText(places, em, rising=NUMBERED)
        for most in (1, 4, 8, 40):
            wanted, found = around.best(text, most), list(around.one_after_another(text, most))
            assert [cost for cost, _ in found] == [cost for cost, _ in wanted] == sorted(cost for cost, _ in wanted)
            assert [one for one in found if one[0] < wanted[-1][0]] == [one for one in wanted if one[0] < wanted[-1][0]]
            resorts += any(place.form for _, place in found)
    assert resorts > 20


@pytest.mark.parametrize("spot", [(96.0, 55.0), (50.0, 30.0), (97.0, 4.0), (4.0, 4.0)])
def test_no_leader_runs_past_a_window_where_plan_or_section_stands(spot: tuple[float, float]) -> None:
    """A plan stands at the right of the window, a cross-section below it: names stand at the left and above, and no
    part of their leaders lies at the right or below."""
    window, drawn = (0.0, 0.0, 100.0, 60.0), (0.0, -40.0, 180.0, 60.0)
    places = list(round_window([(spot, 0.0)] * 4, (30.0, 8.0), 6.0, window, drawn))
    assert len(places) > 5
    for place in places:
        assert all(x <= window[2] and y >= window[1] for x, y in place.leader)
    free = list(round_window([(spot, 0.0)] * 4, (30.0, 8.0), 6.0, window, window))
    assert len(free) > len(places)
