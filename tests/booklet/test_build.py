"""Building: all files or none, the last good output kept, the PDF's own facts."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
from dataclasses import dataclass
from pathlib import Path

import nbformat
import pikepdf
import pytest

from kit.body.chart import workshop_chart
from kit.booklet import writing
from kit.booklet.asked_forms import ALL, DEFAULT, asked_forms
from kit.booklet.build import DATA, Built, build
from kit.booklet.buying import Shopping
from kit.cli import main
from kit.errors import KitError
from kit.lesson.pattern import Pattern
from kit.paper.papers import papers_of
from tests.forked_kernels import begun_anew
from tests.pseudo import CODE, OPEN, pseudo
from tests.roster.conftest import napkin_at
from tests.unplaced import unplaced

from .conftest import Writer, code, lesson_at

PAGES = (*(f"pages-{paper.name}.pdf" for paper in papers_of("")), *DATA)
"""Files of a build that holds every size of page."""


def contents(folder: Path) -> dict[str, bytes]:
    return {item.name: item.read_bytes() for item in folder.iterdir()}


def leave_out_cloth_and_pages(patch: pytest.MonkeyPatch) -> None:
    """They take longest and play no part in whether a build is all or nothing: no cloth is reckoned, no place is sought
    for the texts of pictures, and the pattern pages are a line of text that names the size."""

    def pages(pattern: Pattern, out: Path, progress: object, bought: object, papers: object) -> None:
        for name in set(PAGES) - {"findings.json"}:
            (out / name).write_text(f"{name} in size {pattern.body.name}")

    patch.setattr(writing, "shopping", lambda handed, kept: Shopping((), ()))
    patch.setattr(writing, "write_pages", pages)
    unplaced(patch)


def forget_the_sides(book: nbformat.NotebookNode) -> None:
    """The sides stay open, and the proof fails."""
    book.cells = [cell for cell in book.cells if cell.get("id") != "sides"]


@pytest.fixture
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    leave_out_cloth_and_pages(monkeypatch)


@pytest.fixture(scope="module")
def good_build(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with `lesson`, and in `out` a good build of it for the screen and as an e-book, in its own size."""
    folder = tmp_path_factory.mktemp("good")
    with pytest.MonkeyPatch.context() as patch:
        leave_out_cloth_and_pages(patch)
        build(lesson_at(folder), folder / "out", forms="html,epub")
    return folder


@pytest.fixture
def built(good_build: Path, tmp_path: Path, quick: None) -> tuple[Path, Path]:
    """(notebook, folder of its last good build), copied so that a test may build into it again."""
    for name in ("lesson", "out"):
        shutil.copytree(good_build / name, tmp_path / name)
    (notebook,) = (tmp_path / "lesson").glob("*.ipynb")
    return notebook, tmp_path / "out"


@dataclass(frozen=True)
class Made:
    """A build with nothing left out: the folder it wrote, what it gave back and what it said meanwhile."""

    out: Path
    built: Built
    said: tuple[str, ...]


@pytest.fixture(scope="module")
def every_form(tmp_path_factory: pytest.TempPathFactory) -> Made:
    folder = tmp_path_factory.mktemp("every")
    said: list[str] = []
    out = folder / "made" / "here"
    built = build(napkin_at(folder), out, size="W4", units="cm", forms="all", progress=said.append)
    return Made(out, built, tuple(said))


@pytest.mark.slow
def test_a_build_makes_every_file(every_form: Made) -> None:
    out, built = every_form.out, every_form.built
    assert set(contents(out)) == set(built.paths) == {*ALL, *PAGES} and not built.failed and built.seconds > 0
    assert {name: out / name for name in built.paths} == built.paths
    assert every_form.said[0] == "Running pebble_napkin.ipynb from the top"
    pattern = json.loads((out / "pattern.json").read_text())
    assert [piece["name"] for piece in pattern["pieces"]] == ["front"]
    findings = json.loads((out / "findings.json").read_text())
    assert findings["failed"] is False and findings["size"] == "W4"
    with pikepdf.open(out / "booklet-a4.pdf") as pdf:
        assert str(pdf.docinfo["/Title"]) == "Pebble napkin – instruction booklet"
        assert str(pdf.Root.Lang).startswith("en")
        assert pdf.Root.MarkInfo.Marked
        with pdf.open_outline() as outline:
            titles = [item.title for item in outline.root]
        assert "Sewing" in titles and "Pieces" in titles
        # ISO 216: A4 is 210 x 297 mm; a PDF point is 1/72 inch (ISO 32000-1, 8.3.2.3)
        width, height = (float(v) / 72 * 25.4 for v in list(pdf.pages[0].MediaBox)[2:])
        assert abs(width - 210) < 0.05 and abs(height - 297) < 0.05


