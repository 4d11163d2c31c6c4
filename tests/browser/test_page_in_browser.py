"""A lesson's page in Chromium, from a server of static files on the loopback: it starts, follows its sliders, walks
through its steps, drafts for the reader's own body, says the same as CPython, and opens without any server.

Accessibility is checked with axe-core (through axe-playwright-python) for all its rules, WCAG 2.2 AA among them. The
core of the browser's Python comes through npm; only where npm cannot be reached are these tests left out.
"""

from __future__ import annotations

import functools
import gzip
import http.server
import json
import lzma
import re
import shutil
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from random import Random
from typing import Any

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, Page, Route, expect

from kit.errors import KitError
from kit.page.build import build_page
from kit.page.bundle import unpacked, zipped
from kit.page.core import core
from kit.page.engine import Engine
from tests.both_pythons import Apart, settings

sys.path.insert(0, str(Path(__file__).parent))
from firefox import FIREFOX, running_firefox
from lab import PATIENCE
from notebook import painted, until

pytestmark = pytest.mark.browser
PHONE, DESK, WIDE = {"width": 390, "height": 844}, {"width": 1280, "height": 800}, {"width": 1920, "height": 1080}


class Quiet(http.server.SimpleHTTPRequestHandler):
    def log_message(self, format: str, *args: Any) -> None: ...


@pytest.fixture(scope="module")
def browsers_python() -> None:
    try:
        core()
    except KitError as error:
        if "npm" in str(error):
            pytest.skip(f"Pyodide cannot be had here: {error}")
        raise


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory, root: Path, browsers_python: None) -> Path:
    """The wrap top's page, built once."""
    out = tmp_path_factory.mktemp("page") / "wrap"
    build_page(root / "example_notebooks" / "tideline_wrap_top.ipynb", out, spoken=["en", "de"])
    return out


@pytest.fixture(scope="module")
def skirt_folder(tmp_path_factory: pytest.TempPathFactory, root: Path, browsers_python: None) -> Path:
    """The circle skirt's page, with the booklet beside it."""
    out = tmp_path_factory.mktemp("page") / "skirt"
    build_page(root / "example_notebooks" / "eddy_skirt.ipynb", out, spoken=["en"], cloth=False, booklet=True)
    return out


@contextmanager
def serving(folder: Path) -> Iterator[str]:
    """The address of a server of static files that ends with the block."""
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=str(folder)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    try:
        yield f"http://127.0.0.1:{server.server_port}/"
    finally:
        server.shutdown()
        server.server_close()


@pytest.fixture(scope="module")
def served(folder: Path) -> Iterator[tuple[str, http.server.ThreadingHTTPServer]]:
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=str(folder)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    yield f"http://127.0.0.1:{server.server_port}/", server
    server.shutdown()


class Reader:
    """A page that is open; `strange` are addresses it wanted elsewhere, `errors` what the browser complained of. A page
    that is not `guarded` may ask anywhere, and the browser's own cache is at work, which guards switch off."""

    def __init__(self, browser: Browser, address: str, guarded: bool = True) -> None:
        self.strange: list[str] = []
        self.errors: list[str] = []
        self.context = browser.new_context(viewport=PHONE, has_touch=True)  # type: ignore[arg-type]
        self.page: Page = self.context.new_page()
        self.page.set_default_timeout(PATIENCE * 1000)
        self.page.on("console", lambda said: self.errors.append(said.text) if said.type != "log" else None)
        self.page.on("pageerror", lambda error: self.errors.append(str(error)))
        if guarded:
            self.context.route("**/*", lambda route: self._only(route, address))
        self.page.goto(address)
        self.settled()

    def _only(self, route: Route, address: str) -> None:
        if route.request.url.startswith(address):
            route.continue_()
        else:
            self.strange.append(route.request.url)
            route.abort()

    @property
    def drawn(self) -> int:
        return int(self.page.evaluate("document.documentElement.dataset.drawn || 0"))

    def settled(self, after: int = 0) -> None:
        """Wait until something was drawn after the drawing of that number, nothing waits to be, and it is proved."""
        self.page.wait_for_function(
            "after => { const d = document.documentElement.dataset;"
            " return Number(d.drawn || 0) > after && d.answered === d.asked && d.proved === d.drawn }",
            arg=after,
        )

    def ask(self, **message: Any) -> dict[str, Any]:
        """Ask the page's engine past the page."""
        answer: dict[str, Any] = self.page.evaluate(
            "message => new Promise(done => window.lessonAsk(message, done))", message
        )
        return answer


