"""The picture of a worksheet's step on one piece: letters at the points, the straight lines that curves are set off
from, every offset with its number, in the same rounded values as the rows beside it."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from kit.errors import KitError
from kit.geometry import Line, Path, Point, Vector
from kit.geometry.guide import GuideCurve
from kit.language import called, say
from kit.picture.cut_out import cut_strokes
from kit.picture.drawing import Dimension, Dot, Drawing, Item, Label, Stroke, StrokeRole
from kit.picture.rows import bounds_of_paths
from kit.piece.allowance import CutLine, cut_line
from kit.piece.piece import Edge, Piece
from kit.prose.worksheet import PieceSheet, SheetLine
from kit.units import System, show

_AXES = 0.05
_LETTER = 0.028
_BESIDE = 0.036
_TICK = 0.016
_APART = 0.1
"""How near, as a share of the piece, offsets may stand to each other with their figures; nearer ones are only drawn,
and their figures stand in the table alone."""
_MANY = 4


def guide_drawing(sheet: PieceSheet, units: System = "cm") -> Drawing:
    """One piece as a step of the worksheet leaves it: what is to be drawn now is heavy, what is traced dark, chords and
    offsets thin, with their figures in `units` (the system the sheet was made in) where there is room; notches,
    openings and the lines to cut along as the sheet gives them."""
    piece = sheet.piece
    cut = _cut(sheet)
    paths = [edge.path for edge in piece.edges]
    box = bounds_of_paths(paths if cut is None else [*paths, Path(cut.curves)])
    reach = max(box[2] - box[0], box[3] - box[1], 1.0)
    middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    kinds = {line.edge: line.kind for line in sheet.lines}
    items: list[Item] = list(_axes(box, reach))
    for edge in piece.edges:
        role = _ROLES.get(kinds.get(edge.name, ""), "fold" if edge.name == piece.fold else "kept")
        items.append(Stroke(edge.path.curves, role, name=f"{piece.name}.{edge.name}"))
    if cut is not None:
        items += cut_strokes(piece, cut, "new")
    labels: list[Label] = []
    for line in sheet.curves:
        if line.guide is not None:
            items += _offsets(line, line.guide, units, reach, labels)
    places = {point.letter: point.at for point in (*sheet.points, *sheet.known)}
    for line in sheet.lines:
        if line.kind == "rule" and not line.edge:  # a grainline, a dart's leg
            items.append(Stroke((Line(places[line.start], places[line.end]),), "new", name=line.label))
    items += _on_edges(sheet, units, reach, middle, labels)
    for point in (*sheet.points, *sheet.known):
        fresh_point = point in sheet.points
        items.append(Dot(point.at, "new" if fresh_point else "kept", f"{piece.name}.{point.letter}"))
        ink = "new" if fresh_point else "small"
        out = _outward(point.at, middle, reach * _LETTER)
        labels.insert(0, Label(point.letter, out, ink, of=point.at))  # type: ignore[arg-type]
    items += labels
    if sheet.allowed:
        items += _widths(piece, units)
    title = piece.title or called(piece.name)
    words = " ".join((*(line.words for line in sheet.lines), *sheet.notes))
    return Drawing(tuple(items), say("worksheet.alt", piece=title, words=words), say("worksheet.title", piece=title))


_ROLES: Mapping[str, StrokeRole] = {"rule": "new", "curve": "new", "trace": "traced"}


def _outward(at: Point, middle: Point, by: float) -> Point:
    out = at - middle
    return at + (out.unit() if out.length > 1e-6 else Vector(0.0, 1.0)) * by


def _cut(sheet: PieceSheet) -> CutLine | None:
    """The line to cut along where the sheet gives allowances; None where it cannot be drawn (the proof says why)."""
    if not sheet.allowed:
        return None
    try:
        return cut_line(sheet.piece)
    except KitError:
        return None


def _widths(piece: Piece, units: System) -> list[Item]:
    """Every width of allowance once, on the longest edge that has it."""
    longest: dict[float, Edge] = {}
    for edge in piece.edges:
        if edge.allowance and edge.name != piece.fold:
            width = round(edge.allowance, 3)
            if width not in longest or edge.path.length > longest[width].path.length:
                longest[width] = edge
    way = -1.0 if piece.outline.area > 0 else 1.0
    found: list[Item] = []
    for width, edge in longest.items():
        half = edge.path.length / 2
        at = edge.path.at(half)
        end = at + edge.path.normal_at(half) * (way * width)
        found.append(Dimension(at, end, show(width, units, "allowance"), name=f"{edge.name}.allowance"))
    return found


def _on_edges(sheet: PieceSheet, units: System, reach: float, middle: Point, labels: list[Label]) -> list[Item]:
    """Notches and openings, each with how far it lies from the beginning of its edge."""
    piece = sheet.piece
    items: list[Item] = []
    half = reach * _TICK
    for notch in sheet.notches:
        path = piece.edge(notch.edge).path
        for shift in (0.0,) if notch.kind == "single" else (-half * 0.4, half * 0.4):
            at = min(max(notch.distance + shift, 0.0), path.length)
            across = path.normal_at(at) * half
            items.append(Stroke((Line(path.at(at) - across, path.at(at) + across),), "new", name=f"{piece.name}.notch"))
        foot = path.at(min(max(notch.distance, 0.0), path.length))
        labels.append(Label(show(notch.distance, units), _outward(foot, middle, reach * _BESIDE), "small", of=foot))
    for mark in sheet.marks:
        path = piece.edge(mark.edge).path
        ends = sorted(min(max(d, 0.0), path.length) for d in (mark.start, mark.end))
        if mark.kind == "opening" and ends[1] - ends[0] > 0.1:
            items.append(Stroke(path.between(*ends).curves, "new", name=f"{piece.name}.{mark.name}"))
        else:
            ends = ends[:1]
        for d in ends:
            foot, across = path.at(d), path.normal_at(d) * half
            items.append(Stroke((Line(foot - across, foot + across),), "new", name=f"{piece.name}.{mark.name}.end"))
            if d > 0.5:  # an opening that begins where its edge does needs no figure there
                labels.append(Label(show(d, units), _outward(foot, middle, reach * _BESIDE), "small", of=foot))
    return items


def _axes(box: tuple[float, float, float, float], reach: float) -> list[Item]:
    """The two lines through O, as far as the piece reaches, and O itself where it is near."""
    x0, y0, x1, y1 = box
    far = reach * _AXES
    found: list[Item] = []
    if x0 - far <= 0 <= x1 + far:
        found.append(Stroke((Line(Point(0.0, y0 - far), Point(0.0, y1 + far)),), "guide", name="upright"))
    if y0 - far <= 0 <= y1 + far:
        found.append(Stroke((Line(Point(x0 - far, 0.0), Point(x1 + far, 0.0)),), "guide", name="level"))
    if len(found) == 2:
        found += [
            Dot(Point(0.0, 0.0), "mark", "O"),
            Label("O", Point(reach * 0.02, -reach * 0.02), "small", of=Point(0.0, 0.0)),
        ]
    return found


def _offsets(line: SheetLine, guide: GuideCurve, units: System, reach: float, labels: list[Label]) -> list[Item]:
    """The chord of a curve and its offsets, with their figures beyond the curve where they stand apart."""
    items: list[Item] = [Stroke((Line(guide.start, guide.end),), "guide", name=f"{line.edge}.chord")]
    alongs = [point.along for point in guide.points]
    near = min((b - a for a, b in pairwise(alongs)), default=reach)
    told = len(alongs) <= _MANY and near > reach * _APART
    for point in guide.points:
        foot, top = guide.place(point.along, 0.0), guide.place(point.along, point.up)
        if foot.distance(top) > 1e-6:
            items.append(Stroke((Line(foot, top),), "leader", name=f"{line.edge}.offset"))
        way = (guide.end - guide.start).unit().left() * (1.0 if point.up >= 0 else -1.0)
        if told:
            labels.append(Label(show(abs(point.up), units), top + way * (reach * _BESIDE), "small", of=top))
    return items
