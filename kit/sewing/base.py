"""What every sewing operation can say of itself.

An operation is a value: which runs it sews and by how much. From that come the raw edge it closes, the
allowance it takes, what it joins and uses, its sentences (as keys and values, put into words by `kit.prose`),
its scenes (drawn by `kit.picture`) and its checks against the garment so far. Lengths are mm.

An ordinary operation is data: `@operation` makes its class a value and its own verb, whose arguments are its fields
(`kit.sewing.fields`); what speaks against it are its `rules` (`kit.sewing.rules`); what it says are the keys in `says`.
Every method here is derived from these and may be written by hand instead, for what cannot be said so. One of several
rows has its `stages` (`kit.sewing.stage`) and can be begun, left and finished (`kit.sewing.portion`).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import chain
from typing import Any, ClassVar, NamedTuple

from kit.diagnostic import Diagnostic
from kit.piece.piece import Side
from kit.piece.role import PieceRole
from kit.sewing.cut import Cut
from kit.sewing.fields import Asked, Reads, filling, reads_of
from kit.sewing.joined_lengths import sewn_length
from kit.sewing.marked import Place
from kit.sewing.outcome import Closing, Effect, Fact, How, Outcome, Uses
from kit.sewing.rules import Of, Rule, broken
from kit.sewing.run import Run
from kit.sewing.scene import Scene
from kit.sewing.scenes import Seen
from kit.sewing.sentence import Also, Keys, Said, Say, Sentence, Telling
from kit.sewing.spans import Span, neighbours, sides_of, spans
from kit.sewing.stage import Stage
from kit.sewing.state import State

Words = tuple[str, ...]
Rules = tuple[Rule, ...]
"""The types of `tools` and its like, and of `rules`: written in a class that others build on."""
Amounts = tuple[tuple[str, str, str], ...]
MINDS = {"machine": "needle", "iron": "iron", "scissors": "scissors"}
"""Tool: what to mind with it."""
LOCKSTITCH, THREAD = "301", ("thread",)
"""What a machine sews unless another stitch is told, and what it or a needle uses up."""


class Brings(NamedTuple):
    """One `part` of an operation's effect, by its name in `Effect`, as a function of (operation, pattern)."""

    part: str
    of: Callable[[Any, Cut], Any]


Changes = tuple[Brings, ...]


class Work(NamedTuple):
    """The minutes an operation takes a learner (common practice, no source): `start` to set up, `metre` for each metre
    sewn, `each` for every half of the runs and marks; all along its runs, or as they are sewn along the field `of`."""

    start: float
    metre: float | Callable[[Any], float] = 0.0
    each: float = 0.0
    of: str = ""


