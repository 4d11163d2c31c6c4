"""The booklet as a web page in Chromium: no network, nothing a screen reader stumbles over, ticks that stay.

Accessibility is checked with axe-core (through axe-playwright-python) for all its rules, WCAG 2.2 AA among them.
"""

from __future__ import annotations

import json
import shutil
import sys
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, BrowserContext, Page, Route, expect

from kit.booklet.screen import screen
from kit.lesson.lesson import slug

sys.path.insert(0, str(Path(__file__).parent))
from lab import PATIENCE
from notebook import until as wait_until

from ..booklet.conftest import PNG, lesson_at, markdown, screen_html

pytestmark = pytest.mark.browser
PHONE, DESK = {"width": 390, "height": 844}, {"width": 1280, "height": 900}
WORDS = "## On cloth\n\nRead [about lawn](https://example.org/lawn).\n\n![A narrow hem](hem.png 'Seen from inside')"


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A small lesson's screen page, with a photograph and a link in the teacher's words."""
    folder = tmp_path_factory.mktemp("screen")
    path = lesson_at(folder, {"end": [markdown(WORDS)]})
    (path.parent / "hem.png").write_bytes(PNG)
    made = folder / "booklet.html"
    made.write_text(screen(screen_html(path)), encoding="utf-8")
    return made


class Reader:
    """A page opened from its file. `asked` are addresses it wanted beside that file, `errors` what the browser
    complained of."""

    def __init__(self, context: BrowserContext, file: Path) -> None:
        self.asked: list[str] = []
        self.errors: list[str] = []
        self.page: Page = context.new_page()
        self.page.set_default_timeout(PATIENCE * 1000)
        self.page.on("console", lambda said: self.errors.append(said.text) if said.type != "log" else None)
        self.page.on("pageerror", lambda error: self.errors.append(str(error)))
        self.page.route("**/*", lambda route: self._only(route, file))
        self.page.goto(file.as_uri())

    def _only(self, route: Route, file: Path) -> None:
        if route.request.url.split("#")[0] in (file.as_uri(), "about:blank") or route.request.url.startswith("data:"):
            route.continue_()
        else:
            self.asked.append(route.request.url)
            route.abort()

    def violations(self) -> list[str]:
        found = Axe().run(self.page).response["violations"]
        return [f"{each['id']}: {each['nodes'][0]['html'][:200]}" for each in found]


def until(page: Page, truth: str) -> None:
    """Wait for the expression `truth`; the page's policy forbids the way Playwright would wait for it."""
    assert wait_until(lambda: bool(page.evaluate(truth))), f"never: {truth}"


@pytest.fixture(params=[PHONE, DESK], ids=["phone", "desk"])
def reader(browser: Browser, file: Path, request: pytest.FixtureRequest) -> Iterator[Reader]:
    context = browser.new_context(viewport=request.param, reduced_motion="reduce")
    reading = Reader(context, file)
    yield reading
    assert reading.errors == [] and reading.asked == []
    context.close()


def test_nothing_stands_in_a_reader_s_way(reader: Reader, out_folder: Path) -> None:
    page = reader.page
    assert reader.violations() == []
    width = page.viewport_size["width"]  # type: ignore[index]
    assert page.evaluate("document.documentElement.scrollWidth") <= width
    page.screenshot(path=out_folder / f"screen-{width}.png", full_page=True)
    page.get_by_role("button", name="Contents").click()
    expect(page.get_by_role("dialog", name="Contents")).to_be_visible()
    assert reader.violations() == []
    page.screenshot(path=out_folder / f"screen-contents-{width}.png")
    page.keyboard.press("Escape")
    page.locator("button.enlarge").nth(4).click()
    expect(page.get_by_role("dialog", name="Picture")).to_be_visible()
    page.keyboard.press("+")
    assert reader.violations() == []
    page.screenshot(path=out_folder / f"screen-picture-{width}.png")


def test_nothing_stands_in_the_way_in_an_example(browser: Browser, root: Path, tmp_path: Path) -> None:
    """The whole wrap top: facings, references between steps, every kind of table."""
    lessons = tmp_path / "lessons"
    shutil.copytree(root / "example_notebooks", lessons, ignore=shutil.ignore_patterns("*.values.json", ".*"))
    made = tmp_path / "booklet.html"
    made.write_text(screen(screen_html(lessons / "tideline_wrap_top.ipynb")), encoding="utf-8")
    for viewport in (PHONE, DESK):
        context = browser.new_context(viewport=viewport, reduced_motion="reduce")
        reading = Reader(context, made)
        assert reading.violations() == [] == reading.errors + reading.asked
        assert reading.page.evaluate("document.documentElement.scrollWidth") <= viewport["width"]
        context.close()


