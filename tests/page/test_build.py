"""What the build puts into a page, as far as it can be tried without the core of the browser's Python."""

from __future__ import annotations

import ast
import io
import json
import lzma
import shutil
import subprocess
import sys
import zipfile
from pathlib import Path
from random import Random

import nbformat
import pytest

from kit.errors import KitError
from kit.live.class_source import class_source
from kit.page import build, core
from kit.page.bundle import kit_files, modules, stripped, zipped
from kit.page.icons import icon
from kit.page.packed import packed, unpacked_size
from kit.page.standard_library import standard_library

ROOT = Path(__file__).parents[2]
WRAP = ROOT / "example_notebooks" / "tideline_wrap_top.ipynb"


@pytest.fixture(scope="module")
def files() -> dict[str, bytes]:
    return kit_files(["en", "de"])


def test_the_kit_in_the_page_works_a_lesson_alone(files: dict[str, bytes]) -> None:
    """In a Python with nothing else on its path; the build tries every lesson so."""
    lesson = {**class_source(WRAP, "lesson.ipynb").files}
    build._try(files, lesson, {"languages": ["en", "de"], "sliders": None, "cloth": {}})
    lesson["lesson.ipynb"] = lesson["lesson.ipynb"].replace(b"from kit import", b"import numpy\\nfrom kit import", 1)
    with pytest.raises(KitError, match="numpy"):
        build._try(files, lesson, {"languages": ["en"], "sliders": None, "cloth": {}})


def test_no_answer_travels(files: dict[str, bytes]) -> None:
    source = class_source(WRAP, "lesson.ipynb")
    assert source.answers and not any(answer.encode() in source.files["lesson.ipynb"] for answer in source.answers)
    lesson = {"lesson.ipynb": WRAP.read_bytes()}
    with pytest.raises(KitError, match="answer"):
        build._try(files, lesson, {"languages": ["en"], "sliders": None, "cloth": {}})


def test_only_what_is_needed(files: dict[str, bytes]) -> None:
    inside = modules()
    assert {"kit.page.engine", "kit.picture.svg_pen", "kit.proof.mending", "kit.sewing.operations.hems"} <= inside
    assert not any(name.startswith(("kit.live", "kit.booklet", "kit.paper", "kit.pack")) for name in inside)
    assert not {"kit.picture.fitted", "kit.picture.raster", "kit.page.build"} & inside
    codes = {name.split("/")[3] for name in files if name.startswith("kit/_templates/language/")}
    assert codes == {"en", "de"} and "babel/locale-data/fr.dat" not in files
    for name, data in files.items():
        if name.endswith(".py"):
            tree = ast.parse(data)
            assert ast.get_docstring(tree) is None and b"# noqa" not in data, name
    with pytest.raises(KitError, match="no language 'xx'"):
        kit_files(["xx"])


def test_what_is_packed_is_whole_and_kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("LESSONKIT_CACHE", str(tmp_path))
    data = bytes(range(256)) * 400
    made = packed(data)
    assert lzma.decompress(made) == data and unpacked_size(made) == len(data) and len(made) < 2000
    (kept,) = tmp_path.iterdir()
    kept.write_bytes(made[:-20])
    assert packed(data) == made == kept.read_bytes()


def test_the_page_unpacks_it(tmp_path: Path) -> None:
    """The page's own script, run by Node.js, against Python's liblzma, however the bytes arrive."""
    node = shutil.which("node")
    if node is None:
        pytest.skip("Node.js is not here")
    random = Random(7)
    some = bytes(random.choice(b"abc \n") for _ in range(20_000))
    whole = [b"", b"x", some, random.randbytes(30_000), some[:5000] + bytes(90_000) + some[300:9000]]
    whole += [Path(build.__file__).read_bytes() * 3]
    for number, data in enumerate(whole):
        (tmp_path / f"{number}.lzma").write_bytes(packed(data))
        (tmp_path / f"{number}.raw").write_bytes(data)
    shutil.copyfile(ROOT / "templates" / "page" / "unpack.js", tmp_path / "unpack.mjs")
    (tmp_path / "try.mjs").write_text(_UNPACKS)
    ran = subprocess.run([node, "try.mjs", str(len(whole))], cwd=tmp_path, capture_output=True, text=True, timeout=60)
    assert ran.returncode == 0, ran.stderr
    assert json.loads(ran.stdout) == [[True, True, True, "what was loaded is damaged"]] * len(whole)


