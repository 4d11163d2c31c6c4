"""How far round garments are at the levels of the body, against the ease the blocks state, against another library's
cuts of the same outlines, and against figures worked by hand."""

from __future__ import annotations

import pytest
from shapely import LineString, Polygon

from kit.blocks.skirt import HIP_EASE
from kit.body.chart import workshop_chart
from kit.body.make import make_body
from kit.sewing.order import sew
from kit.wear.fit import levels_worn, waist_edge
from kit.wear.girth import Worn
from kit.wear.levels import body_heights
from tests.wear.garments import lesson_of


def put_on(base: str, size: str = "W4", changes=()) -> Worn:
    pattern = lesson_of(base, changes).work(workshop_chart()[size])
    return Worn(pattern, sew(pattern)[0])


@pytest.mark.parametrize("size", workshop_chart().names)
def test_a_skirt_measures_the_hip_and_its_ease_and_the_waist_of_its_band(size: str) -> None:
    worn = put_on("dune_skirt", size)
    body = workshop_chart()[size]
    found = dict(levels_worn(worn))
    assert found["hip"] == pytest.approx(body["hip_girth"] + HIP_EASE, abs=0.5)
    assert found["waist"] == pytest.approx(dict(worn.pattern.finished)["Waist, buttoned"], abs=0.5)
    assert set(found) == {"hip", "waist"}


@pytest.mark.parametrize("base", ["dune_skirt", "tunic", "shift", "trousers", "blouse"])
def test_every_height_agrees_with_another_library(base: str) -> None:
    """shapely cuts the same outlines, darts taken out (`kit.piece.double_dart` of dresses as polygons)."""
    worn = put_on(base)
    low, high = worn.span
    checked = 0
    for step in range(1, 40):
        height = low + (high - low) * step / 40
        at = worn.cut(height)
        if at is None or not at.closed:
            continue
        total = 0.0
        for piece in worn.torso:
            for side in piece.sides:
                outline = worn.outline(piece, side)
                shape = Polygon([(p.x, p.y) for _, points in outline.edges for p in points[:-1]])
                for part in outline.taken:
                    shape = shape.difference(Polygon([(p.x, p.y) for p in part]).buffer(0))
                y = height - worn.hung.up[piece.name]
                total += LineString([(-4000, y), (4000, y)]).intersection(shape).length
        assert at.cloth == pytest.approx(total, abs=0.5), height
        checked += 1
    assert checked > 10


def test_what_a_wrap_lays_double_is_taken_off() -> None:
    """At the waist each front of the wrap top passes the centre by 153 mm: 70 % of a far half of 219."""
    worn = put_on("tideline_wrap_top")
    at = worn.round(-1.0)
    assert at.closed
    assert at.overlap == pytest.approx(2 * 0.7 * 218.75, abs=0.5)
    assert at.girth == pytest.approx(4 * 218.75, abs=1.5)


def test_below_a_hem_that_rises_no_wrap_is_a_ring() -> None:
    """The hem of the wrap top lies 18 mm lower at the centre than at the sides: from there down the strip that passes
    the centre is no girth of the garment, at its lowest end neither (a body whose hip lies there, from the survey that
    tests/body/survey.py names). Above it the hem is as wide as the chart of finished sizes says, within what the side
    tapers on those 18 mm."""
    measures = {"bust_girth": "114.7 cm", "waist_girth": "113.9 cm", "hip_girth": "116.8 cm", "waist_to_hip": "13.8 cm"}
    pattern = lesson_of("tideline_wrap_top", ()).work(make_body(measures, name="straight"))
    worn = Worn(pattern, sew(pattern)[0])
    low, _ = worn.span
    assert not any(worn.round(low + up).closed for up in range(17))
    hem = worn.round(low + 19.0)
    assert hem.closed and hem.girth == pytest.approx(dict(pattern.finished)["Hem, all round when wrapped"], abs=10)


def test_the_bust_is_measured_at_the_bust_line_and_not_where_the_sleeve_begins() -> None:
    """The lesson's own figure is taken where the underarm curve ends, 9 cm below; the block has 10 cm of ease."""
    worn = put_on("tideline_wrap_top")
    body = workshop_chart()["W4"]
    assert dict(levels_worn(worn))["bust"] == pytest.approx(body["bust_girth"] + 100.0, abs=1.0)
    assert dict(worn.pattern.finished)["Chest, all round under the arms"] < body["bust_girth"] + 40.0


def test_darts_of_a_dress_are_shut_at_the_waist() -> None:
    """Four darts of 30 mm."""
    loose, taken_in = (
        dict(levels_worn(put_on("shift", changes=(('intake", 3 * cm', f'intake", {cm} * cm'),))))["waist"]
        for cm in (1, 3)
    )
    assert loose - taken_in == pytest.approx(4 * 20.0, abs=0.5)


def test_an_apron_is_no_ring_and_a_bag_is_on_no_body() -> None:
    assert list(levels_worn(put_on("apron"))) == []
    assert put_on("ferry_tote").hung is None


def test_elastic_and_bands_are_what_the_waist_measures() -> None:
    assert waist_edge(put_on("full_skirt")) == pytest.approx(660.0)
    assert waist_edge(put_on("tunic")) is None


def test_pieces_that_say_nothing_hang_by_their_seams() -> None:
    """A skirt drawn with its own zero, whose back has no line: it hangs as high as the front it is sewn to."""
    changes = (
        (
            "    back.trace(front)\n",
            "    back.draw(**{n: front.edge(n) for n in ()}) if False else back.trace(front)\n"
            '    back.role(waist_line="")\n',
        ),
    )
    worn = put_on("full_skirt", changes=changes)
    assert worn.hung.up["back"] == pytest.approx(worn.hung.up["front"])


def test_the_levels_of_a_body_lie_in_order() -> None:
    for body in workshop_chart().bodies():
        heights = body_heights(body)
        order = [heights[level] for level in ("bust", "under_bust", "waist", "hip", "thigh", "knee")]
        assert order == sorted(order, reverse=True)


def test_an_opening_squared_down_too_near_the_body_cuts_into_it() -> None:
    """The overarm of a sleeve of 5 cm ends about (230, 383); 171 mm square to it lies the lower end of the opening,
    about (175, 221). From there the underarm curve runs to the side, inside the bust line's end at 250: round the bust
    of 90 cm there are less than 4 times 22."""
    change = ('lesson.length("sleeve_length", 26 * cm', 'lesson.length("sleeve_length", 5 * cm')
    # As it would be squared down without the bend that keeps a short sleeve clear of the side.
    straight = ('(depth, "down", clear_of=front.side, by=room)', '(depth, "down")')
    sharp = (", least_radius=underarm_round, at_most=lowest", "")
    worn = put_on("tideline_wrap_top", changes=(change, straight, sharp))
    found = dict(levels_worn(worn))
    assert 4 * 200.0 < found["bust"] < 4 * 220.0
    assert found["waist"] == pytest.approx(4 * 218.75, abs=1.5)
