"""The picture of a worksheet's step on one piece: letters at the points, the straight lines that curves are set off
from, every offset with its number, in the same rounded values as the rows beside it."""

from __future__ import annotations

from kit.geometry import Line, Point, Vector
from kit.geometry.guide import GuideCurve
from kit.language import called, say
from kit.picture.drawing import Dot, Drawing, Item, Label, Stroke
from kit.picture.rows import bounds_of_paths
from kit.prose.worksheet import PieceSheet, SheetLine
from kit.units import System, show

_AXES = 0.05
_LETTER = 0.028
_BESIDE = 0.036
_ROOM = 0.06


def guide_drawing(sheet: PieceSheet, units: System = "cm") -> Drawing:
    """One piece as a step of the worksheet leaves it: what is to be drawn now is heavy, its chords thin, its offsets
    numbered in `units`, the system the sheet was made in."""
    piece = sheet.piece
    box = bounds_of_paths(edge.path for edge in piece.edges)
    reach = max(box[2] - box[0], box[3] - box[1], 1.0)
    middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    fresh = {line.edge for line in sheet.lines if line.kind in ("rule", "curve")}
    items: list[Item] = list(_axes(box, reach))
    for edge in piece.edges:
        role = "new" if edge.name in fresh else "fold" if edge.name == piece.fold else "kept"
        items.append(Stroke(edge.path.curves, role, name=f"{piece.name}.{edge.name}"))  # type: ignore[arg-type]
    labels: list[Label] = []
    for line in sheet.curves:
        if line.guide is not None:
            items += _offsets(line, line.guide, units, reach, labels)
    places = {point.letter: point.at for point in (*sheet.points, *sheet.known)}
    for line in sheet.lines:
        if line.kind == "rule" and not line.edge:  # a grainline, a dart's leg
            items.append(Stroke((Line(places[line.start], places[line.end]),), "new", name=line.label))
    for point in (*sheet.points, *sheet.known):
        fresh_point = point in sheet.points
        items.append(Dot(point.at, "new" if fresh_point else "kept", f"{piece.name}.{point.letter}"))
        out = point.at - middle
        away = out.unit() if out.length > 1e-6 else Vector(0.0, 1.0)
        ink = "new" if fresh_point else "small"
        labels.insert(0, Label(point.letter, point.at + away * (reach * _LETTER), ink))  # type: ignore[arg-type]
    items += labels
    title = piece.title or called(piece.name)
    words = " ".join(line.words for line in sheet.lines)
    room = reach * _ROOM
    return Drawing(
        tuple(items),
        say("worksheet.alt", piece=title, words=words),
        say("worksheet.title", piece=title),
        (box[0] - room, box[1] - room, box[2] + room, box[3] + room),
    )


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
        found += [Dot(Point(0.0, 0.0), "mark", "O"), Label("O", Point(reach * 0.02, -reach * 0.02), "small")]
    return found


def _offsets(line: SheetLine, guide: GuideCurve, units: System, reach: float, labels: list[Label]) -> list[Item]:
    """The chord of a curve and its offsets, each with its number beyond the curve."""
    items: list[Item] = [Stroke((Line(guide.start, guide.end),), "guide", name=f"{line.edge}.chord")]
    for point in guide.points:
        foot, top = guide.place(point.along, 0.0), guide.place(point.along, point.up)
        if foot.distance(top) > 1e-6:
            items.append(Stroke((Line(foot, top),), "leader", name=f"{line.edge}.offset"))
        way = (guide.end - guide.start).unit().left() * (1.0 if point.up >= 0 else -1.0)
        labels.append(Label(show(abs(point.up), units), top + way * (reach * _BESIDE), "small"))
    return items
