"""The canvas in JupyterLab: dragging, keys, hover, undo, layers, touch and what cannot be drafted."""

from __future__ import annotations

import json
import re
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

SIDECAR = "tideline-wrap-top.values.json"
EXAMPLE, NAME = "tideline_wrap_top.ipynb", "on_the_canvas.ipynb"
CANVAS = "from kit import canvas\n\ndrawing = canvas(lesson)\ndrawing"
CHOSEN = "print('chosen', drawing.selected)"


class Drawing:
    """The canvas in the notebook `opened`."""

    def __init__(self, opened: Notebook) -> None:
        self.opened = opened
        self.page = opened.page
        self.root = self.page.locator(".jp-OutputArea-output .lessonkit-canvas").first
        self.stage = self.root.locator(".lessonkit-canvas-stage")
        self.info = self.root.locator(".lessonkit-canvas-info")
        self.message = self.root.get_by_role("alert")

    def handle(self, name: str) -> Locator:
        return self.root.locator(f'[data-handle="{name}"]')

    def edge(self, name: str) -> Locator:
        return self.root.locator(f'[data-edge="{name}"]')

    def path(self, name: str) -> str:
        return self.root.locator(f'.lessonkit-canvas-line[data-name="{name}"]').get_attribute("d") or ""

    def middle(self, of: Locator) -> tuple[float, float]:
        box = of.bounding_box()
        assert box is not None
        return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2

    def along(self, edge: str, share: float) -> tuple[float, float]:
        """Where on the page a share of an edge's length lies."""
        found: list[float] = self.edge(edge).evaluate(
            "(line, share) => {"
            "const at = line.getPointAtLength(share * line.getTotalLength()).matrixTransform(line.getScreenCTM());"
            "return [at.x, at.y]; }",
            share,
        )
        return found[0], found[1]

    def value(self, name: str) -> float:
        return float(self.handle(name).get_attribute("aria-valuenow") or "nan")

    def button(self, act: str) -> Locator:
        return self.root.locator(f'[data-act="{act}"]')

    def rest(self) -> None:
        """Until the kernel has answered and found the handles again."""
        expect(self.root).to_have_attribute("data-rest", "true")

    def look(self) -> None:
        self.root.scroll_into_view_if_needed()
        painted(self.page)


@pytest.fixture(scope="module")
def drawing(lab: Lab, lab_page: Page) -> Iterator[Drawing]:
    book = nbformat.read(lab.folder / EXAMPLE, 4)
    place = next(i for i, cell in enumerate(book.cells) if cell.source.startswith("panel("))
    book.cells.insert(place + 1, nbformat.v4.new_code_cell(CANVAS))
    book.cells.append(nbformat.v4.new_code_cell(CHOSEN))
    nbformat.write(book, lab.folder / NAME)
    lab_page.set_viewport_size({"width": 1500, "height": 1150})
    opened = Notebook(lab_page, lab.page_of(NAME))
    opened.run_all()
    found = Drawing(opened)
    found.look()
    found.handle("sleeve_length").wait_for()
    found.rest()
    yield found
    opened.close()


def saved(lab: Lab) -> dict[str, float]:
    """The values in the sidecar; none before it is first written."""
    path = lab.folder / SIDECAR
    values: dict[str, float] = json.loads(path.read_text())["values"] if path.exists() else {}
    return values


def step_text(drawing: Drawing, name: str) -> Locator:
    """What is shown under the cell of the step `name`."""
    written = drawing.page.locator(".jp-InputArea-editor", has_text=f"def {name}(")
    return drawing.page.locator(".jp-CodeCell").filter(has=written).locator(".jp-OutputArea")


def test_the_draft_is_shown_with_its_handles(drawing: Drawing, out_folder: Path) -> None:
    for edge in ("front.wrap_neck", "front.overarm", "back.neck", "front_facing.outer"):
        assert drawing.path(edge), edge
    assert drawing.root.locator("[data-handle]").count() >= 14
    drawing.root.screenshot(path=out_folder / "canvas-draft.png")


