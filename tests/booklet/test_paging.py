"""Pages come out full: pictures share out their heights, and the heights reckoned are those of the page."""

from __future__ import annotations

import itertools
from dataclasses import replace
from typing import Any

import pytest
import weasyprint.formatting_structure.boxes as boxes_of
from hypothesis import given, settings
from hypothesis import strategies as st
from markupsafe import Markup

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, PX
from kit.booklet.handover import DRAFTED
from kit.booklet.html import environment, to_html
from kit.booklet.paging import LEAST, MOST, Tall, Unit, spread_over_pages
from kit.booklet.render import document
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.booklet.setting import Setter
from kit.booklet.theme_file import BookTheme
from kit.proof import prove
from kit.resources import examples

PAGE = 250.0


def pages(units, placings):
    """The units of each page with their share."""
    found = []
    for unit, placing in zip(units, placings, strict=True):
        if placing.breaks or not found:
            found.append([])
        found[-1].append((unit, placing.share))
    return found


def step(fixed: float, room: float, wide: float = 1000.0) -> Unit:
    return Unit(fixed, ((Tall(room, wide, 5.0),),), 30.0)


def test_three_steps_of_ninety_share_a_page_a_little_smaller():
    units = [step(15.0, 78.0)] * 3
    (page,) = pages(units, spread_over_pages(units, PAGE))
    assert LEAST <= page[0][1] < 1.0
    assert sum(unit.height(share) for unit, share in page) <= PAGE


def test_two_steps_too_tall_for_three_grow_to_fill_the_page():
    units = [step(15.0, 88.0), step(15.0, 88.0), step(150.0, 60.0), step(150.0, 60.0)]
    first, *_ = pages(units, spread_over_pages(units, PAGE))
    assert len(first) == 2 and 1.0 < first[0][1] <= MOST
    assert sum(unit.height(share) for unit, share in first) == pytest.approx(PAGE, abs=0.1)


def test_words_are_not_left_at_the_foot_of_a_page():
    units = [step(15.0, 200.0), Unit(20.0, keeps=True), step(15.0, 200.0)]
    assert [placing.breaks for placing in spread_over_pages(units, PAGE)] == [False, True, False]


def test_a_picture_as_wide_as_its_column_grows_no_more():
    picture = Tall(80.0, 50.0, 5.0)
    assert picture.at(MOST) == picture.at(1.0) == 55.0
    assert picture.at(0.5) == 45.0


def side_by_side(fixed: float) -> Unit:
    """Two pictures of one operation, side by side or stacked."""
    row = (Tall(50.0, 55.0, 5.0),) * 2
    return Unit(fixed, (row,), stacked=(Tall(50.0, 120.0, 5.0),) * 2, between=5.0)


def test_two_pictures_side_by_side_are_stacked_where_the_page_has_room_and_only_there():
    tall = Unit(240.0)
    roomy, close = side_by_side(60.0), side_by_side(140.0)
    for unit, stacked in ((roomy, True), (close, False)):
        first, *_ = spread_over_pages([unit, tall, tall], PAGE)
        assert (first.way == "stacked") is stacked
        assert unit.height(first.share, first.way) <= PAGE + 0.01
    first, *_ = spread_over_pages([roomy, tall, tall], PAGE)
    assert roomy.height(first.share, first.way) == pytest.approx(PAGE, abs=0.1)  # 60 + 2 (50 share + 5) + 5


def test_three_small_pictures_in_two_rows_stand_in_one_where_they_are_larger_so():
    usual, narrow = Tall(70.0, 120.0, 5.0, text=28.0), Tall(70.0, 65.0, 5.0, text=28.0)
    three = Unit(60.0, ((usual, usual), (usual,)), between=5.0, close=((narrow,) * 3,))
    crowded, *_ = spread_over_pages([three, Unit(85.0), Unit(240.0)], PAGE)
    # 105 mm are left: two rows of 45 mm, 17 of them for what is drawn; one row has 65, and 37 of them.
    assert crowded.way == "close" and three.size(crowded.share, "close") == pytest.approx(37 / 42)
    assert three.height(crowded.share, "close") <= PAGE - 85.0
    alone, *_ = spread_over_pages([three, Unit(240.0), Unit(240.0)], PAGE)
    assert alone.way == "" and alone.share > 1.0  # room enough for large ones in two rows


