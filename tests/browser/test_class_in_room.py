"""A class in a room: two students' browsers and the teacher's board; exercises, own pages, and what is nobody else's.

The page is worked by the room but in the last test, where a device works it itself and then cannot any more. What a
page does while the room is slow is tried on a line whose answers are held back, by the page's own clock set on.
"""

from __future__ import annotations

import json
import re
import subprocess
import sys
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, Locator, Page, WebSocketRoute, expect

sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
sys.path.insert(0, str(Path(__file__).parent))
from lab import PATIENCE
from notebook import painted, until
from open_room import Room, running_room

from kit.errors import KitError
from kit.page.core import core

pytestmark = pytest.mark.browser


class Opened:
    """One browser. `troubles` are what its page reported as errors."""

    def __init__(
        self,
        browser: Browser,
        address: str,
        width: int = 1280,
        height: int = 800,
        before: Callable[[Page], None] = lambda page: None,
    ) -> None:
        self.context = browser.new_context(viewport={"width": width, "height": height}, accept_downloads=True)
        self.page: Page = self.context.new_page()
        self.page.set_default_timeout(PATIENCE * 1000)
        self.troubles: list[str] = []
        self.page.on("pageerror", lambda error: self.troubles.append(str(error)))
        self.page.on("console", lambda said: self.troubles.append(said.text) if said.type == "error" else None)
        self.page.on("response", lambda got: self.troubles.append(got.url) if got.status >= 400 else None)
        before(self.page)
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


