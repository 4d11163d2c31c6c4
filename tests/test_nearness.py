"""Trials of small faults (tests/bench): the nearest tests run first, and a file that fails anyway proves nothing."""

from __future__ import annotations

import importlib
from collections.abc import Sequence
from pathlib import Path
from types import ModuleType

import pytest

HAND = "kit/lesson/hand.py"
FILES = {
    HAND: "LESS = 1 < 2\n",
    "tests/conftest.py": "",
    "tests/lesson/test_hand.py": "",
    "tests/lesson/test_hand_told.py": "",
    "tests/lesson/test_handle.py": "",
    "tests/lesson/test_bench.py": "from kit.lesson.hand import ends_of\n",
    "tests/lesson/test_moves.py": "def test_it():\n    from kit.lesson import hand\n",
    "tests/lesson/test_other.py": "import kit.lesson.handle\n",
    "tests/picture/test_order.py": "import kit.lesson.hand\n",
    "tests/browser/test_hand.py": "import kit.lesson.hand\n",
}
NEAREST = ("tests/lesson/test_hand.py", "tests/lesson/test_hand_told.py")
IMPORTING = ("tests/lesson/test_moves.py", "tests/lesson/test_bench.py")
REST = ("tests/lesson/test_handle.py", "tests/lesson/test_other.py")
SECONDS = {"tests/lesson/test_bench.py": 9.0, "tests/lesson/test_hand.py": 4.0}