@pytest.fixture(scope="module")
def reader(browser: Browser, served: tuple[str, Any]) -> Iterator[Reader]:
    opened = Reader(browser, served[0])
    yield opened
    opened.context.close()


def test_it_starts_and_says_nothing_wrong(reader: Reader) -> None:
    expect(reader.page.locator("h1")).to_have_text("Tideline wrap top")
    expect(reader.page.locator("#picture svg")).to_be_visible()
    expect(reader.page.locator("#found")).to_contain_text("Every check passed.")
    expect(reader.page.locator("#cloth tbody tr").first).to_contain_text("m")
    expect(reader.page.locator("#exercises h3")).to_have_text("Exercise: Longer underarm")
    assert reader.strange == [] and reader.errors == []


def test_nothing_is_compiled_in_the_page(folder: Path) -> None:
    """Every module travels as bytecode of the browser's Python: PEP 552, unchecked."""
    for name in ("kit.zip.lzma", "python.zip.lzma"):
        files = unpacked(lzma.decompress(next(folder.glob(f"edition-*/{name}")).read_bytes()))
        heads = {data[:8] for file, data in files.items() if file.endswith(".pyc")}
        assert len(heads) == 1 and heads.pop()[4:] == b"\1\0\0\0"
        assert not [file for file in files if file.endswith(".py")]


def test_a_visit_loads_each_file_once_and_little(folder: Path, browser: Browser) -> None:
    """The offline copy takes what the page has loaded; all of it is five million bytes where a host packs scripts."""
    asked: list[str] = []

    class Counting(Quiet):
        def send_response(self, code: int, message: str | None = None) -> None:
            if code != 304:  # what the browser has, and only asks after, is not sent again
                asked.append(self.path)
            super().send_response(code, message)

    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Counting, directory=str(folder)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    reader = Reader(browser, f"http://127.0.0.1:{server.server_port}/?size=W6", guarded=False)
    try:
        expect(reader.page.locator("#size")).to_have_value("W6")  # as a booklet's code asks
        assert reader.page.url.endswith(f":{server.server_port}/")
        reader.page.wait_for_selector("html[data-kept]", state="attached")
        large = [path.rsplit("/", 1)[-1] for path in asked if path.endswith((".lzma", ".asm.mjs"))]
        assert sorted(large) == ["kit.zip.lzma", "pyodide.asm.mjs", "pyodide.asm.wasm.lzma", "python.zip.lzma"]
        files = [path for path in folder.rglob("*") if path.is_file() and path.name != "notices.txt"]
        assert sum(len(gzip.compress(path.read_bytes(), 9)) for path in files) < 5_000_000
        reader.page.wait_for_function(  # what was unpacked is kept
            "async () => { for (const n of await caches.keys()) if (n.endsWith(' unpacked'))"
            " return (await (await caches.open(n)).keys()).length === 3 }"
        )
        before = len(asked)
        reader.page.reload()
        reader.settled()
        expect(reader.page.locator("#size")).to_have_value("W6")
        assert not [path for path in asked[before:] if path.endswith((".lzma", ".mjs"))]
        assert reader.errors == []
    finally:
        reader.context.close()
        server.shutdown()
        server.server_close()


