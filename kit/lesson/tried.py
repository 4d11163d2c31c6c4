"""Try-ons that change values in the middle of the sewing: the drafts before and after each, and what follows.

A try-on tells what this lesson's own cloth went through, so its values are a course: the draft first cut, then one
after each try-on. It is followed as far as the lesson stands on it, that is where a parameter's present value is one of
those written; a value written alone starts from the present one. The pattern that is worked stands at the present
values as ever; the others are kept beside it.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from kit.diagnostic import message
from kit.errors import KitError, near
from kit.lesson.fitting import SAME, number_of
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern, SewRecord, Tried
from kit.sewing.operations.try_ons import Met, TryOn
from kit.sewing.refit import Turn
from kit.sewing.refitting import refit

if TYPE_CHECKING:
    from kit.sewing.operation import Operation

Values = Mapping[str, float]
Draft = Callable[[Values], Pattern]


@dataclass(frozen=True)
class _Ask:
    """One value of a try-on in mm, share or count; `before` None: whatever it is."""

    parameter: Parameter
    before: float | None
    after: float


@dataclass(frozen=True)
class _Found:
    """A try-on that changes values, and its place: index of the sewing step, of the operation in it."""

    at: tuple[int, int]
    record: SewRecord
    operation: TryOn
    asks: tuple[_Ask, ...]


def with_tries(pattern: Pattern, values: Values, parameters: Sequence[Parameter], draft: Draft) -> Pattern:
    """The pattern with what its try-ons change worked out: `draft` gives the pattern of other values. Raises `KitError`
    for a parameter there is not and for a value it cannot have."""
    found = _found(pattern, parameters)
    if not found:
        return pattern
    present = {value.name: value.value for value in pattern.values}
    courses = _courses(present, found)
    drafts: dict[tuple[tuple[str, float], ...], Pattern | KitError] = {_key(present): pattern}

    def worked(course: Values) -> Pattern | KitError:
        key = _key(course)
        if key not in drafts:
            try:
                drafts[key] = draft({**values, **course})
            except KitError as error:
                drafts[key] = error
        return drafts[key]

    tries: list[Tried] = []
    operations: dict[tuple[int, int], TryOn] = {}
    for index, each in enumerate(found):
        before, after = courses[index], courses[index + 1]
        turns = tuple(
            Turn(ask.parameter.name, ask.parameter.label, ask.parameter.kind, was, now)
            for ask in each.asks
            if abs((was := before[ask.parameter.name]) - (now := after[ask.parameter.name])) > SAME
        )
        one, two = worked(before), worked(after)
        stage: Met = "changed" if turns or _stands(each, before) else "elsewhere"
        why, change = "", None
        if isinstance(one, KitError) or isinstance(two, KitError):
            stage, why = "refused", str(one if isinstance(one, KitError) else two)
        elif stage == "changed":
            change = refit(one, two, each.at, turns)
        operations[each.at] = replace(each.operation, stage=stage, refit=change, why_refused=why)
        tries.append(
            Tried(
                each.record.key,
                each.at[1],
                turns,
                None if isinstance(one, KitError) else one,
                None if isinstance(two, KitError) else two,
                why,
            )
        )
    return replace(_with(pattern, operations), tries=tuple(tries))


def first_cut(pattern: Pattern) -> dict[str, float]:
    """The values that the cloth was cut with; those of the pattern where no try-on changes any."""
    present = {value.name: value.value for value in pattern.values}
    for tried in reversed(pattern.tries):
        present |= {turn.name: turn.before for turn in tried.turns}
    return present


def last_corrected(pattern: Pattern) -> dict[str, float]:
    """The values that count after the last try-on."""
    present = {value.name: value.value for value in pattern.values}
    for tried in pattern.tries:
        present |= {turn.name: turn.after for turn in tried.turns}
    return present


def corrected(pattern: Pattern) -> Pattern:
    """A pattern worked with the last values, told as one that needs no correction any more: for whoever cuts it."""
    operations = {
        (index, number): replace(operation, stage="corrected", refit=None)
        for index, number, operation in _try_ons(pattern)
        if operation.stage == "changed"
    }
    return replace(_with(pattern, operations), tries=()) if operations else pattern


def counting(pattern: Pattern, key: str, number: int) -> tuple[Pattern, Operation]:
    """The draft that counts when the operation `number` of the sewing step `key` is sewn, and that operation in it.
    A try-on that changes values stays with the pattern."""
    record, index = next((r, i) for i, r in enumerate(pattern.sewing) if r.key == key)
    own: Operation = record.operations[number]
    keys = [each.key for each in pattern.sewing]
    here = (index, number)
    drafted: Pattern | None = pattern.tries[0].before if pattern.tries else None
    for tried in pattern.tries:
        if (keys.index(tried.step), tried.operation) < here:
            drafted = tried.after
    if drafted is None or (isinstance(own, TryOn) and own.asks):
        return pattern, own
    same = next((r for r in drafted.sewing if r.key == key), None)
    if same is None or len(same.operations) != len(record.operations):
        return pattern, own
    return drafted, same.operations[number]


# ---- the course of the values -----------------------------------------------------------------------------


def _try_ons(pattern: Pattern) -> list[tuple[int, int, TryOn]]:
    return [
        (index, number, operation)
        for index, record in enumerate(pattern.sewing)
        for number, operation in enumerate(record.operations)
        if isinstance(operation, TryOn)
    ]


def _found(pattern: Pattern, parameters: Sequence[Parameter]) -> list[_Found]:
    known = {parameter.name: parameter for parameter in parameters}
    found = []
    for index, number, operation in _try_ons(pattern):
        if not operation.asks:
            continue
        record = pattern.sewing[index]
        try:
            asks = tuple(_ask(known, *ask) for ask in operation.asks)
        except KitError as error:
            raise error.at(message("refusal.step", step=record.title)) from None
        found.append(_Found((index, number), record, operation, asks))
    return found


def _ask(known: Mapping[str, Parameter], name: str, before: object, after: object) -> _Ask:
    where = "try on"
    if name not in known:
        raise KitError(f"there is no parameter '{name}'.", where=where, do=near(name, known))
    parameter = known[name]
    numbers = [None if given is None else number_of(parameter, given, where) for given in (before, after)]  # type: ignore[arg-type]
    try:
        first, second = (None if mm is None else parameter.checked(mm) for mm in numbers)
    except KitError as error:
        raise error.at(where) from None
    assert second is not None
    return _Ask(parameter, first, second)


def _courses(present: Mapping[str, float], found: Sequence[_Found]) -> list[dict[str, float]]:
    """The values when the cloth is cut, and after each try-on."""
    values = dict(present)
    for name in {ask.parameter.name for each in found for ask in each.asks}:
        asks = [ask for each in found for ask in each.asks if ask.parameter.name == name]
        written = {number for ask in asks for number in (ask.before, ask.after) if number is not None}
        first = asks[0].before
        if first is not None and any(abs(values[name] - number) <= SAME for number in written):
            values[name] = first
    courses = [values]
    for each in found:
        values = dict(values)
        for ask in each.asks:
            if ask.before is None or abs(values[ask.parameter.name] - ask.before) <= SAME:
                values[ask.parameter.name] = ask.after
        courses.append(values)
    return courses


def _stands(found: _Found, before: Mapping[str, float]) -> bool:
    """Whether the lesson stands where the try-on begins, so that it is followed."""
    return any(ask.before is None or abs(before[ask.parameter.name] - ask.before) <= SAME for ask in found.asks)


def _key(values: Values) -> tuple[tuple[str, float], ...]:
    return tuple(sorted((name, round(value, 6)) for name, value in values.items()))


def _with(pattern: Pattern, operations: Mapping[tuple[int, int], TryOn]) -> Pattern:
    sewing = tuple(
        replace(
            record,
            operations=tuple(
                operations.get((index, number), operation) for number, operation in enumerate(record.operations)
            ),
        )
        for index, record in enumerate(pattern.sewing)
    )
    return replace(pattern, sewing=sewing)
