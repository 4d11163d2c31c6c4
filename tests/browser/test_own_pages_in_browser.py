"""The reader's own pages in Chromium, as far as they go without the compiled packages, which cannot be had here: they
are asked for with a button, loaded from the page's own address alone and then only, and what is wrong is told. Files
are saved as they come, from a worker that stands for the real one: that one was not tried in a browser."""

from __future__ import annotations

import json
import sys
from base64 import b64encode
from collections.abc import Iterator
from pathlib import Path

import pytest
from axe_playwright_python.sync_playwright import Axe
from playwright.sync_api import Browser, Page, expect

from kit.errors import KitError
from kit.language import say
from kit.page.build import build_page
from kit.page.core import core
from tests.page.stand_ins import stand_ins

sys.path.insert(0, str(Path(__file__).parent))
from lab import PATIENCE
from test_page_in_browser import PHONE, serving

pytestmark = pytest.mark.browser
_STANDS_FOR = """
self.onmessage = ({ data }) => {
  self.postMessage({ progress: "laying" });
  self.postMessage({ id: data.id, text: JSON.stringify({ ok: true, wrong: "Do not cut.", files: [FILE], asked: 1 }) });
};
"""


@pytest.fixture(scope="module")
def address(tmp_path_factory: pytest.TempPathFactory, root: Path) -> Iterator[str]:
    try:
        core()
    except KitError as error:
        if "npm" in str(error):
            pytest.skip(f"Pyodide cannot be had here: {error}")
        raise
    folder = tmp_path_factory.mktemp("own_pages")
    (folder / "given").mkdir()
    stand_ins(folder / "given")
    notebook = root / "example_notebooks" / "eddy_skirt.ipynb"
    build_page(notebook, folder / "page", packages=folder / "given", cloth=False, spoken=["en"])
    with serving(folder / "page") as served:
        yield served


@pytest.fixture
def page(browser: Browser) -> Iterator[Page]:
    context = browser.new_context(viewport=PHONE, service_workers="block")  # type: ignore[arg-type]
    opened = context.new_page()
    opened.set_default_timeout(PATIENCE * 1000)
    yield opened
    context.close()


def test_what_is_not_of_use_is_told(page: Page, address: str) -> None:
    asked: list[str] = []
    page.on("request", lambda request: asked.append(request.url))
    page.goto(address)
    page.wait_for_selector("html[data-proved]")
    assert not any("/packages/" in url for url in asked)
    page.locator("#pages-make").click()
    expect(page.locator("#pages-said")).to_have_text(say("page.pages_not_here"), timeout=PATIENCE * 1000)
    expect(page.locator("#pages-make")).to_have_text(say("page.pages_make"))
    names = {url.rpartition("/packages/")[2] for url in asked if "/packages/" in url}
    assert "lock.json" in names and any(name.startswith("shapely") for name in names)
    assert not any(name.startswith("scipy") for name in names)
    assert all(url.startswith((address, "blob:")) for url in asked)
    found = Axe().run(page, context="#pages")
    assert not found.response["violations"], found.generate_report()


def test_pages_are_saved_until_something_else_is_set(page: Page, address: str) -> None:
    file = {"name": "pages-a4.pdf", "data": b64encode(b"%PDF-1.7 \xff").decode()}
    script = _STANDS_FOR.replace("FILE", json.dumps(file))
    page.route("**/pages_worker.js", lambda route: route.fulfill(body=script, content_type="text/javascript"))
    page.goto(address)
    page.wait_for_selector("html[data-proved]")
    page.locator("#pages-make").click()
    link = page.locator("#pages-files a")
    with page.expect_download() as coming:
        link.click()
    assert coming.value.suggested_filename == "pages-a4.pdf"
    assert Path(coming.value.path()).read_bytes() == b"%PDF-1.7 \xff"
    assert page.locator("#pages-said").inner_text() == f"{say('page.pages_done')} Do not cut."
    page.locator("#on").click()
    expect(link).to_have_count(1)  # another step is no other setting
    page.locator("#units").select_option("inch")
    expect(link).to_have_count(0)
    expect(page.locator("#pages-said")).to_have_text("")
