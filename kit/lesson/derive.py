"""Facings derived from a run of edges of one or several pieces, as plain geometry.

A run may cross from piece to piece over seams. Its darts and pleats are folded shut, the next piece is laid with its
seam edge on the last one's, and the parallel is drawn over the whole run, so that the outer edges of neighbours meet.
Lengths are mm; everything comes from the pieces as they lie now.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from itertools import pairwise

from kit.diagnostic import list_of, measured, message, named_edge, titled
from kit.diagnostic import number as degrees
from kit.errors import KitError, near
from kit.geometry import Motion, Path, Point, parallel
from kit.lesson.headings import FAR
from kit.piece.folded import folded
from kit.piece.piece import Edge, Mark, Notch, Piece
from kit.piece.role import EdgeRole, edge_role

FOLLOW = 0.3
"""A facing's end is ruled straight where the edge it lies on departs from that by no more than this."""
_MEET = 0.1


@dataclass(frozen=True)
class RunStretch:
    """One edge of a run as it lies in it: `path` with its darts and pleats shut, going the way of the run, and the
    garment's `notches` along it."""

    piece: str
    edge: str
    said: str
    path: Path
    notches: tuple[Notch, ...]
    role: EdgeRole | None = ""

    def moved(self, motion: Motion) -> RunStretch:
        return replace(self, path=self.path.moved(motion))


@dataclass(frozen=True)
class Laid:
    """A run on one piece: its `stretches`; `head` and `tail`, the edges beside it, going inward from its start and
    its end, by name and path; `left`: whether the cloth lies to the left of the run."""

    piece: Piece
    stretches: tuple[RunStretch, ...]
    head: tuple[str, Path]
    tail: tuple[str, Path]
    left: bool

    def moved(self, motion: Motion) -> Laid:
        return replace(
            self,
            stretches=tuple(stretch.moved(motion) for stretch in self.stretches),
            head=(self.head[0], self.head[1].moved(motion)),
            tail=(self.tail[0], self.tail[1].moved(motion)),
            left=self.left != motion.flips,
        )


@dataclass(frozen=True)
class Facing:
    """A derived facing: its edges around, its `notches` and `marks`, and where its depth is dimensioned."""

    edges: tuple[Edge, ...]
    notches: tuple[Notch, ...]
    marks: tuple[Mark, ...]
    outer: Path
    middle: Point


# ---- the run ----------------------------------------------------------------------------------------------


def laid(piece: Piece, names: Sequence[str]) -> Laid:
    """The run of the edges `names`, one following the other around the piece in either direction. `KitError` when
    they do not."""
    order = [edge.name for edge in piece.edges]
    for name in names:
        piece.edge(name)
    first = order.index(names[0])
    ahead = [order[(first + i) % len(order)] for i in range(len(names))] == list(names)
    back = len(names) > 1 and [order[(first - i) % len(order)] for i in range(len(names))] == list(names)
    if not ahead and not back:
        raise KitError(
            f"{', '.join(names)} do not follow one another around {piece.title or piece.name}.",
            do=f"Name them in order: {', '.join(order)}.",
        )
    if len(names) >= len(order) - 1:
        raise KitError(
            f"the run takes up all of {piece.title or piece.name}.",
            do="Leave an edge at each end of it for the facing's ends.",
        )
    # Each edge is taken as it is sewn, its darts and pleats shut, so that all beyond a fold turns with it: `motion`
    # gathers those turns, and the next stretch is laid where the fold before it has brought it.
    run = list(names) if ahead else list(reversed(names))
    motion, stretches = Motion.identity(), []
    for name in run:
        sewn = folded(piece, (name,), ways=(True,))
        long = piece.edge(name).path.length
        notches = tuple(
            replace(n, distance=sewn.sewn(name, min(max(n.distance, 0.0), long)) or 0.0)
            for n in piece.notches
            if n.edge == name
        )
        edge = piece.edge(name)
        stretches.append(RunStretch(piece.name, name, edge.said, sewn.path.moved(motion), notches, edge.role))
        motion = sewn.beyond.then(motion)
    before = order[order.index(run[0]) - 1]
    after = order[(order.index(run[-1]) + 1) % len(order)]
    left = inside_left(piece)
    made = Laid(
        piece,
        tuple(stretches),
        (before, piece.edge(before).path.reversed()),
        (after, piece.edge(after).path.moved(motion)),
        left,
    )
    return made if ahead else turned(made)


