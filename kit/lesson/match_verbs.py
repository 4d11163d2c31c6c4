"""Notches in matched pairs, and marks carried over from one edge to the one it is sewn to."""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError, near
from kit.geometry import Motion, Point
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.true_verbs import Edges, bench_of, own_edges
from kit.lesson.verb import verb
from kit.piece.folded import Folded, folded
from kit.piece.piece import Mark, Notch
from kit.sewing.seam_walk import Walk, walk_folded
from kit.units import Length, Size

Notched = Size | PaperPoint | tuple[Size, Size]
"""Where a pair of notches lies: a length along both edges, a point on one, or a length along each."""
_SAME = 1.0
_CARRY = 50.0
_OVER = Motion.reflection(Point(0.0, 0.0), Point(0.0, 1.0))


@verb
def match(
    bench: OpenPiece,
    own: Edges,
    other: Edges,
    *,
    at: Notched | list[Notched],
    measured_from: Literal["start", "end"] = "start",
    double: Literal["other", "own", "neither"] = "other",
    name: str = "",
    turned: bool | None = None,
) -> None:
    """Notches in pairs on an edge of this piece and the edge it is sewn to.

    `at` is one place or a list of them: a length along both edges as sewn, darts folded shut, from the ends that
    meet (those at the start of this piece's edge, or at its "end"); a point marked on this piece's edge; or a pair
    of lengths (along own, along other) where ease lies before the notch. The front is notched once and the back
    twice (common practice, no source): `double` says which edge gets the double notches, the other one unless
    said. `turned` says by hand that the other edge runs the other way.

    Example::

        front.match(front.side, back.side, at=[8 * cm, 15 * cm])
    """
    if measured_from not in ("start", "end"):
        raise KitError(f"a notch is measured from the 'start' or the 'end', not '{measured_from}'.")
    if double not in ("other", "own", "neither"):
        raise KitError(f"double='{double}'.", where=bench.where, do=near(double, ("other", "own", "neither")))
    edges, partner = own_edges(bench, own), bench_of(other, bench.where)
    others = own_edges(partner, other)
    for number, place in enumerate(at if isinstance(at, list) else [at], start=1):
        found = _walk(bench, partner, edges, others, turned)
        a, b, given = _place(found, place, measured_from, bench.where)
        called = f"{name or edges[0] + '_match'}_{number}" if isinstance(at, list) else name or f"{edges[0]}_match"
        _add_notch(bench, found.a, a, "double" if double == "own" else "single", called)
        _add_notch(partner, found.b, b, "double" if double == "other" else "single", called)
        _measured(bench, found.a, a, given, measured_from)


def _add_notch(bench: OpenPiece, run: Folded, at: float, kind: Literal["single", "double"], name: str) -> None:
    edge, place = run.drafted(at)
    for notch in bench.piece.notches:
        if notch.edge == edge and abs(notch.distance - place) < _SAME:
            raise KitError(
                message("refusal.notch_taken", at=measured(notch.distance), edge=named_edge(run.piece.edge(edge))),
                where=bench.where,
                do=message("refusal.notch_taken_do"),
            )
    taken = {notch.name for notch in bench.piece.notches if notch.name}
    count, free = 2, name
    while free in taken:
        free, count = f"{name}_{count}", count + 1
    bench.change(notches=(*bench.piece.notches, Notch(edge, place, kind, free)))


def _measured(bench: OpenPiece, run: Folded, at: float, given: Length | None, end: str) -> None:
    """The place of a notch, dimensioned where it is a named measure and no fold lies before it."""
    if given is None or not given.name:
        return
    low, high = (0.0, at) if end == "start" else (at, run.length)
    if high - low > 1e-6 and not any(low - 1e-6 < fold.at < high + 1e-6 for fold in run.folds):
        way = run.path.between(low, high)
        bench.note(given, way.start, way.end, None if way.is_straight else way)


@verb
def transfer(
    bench: OpenPiece,
    source: OpenPiece,
    name: str,
    edge: Edges,
    to: Edges,
    *,
    turned: bool | None = None,
    said: str = "",
) -> None:
    """Carry a mark over from an edge of `source` to the edge of this piece that it is sewn to: an opening comes to
    the same place along the seam, and so does a point marked on the edge. Both edges are taken as sewn, from the
    ends that meet; where one is eased, the place lies in proportion between the notches they share.

    Example::

        front.leave_open("tie_opening", "side", at=10 * cm, size=4 * cm)
        back.transfer(front, "tie_opening", front.side, back.side)
    """
    marks = {mark.name: mark for mark in source.freeze().marks}
    if name not in marks:
        raise KitError(
            f"there is no mark '{name}' to carry over.", where=source.where, do=near(name, marks) or "Mark it."
        )
    mark = marks[name]
    if any(own.name == name for own in bench.piece.marks):
        raise KitError(f"'{name}' is already marked.", where=bench.where, do="Carry it over only once.")
    edges, own = own_edges(source, edge), own_edges(bench, to)
    found = _walk(source, bench, edges, own, turned)
    places = [_on_run(found.a, mark, source.where, place) for place in _ends(mark)]
    there = sorted(found.b.drafted(found.opposite(place)) for place in places)
    if len({name_of for name_of, _ in there}) > 1:
        raise KitError(
            message("refusal.mark_over", mark=mark.label), where=bench.where, do=message("refusal.mark_over_do")
        )
    on, start = there[0]
    new = replace(mark, edge=on, start=start, end=there[-1][1], path=None, said=said or mark.said)
    if mark.kind != "opening":
        new = replace(new, point=bench.freeze().edge(on).path.at(start), end=0.0)
    bench.change(marks=(*bench.piece.marks, new))


