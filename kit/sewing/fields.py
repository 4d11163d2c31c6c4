"""The fields of an operation: what each holds, how it is read from what a sewing step writes, what follows from it.

A field stands in the class of the operation with its type and one of the words below: `edges: tuple[Run, ...] =
runs(closes="sewn", takes="allowance")`. From the word come the argument of the verb (name, place, default), its
reading with plain refusals, the raw edge it closes, the allowance it takes, and what it fills in the sentences.
A default is written as a step would write it (`6 * mm`); the field then holds mm as a float.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field, fields, replace
from inspect import Parameter
from typing import Any, Literal, TypedDict, Unpack

from kit.errors import KitError
from kit.piece.role import PieceRole
from kit.sewing.handle import PieceHandle
from kit.sewing.handle import StripEdges as StripEdges
from kit.sewing.handle import StripHandle as StripHandle
from kit.sewing.marked import Fold as Fold
from kit.sewing.marked import Place
from kit.sewing.outcome import How
from kit.sewing.reading import (
    WIDEST_ALLOWANCE,
    Reader,
    marks,
    opening_run,
    read_size,
    read_whole,
    read_width,
    read_word,
)
from kit.sewing.reading import Opening as Opening
from kit.sewing.reading import Runs as Runs
from kit.sewing.run import Run
from kit.units import Size as Size

Way = Literal["place", "rest", "name", "none"]
"""How an argument is written: in its place, as one of a row (`*edges`), by its name; "none": it is no argument."""
EMPTY: Any = Parameter.empty
"""The default of what must be written."""
Fills = Mapping[str, str]
"""What a field fills in the sentences: name of the place ("": its own) -> kind (see `operation.Sentence`). The kind
"word.finish" is a word of that family; "none" of it fills nothing; from, to and size are those of a stretch."""
_NOTHING: Fills = {}
Closes = How | Callable[[Any], How | None] | None
"""How a field's raw edges are closed, or a function of the operation that says it."""
Takes = str | Sequence[str] | Callable[[Any], float | None]
"""The widths a field takes of the allowance, as the names of fields, or a function of the operation that gives mm."""
Becomes = Literal["", "faced", "unpressed", "pressed"]


@dataclass(frozen=True)
class Asked:
    """A call of a verb while it is read: who reads, the operation's name as refusals say it, what is written for each
    field, and the fields read so far."""

    reader: Reader
    where: str
    given: Mapping[str, Any]
    read: dict[str, Any]

    def at(self, said: str) -> str:
        """The place of one argument in words."""
        return f"{self.where}, {said.replace('_', ' ')}"


@dataclass(frozen=True)
class Reads:
    """What is known of a field besides its name and type. `read` gives its value from (what is written, the call, the
    argument's name); `annotation` is the type of the argument, `argument` its name where that is not the field's. The
    operation is sewn on its runs where they are `touched`; `strips`: how many of the strip it names are used up."""

    read: Callable[[Any, Asked, str], Any]
    annotation: str
    way: Way = "name"
    default: Any = EMPTY
    argument: str = ""
    closes: Closes = None
    takes: Takes = ()
    becomes: Becomes = ""
    role: PieceRole = ""
    fills: Fills | None = None
    needed: bool = False
    touched: bool = True
    strips: str | int | None = None


class Follows(TypedDict, total=False):
    """What follows from a field of edges: how their raw edge is closed (`closes`), the widths that their rows and turns
    take of the allowance (`takes`), what they are afterwards (`becomes`), what their piece is (`role`), what they fill
    in the sentences (`fills`), whether the operation is sewn on them (`touched`), whether they may not be left out
    (`needed`)."""

    closes: Closes
    takes: Takes
    becomes: Becomes
    role: PieceRole
    fills: Fills
    touched: bool
    needed: bool


_READS: dict[Any, dict[str, Reads]] = {}


def reads_of(kind: type) -> dict[str, Reads]:
    """The fields of an operation that say how they are read, in the order of the class; gathered once."""
    if kind not in _READS:
        _READS[kind] = {each.name: each.metadata["reads"] for each in fields(kind) if "reads" in each.metadata}
    return _READS[kind]


