"""A step's lines do not shrink to a stamp among their texts: one of many moves is drawn over the whole page, and pages
are not filled at the cost of lines."""

from __future__ import annotations

import pytest
from markupsafe import Markup

from kit import Lesson, blank_paper, cm, mm, read_chart
from kit.booklet.forms import FORMS
from kit.booklet.paging import spread_over_pages
from kit.booklet.pictures import Inks
from kit.booklet.setting import Setter
from kit.booklet.step_shown import drafted
from kit.lesson.pattern import Pattern
from kit.picture.lettered import drawn_box, lettered
from kit.picture.theme import THEME
from kit.prose.worksheet import letters_of, worksheet
from tests.lesson_words import example_lessons


def tabard(once: bool) -> Pattern:
    """The back of a tabard, all its lines in one step, or the first of them alone (invented)."""
    chart = read_chart("measure,110\nbust_girth,59\nback_waist_length,26.5", "A child")
    lesson = Lesson("Tabard", start=blank_paper, sizes=chart, size="110", units="cm")
    lesson.length("long", 49.5 * cm, least=35 * cm, most=70 * cm, why="shoulder to hem")
    lesson.length("half_width", 16.2 * cm, least=13 * cm, most=22 * cm, why="covers the clothes")
    lesson.length("neck_half", 9 * cm, least=7 * cm, most=11 * cm, why="the head goes through")
    lesson.length("neck_deep", 4 * cm, least=2 * cm, most=6 * cm, why="back depth of the neck")
    lesson.length("corner", 5 * cm, least=3 * cm, most=7 * cm, why="radius of the corners")
    lesson.length("slope", 2.5 * cm, least=1 * cm, most=4 * cm, why="how far the shoulder falls")

    @lesson.step("Draw the back", makes="back")
    def draw_back(back, long, half_width, neck_half, neck_deep, slope, corner, back_waist_length):
        """{long} long, {half_width} wide."""
        top = back.place(0 * mm, 0 * mm)
        neck_point, tip, low = top.out(neck_half), top.out(half_width).down(slope), top.down(long)
        if not once:
            edges = {"side": tip.to(low.out(half_width)), "hem": low.out(half_width).to(low), "centre": low.to(top)}
            back.draw(neck=top.to(neck_point), shoulder=neck_point.to(tip), **edges)
            return
        hem_corner, centre_neck = low.out(half_width), top.down(neck_deep)
        side = tip.curve_to(hem_corner.up(corner), square_to=neck_point.to(tip), end_toward="down")
        turn = side.end.arc(hem_corner.into(corner), radius=corner, toward="out")
        back.draw(
            neck=centre_neck.curve_to(neck_point, toward="out", end_square_to=neck_point.to(tip)),
            shoulder=neck_point.to(tip),
            side=side,
            corner=turn,
            hem=turn.end.to(low),
            centre=low.to(centre_neck),
        )
        back.guide(waist_line=centre_neck.down(back_waist_length).ruled("out", half_width))
        back.measure(long=back.centre)

    return lesson.work()


@pytest.mark.parametrize("once", [True, False])
def test_a_step_of_many_moves_goes_across_the_page(once: bool) -> None:
    pattern = tabard(once)
    record, form = pattern.steps[0], FORMS["a4"]
    shown = drafted(record, pattern, form, letters_of(worksheet(pattern, "cm")).get(record.key), "p")
    room = shown.sketch.room
    assert shown.across is once and (room == form.full) is once
    made = lettered(shown.sketch.draw(room), room.width, room.height)
    _, low, _, high = drawn_box(made.drawing)
    assert (high - low) / (made.bounds[3] - made.bounds[1]) > 0.75  # beside its text it was 0.4 of the height


@pytest.mark.parametrize("name", ["slack_water_trousers", "harbour_jacket"])
def test_a_full_page_is_not_bought_with_the_lines_of_its_pictures(name: str) -> None:
    """What shares a page gets smaller for it. Texts do not, so in the frame of a tall, narrow piece the lines got far
    smaller than the frame: legs of 50 mm came out 19 mm tall, in a frame of 0.6 of its height."""
    pattern, form = example_lessons()[name].work(), FORMS["a4"]
    setter = Setter(
        pattern,
        form,
        Inks.of(THEME, form),
        lambda text, values, where: Markup(text),
        lambda text, attached: Markup(text),
        Markup,
        lambda key: (),
        lambda key: (),
    )
    planned = [setter.draft(record, number) for number, record in enumerate(pattern.steps, 1)]
    units = [unit for each in planned for unit in each.units]
    placings = spread_over_pages(units, form.depth, form.depth - setter.part_head("Drafting"))

    def lines_of(index: int, share: float) -> float:
        """How tall the lines of a step's picture are, as drawn (CSS px)."""
        shown = drafted(pattern.steps[index], pattern, form, setter._letters.get(pattern.steps[index].key), "p")
        room = shown.sketch.room.times(share)
        made = lettered(shown.sketch.draw(room), round(room.width), round(room.height), setter.inks.theme)
        _, low, _, high = drawn_box(made.drawing)
        return (high - low) / made.unit

    shares = {
        pattern.steps[index].title: lines_of(index, placing.share) / lines_of(index, 1.0)
        for index, placing in enumerate(placings)
        if placing.share < 1.0
    }
    assert min(shares.values(), default=1.0) > 0.55, shares
