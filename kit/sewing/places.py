"""Places on a garment in work that several families of operations ask for: parts of runs, what lies beside an edge,
rings, refusals."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from typing import Any, cast

from kit.errors import KitError
from kit.geometry import Path, parallel
from kit.piece.piece import Side
from kit.sewing.base import Operation, both, both_sides, over_the_fold, row_of
from kit.sewing.before import state_before
from kit.sewing.cut import Cut
from kit.sewing.facts import facts_of as facts_of
from kit.sewing.facts import half_facts as half_facts
from kit.sewing.facts import lacking as lacking
from kit.sewing.facts import place_facts as place_facts
from kit.sewing.fields import Asked, read_by
from kit.sewing.joined_lengths import sewn_length as sewn_length
from kit.sewing.marked import Place
from kit.sewing.outcome import Closing, How
from kit.sewing.reading import marks as marks
from kit.sewing.reading import opening_run as opening_run
from kit.sewing.rules import Case
from kit.sewing.run import Run
from kit.sewing.sentence import Sentence, Telling
from kit.sewing.spans import corner as corner
from kit.sewing.spans import minus as minus
from kit.sewing.spans import neighbours, path_of, run_length, runs_opposed, sides_of, spans, touching
from kit.sewing.state import Done, EdgeKey, State
from kit.sewing.trouble import refuse as refuse

_HALVES: tuple[Side, ...] = ("left", "right")
NARROWEST_GAP = 25.0
"""mm of gap through which a small piece can still be turned (common practice, no source)."""


def part(pattern: Cut, run: Run, start: float, end: float) -> Run:
    """The part of a run from `start` to `end` mm along it."""
    low, size = run.start or 0.0, run_length(pattern, run)
    return replace(run, start=low + max(start, 0.0), end=low + min(end, size))


def on_both(pattern: Cut, a: Run, b: Run, stretch: tuple[float, float], half: Side | None = None) -> tuple[Run, Run]:
    """The stretch (start, end) in mm along `a` on each of two runs that meet; of one `half` of both alone where that
    is told."""
    if half is not None:
        a, b = replace(a, side=half), replace(b, side=half)
    start, end = stretch
    far = run_length(pattern, b)
    low, high = (far - end, far - start) if runs_opposed(pattern, a, b) else (start, end)
    return part(pattern, a, start, end), part(pattern, b, low, high)


def left_of(pattern: Cut, seam: Any, stretch: tuple[float, float] | None) -> tuple[Run, ...]:
    """What a seam leaves open or raw of each of its two runs, on the half that it is told for."""
    return () if stretch is None else on_both(pattern, seam.a[0], seam.b[0], stretch, side_of(seam.half))


def around(pattern: Cut, run: Run, at: float, width: float) -> Run:
    """The stretch of a run that something `width` mm wide covers when it lies at `at`; at an end it lies inside."""
    size = run_length(pattern, run)
    low = min(max(at - width / 2, 0.0), max(size - width, 0.0))
    return part(pattern, run, low, low + width)


def closed_but(pattern: Cut, runs: Iterable[Run], gaps: Iterable[Run], how: How) -> tuple[Closing, ...]:
    """Runs closed except where a gap is left."""
    whole = [span for run in runs for span in spans(pattern, run)]
    return tuple(Closing(span, how) for span in minus(whole, [span for gap in gaps for span in spans(pattern, gap)]))


# ---- the extension of a band ----------------------------------------------------------------------------------


def beside(pattern: Cut, at: Run, size: float) -> tuple[Run, ...]:
    """The first `size` mm of the two edges next to a band's end `at`: what reaches beyond the garment's edge."""
    found = []
    piece = pattern.piece(at.piece)
    for name in neighbours(piece, at.edges):
        if name == piece.fold:
            continue
        long = piece.edge(name).path.length
        low = 0.0 if touching(pattern, at, name) else long - size
        found.append(Run(at.piece, (name,), at.side, low, low + size))
    return tuple(found)


def without_end(pattern: Cut, run: Run, at: Run | None, size: float) -> tuple[Run, ...]:
    """A band's long edge without the `size` mm next to its end `at`."""
    if at is None or size <= 0 or run.piece != at.piece or len(run.edges) != 1:
        return (run,)
    there = touching(pattern, at, run.edges[0])
    if there is None:
        return (run,)
    long = pattern.piece(run.piece).edge(run.edges[0]).path.length
    low, high = (size, long) if there else (0.0, long - size)
    short = replace(run, start=max(low, run.start or 0.0), end=min(high, long if run.end is None else run.end))
    halves = sides_of(pattern, run)
    if at.side is None or len(halves) == 1:
        return (short,)
    return tuple(replace(short if side == at.side else run, side=side) for side in halves)


