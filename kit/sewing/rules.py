"""What must hold before an operation is done, and must not: rules, written as data beside its fields.

A rule has a condition, and a code. Where the condition is broken, the rule gives a diagnostic: the message
`sewing_trouble.<code>`, what to do about it in `sewing_trouble.<code>_do`, told of the run that broke it. Conditions
read the operation's fields by their names: `Of("folded", "edges")` is the fact "folded" of every edge of its field
`edges`, `Raw("edges")` asks whether these are raw, `Excess(...)` is an amount in mm that must not be above nothing.
An `Of` alone is what an operation gives, undoes and wants (see `kit.sewing.operation`).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from itertools import pairwise
from typing import Any, Literal, NamedTuple, Protocol

from kit.diagnostic import Diagnostic, Level, Value, as_value, measured, message, named_edge, titled
from kit.language import variables
from kit.piece.piece import Strip
from kit.sewing.cut import Cut
from kit.sewing.facts import edge_facts, facts_of, half_facts, place_facts
from kit.sewing.mark_spot import ground
from kit.sewing.marked import Place
from kit.sewing.named import placed
from kit.sewing.outcome import Fact
from kit.sewing.run import Run
from kit.sewing.spans import minus, run_length, spans, whole_length
from kit.sewing.state import TOLERANCE, State
from kit.sewing.trouble import refuse, trouble

Ends = Literal["", "next", "run", "all"]


class Case(NamedTuple):
    """One thing a condition was asked of: whether it `holds` there, the run, mark or strip `at` which, the one `edge`
    of it where only one is meant, the amount (mm) and further values of the message. `touches`: whether it holds of any
    part of that, where it does not hold of all; a rule that something must not be is broken by a part already."""

    holds: bool
    at: Run | Place | Strip
    edge: str = ""
    amount: float | None = None
    values: Mapping[str, Value] = {}
    touches: bool = False


def off_by(at: Run | Place | Strip, by: float, slack: float = 0.5, /, **told: float) -> Case:
    """A case that holds where something is off `by` no more than `slack` mm; `told` are mm that its message tells."""
    return Case(by <= slack, at, amount=by, values={name: measured(mm) for name, mm in told.items()})


class Condition(Protocol):
    """Something that holds of an operation at this point of the sewing, or not, case by case."""

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]: ...


def row_held(given: object) -> tuple[Any, ...]:
    """What a field holds, as a row: nothing, one or several."""
    if given is None:
        return ()
    return given if isinstance(given, tuple) else (given,)


def whole(piece: str) -> Run:
    """A whole piece as a place that something is told of."""
    return Run(piece, ("",))


@dataclass(frozen=True)
class Of:
    """The fact `what` of all that the operation's field `of` names: of every edge of its runs, told of that edge or
    (`each="run"`) of the run, of every half (`each="half"`) or of the piece itself (`each="piece"`); of a mark on every
    half it is meant on. `size`: a field in mm that the fact tells at its end; `when`: it is told only then."""

    what: str
    of: str
    each: Literal["edge", "run", "half", "piece"] = "edge"
    size: str = ""
    when: Callable[[Any], bool] | None = None

    def _facts(self, operation: Any, pattern: Cut) -> Iterator[tuple[Run | Place, Fact]]:
        what = self.what.format(kind=operation.kind)
        for at in row_held(getattr(operation, self.of)) if self.when is None or self.when(operation) else ():
            found: tuple[Fact, ...]
            if self.each == "piece":
                at = whole(at) if isinstance(at, str) else at
                found = ((what, at.piece),)
            elif isinstance(at, Place):
                found = place_facts(pattern, (at,), what)
            else:
                of_edges = edge_facts if self.size else facts_of  # a size is told of an edge as a whole
                found = (half_facts if self.each == "half" else of_edges)(pattern, (at,), what)
            size = (f"{getattr(operation, self.size):.2f}",) if self.size else ()
            yield from ((at, (*fact, *size)) for fact in found)

    def facts(self, operation: Any, pattern: Cut) -> tuple[Fact, ...]:
        """The facts themselves."""
        return tuple(dict.fromkeys(fact for _, fact in self._facts(operation, pattern)))

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        for at, fact in self._facts(operation, pattern):
            edge = fact[3] if isinstance(at, Run) and self.each == "edge" else ""
            yield Case(state.holds(fact), at, edge, touches=state.touches(fact))


@dataclass(frozen=True)
class Raw:
    """Each run of a field is raw: nothing has closed any of it."""

    of: str

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        return (Case(state.is_raw(pattern, run), run) for run in row_held(getattr(operation, self.of)))


@dataclass(frozen=True)
class Closed:
    """Each run of a field is closed all along."""

    of: str

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        return (Case(state.is_closed(pattern, run), run) for run in row_held(getattr(operation, self.of)))


@dataclass(frozen=True)
class Seamed:
    """Each run of a field lies in a seam all along; openings and gaps that a seam has left are part of it."""

    of: str

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        for run in row_held(getattr(operation, self.of)):
            left = minus(spans(pattern, run), state.seamed)
            yield Case(all(span.length <= TOLERANCE for span in left), run)


@dataclass(frozen=True)
class Pressed:
    """No seam along a field's runs waits for the iron."""

    of: str

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        for run in row_held(getattr(operation, self.of)):
            yield Case(not any(map(state.touches, facts_of(pattern, (run,), "unpressed"))), run)


