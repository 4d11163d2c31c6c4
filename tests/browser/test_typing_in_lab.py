"""Writing a step in JupyterLab: Tab offers the piece's names and verbs, Shift-Tab shows a verb with its example."""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook

pytestmark = pytest.mark.browser

NAME = "half_written.ipynb"
LESSON = """from kit import Lesson, bodice_block, cm
lesson = Lesson("Landing vest", start=bodice_block)
lesson.length("hem_drop", 14 * cm, least=4 * cm, most=20 * cm, why="how far it reaches")"""
STEP = '@lesson.step("Raise the shoulder")\ndef raise_it(front, hem_drop):\n    """Words."""\n    front.'
SEW = '@lesson.sew("Sides")\ndef sides(make, front, back):\n    """Words."""\n    make.plain_seam(front.side, '


@pytest.fixture(scope="module")
def book(lab: Lab, lab_page: Page) -> Iterator[Notebook]:
    """The lesson has run; the steps below it are still being written."""
    cells = [
        {"cell_type": "code", "id": f"c{i}", "metadata": {}, "outputs": [], "execution_count": None, "source": source}
        for i, source in enumerate((LESSON, STEP, SEW))
    ]
    kernel = {"kernelspec": {"name": "python3", "display_name": "Python 3", "language": "python"}}
    text = json.dumps({"cells": cells, "metadata": kernel, "nbformat": 4, "nbformat_minor": 5})
    (lab.folder / NAME).write_text(text, encoding="utf-8")
    lab_page.set_viewport_size({"width": 1300, "height": 900})
    opened = Notebook(lab_page, lab.page_of(NAME))
    cell(opened, 0).click()
    lab_page.keyboard.press("Control+Enter")
    opened.page.locator(".jp-InputPrompt", has_text="[1]").first.wait_for()
    opened.wait_idle()
    yield opened
    opened.close()


def cell(book: Notebook, number: int) -> Locator:
    return book.page.locator(".jp-CodeCell").nth(number).locator(".cm-content")


def at_its_end(book: Notebook, number: int) -> None:
    """The cursor behind the last letter of a cell."""
    cell(book, number).click()
    book.page.keyboard.press("Control+End")


def test_tab_shows_draw_with_its_line(book: Notebook, out_folder: Path) -> None:
    at_its_end(book, 1)
    book.page.keyboard.press("Tab")
    offered = book.page.locator(".jp-Completer")
    expect(offered).to_be_visible()
    draw = offered.locator(".jp-Completer-item").filter(has=book.page.locator("code", has_text=re.compile("^draw$")))
    line = draw.locator(".jp-Completer-typeExtended")
    expect(line).to_have_text("verb: draw new edges, in order around the piece")  # JupyterLab writes it small
    expect(offered).to_contain_text("edge: ")
    draw.scroll_into_view_if_needed()
    book.page.screenshot(path=out_folder / "lab-tab.png")
    rows = [row for row in offered.locator(".jp-Completer-item").all() if row.is_visible()]
    assert len({round((row.bounding_box() or {})["height"]) for row in rows}) == 1
    box, name = line.bounding_box(), draw.bounding_box()
    assert box is not None
    assert name is not None
    assert box["height"] <= name["height"]  # in one line, not laid over the next row
    book.page.keyboard.type("dra")
    expect(offered.locator(".jp-Completer-item").first).to_contain_text("draw")
    book.page.keyboard.press("Enter")
    expect(cell(book, 1)).to_contain_text("front.draw")
    expect(offered).to_be_hidden()


def test_shift_tab_shows_arguments_and_the_example(book: Notebook, out_folder: Path) -> None:
    at_its_end(book, 2)
    book.page.keyboard.press("Shift+Tab")
    shown = book.page.locator(".jp-Tooltip")
    expect(shown).to_contain_text("make.plain_seam(a, b, allowance=...")
    expect(shown).to_contain_text("a length, such as 1.5 * cm")
    expect(shown).to_contain_text("Example:")
    expect(shown).to_contain_text('make.plain_seam(front.side, back.side, allowance=1.5 * cm, finish="overlock")')
    book.page.screenshot(path=out_folder / "lab-shift-tab.png")


def test_the_page_reported_no_error(book: Notebook) -> None:
    assert book.faults == []
