"""The example lesson in JupyterLab: sliders, picture, typed values, units, and what a restart keeps."""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook, painted, until

pytestmark = pytest.mark.browser

NAME = "tideline_wrap_top.ipynb"
SIDECAR = "tideline-wrap-top.values.json"
SLEEVE, HEM = "Sleeve length", "Hem drop"


@pytest.fixture(scope="module")
def lesson(lab: Lab, lab_page: Page) -> Iterator[Notebook]:
    lab_page.set_viewport_size({"width": 1500, "height": 1150})
    opened = Notebook(lab_page, lab.page_of(NAME))
    opened.run_all()
    opened.panel.scroll_into_view_if_needed()
    yield opened
    opened.close()


def sidecar(lab: Lab) -> dict[str, Any]:
    """What the sidecar holds; nothing before it is first written."""
    path = lab.folder / SIDECAR
    found: dict[str, Any] = json.loads(path.read_text()) if path.exists() else {}
    return found


def saved(lab: Lab) -> dict[str, float]:
    values: dict[str, float] = sidecar(lab).get("values", {})
    return values


def test_the_panel_shows_the_draft(lesson: Notebook, out_folder: Path) -> None:
    expect(lesson.picture).to_be_visible()
    for name in ("front.wrap_neck", "front.overarm", "back.neck", "front_facing.outer"):
        assert lesson.path(name), name
    expect(lesson.panel.get_by_text("Every check passed")).to_be_visible()
    expect(lesson.panel.locator('[role="status"]')).to_have_count(0)
    lesson.page.screenshot(path=out_folder / "lab-panel.png")


# Where the code of a step's cell, its words and its picture stand (top and bottom, CSS px), and the notebook's window.
PARTS = """(cell) => {
  const at = (e) => { const b = e?.getBoundingClientRect(); return b && b.height > 0 ? [b.top, b.bottom] : null };
  const words = [...cell.querySelectorAll(".jp-OutputArea-output p")].filter((e) => e.textContent.trim());
  const picture = cell.querySelector(".jp-OutputArea-output svg");
  return { window: at(cell.closest(".jp-WindowedPanel-outer")), code: at(cell.querySelector(".cm-content")),
    lines: cell.querySelectorAll(".cm-line").length, title: cell.querySelector(".cm-content").textContent,
    words: words.length ? [at(words[0])?.[0], at(words.at(-1))?.[1]] : null, picture: at(picture),
    drawn: picture?.querySelectorAll("path").length ?? 0 };
}"""


def test_code_sentence_and_picture_of_a_step_fit_one_view(lesson: Notebook, out_folder: Path) -> None:
    """Each drafting step on a screen of 1920 x 1080, beside JupyterLab's own bars: all of its cell at once."""
    page = lesson.page
    before = page.viewport_size
    assert before is not None
    page.set_viewport_size({"width": 1920, "height": 1080})
    cells = page.locator(".jp-CodeCell").filter(has=page.locator(".jp-InputArea-editor", has_text="@lesson.step("))
    steps = cells.count()
    assert steps >= 5
    outside = {}
    for number in range(steps):
        cell = cells.nth(number)
        cell.evaluate("e => e.scrollIntoView({block: 'center'})")
        cell.locator(".jp-OutputArea-output svg").first.wait_for()
        painted(page, 4)
        parts = cell.evaluate(PARTS)
        assert parts["code"] and parts["words"] and parts["picture"], parts
        assert parts["lines"] >= 3 and parts["drawn"] >= 3, parts
        top, bottom = parts["window"]
        ends = {name: parts[name] for name in ("code", "words", "picture")}
        if any(high < top or low > bottom for high, low in ends.values()):
            outside[parts["title"][:60]] = ends | {"window": parts["window"]}
        if number in (0, 1, steps - 1):
            page.screenshot(path=out_folder / f"lab-step-{number}-1920.png")
    assert outside == {}
    page.set_viewport_size(before)
    lesson.panel.scroll_into_view_if_needed()
    painted(page, 2)


def test_keyboard_arrows_move_the_slider_and_the_picture(lesson: Notebook) -> None:
    before = lesson.path("front.overarm")
    box = lesson.box(SLEEVE)
    start = float(box.input_value().removesuffix(" cm"))
    lesson.handle(SLEEVE).focus()
    for _ in range(5):
        lesson.page.keyboard.press("ArrowRight")
    expect(box).to_have_value(f"{start + 0.5:.1f} cm")
    assert until(lambda: lesson.path("front.overarm") != before)


def test_the_picture_follows_the_mouse_before_it_is_let_go(lesson: Notebook, lab: Lab, out_folder: Path) -> None:
    handle = lesson.handle(SLEEVE)
    handle.scroll_into_view_if_needed()
    box = handle.bounding_box()
    assert box is not None
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    mouse = lesson.page.mouse
    shapes = {lesson.path("front.overarm")}
    mouse.move(x, y)
    mouse.down()
    for step in range(1, 5):
        mouse.move(x + step * 15, y, steps=3)
        seen = len(shapes)

        def changed() -> bool:
            shapes.add(lesson.path("front.overarm"))
            return len(shapes) > seen  # noqa: B023

        assert until(changed), f"no new picture after {step} moves, mouse still down"
    lesson.page.screenshot(path=out_folder / "lab-dragging.png")
    mouse.up()

    def kept_as_shown() -> bool:
        # Both settle after the last move: the box when the kernel has answered, the file a moment later.
        shown = float(lesson.box(SLEEVE).input_value().removesuffix(" cm"))
        return bool(saved(lab).get("sleeve_length") == pytest.approx(shown * 10))

    assert until(kept_as_shown)