@dataclass(frozen=True)
class InsideOut:
    """The pieces that some fields name, by themselves or by their runs, lie wrong side out."""

    of: tuple[str, ...]

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        named = [each for field in self.of for each in row_held(getattr(operation, field))]
        places = [whole(each) if isinstance(each, str) else each for each in named]
        for name, at in {each.piece: each for each in places}.items():
            yield Case(name in state.inside_out, at, values={"piece": titled(pattern.piece(name).title)})


@dataclass(frozen=True)
class Excess:
    """An amount in mm that is too much: `by` gives it for an operation. It is told of the runs of `of`: of the first,
    or of `each`."""

    by: Callable[[Any], float]
    of: str
    slack: float = 0.0
    values: Mapping[str, Value] = field(default_factory=dict)

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        amount = self.by(operation)
        for run in row_held(getattr(operation, self.of)):
            yield Case(amount <= self.slack, run, amount=amount, values=self.values)


@dataclass(frozen=True)
class Suits:
    """The fields of an operation suit each other: `test` asks them. It is told of the first run of `of`, `by` so many
    mm."""

    test: Callable[[Any], bool]
    of: str
    by: Callable[[Any], float]
    values: Mapping[str, Value] = field(default_factory=dict)

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        at, amount = row_held(getattr(operation, self.of))[0], self.by(operation)
        return (Case(self.test(operation), at, amount=amount, values=self.values),)


@dataclass(frozen=True)
class Made:
    """The strip that a field names has been made."""

    of: str

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        name = getattr(operation, self.of)
        return (Case(name in state.made, pattern.strip(name)),)


@dataclass(frozen=True)
class EnoughStrips:
    """As many of the strip that the field `of` names are cut as are used by then, `number` of them now."""

    of: str
    number: Callable[[Any, Cut], int]

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        strip = pattern.strip(getattr(operation, self.of))
        used = state.count(strip.name) + self.number(operation, pattern)
        return (Case(used <= strip.count, strip, values={"count": as_value(used), "cut": as_value(strip.count)}),)


@dataclass(frozen=True)
class Each:
    """A `test` of each run, mark or piece of a field, asked with (operation, state, pattern, which of them)."""

    of: str
    test: Callable[[Any, State, Cut, Any], object]

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        for each in row_held(getattr(operation, self.of)):
            at = whole(each) if isinstance(each, str) else each
            yield Case(bool(self.test(operation, state, pattern, each)), at)


