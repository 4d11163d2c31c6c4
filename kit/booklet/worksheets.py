"""The worksheet for drafting by hand, as the booklet prints it: points, lines and curves of each step in numbers."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from kit.booklet.forms import Form
from kit.booklet.model import SheetPiece, SheetStep, Table
from kit.booklet.pictures import Inks, picture
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.picture.guide_points import guide_drawing
from kit.prose.worksheet import PieceSheet, SheetLine, SheetPoint, worksheet
from kit.wording.lists import listed

_MANY = 8
"""Letters on one piece from which on its picture is larger."""


def worksheets(pattern: Pattern, numbers: Mapping[str, int], form: Form, inks: Inks) -> tuple[SheetStep, ...]:
    """Every step of the draft in the reader's own numbers; `numbers` are those of the steps by key."""
    found = []
    for step in worksheet(pattern):
        pieces = tuple(
            _piece(alike, f"sheet-{step.key}-{alike[0].piece.name}", pattern, form, inks)
            for alike in _alike(step.sheets)
        )
        number = numbers.get(step.key, 0)
        found.append(SheetStep(number, step.key if number else "", step.title, pieces, step.strips))
    return tuple(found)


def _alike(sheets: Sequence[PieceSheet]) -> list[list[PieceSheet]]:
    """The sheets of a step, those together that tell the same of pieces that are the same: a front and its back, a
    lining. A reader who turns the page for numbers known already looks for what is new in them."""
    found: dict[object, list[PieceSheet]] = {}
    for sheet in sheets:
        piece = sheet.piece
        paths = tuple((edge.path, edge.name == piece.fold) for edge in piece.edges)
        lines = tuple((line.words, line.rows, line.aims) for line in sheet.lines)
        # Where allowances are told the picture has all of them, those of earlier steps too.
        cut = tuple((edge.allowance, edge.extra) for edge in piece.edges) if sheet.allowed else ()
        key = (paths, sheet.origin, sheet.rubbed, sheet.points, lines, sheet.notes, sheet.known, cut)
        found.setdefault(key, []).append(sheet)
    return list(found.values())


def _piece(alike: Sequence[PieceSheet], name: str, pattern: Pattern, form: Form, inks: Inks) -> SheetPiece:
    """One picture and one list for pieces of which the same is told."""
    sheet, shown = alike[0], None
    if sheet.points or sheet.lines or sheet.notes:
        # Many letters need room: a block's page is read with the finger on the picture.
        share = (1.15 if len(sheet.points) > _MANY else 0.8) if form.beside else 0.6
        shown = picture(guide_drawing(sheet, pattern.lesson.units), name, form.step.times(share), inks)
    titles = [each.piece.title for each in alike]
    return SheetPiece(
        titles[0] if len(titles) == 1 else say("worksheet.alike", pieces=listed(titles)),
        tuple(text for text in (sheet.origin, sheet.rubbed) if text),
        tuple((point.letter, _where(point)) for point in sheet.points),
        tuple(line.words for line in sheet.lines if line.kind != "curve"),
        tuple(_curve(line) for line in sheet.lines if line.kind == "curve"),
        sheet.notes,
        shown,
        len(titles) > 1,
    )


def _where(point: SheetPoint) -> str:
    """Where a point lies, to be read after its letter."""
    if not point.at.x and not point.at.y:
        return say("booklet.named_place_at_origin", name=point.name) if point.name else say("worksheet.at_origin")
    if point.name:
        return say("booklet.named_place", name=point.name, across=point.across, above=point.above)
    return say("booklet.place", across=point.across, above=point.above)


def _curve(line: SheetLine) -> Table:
    """The distances along the straight line and square to it; how the curve leaves and comes in is the note."""
    head = (say("booklet.along", start=line.start), *(along for along, _ in line.rows))
    row = (say("booklet.off"), *(off for _, off in line.rows))
    return Table(line.words, head, (row,) if line.rows else (), note=" ".join(line.aims), kind="plain curve")
