"""What the kit has to say of a pattern, a body, an order of sewing or a refusal, as data.

A `Diagnostic` holds the key of a message and what fills it, where it is met, how grave it is and what can be done.
Nothing here knows a language: words are put on when somebody reads, by `kit.wording`, which `kit` hands in
(`words_by`). Without it a message is its key and its plain values.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from dataclasses import dataclass
from typing import Any, Literal, NamedTuple, Protocol

Level = Literal["error", "warning", "note"]
System = Literal["cm", "inch"]

_read_first: ContextVar[System] = ContextVar("read_first", default="cm")


@contextmanager
def reading(system: System) -> Iterator[None]:
    """Inside the block a message turned to text says its lengths in `system` first, as the language it is said in
    (`kit.language.speaking`) is set for a stretch of work too."""
    token = _read_first.set(system)
    try:
        yield
    finally:
        _read_first.reset(token)


class Value(NamedTuple):
    """What fills a place of a message: a value and its `kind`, which says how it is put into words.

    length, allowance, finished (mm, rounded as the trade does for each); exact (mm with two decimals); share (0..1);
    number (decimals); count (whole); word (key of a small word); key (key of any message); text (somebody's own words,
    or what is written in code); title (of a piece or strip, within a sentence); piece ((title, side or "")); edge
    (`EdgeName`); edge_on ((`EdgeName`, side or "")); place (`NamedPlace`); landmark (`NamedLandmark`); stretch (from
    one landmark to another); row (of `NamedPlace`: runs sewn as one); name (of a point or line in code); measure (name
    of a body measurement; measure_first: as the first word of a sentence); message (`Message`); list, string and
    parted (of `Value`: a, b and c; a, b, c; a; b; c).
    `system`: the unit read first, where it is not the reader's."""

    value: Any
    kind: str
    system: System | Literal[""] = ""


class EdgeName(NamedTuple):
    """An edge by its name in code and by the lesson's own words, if it has any."""

    name: str
    said: str = ""


class NamedLandmark(NamedTuple):
    """A place along edges by what lies there, as `kit.sewing.legs.Landmark` finds it. `kind`: mark, notch, edge, tip or
    length; `label` the edge, or what the mark is called. `way`: of a mark of two ends upper, lower or toward the edge
    `beside`; of a notch double, or number where there are several, counted from the edge `label`; of a tip start or
    end; of a length of `mm` below, above or from the edge `label`. `side`: the half, where the edges lie on both."""

    kind: str
    label: EdgeName | str
    way: str = ""
    beside: EdgeName = EdgeName("")
    mm: float = 0.0
    side: str = ""
    number: int = 0


class NamedPlace(NamedTuple):
    """Edges of a piece, or what a mark of it is called (a text), on one `side` or on both (""); `part`: from one
    landmark to another of them, or all."""

    title: str
    edges: tuple[EdgeName | str, ...]
    side: str = ""
    part: tuple[NamedLandmark, NamedLandmark] | None = None


@dataclass(frozen=True)
class Message:
    """`key` of a message in templates/language and its `values` by name. As text it is said in the spoken language, the
    lengths in the system that is read first (`reading`)."""

    key: str
    values: tuple[tuple[str, Value], ...] = ()

    def __str__(self) -> str:
        return _words(self, _read_first.get())

    def said(self, system: System) -> str:
        """The message in words, lengths in `system` first."""
        return _words(self, system)

    def as_dict(self) -> dict[str, Any]:
        """{"key", "values": {name: {"value", "kind"}}} for a file: lengths in mm to a hundredth."""
        return {"key": self.key, "values": {name: _plain(value) for name, value in self.values}}


Told = Message | str
"""A message, or somebody's own words: a title, a file, a line of code; English in refusals that only code can cause."""


def message(key: str, /, **values: Value | Message | str | int) -> Message:
    """The message of `key`. A text stands for itself, a whole number is a count."""
    return Message(key, tuple((name, as_value(value)) for name, value in values.items()))


def as_value(value: Value | Message | str | int) -> Value:
    """What fills a place, with its kind."""
    if isinstance(value, Value):
        return value
    if isinstance(value, Message):
        return Value(value, "message")
    return Value(value, "count" if isinstance(value, int) else "text")


def measured(mm: float, kind: Literal["length", "allowance", "finished", "exact", "least", "most"] = "length") -> Value:
    """A length in mm; the "least" or the "most" that may be is told on the side that keeps it."""
    return Value(float(mm), kind)


def per_cent(share: float) -> Value:
    """A share (0..1), said in per cent."""
    return Value(float(share), "share")


def number(value: float) -> Value:
    """A number with decimals."""
    return Value(float(value), "number")


def word(key: str) -> Value:
    """A small word of the catalogue ("word.left")."""
    return Value(key, "word")


def titled(title: str) -> Value:
    """A title within a sentence."""
    return Value(title, "title")


def own(name: str) -> Value:
    """A point or line that has only its name in code."""
    return Value(name, "name")


