"""The picture of a walked seam: one piece rolled along the other's edge, and both edges laid straight beside it.

Above, the first piece lies still and ghosts of the second show it rolling; what is marked on the edge is numbered.
Below each edge is a ruler, and a line joins every place on the first with its place on the second, with the
difference written to it. Picture, alternative text and the words under a cell come from the same walk.
"""

from __future__ import annotations

from kit.geometry import Curve, Line, Motion, Path, Point
from kit.language import say
from kit.picture.drawing import Dot, Drawing, Fill, Item, Label, Stroke, StrokeRole
from kit.picture.laid import Box, grown
from kit.picture.place import moved_curves, rectangle
from kit.piece.dart import dart_of, sewn_point
from kit.piece.folded import Folded
from kit.piece.piece import Piece
from kit.sewing.seam_walk import Walk, WalkStation
from kit.units import System, both
from kit.wording.lists import listed
from kit.wording.names import edge_label, title_said

GHOSTS = 5
_EQUAL = 0.5
_ROW = 0.032  # of the picture's width, for a line of words
_LETTERS = 0.0185  # of the picture's width, so that the lines of words keep their order
_SHAPE = 1.4  # width to height of the rolling, at least


def walk_drawing(walk: Walk, system: System = "cm", *, ghosts: int = GHOSTS, at: float | None = None) -> Drawing:
    """The walk: `ghosts` places of the rolling piece, evenly along, and the piece itself where it has rolled `at` mm
    (to the end where nothing is said)."""
    path = walk.a.path
    window = _window(path, walk.a.length)
    items: list[Item] = [*_still(walk.a)]
    last = min(walk.a.length, walk.b.length)
    here = last if at is None else min(max(at, 0.0), last)
    for i in range(max(ghosts, 0)):
        d = last * i / max(ghosts - 1, 1)
        if abs(d - here) > 1e-6:
            items.extend(_rolled(walk.b, walk.motion(d), "removed"))
    items.extend(_rolled(walk.b, walk.motion(here), "edge"))
    items.append(Stroke(moved_curves(walk.b.path.curves, walk.motion(here)), "new", name="second edge"))
    items.append(Stroke(path.curves, "new", name="first edge"))
    size = max(window[2] - window[0], window[3] - window[1])
    items.extend(_ticks(walk.a, [s.a for s in walk.stations if s.on != "b"], Motion.identity(), size))
    items.extend(_ticks(walk.b, [s.b for s in walk.stations if s.on != "a"], walk.motion(here), size))
    for number, station in enumerate(walk.stations, start=1):
        items.append(_numbered(walk.a, station.a, number, size))
    column, box = _rulers(walk, window, system)
    return Drawing((*items, *column), " ".join(walk_words(walk, system)), walk_title(walk), box)


def walk_title(walk: Walk) -> str:
    return say(
        "picture.walk_title",
        rolled=_edges(walk.b),
        rolled_piece=_title(walk.b),
        still=_edges(walk.a),
        still_piece=_title(walk.a),
    )


def walk_words(walk: Walk, system: System = "cm") -> list[str]:
    """The walk in words: what is walked, every place with its difference, and the whole."""
    said = [say("picture.walk_title_sentence", title=walk_title(walk))]
    for number, station in enumerate(walk.stations, start=1):
        if station.what not in ("start", "end"):
            said.append(say("picture.walk_numbered", number=number, place=place_words(walk, station, system)))
    whole = difference_words(walk, walk.difference, system)
    eased = walk.ease and abs(walk.difference - walk.ease) <= _EQUAL
    lengths = {"first": both(walk.a.length, system), "second": both(walk.b.length, system)}
    said.append(say("picture.walk_all_eased" if eased else "picture.walk_all", lengths, difference=whole))
    return said


