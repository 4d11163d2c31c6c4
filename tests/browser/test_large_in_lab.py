"""A lesson shown large in JupyterLab: it fills the window, a clicker goes on, and type can be read from afar. And the
panel on an ordinary page, at four widths."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

import nbformat
import pytest
from playwright.sync_api import Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook, painted, until

pytestmark = pytest.mark.browser

MADE = "shown_large.ipynb"
CELLS = (
    "from kit import Lesson, bodice_block, cm, panel, show_large\n"
    'lesson = Lesson("Quay vest", start=bodice_block)\n'
    + "\n".join(f'lesson.length("size_{n}", 5 * cm, least=1 * cm, most=20 * cm, why="one of many")' for n in range(12))
    + '\nlesson.length("hem", 14 * cm, least=4 * cm, most=20 * cm)',
    '@lesson.step("Lower the hem")\ndef lower(front, hem):\n    "Rule the hem {hem} below the waistline."\n'
    '    front.draw(hem=front.waist.parallel(hem, "down"), instead_of=front.hip)\n'
    "    front.join(front.side, front.hem)\n    front.join(front.hem, front.centre)",
    '@lesson.finished("Hem of the whole garment, all round")\ndef hem_round(front):\n    return front.hem.length * 4',
    "panel(lesson)",
    'show_large(lesson, "hem")',
)
BOX = (
    "(name) => { const b = document.querySelector(name).getBoundingClientRect(); return [b.x, b.y, b.width, b.height] }"
)

# What reaches beyond the right edge of a part of the page: its name and how far, px.
OUTSIDE = """(name) => { const root = document.querySelector(name), edge = root.getBoundingClientRect().right;
  return [...root.querySelectorAll("select, button, table, input, label")]
    .map((e) => [e.tagName, e.textContent.slice(0, 30), Math.round(e.getBoundingClientRect().right - edge)])
    .filter(([, , far]) => far > 1) }"""


@pytest.fixture(scope="module")
def lesson(lab: Lab, lab_page: Page) -> Iterator[Notebook]:
    spec = {"kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"}}
    book = nbformat.v4.new_notebook(metadata=spec, cells=[nbformat.v4.new_code_cell(cell) for cell in CELLS])
    nbformat.write(book, lab.folder / MADE)
    lab_page.set_viewport_size({"width": 1920, "height": 1080})
    opened = Notebook(lab_page, lab.page_of(MADE))
    opened.run_all()
    yield opened
    opened.close()


@pytest.mark.parametrize(("wide", "high"), [(1920, 1080), (1280, 720), (768, 1024), (390, 844)])
def test_the_panel_uses_the_width_and_keeps_its_picture_in_sight(
    lesson: Notebook, out_folder: Path, wide: int, high: int
) -> None:
    page = lesson.page
    page.set_viewport_size({"width": wide, "height": high})
    if wide < 1000:  # on a telephone or tablet the list of files is put away first
        page.evaluate("() => jupyterapp.shell.collapseLeft()")
    page.evaluate("document.querySelector('.lessonkit-panel').scrollIntoView({block: 'start'})")
    painted(page, 4)
    page.screenshot(path=out_folder / f"lab-panel-{wide}.png")
    panel, picture, rows = (page.evaluate(BOX, f".lessonkit-{name}") for name in ("panel", "picture", "rows"))
    assert picture[0] + picture[2] >= panel[0] + panel[2] - 32, "the picture reaches the right edge"
    assert rows[0] + rows[2] <= panel[0] + panel[2] + 1, "no slider stands outside"
    assert page.evaluate(OUTSIDE, ".lessonkit-panel") == [], "nothing else does: lists to choose from, measurements"
    if wide >= 1280:
        assert picture[1] + picture[3] <= high, "the whole picture is on the screen beside the sliders"
        page.locator(".lessonkit-rows .lessonkit-row").last.scroll_into_view_if_needed()

        def in_sight() -> bool:
            _, top, _, tall = page.evaluate(BOX, ".lessonkit-picture")
            return bool(top >= 0 and top + tall <= high)

        assert until(in_sight), f"and stays there while they scroll: {page.evaluate(BOX, '.lessonkit-picture')}"
    else:
        assert rows[1] >= picture[1] + picture[3] - 1 and rows[1] < high, "sliders begin under the picture, in sight"
        shown = page.locator(".lessonkit-row .widget-hbox").first
        assert shown.evaluate("e => e.scrollWidth <= e.clientWidth && e.clientHeight < 40"), (
            "value and inches on one line"
        )
        page.evaluate("() => jupyterapp.shell.expandLeft()")


def test_an_error_stands_beside_its_box(lesson: Notebook) -> None:
    lesson.page.set_viewport_size({"width": 1280, "height": 900})
    lesson.box("Hem").fill("13 bananas")
    lesson.box("Hem").press("Enter")
    row = lesson.panel.locator(".lessonkit-row").filter(has=lesson.page.get_by_label("Hem", exact=True))
    expect(row).to_contain_text("bananas")


def test_shown_large_it_fills_the_window_and_a_clicker_goes_on(lesson: Notebook, out_folder: Path) -> None:
    page = lesson.page
    page.set_viewport_size({"width": 1920, "height": 1080})
    root = page.locator(".lessonkit-large-root")
    root.scroll_into_view_if_needed()
    page.locator(".lessonkit-large-open").click()
    assert until(lambda: page.evaluate(BOX, ".lessonkit-large-root") == [0, 0, 1920, 1080])
    assert page.locator(".lessonkit-large-picture svg").evaluate("e => e.getBoundingClientRect().width") > 1200
    page.keyboard.press("PageDown")
    expect(page.locator(".lessonkit-large-title")).to_have_text("Lower the hem")
    for part in ("label", "words", "row", "title"):
        size = page.locator(f".lessonkit-large-{part}").first.evaluate("e => parseFloat(getComputedStyle(e).fontSize)")
        assert size >= 28, part
    slider = page.locator(".lessonkit-large-row input")
    slider.focus()
    page.keyboard.press("ArrowRight")
    expect(page.locator(".lessonkit-large-words")).to_contain_text("14.1 cm")
    expect(page.locator(".lessonkit-large-picture")).to_contain_text("14.1 cm")
    page.keyboard.press("PageUp")  # a clicker's key goes on though the slider has the keyboard
    expect(page.locator(".lessonkit-large-title")).to_have_text("Quay vest")
    root.focus()
    page.keyboard.press("b")
    expect(root).to_have_attribute("data-look", "dark")
    painted(page, 4)
    page.screenshot(path=out_folder / "lab-large-dark.png")
    page.keyboard.press("Escape")
    assert until(lambda: page.evaluate(BOX, ".lessonkit-large-root")[3] < 1000)
    expect(page.get_by_label("Hem", exact=True).first).to_have_value("14.1 cm")


def test_the_page_reported_no_error(lesson: Notebook) -> None:
    assert lesson.faults == []
