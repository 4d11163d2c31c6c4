"""Finding what mends a draft that is refused or fails its proof: which parameter, moved how far.

Nothing is known of what a step does with its numbers, so remedies are found by trying. A parameter is looked at in
coarse samples over its whole range, at the lesson's own value, and as far away as the error says it is off, nearest
first, to both sides of where it stands; between the first sample that mends and its neighbour that does not, the edge
is found by halving. Soundness need not run one way: what lies between two samples that both fail is not seen.

Drafting is cheap and proving is not. So a setting is first drafted, from the first step on that uses the moved value
(`Reworking`), and only asked whether the trouble itself is gone: whether it drafts, or the one check that failed first
is content. What is found so is then proved in full, and if other errors come up, the search goes on with the whole
proof. Values are whole steps of the slider, so that what is printed is the value that was proved.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from contextlib import suppress
from dataclasses import dataclass, replace

from kit.body.body import NOBODY, Body
from kit.errors import KitError
from kit.lesson.definition import Definition
from kit.lesson.lesson import Lesson, values_for
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern
from kit.lesson.scale import Scale
from kit.lesson.working import Reworking
from kit.pausing import pause_here
from kit.proof.causes import parameters_of
from kit.proof.prove import errors
from kit.proof.remedy import Remedy, RemedyChange, latest
from kit.units import System

_SAMPLES = 8  # coarse samples over a whole range
_TOGETHER = 3  # values changed at once, at most
_FIRST_LINKS = 2  # ways to begin a change of several values that are followed up
_TRIES = 400  # settings drafted, about at most; the search then ends with what it has
_PROOF = 4  # what a whole proof counts for, in drafts
_SAME = 1e-6  # mm, share or count

Good = Callable[[float], bool]


def remedies(
    lesson: Lesson, body: Body | None = None, values: Mapping[str, float] | None = None, *, count: int | None = None
) -> tuple[Remedy, ...]:
    """What mends `lesson` for a body and values (name -> mm, share or count; None: those chosen), at most `count`
    remedies. Empty for a lesson that drafts and proves without an error, and where nothing mends it.

    As text a `Remedy` is a sentence: "Hem drop: at least 5.8 cm (2 5/16 in), now 4 cm (1 9/16 in)." Its `values` can be
    given to `lesson.change`. Every number in it was worked and proved as it is printed. Raises `KitError` for something
    that is no lesson.

    >>> from kit import bodice_block, cm, mm
    >>> lesson = Lesson("Vest", start=bodice_block)
    >>> slit = lesson.length("side_slit", 50 * cm, least=0 * cm, most=60 * cm)
    >>> @lesson.step("Mark the slit")
    ... def mark_slit(front, back, side_slit):
    ...     front.side.at(side_slit)
    ...     for piece in (front, back):
    ...         piece.allow(neck=6 * mm, shoulder=1 * cm, armhole=5 * mm, side=1 * cm, hip=3 * cm)
    >>> print(*remedies(lesson))
    Side slit: at most 41.3 cm (16 1/4 in), now 50 cm (19 11/16 in).
    """
    if not isinstance(lesson, Lesson):
        raise KitError(
            f"remedies are found for a lesson, not for {type(lesson).__name__}.",
            do="Write remedies(lesson), with the lesson's own name.",
        )
    worn = (body or lesson.body) if lesson.measures else NOBODY
    chosen = values_for(lesson, worn) if values is None else values
    return latest(tuple(mending(lesson.definition, worn, chosen, system=lesson.units, count=count)))


def mending(
    definition: Definition,
    body: Body,
    values: Mapping[str, float],
    *,
    system: System = "cm",
    moved: str = "",
    good: Mapping[str, float] | None = None,
    count: int | None = None,
) -> Iterator[Remedy]:
    """Yield what mends the draft of `definition` for `body` and `values`: single values first, the likeliest first. A
    remedy that was yielded comes once more when it is known how far it holds and how it reads in the other system;
    it then takes the place of the first (`kit.proof.remedy.latest`). Where no single value mends, a few at once are
    tried, and going back to `good` values, known to have been sound (None: the lesson's own).

    `system` is the one the sliders count in, `moved` the parameter moved last, `count` how many single values are
    enough. Can be stopped at any `pause_here`. Yields nothing for a sound draft, for values outside their range and
    for a body that the block refuses.
    """
    definition = definition.fitted(body)
    whole = {parameter.name: values.get(parameter.name, parameter.default) for parameter in definition.parameters}
    try:
        trials = _Trials(definition, body, whole, system)
    except KitError:
        return
    if trials.is_sound:
        return
    found: list[Remedy] = []
    for parameter in trials.likeliest(moved):
        change = trials.mended(parameter, probable=parameter.name in (moved, *trials.step))
        if change is not None:
            found.append(Remedy((change,)))
            yield found[-1]
        if len(found) == count or trials.spent > _TRIES:
            break
    for remedy in found:
        yield Remedy((trials.settled(remedy.changes[0]),))
    if not found:
        together = _together(trials, moved, _TOGETHER)
        if together is not None:
            yield Remedy(_read_round(trials, together))
        back = _back(trials, good)
        if back is not None:
            yield back


@dataclass(frozen=True)
class _Seen:
    """One setting drafted: the `pattern`, None where it is refused; how many entries could be worked; what is `wrong`
    with it, as far as it was looked at."""

    pattern: Pattern | None
    reached: int
    wrong: tuple[str, ...]


class _Trials:
    """Settings tried around one that fails, each drafted once. Raises `KitError` where no value can matter."""

    def __init__(self, definition: Definition, body: Body, values: Mapping[str, float], system: System) -> None:
        self.definition, self.body, self.values, self.system = definition, body, dict(values), system
        self.spent = 0
        self._again = Reworking(definition, body, values, hurried=True)
        self._check: tuple[str, ...] = ()
        self._amount = 0.0
        self.step: tuple[str, ...] = ()  # what the failing step uses
        self.named: tuple[str, ...] = ()  # what the failing step, or the steps that drew the place, use
        self.is_sound = False
        pattern = self._again.pattern
        if pattern is None:
            if self._again.reached < len(definition.entries):
                self.step = self.named = definition.entries[self._again.reached].uses
        else:
            first = next(errors(pattern), None)
            self.is_sound = first is None
            if first is not None:
                self._check = (first[0],)
                self._amount = first[1].amount or 0.0
                names = [parameter.name for parameter in definition.parameters]
                self.step = next((entry.uses for entry in definition.entries if entry.name == first[1].step), ())
                self.named = parameters_of(first[1], pattern, definition.entries, names)
        self._seen: dict[tuple[tuple[str, float], ...], _Seen] = {}
        self._sound: dict[tuple[tuple[str, float], ...], bool] = {}
        wrong = (self._again.refused,) if pattern is None else ()
        self._now = _Seen(pattern, self._again.reached, wrong)
        if self._check:
            self._now = self.look({})

    # ---- one setting --------------------------------------------------------------------------------------

    def look(self, changed: Mapping[str, float]) -> _Seen:
        """Draft a setting, and ask the check that failed."""
        key = tuple(changed.items())
        if key not in self._seen:
            pause_here()
            self.spent += 1
            self._seen[key] = self._looked(changed)
        return self._seen[key]

    def _looked(self, changed: Mapping[str, float]) -> _Seen:
        try:
            pattern, reached, refused = self._again.work(changed)
            if pattern is None:
                return _Seen(None, reached, (refused,))
            wrong = tuple(str(finding) for _, finding in errors(pattern, self._check)) if self._check else ()
        except Exception as error:  # a far-off value may bring anything; it mends nothing then
            return _Seen(None, self._now.reached, (str(error),))
        return _Seen(pattern, reached, wrong)

    def passes(self, changed: Mapping[str, float]) -> bool:
        """Whether it can be drafted and the check that failed is content."""
        return not self.look(changed).wrong

    def goes_on(self, changed: Mapping[str, float]) -> bool:
        """Whether the trouble is gone, though another may have come up later on."""
        seen = self.look(changed)
        return not seen.wrong or (self._now.pattern is None and seen.reached > self._now.reached)

    def sound(self, changed: Mapping[str, float]) -> bool:
        """Whether it can be drafted and proved without an error."""
        key = tuple(changed.items())
        if key not in self._sound:
            seen = self.look(changed)
            self._sound[key] = False
            if seen.pattern is not None and not seen.wrong:
                self.spent += _PROOF
                with suppress(Exception):
                    self._sound[key] = next(errors(seen.pattern), None) is None
        return self._sound[key]

    # ---- one parameter ------------------------------------------------------------------------------------

    def likeliest(self, moved: str) -> list[Parameter]:
        """The parameters that can matter, the likeliest first: the one moved last; those that do not stand where the
        lesson puts them; those of the step that failed; those of the steps before it, from the last to the first."""
        entries, parameters = self.definition.entries, self.definition.parameters
        last = max((index for index, entry in enumerate(entries) if entry.kind == "step"), default=-1)
        last = min(self._now.reached, last)
        order = [name for entry in (*reversed(entries[: last + 1]), *entries[last + 1 :]) for name in entry.uses]
        order = list(dict.fromkeys([*self.step, *(name for name in order if name in self.named), *order]))
        by_name = {p.name: p for p in parameters if self._again.first_use(p.name) <= self._now.reached}
        put = [name for name in order if name in by_name and self.values[name] != by_name[name].default]
        return [by_name[name] for name in dict.fromkeys([moved, *put, *order]) if name in by_name]

    def mended(self, parameter: Parameter, *, probable: bool) -> RemedyChange | None:
        """The smallest move of `parameter` that mends all, in whole steps of its slider."""
        name = parameter.name
        if not probable and not self.tells(parameter):
            return None
        value = self.nearest(parameter, lambda value: self.passes({name: value}))
        if value is not None and not self.sound({name: value}):
            value = self.nearest(parameter, lambda value: self.sound({name: value}))
        return None if value is None else self.change(parameter, value)

    def change(self, parameter: Parameter, value: float) -> RemedyChange:
        was = self.values[parameter.name]
        return RemedyChange(parameter.name, parameter.label, parameter.kind, was, value, self.system)

    def tells(self, parameter: Parameter) -> bool:
        """Whether the trouble takes any notice of `parameter`: it is another one at an end of the range."""
        steps = Scale(parameter, self.system).within(parameter.least, parameter.most)
        ends = {steps[0], steps[-1]} if steps else set()
        looked = (self.look({parameter.name: Scale(parameter, self.system).at(end)}) for end in ends)
        return any((seen.reached, seen.wrong) != (self._now.reached, self._now.wrong) for seen in looked)

    def nearest(self, parameter: Parameter, good: Good) -> float | None:
        """The nearest value of `parameter` that is `good`, as far as samples show."""
        scale = Scale(parameter, self.system)
        now = self.values[parameter.name]
        sides = _sides(scale, now)
        samples = []
        for number, side in enumerate(sides):
            looked = set(_coarse(len(side), max(1, round(sum(map(len, sides)) / _SAMPLES))))
            looked |= {at for at in range(len(side)) if abs(scale.at(side[at]) - parameter.default) < _SAME}
            looked |= {at for amount in self._amounts(parameter) for at in _as_far(scale, side, now, amount)}
            for at in looked:
                samples.append((abs(scale.at(side[at]) - now), number, at))
        bad = [-1, -1]  # the last sample of each side that is not good; -1 is where the parameter stands
        best: tuple[float, int] | None = None
        done: set[int] = set()
        for _, number, at in sorted(samples):
            side = sides[number]
            if number in done or (best is not None and abs(scale.at(side[bad[number] + 1]) - now) >= best[0]):
                continue
            if not good(scale.at(side[at])):
                bad[number] = at
                continue
            done.add(number)
            low, high = bad[number], at
            while high - low > 1:
                middle = (low + high) // 2
                low, high = (low, middle) if good(scale.at(side[middle])) else (middle, high)
            away = abs(scale.at(side[high]) - now)
            if best is None or away < best[0]:
                best = (away, side[high])
        return None if best is None else scale.at(best[1])

    def _amounts(self, parameter: Parameter) -> tuple[float, ...]:
        """By how much (mm) a length may be off, as the error that was found first says: all of it, or half at each of
        two ends. Widths that must agree mend at one value only, which samples would miss."""
        if parameter.kind != "length" or not self._amount:
            return ()
        return self._amount, self._amount / 2

    # ---- what else is told of a change --------------------------------------------------------------------

    def settled(self, change: RemedyChange) -> RemedyChange:
        """The change with the length that mends in the other system, and whether all beyond it mends too."""
        parameter, name, up = self.parameter(change.name), change.name, change.value > change.was
        end = parameter.most if up else parameter.least
        others = self.rounds(parameter, change.value)
        other = next((value for value in others if self.sound({name: value})), None)
        proved = [end, (change.value + end) / 2] if end != change.value else []
        seen = [changed[name] for changed in map(dict, self._seen) if set(changed) == {name}]
        farther = [value for value in seen if value != change.value and (value > change.value) == up]
        beyond = all(self.passes({name: value}) for value in (*proved, *farther))
        beyond = beyond and all(self.sound({name: value}) for value in proved)
        return replace(change, other=other, way=("least" if up else "most") if beyond else "to")

    def rounds(self, parameter: Parameter, value: float) -> list[float]:
        """The lengths around `value` that read round in the other system, the nearest first; three of them."""
        if parameter.kind != "length":
            return []
        scale = Scale(parameter, _second(self.system))
        step = scale.at(1)
        steps = scale.within(max(value - 2 * step, parameter.least), min(value + 2 * step, parameter.most))
        return sorted(map(scale.at, steps), key=lambda other: abs(other - value))[:3]

    def on_a_step(self, change: RemedyChange) -> float:
        """The value of a change as it is printed, if the parameter can have it."""
        parameter = self.parameter(change.name)
        scale = Scale(parameter, self.system)
        steps = scale.within(parameter.least, parameter.most)
        return min(map(scale.at, steps), key=lambda value: abs(value - change.value), default=change.value)

    def parameter(self, name: str) -> Parameter:
        return next(parameter for parameter in self.definition.parameters if parameter.name == name)

    def passing(self, parameter: Parameter) -> float | None:
        """The nearest value that takes the trouble away, whatever comes up later on."""
        return self.nearest(parameter, lambda value: self.goes_on({parameter.name: value}))

    def onward(self, change: RemedyChange) -> _Trials:
        """Trials around the setting with one value changed."""
        values = {**self.values, change.name: change.value}
        new = _Trials(self.definition, self.body, values, self.system)
        new.spent += self.spent + 1 + _PROOF
        return new


def _coarse(count: int, stride: int) -> list[int]:
    """Which of `count` steps are sampled first: every one after a `stride`, and the last."""
    found = list(range(stride - 1, count, stride))
    return found if not count or found[-1:] == [count - 1] else [*found, count - 1]


def _as_far(scale: Scale, side: list[int], now: float, amount: float) -> list[int]:
    """Which steps of a side lie `amount` away from where the parameter stands, to the nearest step."""
    half = (scale.at(1) - scale.at(0)) / 2 + _SAME
    return [at for at, step in enumerate(side) if abs(abs(scale.at(step) - now) - amount) <= half]


def _sides(scale: Scale, now: float) -> tuple[list[int], list[int]]:
    """The whole steps of the slider above and below where a parameter stands, the nearest first."""
    steps = scale.within(scale.parameter.least, scale.parameter.most)
    above = [step for step in steps if scale.at(step) > now + _SAME]
    return above, [step for step in reversed(steps) if scale.at(step) < now - _SAME]


def _together(trials: _Trials, moved: str, depth: int, fixed: tuple[str, ...] = ()) -> tuple[RemedyChange, ...] | None:
    """A few values at once that mend: one takes the first trouble away, the next what then comes up."""
    links = 0
    for parameter in trials.likeliest(moved):
        if parameter.name in fixed:
            continue
        if trials.spent > _TRIES or links == _FIRST_LINKS:
            break
        value = trials.passing(parameter)
        if value is None:
            continue
        links += 1
        change = trials.change(parameter, value)
        onward = trials.onward(change)
        if onward.is_sound:
            return (change,)
        held = (*fixed, parameter.name)
        for second in onward.likeliest(""):
            if second.name not in held and onward.spent <= _TRIES:
                mended = onward.mended(second, probable=second.name in onward.step)
                if mended is not None:
                    return change, mended
        rest = _together(onward, "", depth - 1, held) if depth > 2 else None
        trials.spent = onward.spent
        if rest is not None:
            return change, *rest
    return None


def _read_round(trials: _Trials, changes: tuple[RemedyChange, ...]) -> tuple[RemedyChange, ...]:
    """Several changes with the lengths that mend in the other system, where all of them do so together."""
    told = []
    for change in changes:
        away = change.value > change.was
        others = trials.rounds(trials.parameter(change.name), change.value)
        beyond = [other for other in others if (other > change.value) == away or abs(other - change.value) < _SAME]
        told.append(replace(change, other=beyond[0] if beyond else None))
    values = {change.name: change.value if change.other is None else change.other for change in told}
    return tuple(told) if trials.sound(values) else changes


def _back(trials: _Trials, good: Mapping[str, float] | None) -> Remedy | None:
    """Going back to `good` values, where they are."""
    values = {p.name: (good or {}).get(p.name, p.default) for p in trials.definition.parameters}
    changes = []
    for parameter in trials.definition.parameters:
        value = values[parameter.name]
        if abs(value - trials.values[parameter.name]) > _SAME:
            changes.append(trials.change(parameter, value))
    # The numbers as they are printed are tried first; what stands between two steps of a slider is not printed exactly.
    printed = tuple(replace(change, value=trials.on_a_step(change)) for change in changes)
    for tried in (printed, tuple(changes)):
        if tried and trials.sound({change.name: change.value for change in tried}):
            return Remedy(_nearby(trials, tried), back=True)
    return None


def _nearby(trials: _Trials, changes: tuple[RemedyChange, ...]) -> tuple[RemedyChange, ...]:
    """Values to go back to as they read in the other system, where those are good as well."""
    others = {}
    for change in changes:
        if change.kind == "length":
            scale = Scale(trials.parameter(change.name), _second(trials.system))
            other = scale.at(round(change.value * scale.per_unit / scale.unit))
            others[change.name] = min(max(other, scale.parameter.least), scale.parameter.most)
    if not trials.sound({change.name: others.get(change.name, change.value) for change in changes}):
        return changes
    return tuple(replace(change, other=others.get(change.name)) for change in changes)


def _second(system: System) -> System:
    return "inch" if system == "cm" else "cm"