def raw_beside(state: State, pattern: Cut, runs: Iterable[Run]) -> Run | None:
    """An edge beside the runs that is still raw where it meets them, if there is one; parts of edges are not asked."""
    return next(all_raw_beside(state, pattern, runs), None)


def all_raw_beside(state: State, pattern: Cut, runs: Iterable[Run]) -> Iterator[Run]:
    """The edges beside the runs that are still raw where they meet them; parts of edges are not asked, nor edges that
    are runs of the same row, as `[front.waist, front.wrap]`."""
    runs = tuple(runs)
    row = {(run.piece, side, name) for run in runs for side in sides_of(pattern, run) for name in run.edges}
    for run in runs:
        piece = pattern.piece(run.piece)
        if run.start is not None or run.end is not None:
            continue
        for name in neighbours(piece, run.edges):
            at = corner(pattern, run, name)
            for side in sides_of(pattern, run):
                beside = (run.piece, side, name)
                if name != piece.fold and beside not in row and not closed_at(state, beside, at):
                    yield Run(run.piece, (name,), side)


def sewn_over(pattern: Cut, made: Operation, raw: Run, band: Iterable[Run]) -> bool:
    """Whether a raw edge and an edge beside one of the runs of a `band` are shut in together by an operation after
    `made`: as a collar goes over the neck and the upper end of a button band in one."""
    mine, after = {(raw.piece, name) for name in raw.edges}, False
    near = set(neighbours(pattern.piece(raw.piece), raw.edges))  # of one piece the two must meet, at its fold
    ends = {
        (run.piece, name)
        for run in band
        for name in neighbours(pattern.piece(run.piece), run.edges)
        if run.piece != raw.piece or name in near
    }
    for record in getattr(pattern, "sewing", ()):
        for each in record.operations:
            if after:
                closed = {(run.piece, name) for run in each.runs() for name in run.edges}
                if mine <= closed and closed & (ends - mine):
                    return True
            after = after or made in (each, each.entire)
    return False


@dataclass(frozen=True)
class Hanging:
    """The condition that facing ends of the field `of`, caught in a hem or seam along the field `on`, hang on the
    garment already."""

    of: str
    on: str

    def cases(self, made: Any, state: State, pattern: Cut) -> Iterator[Case]:
        parts = [(run.piece, side) for run in getattr(made, self.on) for side in sides_of(pattern, run)]
        for run in getattr(made, self.of):
            held = (any(state.joined((run.piece, side), part) for part in parts) for side in sides_of(pattern, run))
            yield Case(all(held), run)


# ---- rings ----------------------------------------------------------------------------------------------------


def is_ring(state: State, pattern: Cut, runs: tuple[Run, ...]) -> bool:
    """Whether the runs lie end to end all round on the garment so far: every edge beside one of them is sewn to an
    edge beside one of them."""
    return not free_ends(state, pattern, runs)


def free_ends(state: State, pattern: Cut, runs: tuple[Run, ...]) -> dict[EdgeKey, float]:
    """The edges beside the runs at which the row they make ends, with the mm along each where it does: none all round
    a ring. Edges beside them that belong to the row themselves, or are sewn to one another, lie inside the row."""
    row = [span for run in runs for span in spans(pattern, run)]
    ends = {
        (run.piece, side, name): corner(pattern, run, name)
        for run in runs
        for side in sides_of(pattern, run)
        for name in neighbours(pattern.piece(run.piece), run.edges)
        if name != pattern.piece(run.piece).fold
    }
    return {
        end: at
        for end, at in ends.items()
        if not any(span.key == end and span.start - 0.5 <= at <= span.end + 0.5 for span in row)
        and not any(state.sewn_there(end, at, other, to) for other, to in ends.items() if other != end)
    }


