"""The edges that are left of a garment when it is sewn, as loops: neck, sleeve openings, waist, hem; with its zips shut
or open.

Every corner of a half, and every place on an edge where a seam begins or ends, is a spot. A fold and the two ends of a
seam make spots of several halves one. The stretches of edge that no seam takes then hang together at their spots, and
what hangs together is a loop: no coordinates are compared but to tell which end of a seam meets which.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

from kit.geometry import Point
from kit.lesson.pattern import Pattern
from kit.piece.dart import mouths
from kit.piece.piece import Piece, Side
from kit.piece.slit import slit_of
from kit.sewing.facts import drawn_up_to
from kit.sewing.run import Run
from kit.sewing.spans import Span, path_of, spans
from kit.sewing.state import State
from kit.wear.shell import TRIMS, Joined, Row, is_worn, joints

_NEAR = 1.0  # mm between places on an edge that are one
EdgeSpot = tuple[str, Side, str, float]
"""(piece, half, edge, mm along it as drafted); a corner is the start of its edge."""


@dataclass(frozen=True)
class LoopStretch:
    """A stretch of edge that is left: on a piece and half, `length` mm as sewn. `roles` is what it is, or what the
    edges are that its band finishes; `arm`: it belongs to a sleeve; `zip`: a side of an opened zip; `slit`: of a
    slit."""

    piece: str
    side: Side
    edge: str
    start: float
    end: float
    length: float
    roles: frozenset[str]
    arm: bool = False
    zip: bool = False
    slit: bool = False


@dataclass(frozen=True)
class Loop:
    """Stretches of edge that hang together."""

    stretches: tuple[LoopStretch, ...]

    @property
    def length(self) -> float:
        """mm all round."""
        return sum(stretch.length for stretch in self.stretches)

    @property
    def roles(self) -> frozenset[str]:
        return frozenset().union(*(stretch.roles for stretch in self.stretches))

    @property
    def pieces(self) -> frozenset[str]:
        return frozenset(stretch.piece for stretch in self.stretches)

    @property
    def arm(self) -> bool:
        """Whether it is of a sleeve."""
        return any(stretch.arm for stretch in self.stretches)


class GarmentLoops:
    """The loops of a sewn garment, and what hangs together of its pieces."""

    def __init__(self, pattern: Pattern, state: State) -> None:
        self.pattern, self.state = pattern, state
        self.joints = joints(pattern)
        self.worn = tuple(piece for piece in pattern.pieces if is_worn(piece))

    @cached_property
    def shut(self) -> tuple[Loop, ...]:
        """The loops with every zip shut."""
        return _loops(self.pattern, self.state, self.worn, self.joints, ())

    @cached_property
    def open(self) -> tuple[Loop, ...]:
        """The loops with every zip open."""
        zips = tuple(joint for joint in self.joints if joint.zipped)
        if not zips:
            return self.shut
        seams = tuple(joint for joint in self.joints if not joint.zipped)
        return _loops(self.pattern, self.state, self.worn, seams, zips)

    @cached_property
    def parts(self) -> tuple[frozenset[str], ...]:
        """The pieces that hang together, the most of them first."""
        groups = [frozenset({piece.name}) for piece in self.worn]
        for joint in self.joints:
            names = frozenset(run.piece for run in (*joint.a, *joint.b))
            met = [group for group in groups if group & names]
            groups = [group for group in groups if not group & names] + [names.union(*met)]
        return tuple(sorted(groups, key=len, reverse=True))


def _loops(
    pattern: Pattern, state: State, worn: tuple[Piece, ...], seams: tuple[Joined, ...], zips: tuple[Joined, ...]
) -> tuple[Loop, ...]:
    board = _Board(pattern, worn, (*seams, *zips))
    for piece in worn:
        for end in _fold_ends(piece):
            board.one([(piece.name, "left", *end), (piece.name, "right", *end)])
    for seam in seams:
        board.sew(seam)
    taken = [span for seam in seams for row in (seam.a, seam.b) for run in row for span in spans(pattern, run)]
    zipped = [span for each in zips for row in (each.a, each.b) for run in row for span in spans(pattern, run)]
    finishes = _finishes(pattern, seams)
    found: list[tuple[LoopStretch, EdgeSpot, EdgeSpot]] = []
    for piece in worn:
        for side in piece.sides:
            for edge in piece.edges:
                if edge.name != piece.fold:
                    found += _left(board, state, piece, side, edge.name, taken, zipped, finishes)
    return _hanging_together(board, found)


class _Board:
    """The spots of a garment, and which of them are one."""

    def __init__(self, pattern: Pattern, worn: tuple[Piece, ...], joined: tuple[Joined, ...]) -> None:
        self.pattern = pattern
        self.cuts: dict[tuple[str, Side, str], list[float]] = {}
        self.slits: dict[tuple[str, Side, str], list[tuple[float, float]]] = {}
        self._same: dict[EdgeSpot, EdgeSpot] = {}
        for joint in joined:
            for run in (*joint.a, *joint.b):
                for span in spans(pattern, run):
                    cut = self.cuts.setdefault((span.piece, span.side, span.edge), [])
                    cut += [span.start, span.end]
        for piece in worn:
            for mark in piece.marks:
                slit = slit_of(piece, mark)
                if slit is not None:
                    for side in piece.sides:
                        key = (piece.name, side, slit.edge)
                        self.cuts.setdefault(key, []).append(slit.at)
                        self.slits.setdefault(key, []).append((slit.at, slit.line.length))
        for key, places in self.cuts.items():
            self.cuts[key] = _apart(places)

    def spot(self, piece: str, side: Side, edge: str, at: float) -> EdgeSpot:
        """The spot at a place on an edge: a corner is the start of the edge that begins there."""
        whole = self.pattern.piece(piece)
        names = [each.name for each in whole.edges]
        if at > whole.edge(edge).path.length - _NEAR:
            return (piece, side, names[(names.index(edge) + 1) % len(names)], 0.0)
        if at < _NEAR:
            return (piece, side, edge, 0.0)
        known = self.cuts.get((piece, side, edge), [])
        return (piece, side, edge, min(known, key=lambda cut: abs(cut - at), default=at))

    def root(self, spot: EdgeSpot) -> EdgeSpot:
        while (other := self._same.get(spot, spot)) != spot:
            spot = other
        return spot

    def one(self, same: list[EdgeSpot]) -> None:
        """These spots are one from now on."""
        first = self.root(self.spot(*same[0]))
        for each in same[1:]:
            other = self.root(self.spot(*each))
            if other != first:
                self._same[other] = first

    def sew(self, seam: Joined) -> None:
        """The two ends of a seam's rows meet. A row that is a ring has none."""
        a, b = self._ends(seam.a), self._ends(seam.b)
        if len(a) == len(b) == 2:
            if _crossed(a, b):
                b = b[::-1]
            for one, other in zip(a, b, strict=True):
                self.one([one[0], other[0]])

    def _ends(self, row: Row) -> list[tuple[EdgeSpot, Point, Run]]:
        """The two ends of a row: those ends of its runs that meet no other of them."""
        ends: list[tuple[EdgeSpot, Point, Run]] = []
        for run in row:
            path, inside = path_of(self.pattern, run), spans(self.pattern, run)
            for point, span in ((path.start, inside[0]), (path.end, inside[-1])):
                edge = self.pattern.piece(run.piece).edge(span.edge).path
                at = min((span.start, span.end), key=lambda at: edge.at(at).distance(point))
                ends.append((self.root(self.spot(span.piece, span.side, span.edge, at)), point, run))
        times = Counter(spot for spot, _, _ in ends)
        return [end for end in ends if times[end[0]] % 2]


