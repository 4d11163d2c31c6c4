"""What every step of a lesson tells its reader, as plain paragraphs: the teacher's words with their values filled in,
and what the operations of a sewing step say."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from kit.errors import KitError
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.placeholder import Placeholder
from kit.prose.say import sentences, whys
from kit.prose.words import fill_words
from kit.sewing.operation import Operation
from kit.units import System


@dataclass(frozen=True)
class ToldStep:
    """A step as its reader has it: the `key` that stays the same from edition to edition, what it is, its `title`, and
    its `words`, a paragraph each."""

    key: str
    kind: Literal["draft", "sew"]
    title: str
    words: tuple[str, ...]


def told_steps(pattern: Pattern, system: System | None = None) -> tuple[ToldStep, ...]:
    """Every step in teaching order, lengths with `system` first (the lesson's own when left out). `KitError` for words
    that cannot be filled in.

    >>> from kit import bodice_block, cm
    >>> from kit.lesson.lesson import Lesson
    >>> lesson = Lesson("Vest", start=bodice_block)
    >>> drop = lesson.length("drop", 2 * cm, least=1 * cm, most=4 * cm)
    >>> @lesson.step("Lower the neck")
    ... def lower(front, drop):
    ...     "Square down {drop}."
    ...     front.mark(low=front.neck_point.down(drop))
    >>> [told.words for told in told_steps(lesson.work())]
    [('Square down 2 cm (3/4 in).',)]
    """
    units = system or pattern.lesson.units
    found = [
        ToldStep(step.key, "draft", step.title, paragraphs(own_words(step, pattern, units))) for step in pattern.steps
    ]
    return (*found, *(_sewn(record, pattern, units) for record in pattern.sewing))


def own_words(record: StepRecord | SewRecord, pattern: Pattern, system: System) -> str:
    """The teacher's words of a step; a reference to a step or a piece is said by its title. `KitError`, naming the
    step, for a name or format the words cannot have."""

    def refer(found: Placeholder) -> str:
        if found.format == "piece":
            return pattern.piece(found.name).title
        titles = {step.key: step.title for step in pattern.steps} | {sewn.key: sewn.title for sewn in pattern.sewing}
        return titles.get(found.name, found.name.replace("_", " "))

    try:
        return fill_words(record.text, record.values, system, refer)
    except KitError as error:
        raise KitError(error.what, where=record.title, do=error.do) from error


def operation_words(record: SewRecord, operation: Operation, pattern: Pattern, system: System) -> tuple[str, ...]:
    """What one operation of a sewing step says there, a sentence each, with the reasons where the lesson gives them."""
    said: tuple[str, ...] = ()
    if record.words != "instead":
        said = tuple(sentences(pattern, operation, system))
    if pattern.lesson.whys:
        said += tuple(whys(pattern, operation, system))
    return said


def paragraphs(text: str) -> tuple[str, ...]:
    """The paragraphs of a text, which blank lines part, each on one line."""
    blocks = [" ".join(block.split()) for block in text.split("\n\n")]
    return tuple(block for block in blocks if block)


def _sewn(record: SewRecord, pattern: Pattern, system: System) -> ToldStep:
    own = paragraphs(own_words(record, pattern, system))
    said = tuple(
        " ".join(words)
        for operation in record.operations
        if (words := operation_words(record, operation, pattern, system))
    )
    return ToldStep(record.key, "sew", record.title, said + own if record.words == "after" else own + said)
