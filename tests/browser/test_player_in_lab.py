"""The player in JupyterLab: keys, playing, full window, a ground for keying, the clock and its chapters, clips.

Accessibility is checked with axe-core (through axe-playwright-python), WCAG 2.2 AA among its rules.
"""

from __future__ import annotations

import json
import re
import sys
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import nbformat
import numpy as np
import pytest
from axe_playwright_python.sync_playwright import Axe
from PIL import Image
from playwright.sync_api import Locator, Page, expect

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab
from notebook import Notebook, painted, until

pytestmark = pytest.mark.browser

EXAMPLE, NAME = "tideline_wrap_top.ipynb", "on_film.ipynb"
PLAYER = "from kit import player\n\nfilming = player(lesson)\nfilming"
GREEN = (0, 177, 64)
LATER = re.compile(r"^00:0[3-9]|^00:[1-5]\d|^0[1-9]")  # the clock shows three seconds or more


class Shown:
    """The player in the notebook `opened`."""

    def __init__(self, opened: Notebook, folder: Path) -> None:
        self.opened = opened
        self.folder = folder
        self.page = opened.page
        self.root = self.page.locator(".jp-OutputArea-output .lessonkit-player").first
        self.title = self.root.locator(".lessonkit-player-title")
        self.label = self.root.locator(".lessonkit-player-label")
        self.stage = self.root.locator(".lessonkit-player-stage")

    def button(self, act: str) -> Locator:
        return self.root.locator(f'[data-act="{act}"]')

    def choose(self, name: str, value: str) -> None:
        self.root.locator(f'select[data-choice="{name}"]').select_option(value)

    def share(self) -> float:
        return float(self.root.get_attribute("data-share") or "0")

    def made(self, index: int) -> None:
        """Until the picture of `index` stands finished."""
        expect(self.root).to_have_attribute("data-shown", str(index))
        assert until(lambda: self.share() == 1.0)

    def press(self, *keys: str) -> None:
        self.root.focus()
        for key in keys:
            self.page.keyboard.press(key)

    def drawing(self) -> list[tuple[float, float]]:
        """Draw the picture again and watch: at every frame its share and the length of all new lines seen, in the
        picture's own mm; what dashes and masks hide is taken off."""
        found: list[tuple[float, float]] = self.root.evaluate(
            """async root => {
              const seen = [];
              const stage = root.querySelector('.lessonkit-player-stage');
              const drawn = () => [...stage.querySelectorAll('[data-kind="line"] path')]
                .filter(p => !p.closest('mask') && getComputedStyle(p).visibility === 'visible')
                .reduce((sum, p) => {
                  const mask = p.getAttribute('mask');
                  const ink = mask ? stage.querySelector(mask.slice(4, -1)).firstChild : p;
                  return sum + p.getTotalLength() - (parseFloat(ink.style.strokeDashoffset) || 0);
                }, 0);
              root.querySelector('[data-act="again"]').click();
              const until = performance.now() + 120000;
              while (performance.now() < until) {
                seen.push([Number(root.dataset.share), drawn()]);
                if (Number(root.dataset.share) === 1) break;
                await new Promise(requestAnimationFrame);
              }
              return seen;
            }"""
        )
        return [(share, length) for share, length in found]

    def look(self) -> None:
        self.root.scroll_into_view_if_needed()
        painted(self.page)


@pytest.fixture(scope="module")
def shown(lab: Lab, lab_page: Page) -> Iterator[Shown]:
    book = nbformat.read(lab.folder / EXAMPLE, 4)
    place = next(i for i, cell in enumerate(book.cells) if cell.source.startswith("panel("))
    book.cells.insert(place + 1, nbformat.v4.new_code_cell(PLAYER))
    nbformat.write(book, lab.folder / NAME)
    lab_page.set_viewport_size({"width": 1500, "height": 1000})
    opened = Notebook(lab_page, lab.page_of(NAME))
    opened.run_all()
    found = Shown(opened, lab.folder)
    found.look()
    found.stage.locator("svg").wait_for()
    found.made(0)
    yield found
    opened.close()


def test_the_first_step_in_large_type(shown: Shown, out_folder: Path) -> None:
    expect(shown.label).to_have_text("Drafting step 1")
    expect(shown.title).to_have_text("Raise the shoulder and extend it into a sleeve")
    expect(shown.root.locator(".lessonkit-player-words")).to_contain_text("carry it on for 26 cm (10¼ in)")
    size = shown.title.evaluate("title => parseFloat(getComputedStyle(title).fontSize)")
    assert size >= 27
    shown.look()
    shown.root.screenshot(path=out_folder / "player-first.png")