def inside_left(piece: Piece) -> bool:
    points = [p for e in piece.edges for c in e.path.curves for p in (c.start, c.point(0.5))]
    return sum(p.x * q.y - q.x * p.y for p, q in zip(points, [*points[1:], *points[:1]], strict=True)) > 0


def turned(run: Laid) -> Laid:
    """The same run walked the other way."""
    return replace(
        run,
        stretches=tuple(
            replace(
                s,
                path=s.path.reversed(),
                notches=tuple(replace(n, distance=s.path.length - n.distance) for n in s.notches),
            )
            for s in reversed(run.stretches)
        ),
        head=run.tail,
        tail=run.head,
        left=not run.left,
    )


def joined(
    runs: Sequence[Laid], seams: Sequence[tuple[str, str]], depth: float
) -> tuple[tuple[Laid, ...], tuple[Motion, ...]]:
    """The runs laid end to end, the first as drawn: at each of `seams` (edge of the one, edge of the next) the next
    piece is laid seam on seam, turned over where it must be. Returns them and the motion of each. `KitError` when a
    seam does not lie at the run's end."""
    if len(seams) != len(runs) - 1:
        raise KitError(
            f"the run crosses {len(runs) - 1} seams, but {len(seams)} are named.",
            do="Name every seam it crosses: across='shoulder', or across=(front.shoulder, back.shoulder).",
        )
    found: list[Laid] = []
    motions: list[Motion] = []
    for number, run in enumerate(runs):
        leaving = seams[number][0] if number < len(seams) else ""
        arriving = seams[number - 1][1] if number else ""
        this = _facing_seams(run, arriving, leaving)
        motion = Motion.identity()
        if found:
            last, seam = found[-1], this.head[1]
            one = last.tail[1]
            reach = min(depth, one.length, seam.length)
            motion = Motion.matching(seam.start, seam.at(reach), one.start, one.at(reach), flip=this.left != last.left)
            this = this.moved(motion)
        found.append(this)
        motions.append(motion)
    return tuple(found), tuple(motions)


def _facing_seams(run: Laid, arriving: str, leaving: str) -> Laid:
    """The run walked so that it arrives over one seam and leaves over the other."""
    for this in (run, turned(run)):
        if (not arriving or this.head[0] == arriving) and (not leaving or this.tail[0] == leaving):
            return this
    title, ends = run.piece.title or run.piece.name, (run.head[0], run.tail[0])
    wrong = next((seam for seam in (arriving, leaving) if seam and seam not in ends), arriving or leaving)
    raise KitError(
        f"the {wrong.replace('_', ' ')} of {title} is not where the run passes on; it lies between "
        f"{' and '.join(ends)}.",
        do=near(wrong, ends) or "Name the seam at the run's end.",
    )


# ---- the facing -------------------------------------------------------------------------------------------


