"""Walking along edges: where a run lies on its piece, how long it is, which way it goes.

Everything is measured on the stitch line, in mm. A run of several edges goes in the order they are named;
each edge is turned round where needed so that one ends where the next begins.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace

from kit.diagnostic import measured, message
from kit.errors import KitError
from kit.geometry import Path
from kit.piece.folded import walked_ways
from kit.piece.piece import Piece, Side
from kit.sewing.cut import Cut
from kit.sewing.run import Run

_MEET = 0.1  # mm between the ends of edges that count as following one another
_BESIDE = 1.0  # mm beside a line at which the cloth is looked for
_SLACK = 0.5  # mm a part may overshoot its run before it is refused


@dataclass(frozen=True)
class Span:
    """A part of one edge of one cut piece: `start` to `end`, mm along the edge as drafted."""

    piece: str
    side: Side
    edge: str
    start: float
    end: float

    @property
    def length(self) -> float:
        return self.end - self.start

    @property
    def key(self) -> tuple[str, Side, str]:
        """The edge it lies on."""
        return self.piece, self.side, self.edge

    @property
    def ends(self) -> tuple[float, float]:
        return self.start, self.end

    def holds(self, at: float, slack: float = 0.0) -> bool:
        """Whether the place `at` mm along the edge lies in it."""
        return self.start - slack <= at <= self.end + slack

    def overlap(self, other: Span) -> float:
        """mm that both cover; 0 on different edges."""
        if (self.piece, self.side, self.edge) != (other.piece, other.side, other.edge):
            return 0.0
        return max(0.0, min(self.end, other.end) - max(self.start, other.start))


def _oriented(piece: Piece, run: Run) -> tuple[tuple[str, Path, bool], ...]:
    """(edge, its path, whether it is walked as drafted) for each edge of the run."""
    paths = [piece.edge(name).path for name in run.edges]
    return tuple(zip(run.edges, paths, walked_ways(piece, run.edges), strict=True))


def whole_length(pattern: Cut, run: Run) -> float:
    """mm of the run's edges together, ignoring `start` and `end`."""
    piece = pattern.piece(run.piece)
    return sum(piece.edge(name).path.length for name in run.edges)


def reach(pattern: Cut, run: Run) -> tuple[float, float]:
    """Where the run starts and ends, mm along its edges. Raises `KitError` for a part beyond its edges."""
    total = whole_length(pattern, run)
    start = 0.0 if run.start is None else run.start
    end = total if run.end is None else run.end
    if end > total + _SLACK or start >= total:
        raise KitError(
            message("refusal.part_past", end=measured(end), length=measured(total)),
            where=run.said,
            do=message("refusal.from_start_do"),
        )
    return start, min(end, total)


def run_length(pattern: Cut, run: Run) -> float:
    """mm of the run on one half."""
    start, end = reach(pattern, run)
    return end - start


def sides_of(pattern: Cut, run: Run) -> tuple[Side, ...]:
    """The halves the run means."""
    return (run.side,) if run.side else pattern.piece(run.piece).sides


def spans(pattern: Cut, run: Run, start: float | None = None, end: float | None = None) -> tuple[Span, ...]:
    """The run as parts of edges, for each half it means. `start` and `end` (mm along the run itself) take
    out a part of it. Raises `KitError` where edges do not follow or the part lies beyond them."""
    low, high = reach(pattern, run)
    if end is not None:
        high = min(high, low + end)
    if start is not None:
        low += start
    return tuple(span for side in sides_of(pattern, run) for span, _ in _walked(pattern, run, side, low, high))


def walked_spans(pattern: Cut, run: Run, side: Side) -> tuple[tuple[Span, bool], ...]:
    """The run on one half as parts of edges in its order, each with whether it is walked as drafted."""
    return _walked(pattern, run, side, *reach(pattern, run))


def _walked(pattern: Cut, run: Run, side: Side, low: float, high: float) -> tuple[tuple[Span, bool], ...]:
    found: list[tuple[Span, bool]] = []
    walked = 0.0
    for name, path, forward in _oriented(pattern.piece(run.piece), run):
        size = path.length
        near, far = max(low - walked, 0.0), min(high - walked, size)
        walked += size
        if far - near > 1e-6:
            ends = (near, far) if forward else (size - far, size - near)
            found.append((Span(run.piece, side, name, *ends), forward))
    return tuple(found)


