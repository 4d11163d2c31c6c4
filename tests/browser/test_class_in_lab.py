"""The class copy in JupyterLab, as a student has it at home: locked cells, a live exercise, own pages to download."""

from __future__ import annotations

import re
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

sys.path.insert(0, str(Path(__file__).parent))
sys.path.insert(0, str(Path(__file__).resolve().parents[1]))
from lab import Lab
from notebook import Notebook
from open_room import make_class_copy, write_lesson

pytestmark = pytest.mark.browser


@pytest.fixture(scope="module")
def copy(lab: Lab, lab_page: Page, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Notebook]:
    lesson = write_lesson(tmp_path_factory.mktemp("teacher"))
    home = lab.folder / "home"  # what the student was given: the class copy and its folder, not the lesson
    home.mkdir()
    shutil.copy(make_class_copy(lesson), home)
    shutil.copytree(lesson.with_name("tideline_wrap_top_class_lesson"), home / "tideline_wrap_top_class_lesson")
    lab_page.set_viewport_size({"width": 1500, "height": 1150})
    opened = Notebook(lab_page, lab.page_of("home/tideline_wrap_top_class.ipynb"))
    opened.run_all()
    yield opened
    opened.close()


def test_cells_are_locked_and_their_code_is_folded_away(copy: Notebook) -> None:
    cells = copy.page.locator(".jp-CodeCell")
    expect(cells).to_have_count(6)
    expect(copy.page.locator(".jp-CodeCell .jp-InputArea-editor:visible")).to_have_count(0)
    cells.nth(1).click(position={"x": 5, "y": 5})
    copy.page.keyboard.press("Escape")
    copy.page.keyboard.press("d")
    copy.page.keyboard.press("d")
    expect(cells).to_have_count(6)


def test_the_exercise_checks_itself(copy: Notebook, out_folder: Path) -> None:
    exercise = copy.page.locator(".lessonkit-exercise").first
    box = copy.box("Underarm drop")
    box.fill("10.9 cm")
    box.press("Enter")
    expect(exercise).to_contain_text("missing")
    box.fill("11.9 cm")
    box.press("Enter")
    expect(exercise).to_contain_text("Well done")
    exercise.scroll_into_view_if_needed()
    copy.page.screenshot(path=out_folder / "class-in-lab.png")


def test_own_pages_are_downloaded(copy: Notebook, lab: Lab, tmp_path: Path, out_folder: Path) -> None:
    box = copy.page.locator(".lessonkit-print")
    box.get_by_role("checkbox", name="With the booklet").uncheck()
    box.get_by_role("button", name="Print my size").click()
    expect(box).to_contain_text("Made for W4")
    link = box.get_by_role("link", name=re.compile("pages-a4.pdf"))
    link.scroll_into_view_if_needed()
    copy.page.screenshot(path=out_folder / "class-in-lab-print.png")
    address = link.get_attribute("href") or ""
    answer = copy.page.request.get(address if address.startswith("http") else f"{lab.address}{address}")
    assert answer.ok and answer.body() == (lab.folder / "home" / "my-pattern" / "pages-a4.pdf").read_bytes()


def test_the_page_reported_no_error(copy: Notebook) -> None:
    assert copy.faults == []
