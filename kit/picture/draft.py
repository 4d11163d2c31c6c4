"""Drafting pictures: one step, and the finished draft.

A step's picture is made from its record alone, the same record the sentence is filled in from: what is new is
heavy and in the accent ink, what stands is thin and grey, what was taken away is a dashed ghost, and every
measure the step names is dimensioned. The alternative text is read off the same record.
"""

from __future__ import annotations

import math
from collections.abc import Iterable

from kit.geometry import Curve, Path, Point, Vector
from kit.lesson.pattern import Pattern, Spot, StepRecord
from kit.picture.drawing import Dimension, Dot, Drawing, Item, Label, Stroke
from kit.picture.piece_sheet import piece_drawing, piece_items
from kit.piece.piece import Piece, Strip
from kit.units import System, show
from kit.units import both as both_systems

__all__ = ["bench_drawing", "piece_drawing", "piece_items", "shown_value", "step_drawing"]

_GAP = 0.14
_LEAST = 0.3
Bounds = tuple[float, float, float, float]


def shown_value(spot: Spot, system: System, both: bool = False) -> str:
    """A measured spot's value as people read it: lengths in the system (or both), shares and counts bare."""
    if spot.kind == "share":
        return f"{round(spot.value * 100)} %"
    if spot.kind == "count":
        return f"{round(spot.value)}"
    return both_systems(spot.value, system) if both else show(spot.value, system)


def step_drawing(record: StepRecord, system: System = "cm", both: bool = False) -> Drawing:
    """The picture of one drafting step: its pieces side by side in the order of the record."""
    items: list[Item] = []
    pieces = [piece for piece in record.pieces if piece.edges or piece.guides]
    places = _side_by_side([(piece, _piece_bounds(piece, record)) for piece in pieces])
    reach = max((max(b[2] - b[0], b[3] - b[1]) for _, b, _ in places), default=100.0)
    for piece, bounds, dx in places:
        items.extend(_step_piece(piece, record, system, both, reach, bounds, Vector(dx, 0.0)))
    right = max((b[2] + dx for _, b, dx in places), default=0.0)
    top = max((b[3] for _, b, _ in places), default=0.0)
    items.extend(_strips(record.strips, right + reach * 0.1 if places else 0.0, top, system, both))
    return Drawing(tuple(items), alt=step_alt(record, system, both), title=record.title)


def step_alt(record: StepRecord, system: System = "cm", both: bool = False) -> str:
    """What the step's picture shows, in words: pieces, new lines and points, measures, what is taken away."""
    parts = [f"{record.title}."]
    titles = [piece.title or _words(piece.name) for piece in record.pieces]
    if titles:
        parts.append(f"Pieces: {_list(titles)}.")
    labels = _edge_labels(record)
    new = [f"{labels.get((piece, name), _words(name))} on the {_words(piece)}" for piece, name, _ in record.new]
    if new:
        parts.append(f"New, drawn heavy: {_list(new)}.")
    points = [_words(name) for _, name, _ in record.new_points]
    if points:
        parts.append(f"New points: {_list(points)}.")
    if record.spots:
        said = [f"{spot.label or _words(spot.name)} {shown_value(spot, system, both)}" for spot in record.spots]
        parts.append(f"Measures: {_list(said)}.")
    gone = [f"{_words(name)} on the {_words(piece)}" for piece, name, _ in record.removed]
    if gone:
        parts.append(f"Taken away, shown dashed: {_list(gone)}.")
    for strip in record.strips:
        parts.append(f"{strip.title}: strip {show(strip.length, system)} by {show(strip.width, system)}.")
    return " ".join(parts)


def bench_drawing(pattern: Pattern, system: System = "cm") -> Drawing:
    """The draft as it stands: stitch lines, guides and names of all pieces side by side."""
    items: list[Item] = []
    places = _side_by_side([(piece, _bounds_of_paths(edge.path for edge in piece.edges)) for piece in pattern.pieces])
    said = []
    reach = max((b[3] - b[1] for _, b, _ in places), default=100.0)
    for piece, bounds, dx in places:
        move = Vector(dx, 0.0)
        for _, path in piece.guides:
            items.append(Stroke(_moved(path.curves, move), "guide"))
        for edge in piece.edges:
            role = "fold" if edge.name == piece.fold else "new"
            curves = _moved(edge.path.curves, move)
            items.append(Stroke(curves, role, name=f"{piece.name}.{edge.name}"))  # type: ignore[arg-type]
        for name, point in piece.points:
            items.append(Dot(point + move, "kept", f"{piece.name}.{name}"))
        foot = Point((bounds[0] + bounds[2]) / 2, bounds[1] - reach * 0.05)
        items.append(Label(piece.title, foot + move, "name"))
        size = f"{show(bounds[2] - bounds[0], system)} by {show(bounds[3] - bounds[1], system)}"
        said.append(f"{piece.title}, {size}")
    alt = f"The draft of {pattern.lesson.title} for {pattern.body.name}: {'; '.join(said)}."
    return Drawing(tuple(items), alt=alt, title=pattern.lesson.title)


# ---- one piece of a step ----------------------------------------------------------------------------------