def minus(whole: Iterable[Span], cut: Iterable[Span]) -> tuple[Span, ...]:
    """The spans with others taken out."""
    found = list(whole)
    for out in cut:
        left: list[Span] = []
        for span in found:
            if span.overlap(out) <= 0:
                left.append(span)
                continue
            if out.start - span.start > 1e-6:
                left.append(replace(span, end=out.start))
            if span.end - out.end > 1e-6:
                left.append(replace(span, start=out.end))
        found = left
    return tuple(found)


def follows(pattern: Cut, run: Run) -> None:
    """Raises `KitError` when the run's edges do not follow one another or its part lies beyond them."""
    _oriented(pattern.piece(run.piece), run)
    if run.end is not None:
        reach(pattern, run)


def path_of(pattern: Cut, run: Run) -> Path:
    """The run's stitch line in the piece's own draft coordinates, walked in the order named."""
    piece = pattern.piece(run.piece)
    whole: Path | None = None
    for _, path, forward in _oriented(piece, run):
        step = path if forward else path.reversed()
        whole = step if whole is None else whole.joined(step)
    assert whole is not None
    if run.start is None and run.end is None:
        return whole
    return whole.between(*reach(pattern, run))


def along(pattern: Cut, run: Run, edge: str, distance: float) -> float:
    """`distance` mm along `edge` as drafted, given as mm along `run`. Raises `KitError` when the edge is not
    in the run."""
    piece = pattern.piece(run.piece)
    walked = 0.0
    for name, path, forward in _oriented(piece, run):
        if name == edge:
            return walked + (distance if forward else path.length - distance) - reach(pattern, run)[0]
        walked += path.length
    raise KitError(f"'{edge}' is not part of this run.", where=run.said, do="Name the run that holds the mark.")


def runs_opposed(pattern: Cut, a: Run, b: Run) -> bool:
    """Whether `b` goes the other way from `a` when the two are laid together. Pieces of one draft lie in the
    same coordinates, so the nearer ends belong together; elsewhere the runs are taken as drafted."""
    first, second = _ends(pattern, a), _ends(pattern, b)
    same = first[0].distance(second[0]) + first[1].distance(second[1])
    crossed = first[0].distance(second[1]) + first[1].distance(second[0])
    return crossed < same - _MEET


def _ends(pattern: Cut, run: Run):  # type: ignore[no-untyped-def]
    oriented = _oriented(pattern.piece(run.piece), run)
    (_, first, forward), (_, last, onward) = oriented[0], oriented[-1]
    return (first.start if forward else first.end, last.end if onward else last.start)


def cloth_left(piece: Piece, path: Path) -> bool:
    """Whether a piece's cloth lies left of a line along its outline, as drafted."""
    middle = path.length / 2
    return piece.outline.contains(path.at(middle) + path.normal_at(middle) * _BESIDE)


def neighbours(piece: Piece, edges: tuple[str, ...]) -> tuple[str, ...]:
    """The edges before and after a run of edges around the outline."""
    names = [edge.name for edge in piece.edges]
    inside = {names.index(name) for name in edges}
    count = len(names)
    beside = {(i + step) % count for i in inside for step in (-1, 1)} - inside
    return tuple(names[i] for i in sorted(beside))


def touching(pattern: Cut, at: Run, name: str) -> bool | None:
    """Whether an edge touches the run `at` with its start (True) or its end (False); None: not at all."""
    piece = pattern.piece(at.piece)
    path, other = path_of(pattern, at), piece.edge(name).path
    for end in (path.start, path.end):
        if other.start.distance(end) < _MEET:
            return True
        if other.end.distance(end) < _MEET:
            return False
    return None


def corner(pattern: Cut, run: Run, name: str) -> float:
    """mm along the edge `name`, a neighbour of the run, where the two meet."""
    return 0.0 if touching(pattern, run, name) else pattern.piece(run.piece).edge(name).path.length
