"""The booklet's page "How to measure": the figure, and a note for each measurement the lesson uses."""

from __future__ import annotations

from kit.body.measures import MEASUREMENTS
from kit.booklet.forms import PX, Form, Room
from kit.booklet.handover import Handover
from kit.booklet.model import Measuring, Tape
from kit.booklet.pictures import Inks, Picture, picture
from kit.language import say
from kit.picture.figure import View, measuring_figure, views
from kit.units import both


def said(name: str) -> str:
    """A measurement's or parameter's name as people read it at the head of a row: bust_girth -> Bust girth."""
    text = MEASUREMENTS[name].said if name in MEASUREMENTS else name.replace("_", " ").strip()
    return text[:1].upper() + text[1:]


def used_measures(given: Handover) -> tuple[str, ...]:
    """The measurements the lesson's block and steps use, in the order of the measurement table."""
    asked = {name for row in given.chart for name, _ in row.measures}
    asked |= {name for step in given.pattern.steps for name in step.uses}
    return tuple(name for name in MEASUREMENTS if name in asked)


def measuring(given: Handover, form: Form, inks: Inks) -> Measuring | None:
    """How the measurements the lesson uses are taken; None when it uses none. The reader's values stand beside
    the notes when the body is not a size of the chart, estimated ones marked."""
    names = used_measures(given)
    if not names:
        return None
    body, system = given.pattern.body, given.pattern.lesson.units
    own = body.estimated or all(row.name != body.name for row in given.chart)
    guessed = {measure.name for measure in body.estimated}
    tapes = tuple(
        Tape(
            number,
            said(name),
            MEASUREMENTS[name].note,
            both(body[name], system) if own and name in body else "",
            name in guessed,
        )
        for number, name in enumerate(names, 1)
    )
    return Measuring(_side(names, "front", form, inks), _side(names, "back", form, inks), tapes)


def _side(names: tuple[str, ...], view: View, form: Form, inks: Inks) -> Picture | None:
    if not any(view in views(name) for name in names):
        return None
    room = Room(form.measure * 0.46 * PX, min(135.0, form.depth * 0.52) * PX)
    return picture(measuring_figure(names, view), f"measuring-{view}", room, inks, say(f"booklet.{view}_view"))