def _walk(
    one: OpenPiece, other: OpenPiece, edges: tuple[str, ...], others: tuple[str, ...], turned: bool | None
) -> Walk:
    a, b = one.freeze(), other.freeze()
    if a.name == b.name and edges == others:
        raise KitError("an edge is not sewn to itself.", where=a.title, do="Name the two edges that meet.")
    return walk_folded(folded(a, edges), folded(b, others), turned=turned)


def _place(found: Walk, given: Notched, end: str, where: str) -> tuple[float, float, Length | None]:
    """(mm along own, mm along other, the length as it was given), both from the start of the walk."""
    if isinstance(given, PaperPoint):
        for name in found.a.edges:
            path = found.a.piece.edge(name).path
            along = path.nearest(given.point)
            if path.at(along).distance(given.point) < _SAME:
                at = found.a.sewn(name, along)
                if at is not None:
                    other = at if end == "start" else found.b.length - (found.a.length - at)
                    return at, _within(found.b, other), None
        raise KitError(
            message("refusal.point_off", place=found.a.spot), where=where, do=message("refusal.point_off_do")
        )
    pair = given if isinstance(given, tuple) else (given, given)
    if len(pair) != 2:
        raise KitError(
            f"{len(pair)} lengths are given for one pair of notches.",
            where=where,
            do="Write one length, or two: (along this edge, along the other).",
        )
    one, other = (distance(value, f"{where}, notch") for value in pair)
    runs = (found.a, found.b)
    a, b = (
        _within(run, float(size) if end == "start" else run.length - float(size))
        for run, size in zip(runs, (one, other), strict=True)
    )
    return a, b, one


def _within(run: Folded, at: float) -> float:
    if not -1e-6 <= at <= run.length + 1e-6:
        off = at if at > 0 else run.length - at
        raise KitError(
            message("refusal.notch_past", at=measured(off), edge=run.spot, length=measured(run.length)),
            where=run.piece.title,
            do=message("refusal.nearer_do"),
        )
    return min(max(at, 0.0), run.length)


def _ends(mark: Mark) -> tuple[float | None, ...]:
    """Where a mark lies on its edge: both ends of an opening, one place for a point, None where it is only drawn."""
    if mark.kind == "opening":
        return (mark.start, mark.end)
    return (mark.start,) if mark.edge else (None,)


def _on_run(run: Folded, mark: Mark, where: str, place: float | None) -> float:
    at: float | None = None
    if place is not None and mark.edge in run.edges:
        at = run.sewn(mark.edge, place)
    elif place is None and mark.point is not None:
        for name in run.edges:
            path = run.piece.edge(name).path
            along = path.nearest(mark.point)
            if path.at(along).distance(mark.point) <= _SAME:
                at = run.sewn(name, along)
    if at is None:
        raise KitError(
            message("refusal.mark_off", mark=mark.label, place=run.spot),
            where=where,
            do=message("refusal.mark_off_do"),
        )
    return at


def level(bench: OpenPiece, edge: str, given: PaperLine | PaperPoint) -> Length:
    """How far along an edge, from its start, another line meets it or a point lies level with it. A line of the half
    that wraps over is tried as it lies, and folded over about the centre line; straight it may be carried on a little.
    `KitError` where neither meets the edge."""
    path = bench.path(edge)
    said = named_edge(bench.piece.edge(edge))
    if isinstance(given, PaperPoint):
        for direction in ("out", "in"):
            try:
                met = given.across(PaperLine(bench, path, edge), direction)
            except KitError:
                continue
            if path.distance_to(met.point) < 0.01:
                return Length(path.nearest(met.point))
        raise KitError(
            message("refusal.level_misses", edge=said), where=bench.where, do=message("refusal.level_misses_do")
        )
    for line in (given.path, given.path.moved(_OVER)):
        far = line.extended(_CARRY, end="start").extended(_CARRY, end="end")
        for tried in (line, far):
            hits = path.crossings(tried)
            if hits:
                return Length(min(path.nearest(hit) for hit in hits))
    raise KitError(
        message("refusal.line_misses_edge", line=given.told, edge=said),
        where=bench.where,
        do=message("refusal.line_misses_edge_do"),
    )
