"""The commands of a class: what they print, and a plain message for each bad input."""

from __future__ import annotations

import socket
from pathlib import Path

import pytest

from kit.cli import main

from .open_room import write_lesson
from .test_cli import refused


def test_class_copy_prints_what_it_made_and_how_to_go_on(tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    lesson = write_lesson(tmp_path)
    assert (
        main(["class-copy", str(lesson), "--exercises", "longer-underarm", "--out", str(tmp_path / "eve.ipynb")]) == 0
    )
    lines = capsys.readouterr().out.splitlines()
    assert lines[0] == "This runs the notebook's code."
    assert lines[-4:] == [
        "Exercises: Longer underarm",
        str(tmp_path / "eve.ipynb"),
        str(tmp_path / "eve_lesson" / "lesson.ipynb"),
        f"Open it to a room with: lessonkit serve {tmp_path / 'eve.ipynb'}",
    ]
    with socket.socket() as taken:
        taken.bind(("127.0.0.1", 0))
        taken.listen()
        port = str(taken.getsockname()[1])
        assert f"port {port} is taken" in refused(capsys, "serve", str(tmp_path / "eve.ipynb"), "--port", port)
    assert "is no address of this machine" in refused(
        capsys, "serve", str(tmp_path / "eve.ipynb"), "--port", "0", "--local-network", "192.0.2.250"
    )


def test_bad_input_is_refused_in_words(
    tmp_path: Path, root: Path, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    tote = str(root / "example_notebooks" / "ferry_tote.ipynb")
    assert "there is no notebook" in refused(capsys, "class-copy", str(tmp_path / "none.ipynb"))
    assert "Let it end in .ipynb" in refused(capsys, "class-copy", tote, "--out", str(tmp_path / "x.txt"))
    assert "is not a class copy" in refused(capsys, "serve", tote)
    assert "every network" in refused(capsys, "serve", tote, "--local-network", "0.0.0.0")


@pytest.mark.parametrize("arguments", [["--port", "99999"], ["--port", "x"], ["--students", "0"], ["--students", "no"]])
def test_numbers_are_numbers(arguments: list[str], capsys: pytest.CaptureFixture[str]) -> None:
    with pytest.raises(SystemExit):
        main(["serve", "copy.ipynb", *arguments])
    assert "type a" in capsys.readouterr().err


def test_the_help_says_what_is_run_and_what_students_can_do(capsys: pytest.CaptureFixture[str]) -> None:
    for command, words in (("class-copy", "run the notebook"), ("serve", "Students can run no code")):
        with pytest.raises(SystemExit):
            main([command, "--help"])
        assert words in " ".join(capsys.readouterr().out.split())