def _step_piece(
    piece: Piece, record: StepRecord, system: System, both: bool, reach: float, bounds: Bounds, move: Vector
) -> Iterable[Item]:
    new = {name for owner, name, _ in record.new if owner == piece.name}
    drawn: set[str] = set()
    middle = Point((bounds[0] + bounds[2]) / 2, (bounds[1] + bounds[3]) / 2)
    for name, path in piece.guides:
        if name not in new:
            yield Stroke(_moved(path.curves, move), "guide", name=f"{piece.name}.{name}")
    for owner, name, path in record.removed:
        if owner == piece.name:
            yield Stroke(_moved(path.curves, move), "removed", name=f"{piece.name}.{name}")
    for edge in piece.edges:
        if edge.name not in new:
            role = "fold" if edge.name == piece.fold else "kept"
            curves = _moved(edge.path.curves, move)
            yield Stroke(curves, role, name=f"{piece.name}.{edge.name}")  # type: ignore[arg-type]
    labels = _edge_labels(record)
    names: list[Label] = []
    for owner, name, recorded in record.new:
        if owner != piece.name:
            continue
        path = piece.edge(name).path if piece.has_edge(name) else recorded
        drawn.add(name)
        yield Stroke(_moved(path.curves, move), "new", name=f"{piece.name}.{name}")
        names.append(_name_beside(labels.get((owner, name), _words(name)), path, middle, reach, move))
    fresh = {name for owner, name, _ in record.new_points if owner == piece.name}
    for name, point in piece.points:
        if name not in fresh:
            yield Dot(point + move, "kept", f"{piece.name}.{name}")
    for owner, name, point in record.new_points:
        if owner == piece.name:
            yield Dot(point + move, "new", f"{piece.name}.{name}")
            out = point - middle
            away = out.unit() if out.length > 1e-6 else Vector(0.0, 1.0)
            names.append(Label(_words(name), point + move + away * (reach * 0.035), "small"))
    yield Label(piece.title or _words(piece.name), _inside(piece, bounds) + move, "ghost")
    for spot in record.spots:
        if spot.piece == piece.name:
            yield _dimension(spot, system, both, reach, middle, move)
    yield from names


def _dimension(spot: Spot, system: System, both: bool, reach: float, middle: Point, move: Vector) -> Dimension:
    """The spot's dimension, set off to the outer side of the piece so that it does not cover its line."""
    text = f"{spot.label or _words(spot.name)} {shown_value(spot, system, both)}"
    half = spot.start.mid(spot.end) if spot.along is None else spot.along.at(spot.along.length / 2)
    span = spot.end - spot.start
    side = 1.0 if span.cross(half - middle) >= 0 else -1.0
    return Dimension(
        spot.start + move,
        spot.end + move,
        text,
        offset=side * reach * 0.045,
        along=() if spot.along is None or spot.along.is_straight else _moved(spot.along.curves, move),
        name=spot.name,
    )


def _name_beside(text: str, path: Path, middle: Point, reach: float, move: Vector) -> Label:
    """An edge's name along its middle, on the inner side of the piece."""
    half = path.length / 2
    at, along = path.at(half), path.tangent_at(half)
    normal = Vector(-along.y, along.x)
    if normal.dot(middle - at) < 0:
        normal = normal * -1.0
    angle = math.atan2(along.y, along.x)
    if angle > math.pi / 2 + 1e-6:
        angle -= math.pi
    elif angle <= -math.pi / 2 + 1e-6:
        angle += math.pi
    return Label(text, at + move + normal * (reach * 0.03), "new", angle)


def _strips(strips: tuple[Strip, ...], x: float, top: float, system: System, both: bool) -> Iterable[Item]:
    """Strips as true rectangles standing on end, dimensioned."""
    for strip in strips:
        box = [
            Point(x, top),
            Point(x, top - strip.length),
            Point(x + strip.width, top - strip.length),
            Point(x + strip.width, top),
        ]
        sides = tuple(Path.line(a, b).curves[0] for a, b in zip(box, box[1:] + box[:1], strict=True))
        yield Stroke(sides, "new", closed=True, name=strip.name)
        room = max(strip.length, 200.0) * 0.06
        yield Dimension(box[3], box[2], _length(strip.length, system, both), room, name=f"{strip.name}.length")
        yield Dimension(box[0], box[3], _length(strip.width, system, both), room, name=f"{strip.name}.width")
        count = f"{strip.title}, cut {strip.count}"
        yield Label(count, Point(x + strip.width / 2, top - strip.length - room), "name")
        x += strip.width + max(strip.length * 0.35, 160.0)


def _length(value: float, system: System, both: bool) -> str:
    return both_systems(value, system) if both else show(value, system)


# ---- placing ----------------------------------------------------------------------------------------------


def _piece_bounds(piece: Piece, record: StepRecord) -> Bounds:
    paths = [edge.path for edge in piece.edges] + [path for _, path in piece.guides]
    paths += [path for owner, _, path in (*record.new, *record.removed) if owner == piece.name]
    return _bounds_of_paths(paths)


def _bounds_of_paths(paths: Iterable[Path]) -> Bounds:
    boxes = [path.bounds() for path in paths]
    if not boxes:
        return (0.0, 0.0, 100.0, 100.0)
    return (min(b[0] for b in boxes), min(b[1] for b in boxes), max(b[2] for b in boxes), max(b[3] for b in boxes))


def _side_by_side(pieces: list[tuple[Piece, Bounds]]) -> list[tuple[Piece, Bounds, float]]:
    """Pieces from left to right with room between them for dimensions: (piece, bounds, shift in x)."""
    reach = max((max(b[2] - b[0], b[3] - b[1]) for _, b in pieces), default=0.0)
    out, x = [], 0.0
    for piece, bounds in pieces:
        wide = max(bounds[2] - bounds[0], reach * _LEAST)
        out.append((piece, bounds, x + (wide - bounds[2] + bounds[0]) / 2 - bounds[0]))
        x += wide + reach * _GAP
    return out


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
    return {(piece.name, edge.name): edge.label for piece in record.pieces for edge in piece.edges}


def _words(name: str) -> str:
    return name.replace("_", " ")


def _list(parts: list[str]) -> str:
    return parts[0] if len(parts) == 1 else f"{', '.join(parts[:-1])} and {parts[-1]}"
