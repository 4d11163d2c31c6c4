"""Interfacings and linings derived from a piece, as plain geometry. Lengths are mm."""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import replace

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Line, Motion, Path, parallel
from kit.lesson.derive import facing, inside_left, laid
from kit.piece.double_dart import double_dart
from kit.piece.piece import Edge, Mark, Piece


def interfacing(piece: Piece, beyond: float | None) -> tuple[Edge, ...]:
    """The edges of an interfacing over the whole piece: with the piece's own allowances, or with `beyond` mm outside
    the stitch line everywhere but on the fold."""
    if beyond is None:
        return piece.edges
    return tuple(replace(edge, allowance=0.0 if edge.name == piece.fold else beyond) for edge in piece.edges)


def _neighbours(piece: Piece, edge: str) -> tuple[Edge, Edge]:
    names = [e.name for e in piece.edges]
    i = names.index(edge)
    return piece.edges[i - 1], piece.edges[(i + 1) % len(names)]


def shortened(piece: Piece, hem: str, by: float) -> Piece:
    """The hem moved `by` mm into the piece, parallel; the edges beside it end there."""
    edge = piece.edge(hem)
    before, after = _neighbours(piece, hem)
    if min(before.path.length, after.path.length) <= by + 1:
        raise KitError(
            message(
                "refusal.hem_shorter", by=measured(by), length=measured(min(before.path.length, after.path.length))
            ),
            where=piece.title,
            do=message("refusal.shorten_less_do"),
        )
    path = parallel(edge.path, by if inside_left(piece) else -by)
    path = path.to(before.path, end="start").to(after.path, end="end")
    one = before.path.between(0.0, before.path.nearest(path.start))
    two = after.path.between(after.path.nearest(path.end), after.path.length)
    return _redrawn(piece, {before.name: one, hem: path, after.name: two}, moved=(hem,))


def without_facing(piece: Piece, names: Sequence[str], depth: float, name: str = "facing") -> Piece:
    """The piece less a facing: the run `names` gives way to its parallel `depth` mm inside, called `name`."""
    order = [e.name for e in piece.edges]
    for edge in names:
        piece.edge(edge)
    if len(names) > 1 and order[order.index(names[0]) - 1] == names[1]:
        names = names[::-1]
    run = laid(piece, names)
    for edge in names:
        for dart in piece.darts:
            if dart.edge == edge:
                raise KitError(
                    message("refusal.dart_left_out", dart=dart.label, edge=named_edge(piece.edge(edge))),
                    where=piece.title,
                    do=message("refusal.dart_left_out_do"),
                )
    # The parallel must end on the two edges beside the run, or the facing is deeper than they are long; they are then
    # cut back to where it meets them.
    cut = facing((run,), depth, ("head_end", "tail_end"), where=piece.title)
    head, tail, line = run.head[0], run.tail[0], cut.outer
    before, after = piece.edge(head).path, piece.edge(tail).path
    for beside, at in ((piece.edge(head), line.start), (piece.edge(tail), line.end)):
        if beside.path.distance_to(at) > 0.1:
            raise KitError(
                message("refusal.facing_deeper", edge=named_edge(beside)),
                where=piece.title,
                do=message("refusal.facing_narrower_do"),
            )
    paths = {
        head: before.between(0.0, before.nearest(line.start)),
        tail: after.between(after.nearest(line.end), after.length),
    }
    edges = tuple(
        replace(e, name=name, path=line, said="facing edge", role="") if e.name == names[0] else e
        for e in piece.edges
        if e.name == names[0] or e.name not in names
    )
    gone = set(names)
    rest = replace(
        piece,
        edges=edges,
        notches=tuple(n for n in piece.notches if n.edge not in gone),
        marks=tuple(m for m in piece.marks if m.edge not in gone),
        pleats=tuple(p for p in piece.pleats if p.edge not in gone),
        corners=tuple(c for c in piece.corners if not {c.before, c.after} & gone),
        declared=tuple(d for d in piece.declared if not {d.before, d.after} & gone),
    )
    return _redrawn(rest, paths, of=piece)


