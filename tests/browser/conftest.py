"""The example lessons in JupyterLab, for the browser tests."""

from __future__ import annotations

import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser

sys.path.insert(0, str(Path(__file__).parent))
from lab import Lab, running_chromium, running_lab


@pytest.fixture(scope="module")
def lab(tmp_path_factory: pytest.TempPathFactory, root: Path) -> Iterator[Lab]:
    """JupyterLab with a copy of the example lessons."""
    base = tmp_path_factory.mktemp("lab")
    folder = base / "lessons"
    shutil.copytree(root / "example_notebooks", folder, ignore=shutil.ignore_patterns("*.values.json", ".*"))
    with running_lab(base, folder) as running:
        yield running


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    with running_chromium() as running:
        yield running
