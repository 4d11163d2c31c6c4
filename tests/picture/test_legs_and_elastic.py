"""Trousers and elastic on covers: both legs meet along the crotch seam and hang apart below, and cloth is drawn in to
the length of its elastic. How trousers are drawn flat is common practice (no source); widths are reckoned from the
draft."""

from __future__ import annotations

import runpy
from functools import cache
from pathlib import Path

import pytest

from kit import Lesson, blank_paper, cm
from kit.lesson.pattern import Pattern
from kit.picture.assembled import assembled
from kit.picture.chains import crossings
from kit.picture.drawing import Stroke
from kit.picture.flat import laid_flat

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


def test_gathers_are_drawn_where_elastic_runs():
    def count(pattern: Pattern) -> int:
        return sum("gathers" in item.name for item in laid_flat(pattern, "front").items if isinstance(item, Stroke))

    assert count(skirt()) > 20 and count(skirt(threaded=False)) == 0
