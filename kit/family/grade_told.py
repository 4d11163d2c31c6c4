"""A grade in words: the table of measures and steps, what stays the same, and where a step is uneven."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise
from typing import Any

from kit.booklet.html import environment
from kit.family.edition import Edition
from kit.family.grading import GradeRow, Grading, Uneven
from kit.family.telling import capital, measure_called
from kit.language import language, say
from kit.rulers import reading
from kit.units import Style, System, both, marked, plain, unitless
from kit.wording.lists import listed

FORMAT = "pattern-lesson-kit grade"
VERSION = 1


@dataclass(frozen=True)
class GradeTold:
    """A grade as it is read: the sizes over `rows` of (what is measured, (value, step from the size before) for each
    size), lengths in one system, named in `unit`; `same` says what is the same in every size; `uneven` are sentences,
    those that follow from the body's own measurements in `follows`."""

    title: str
    unit: str
    sizes: tuple[str, ...]
    rows: tuple[tuple[str, tuple[tuple[str, str], ...]], ...]
    same: tuple[str, ...]
    uneven: tuple[str, ...]
    follows: tuple[str, ...]
    breaks: str


def grade_told(found: Grading, edition: Edition, system: System) -> GradeTold:
    """The grade in the language spoken now; `edition` is one of its sizes, which calls things by their names."""
    moving = [row for row in found.rows if not row.same]
    still = [row for row in found.rows if row.same]
    return GradeTold(
        say("family.grade", title=found.title),
        say("family.grade_unit", unit=system),
        found.sizes,
        tuple((row_called(row, edition), tuple(_cells(row, system))) for row in moving),
        tuple(f"{row_called(row, edition)}: {_value(row, system)}" for row in still if row.of != "cut"),
        tuple(_sentence(found, each, edition, system) for each in found.uneven if not each.follows),
        tuple(_sentence(found, each, edition, system) for each in found.uneven if each.follows),
        say("family.grade_breaks", sizes=listed(list(found.breaks))) if found.breaks else "",
    )


def lines(page: GradeTold) -> Iterator[str]:
    """The grade as lines of text, for a terminal."""
    yield f"{page.title}, {page.unit}"
    if page.breaks:
        yield page.breaks
    yield ""
    wide = max([len(name) for name, _ in page.rows] or [0])
    widths = [
        max(len(size), *(len(text) for _, cells in page.rows for text in cells[number]), 0)
        for number, size in enumerate(page.sizes)
    ]
    yield " " * wide + "".join(f"  {size:>{width}}" for size, width in zip(page.sizes, widths, strict=True))
    for name, cells in page.rows:
        for part, head in ((0, name), (1, "")):
            texts = [f"  {cell[part]:>{width}}" for cell, width in zip(cells, widths, strict=True)]
            yield (f"{head:<{wide}}" + "".join(texts)).rstrip()
    if page.same:
        yield ""
        yield say("family.grade_same")
        yield from (f"  {text}" for text in page.same)
    yield ""
    yield from page.uneven or (say("family.grade_even"),)
    if page.follows:
        yield say("family.grade_follows")
        yield from (f"  {text}" for text in page.follows)


def grade_html(page: GradeTold, system: System) -> str:
    """The grade as a page to print, the wide side across: A4, or Letter where inches are read."""
    paper = "A4 landscape" if system == "cm" else "Letter landscape"
    return environment().get_template("grade.html.j2").render(page=page, language=language(), paper=paper)


def grade_csv(found: Grading, edition: Edition) -> str:
    """The grade for a spreadsheet: a row for each measure, mm to a hundredth (counts whole), sizes as columns."""
    out = io.StringIO()
    table = csv.writer(out, lineterminator="\r\n")
    table.writerow(["measure", "of", "piece", *found.sizes])
    for row in found.rows:
        values = ["" if value is None else round(value, 2) for value in row.values]
        # A name that begins like a formula would be one in a spreadsheet.
        names = [f"'{text}" if text[:1] in "=+-@" else text for text in (row_called(row, edition), row.of, row.piece)]
        table.writerow([*names, *values])
    return out.getvalue()