@dataclass(frozen=True)
class Asking:
    """A condition as a function of the operation, the state and the pattern that gives its cases, for what no other
    condition says."""

    cases: Callable[[Any, State, Cut], Iterable[Case]]


Walk = Callable[[Any, State, Cut], Iterable[tuple[str, Case]]]
Walked = dict[Walk, tuple[str, Case] | None]
"""What walks met first, for one operation at one moment."""


@dataclass(frozen=True)
class First:
    """What is met first where a function walks along and gives (kind, case) of all that is wrong: only the rule of that
    `kind` is broken."""

    walk: Walk
    kind: str

    def cases(self, operation: Any, state: State, pattern: Cut, walked: Walked | None = None) -> Iterable[Case]:
        """Rules of several kinds share a walk: what it met first is `walked` already for the rule before."""
        walked = {} if walked is None else walked
        if self.walk not in walked:
            walked[self.walk] = next(iter(self.walk(operation, state, pattern)), None)
        met = walked[self.walk]
        return () if met is None or met[0] != self.kind else (met[1],)


@dataclass(frozen=True)
class EndToEnd:
    """The runs of a field, named as one row, lie end to end by now."""

    of: str

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        for before, after in pairwise(row_held(getattr(operation, self.of))):
            values = {"place": placed(pattern, before), "other": placed(pattern, after)}
            yield Case(
                state.continuous(pattern, before, after), replace(before, edges=before.edges[-1:]), values=values
            )


@dataclass(frozen=True)
class WholeEdges:
    """The runs of a field are whole edges, no parts that the author named; an operation may cut them itself."""

    of: str

    def cases(self, operation: Any, state: State, pattern: Cut) -> Iterable[Case]:
        for run in row_held(getattr(operation, self.of)):
            whole = run.stretch is None or whole_length(pattern, run) - run_length(pattern, run) <= TOLERANCE
            yield Case(whole, run)


@dataclass(frozen=True)
class Rule:
    """A condition that must hold before an operation is done; with `holds=False`, that must not.

    `says` and `do` are the keys of other messages than `<code>` and, of what is said, `<says>_do`. A message has what
    it has places for: place (the run or mark with its piece), edge, piece (its title), amount, a value of the case, or
    a field of the operation (mm, said as an allowance). `each`: every run that breaks it is told, not the first alone.
    `when`: the rule is asked only where this is true of the operation. `on`: the field whose first run it is told of,
    where that is not the one that broke it. `ends`: once it is broken the rules after it are not asked any more, of
    that run ("run") or at all ("all"), or the next alone is not asked of that run ("next")."""

    condition: Condition
    code: str
    holds: bool = True
    says: str = ""
    do: str = ""
    each: bool = False
    when: Callable[[Any], bool] | None = None
    on: str = ""
    ends: Ends = ""
    level: Level = "error"

    @property
    def keys(self) -> tuple[str, str]:
        """The messages of what is wrong and of what to do."""
        says = self.says or self.code
        return f"sewing_trouble.{says}", f"sewing_trouble.{self.do or f'{says}_do'}"

    def broken(self, operation: Any, state: State, pattern: Cut, walked: Walked | None = None) -> list[Case]:
        """The cases that break it, one of each run or mark; the first alone, unless `each` is to be told. `walked` is
        what rules before it have walked along."""
        if self.when is not None and not self.when(operation):
            return []
        if isinstance(self.condition, First):
            cases = self.condition.cases(operation, state, pattern, walked)
        else:
            cases = self.condition.cases(operation, state, pattern)
        found = [case for case in cases if (not case.holds if self.holds else case.holds or case.touches)]
        once = list({id(case.at): case for case in reversed(found)}.values())[::-1]
        return once if self.each else once[:1]

    def told(self, operation: Any, pattern: Cut, case: Case) -> Diagnostic:
        """What the rule says of a case that breaks it."""
        run = self._run(operation, pattern, case)
        says, do = (
            message(key, **{name: self._value(name, operation, pattern, case, run) for name in variables(key)})
            for key in self.keys
        )
        if isinstance(case.at, Strip):
            piece, edge = (run.piece, run.edges[0]) if self.on else ("", "")
            return trouble(
                self.code, says, case.at.title, do, amount=case.amount, piece=piece, edge=edge, level=self.level
            )
        return refuse(pattern, run, self.code, says, do, case.amount, self.level)

    def _run(self, operation: Any, pattern: Cut, case: Case) -> Run:
        """The run it is told of, of a mark the edge nearest to it; of a strip no run, unless one is named by `on`."""
        at = row_held(getattr(operation, self.on))[0] if self.on else case.at
        if isinstance(at, Strip):
            return Run("", ())
        run = at if isinstance(at, Run) else ground(pattern, at)
        return Run(run.piece, (case.edge,), run.side) if case.edge and not self.on else run

    def _value(self, name: str, operation: Any, pattern: Cut, case: Case, run: Run) -> Value:
        if name in case.values:
            return case.values[name]
        if name == "place" and not isinstance(case.at, Strip):
            return placed(pattern, case.at)
        if name == "edge":
            return named_edge(pattern.piece(run.piece).edge(run.edges[0]))
        if name == "piece":
            return titled(case.at.title if isinstance(case.at, Strip) else pattern.piece(run.piece).title)
        if name == "amount":
            return measured(case.amount or 0.0)
        return measured(getattr(operation, name), "allowance")


