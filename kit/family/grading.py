"""A lesson in all its sizes: every measure from size to size, the steps between, and where a step is not like its
neighbours.

A grade may change its pace (many charts step 4 cm among the smaller sizes and 6 cm among the larger); what it should
not do is stumble. One size off the line of its neighbours shows in the steps on both sides of it, which lean opposite
ways; a step that is unlike both steps beside it is a jump; one that goes the other way than the rest a turn. That is
common practice, no source. Where a measurement of the body stumbles at the same place, the slip is the chart's, and
what follows from it is told as that.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import median
from typing import Literal

from kit.diagnostic import message
from kit.errors import KitError, known_near
from kit.family.compared import Kind, Of
from kit.family.edition import Edition
from kit.lesson.moved import LEAST
from kit.piece.piece import Piece

Why = Literal["off", "jump", "turn", "scales", "missing"]
_SHOWS = 2.5
"""Steps that differ by less (mm) are alike: charts are written in millimetres, and both ends of a step are rounded."""
_ALIKE = 0.34
"""... or by less than this part of the step beside them."""
_STAYS: tuple[Of, ...] = ("allowance", "extra", "strip_width", "cut")
"""What is the same in every size, unless the author means otherwise."""


@dataclass(frozen=True)
class GradeRow:
    """A measure in every size: what it is `of`, its `name` as in `Difference`, and its `values` (None where a size has
    none), in mm or whole."""

    of: Of
    name: str
    piece: str
    kind: Kind
    values: tuple[float | None, ...]

    @property
    def steps(self) -> tuple[float | None, ...]:
        """From each size to the next."""
        return tuple(None if a is None or b is None else b - a for a, b in pairwise(self.values))

    @property
    def same(self) -> bool:
        """Whether it reads the same in every size."""
        known = [value for value in self.values if value is not None]
        return len(known) == len(self.values) and max(known) - min(known) < LEAST


@dataclass(frozen=True)
class Uneven:
    """A place where a row is not like the rest of it. One size is `off`: `at` is its place among the sizes, `step` how
    far it lies from the middle of its neighbours. Of the others, from the size before `at` to that size it steps by
    `step` where `usual` is expected. `follows` names the measurement of the body that does the same
    there. A row that `scales` should not; one `missing` has no value in that size, or none before it."""

    row: GradeRow
    at: int
    why: Why
    step: float = 0.0
    usual: float = 0.0
    follows: str = ""


@dataclass(frozen=True)
class Grading:
    """The sizes of a lesson and what is measured in them; `breaks` are sizes from which other steps are meant."""

    title: str
    sizes: tuple[str, ...]
    rows: tuple[GradeRow, ...]
    uneven: tuple[Uneven, ...]
    breaks: tuple[str, ...] = ()

    @property
    def slips(self) -> tuple[Uneven, ...]:
        """The uneven places that follow from nothing else."""
        return tuple(each for each in self.uneven if not each.follows)


def grade(editions: Sequence[Edition], breaks: Sequence[str] = (), chart: Sequence[str] = ()) -> Grading:
    """The grade of a lesson worked in several sizes, the smallest first. `breaks` are sizes from which the steps are
    meant to be others; `chart` names every size there is, those that cannot be drafted too. `KitError` for fewer than
    two sizes, and for a break that is no size."""
    names = tuple(edition.size for edition in editions)
    if len(set(names)) < 2:
        raise KitError(message("family.one_size"), where="grade", do=message("family.no_grade_do"))
    known = tuple(chart) or names
    for size in breaks:
        if size not in known:
            raise KitError(message("body.no_such_size", size=size), where="size_breaks", do=known_near(size, known))
    breaks = [_drafted(size, known, names) for size in breaks]
    tables = [dict(measured(edition)) for edition in editions]
    rows = []
    for key in dict.fromkeys(key for table in tables for key in table):
        of, name, piece, kind = key
        rows.append(GradeRow(of, name, piece, kind, tuple(table.get(key) for table in tables)))
    parts = _parts(len(names), [names.index(size) for size in breaks if size])
    found = [uneven for row in rows for uneven in _uneven(row, parts)]
    return Grading(editions[0].title, names, tuple(rows), tuple(_explained(found)), tuple(filter(None, breaks)))


def _drafted(size: str, known: Sequence[str], names: Sequence[str]) -> str:
    """The size a break is at where that size could not be drafted: the next larger one; "" for none."""
    return next((each for each in known[known.index(size) :] if each in names), "")


Key = tuple[Of, str, str, Kind]


def measured(edition: Edition) -> Iterator[tuple[Key, float]]:
    """Every measure of an edition that has a size: of the body, of the garment, of its pieces and strips."""
    for name, value in edition.body:
        yield ("body", name, "", "length"), value
    for name, value in edition.finished:
        yield ("finished", name, "", "length"), value
    for piece in edition.pieces:
        yield from _of_piece(piece)
    for strip in edition.strips:
        yield ("strip_length", strip.name, "", "length"), strip.length
        yield ("strip_width", strip.name, "", "length"), strip.width
        yield ("cut", strip.name, "", "count"), float(strip.count)


def _of_piece(piece: Piece) -> Iterator[tuple[Key, float]]:
    for edge in piece.edges:
        yield ("edge", edge.name, piece.name, "length"), edge.path.length
    for dart in piece.darts:
        yield ("dart", dart.name, piece.name, "length"), dart.end - dart.start
    for edge in piece.edges:
        if edge.allowance is not None:
            yield ("allowance", edge.name, piece.name, "length"), edge.allowance
        if edge.extra:
            yield ("extra", edge.name, piece.name, "length"), edge.extra
    yield ("cut", piece.name, "", "count"), float(piece.cut.count)


# ---- what stumbles ----------------------------------------------------------------------------------------


def _parts(count: int, breaks: Sequence[int]) -> list[range]:
    """The steps (numbered by the size they lead from) that are meant to be alike: between breaks."""
    edges = [0, *sorted(breaks), count - 1]
    return [range(a, b) for a, b in pairwise(edges) if b > a]


def _uneven(row: GradeRow, parts: Sequence[range]) -> Iterator[Uneven]:
    if any((a is None) != (b is None) for a, b in pairwise(row.values)):
        at = next(i for i, (a, b) in enumerate(pairwise(row.values), 1) if (a is None) != (b is None))
        yield Uneven(row, at, "missing")
        return
    steps = [step for step in row.steps if step is not None]
    if row.of in _STAYS:
        at = next((i for i, step in enumerate(steps, 1) if abs(step) > 0.05), 0)
        if at:
            yield Uneven(row, at, "scales", steps[at - 1])
        return
    way = median(steps)
    off = dict(_off(steps, parts))
    yield from (Uneven(row, at, "off", by) for at, by in off.items())
    for part in parts:
        for number in part:
            if number in off or number + 1 in off:
                continue  # a step to or from a size that is off itself
            step = steps[number]
            beside = [steps[n] for n in (number - 1, number + 1) if n in part]
            usual = median(beside) if beside else step
            if step * way < 0 and abs(step) > _SHOWS and beside and all(other * way >= 0 for other in beside):
                yield Uneven(row, number + 1, "turn", step, usual)
            elif _stands_out(step, beside, [steps[n] for n in part]):
                yield Uneven(row, number + 1, "jump", step, usual)


def _off(steps: Sequence[float], parts: Sequence[range]) -> Iterator[tuple[int, float]]:
    """Sizes that lie off the line of their neighbours, and how far. One value wrong by e lies e off the middle of the
    two beside it, and puts each of them e/2 off the other way; a change of pace leans one way only."""
    for part in parts:
        lean = {n + 1: (steps[n] - steps[n + 1]) / 2 for n in part if n + 1 in part}
        for at, by in lean.items():
            beside = [lean[other] for other in (at - 1, at + 1) if other in lean]
            opposite = all(other * by < 0 and 0.3 * abs(by) < abs(other) < abs(by) for other in beside)
            if abs(by) > _SHOWS and beside and opposite:
                yield at, by


def _stands_out(step: float, beside: Sequence[float], all_of: Sequence[float]) -> bool:
    """Whether a step is larger than both its neighbours, or smaller, by more than rounding. At an end, where it has one
    neighbour, it must be unlike every other step, by as much again as that."""
    if not beside:
        return False
    if len(beside) == 2:
        off = [step - other for other in beside]
        enough = [max(_SHOWS, _ALIKE * abs(other)) for other in beside]
        return off[0] * off[1] > 0 and all(abs(by) > least for by, least in zip(off, enough, strict=True))
    others = list(all_of)
    others.remove(step)
    return len(others) >= 3 and all(abs(step - other) > max(2 * _SHOWS, abs(other)) for other in others)


def _explained(found: Sequence[Uneven]) -> Iterator[Uneven]:
    """Each with the measurement of the body that stumbles at the same size, where one does. One size that is off puts
    two steps out, so that it also explains a step to that size or from it."""
    body = [each for each in found if each.row.of == "body"]
    for each in found:
        cause = ""
        if each.row.of != "body" and each.why in ("off", "jump", "turn"):
            cause = next((other.row.name for other in body if _may_follow(each, other)), "")
        yield Uneven(each.row, each.at, each.why, each.step, each.usual, cause)


def _may_follow(each: Uneven, body: Uneven) -> bool:
    if each.at == body.at:
        return True
    return "off" in (each.why, body.why) and each.why != body.why and abs(each.at - body.at) == 1