def test_picture_and_buttons_stand_on_one_small_screen(shown: Shown, out_folder: Path) -> None:
    """JupyterLab's own bars are on it too."""
    shown.page.set_viewport_size({"width": 1280, "height": 720})
    shown.root.evaluate("root => root.scrollIntoView({block: 'start'})")
    painted(shown.page, 4)
    shown.page.screenshot(path=out_folder / "player-1280.png")
    for part in (shown.stage.locator("svg"), *(shown.button(act) for act in ("back", "next", "play", "full"))):
        box = part.bounding_box()
        assert box is not None and box["y"] >= 0 and box["y"] + box["height"] <= 720
        assert box["x"] >= 0 and box["x"] + box["width"] <= 1280
    shown.page.set_viewport_size({"width": 1500, "height": 1000})
    shown.look()


def test_keys_go_forward_back_and_to_the_ends(shown: Shown) -> None:
    shown.press("ArrowRight")
    expect(shown.label).to_have_text("Drafting step 2")
    shown.press("ArrowRight")
    expect(shown.label).to_have_text("Drafting step 3")
    shown.press("ArrowLeft")
    expect(shown.label).to_have_text("Drafting step 2")
    shown.press("End")
    expect(shown.label).to_have_text(re.compile(r"^Sewing step \d+"))
    last = shown.root.locator(".lessonkit-player-place").inner_text()
    assert len(set(last.split(" of "))) == 1, last
    shown.press("ArrowRight")
    expect(shown.root.locator(".lessonkit-player-place")).to_have_text(last)
    shown.press("Home")
    expect(shown.label).to_have_text("Drafting step 1")
    shown.made(0)
    assert shown.page.locator(".jp-mod-editMode").count() == 0, "the notebook's own keys stay out of it"


def test_a_step_is_drawn_as_it_is_made(shown: Shown, out_folder: Path) -> None:
    shown.choose("speed", "0.5")
    shown.press("Home")
    shown.made(0)
    seen = shown.drawing()
    shares, lengths = [share for share, _ in seen], [length for _, length in seen]
    assert shares[0] < 0.2 and shares[-1] == 1.0
    assert shares == sorted(shares)
    assert all(b >= a - 0.01 for a, b in pairwise(lengths)), "ink only grows"
    assert lengths[0] < 0.5 * lengths[-1]
    assert len({round(length) for length in lengths}) > 4, "and grows along the line"
    assert shown.stage.locator('[data-kind="show"]').first.evaluate("e => getComputedStyle(e).opacity") == "1"
    assert any(0.15 < share < 0.9 for share in shares), "it is seen half made"
    shown.button("again").click()
    shown.root.screenshot(path=out_folder / "player-drawing.png")
    shown.choose("speed", "1")


def test_space_plays_and_pauses(shown: Shown) -> None:
    shown.choose("speed", "3")
    shown.press("Home")
    shown.made(0)
    shown.press("Space")
    assert until(lambda: int(shown.root.get_attribute("data-shown") or 0) >= 2), "it goes on by itself"
    shown.press("Space")
    expect(shown.button("play")).to_have_attribute("aria-label", "Play")
    held = (shown.root.get_attribute("data-shown"), shown.share())
    painted(shown.page, 60)
    assert (shown.root.get_attribute("data-shown"), shown.share()) == held
    shown.press("Space")
    assert until(lambda: (shown.root.get_attribute("data-shown"), shown.share()) != held)
    shown.press("Space")
    shown.choose("speed", "1")


def test_sewing_pictures_with_dashed_rows(shown: Shown, out_folder: Path) -> None:
    """A row of stitching is dashed and grows behind a mask; when it is whole the mask is gone."""
    count = int(shown.root.locator(".lessonkit-player-place").inner_text().split(" of ")[1])
    shown.press("Home")
    shown.made(0)
    shown.choose("speed", "0.5")
    masked = False
    for index in range(1, count):
        shown.press("ArrowRight")
        expect(shown.root).to_have_attribute("data-shown", str(index))
        masked = "Sewing" in shown.label.inner_text() and shown.stage.locator("mask").count() > 0
        if masked:
            break
    assert masked
    shown.root.screenshot(path=out_folder / "player-sewing-half.png")
    seen = shown.drawing()
    assert any(0.2 < share < 0.8 for share, _ in seen), "it is seen half made"
    assert all(b >= a - 0.01 for (_, a), (_, b) in pairwise(seen)), "and its rows only grow"
    shown.made(index)
    assert shown.stage.locator("path[mask]").count() == 0
    told = shown.root.locator(".lessonkit-player-told")
    assert told.evaluate("e => e.scrollHeight - e.clientHeight") <= 1, "all its words find room"
    words = shown.root.locator(".lessonkit-player-words")
    assert words.evaluate("e => parseFloat(getComputedStyle(e).fontSize)") >= 14
    shown.root.screenshot(path=out_folder / "player-sewing.png")
    shown.choose("speed", "1")


