"""Drafting pictures: one step, and the finished draft.

A step's picture is made from its record alone, the same record the sentence is filled in from: what is new is
heavy and in the accent ink, what stands is thin and grey, what was taken away is a dashed ghost, and every
measure the step names is dimensioned. The alternative text is read off the same record.
"""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace

from kit.errors import KitError
from kit.geometry import Curve, Line, Path, Point, Vector
from kit.language import called, say
from kit.lesson.pattern import Pattern, StepMeasure, StepRecord
from kit.picture.dart import in_step
from kit.picture.drawing import Dimension, Dot, Drawing, Item, Label, Stroke, StrokeRole
from kit.picture.lettering import upright
from kit.picture.markings import place_of, pleat_in_step, signs
from kit.picture.place import Scaling, rectangle
from kit.picture.rows import GAP, Bounds, bounds_of_paths, in_rows, side_by_side
from kit.piece.allowance import cut_line
from kit.piece.piece import Mark, Notch, Piece, Strip
from kit.prose.step_measures import place_said
from kit.units import System, percent, plain, show
from kit.units import both as both_systems
from kit.wording.lists import listed, strung
from kit.wording.names import edge_label

_SIGNS = 0.003
"""How large drill marks and bars of buttonholes are drawn in a step's picture, as a share of its reach."""

__all__ = ["bench_drawing", "shown_value", "step_drawing"]


def shown_value(spot: StepMeasure, system: System, both: bool = False) -> str:
    """A measured spot's value as people read it: lengths in the system (or both), shares and counts bare."""
    if spot.kind == "share":
        return percent(spot.value)
    if spot.kind == "count":
        return plain(spot.value, 0)
    return both_systems(spot.value, system) if both else show(spot.value, system)


def step_drawing(record: StepRecord, system: System = "cm", both: bool = False) -> Drawing:
    """The picture of one drafting step: the pieces it changes, in rows that fill a booklet page.

    A piece much smaller than the largest is shown magnified so that its lines can be told apart; every measure is
    written out, so nothing is read off the picture's scale.
    """
    items: list[Item] = []
    changed = _changed(record)
    pieces = [piece for piece in record.pieces if piece.edges or piece.guides]
    over = _laid_over(record)
    pieces = [piece for piece in pieces if piece.name in changed or piece.name in over.values()] or pieces
    ground = [piece for piece in pieces if piece.name not in over]
    places, reach = in_rows([(piece, _piece_bounds(piece, record)) for piece in ground])
    on = {piece.name: (bounds, put) for piece, bounds, put in places}
    for piece in pieces:
        bounds, put = on[over.get(piece.name, piece.name)]
        below = next((p for p in ground if p.name == over.get(piece.name)), None)
        items.extend(_step_piece(piece, record, system, both, reach, bounds, put, below))
    low = min((put.point(Point(b[0], b[1])).y for _, b, put in places), default=0.0)
    items.extend(_strips(record.strips, low - reach * GAP if places else 0.0, system, both))
    return Drawing(tuple(items), alt=step_alt(record, system, both), title=record.title)


def _changed(record: StepRecord) -> set[str]:
    """Names of the pieces on which something is to be seen."""
    names = {owner for owner, _, _ in (*record.new, *record.removed)}
    names |= {owner for owner, _, _ in record.new_points} | {spot.piece for spot in record.spots}
    names |= {owner for owner, _ in (*record.new_notches, *record.new_marks)}
    return names | set(record.allowed)


def step_alt(record: StepRecord, system: System = "cm", both: bool = False) -> str:
    """What the step's picture shows, in words: pieces, new lines and points, measures, what is taken away."""
    parts = [say("picture.step_title", title=record.title)]
    titles = [piece.title or called(piece.name) for piece in record.pieces]
    if titles:
        parts.append(say("picture.step_pieces", pieces=listed(titles)))
    labels = _edge_labels(record)
    new = [_line_on(labels.get((piece, name), called(name)), piece) for piece, name, _ in record.new]
    if new:
        parts.append(say("picture.step_new", lines=listed(new)))
    points = [called(name) for _, name, _ in record.new_points]
    if points:
        parts.append(say("picture.step_points", points=listed(points)))
    if record.spots:
        said = [_measured(spot, record, shown_value(spot, system, both)) for spot in record.spots]
        parts.append(say("picture.step_measures", measures=listed(said)))
    marks = [_line_on(mark.label, piece) for piece, mark in record.new_marks]
    marks += [
        say("picture.notch_on", kind=notch.kind, edge=called(notch.edge), piece=called(piece))
        for piece, notch in record.new_notches
    ]
    if marks:
        parts.append(say("picture.step_marked", marks=listed(marks)))
    if record.allowed:
        parts.append(say("picture.step_cut_line", pieces=listed([called(name) for name in record.allowed])))
    gone = [_line_on(called(name), piece) for piece, name, _ in record.removed]
    if gone:
        parts.append(say("picture.step_removed", lines=listed(gone)))
    for strip in record.strips:
        length, width = show(strip.length, system), show(strip.width, system)
        parts.append(say("picture.step_strip", strip=strip.title, length=length, width=width))
    return " ".join(parts)


