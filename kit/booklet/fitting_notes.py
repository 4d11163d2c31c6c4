"""What the fittings changed, before and after; which step each was tried on in, and where that step refers to."""

from __future__ import annotations

from collections.abc import Mapping

from kit.booklet.forms import Form
from kit.booklet.handover import FittingResult, Handover
from kit.booklet.model import FittingNote
from kit.booklet.pictures import Inks, picture
from kit.picture.fitting import fitting_drawing, moved_pieces
from kit.prose.fitting import change_words, fitting_words
from kit.sewing.operations.try_ons import TryOn
from kit.wording.dates import date_said

CHAPTER = "fitting"
"""What a reference to the chapter as a whole finds."""


def fitting_notes(given: Handover, form: Form, inks: Inks, numbers: Mapping[str, int]) -> tuple[FittingNote, ...]:
    """A note for each fitting of the lesson: its reason, its sentences, a picture of every piece that moved. One that
    can no longer be drafted says why. `numbers` are those of the steps by key."""
    system = given.pattern.lesson.units
    found = []
    for number, result in enumerate(given.fittings):
        fitting, before, after = result.fitting, result.before, result.after
        tried = _tried_in(given, result)
        step = (numbers[tried[0]], tried[0]) if tried else None
        key = _key(number)
        if before is None or after is None:
            lines = (*change_words(fitting, given.pattern, system), result.trouble)
            found.append(FittingNote(fitting.title, date_said(fitting.date), fitting.why, lines, (), key, step))
            continue
        pictures = tuple(
            picture(fitting_drawing(before, after, piece, system), f"fitting-{number}-{piece}", form.stage, inks)
            for piece in moved_pieces(before, after)
        )
        lines = fitting_words(fitting, before, after, system)
        found.append(FittingNote(fitting.title, date_said(fitting.date), fitting.why, lines, pictures, key, step))
    return tuple(found)


def fitting_links(given: Handover) -> dict[tuple[str, int], str]:
    """{(key of a sewing step, number of an operation in it): what it refers to}, for the try-ons that a fitting belongs
    to: its note, or the chapter where there are several."""
    found: dict[tuple[str, int], str] = {}
    for number, result in enumerate(given.fittings):
        place = _tried_in(given, result)
        if place is not None:
            found[place] = CHAPTER if place in found else _key(number)
    return found


def _key(number: int) -> str:
    return f"{CHAPTER}-{number + 1}"


def _tried_in(given: Handover, result: FittingResult) -> tuple[str, int] | None:
    """Where a fitting was tried on: in its own try-on, or else in the first that has no values of its own; None where
    nothing is tried on."""
    if result.step:
        return result.step, result.operation
    tries = [
        (record.key, number, operation)
        for record in given.pattern.sewing
        for number, operation in enumerate(record.operations)
        if isinstance(operation, TryOn)
    ]
    return next(((key, number) for key, number, operation in tries if not operation.asks), None)