def test_it_follows_the_panel(shown: Shown) -> None:
    shown.press("Home")
    shown.made(0)
    box = shown.opened.box("Sleeve length")
    before = box.input_value()
    box.fill("30 cm")
    box.press("Enter")
    expect(shown.root.locator(".lessonkit-player-words")).to_contain_text("carry it on for 30 cm")
    expect(shown.stage).to_contain_text("30 cm")
    assert shown.share() == 1.0, "what is made stays made"
    box.fill(before)
    box.press("Enter")
    expect(shown.root.locator(".lessonkit-player-words")).to_contain_text("carry it on for 26 cm")


def test_a_green_ground_for_keying(shown: Shown, out_folder: Path) -> None:
    shown.look()
    shown.choose("ground", "green")
    expect(shown.root).to_have_attribute("data-ground", "green")
    # White are only the letters on a stroke's red sign.
    paper = re.compile(r'<(path|rect|circle|g)\b[^>]*fill="#ffffff"')
    assert until(lambda: not paper.search(shown.stage.inner_html()))
    shown.root.locator('[data-choice="words"]').uncheck()
    path = out_folder / "player-green.png"
    shown.root.locator(".lessonkit-player-scene").screenshot(path=path)
    with Image.open(path) as image:
        pixels = np.asarray(image.convert("RGB"))
    green = float((pixels == GREEN).all(axis=2).mean())
    white = float((pixels > 245).all(axis=2).mean())
    assert green > 0.85, green
    assert white < 0.002, "no paper is left"
    shown.root.locator('[data-choice="words"]').check()
    shown.choose("ground", "paper")


def test_full_window_and_its_buttons_that_go_away(shown: Shown, out_folder: Path) -> None:
    shown.press("f")
    expect(shown.root).to_have_class(re.compile("lessonkit-player-full"))
    assert shown.page.evaluate("document.fullscreenElement?.classList.contains('lessonkit-player')")
    box = shown.root.bounding_box()
    assert box is not None and (box["width"], box["height"]) == (1500, 1000)
    shown.press("ArrowRight")
    expect(shown.label).to_have_text("Drafting step 2")
    expect(shown.root).to_have_class(re.compile("lessonkit-player-quiet"))
    expect(shown.root.locator(".lessonkit-player-bar").first).to_be_hidden()
    shown.page.screenshot(path=out_folder / "player-full.png")
    shown.page.mouse.move(700, 500)
    expect(shown.root).not_to_have_class(re.compile("lessonkit-player-quiet"))
    shown.page.screenshot(path=out_folder / "player-full-bar.png")
    shown.press("f")
    expect(shown.root).not_to_have_class(re.compile("lessonkit-player-full"))


def test_where_full_screen_is_refused_it_fills_the_window(shown: Shown, out_folder: Path) -> None:
    shown.root.evaluate("root => { root.requestFullscreen = () => Promise.reject(new Error('no')); }")
    shown.button("full").click()
    expect(shown.root).to_have_class(re.compile("lessonkit-player-full"))
    assert not shown.page.evaluate("document.fullscreenElement")
    box = shown.root.bounding_box()
    assert box is not None and (box["x"], box["y"], box["width"], box["height"]) == (0, 0, 1500, 1000)
    over = shown.page.evaluate("!!document.elementFromPoint(750, 10)?.closest('.lessonkit-player')")
    assert over, "nothing of the notebook lies over it"
    shown.page.screenshot(path=out_folder / "player-filling.png")
    shown.press("Escape")
    expect(shown.root).not_to_have_class(re.compile("lessonkit-player-full"))
    shown.root.evaluate("root => { delete root.requestFullscreen; }")


