"""The command `lessonkit`: what it prints, its exit status, and a plain message for each bad input."""

from __future__ import annotations

import os
import re
from pathlib import Path

import nbformat
import pytest

from kit.cli import main

from .booklet.conftest import Writer, write_lesson
from .booklet.test_build import leave_out_cloth_and_pages

__all__ = ["write_lesson"]


def refused(capsys: pytest.CaptureFixture[str], *arguments: str) -> str:
    """The one-line message of a refused command."""
    assert main(arguments) == 2
    said = capsys.readouterr()
    assert "Traceback" not in said.err + said.out
    lines = said.err.strip().splitlines()
    assert len(lines) == 1 and lines[0].startswith("lessonkit: ")
    return lines[0]


def test_new_writes_a_lesson_once(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]
) -> None:
    monkeypatch.chdir(tmp_path)
    assert main(["new", 'Quay "Sunday" skirt']) == 0
    path = tmp_path / "quay_sunday_skirt.ipynb"
    assert str(path) in capsys.readouterr().out
    book = nbformat.read(path, as_version=4)
    nbformat.validate(book)
    sources = "\n".join(cell.source for cell in book.cells)
    assert 'Lesson(\n    "Quay \\"Sunday\\" skirt"' in sources and "LESSON TITLE" not in sources
    before = path.read_bytes()
    assert "already a notebook 'quay_sunday_skirt.ipynb'" in refused(capsys, "new", 'Quay "Sunday" skirt')
    assert path.read_bytes() == before
    assert "names a folder" in refused(capsys, "new", "../elsewhere")
    assert "gives no file name" in refused(capsys, "new", "!!!")