def test_a_slider_moves_picture_numbers_and_exercise(reader: Reader) -> None:
    before, seen = reader.page.inner_html("#picture"), reader.drawn
    reader.page.locator("#value-underarm_drop").press("ArrowRight")
    reader.settled(seen)
    assert reader.page.inner_html("#picture") == before  # the first step does not use it
    expect(reader.page.locator("#value-underarm_drop")).to_have_attribute("aria-valuetext", "9.1 cm (3 9/16 in)")
    seen = reader.drawn
    reader.page.evaluate(
        "() => { const r = document.getElementById('value-sleeve_length');"
        " for (let i = 200; i < 240; i++) { r.value = i; r.dispatchEvent(new Event('input')); } }"
    )
    reader.settled(seen)
    expect(reader.page.locator("#step-words")).to_contain_text("23.9 cm")
    assert reader.page.inner_html("#picture") != before
    assert reader.drawn - seen < 40  # moves that waited were left out: the last one counts
    seen = reader.drawn
    reader.page.locator("#reset").click()
    reader.settled(seen)
    assert reader.page.inner_html("#picture") == before


def test_a_measure_is_dragged_in_the_picture(reader: Reader) -> None:
    """By its end, as far as the hand goes: 60 px along it, and its slider, its sentence and the picture with it."""
    page, seen = reader.page, reader.drawn
    page.set_viewport_size(DESK)  # type: ignore[arg-type]
    reader.settled(seen)
    ring = page.locator('.grip[data-grip="sleeve_length"] .ring')
    box = ring.bounding_box()
    assert box is not None
    told = reader.ask(do="draw", step={"kind": "draft", "key": "overarm"}, room=[1, 1])
    grip = next(each for each in told["grips"] if each["name"] == "sleeve_length")
    scale = page.evaluate("document.querySelector('#picture svg').getScreenCTM().a")
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    seen = reader.drawn
    page.mouse.move(x, y)
    page.mouse.down()
    for part in (20, 40, 60):  # back towards the shoulder
        page.mouse.move(x - grip["way"][0] * part, y - grip["way"][1] * part)
    page.mouse.up()
    reader.settled(seen)
    value = float(page.locator("#value-sleeve_length").input_value())  # in tenths of a cm
    assert value == pytest.approx(260 - 60 / scale / grip["rate"], abs=1.5)
    expect(page.locator("#step-words")).to_contain_text(f"{value / 10:g} cm")
    seen = reader.drawn
    page.mouse.move(x, y)  # let go: nothing goes on
    page.locator("#reset").click()
    reader.settled(seen)
    page.set_viewport_size(PHONE)  # type: ignore[arg-type]


def test_a_late_answer_takes_no_press_back(reader: Reader) -> None:
    """Pressed twice, then once more as the first picture comes: three steps, though the second is not drawn yet."""
    page, seen = reader.page, reader.drawn
    before = int(page.locator("#value-sleeve_length").input_value())
    after = page.evaluate(
        "async () => { const range = document.getElementById('value-sleeve_length'), more = range.nextElementSibling;"
        " const root = document.documentElement, drawn = new Promise(done => new MutationObserver(done)"
        ".observe(root, { attributeFilter: ['data-drawn'] }));"
        " more.click(); more.click(); await drawn; more.click(); return Number(range.value); }"
    )
    assert after == before + 3
    reader.settled(seen)
    assert page.locator("#value-sleeve_length").input_value() == str(before + 3)
    seen = reader.drawn
    page.locator("#reset").click()
    reader.settled(seen)


