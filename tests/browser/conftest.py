"""The example lessons in JupyterLab, for the browser tests: one server, one Chromium and one page for all of them, a
folder of its own for each file of tests."""

from __future__ import annotations

import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, Page

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
