"""A bad day, rehearsed: whatever happens, a person is told in words, and nothing is lost.

`make test` rehearses one fault of each kind; `make bad-days` all of them, and writes what was read into `bad_days.md`
beside this file (`-k Kernel`: its rows alone).
"""

from __future__ import annotations

import os
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from . import builds, classes, lessons, many
from .day import FAULTS, Day, Fault

WHOLE = bool(os.environ.get("KIT_BAD_DAYS"))
TABLE = Path(__file__).with_name("bad_days.md")
HEAD = """# Bad days, rehearsed

What happens, what the user reads, and what is kept. Written by `make bad-days`, which makes each of them happen;
nothing was lost in any. "(nothing ...)" stands where there is nothing to read. FOLDER is the folder it happened in.

| where | what happens | what the user reads | what is kept |
| --- | --- | --- | --- |
"""
REHEARSED = [fault for fault in FAULTS if WHOLE or fault.quick]
pytestmark = pytest.mark.skipif(os.name != "posix", reason="sends signals")


NOT_YET = "(not rehearsed yet)"


def recorded() -> dict[tuple[str, str], str]:
    """What the table says was read, by where it was and what happened."""
    lines = TABLE.read_text("utf-8").splitlines() if TABLE.is_file() else []
    rows = [line.removeprefix("| ").split(" | ") for line in lines if line.startswith("| ")][2:]
    return {(row[0], row[1]): row[2] for row in rows}


@pytest.fixture(scope="module")
def told() -> Iterator[dict[tuple[str, str], str]]:
    """What was read of each fault; by hand it goes into the table."""
    found: dict[tuple[str, str], str] = {}
    yield found
    if WHOLE:
        read = recorded() | found
        rows = [(f.kind, f.what, read.get((f.kind, f.what), NOT_YET), f.kept) for f in FAULTS]
        text = HEAD + "".join("| " + " | ".join(cell.replace("|", "/") for cell in row) + " |\n" for row in rows)
        TABLE.write_text(text, encoding="utf-8")


@pytest.mark.parametrize("fault", REHEARSED, ids=lambda fault: f"{fault.kind}: {fault.what}")
def test_nothing_is_lost_and_it_is_said_in_words(
    fault: Fault, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, told: dict[tuple[str, str], str]
) -> None:
    day = Day(tmp_path, monkeypatch)
    text = fault.do(day)
    assert text and "Traceback" not in text and "NEXT BUILD" not in text, text
    assert "\n" not in text, text
    assert day.lost() == []
    told[fault.kind, fault.what] = re.sub(r"\s+", " ", text)


def test_the_table_tells_of_every_fault_and_of_forty_at_least() -> None:
    assert len(FAULTS) >= 40 and len({(fault.kind, fault.what) for fault in FAULTS}) == len(FAULTS)
    assert all(module.__doc__ for module in (builds, lessons, many, classes))
    assert {fault.kind for fault in FAULTS} == {f.kind for f in FAULTS if f.quick} | {"Worker"}
    if WHOLE:
        return  # it is being written
    table = recorded()
    assert list(table) == [(fault.kind, fault.what) for fault in FAULTS] and NOT_YET not in table.values()