def test_a_few_lines_take_a_step_with_them_to_the_last_page():
    """Unless the page before would come out half empty by it."""
    for first, second, breaks in ((170.0, 70.0, [False, True, False]), (120.0, 120.0, [False, False, True])):
        placings = spread_over_pages([Unit(first), Unit(second), Unit(24.0)], PAGE)
        assert [placing.breaks for placing in placings] == breaks


def test_a_unit_taller_than_a_page_has_a_page_to_itself():
    units = [step(15.0, 78.0), Unit(400.0), step(15.0, 78.0)]
    assert [placing.breaks for placing in spread_over_pages(units, PAGE)] == [False, True, True]


def large(fixed: float, rows: int = 2) -> Unit:
    """An operation in large print: its pictures one below the other, which may stand over on the next page."""
    return Unit(fixed, ((Tall(62.0, 200.0, 15.0),),) * rows, between=5.0, parts=True)


def test_large_words_do_not_stand_alone_before_an_operation_that_is_too_tall_for_their_page():
    units = [Unit(40.0, keeps=True), large(130.0), large(60.0)]
    words, first, second = spread_over_pages(units, PAGE, PAGE - 25.0)
    assert (words.parted, first.breaks, first.parted) == (False, False, True)
    assert 40.0 + 130.0 + 62.0 * first.share + 15.0 <= PAGE - 25.0  # with one picture
    over = 62.0 * first.share + 15.0 + 5.0
    assert not second.breaks and not second.parted
    assert over + units[2].height(second.share) <= PAGE
    fixed = [Unit(40.0, keeps=True), *(replace(unit, parts=False) for unit in units[1:])]
    assert [placing.breaks for placing in spread_over_pages(fixed, PAGE, PAGE - 25.0)] == [False, True, True]


def test_a_large_operation_taller_than_a_page_goes_on_with_pictures_of_a_good_size():
    tall, _ = spread_over_pages([large(160.0, rows=3), large(20.0, rows=1)], PAGE)
    assert tall.parted and tall.share > 0.9


def test_what_fits_is_not_parted():
    units = [large(60.0), large(60.0)]
    assert not any(placing.parted for placing in spread_over_pages(units, 2 * PAGE))


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(st.floats(5, 60), st.floats(20, 150)), min_size=1, max_size=14))
def test_no_page_overflows_and_no_unit_is_lost(sizes):
    units = [step(fixed, room) for fixed, room in sizes]
    found = pages(units, spread_over_pages(units, PAGE, PAGE - 20))
    assert sum(len(page) for page in found) == len(units)
    for number, page in enumerate(found):
        used = sum(unit.height(share) for unit, share in page)
        assert used <= (PAGE if number else PAGE - 20) + 0.01 or len(page) == 1
    for before, after in itertools.pairwise(found):  # a page is not left while the next unit would still fit on it
        small = sum(unit.height(LEAST) for unit, _ in before) + after[0][0].height(LEAST)
        room = PAGE if before is not found[0] else PAGE - 20
        white = room - sum(unit.height(share) for unit, share in before)
        assert small > room or white < 0.5 * room


def boxes(page, wanted):
    """(element, height in mm, foot in mm) of every box of a page whose element has one of the `wanted` classes."""
    found = []

    def walk(box):
        element = getattr(box, "element", None)
        names = set((element.get("class") or "").split()) if element is not None and hasattr(element, "get") else set()
        if names & wanted and box.element_tag in ("article", "div"):
            found.append((element, box.border_height() / PX, (box.position_y + box.margin_height()) / PX))
        for child in getattr(box, "children", []):
            walk(child)

    walk(page._page_box)
    return found


WORDS = """<p>Words that open a chapter. They take more than one line of a page this wide, and so they are broken once
or twice, as the page breaks them.</p><h3>Try it</h3><p>Draft it for a friend.</p><p>And once more.</p>"""


