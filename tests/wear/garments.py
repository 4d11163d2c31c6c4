"""The garments of `data/garments.toml`, `moved.toml`, `cut_on.toml` and `newer.toml`: each the text of an example
lesson's notebook, or of a short lesson in `lessons/`, with a small change, worked."""

from __future__ import annotations

import json
import re
import tomllib
from collections import Counter
from collections.abc import Iterator, Mapping
from functools import cache
from pathlib import Path
from typing import Any, NamedTuple

from kit.lesson.lesson import Lesson
from kit.lesson.where import acting
from tests.example import EXAMPLE

HERE = Path(__file__).parent
_SHOWN = re.compile(r"^(panel|canvas|player|exercise)\(", re.MULTILINE)


class Labelled(NamedTuple):
    """One garment of the list: the `base` it changes, its `number` there from 1, whether it can be `worn`, and why."""

    base: str
    number: int
    worn: bool
    why: str
    changes: tuple[tuple[str, str], ...]

    @property
    def name(self) -> str:
        return f"{self.base}-{self.number}"


def labelled() -> Iterator[Labelled]:
    numbers: Counter[str] = Counter()
    for file in ("garments.toml", "moved.toml", "cut_on.toml", "newer.toml"):
        data: Mapping[str, list[dict[str, Any]]] = tomllib.loads((HERE / "data" / file).read_text(encoding="utf-8"))
        for base, rows in data.items():
            for row in rows:
                numbers[base] += 1
                changes = tuple((each["out"], each["put"]) for each in (row, *row.get("more", ())))
                yield Labelled(base, numbers[base], row["worn"], row["why"], changes)


@cache
def text_of(base: str) -> tuple[Path, str]:
    """Where a lesson stands, and its text: the code of a notebook that shows nothing, or a short lesson's file."""
    short = HERE / "lessons" / f"{base}.py"
    if short.exists():
        return short, short.read_text(encoding="utf-8")
    file = EXAMPLE.with_name(f"{base}.ipynb")
    cells = json.loads(file.read_text(encoding="utf-8"))["cells"]
    sources = ["".join(cell["source"]) for cell in cells if cell["cell_type"] == "code"]
    return file, "\n\n".join(source for source in sources if not _SHOWN.search(source))


def lesson_of(base: str, changes: tuple[tuple[str, str], ...] = ()) -> Lesson:
    """The lesson of that text with its changes, each of which stands there once."""
    file, text = text_of(base)
    for out, put in changes:
        assert text.count(out) == 1, (base, text.count(out), out)
        text = text.replace(out, put)
    names: dict[str, Any] = {"__name__": "__lesson__"}
    with acting(opening=(file,)):
        exec(compile(text, str(file), "exec"), names)
    lesson = names["lesson"]
    assert isinstance(lesson, Lesson)
    return lesson