def in_a_row(of: str) -> Rule:
    """The rule that the runs of a field lie end to end."""
    return Rule(EndToEnd(of), "not_joined_yet", each=True)


def whole_edges(of: str) -> Rule:
    """The rule that the edges of a field are sewn whole: no part of one makes sense."""
    return Rule(WholeEdges(of), "part_of_edge", each=True)


def at_least(field: str, mm: float, code: str, *, of: str, slack: float = 0.0, **more: Any) -> Rule:
    """The rule that a width of an operation is no less than so many mm; it is told by its own name, they as `least`."""
    by = Excess(lambda made: mm - getattr(made, field), of, slack, {"least": measured(mm, "allowance")})
    return Rule(by, code, **more)


def at_most(field: str, mm: float, code: str, *, of: str, **more: Any) -> Rule:
    """The rule that it is no more than so many mm, told as `most`."""
    by = Excess(lambda made: getattr(made, field) - mm, of, values={"most": measured(mm, "allowance")})
    return Rule(by, code, **more)


def deeper_turn(of: str, second: str = "second", **more: Any) -> Rule:
    """The rule that of two turns the second is as deep as the first, which lies inside it."""
    by = Excess(lambda hem: hem.first - getattr(hem, second), of, 0.5)
    return Rule(by, "hem_turns", do="do_deepen_second_turn", **more)


def apart(runs: Iterable[Run], state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
    """What speaks against runs named as one line (`front.neck + back.neck`): they do not lie end to end by now."""
    lines = dict.fromkeys(run.chain for run in runs if run.chain is not None)
    rule = in_a_row("")
    return tuple(
        rule.told(
            None,
            pattern,
            Case(
                False,
                replace(before, edges=before.edges[-1:]),
                values={"place": placed(pattern, before), "other": placed(pattern, after)},
            ),
        )
        for line in lines
        for before, after in pairwise(line.of)
        if not state.meets(pattern, before, after)
    )


def broken(rules: Iterable[Rule], operation: Any, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
    """What the rules have against an operation now, in their order."""
    found: list[Diagnostic] = []
    over: list[Run | Place | Strip] = []
    told: list[Run | Place | Strip] = []
    walked: Walked = {}
    for rule in rules:
        cases = [case for case in rule.broken(operation, state, pattern, walked) if case.at not in over + told]
        found += [rule.told(operation, pattern, case) for case in cases]
        if cases and rule.ends == "all":
            break
        told = [case.at for case in cases] if rule.ends == "next" else []
        if rule.ends == "run":
            over.extend(case.at for case in cases)
    return tuple(found)
