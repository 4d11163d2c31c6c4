"""From canvas to cell in a real JupyterLab: a move is chosen, typed or dragged, and its cell is written and run."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

import nbformat
import pytest
from playwright.sync_api import Locator, Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook, painted, until

pytestmark = pytest.mark.browser

NAME = "drawn_on_the_canvas.ipynb"
CELLS = (
    """from kit import Lesson, bodice_block, canvas, cm, mm, panel

lesson = Lesson("Quay vest", start=bodice_block, units="cm", size="W4", edition="1", date="2026-11")
lesson.length("hem_drop", 6 * cm, least=0 * cm, most=12 * cm, why="how far it reaches below the hip")""",
    "panel(lesson)",
    "drawing = canvas(lesson)\ndrawing",
    '''@lesson.step("Lower the hem")
def lower_hem(front, back, hem_drop):
    """Draw the hem {hem_drop} lower."""
    for piece in (front, back):
        piece.extend_hem(piece.hip, hem_drop)''',
    "print('the end')",
)


class Menu:
    """The canvas and its Draw menu in the notebook `opened`."""

    def __init__(self, opened: Notebook) -> None:
        self.opened = opened
        self.page = opened.page
        self.root = self.page.locator(".jp-OutputArea-output .lessonkit-canvas").first
        self.form = self.root.locator("form.lessonkit-canvas-menu")
        self.said = self.form.get_by_role("alert")
        self.grip = self.root.locator(".lessonkit-canvas-grip")
        self.sentence = self.root.locator(".lessonkit-canvas-sentence")
        self.source = self.root.locator(".lessonkit-canvas-menu pre")
        self.write = self.root.locator('[data-act="menu-write"]')

    def field(self, name: str) -> Locator:
        return self.form.locator(f'[data-field="{name}"]')

    def choose(self, key: str) -> None:
        self.root.locator(f'[data-key="{key}"]').focus()
        self.page.keyboard.press("Enter")

    def path(self, name: str) -> str:
        return self.root.locator(f'.lessonkit-canvas-line[data-name="{name}"]').get_attribute("d") or ""

    def would(self) -> list[str]:
        found: list[str] = self.root.locator(".lessonkit-canvas-would path").evaluate_all(
            "all => all.map(e => e.getAttribute('d'))"
        )
        return found

    def open(self) -> None:
        self.root.locator('[data-act="draw"]').click()
        expect(self.form).to_be_visible()

    def rest(self) -> None:
        """Until the kernel has answered and found the handles again."""
        expect(self.root).to_have_attribute("data-rest", "true")

    def told(self) -> None:
        """Until the menu shows what the kernel made of all that was entered."""
        expect(self.form).to_have_attribute("data-asking", "false")

    def cell(self, name: str) -> Locator:
        written = self.page.locator(".jp-InputArea-editor", has_text=f"def {name}(")
        return self.page.locator(".jp-CodeCell").filter(has=written)


@pytest.fixture(scope="module")
def menu(lab: Lab, lab_page: Page) -> Iterator[Menu]:
    book = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(source) for source in CELLS])
    book.metadata["kernelspec"] = {"name": "python3", "display_name": "Python 3", "language": "python"}
    nbformat.write(book, lab.folder / NAME)
    lab_page.set_viewport_size({"width": 1500, "height": 1300})
    opened = Notebook(lab_page, lab.page_of(NAME))
    opened.run_all()
    found = Menu(opened)
    found.root.locator('[data-handle="hem_drop"]').wait_for()
    found.rest()
    found.root.scroll_into_view_if_needed()
    yield found
    opened.close()


def sources(menu: Menu, folder: Path) -> list[str]:
    """The code cells of the notebook, once all have run and JupyterLab says that it has saved them. (Pictures that come
    to rest later change the notebook again, so that it need not stay without changes.)"""
    menu.opened.settle()
    menu.page.evaluate("() => jupyterapp.commands.execute('docmanager:save').then(() => null)")
    return [cell.source for cell in nbformat.read(folder / NAME, 4).cells]


def test_a_move_is_previewed_and_told_before_it_is_written(menu: Menu, out_folder: Path) -> None:
    menu.open()
    expect(menu.form.get_by_role("status")).to_contain_text("Click edges and points")
    menu.choose("point:front.shoulder_tip")
    expect(menu.form.get_by_role("status")).to_contain_text("shoulder tip")
    menu.field("move").select_option("point")
    expect(menu.sentence).to_contain_text("square up 2 cm")
    menu.field("amount").fill("1 1/2 cm")
    menu.field("amount").press("Tab")
    expect(menu.sentence).to_contain_text("From the shoulder tip square up 1.5 cm (5/8 in) and mark.")
    assert len(menu.would()) == 2, "shoulder and armhole as they would lie"
    assert menu.path("front.shoulder") not in menu.would()
    expect(menu.source).to_contain_text('lesson.length("shoulder_lift", 1.5 * cm, least=0 * cm, most=')
    menu.root.screenshot(path=out_folder / "canvas-menu-typed.png")


def test_the_amount_is_dragged(menu: Menu, out_folder: Path) -> None:
    box = menu.grip.bounding_box()
    assert box is not None
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    before = menu.would()
    menu.page.mouse.move(x, y)
    menu.page.mouse.down()
    for step in range(1, 9):
        menu.page.mouse.move(x, y - 3 * step)
        painted(menu.page)
    assert until(lambda: menu.would() != before), "previewed while it is held"
    menu.page.mouse.up()
    assert until(lambda: menu.field("amount").input_value() not in ("1.5 cm", "1 1/2 cm"))
    menu.told()
    moved = menu.grip.bounding_box()
    assert moved is not None
    assert abs((moved["y"] - box["y"]) + 24) < 8, "the grip went with the pointer"
    menu.root.screenshot(path=out_folder / "canvas-menu-dragged.png")


def test_the_cell_is_written_run_and_shown_everywhere(menu: Menu, lab: Lab, out_folder: Path) -> None:
    menu.field("amount").fill("1 1/2 cm")
    menu.field("amount").press("Tab")
    menu.field("why").fill("room for the arm")
    menu.field("why").press("Tab")
    expect(menu.source).to_contain_text('why="room for the arm"')
    expect(menu.source).to_contain_text("1.5 * cm")
    source, would, before = menu.source.text_content() or "", menu.would(), menu.path("front.shoulder")
    menu.write.click()
    expect(menu.said).to_contain_text("The cell stands in the notebook and was run")
    cell = menu.cell("raise_shoulder_tip")
    expect(cell).to_have_count(1)
    expect(cell.locator(".jp-OutputArea")).to_contain_text("From the shoulder tip square up 1.5 cm (5/8 in)")
    expect(menu.opened.box("Shoulder lift")).to_have_value("1.5 cm")
    assert until(lambda: menu.path("front.shoulder") != before)
    assert menu.path("front.shoulder") in would, "the draft is what was previewed"
    menu.root.screenshot(path=out_folder / "canvas-menu-written.png")
    cell.scroll_into_view_if_needed()
    menu.page.screenshot(path=out_folder / "canvas-menu-cell.png")
    saved = sources(menu, lab.folder)
    assert saved.index(source) == 4, "below the last step, above what followed it"
    assert saved[5] == CELLS[4]


def test_the_next_move_names_what_is_free_and_follows_the_step_shown(menu: Menu, lab: Lab, out_folder: Path) -> None:
    menu.root.locator("select").first.select_option("lower_hem")
    menu.rest()
    menu.choose("edge:back.side")
    menu.choose("edge:back.hip")
    menu.field("move").select_option("round")
    expect(menu.source).to_contain_text('after="lower_hem"')
    menu.field("amount").fill("1 1/2 in")
    menu.field("amount").press("Tab")
    expect(menu.sentence).to_contain_text("Mark 3.8 cm (1 1/2 in) from the corner")
    menu.field("title").fill("Round the hem")
    menu.field("title").press("Tab")
    expect(menu.source).to_contain_text("def round_hem(")
    menu.root.screenshot(path=out_folder / "canvas-menu-second.png")
    menu.write.click()
    expect(menu.said).to_contain_text("was run")
    expect(menu.cell("round_hem")).to_have_count(1)
    saved = sources(menu, lab.folder)
    at = next(i for i, text in enumerate(saved) if "def lower_hem(" in text)
    assert "def round_hem(" in saved[at + 1] and "def raise_shoulder_tip(" in saved[at + 2]


def test_a_page_without_buttons_and_paste_is_written_by_its_keys(menu: Menu, lab: Lab) -> None:
    """As in a front end whose toolbar was changed: the notebook's keys and the editor itself do the same."""
    expect(menu.root.locator("select").first).to_have_value("round_hem")
    menu.page.evaluate(
        "() => { const all = document.querySelectorAll('[data-command]');"
        "all.forEach((e) => { e.dataset.hidden = e.dataset.command; delete e.dataset.command; });"
        "window.noPaste = (e) => e.stopImmediatePropagation();"
        "document.addEventListener('paste', window.noPaste, true); }"
    )
    menu.choose("edge:back.neck")
    menu.field("move").select_option("parallel")
    expect(menu.source).to_contain_text("neck_parallel")
    menu.field("thing").fill("facing line")
    menu.field("thing").press("Tab")
    expect(menu.source).to_contain_text('back.guide(facing_line=back.neck.parallel(neck_offset, "inside"))')
    menu.write.click()
    expect(menu.said).to_contain_text("was run")
    menu.page.evaluate(
        "() => { document.querySelectorAll('[data-hidden]').forEach((e) => { e.dataset.command = e.dataset.hidden; });"
        "document.removeEventListener('paste', window.noPaste, true); }"
    )
    saved = sources(menu, lab.folder)
    at = next(i for i, text in enumerate(saved) if "def round_hem(" in text)
    assert 'after="round_hem"' in saved[at + 1] and "facing_line" in saved[at + 1]


