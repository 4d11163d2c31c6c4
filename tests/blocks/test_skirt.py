"""The skirt block: the paper with its darts closed measures the body plus the stated ease, for published charts."""

from __future__ import annotations

import itertools
import math

import pytest

from kit import Lesson
from kit.blocks.darted_waist import LEAST_DART, MOST_DART
from kit.blocks.skirt import HIP_EASE, WAIST_EASE, skirt_block
from kit.body import Body, make_body, workshop_chart
from kit.errors import KitError
from kit.geometry import Path, Vector
from kit.lesson.bench import BenchPiece
from kit.live.canvas.handles import handles
from kit.picture.step_pictures import player_pictures
from kit.piece.dart import closed_edge, intake, legs, sewn_length
from kit.proof.darts import darts as proved
from kit.units import Length, cm, show
from tests.body.bdims import some_women
from tests.body.published import bodies


def turn(a: Vector, b: Vector) -> float:
    """Degrees between two directions."""
    return math.degrees(abs(math.atan2(a.cross(b), a.dot(b))))


def bends(path: Path) -> list[float]:
    """Degrees turned at each joint inside a path."""
    return [turn(a.tangent(1.0), b.tangent(0.0)) for a, b in zip(path.curves, path.curves[1:], strict=False)]


@pytest.mark.parametrize("body", bodies())
def test_sound_for_every_published_size(body: Body) -> None:
    front, back = skirt_block(body)
    assert (front.name, back.name) == ("front", "back")
    waist = 2 * (sewn_length(front, "waist") + sewn_length(back, "waist"))
    assert waist == pytest.approx(body["waist_girth"] + WAIST_EASE, abs=0.5)
    closed = 2 * sum(closed_edge(piece, "waist").length for piece in (front, back))
    assert closed == pytest.approx(body["waist_girth"] + WAIST_EASE, abs=0.5)
    hip = 2 * sum(dict(piece.guides)["hip_line"].length for piece in (front, back))
    assert hip == pytest.approx(body["hip_girth"] + HIP_EASE, abs=0.5)
    assert front.edge("side").path.length == pytest.approx(back.edge("side").path.length, abs=0.01)
    for piece in (front, back):
        assert [edge.name for edge in piece.edges] == ["hem", "centre", "waist", "side"]
        assert piece.outline.self_crossing() is None
        assert piece.darts and proved((piece,)) == []
        points, guides = dict(piece.points), dict(piece.guides)
        for dart in piece.darts:
            one, two = legs(piece, dart)
            assert one.length == pytest.approx(two.length, abs=0.01)
            assert LEAST_DART - 0.01 <= intake(piece, dart) <= MOST_DART + 0.01
            assert dart.apex.y > points["centre_hip"].y + 20
        assert all(angle < 0.1 for angle in bends(closed_edge(piece, "waist")))
        path = {edge.name: edge.path for edge in piece.edges}
        assert all(angle < 0.1 for angle in bends(path["side"]))
        order = ("hem", "centre", "waist", "side", "hem")
        for a, b in itertools.pairwise(order):
            assert turn(path[a].end_tangent, path[b].start_tangent) == pytest.approx(90, abs=0.1), (a, b)
        # The hip line lies from the centre line to the side seam, as far below the front waist as on the body.
        assert path["side"].distance_to(guides["hip_line"].end) < 0.01
        assert guides["hip_line"].start.y == pytest.approx(-body["waist_to_hip"])
        assert guides["hip_line"].start.x == 0
    assert dict(front.points)["centre_waist"].y == pytest.approx(0)
    assert -25 < dict(back.points)["centre_waist"].y <= 0.01


@pytest.mark.parametrize("others", [False, pytest.param(True, marks=pytest.mark.slow)])
def test_bdims_women(others: bool) -> None:
    """At least 95 in 100 of the women of `bdims` (openintro; Heinz and others 2003) are drafted, the rest told why."""
    everyone = some_women(others)
    drafted = 0
    for i, row in enumerate(everyone):
        try:
            skirt_block(make_body(row, name=f"bdims {i}"))
            drafted += 1
        except KitError as error:
            assert error.do
    assert drafted >= 0.95 * len(everyone)


def test_the_block_is_a_lesson() -> None:
    pattern = skirt_block.lesson.work(workshop_chart()["W4"])
    assert [step.title for step in pattern.steps] == [
        "Rule the frame",
        "Draw the side seams",
        "Draw the waist and its darts",
    ]
    assert all(step.text for step in pattern.steps)
    assert "{waist_to_hip}" in pattern.steps[0].text
    for worked, piece in zip(pattern.pieces, skirt_block(workshop_chart()["W4"]), strict=True):
        assert worked.edges == piece.edges and worked.darts == piece.darts