def test_hover_tells_name_length_and_what_it_is_sewn_to(drawing: Drawing, out_folder: Path) -> None:
    told = re.compile(r"Shoulder and overarm seam, front: 37\.8 cm \(14 7/8 in\)\. Sewn to the .* of the back\.")

    def hovered() -> bool:
        """A hand is never still, and the drawing may still be finding its place when it comes."""
        for share in (0.74, 0.75):
            drawing.page.mouse.move(*drawing.along("front.overarm", share))
            painted(drawing.page)
        return bool(told.fullmatch(drawing.info.inner_text()))

    assert until(hovered), drawing.info.inner_text()
    drawing.root.screenshot(path=out_folder / "canvas-hover.png")


def test_a_dragged_handle_moves_parameter_slider_words_and_later_steps(drawing: Drawing, out_folder: Path) -> None:
    page, handle = drawing.page, drawing.handle("sleeve_length")
    before, start = drawing.value("sleeve_length"), drawing.middle(handle)
    facing, underarm = drawing.path("front_facing.outer"), drawing.path("back.underarm")
    page.mouse.move(*start)
    page.mouse.down()
    for step in range(1, 11):
        page.mouse.move(start[0] - 5 * step, start[1] + 2 * step)
        painted(page)
    drawing.root.screenshot(path=out_folder / "canvas-dragging.png")
    assert until(lambda: drawing.value("sleeve_length") < before - 40), "exact answers while it is held"
    page.mouse.up()
    drawing.rest()
    end = drawing.middle(handle)
    assert abs(end[0] - (start[0] - 50)) < 14, "it went where it was dragged, along its line"
    value = drawing.value("sleeve_length")
    shown = f"{value / 10:.1f}".removesuffix(".0") + " cm"
    expect(drawing.opened.box("Sleeve length")).to_have_value(shown)
    expect(step_text(drawing, "overarm")).to_contain_text(f"carry it on for {shown}")
    drawing.look()
    assert drawing.path("back.underarm") != underarm, "a later step"
    assert drawing.path("front_facing.outer") == facing, "not what does not depend on it"


def test_keys_move_a_handle_by_a_step_or_ten(drawing: Drawing) -> None:
    drawing.rest()
    handle, live = drawing.handle("hem_drop"), drawing.root.get_by_role("status")
    start = drawing.value("hem_drop")
    handle.focus()
    drawing.page.keyboard.press("ArrowUp")
    expect(handle).to_have_attribute("aria-valuenow", f"{start + 1:g}")
    drawing.page.keyboard.press("Shift+ArrowDown")
    expect(handle).to_have_attribute("aria-valuenow", f"{start - 9:g}")
    expect(live).to_have_text(re.compile(r"^Hem drop: 13\.1 cm \(5 1/8 in\)$"))
    expect(drawing.opened.box("Hem drop")).to_have_value("13.1 cm")
    drawing.rest()
    assert drawing.page.evaluate("document.activeElement?.dataset?.handle") == "hem_drop", "the focus stays"


def test_tab_reaches_every_edge_and_handle(drawing: Drawing) -> None:
    wanted = drawing.root.locator("[data-edge], [data-handle]").evaluate_all("all => all.map(e => e.dataset.key)")
    drawing.stage.focus()
    seen = set()
    for _ in range(len(wanted) + 60):
        drawing.page.keyboard.press("Tab")
        key = drawing.page.evaluate("document.activeElement?.dataset?.key ?? ''")
        label = drawing.page.evaluate("document.activeElement?.getAttribute('aria-label') ?? ''")
        assert not key or label, f"{key} has a name"
        seen.add(key)
    assert set(wanted) <= seen


def test_undo_and_redo(drawing: Drawing) -> None:
    drawing.look()
    handle, start = drawing.handle("hem_drop"), drawing.value("hem_drop")
    handle.focus()
    drawing.page.keyboard.press("Shift+ArrowDown")
    expect(handle).to_have_attribute("aria-valuenow", f"{start - 10:g}")
    drawing.rest()
    drawing.page.keyboard.press("Control+z")
    expect(handle).to_have_attribute("aria-valuenow", f"{start:g}")
    expect(drawing.opened.box("Hem drop")).to_have_value("13.1 cm")
    drawing.page.keyboard.press("Control+Shift+Z")
    expect(handle).to_have_attribute("aria-valuenow", f"{start - 10:g}")
    for _ in range(8):
        if drawing.button("undo").is_disabled():
            break
        drawing.button("undo").click()
        drawing.rest()
    expect(drawing.button("undo")).to_be_disabled()
    expect(drawing.button("redo")).to_be_enabled()
    assert (drawing.value("hem_drop"), drawing.value("sleeve_length")) == (140.0, 260.0)