def test_a_value_a_preset_and_a_step_are_sent_to_all_and_can_be_given_back(
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
    one.page.locator("#class-keep").click()
    board.page.select_option("#preset", label="Long and loose")
    board.page.get_by_role("button", name="Send this preset to everybody").click()
    for student in students:
        expect(student.page.locator("#class-sent-said")).to_have_text(
            "Your teacher set “Long and loose” for everybody."
        )
        student.shows("sleeve_length", "38 cm")
        student.shows("hem_drop", "16 cm")
        student.page.locator("#class-back").click()
    two.shows("sleeve_length", "20 cm")
    one.shows("sleeve_length", "35 cm")
    two.shows("hem_drop", "14 cm")
    board.page.select_option("#steps", index=0)
    board.page.get_by_role("button", name="Send everybody to this step").click()
    for student in students:
        expect(student.page.locator("#step-label")).to_have_text("Drafting step 1")


def text_of(page: Page, link: Locator, path: Path) -> str:
    with page.expect_download() as begun:
        link.click()
    begun.value.save_as(path)
    return subprocess.run(["pdftotext", str(path), "-"], check=True, capture_output=True, text=True).stdout


class Slow:
    """The line between a page and the room. While it is `held` the room's answers wait here."""

    def __init__(self) -> None:
        self.held = False
        self.answers: list[dict[str, Any]] = []
        self.first: list[dict[str, Any]] = []  # what the room says as soon as the line is open

    def before(self, page: Page) -> None:
        self.page = page
        page.clock.install()
        page.route_web_socket(re.compile("/line$"), self._opened)

    def _opened(self, line: WebSocketRoute) -> None:
        self.line = line
        room = line.connect_to_server()
        line.on_message(room.send)
        room.on_message(self._answered)

    def _answered(self, text: str | bytes) -> None:
        told = json.loads(text)
        if self.held and told["is"] == "answer":
            self.answers.append(told)
        else:
            self.line.send(text)
            if told["is"] == "welcome":
                for each in self.first:
                    self.say(each)

    def next(self, do: str = "draw", **instead: Any) -> None:
        """Let the next answer through to a question of that kind, or something `instead`; others before it too."""
        while True:
            assert until(lambda: self.page.evaluate("() => true") and bool(self.answers))
            told = self.answers.pop(0)
            wanted = ("svg" in json.loads(told["text"])) == (do == "draw")
            if wanted and instead:
                told = {"is": "answer", "id": told["id"], **instead}
            self.say(told)
            if wanted:
                return

    def say(self, told: dict[str, Any]) -> None:
        self.line.send(json.dumps(told))

    def free(self) -> None:
        self.held = False
        for told in self.answers:
            self.say(told)
        self.answers.clear()


@pytest.fixture
def slow(room: Room, browser: Browser) -> Iterator[tuple[Opened, Slow]]:
    line = Slow()
    opened = Opened(browser, room.link, before=line.before)
    opened.shows("sleeve_length", "26 cm")
    expect(opened.page.locator("html")).to_have_attribute("data-proved", re.compile(r"\d"))
    yield opened, line
    opened.context.close()


def test_a_page_that_waits_its_turn_is_not_told_that_a_step_does_not_end(slow: tuple[Opened, Slow]) -> None:
    opened, line = slow
    line.held = True
    opened.set("sleeve_length", 310)
    opened.page.clock.fast_forward("10:00")
    expect(opened.page.locator("#trouble")).to_be_hidden()
    line.free()
    opened.shows("sleeve_length", "31 cm")
    expect(opened.page.locator("#trouble")).to_be_hidden()


def test_a_room_without_time_is_asked_again_and_what_does_not_end_is_told(slow: tuple[Opened, Slow]) -> None:
    opened, line = slow
    line.held = True
    opened.set("sleeve_length", 320)
    line.next(why="too_many")
    expect(opened.page.locator("#class-said")).to_have_text("The class has much to do just now. Your draft follows.")
    opened.set("sleeve_length", 330)  # what was set meanwhile is asked for, and not what was refused
    line.next()
    opened.shows("sleeve_length", "33 cm")
    expect(opened.page.locator("#class-said")).to_be_hidden()
    opened.set("sleeve_length", 340)
    line.next(why="stopped")
    expect(opened.page.locator("#trouble-said")).to_contain_text("This did not come to an end and was stopped.")
    line.free()
    opened.shows("sleeve_length", "33 cm")
    expect(opened.page.locator("#trouble")).to_be_hidden()


def test_a_move_takes_the_place_of_a_proof_that_waits(slow: tuple[Opened, Slow]) -> None:
    opened, line = slow
    line.held = True
    opened.set("sleeve_length", 290)
    line.next()
    opened.page.clock.fast_forward(1000)
    assert until(lambda: opened.page.evaluate("() => true") and bool(line.answers))
    assert "svg" not in json.loads(line.answers[0]["text"])
    line.answers.clear()  # the proof's answer never comes
    opened.set("sleeve_length", 280)
    line.next()
    opened.shows("sleeve_length", "28 cm")


def test_where_the_teacher_leads_stands_whatever_was_being_drawn(slow: tuple[Opened, Slow]) -> None:
    """A picture of the step before comes late, and the page becomes wider before that of the new step is there."""
    opened, line = slow
    steps = opened.page.locator("#steps option")
    kind, _, key = (steps.nth(4).get_attribute("value") or "").partition(":")
    line.held = True
    opened.set("sleeve_length", 300)
    line.say({"is": "follow", "on": True, "step": {"kind": kind, "key": key, "picture": 1}})
    expect(opened.page.locator("#class-follow")).to_contain_text("going along")
    line.next()
    opened.page.set_viewport_size({"width": 900, "height": 800})
    painted(opened.page)
    opened.page.clock.fast_forward(1000)
    line.next()
    line.free()
    expect(opened.page.locator("#step-label")).to_have_text("Drafting step 5")
    expect(opened.page.locator("html")).to_have_attribute("data-drawn", re.compile(r"\d"))
    opened.shows("sleeve_length", "30 cm")
    expect(opened.page.locator("#class-follow")).to_contain_text("going along")
    expect(opened.page.locator("#step-label")).to_have_text("Drafting step 5")


def test_what_is_sent_while_a_page_opens_waits_for_it(room: Room, browser: Browser) -> None:
    line = Slow()
    line.first = [
        {"is": "take", "step": None, "values": {"sleeve_length": 210.0}, "title": ""},
        {"is": "take", "step": None, "values": {"hem_drop": 150.0}, "title": "Long"},
    ]
    opened = Opened(browser, room.link, before=line.before)
    opened.shows("sleeve_length", "21 cm")
    opened.shows("hem_drop", "15 cm")
    opened.page.locator("#class-back").click()
    opened.shows("sleeve_length", "26 cm")
    opened.shows("hem_drop", "14 cm")
    opened.context.close()


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