def test_rounder_hip_gets_more_darts() -> None:
    """A body with little between waist and hip needs one dart a piece or none; a rounder one gets two."""
    values = {m.name: Length(m.value) for m in workshop_chart()["W4"].measures}
    counts = []
    for waist in (930.0, 860.0, 640.0):
        front, back = skirt_block(make_body({**values, "waist_girth": Length(waist)}, name="odd"))
        counts.append((len(front.darts), len(back.darts)))
        sewn = 2 * (sewn_length(front, "waist") + sewn_length(back, "waist"))
        assert sewn == pytest.approx(waist + WAIST_EASE, abs=0.5)
    assert counts == [(0, 1), (1, 1), (2, 2)]


def test_impossible_body_is_told_the_measurements() -> None:
    values = {m.name: Length(m.value) for m in workshop_chart()["W4"].measures}
    with pytest.raises(KitError) as caught:
        skirt_block(make_body({**values, "waist_girth": Length(420.0)}, name="odd"))
    assert "waist girth" in str(caught.value) and "hip girth" in str(caught.value)


def test_a_waist_larger_than_the_hip_hangs_straight_and_needs_no_dart() -> None:
    """A quarter of the waist with its ease of 2 cm, all the way down: (110 + 2) / 4 = 28 cm."""
    values = {m.name: Length(m.value) for m in workshop_chart()["W4"].measures}
    for piece in skirt_block(make_body({**values, "waist_girth": Length(1100.0)}, name="round")):
        # Whether a lesson was written for one dart or for two: none of its darts is missed.
        assert not piece.darts and piece.spared == ("waist_dart", "waist_dart_1", "waist_dart_2")
        assert piece.edge("waist").path.length == pytest.approx(280.0, abs=0.5)
        assert piece.edge("hem").path.length == pytest.approx(280.0, abs=0.5)


def test_a_lesson_for_two_darts_shapes_the_only_one_of_another_figure() -> None:
    values = {m.name: Length(m.value) for m in workshop_chart()["W4"].measures}
    front, _ = skirt_block(make_body({**values, "waist_girth": Length(860.0)}, name="straighter"))
    (drawn,) = front.darts
    bench = BenchPiece(front)
    bench.shorten_dart("waist_dart_1", 1 * cm)
    bench.shorten_dart("waist_dart_2", 1 * cm)
    (dart,) = bench.freeze().darts
    assert dart.name == "waist_dart" and dart.short == drawn.short + 10.0
    with pytest.raises(KitError, match="no dart 'waist_dart_3'"):
        bench.shorten_dart("waist_dart_3", 1 * cm)


def test_missing_measurement_is_named() -> None:
    body = workshop_chart()["W4"]
    lacking = Body("lacking", tuple(m for m in body.measures if m.name != "waist_to_hip"))
    with pytest.raises(KitError, match="waist to hip is missing"):
        skirt_block(lacking)


def test_its_lesson_has_numbers_to_move_and_the_block_leaves_them_as_they_are() -> None:
    """Sliders and handles of the practice sheet: each of them moves lines, and what it says comes true on paper."""
    lesson = Lesson.of(skirt_block)
    lesson.choose(size="W4")
    names = [parameter.name for parameter in lesson.parameters]
    assert names == ["waist_ease", "hip_ease", "front_share", "skirt_length"]
    assert [handle.name for handle in handles(lesson, lesson.work())] == names
    body = lesson.body
    assert [piece.outline for piece in lesson.work().pieces] == [piece.outline for piece in skirt_block(body)]
    lesson.change(waist_ease=5 * cm, hip_ease=9 * cm, front_share=0.45, skirt_length=75 * cm)
    pattern = lesson.work()
    front, back = pattern.pieces
    assert 2 * sum(dict(piece.guides)["hip_line"].length for piece in (front, back)) == pytest.approx(
        body["hip_girth"] + 90, abs=0.5
    )
    waist = 2 * (sewn_length(front, "waist") + sewn_length(back, "waist"))
    assert waist == pytest.approx(body["waist_girth"] + 50, abs=0.5)
    wide = [sum(intake(piece, dart) for dart in piece.darts) for piece in (front, back)]
    assert wide[0] / sum(wide) == pytest.approx(0.45, abs=0.01)
    assert dict(front.points)["centre_hem"].y == pytest.approx(-750)
    said = player_pictures(pattern, "cm")[0].words
    assert "75 cm" in said[0] and show((body["hip_girth"] + 90) / 4, "cm") in said[0]