def test_every_step_ticks_off_and_is_remembered(reader: Reader) -> None:
    page = reader.page
    steps = page.locator("article.step")
    boxes = page.get_by_role("checkbox")
    count = steps.count()
    assert count == boxes.count() >= 5
    for at in (0, count - 1):
        boxes.nth(at).check()
    expect(page.get_by_role("status")).to_have_text(f"2 of {count} steps done")
    key = page.evaluate("Object.keys(localStorage)")
    lesson, edition = (page.locator("body").get_attribute(f"data-{name}") for name in ("lesson", "edition"))
    assert key == [f"lessonkit/{lesson}/{edition}"] and lesson == slug("Pebble top")
    kept = json.loads(page.evaluate("localStorage.getItem(Object.keys(localStorage)[0])"))
    assert kept == [steps.nth(at).get_attribute("data-step") for at in (0, count - 1)]
    page.reload()
    assert [boxes.nth(at).is_checked() for at in range(count)] == [at in (0, count - 1) for at in range(count)]
    page.get_by_role("button", name="Contents").click()
    page.get_by_role("button", name="Untick all steps").click()
    page.get_by_role("button", name="Keep them").click()
    page.get_by_role("button", name="Untick all steps").click()
    page.get_by_role("button", name="Untick all", exact=True).click()
    page.keyboard.press("Escape")
    expect(page.get_by_role("status")).to_have_text(f"0 of {count} steps done")
    page.reload()
    expect(page.get_by_role("status")).to_have_text(f"0 of {count} steps done")


def test_a_step_s_time_stands_where_its_title_begins_however_long_that_is(reader: Reader) -> None:
    """Beside the first line on a desk, below the last on a phone."""
    found = reader.page.evaluate(
        """(words) => {
        const time = document.querySelector('.step h3 .time'), title = time.parentElement.querySelector('.title');
        title.textContent = words;
        const [a, b] = [title, time].map((each) => each.getBoundingClientRect());
        return {below: b.top - a.bottom, apart: b.left - a.right, lower: b.top - a.top, lines: a.height / 30};
    }""",
        "Set the sleeves into the armholes, easing the cap between the notches, and finish both edges together",
    )
    assert found["lines"] > 2
    if reader.page.viewport_size == DESK:
        assert found["apart"] > 0 and 0 <= found["lower"] < 15
    else:
        assert found["below"] >= -1


def test_the_legend_is_legible(reader: Reader) -> None:
    """Its words are about as large as the text, its signs no narrower than 60 px (16 mm: CSS Values 4, "in"), and no
    two of its lines lie over one another."""
    lines = reader.page.evaluate("""[...document.querySelectorAll('.legend li')].map((line) => {
        const [box, sign, words] = [line, line.querySelector('svg, img'), line.querySelector('span')]
            .map((each) => each.getBoundingClientRect());
        return [box.top, box.bottom, sign.width, words.left - sign.right, words.right,
            parseFloat(getComputedStyle(line).fontSize), parseFloat(getComputedStyle(document.body).fontSize)];
    })""")
    assert len(lines) > 5
    width = reader.page.viewport_size["width"]  # type: ignore[index]
    for _, _, sign, apart, right, letters, text in lines:
        assert sign >= 60 and apart >= 0 and right <= width and letters >= 0.8 * text >= 12
    if reader.page.viewport_size == PHONE:
        assert all(above[1] <= below[0] + 0.5 for above, below in pairwise(lines))


def test_the_buttons_cover_no_picture(reader: Reader) -> None:
    page = reader.page
    covered = """[...document.querySelectorAll('.can-enlarge')].filter((holder) => {
        const button = holder.querySelector('.enlarge').getBoundingClientRect();
        return [...holder.querySelectorAll(':scope > svg, :scope > img')].some((one) => {
            const box = one.getBoundingClientRect();
            return box.width > 0 && box.bottom > button.top + 1 && box.right > button.left + 1;
        });
    }).length"""
    assert page.locator("button.enlarge").count() > 5
    assert page.evaluate(covered) == 0


