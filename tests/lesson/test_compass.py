"""Parts of circles: exact by every way of saying them, and circle skirts drafted with them.

The length of an arc is its radius times its angle, and its area half the radius squared times its angle (Euclid,
Elements, book VI, proposition 33, says that both grow with the angle; Archimedes, Measurement of a Circle, how the two
belong together).
"""

from __future__ import annotations

import math
import re
from collections.abc import Callable

import numpy as np
import pytest

from kit import canvas
from kit.blocks.blank import blank_paper
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Arc, Point
from kit.language import languages, speaking
from kit.lesson.bench import BenchPiece
from kit.lesson.lesson import Lesson
from kit.lesson.pencil import PaperLine
from kit.live.canvas.handles import handles
from kit.picture.draft import step_drawing
from kit.picture.svg_pen import svg
from kit.piece.allowance import cut_line
from kit.piece.piece import Piece
from kit.proof import prove
from kit.units import Length, cm, mm

ANGLES = (1.0, 45.0, 90.0, 135.0, 180.0, 225.0, 270.0, 359.0, 360.0)


def paper() -> BenchPiece:
    return BenchPiece(Piece("pouch", "Pouch", ()))


def only(line: PaperLine) -> Arc:
    (curve,) = line.path.curves
    assert isinstance(curve, Arc)
    return curve


@pytest.mark.parametrize("radius", [20.0, 667.0])
@pytest.mark.parametrize("angle", ANGLES)
def test_about_a_centre_every_angle_is_exact(angle: float, radius: float) -> None:
    bench = paper()
    centre = bench.place(30 * mm, 40 * mm)
    start = centre.down(radius * mm)
    for toward, side in (("out", 1), ("in", -1)):
        arc = start.arc(about=centre, angle=angle, toward=toward)
        assert float(arc.length) == pytest.approx(radius * math.radians(angle), rel=1e-12)
        assert only(arc).sweep == pytest.approx(side * math.radians(angle))
        assert arc.path.start.close_to(start.point, 1e-9)
        end = math.radians(-90 + side * angle)
        expected = Point(30 + radius * math.cos(end), 40 + radius * math.sin(end))
        assert arc.path.end.close_to(expected, 1e-9)
        by_length = start.arc(about="up", radius=radius * mm, length=radius * math.radians(angle) * mm, toward=toward)
        assert float(by_length.length) == pytest.approx(float(arc.length), rel=1e-12)
        assert by_length.path.end.close_to(arc.path.end, 1e-6)


@pytest.mark.parametrize("angle", [10.0, 90.0, 180.0, 270.0, 350.0])
def test_between_two_points_by_angle_by_radius_and_through_a_third(angle: float) -> None:
    bench = paper()
    a, b = bench.place(5 * cm, 2 * cm), bench.place(20 * cm, 9 * cm)
    chord = float(a.distance_to(b))
    radius = chord / 2 / math.sin(math.radians(angle / 2))
    for toward in ("up", "down"):
        arc = a.arc(b, angle=angle, toward=toward)
        assert float(arc.length) == pytest.approx(radius * math.radians(angle), rel=1e-9)
        assert arc.path.end.close_to(b.point, 1e-6)
        middle = arc.middle
        assert (middle.point.y > (a.point.y + b.point.y) / 2) == (toward == "up")
        for one in (
            a.arc(b, radius=radius * mm, toward=toward, far=angle > 180),
            a.arc(b, through=arc.share(0.3)),
        ):
            assert float(one.length) == pytest.approx(float(arc.length), rel=1e-5)
            assert one.middle.point.close_to(middle.point, 1e-2)


def test_to_where_a_line_from_the_centre_crosses_and_the_long_way_round() -> None:
    bench = paper()
    centre, start = bench.place(0, 0), bench.place(10 * cm, 0)
    quarter = bench.place(0, 10 * cm)
    assert float(start.arc(quarter, about=centre).length) == pytest.approx(50 * math.pi)
    assert float(start.arc(quarter, about=centre, toward="down").length) == pytest.approx(150 * math.pi)
    assert float(start.arc(start, about=centre, toward="down").length) == pytest.approx(200 * math.pi)


def test_a_parallel_and_a_mirror_image_of_an_arc_are_arcs() -> None:
    bench = paper()
    waist = bench.place(0, -10 * cm).arc(about=bench.place(0, 0), angle=270, toward="out")
    hem = waist.parallel(60 * cm, "down") if waist.middle.point.y < 0 else waist.parallel(60 * cm, "out")
    assert only(hem).radius == pytest.approx(700)
    assert float(hem.length) == pytest.approx(700 * 1.5 * math.pi, rel=1e-12)
    other = waist.mirrored(bench.place(0, 0).to(bench.place(0, 10 * cm)))
    assert only(other).sweep == pytest.approx(-1.5 * math.pi)


