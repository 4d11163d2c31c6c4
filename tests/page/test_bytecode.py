"""The page's modules compiled by its own Python, as far as it can be tried without that Python: `node` is a script of
the test. tests/browser/test_page_in_browser.py looks into a page that was compiled in earnest."""

from __future__ import annotations

import os
import sys
from pathlib import Path

import pytest

from kit.errors import KitError
from kit.page import build
from kit.page.bytecode import compiled
from kit.page.core import Core

FILES = {"kit/a.py": b"A = 1\n", "kit/data.csv": b"1,2\n"}
_COPIES = """
import sys, zipfile
with zipfile.ZipFile(sys.argv[3]) as found, zipfile.ZipFile(sys.argv[4], "w") as made:
    for name in found.namelist():
        made.writestr(name + "c", b"compiled " + found.read(name))
"""


def node(folder: Path, monkeypatch: pytest.MonkeyPatch, code: str) -> None:
    """Put a program of that name, made of `code`, where programs are looked for."""
    program = folder / "node"
    program.write_text(f"#!{sys.executable}\n{code}")
    program.chmod(0o755)
    monkeypatch.setenv("PATH", str(folder))


@pytest.fixture(autouse=True)
def alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    if os.name == "nt":
        pytest.skip("a script is no program there")
    (tmp_path / "bin").mkdir()
    monkeypatch.setenv("PATH", str(tmp_path / "bin"))
    monkeypatch.setenv("LESSONKIT_CACHE", str(tmp_path / "cache"))


def test_modules_are_compiled_once_and_kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    node(tmp_path / "bin", monkeypatch, _COPIES)
    made = compiled(Core(tmp_path), FILES)
    assert made == {"kit/a.pyc": b"compiled A = 1\n", "kit/data.csv": b"1,2\n"}
    (tmp_path / "bin" / "node").unlink()
    assert compiled(Core(tmp_path), FILES) == made
    with pytest.raises(KitError, match=r"Node\.js is not here"):
        compiled(Core(tmp_path), {**FILES, "kit/a.py": b"A = 2\n"})
    for kept in (tmp_path / "cache").iterdir():
        kept.write_bytes(b"damaged")
    with pytest.raises(KitError, match=r"Node\.js is not here"):
        compiled(Core(tmp_path), FILES)


def test_what_went_wrong_is_told(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    node(tmp_path / "bin", monkeypatch, "import sys; sys.exit('at x\\nSyntaxError: Unexpected token\\n\\nNode.js v8')")
    with pytest.raises(KitError, match="SyntaxError: Unexpected token"):
        compiled(Core(tmp_path), FILES)
    node(tmp_path / "bin", monkeypatch, _COPIES.replace('name + "c"', '"page/kit/b.pyc"'))
    with pytest.raises(KitError, match="something else"):
        compiled(Core(tmp_path), FILES)
    assert not (tmp_path / "cache").exists()


def test_without_node_it_travels_as_source_and_the_author_is_told(tmp_path: Path) -> None:
    bundle, library, note = build._quick(Core(tmp_path), FILES, {"json/__init__.py": b""})
    assert bundle == FILES and set(library) == {"json/__init__.py"}
    assert "as source (Node.js is not here)" in note and "nodejs.org" in note
