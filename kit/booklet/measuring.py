"""The booklet's page "How to measure": the figure, and a note for each measurement the lesson uses."""

from __future__ import annotations

from collections.abc import Sequence

from kit.body.measures import FROM_WAIST, MEASUREMENTS, Measurement
from kit.booklet.forms import PX, Form, PictureRoom
from kit.booklet.handover import Handover
from kit.booklet.model import Measuring, Tape
from kit.booklet.pictures import Inks, Picture, picture
from kit.language import say
from kit.picture.figure import View, measuring_figure, views
from kit.units import both


def said(name: str, own: Sequence[Measurement] = ()) -> str:
    """A measurement's or parameter's name as people read it at the head of a row: bust_girth -> Bust girth. `own` are
    the lesson's own measurements."""
    text = named(name, own)
    return text[:1].upper() + text[1:]


def named(name: str, own: Sequence[Measurement] = ()) -> str:
    """A measurement's or parameter's name inside a sentence."""
    known = _named(own)
    return known[name].said if name in known else name.replace("_", " ").strip()


def _named(own: Sequence[Measurement]) -> dict[str, Measurement]:
    return {**MEASUREMENTS, **{one.name: one for one in own}}


def used_measures(given: Handover) -> tuple[str, ...]:
    """The measurements the lesson's block and steps use, in the order of the measurement table."""
    asked = {name for row in given.chart for name, _ in row.measures}
    asked |= {name for step in given.pattern.steps for name in step.uses}
    return tuple(name for name in _named(given.pattern.lesson.measurements) if name in asked)


def measuring(given: Handover, form: Form, inks: Inks) -> Measuring | None:
    """How the measurements the lesson uses are taken; None when it uses none. The reader's values stand beside
    the notes when the body is not a size of the chart, estimated ones marked."""
    names = used_measures(given)
    if not names:
        return None
    body, system = given.pattern.body, given.pattern.lesson.units
    own = body.estimated or all(row.name != body.name for row in given.chart)
    owned = given.pattern.lesson.measurements
    guessed = {measure.name for measure in body.estimated}
    drawn = tuple(name for name in names if name in MEASUREMENTS)  # the lesson's own come last, and have no tape
    sides = _side(drawn, "front", form, inks), _side(drawn, "back", form, inks)
    tapes = tuple(
        Tape(
            number,
            said(name, owned),
            _named(owned)[name].note,
            both(body[name], system) if own and name in body else "",
            name in guessed,
            name,
            not drawn or name in drawn,
        )
        for number, name in enumerate(names, 1)
    )
    return Measuring(*sides, tapes, any(name in FROM_WAIST for name in names))


def _side(names: tuple[str, ...], view: View, form: Form, inks: Inks) -> Picture | None:
    if not any(view in views(name) for name in names):
        return None
    room = PictureRoom(form.measure * 0.46 * PX, min(135.0, form.depth * 0.52) * PX)
    return picture(measuring_figure(names, view), f"measuring-{view}", room, inks, say(f"booklet.{view}_view"))
