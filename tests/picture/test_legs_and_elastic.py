"""Trousers and elastic on covers: both legs meet along the crotch seam and hang apart below, and cloth is drawn in to
the length of its elastic. How trousers are drawn flat is common practice (no source); widths are reckoned from the
draft."""

from __future__ import annotations

import runpy
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from kit import Lesson, blank_paper, cm
from kit.geometry import Point
from kit.lesson.pattern import Pattern
from kit.picture.assembled import assembled
from kit.picture.chains import crossings
from kit.picture.drawing import Stroke
from kit.picture.flat import laid_flat
from kit.picture.forked import _drawn_in
from kit.picture.locator import garment_so_far
from kit.picture.sewing import scene_drawing
from kit.sewing.before import state_before
from kit.sewing.in_work import shown_scenes
from kit.sewing.order import of_kind
from tests.wear.garments import lesson_of

TROUSERS = Path(__file__).parents[1] / "wear" / "lessons" / "trousers.py"
VIEWS = ("front", "back")


@cache
def trousers() -> Pattern:
    pattern = runpy.run_path(str(TROUSERS))["lesson"].work()
    assert isinstance(pattern, Pattern)
    return pattern


@cache
def skirt(length: float = 60.0, joined: bool = True, threaded: bool = True) -> Pattern:
    """A gathered skirt of two straight pieces on the fold, 50 cm each, with elastic in its waist."""
    lesson = Lesson("Elastic skirt", start=blank_paper, units="cm")

    @lesson.step("Draw", makes=("front", "back"))
    def draw(front, back):
        """Draw."""
        for piece in (front, back):
            a, b = piece.place(0 * cm, 0 * cm), piece.place(25 * cm, 0 * cm)
            c, d = piece.place(25 * cm, 60 * cm), piece.place(0 * cm, 60 * cm)
            piece.draw(hem=a.to(b), side=b.to(c), waist=c.to(d), centre=d.to(a))
            piece.allow(hem=3 * cm, side=1 * cm, waist=4 * cm)
            piece.cut(1, fold="centre")
            piece.grain()

    @lesson.sew("Sew")
    def sew(make, front, back):
        """Sew."""
        make.plain_seam(front.side, back.side, allowance=1 * cm)
        gap = back.left.waist.between(4 * cm, 9 * cm)
        make.casing(front.waist, back.waist, first=1 * cm, depth=3 * cm, gap=gap)
        if threaded:
            make.thread_elastic(front.waist, back.waist, length=length * cm, width=2 * cm, gap=gap, ring=joined)

    return lesson.work()


def _halves(pattern: Pattern, view: str, name: str) -> list[list[tuple[float, float]]]:
    return [[(p.x, p.y) for p in flat.ring] for flat in assembled(pattern, view).of(name)]  # type: ignore[arg-type]


@pytest.mark.parametrize("view", VIEWS)
@pytest.mark.parametrize("name", ["front", "back"])
def test_both_legs_meet_at_the_centre_along_the_crotch_seam(view, name):
    """As drafted the back's seam leans and both forks lie past the centre line: the legs would lie over one another."""
    legs = assembled(trousers(), view).of(name)
    assert len(legs) == 2
    for leg in legs:
        seam = leg.edge("crotch", leg.side)
        assert max(abs(p.x) for p in seam) < 2.5
    one, two = ([p.x for p in leg.ring] for leg in legs)
    low, high = (one, two) if sum(one) < sum(two) else (two, one)
    assert max(low) < 2.5 and min(high) > -2.5, "neither leg reaches over the centre"


@pytest.mark.parametrize("noise", [0.0, 3e-13, -3e-13])
@pytest.mark.parametrize("parts", [5, 17])
def test_the_side_is_the_outer_edge_of_a_leg_up_to_its_waist(parts, noise):
    """Above the top of the side the waist slopes up to the centre. Where it was told from the side by how much narrower
    a leg is there than a little lower, five equal parts of it were a matter of the last bit."""
    fork, top, side, hem = Point(-60.0, -270.0), Point(8.0, 34.0), Point(185.0, 20.0), -900.0
    waist = [top.lerp(side, number / parts) for number in range(parts)]
    ring = [Point(-20.0, hem), fork, *waist, side, Point(190.0, -100.0 + noise), Point(180.0, hem)]
    at = _drawn_in([Point(p.x, p.y * (1 + noise)) for p in ring], [fork, top])
    for y in (20.0, 24.0, 28.0, 33.0, 34.0):
        assert at(y)[2] == pytest.approx(185.0, abs=1e-9)
    assert at(-40.0)[2] == pytest.approx(187.5, abs=1e-9)


