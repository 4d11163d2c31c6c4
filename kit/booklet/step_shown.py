"""What a booklet shows of one step: its numbers, its pictures before they are inked, what an operation says.

Nothing here asks how tall it comes out, so that a page in a reader's browser shows the same (kit/page/booklet.py).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from kit.booklet.forms import Form, PictureRoom
from kit.booklet.measuring import said
from kit.booklet.pictures import UninkedPicture
from kit.booklet.tables import number
from kit.language import say
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.lesson.tried import counting
from kit.picture.draft import step_drawing
from kit.picture.drawing import Dimension, Drawing, Label
from kit.picture.sewing import Lettered, staged
from kit.picture.step_texts import Letters
from kit.picture.svg_pen import bounds_of
from kit.placeholder import names
from kit.prose import scene_alt, sentences, step_alt, whys
from kit.prose.step_measures import place_said
from kit.sewing.in_work import pictured_before, shown_scenes

_CROWDED = 30
"""Texts and numbers from which on the lines of a picture beside its text shrink to a stamp among them (an apron with 28
is read well, a tabard with 34 was not)."""


@dataclass(frozen=True)
class ShownDraft:
    """The picture of a drafting step; it goes `across` the page when it is wide or crowded with texts."""

    sketch: UninkedPicture
    across: bool


@dataclass(frozen=True)
class ShownOperation:
    """An operation: what it says, why it is done so, and a picture of each stage worth showing."""

    text: str
    why: str
    sketches: tuple[UninkedPicture, ...]

    @property
    def single(self) -> bool:
        return len(self.sketches) == 1


def drafted(record: StepRecord, pattern: Pattern, form: Form, letters: Letters | None, name: str) -> ShownDraft:
    """A drafting step in one `form`; `letters` are those of the worksheet, `name` is what the picture's ids begin
    with."""
    system = pattern.lesson.units
    drawing = step_drawing(record, system, letters=letters)
    many = len(record.allowed) > 2
    crowded = sum(isinstance(item, Label | Dimension) for item in drawing.items) > _CROWDED
    across = many or crowded or _is_wide(drawing) or not form.beside
    room = form.full if many or crowded else form.across if across and form.beside else form.step
    return ShownDraft(UninkedPicture(lambda _: drawing, name, room, alt=step_alt(record, system)), across)


def sewn(record: SewRecord, number: int, pattern: Pattern, form: Form, name: str) -> ShownOperation:
    """Operation `number` of a sewing step in one `form`, told and drawn on the draft that counts when it is sewn."""
    pattern, operation = counting(pattern, record.key, number)
    system = pattern.lesson.units
    stages = [scene for scene in shown_scenes(pattern, operation) if scene.layers or scene.strip]
    single = len(stages) == 1
    room = form.step if single else form.stage
    sketches = []
    for i, scene in enumerate(stages):
        caption = "" if single else say("booklet.stage", number=i + 1, count=len(stages))
        if i + 1 == len(stages) and pictured_before(pattern, operation):
            caption = " – ".join(filter(None, (caption, say("booklet.rest_pictured"))))
        drawn = _in_room(staged(scene, pattern, system), form)
        sketches.append(UninkedPicture(drawn, f"{name}-{i}", room, caption, scene_alt(pattern, scene, system)))
    text = "" if record.words == "instead" else " ".join(sentences(pattern, operation, system))
    why = " ".join(whys(pattern, operation, system)) if pattern.lesson.whys else ""
    return ShownOperation(text, why, tuple(sketches))


def _in_room(lettered: Lettered, form: Form) -> Callable[[PictureRoom], Drawing]:
    return lambda room: lettered((room.width / form.letters, room.height / form.letters))


def _is_wide(drawing: Drawing) -> bool:
    left, bottom, right, top = bounds_of(drawing)
    return right - left > 1.75 * (top - bottom)


def step_numbers(record: StepRecord, pattern: Pattern) -> tuple[tuple[str, str], ...]:
    """The measures a step uses or its text names, each once, as the text and the picture show them. Others
    that only the picture dimensions (every allowance, say) stay there."""
    system = pattern.lesson.units
    wanted = {*names(record.text), *record.uses}
    labels = {spot.name: place_said(spot, record.pieces) for spot in record.spots}
    labels |= {one.name: one.said for one in pattern.lesson.measurements}
    labels |= {value.name: value.label for value in pattern.values}
    guessed = {measure.name for measure in pattern.body.estimated}

    def shown(name: str, value: float, kind: str) -> str:
        text = number(value, kind, system)
        return say("booklet.estimated_value", value=text) if name in guessed else text

    return tuple(
        (said(labels.get(name, name)), shown(name, value, kind))
        for name, value, kind in dict((entry[0], entry) for entry in record.values).values()
        if name in wanted
    )