def closed_at(state: State, end: EdgeKey, at: float) -> tuple[Done, ...]:
    """What has closed an edge at the place `at` mm along it."""
    return tuple(done for done in state.on(end) if done.span.start - 0.5 <= at <= done.span.end + 0.5)


@dataclass(frozen=True)
class Ring:
    """The condition that a field's runs are a closed ring already."""

    of: str

    def cases(self, made: Any, state: State, pattern: Cut) -> tuple[Case, ...]:
        runs = getattr(made, self.of)
        return (Case(is_ring(state, pattern, runs), runs[0]),)


def alike(pattern: Cut, runs: Iterable[Run]) -> tuple[Sentence, ...]:
    """The closing sentence when there are two of everything: no piece is one cloth across both halves."""
    found = tuple(runs)
    return both_sides(pattern, found) if all(pattern.piece(run.piece).cut.mirrored for run in found) else ()


def half_of(*names: str) -> Any:
    """The one half, as text, that an opening written for one of the fields `names` is left on although the seam is
    sewn on both; "" where there is none."""

    def read(given: Any, asked: Asked, name: str) -> str:
        side = next((each.side for each in map(asked.given.get, names) if isinstance(each, Run | Place)), None)
        rows = (asked.read["a"], asked.read["b"])
        both = all(len(row) == 1 and len(sides_of(asked.reader.cut, row[0])) == 2 for row in rows)
        return side if side and both else ""

    return read_by(read, "", way="none", held="")


def side_of(half: str) -> Side | None:
    """The half that `half_of` keeps as text."""
    return cast("Side", half) if half else None


def two_rows(pattern: Cut, made: Any, *names: str) -> tuple[Sentence, ...]:
    """The closing sentence where the left and the right half are two rows by the time of an operation, which of the
    fields `names` it is sewn along: not where a seam joins them to one row, nor over a fold. An opening on one half
    is left there only."""
    runs = tuple(run for name in names for run in row_of(getattr(made, name)))
    if any(over_the_fold(pattern, run) for run in runs) or not both_sides(pattern, runs):
        return ()
    found = state_before(pattern, made)
    rows = [tuple(replace(run, side=side) for run in runs if side in sides_of(pattern, run)) for side in _HALVES]
    if len(free_ends(found, pattern, runs)) < sum(len(free_ends(found, pattern, row)) for row in rows):
        return ()
    return both_but_open(pattern, runs, open_half(made))


def open_half(made: Any) -> str:
    """The half that an opening or gap of an operation lies on alone; "" where it has none, or on both."""
    gap = getattr(made, "gap", None)
    return getattr(made, "half", "") or (gap.side or "" if isinstance(gap, Run) else "")


def both_but_open(pattern: Cut, runs: Iterable[Run], half: str) -> tuple[Sentence, ...]:
    """The closing sentence of a row on both halves that is left open on one of them."""
    found = both_sides(pattern, runs)
    return (Sentence(f"both_sides_open_{half}", {}),) if found and half else found


def in_two_rows(*names: str) -> Telling:
    """`two_rows` for the fields of those names, as one of an operation's `says`."""
    return lambda made, pattern: two_rows(pattern, made, *names)


def both_open(*names: str) -> Telling:
    """`both` for the fields of those names, for a seam that may be left open on one half."""

    def told(made: Any, pattern: Cut) -> tuple[Sentence, ...]:
        found = both(*names)(made, pattern)
        runs = (run for name in names for run in row_of(getattr(made, name)))
        return both_but_open(pattern, runs, open_half(made)) if found else ()

    return told


def alike_of(*names: str) -> Telling:
    """The closing sentence of `alike` for the fields of those names, as one of an operation's `says`."""
    return lambda made, pattern: alike(pattern, (run for name in names for run in getattr(made, name)))


def inside(pattern: Cut, run: Run, depth: float) -> Path:
    """The line `depth` mm inside a run, in draft coordinates; the run itself where such a line cannot be drawn."""
    path = path_of(pattern, run)
    outline = pattern.piece(run.piece).outline
    middle = path.length / 2
    left = outline.contains(path.at(middle) + path.normal_at(middle) * 2.0)
    try:
        return parallel(path, depth if left else -depth)
    except KitError:
        return path
