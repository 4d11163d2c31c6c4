"""The wrap top of the picture tests, which is made by hand."""

from __future__ import annotations

import importlib.util
from collections.abc import Iterator
from pathlib import Path

import pytest

from kit.lesson.pattern import Pattern
from tests.laid import laying_anew

_FILE = Path(__file__).resolve().parent.parent / "picture" / "conftest.py"


@pytest.fixture(scope="session")
def wrap_top() -> Pattern:
    spec = importlib.util.spec_from_file_location("picture_garment", _FILE)
    assert spec and spec.loader
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    made: Pattern = module.wrap_top.__wrapped__()
    return made


@pytest.fixture(scope="module", autouse=True)
def laid_anew() -> Iterator[None]:
    """What laying finds is tested here."""
    with laying_anew():
        yield
