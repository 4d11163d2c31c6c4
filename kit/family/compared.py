"""Two editions of a lesson side by side: what differs in measures, pieces, notions and steps. Pure data, not yet said.

What counts is what a reader can notice: a measure whose printed reading differs, a line that moved by more than a
ruler shows, a sentence that reads otherwise. The two may be sizes, settings, the cloth first cut and the corrected
pattern, or editions years apart.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from difflib import SequenceMatcher
from typing import Literal, TypeVar

from kit.diagnostic import message
from kit.errors import KitError, near
from kit.family.edition import Edition
from kit.geometry import Motion, Point
from kit.lesson.moved import TOLD, moved_pieces
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.moved import moved_piece
from kit.piece.piece import Edge, Notch, Piece
from kit.piece.recut import matched
from kit.prose.told import ToldStep
from kit.units import Style, System, both, percent

State = Literal["changed", "new", "gone"]
Kind = Literal["length", "share", "count"]
Of = Literal[
    "body",
    "value",
    "finished",
    "edge",
    "dart",
    "allowance",
    "extra",
    "notch",
    "strip_length",
    "strip_width",
    "cut",
    "cloth",
]
Thing = TypeVar("Thing")
Pair = tuple[float | None, float | None]
_SENTENCE = re.compile(r"(?<=[.!?…])\s+")


@dataclass(frozen=True)
class Difference:
    """One measure that differs: what it is `of`, the `name` of that (a measurement, parameter, strip, piece or edge in
    code, the title of a finished measurement, or a cloth and its width), its value `before` and `after` (mm, a share
    from 0 to 1, or whole; None where one edition has none), and the name of the `piece` whose edge it is."""

    of: Of
    name: str
    before: float | None
    after: float | None
    kind: Kind = "length"
    piece: str = ""


@dataclass(frozen=True)
class PieceDifference:
    """A piece that is not the same: its `name` and `title`, and whether it is new, gone or changed; `lines` says that a
    line moved, `differences` are its measures."""

    name: str
    title: str
    state: State
    lines: bool = False
    differences: tuple[Difference, ...] = ()


@dataclass(frozen=True)
class StepDifference:
    """A step that reads otherwise: the sentences that were (`before`) and that are (`after`), those both have left
    out."""

    key: str
    title: str
    kind: Literal["draft", "sew"]
    state: State
    before: tuple[str, ...] = ()
    after: tuple[str, ...] = ()


@dataclass(frozen=True)
class Comparison:
    """What differs between two editions, `after` with each piece laid where it is compared (`compared`)."""

    before: Edition
    after: Edition
    measures: tuple[Difference, ...]
    pieces: tuple[PieceDifference, ...]
    steps: tuple[StepDifference, ...]
    notions: tuple[tuple[str, ...], tuple[str, ...]]

    @property
    def nothing(self) -> bool:
        """Whether a reader could not tell the two apart."""
        return not (self.measures or self.pieces or self.steps or any(self.notions))

    @property
    def moved(self) -> tuple[str, ...]:
        """The names of the pieces of which there is something to lay over each other."""
        return tuple(piece.name for piece in self.pieces if piece.lines)


def compared(before: Edition, after: Edition, at: str = "", system: System | None = None) -> Comparison:
    """What differs from `before` to `after`. Pieces lie on each other as they were drafted, or with the place `at` of
    both on one spot: a point such as "neck_point", or an end of an edge, "side.start". `system` is read first when
    readings are compared. `KitError` for a place that no piece of both editions has."""
    units = system or after.units
    after = _laid(before, after, at) if at else after
    notions = _apart(before.notions, after.notions)
    return Comparison(
        before,
        after,
        tuple(_measures(before, after, units)),
        tuple(_pieces(before, after, units)),
        tuple(_steps(before.steps, after.steps)) if before.steps and before.language == after.language else (),
        notions,
    )


STYLES: dict[Of, Style] = {"finished": "finished", "cloth": "shop"}
"""How lengths are rounded that are no lines of the draft."""


def reads(value: float | None, kind: Kind, system: System, of: Of = "edge") -> str:
    """A value as it is printed; empty for none."""
    if value is None:
        return ""
    if kind == "share":
        return percent(value, 1)
    return f"{value:.0f}" if kind == "count" else both(value, system, STYLES.get(of, "draft"))


# ---- measures ---------------------------------------------------------------------------------------------


def _measures(before: Edition, after: Edition, system: System) -> Iterator[Difference]:
    yield from _listed("body", before.body, after.body, system)
    values = [{value.name: value for value in edition.values} for edition in (before, after)]
    for name in dict.fromkeys([*values[0], *values[1]]):
        was, now = (known.get(name) for known in values)
        shown = now or was
        assert shown is not None
        found = Difference("value", name, *_read(was, now, lambda value: value.value), shown.kind)
        if _differs(found, system):
            yield found
    yield from _listed("finished", before.finished, after.finished, system)
    yield from _strips(before, after, system)
    if before.cloth and after.cloth:
        yield from _listed("cloth", before.cloth, after.cloth, system)


def _listed(
    of: Of, before: Sequence[tuple[str, float]], after: Sequence[tuple[str, float]], system: System
) -> Iterator[Difference]:
    was, now = dict(before), dict(after)
    for name in dict.fromkeys([*was, *now]):
        found = Difference(of, name, was.get(name), now.get(name))
        alone = found.before is None or found.after is None
        if _differs(found, system) and not (of == "body" and alone):  # one edition may tell more of the body
            yield found


def _strips(before: Edition, after: Edition, system: System) -> Iterator[Difference]:
    was, now = ({strip.name: strip for strip in edition.strips} for edition in (before, after))
    for name in dict.fromkeys([*was, *now]):
        one, two = was.get(name), now.get(name)
        found = (
            Difference("strip_length", name, *_read(one, two, lambda strip: strip.length)),
            Difference("strip_width", name, *_read(one, two, lambda strip: strip.width)),
            Difference("cut", name, *_read(one, two, lambda strip: float(strip.count)), "count"),
        )
        yield from (each for each in found if _differs(each, system))


def _read(was: Thing | None, now: Thing | None, read: Callable[[Thing], float | None]) -> Pair:
    """What is read of a thing in both editions, None in one that has it not."""
    return None if was is None else read(was), None if now is None else read(now)


def _differs(found: Difference, system: System) -> bool:
    """Whether it reads otherwise. A hair's breadth can change a reading and is not worth a word."""
    if found.before is None or found.after is None:
        return found.before is not found.after
    if found.kind == "length" and abs(found.before - found.after) < 0.05:
        return False
    return reads(found.before, found.kind, system, found.of) != reads(found.after, found.kind, system, found.of)


