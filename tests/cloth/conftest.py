"""The wrap top of the picture tests, which is made by hand."""

from __future__ import annotations

import importlib.util
from pathlib import Path

import pytest

from kit.lesson.pattern import Pattern

_FILE = Path(__file__).resolve().parent.parent / "picture" / "conftest.py"


@pytest.fixture(scope="session")
def wrap_top() -> Pattern:
    spec = importlib.util.spec_from_file_location("picture_garment", _FILE)
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    made: Pattern = module.wrap_top.__wrapped__()
    return made