def place_words(walk: Walk, station: WalkStation, system: System) -> str:
    """One place on the walk: what it is, how far along, and the difference there."""
    if station.on == "both":
        how = difference_words(walk, station.difference, system)
        return say("picture.walk_place", place=station.name, at=both(station.a, system), difference=how)
    run = walk.a if station.on == "a" else walk.b
    at = station.a if station.on == "a" else station.b
    key = "picture.walk_notch_alone" if station.what == "notch" else "picture.walk_place_alone"
    return say(key, place=station.name, at=both(at, system), piece=_piece(walk, run))


def difference_words(walk: Walk, difference: float, system: System) -> str:
    """Which edge is longer so far, and by how much."""
    if abs(difference) <= _EQUAL:
        return say("picture.walk_equal")
    longer = walk.b if difference > 0 else walk.a
    return say("picture.walk_longer", piece=_piece(walk, longer), by=both(abs(difference), system))


def _piece(walk: Walk, run: Folded) -> str:
    """What tells the two edges apart: their pieces, or their edges where both lie on one piece."""
    if walk.a.piece.name == walk.b.piece.name:
        return edge_label(run.piece.edge(run.edges[0]))
    return _title(run)


def _title(run: Folded) -> str:
    return title_said(run.piece.title or run.piece.name)


def _edges(run: Folded) -> str:
    return listed([edge_label(run.piece.edge(name)) for name in run.edges])


# ---- the rolling ------------------------------------------------------------------------------------------


def _window(path: Path, length: float) -> Box:
    box = grown(path.bounds(), max(length * 0.16, 35.0))
    wide, high = box[2] - box[0], box[3] - box[1]
    if wide < high * _SHAPE:
        more = (high * _SHAPE - wide) / 2
        return (box[0] - more, box[1], box[2] + more, box[3])
    if high < wide * 0.5:
        more = (wide * 0.5 - high) / 2
        return (box[0], box[1] - more, box[2], box[3] + more)
    return box


def outline_of(piece: Piece) -> tuple[Curve, ...]:
    """The stitch line all round, as far as it is drawn."""
    return tuple(curve for edge in piece.edges for curve in edge.path.curves)


def _still(run: Folded) -> list[Item]:
    if not run.folds:
        curves = outline_of(run.piece)
        return [
            Fill(curves, "right_side", run.piece.name),
            Stroke(curves, "edge", closed=True, name=run.piece.name),
        ]
    return list(_rolled(run, Motion.identity(), "edge"))


def _rolled(run: Folded, motion: Motion, role: StrokeRole) -> list[Item]:
    """A piece as it lies with its run at `motion`. With folds on the run only the run, the edges beside it and the
    folds can be shown lying flat."""
    if not run.folds:
        return [Stroke(moved_curves(outline_of(run.piece), motion), role, closed=True, name=run.piece.name)]
    items: list[Item] = [Stroke(moved_curves(run.path.curves, motion), role, name=run.piece.name)]
    names = [edge.name for edge in run.piece.edges]
    for end in (False, True):
        part = run.stretches[-1] if end else run.stretches[0]
        i = names.index(part.edge)
        onward = part.forward == end
        beside = run.piece.edge(names[(i + 1) % len(names)] if onward else names[i - 1]).path
        if beside is not run.piece.edge(part.edge).path:
            items.append(Stroke(moved_curves(beside.curves, part.motion.then(motion)), role))
    for fold in run.folds:
        before = next((p for p in reversed(run.stretches) if p.at + p.length <= fold.at + 1e-6), run.stretches[0])
        if any(dart.name == fold.name for dart in run.piece.darts):
            point = sewn_point(run.piece, dart_of(run.piece, fold.name))
        else:
            pleat = next(p for p in run.piece.pleats if p.name == fold.name)
            line = pleat.lines[0]
            mouth = before.motion.inverse()(run.path.at(fold.at))
            point = line.end if line.start.distance(mouth) < line.end.distance(mouth) else line.start
        shut = Line(run.path.at(fold.at), before.motion(point))
        items.append(Stroke((shut.moved(motion),), "stitch" if role == "edge" else role, name=fold.name))
    return items


