"""Comparisons and grades as files: a page to print, pictures, tables and plain data."""

from __future__ import annotations

import json
import tempfile
from pathlib import Path
from typing import Any

from kit.booklet.forms import PX, PictureRoom
from kit.booklet.html import environment
from kit.booklet.pictures import Inks, picture
from kit.booklet.typeset import set_in_type
from kit.family.compared import Comparison, Difference
from kit.family.edition import Edition
from kit.family.grade_told import GradeTold, grade_csv, grade_html, grade_text
from kit.family.grading import Grading
from kit.family.telling import ToldComparison
from kit.language import language
from kit.lesson.moved import differences
from kit.picture.svg_pen import svg
from kit.units import System

FORMAT = "pattern-lesson-kit comparison"
VERSION = 1
_ROOM = PictureRoom(170 * PX, 112 * PX)
_PAPERS: dict[System, str] = {"cm": "A4", "inch": "Letter"}


def comparison_files(found: Comparison, page: ToldComparison, system: System) -> dict[str, bytes]:
    """comparison.pdf, comparison.json, and for every piece that moved a picture piece-NAME.svg. The page is on A4, or
    on Letter where inches are read first."""
    made = {"comparison.pdf": _pdf(comparison_html(page, system), "comparison")}
    text = json.dumps(comparison_json(found), ensure_ascii=False, indent=1, allow_nan=False) + "\n"
    made["comparison.json"] = text.encode()
    for told, piece in zip(page.pieces, found.pieces, strict=True):
        if told.drawing is not None:
            made[f"piece-{piece.name.replace('_', '-')}.svg"] = svg(told.drawing).encode()
    return made


def comparison_html(page: ToldComparison, system: System) -> str:
    """The comparison as a page to print."""
    pieces = [
        (told, told.drawing and picture(told.drawing, f"piece-{number}", _ROOM, Inks(), told.drawing.title))
        for number, told in enumerate(page.pieces, 1)
    ]
    template = environment().get_template("compared.html.j2")
    return template.render(page=page, pieces=pieces, language=language(), paper=_PAPERS[system])


def comparison_json(found: Comparison) -> dict[str, Any]:
    """The comparison as plain data, lengths in mm to a thousandth:

    format, version, unit         "pattern-lesson-kit comparison", 1, "mm"
    before, after                 title, edition, date, size
    measures                      [{of, name, kind, before, after}]   null where one edition has none
    pieces                        [{name, title, state, measures, shifts: [{edge, place, across, up, size}]}]
    steps                         [{key, kind, title, state, was, now}]   sentences that only one edition has
    notions                       {was, now}
    """
    return {
        "format": FORMAT,
        "version": VERSION,
        "unit": "mm",
        "before": _named(found.before),
        "after": _named(found.after),
        "measures": [_measure(each) for each in found.measures],
        "pieces": [
            {
                "name": piece.name,
                "title": piece.title,
                "state": piece.state,
                "measures": [_measure(each) for each in piece.differences],
                "shifts": [
                    {
                        "edge": shift.edge,
                        "place": shift.place,
                        "across": _round(shift.dx),
                        "up": _round(shift.dy),
                        "size": _round(shift.size),
                    }
                    for shift in differences(found.before, found.after, piece.name)
                ],
            }
            for piece in found.pieces
        ],
        "steps": [
            {
                "key": step.key,
                "kind": step.kind,
                "title": step.title,
                "state": step.state,
                "was": list(step.before),
                "now": list(step.after),
            }
            for step in found.steps
        ],
        "notions": {"was": list(found.notions[0]), "now": list(found.notions[1])},
    }


def grade_files(found: Grading, page: GradeTold, edition: Edition, system: System) -> dict[str, bytes]:
    """grade.pdf, grade.csv and grade.json. The page lies on its side, on A4 or, for inches, on Letter."""
    return {
        "grade.pdf": _pdf(grade_html(page, system), "grade"),
        "grade.csv": grade_csv(found, edition).encode("utf-8-sig"),  # so that a spreadsheet knows its letters
        "grade.json": grade_text(found).encode(),
    }


def _pdf(html: str, name: str) -> bytes:
    """A page set in type; it may read no file."""
    with tempfile.TemporaryDirectory(prefix="lessonkit-") as folder:
        return set_in_type(html, Path(folder), Path(folder), name).pdf


def _named(edition: Edition) -> dict[str, str]:
    return {"title": edition.title, "edition": edition.edition, "date": edition.date, "size": edition.size}


def _measure(found: Difference) -> dict[str, Any]:
    before, after = (None if value is None else _round(value) for value in (found.before, found.after))
    return {"of": found.of, "name": found.name, "kind": found.kind, "before": before, "after": after}


def _round(value: float) -> float:
    return round(float(value), 3) + 0.0