def _crossed(a: list[tuple[EdgeSpot, Point, Run]], b: list[tuple[EdgeSpot, Point, Run]]) -> bool:
    """Whether the first end of one row meets the last of the other."""
    (one, p, run), (two, q, last) = a
    (other, r, run_b), (_, s, last_b) = b
    if (
        one[0] == other[0]
        and run.side != run_b.side
        and {(e[0], e[2]) for e in (one, two)} == {(spot[0], spot[2]) for spot, _, _ in b}
    ):  # the two halves of one piece, as along a centre seam
        return (one[2], round(one[3])) != (other[2], round(other[3]))
    if run.side != last.side and run_b.side != last_b.side:
        return run.side != run_b.side
    return (q - p).dot(s - r) < 0


def _apart(places: list[float]) -> list[float]:
    found: list[float] = []
    for place in sorted(places):
        if not found or place - found[-1] > _NEAR:
            found.append(place)
    return found


def _fold_ends(piece: Piece) -> list[tuple[str, float]]:
    """The two corners at the fold, each as (edge, mm along it)."""
    names = [edge.name for edge in piece.edges]
    if not piece.fold or piece.fold not in names:
        return []
    return [(piece.fold, 0.0), (names[(names.index(piece.fold) + 1) % len(names)], 0.0)]


