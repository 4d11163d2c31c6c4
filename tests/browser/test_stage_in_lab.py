"""The stage in JupyterLab: three views of one lesson at four widths, and the whole window with keyboard and clicker."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

import nbformat
import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook, painted, until

pytestmark = pytest.mark.browser

MADE = "on_stage.ipynb"
CELLS = (
    "from kit import Lesson, bodice_block, cm, stage\n"
    'lesson = Lesson("Quay vest", start=bodice_block)\n'
    'lesson.length("hem", 14 * cm, least=4 * cm, most=20 * cm)\n'
    'lesson.share("middle", 0.5, least=0.2, most=0.8)',
    '@lesson.step("Lower the hem")\ndef lower(front, hem):\n    "Rule the hem {hem} below the waistline."\n'
    '    front.draw(hem=front.waist.parallel(hem, "down"), instead_of=front.hip)\n'
    "    front.join(front.side, front.hem)\n    front.join(front.hem, front.centre)",
    '@lesson.step("Mark the middle")\ndef mark(front, middle):\n    "Mark {middle} of the waistline."\n'
    "    front.mark(middle=front.waist.share(middle))",
    '@lesson.sew("Sew the side seam")\ndef side(make, front, back):\n'
    "    make.plain_seam(front.side, back.side, allowance=1 * cm)",
    'stage(lesson, "hem")',
)
BOX = """(name) => { const b = document.querySelector(name)?.getBoundingClientRect();
  return b ? [b.x, b.y, b.width, b.height] : [] }"""
VIEWS = {"Sliders": ".lessonkit-panel", "Drag": ".lessonkit-canvas", "Step by step": ".lessonkit-player"}


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


def turn(page: Page, name: str) -> None:
    page.locator(".lessonkit-stage-views").get_by_role("button", name=name, exact=True).click()
    expect(page.locator(f".lessonkit-stage {VIEWS[name]}")).to_be_visible()
    for other, view in VIEWS.items():
        if other != name:
            expect(page.locator(f".lessonkit-stage {view}")).not_to_be_visible()


@pytest.mark.parametrize(("wide", "high"), [(1920, 1080), (1280, 720), (768, 1024), (390, 844)])
def test_three_views_in_one_place_at_four_widths(lesson: Notebook, out_folder: Path, wide: int, high: int) -> None:
    page = lesson.page
    page.set_viewport_size({"width": wide, "height": high})
    if wide < 1000:
        page.evaluate("() => jupyterapp.shell.collapseLeft()")
    for name, view in VIEWS.items():
        turn(page, name)
        page.evaluate("document.querySelector('.lessonkit-stage').scrollIntoView({block: 'start'})")
        painted(page, 4)
        page.screenshot(path=out_folder / f"lab-stage-{name.replace(' ', '-').lower()}-{wide}.png")
        stage, shown = page.evaluate(BOX, ".lessonkit-stage"), page.evaluate(BOX, f".lessonkit-stage {view}")
        assert shown[0] + shown[2] <= stage[0] + stage[2] + 1, "nothing stands outside"
        assert (
            page.evaluate("(v) => { const e = document.querySelector(v); return e.scrollWidth - e.clientWidth }", view)
            <= 1
        )
    if wide < 1000:
        page.evaluate("() => jupyterapp.shell.expandLeft()")


def test_values_and_step_go_from_view_to_view(lesson: Notebook) -> None:
    page = lesson.page
    page.set_viewport_size({"width": 1280, "height": 900})
    turn(page, "Step by step")
    for key in ("Home", "ArrowRight"):
        page.locator(".lessonkit-stage .lessonkit-player").press(key)
    told = page.locator(".lessonkit-stage-told")
    expect(told).to_have_text("Drafting step 2: Mark the middle")
    turn(page, "Sliders")
    expect(page.locator(".lessonkit-stage .lessonkit-panel select").nth(1)).to_contain_text("Mark the middle")
    lesson.box("Hem").fill("11")
    lesson.box("Hem").press("Enter")
    turn(page, "Drag")
    expect(page.locator(".lessonkit-canvas-bar select")).to_have_value("mark")
    turn(page, "Step by step")
    page.locator(".lessonkit-stage .lessonkit-player").press("ArrowLeft")
    expect(page.locator(".lessonkit-player-words")).to_contain_text("11 cm")
    expect(told).to_have_text("Drafting step 1: Lower the hem")


def keyboard_in(page: Page, view: str) -> bool:
    return bool(page.evaluate("(view) => !!document.activeElement?.closest(view)", view))


def test_shown_large_every_view_fills_the_window_and_a_clicker_goes_on(lesson: Notebook, out_folder: Path) -> None:
    page = lesson.page
    page.set_viewport_size({"width": 1920, "height": 1080})
    turn(page, "Step by step")
    for key, step in (("End", "Sewing step 1: Sew the side seam"), ("Home", "Drafting step 1: Lower the hem")):
        page.locator(".lessonkit-stage .lessonkit-player").press(key)
        expect(page.locator(".lessonkit-stage-told")).to_have_text(step)
    turn(page, "Sliders")
    page.locator(".lessonkit-stage-large").click()
    assert until(lambda: page.evaluate(BOX, ".lessonkit-large-root") == [0, 0, 1920, 1080])
    expect(page.locator(".lessonkit-large-title")).to_have_text("Lower the hem")
    assert until(lambda: keyboard_in(page, ".lessonkit-large-root"))
    page.keyboard.press("PageDown")
    expect(page.locator(".lessonkit-large-title")).to_have_text("Mark the middle")
    expect(page.locator(".lessonkit-large-row")).to_have_count(1)
    page.screenshot(path=out_folder / "lab-stage-large-panel.png")
    page.keyboard.press("3")
    assert until(lambda: page.evaluate(BOX, ".lessonkit-player") == [0, 0, 1920, 1080])
    expect(page.locator(".lessonkit-player-title")).to_have_text("Mark the middle")
    assert until(lambda: keyboard_in(page, ".lessonkit-player"))
    page.keyboard.press("PageDown")
    expect(page.locator(".lessonkit-player-title")).to_have_text("Sew the side seam")
    painted(page, 4)
    page.screenshot(path=out_folder / "lab-stage-large-player.png")
    page.keyboard.press("2")
    assert until(lambda: page.evaluate(BOX, ".lessonkit-canvas") == [0, 0, 1920, 1080])
    painted(page, 4)
    page.screenshot(path=out_folder / "lab-stage-large-canvas.png")
    drawn = page.evaluate(BOX, ".lessonkit-canvas-stage")
    assert drawn[3] > 700 and drawn[1] + drawn[3] <= 1080
    page.keyboard.press("3")
    expect(page.locator(".lessonkit-player")).to_be_visible()
    page.keyboard.press("Escape")
    expect(page.locator(".lessonkit-stage-full")).to_have_count(0)
    assert until(lambda: page.evaluate(BOX, ".lessonkit-player")[2] < 1900)


def test_it_is_accessible(lesson: Notebook) -> None:
    """WCAG 2.2 A and AA, as axe-core finds it, of the stage's own buttons."""
    page = lesson.page
    page.set_viewport_size({"width": 1280, "height": 900})
    turn(page, "Sliders")
    rules = {"runOnly": ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"]}
    found = Axe().run(page, context=".lessonkit-stage-bar", options=rules).response["violations"]
    assert [(each["id"], [node["html"] for node in each["nodes"]]) for each in found] == []


def test_the_page_reported_no_error(lesson: Notebook) -> None:
    assert lesson.faults == []
