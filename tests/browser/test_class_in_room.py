"""A class in a room: two students' browsers and the teacher's board; exercises, own pages, and what is nobody else's.

The page is worked by the room but in the last test, where a device works it itself and then cannot any more.
"""

from __future__ import annotations

import re
import subprocess
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Locator, Page, expect

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
sys.path.insert(0, str(Path(__file__).parent))
from lab import PATIENCE
from open_room import Room, running_room

from kit.errors import KitError
from kit.page.core import core

pytestmark = pytest.mark.browser


class Opened:
    """One browser. `troubles` are what its page reported as errors."""

    def __init__(self, browser: Browser, address: str, width: int = 1280, height: int = 800) -> None:
        self.context = browser.new_context(viewport={"width": width, "height": height}, accept_downloads=True)
        self.page: Page = self.context.new_page()
        self.page.set_default_timeout(PATIENCE * 1000)
        self.troubles: list[str] = []
        self.page.on("pageerror", lambda error: self.troubles.append(str(error)))
        self.page.on("console", lambda said: self.troubles.append(said.text) if said.type == "error" else None)
        self.page.on("response", lambda got: self.troubles.append(got.url) if got.status >= 400 else None)
        self.page.goto(address)
        expect(self.page.locator("#picture svg")).to_be_visible()

    def value(self, name: str) -> Locator:
        return self.page.locator(f"#value-{name}")

    def set(self, name: str, mm: float) -> None:
        """Move a slider whose steps are millimetres."""
        self.value(name).evaluate(
            "(slider, at) => { slider.value = at; slider.dispatchEvent(new Event('input')); }", mm
        )

    def shows(self, name: str, text: str) -> None:
        expect(self.value(name)).to_have_attribute("aria-valuetext", re.compile(f"^{re.escape(text)}"))


@pytest.fixture(scope="module")
def room(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Room]:
    with running_room(tmp_path_factory.mktemp("room"), "--room-alone") as running:
        yield running


@pytest.fixture(scope="module")
def students(room: Room, browser: Browser) -> Iterator[tuple[Opened, Opened]]:
    pair = Opened(browser, room.link, 390, 844), Opened(browser, room.link)
    yield pair
    for student in pair:
        student.context.close()


@pytest.fixture(scope="module")
def board(room: Room, browser: Browser) -> Iterator[Opened]:
    opened = Opened(browser, room.board, 1920, 1080)
    yield opened
    opened.context.close()


def test_two_browsers_do_not_see_each_others_values(students: tuple[Opened, Opened]) -> None:
    one, two = students
    one.set("sleeve_length", 300)
    one.shows("sleeve_length", "30 cm")
    two.set("sleeve_length", 200)
    two.shows("sleeve_length", "20 cm")
    one.shows("sleeve_length", "30 cm")


def test_a_page_loaded_again_has_the_students_values(students: tuple[Opened, Opened]) -> None:
    one, two = students
    one.page.reload()
    one.shows("sleeve_length", "30 cm")
    two.shows("sleeve_length", "20 cm")


def test_an_exercise_says_what_is_missing_and_then_praises(students: tuple[Opened, Opened], out_folder: Path) -> None:
    """Two hints, one at a time; no answer to be shown."""
    one, _ = students
    exercise = one.page.locator("#exercise-longer-underarm")
    expect(exercise).to_contain_text("Front: sleeve opening – moved by 4 cm")  # the sleeve is longer by now
    exercise.get_by_role("button", name="Start from the lesson's values").click()
    one.shows("sleeve_length", "26 cm")
    expect(exercise).to_contain_text("Front: underarm seam – to become 2 cm (3/4 in) longer.")
    one.set("underarm_drop", 109)
    expect(exercise).to_contain_text(re.compile(r"longer so far; [\d.]+ [mc]m \(.*\) missing"))
    expect(exercise.get_by_role("button", name="Show the answer")).to_have_count(0)
    exercise.get_by_role("button", name=re.compile("hint")).click()
    expect(exercise).to_contain_text("Which measure says where the underarm curve joins the side?")
    expect(exercise).not_to_contain_text("Look for")
    one.set("underarm_drop", 119)
    expect(exercise).to_contain_text("Well done – Longer underarm is solved.")
    exercise.scroll_into_view_if_needed()
    one.page.screenshot(path=out_folder / "class-exercise-solved.png")


