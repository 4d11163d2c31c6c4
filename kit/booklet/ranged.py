"""Whether a lesson's ranges hold, asked of the notebook's own kernel: each size in turn, then mixtures of all values.

The notebook runs once; then its kernel moves every parameter alone in every size of the chart (`kit.proof.ranges`), and
tries settings drawn at random over the sizes. Progress is told size by size and portion by portion.
"""

from __future__ import annotations

import base64
import pickle
from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

from kit.body.body import NOBODY, Body
from kit.booklet.run_notebook import read_notebook, run_and_ask
from kit.diagnostic import message, reading
from kit.errors import KitError
from kit.lesson.another import find_lesson
from kit.lesson.lesson import values_for
from kit.proof.ranges import Mixture, RangeTried, mixtures, reaches, stands_wrong
from kit.units import System

MIMETYPE = "application/vnd.lessonkit.ranges"
AT_RANDOM = 500
"""Settings that are drawn at random."""
ENOUGH = 0.95
"""The part of mixed settings that must be sound for the ranges to hold."""
_PORTION = 25
_SIZES = 10  # portions that the sizes are shared out among
_SEED = 1
_QUICK = (0, 4, 9, 10, 14, 19)
"""Portions of the quick form: of ten sizes the smallest, a middle one and the largest, and mixtures in the same."""


@dataclass(frozen=True)
class PortionTold:
    """One portion of the answer: what it was of, the single moves and the mixtures in it."""

    title: str
    system: System
    sizes: tuple[str, ...]
    reaches: tuple[RangeTried, ...] = ()
    mixtures: tuple[Mixture, ...] = ()


@dataclass(frozen=True)
class Ranges:
    """All of it: the lesson's `title`, its `system`, the `sizes` tried, single moves and mixtures."""

    title: str
    system: System
    sizes: tuple[str, ...]
    reaches: tuple[RangeTried, ...]
    mixtures: tuple[Mixture, ...]

    @property
    def failing(self) -> dict[str, list[RangeTried]]:
        """The parameters that do not hold over their range, with the sizes in which they fail."""
        found: dict[str, list[RangeTried]] = {}
        for reach in self.reaches:
            if not reach.whole:
                found.setdefault(reach.parameter.name, []).append(reach)
        return found

    @property
    def stuck(self) -> bool:
        """Whether the lesson fails as it stands, whatever its size, so that nothing can be said of its ranges."""
        return bool(self.reaches) and all(reach.least is None for reach in self.reaches)

    @property
    def hold(self) -> bool:
        """Whether every slider holds alone, 95 of 100 mixtures do, and for each of the others a remedy is known."""
        return not self.failing and self.sound >= ENOUGH * len(self.mixtures) and not self.lost

    @property
    def lost(self) -> tuple[Mixture, ...]:
        """The mixtures that fail and for which a remedy was looked for and none found."""
        return tuple(mixture for mixture in self.mixtures if mixture.trouble and mixture.mended is False)

    @property
    def sound(self) -> int:
        """How many mixtures are drafted and pass the proof."""
        return sum(not mixture.trouble for mixture in self.mixtures)

    @property
    def troubles(self) -> list[tuple[str, int]]:
        """What is wrong with the other mixtures, the most frequent first: (the first of its kind, how often)."""
        kinds = Counter(_kind(mixture.trouble) for mixture in self.mixtures if mixture.trouble)
        first = {_kind(mixture.trouble): mixture.trouble for mixture in reversed(self.mixtures)}
        return [(first[kind], count) for kind, count in kinds.most_common()]


def _kind(trouble: str) -> str:
    """A trouble without its numbers."""
    return "".join(" " if letter.isdigit() or letter in "/.,½¼¾" else letter for letter in trouble).replace(" ", "")


# ---- in the notebook's kernel -----------------------------------------------------------------------------


def send(namespace: Mapping[str, Any], portion: int, mend: bool = True) -> None:
    """Called in the kernel: displays one portion of the answer, or the `KitError`, as a pickle (as
    `kit.booklet.handover` does, and for its reason)."""
    from IPython.display import publish_display_data

    answer: PortionTold | KitError
    try:
        answer = told(find_lesson(namespace), portion, mend)
    except KitError as error:
        answer = error
    publish_display_data({MIMETYPE: base64.b64encode(pickle.dumps(answer)).decode("ascii")})


def told(lesson: Any, portion: int, mend: bool = True) -> PortionTold:
    """The portion of that number: first those of the sizes, then those of the mixtures, size after size. `mend`:
    remedies are looked for."""
    bodies = bodies_of(lesson)
    head = (lesson.info.title, lesson.units, tuple(body.name for body in bodies))
    with reading(lesson.units):
        if portion < _SIZES:
            moves = [
                reach
                for body in bodies[portion::_SIZES]
                for reach in reaches(lesson.definition, body, values_for(lesson, body), lesson.units)
            ]
            return PortionTold(*head, reaches=tuple(map(_plain, moves)))
        number = portion - _SIZES
        body = bodies[number % len(bodies)]
        # Where the lesson fails as it stands, that is what is to be mended, and no mixture of it.
        mend = mend and not stands_wrong(lesson.definition, body, values_for(lesson, body))
        drawn = mixtures(
            lesson.definition, body, _PORTION, seed=_SEED + number // len(bodies), system=lesson.units, mend=mend
        )
        return PortionTold(*head, mixtures=tuple(drawn))


def bodies_of(lesson: Any) -> tuple[Body, ...]:
    """The bodies a lesson's ranges must hold for: its chart, or nobody where it asks for no measurement."""
    if not lesson.measures:
        return (NOBODY,)
    return tuple(lesson.sizes[name] for name in lesson.sizes.names)


def _plain(reach: RangeTried) -> RangeTried:
    """Without what cannot leave the kernel: functions written in the notebook."""
    return replace(reach, parameter=replace(reach.parameter, at_least=None, at_most=None, follows=None))


# ---- outside it -------------------------------------------------------------------------------------------


def ranges_of(
    notebook: Path,
    *,
    timeout: int = 120,
    quick: bool = False,
    progress: Callable[[str], None] = lambda line: None,
    done: Callable[[int, int], None] = lambda count, total: None,
) -> Ranges:
    """Whether the ranges of the lesson in `notebook` hold. `timeout` is seconds for a cell, and ten times that for a
    size; `progress` is told phrases, `done` how many portions of how many. `KitError` for what cannot be run."""
    book = read_notebook(notebook)
    numbers = _QUICK if quick else range(_SIZES + AT_RANDOM // _PORTION)
    count = len(numbers)
    ask = "import kit.booklet.ranged\nkit.booklet.ranged.send(globals(), {}, mend={})"
    questions = [ask.format(number, not quick) for number in numbers]
    progress(f"Running {notebook.name} from the top")
    _, answers = run_and_ask(
        book,
        notebook.resolve().parent,
        questions,
        MIMETYPE,
        name=notebook.name,
        timeout=timeout * 10,
        asking=lambda number: done(int(number) - 1, count),
    )
    done(count, count)
    portions = [_read(answer) for answer in answers]
    first = portions[0]
    return Ranges(
        first.title,
        first.system,
        first.sizes,
        tuple(reach for portion in portions for reach in portion.reaches),
        tuple(mixture for portion in portions for mixture in portion.mixtures),
    )


def _read(answer: str) -> PortionTold:
    if not answer:
        raise KitError(message("refusal.no_answer"), do=message("refusal.no_answer_do"))
    found = pickle.loads(base64.b64decode(answer))
    if isinstance(found, KitError):
        raise found
    assert isinstance(found, PortionTold)
    return found
