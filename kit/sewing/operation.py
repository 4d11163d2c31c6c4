"""What every sewing operation can say of itself.

An operation is a value: which runs it sews and by how much. From that come the raw edge it closes, the
allowance it takes, what it joins and uses, its sentences (as keys and values, put into words by `kit.prose`),
its scenes (drawn by `kit.picture`) and its checks against the garment so far. Lengths are mm.

An ordinary operation is data: `@operation` makes its class a value and its own verb, whose arguments are its fields
(`kit.sewing.fields`); what speaks against it are its `rules` (`kit.sewing.rules`); what it says are the keys in `says`.
Every method here is derived from these and may be written by hand instead, for what cannot be said so.
"""

from __future__ import annotations

import inspect
from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any, ClassVar, NamedTuple, TypeVar, dataclass_transform, overload

from kit.diagnostic import Diagnostic
from kit.piece.piece import Side
from kit.piece.role import PieceRole
from kit.sewing import fields
from kit.sewing.cut import Cut
from kit.sewing.fields import Asked, Reads, filling, reads_of
from kit.sewing.outcome import Closing, Effect, Fact, How, Outcome, Uses
from kit.sewing.reading import Reader
from kit.sewing.rules import Of, Rule, broken
from kit.sewing.run import Place, Run
from kit.sewing.scene import Scene
from kit.sewing.spans import Span, sides_of, spans
from kit.sewing.state import State
from kit.sewing.verb import VERBS


class Sentence(NamedTuple):
    """`key` of a sentence in templates/language, and what fills it: name -> (value, kind). Kinds: length and
    allowance (mm), part (mm; the parts of one operation are rounded so that they add up), count, edge (runs),
    place (runs with their piece), mark (places), piece (names), strip (name), word (key of a word), names (what several
    things are called), text (the teacher's own)."""

    key: str
    values: Mapping[str, tuple[Any, str]]


class Say(NamedTuple):
    """A sentence that is said only `when` that is true of the operation."""

    key: str
    when: Callable[[Any], bool]


Telling = Callable[[Any, Cut], Iterable[Sentence]]
"""A sentence that no key alone can give: (operation, pattern) -> sentences."""
Keys = tuple[str | Say | Telling, ...]
Words = tuple[str, ...]
Rules = tuple[Rule, ...]
"""The types of `says`, of `tools` and its like, and of `rules`: written in a class that others build on."""