def _field(reads: Reads, held: Any = EMPTY) -> Any:
    """The field of a dataclass; `held` is what it holds by default."""
    return field(metadata={"reads": reads}, **({} if held is EMPTY else {"default": held}))


def _mm(given: Any) -> Any:
    """A default as the field holds it."""
    return float(given) if isinstance(given, int | float) else given


def _edges(reads: Reads, more: Follows, held: Any = EMPTY) -> Any:
    """The field of some edges, with what follows from them."""
    takes = more.get("takes", ())
    told: dict[str, Any] = {**more, "takes": (takes,) if isinstance(takes, str) and takes else takes}
    return _field(replace(reads, **told), held)


# ---- edges ----------------------------------------------------------------------------------------------------


def runs(**more: Unpack[Follows]) -> Any:
    """A row of edges, written one after another: `make.hem(front.hem, back.hem, ...)`."""

    def read(given: Any, asked: Asked, name: str) -> tuple[Run, ...]:
        return asked.reader.runs(given, asked.where)

    return _edges(Reads(read, "Runs", "rest", (), fills={"edge": "place"}, needed=True), more)


def run(*, only: str, **more: Unpack[Follows]) -> Any:
    """One edge, written in its place. `only` says what to name where several are."""

    def read(given: Any, asked: Asked, name: str) -> Run:
        (found, *others) = asked.reader.runs(given, asked.where)
        if others:
            raise KitError("several edges are named.", where=asked.where, do=only)
        return found

    return _edges(Reads(read, "Run", "place", fills={"edge": "place"}), more)


def meets(other: str, *, argument: str = "", marked: str = "", **more: Unpack[Follows]) -> Any:
    """Edges that meet those of the field `other`, one or a row of them, written in its place. Of the two fields that
    name each other the first in the class is the first of the pair. `marked`: the one of the two, named so by both,
    that is one edge, a part of it or an opening marked on it."""
    own = marked not in ("", other)

    def read(given: Any, asked: Asked, name: str) -> tuple[Run, ...]:
        first, theirs = other not in asked.read, asked.given[other]
        if own:
            given = opening_run(asked.reader, given, asked.where)
        elif marked:
            theirs = opening_run(asked.reader, theirs, asked.where)
        return asked.reader.pair(*((given, theirs) if first else (theirs, given)), asked.where)[0 if first else 1]

    return _edges(Reads(read, "Run | Place" if own else "Runs", "place", argument=argument, fills=_NOTHING), more)


def row(*, by_name: bool = False, default: Any = EMPTY, said: str = "", **more: Unpack[Follows]) -> Any:
    """Edges as one argument, one or a list of them: in its place or `by_name`; with `default=()` there may be none."""
    empty = default is not EMPTY

    def read(given: Any, asked: Asked, name: str) -> tuple[Run, ...]:
        return asked.reader.runs((given,) if empty else given, asked.at(said) if said else asked.where, empty)

    return _edges(Reads(read, "Runs", "name" if by_name else "place", default, fills=_NOTHING), more, default)


def part(*, by_name: bool = False, default: Any = EMPTY, **more: Unpack[Follows]) -> Any:
    """One edge, a part of it, or an opening marked on it, written in its place or `by_name`. With `default=None` it may
    be left out."""

    def read(given: Any, asked: Asked, name: str) -> Run | None:
        if given is None and default is None:
            return None
        return opening_run(asked.reader, given, asked.at(name) if by_name else asked.where)

    kind = "Run | Place | None" if default is None else "Run | Place"
    return _edges(Reads(read, kind, "name" if by_name else "place", default, fills={"": "place"}), more, default)


def opening(a: str, b: str, *, default: Any = None) -> Any:
    """A stretch left open of a seam between the fields `a` and `b`, as (start, end) in mm along the first: written as a
    mark on it or two lengths, or left out (not with `default=EMPTY`). In sentences it is from, to and size."""

    def read(given: Any, asked: Asked, name: str) -> tuple[float, float] | None:
        return asked.reader.opening(given, asked.read[a], asked.read[b], asked.where)

    kind = "Opening" if default is EMPTY else "Opening | None"
    return _field(Reads(read, kind, default=default, fills={"from": "from", "to": "to", "size": "size"}), default)


