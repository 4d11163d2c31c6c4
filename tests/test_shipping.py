"""What ships: bounds that can be tried, locks with hashes that lie within them and are kept to, and a notice of every
embedded font."""

from __future__ import annotations

import hashlib
import importlib.util
import os
import re
import shutil
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path
from types import ModuleType

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


@pytest.mark.skipif(os.name != "posix", reason="a shell script")
@pytest.mark.parametrize(
    ("fetched", "status", "asked", "words"),
    [
        ("the file that was locked", 0, "--no-deps --editable .", ""),
        ("no file for this machine", 0, "--editable .[test]", "the ranges of pyproject.toml are used instead"),
        ("another file", 1, "", "is not the one that was locked"),
    ],
)
def test_the_lock_is_kept_to_the_file_and_left_only_where_it_cannot_be_had(
    tmp_path: Path, fetched: str, status: int, asked: str, words: str
) -> None:
    """The script with a lock of one wheel in a folder that pip is given for an index (its "hash-checking mode":
    https://pip.pypa.io/en/stable/topics/secure-installs/). What it asks last, the kit itself, is written down only."""
    wheels, script, python = tmp_path / "wheels", tmp_path / ".ci" / "install", tmp_path / ".venv" / "bin" / "python"
    for path in (wheels, script.parent, python.parent):
        path.mkdir(parents=True)
    wheel = wheels / f"thimble-1-py3-none-{'any' if fetched != 'no file for this machine' else 'elsewhere_8_bits'}.whl"
    with zipfile.ZipFile(wheel, "w") as made:
        made.writestr("thimble-1.dist-info/METADATA", "Metadata-Version: 2.1\nName: thimble\nVersion: 1\n")
        made.writestr("thimble-1.dist-info/WHEEL", f"Wheel-Version: 1.0\nTag: {wheel.stem.split('-', 2)[2]}\n")
        made.writestr("thimble-1.dist-info/RECORD", "")
    of = b"other bytes" if fetched == "another file" else wheel.read_bytes()
    (script.parent / "locked-test.txt").write_text(
        f"thimble==1 \\\n    --hash=sha256:{hashlib.sha256(of).hexdigest()}\n"
    )
    shutil.copy(ROOT / ".ci" / "install", script)
    python.write_text(
        f'#!/bin/sh\ncase "$*" in *--editable*) echo "$*" >>asked;; *) exec "{sys.executable}" "$@" --dry-run;; esac\n'
    )
    python.chmod(0o755)
    alone = {"PIP_NO_INDEX": "1", "PIP_FIND_LINKS": str(wheels), "PIP_CONFIG_FILE": os.devnull}
    done = subprocess.run(
        ["bash", script, "test"], env={**os.environ, **alone}, capture_output=True, text=True, check=False
    )
    assert done.returncode == status, done.stdout + done.stderr
    assert words in done.stdout if words else done.stdout == ""
    kept = tmp_path / "asked"
    assert (kept.read_text().partition("--quiet ")[2].strip() if kept.is_file() else "") == asked


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


def shipped_libraries() -> ModuleType:
    spec = importlib.util.spec_from_file_location("shipped", ROOT / ".ci" / "shipped.py")
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def binds(licence: str) -> bool:
    """Whether a licence asks that the whole of which a library is part be handed on under it: the GNU GPL and AGPL,
    alone (https://www.gnu.org/licenses/gpl-3.0, section 5). With another to choose beside it, it does not."""
    choices = re.split(r"(?i)\sor\s(?!later)", licence)
    return all(re.search(r"(?<!L)(?<!Lesser )\bA?GPL|Affero|GNU General Public", choice) for choice in choices)


def test_every_library_that_ships_says_its_licence_and_none_binds_whoever_hands_it_on() -> None:
    libraries = shipped_libraries().shipped()
    assert len(libraries) > 80
    assert [each.name for each in libraries if not each.licence or binds(each.licence)] == []


@pytest.mark.parametrize(
    ("licence", "answer"),
    [
        ("GPL-3.0-or-later", True),
        ("GNU General Public License v2 or later (GPLv2+)", True),
        ("AGPL-3.0-only", True),
        ("GPL-2.0-or-later OR MPL-1.1", False),
        ("LGPL-2.1-or-later", False),
        ("MIT", False),
    ],
)
def test_a_licence_that_binds_is_known(licence: str, answer: bool) -> None:
    assert binds(licence) is answer