def test_a_picture_opens_and_closes_by_keyboard(reader: Reader) -> None:
    page = reader.page
    button = page.locator("article.step button.enlarge").first
    assert button.get_attribute("aria-label").startswith("Enlarge: ")  # type: ignore[union-attr]
    picture = page.locator("article.step figure > svg:visible").first.get_attribute("aria-labelledby")
    button.focus()
    page.keyboard.press("Enter")
    dialog = page.get_by_role("dialog", name="Picture")
    expect(dialog).to_be_visible()
    assert page.locator(".sheet > svg").get_attribute("aria-labelledby") == picture
    inside = "document.activeElement.closest('dialog') !== null || document.activeElement === document.body"
    for _ in range(8):  # the focus goes round in the dialog and the browser's own bar, never to the page behind
        page.keyboard.press("Tab")
        assert page.evaluate(inside)
    width = "document.querySelector('.sheet').getBoundingClientRect().width"
    whole = page.evaluate(width)
    page.locator(".view").focus()
    page.keyboard.press("+")
    page.keyboard.press("+")
    assert page.evaluate(width) == pytest.approx(whole * 2.25, rel=0.02)
    before = page.evaluate("document.querySelector('.view').scrollLeft")
    page.keyboard.press("ArrowLeft")
    until(page, f"document.querySelector('.view').scrollLeft < {before}")
    page.get_by_role("button", name="Smaller").press("Enter")
    page.keyboard.press("0")
    assert page.evaluate(width) == pytest.approx(whole, rel=0.02)
    page.keyboard.press("Escape")
    expect(dialog).to_be_hidden()
    expect(button).to_be_focused()
    assert page.locator("article.step figure > svg:visible").first.get_attribute("aria-labelledby") == picture
    assert page.locator(".sheet > *").count() == 0


def test_wheel_and_mouse_zoom_and_pan(reader: Reader) -> None:
    page = reader.page
    page.locator("article.step figure > svg:visible").first.click()
    box = page.locator(".view").bounding_box()
    assert box
    x, y = box["x"] + box["width"] / 3, box["y"] + box["height"] / 3
    point = f"""(() => {{ const view = document.querySelector('.view'), sheet = view.firstElementChild;
        const r = sheet.getBoundingClientRect(); return [({x} - r.left) / r.width, ({y} - r.top) / r.height]; }})()"""
    under = page.evaluate(point)
    page.mouse.move(x, y)
    page.mouse.wheel(0, -600)
    until(page, "document.querySelector('.sheet').style.width !== '100%'")
    assert page.evaluate(point) == pytest.approx(under, abs=0.01)  # what was under the pointer stays there
    page.mouse.down()
    page.mouse.move(x - 40, y - 30)
    page.mouse.up()
    assert page.evaluate(point) != pytest.approx(under, abs=0.01)
    page.get_by_role("button", name="Close").click()
    expect(page.get_by_role("dialog", name="Picture")).to_be_hidden()


def test_two_fingers_enlarge(browser: Browser, file: Path) -> None:
    context = browser.new_context(viewport=PHONE, has_touch=True, is_mobile=True)
    page = Reader(context, file).page
    page.locator("article.step button.enlarge").first.tap()
    expect(page.get_by_role("dialog", name="Picture")).to_be_visible()
    session = context.new_cdp_session(page)

    def touch(kind: str, far: float | None) -> None:
        points = [] if far is None else [{"x": 195 - far, "y": 400}, {"x": 195 + far, "y": 400}]
        session.send("Input.dispatchTouchEvent", {"type": kind, "touchPoints": points})

    touch("touchStart", 40)
    for far in (60, 80, 120):
        touch("touchMove", far)
    touch("touchEnd", None)
    width = page.evaluate("parseFloat(document.querySelector('.sheet').style.width)")
    assert width == pytest.approx(300, rel=0.05)
    context.close()


def test_contents_lead_to_a_step(reader: Reader) -> None:
    page = reader.page
    title = page.locator("article.step .title").nth(3).inner_text()
    page.get_by_role("button", name="Contents").click()
    page.get_by_role("link", name=title).last.click()
    expect(page.get_by_role("dialog", name="Contents")).to_be_hidden()
    step = page.locator("article.step").nth(3)
    expect(step).to_be_in_viewport()
    assert page.evaluate("document.activeElement.tagName") == "H3"
    top, bar = step.locator("h3").bounding_box(), page.locator(".bar").bounding_box()
    assert top and bar and top["y"] >= bar["y"] + bar["height"] - 1  # not hidden under the bar