# ---- lengths and words ----------------------------------------------------------------------------------------


def width(
    *,
    default: Any = EMPTY,
    most: float = WIDEST_ALLOWANCE,
    said: str = "",
    argument: str = "",
    fills: str | Fills = "allowance",
) -> Any:
    """A length above zero and up to `most`, mm. With `default=None` it may be left out. `fills`: what kind of length
    it is in sentences: allowance, length, part; under another name, as a mapping."""
    return _length(read_width, default, most, said, argument, fills)


def size(
    *,
    default: Any = EMPTY,
    most: float = WIDEST_ALLOWANCE,
    said: str = "",
    argument: str = "",
    fills: str | Fills = "allowance",
) -> Any:
    """A length that may be zero; else as `width`."""
    return _length(read_size, default, most, said, argument, fills)


def _length(
    reader: Callable[..., float], default: Any, most: float, said: str, argument: str, fills: str | Fills
) -> Any:
    def read(given: Any, asked: Asked, name: str) -> float | None:
        if given is None and default is None:
            return None
        return reader(given, asked.at(said or name), most)

    filled = {"": fills} if isinstance(fills, str) else fills
    kind = "Size | None" if default is None else "Size"
    return _field(Reads(read, kind, default=default, argument=argument, fills=filled), _mm(default))


def word(known: Sequence[str], *, default: Any = EMPTY, argument: str = "", fills: Fills = _NOTHING) -> Any:
    """One of a few words."""

    def read(given: Any, asked: Asked, name: str) -> str:
        return read_word(given, tuple(known), name, asked.where)

    kind = f"Literal[{', '.join(map(repr, known))}]"
    return _field(Reads(read, kind, default=default, argument=argument, fills=fills), default)


def direction(*words: str, default: str, of: Sequence[str] = ()) -> Any:
    """Where something is pressed or turned: one of the words, or towards a piece, by its name or as itself: one of the
    pieces of the fields `of`, or of all pieces."""

    def read(given: Any, asked: Asked, name: str) -> str:
        if isinstance(given, PieceHandle):
            given = asked.reader.piece(given, asked.where)
        named = [run.piece for name in of for run in asked.read[name]] or [
            piece.name for piece in asked.reader.cut.pieces
        ]
        return read_word(given, (*words, *dict.fromkeys(named)), name, asked.where)

    return _field(Reads(read, "str | PieceHandle", default=default, fills=_NOTHING), default)


def flag(*, default: bool) -> Any:
    """True or False; 1 and 0 say the same, as they do in Python."""

    def read(given: Any, asked: Asked, name: str) -> bool:
        if not isinstance(given, int) or given not in (0, 1):
            read_word(given, (), name, asked.where, "Write True or False.")
        return bool(given)

    return _field(Reads(read, "bool", default=default, fills=_NOTHING), default)


def strip(
    *,
    by_name: bool = False,
    default: Any = EMPTY,
    argument: str = "",
    fills: Fills | None = None,
    uses: str | int = 1,
) -> Any:
    """A strip, held by its name, written in its place or `by_name`. With `default=None` it is written by name and may
    be left out; its name is then empty. `uses`: how many of it are used up, a number or the name of a field."""
    free = default is None

    def read(given: Any, asked: Asked, name: str) -> str:
        return "" if given is None and free else asked.reader.strip(given, asked.where)

    way: Way = "name" if free or by_name else "place"
    kind = "StripHandle | None" if free else "StripHandle"
    shape = Reads(read, kind, way, default, argument, fills={"": "strip"} if fills is None else fills, strips=uses)
    return _field(shape, "" if free else EMPTY)


def fixed(held: Any, **more: Unpack[Follows]) -> Any:
    """What an operation holds always: a field that others of its kind let choose."""
    return _edges(Reads(lambda given, asked, name: held, "", "none", fills=_NOTHING), more, held)


