"""The worksheet for drafting by hand, as the booklet prints it: points, lines and curves of each step in numbers."""

from __future__ import annotations

from collections.abc import Mapping

from kit.booklet.forms import Form
from kit.booklet.model import SheetPiece, SheetStep, Table
from kit.booklet.pictures import Inks, picture
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.guide_points import guide_drawing
from kit.prose.worksheet import PieceSheet, SheetLine, SheetPoint, worksheet

_MANY = 8
"""Letters on one piece from which on its picture is larger."""


def worksheets(pattern: Pattern, numbers: Mapping[str, int], form: Form, inks: Inks) -> tuple[SheetStep, ...]:
    """Every step of the draft in the reader's own numbers; `numbers` are those of the steps by key."""
    found = []
    for step in worksheet(pattern):
        pieces = tuple(
            _piece(sheet, f"sheet-{step.key}-{sheet.piece.name}", pattern, form, inks) for sheet in step.sheets
        )
        number = numbers.get(step.key, 0)
        found.append(SheetStep(number, step.key if number else "", step.title, pieces, step.strips))
    return tuple(found)


def _piece(sheet: PieceSheet, name: str, pattern: Pattern, form: Form, inks: Inks) -> SheetPiece:
    shown = None
    if sheet.points or sheet.lines or sheet.notes:
        # Many letters need room: a block's page is read with the finger on the picture.
        share = (1.15 if len(sheet.points) > _MANY else 0.8) if form.beside else 0.6
        shown = picture(guide_drawing(sheet, pattern.lesson.units), name, form.step.times(share), inks)
    return SheetPiece(
        sheet.piece.title,
        tuple(text for text in (sheet.origin, sheet.rubbed) if text),
        tuple((point.letter, _where(point)) for point in sheet.points),
        tuple(line.words for line in sheet.lines if line.kind != "curve"),
        tuple(_curve(line) for line in sheet.lines if line.kind == "curve"),
        sheet.notes,
        shown,
    )


def _where(point: SheetPoint) -> str:
    """Where a point lies, to be read after its letter."""
    if point.name:
        return say("booklet.named_place", name=point.name, across=point.across, above=point.above)
    return say("booklet.place", across=point.across, above=point.above)


def _curve(line: SheetLine) -> Table:
    """The distances along the straight line and square to it; how the curve leaves and comes in is the note."""
    head = (say("booklet.along", start=line.start), *(along for along, _ in line.rows))
    row = (say("booklet.off"), *(off for _, off in line.rows))
    return Table(line.words, head, (row,) if line.rows else (), note=" ".join(line.aims), kind="plain curve")