def _line_on(line: str, piece: str) -> str:
    return say("picture.line_on", line=line, piece=called(piece))


def _measured(spot: StepMeasure, record: StepRecord, value: str) -> str:
    """A measure by what it is called, and its value."""
    return say("picture.measure", name=place_said(spot, record.pieces), value=value)


def bench_drawing(pattern: Pattern, system: System = "cm") -> Drawing:
    """The draft as it stands: stitch lines, guides and names of all pieces side by side."""
    items: list[Item] = []
    places = side_by_side([(piece, bounds_of_paths(edge.path for edge in piece.edges)) for piece in pattern.pieces])
    said = []
    reach = max((b[3] - b[1] for _, b, _ in places), default=100.0)
    for piece, bounds, dx in places:
        move = Vector(dx, 0.0)
        for _, path in _guides_within(piece):
            items.append(Stroke(_moved(path.curves, move), "guide"))
        for edge in piece.edges:
            role = "fold" if edge.name == piece.fold else "new"
            curves = _moved(edge.path.curves, move)
            items.append(Stroke(curves, role, name=f"{piece.name}.{edge.name}"))  # type: ignore[arg-type]
        for dart in piece.darts:
            items.extend(in_step(piece, dart, "new", by=move))
        for pleat in piece.pleats:
            items.extend(Scaling(1.0, Point(dx, 0.0)).items(pleat_in_step(piece, pleat, "new", reach * _SIGNS)))
        for name, point in _standing(piece):
            items.append(Dot(point + move, "kept", f"{piece.name}.{name}"))
        foot = Point((bounds[0] + bounds[2]) / 2, bounds[1] - reach * 0.05)
        items.append(Label(piece.title, foot + move, "name"))
        width, height = show(bounds[2] - bounds[0], system), show(bounds[3] - bounds[1], system)
        said.append(say("picture.draft_piece", piece=piece.title, width=width, height=height))
    alt = say("picture.draft", title=pattern.lesson.title, body=pattern.body.said, pieces=strung(said, "parted"))
    return Drawing(tuple(items), alt=alt, title=pattern.lesson.title)


# ---- one piece of a step ----------------------------------------------------------------------------------


