"""A class in a room: two browsers, each with values of its own; exercises that check themselves; own pages."""

from __future__ import annotations

import json
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
from notebook import until
from room import Room, running_room

pytestmark = pytest.mark.browser

SIDECAR = "tideline-wrap-top.values.json"


class Student:
    """One browser in the room. `troubles` are what its pages reported as errors."""

    def __init__(self, browser: Browser, room: Room) -> None:
        self.context = browser.new_context(viewport={"width": 1400, "height": 1150}, accept_downloads=True)
        self.page: Page = self.context.new_page()
        self.page.set_default_timeout(PATIENCE * 1000)
        self.room = room
        self.troubles: list[str] = []
        self.page.on("pageerror", lambda error: self.troubles.append(str(error)))
        self.page.on("console", lambda said: self.troubles.append(said.text) if said.type == "error" else None)
        self.page.on("response", lambda got: self.troubles.append(got.url) if got.status >= 400 else None)
        self.page.on("requestfailed", lambda asked: self._failed(asked.url))
        self.page.goto(room.link)
        self.settle()

    def _failed(self, url: str) -> None:
        if "/mine/" not in url and "/shutdown/" not in url:  # a download and a page left behind end their requests
            self.troubles.append(f"failed: {url}")

    def settle(self) -> None:
        expect(self.picture).to_be_visible()
        expect(self.print_button).to_be_visible()

    def reload(self) -> None:
        self.page.reload()
        self.settle()

    @property
    def picture(self) -> Locator:
        return self.page.locator(".lessonkit-panel .lessonkit-picture svg").first

    @property
    def print_button(self) -> Locator:
        return self.page.get_by_role("button", name="Print my size")

    def box(self, label: str) -> Locator:
        return self.page.locator(".lessonkit-panel").get_by_role("textbox", name=label, exact=True)

    def enter(self, label: str, text: str) -> None:
        box = self.box(label)
        box.fill(text)
        box.press("Enter")

    def exercise(self, title: str) -> Locator:
        return self.page.locator(".lessonkit-exercise").filter(has_text=f"Exercise: {title}")

    @property
    def folder(self) -> Path:
        """The student's own folder on the teacher's machine."""
        cookies = [c for c in self.context.cookies() if c["name"].startswith("lessonkit-student")]
        return self.room.sessions / cookies[0]["value"]

    def saved(self) -> dict[str, float]:
        path = self.folder / SIDECAR
        values: dict[str, float] = json.loads(path.read_text())["values"] if path.exists() else {}
        return values


@pytest.fixture(scope="module")
def room(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Room]:
    with running_room(tmp_path_factory.mktemp("room")) as running:
        yield running


@pytest.fixture(scope="module")
def students(room: Room, browser: Browser) -> Iterator[tuple[Student, Student]]:
    pair = Student(browser, room), Student(browser, room)
    yield pair
    for student in pair:
        student.context.close()


def test_two_browsers_do_not_see_each_others_values(students: tuple[Student, Student], out_folder: Path) -> None:
    one, two = students
    one.enter("Sleeve length", "30 cm")
    expect(one.box("Sleeve length")).to_have_value("30 cm")
    two.enter("Sleeve length", "8 1/2 in")
    expect(two.box("Sleeve length")).to_have_value("21.6 cm")
    one.enter("Hem drop", "12")
    expect(one.box("Hem drop")).to_have_value("12 cm")
    expect(two.box("Hem drop")).to_have_value("14 cm")
    assert one.folder != two.folder
    assert until(lambda: one.saved() == {"sleeve_length": 300.0, "hem_drop": 120.0})
    assert until(lambda: two.saved() == {"sleeve_length": pytest.approx(8.5 * 25.4)})
    one.page.screenshot(path=out_folder / "class-one.png")
    two.page.screenshot(path=out_folder / "class-two.png")


def test_a_page_loaded_again_has_the_students_values(students: tuple[Student, Student]) -> None:
    """Also those moved just before: the kernel that ends writes them, the new one waits for it."""
    one, two = students
    one.enter("Facing depth", "6 cm")
    expect(one.box("Facing depth")).to_have_value("6 cm")
    one.reload()
    for label, value in (("Sleeve length", "30 cm"), ("Hem drop", "12 cm"), ("Facing depth", "6 cm")):
        expect(one.box(label)).to_have_value(value)
    expect(two.box("Facing depth")).to_have_value("5 cm")