def _finishes(pattern: Pattern, seams: tuple[Joined, ...]) -> dict[str, tuple[frozenset[str], bool]]:
    """{band: (the roles of the edges it is sewn to, whether these are of a sleeve)}, also of a band on a band."""
    found: dict[str, tuple[frozenset[str], bool]] = {}
    for _ in range(2):
        for seam in seams:
            for mine, others in ((seam.a, seam.b), (seam.b, seam.a)):
                name = mine[0].piece
                if pattern.piece(name).role in TRIMS and all(run.piece != name for run in others):
                    roles, arm = found.get(name, (frozenset(), False))
                    for run in others:
                        piece = pattern.piece(run.piece)
                        known, sleeve = found.get(run.piece, (frozenset(), False))
                        own = {piece.edge(edge).role or "" for edge in run.edges} if piece.role not in TRIMS else known
                        roles, arm = roles | own, arm or sleeve or piece.role in ("sleeve", "cuff")
                    found[name] = (frozenset(roles), arm)
    return found


def _left(
    board: _Board,
    state: State,
    piece: Piece,
    side: Side,
    edge: str,
    taken: list[Span],
    zipped: list[Span],
    finishes: dict[str, tuple[frozenset[str], bool]],
) -> list[tuple[LoopStretch, EdgeSpot, EdgeSpot]]:
    """The stretches of one edge that no seam takes, each with the spots at its ends; and the sides of its slits."""
    size = piece.edge(edge).path.length
    key = (piece.name, side, edge)
    places = [0.0, *(cut for cut in board.cuts.get(key, []) if _NEAR <= cut <= size - _NEAR), size]
    roles, arm = finishes.get(piece.name, (frozenset(), False))
    if piece.role not in TRIMS:
        roles, arm = frozenset({piece.edge(edge).role or ""}), piece.role == "sleeve"
    drawn = drawn_up_to(state, Run(piece.name, (edge,)), side)
    slits = dict(board.slits.get(key, []))
    found = []
    for low, high in pairwise(places):
        middle = (low + high) / 2
        if any(_covers(span, key, middle) for span in taken):
            continue
        long = high - low - sum(max(0.0, min(b, high) - max(a, low)) for a, b in mouths(piece, edge))
        if drawn is not None:
            long *= drawn / size
        opened = any(_covers(span, key, middle) for span in zipped)
        stretch = LoopStretch(piece.name, side, edge, low, high, long, roles, arm, opened)
        ends = [board.root(board.spot(piece.name, side, edge, at)) for at in (low, high)]
        # A slit parts the spot it opens at: what lies before it and what lies after it meet round its end.
        if low in slits:
            ends[0] = (*ends[0][:3], ends[0][3] + 0.5)
        found.append((stretch, ends[0], ends[1]))
    for at, long in slits.items():
        near = board.root(board.spot(piece.name, side, edge, at))
        far = (*near[:3], near[3] + 0.5)
        found.append((LoopStretch(piece.name, side, edge, at, at, 2 * long, roles, arm, slit=True), near, far))
    return found


def _covers(span: Span, key: tuple[str, Side, str], at: float) -> bool:
    return (span.piece, span.side, span.edge) == key and span.start < at < span.end


def _hanging_together(board: _Board, found: list[tuple[LoopStretch, EdgeSpot, EdgeSpot]]) -> tuple[Loop, ...]:
    groups: list[tuple[set[EdgeSpot], list[LoopStretch]]] = []
    for stretch, one, other in found:
        ends, inside = {one, other}, [stretch]
        rest = []
        for spots, stretches in groups:
            if spots & ends:
                ends |= spots
                inside = stretches + inside
            else:
                rest.append((spots, stretches))
        groups = [*rest, (ends, inside)]
    return tuple(Loop(tuple(stretches)) for _, stretches in groups)