def test_build_prints_progress_and_paths(
    write_lesson: Writer, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    out = tmp_path / "out"
    arguments = ["build", str(write_lesson()), "--size", "W4", "--units", "inch", "--out", str(out), "--timings"]
    arguments += ["--forms", "fold,html"]
    assert main(arguments) == 0
    lines = capsys.readouterr().out.splitlines()
    assert lines[0] == "This runs the notebook's code."
    assert any("Rule the hem" in line for line in lines)
    stages = ("notebook", "proof", "pictures and words", "booklet-a5.pdf", "booklet.html", "pattern pages", "total")
    for stage in stages:
        assert any(re.fullmatch(rf" *{stage}  +\d+\.\d\d s.*", line) for line in lines), stage
    assert "flip on the short edge" in lines[-1]
    assert lines[-8:-1] == [
        str(out / name)
        for name in (
            "booklet-a5-on-a4.pdf",
            "booklet.html",
            "pages-a4.pdf",
            "pages-letter.pdf",
            "sheet.pdf",
            "pattern.json",
            "findings.json",
        )
    ]


def test_a_form_or_language_that_does_not_exist(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    nowhere = ("build", str(tmp_path / "none.ipynb"), "--out", str(tmp_path / "out"))
    assert "there is no booklet form 'a6'" in refused(capsys, *nowhere, "--forms", "a4,a6")
    assert "there is no language 'xx'" in refused(capsys, *nowhere, "--language", "xx")


def test_a_stranger_s_notebook_is_named_before_it_runs(
    write_lesson: Writer, tmp_path: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    leave_out_cloth_and_pages(monkeypatch)
    path = write_lesson()
    for command in (["check"], ["build", "--forms", "html", "--out", str(tmp_path / "out")]):
        main([*command, str(path)])
        said = capsys.readouterr().out
        assert said.startswith("This runs the notebook's code.\n") and "Take care" not in said
    monkeypatch.setattr("kit.booklet.origin.stranger", lambda notebook: "pebble_top.ipynb was downloaded.")
    main(["check", str(path)])
    lines = capsys.readouterr().out.splitlines()
    assert lines[1].startswith("Take care: pebble_top.ipynb was downloaded.") and "trust" in lines[1]


@pytest.mark.skipif(os.name != "posix", reason="owners and extended attributes of POSIX files")
def test_what_tells_a_stranger_s_file(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    from kit.booklet.origin import stranger

    mine = tmp_path / "mine.ipynb"
    mine.write_text("{}")
    assert stranger(mine) == "" == stranger(tmp_path / "none.ipynb")
    monkeypatch.setattr("os.getuid", lambda: mine.stat().st_uid + 1)
    assert "belongs to another user" in stranger(mine)
    monkeypatch.undo()
    if hasattr(os, "setxattr"):
        try:  # the mark that wget --xattr and some browsers leave (freedesktop.org, common extended attributes)
            os.setxattr(mine, "user.xdg.origin.url", b"https://example.org/mine.ipynb")
        except OSError:
            pytest.skip("this file system keeps no extended attributes")
        assert stranger(mine) == "mine.ipynb was downloaded."


def test_check_tells_sound_from_faulty(write_lesson: Writer, capsys: pytest.CaptureFixture[str]) -> None:
    path = write_lesson()
    assert main(["check", str(path)]) == 0
    assert "Pebble top, W4:" in capsys.readouterr().out
    book = nbformat.read(path, as_version=4)
    book.cells = [cell for cell in book.cells if cell.id != "sides"]
    nbformat.write(book, path)
    assert main(["check", str(path)]) == 1
    out = capsys.readouterr().out
    assert "error: " in out and "side" in out and "the proof failed" in out


def test_plain_messages(write_lesson: Writer, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    path = write_lesson()
    out = str(tmp_path / "out")
    assert "no notebook" in refused(capsys, "build", str(tmp_path / "missing.ipynb"), "--out", out)
    broken = tmp_path / "broken.ipynb"
    broken.write_text('{"cells": [')
    assert "not JSON" in refused(capsys, "build", str(broken), "--out", out)
    empty = tmp_path / "empty.ipynb"
    nbformat.write(nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell("x = 1")]), empty)
    assert "no lesson" in refused(capsys, "check", str(empty))
    assert "no size 'XL'" in refused(capsys, "build", str(path), "--size", "XL", "--out", out)
    (tmp_path / "taken").write_text("mine")
    assert "taken" in refused(capsys, "build", str(path), "--out", str(tmp_path / "taken"))
    assert "taken" in refused(capsys, "build", str(path), "--out", str(tmp_path / "taken" / "below"))
    assert (tmp_path / "taken").read_text() == "mine"


@pytest.mark.parametrize(
    ("change", "words"),
    [
        (("front, back, length_below_waist", "front, bak, length_below_waist"), ["bak", "Did you mean 'back'"]),
        (('fold="centre", title="Front"', 'fold="center", title="Front"'), ["center", "centre"]),
        (('length_below_waist", 16 * cm', 'length_below_waist", 16'), ["16", "no unit", "16 * cm"]),
        (('length_below_waist", 16 * cm', 'length_below_waist", 160 * cm'), ["160", "range"]),
    ],
)
def test_bad_lessons(
    write_lesson: Writer, capsys: pytest.CaptureFixture[str], change: tuple[str, str], words: list[str]
) -> None:
    def spoil(book: nbformat.NotebookNode) -> None:
        for cell in book.cells:
            cell.source = cell.source.replace(*change)

    message = refused(capsys, "check", str(write_lesson(change=spoil)))
    for word in words:
        assert word in message


def test_version_and_help(capsys: pytest.CaptureFixture[str]) -> None:
    for arguments in (["--version"], ["--help"], ["build", "--help"]):
        with pytest.raises(SystemExit) as left:
            main(arguments)
        assert left.value.code == 0
    out = " ".join(capsys.readouterr().out.split())
    assert out.startswith("lessonkit ")
    assert "run the notebook from the top, with your rights" in out


def test_wrong_options_are_refused(capsys: pytest.CaptureFixture[str]) -> None:
    for arguments in (
        ["build"],
        ["build", "x.ipynb", "--units", "feet"],
        ["build", "x.ipynb", "--units", "cm", "--only", "inch"],
        ["check", "x.ipynb", "--timeout", "soon"],
    ):
        with pytest.raises(SystemExit) as left:
            main(arguments)
        assert left.value.code == 2
    assert "soon" in capsys.readouterr().err


def test_pages_for_a_paper_and_a_printer(
    write_lesson: Writer, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    path, out = str(write_lesson()), tmp_path / "out"
    arguments = ["--paper", "letter", "--paper", "a0", "--joining", "butt", "--printer-scale", "97%,98.5%"]
    assert main(["pages", path, *arguments, "--size", "W4", "--out", str(out)]) == 0
    said = capsys.readouterr().out
    assert sorted(each.name for each in out.iterdir()) == ["pages-letter.pdf", "sheet-a0.pdf"]
    assert "US Letter: " in said and "A0: 1 sheet" in said and str(out / "pages-letter.pdf") in said
    assert main(["pages", path, "--paper", "a4", "--scale", "1/2", "--out", str(out)]) == 0
    assert (out / "pages-a4-half.pdf").read_bytes().startswith(b"%PDF")


@pytest.mark.parametrize(
    ("arguments", "said"),
    [
        (("--paper", "300x500"), "'300x500' does not say its unit"),
        (("--paper", "leter"), "Did you mean 'letter'"),
        (("--printer-scale", "97 mm"), "97 mm"),
        (("--printer-scale", "50%"), "prints at 50%"),
        (("--scale", "1/3"), "Choose 1, 1/2 or 1/4"),
        (("--margin", "2mm"), "a page margin of 2 mm"),
    ],
)
def test_pages_that_cannot_be_are_refused_before_the_notebook_runs(
    arguments: tuple[str, ...], said: str, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    assert said in refused(capsys, "pages", str(tmp_path / "none.ipynb"), *arguments)


def test_a_lesson_without_a_body_says_that_it_has_one_size(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    tote = Path(__file__).parent.parent / "example_notebooks" / "ferry_tote.ipynb"
    arguments = ["pages", str(tote), "--paper", "a0", "--sizes", "all", "--out", str(tmp_path)]
    assert main(arguments) == 0
    assert "it has one size; these pages are that one." in capsys.readouterr().out