def measure(name: str) -> Value:
    """A body measurement by its name."""
    return Value(name, "measure")


def list_of(values: Iterable[Value | Message | str], way: Literal["list", "string", "parted"] = "list") -> Value:
    """Several values: a, b and c; or strung one after another, or parted by a stronger sign."""
    return Value(tuple(as_value(value) for value in values), way)


def within(outer: Told, inner: Told) -> Told:
    """A place inside another: the piece, then its edge. Either may be empty."""
    if not outer or not inner:
        return outer or inner
    if isinstance(outer, str) and isinstance(inner, str):
        return f"{outer}, {inner}"
    return message("phrase.more", first=outer, last=inner)


class HasName(Protocol):
    """An edge: its name in code, and the lesson's own words for it ("")."""

    @property
    def name(self) -> str: ...
    @property
    def said(self) -> str: ...


def named_edge(given: HasName | str) -> Value:
    """An edge of a piece."""
    return Value(EdgeName(given) if isinstance(given, str) else EdgeName(given.name, given.said), "edge")


@dataclass(frozen=True)
class Diagnostic:
    """One thing to say: its `code` for machines and its `level`; what it `says` and `at` which place, told to people;
    the `amount` in mm where a length says by how much; what `can` be done. `step`, `piece`, `edge`, `side`, the body
    `measures`, the parameter, the `file` and its `line` (from 1; 0: none) are names for finding the place.
    What a change of values would mend is another question, asked of the whole draft: `kit.proof.mending`."""

    code: str
    level: Level
    says: Told
    at: Told = ""
    amount: float | None = None
    can: Told = ""
    step: str = ""
    piece: str = ""
    edge: str = ""
    side: str = ""
    measures: tuple[str, ...] = ()
    parameter: str = ""
    file: str = ""
    line: int = 0

    @property
    def what(self) -> str:
        """What it says, in the spoken language."""
        return str(self.says)

    @property
    def where(self) -> str:
        """The place, in the spoken language."""
        return str(self.at)

    @property
    def do(self) -> str:
        """What can be done, in the spoken language."""
        return str(self.can)

    def __str__(self) -> str:
        head = self.what
        if self.at:
            keyed = isinstance(self.at, Message) or isinstance(self.says, Message)
            head = str(message("proof.at", where=self.where, what=head)) if keyed else f"{self.at}: {head}"
        return f"{head} {self.do}" if self.can else head

    def as_dict(self) -> dict[str, Any]:
        """For findings.json: in words, and as `key` and `values`; amounts in mm to a hundredth."""
        return {
            "code": self.code,
            "level": self.level,
            "what": self.what,
            "where": self.where,
            "amount": None if self.amount is None else round(self.amount, 2),
            "do": self.do,
            "step": self.step,
            "piece": self.piece,
            "edge": self.edge,
            **(self.says.as_dict() if isinstance(self.says, Message) else {"key": "", "values": {}}),
        }


def _plain(value: Value) -> dict[str, Any]:
    """A value as JSON writes it."""
    given = value.value
    if isinstance(given, Message):
        return {"value": given.as_dict(), "kind": value.kind}
    if isinstance(given, float):
        return {"value": round(given, 2), "kind": value.kind}
    if value.kind in ("list", "string", "parted"):
        return {"value": [_plain(each) for each in given], "kind": value.kind}
    if isinstance(given, EdgeName):
        return {"value": given.name, "kind": value.kind}
    if isinstance(given, NamedPlace):
        return {"value": _spot(given), "kind": value.kind}
    if isinstance(given, NamedLandmark):
        return {"value": _landmark(given), "kind": value.kind}
    if value.kind == "stretch":
        return {"value": [_landmark(each) for each in given], "kind": value.kind}
    if value.kind == "row":
        return {"value": [_spot(each) for each in given], "kind": value.kind}
    return {"value": given, "kind": value.kind}


def _spot(spot: NamedPlace) -> dict[str, Any]:
    names = [each.name if isinstance(each, EdgeName) else each for each in spot.edges]
    part = {} if spot.part is None else {"part": [_landmark(each) for each in spot.part]}
    return {"piece": spot.title, "edges": names, "side": spot.side, **part}


def _landmark(given: NamedLandmark) -> dict[str, Any]:
    label = given.label.name if isinstance(given.label, EdgeName) else given.label
    return {"kind": given.kind, "label": label, "way": given.way, "mm": round(given.mm, 2), "side": given.side}


def _keyed(told: Message, system: System) -> str:
    """A message before any words are known."""
    values = ", ".join(f"{name}={value.value}" for name, value in told.values)
    return f"{told.key} ({values})" if values else told.key


_say: list[Callable[[Message, System], str]] = [_keyed]


def words_by(say: Callable[[Message, System], str]) -> None:
    """From now on `say` puts messages into words."""
    _say[0] = say


def _words(told: Message, system: System) -> str:
    return _say[0](told, system)
