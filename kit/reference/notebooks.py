"""The two reference notebooks, made from the entries: `python -m kit.reference.notebooks` writes them.

Every verb has a cell of text and a cell of code that runs its example on a practice lesson. A test fails when a verb is
missing, or when a notebook is older than the verbs it tells of.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Any

from kit.atomic import write_atomically
from kit.language import speaking
from kit.reference.blocks import BLOCKS, SIZE, block_tables
from kit.reference.entry import VerbEntry, entries, groups, trade_words
from kit.reference.measurements import measurements_table
from kit.reference.verb_help import told, written
from kit.resources import examples

_ARTICLE = re.compile("^(an?|the) ")
_DATA = Path(__file__).parent / "data"
_TITLES = {"drafting": "Reference: drafting", "sewing": "Reference: sewing"}
_HEADS = {
    "drafting": "Every verb of a point, line, piece and strip: what it is for and is told, an example that runs, the "
    "picture it makes and what it refuses.",
    "sewing": "Every operation of a sewing step, and how a part of an edge is named: what it is for and is told, an "
    "example that runs, what it says, the picture it makes and what it refuses.",
}
_PRACTICE = {
    "drafting": "`practice_paper` gives a fresh lesson to try a verb on: front and back of a bodice in the workshop's "
    "size W4 and a pocket. What an example only finds is drawn in its last line, so that it is seen.",
    "sewing": "`practice_cloth` gives a fresh lesson to try an operation on: a sampler of pieces, sewn as far as the "
    "operation needs. Each cell is read as you would write it in a lesson of your own.",
}

_BLOCKS = (
    f"What a step may name on each block, read from the block itself in size {SIZE}: lengths in cm, places in brackets "
    "as cm out from the centre line and up from the waistline. Edges run in this order round the piece, each from the "
    "end of the one before it. A rounder or straighter figure has darts more or fewer, of the same names. "
    "`lessonkit help trouser_block` says the same in a terminal."
)
_MEASUREMENTS = (
    "What a step, a finished measurement or a value that follows from the body asks for by name, and what a size chart "
    "of your own may list. Most have the names of ISO 8559-1. What is not here a lesson brings itself with "
    "`lesson.measurement`. `lessonkit help measurements` says the same in a terminal."
)


def file_of(part: str) -> Path:
    """The notebook's file beside the example lessons."""
    return examples() / f"reference_{part}.ipynb"


def reference(part: str) -> str:
    """The text of the notebook of `part`, "drafting" or "sewing"."""
    with speaking("en"):
        cells = list(_cells(part))
    book: dict[str, Any] = {
        "cells": cells,
        "metadata": {
            "kernelspec": {"display_name": "Python 3 (ipykernel)", "language": "python", "name": "python3"},
            "language_info": {"name": "python"},
        },
        "nbformat": 4,
        "nbformat_minor": 5,
    }
    return json.dumps(book, indent=1, ensure_ascii=False) + "\n"


def _cells(part: str) -> Iterator[dict[str, Any]]:
    other = "sewing" if part == "drafting" else "drafting"
    paper = "practice_paper" if part == "drafting" else "practice_cloth"
    yield _text(
        "title",
        f"# {_TITLES[part]}",
        _HEADS[part],
        f"{_PRACTICE[part]} The same entries stand where you work: `lessonkit help set_band` in a terminal, "
        '`lesson.help("set_band")` in a cell, Shift-Tab behind a verb. '
        f"The other half: [{_TITLES[other].lower()}](reference_{other}.ipynb).",
        "This notebook is made from the verbs themselves; run a cell to see its picture.",
    )
    yield _text("index", "## By what you want", "\n".join(_index(part)))
    yield _text("offers", "## What offers what", (_DATA / f"offers_{part}.md").read_text(encoding="utf-8").strip())
    refusals = (_DATA / "refusals.md").read_text(encoding="utf-8").strip().splitlines()
    yield _text("refusals", f"## {refusals[0]}", "\n".join(refusals[1:-1]), refusals[-1])
    if part == "drafting":
        yield _text(
            "blocks", "## Blocks to start from", _BLOCKS, *(one for name in BLOCKS for one in block_tables(name))
        )
        yield _text("measurements", "## Body measurements", _MEASUREMENTS, measurements_table())
    yield _code("import", f"from kit import cm, inch, mm, {paper}")
    for group in groups(part):
        yield _text(f"group-{_id(group.title)}", f"## {group.title}", group.says, _contents(group.keys))
        for key in group.keys:
            entry = entries()[key]
            yield _text(f"about-{_id(key)}", *_about(entry))
            yield _code(_id(key), entry.cell)


def _index(part: str) -> Iterator[str]:
    here = {key for group in groups(part) for key in group.keys}
    for words, keys in sorted(trade_words().items(), key=lambda row: _ARTICLE.sub("", row[0].lower())):
        links = [_link(key, "" if key in here else part) for key in keys]
        if here & set(keys):
            yield f"- {words}: {', '.join(links)}"


def _link(key: str, away_from: str = "") -> str:
    other = {"drafting": "reference_sewing.ipynb", "sewing": "reference_drafting.ipynb", "": ""}[away_from]
    return f"[{key}]({other}#{key.replace(' ', '-')})"


def _contents(keys: tuple[str, ...]) -> str:
    return "\n".join(f"- {_link(key)}: {entries()[key].verb.line}" for key in keys)


def _about(entry: VerbEntry) -> Iterator[str]:
    """The paragraphs of an entry."""
    verb = entry.verb
    yield f"### {entry.key}"
    yield verb.words
    if verb.arguments:
        rows = [f"| `{written(argument)}` | {told(argument, verb)} |" for argument in verb.arguments]
        yield "\n".join(["| told | what |", "| --- | --- |", *rows])
    says = entry.says()
    if says:
        yield f"{'Its picture shows' if entry.drafts else 'It says'}: *{' '.join(says)}*"
    if refuses := entry.refuses:
        yield "It refuses:\n\n" + "\n".join(f"- {text}" for text in refuses)


def _id(text: str) -> str:
    return "".join(one if one.isalnum() else "-" for one in text.lower())[:58].strip("-")


def _text(name: str, *parts: str) -> dict[str, Any]:
    return {"cell_type": "markdown", "id": name, "metadata": {}, "source": _lines("\n\n".join(p for p in parts if p))}


def _code(name: str, text: str) -> dict[str, Any]:
    return {
        "cell_type": "code",
        "execution_count": None,
        "id": name,
        "metadata": {},
        "outputs": [],
        "source": _lines(text),
    }


def _lines(text: str) -> list[str]:
    return text.splitlines(keepends=True)


def stale() -> Mapping[Path, str]:
    """The notebooks that differ from what the verbs say now, with the text they should have."""
    found = {file_of(part): reference(part) for part in _TITLES}
    return {path: text for path, text in found.items() if not path.is_file() or path.read_text("utf-8") != text}


def main() -> None:
    """Write the notebooks."""
    for part in _TITLES:
        print(write_atomically(file_of(part), reference(part)))


if __name__ == "__main__":
    main()
