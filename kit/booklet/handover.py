"""What happens in the notebook's kernel after its last cell: find the lesson, work it, hand the result back.

Runs inside the kernel process. The answer travels as a base64 pickle in a display message; only our own
child process can have sent it, and that process has just run the notebook's code with the reader's rights,
so unpickling it adds no power that running the notebook had not.
"""

from __future__ import annotations

import base64
import pickle
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field, replace
from typing import Any

from kit.body.measures import MEASUREMENTS
from kit.booklet.asked_draft import AskedDraft, Draft, as_asked, in_system, set_values, stand_at
from kit.booklet.undisturbed import undisturbed
from kit.diagnostic import message, reading
from kit.errors import KitError, known_near
from kit.lesson.another import find_lesson, find_lessons
from kit.lesson.fitting import Change, Fitting
from kit.lesson.following import followed as measures_followed
from kit.lesson.pattern import Pattern
from kit.lesson.sitting import troubles
from kit.proof.remedy import Remedy
from kit.units import System
from kit.wear.finished import fitted

DRAFTED = "drafted"
"""Asks for every size of the chart that the lesson can be drafted in."""
MIMETYPE = "application/vnd.lessonkit.pattern"


@dataclass(frozen=True)
class SizeRow:
    """One size of the lesson's chart: body `measures` used by the lesson and `finished` measurements, each
    (name, mm), and the girths the garment has as it is `worn`, each (body measurement it goes over, mm). `trouble` says
    why the lesson cannot be drafted in this size, empty when it can."""

    name: str
    measures: tuple[tuple[str, float], ...]
    finished: tuple[tuple[str, float], ...] = ()
    trouble: str = ""
    worn: tuple[tuple[str, float], ...] = ()


@dataclass(frozen=True)
class FittingResult:
    """A fitting, and the lesson drafted `before` it (its parameters at their earlier values, all else as now) and
    `after` it. `trouble` says why it cannot be drafted any more; both patterns are None then. `step` is the key of the
    sewing step whose try-on it is, and `operation` which of its operations, where one changes just these values."""

    fitting: Fitting
    before: Pattern | None
    after: Pattern | None
    trouble: str = ""
    step: str = ""
    operation: int = 0


@dataclass(frozen=True)
class MendingAdvice:
    """What mends a lesson that cannot be drafted, or fails its proof, with the values that stand or (`own`) with those
    it was written with. `trouble` is the refusal, or the proof's errors."""

    own: bool
    trouble: tuple[str, ...]
    remedies: tuple[Remedy, ...]


class Refused(KitError):
    """A draft that was refused, with what mends it."""

    advice: tuple[MendingAdvice, ...] = ()


@dataclass(frozen=True)
class Handover:
    """The worked `pattern`, the lesson's size `chart`, what the sidecar had to say (`notes`), the patterns of other
    `sizes` when some were asked for, in the order of the chart, the lesson's `fittings`, in a translation the `names`
    of its points and lines: (in code, as called), and the `genders` of names that it tells: (name, letter), and the
    `advice` when it was asked for."""

    pattern: Pattern
    chart: tuple[SizeRow, ...] = ()
    notes: tuple[str, ...] = ()
    sizes: tuple[Pattern, ...] = ()
    fittings: tuple[FittingResult, ...] = ()
    names: tuple[tuple[str, str], ...] = ()
    genders: tuple[tuple[str, str], ...] = ()
    advice: tuple[MendingAdvice, ...] = ()


def work(
    lesson: Any,
    size: str | None,
    units: System | None,
    sizes: Sequence[str] = (),
    asked: AskedDraft | None = None,
    chart: tuple[SizeRow, ...] | None = None,
) -> Handover:
    """Work `lesson` for `size` and `units` (None: as its sidecar says), and for each size of its chart the
    finished measurements. `sizes` names more sizes to work, "all" every one; `asked` the values and the draft (None:
    the corrected one, at the values that stand); `chart` is that of an earlier handover of the same lesson, which is
    not worked again. Raises `KitError` for an unknown size or a pattern that cannot be
    drafted."""
    asked = asked or AskedDraft()
    if size is not None or units is not None:
        chosen = {name: value for name, value in (("size", size), ("units", units)) if value is not None}
        lesson.choose(**chosen)
    set_values(lesson, asked)
    story: Pattern = lesson.work()
    stand_at(lesson, story, asked.draft)
    moved = {value.name: value.value for value in story.values} != lesson.values
    pattern = in_system(as_asked(lesson.work() if moved else story, asked.draft), lesson.units)
    notes = troubles(lesson.sitting, lesson.definition)
    fittings = _fittings(lesson, story)
    drafted = _Drafted(lesson)
    rows = tuple(_chart(drafted, pattern)) if chart is None else chart
    return Handover(pattern, rows, notes, tuple(_sizes(drafted, sizes, asked.draft)), fittings)