def test_curve_to_goes_the_long_way_round_only_when_told_and_then_on_the_circle() -> None:
    bench = paper()
    centre = bench.place(0, 0)
    start = centre.down(667 * mm)
    for angle in (180.0, 225.0, 270.0):
        circle = start.arc(about=centre, angle=angle, toward="out")
        there = circle.end
        one, two = centre.to(start), centre.to(there)
        last = circle.path.end_tangent
        end_toward = "in" if last.x < -0.1 else "down"
        told = start.curve_to(there, square_to=one, toward="out", end_square_to=two, end_toward=end_toward)
        assert float(told.length) == pytest.approx(667 * math.radians(angle), rel=1e-9)
        if angle > 180:
            short = start.curve_to(there, square_to=one, end_square_to=two)
            assert float(short.length) < 667 * math.radians(360 - angle) * 1.01  # the shorter way, as its words say
    with pytest.raises(KitError, match=r"135° off .* 120° is the most.*arc"):
        start.curve_to(there, square_to=one, toward="out", end_square_to=two, end_toward=end_toward, fullness=1.1)


REFUSED: tuple[tuple[str, Callable[[BenchPiece], object], str], ...] = (
    ("", lambda p: _a(p).arc(about=_c(p), angle=90), "not said which way round"),
    ("", lambda p: _a(p).arc(about=_c(p), toward="up"), "as far as one thing says"),
    ("", lambda p: _a(p).arc(about=_c(p), angle=90, length=3 * cm, toward="up"), "as far as one thing says"),
    ("", lambda p: _a(p).arc(about="up", angle=90, toward="out"), "how far up the centre lies"),
    ("", lambda p: _a(p).arc(about=_c(p), radius=3 * cm, angle=90, toward="up"), "so does radius="),
    ("", lambda p: _a(p).arc(about=_c(p), angle=90, toward="out"), "straight to or from the centre"),
    ("", lambda p: _a(p).arc(angle=90), "no centre and no other end"),
    ("", lambda p: _a(p).arc(_b(p)), "by one more thing"),
    ("", lambda p: _a(p).arc(_b(p), angle=90), "to which side the arc bulges"),
    ("", lambda p: _a(p).arc(_c(p), angle=90, toward="in"), "names no side"),
    ("", lambda p: _a(p).arc(_b(p), radius=3, toward="up"), "bare number|no unit"),
    ("arc_angle", lambda p: _a(p).arc(about=_c(p), angle=400, toward="up"), "400°"),
    ("arc_angle", lambda p: _a(p).arc(about=_c(p), angle=0, toward="up"), "0°"),
    ("arc_angle", lambda p: _a(p).arc(_b(p), angle=360, toward="up"), "360°"),
    ("arc_length", lambda p: _a(p).arc(about=_c(p), length=63 * cm, toward="up"), "63 cm.*62.8 cm"),
    ("arc_radius", lambda p: _a(p).arc(about=_a(p), angle=90, toward="up"), "above zero"),
    ("arc_misses", lambda p: _a(p).arc(p.place(0, 12 * cm), about=_c(p)), "10 cm.*12 cm"),
    ("arc_no_way", lambda p: _a(p).arc(_a(p), radius=3 * cm, toward="up"), "two different"),
    ("arc_in_line", lambda p: _a(p).arc(_c(p), through=p.place(5 * cm, 0)), "straight line"),
    ("arc_in_line", lambda p: _a(p).arc(_c(p), through=_a(p)), "straight line"),
    ("arc_short", lambda p: _a(p).arc(_b(p), radius=7 * cm, toward="up"), "7 cm.*14.1 cm"),
)


def _a(p: BenchPiece) -> object:
    return p.place(10 * cm, 0)


def _b(p: BenchPiece) -> object:
    return p.place(0, 10 * cm)


def _c(p: BenchPiece) -> object:
    return p.place(0, 0)


@pytest.mark.parametrize(("key", "wrong", "words"), REFUSED)
def test_what_fixes_no_arc_is_refused(key: str, wrong: Callable[[BenchPiece], object], words: str) -> None:
    with pytest.raises(KitError, match=words) as told:
        wrong(paper())
    assert told.value.do
    if key:
        assert told.value.told.says.key == f"drafting.{key}"  # type: ignore[union-attr]
        for code in languages():
            with speaking(code):
                assert str(told.value) and "drafting" not in str(told.value)


