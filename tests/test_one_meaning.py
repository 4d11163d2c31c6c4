"""A name has one meaning: no two modules of the kit define a public class of the same name.

Who reads `Place` in one room and goes on in the next must not have to look up which one is meant. Common practice of
readable code, no source. Names with an underscore are nobody's but their module's.
"""

from __future__ import annotations

import ast
from collections import defaultdict
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent


def classes(source: str) -> list[str]:
    """Public classes at the top of a module's text."""
    found = [node.name for node in ast.parse(source).body if isinstance(node, ast.ClassDef)]
    return [name for name in found if not name.startswith("_")]


def of_two_meanings(sources: dict[str, str]) -> dict[str, list[str]]:
    """{class: modules}, of those that more than one module defines."""
    homes: dict[str, list[str]] = defaultdict(list)
    for module, source in sources.items():
        for name in classes(source):
            homes[name].append(module)
    return {name: modules for name, modules in homes.items() if len(modules) > 1}


def test_two_meanings_are_found() -> None:
    one = "class Place: ...\nclass _Mark: ...\nclass Run:\n    class Seam: ...\n"
    other = "class Place(Run): ...\nclass _Mark: ...\nclass Seam: ...\n"
    assert of_two_meanings({"one": one, "other": other}) == {"Place": ["one", "other"]}


def test_every_public_class_has_a_name_of_its_own() -> None:
    sources = {
        path.relative_to(ROOT).as_posix(): path.read_text(encoding="utf-8")
        for path in sorted((ROOT / "kit").rglob("*.py"))
    }
    assert len(sources) > 600
    assert of_two_meanings(sources) == {}
