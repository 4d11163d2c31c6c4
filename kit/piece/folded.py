"""An edge, or a run of neighbouring edges, as it is sewn: its darts and pleats folded shut.

The stretches between the folds are laid one behind the other, each where the folding brings it, the first as it was
drafted. Distances along the run as sewn and along its edges as drafted are taken over into one another. Everything is
measured on the stitch line, in mm.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, field, replace

from kit.diagnostic import EdgeName, NamedPlace, Value, measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Motion, Path, Vector
from kit.piece.dart import closing
from kit.piece.piece import Piece
from kit.piece.pleat import closing as pleat_closing
from kit.piece.pleat import lies, taken_up

MEET = 0.1
"""How far apart in mm the ends of two edges may lie that follow one another."""
_NONE = 1e-6


@dataclass(frozen=True)
class FoldedStretch:
    """A part of `edge` from `low` to `high` (mm along it as drafted) between folds, walked as drafted or
    (not `forward`) back. It begins `at` mm along the run as sewn, where `motion` takes the draft."""

    edge: str
    low: float
    high: float
    forward: bool
    at: float
    motion: Motion

    @property
    def length(self) -> float:
        return self.high - self.low


@dataclass(frozen=True)
class FoldOnRun:
    """A dart or pleat on the run: `at` mm along the run as sewn, `taken` mm of the edge folded away."""

    name: str
    label: str
    at: float
    taken: float


@dataclass(frozen=True)
class Folded:
    """The run as sewn: `path` in the order walked, lying as its first stretch was drafted; `beyond` is where what
    follows the run comes to lie."""

    piece: Piece
    edges: tuple[str, ...]
    path: Path
    stretches: tuple[FoldedStretch, ...]
    folds: tuple[FoldOnRun, ...] = ()
    beyond: Motion = field(default_factory=Motion.identity)

    @property
    def length(self) -> float:
        return self.path.length

    @property
    def label(self) -> str:
        """The run as people say it: "side seam of the front"."""
        edges = " and ".join(self.piece.edge(name).label for name in self.edges)
        return f"{edges} of the {(self.piece.title or self.piece.name).lower()}"

    @property
    def spot(self) -> Value:
        """The run with its piece, as a value of a message."""
        edges = tuple(EdgeName(name, self.piece.edge(name).said) for name in self.edges)
        return Value(NamedPlace(self.piece.title or self.piece.name, edges), "place")

    def sewn(self, edge: str, distance: float) -> float | None:
        """`distance` mm along an edge as drafted, as mm along the run as sewn. A place inside a fold comes to where
        the fold is shut; None when it lies beyond the run."""
        found: float | None = None
        best = math.inf
        for part in self.stretches:
            if part.edge != edge:
                continue
            # The nearest stretch of that edge decides. A place in a fold lies off all of them, and comes to where the
            # two legs meet; a place off the run lies off all of them too, with no fold there.
            held = min(max(distance, part.low), part.high)
            off = abs(distance - held)
            if off < best:
                best = off
                found = part.at + (held - part.low if part.forward else part.high - held)
        if found is None or best <= MEET or any(abs(f.at - found) < _NONE for f in self.folds):
            return found
        return None

    def drafted(self, distance: float) -> tuple[str, float]:
        """The place `distance` mm along the run as sewn: (edge, mm along it as drafted). `KitError` off its ends."""
        if not -MEET <= distance <= self.length + MEET:
            raise KitError(
                message("refusal.off_sewn", at=measured(distance), place=self.spot, length=measured(self.length)),
                where=self.piece.title,
                do=message("refusal.off_sewn_do"),
            )
        part = self.stretches[0]
        for part in self.stretches:
            if distance <= part.at + part.length + _NONE:
                break
        step = min(max(distance - part.at, 0.0), part.length)
        return part.edge, part.low + step if part.forward else part.high - step

    @property
    def cloth_left(self) -> bool:
        """Whether the cloth lies to the left as the run is walked."""
        return cloth_left(self.piece) == self.stretches[0].forward

    def reversed(self) -> Folded:
        """The same run walked from its other end, lying as its own first stretch was drafted."""
        return folded(self.piece, tuple(reversed(self.edges)), ways=tuple(not w for w in reversed(self._ways)))

    @property
    def _ways(self) -> tuple[bool, ...]:
        seen = {part.edge: part.forward for part in self.stretches}
        return tuple(seen.get(name, True) for name in self.edges)

    def part(self, start: float, end: float) -> Folded:
        """The part from `start` to `end`, mm along the run as sewn."""
        kept = []
        for one in self.stretches:
            a, b = max(start, one.at), min(end, one.at + one.length)
            if b - a > _NONE:
                low = one.low + (a - one.at) if one.forward else one.high - (b - one.at)
                kept.append(replace(one, low=low, high=low + b - a, at=a - start))
        folds = tuple(replace(f, at=f.at - start) for f in self.folds if start - _NONE <= f.at <= end + _NONE)
        edges = tuple(name for name in self.edges if any(one.edge == name for one in kept))
        path = self.path.between(start, end)
        return Folded(self.piece, edges, path, tuple(kept), folds, kept[-1].motion if kept else self.beyond)


def cloth_left(piece: Piece) -> bool:
    """Whether the cloth lies to the left when the edges are walked in their order; they need not meet yet."""
    points = [p for edge in piece.edges for c in edge.path.curves for p in (c.start, c.point(0.5))]
    return sum(p.x * q.y - q.x * p.y for p, q in zip(points, [*points[1:], *points[:1]], strict=True)) > 0


def walked_ways(piece: Piece, edges: tuple[str, ...]) -> tuple[bool, ...]:
    """For each edge of a run, whether it is walked as drafted. `KitError` where two do not follow one another."""
    known: tuple[bool, ...] | None = piece.known_runs.get(edges)
    if known is None:
        known = piece.known_runs[edges] = _walked_ways(piece, edges)
    return known


def _walked_ways(piece: Piece, edges: tuple[str, ...]) -> tuple[bool, ...]:
    paths = [piece.edge(name).path for name in edges]
    if not paths:
        raise KitError("no edge is named.", where=piece.title, do="Name one, such as front.side.")
    # Which way the first edge is walked shows only from the second: it is left by the end that lies nearer to it.
    ways = [True]
    if len(paths) > 1:
        first, second = paths[0], paths[1]
        from_end = min(first.end.distance(second.start), first.end.distance(second.end))
        from_start = min(first.start.distance(second.start), first.start.distance(second.end))
        ways = [from_end <= from_start]
    here = paths[0].end if ways[0] else paths[0].start
    for before, name, path in zip(edges, edges[1:], paths[1:], strict=False):
        forward = here.distance(path.start) <= here.distance(path.end)
        gap = here.distance(path.start if forward else path.end)
        if gap > MEET:
            raise KitError(
                message(
                    "refusal.edges_apart",
                    one=named_edge(piece.edge(before)),
                    other=named_edge(piece.edge(name)),
                    gap=measured(gap),
                ),
                where=piece.title,
                do=message("refusal.edges_apart_do"),
            )
        ways.append(forward)
        here = path.end if forward else path.start
    return tuple(ways)


def sewn_part(piece: Piece, edges: tuple[str, ...], start: float | None, end: float | None) -> Folded:
    """A run of edges as sewn, and of it the part from `start` to `end`, mm along the run as drafted, mouths of darts
    included; None: to its end. `KitError` where nothing lies between them."""
    whole = folded(piece, edges)
    if start is None and end is None:
        return whole
    # The ends of the part are carried over one by one from the edges as drafted to the run with its darts shut.
    ways = walked_ways(piece, edges)
    lengths = [piece.edge(name).path.length for name in edges]
    total = sum(lengths)
    low = 0.0 if start is None else start
    high = total if end is None else min(end, total)

    def sewn(distance: float) -> float:
        left = distance
        for name, way, size in zip(edges, ways, lengths, strict=True):
            if left <= size or name == edges[-1]:
                found = whole.sewn(name, min(left, size) if way else max(size - left, 0.0))
                return 0.0 if found is None else found
            left -= size
        return whole.length

    if not 0 <= low < high:
        raise KitError(
            message("refusal.part_backward", end=measured(high), start=measured(low), length=measured(total)),
            where=piece.title,
            do=message("refusal.from_start_do"),
        )
    return whole.part(sewn(low), sewn(high))


def _folds_on(piece: Piece, edge: str) -> list[tuple[float, float, str, str, Motion]]:
    """(start, end, name, label, the motion that lays the far side on the near one) in order along the edge."""
    length = piece.edge(edge).path.length
    found = []
    for dart in piece.darts:
        if dart.edge == edge and -_NONE <= dart.start < dart.end <= length + _NONE:
            found.append((max(dart.start, 0.0), min(dart.end, length), dart.name, dart.label, closing(piece, dart)))
    path = piece.edge(edge).path
    for start, end, pleat in taken_up(piece, edge):
        if not lies(piece, pleat):
            continue
        low, high = max(start, 0.0), min(end, length)
        shut = pleat_closing(piece, pleat)
        one, two = (min(line.start.distance(path.at(low)), line.end.distance(path.at(low))) for line in pleat.lines)
        found.append((low, high, pleat.name, pleat.label, shut if one <= two else shut.inverse()))
    return sorted(found, key=lambda fold: fold[0])


def folded(piece: Piece, edges: tuple[str, ...], *, ways: tuple[bool, ...] = ()) -> Folded:
    """The run of `edges` as sewn. `ways` says of each edge whether it is walked as drafted; found where not given.
    Raises `KitError` for edges that do not follow one another, a dart whose legs differ, or nothing left to sew.

    >>> from kit import bodice_block, workshop_chart
    >>> front, back = bodice_block(workshop_chart()["W4"])
    >>> run = folded(front, ("side",))
    >>> abs(run.length - front.edge("side").path.length) < 1e-9
    True
    """
    known = piece.known_runs.get((edges, ways))
    if known is None:
        known = piece.known_runs[edges, ways] = _laid_out(piece, edges, ways or walked_ways(piece, edges))
    return Folded(piece, edges, *known)


_LaidOut = tuple[Path, tuple[FoldedStretch, ...], tuple[FoldOnRun, ...], Motion]


def _laid_out(piece: Piece, edges: tuple[str, ...], ways: tuple[bool, ...]) -> _LaidOut:
    """Path, stretches and folds of a run, and where what follows it comes to lie."""
    # The run is laid out like a chain: the first stretch lies as drafted, and at each fold the rest of the piece is
    # brought on to it by the motion that shuts the fold, on top of all motions before. `on` lies between `bounds`:
    # stretch i ends where fold i begins. Walked backwards, the fold before a stretch is the one after it as drafted,
    # and it is shut the other way.
    motion, at = Motion.identity(), 0.0
    whole: Path | None = None
    stretches: list[FoldedStretch] = []
    folds: list[FoldOnRun] = []
    for name, forward in zip(edges, ways, strict=True):
        path = piece.edge(name).path
        on = _folds_on(piece, name)
        marks = [0.0, *(place for start, end, *_ in on for place in (start, end)), path.length]
        bounds = list(zip(marks[::2], marks[1::2], strict=True))
        if any(high < low - _NONE for low, high in bounds):
            raise KitError(
                message("refusal.folds_over", edge=named_edge(piece.edge(name))),
                where=piece.title,
                do=message("refusal.folds_over_do"),
            )
        order = list(range(len(bounds))) if forward else list(reversed(range(len(bounds))))
        for number, i in enumerate(order):
            low, high = bounds[i]
            if number:
                fold = on[i - 1] if forward else on[i]
                motion = (fold[4] if forward else fold[4].inverse()).then(motion)
                folds.append(FoldOnRun(fold[2], fold[3], at, fold[1] - fold[0]))
            if high - low <= _NONE:
                continue
            bit = path.between(low, high) if forward else path.between(high, low)
            bit = bit.moved(motion)
            if whole is not None:
                gap = whole.end - bit.start
                if gap.length > 1e-9:  # legs or ends within tolerance but not exactly alike
                    slip = Motion.translation(gap)
                    motion, bit = motion.then(slip), bit.moved(slip)
            stretches.append(FoldedStretch(name, low, high, forward, at, motion))
            whole = bit if whole is None else whole.joined(bit)
            at += bit.length
    if whole is None:
        raise KitError(
            message("refusal.edge_folded_away"),
            where=piece.title,
            do=message("refusal.dart_beyond_do"),
        )
    return whole, tuple(stretches), tuple(folds), motion


@dataclass(frozen=True)
class CornerAt:
    """The corner at one end of a run: its inside `angle` (radians) between the run and the edge `beside`, with the
    unit vectors from the corner along both, all as the folded run lies at that end. `before` and `after` are the two
    edges in the piece's own order."""

    angle: float
    beside: str
    along: Vector
    away: Vector
    before: str
    after: str

    def declared(self, piece: Piece) -> bool:
        """Whether the corner is drawn on purpose."""
        return any({d.before, d.after} == {self.before, self.after} for d in piece.declared)