def test_an_exercise_says_what_is_missing_and_then_praises(students: tuple[Student, Student], out_folder: Path) -> None:
    """Two hints, one at a time; no answer to be shown."""
    one, _ = students
    exercise = one.exercise("Longer underarm")
    exercise.scroll_into_view_if_needed()
    expect(exercise).to_contain_text("Front: sleeve opening – moved by 4 cm")  # the sleeve is longer by now
    exercise.get_by_role("button", name="Start from the lesson's values").click()
    expect(one.box("Sleeve length")).to_have_value("26 cm")
    expect(exercise).to_contain_text("Front: underarm seam – to become 2 cm (3/4 in) longer.")
    one.enter("Underarm drop", "10.9 cm")
    expect(exercise).to_contain_text(re.compile(r"longer so far; [\d.]+ [mc]m \(.*\) missing"))
    expect(exercise).to_contain_text("Front: sleeve opening – as it was.")
    expect(exercise.get_by_role("button", name="Show the answer")).to_have_count(0)
    exercise.get_by_role("button", name="Show a hint (2 left)").click()
    expect(exercise).to_contain_text("Which measure says where the underarm curve joins the side?")
    expect(exercise).not_to_contain_text("Look for")
    exercise.scroll_into_view_if_needed()
    one.page.screenshot(path=out_folder / "class-exercise-missing.png")
    one.enter("Underarm drop", "11.9 cm")
    expect(exercise).to_contain_text("Well done – Longer underarm is solved.")
    one.enter("Sleeve ease", "4 cm")
    expect(exercise).to_contain_text("Front: sleeve opening – 1 cm (3/8 in) longer; it should stay as it was.")
    expect(exercise).not_to_contain_text("Well done")
    one.enter("Sleeve ease", "3 cm")
    expect(exercise).to_contain_text("Well done")
    exercise.scroll_into_view_if_needed()
    one.page.screenshot(path=out_folder / "class-exercise-solved.png")


def text_of(page: Page, link: Locator, path: Path) -> str:
    with page.expect_download() as begun:
        link.click()
    begun.value.save_as(path)
    return subprocess.run(["pdftotext", str(path), "-"], check=True, capture_output=True, text=True).stdout


def test_print_my_size_gives_the_students_own_pages(
    students: tuple[Student, Student], room: Room, out_folder: Path, tmp_path: Path
) -> None:
    one, two = students
    before = sorted((path.name, path.stat().st_mtime_ns) for path in room.folder.rglob("*"))
    one.enter("Sleeve length", "30 cm")
    one.page.locator(".lessonkit-panel").get_by_label("Size", exact=True).select_option(label="W7")
    one.print_button.click()
    box = one.page.locator(".lessonkit-print")
    expect(box.get_by_role("button", name="Cancel")).to_be_visible()
    expect(box).to_contain_text("Made for W7")
    one.page.locator(".lessonkit-print").scroll_into_view_if_needed()
    one.page.screenshot(path=out_folder / "class-print.png")
    pages = text_of(one.page, box.get_by_role("link", name="Pattern pages, A4"), tmp_path / "pages.pdf")
    assert "Tideline wrap top" in pages and re.search(r"\bW7\b", pages) and not re.search(r"\bW4\b", pages)
    booklet = text_of(one.page, box.get_by_role("link", name="Booklet"), out_folder / "class-own-booklet.pdf")
    assert re.search(r"carry it on for\s+30 cm", booklet) and "W7" in booklet
    assert sorted((path.name, path.stat().st_mtime_ns) for path in room.folder.rglob("*")) == before
    expect(two.page.locator(".lessonkit-print").get_by_role("link")).to_have_count(0)


def test_a_job_can_be_cancelled_and_the_last_files_stay(students: tuple[Student, Student]) -> None:
    one, _ = students
    box = one.page.locator(".lessonkit-print")
    one.print_button.click()
    box.get_by_role("button", name="Cancel").click()
    expect(box).to_contain_text("Cancelled. What was made before is still there.")
    expect(box.get_by_role("link")).to_have_count(2)


def test_an_own_body_is_kept_and_printed(students: tuple[Student, Student], tmp_path: Path, out_folder: Path) -> None:
    _, two = students
    form = two.page.locator(".lessonkit-body-form")
    for label, text in (("Name", "Edda"), ("Bust girth", "98 cm"), ("Waist girth", "80 cm"), ("Hip girth", "106 cm")):
        box = form.get_by_role("textbox", name=re.compile(rf"^(\d+\s+)?{label}$"))
        box.fill(text)
        box.press("Enter")
    form.get_by_role("textbox", name="File").fill("../../escaped")
    form.get_by_role("textbox", name="File").press("Enter")
    form.get_by_role("button", name="Save").click()
    expect(form.get_by_text("names a folder")).to_be_visible()
    form.get_by_role("button", name="Use this body").click()
    expect(two.page.locator(".lessonkit-panel").get_by_text("Edda (own measurements)")).to_be_attached()
    assert until(lambda: (two.folder / "own-body.toml").exists())
    two.reload()
    expect(two.page.locator(".lessonkit-panel").get_by_text("Edda (own measurements)")).to_be_attached()
    box = two.page.locator(".lessonkit-print")
    box.get_by_role("checkbox", name="With the booklet").uncheck()
    two.print_button.click()
    expect(box).to_contain_text("Made for Edda")
    assert "Edda" in text_of(two.page, box.get_by_role("link", name="Pattern pages, A4"), tmp_path / "edda.pdf")
    form.scroll_into_view_if_needed()
    two.page.screenshot(path=out_folder / "class-own-body.png")


def test_no_page_reported_an_error(students: tuple[Student, Student]) -> None:
    for student in students:
        assert [t for t in student.troubles if not re.search(r"favicon|ResizeObserver loop", t)] == []