@dataclass(frozen=True)
class _Drafted:
    """A lesson in the sizes of its chart, each worked once for the chart of measures and for the patterns handed
    over."""

    lesson: Any
    kept: dict[str, Pattern] = field(default_factory=dict)

    def size(self, name: str) -> Pattern:
        """Raises `KitError` where that size cannot be drafted."""
        if name not in self.kept:
            self.kept[name] = self.lesson.work(body=self.lesson.sizes[name])
        return self.kept[name]


def alone(given: Handover) -> Handover:
    """The handover with its lengths in the system that is read first, and none in brackets."""

    def said(pattern: Pattern) -> Pattern:
        return replace(pattern, lesson=replace(pattern.lesson, alone=True))

    fittings = tuple(
        replace(each, before=each.before and said(each.before), after=each.after and said(each.after))
        for each in given.fittings
    )
    return replace(given, pattern=said(given.pattern), sizes=tuple(map(said, given.sizes)), fittings=fittings)


def _fittings(lesson: Any, story: Pattern) -> tuple[FittingResult, ...]:
    """The lesson's fittings, those recorded apart first. A try-on in the sewing that changes the same values is the
    same fitting."""
    found = [_fitted(lesson, fitting) for fitting in lesson.fittings]
    titles = {record.key: record for record in story.sewing}
    for tried in story.tries:
        changes = tuple(Change(turn.name, turn.before, turn.after) for turn in tried.turns)
        if not changes:
            continue
        same = next((i for i, one in enumerate(found) if set(one.fitting.changes) == set(changes)), None)
        if same is not None:
            found[same] = replace(found[same], step=tried.step, operation=tried.operation)
            continue
        record = titles[tried.step]
        fitting = Fitting(record.title, "", record.operations[tried.operation].note, changes)
        before, after = (draft and in_system(draft, lesson.units) for draft in (tried.before, tried.after))
        found.append(FittingResult(fitting, before, after, tried.trouble, tried.step, tried.operation))
    return tuple(found)


def _fitted(lesson: Any, fitting: Fitting) -> FittingResult:
    worked: list[Pattern] = []
    for values in (fitting.before, fitting.after):
        try:
            pattern: Pattern = lesson.work(values={**lesson.values, **values})
        except KitError as error:
            return FittingResult(fitting, None, None, str(error))
        worked.append(in_system(pattern, lesson.units))
    return FittingResult(fitting, worked[0], worked[1])


def _sizes(drafted: _Drafted, sizes: Sequence[str], draft: Draft) -> list[Pattern]:
    lesson = drafted.lesson
    names: Sequence[str] = lesson.sizes.names
    for size in sizes:
        if size not in lesson.sizes and size.lower() != "all" and size != DRAFTED:
            raise KitError(
                message("body.no_such_size", size=size), where="--sizes", do=known_near(size, [*names, "all"])
            )
    whole = any(size.lower() == "all" or size == DRAFTED for size in sizes)
    named = [size for size in sizes if size in lesson.sizes]
    worked: list[Pattern] = []
    for name in lesson.sizes.ordered(dict.fromkeys([*names, *named] if whole else named)):
        try:
            pattern = drafted.size(name)
        except KitError as error:
            if DRAFTED in sizes:
                continue  # the booklet's chart of finished measurements says so
            raise error.at(f"Size {name}") from None
        if all(pattern.body.name != other.body.name for other in worked):  # a lesson may know one size only
            worked.append(in_system(as_asked(pattern, draft), lesson.units))
    return worked


def _chart(drafted: _Drafted, pattern: Pattern) -> list[SizeRow]:
    lesson = drafted.lesson
    used = list(dict.fromkeys(name for step in pattern.steps for name in step.uses))
    wanted = [*getattr(lesson.start, "measures", ()), *used, *(name for _, name in pattern.over)]
    rows: list[SizeRow] = []
    followed = {name for one in lesson.parameters for name in measures_followed(one)}
    wanted += [name for name in lesson.measures if name not in MEASUREMENTS or name in followed]
    if not any(name in lesson.sizes[lesson.sizes.names[0]] for name in wanted):
        return rows
    for size in lesson.sizes.names:
        body = lesson.sizes[size]
        measures = tuple((name, body[name]) for name in dict.fromkeys(wanted) if name in body)
        try:
            made = drafted.size(size)
        except KitError as error:
            rows.append(SizeRow(body.name, measures, (), str(error)))
            continue
        worn = tuple((row.measure, row.girth) for row in fitted(made))
        rows.append(SizeRow(body.name, measures, made.finished, worn=worn))
    return rows


