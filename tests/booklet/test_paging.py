"""Pages come out full: pictures share out their heights, and the heights reckoned are those of the page."""

from __future__ import annotations

import itertools
from pathlib import Path

import pytest
import weasyprint.formatting_structure.boxes as boxes_of
from hypothesis import given, settings
from hypothesis import strategies as st

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS, PX
from kit.booklet.handover import DRAFTED
from kit.booklet.html import to_html
from kit.booklet.paging import LEAST, MOST, Tall, Unit, share_out
from kit.booklet.render import document
from kit.booklet.run_notebook import read_notebook, run_notebook
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
    (page,) = pages(units, share_out(units, PAGE))
    assert LEAST <= page[0][1] < 1.0
    assert sum(unit.height(share) for unit, share in page) <= PAGE


def test_two_steps_too_tall_for_three_grow_to_fill_the_page():
    units = [step(15.0, 88.0), step(15.0, 88.0), step(150.0, 60.0), step(150.0, 60.0)]
    first, *_ = pages(units, share_out(units, PAGE))
    assert len(first) == 2 and 1.0 < first[0][1] <= MOST
    assert sum(unit.height(share) for unit, share in first) == pytest.approx(PAGE, abs=0.1)


def test_words_are_not_left_at_the_foot_of_a_page():
    units = [step(15.0, 200.0), Unit(20.0, keeps=True), step(15.0, 200.0)]
    assert [placing.breaks for placing in share_out(units, PAGE)] == [False, True, False]


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
        first, *_ = share_out([unit, tall, tall], PAGE)
        assert (first.way == "stacked") is stacked
        assert unit.height(first.share, first.way) <= PAGE + 0.01
    first, *_ = share_out([roomy, tall, tall], PAGE)
    assert roomy.height(first.share, first.way) == pytest.approx(PAGE, abs=0.1)  # 60 + 2 (50 share + 5) + 5


def test_three_small_pictures_in_two_rows_stand_in_one_where_they_are_larger_so():
    usual, narrow = Tall(70.0, 120.0, 5.0, text=28.0), Tall(70.0, 65.0, 5.0, text=28.0)
    three = Unit(60.0, ((usual, usual), (usual,)), between=5.0, close=((narrow,) * 3,))
    crowded, *_ = share_out([three, Unit(85.0), Unit(240.0)], PAGE)
    # 105 mm are left: two rows of 45 mm, 17 of them for what is drawn; one row has 65, and 37 of them.
    assert crowded.way == "close" and three.size(crowded.share, "close") == pytest.approx(37 / 42)
    assert three.height(crowded.share, "close") <= PAGE - 85.0
    alone, *_ = share_out([three, Unit(240.0), Unit(240.0)], PAGE)
    assert alone.way == "" and alone.share > 1.0  # room enough for large ones in two rows


def test_a_unit_taller_than_a_page_has_a_page_to_itself():
    units = [step(15.0, 78.0), Unit(400.0), step(15.0, 78.0)]
    assert [placing.breaks for placing in share_out(units, PAGE)] == [False, True, True]


@settings(max_examples=60, deadline=None)
@given(st.lists(st.tuples(st.floats(5, 60), st.floats(20, 150)), min_size=1, max_size=14))
def test_no_page_overflows_and_no_unit_is_lost(sizes):
    units = [step(fixed, room) for fixed, room in sizes]
    found = pages(units, share_out(units, PAGE, PAGE - 20))
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


@pytest.mark.slow
@pytest.mark.parametrize(
    ("lesson", "form", "mean"),
    [("harbour_jacket", "a4", 0.85), ("tideline_wrap_top", "a5", 0.85)],
)
def test_steps_stay_whole_and_their_pages_are_full(lesson, form, mean):
    path = examples() / f"{lesson}.ipynb"
    ran = run_notebook(read_notebook(path), path.parent, name=path.name)
    folder = LessonFolder(Path(path).parent)
    html = to_html(compose(ran.handover, ran.notebook, folder, form=FORMS[form]), FORMS[form])
    set_pages = document(html, folder).pages
    feet = {}
    for number, page in enumerate(set_pages, 1):
        for element, _, foot in boxes(page, {"step", "operation"}):
            if element.tag == "article" and "sew" in element.get("class"):
                continue
            feet.setdefault(number, []).append((element, foot))
    seen = [id(element) for found in feet.values() for element, _ in found]
    assert len(seen) == len(set(seen)), "a step or operation is split over two pages"
    depth = FORMS[form].depth
    full = [max(foot for _, foot in found) - FORMS[form].top for found in feet.values()]
    # The last pages of a part may be short, and on A5 a page with one wide picture.
    assert sum(filled > 0.8 * depth for filled in full) >= 0.7 * len(full)
    assert sum(full) / len(full) > mean * depth


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


@pytest.mark.slow
def test_no_page_of_a_buyer_s_booklet_is_mostly_white():
    """But the last of drafting and of the book, behind which a chapter must begin on a new page or nothing comes."""
    path, form = examples() / "dune_skirt.ipynb", FORMS["a4"]
    ran = run_notebook(read_notebook(path), path.parent, name=path.name, size="W4", units="cm", sizes=(DRAFTED,))
    folder = LessonFolder(path.parent)
    book = compose(ran.handover, ran.notebook, folder, prove(ran.handover.pattern), form, audience="buyers")
    set_pages = document(to_html(book, form), folder).pages
    sewing = min(number for number, page in enumerate(set_pages) if "sewing" in page.anchors)
    assert len(set_pages) > 15 and sewing > 10
    shares = {number + 1: round(filled(page, form), 2) for number, page in enumerate(set_pages)}
    free = {sewing, len(set_pages)}  # numbers from 1: the page before sewing, and the last
    assert not {number: share for number, share in shares.items() if share < 0.45 and number not in free}, shares