def test_an_inch_fraction_typed_in_the_panel_moves_the_canvas(drawing: Drawing) -> None:
    before, box = drawing.path("front.hem"), drawing.opened.box("Hem drop")
    box.fill("4 1/2 in")
    box.press("Enter")
    expect(drawing.handle("hem_drop")).to_have_attribute("aria-valuetext", "11.4 cm (4 1/2 in)")
    assert until(lambda: drawing.path("front.hem") != before)
    drawing.look()


def test_what_cannot_be_drafted_snaps_back(drawing: Drawing, out_folder: Path) -> None:
    """The hem must lie as far below the waist as opening and hem rise take: not 4 cm, nor 9 with 8 of opening."""
    box = drawing.opened.box("Hem drop")
    box.fill("4 cm")
    box.press("Enter")
    expect(drawing.message).to_contain_text("must be at least")
    expect(drawing.stage).to_have_class(re.compile("lessonkit-canvas-stale"))
    box.fill("9 cm")
    box.press("Enter")
    expect(drawing.message).to_be_empty()
    drawing.look()
    drawing.rest()
    kept, path = drawing.value("opening_size"), drawing.path("front.side")
    drawing.handle("opening_size").focus()
    drawing.page.keyboard.press("End")
    expect(drawing.message).to_contain_text("must be at least")
    assert drawing.value("opening_size") == kept
    assert drawing.path("front.side") == path
    drawing.root.screenshot(path=out_folder / "canvas-refused.png")
    drawing.page.keyboard.press("ArrowDown")
    expect(drawing.message).to_be_empty()
    box.fill("14 cm")
    box.press("Enter")
    expect(drawing.handle("hem_drop")).to_have_attribute("aria-valuenow", "140")


def test_pan_zoom_and_fit(drawing: Drawing, out_folder: Path) -> None:
    drawing.look()
    world = drawing.stage.locator("g").nth(1)
    drawing.button("fit").click()
    fitted = world.get_attribute("transform")
    box = drawing.stage.bounding_box()
    assert box is not None
    corner = (box["x"] + 30, box["y"] + box["height"] - 60)
    drawing.page.mouse.move(*corner)
    drawing.page.mouse.down()
    drawing.page.mouse.move(corner[0] + 80, corner[1] - 40, steps=4)
    drawing.page.mouse.up()
    panned = world.get_attribute("transform")
    assert panned != fitted
    drawing.stage.focus()
    drawing.page.mouse.move(box["x"] + box["width"] / 2, box["y"] + box["height"] / 2)
    drawing.page.mouse.wheel(0, -600)
    painted(drawing.page)
    zoomed = world.get_attribute("transform")
    assert zoomed != panned
    drawing.page.keyboard.press("+")
    drawing.page.keyboard.press("+")
    painted(drawing.page)
    drawing.root.screenshot(path=out_folder / "canvas-zoomed.png")
    drawing.page.keyboard.press("0")
    assert world.get_attribute("transform") == fitted


def test_layers_and_steps(drawing: Drawing, out_folder: Path) -> None:
    for layer in ("body", "block"):
        drawing.root.locator(f'input[data-layer="{layer}"]').check()
    expect(drawing.root.get_by_text("quarter of the waist girth").first).to_be_visible()
    drawing.rest()
    drawing.root.screenshot(path=out_folder / "canvas-body.png")
    drawing.root.locator("select").first.select_option("wrap")
    expect(drawing.root.get_by_text("wrap reach")).to_be_visible()
    drawing.rest()
    drawing.root.screenshot(path=out_folder / "canvas-step.png")
    drawing.root.locator('input[data-layer="dims"]').uncheck()
    expect(drawing.root.get_by_text("wrap reach")).to_have_count(0)
    drawing.root.locator('input[data-layer="dims"]').check()
    for layer in ("body", "block"):
        drawing.root.locator(f'input[data-layer="{layer}"]').uncheck()
    drawing.root.locator("select").first.select_option("")
    drawing.handle("seam").wait_for()