def _ticks(run: Folded, places: list[float], motion: Motion, size: float) -> list[Item]:
    """A tick into the cloth at each place of a run."""
    way = 1.0 if run.cloth_left else -1.0
    items: list[Item] = []
    for at in places:
        d = min(max(at, 0.0), run.length)
        foot, inward = run.path.at(d), run.path.normal_at(d) * way
        items.append(Stroke((Line(foot, foot + inward * (size * 0.018)).moved(motion),), "notch"))
    return items


def _numbered(run: Folded, at: float, number: int, size: float) -> Label:
    d = min(max(at, 0.0), run.length)
    inward = run.path.normal_at(d) * (1.0 if run.cloth_left else -1.0)
    return Label(str(number), run.path.at(d) + inward * (size * 0.05), "measure", of=run.path.at(d))


# ---- the rulers -------------------------------------------------------------------------------------------


def _rulers(walk: Walk, window: Box, system: System) -> tuple[list[Item], Box]:
    """Both edges laid straight, from the top down, below the rolling pieces, each place with its words."""
    wide = window[2] - window[0]
    left, row = window[0], wide * _ROW
    high = row * max(len(walk.stations) + 3.0, 8.0)
    bottom = window[1] - high
    far = 4 * (high + wide)
    items: list[Item] = [
        Fill(rectangle(left - far, bottom - far, window[2] + far, window[1]), "frame"),
        Stroke(rectangle(*window), "page", closed=True),
    ]
    top, foot = window[1] - row * 2.7, bottom + row * 0.5
    scale = (top - foot) / max(walk.a.length, walk.b.length)
    one, two = left + wide * 0.06, left + wide * 0.14
    for x, run in ((one, walk.a), (two, walk.b)):
        items.append(Stroke((Line(Point(x, top), Point(x, top - run.length * scale)),), "edge"))
    heads = say("picture.walk_heads", first=_piece(walk, walk.a), second=_piece(walk, walk.b))
    size = wide * _LETTERS
    items.append(Label(heads, Point(one - wide * 0.02, window[1] - row), "name", size=size, anchor="start"))
    heights = _spread([top - s.a * scale for s in walk.stations], row, top, foot)
    for number, (station, y) in enumerate(zip(walk.stations, heights, strict=True), start=1):
        a, b = Point(one, top - station.a * scale), Point(two, top - station.b * scale)
        alike = station.on == "both"
        role: StrokeRole = "new" if alike and abs(station.difference) > _EQUAL else "notch" if alike else "removed"
        items.append(Stroke((Line(a, b),), role))
        for place, on in ((a, "a"), (b, "b")):
            if station.on in ("both", on):
                items.append(Dot(place, "mark"))
        text = Point(two + wide * 0.07, y)
        items.append(Stroke((Line(b, Point(text.x - wide * 0.012, y)),), "leader"))
        words = f"{number}  {_short(walk, station, system)}"
        items.append(Label(words, text, "small", size=size, anchor="start"))
    edge = wide * 0.01
    return items, (window[0] - edge, bottom, window[2] + edge, window[3] + edge)


def _short(walk: Walk, station: WalkStation, system: System) -> str:
    if station.what == "start":
        return say("picture.walk_start")
    if station.what == "end":
        return say("picture.walk_end", difference=difference_words(walk, walk.difference, system))
    return place_words(walk, station, system)


def _spread(wanted: list[float], row: float, top: float, foot: float) -> list[float]:
    """Heights for lines of text from the top down, near where they are wanted and never on one another."""
    step = min(row, (top - foot) / max(len(wanted) - 1, 1))
    found: list[float] = []
    for y in wanted:
        found.append(min(y, found[-1] - step) if found else min(y, top))
    over = foot - found[-1] if found else 0.0
    if over > 0:  # too far down: pushed up again from the end
        found[-1] = foot
        for i in range(len(found) - 2, -1, -1):
            found[i] = max(found[i], found[i + 1] + step)
    return found