def test_the_legs_hang_apart_and_their_sides_lie_on_each_other():
    pattern = trousers()
    garment = assembled(pattern, "front")
    pieces = [pattern.piece(name) for name in ("front", "back")]
    drafted = [sorted(crossings(piece.outline.points(0.3), -300.0))[-1] for piece in pieces]
    reach = []
    for leg in (*garment.of("front"), *garment.of("back")):
        low = min(p.y for p in leg.ring)
        assert min(abs(x) for x in crossings(leg.ring, low + 5.0)) > 4.0, "the legs are two at the hem"
        reach.append(max(abs(x) for x in crossings(leg.ring, -300.0)))
    assert max(reach) - min(reach) < 5.0
    assert min(drafted) - 1.0 < min(reach) and max(reach) < max(drafted) + 1.0


@pytest.mark.parametrize("view", VIEWS)
def test_sides_that_are_sewn_to_each_other_meet_where_no_dart_is_either(view):
    """A back is drafted wider than its front; sewn to it along the side it is folded at the seam, and its wrong side is
    not seen beside the front. Nearer the waist the elastic draws in a sloping back from higher up than the front."""
    garment = assembled(lesson_of("slack_water_trousers").work(), view)
    front, back = garment.of("front"), garment.of("back")
    assert len(front) == len(back) == 2
    for height in (-300.0, -450.0, -600.0, -750.0):
        wide = [max(abs(x) for leg in legs for x in crossings(leg.ring, height)) for legs in (front, back)]
        assert wide[0] == pytest.approx(wide[1], abs=6.0), height


def test_a_button_on_a_band_over_two_halves_is_drawn_once():
    items = laid_flat(trousers(), "front").items
    found = [item.curves[0].start.x for item in items if isinstance(item, Stroke) and item.name == "buttonhole_1"]
    assert found and max(found) - min(found) < 25.0


@pytest.mark.parametrize(("length", "joined", "worn"), [(60.0, True, 58.0), (60.0, False, 60.0), (80.0, True, 78.0)])
def test_a_waist_is_as_narrow_as_its_elastic(length, joined, worn):
    for flat in assembled(skirt(length, joined), "front").flats:
        top = max(p.y for p in flat.ring)
        xs = [p.x for p in flat.ring if p.y > top - 20.0]
        assert max(xs) - min(xs) == pytest.approx(worn * 10 / 2, abs=1.0)
        hem = crossings(flat.ring, min(p.y for p in flat.ring) + 5.0)
        assert max(hem) - min(hem) == pytest.approx(500.0, abs=1.0)


def test_a_casing_without_elastic_yet_is_as_wide_as_the_cloth():
    for flat in assembled(skirt(threaded=False), "front").flats:
        top = crossings(flat.ring, max(p.y for p in flat.ring) - 5.0)
        assert max(top) - min(top) == pytest.approx(500.0, abs=1.0)


def test_the_garment_so_far_is_narrow_from_the_step_on_that_threads_its_elastic():
    """Whichever of the two is asked for first."""
    pattern = lesson_of("full_skirt").work()
    elastic, hem = (of_kind(pattern, kind)[0] for kind in ("thread_elastic", "hem"))
    for first, second in ((elastic, hem), (hem, elastic)):
        fresh = replace(pattern)
        wide = {}
        for made in (first, second):
            ring = garment_so_far(fresh, state_before(fresh, made), "front").flats[0].ring
            top = [p.x for p in ring if p.y > max(q.y for q in ring) - 20.0]
            wide[made.kind] = max(top) - min(top)
        assert wide["hem"] == pytest.approx(330.0, abs=1.0) and wide["thread_elastic"] == pytest.approx(750.0, abs=1.0)


_ELASTIC = "    make.thread_elastic(front.waist, back.waist, length=elastic + 2 * cm, width=25 * mm, gap=gap)\n"
_LINE = "    front.guide(waist_line=d.to(c))\n"
BOTH = (
    (_LINE, _LINE + '    front.mark_point("eyelet", d.out(2 * cm).down(1 * cm))\n'),
    ("waist=4 * cm", "waist=55 * mm"),
    ("    make.plain_seam(", "    make.eyelets(front.eyelet)\n    make.plain_seam("),
    ("depth=3 * cm", "depth=45 * mm"),
    (_ELASTIC, _ELASTIC + "    make.thread_cord(front.waist, back.waist, cord=140 * cm, through=front.eyelet)\n"),
)
"""A cord beside the elastic of the full skirt, which is shorter than the waist: 66 cm."""


def test_a_cord_beside_elastic_narrows_no_further():
    for flat in assembled(lesson_of("full_skirt", BOTH).work(), "front").flats:
        top = max(p.y for p in flat.ring)
        xs = [p.x for p in flat.ring if p.y > top - 20.0]
        assert max(xs) - min(xs) == pytest.approx(330.0, abs=1.0)