@dataclass(frozen=True, kw_only=True)
class Operation:
    """Base of all operations. `kind` is the key by which sentences and pictures know it; `called` its name in refusals
    (else `kind`); `seam_class` its ISO 4916 class and `stitch_type` its ISO 4915 stitch, from memory and only where
    sure; `cautions`, `tools` and `notions` are keys of templates/language; `crosses`: a seam that runs into it must
    have been pressed.

    `says` and `why` are its sentences in order: keys of its own family in templates/language ("press" is
    `<kind>-press`), fields in braces put in ("why_{corners}"). `gives`, `undoes` and `wanted` are facts: those that
    hold from now on, hold no longer, must hold once the garment is finished. `rules`: what must hold before, and what
    must not."""

    kind: ClassVar[str] = ""
    called: ClassVar[str] = ""
    seam_class: ClassVar[str] = ""
    stitch_type: ClassVar[str] = "301"
    cautions: ClassVar[Words] = ("needle",)
    tools: ClassVar[Words] = ("machine", "pins")
    notions: ClassVar[Words] = ("thread",)
    crosses: ClassVar[bool] = False
    says: ClassVar[Keys] = ()
    why: ClassVar[Keys] = ()
    gives: ClassVar[tuple[Of, ...]] = ()
    undoes: ClassVar[tuple[Of, ...]] = ()
    wanted: ClassVar[tuple[Of, ...]] = ()
    rules: ClassVar[Rules] = ()

    @classmethod
    def agree(cls, asked: Asked) -> None:
        """Raises `KitError` where the fields, each read by itself, do not go together (`asked.read`)."""

    @classmethod
    def made(cls, asked: Asked) -> Operation:
        """The operation of the fields as read; of another class where they ask for it."""
        return cls(**asked.read)

    def _held(self) -> list[tuple[str, Reads, Any]]:
        """(name, how it is read, value) of every field."""
        return [(name, reads, getattr(self, name)) for name, reads in reads_of(type(self)).items()]

    def runs(self) -> tuple[Run, ...]:
        """Every run the operation touches."""
        found = (value if isinstance(value, tuple) else (value,) for _, _, value in self._held())
        return tuple(run for row in found for run in row if isinstance(run, Run))

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        """The raw edge it closes."""
        found = ((value, reads.closes) for _, reads, value in self._held() if reads.closes and value is not None)
        return tuple(closing for value, how in found for closing in closings(pattern, _row(value), how))

    def takes(self, pattern: Cut) -> dict[tuple[str, str], float]:
        """{(piece, edge): mm of allowance its rows and turns take}."""
        found: dict[tuple[str, str], float] = {}
        for _, reads, value in self._held():
            if reads.takes:
                found |= taken(_row(value), sum(getattr(self, name) for name in reads.takes))
        return found

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        """Pairs of runs it joins."""
        return ()

    @property
    def uses(self) -> Uses:
        """The pieces of its runs, and of the marks it names."""
        marks = (each for _, _, value in self._held() for each in _row(value) if isinstance(each, Place))
        return Uses(pieces=tuple(dict.fromkeys([*(run.piece for run in self.runs()), *(mark.piece for mark in marks)])))

    def effect(self, pattern: Cut) -> Effect:
        """What else it changes of the garment in work."""
        becomes: dict[str, Any] = {}
        for _, reads, value in self._held():
            if reads.becomes:
                becomes[reads.becomes] = becomes.get(reads.becomes, ()) + _row(value)
        return Effect(facts=_facts(self.gives, self, pattern), undone=_facts(self.undoes, self, pattern), **becomes)

    def outcome(self, pattern: Cut) -> Outcome:
        """All that it changes, for the state of the garment to take."""
        return Outcome(self.closes(pattern), self.joins, self.uses, self.effect(pattern))

    def wants(self, pattern: Cut) -> tuple[Fact, ...]:
        """Facts that must hold once the garment is finished because this was done: what it prepared must be used."""
        return _facts(self.wanted, self, pattern)

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        """Stretches of edge it leaves as an opening of the finished garment: a vent, a pocket's mouth, a zip."""
        return ()

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        """What its pieces are because it sews them so: (piece, role, the piece it lies on or "")."""
        under = next((value.piece for _, _, value in self._held() if isinstance(value, Place)), "")
        held = [(reads.role, _row(value)) for _, reads, value in self._held() if reads.role]
        return tuple((run.piece, role, under) for role, row in held for run in row)

    def notion_amounts(self, pattern: Cut) -> dict[str, tuple[float, str]]:
        """{notion: (how much of it is used up, "length" in mm or "count")} where that can be said."""
        return {}

    def minutes(self, pattern: Cut) -> float:
        """Rough time it takes a learner, in minutes, all its halves together (common practice, no source): a start
        for setting up, and so much for each metre sewn."""
        metres = sum(span.length for run in self.runs() for span in spans(pattern, run)) / 1000
        return 4.0 + 6.0 * metres

    def values(self, pattern: Cut) -> dict[str, tuple[Any, str]]:
        """What fills its sentences: name -> (value, kind), each field under its name or as the field says."""
        found: dict[str, tuple[Any, str]] = {}
        for name, reads, value in self._held():
            found |= filling(name, reads, value)
        return found

    def told(self, keys: Iterable[str | Say | Telling], pattern: Cut) -> tuple[Sentence, ...]:
        """The sentences of some keys, filled."""
        values = self.values(pattern)
        found: list[Sentence] = []
        for each in keys:
            if isinstance(each, Say):
                if not each.when(self):
                    continue
                each = each.key
            found += [Sentence(self._key(each), values)] if isinstance(each, str) else each(self, pattern)
        return tuple(found)

    def _key(self, key: str) -> str:
        filled = key.format_map(_Words(self)) if "{" in key else key
        return filled if "." in filled else f"{self.kind}.{filled}"

    def whys(self, pattern: Cut) -> tuple[Sentence, ...]:
        """Why it is done so, for teaching: printed on demand."""
        return tuple(Sentence(key, {}) for key, _ in self.told(self.why, pattern))

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        """What to do, in order."""
        return self.told(self.says, pattern)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        """One scene for each stage worth showing; none where there is nothing to draw."""
        raise NotImplementedError

    def scene(self, pattern: Cut) -> Scene:
        """The last stage: what the operation leaves."""
        return next(reversed(self.scenes(pattern)), Scene(layers=()))

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        """What speaks against doing this now."""
        return broken(self.rules, self, state, pattern)


class _Words(dict[str, str]):
    """The fields of an operation as parts of a key: "one side" is one_side."""

    def __init__(self, operation: Operation) -> None:
        self._operation = operation

    def __missing__(self, name: str) -> str:
        return str(getattr(self._operation, name)).replace(" ", "_")


