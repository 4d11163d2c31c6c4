"""The usual values of what a picture shows and of what an operation brings about: a text that tells them leaves these
out."""

from __future__ import annotations

import importlib
import pkgutil
from pathlib import Path

from kit.sewing import marked, operations, outcome, refit, run, scene, section, spans, stage
from kit.sewing.operations import KINDS
from tests.exact import usual_values
from tests.told import Kept


def test_what_is_usual_in_a_picture() -> None:
    Kept(Path(__file__).with_name("usual.txt")).holds(
        usual_values(scene, section, outcome, refit, run, marked, spans, stage)
    )


def test_what_is_usual_of_an_operation() -> None:
    names = [each.name for each in pkgutil.iter_modules(operations.__path__)]
    modules = [importlib.import_module(f"{operations.__name__}.{name}") for name in sorted(names)]
    found = usual_values(*modules)
    assert len(found) > len(KINDS) / 2
    Kept(Path(__file__).with_name("usual_of_operations.txt")).holds(found)
