"""Fit changes on the panel in JupyterLab: proposed for a body, set with one button, moved by their slider, undone."""

from __future__ import annotations

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
    "from kit import Lesson, darted_bodice_block, cm, make_body",
    'lesson = Lesson("Shingle blouse", start=darted_bodice_block, units="cm", edition="1", date="2026-11")\n'
    'lesson.choose(body=make_body({"upper_chest_girth": 88 * cm, "bust_girth": 96 * cm, '
    '"back_waist_length": 44 * cm}, name="Edda"))',
    "from kit import panel\npanel(lesson)",
)


@pytest.fixture(scope="module")
def shown(lab: Lab, lab_page: Page) -> Iterator[Locator]:
    cells = [nbformat.v4.new_code_cell(text) for text in CELLS]
    spec = {"kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"}}
    nbformat.write(nbformat.v4.new_notebook(cells=cells, metadata=spec), lab.folder / "fit.ipynb")
    lab_page.set_viewport_size({"width": 1280, "height": 1400})
    opened = Notebook(lab_page, lab.page_of("fit.ipynb"))
    opened.run_all()
    found = lab_page.locator(".lessonkit-panel")
    found.scroll_into_view_if_needed()
    yield found
    opened.close()


def test_what_a_body_asks_for_is_set_and_undone(shown: Locator, out_folder: Path) -> None:
    page = shown.page
    shown.get_by_role("button", name="Fit changes").click()
    expect(shown.get_by_text("Full bust: 6").first).to_be_visible()
    page.screenshot(path=out_folder / "lab-fit-advised.png")
    shown.get_by_role("button", name="with these changes").click()
    expect(shown.get_by_role("textbox", name="Full bust")).to_be_visible()
    expect(shown.get_by_role("textbox", name="Lengthen above the waist")).to_be_visible()
    for width in (390, 1280, 1920):
        page.set_viewport_size({"width": width, "height": 1400})
        shown.scroll_into_view_if_needed()
        page.screenshot(path=out_folder / f"lab-fit-{width}.png")
    page.set_viewport_size({"width": 1280, "height": 1400})
    shown.get_by_role("button", name="Undo").click()
    expect(shown.get_by_role("textbox", name="Full bust")).to_have_count(0)