def whole(*, default: int, most: int, refused: str, do: str = "") -> Any:
    """A whole number from 1 to `most`. Another is refused as "0 <refused>."."""

    def read(given: Any, asked: Asked, name: str) -> int:
        number = read_whole(given)
        if number is None or not 1 <= number <= most:
            fix = do or f"Write a whole number from 1 to {most}."
            raise KitError(f"{given!r} {refused}.", where=asked.where, do=fix)
        return number

    return _field(Reads(read, "int", default=default, fills={"": "count"}), default)


def pieces(*, like: str) -> Any:
    """Whole pieces, held by their names, written one after another. `like` shows how: "make.fuse(front_facing)"."""

    def read(given: Any, asked: Asked, name: str) -> tuple[str, ...]:
        if not given:
            raise KitError("no piece is named.", where=asked.where, do=f"Name the pieces: {like}.")
        return tuple(asked.reader.piece(piece, asked.where) for piece in given)

    return _field(Reads(read, "PieceHandle", "rest", (), fills={"pieces": "piece"}, needed=True))


# ---- marks and folds ------------------------------------------------------------------------------------------


def mark(kind: str, *, refused: str, do: str, fills: Fills | None = None) -> Any:
    """A mark of a piece that is of one kind, written by its name in the call; another is `refused` so, and `do` says
    what to do."""

    def read(given: Any, asked: Asked, name: str) -> Place:
        if isinstance(given, Place) and given.mark.kind == kind:
            return given
        named = given.said if isinstance(given, Place) else repr(given)
        raise KitError(f"{named} {refused}", where=asked.where, do=do)

    return _field(Reads(read, "Place", fills=fills or {"place": "mark"}))


def places(*, by_name: bool = False, default: Any = EMPTY) -> Any:
    """Marks: a row of them, written one after another, or `by_name`, one or a list of them; with `default=()` there may
    be none."""
    empty = default is not EMPTY

    def read(given: Any, asked: Asked, name: str) -> tuple[Place, ...]:
        return marks((given,), asked.at(name), empty) if by_name else marks(given, asked.where, empty)

    if by_name:
        shape = Reads(read, "Place | list[Place] | tuple[Place, ...]", "name", default, fills={"": "mark"})
    else:
        shape = Reads(read, "Place", "rest", (), fills={"": "mark"}, needed=not empty)
    return _field(shape, default)


def read_by(
    read: Callable[[Any, Asked, str], Any],
    annotation: str,
    *,
    way: Way = "name",
    default: Any = EMPTY,
    held: Any = EMPTY,
    argument: str = "",
    **more: Unpack[Follows],
) -> Any:
    """A field that is read by a function of its own: (what is written, the call, the argument's name) -> what it holds.
    `annotation` is the type of the argument. With `way="none"` it is no argument, but follows from the others
    (`asked.given`, `asked.read`)."""
    return _edges(Reads(read, annotation, way, default, argument, fills=_NOTHING), more, held)


# ---- what sentences say of a field ----------------------------------------------------------------------------

_OF_A_STRETCH: Mapping[str, Callable[[tuple[float, float]], float]] = {
    "from": lambda ends: ends[0],
    "to": lambda ends: ends[1],
    "size": lambda ends: ends[1] - ends[0],
}


def filling(name: str, reads: Reads, value: Any) -> dict[str, tuple[Any, str]]:
    """What a field fills in the sentences: {name: (value, kind)}."""
    if value is None or value == "":
        return {}
    found: dict[str, tuple[Any, str]] = {}
    for called, kind in (reads.fills or {}).items():
        row_of = value if isinstance(value, tuple) or kind in ("strip", "word", "text", "count") else (value,)
        if kind.startswith("word."):
            if value != "none":
                found[called or name] = (f"{kind.removeprefix('word.')}.{value}", "word")
        elif kind == "piece":
            found[called or name] = (
                tuple(dict.fromkeys(each if isinstance(each, str) else each.piece for each in row_of)),
                kind,
            )
        elif kind in ("edge", "place", "mark"):
            found[called or name] = (row_of, kind)
        elif kind in _OF_A_STRETCH:
            found[called or name] = (_OF_A_STRETCH[kind](value), "length")
        else:
            found[called or name] = (value, kind)
    return found