def test_on_and_back_through_drafting_and_sewing(reader: Reader) -> None:
    seen = reader.drawn
    reader.page.locator("#on").click()
    reader.settled(seen)
    expect(reader.page.locator("#step-label")).to_have_text("Drafting step 2")
    expect(reader.page.locator("#told")).to_contain_text("Step 2 of")
    seen = reader.drawn
    last = reader.page.locator("#steps option").last.get_attribute("value")
    assert last is not None and last.startswith("sew:")
    reader.page.select_option("#steps", last)
    reader.settled(seen)
    expect(reader.page.locator("#step-label")).to_contain_text("Picture 1 of")
    seen = reader.drawn
    reader.page.locator("#back").click()
    reader.settled(seen)
    expect(reader.page.locator("#step-label")).to_contain_text("Sewing step")
    seen = reader.drawn
    reader.page.select_option("#steps", index=0)
    reader.settled(seen)
    expect(reader.page.locator("#back")).to_be_disabled()


def test_the_readers_own_body(reader: Reader, tmp_path: Path) -> None:
    page, seen = reader.page, reader.drawn
    page.select_option("#size", label="My own measurements")
    page.locator("#measure-bust_girth").fill("104")
    page.locator("#measure-waist_girth").fill("elephant")
    expect(page.locator("#hint-waist_girth")).to_contain_text("elephant")
    expect(page.locator("#own .figures svg").first).to_be_visible()
    page.locator("#measure-waist_girth").fill("84 cm")
    expect(page.locator("#hint-waist_girth")).to_contain_text("84 cm")
    with page.expect_download() as saved:
        page.get_by_role("button", name="Save as a file").click()
    saved.value.save_as(tmp_path / "mine.toml")
    assert 'bust_girth = "104 cm"' in (tmp_path / "mine.toml").read_text("utf-8")
    page.get_by_role("button", name="Draft for these measurements").click()
    reader.settled(seen)
    expect(page.locator("#finished")).to_contain_text("ease over bust girth")
    page.locator("#own input[type=file]").set_input_files(
        {"name": "broken.toml", "mimeType": "text/plain", "buffer": b"[[[ \xff"}
    )
    expect(page.locator("#body-said")).to_contain_text("broken.toml")
    seen = reader.drawn
    page.select_option("#size", label="W4")
    reader.settled(seen)


def test_language_and_units(reader: Reader) -> None:
    page, seen = reader.page, reader.drawn
    page.select_option("#language", label="Deutsch")
    reader.settled(seen)
    expect(page.locator("#on")).to_have_text("Weiter")
    expect(page.locator("#step-words")).to_contain_text("Vom Schulterpunkt")
    assert page.get_attribute("html", "lang") == "de"
    seen = reader.drawn
    page.select_option("#units", "inch")
    reader.settled(seen)
    expect(page.locator("#step-words")).to_contain_text("10 1/4 Zoll (26 cm)")
    seen = reader.drawn
    page.select_option("#units", "cm")
    reader.settled(seen)
    seen = reader.drawn
    page.select_option("#language", label="English")
    reader.settled(seen)


@pytest.mark.parametrize("size", [PHONE, DESK, WIDE], ids=["390", "1280", "1920"])
def test_it_is_accessible_and_fits(reader: Reader, size: dict[str, int], out_folder: Path) -> None:
    page = reader.page
    page.set_viewport_size(size)  # type: ignore[arg-type]
    page.evaluate("window.scrollTo(0, 0)")
    page.wait_for_function("document.querySelector('#picture svg')")
    page.screenshot(path=str(out_folder / f"page-{size['width']}.png"))
    found = Axe().run(page)
    assert found.violations_count == 0, found.generate_report()
    assert page.evaluate("document.documentElement.scrollWidth") <= size["width"]
    small = page.evaluate(
        "() => [...document.querySelectorAll('button, select, input:not([type=checkbox]), a, summary')]"
        ".filter(e => e.offsetParent).map(e => [e.id || e.textContent, e.getBoundingClientRect()])"
        ".filter(([, b]) => b.height < 43.5).map(([n]) => n)"
    )
    assert small == []
    page.evaluate("document.getElementById('panel').scrollTo(0, 900); window.scrollTo(0, 900)")
    box = page.locator("#picture").bounding_box()
    assert box is not None and box["y"] > -1 and box["y"] + box["height"] < size["height"]  # still in sight