def test_the_board_shows_who_is_here_and_no_more(
    students: tuple[Opened, Opened], board: Opened, out_folder: Path
) -> None:
    one, two = students
    rows = board.page.locator("#rows tr")
    expect(rows).to_have_count(2)
    expect(rows.first).to_contain_text("1 of 20")
    expect(rows.first.locator(".solved")).to_have_text("✓ 1")
    two.page.locator("#class-name").fill("Ines <b>")
    two.page.locator("#class-name").press("Tab")
    two.page.locator("#class-hand").click()
    expect(rows.first).to_contain_text("Ines <b>")  # a raised hand goes first
    expect(board.page.get_by_role("button", name="Look: Ines <b>")).to_have_count(0)
    expect(rows.first).to_contain_text("has not allowed it")
    two.page.locator("#class-look").check()
    board.page.get_by_role("button", name="Look: Ines <b>").click()
    expect(board.page.locator("#looked-values")).to_contain_text("20 cm")
    expect(board.page.locator("#looked-picture svg")).to_be_visible()
    board.page.screenshot(path=out_folder / "class-board-look.png")
    board.page.locator("#looked").get_by_role("button", name="Close").click()
    board.page.get_by_role("button", name=re.compile("Hand raised")).click()
    expect(two.page.locator("#class-hand")).to_have_attribute("aria-pressed", "false")
    one.page.locator("#class-look").check()
    board.page.locator("#over").get_by_role("button").click()
    expect(board.page.locator("#over-said")).to_have_text("Drafts shown: 2")
    expect(board.page.locator("#drafts figure").first.locator("path")).to_have_count(2)
    for width in (390, 1280, 1920):
        board.page.set_viewport_size({"width": width, "height": 900})
        assert board.page.evaluate("() => document.documentElement.scrollWidth <= innerWidth"), width
        board.page.screenshot(path=out_folder / f"class-board-{width}.png", full_page=True)
    one.page.locator("#class-look").uncheck()
    two.page.locator("#class-look").uncheck()
    expect(board.page.get_by_role("button", name=re.compile("^Look: "))).to_have_count(0)


def test_the_address_is_shown_large(room: Room, board: Opened, out_folder: Path) -> None:
    board.page.get_by_role("button", name="Show it large").click()
    large = board.page.locator("#large")
    expect(large.locator("img")).to_be_visible()
    assert large.locator(".code").inner_text().replace("-", "") == room.code
    assert large.locator(".code").evaluate("element => parseFloat(getComputedStyle(element).fontSize)") > 90
    board.page.screenshot(path=out_folder / "class-board-large.png")
    large.get_by_role("button", name="Close").click()


def test_pages_go_along_and_let_go(students: tuple[Opened, Opened], board: Opened) -> None:
    one, two = students
    board.page.locator("#follow").click()
    for student in students:
        expect(student.page.locator("#class-follow")).to_contain_text("going along")
    board.page.locator("#on").click()
    for student in students:
        expect(student.page.locator("#step-label")).to_have_text("Drafting step 2")
    two.page.locator("#back").click()  # who walks alone is let go
    expect(two.page.locator("#class-follow")).to_contain_text("leads the class")
    board.page.locator("#on").click()
    expect(one.page.locator("#step-label")).to_have_text("Drafting step 3")
    expect(two.page.locator("#step-label")).to_have_text("Drafting step 1")
    two.page.locator("#class-follow button").click()
    expect(two.page.locator("#step-label")).to_have_text("Drafting step 3")
    board.page.locator("#follow").click()
    expect(one.page.locator("#class-follow")).to_be_hidden()


