"""The panel in JupyterLab: presets, undo, typed inches, cloth and pages that follow, a fitting kept and taken back, and
what a restart brings back."""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import nbformat
import pytest
from playwright.sync_api import Locator, Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook, painted, until

pytestmark = pytest.mark.browser

NAME, MADE = "tideline_wrap_top.ipynb", "panel_choices.ipynb"
SIDECAR = "tideline-wrap-top.values.json"
SLEEVE, HEM, LIFT = "Sleeve length", "Hem drop", "Shoulder lift"
PRESET = 'lesson.preset("Long sleeve", sleeve_length=40 * cm)\nlesson.preset("Cropped", hem_drop=9 * cm)'


@pytest.fixture(scope="module")
def lesson(lab: Lab, lab_page: Page) -> Iterator[Notebook]:
    book = nbformat.read(lab.folder / NAME, as_version=4)
    place = next(i for i, cell in enumerate(book.cells) if cell.source.startswith("panel("))
    book.cells.insert(place, nbformat.v4.new_code_cell(PRESET))
    nbformat.write(book, lab.folder / MADE)
    lab_page.set_viewport_size({"width": 1500, "height": 1250})
    opened = Notebook(lab_page, lab.page_of(MADE))
    opened.run_all()
    opened.panel.scroll_into_view_if_needed()
    yield opened
    opened.close()


def sidecar(lab: Lab) -> dict[str, Any]:
    path = lab.folder / SIDECAR
    found: dict[str, Any] = json.loads(path.read_text()) if path.exists() else {}
    return found


def button(lesson: Notebook, name: str) -> Locator:
    return lesson.panel.get_by_role("button", name=re.compile(rf"{name}$"))  # an icon may stand before the name


def figures(lesson: Notebook) -> Locator:
    return lesson.panel.locator(".lessonkit-figures table")


def fresh(lesson: Notebook) -> str:
    """The figures once all of them are new. JupyterLab may scroll to the cell that ran last, and what is far from
    there has no text."""
    found: list[str] = [""]

    def new() -> bool:
        lesson.panel.scroll_into_view_if_needed()
        found[0] = figures(lesson).inner_text()
        return bool(found[0].strip()) and not re.search(r"was |…", found[0])

    assert until(new), f"the figures are not new: {found[0]}"
    return found[0]


def type_in(lesson: Notebook, label: str, text: str) -> None:
    lesson.box(label).fill(text)
    lesson.box(label).press("Enter")


def shot(lesson: Notebook, out_folder: Path, name: str) -> None:
    lesson.page.evaluate("document.querySelector('.lessonkit-panel').scrollIntoView({block: 'start'})")
    painted(lesson.page)
    lesson.page.screenshot(path=out_folder / f"lab-panel-{name}.png")


def test_cloth_and_pages_come_beside_the_draft(lesson: Notebook, out_folder: Path) -> None:
    text = fresh(lesson)
    assert re.search(r"Cloth, 140 cm \(55 in\) wide\s+\d(\.\d)? m \(", text)
    assert re.search(r"Pages, A4\s+\d+ pages", text) and re.search(r"Pages, US Letter\s+\d+ pages", text)
    shot(lesson, out_folder, "at-rest")


def test_a_preset_is_chosen_and_undone(lesson: Notebook, out_folder: Path) -> None:
    values = lesson.panel.get_by_label("Values", exact=True)
    before, sleeve = lesson.path("front.overarm"), lesson.box(SLEEVE).input_value()
    values.select_option(label="Long sleeve")
    expect(lesson.box(SLEEVE)).to_have_value("40 cm")
    assert until(lambda: lesson.path("front.overarm") != before)
    shot(lesson, out_folder, "preset")
    button(lesson, "Undo").click()
    expect(lesson.box(SLEEVE)).to_have_value(sleeve)
    expect(values.locator("option:checked")).to_have_text("The lesson's own")
    button(lesson, "Redo").click()
    expect(lesson.box(SLEEVE)).to_have_value("40 cm")
    expect(values.locator("option:checked")).to_have_text("Long sleeve")


def test_figures_stand_as_old_and_then_follow(lesson: Notebook, out_folder: Path) -> None:
    before = fresh(lesson)
    place = figures(lesson).bounding_box()
    type_in(lesson, SLEEVE, "9 1/2 in")
    expect(lesson.box(SLEEVE)).to_have_value("24.1 cm")
    expect(figures(lesson)).to_contain_text("was ")
    shot(lesson, out_folder, "old-figures")
    after = fresh(lesson)
    assert after != before, "sleeves shorter by 16 cm take less cloth or paper"
    assert figures(lesson).bounding_box() is not None and place is not None
    pages = [int(re.search(r"A4\s+(\d+) page", text)[1]) for text in (before, after)]  # type: ignore[index]
    assert pages[1] < pages[0]