def test_it_says_what_cpython_says(
    reader: Reader, root: Path, folder: Path, skirt_folder: Path, browser: Browser
) -> None:
    """Forty settings and bodies drawn at random, over two lessons: the same sentences and findings, and the same
    drawings to 1e-9 mm before their texts are placed; tests/bench/page_truth.py asks 200 of every lesson."""
    told = json.loads(next(folder.glob("edition-*/engine.json")).read_text("utf-8"))
    wrap = Engine(
        root / "example_notebooks" / "tideline_wrap_top.ipynb", offered=told["languages"], cloth=told["cloth"]
    )
    assert _apart(wrap, reader).other == []
    skirt = Engine(root / "example_notebooks" / "eddy_skirt.ipynb", offered=["en"])
    with serving(skirt_folder) as address:
        other = Reader(browser, address)
        try:
            assert _apart(skirt, other).other == []
        finally:
            other.context.close()


def _apart(engine: Engine, reader: Reader) -> Apart:
    def here(message: dict[str, Any]) -> dict[str, Any]:
        made: dict[str, Any] = json.loads(engine.answer(json.dumps(message)))
        return made

    found = Apart()
    for setting in settings(engine, here, Random(20261130), 20):
        found.compare(here, lambda message: reader.ask(**message), setting)
    assert found.asked == 20 and found.refused < 10 and reader.strange == []
    return found


def test_the_booklet_follows_the_readers_body(browser: Browser, skirt_folder: Path, out_folder: Path) -> None:
    """Typed once: every number, table, picture and sentence is for that body, and says so; what cannot be made there
    says that too. The page beside it knows the body as well."""
    with serving(skirt_folder) as address:
        context = browser.new_context(viewport=PHONE)  # type: ignore[arg-type]
        page = context.new_page()
        page.set_default_timeout(PATIENCE * 1000)
        strange: list[str] = []
        page.on("console", lambda said: strange.append(said.text) if said.type != "log" else None)
        page.on("pageerror", lambda error: strange.append(str(error)))
        page.on("request", lambda asked: None if asked.url.startswith(address) else strange.append(asked.url))
        try:
            page.goto(f"{address}booklet.html")
            asked: list[str] = []
            page.on("request", lambda one: asked.append(one.url))
            drafted = page.locator('article[data-kind="draft"]').first
            before = drafted.locator("figure").first.inner_html()
            built = page.locator('[data-part="for"]').inner_text()
            page.get_by_role("button", name="Use my measurements").click()
            page.locator("#measure-waist_girth").fill("84 cm")
            page.get_by_role("button", name="Draft for these measurements").click()
            page.wait_for_selector('html[data-mine="done"]', state="attached")
            expect(page.locator("#mine-said")).to_contain_text("is now for Mine")
            expect(page.locator('[data-part="for"]')).not_to_have_text(built)
            expect(page.locator('[data-part="body"]')).to_contain_text("84 cm")
            expect(page.locator("#lays, #pieces").first).to_contain_text(re.compile("size W4"))
            expect(page.locator('[data-part="sizes"]')).to_contain_text("drafted for the measurements of Mine")
            assert page.locator('[data-part="sizes"] .mine').count() == 0  # no column of the chart is theirs
            assert drafted.locator("figure").first.inner_html() != before
            assert page.locator(".waits").count() == 0 and page.locator("#mine-wrong li").count() == 0
            assert [url for url in asked if url.endswith("kit.zip.lzma")]  # the engine came when it was asked for
            page.screenshot(path=str(out_folder / "booklet-live-390.png"))
            drafted.scroll_into_view_if_needed()
            page.screenshot(path=str(out_folder / "booklet-live-step-390.png"))
            found = Axe().run(page)
            assert found.violations_count == 0, found.generate_report()
            assert page.evaluate("document.documentElement.scrollWidth") <= PHONE["width"]
            drafted.locator(".enlarge").click()
            expect(page.locator("dialog.picture-window svg:visible")).to_be_visible()
            page.keyboard.press("Escape")
            page.reload()  # what was typed is kept, here and for the page beside it
            page.wait_for_selector('html[data-mine="done"]', state="attached")
            expect(page.locator('[data-part="body"]')).to_contain_text("84 cm")
            page.get_by_role("button", name="Back to the booklet as printed").click()
            expect(page.locator('[data-part="for"]')).to_have_text(built)
            assert strange == []
        finally:
            context.close()


