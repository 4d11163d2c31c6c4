"""The hand-made garments of tests/sewing/garments.py."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import pytest


@pytest.fixture(scope="session")
def garments() -> ModuleType:
    name = "garments_worn"
    if name not in sys.modules:
        path = Path(__file__).parents[1] / "sewing" / "garments.py"
        spec = importlib.util.spec_from_file_location(name, path)
        assert spec and spec.loader
        sys.modules[name] = importlib.util.module_from_spec(spec)
        spec.loader.exec_module(sys.modules[name])
    return sys.modules[name]