def _step_piece(
    piece: Piece,
    record: StepRecord,
    system: System,
    both: bool,
    reach: float,
    bounds: Bounds,
    put: Scaling,
    below: Piece | None = None,
) -> Iterable[Item]:
    """One piece's items. `below` is the piece it was traced from and lies on: what the two share is not named
    again, and its title stands with its first line of its own.

    Items are given in the order they are painted: what was there before, then what is new, then measures, and all
    names last, so that no line is drawn over a word. `record.new` also holds lines that a later step has taken away
    again; those are drawn as they were recorded."""
    traced = {edge.path for edge in below.edges} if below else set()
    title = piece.title or called(piece.name)
    new = {name for owner, name, _ in record.new if owner == piece.name}
    middle = Point((bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2)
    own = f"{piece.name}."
    for name, path in _guides(piece, record):
        if name not in new:
            yield Stroke(put.curves(path.curves), "guide", name=own + name)
    for owner, name, path in record.removed:
        if owner == piece.name:
            yield Stroke(put.curves(path.curves), "removed", name=own + name)
    if piece.name in record.allowed:
        yield from _cut_line(piece, put)
    for edge in piece.edges:
        if edge.name not in new:
            role: StrokeRole = "fold" if edge.name == piece.fold else "kept"
            yield Stroke(put.curves(edge.path.curves), role, name=own + edge.name)
    labels = _edge_labels(record)
    names: list[Label] = []
    for owner, name, recorded in record.new:
        if owner == piece.name:
            path = piece.edge(name).path if piece.has_edge(name) else recorded
            yield Stroke(put.curves(path.curves), "new", name=own + name)
            if path in traced:
                continue
            text = labels.get((owner, name), called(name))
            if below and piece.has_edge(name) and piece.edge(name).role == "outer":
                text = say("picture.traced_edge", piece=title, edge=text)
            names.append(_name_beside(text, path, middle, reach, put))
    for dart in piece.darts:
        if below is None or dart.edge in new:
            yield from in_step(piece, dart, "new" if dart.edge in new else "kept", put)
    for pleat in piece.pleats:
        if below is None or pleat.edge in new:
            role = "new" if pleat.edge in new else "kept"
            yield from put.items(pleat_in_step(piece, pleat, role, reach * _SIGNS / put.factor))
    for owner, notch in record.new_notches:
        if owner == piece.name and piece.has_edge(notch.edge):
            yield from _notch(piece, notch, reach, put)
    for owner, mark in record.new_marks:
        if owner == piece.name:
            drawn, label = _mark(piece, mark, middle, reach, put)
            yield from drawn
            names.extend(label)
    fresh = {name for owner, name, _ in record.new_points if owner == piece.name}
    for name, point in _standing(piece):
        if name not in fresh:
            yield Dot(put.point(point), "kept", own + name)
    for owner, name, point in record.new_points:
        if owner == piece.name:
            yield Dot(put.point(point), "new", own + name)
            # A point's name goes outward from the middle of the piece, where fewer lines run than inside.
            out = point - middle
            away = out.unit() if out.length > 1e-6 else Vector(0.0, 1.0)
            names.append(Label(called(name), put.point(point) + away * (reach * 0.035), "small"))
    if below is None:
        yield Label(title, put.point(_inside(piece, bounds)), "ghost")
    for spot in record.spots:
        if spot.piece == piece.name:
            bare = piece.name in record.allowed and spot.allowance
            value = shown_value(spot, system, both)
            text = value if bare else _measured(spot, record, value)
            yield _dimension(spot, text, reach, middle, put, bare)
    yield from names


def _cut_line(piece: Piece, put: Scaling) -> Iterable[Item]:
    """The cut line as this step draws it; nothing where it cannot be drawn (the proof says why)."""
    try:
        curves = cut_line(piece).curves
    except KitError:
        return
    yield Stroke(put.curves(curves), "new", closed=True, name=f"{piece.name}.cut")


def _notch(piece: Piece, notch: Notch, reach: float, put: Scaling) -> Iterable[Item]:
    path = piece.edge(notch.edge).path
    half = reach * 0.012 / put.factor
    for shift in (0.0,) if notch.kind == "single" else (-half * 0.7, half * 0.7):
        at = min(max(notch.distance + shift, 0.0), path.length)
        foot, across = path.at(at), path.normal_at(at) * half
        yield Stroke(put.curves((Line(foot - across, foot + across),)), "new", name=f"{piece.name}.notch")


def _mark(piece: Piece, mark: Mark, middle: Point, reach: float, put: Scaling) -> tuple[list[Item], list[Label]]:
    items: list[Item] = []
    name = f"{piece.name}.{mark.name}"
    path = mark.path
    if mark.kind == "opening" and piece.has_edge(mark.edge):
        edge = piece.edge(mark.edge).path
        low, high = max(min(mark.start, mark.end), 0.0), min(max(mark.start, mark.end), edge.length)
        if high - low > 0.1:
            path = edge.between(low, high)
    at = place_of(piece, mark)
    items += put.items(signs(replace(mark, path=path), at, name, reach * _SIGNS / put.factor, "new"))
    if path is not None:
        return items, [_name_beside(mark.label, path, middle, reach, put)]
    if at is not None:
        return items, [Label(mark.label, put.point(at) + Vector(0.0, reach * 0.035), "new")]
    return items, []


def _standing(piece: Piece) -> list[tuple[str, Point]]:
    """The named points that still lie on the draft: at the end of an edge or a guide."""
    ends = [end for edge in piece.edges for end in (edge.path.start, edge.path.end)]
    ends += [end for _, path in piece.guides for end in (path.start, path.end)]
    return [(name, p) for name, p in piece.points if any(abs(p.x - e.x) + abs(p.y - e.y) < 0.5 for e in ends)]


def _guides(piece: Piece, record: StepRecord) -> list[tuple[str, Path]]:
    """The guides a step shows: all while lines are being drawn by them, later only those by the piece itself."""
    drawing = any(owner == piece.name for owner, _, _ in record.new)
    return list(piece.guides) if drawing or not piece.edges else _guides_within(piece)


def _guides_within(piece: Piece) -> list[tuple[str, Path]]:
    """Guides that lie by the piece: those of a half that was cut away are left out."""
    x0, y0, x1, y1 = bounds_of_paths(edge.path for edge in piece.edges)
    wide, high = (x1 - x0) * 0.06 + 5.0, (y1 - y0) * 0.06 + 5.0
    out = []
    for name, path in piece.guides:
        a, b, c, d = path.bounds()
        if a > x0 - wide and c < x1 + wide and b > y0 - high and d < y1 + high:
            out.append((name, path))
    return out


def _dimension(spot: StepMeasure, text: str, reach: float, middle: Point, put: Scaling, bare: bool) -> Dimension:
    """The spot's dimension, set off to the outer side of the piece so that it does not cover its line; where `bare`,
    the picture shows what it measures and it stands on it."""
    half = spot.start.mid(spot.end) if spot.along is None else spot.along.at(spot.along.length / 2)
    span = spot.end - spot.start
    side = 1.0 if span.cross(half - middle) >= 0 else -1.0
    return Dimension(
        put.point(spot.start),
        put.point(spot.end),
        text,
        offset=0.0 if bare else side * reach * 0.045,
        along=() if spot.along is None or spot.along.is_straight else put.curves(spot.along.curves),
        name=spot.name,
    )


def _name_beside(text: str, path: Path, middle: Point, reach: float, put: Scaling) -> Label:
    """An edge's name along its middle, on the inner side of the piece."""
    half = path.length / 2
    at, along = path.at(half), path.tangent_at(half)
    normal = Vector(-along.y, along.x)
    if normal.dot(middle - at) < 0:
        normal = normal * -1.0
    angle = upright(math.atan2(along.y, along.x))
    return Label(text, put.point(at) + normal * (reach * 0.03), "new", angle)


def _strips(strips: tuple[Strip, ...], y: float, system: System, both: bool) -> Iterable[Item]:
    """Strips as true rectangles under one another, dimensioned."""
    longest = max((strip.length for strip in strips), default=0.0)
    room = max(longest, 200.0) * 0.045
    for strip in strips:
        y -= room * 1.6
        box = rectangle(0.0, y - strip.width, strip.length, y)
        yield Stroke(box, "new", closed=True, name=strip.name)
        a, b, c = Point(0.0, y), Point(strip.length, y), Point(strip.length, y - strip.width)
        yield Dimension(a, b, _length(strip.length, system, both), room, name=f"{strip.name}.length")
        yield Dimension(b, c, _length(strip.width, system, both), room, name=f"{strip.name}.width")
        count = say("picture.strip_cut", strip=strip.title, count=strip.count)
        yield Label(count, Point(max(strip.length, longest * 0.3) / 2, y - strip.width - room), "name")
        y -= strip.width + room * 1.6


def _length(value: float, system: System, both: bool) -> str:
    return both_systems(value, system) if both else show(value, system)


# ---- placing ----------------------------------------------------------------------------------------------


def _piece_bounds(piece: Piece, record: StepRecord) -> Bounds:
    paths = [edge.path for edge in piece.edges] + [path for _, path in _guides(piece, record)]
    paths += [path for owner, _, path in (*record.new, *record.removed) if owner == piece.name]
    return bounds_of_paths(paths)


def _laid_over(record: StepRecord) -> dict[str, str]:
    """Pieces this step traced from another one that is in the picture too: they are drawn lying on it."""
    here = {piece.name for piece in record.pieces}
    fresh = {owner for owner, _, _ in record.new}
    before = {owner for owner, _, _ in record.removed}
    return {
        piece.name: piece.source
        for piece in record.pieces
        if piece.source in here and piece.name in fresh and piece.name not in before
    }


def _moved(curves: tuple[Curve, ...], by: Vector) -> tuple[Curve, ...]:
    if by.x == 0 and by.y == 0:
        return curves
    from kit.geometry import Motion

    motion = Motion.translation(by)
    return tuple(curve.moved(motion) for curve in curves)


def _inside(piece: Piece, bounds: Bounds) -> Point:
    """A quick place for the piece's title: the middle of its bounds, or inside the outline where that is not."""
    middle = Point((bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2)
    corners = [edge.path.start for edge in piece.edges]
    if not corners:
        return middle
    mean = Point(sum(p.x for p in corners) / len(corners), sum(p.y for p in corners) / len(corners))
    return middle.mid(mean)


def _edge_labels(record: StepRecord) -> dict[tuple[str, str], str]:
    return {(piece.name, edge.name): edge_label(edge) for piece in record.pieces for edge in piece.edges}
