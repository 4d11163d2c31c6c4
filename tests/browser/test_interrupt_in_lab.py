"""A step that does not end, in JupyterLab: the slider that sets it off, *Interrupt* in the notebook's bar, and back."""

from __future__ import annotations

import sys
from collections.abc import Iterator
from pathlib import Path

import nbformat
import pytest
from playwright.sync_api import Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook, until

pytestmark = pytest.mark.browser

MADE, FLARE = "without_end.ipynb", "Flare"
SETUP = """from pathlib import Path
from kit import Lesson, bodice_block, cm, panel
lesson = Lesson("Quay flare", start=bodice_block, time_limit=600, units="cm")
lesson.length("flare", 40 * cm, least=10 * cm, most=90 * cm)"""
STEP = '''@lesson.step("Flare the hem")
def flare_it(front, flare):
    """Rule the hem {flare} below the waistline."""
    if flare > 60 * cm:
        Path("at work").touch()
    while flare > 60 * cm:
        pass
    front.draw(hem=front.waist.parallel(flare / 4, "down"), instead_of=front.hip)
    front.join(front.side, front.hem)
    front.join(front.hem, front.centre)'''
HEM, VALUE = "front.hem", "aria-valuetext"


@pytest.fixture(scope="module")
def lesson(lab: Lab, lab_page: Page) -> Iterator[Notebook]:
    spec = {"kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"}}
    cells = [nbformat.v4.new_code_cell(cell) for cell in (SETUP, STEP, "panel(lesson)")]
    nbformat.write(nbformat.v4.new_notebook(metadata=spec, cells=cells), lab.folder / MADE)
    lab_page.set_viewport_size({"width": 1500, "height": 1150})
    opened = Notebook(lab_page, lab.page_of(MADE))
    opened.run_all()
    opened.panel.scroll_into_view_if_needed()
    yield opened
    opened.close()


class Drag:
    """The mouse that holds the slider, at a share of its track."""

    def __init__(self, lesson: Notebook) -> None:
        self.mouse = lesson.page.mouse
        row = lesson.panel.locator(".lessonkit-row").filter(has=lesson.page.get_by_label(FLARE, exact=True))
        handle, track = lesson.handle(FLARE), row.locator(".noUi-base")
        handle.scroll_into_view_if_needed()
        at, self.track = handle.bounding_box(), track.bounding_box()
        assert at is not None and self.track is not None
        self.y = at["y"] + at["height"] / 2
        self.mouse.move(at["x"] + at["width"] / 2, self.y)
        self.mouse.down()

    def to(self, flare: float, *, moves: int = 1) -> None:
        """To a flare in cm; the slider goes from 10 to 90."""
        assert self.track is not None
        self.mouse.move(self.track["x"] + self.track["width"] * (flare - 10) / 80, self.y, steps=moves)


def shown(lesson: Notebook) -> float:
    return float(lesson.box(FLARE).input_value().removesuffix(" cm"))


def test_interrupt_ends_it_and_the_slider_goes_back(lesson: Notebook, lab: Lab, out_folder: Path) -> None:
    page, mark = lesson.page, lab.folder / "at work"
    good = lesson.path(HEM)
    assert good
    drag = Drag(lesson)
    drag.to(75, moves=20)
    drag.mouse.up()
    assert until(mark.exists), "the step never began"
    page.locator('.jp-NotebookPanel-toolbar [data-command="notebook:interrupt-kernel"]').click()
    status = lesson.panel.get_by_role("status")
    expect(status).to_contain_text("drafting was interrupted")
    expect(status).to_contain_text("Flare the hem")
    page.screenshot(path=out_folder / "lab-interrupted.png")
    old = lesson.panel.locator(".lessonkit-picture .lessonkit-old")
    expect(old).to_have_count(1)
    expect(old.locator("svg")).to_have_count(1)
    kept = lesson.path(HEM)
    assert kept
    # The last of the moves that were on their way stands, refused; what mends it has been looked for by now.
    assert until(
        lambda: lesson.box(FLARE).input_value().removesuffix(" cm") == lesson.handle(FLARE).get_attribute(VALUE)
    )
    expect(status).to_contain_text("drafting was interrupted")
    expect(lesson.panel).not_to_contain_text("Looking for values")

    # The way back leads over more values at which the step does not end: none wants an Interrupt of its own.
    drag = Drag(lesson)
    drag.to(30, moves=20)
    drag.mouse.up()
    expect(status).to_have_count(0)
    expect(old).to_have_count(0)
    assert until(lambda: 25 < shown(lesson) < 35)
    assert until(lambda: lesson.path(HEM) not in ("", good, kept)), "the picture follows again"
    page.screenshot(path=out_folder / "lab-interrupted-back.png")


def test_the_page_reported_no_error(lesson: Notebook) -> None:
    assert lesson.faults == []
