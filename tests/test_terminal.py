"""What a command says on poor terminals, on machines without the typesetter's library, and of what nobody foresaw."""

from __future__ import annotations

import io
import os
import re
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from kit.booklet.typesetter import is_missing, missing
from kit.errors import KitError
from kit.terminal_cli import ended, plainly

from .booklet.conftest import Writer, write_lesson

__all__ = ["write_lesson"]

ROOT = Path(__file__).resolve().parents[1]


def lessonkit(*arguments: object, path: str = "", **environment: str) -> subprocess.CompletedProcess[str]:
    paths = os.pathsep.join(filter(None, (path, str(ROOT))))
    return subprocess.run(
        [sys.executable, "-m", "kit.cli", *map(str, arguments)],
        env={**os.environ, "PYTHONPATH": paths, **environment},
        capture_output=True,
        text=True,
        check=False,
    )


def test_a_terminal_of_few_signs_shows_the_nearest(write_lesson: Writer) -> None:
    path = write_lesson()
    done = lessonkit("check", path, "--values", "seam=…", PYTHONIOENCODING="ascii")
    assert done.returncode == 2 and "'...' cannot be read" in done.stderr
    assert plainly("½ in, Größe „M“ – 3 × 4 …") == '1/2 in, Grosse "M" - 3 x 4 ...'


def test_without_pango_check_works_and_a_build_says_what_make_demo_says(write_lesson: Writer, tmp_path: Path) -> None:
    path, without = write_lesson(), str(ROOT / "tests" / "no_pango")
    done = lessonkit("check", path, path=without)
    assert (done.returncode, done.stderr) == (0, "") and "nothing found" in done.stdout
    done = lessonkit("build", path, "--out", tmp_path / "out", path=without)
    assert done.returncode == 2 and len(done.stderr.strip().splitlines()) == 1
    assert "Running" not in done.stdout and "WeasyPrint" not in done.stdout  # refused before anything ran
    script = (ROOT / ".ci" / "system-packages").read_text()
    packages = re.search(r'pango_packages="(.*)"', script)
    assert packages and f"sudo apt install {packages[1]}" in done.stderr
    for words in re.findall(r"(?:sudo dnf|brew|pacman) [a-zA-Z0-9 _.-]*pango[a-zA-Z0-9 _.-]*|set WEASY\S+", script):
        assert words.strip().replace("\\\\", "\\") in str(missing()), words
    done = lessonkit("build", path, "--forms", "html", "--out", tmp_path / "out", path=without)
    assert done.returncode == 0 and (tmp_path / "out" / "pages-a4.pdf").is_file()
    assert not is_missing("OSError: no space left")


def refused(error: BaseException) -> Callable[[], int]:
    def run() -> int:
        raise error

    return run


@pytest.mark.parametrize(
    ("error", "status", "words"),
    [
        (KitError("the hem is 9 cm."), 2, "lessonkit: the hem is 9 cm."),
        (KeyboardInterrupt(), 130, "stopped. The earlier output is untouched."),
        (OSError(28, "No space left on device", "out/a.pdf"), 2, "out/a.pdf: the computer refused it (no space left"),
        (MemoryError(), 2, "the memory is used up"),
        (RecursionError("maximum\nrecursion"), 3, "the kit itself failed (RecursionError: maximum recursion)"),
        (TypeError("x"), 3, "LESSONKIT_TRACEBACK=1"),
    ],
)
def test_whatever_happens_is_one_line(
    error: BaseException, status: int, words: str, capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.delenv("LESSONKIT_TRACEBACK", raising=False)
    assert ended(refused(error)) == status
    said = capsys.readouterr()
    assert words in said.err and said.err.count("\n") == 1 and said.out == ""


def test_the_traceback_of_a_fault_is_there_when_it_is_asked_for(
    capsys: pytest.CaptureFixture[str], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("LESSONKIT_TRACEBACK", "1")
    assert ended(refused(TypeError("x"))) == 3
    assert "Traceback" in capsys.readouterr().err


@pytest.mark.skipif(os.name != "posix", reason="sends a signal")
def test_a_request_to_end_is_heard_and_handlers_are_put_back(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "stderr", io.StringIO())
    before = signal.getsignal(signal.SIGTERM)

    def asked() -> int:
        os.kill(os.getpid(), signal.SIGTERM)
        return 0

    assert ended(asked) == 130
    assert signal.getsignal(signal.SIGTERM) == before


@pytest.mark.skipif(os.name != "posix", reason="sends signals")
def test_what_the_caller_ignores_stays_ignored_and_a_job_in_the_background_ends() -> None:
    """POSIX.1-2017, "Shell Command Language" 2.11: a shell without job control has a job begun with & ignore SIGINT;
    nohup (same standard, "Utilities") has it ignore SIGHUP."""
    code = """
import os, signal, sys, time
signal.signal(signal.SIGINT, signal.SIG_IGN)
signal.signal(signal.SIGHUP, signal.SIG_IGN)
from kit.terminal_cli import ended
def run():
    os.kill(os.getpid(), signal.SIGHUP)
    os.kill(os.getpid(), signal.SIGINT)
    print("goes on", flush=True)
    os.kill(os.getpid(), signal.SIGTERM)
    time.sleep(1)
    return 0
sys.exit(ended(run))
"""
    done = subprocess.run([sys.executable, "-c", code], cwd=ROOT, capture_output=True, text=True, check=False)
    assert (done.returncode, done.stdout) == (130, "goes on\n") and "stopped" in done.stderr


def test_a_reader_that_has_enough_is_no_fault() -> None:
    shell = f"{sys.executable} -m kit.cli --help | head -n 1"
    done = subprocess.run(
        ["bash", "-c", shell], env={**os.environ, "PYTHONPATH": str(ROOT)}, capture_output=True, text=True, check=False
    )
    assert done.stderr == ""