def facing(
    runs: Sequence[Laid],
    depth: float,
    ends: tuple[str, str],
    short: tuple[float, float] = (0.0, 0.0),
    cut: tuple[int, float, str] | None = None,
    where: str = "",
    follow: bool = True,
) -> Facing:
    """The facing of joined `runs`, `depth` mm deep, its short ends called `ends`; the outer edge drawn in by `short`
    mm at its start and its end. `cut` is (number of the seam, how far along the run it is moved, "before" or
    "after"): only that part is kept. Raises `KitError` when it does not fit."""
    stretches = [stretch for run in runs for stretch in run.stretches]
    # The run is one path here, whatever pieces it came from: those have been laid seam on seam already. Only at the
    # end is it taken apart again into edges, which keep the names and notches they had.
    whole = stretches[0].path
    for stretch in stretches[1:]:
        whole = whole.joined(stretch.path)
    left = runs[0].left
    head: Path | None = runs[0].head[1]
    tail: Path | None = runs[-1].tail[1]
    outer = _outer(runs, whole, depth, where)
    begin, finish = 0.0, whole.length
    if cut is not None:
        number, by, part = cut
        seam = runs[number].tail[1]
        at, far = _seam_places(whole, outer, seam, by if left else -by, depth, where)
        if part == "before":
            finish, outer, tail = at, outer.between(0.0, far), None
        else:
            begin, outer, head = at, outer.between(far, outer.length), None
    kept = _within(stretches, begin, finish)
    clash = {ends[0], ends[1], "outer"} & {name for name, _, _ in kept}
    if clash or ends[0] == ends[1]:
        raise KitError(
            f"two edges would be called '{(sorted(clash) or [ends[0]])[0]}'.",
            where=where,
            do="Name the two ends otherwise: ends=('...', '...').",
        )
    for size, name in ((short[0], ends[0]), (short[1], ends[1])):
        if size >= outer.length / 2:
            raise KitError(
                message("refusal.drawn_short", length=measured(outer.length), by=measured(size), edge=named_edge(name)),
                where=where,
                do=message("refusal.drawn_short_do"),
            )
    # The edges are listed once around: along the run, across its end, back along the outer edge, across its start.
    # Each of the last two runs against the way it was made, hence `reversed`.
    full = outer
    outer = outer.between(short[0], outer.length - short[1]) if short[0] or short[1] else outer
    start, end = kept[0][1].path.start, kept[-1][1].path.end
    one = _end(head if follow else None, start, outer.start, short[0])
    two = _end(tail if follow else None, end, outer.end, short[1])
    edges = [Edge(name, stretch.path, said=stretch.said, role=stretch.role) for name, stretch, _ in kept]
    roles = _end_roles(runs, ends, cut)
    edges.append(Edge(ends[1], two, drawn_in=short[1], role=roles[1]))
    edges.append(Edge("outer", outer.reversed(), role="outer"))
    edges.append(Edge(ends[0], one.reversed(), drawn_in=short[0], role=roles[0]))
    notches = tuple(replace(n, edge=name) for name, _, found in kept for n in found)
    middle = whole.at((begin + finish) / 2)
    return Facing(tuple(edges), notches, _seam_marks(runs, kept), full, middle)


def _outer(runs: Sequence[Laid], whole: Path, depth: float, where: str) -> Path:
    """The outer edge, from the edge beside the run's start to the one beside its end. `KitError` that names the end,
    and the angle there, which keeps it from being drawn."""
    first, last = runs[0], runs[-1]
    try:
        outer = parallel(whole, depth if first.left else -depth)
    except KitError as error:
        titles = dict.fromkeys(run.piece.title or run.piece.name for run in runs)
        raise KitError(
            message(
                "refusal.facing_no_fit",
                depth=measured(depth),
                pieces=list_of(titled(title) for title in titles),
                what=error.told.says,
            ),
            where=where,
            do=message("refusal.facing_narrower_do"),
        ) from None
    ends = (
        (first, first.head, first.stretches[0], "start", whole.start_tangent),
        (last, last.tail, last.stretches[-1], "end", whole.end_tangent * -1.0),
    )
    for run, (name, path), stretch, end, along in ends:
        try:
            outer = outer.to(path, end="start" if end == "start" else "end")
        except KitError:
            angle = abs(math.degrees(along.turn_to(path.start_tangent)))
            raise KitError(
                message(
                    "drafting.facing_end",
                    depth=measured(depth),
                    edge=named_edge(run.piece.edge(name)),
                    run=named_edge(run.piece.edge(stretch.edge)),
                    piece=titled(run.piece.title or run.piece.name),
                    angle=degrees(round(angle)),
                    long=measured(path.length),
                ),
                where=where,
                do=message("drafting.facing_end_do", edge=named_edge(run.piece.edge(name))),
            ) from None
    return outer


