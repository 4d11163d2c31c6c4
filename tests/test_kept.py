"""What is kept for other files of tests is made once, and anew when what it is made from has changed."""

from __future__ import annotations

from pathlib import Path

import pytest

import tests.kept as keeper
from tests.kept import keeping, kept


def test_it_is_made_once_for_a_name_and_its_files(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(keeper, "_folder", [])
    source, made = tmp_path / "lesson.txt", []

    def make() -> list[int]:
        made.append(len(made))
        return [len(made)]

    source.write_text("one")
    assert [kept("number", (source,), make) for _ in range(2)] == [[1], [2]]  # nothing is kept outside
    with keeping(tmp_path / "kept"):
        first = kept("number", (source,), make)
        assert first == [3]
        first.append(9)
        assert kept("number", (source,), make) == [3]  # what one file of tests does to it no other sees
        assert kept("another", (source,), make) == [4]
        source.write_text("two")
        assert kept("number", (source,), make) == [5]
    assert len(made) == 5


def test_what_breaks_is_not_kept(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(keeper, "_folder", [])
    with keeping(tmp_path / "kept"):
        with pytest.raises(ZeroDivisionError):
            kept("share", (), lambda: 1 // 0)
        assert kept("share", (), lambda: 1) == 1