def test_pictures_and_words_under_the_cells_follow(lesson: Notebook) -> None:
    """The step's sentence under its cell names the sleeve length the slider stands at."""
    shown = lesson.box(SLEEVE).input_value()
    written = lesson.page.locator(".jp-InputArea-editor", has_text="def overarm")
    cell = lesson.page.locator(".jp-CodeCell").filter(has=written)
    expect(cell.locator(".jp-OutputArea")).to_contain_text(f"carry it on for {shown}")
    lesson.panel.scroll_into_view_if_needed()


def test_a_typed_value_in_the_other_unit(lesson: Notebook, lab: Lab) -> None:
    before = lesson.path("front.hem")
    lesson.box(HEM).fill("4 1/2 in")
    lesson.box(HEM).press("Enter")
    expect(lesson.box(HEM)).to_have_value("11.4 cm")
    assert until(lambda: lesson.path("front.hem") != before)
    assert until(lambda: saved(lab).get("hem_drop") == pytest.approx(114.3))


def test_switching_units_leaves_every_value(lesson: Notebook, lab: Lab) -> None:
    before = saved(lab)
    for units, text in (("inch", "4 1/2 in"), ("cm", "11.4 cm"), ("inch", "4 1/2 in"), ("cm", "11.4 cm")):
        lesson.panel.get_by_role("button", name=units, exact=True).click()
        expect(lesson.box(HEM)).to_have_value(text)
        assert until(lambda: sidecar(lab)["units"] == units)  # noqa: B023
        assert saved(lab) == before


def test_what_cannot_be_used_is_said_in_the_panel(lesson: Notebook, out_folder: Path) -> None:
    lesson.box(HEM).fill("<b>far</b>")
    lesson.box(HEM).press("Enter")
    status = lesson.panel.get_by_role("status")
    expect(status).to_contain_text("'<b>far</b>' cannot be read as a length")
    expect(lesson.box(HEM)).to_have_value("11.4 cm")
    lesson.page.screenshot(path=out_folder / "lab-message.png")
    lesson.box(HEM).fill("11.5")
    lesson.box(HEM).press("Enter")
    expect(status).to_have_count(0)


def test_what_cannot_be_drafted_is_said_over_the_last_good_picture(lesson: Notebook, out_folder: Path) -> None:
    """The hem must lie as far below the waist as the opening and the rise of the hem take."""
    status, opening = lesson.panel.get_by_role("status"), lesson.box("Opening size")
    lesson.wait_idle()  # the last answer to the move before may put its value into the box once more
    for box, text in ((lesson.box(HEM), "4 cm"), (opening, "8 cm")):
        box.fill(text)
        box.press("Enter")
        expect(box).to_have_value(text)
    expect(status).to_contain_text("must be at least")
    expect(lesson.picture).to_have_count(1)
    expect(lesson.panel.locator('.lessonkit-picture [aria-hidden="true"] svg')).to_have_count(1)
    lesson.panel.scroll_into_view_if_needed()
    lesson.page.screenshot(path=out_folder / "lab-refused.png")
    for box, text in ((opening, "4 cm"), (lesson.box(HEM), "11.5 cm")):
        box.fill(text)
        box.press("Enter")
    expect(status).to_have_count(0)
    expect(lesson.panel.locator('.lessonkit-picture [aria-hidden="true"]')).to_have_count(0)


def test_another_view_and_another_size(lesson: Notebook, lab: Lab, out_folder: Path) -> None:
    show = lesson.panel.get_by_label("Show", exact=True)
    options = [text.replace("\xa0", " ") for text in show.locator("option").all_text_contents()]
    chest = lesson.panel.get_by_role("row", name="Chest, all round under the arms")
    w4 = chest.inner_text()
    lesson.panel.get_by_label("Size", exact=True).select_option(label="W7")
    expect(chest).not_to_have_text(w4)
    show.select_option(index=next(i for i, text in enumerate(options) if "wrap edge" in text))
    expect(lesson.picture).to_contain_text("wrap reach")
    expect(lesson.panel.get_by_text("Checking")).to_have_count(0)
    lesson.page.screenshot(path=out_folder / "lab-step-view.png")
    show.select_option(index=len(options) - 2)
    expect(lesson.picture).not_to_contain_text("wrap reach")
    lesson.page.screenshot(path=out_folder / "lab-flat-view.png")
    assert until(lambda: sidecar(lab)["size"] == "W7")
    assert saved(lab)["hem_drop"] == 115.0


def test_values_outlive_the_kernel(lesson: Notebook, lab: Lab, out_folder: Path) -> None:
    sleeve, hem, kept = lesson.box(SLEEVE).input_value(), lesson.box(HEM).input_value(), saved(lab)
    lesson.restart_and_run_all()
    lesson.panel.scroll_into_view_if_needed()
    expect(lesson.box(SLEEVE)).to_have_value(sleeve)
    expect(lesson.box(HEM)).to_have_value(hem)
    assert lesson.panel.get_by_label("Size", exact=True).locator("option:checked").text_content() == "W7"
    assert saved(lab) == kept
    expect(lesson.picture).to_be_visible()
    lesson.page.screenshot(path=out_folder / "lab-after-restart.png")


def test_the_page_reported_no_error(lesson: Notebook) -> None:
    assert lesson.faults == []