# ---- pieces -----------------------------------------------------------------------------------------------


def _pieces(before: Edition, after: Edition, system: System) -> Iterator[PieceDifference]:
    was, now = ({piece.name: piece for piece in edition.pieces} for edition in (before, after))
    moved = moved_pieces(before, after)
    for name in dict.fromkeys([*now, *was]):
        one, two = was.get(name), now.get(name)
        if one is None or two is None:
            there = two or one
            assert there is not None
            yield PieceDifference(name, there.title, "new" if one is None else "gone")
            continue
        found = tuple(each for each in _of_piece(one, two) if _differs(each, system))
        if found or name in moved or _folds(one) != _folds(two):
            yield PieceDifference(name, two.title, "changed", name in moved, found)


def _folds(piece: Piece) -> list[tuple[str, str]]:
    folds: tuple[Dart | Pleat, ...] = (*piece.darts, *piece.pleats)
    return [(fold.name, fold.edge) for fold in folds]


def _of_piece(was: Piece, now: Piece) -> Iterator[Difference]:
    yield Difference("cut", now.name, float(was.cut.count), float(now.cut.count), "count")
    names = matched(was, now)
    for edge in now.edges:
        old = was.edge(names[edge.name]) if edge.name in names else None
        yield from _of_edge(old, edge, edge.name, now.name)
    for edge in was.edges:
        if edge.name not in names.values():
            yield from _of_edge(edge, None, edge.name, now.name)
    darts = [{dart.name: dart for dart in piece.darts} for piece in (was, now)]
    for name in dict.fromkeys([*darts[1], *darts[0]]):
        intake = _read(darts[0].get(name), darts[1].get(name), lambda dart: dart.end - dart.start)
        yield Difference("dart", name, *intake, piece=now.name)
    yield from _notches(was, now, names)


