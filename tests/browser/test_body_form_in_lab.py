"""The body form in JupyterLab: typed entries, estimates, a slip told beside its box, and the lesson that follows."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from pathlib import Path

import nbformat
import pytest
from playwright.sync_api import Locator, Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook

pytestmark = pytest.mark.browser

CELLS = (
    "from kit import Lesson, bodice_block, body_form, cm",
    'lesson = Lesson("Pebble vest", start=bodice_block, units="cm", size="W4", edition="1", date="2026-11")',
    "body_form(lesson)",
    "from kit import panel\npanel(lesson)",
)


@pytest.fixture(scope="module")
def form(lab: Lab, lab_page: Page) -> Iterator[Locator]:
    cells = [nbformat.v4.new_code_cell(text) for text in CELLS]
    spec = {"kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"}}
    nbformat.write(nbformat.v4.new_notebook(cells=cells, metadata=spec), lab.folder / "bodies.ipynb")
    lab_page.set_viewport_size({"width": 1500, "height": 1250})
    opened = Notebook(lab_page, lab.page_of("bodies.ipynb"))
    opened.run_all()
    found = lab_page.locator(".lessonkit-body-form")
    found.scroll_into_view_if_needed()
    yield found
    opened.close()


def entry(form: Locator, label: str) -> Locator:
    """The box of that label; measurements have their number before it."""
    return form.get_by_role("textbox", name=re.compile(rf"^(\d+\s+)?{label}$"))


def enter(form: Locator, label: str, text: str) -> None:
    box = entry(form, label)
    box.fill(text)
    box.press("Enter")


def test_a_body_is_entered_and_used(form: Locator, out_folder: Path) -> None:
    enter(form, "Name", "Edda")
    enter(form, "Bust girth", "96")
    enter(form, "Waist girth", "31 1/2 in")
    expect(entry(form, "Bust girth")).to_have_value("96 cm")
    expect(form.get_by_text("37.6 cm (14 13/16 in), estimated").first).to_be_visible()
    enter(form, "Hip girth", "9")
    expect(form.get_by_text("cannot be right")).to_be_visible()
    form.page.screenshot(path=out_folder / "lab-body-form.png")
    enter(form, "Hip girth", "104")
    form.get_by_role("button", name="Use this body").click()
    expect(form.get_by_text("now drafted for Edda")).to_be_visible()
    expect(form.page.locator(".lessonkit-panel").get_by_text("Edda (own measurements)")).to_be_attached()


def test_save_writes_a_file(form: Locator, lab: Lab) -> None:
    enter(form, "File", "edda.toml")
    form.get_by_role("button", name="Save").click()
    expect(form.get_by_text("Saved to edda.toml")).to_be_visible()
    assert 'waist_girth = "31 1/2 in"' in (lab.folder / "edda.toml").read_text()
