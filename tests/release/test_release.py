"""A whole release of a small lesson: what is in the folder, that it agrees with itself, and that it is all or nothing.
Checksums are worked out again with hashlib in the form of sha256sum (GNU coreutils manual, "sha2 utilities"); the
summary is held to its JSON Schema by jsonschema; pictures are opened with Pillow."""

from __future__ import annotations

import hashlib
import io
import json
import os
import re
from pathlib import Path
from types import SimpleNamespace
from typing import Any

import jsonschema
import pikepdf
import pytest
from nbformat import NotebookNode
from PIL import Image

from kit.booklet.build import build
from kit.booklet.put_in_place import _MAKING, alone_for
from kit.errors import KitError
from kit.language import languages, say, speaking
from kit.paper.export import pattern_schema
from kit.release import release as releasing
from kit.release.gate import NotReady
from kit.release.release import AskedRelease, Released, release
from kit.release.start_here import Handed, SizeFiles, start_here
from kit.release.summary import FORMAT, sums_text
from tests.booklet.conftest import PNG, lesson_at, markdown
from tests.forked_kernels import begun_anew
from tests.unplaced import unplaced

ASKED = AskedRelease(forms="a4,html", size="W4", sizes=("W4", "W5"), allow=("ranges",))


def contents(folder: Path) -> dict[str, bytes]:
    return {str(file.relative_to(folder)): file.read_bytes() for file in folder.rglob("*") if file.is_file()}


@pytest.fixture(scope="module")
def made(tmp_path_factory: pytest.TempPathFactory) -> tuple[Path, Path, Released]:
    """(notebook, folder of the release, what was told)."""
    folder = tmp_path_factory.mktemp("released")
    notebook = lesson_at(folder)
    return notebook, folder / "out", release(notebook, folder / "out", ASKED)


@pytest.fixture(scope="module")
def summary(made: tuple[Path, Path, Released]) -> dict[str, Any]:
    found: dict[str, Any] = json.loads((made[1] / "release.json").read_text())
    return found


def test_everything_is_there(made: tuple[Path, Path, Released]) -> None:
    _, out, told = made
    expected = {
        "SHA256SUMS",
        "booklet/booklet-a4.pdf",
        "booklet/booklet.html",
        "booklet/worksheet-a4.pdf",
        "release.json",
        "release.schema.json",
        "start-here.pdf",
        *(f"previews/{name}.png" for name in ("cover", "step", "sizes")),
        *(f"pages/pages-{paper}-{size}.pdf" for paper in ("a4", "letter") for size in ("w4", "w5", "sizes")),
        *(f"copy-shop/sheet-a0-{size}.pdf" for size in ("w4", "w5", "sizes")),
        *(f"projector/projector-{size}-{ground}.pdf" for size in ("w4", "w5") for ground in ("light", "dark")),
        *(f"files/pattern-{size}.{kind}" for size in ("w4", "w5", "sizes") for kind in ("svg", "dxf")),
        *(f"files/pattern-{size}.json" for size in ("w4", "w5")),
    }
    assert set(contents(out)) - {"LICENCE.txt"} == expected == set(told.files) - {"LICENCE.txt"}
    assert [item.name for item in out.parent.iterdir() if item.name.startswith(".")] == []  # nothing left beside it


def test_checksums_are_those_of_the_files(made: tuple[Path, Path, Released]) -> None:
    files = contents(made[1])
    lines = files.pop("SHA256SUMS").decode().splitlines()
    assert dict(reversed(line.split("  ", 1)) for line in lines) == {
        path: hashlib.sha256(data).hexdigest() for path, data in files.items()
    }


