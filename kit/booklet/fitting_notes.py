"""What the fittings changed, before and after."""

from __future__ import annotations

from kit.booklet.forms import Form
from kit.booklet.handover import Handover
from kit.booklet.model import FittingNote
from kit.booklet.pictures import Inks, picture
from kit.picture.fitting import fitting_drawing, moved_pieces
from kit.prose.fitting import change_words, fitting_words


def fitting_notes(given: Handover, form: Form, inks: Inks) -> tuple[FittingNote, ...]:
    """A note for each fitting of the lesson: its reason, its sentences, a picture of every piece that moved. One that
    can no longer be drafted says why."""
    system = given.pattern.lesson.units
    found = []
    for number, result in enumerate(given.fittings):
        fitting, before, after = result.fitting, result.before, result.after
        if before is None or after is None:
            lines = (*change_words(fitting, given.pattern, system), result.trouble)
            found.append(FittingNote(fitting.title, fitting.date, fitting.why, lines, ()))
            continue
        pictures = tuple(
            picture(fitting_drawing(before, after, piece, system), f"fitting-{number}-{piece}", form.stage, inks)
            for piece in moved_pieces(before, after)
        )
        lines = fitting_words(fitting, before, after, system)
        found.append(FittingNote(fitting.title, fitting.date, fitting.why, lines, pictures))
    return tuple(found)
