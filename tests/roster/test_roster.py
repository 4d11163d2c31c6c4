"""A set for every row of a table: what is made, what is kept by content, who is named, and that nothing stops the
rest."""

from __future__ import annotations

import csv
import json
import os
import re
import signal
import subprocess
import sys
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import replace
from pathlib import Path

import pikepdf
import pypdfium2
import pytest

from kit.booklet.bodies import parse_people
from kit.cli import main
from kit.errors import KitError
from kit.language import languages, speaking
from kit.roster import run
from kit.roster.local import local
from kit.roster.order import MadeSet, Order, Task, tasks
from kit.roster.report import RowReport, index, table
from kit.roster.run import RECORD, run_roster, told_left
from kit.roster.warm import Lost, Warm
from tests.roster.conftest import napkin_at

ROOT = Path(__file__).resolve().parents[2]
CLASS = """name,bust,waist,hips
Ada Quay,96,80,104
Bo,88,70,95
Cy,ninety,70,95
Di,900,70,95
"""


@pytest.fixture(scope="module")
def notebook(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return napkin_at(tmp_path_factory.mktemp("roster"))


@pytest.fixture(scope="module")
def pages(notebook: Path) -> Order:
    """The quick order: pages alone."""
    return Order(notebook, "none")


def write(tmp_path: Path, text: str = CLASS) -> Path:
    path = tmp_path / "class.csv"
    path.write_text(text)
    return path


def stamps(out: Path) -> dict[str, int]:
    return {str(path.relative_to(out)): path.stat().st_mtime_ns for path in out.rglob("*/*") if path.is_file()}


@pytest.mark.slow
def test_a_set_for_each_row_with_booklet_pages_cloth_and_fit(
    notebook: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    """Finished measurements differ as the bodies do; bad rows are told and have no folder."""
    out = tmp_path / "out"
    arguments = ["roster", str(notebook), str(write(tmp_path)), "--out", str(out), "--workers", "1"]
    assert main(arguments) == 0
    said = capsys.readouterr().out
    assert "2 of 4 sets are there; 2 made now." in said and said.count("Taken as:") == 1
    assert "'ninety'" in said and "900 cm" in said
    left = r"(under a minute|about \d+ min) left\n"  # Cy's row is refused as it is read, and is waited for by nobody
    assert re.search(rf" 1 of 3 sets, {left}.* 2 of 3 sets, {left}.* 3 of 3 sets\n", said)
    assert sorted(path.name for path in out.iterdir()) == ["01", "02", "index.html", "summary.csv"]
    assert sorted(path.name for path in (out / "01").iterdir()) == [
        "booklet-a4.pdf",
        "pages-a4.pdf",
        "pattern.json",
        RECORD,
    ]
    for name, count in (("booklet-a4.pdf", 6), ("pages-a4.pdf", 2)):  # before the pages one with how to tape them
        with pikepdf.open(out / "01" / name) as pdf:
            assert len(pdf.pages) >= count
    rows = list(csv.DictReader((out / "summary.csv").read_text("utf-8-sig").splitlines()))
    assert [row["state"] for row in rows] == ["Ready to print", "Ready to print", "No set", "No set"]
    assert re.search(r"140 cm .*: \d", rows[0]["Cloth to buy"]) and "W" in rows[0][list(rows[0])[5]]
    assert rows[0]["Width"] != rows[1]["Width"]
    # Nobody is named: not in table, index, records, files or folders.
    for path in out.rglob("*"):
        assert "ada" not in path.name.lower()
        if path.suffix in (".html", ".csv", ".json"):
            assert "Quay" not in path.read_text("utf-8")
        if path.suffix == ".pdf":
            read = pypdfium2.PdfDocument(path)
            words = [*(page.get_textpage().get_text_range() for page in read), *read.get_metadata_dict().values()]
            assert len("".join(words)) > 500 and "Quay" not in "".join(words)
    before = stamps(out)
    assert main(arguments) == 0
    assert "2 sets are there already and stand." in capsys.readouterr().out and stamps(out) == before


@pytest.mark.skipif(not hasattr(os, "sched_setaffinity"), reason="a process is not kept to some cores here")
def test_a_worker_for_each_core_that_may_be_used(pages: Order, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """POSIX knows no such limit; Linux does (sched_setaffinity(2)), and containers and batch systems set it."""
    asked: list[int] = []

    @contextmanager
    def local_of(order: Order, workers: int, progress: object) -> Iterator[Callable[[object], list[object]]]:
        asked.append(workers)
        yield lambda todo: []

    monkeypatch.setattr(run, "local", local_of)
    people, allowed = write(tmp_path, "name,bust\nCy,ninety\n"), os.sched_getaffinity(0)
    run.run_roster(people, pages, tmp_path / "out")
    os.sched_setaffinity(0, {min(allowed)})
    try:
        run.run_roster(people, pages, tmp_path / "out")
        run.run_roster(people, pages, tmp_path / "out", workers=3)
    finally:
        os.sched_setaffinity(0, allowed)
    assert asked == [len(allowed), 1, 3]


def test_what_changed_is_made_again_and_nothing_else(pages: Order, tmp_path: Path) -> None:
    out, people = tmp_path / "out", write(tmp_path)
    assert run_roster(people, pages, out, named=True, workers=1).made == 2
    assert sorted(path.name for path in out.iterdir() if path.is_dir()) == ["01-ada-quay", "02-bo"]
    before = stamps(out)
    people.write_text(CLASS.replace("88,70,95", "90,70,95") + "Ed,100,84,108\n")  # one changed, one new
    (out / "01-ada-quay" / "pages-a4.pdf").write_bytes(b"%PDF damaged")
    made = run_roster(people, pages, out, named=True, workers=1)
    assert (made.made, made.kept) == (3, 0)
    people.write_text(CLASS.replace("88,70,95", "90,70,95"))
    made = run_roster(people, pages, out, named=True, workers=1)
    assert (made.made, made.kept, made.left) == (0, 2, ("05-ed",))
    assert set(stamps(out)) >= set(before)


def test_a_row_refused_now_and_a_form_not_asked_for_leave_nothing_to_cut_from(pages: Order, tmp_path: Path) -> None:
    """The set of a row that became a refused one is told as left; files of an earlier order go with its record."""
    out, people = tmp_path / "out", write(tmp_path, "name,bust\nAda,96\nBo,88\n")
    assert run_roster(people, pages, out, workers=1).left == ()
    assert sorted(path.name for path in (out / "01").iterdir()) == ["pages-a4.pdf", "pattern.json", RECORD]
    (out / "01" / "my notes.txt").write_text("hers")
    people.write_text("name,bust\nAda,96\nBo,ninety\n")
    made = run_roster(people, replace(pages, papers=("letter",)), out, workers=1)
    assert [bool(entry.trouble) for entry in made.entries] == [False, True] and made.left == ("02",)
    names = sorted(path.name for path in (out / "01").iterdir())
    assert names == ["my notes.txt", "pages-letter.pdf", "pattern.json", RECORD]


def test_sets_beside_the_notebook_stand_and_only_data_it_names_counts(tmp_path: Path) -> None:
    notebook = napkin_at(tmp_path, 'mine = "my_sizes.csv"')
    home, order = notebook.parent, Order(notebook, "none")
    people = write(home, "name,bust\nAda,96\n")
    assert run_roster(people, order, home / "sets", workers=1).made == 1
    (home / "evening-list.csv").write_text("name\nBo\n")
    again = run_roster(people, order, home / "sets", workers=1)
    assert (again.made, again.kept) == (0, 1)

    def digest(out: Path) -> str:
        return tasks(parse_people(CLASS), order, people, named=False, label="No. {number}", out=out)[0].digest

    for out in (home / "sets", home, tmp_path):  # nor does the lesson vanish where the sets lie round it
        before = digest(out)
        (out / "summary.csv").write_text(f"made {out}")
        assert digest(out) == before
        (home / "my_sizes.csv").write_text(f"bust {out}")
        assert digest(out) != before


def test_what_a_set_is_made_from_is_known_by_content(notebook: Path, pages: Order, tmp_path: Path) -> None:
    people = parse_people(CLASS)
    told = [
        task.digest
        for task in tasks(people, pages, tmp_path / "t.csv", named=False, label="No. {number}", out=tmp_path)
    ]
    again = [
        task.digest for task in tasks(people, pages, tmp_path / "t.csv", named=True, label="No. {number}", out=tmp_path)
    ]
    assert told == again and len(set(told)) == 4
    other = tasks(
        people, replace(pages, papers=("letter",)), tmp_path / "t.csv", named=False, label="No. {number}", out=tmp_path
    )
    assert other[0].digest != told[0]
    saved = notebook.parent / "pebble-napkin.values.json"
    saved.write_text('{"lesson": "pebble-napkin", "values": {"seam": 12.0}}')
    try:
        moved = tasks(people, pages, tmp_path / "t.csv", named=False, label="No. {number}", out=tmp_path)
        assert moved[0].digest != told[0]
    finally:
        saved.unlink()
    os.utime(notebook)
    assert (
        tasks(people, pages, tmp_path / "t.csv", named=False, label="No. {number}", out=tmp_path)[0].digest == told[0]
    )


@pytest.mark.slow
def test_two_lessons_and_a_broken_cell_are_said_once_and_nothing_is_made(tmp_path: Path) -> None:
    for number, (cell, words) in enumerate(
        [('other = Lesson("Another", start=blank_paper)', "2 lessons"), ("1 / 0", "division by zero")]
    ):
        home = tmp_path / str(number)
        home.mkdir()
        path = napkin_at(home, cell)
        with pytest.raises(KitError, match=words):
            run_roster(write(tmp_path), Order(path, "none"), home / "out", workers=2)
        assert not [each for each in (home / "out").iterdir()]


DEADLY = """
import os
from pathlib import Path
@lesson.step("Sometimes it all ends")
def ends(front, bust_girth):
    '''Look.'''
    if {when}:
        {what}
"""


@pytest.mark.slow
def test_a_body_that_ends_the_kernel_or_never_ends_stops_no_other(tmp_path: Path) -> None:
    deadly = DEADLY.format(when="abs(float(bust_girth) - 880) < 1", what="os._exit(9)")
    path = napkin_at(tmp_path, deadly)
    made = run_roster(write(tmp_path), Order(path, "none"), tmp_path / "out", workers=1)
    assert [bool(entry.trouble) for entry in made.entries] == [False, True, True, True]
    assert "ended the notebook's kernel" in made.entries[1].trouble


@pytest.mark.slow
def test_an_endless_body_is_given_up(tmp_path: Path) -> None:
    endless = DEADLY.format(when="abs(float(bust_girth) - 880) < 1", what="while True: pass")
    path = napkin_at(tmp_path, endless)
    warm = Warm(Order(path, "none", timeout=30))
    try:
        object.__setattr__(warm._order, "timeout", 2)
        with pytest.raises(KitError, match="longer than 2 s"):
            warm.make(Task(2, 3, "No. 2", "02", (("bust_girth", 880.0), ("waist_girth", 700.0))))
        assert not warm.alive
    finally:
        warm.end()


@pytest.mark.slow
def test_a_kernel_that_is_killed_is_replaced_and_its_body_made_again(pages: Order, notebook: Path) -> None:
    todo = [Task(i, i + 1, f"No. {i}", f"{i:02}", (("bust_girth", 900.0 + 10 * i),)) for i in range(1, 4)]
    made: list[int] = []
    with local(pages, 1, lambda line: None) as makes:
        for task, answer in makes(todo):
            assert isinstance(answer, MadeSet)
            made.append(task.number)
            if len(made) == 1:
                crew = makes.__closure__[0].cell_contents  # type: ignore[attr-defined]
                os.kill(crew._kept[-1]._pid, signal.SIGKILL)
    assert sorted(made) == [1, 2, 3]


@pytest.mark.slow
@pytest.mark.skipif(os.name != "posix", reason="sends signals")
def test_interrupted_it_goes_on_where_it_was(pages: Order, notebook: Path, tmp_path: Path) -> None:
    """Killed after its second set: no kernel lives on, and the next run makes the rest and only the rest."""
    psutil = pytest.importorskip("psutil")
    people = write(tmp_path, "name,bust\n" + "".join(f"P{i},{88 + i}\n" for i in range(5)))
    out = tmp_path / "out"
    command = [sys.executable, "-u", "-m", "kit.cli", "roster", str(notebook), str(people), "--out", str(out)]
    running = subprocess.Popen(
        [*command, "--booklet", "none", "--workers", "1"],
        env={**os.environ, "PYTHONPATH": str(ROOT)},
        stdout=subprocess.PIPE,
        text=True,
    )
    assert running.stdout is not None
    for line in running.stdout:
        if "2 of 5 sets" in line:
            break
    kernels = [child.pid for child in psutil.Process(running.pid).children(recursive=True)]
    running.kill()
    running.wait()
    psutil.wait_procs([psutil.Process(pid) for pid in kernels if psutil.pid_exists(pid)], timeout=60)
    assert not [p for p in kernels if psutil.pid_exists(p) and psutil.Process(p).status() != psutil.STATUS_ZOMBIE]
    whole = {path.parent.name: path.stat().st_mtime_ns for path in out.glob(f"*/{RECORD}")}
    assert len(whole) >= 2
    made = run_roster(people, pages, out, workers=1)
    assert made.made + made.kept == 5 and made.kept >= len(whole)
    assert {name: (out / name / RECORD).stat().st_mtime_ns for name in whole} == whole


def test_table_and_index_hold_what_is_dangerous_harmless() -> None:
    entry = RowReport(
        1, 2, "No. 1", "01", "<b>Top", ("pages-a4.pdf",), ("=1+1",), ("<script>",), finished=(("@x", "1"),)
    )
    people = parse_people("name,bust,<i>shoes\nAda,96,38\n")
    for language in languages():
        with speaking(language):
            text, page = (
                table(
                    [entry],
                ),
                index([entry, replace(entry, trouble="-x", number=2)], people),
            )
            assert "'=1+1" in text and "'@x" in text
            assert "<script>" not in page and "<b>" not in page and "<i>" not in page and f'lang="{language}"' in page
            assert told_left(30) and "3" in told_left(170) and "10" in told_left(7800)


def test_unknown_forms_papers_and_notebooks_are_refused_before_anything_runs(notebook: Path, tmp_path: Path) -> None:
    people = write(tmp_path)
    for order, words in (
        (Order(notebook, "a44"), "a4"),
        (Order(notebook, "none", ("a44",)), "a44"),
        (Order(notebook.with_name("pebbel_top.ipynb"), "none"), "there is no notebook"),
    ):
        with pytest.raises(KitError, match=words):
            run_roster(people, order, tmp_path / "out", workers=1)
    with pytest.raises(KitError, match="no such file"):
        run_roster(tmp_path / "none.csv", Order(notebook, "none"), tmp_path / "out")


def test_the_record_is_json_of_the_kit_alone(pages: Order, tmp_path: Path) -> None:
    assert json.loads(pages.text())["booklet"] == "none" and Order.read(pages.text()) == pages
    assert issubclass(Lost, Exception)