def test_the_picture_and_the_sliders_stay_where_they_are(lesson: Notebook) -> None:
    """Nothing above or beside them grows while figures, proof and messages come and go."""

    def places() -> list[tuple[float, float]]:
        """Top and height of some rows and of the table beneath the picture, from the panel's own top."""
        lesson.page.evaluate("document.querySelector('.lessonkit-row').parentElement.scrollTop = 0")
        top = lesson.panel.bounding_box()
        parts = [lesson.panel.locator(".lessonkit-row").nth(n) for n in (0, 3, 6)]
        boxes = [part.bounding_box() for part in (*parts, lesson.panel.locator(".lessonkit-picture"))]
        assert top is not None
        return [(box["y"] - top["y"], box["height"]) for box in boxes if box is not None]

    lesson.page.evaluate("document.querySelector('.lessonkit-panel').scrollIntoView({block: 'start'})")
    fresh(lesson)
    before = places()
    type_in(lesson, HEM, "4 cm")
    type_in(lesson, "Opening size", "8 cm")
    expect(lesson.panel.get_by_role("status")).to_contain_text("must be at least")
    refused = places()
    type_in(lesson, "Opening size", "4 cm")
    type_in(lesson, HEM, "14 cm")
    expect(lesson.panel.get_by_role("status")).to_have_count(0)
    assert refused == before


def test_what_the_proof_finds_is_marked_beside_its_value(lesson: Notebook, out_folder: Path) -> None:
    """The opening of a short sleeve is bent outward, and a deep hem does not lie flat on it."""
    type_in(lesson, SLEEVE, "13 cm")
    row = lesson.panel.locator(".lessonkit-row").filter(has=lesson.page.get_by_label(SLEEVE, exact=True))
    expect(row).to_contain_text("Look again: ")
    expect(lesson.panel.get_by_text(re.compile(r"Depends on: .*sleeve hem")).first).to_be_visible()  # front, back
    row.scroll_into_view_if_needed()
    shot(lesson, out_folder, "finding")
    button(lesson, "Undo").click()
    expect(lesson.panel.get_by_text("Every check passed")).to_be_visible()


def test_a_fitting_is_kept_and_survives_a_restart(lesson: Notebook, lab: Lab, out_folder: Path) -> None:
    panel = lesson.panel
    button(lesson, "After try-on").click()
    name = panel.get_by_label("Fitting", exact=True)
    expect(name).to_have_attribute("placeholder", re.compile(r"Try-on \d"))
    name.fill("Evening toile")
    button(lesson, "Begin").click()
    expect(panel).to_contain_text("Fitting: Evening toile")
    before = lesson.box(LIFT).input_value()
    type_in(lesson, LIFT, "2 cm")
    expect(panel.locator(".lessonkit-try-on")).to_contain_text("Shoulder lift: 1.2 cm (1/2 in) → 2 cm (3/4 in)")
    expect(lesson.picture.locator('[data-name$=".overarm.before"]')).to_be_visible()
    # At the end of the sleeve, which is farther out than the shoulder tip, the line goes up by more than the lift.
    expect(lesson.picture).to_contain_text(re.compile(r"2\.\d cm"))
    panel.get_by_label("Why", exact=True).fill("The shoulder pulled when the arm was raised.")
    shot(lesson, out_folder, "fitting")
    button(lesson, "Keep").click()
    expect(panel.locator("pre")).to_contain_text("lesson.fitting(")
    expect(panel.locator("pre")).to_contain_text("shoulder_lift=(1.2 * cm, 2 * cm)")
    shot(lesson, out_folder, "fitting-kept")
    assert sidecar(lab)["fittings"][0]["why"] == "The shoulder pulled when the arm was raised."
    lesson.restart_and_run_all()
    panel.scroll_into_view_if_needed()
    expect(lesson.box(LIFT)).to_have_value("2 cm")
    expect(lesson.box(SLEEVE)).to_have_value("24.1 cm")
    button(lesson, "After try-on").click()
    kept = panel.get_by_label("Kept", exact=True)
    kept.locator("option", has_text="Evening toile").wait_for(state="attached")
    kept.select_option(index=kept.locator("option").count() - 1)
    expect(lesson.picture.locator('[data-name$=".overarm.before"]')).to_be_visible()
    button(lesson, "Take back").click()
    expect(lesson.box(LIFT)).to_have_value(before)
    expect(lesson.picture.locator('[data-name$=".overarm.before"]')).to_have_count(0)
    assert until(lambda: sidecar(lab)["fittings"] == [])


def test_a_cancelled_fitting_puts_the_values_back(lesson: Notebook) -> None:
    sleeve = lesson.box(SLEEVE).input_value()
    button(lesson, "Begin").click()
    type_in(lesson, SLEEVE, "8 in")
    expect(lesson.box(SLEEVE)).to_have_value("20.3 cm")
    button(lesson, "Cancel").click()
    expect(lesson.box(SLEEVE)).to_have_value(sleeve)
    button(lesson, "After try-on").click()
    expect(lesson.panel.locator(".lessonkit-try-on")).to_be_hidden()


def test_a_slider_ends_where_the_other_values_end_it(lesson: Notebook) -> None:
    """The hem drop is at least the opening and the hem rise: 4 and 1.8 cm, then 8 and 1.8."""
    handle = lesson.handle(HEM)
    expect(handle).to_have_attribute("aria-valuemin", "5.8")
    type_in(lesson, "Opening size", "8 cm")
    expect(handle).to_have_attribute("aria-valuemin", "9.8")
    type_in(lesson, "Opening size", "4 cm")
    expect(handle).to_have_attribute("aria-valuemin", "5.8")


def test_the_page_reported_no_error(lesson: Notebook) -> None:
    assert lesson.faults == []
