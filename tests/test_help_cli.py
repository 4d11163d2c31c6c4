"""The reference in the terminal, what the commands say of themselves, and what Tab completes there."""

from __future__ import annotations

import shutil
import subprocess

import pytest

from kit.cli import main, parser, subcommands
from kit.help_cli import SHELLS, script
from kit.reference.told import help_on


def said(capsys: pytest.CaptureFixture[str], *arguments: str, status: int = 0) -> str:
    assert main(arguments) == status
    return capsys.readouterr().out


def test_a_verb_a_word_of_the_trade_and_a_command(capsys: pytest.CaptureFixture[str]) -> None:
    assert said(capsys, "help", "set_band").strip() == help_on("set_band")
    assert "make.faced_hem" in said(capsys, "help", "curved", "hem")
    assert "usage: lessonkit build" in said(capsys, "help", "build")
    assert "piece.notch" in said(capsys, "help")
    assert "Near: set_band" in said(capsys, "help", "setband", status=2)
    assert "Beispiel:" in said(capsys, "help", "set_band", "--language", "de")


@pytest.mark.parametrize(
    ("command", "words"),
    [
        ("build", ("booklet", "pattern pages", "pattern.json")),
        ("check", ("Prove", "raw edge", "several lessons", "0:")),
    ],
)
def test_a_command_says_what_it_does(command: str, words: tuple[str, ...]) -> None:
    text = " ".join(subcommands(parser())[command].format_help().split())
    assert all(word in text for word in words)


def test_every_command_has_a_line_and_a_description() -> None:
    whole = parser().format_help()
    for name, one in subcommands(parser()).items():
        assert name in whole and one.description, name


@pytest.mark.parametrize("shell", SHELLS)
def test_a_script_knows_every_command_and_option(shell: str) -> None:
    text = script(shell, subcommands(parser()))
    for name, one in subcommands(parser()).items():
        assert name in text
        for action in one._actions:
            for option in action.option_strings:
                assert option in text or (
                    shell == "fish" and (f"-l {option[2:]}" in text or option in ("-h", "--help"))
                )
    assert "set_band" in text


@pytest.mark.skipif(shutil.which("bash") is None, reason="no bash here")
@pytest.mark.parametrize(
    ("words", "wanted"),
    [
        (["lessonkit", "bu"], ["build"]),
        (["lessonkit", "build", "--uni"], ["--units"]),
        (["lessonkit", "build", "--units", ""], ["cm", "inch"]),
        (["lessonkit", "help", "set_b"], ["set_band"]),
        (["lessonkit", "completion", ""], ["bash", "zsh", "fish"]),
    ],
)
def test_bash_completes(words: list[str], wanted: list[str]) -> None:
    line = " ".join(f"'{word}'" for word in words)
    asked = f"COMP_WORDS=({line}); COMP_CWORD={len(words) - 1}; _lessonkit; printf '%s\\n' \"${{COMPREPLY[@]}}\""
    code = script("bash", subcommands(parser())) + asked
    done = subprocess.run(["bash", "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split() == wanted and not done.stderr