def test_a_failed_build_keeps_the_last_good_output(built: tuple[Path, Path], monkeypatch: pytest.MonkeyPatch) -> None:
    path, out = built
    good = contents(out)

    book = nbformat.read(path, as_version=4)
    nbformat.write(nbformat.from_dict({**book, "cells": [*book.cells, code("1 / 0")]}), path)
    with pytest.raises(KitError, match="division by zero"):
        build(path, out, forms="html")
    assert contents(out) == good

    nbformat.write(book, path)

    def broken(*args: object) -> None:
        raise KitError("no paper.")

    monkeypatch.setattr(writing, "write_pages", broken)
    with pytest.raises(KitError, match="no paper"):
        build(path, out, size="W7", forms="html")
    assert contents(out) == good


def test_a_notebook_gives_the_same_bytes_whenever_it_is_built(built: tuple[Path, Path]) -> None:
    path, out = built
    good = contents(out)
    with begun_anew():
        build(path, out, forms="html,epub")
    assert contents(out) == good


def test_a_form_that_cannot_be_set_keeps_the_last_good_output(
    built: tuple[Path, Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    path, out = built
    good = contents(out)

    def broken(*args: object) -> None:
        raise KitError("the booklet could not be set in type.")

    monkeypatch.setattr(writing, "set_in_type", broken)
    with pytest.raises(KitError, match="set in type"):
        build(path, out, size="W7", forms="a4,html")
    assert contents(out) == good


@pytest.mark.slow
def test_every_form_on_its_own_paper(every_form: Made) -> None:
    out = every_form.out
    sizes = {  # ISO 216 and US Letter (ANSI/ASME Y14.1), mm; the sheets to fold lie landscape
        "booklet-a4.pdf": (210, 297),
        "booklet-letter.pdf": (215.9, 279.4),
        "booklet-a5.pdf": (148, 210),
        "booklet-half-letter.pdf": (139.7, 215.9),
        "booklet-a4-large.pdf": (210, 297),
        "booklet-letter-large.pdf": (215.9, 279.4),
        "booklet-a5-on-a4.pdf": (297, 210),
        "booklet-half-letter-on-letter.pdf": (279.4, 215.9),
    }
    for name, size in sizes.items():
        with pikepdf.open(out / name) as pdf:
            assert {tuple(round(float(v) / 72 * 25.4, 1) for v in page.mediabox[2:]) for page in pdf.pages} == {size}
    with pikepdf.open(out / "booklet-a5.pdf") as small, pikepdf.open(out / "booklet-a5-on-a4.pdf") as folded:
        assert len(folded.pages) == -(-len(small.pages) // 4) * 2


def test_a_smaller_build_tells_of_what_an_earlier_one_left(built: tuple[Path, Path]) -> None:
    path, out = built
    before = contents(out)
    again = build(path, out, forms="html", size="W7")
    now = contents(out)
    assert again.earlier == ("booklet.epub",) and now["booklet.epub"] == before["booklet.epub"]
    assert now["booklet.html"] != before["booklet.html"] and set(now) == set(before)


def test_forms_are_read() -> None:
    assert set(asked_forms().files) == {"booklet-a4.pdf", "booklet-letter.pdf", "booklet.html", "booklet.epub"}
    assert asked_forms().files == asked_forms(",".join(DEFAULT)).files
    assert asked_forms("html, A4").files == ("booklet-a4.pdf", "booklet.html")
    assert asked_forms("large").prints == ("a4-large",)
    assert asked_forms("fold").prints == ("a5",) and asked_forms("fold").files == ("booklet-a5-on-a4.pdf",)
    assert asked_forms("all").files == ALL
    for said, do in (
        ("a6", "there is no booklet form 'a6'"),
        ("htlm", "Did you mean 'html'"),
        (",", "no form is named"),
    ):
        with pytest.raises(KitError, match=do):
            asked_forms(said)


def test_a_language_is_spoken_and_missing_words_are_counted(write_lesson: Writer, tmp_path: Path, quick: None) -> None:
    built = build(write_lesson(), tmp_path / "out", forms="html", language="es")
    assert '<html lang="es">' in (tmp_path / "out" / "booklet.html").read_text(encoding="utf-8")
    assert len(built.notes) == 1 and "pebble_top.es.po" in built.notes[0]


def test_a_build_tells_what_it_does_in_the_language_asked(
    write_lesson: Writer, tmp_path: Path, quick: None, capsys: pytest.CaptureFixture[str]
) -> None:
    """Every line but the paths, in a language made up for tests, which puts what is said between guillemets; also
    that the proof failed, and that files of an earlier build are left."""
    path, out = write_lesson(change=forget_the_sides), tmp_path / "out"
    out.mkdir()
    (out / "booklet-a5.pdf").write_bytes(b"%PDF-1.7")
    with pseudo():
        main(["build", str(path), "--forms", "html", "--language", CODE, "--out", str(out)])
    said = [line for line in capsys.readouterr().out.splitlines() if line.strip() and not line.startswith(str(out))]
    assert len(said) > 8 and any("cover" in line for line in said)
    assert not [line for line in said if OPEN not in line]


def test_sizes_that_cannot_be_drafted_are_noted_each_in_a_line(
    write_lesson: Writer, tmp_path: Path, quick: None
) -> None:
    """A step that asks for more than 85 cm of bust: W1 to W3 of the chart have less, W4 has 90."""
    asks = """
from kit import KitError

@lesson.step("Ask the bust")
def ask(front, bust_girth):
    \"\"\"Needs room.\"\"\"
    if bust_girth < 85 * cm:
        raise KitError("the bust is too small.", do="Choose a larger size.")
"""
    path = write_lesson({"allowances": [code(asks)]})
    built = build(path, tmp_path / "out", forms="html", size="W4")
    small = [body.name for body in workshop_chart().bodies() if body["bust_girth"] < 850.0]
    assert small and len(built.notes) == len(small)
    for name, note in zip(small, built.notes, strict=True):
        assert note.startswith(f"{name} is left out, for it cannot be drafted: ") and "too small" in note
        assert "\n" not in note


def test_a_language_without_a_catalogue_is_refused_before_the_notebook_runs(tmp_path: Path) -> None:
    with pytest.raises(KitError, match="there is no language 'tlh'"):
        build(tmp_path / "none.ipynb", tmp_path / "out", language="tlh")
    assert not (tmp_path / "out").exists()


def test_a_file_that_cannot_be_placed_puts_the_others_back(
    built: tuple[Path, Path], monkeypatch: pytest.MonkeyPatch
) -> None:
    path, out = built
    good = contents(out)
    replace = os.replace

    def fails_on_the_sheet(source: Path, target: Path) -> None:
        if Path(target) == out / "sheet.pdf" and Path(source).parent.name != "before":
            raise PermissionError(13, "Permission denied")
        replace(source, target)

    monkeypatch.setattr(os, "replace", fails_on_the_sheet)
    with pytest.raises(KitError, match="cannot be put in place"):
        build(path, out, size="W7", forms="html")
    assert contents(out) == good


def test_an_output_folder_that_is_a_file(write_lesson: Writer, tmp_path: Path) -> None:
    path = write_lesson()
    (tmp_path / "taken").write_text("mine")
    with pytest.raises(KitError) as caught:
        build(path, tmp_path / "taken")
    assert "taken" in str(caught.value)
    assert (tmp_path / "taken").read_text() == "mine"


@pytest.mark.skipif(os.name != "posix" or os.geteuid() == 0, reason="the superuser may write anywhere")
def test_an_output_folder_without_permission(write_lesson: Writer, tmp_path: Path) -> None:
    path, out = write_lesson(), tmp_path / "out"
    out.mkdir(mode=0o500)
    with pytest.raises(KitError, match=r"cannot be written|nothing can be written"):
        build(path, out)


def test_a_lesson_that_fails_its_proof_is_built_with_a_banner(
    write_lesson: Writer, tmp_path: Path, quick: None
) -> None:
    out = tmp_path / "out"
    built = build(write_lesson(change=forget_the_sides), out, forms="html")
    assert built.failed
    assert "Proof failed" in (out / "booklet.html").read_text()
    assert json.loads((out / "findings.json").read_text())["failed"] is True


@pytest.mark.slow
def test_the_exporter_is_found_by_nbconvert(tmp_path: Path) -> None:
    path = napkin_at(tmp_path)
    command = [sys.executable, "-m", "jupyter", "nbconvert", "--to", "booklet", path.name]
    done = subprocess.run(
        [*command, "--BookletExporter.size=W6"],
        cwd=path.parent,
        capture_output=True,
        text=True,
        timeout=180,
        check=False,
    )
    assert done.returncode == 0, done.stderr
    pdf = path.with_suffix(".pdf")
    assert pdf.read_bytes().startswith(b"%PDF-")
    from nbconvert.exporters import get_exporter

    exporter = get_exporter("booklet")
    assert exporter.export_from_notebook == "Booklet (PDF)"
    assert exporter.output_mimetype == "application/pdf"
