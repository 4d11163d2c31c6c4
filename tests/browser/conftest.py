"""The example lessons in JupyterLab, for the browser tests: one server, one Chromium and one page for all of them, a
folder of its own for each file of tests."""

from __future__ import annotations

import shutil
import sys
from collections.abc import Generator, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Error, Page

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab, running_chromium, running_lab


@pytest.fixture(scope="session")
def server(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Lab]:
    """JupyterLab with an empty folder."""
    base = tmp_path_factory.mktemp("lab")
    folder = base / "lessons"
    folder.mkdir()
    with running_lab(base, folder) as running:
        yield running


@pytest.fixture(scope="module")
def lab(server: Lab, root: Path, request: pytest.FixtureRequest) -> Iterator[Lab]:
    """A folder in JupyterLab with a copy of the example lessons. Its kernels end with the file's tests."""
    own = server.within(request.module.__name__.rpartition(".")[2])
    shutil.copytree(root / "example_notebooks", own.folder, ignore=shutil.ignore_patterns("*.values.json", ".*"))
    yield own
    own.end_kernels()


@pytest.fixture(scope="session")
def browser() -> Iterator[Browser]:
    with running_chromium() as running:
        yield running


@pytest.fixture(scope="session")
def kept_pages() -> list[Page]:
    """The page of `lab_page`, once there is one."""
    return []


@pytest.fixture(scope="module")
def lab_page(browser: Browser, kept_pages: list[Page]) -> Page:
    """A page for JupyterLab, handed on from file to file: to load JupyterLab takes three times what it takes to open
    one more notebook in it. A page with a dialog left open, as a failure may leave it, is given up."""
    if kept_pages and kept_pages[0].locator(".jp-Dialog").count():
        kept_pages.pop().close()
    if not kept_pages:
        kept_pages.append(browser.new_page())
    return kept_pages[0]


PANEL = ".lessonkit-panel, .lessonkit-canvas, .lessonkit-player"


@pytest.hookimpl(wrapper=True)
def pytest_runtest_makereport(
    item: pytest.Item, call: pytest.CallInfo[None]
) -> Generator[None, pytest.TestReport, pytest.TestReport]:
    """A test that fails tells what stood on each page then: of a machine that is not at hand nothing else is known."""
    report = yield
    browser = getattr(item, "funcargs", {}).get("browser")
    if report.when == "call" and report.failed and isinstance(browser, Browser):
        for page in (page for context in browser.contexts for page in context.pages):
            report.sections.append((f"on the page {page.url}", _seen(page, item)))
    return report


def _seen(page: Page, item: pytest.Item) -> str:
    """What is written in the kit's widgets, or on the whole page without any; its picture is left in out/."""
    folder = item.config.rootpath / "out" / "test-artefacts"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        picture = folder / f"failed-{item.name}-{len(list(folder.glob('failed-*')))}.png"
        page.screenshot(path=picture, timeout=10_000)
        widgets = page.locator(PANEL)
        found = widgets if widgets.count() else page.locator("body")
        return "\n".join([str(picture), *(one.inner_text(timeout=10_000) for one in found.all())])
    except (Error, OSError) as error:
        return f"not to be read: {error}"