_UNPACKS = """
import { readFileSync } from "node:fs";
import { Unpacker } from "./unpack.mjs";
const told = [];
for (let i = 0; i < Number(process.argv[2]); i++) {
  const packed = readFileSync(`${i}.lzma`), raw = readFileSync(`${i}.raw`);
  const row = [];
  for (const step of [1, 777, 1 << 20]) {
    const one = new Unpacker(), parts = [];
    for (let at = 0; at < packed.length; at += step) parts.push(Buffer.from(one.push(packed.subarray(at, at + step))));
    parts.push(Buffer.from(one.end()));
    row.push(Buffer.compare(Buffer.concat(parts), raw) === 0);
  }
  try {
    const one = new Unpacker();
    one.push(packed.subarray(0, i ? packed.length >> 1 : 9));
    one.end();
    row.push("taken");
  } catch (error) {
    row.push(error.message);
  }
  told.push(row);
}
console.log(JSON.stringify(told));
"""


def test_the_same_bytes_each_time(files: dict[str, bytes]) -> None:
    assert zipped(files) == zipped(dict(reversed(list(files.items()))))


def test_python_without_comments_does_the_same() -> None:
    source = (
        '"""Doc."""\nclass A:\n    """Only this."""\ndef f(x):\n    "doc"\n    # why\n    return f"{x!r:>3} {\'a\'}"\n'
    )
    space: dict[str, object] = {}
    exec(stripped(source), space)
    assert space["f"](1) == "  1 a" and b"why" not in stripped(source) and b"oc" not in stripped(source)  # type: ignore[operator]


def test_the_library_keeps_what_is_reached() -> None:
    """On this Python's own library in place of the browser's."""
    home = Path(json.__file__).parents[1]
    whole = io.BytesIO()
    with zipfile.ZipFile(whole, "w") as archive:
        for name in ("json/__init__.py", "json/decoder.py", "json/scanner.py", "json/encoder.py", "json/tool.py"):
            archive.write(home / name, name)
        for name in ("re/__init__.py", "re/_parser.py", "re/_constants.py", "re/_compiler.py", "re/_casefix.py"):
            archive.write(home / name, name)
        for name in ("pdb.py", "argparse.py", "textwrap.py", "enum.py", "functools.py", "copyreg.py", "keyword.py"):
            archive.write(home / name, name)
        for name in build_encodings():
            archive.write(home / name, name)
        archive.writestr("_pyodide/__init__.py", "import pdb_not\n")
        archive.writestr("pyodide/__init__.py", "def f():\n    import argparse\n")
    made = standard_library(whole.getvalue(), {"kit/a.py": b"import json\n", "kit/b.dat": b"import wave\n"})
    with zipfile.ZipFile(io.BytesIO(made)) as archive:
        names = set(archive.namelist())
    assert {"json/__init__.py", "json/scanner.py", "re/_casefix.py", "pyodide/__init__.py"} <= names
    assert not {"json/tool.py", "pdb.py", "argparse.py"} & names
    made = standard_library(whole.getvalue(), {"kit/a.py": b"import json\n"}, ["argparse", "not_there"])
    with zipfile.ZipFile(io.BytesIO(made)) as archive:
        assert set(archive.namelist()) - names == {"argparse.py"}  # what the trial loaded comes along


def build_encodings() -> list[str]:
    from kit.page.standard_library import _ENCODINGS

    return [f"encodings/{name}.py" for name in _ENCODINGS]


# ---- the core ---------------------------------------------------------------------------------------------------