def corner_at(run: Folded, end: bool) -> CornerAt | None:
    """The corner at the start or the `end` of a run; None where the run ends within its edge, or nothing follows."""
    piece = run.piece
    last = run.stretches[-1] if end else run.stretches[0]
    onward = last.forward == end  # toward the end of the edge's own path
    names = [edge.name for edge in piece.edges]
    if len(names) < 2:
        return None
    path = piece.edge(last.edge).path
    tip = path.end if onward else path.start
    reach = last.high if onward else last.low
    full = path.length if onward else 0.0
    if abs(reach - full) > MEET and _fold_between(piece, last.edge, reach, full) is None:
        return None
    at = names.index(last.edge)
    other = names[(at + 1) % len(names)] if onward else names[at - 1]
    beside = piece.edge(other).path
    starts = beside.start.distance(tip) <= beside.end.distance(tip)
    if (beside.start if starts else beside.end).distance(tip) > MEET:
        return None
    try:
        next_run = folded(piece, (other,), ways=(starts,))
    except KitError:
        return None
    away = next_run.path.start_tangent
    shut = _fold_between(piece, last.edge, reach, full)
    if shut is not None:  # what lies beyond the fold comes to this side of it
        away = (shut if onward else shut.inverse()).vector(away)
    # The run's direction is brought back to where its last stretch lies in the draft, for the neighbour was never
    # moved.
    along = run.path.end_tangent * -1.0 if end else run.path.start_tangent
    along = last.motion.inverse().vector(along)
    left = run.cloth_left
    angle = along.turn_to(away) if left != end else away.turn_to(along)
    if angle < 0:
        angle += 2 * math.pi
    first, second = (last.edge, other) if onward else (other, last.edge)
    return CornerAt(angle, other, along, away, first, second)


def _fold_between(piece: Piece, edge: str, reach: float, full: float) -> Motion | None:
    """The shutting of the fold that alone lies between a run's end and the end of its edge."""
    low, high = min(reach, full), max(reach, full)
    if high - low <= MEET:
        return None
    for start, end, _, _, shut in _folds_on(piece, edge):
        if abs(start - low) < MEET and abs(end - high) < MEET:
            return shut
    return None