# ---- circle skirts ------------------------------------------------------------------------------------------

SHARES = (0.25, 0.5, 0.75, 1.0)


def circle_skirt(share: float) -> Lesson:
    """A skirt that is this share of a circle, cut as one piece with its middle on the fold."""
    lesson = Lesson("Circle skirt", start=blank_paper)
    lesson.length("skirt_length", 60 * cm, least=30 * cm, most=90 * cm)

    @lesson.step("Swing waist and hem", makes="skirt")
    def swing(skirt, waist_girth, skirt_length):
        """Swing the waist with a compass, the fold straight down from its centre."""
        radius = waist_girth / (2 * math.pi * share)
        centre = skirt.place(0, 0)
        top = centre.down(radius)
        waist = top.arc(about=centre, length=waist_girth / 2, toward="out")
        hem = top.down(skirt_length).arc(about=centre, angle=180 * share, toward="out")
        skirt.draw(centre=hem.start.to(top), waist=waist, back_seam=waist.end.to(hem.end), hem=hem)
        skirt.measure(waist_radius=(centre, top))
        skirt.allow(waist=1 * cm, back_seam=1.5 * cm, hem=1 * cm)
        skirt.cut(1, fold="centre", title="Skirt", number=1)
        skirt.grain(along=skirt.centre)

    return lesson


@pytest.mark.parametrize("share", SHARES)
@pytest.mark.parametrize("size", workshop_chart().names)
def test_a_circle_skirt_is_exact(share: float, size: str, tmp_path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    lesson = circle_skirt(share)
    body = workshop_chart()[size]
    pattern = lesson.work(body)
    (skirt,) = pattern.pieces
    girth = body["waist_girth"]
    radius, sweep = girth / (2 * math.pi * share), math.pi * share
    waist, hem = skirt.edge("waist").path, skirt.edge("hem").path
    assert waist.length * 2 == pytest.approx(girth, rel=1e-12)
    assert hem.length == pytest.approx((radius + 600) * sweep, rel=1e-12)
    assert skirt.edge("back_seam").path.length == pytest.approx(600, rel=1e-12)
    area = ((radius + 600) ** 2 - radius**2) * sweep / 2
    assert abs(skirt.outline.area) == pytest.approx(area, rel=1e-9)
    for arc, at in ((waist, radius), (hem, radius + 600)):
        (curve,) = arc.curves
        assert isinstance(curve, Arc) and curve.centre.close_to(Point(0, 0), 1e-9)
        assert curve.radius == pytest.approx(at, rel=1e-12)
    # The cut line keeps the allowance all the way round, and nothing speaks against the piece itself.
    cut = cut_line(skirt)
    assert cut.edge("hem").distance_to(hem.at(hem.length / 2)) == pytest.approx(10, abs=1e-6)
    assert [str(finding) for finding in prove(pattern) if finding.level == "error"] == []
    # Drawn as arcs, not as many short lines.
    assert re.search(r'd="M[^"]*A', svg(step_drawing(pattern.steps[0])))


def test_its_length_is_a_length() -> None:
    bench = paper()
    assert isinstance(
        bench.place(0, 0).down(5 * cm).arc(about="up", radius=5 * cm, angle=90, toward="out").length, Length
    )


def test_the_canvas_moves_a_circle_skirt_by_its_handles(tmp_path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Arcs travel as control points; between two answers the slopes move them, and the radius follows the drag."""
    monkeypatch.chdir(tmp_path)
    lesson = circle_skirt(0.75)
    shown = canvas(lesson)
    before, (name,) = np.frombuffer(shown.answer["numbers"], dtype=np.float32), shown.slopes["names"]
    assert name == "skirt_length" and [handle.name for handle in handles(lesson, lesson.work())] == [name]
    slope = np.frombuffer(shown.slopes["rows"], dtype=np.float32)
    shown.move("skirt_length", 605.0, last=False)
    after = np.frombuffer(shown.answer["numbers"], dtype=np.float32)
    assert before + 5.0 * slope == pytest.approx(after, abs=0.05)
    hem = lesson.work().pieces[0].edge("hem").path
    assert max(math.hypot(x, y) for x, y in zip(after[::2], after[1::2], strict=False)) > 605
    assert hem.length == pytest.approx((605 + body_radius(lesson)) * 0.75 * math.pi, rel=1e-12)


def body_radius(lesson: Lesson) -> float:
    return lesson.body["waist_girth"] / (2 * math.pi * 0.75)