def test_the_summary_keeps_to_its_schema_and_to_the_files(
    made: tuple[Path, Path, Released], summary: dict[str, Any]
) -> None:
    files = contents(made[1])
    schema = json.loads(files["release.schema.json"])
    jsonschema.Draft202012Validator.check_schema(schema)
    jsonschema.validate(summary, schema)
    listed = {entry["path"]: entry for entry in summary["files"]}
    assert set(listed) == set(files) - {"SHA256SUMS", "release.json", "release.schema.json"}
    for path, entry in listed.items():
        assert entry["bytes"] == len(files[path])
        assert entry["sha256"] == hashlib.sha256(files[path]).hexdigest()
        if path.endswith(".pdf"):
            assert entry["pages"] == len(pikepdf.open(io.BytesIO(files[path])).pages)
    assert listed["pages/pages-a4-w5.pdf"]["size"] == "W5" and listed["pages/pages-a4-w5.pdf"]["kind"] == "pages"
    assert listed["pages/pages-a4-sizes.pdf"]["kind"] == "nested" and not listed["pages/pages-a4-sizes.pdf"]["size"]
    assert summary["checks"] == {
        "proof": "passed",
        "notions": "passed",
        "sizes": "passed",
        "words": "passed",
        "pictures": "passed",
        "ranges": "skipped",
    }
    with pytest.raises(jsonschema.ValidationError):
        jsonschema.validate({**summary, "more": 1}, schema)


def test_cloth_is_the_same_wherever_it_is_told(
    made: tuple[Path, Path, Released], summary: dict[str, Any], tmp_path: Path
) -> None:
    """In the summary, in each size's pattern file, in the released booklet and in the booklet of every size built by
    itself, and no less for a larger size."""
    notebook, out, _ = made
    told = {
        (entry["cloth"], entry["width"], each["size"]): (each["laid"], each["length"], each["folds"])
        for entry in summary["cloth_to_buy"]
        for each in entry["sizes"]
    }
    sizes = list(dict.fromkeys(size for _, _, size in told))
    assert {"W4", "W5"} <= set(sizes) and len(sizes) > 5
    for cloth, width in {key[:2] for key in told}:
        lengths = [told[cloth, width, size][1] for size in sizes]
        assert lengths[0] > 0 and lengths == sorted(lengths)
    for size in ("W4", "W5"):
        data = json.loads((out / f"files/pattern-{size.lower()}.json").read_text())
        jsonschema.validate(data, pattern_schema())
        rows = {
            (row["cloth"], row["width"], size): (row["laid"], row["length"], row["folds"])
            for row in data["cloth_to_buy"]
        }
        assert rows == {key: value for key, value in told.items() if key[2] == size}
    tables = [lengths_printed((out / "booklet/booklet.html").read_text())]
    for size in (sizes[0], "W5", sizes[-1]):
        alone = build(notebook, tmp_path / size, size=size, forms="html")
        tables.append(lengths_printed(alone.paths["booklet.html"].read_text()))
        data = json.loads(alone.paths["pattern.json"].read_text())
        rows = {
            (row["cloth"], row["width"], size): (row["laid"], row["length"], row["folds"])
            for row in data["cloth_to_buy"]
        }
        assert rows == {key: value for key, value in told.items() if key[2] == size}
    assert tables[0] and all(table == tables[0] for table in tables)


def bought_of(data: dict[str, Any], size: str) -> dict[tuple[str, float, str], tuple[float, float, list[str]]]:
    """What a pattern.json tells of the cloth to buy."""
    rows = data["cloth_to_buy"]
    return {(row["cloth"], row["width"], size): (row["laid"], row["length"], row["folds"]) for row in rows}


def lengths_printed(page: str) -> list[list[str]]:
    """The rows of the table of lengths in every size, as text."""
    title = re.escape(say("booklet.lengths_by_size"))
    (table,) = re.findall(rf'<table[^>]*aria-label="{title}".*?</table>', page, re.DOTALL)
    rows = [re.findall(r"<t[hd]\b.*?</t[hd]>", row, re.DOTALL) for row in re.findall(r"<tr.*?</tr>", table, re.DOTALL)]
    return [[" ".join(re.sub(r"<[^>]+>", " ", cell).split()) for cell in row] for row in rows]


def test_previews_show_something_and_say_what(made: tuple[Path, Path, Released], summary: dict[str, Any]) -> None:
    views = [entry for entry in summary["files"] if entry["kind"] == "preview"]
    assert len(views) == 3
    for entry in views:
        with Image.open(made[1] / entry["path"]) as image:
            assert image.width > 900 and len(image.convert("L").getcolors()) > 20
        assert entry["alt"]


def test_the_same_notebook_gives_the_same_bytes(made: tuple[Path, Path, Released], tmp_path: Path) -> None:
    notebook, out, _ = made
    with begun_anew():
        release(notebook, tmp_path / "again", ASKED)
    again = contents(tmp_path / "again")
    assert {path for path, data in contents(out).items() if again.get(path) != data} == set()
    one, two = ((folder / "start-here.pdf").stat().st_mtime for folder in (out, tmp_path / "again"))
    assert one == two