def _row(value: Any) -> tuple[Any, ...]:
    return value if isinstance(value, tuple) else (value,)


def _facts(of: Iterable[Of], made: Operation, pattern: Cut) -> tuple[Fact, ...]:
    return tuple(fact for each in of for fact in each.facts(made, pattern))


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


def both(*names: str) -> Telling:
    """The closing sentence of `both_sides` for the fields of those names, as one of an operation's `says`."""
    return lambda made, pattern: both_sides(pattern, (run for name in names for run in _row(getattr(made, name))))


# ---- the class as its own verb --------------------------------------------------------------------------------

T = TypeVar("T", bound=Operation)


@overload
def operation(made: type[T], /) -> type[T]: ...
@overload
def operation(*, verb: str) -> Callable[[type[T]], type[T]]: ...
@dataclass_transform(
    kw_only_default=True,
    frozen_default=True,
    field_specifiers=(
        fields.runs,
        fields.run,
        fields.meets,
        fields.row,
        fields.part,
        fields.opening,
        fields.width,
        fields.size,
        fields.word,
        fields.direction,
        fields.flag,
        fields.strip,
        fields.whole,
        fields.fixed,
        fields.pieces,
        fields.mark,
        fields.places,
        fields.read_by,
    ),
)
def operation(made: type[T] | None = None, /, *, verb: str | None = None) -> Any:
    """Makes a class a value, and the verb of its `kind` (or of the name `verb`): a method of `make` whose arguments are
    its fields, with its docstring. No verb comes of `verb=""`, nor of a class without a kind, which others build on."""

    def make_of(cls: type[T]) -> type[T]:
        whole = dataclass(frozen=True, kw_only=True)(cls)
        name = (whole.kind if "kind" in vars(whole) else "") if verb is None else verb
        if name:
            VERBS[name] = _verb(whole, name)
        return whole

    return make_of if made is None else make_of(made)


def _verb(cls: type[Operation], name: str) -> Callable[..., Operation]:
    """The function behind the word: it reads the arguments, field by field in the order of the class."""
    reads = reads_of(cls)
    first = inspect.Parameter("reader", inspect.Parameter.POSITIONAL_OR_KEYWORD, annotation="Reader")
    signature = inspect.Signature([first, *_parameters(cls)])

    def write(reader: Reader, *given: Any, **named: Any) -> Operation:
        bound = signature.bind(reader, *given, **named)
        bound.apply_defaults()
        where = cls.called or name.replace("_", " ")
        asked = Asked(
            reader, where, {field: bound.arguments.get(how.argument or field) for field, how in reads.items()}, {}
        )
        for field, how in reads.items():
            asked.read[field] = how.read(asked.given[field], asked, how.argument or field)
        cls.agree(asked)
        return cls.made(asked)

    write.__name__ = write.__qualname__ = name
    write.__doc__ = cls.__doc__
    write.__module__ = fields.__name__  # where the names in its annotations come from
    write.__signature__ = signature  # type: ignore[attr-defined]
    write.needed = tuple(how.argument or field for field, how in reads.items() if how.needed)  # type: ignore[attr-defined]
    return write


def _parameters(cls: type[Operation]) -> list[inspect.Parameter]:
    """The arguments of a verb: those in their place as the fields stand, a row, those by name that are needed, then
    those that may be left out, each as they stand, what the class adds before what it has from another."""
    ways = {"place": inspect.Parameter.POSITIONAL_OR_KEYWORD, "rest": inspect.Parameter.VAR_POSITIONAL}
    homes = [list(vars(each).get("__annotations__", {})) for each in cls.__mro__]
    order = list(dict.fromkeys(name for home in homes for name in home))
    found: dict[str, inspect.Parameter] = {}

    def place(item: tuple[str, Reads]) -> int:
        return -1 if item[1].way == "place" else order.index(item[0])

    for field, how in sorted(reads_of(cls).items(), key=place):
        if how.way == "none":
            continue
        name = how.argument or field
        found[name] = inspect.Parameter(
            name,
            ways.get(how.way, inspect.Parameter.KEYWORD_ONLY),
            default=fields.EMPTY if how.way == "rest" else how.default,
            annotation=how.annotation,
        )

    def order_of(one: inspect.Parameter) -> tuple[int, bool]:
        return one.kind, one.kind is one.KEYWORD_ONLY and one.default is not one.empty

    return sorted(found.values(), key=order_of)
