"""The reader's own pages: the same bytes as at home, by a kit that has no other package than those that travel; and the
folder of compiled packages, tried with stand-ins. Its run in a browser was not tried: the packages cannot be had here.

The list's form is that of Pyodide's documentation (pyodide-lock.json; from memory)."""

from __future__ import annotations

import json
import re
from base64 import b64decode
from io import BytesIO
from pathlib import Path
from typing import Any

import pikepdf
import pytest

from kit.cli import main
from kit.errors import KitError
from kit.language import languages, say, speaking
from kit.live.class_source import class_source
from kit.page import build
from kit.page.core import VERSION, Core
from kit.page.engine import Engine
from kit.page.kept_kit import kept_kit
from kit.page.opening import Opening
from kit.page.packages import NEEDED, packages
from kit.page.pages_beside import BESIDE, OFFERED, page_parts, try_pages
from kit.paper.papers import paper
from tests.page.stand_ins import stand_ins

ROOT = Path(__file__).parents[2]
SKIRT = ROOT / "example_notebooks" / "eddy_skirt.ipynb"


@pytest.fixture(scope="module")
def engine() -> Engine:
    return Engine(SKIRT, offered=("en", "de"))


def asked(engine: Engine, **message: Any) -> dict[str, Any]:
    told: dict[str, Any] = json.loads(engine.answer(json.dumps({"do": "pages", **message})))
    return told


def test_the_page_writes_what_the_command_writes(engine: Engine, tmp_path: Path) -> None:
    assert main(["pages", str(SKIRT), "--paper", "a4", "--size", "W5", "--out", str(tmp_path)]) == 0
    told = asked(engine, body={"size": "W5"}, paper="a4")
    assert told["ok"] and told["wrong"] == ""
    (file,) = told["files"]
    assert file["name"] == "pages-a4.pdf"
    assert b64decode(file["data"]) == (tmp_path / "pages-a4.pdf").read_bytes()


def test_the_packages_that_travel_are_enough(engine: Engine) -> None:
    """In a Python that finds numpy, Pillow, shapely and the page's own kit, and nothing else (no pikepdf)."""
    kit = kept_kit(["en"], pages=True)
    lesson = {**class_source(SKIRT, "lesson.ipynb").files}
    made = try_pages(kit, lesson, {"languages": ["en"]})
    assert made == {each["name"]: each["data"] for each in asked(engine, paper="a4")["files"]}
    with pytest.raises(KitError, match=r"cannot be written: .*kit"):
        try_pages({}, lesson, {"languages": ["en"]})


def test_pages_of_a_body_of_ones_own(engine: Engine) -> None:
    """Another body's pages are others, in the language asked for, named after whose they are."""
    body = {"name": "Ines", "typed": {"waist_girth": "83 cm", "hip_girth": "109 cm"}}
    told = asked(engine, body=body, language="de", paper="letter")
    assert told["ok"], told
    (file,) = told["files"]
    assert file["name"] == "pages-letter.pdf"
    with pikepdf.open(BytesIO(b64decode(file["data"]))) as document:
        assert str(document.Root.Lang) == "de" and document.Root.ViewerPreferences.PrintScaling == "/None"
        assert "Ines" in str(document.docinfo["/Title"])


@pytest.mark.parametrize("wanted", ["b7", 4, None, "a4" * 400, "../a4"])
def test_a_paper_there_is_not_is_refused_in_words(engine: Engine, wanted: object) -> None:
    told = asked(engine, paper=wanted)
    assert not told["ok"] and told["said"] and "Traceback" not in told["said"]


def test_without_the_packages_it_is_said(monkeypatch: pytest.MonkeyPatch, engine: Engine) -> None:
    import kit.page.engine as room

    def missing(name: str) -> None:
        raise ModuleNotFoundError(f"no module named '{name}'")

    monkeypatch.setattr(room, "import_module", missing)
    told = asked(engine, paper="a4", language="de")
    with speaking("de"):
        assert not told["ok"] and say("page.pages_not_here") in told["said"]


# ---- the folder of packages ---------------------------------------------------------------------------------------