def with_pleat(piece: Piece, centre: str, by: float) -> Piece:
    """`by` mm of cloth added outside the straight edge `centre` for a pleat; the edges beside it run on square to it
    or straight, and the old centre is marked."""
    edge = piece.edge(centre)
    if not edge.path.is_straight:
        raise KitError(
            message("refusal.pleat_curved", edge=named_edge(edge)),
            where=piece.title,
            do=message("refusal.pleat_curved_do"),
        )
    before, after = _neighbours(piece, centre)
    out = edge.path.normal_at(edge.path.length / 2) * (-by if inside_left(piece) else by)
    path = edge.path.moved(Motion.translation(out))
    one = Path.of(before.path, Line(before.path.end, path.start))
    two = Path.of(Line(path.end, after.path.start), after.path)
    moved = _redrawn(piece, {before.name: one, centre: path, after.name: two})
    line = Mark(f"{centre}_pleat", "line", path=edge.path, said=f"{edge.label}: pleat line")
    return replace(moved, marks=(*moved.marks, line))


def inside(piece: Piece) -> Piece:
    """The piece with those of its points, lines, openings and darts with two points that a lining has a use for: what
    lies outside it, and where buttonholes, pockets and ties go, is left out."""
    shape = piece.outline

    def kept(mark: Mark) -> bool:
        if mark.kind == "line" and mark.path is not None:
            return shape.contains(mark.path.at(mark.path.length / 2))
        dart = double_dart(mark)
        if dart is not None:
            return all(shape.contains(corner) for corner in (dart.top, dart.one, dart.bottom, dart.other))
        return mark.kind == "opening"

    marks = tuple(filter(kept, piece.marks))
    points = tuple((name, point) for name, point in piece.points if shape.contains(point))
    return replace(piece, marks=marks, points=points)


def _redrawn(piece: Piece, paths: dict[str, Path], of: Piece | None = None, moved: Collection[str] = ()) -> Piece:
    """`piece` with some edges redrawn; what lies on them keeps its place, or goes where that was cut away."""
    # What lies on an edge is known by its distance along it. Where the edge is redrawn on the same line (a part of it
    # cut away) the same point on paper gets its new distance; a point more than 0.2 mm off the new line was cut away
    # with the rest. Where the line was moved on purpose the nearest place on it stands for the old one.
    old = of or piece

    def place(edge: str, distance: float) -> float | None:
        if edge not in paths:
            return distance
        point = old.edge(edge).path.at(min(max(distance, 0.0), old.edge(edge).path.length))
        new = paths[edge]
        return new.nearest(point) if edge in moved or new.distance_to(point) < 0.2 else None

    notches = []
    for notch in piece.notches:
        at = place(notch.edge, notch.distance)
        if at is not None:
            notches.append(replace(notch, distance=at))
    marks = []
    for mark in piece.marks:
        if mark.edge in paths:
            start = place(mark.edge, mark.start)
            end = place(mark.edge, mark.end) if mark.kind == "opening" else mark.end
            if start is None or end is None:
                continue
            mark = replace(mark, start=start, end=end)
        marks.append(mark)
    darts = []
    for dart in piece.darts:
        start, end = place(dart.edge, dart.start), place(dart.edge, dart.end)
        if start is None or end is None:
            raise KitError(
                message("refusal.dart_cut_away", dart=dart.label, edge=named_edge(old.edge(dart.edge))),
                where=piece.title,
                do=message("refusal.dart_cut_away_do"),
            )
        darts.append(replace(dart, start=start, end=end))
    pleats = []
    for pleat in piece.pleats:
        start, end = place(pleat.edge, pleat.start), place(pleat.edge, pleat.end)
        if start is not None and end is not None:
            pleats.append(replace(pleat, start=start, end=end))
    edges = tuple(replace(edge, path=paths.get(edge.name, edge.path)) for edge in piece.edges)
    return replace(
        piece,
        edges=edges,
        notches=tuple(notches),
        marks=tuple(marks),
        darts=tuple(darts),
        pleats=tuple(pleats),
    )