def test_a_move_that_does_not_fit_says_why(menu: Menu) -> None:
    menu.root.locator("select").first.select_option("")
    menu.rest()
    menu.choose("edge:front.centre")
    menu.field("move").select_option("parallel")
    expect(menu.write).to_be_enabled()
    option = menu.field("move").locator('option[value="edge"]')
    expect(option).to_be_disabled()
    assert "fold" in (option.get_attribute("title") or "")
    menu.field("amount").fill("a bit")
    menu.field("amount").press("Tab")
    expect(menu.said).to_contain_text("'a bit' cannot be read as a length")
    expect(menu.write).to_be_disabled()
    menu.root.locator('[data-act="menu-cancel"]').click()
    expect(menu.form).to_be_hidden()


def test_restart_and_run_all_gives_the_same(menu: Menu, out_folder: Path) -> None:
    names = ("front.shoulder", "front.armhole", "back.side_round", "back.hip")
    shapes = [menu.path(name) for name in names]
    assert all(shapes)
    menu.opened.restart_and_run_all()
    menu.root.locator('[data-handle="shoulder_lift"]').wait_for()
    menu.rest()
    assert [menu.path(name) for name in names] == shapes
    expect(menu.opened.box("Shoulder lift")).to_have_value("1.5 cm")
    menu.root.screenshot(path=out_folder / "canvas-menu-restarted.png")


def test_where_cells_cannot_be_added_the_text_is_given_to_copy(menu: Menu, out_folder: Path) -> None:
    """As in another program: the page has no notebook around the canvas."""
    menu.open()
    menu.choose("edge:front.neck")
    menu.field("move").select_option("curve")
    expect(menu.write).to_be_enabled()
    menu.page.evaluate("document.querySelector('.jp-Notebook').classList.remove('jp-Notebook')")
    menu.write.click()
    expect(menu.said).to_contain_text("add a code cell below")
    expect(menu.source).to_be_visible()
    expect(menu.source).to_contain_text("neck_fullness")
    menu.root.screenshot(path=out_folder / "canvas-menu-by-hand.png")
    menu.page.evaluate("document.querySelector('.jp-NotebookPanel-notebook').classList.add('jp-Notebook')")


def test_the_page_reported_no_error(menu: Menu) -> None:
    seen = menu.opened.faults
    assert seen == []