def test_all_reasons_are_told_at_once_and_the_last_good_one_stays(
    made: tuple[Path, Path, Released], tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def spoil(book: NotebookNode) -> None:
        for cell in book.cells:
            cell.source = cell.source.replace("hem=hem_turn + 1 * cm", "hem=hem_turn")  # less than the hem takes

    unplaced(monkeypatch)  # where texts of pictures stand plays no part
    notebook = lesson_at(tmp_path, {"end": [markdown("![](dot.png)")]}, spoil)
    (notebook.parent / "dot.png").write_bytes(PNG)
    out = made[1]
    before = contents(out)
    asked = AskedRelease(forms="html", languages="en,de", size="W4", sizes=("W4",), allow=("ranges",))
    with pytest.raises(NotReady) as refused:
        release(notebook, out, asked)
    assert {reason.name for reason in refused.value.reasons} >= {"words", "pictures", "proof"}
    assert contents(out) == before
    # Waived it is made, and says what was waived.
    monkeypatch.setattr(releasing._Work, "_papers", lambda *_: None)
    waived = AskedRelease("html", "en,de", "buyers", "W4", ("W4",), ("ranges", "words", "pictures", "proof"))
    told = release(notebook, tmp_path / "out", waived)
    summary = json.loads((tmp_path / "out" / "release.json").read_text())
    assert {entry["name"] for entry in summary["waived"]} == {reason.name for reason in told.waived}
    assert summary["checks"]["words"] == summary["checks"]["pictures"] == summary["checks"]["proof"] == "waived"
    assert summary["languages"] == ["de", "en"] or summary["languages"] == ["en", "de"]
    assert {"de/start-here.pdf", "en/start-here.pdf"} <= set(contents(tmp_path / "out"))


def test_a_failure_while_it_is_made_leaves_the_last_good_one(
    made: tuple[Path, Path, Released], monkeypatch: pytest.MonkeyPatch
) -> None:
    notebook, out, _ = made
    before = contents(out)

    def broken(*_: object) -> None:
        raise KitError("no ink.")

    unplaced(monkeypatch)
    monkeypatch.setattr(releasing, "range_files", broken)
    with pytest.raises(KitError, match="no ink"):
        release(notebook, out, AskedRelease(forms="html", size="W4", sizes=("W4",), allow=("ranges",)))
    assert contents(out) == before


def test_a_folder_of_other_things_is_left_alone(tmp_path: Path) -> None:
    (tmp_path / "thesis.txt").write_text("mine")
    with pytest.raises(KitError, match="holds other things than an earlier release"):
        release(lesson_at(tmp_path), tmp_path, ASKED)
    assert (tmp_path / "thesis.txt").read_text() == "mine"
    with pytest.raises(KitError, match="there is a file where the folder should go"):
        release(tmp_path / "lesson" / "pebble_top.ipynb", tmp_path / "thesis.txt", ASKED)


def test_a_release_with_files_of_somebody_elses_is_left_alone(tmp_path: Path) -> None:
    out = tmp_path / "out"
    files = {"files/pattern.svg": b"<svg/>", "release.json": json.dumps({"format": FORMAT}).encode()}
    releasing._put({**files, "SHA256SUMS": sums_text(files).encode()}, out, 1_000_000_000)
    (out / "files" / ".DS_Store").write_bytes(b"")  # written by the computer itself
    releasing._free(out)
    (out / "files" / "my notes.txt").write_text("mine")
    with pytest.raises(KitError, match=r"holds files/my notes\.txt; .*Move that elsewhere"):
        releasing._free(out)
    assert (out / "files" / "my notes.txt").read_text() == "mine"


@pytest.mark.parametrize("text", ["{}", "[]", "not JSON", '{"format": "another program"}'])
def test_a_file_of_that_name_makes_no_release(tmp_path: Path, text: str) -> None:
    (tmp_path / "release.json").write_text(text)
    (tmp_path / "SHA256SUMS").write_text("")
    with pytest.raises(KitError, match="holds other things than an earlier release"):
        releasing._free(tmp_path)


@pytest.mark.parametrize(
    ("sizes", "name", "size"),
    [
        (("A", "B"), "pages-a4-b.pdf", "B"),
        (("A", "B"), "projector-a-dark.pdf", "A"),
        (("38/40", "42/44"), "pages-letter-42-44.pdf", "42/44"),
        (("Long", "W4 long"), "sheet-a0-w4-long.pdf", "W4 long"),
        (("Long", "W4 long"), "pattern-long.svg", "Long"),
        (("W1", "W10"), "projector-w10-light.pdf", "W10"),
        (("A", "B"), "pages-a4-sizes.pdf", ""),
    ],
)
def test_a_file_is_said_to_be_of_its_own_size(
    sizes: tuple[str, ...], name: str, size: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(releasing, "_pages", lambda data: 1)
    work = releasing._Work.__new__(releasing._Work)
    work.sizes = tuple(SimpleNamespace(body=SimpleNamespace(name=each)) for each in sizes)  # type: ignore[misc]
    work.files = {}
    work._paper(name, b"", "en", "")
    assert [made.size for made in work.files.values()] == [size]


def test_scratch_folders_of_one_are_none_of_anothers(tmp_path: Path) -> None:
    names = [releasing._beside(tmp_path / name) for name in ("top", "top-2", "top-2-x")] + [_MAKING]
    assert not [(a, b) for a in names for b in names if a is not b and a.startswith(b)]
    other = tmp_path / f"{releasing._beside(tmp_path / 'top-2')}killed"
    other.mkdir()
    releasing._put({"release.json": b"{}"}, tmp_path / "top", 1_000_000_000)
    with alone_for(tmp_path):
        assert other.is_dir(), "it waits for its own release"
    releasing._put({"release.json": b"{}"}, tmp_path / "top-2", 1_000_000_000)
    assert not other.exists()


def test_the_folder_is_exchanged_in_one_step(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    out = tmp_path / "out"
    releasing._put({"release.json": b"{}", "a/b.txt": b"one"}, out, 1_000_000_000)
    assert contents(out) == {"release.json": b"{}", "a/b.txt": b"one"}
    assert (out / "a" / "b.txt").stat().st_mtime == 1_000_000_000
    releasing._put({"release.json": b"{}"}, out, 1_000_000_000)
    assert contents(out) == {"release.json": b"{}"}
    real, calls = os.replace, []

    def once(source: Path, target: Path) -> None:
        calls.append(Path(target))
        if calls.count(out) == 1 and calls[-1] == out:  # the new one; the old one may go back
            raise OSError(28, "No space left on device")
        real(source, target)

    monkeypatch.setattr(releasing.os, "replace", once)
    with pytest.raises(KitError, match="cannot be put in place"):
        releasing._put({"release.json": b"new"}, out, 1_000_000_000)
    assert contents(out) == {"release.json": b"{}"} and [item.name for item in tmp_path.iterdir()] == ["out"]


def test_a_release_whose_exchange_was_killed_comes_back(tmp_path: Path) -> None:
    out = tmp_path / "out"
    left = tmp_path / ".lessonkit-release-out-killed"
    (left / "old").mkdir(parents=True)
    (left / "old" / "release.json").write_text("{}")
    releasing._brought_back(out, left)
    assert contents(out) == {"release.json": b"{}"}
    (left / "old").mkdir()
    releasing._brought_back(out, left)  # where one stands already nothing is moved
    assert contents(out) == {"release.json": b"{}"} and (left / "old").is_dir()


@pytest.mark.parametrize("code", sorted(languages()))
def test_the_first_page_is_one_page_in_every_language(code: str) -> None:
    from kit import Lesson, bodice_block

    info = Lesson("Top", start=bodice_block, licence="For your own sewing and for teaching.").work().lesson
    sizes = [f"W{number}" for number in range(1, 11)]
    rows = [SizeFiles(size, f"pages/pages-a4-{size}.pdf", 20, f"pages/pages-letter-{size}.pdf", 21) for size in sizes]
    handed = Handed("booklet/booklet.html", "booklet/booklet-a4.pdf", (*rows, rows[0]), True, "copy-shop/", "p/", "f/")
    with speaking(code):
        page = start_here(info, handed)
    assert len(pikepdf.open(io.BytesIO(page)).pages) == 1