def test_what_is_needed_is_taken_and_no_more(tmp_path: Path) -> None:
    stand_ins(tmp_path)
    found = packages(tmp_path)
    assert {name.split("-")[0] for name in found.files} == {*NEEDED, "libgeos"}
    assert set(json.loads(found.lock)["packages"]) == {*NEEDED, "libgeos"}


def test_what_is_wrong_with_the_folder_is_said(tmp_path: Path) -> None:
    def refused(match: str) -> None:
        with pytest.raises(KitError, match=match) as told:
            packages(tmp_path)
        assert told.value.where == "--packages" and VERSION in told.value.do

    with pytest.raises(KitError, match="no folder"):
        packages(tmp_path / "none")
    refused("lacks pyodide-lock.json")
    (tmp_path / "pyodide-lock.json").write_text("[]")
    refused("cannot be read")
    stand_ins(tmp_path, version="0.20.0")
    refused("of Pyodide 0.20.0")
    listed = stand_ins(tmp_path)
    (tmp_path / "libgeos-1.0-py3-none-any.whl").unlink()
    refused("lacks libgeos-1.0")
    stand_ins(tmp_path)
    (tmp_path / "numpy-1.0-py3-none-any.whl").write_bytes(b"other")
    refused("numpy-1.0.* damaged")
    for bad in ("../numpy.whl", "https://example.org/numpy.whl", "", 7):
        listed["packages"]["numpy"]["file_name"] = bad
        (tmp_path / "pyodide-lock.json").write_text(json.dumps(listed))
        refused("does not name numpy")
    del listed["packages"]["shapely"]
    (tmp_path / "pyodide-lock.json").write_text(json.dumps(listed))
    refused("does not name numpy, shapely")


def written(tmp_path: Path, extra: dict[str, bytes]) -> tuple[Path, str]:
    """A page whose other parts do not matter here, and its edition's folder."""
    begins = Opening("", "cm", {})
    parts = build._parts({"lesson.ipynb": b"{}"}, {"languages": ["en"]}, "Skirt", languages(), begins, extra)
    build._write(tmp_path, parts, "Skirt", languages(), ())
    (edition,) = (each.name for each in tmp_path.iterdir() if each.is_dir())
    return tmp_path, edition


def test_they_lie_beside_the_page_and_are_loaded_when_asked_for(tmp_path: Path) -> None:
    folder, core = tmp_path / "given", tmp_path / "core"
    folder.mkdir()
    core.mkdir()
    stand_ins(folder)
    (core / "python_stdlib.zip").write_bytes(b"library")
    found = packages(folder)
    extra = page_parts(found, Core(core), {"kit/__init__.py": b"", "kit/_letters/DejaVuSans.ttf": b"letters"})
    page, edition = written(tmp_path / "page", extra)
    beside = page / edition / BESIDE
    assert {each.name for each in beside.iterdir()} == {*found.files, "lock.json", "python_stdlib.zip", "kit.zip.lzma"}
    kept = json.loads(re.search(r"const FILES = (\[.*\]);", (page / "sw.js").read_text())[1])  # type: ignore[index]
    assert f"{edition}/pages.js" in kept and not any(BESIDE in name for name in kept)
    index = (page / "index.html").read_text("utf-8")
    assert 'id="pages-make"' in index and "connect-src 'self'" in index and "https://" not in index
    told = json.loads((page / edition / "page.json").read_text("utf-8"))
    assert told["pages"] == {"papers": list(OFFERED), "size": 1}
    for code, words in told["languages"].items():
        with speaking(code):
            assert words["paper_a4"] == paper("a4").said and "{size}" in words["pages_how"]
    assert "reportlab" in (page / edition / "notices.txt").read_text("utf-8")


def test_a_page_without_them_has_no_button(tmp_path: Path) -> None:
    page, edition = written(tmp_path, {})
    assert 'id="pages' not in (page / "index.html").read_text("utf-8")
    assert "pages" not in json.loads((page / edition / "page.json").read_text("utf-8"))
    assert not (page / edition / "pages.js").exists()