def test_a_value_and_a_step_are_sent_to_all_and_can_be_given_back(
    students: tuple[Opened, Opened], board: Opened
) -> None:
    one, two = students
    board.page.select_option("#value-of", value="sleeve_length")
    board.page.locator("#value").evaluate("slider => { slider.value = 350; slider.dispatchEvent(new Event('input')); }")
    expect(board.page.locator("#value-said")).to_contain_text("35 cm")
    board.page.locator("#send-value").click()
    expect(board.page.locator("#sent")).to_have_text("Sent to 2.")
    for student in students:
        student.shows("sleeve_length", "35 cm")
    two.page.locator("#class-back").click()
    two.shows("sleeve_length", "20 cm")
    one.shows("sleeve_length", "35 cm")
    board.page.select_option("#steps", index=0)
    board.page.get_by_role("button", name="Send everybody to this step").click()
    for student in students:
        expect(student.page.locator("#step-label")).to_have_text("Drafting step 1")


def text_of(page: Page, link: Locator, path: Path) -> str:
    with page.expect_download() as begun:
        link.click()
    begun.value.save_as(path)
    return subprocess.run(["pdftotext", str(path), "-"], check=True, capture_output=True, text=True).stdout


def test_my_pages_and_booklet_are_made_for_an_own_body(
    students: tuple[Opened, Opened], room: Room, out_folder: Path, tmp_path: Path
) -> None:
    one, two = students
    before = sorted((path.name, path.stat().st_mtime_ns) for path in room.folder.rglob("*"))
    one.set("sleeve_length", 300)
    one.shows("sleeve_length", "30 cm")
    one.page.select_option("#size", label="My own measurements")
    one.page.locator("#body-name").fill("Edda")
    for name, text in (("bust_girth", "98 cm"), ("waist_girth", "80 cm"), ("hip_girth", "106 cm")):
        one.page.locator(f"#measure-{name}").fill(text)
    one.page.get_by_role("button", name="Draft for these measurements").click()
    expect(one.page.locator("#told")).to_contain_text("Edda")
    one.page.get_by_role("button", name="Print my size").click()
    expect(one.page.get_by_role("button", name="Cancel")).to_be_visible()
    expect(one.page.locator("#class-making")).to_contain_text("Made for Edda")
    pages = text_of(one.page, one.page.get_by_role("link", name="Pattern pages, A4"), tmp_path / "pages.pdf")
    assert "Tideline wrap top" in pages and "Edda" in pages
    booklet = one.page.get_by_role("link", name="Booklet")
    expect(booklet).to_be_visible(timeout=2 * PATIENCE * 1000)  # it comes after the pages
    said = text_of(one.page, booklet, out_folder / "class-own-booklet.pdf")
    assert re.search(r"carry it on for\s+30 cm", said) and "Edda" in said
    assert sorted((path.name, path.stat().st_mtime_ns) for path in room.folder.rglob("*")) == before
    expect(two.page.locator("#class-files a")).to_have_count(0)
    one.page.get_by_role("button", name="Print my size").click()
    one.page.get_by_role("button", name="Cancel").click()
    expect(one.page.locator("#class-making")).to_contain_text("Cancelled. What was made before is still there.")
    expect(one.page.locator("#class-files a")).to_have_count(2)


def test_no_page_reported_an_error(students: tuple[Opened, Opened], board: Opened) -> None:
    for opened in (*students, board):
        assert [t for t in opened.troubles if "ResizeObserver loop" not in t] == []


def test_a_device_works_the_lesson_itself_and_the_room_when_it_cannot(
    tmp_path_factory: pytest.TempPathFactory, browser: Browser
) -> None:
    try:
        core()
    except KitError as error:
        if "npm" in str(error):
            pytest.skip(f"Pyodide cannot be had here: {error}")
        raise
    with running_room(tmp_path_factory.mktemp("own"), "--workers", "1", small=True) as room:
        student = Opened(browser, room.link, 390, 844)
        assert student.page.evaluate("() => document.documentElement.dataset.engine") == "own"
        student.set("hem_drop", 120)
        student.shows("hem_drop", "12 cm")
        assert student.troubles == []
        student.page.route("**/python.zip.lzma", lambda route: route.abort())  # part of it cannot be had any more
        student.page.reload()
        student.page.wait_for_function("() => document.documentElement.dataset.engine === 'room'")
        student.shows("hem_drop", "12 cm")
        student.context.close()