def test_inches(drawing: Drawing, out_folder: Path) -> None:
    drawing.opened.panel.get_by_role("button", name="inch", exact=True).click()
    expect(drawing.root.get_by_text(re.compile("sleeve length 10 1/4 in"))).to_be_visible()
    expect(drawing.root.get_by_text(re.compile(r"^Grid: \d+ in, "))).to_be_visible()
    drawing.look()
    drawing.root.screenshot(path=out_folder / "canvas-inches.png")
    handle = drawing.handle("sleeve_length")
    handle.focus()
    drawing.page.keyboard.press("ArrowUp")
    expect(handle).to_have_attribute("aria-valuetext", "10 5/16 in (26.2 cm)")
    drawing.page.keyboard.press("Control+z")
    drawing.opened.panel.get_by_role("button", name="cm", exact=True).click()


def test_choosing_edges_points_and_pieces(drawing: Drawing) -> None:
    drawing.look()
    drawing.edge("front.hem").focus()
    drawing.page.keyboard.press("Enter")
    expect(drawing.edge("front.hem")).to_have_attribute("aria-pressed", "true")
    drawing.page.keyboard.press("Escape")
    expect(drawing.edge("front.hem")).to_have_attribute("aria-pressed", "false")
    title = drawing.stage.locator('[data-kind="piece"][data-piece="back"]')
    title.click()
    expect(title).to_have_attribute("aria-pressed", "true")
    drawing.edge("back.hem").focus()
    drawing.page.keyboard.press("Shift+Enter")
    code = drawing.page.locator(".jp-CodeCell").filter(
        has=drawing.page.locator(".jp-InputArea-editor", has_text="'chosen'")
    )
    code.locator(".cm-content").click()
    wanted = "[{'kind': 'piece', 'piece': 'back', 'name': 'back'}, {'kind': 'edge', 'piece': 'back', 'name': 'hem'}]"

    def read() -> bool:
        # A choice waits in the page while the kernel is busy, so the cell may have to be run again.
        drawing.page.keyboard.press("Control+Enter")
        drawing.opened.settle()
        return f"chosen {wanted}" in code.locator(".jp-OutputArea").inner_text()

    assert until(read)
    drawing.look()


def test_a_touch_drags_a_handle_and_two_fingers_zoom(drawing: Drawing) -> None:
    """Real touches, as the browser makes them from what a screen reports."""
    drawing.look()
    client = drawing.page.context.new_cdp_session(drawing.page)

    def touch(kind: str, *points: tuple[float, float]) -> None:
        spots = [{"x": x, "y": y, "id": i} for i, (x, y) in enumerate(points)]
        client.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": spots})
        painted(drawing.page)

    start, before = drawing.middle(drawing.handle("wrap_share")), drawing.value("wrap_share")
    touch("touchStart", start)
    for step in range(1, 6):
        touch("touchMove", (start[0] + 4 * step, start[1]))
    touch("touchEnd")
    assert until(lambda: drawing.value("wrap_share") < before - 0.05)
    world = drawing.stage.locator("g").nth(1)
    fitted = world.get_attribute("transform")
    box = drawing.stage.bounding_box()
    assert box is not None
    x, y = box["x"] + 40, box["y"] + box["height"] - 80
    touch("touchStart", (x, y), (x + 60, y))
    touch("touchMove", (x, y), (x + 120, y))
    touch("touchEnd")
    assert world.get_attribute("transform") != fitted
    drawing.button("undo").click()
    drawing.button("fit").click()


def test_values_outlive_the_kernel(drawing: Drawing, lab: Lab, out_folder: Path) -> None:
    drawing.handle("hem_drop").focus()
    drawing.page.keyboard.press("Shift+ArrowDown")
    expect(drawing.handle("hem_drop")).to_have_attribute("aria-valuenow", "130")
    assert until(lambda: saved(lab).get("hem_drop") == 130.0)
    drawing.opened.restart_and_run_all()
    drawing.look()
    drawing.handle("hem_drop").wait_for()
    expect(drawing.handle("hem_drop")).to_have_attribute("aria-valuenow", "130")
    drawing.rest()
    drawing.root.screenshot(path=out_folder / "canvas-after-restart.png")


def test_the_page_reported_no_error(drawing: Drawing) -> None:
    seen = drawing.opened.faults
    assert seen == []