@pytest.mark.parametrize("form", ["a4", "a5", "a4-large"])
def test_a_heading_among_words_is_reckoned_with_its_space(form, tmp_path):
    form = FORMS[form]
    style = environment().get_template("booklet.css.j2").render(form=form, look=BookTheme())
    room = f"@page {{ size: {form.width}mm {form.height}mm; margin: {form.top}mm {form.outer}mm }}"
    page = f'<html><head><title>x</title></head><body><div class="words">{WORDS}</div></body></html>'
    (made,) = document(page, LessonFolder(tmp_path), style + room).pages
    ((_, real, _),) = boxes(made, {"words"})
    setter = Setter(None, form, None, None, None, None, None, None)  # what is reckoned of words asks for the form alone
    reckoned = setter.written_height(Markup(WORDS), min(form.measure, 140.0))
    assert real <= reckoned <= real + 0.25 * form.size  # mm: the space after the last paragraph is reckoned too


BUYERS = [
    ("harbour_jacket", "a4", 0.88),
    ("tideline_wrap_top", "a5", 0.87),
    ("dune_skirt", "a4", 0.0),
    ("slack_water_trousers", "a4", 0.0),
    ("oyster_apron", "a4", 0.0),
]
"""Lessons and forms that are set for buyers, and how full, in the mean, the pages of their steps are at least. The page
that drafting or sewing ends on may be short."""


@pytest.fixture(scope="module", params=BUYERS, ids=lambda given: f"{given[0]}-{given[1]}")
def laid(request):
    """Pages of a buyers' booklet, their form, and the least mean of its steps' pages. One is kept at a time."""
    lesson, key, mean = request.param
    return pages_for_buyers(lesson, FORMS[key]), FORMS[key], mean


def pages_for_buyers(lesson, form):
    path = examples() / f"{lesson}.ipynb"
    ran = run_notebook(read_notebook(path), path.parent, name=path.name, units="cm", sizes=(DRAFTED,))
    folder = LessonFolder(path.parent)
    book = compose(ran.handover, ran.notebook, folder, prove(ran.handover.pattern), form, audience="buyers")
    return document(to_html(book, form), folder).pages


@pytest.mark.slow
def test_steps_stay_whole_and_their_pages_are_full(laid):
    set_pages, form, mean = laid
    feet = {}
    for number, page in enumerate(set_pages, 1):
        for element, _, foot in boxes(page, {"step", "operation"}):
            if element.tag == "article" and "sew" in element.get("class"):
                continue
            feet.setdefault(number, []).append((element, foot))
    seen = [id(element) for found in feet.values() for element, _ in found]
    assert len(seen) == len(set(seen)), "a step or operation is split over two pages"
    full = [max(foot for _, foot in found) - form.top for found in feet.values()]
    # On A5 a page with one wide picture may be short.
    assert sum(filled > 0.8 * form.depth for filled in full) >= 0.7 * len(full) or not mean
    drafting = [number for number, found in feet.items() if any("step" in _classes(element) for element, _ in found)]
    sewing = [number for number in feet if number not in drafting]
    within = [filled for number, filled in zip(feet, full, strict=True) if number not in (drafting[-1], sewing[-1])]
    assert sum(within) > mean * form.depth * len(within), (
        "how full the mean page is that drafting or sewing does not end on"
    )


def _classes(element):
    return element.get("class").split()


def filled(page, form):
    """How far down a page its text and pictures reach, as a share of its depth (0..1)."""
    lowest = 0.0

    def walk(box):
        nonlocal lowest
        if isinstance(box, (boxes_of.TextBox, boxes_of.ReplacedBox)):
            foot = (box.position_y + box.margin_height()) / PX
            if foot < form.top + form.depth + 1.0:  # not the number at the foot
                lowest = max(lowest, foot)
        for child in getattr(box, "children", []):
            walk(child)

    walk(page._page_box)
    return (lowest - form.top) / form.depth


LINE = 5.0  # mm