@dataclass(frozen=True, kw_only=True)
class Operation:
    """Base of all operations. `kind` is the key by which sentences and pictures know it; `called` its name in refusals
    (else `kind`); `seam_class` its ISO 4916 class and `stitch_type` its ISO 4915 stitch, from memory and only where
    sure; `cautions`, `tools` and `notions` are keys of templates/language (what to mind, the stitch and the thread
    follow from the tools, unless they are told); `crosses`: a seam that runs into it must have been pressed.

    `says` and `why` are its sentences in order: keys of its own family in templates/language ("press" is
    `<kind>-press`), fields in braces put in ("why_{corners}"); that one `why` is told is usual, and () where it needs
    none. `gives`, `undoes` and `wanted` are facts: those that hold from now on, hold no longer, must hold once the
    garment is finished. `rules`: what must hold before, and what must not. `stages`: of one that can be left in
    between; its `says` are then theirs, and `lastly` is said after each part of it. `work`: the minutes it takes.
    `joined`: the fields whose runs it joins, pair by pair. `amounts`: what it uses up, as (notion, the field or method
    that says how much, "length" in mm or "count"). `changes`: the parts of its effect that no field tells. `also`: what
    fills its sentences besides its fields. A class adds its own to `changes` and `also` of those it is built on.
    `pictures`: what is shown of it."""

    kind: ClassVar[str] = ""
    called: ClassVar[str] = ""
    seam_class: ClassVar[str] = ""
    stitch_type: ClassVar[str] = LOCKSTITCH
    cautions: ClassVar[Words] = ("needle",)
    tools: ClassVar[Words] = ("machine", "pins")
    notions: ClassVar[Words] = THREAD
    crosses: ClassVar[bool] = False
    says: ClassVar[Keys] = ()
    lastly: ClassVar[Keys] = ()
    why: ClassVar[Keys] = ("why",)
    gives: ClassVar[tuple[Of, ...]] = ()
    undoes: ClassVar[tuple[Of, ...]] = ()
    wanted: ClassVar[tuple[Of, ...]] = ()
    rules: ClassVar[Rules] = ()
    stages: ClassVar[tuple[Stage, ...]] = ()
    work: ClassVar[Work] = Work(4.0, 6.0)
    joined: ClassVar[tuple[tuple[str, str], ...]] = ()
    amounts: ClassVar[Amounts] = ()
    changes: ClassVar[Changes] = ()
    also: ClassVar[tuple[Also, ...]] = ()
    pictures: ClassVar[Seen] = Seen()

    def __init_subclass__(cls, **more: Any) -> None:
        super().__init_subclass__(**more)
        told = vars(cls)
        if "tools" in told and "cautions" not in told:
            cls.cautions = tuple(MINDS[tool] for tool in MINDS if tool in cls.tools)
        if "tools" in told and "stitch_type" not in told and cls.stitch_type in ("", LOCKSTITCH):
            cls.stitch_type = LOCKSTITCH if "machine" in cls.tools else ""
        if "tools" in told and "notions" not in told and cls.notions in ((), THREAD):
            cls.notions = THREAD if {"machine", "hand_needle"} & {*cls.tools} else ()

    @classmethod
    def agree(cls, asked: Asked) -> None:
        """Raises `KitError` where the fields, each read by itself, do not go together (`asked.read`)."""

    @classmethod
    def made(cls, asked: Asked) -> Operation:
        """The operation of the fields as read; of another class where they ask for it."""
        return cls(**asked.read)

    @property
    def entire(self) -> Operation:
        """The operation with all its stages, where this is a part of it; else itself."""
        return self

    @property
    def begins(self) -> bool:
        """Whether this is where the operation begins."""
        return True

    def staged(self) -> tuple[Stage, ...]:
        """Its stages: those that this one has."""
        return tuple(stage for stage in self.stages if stage.when is None or stage.when(self))

    def _of_classes(self, name: str) -> Iterator[Any]:
        """All that the class and those it is built on hold under a name, the first of them first."""
        return (each for home in reversed(type(self).__mro__) for each in vars(home).get(name, ()))

    def _held(self) -> list[tuple[str, Reads, Any]]:
        """(name, how it is read, value) of every field."""
        return [(name, reads, getattr(self, name)) for name, reads in reads_of(type(self)).items()]

    def runs(self) -> tuple[Run, ...]:
        """Every run the operation touches."""
        found = (row_of(value) for _, reads, value in self._held() if reads.touched)
        return tuple(run for row in found for run in row if isinstance(run, Run))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        """The raw edge it closes."""
        held = ((row_of(value), reads.closes) for _, reads, value in self._held() if value is not None)
        found = ((row, how(self) if callable(how) else how) for row, how in held)
        return tuple(closing for row, how in found if how for closing in closings(pattern, row, how))

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        """{(piece, edge): mm of allowance its rows and turns take}."""
        found: dict[tuple[str, str], float] = {}
        for _, reads, value in self._held():
            if reads.takes and value is not None and (amount := self.allowance_of(reads)) is not None:
                found |= taken(row_of(value), amount)
        return found

    def allowance_of(self, reads: Reads) -> float | None:
        """mm of allowance that a field takes of each of its edges."""
        return reads.takes(self) if callable(reads.takes) else sum(getattr(self, name) for name in reads.takes)

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        """Pairs of runs it joins."""
        rows = ((row_of(getattr(self, a)), row_of(getattr(self, b))) for a, b in self.joined)
        return tuple((one, other) for row, others in rows for one in row for other in others if one and other)

    @property
    def uses(self) -> Uses:
        """The pieces of its runs, and of the marks it names, and its strips."""
        held = self._held()
        marks = (each for _, _, value in held for each in row_of(value) if isinstance(each, Place))
        strips = {
            value: getattr(self, reads.strips) if isinstance(reads.strips, str) else reads.strips
            for _, reads, value in held
            if reads.strips is not None and value
        }
        return Uses(tuple(dict.fromkeys([run.piece for run in self.runs()] + [mark.piece for mark in marks])), strips)

    def effect(self, pattern: Cut) -> Effect:
        """What else it changes of the garment in work."""
        becomes: dict[str, Any] = {}
        for _, reads, value in self._held():
            if reads.becomes:
                becomes[reads.becomes] = becomes.get(reads.becomes, ()) + row_of(value)
        becomes |= {part: of(self, pattern) for part, of in self._of_classes("changes")}
        stages = self.staged()
        given, undone = over(stages, self, pattern)
        facts = given + facts_given(self.gives, self, pattern) + becomes.pop("facts", ())
        return Effect(facts=facts, undone=undone + facts_given(self.undoes, self, pattern), **becomes)

    def outcome(self, pattern: Cut) -> Outcome:
        """All that it changes, for the state of the garment to take."""
        gaps = (span for run in self.entire.gaps(pattern) for span in spans(pattern, run))
        left = (*self.entire.opens(pattern), *gaps)
        return Outcome(self.closes(pattern), self.joins, self.uses, self.effect(pattern), left)

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        """Facts that must hold once the garment is finished because this was done: what it prepared must be used."""
        return facts_given(self.wanted, self, pattern)

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        """Stretches of edge it leaves as an opening of the finished garment: a vent, a pocket's mouth, a zip."""
        return ()

    def gaps(self, pattern: Cut) -> tuple[Run, ...]:
        """Stretches it leaves raw for turning, until they are sewn by hand."""
        return ()

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        """What its pieces are because it sews them so: (piece, role, the piece it lies on or "")."""
        under = next((value.piece for _, _, value in self._held() if isinstance(value, Place)), "")
        held = [(reads.role, row_of(value)) for _, reads, value in self._held() if reads.role]
        return tuple((run.piece, role, under) for role, row in held for run in row)

    def cautioned(self, pattern: Cut) -> Words:
        """The cautions it calls for as it is sewn here."""
        return self.cautions

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        """{notion: (how much of it is used up, "length" in mm or "count")} where that can be said."""
        held = {notion: (getattr(self, name), kind) for notion, name, kind in self.amounts}
        return {notion: (of(pattern) if callable(of) else of, kind) for notion, (of, kind) in held.items()}

    def minutes(self, pattern: Cut) -> float:
        """Rough time it takes a learner, in minutes, all its halves together."""
        work = self.work
        of = row_of(getattr(self, work.of)) if work.of else self.runs()
        found = work.start + work.each * sum(len(sides_of(pattern, each)) for each in of)
        if not (metre := work.metre(self) if callable(work.metre) else work.metre):
            return found
        sewn = sewn_length(pattern, of) if work.of else sum(each.length for run in of for each in spans(pattern, run))
        return found + metre * (sewn / 1000)

    def values(self, pattern: Cut) -> dict[str, tuple[Any, str]]:
        """What fills its sentences: name -> (value, kind), each field under its name or as the field says."""
        found: dict[str, tuple[Any, str]] = {}
        for name, reads, value in self._held():
            found |= filling(name, reads, value)
        for more in self._of_classes("also"):
            value = more.value(self, pattern) if callable(more.value) else more.value
            if value is not None:
                found[more.name] = (value, more.kind)
        return found

    def told(self, keys: Iterable[Said | Say | Telling], pattern: Cut) -> tuple[Sentence, ...]:
        """The sentences of some keys, filled."""
        values = self.values(pattern)
        found: list[Sentence] = []
        for each in keys:
            if isinstance(each, Say):
                each = each.key if each.when(self) else each.other
            said = each(self, pattern) if callable(each) else each
            for one in (said,) if isinstance(said, str | Sentence) else said:
                found += (
                    [one if isinstance(one, Sentence) else Sentence(self._key(one, pattern), values)] if one else []
                )
        return tuple(found)

    def _key(self, key: str, pattern: Cut) -> str:
        filled = key.format_map(_Words(self, pattern)) if "{" in key else key
        return filled if "." in filled else f"{self.kind}.{filled}"

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        """Why it is done so, for teaching: printed on demand."""
        return tuple(Sentence(key, {}) for key, _ in self.told(self.why, pattern))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        """What to do, in order."""
        said = chain.from_iterable(stage.says for stage in self.staged()) if self.stages else self.says
        return self.told((*said, *self.lastly), pattern)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """One scene for each stage worth showing; none where there is nothing to draw."""
        if not self.pictures.shown:
            raise NotImplementedError
        runs = [shown(pattern, row_of(getattr(self, name))[0]) for name in self.pictures.of]
        return tuple(picture(self, *runs) for picture in self.pictures.shown)

    def scene(self, pattern: Cut) -> Scene:
        """The last stage: what the operation leaves."""
        return next(reversed(self.scenes(pattern)), Scene(layers=()))

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        """What speaks against beginning this now."""
        return broken(self.rules, self, state, pattern)

    def refusals(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        """What speaks against doing this now, all its stages."""
        return self.check(state, pattern) + asked_by(self.staged(), self, state, pattern)


class _Words(dict[str, str]):
    """The fields and methods of an operation as parts of a key: "one side" is one_side."""

    def __init__(self, operation: Operation, pattern: Cut) -> None:
        self._of = operation, pattern

    def __missing__(self, name: str) -> str:
        operation, pattern = self._of
        found = getattr(operation, name)
        return str(found(pattern) if callable(found) else found).replace(" ", "_")


def row_of(value: Any) -> tuple[Any, ...]:
    return value if isinstance(value, tuple) else (value,)


def facts_given(of: Iterable[Of], made: Operation, pattern: Cut) -> tuple[Fact, ...]:
    return tuple(fact for each in of for fact in each.facts(made, pattern))


def over(stages: Iterable[Stage], made: Operation, pattern: Cut) -> tuple[tuple[Fact, ...], tuple[Fact, ...]]:
    """The facts that hold after some stages one after another, and those that no longer do."""
    given: dict[Fact, None] = {}
    undone: dict[Fact, None] = {}
    for stage in stages:
        gone = facts_given(stage.undoes, made, pattern)
        given = {fact: None for fact in given if fact not in gone} | dict.fromkeys(
            facts_given(stage.gives, made, pattern)
        )
        undone |= dict.fromkeys(gone)
    return tuple(given), tuple(undone)


def asked_by(stages: Iterable[Stage], made: Operation, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
    """What the rules of some stages have against them."""
    return tuple(found for stage in stages for found in broken(stage.rules, made, state, pattern))


def closings(pattern: Cut, runs: Iterable[Run], how: How) -> tuple[Closing, ...]:
    """The whole of each run, closed in one way."""
    return tuple(Closing(span, how) for run in runs for span in spans(pattern, run))


def taken(runs: Iterable[Run], amount: float) -> dict[tuple[str, str], float]:
    """The same `amount` (mm) for every edge of the runs."""
    return {(run.piece, edge): amount for run in runs for edge in run.edges}


def shown(pattern: Cut, run: Run, side: Side | None = None) -> Run:
    """The run on the one half that a picture shows: its own, else `side`, else the right."""
    if run.side:
        return run
    halves = sides_of(pattern, run)
    return replace(run, side=side if side in halves else halves[-1])


def both_sides(pattern: Cut, runs: Iterable[Run]) -> tuple[Sentence, ...]:
    """A closing sentence when a left and a right half are meant."""
    if any(len(sides_of(pattern, run)) == 2 for run in runs):
        return (Sentence("both_sides", {}),)
    return ()


def over_the_fold(pattern: Cut, run: Run) -> bool:
    """Whether left and right half of a run are one edge of the cloth, which goes on across the fold."""
    piece = pattern.piece(run.piece)
    return run.side is None and bool(piece.fold) and piece.fold in neighbours(piece, run.edges)


def both(*names: str) -> Telling:
    """The closing sentence of `both_sides` for the fields of those names, as one of an operation's `says`: where left
    and right are two rows. A row that goes on across a fold is one."""

    def told(made: Operation, pattern: Cut) -> tuple[Sentence, ...]:
        runs = [run for name in names for run in row_of(getattr(made, name))]
        return () if any(over_the_fold(pattern, run) for run in runs) else both_sides(pattern, runs)

    return told
