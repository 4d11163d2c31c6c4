"""A build that is killed, stopped or robbed of its folder: no process of it lives on, nothing of the last good output
is lost, and the next build clears away what it left."""

from __future__ import annotations

import os
import shutil
import signal
import subprocess
import sys
import tempfile
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from kit.booklet import typeset
from kit.booklet.build import _get_ready
from kit.booklet.put_in_place import alone_for, put_in_place
from kit.booklet.typeset import WaitingTypesetter, set_in_type
from kit.errors import KitError
from kit.scratch import alone_in, scratch
from tests.roster.conftest import napkin_at

from .conftest import Writer, lesson_at

psutil = pytest.importorskip("psutil")
pytestmark = pytest.mark.skipif(os.name != "posix", reason="sends signals")
ROOT = Path(__file__).resolve().parents[2]
GOOD = ("booklet.html", "booklet-a4.pdf", "pages-a4.pdf", "findings.json")


@pytest.fixture(scope="module")
def notebook(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return lesson_at(tmp_path_factory.mktemp("ended"))


def build(notebook: Path, out: Path, home: Path) -> subprocess.Popen[str]:
    home.mkdir(exist_ok=True)
    return subprocess.Popen(
        [sys.executable, "-u", "-m", "kit.cli", "build", str(notebook), "--forms", "a4,html", "--out", str(out)],
        env={**os.environ, "PYTHONPATH": str(ROOT), "TMPDIR": str(home)},
        stdout=subprocess.PIPE,
        stderr=subprocess.STDOUT,
        text=True,
        # Signals are as in a shell's foreground, however the tests were begun: what is ignored stays ignored.
        preexec_fn=_hear_all,
    )


def _hear_all() -> None:
    for number in (signal.SIGINT, signal.SIGTERM, signal.SIGHUP):
        signal.signal(number, signal.SIG_DFL if number != signal.SIGINT else signal.default_int_handler)


def wait_until(holds: Callable[[], bool]) -> None:
    for _ in range(1200):
        if holds():
            return
        time.sleep(0.05)
    raise AssertionError("it did not come about within a minute")


def children(process: subprocess.Popen[str]) -> list[int]:
    return [child.pid for child in psutil.Process(process.pid).children(recursive=True)]


def alive(pids: list[int]) -> list[int]:
    return [pid for pid in pids if psutil.pid_exists(pid) and psutil.Process(pid).status() != psutil.STATUS_ZOMBIE]


MOMENTS = {"the kernel runs": "Code cell 5", "the typesetter works": "Laying out the pattern pages"}


@pytest.mark.slow
@pytest.mark.parametrize("moment", MOMENTS)
@pytest.mark.parametrize("how", [signal.SIGKILL, signal.SIGTERM, signal.SIGINT])
def test_nothing_lives_on_and_nothing_is_lost(notebook: Path, tmp_path: Path, moment: str, how: signal.Signals) -> None:
    out, home = tmp_path / "out", tmp_path / "temporary"
    out.mkdir()
    for name in GOOD:
        (out / name).write_text(f"the last good {name}")
    process = build(notebook, out, home)
    assert process.stdout is not None
    lines = []
    for line in process.stdout:
        lines.append(line)
        if MOMENTS[moment] in line:
            break
    begun = children(process)
    assert begun, "nothing was begun yet: " + "".join(lines)
    process.send_signal(how)
    said = process.communicate()[0]
    wait_until(lambda: not alive(begun))
    assert {name: (out / name).read_text() for name in GOOD} == {name: f"the last good {name}" for name in GOOD}
    if how != signal.SIGKILL:
        assert process.returncode == 130 and "stopped. The earlier output is untouched." in said
        assert "Task" not in said and "Traceback" not in said
        assert sorted(path.name for path in out.iterdir()) == sorted(GOOD)
        return
    if moment == "the typesetter works":
        assert [path.name for path in out.iterdir() if path.name.startswith(".lessonkit-")]
    with alone_for(out):  # as the next build does
        assert len([path for path in out.iterdir() if path.is_dir()]) == 1
    assert sorted(path.name for path in out.iterdir()) == sorted(GOOD)


@pytest.mark.slow
def test_a_deep_folder_for_temporary_files_is_no_hindrance(tmp_path: Path) -> None:
    """The path of a socket may have about a hundred characters, that of a folder thousands."""
    deep = tmp_path / ("deep" * 30)
    process = build(napkin_at(tmp_path), tmp_path / "out", deep)
    assert process.wait(120) == 0 and (tmp_path / "out" / "booklet.html").is_file()
    assert list(deep.iterdir()) == []


def test_what_a_dead_process_left_is_cleared_and_a_living_one_keeps_its_own(tmp_path: Path) -> None:
    dead = tmp_path / "work-dead"
    dead.mkdir()
    (dead / "half.pdf").write_text("half")
    with scratch("work-", tmp_path) as first:
        assert not dead.exists()
        with scratch("work-", tmp_path) as second:
            assert first.is_dir() and second.is_dir() and first != second
    assert list(tmp_path.iterdir()) == []


def test_a_swap_cut_short_is_taken_back_by_the_next_build(tmp_path: Path) -> None:
    """Ended between two files: those placed go out again, the old ones come back; a later build's stay."""
    names = ("a.pdf", "b.pdf", "new.pdf")
    for name in names[:2]:
        (tmp_path / name).write_text("old")
    program = f"""
import os
from pathlib import Path
from kit.booklet import put_in_place as p
out = Path({str(tmp_path)!r})
replace, done = os.replace, []
def cut(one, two):
    if str(one).endswith(".pdf"):
        done.append(one)
        if len(done) == 3: os.kill(os.getpid(), 9)
    replace(one, two)
with p.alone_for(out) as made:
    for name in {names!r}: (made / name).write_text("new")
    p.os.replace = cut
    p.put_in_place(made, out, ("a.pdf", "new.pdf", "b.pdf"))
"""
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    assert subprocess.run([sys.executable, "-c", program], env=env, check=False).returncode == -9
    assert {name: (tmp_path / name).read_text() for name in names} == {"a.pdf": "new", "b.pdf": "old", "new.pdf": "new"}
    with alone_for(tmp_path):
        assert sorted(path.name for path in tmp_path.iterdir() if path.is_file()) == ["a.pdf", "b.pdf"]
    assert [(tmp_path / name).read_text() for name in names[:2]] == ["old", "old"]


def test_two_swaps_into_one_folder_come_from_one_each(tmp_path: Path) -> None:
    """Two processes put their files in place again and again; whenever nobody is at it, all are of one of them."""
    program = f"""
import sys
from pathlib import Path
from kit.booklet import typeset
from kit.booklet.build import _get_ready
from kit.booklet.put_in_place import alone_for, put_in_place
out, names = Path({str(tmp_path)!r}), [f"{{i}}.txt" for i in range(12)]
for turn in range(25):
    with alone_for(out) as made:
        for name in names: (made / name).write_text(f"{{sys.argv[1]}} {{turn}}")
        put_in_place(made, out, names)
"""
    env = {**os.environ, "PYTHONPATH": str(ROOT)}
    writers = [subprocess.Popen([sys.executable, "-c", program, who], env=env) for who in ("one", "two")]
    seen = set()
    while any(writer.poll() is None for writer in writers):
        with alone_in(tmp_path):
            texts = {path.read_text() for path in tmp_path.glob("*.txt")}
        assert len(texts) <= 1, texts
        seen |= texts
    assert [writer.returncode for writer in writers] == [0, 0] and len(seen) > 1


def test_a_folder_removed_in_mid_build_is_said(tmp_path: Path) -> None:
    out = tmp_path / "out"
    out.mkdir()
    with pytest.raises(KitError, match=r"out: the folder was removed while the booklet was made"):
        with alone_for(out) as made:
            shutil.rmtree(out)
            (made / "pages.pdf").write_text("")
    out.mkdir(exist_ok=True)
    with pytest.raises(KitError, match="the lesson has two sizes"), alone_for(out):
        raise KitError("the lesson has two sizes.")


def test_a_file_that_cannot_be_placed_leaves_the_old_ones(tmp_path: Path) -> None:
    (tmp_path / "a.txt").write_text("old")
    (tmp_path / "b.txt").mkdir()
    (tmp_path / "b.txt" / "in it").write_text("")
    with pytest.raises(KitError, match="earlier files are as they were"), alone_for(tmp_path) as made:
        for name in ("a.txt", "b.txt"):
            (made / name).write_text("new")
        put_in_place(made, tmp_path, ("a.txt", "b.txt"))
    assert (tmp_path / "a.txt").read_text() == "old"


def test_the_typesetter_ends_with_who_asked_for_it(tmp_path: Path) -> None:
    """Its standard input is closed when its parent goes, even by a kill."""
    page = tmp_path / "page.html"
    page.write_text("<p>" + "words " * 10)
    child = subprocess.Popen(
        [
            sys.executable,
            "-c",
            "import time; from kit.booklet.typeset import _end_with_parent as e; e(); time.sleep(60)",
        ],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        stdin=subprocess.PIPE,
    )
    assert child.stdin is not None
    child.stdin.close()
    assert child.wait(30) == 1


def test_a_process_that_waits_for_its_page_sets_it_or_ends(tmp_path: Path) -> None:
    html = "<html lang='en'><head><title>Page</title></head><body><h1>Page</h1></body></html>"
    with WaitingTypesetter() as waiting:
        assert waiting.taken() is None
        waiting.begin()
        child = waiting._child
        assert child is not None
        made = set_in_type(html, tmp_path, tmp_path, "one", waiting)
        assert child.poll() == 0 and waiting.taken() is None
    assert made.pdf == set_in_type(html, tmp_path, tmp_path, "two").pdf and made.pdf.startswith(b"%PDF")
    with WaitingTypesetter() as waiting:
        waiting.begin()
        unasked = waiting._child
    assert unasked is not None and unasked.poll() is not None
    alone = WaitingTypesetter()
    alone.begin()
    orphan = alone.taken()
    assert orphan is not None and orphan.stdin is not None and orphan.stderr is not None
    orphan.stdin.close()  # as where who began it is killed
    assert orphan.wait(60) == 0 and orphan.stderr.read() == ""
    orphan.stderr.close()


def test_the_kernel_s_own_complaints_stay_out_of_the_terminal(write_lesson: Writer, tmp_path: Path) -> None:
    from .conftest import code

    path = write_lesson({"end": [code("import os\nos.write(2, b'foreign words\\n')\nwhile True: pass")]})
    env = {**os.environ, "PYTHONPATH": str(ROOT), "TMPDIR": tempfile.gettempdir()}
    command = [sys.executable, "-m", "kit.cli", "check", str(path), "--timeout", "6"]
    done = subprocess.run(command, env=env, capture_output=True, text=True, check=False)
    assert done.returncode == 2 and "ran longer than 6 s" in done.stderr
    assert len(done.stderr.strip().splitlines()) == 1 and "foreign" not in done.stderr + done.stdout


def test_a_typesetter_that_cannot_begin_early_is_left_to_who_needs_it(monkeypatch: pytest.MonkeyPatch) -> None:
    """Begun in a thread, where nobody would hear of it but by a traceback."""

    def no_room() -> None:
        raise BlockingIOError(11, "Resource temporarily unavailable")

    monkeypatch.setattr(typeset, "_started", no_room)
    with WaitingTypesetter() as waiting:
        _get_ready((waiting,))
        assert waiting.taken() is None