def _of_edge(was: Edge | None, now: Edge | None, name: str, piece: str) -> Iterator[Difference]:
    one, two = _read(was, now, lambda edge: edge.path.length)
    if one is None or two is None or abs(one - two) > TOLD:
        yield Difference("edge", name, one, two, piece=piece)
    if was and now:
        yield Difference("allowance", name, *_read(was, now, lambda edge: edge.allowance), piece=piece)
        if was.extra or now.extra:
            yield Difference("extra", name, *_read(was, now, lambda edge: edge.extra), piece=piece)


def _notches(was: Piece, now: Piece, names: dict[str, str]) -> Iterator[Difference]:
    """Notches edge by edge in their order along it: where each stands, from the start of its edge."""
    for edge in now.edges:
        if edge.name not in names:
            continue
        olds, news = _along(was, names[edge.name]), _along(now, edge.name)
        for number in range(max(len(olds), len(news))):
            one = olds[number].distance if number < len(olds) else None
            two = news[number].distance if number < len(news) else None
            if one is None or two is None or abs(one - two) > TOLD:
                yield Difference("notch", edge.name, one, two, piece=now.name)


def _along(piece: Piece, edge: str) -> list[Notch]:
    return sorted((notch for notch in piece.notches if notch.edge == edge), key=lambda notch: notch.distance)


# ---- steps ------------------------------------------------------------------------------------------------


def _steps(before: Sequence[ToldStep], after: Sequence[ToldStep]) -> Iterator[StepDifference]:
    was, now = ({(step.kind, step.key): step for step in steps} for steps in (before, after))
    for place in dict.fromkeys([*now, *was]):
        one, two = was.get(place), now.get(place)
        there = two or one
        assert there is not None
        if one is None or two is None:
            state: State = "new" if one is None else "gone"
            yield StepDifference(
                there.key,
                there.title,
                there.kind,
                state,
                () if one is None else one.words,
                () if two is None else two.words,
            )
            continue
        parts = _apart((one.title, *_sentences(one)), (two.title, *_sentences(two)))
        if any(parts):
            yield StepDifference(two.key, two.title, two.kind, "changed", *parts)


def _sentences(step: ToldStep) -> Iterator[str]:
    for paragraph in step.words:
        yield from _SENTENCE.split(paragraph)


def _apart(before: Sequence[str], after: Sequence[str]) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """What only one of two lists of sentences has, in order, each once. A sentence that moved is in both."""
    gone: list[str] = []
    come: list[str] = []
    for tag, a, b, c, d in SequenceMatcher(None, before, after, autojunk=False).get_opcodes():
        if tag != "equal":
            gone += before[a:b]
            come += after[c:d]
    return tuple(dict.fromkeys(gone)), tuple(dict.fromkeys(come))


# ---- laying one piece on another --------------------------------------------------------------------------


def _laid(before: Edition, after: Edition, at: str) -> Edition:
    """`after` with every piece slid so that the place `at` lies where it lies in `before`; one that lacks it stays."""
    pieces, found = [], False
    for piece in after.pieces:
        was = next((each for each in before.pieces if each.name == piece.name), None)
        to, start = None if was is None else _place(was, at), _place(piece, at)
        if to is not None and start is not None:
            found = True
            piece = moved_piece(piece, Motion.translation(to - start))
        pieces.append(piece)
    if not found:
        names = {name for edition in (before, after) for piece in edition.pieces for name, _ in piece.points}
        raise KitError(message("family.no_such_place", place=at), do=near(at, sorted(names)) if names else "")
    return replace(after, pieces=tuple(pieces))


def _place(piece: Piece, at: str) -> Point | None:
    edge, _, end = at.rpartition(".")
    if edge and end in ("start", "end"):
        if not piece.has_edge(edge):
            return None
        path = piece.edge(edge).path
        return path.start if end == "start" else path.end
    return next((point for name, point in piece.points if name == at), None)