def lines_on(page):
    """How many lines of text stand on a page between its margins; a picture counts as those that its height has room
    for."""
    found, boxes_left = 0, [child for child in page._page_box.children if child.element_tag == "html"]
    while boxes_left:
        box = boxes_left.pop()
        found += isinstance(box, boxes_of.LineBox)
        if isinstance(box, boxes_of.ReplacedBox):
            found += box.height / PX // LINE
        boxes_left += getattr(box, "children", [])
    return found


@pytest.mark.slow
def test_no_page_of_a_buyer_s_booklet_is_mostly_white(laid):
    """But the last of drafting and of the book, behind which a chapter must begin on a new page or nothing comes. That
    pages be full is common practice of printed instructions; no source for the share."""
    set_pages, form, _ = laid
    sewing = min(number for number, page in enumerate(set_pages) if "sewing" in page.anchors)
    assert len(set_pages) > 12 and sewing > 8
    shares = {number + 1: round(filled(page, form), 2) for number, page in enumerate(set_pages)}
    free = {sewing, len(set_pages)}  # numbers from 1: the page before sewing, and the last
    white = {number: share for number, share in shares.items() if share < 0.45 and number not in free}
    assert not white, shares
    few = {number + 1: lines_on(page) for number, page in enumerate(set_pages)}
    assert not {number: count for number, count in few.items() if count < 4}, few


@pytest.mark.slow
@pytest.mark.parametrize("lesson", ["harbour_jacket", "oyster_apron"])
def test_no_page_in_large_print_is_mostly_white(lesson):
    """But the last of the book and those before drafting and sewing, which begin on a new page. Of the jacket three
    were: notions, the first words on cutting layouts, and a step that missed the page before by little; of the apron
    the first words of drafting."""
    form = FORMS["a4-large"]
    set_pages = pages_for_buyers(lesson, form)
    begun = {min(n for n, page in enumerate(set_pages) if name in page.anchors) for name in ("drafting", "sewing")}
    shares = {number: round(filled(page, form), 2) for number, page in enumerate(set_pages, 1)}
    assert len(shares) > 30
    assert not {n: share for n, share in shares.items() if share < 0.45 and n not in {*begun, len(shares)}}, shares


@pytest.mark.parametrize("form", ["a4", "letter"])
def test_a_long_list_of_contents_takes_hardly_more_room(form):
    """A booklet for a class has three parts more than one for buyers: two lines of them had a page to themselves."""
    none: Any = None
    setter = Setter(none, FORMS[form], none, none, none, none, none, none)
    heights = {count: count * setter.content_height(count) for count in range(14, 21)}
    assert heights[16] == 16 * setter.content_height(1) and heights[19] < 1.12 * heights[16]
    assert all(heights[count] > heights[count - 1] for count in (15, 16, 20))


def test_a_picture_under_its_text_gets_narrower_where_a_page_is_all_but_full():
    """Two steps miss one page by 4 mm, and their pictures, as wide as the column, are lower than their room anyhow."""

    def steps(narrows: bool) -> list[Unit]:
        return [Unit(60.0, ((Tall(100.0, 57.0, 5.0, narrows=narrows),),))] * 2

    apart, shared = (spread_over_pages(steps(narrows), 240.0) for narrows in (False, True))
    assert [each.breaks for each in apart] == [False, True] and [each.breaks for each in shared] == [False, False]
    assert 0.95 < shared[0].share < 1 and sum(each.height(shared[0].share) for each in steps(True)) <= 240.0
    assert Tall(100.0, 57.0, narrows=True).at(1.5) == Tall(100.0, 57.0).at(1.5)
    assert {key for key, form in FORMS.items() if not form.narrows} == {"a4", "letter"}  # beside their text


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(st.floats(20, 120), st.integers(1, 7)), min_size=2, max_size=5))
def test_what_stands_over_of_a_large_operation_is_no_more_than_a_page(sizes):
    units = [large(fixed, rows) for fixed, rows in sizes]
    for unit, placing in zip(units, spread_over_pages(units, PAGE), strict=True):
        if placing.parted:
            height = 62.0 * placing.share + 15.0 + 5.0
            shown = next(n for n in range(len(unit.rows), 0, -1) if unit.fixed + n * height - 5.0 <= PAGE + 0.01)
            assert (len(unit.rows) - shown) * height <= PAGE + 0.01