def advice(lesson: Any) -> tuple[MendingAdvice, ...]:
    """What mends the lesson with its values as they stand, and with its own, where either fails."""
    from kit.proof.mending import remedies
    from kit.proof.prove import errors

    found = []
    own_values = {parameter.name: parameter.default for parameter in lesson.parameters}
    for values in (lesson.values, own_values):
        own = values is own_values
        if own and values == lesson.values:
            continue
        with reading(lesson.units):
            try:
                trouble = tuple(str(finding) for _, finding in errors(lesson.work(values=values)))
            except KitError as error:
                trouble = (str(error),)
        if trouble:
            found.append(MendingAdvice(own, trouble, remedies(lesson, values=values)))
    return tuple(found)


_Answer = Handover | KitError | tuple[KitError, tuple[MendingAdvice, ...]]


def send(
    namespace: Mapping[str, Any],
    size: str | None,
    units: System | None,
    sizes: Sequence[str] = (),
    *,
    mend: bool = False,
    asked: AskedDraft | None = None,
) -> None:
    """Called in the kernel: displays one message holding a pickled `Handover`, or a `KitError`. `mend`: with advice."""
    from IPython.display import publish_display_data

    answer: _Answer
    try:
        with undisturbed():
            answer = _answer(find_lesson(namespace), size, units, sizes, mend, asked)
    except KitError as error:
        answer = error
    publish_display_data({MIMETYPE: _packed(answer)})


def send_each(namespace: Mapping[str, Any], size: str | None, units: System | None, asked: AskedDraft | None) -> None:
    """Called in the kernel: displays one message holding the pickled answers of all lessons of the notebook, each with
    advice, or the `KitError` that there is none."""
    from IPython.display import publish_display_data

    answer: KitError | list[_Answer]
    try:
        answer = [_answer(lesson, size, units, (), True, asked) for _, lesson in find_lessons(namespace)]
    except KitError as error:
        answer = error
    publish_display_data({MIMETYPE: _packed(answer)})


def _answer(
    lesson: Any, size: str | None, units: System | None, sizes: Sequence[str], mend: bool, asked: AskedDraft | None
) -> _Answer:
    try:
        answer = work(lesson, size, units, sizes, asked)
        return replace(answer, advice=advice(lesson)) if mend else answer
    except KitError as error:
        return (error, advice(lesson)) if mend else error


def _packed(answer: object) -> str:
    return base64.b64encode(pickle.dumps(answer)).decode("ascii")


def receive(text: str) -> Handover:
    """The `Handover` in a message made by `send`. Raises the `KitError` that was sent instead of one, as `Refused` when
    advice came with it."""
    return _given(_unpacked(text))


def receive_each(text: str) -> list[Handover | Refused]:
    """What `send_each` sent: of each lesson its `Handover`, or the refusal with its advice. Raises the `KitError` that
    was sent instead."""
    answers = _unpacked(text)
    if not isinstance(answers, list):
        _given(answers)
        raise KitError("the notebook's kernel answered with something other than patterns.", do="Check again.")
    found: list[Handover | Refused] = []
    for answer in answers:
        try:
            found.append(_given(answer))
        except Refused as refused:
            found.append(refused)
    return found


def _unpacked(text: str) -> Any:
    try:
        return pickle.loads(base64.b64decode(text))
    except Exception:  # a pickle cut short or of other classes ends in nearly any error
        raise KitError("the notebook's kernel answered, but its answer arrived garbled.", do="Build again.") from None


def _given(answer: Any) -> Handover:
    if isinstance(answer, tuple):
        refusal, found = answer
        refused = Refused(refusal.told.says, where=refusal.told.at, do=refusal.told.can).showing(refusal.example)
        refused.advice = found
        raise refused
    if isinstance(answer, KitError):
        raise answer
    if not isinstance(answer, Handover):
        raise KitError("the notebook's kernel answered with something other than a pattern.", do="Build again.")
    return answer