@pytest.fixture
def trials(root: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> ModuleType:
    """tests/bench/trials.py, at work in a folder with a few files."""
    monkeypatch.syspath_prepend(root / "tests" / "bench")
    module = importlib.import_module("trials")
    monkeypatch.setattr(module, "ROOT", tmp_path)
    monkeypatch.setattr(module, "KEPT", tmp_path / "out")
    for name, text in FILES.items():
        (tmp_path / name).parent.mkdir(parents=True, exist_ok=True)
        (tmp_path / name).write_text(text)
    return module


class Bench:
    """Runs no test, but fails those of `always`, and those of `noticing` when the module is changed."""

    def __init__(self, trials: ModuleType, *, always: Sequence[str] = (), noticing: Sequence[str] = ()) -> None:
        self.trials, self.folder = trials, trials.ROOT
        self.always, self.noticing, self.endless = always, noticing, ""
        self.crowded = ""
        self.plain: list[str] = []
        self.changed: list[str] = []

    def run(self, files: Sequence[str], most: float, *options: str) -> object:
        changed = (self.folder / HAND).read_text() != FILES[HAND]
        assert ("-x" in options) == changed  # a trial ends with the first failure, a first look sees them all
        (self.changed if changed else self.plain).extend(files)
        if self.endless in files:
            done = files[: files.index(self.endless) + 1]
            return self.trials.Ran("late", (), {file: SECONDS.get(file, 1.0) for file in done}, self.endless, ())
        if self.crowded in files and len(files) > 1 and changed:
            return self.trials.Ran("failed", (f"{self.crowded}::test_it",), {}, self.crowded, ())
        failed = tuple(f"{f}::test_it" for f in files if f in self.always or (changed and f in self.noticing))
        seconds = {file: SECONDS.get(file, 1.0) for file in files}
        return self.trials.Ran("failed" if failed else "passed", failed, seconds, files[-1], ())

    def load(self, modules: Sequence[str]) -> None:
        pass


def attempt(trials: ModuleType, bench: Bench, within: float = 60.0) -> tuple[str, str]:
    mutant = trials.Mutant(HAND, "core/ReplaceComparisonOperator_Lt_Gt", 0, 1)
    found = trials.tried(mutant, bench, trials.Unchanged(300.0), trials.Reach(within, 300.0))
    assert (bench.folder / HAND).read_text() == FILES[HAND]
    assert (found.was, found.becomes) == ("LESS = 1 < 2", "LESS = 1 > 2")
    return found.outcome, found.by


def test_the_name_comes_first_then_who_imports_it_then_the_folder(trials: ModuleType) -> None:
    order = trials.rounds(trials.ROOT, HAND, lambda file: SECONDS.get(file, 1.0))
    assert [(each.files, each.near) for each in order] == [
        (NEAREST, True),
        (IMPORTING, True),  # the quickest first
        (("tests/picture/test_order.py",), False),
        (REST, False),
    ]
    order = trials.rounds(trials.ROOT, HAND, lambda file: 1.0, ["test_hand", "test_order"])
    assert [each.files for each in order] == [NEAREST[1:], IMPORTING[::-1], REST]


def test_what_many_import_is_tried_by_its_own_folder_first(trials: ModuleType) -> None:
    for number in range(8):
        (trials.ROOT / f"tests/picture/test_{number}.py").write_text("from kit.lesson import hand\n")
    order = trials.rounds(trials.ROOT, HAND, lambda file: 1.0)
    assert [len(each.files) for each in order] == [2, 2, 2, 8, 1]
    assert order[2].files == REST


def test_a_trial_ends_with_the_first_round_that_fails(trials: ModuleType) -> None:
    bench = Bench(trials, noticing=["tests/lesson/test_moves.py", *REST])
    assert attempt(trials, bench) == ("caught", "tests/lesson/test_moves.py::test_it")
    # How long each takes is not known yet; the one that failed is run alone as well, with the change and without.
    assert bench.plain == bench.changed == [*NEAREST, *sorted(IMPORTING), "tests/lesson/test_moves.py"]


def test_a_file_that_fails_without_the_change_has_noticed_nothing(trials: ModuleType) -> None:
    bench = Bench(trials, always=NEAREST)
    assert attempt(trials, bench) == ("survived", "")
    assert not set(bench.changed) & set(NEAREST)
    assert set(trials.Unchanged(300.0).failing()) == set(NEAREST)


def test_each_file_is_run_unchanged_once_until_the_tree_changes(trials: ModuleType) -> None:
    bench = Bench(trials)
    attempt(trials, bench)
    assert len(bench.plain) == len(set(bench.plain)) == 7
    attempt(trials, bench)
    assert len(bench.plain) == 7 and len(bench.changed) == 14
    (trials.ROOT / NEAREST[0]).write_text("# another test\n")
    attempt(trials, bench)
    assert bench.plain[7:] == [NEAREST[0]]
    (trials.ROOT / "kit/lesson/moves.py").write_text("")
    attempt(trials, bench)
    assert len(bench.plain) == 15


def test_far_files_are_tried_as_long_as_there_is_time(trials: ModuleType) -> None:
    bench = Bench(trials)
    assert attempt(trials, bench, within=15.5) == ("survived", "")
    assert bench.changed == [*NEAREST, *sorted(IMPORTING)]  # 4 + 1 + 1 + 9 s: nothing far fits into what is left
    bench.changed.clear()
    attempt(trials, bench, within=8.0)
    assert bench.changed == [*NEAREST, "tests/lesson/test_moves.py", "tests/picture/test_order.py", REST[0]]


def test_a_file_without_end_is_left_out_and_those_before_it_are_known(trials: ModuleType) -> None:
    bench = Bench(trials)
    bench.endless = REST[0]
    assert attempt(trials, bench) == ("survived", "")
    assert bench.plain[-4:] == [*REST, *REST]  # both, the endless one alone as nothing else ended, the other
    assert REST[1] in bench.changed and REST[0] not in bench.changed
    bench.endless = NEAREST[1]
    (trials.ROOT / "kit/lesson/moves.py").write_text("")
    bench.plain.clear()
    attempt(trials, bench)
    assert bench.plain[:3] == [*NEAREST, NEAREST[1]]
    assert set(trials.Unchanged(300.0).failing()) == {NEAREST[1]}


def test_a_file_that_fails_only_in_company_has_noticed_nothing(trials: ModuleType) -> None:
    bench = Bench(trials, noticing=[REST[1]])
    bench.crowded = IMPORTING[0]
    assert attempt(trials, bench) == ("caught", f"{REST[1]}::test_it")
    assert bench.changed[2:6] == [*sorted(IMPORTING), IMPORTING[0], IMPORTING[1]]