def test_a_step_that_does_not_end_is_stopped(browser: Browser, folder: Path, tmp_path: Path) -> None:
    """A lesson whose first step runs round and round for a long sleeve; the page waits 6 s for it instead of 12 s."""
    copy = shutil.copytree(folder, tmp_path / "endless")
    edition = next(copy.glob("edition-*"))
    lesson = unpacked((edition / "lesson.zip").read_bytes())
    line = b"    raised = front.shoulder_tip.up(shoulder_lift)"
    assert lesson["lesson.ipynb"].count(line) == 1
    lesson["lesson.ipynb"] = lesson["lesson.ipynb"].replace(
        line, rb"    while float(sleeve_length) > 262: pass\n" + line
    )
    (edition / "lesson.zip").write_bytes(zipped(lesson))
    script = (edition / "engine.js").read_text("utf-8")
    assert "draw: 12000" in script
    (edition / "engine.js").write_text(script.replace("draw: 12000", "draw: 6000"), "utf-8")
    server = http.server.ThreadingHTTPServer(("127.0.0.1", 0), functools.partial(Quiet, directory=str(copy)))
    threading.Thread(target=server.serve_forever, daemon=True).start()
    reader = Reader(browser, f"http://127.0.0.1:{server.server_port}/")
    try:
        ended: list[str] = []
        page, seen = reader.page, reader.drawn
        before = page.inner_html("#picture")
        page.workers[0].on("close", lambda worker: ended.append(worker.url))
        page.evaluate(
            "() => { const r = document.getElementById('value-sleeve_length');"
            " r.value = r.max; r.dispatchEvent(new Event('input')); }"
        )
        expect(page.locator("#trouble-said")).to_contain_text(_words(folder)["stopped"], timeout=PATIENCE * 1000)
        assert page.inner_html("#picture") == before  # the last good one
        page.wait_for_function("after => Number(document.documentElement.dataset.drawn) > after", arg=seen)
        assert page.inner_html("#picture") == before

        def another() -> bool:
            """Another took its place, and draws; that the first has ended is heard when the page is asked something."""
            painted(page, 1)
            return len(ended) == 1 and len(page.workers) == 1

        assert until(another)
        expect(page.locator("#value-sleeve_length")).to_have_attribute("aria-valuetext", re.compile(r"^26 cm"))
        assert reader.strange == []
    finally:
        reader.context.close()
        server.shutdown()
        server.server_close()


def _words(folder: Path) -> dict[str, str]:
    words: dict[str, str] = json.loads(next(folder.glob("edition-*/page.json")).read_text("utf-8"))["languages"]["en"]
    return words


def test_values_are_kept_and_it_opens_without_a_server(
    reader: Reader, served: tuple[str, http.server.ThreadingHTTPServer]
) -> None:
    page, seen = reader.page, reader.drawn
    page.set_viewport_size(PHONE)  # type: ignore[arg-type]
    page.locator("#value-sleeve_length").press("ArrowLeft")
    reader.settled(seen)
    shown = page.locator("#value-sleeve_length").get_attribute("aria-valuetext")
    page.wait_for_selector("html[data-kept]", state="attached")
    expect(page.locator("#kept")).to_contain_text("without the internet")
    served[1].shutdown()
    served[1].server_close()
    page.reload()
    reader.settled()
    expect(page.locator("#value-sleeve_length")).to_have_attribute("aria-valuetext", str(shown))
    expect(page.locator("#found")).to_contain_text("Every check passed.")