def test_one_step_fills_the_screen_on_request(reader: Reader, out_folder: Path) -> None:
    """The others wait, links and contents lead on from it, paper has the whole booklet."""
    page = reader.page
    steps, turning = page.locator("article.step"), page.get_by_role("navigation", name="One step at a time")
    count = steps.count()

    def seen() -> list[int]:
        return [at for at in range(count) if steps.nth(at).is_visible()]

    expect(turning).to_be_hidden()
    steps.nth(2).scroll_into_view_if_needed()
    page.get_by_role("button", name="Contents").click()
    page.get_by_role("button", name="One step at a time").click()
    (first,) = seen()
    assert not page.locator("#cover").is_visible() and not page.locator("#terms").is_visible()
    assert page.evaluate("document.documentElement.scrollWidth <= window.innerWidth")
    page.screenshot(path=out_folder / f"one-step-{page.viewport_size['width']}.png")  # type: ignore[index]
    turning.get_by_role("button", name="Next step").click()
    assert seen() == [first + 1]
    assert page.evaluate("document.activeElement.tagName") == "H3"
    page.get_by_role("checkbox").locator("visible=true").check()
    assert reader.violations() == []
    turning.get_by_role("button", name="The step before").click()
    assert seen() == [first]
    page.get_by_role("button", name="Contents").click()
    page.get_by_role("link", name=steps.nth(count - 1).locator(".title").text_content() or "").last.click()
    assert seen() == [count - 1] and turning.get_by_role("button", name="Next step").is_disabled()
    page.emulate_media(media="print")
    assert len(seen()) == count and not turning.is_visible()
    page.emulate_media(media="screen")
    turning.get_by_role("button", name="Whole booklet").click()
    assert len(seen()) == count and not turning.is_visible()
    expect(steps.nth(count - 1)).to_be_in_viewport()


def test_it_works_where_nothing_is_kept(browser: Browser, file: Path) -> None:
    context = browser.new_context(viewport=PHONE)
    context.add_init_script("Object.defineProperty(window, 'localStorage', { get() { throw new Error('denied'); } })")
    reading = Reader(context, file)
    page = reading.page
    page.get_by_role("checkbox").first.check()
    expect(page.get_by_role("status")).to_contain_text("1 of ")
    page.get_by_role("button", name="Contents").click()
    expect(page.get_by_text("This browser will not keep your ticks")).to_be_visible()
    assert reading.errors == []
    context.close()


def test_it_reads_without_its_script(browser: Browser, file: Path) -> None:
    context = browser.new_context(viewport=PHONE, java_script_enabled=False)
    page = Reader(context, file).page
    assert page.locator("article.step").count() >= 5
    assert page.locator("figure > svg").first.is_visible()
    context.close()


def test_the_browser_prints_the_booklet_alone(reader: Reader, tmp_path: Path) -> None:
    page = reader.page
    page.emulate_media(media="print")
    for hidden in (".bar", ".tick", ".enlarge"):
        assert all(not each.is_visible() for each in page.locator(hidden).all())
    assert page.locator("article.step figure > svg").first.is_visible()
    page.pdf(path=tmp_path / "printed.pdf", format="A4")
    assert (tmp_path / "printed.pdf").stat().st_size > 20_000


def test_the_policy_lets_nothing_else_run(browser: Browser, file: Path, tmp_path: Path) -> None:
    """A page into which somebody put a script, a style and a picture from elsewhere."""
    foreign = (
        "<script>document.title = 'taken'</script>"
        "<img src='http://127.0.0.1:9/a.png' onerror='document.title = `taken`'>"
        "<style>h1 { display: none }</style><p style='color: red' id='red'>text</p>"
    )
    spoiled = tmp_path / "spoiled.html"
    spoiled.write_text(file.read_text(encoding="utf-8").replace("<main>", f"<main>{foreign}"), encoding="utf-8")
    context = browser.new_context(viewport=DESK)
    reading = Reader(context, spoiled)
    assert "taken" not in reading.page.title()
    assert reading.page.locator("h1").is_visible()
    assert reading.page.evaluate("getComputedStyle(document.getElementById('red')).color") != "rgb(255, 0, 0)"
    assert reading.asked == []  # stopped before it is asked for
    assert sum("Content Security Policy" in error for error in reading.errors) >= 4
    context.close()