def test_another_core_is_refused(tmp_path: Path) -> None:
    with pytest.raises(KitError, match="there is no folder"):
        core.core(tmp_path / "none")
    (tmp_path / "pyodide.mjs").write_text("x")
    with pytest.raises(KitError, match=r"lacks pyodide\.asm\.mjs"):
        core.core(tmp_path)
    for name in core.FILES:
        (tmp_path / name).write_text("x")
    with pytest.raises(KitError, match="the hash is another"):
        core.core(tmp_path)


def test_without_npm_it_is_said_how(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setenv("LESSONKIT_CACHE", str(tmp_path))
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(KitError, match="--pyodide") as told:
        core.core()
    assert f"npm pack pyodide@{core.VERSION}" in str(told.value)


def test_a_folder_of_something_else_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "letter.txt").write_text("mine")
    with pytest.raises(KitError, match="holds something else"):
        build.build_page(WRAP, tmp_path, pyodide=tmp_path)
    assert [path.name for path in tmp_path.iterdir()] == ["letter.txt"]


def test_the_page_of_another_is_left_alone(tmp_path: Path) -> None:
    """Any site may have a sw.js; ours begins with our own line and has an edition beside it."""
    begins = (ROOT / "templates" / "page" / "sw.js.j2").read_text("utf-8")
    for script, edition in (("self.x = 1;", True), (begins, False)):
        out = tmp_path / str(edition)
        (out / ("edition-0123456789ab" if edition else "other")).mkdir(parents=True)
        (out / "sw.js").write_text(script, "utf-8")
        with pytest.raises(KitError, match="holds something else"):
            build._check_free(out)
    (tmp_path / "False" / "edition-0123456789ab").mkdir()
    build._check_free(tmp_path / "False")


def test_steps_that_do_not_end_are_said(files: dict[str, bytes], monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(build, "_PATIENCE", 0.01)
    with pytest.raises(KitError, match="not all drawn within"):
        build._try(files, {"lesson.ipynb": b"{}"}, {"languages": ["en"], "sliders": None, "cloth": {}})


def test_the_offline_copy_is_the_paths_own_and_fresh(tmp_path: Path) -> None:
    build._write(tmp_path, {"a.js": b"1", "notices.txt": b""}, "Pebble top", ("en",), ())
    script = (tmp_path / "sw.js").read_text("utf-8")
    assert "registration.scope" in script and ': "reload"' in script and "pebble" not in script.lower()
    build._check_free(tmp_path)


def test_nobodys_body_is_in_a_page(files: dict[str, bytes], tmp_path: Path) -> None:
    for name in ("ada.toml", "ben.toml"):
        (tmp_path / name).write_text('name = "Ada"\n[measured]\nbust_girth = "97.3 cm"\n', "utf-8")
    book = nbformat.read(WRAP, as_version=4)
    start = "from kit import make_body as mb, load_body"
    code = 'm = {"bust_girth": "97.3 cm"}\nb = mb(m, name="Ada")\nlesson.choose(body=b)'
    for source in (start, code, 'ada = load_body("ada.toml")', 'also = "ben.toml"'):
        book.cells.append(nbformat.v4.new_code_cell(source))
    nbformat.write(book, tmp_path / "top.ipynb")
    source = class_source(tmp_path / "top.ipynb", "lesson.ipynb", public=True)
    assert source.bodies == ["top.ipynb", "top.ipynb", "ben.toml"]
    assert not {"ada.toml", "ben.toml"} & source.files.keys()
    assert not [word for word in (b"97.3", b"Ada", b"ada.toml") if word in source.files["lesson.ipynb"]]
    build._try(files, source.files, {"languages": ["en"], "sliders": None, "cloth": {}})


def test_icons() -> None:
    data = icon(64)
    assert data.startswith(b"\x89PNG") and data == icon(64)


def test_the_command_is_there() -> None:
    ran = subprocess.run([sys.executable, "-m", "kit.cli", "live", "--help"], capture_output=True, text=True, cwd=ROOT)
    assert ran.returncode == 0 and "--pyodide" in ran.stdout