def test_it_opens_as_it_was_built(browser: Browser, folder: Path, tmp_path: Path) -> None:
    """With --size, --units and --values: there it opens, there `as written` leads back to, and what the reader chooses
    stands (tests/page/test_opening.py holds that the build writes them down)."""
    opened = tmp_path / "page"
    shutil.copytree(folder, opened)
    (path,) = opened.glob("edition-*/page.json")
    told = json.loads(path.read_text("utf-8"))
    assert told["opening"] == {"size": "W4", "units": "cm", "values": {}}
    told["opening"] = {"size": "W6", "units": "inch", "values": {"sleeve_length": 8 * 25.4}}
    path.write_text(json.dumps(told), "utf-8")
    with serving(opened) as address:
        reader = Reader(browser, address)
        page = reader.page
        try:
            sleeve = page.locator("#value-sleeve_length")
            expect(page.locator("#size")).to_have_value("W6")
            expect(page.locator("#units")).to_have_value("inch")
            expect(sleeve).to_have_attribute("aria-valuetext", re.compile(r"^8\b"))
            expect(page.locator("#reset")).to_be_disabled()
            drawn = reader.drawn
            sleeve.focus()
            page.keyboard.press("ArrowRight")
            reader.settled(drawn)
            expect(sleeve).to_have_attribute("aria-valuetext", re.compile(r"^8 1[/⁄]16|^8 ¹⁄₁₆"))
            page.locator("#size").select_option("W2")
            page.locator("#units").select_option("cm")
            page.reload()
            reader.settled()
            expect(page.locator("#size")).to_have_value("W2")
            expect(page.locator("#units")).to_have_value("cm")
            drawn = reader.drawn
            page.locator("#reset").click()
            reader.settled(drawn)
            expect(sleeve).to_have_attribute("aria-valuetext", re.compile(r"^20\.3"))
            assert reader.errors == []
        finally:
            reader.context.close()


@pytest.mark.skipif(FIREFOX is None, reason="there is no Firefox on this machine (see tests/browser/firefox.py)")
def test_it_works_in_firefox_too(served: tuple[str, Any], out_folder: Path) -> None:
    """On a telephone and on a laptop: it starts, a key moves a slider, the picture and its number follow, and nothing
    stands outside the screen."""
    with running_firefox() as firefox:
        firefox.size(390, 844)
        firefox.go(served[0])
        at_rest = "document.documentElement.dataset.proved === document.documentElement.dataset.drawn"
        assert firefox.until(f"!!document.documentElement.dataset.drawn && {at_rest}")
        for wide, high in ((390, 844), (1280, 800)):
            firefox.size(wide, high)
            assert firefox.until(f"innerWidth === {wide} && {at_rest}")
            box = firefox.say(
                "(b => [b.left, b.right, b.width])(document.querySelector('#picture svg').getBoundingClientRect())"
            )
            assert box[0] >= 0 and box[1] <= wide and box[2] > wide / 3
            assert firefox.say("document.documentElement.scrollWidth") <= wide
            before = firefox.say("document.querySelector('#picture svg').outerHTML")
            firefox.say("document.querySelector('#value-sleeve_length').focus()")
            value = firefox.say("document.activeElement.getAttribute('aria-valuetext')")
            firefox.press("\ue014")
            assert firefox.until(
                f"document.querySelector('#picture svg').outerHTML !== {json.dumps(before)} && {at_rest}"
            )
            assert firefox.say("document.activeElement.getAttribute('aria-valuetext')") != value
            firefox.picture(out_folder / f"page-firefox-{wide}.png")
        assert firefox.errors == []