def _end_roles(
    runs: Sequence[Laid], ends: tuple[str, str], cut: tuple[int, float, str] | None
) -> tuple[EdgeRole | None, EdgeRole | None]:
    """What the short ends are: what their names say, else what the edges they lie on are, the seam at the one `cut`."""
    first, last = (runs[0], runs[0].head[0]), (runs[-1], runs[-1].tail[0])
    if cut is not None:
        seam = (runs[cut[0]], runs[cut[0]].tail[0])
        first, last = (first, seam) if cut[2] == "before" else (seam, last)
    one, two = (edge_role(end) or run.piece.edge(on).role for end, (run, on) in zip(ends, (first, last), strict=True))
    return one, two


def _seam_places(whole: Path, outer: Path, seam: Path, by: float, depth: float, where: str) -> tuple[float, float]:
    """How far along the run and along the outer edge a seam crosses them, moved `by` mm to the right of its way in."""
    line = parallel(Path.line(seam.start, seam.at(min(depth, seam.length))), -by) if by else seam
    line = line.extended(FAR, end="end")
    found = []
    for path, near_to in ((whole, seam.start), (outer, seam.at(min(depth, seam.length)))):
        if path is whole and not by:
            found.append(path.nearest(seam.start))
            continue
        places = path.crossings(line.extended(FAR, end="start") if by else line)
        if not places:
            raise KitError(message("refusal.seam_past"), where=where, do=message("refusal.seam_past_do"))
        found.append(path.nearest(min(places, key=near_to.distance)))
    return found[0], found[1]


def _within(
    stretches: Sequence[RunStretch], begin: float, finish: float
) -> list[tuple[str, RunStretch, tuple[Notch, ...]]]:
    """(name, stretch, notches) of the stretches between two distances along the run. They keep their names where
    they are all of one piece, else they are named after it too."""
    found: list[RunStretch] = []
    at = 0.0
    for stretch in stretches:
        size = stretch.path.length
        low, high = max(begin - at, 0.0), min(finish - at, size)
        if high - low > 0.5:
            notches = tuple(
                replace(n, distance=n.distance - low)
                for n in stretch.notches
                if low - 1e-6 <= n.distance <= high + 1e-6
            )
            path = stretch.path if low < 1e-9 and high > size - 1e-9 else stretch.path.between(low, high)
            found.append(replace(stretch, path=path, notches=notches))
        at += size
    if not found:
        raise KitError(message("refusal.run_gone"), do=message("refusal.seam_less_do"))
    one = len({stretch.piece for stretch in found}) == 1
    return [(s.edge if one else f"{s.piece}_{s.edge}", s, s.notches) for s in found]


def _end(beside: Path | None, start: Point, end: Point, drawn_in: float) -> Path:
    """A short end from the run to the outer edge: along the edge beside it, or straight where that is as good or
    the outer edge is drawn in."""
    chord = Path.line(start, end)
    if beside is None or drawn_in > 0 or beside.is_straight:
        return chord
    reach = beside.nearest(end)
    if reach < 1e-6 or beside.at(reach).distance(end) > 0.05 or beside.start.distance(start) > 0.05:
        return chord
    part = beside.between(0.0, reach)
    off = max(chord.distance_to(point) for point in part.points(FOLLOW / 3))
    return part if off > FOLLOW else chord


def _seam_marks(runs: Sequence[Laid], kept: Sequence[tuple[str, RunStretch, tuple[Notch, ...]]]) -> tuple[Mark, ...]:
    """Where a seam of the garment meets a facing that runs on across it."""
    marks = []
    for run, after in pairwise(runs):
        at, name = run.tail[1].start, run.tail[0]
        for (_, one, _), (_, two, _) in pairwise(kept):
            if (one.piece, two.piece) == (run.piece.name, after.piece.name) and one.path.end.distance(at) < _MEET:
                edge = run.piece.edge(name)
                said = edge.said or (f"{edge.label} seam" if edge.role == edge.name else edge.label)
                marks.append(Mark(f"{run.piece.name}_{name}_seam", "point", point=at, said=said))
    return tuple(marks)