def grade_json(found: Grading) -> dict[str, Any]:
    """The grade as plain data, lengths in mm to a thousandth: format, version, unit, lesson, sizes, breaks; rows
    [{of, name, piece, kind, values}]; uneven [{of, name, piece, size, why, step, usual, follows}]."""
    return {
        "format": FORMAT,
        "version": VERSION,
        "unit": "mm",
        "lesson": found.title,
        "sizes": list(found.sizes),
        "breaks": list(found.breaks),
        "rows": [
            {**_row(row), "kind": row.kind, "values": [_round(value) for value in row.values]} for row in found.rows
        ],
        "uneven": [
            {
                **_row(each.row),
                "size": found.sizes[each.at],
                "why": each.why,
                "step": _round(each.step),
                "usual": _round(each.usual),
                "follows": each.follows,
            }
            for each in found.uneven
        ],
    }


def grade_text(found: Grading) -> str:
    """`grade_json` as text."""
    return json.dumps(grade_json(found), ensure_ascii=False, indent=1, allow_nan=False) + "\n"


def _row(row: GradeRow) -> dict[str, str]:
    return {"of": row.of, "name": row.name, "piece": row.piece}


def _round(value: float | None) -> float | None:
    return None if value is None else round(value, 3) + 0.0


# ---- words -------------------------------------------------------------------------------------------------


def row_called(row: GradeRow, edition: Edition) -> str:
    """What a row is called: "Back, side seam: length along the stitch line"."""
    name = measure_called(row.of, row.name, row.piece, (edition,))
    titles = [piece.title for piece in edition.pieces if piece.name == row.piece]
    return say("family.of_piece", piece=titles[0], name=name) if titles else name


def _cells(row: GradeRow, system: System) -> Iterator[tuple[str, str]]:
    """Each value and the step that leads to it, as they read: value after value adds up."""
    if row.kind == "count":
        shown: list[int | None] = [None if value is None else round(value) for value in row.values]
    else:
        style: Style = "finished" if row.of == "finished" else "draft"
        shown = [None if value is None else reading(value, system, style)[system] for value in row.values]
    for before, mark in pairwise([None, *shown]):
        value = "–" if mark is None else _mark(row, mark, system)
        step = "" if mark is None or before is None else _mark(row, abs(mark - before), system)
        yield value, step and _sign(mark or 0, before or 0) + step


def _sign(value: float, before: float = 0.0) -> str:
    return "+" if value > before else "−" if value < before else ""


def _mark(row: GradeRow, mark: int, system: System) -> str:
    if row.kind == "count":
        return str(mark)
    if system == "cm":  # all of a table in cm, the small ones too: a column is read down
        return plain(mark / 10)
    return unitless(marked(mark, system)) if mark else "0"


def _value(row: GradeRow, system: System) -> str:
    value = row.values[0]
    assert value is not None
    return f"{value:.0f}" if row.kind == "count" else both(value, system)


def _sentence(found: Grading, each: Uneven, edition: Edition, system: System) -> str:
    size, before = found.sizes[each.at], found.sizes[each.at - 1]
    given = {"name": capital(row_called(each.row, edition)), "before": before, "size": size}
    if each.why == "missing":
        return say("family.grade_missing", given)
    count = each.row.kind == "count"

    def signed(value: float) -> str:
        return _sign(value) + (f"{abs(value):.0f}" if count else both(abs(value), system))

    if each.why == "off":
        given |= {"way": "above" if each.step > 0 else "below", "by": signed(each.step).lstrip("+−")}
        return _because(say("family.grade_off", {**given, "after": found.sizes[each.at + 1]}), each)
    given |= {"step": signed(each.step), "usual": signed(each.usual)}
    return _because(say(f"family.grade_{each.why}", given), each)


def _because(text: str, each: Uneven) -> str:
    """The sentence, and the measurement of the body that does the same there."""
    if not each.follows:
        return text
    return f"{text} {say('family.grade_because', name=measure_called('body', each.follows, '', ()))}"