@pytest.mark.parametrize(
    ("edge", "fold", "wide"),
    [
        ("apron.waist", "", 300.0),
        ("apron.side", "", 600.0),
        ("apron.waist.between(5 * cm, 25 * cm)", "", 600.0),
        ("apron.waist", "other", 600.0),
        ("apron.waist.between(5 * cm, 25 * cm)", "other", 1200.0),
    ],
)
def test_a_piece_is_narrowed_by_gathers_all_across_it_alone(edge, fold, wide):
    """Its side or a part of its waist drawn up to a length leaves the rest of it as wide as it was cut."""
    lesson = Lesson("Apron", start=blank_paper, units="cm")

    @lesson.step("Draw", makes="apron")
    def draw(apron):
        """Draw."""
        a, b = apron.place(0 * cm, 0 * cm), apron.place(60 * cm, 0 * cm)
        c, d = apron.place(60 * cm, 60 * cm), apron.place(0 * cm, 60 * cm)
        apron.draw(hem=a.to(b), side=b.to(c), waist=c.to(d), other=d.to(a))
        apron.allow(hem=3 * cm, side=1 * cm, waist=1 * cm, **({} if fold else {"other": 1 * cm}))
        apron.cut(1, fold=fold or None)
        apron.grain()

    @lesson.sew("Sew")
    def sew(make, apron):
        """Sew."""
        run = eval(edge, {"apron": apron, "cm": cm})
        make.gather(run, to=10 * cm if "between" in edge else 30 * cm)

    (flat,) = assembled(lesson.work(), "front").flats
    top = crossings(flat.ring, max(p.y for p in flat.ring) - 1.0)
    assert max(top) - min(top) == pytest.approx(wide, abs=1.0)


def test_gathers_are_drawn_where_elastic_runs():
    def count(pattern: Pattern) -> int:
        return sum("gathers" in item.name for item in laid_flat(pattern, "front").items if isinstance(item, Stroke))

    assert count(skirt()) > 20 and count(skirt(threaded=False)) == 0


@pytest.mark.parametrize(("low", "high"), [(4, 9), (17, 22)], ids=["more after it", "more before it"])
def test_elastic_goes_in_at_its_gap(low: float, high: float) -> None:
    """Its loose end hangs out of the gap, and nowhere else; in the tunnel the bodkin is ahead, beyond the gap, on the
    longer way (how elastic is threaded: common practice, no source)."""
    lesson = Lesson("Elastic skirt", start=blank_paper, units="cm")

    @lesson.step("Draw", makes="front")
    def draw(front):
        """Draw."""
        corners = [front.place(x * cm, y * cm) for x, y in ((0, 0), (25, 0), (25, 60), (0, 60))]
        front.draw(
            **{name: corners[i - 1].to(corners[i % 4]) for i, name in enumerate(("hem", "side", "waist", "centre"), 1)}
        )
        front.allow(hem=3 * cm, side=1 * cm, waist=4 * cm)
        front.cut(1, fold="centre")
        front.grain()

    @lesson.sew("Sew")
    def sew(make, front):
        """Sew."""
        gap = front.left.waist.between(low * cm, high * cm)
        make.casing(front.waist, first=1 * cm, depth=3 * cm, gap=gap)
        make.thread_elastic(front.waist, length=40 * cm, width=2 * cm, gap=gap)

    pattern = lesson.work()
    (threading,) = of_kind(pattern, "thread_elastic")
    (scene,) = shown_scenes(pattern, threading)
    drawing = scene_drawing(scene, pattern)
    seen = {item.name: box(item.curves) for item in drawing.items if isinstance(item, Stroke) and item.name}
    tail, bodkin, hidden = seen["elastic on front"], seen["bodkin"], seen["threaded on front"]
    left, right = 250 - 10 * high, 250 - 10 * low  # the waist runs from the side to the centre
    assert left - 0.1 <= min(abs(tail[0]), abs(tail[2])) and max(abs(tail[0]), abs(tail[2])) <= right + 0.1
    assert tail[1] < 570 - 20 and abs(tail[3] - 570) < 0.6  # from the inner fold, 3 cm below the edge, down
    assert hidden[1] > 570 and hidden[3] < 600  # in the tunnel
    longer = -1.0 if abs(tail[0]) > 125 else 1.0
    ahead = (abs(bodkin[0]) + abs(bodkin[2])) / 2 - (abs(tail[0]) + abs(tail[2])) / 2
    assert ahead * longer > 20
    assert drawing.window is not None
    assert drawing.window[0] < bodkin[0] and bodkin[2] < drawing.window[2]


def box(curves) -> tuple[float, float, float, float]:
    boxes = [curve.bounds() for curve in curves]
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))
