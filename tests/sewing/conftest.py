"""The hand-made wrap top of tests/sewing/wrap_top.py, as a module to build variations from."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest


def _module(name: str, file: str) -> ModuleType:
    if name not in sys.modules:
        path = Path(__file__).parents[1] / "sewing" / file
        spec = importlib.util.spec_from_file_location(name, path)
        assert spec and spec.loader
        sys.modules[name] = importlib.util.module_from_spec(spec)
        spec.loader.exec_module(sys.modules[name])
    return sys.modules[name]


@pytest.fixture(scope="session")
def wrap() -> ModuleType:
    return _module("wrap_top_by_hand", "wrap_top.py")


@pytest.fixture(scope="session")
def sewn():
    """`sewn(pieces, *writes, strips=())` of tests/sewing/table.py."""
    return _module("sewing_table", "table.py").sewn


@pytest.fixture(scope="session")
def garments() -> ModuleType:
    """The jacket, skirt and tote of tests/sewing/garments.py."""
    return _module("garments_by_hand", "garments.py")
