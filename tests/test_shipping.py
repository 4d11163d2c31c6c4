"""What ships: bounds that can be tried, locks with hashes that lie within them, and a notice of every embedded font."""

from __future__ import annotations

import re
import tomllib
from pathlib import Path

import pytest
from packaging.requirements import Requirement
from packaging.specifiers import SpecifierSet

from kit.booklet.type import FACES
from kit.resources import templates

ROOT = Path(__file__).resolve().parents[1]
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text("utf-8"))["project"]


def key(name: str) -> str:
    return re.sub(r"[-_.]+", "-", name).lower()


def locked(kind: str) -> dict[str, tuple[set[str], int]]:
    """{name: (versions, hashes)}; markers may choose between several versions."""
    found: dict[str, tuple[set[str], int]] = {}
    for block in (ROOT / ".ci" / f"locked-{kind}.txt").read_text("utf-8").split("\n"):
        if match := re.match(r"([\w.-]+)==([^\s;]+)", block):
            name = key(match[1])
            found[name] = (found.get(name, (set(), 0))[0] | {match[2]}, 0)
        elif "--hash=sha256:" in block:
            found[name] = (found[name][0], found[name][1] + 1)
    return found


@pytest.mark.parametrize("kind", ["run", "test"])
def test_the_lock_holds_every_dependency_within_its_range_and_with_hashes(kind: str) -> None:
    held = locked(kind)
    wanted = [*PROJECT["dependencies"], *(PROJECT["optional-dependencies"]["test"] if kind == "test" else ())]
    for text in wanted:
        need = Requirement(text)
        versions, hashes = held[key(need.name)]
        assert hashes and all(need.specifier.contains(version) for version in versions), text
    assert all(hashes for _, hashes in held.values())


def test_every_runtime_dependency_has_a_lower_bound_that_lowest_tries() -> None:
    for text in PROJECT["dependencies"]:
        assert re.fullmatch(r"[\w.-]+>=[\w.]+(,.*)?", text), text


def test_the_pythons_allowed_are_those_said_everywhere() -> None:
    allowed = SpecifierSet(PROJECT["requires-python"])
    listed = re.findall(r":: (3\.\d+)", " ".join(PROJECT["classifiers"]))
    assert listed == ["3.11", "3.12", "3.13", "3.14"] == [v for v in (f"3.{n}" for n in range(9, 20)) if v in allowed]
    assert f"Python {listed[0]} to {listed[-1]}" in (ROOT / "README.md").read_text("utf-8")
    assert f"{listed[0]} to {listed[-1]}" in (ROOT / ".ci" / "make-venv").read_text("utf-8")


def test_the_notice_names_every_font_that_a_booklet_embeds() -> None:
    notice = (templates() / "NOTICE.md").read_text("utf-8")
    for _, _, _, file in FACES:
        family = re.sub(r"(?<=[a-z])(?=[A-Z][a-z])", " ", file.stem.split("-")[0])
        assert family.replace("Deja Vu", "DejaVu") in notice, file
