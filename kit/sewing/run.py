"""Names of places on the cut pieces: runs of edges and parts of them, lines over several pieces.

Sewing works on cut pieces. A mirrored pair, or a piece opened out from the fold, has a left and a right
half; `front.side` means both, `front.left.side` one.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace
from typing import Self

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.piece.folded import sewn_part
from kit.piece.piece import Piece, Side
from kit.sewing.legs import (
    End,
    Landmark,
    LegStretch,
    Line,
    at_edge,
    at_mark,
    at_notch,
    chained,
    landmark_value,
    notches,
    only,
    run_legs,
    size_of,
    tip,
)
from kit.sewing.marked import MarkEnd, Notched, Place
from kit.units import Length, Size, length

LEAST = 0.5
"""mm a part must be long."""
_WHOLE = 0.05  # mm from an end that is the end
_PAST = 0.5  # mm that a part may end beyond its line before it is refused


class Edges:
    """Edges in a row, as one line that a part may be taken of: a `Run` of one piece, or a `Chain` that crosses a fold
    or a sewn seam."""

    def between(self, start: At, end: At) -> Self:
        """The part from `start` to `end`: marks of the piece, one end of a mark (`front.slit.start`, `.end`), a notch,
        a neighbouring edge, or a length along the line. Of a mark with two ends the nearer counts. Two landmarks may be
        named in either order. Raises `KitError` where no part lies between them, and for a bare number.

        Example::

            zip_place = front.side.between(2 * cm, 17 * cm)
            upper = front.side.between(front.armhole, 12 * cm)
        """
        starts, ends = self._found(start), self._found(end)
        return self._cut(self._stretch(starts, ends))

    def after(self, start: At) -> Self:
        """The part from `start` to the end of the line: from a mark (from its far end, where it has two), a notch, or a
        length along the line. Raises `KitError` as `between` does.

        Example::

            upper = front.side.after(15 * cm)
        """
        found = self._found(start)[-1]
        return self._cut(LegStretch(found, self._tip("end")))

    def before(self, end: At) -> Self:
        """The part from the start of the line up to `end`: up to a mark (its near end, where it has two), a notch, or a
        length along the line. Raises `KitError` as `between` does.

        Example::

            lower = front.side.before(15 * cm)
        """
        found = self._found(end)[0]
        return self._cut(LegStretch(self._tip("start"), found))

    def notch(self, number: int = 1) -> Notched:
        """The notch of that number, counted from the start of the line, to name a part by.

        Example::

            lower = front.side.after(front.side.notch(1))
        """
        found = notches(self._line())
        if isinstance(number, bool) or not isinstance(number, int) or not 1 <= number <= len(found):
            count = f"it has {len(found)}" if found else "it has none"
            raise KitError(
                f"there is no notch {number!r} on the {self.said}: {count}.",
                do=f"Write a number from 1 to {len(found)}." if found else "Notch the edge while it is drafted.",
            )
        _, leg, notch = found[number - 1]
        return Notched(leg.piece.name, notch, leg.side)

    @property
    def length(self) -> Length:
        """How long it is on one half, along the stitch line with darts and pleats shut.

        Example::

            slit = front.side.after(15 * cm).length
        """
        raise NotImplementedError

    @property
    def said(self) -> str:
        raise NotImplementedError

    def _line(self) -> Line:
        """Its legs. `KitError` for edges that come from no cut piece."""
        raise NotImplementedError

    def _cut(self, stretch: LegStretch) -> Self:
        """The part as a line of its own kind."""
        raise NotImplementedError

    def _tip(self, end: End) -> Landmark:
        return tip(self._line(), end)

    def _found(self, given: object) -> tuple[Landmark, ...]:
        """The landmark that is named, or both ends of a mark in the order of the line."""
        if isinstance(given, Place):
            return _known(self, at_mark(self._line(), given.piece, given.mark, given.side), given)
        if isinstance(given, MarkEnd):
            place = given.place
            both = _known(self, at_mark(self._line(), place.piece, place.mark, place.side), place)
            return tuple(one for one in both if one.which in ("", given.which))
        if isinstance(given, Notched):
            found = at_notch(self._line(), given.piece, given.notch, given.side)
            if not found:
                raise KitError(f"that notch of the {_worded(given.piece)} lies on another edge.", where=self.said)
            return (only(found, "that notch", self.said),)
        if isinstance(given, Run):
            return (self._meeting(given),)
        at = float(length(given, self.said))  # type: ignore[arg-type]
        if at < 0:
            raise KitError(
                message("refusal.part_before", start=measured(at)), where=self.said, do=message("refusal.from_start_do")
            )
        return (Landmark("length", at),)

    def _meeting(self, other: Run) -> Landmark:
        line = self._line()
        found = at_edge(line, other.piece, other.edges, other.side)
        if not found:
            names = dict.fromkeys(_worded(name) for name in (line[0].beside("start"), line[-1].beside("end")) if name)
            raise KitError(
                f"the {other.said} does not meet the {self.said}.",
                do=f"Name an edge that does: {', '.join(names)}." if names else "Name a mark on it.",
            )
        return only(found, f"the {other.said}", self.said)

    def _stretch(self, starts: tuple[Landmark, ...], ends: tuple[Landmark, ...]) -> LegStretch:
        """From one landmark to another, of those with two ends from the near one to the near one."""
        if starts == ends:
            raise self._no_part(starts[0], starts[0])
        if starts[-1].at <= ends[0].at:
            return LegStretch(starts[-1], ends[0])
        if ends[-1].at <= starts[0].at and "length" not in (starts[0].what, ends[0].what):
            return LegStretch(starts[0], ends[-1])
        one, two = starts[0], ends[-1]
        if one.what == two.what == "length":
            raise KitError(
                message("refusal.no_part", start=measured(one.at), end=measured(two.at)),
                where=self.said,
                do=message("refusal.no_part_do"),
            )
        raise self._no_part(one, two)

    def _no_part(self, one: Landmark, two: Landmark) -> KitError:
        line = self._line()
        values = {"from": landmark_value(line, one), "to": landmark_value(line, two)}
        places = {"start": measured(one.at), "end": measured(two.at), "tip": landmark_value(line, tip(line, "start"))}
        key = "part_empty" if abs(one.at - two.at) < LEAST else "part_reversed"
        if key == "part_empty":
            del places["end"]
        return KitError(message(f"refusal.{key}", **values, **places), where=self.said, do=message(f"refusal.{key}_do"))


@dataclass(frozen=True)
class Run(Edges):
    """One or more neighbouring edges of a piece, in the order named. `side` is left, right or None for both.
    `start` and `end` (mm along the run as named; None: whole) narrow it to a part. `stretch` says the part by its
    landmarks, `chain` the longer line that the run is one of, `ground` is the piece as it was drafted when a handle
    gave the run; they tell of it and are no part of what it is."""

    piece: str
    edges: tuple[str, ...]
    side: Side | None = None
    start: float | None = None
    end: float | None = None
    stretch: LegStretch | None = field(default=None, compare=False, repr=False)
    chain: Chain | None = field(default=None, compare=False, repr=False)
    ground: Piece | None = field(default=None, compare=False, repr=False)

    def __repr__(self) -> str:
        """As refusals quote what was written."""
        part = "" if self.start is None and self.end is None else "part of the "
        return f"<{part}{self.said}>"

    def __add__(self, other: Edges) -> Run | Chain:
        if not isinstance(other, Run | Chain):
            return NotImplemented
        for each in (self, *(other.runs if isinstance(other, Chain) else (other,))):
            if each.start is not None or each.end is not None:
                raise KitError(
                    f"{self.said} and {other.said}: only whole edges are joined into one run.",
                    do="Join the edges first, then take the part: "
                    f"({_written(self)} + {_written(other)}).between(...).",
                )
        if isinstance(other, Chain) or (self.piece, self.side) != (other.piece, other.side):
            return chain_of((self,), other)
        return replace(self, edges=self.edges + other.edges)

    @property
    def length(self) -> Length:
        piece = self._piece()
        return Length(sewn_part(piece, self.edges, self.start, self.end).length)

    @property
    def part(self) -> LegStretch | None:
        """The landmarks of its part; those of another part, and none, where it has been narrowed since."""
        found = self.stretch
        if found is None or (self.start is None and self.end is None):
            return found
        ends = (found.low, found.high)
        return found if ends == (self.start or 0.0, ends[1] if self.end is None else self.end) else None

    @property
    def said(self) -> str:
        edges = " and ".join(edge.replace("_", " ") for edge in self.edges)
        return f"{self.piece.replace('_', ' ')} {self.side + ' ' if self.side else ''}{edges}"

    def _piece(self) -> Piece:
        if self.ground is None:
            raise KitError(f"the {self.said} comes from no cut piece.", do="Name edges by their piece: front.side.")
        return self.ground

    def _line(self) -> Line:
        return run_legs(self._piece(), self.edges, self.side)

    def _tip(self, end: End) -> Landmark:
        if self.ground is None:  # a run made by hand: its end is known once it is laid on a pattern
            return Landmark("tip", 0.0 if end == "start" else math.inf, which=end)
        return super()._tip(end)

    def _cut(self, stretch: LegStretch) -> Run:
        named = self._within(stretch)
        low, high = named.low, named.high
        if high - low < LEAST and self.ground is not None:
            raise self._no_part(named.start, named.end)
        if high - low < LEAST:
            raise KitError(
                message("refusal.no_part", start=measured(low), end=measured(high)),
                where=self.said,
                do=message("refusal.no_part_do"),
            )
        size = math.inf if self.ground is None else size_of(self._line())
        if size + _PAST < high < math.inf:
            raise _past_end(high, size, self.said)
        last = named.end if named.end.at >= named.start.at else named.start
        to_end = high == math.inf or (last.what != "length" and abs(high - size) < _WHOLE)
        if to_end and low < _WHOLE:
            return replace(self, start=None, end=None, stretch=None)
        return replace(self, start=low, end=None if to_end else high, stretch=named)

    def _within(self, stretch: LegStretch) -> LegStretch:
        """Of a part of a part, what both have of the edges."""
        if self.start is None and self.end is None:
            return stretch
        low, high = self.start or 0.0, math.inf if self.end is None else self.end
        kept = self.part or LegStretch(Landmark("length", low), Landmark("length", high))
        first, last = sorted(kept, key=lambda landmark: landmark.at)
        near, far = sorted(stretch, key=lambda landmark: landmark.at)
        return LegStretch(first if near.at < low else near, last if far.at > high else far)


@dataclass(frozen=True)
class Chain(Edges):
    """Runs laid end to end as one line, over a fold (`left.top + right.top` of a piece cut on the fold) or over seams
    that are sewn by then (`front.neck + back.neck`). `ways` says of each whether it is walked as it was named. A part
    keeps of each run what of it lies in the part; `stretch` says it by its landmarks."""

    runs: tuple[Run, ...]
    ways: tuple[bool, ...]
    stretch: LegStretch | None = field(default=None, compare=False, repr=False)
    whole: tuple[Run, ...] = field(default=(), compare=False, repr=False)

    def __add__(self, other: Edges) -> Chain:
        if not isinstance(other, Run | Chain):
            return NotImplemented
        if self.stretch is not None or (isinstance(other, Chain) and other.stretch is not None):
            raise KitError(
                f"{self.said} and {other.said}: only whole edges are joined into one run.",
                do="Join the edges first, then take the part: (front.neck + back.neck).between(...).",
            )
        return chain_of(self.runs, other)

    @property
    def length(self) -> Length:
        return Length(sum(float(run.length) for run in self.runs))

    @property
    def said(self) -> str:
        return " + ".join(run.said for run in self.runs)

    def __repr__(self) -> str:
        return f"<{'' if self.stretch is None else 'part of the '}{self.said}>"

    @property
    def of(self) -> tuple[Run, ...]:
        """The whole runs it is a part of."""
        return self.whole or self.runs

    def one_by_one(self) -> tuple[Run, ...]:
        """Its runs, each of which knows the chain it is one of."""
        return tuple(replace(run, chain=self) for run in self.runs)

    def at(self, distance: float) -> tuple[Run, float]:
        """The run that lies `distance` mm along it, and the mm along that run, each counted from where it begins."""
        for run, way in zip(self.runs, self.ways, strict=True):
            size = sum(leg.size for leg in run._line()) if run.end is None else run.end
            size -= run.start or 0.0
            if distance <= size + _WHOLE or run is self.runs[-1]:
                return run, distance if way else size - distance
            distance -= size
        raise AssertionError("a chain has runs")

    def _rows(self) -> tuple[Line, ...]:
        return chained([run._line() for run in self.of])[0]

    def _line(self) -> Line:
        return tuple(leg for row in self._rows() for leg in row)

    def _cut(self, stretch: LegStretch) -> Chain:
        low, high = stretch.low, stretch.high
        line = self._line()
        if high > size_of(line) + _PAST:
            raise _past_end(high, size_of(line), self.said)
        if high - low < LEAST:
            raise self._no_part(stretch.start, stretch.end)
        if self.stretch is not None:
            raise KitError(
                f"{self.said} is a part already.",
                do="Name both its ends at once: (front.neck + back.neck).between(...).",
            )
        runs, ways = [], []
        for run, way, row in zip(self.runs, self.ways, self._rows(), strict=True):
            at, size = row[0].at, sum(leg.size for leg in row)
            near, far = max(low - at, 0.0), min(high - at, size)
            if far - near < LEAST:
                continue
            if not way:
                near, far = size - far, size - near
            all_of_it = near < _WHOLE and far > size - _WHOLE
            runs.append(run if all_of_it else replace(run, start=near, end=far))
            ways.append(way)
        return Chain(tuple(runs), tuple(ways), stretch, self.of)


def _past_end(end: float, size: float, where: str) -> KitError:
    return KitError(
        message("refusal.part_past", end=measured(end), length=measured(size)),
        where=where,
        do=message("refusal.from_start_do"),
    )


def chain_of(runs: tuple[Run, ...], other: Run | Chain) -> Chain:
    """The runs and those of `other` as one line. A piece that lies on the fold is taken whole between two halves."""
    rows = [*runs, *(other.runs if isinstance(other, Chain) else (other,))]
    found: list[Run] = []
    for number, run in enumerate(rows):
        near = [rows[i] for i in (number - 1, number + 1) if 0 <= i < len(rows)]
        halves = [each.side for each in near if each.side is not None]
        piece = run._piece()
        if run.side is None and halves and len(piece.sides) == 2 and any(each.side for each in rows):
            if not piece.fold:
                raise KitError(
                    f"{run.said} means both halves, but {near[0].said} is one side only.",
                    do=f"Write {_written(replace(run, side=halves[0]))}.",
                )
            before = rows[number - 1].side if number else None
            first: Side = before or ("left" if near[-1].side == "right" else "right")
            second: Side = "left" if first == "right" else "right"
            found += [replace(run, side=first), replace(run, side=second)]
        elif found and _runs_on(found[-1], run):
            found[-1] = replace(found[-1], edges=found[-1].edges + run.edges)
        else:
            found.append(run)
    if len(set(found)) < len(found):
        raise KitError(f"an edge is named twice in {' + '.join(run.said for run in found)}.", do="Name each edge once.")
    _, ways = chained([run._line() for run in found])
    return Chain(tuple(found), ways)


def _runs_on(run: Run, other: Run) -> bool:
    """Whether the other is what comes next on the same half of the same cloth: one run, with no seam between."""
    if (run.piece, run.side) != (other.piece, other.side) or set(run.edges) & set(other.edges):
        return False
    names = [edge.name for edge in run._piece().edges]
    apart = abs(names.index(run.edges[-1]) - names.index(other.edges[0]))
    return apart in (1, len(names) - 1) and all(each.start is None and each.end is None for each in (run, other))


def _written(line: Edges) -> str:
    """Edges as an author writes them: `front.left.bottom + front.left.side`."""
    runs = line.runs if isinstance(line, Chain) else (line,)
    side = {run: f"{run.side}." if run.side else "" for run in runs if isinstance(run, Run)}
    return " + ".join(f"{run.piece}.{half}{edge}" for run, half in side.items() for edge in run.edges)


def place_on(line: Edges, given: At, where: str) -> float:
    """Where a landmark lies on the whole line, mm along it. `KitError` for a mark that has two ends there."""
    found = line._found(given)
    if len(found) > 1:
        raise KitError(
            f"{given.said} has two ends there.",  # type: ignore[union-attr]
            where=where,
            do="Name one of them: front.slit.start or front.slit.end.",
        )
    return found[0].at


def _known(line: Edges, found: tuple[Landmark, ...], place: Place) -> tuple[Landmark, ...]:
    """The landmarks of a mark. `KitError` where it lies on none of the line's edges, or on both halves of it."""
    if not found:
        on = f"on the {place.mark.edge.replace('_', ' ')}, " if place.mark.edge else ""
        raise KitError(
            f"{place.said} lies {on}not on the {line.said}.",
            do="Name a mark of this very edge, or mark the place on it.",
        )
    if (len(found) > 1 and not all(one.which for one in found)) or len(found) > 2:
        raise KitError(
            f"{place.said} lies on the {line.said} in {len(found)} places.",
            do="Name the half: front.left or front.right; or mark one place.",
        )
    return found


def _worded(name: str) -> str:
    return name.replace("_", " ")


At = Size | Place | MarkEnd | Notched | Run
"""What names a place along edges."""