def seconds(clock: str) -> int:
    """What a clock shows, 00:03, in seconds."""
    minutes, rest = clock.split(":")
    return 60 * int(minutes) + int(rest)


def test_the_clock_notes_steps_and_writes_chapters(shown: Shown, out_folder: Path) -> None:
    shown.look()
    clock = shown.root.get_by_role("timer")
    shown.press("Home")
    shown.made(0)
    shown.button("clock").click()
    expect(shown.button("clock")).to_have_attribute("aria-label", "Stop the clock")
    expect(clock).to_have_text(LATER)
    shown.press("ArrowRight", "ArrowRight")  # past the second step
    expect(shown.label).to_have_text("Drafting step 3")
    stepped = clock.inner_text()
    assert until(lambda: seconds(clock.inner_text()) >= seconds(stepped) + 3)
    shown.button("clock").click()
    expect(shown.button("clock")).to_have_attribute("aria-label", "Start the clock")
    shown.root.locator('[data-box="times"] summary').click()
    chapters = shown.root.locator("textarea")
    expect(chapters).to_have_value(
        re.compile(r"^00:00 Raise the shoulder and extend it into a sleeve\n\d\d:\d\d .+\n$")
    )
    expect(shown.root.locator(".lessonkit-player-chapters")).to_contain_text("tideline-wrap-top.chapters.txt")
    assert (shown.folder / "tideline-wrap-top.chapters.txt").read_text() == chapters.input_value()
    shown.look()
    shown.root.screenshot(path=out_folder / "player-times.png")


def test_a_time_is_put_right_in_the_table(shown: Shown) -> None:
    field = shown.root.get_by_label("Time of Raise the shoulder and extend it into a sleeve")
    field.fill("3:20")
    field.press("Enter")
    chapters = shown.root.locator("textarea")
    expect(chapters).to_have_value(re.compile(r"\n03:20 Raise the shoulder"))
    field.fill("soon")
    field.press("Enter")
    expect(shown.root.locator(".lessonkit-player-times").get_by_role("alert")).to_contain_text(
        "is not a time in a film"
    )
    expect(field).to_have_value("03:20")
    kept = json.loads((shown.folder / "tideline-wrap-top.values.json").read_text())
    assert kept["video"]["marks"]["overarm"] == 200.0


def test_axe_finds_nothing(shown: Shown) -> None:
    shown.root.locator('[data-box="export"] summary').click()
    found = Axe().run(shown.page, context=".lessonkit-player").response["violations"]
    told = [(one["id"], [node["html"] for node in one["nodes"]][:3]) for one in found]
    assert told == []
    shown.root.locator('[data-box="export"] summary').click()


def test_export_from_the_buttons(shown: Shown) -> None:
    shown.press("Home")
    shown.root.locator('[data-box="export"] summary').click()
    shown.choose("kind", "png")
    shown.choose("size", "1280 x 720")
    shown.button("export").click()
    told = shown.root.locator(".lessonkit-player-exported")
    expect(told).to_have_text("1 file is in the folder tideline-wrap-top-clips.")
    with Image.open(shown.folder / "tideline-wrap-top-clips" / "draft-01-overarm.png") as image:
        assert image.size == (1280, 720) and image.mode == "RGBA"
    shown.choose("kind", "mp4")
    shown.choose("which", "all")
    shown.button("export").click()
    expect(told).to_contain_text("% done")
    shown.button("cancel").click()
    expect(told).to_have_text(re.compile("^Cancelled; "))


def test_whoever_wants_no_motion_sees_pictures_at_once(shown: Shown) -> None:
    shown.page.emulate_media(reduced_motion="reduce")
    shown.press("End")
    expect(shown.label).to_have_text(re.compile(r"^Sewing step"))
    expect(shown.root).not_to_have_attribute("data-shown", "0")  # the last picture has come
    assert shown.share() == 1.0
    shown.press("Home")
    expect(shown.root).to_have_attribute("data-shown", "0")
    assert shown.share() == 1.0
    shown.page.emulate_media(reduced_motion="no-preference")


def test_times_outlive_the_kernel(shown: Shown) -> None:
    shown.opened.restart_and_run_all()
    shown.look()
    shown.stage.locator("svg").wait_for()
    shown.root.locator('[data-box="times"] summary').click()
    expect(shown.root.locator("textarea")).to_have_value(re.compile(r"\n03:20 Raise the shoulder"))


def test_the_page_reported_no_error(shown: Shown) -> None:
    seen = shown.opened.faults
    assert seen == []
