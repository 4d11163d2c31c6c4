"""What the browser draws: a list of items and one row of numbers.

An item says what it is (a path, a text, a dot, a dimension, a handle), on which layer and in which role. As long as the
items are the same only numbers change, so the browser can move everything by
adding a multiple of a difference of two rows. No markup and no colour is sent: roles are inked by the browser from
`kit.picture.theme`, sent as data.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from functools import lru_cache
from hashlib import blake2b
from itertools import cycle, pairwise
from operator import add
from typing import Any

from kit.errors import KitError
from kit.geometry import Curve, Line, Point, Vector
from kit.language import called, say
from kit.lesson.pattern import Pattern, StepMeasure
from kit.lesson.scale import Scale
from kit.live.canvas.handles import Ground, Handle
from kit.live.canvas.outline import levels, on_body, side_line
from kit.live.canvas.sewn import Fates, fates
from kit.live.canvas.shown import ShownPieces, View, arranged, labels, shown
from kit.live.canvas.steady import steady
from kit.picture.dart import in_step
from kit.picture.draft import shown_value
from kit.picture.drawing import Item, Stroke
from kit.picture.markings import mark_items, pleat_in_step
from kit.picture.theme import Theme
from kit.piece.allowance import cut_line, has_allowances, notch_lines
from kit.piece.dart import sewn_length
from kit.piece.piece import Edge, Piece
from kit.prose.step_measures import place_said
from kit.units import both
from kit.wording.names import edge_label, title_said

_SIGNS = 2.0  # small signs, as a multiple of their size on paper


def canvas_state(
    pattern: Pattern,
    view: View,
    *,
    block: Sequence[Piece] = (),
    handles: Sequence[Handle] = (),
    fate: Fates | None = None,
    held: bool = False,
) -> dict[str, Any]:
    """Everything the browser needs to draw `pattern`, as plain data for JSON.

    "scene" holds the items and an "id" that changes with them, "shape" how many segments each has (0 for what is no
    path), "numbers" the row (mm, y up, on the sheet): `taken` numbers for each item in turn,
    "edges" a sentence for each edge, "dims" the texts of the dimensions, "values" each parameter's value, text and
    range, "places" where each piece lies. `block` is what the lesson starts from, `fate` what becomes of each edge
    (read off the sewing records when it is not given), `held` keeps the pieces where they lie.
    """
    seen = shown(pattern, view.step, block)
    places = arranged(seen.pieces, dict(view.places), held=held)
    sheet = _Sheet(pattern, view, seen, places, fates(pattern) if fate is None else fate)
    sheet.fill(block, handles)
    names = [(piece.name, title_said(piece.title or called(piece.name))) for piece in seen.pieces]
    scene: dict[str, Any] = {"step": seen.record.key if seen.record else "", "pieces": names, "items": sheet.items}
    scene["id"] = blake2b(json.dumps(scene).encode(), digest_size=8).hexdigest()
    return {
        "scene": scene,
        "shape": sheet.shape,
        "numbers": sheet.numbers,
        "edges": sheet.edges,
        "dims": sheet.dims,
        "values": values_shown(pattern, view),
        "places": {name: [place.x, place.y] for name, place in places.items()},
    }


def taken(kind: str, segments: int) -> int:
    """How many numbers of the row an item takes."""
    return {"path": 2 + 6 * segments, "dim": 4, "handle": 4}.get(kind, 2)


def values_shown(pattern: Pattern, view: View) -> dict[str, dict[str, Any]]:
    """Each parameter by name: "value", "text", "label", "least", "most", the slider's "step" (all mm, share or count)
    and "says", the sentence of its handle."""
    from kit.lesson.parameter import Parameter

    out = {}
    for value in pattern.values:
        scale = Scale(
            Parameter(value.name, value.kind, value.default, value.least, value.most, value.why, value.said),
            view.system,
        )
        text = both(value.value, view.system) if value.kind == "length" else scale.text(value.value)
        label = value.label[:1].upper() + value.label[1:]
        says = (
            say("canvas.handle_why", parameter=label, value=text, why=value.why)
            if value.why
            else say("canvas.handle", parameter=label, value=text)
        )
        out[value.name] = {
            "value": value.value,
            "text": text,
            "label": label,
            "least": value.least,
            "most": value.most,
            "step": scale.unit / scale.per_unit,
            "says": says,
        }
    return out


def ink(theme: Theme) -> dict[str, Any]:
    """The theme as data: lines and texts by role."""
    return {
        "paper": theme.paper,
        "ink": theme.ink,
        "accent": theme.accent,
        "font": theme.font,
        "lines": {role: [line.colour, line.width, list(line.dash)] for role, line in theme.lines.items()},
        "texts": {role: [text.colour, text.size, text.bold, text.italic] for role, text in theme.texts.items()},
    }


@lru_cache(maxsize=1024)
def _row(curves: tuple[Curve, ...]) -> tuple[float, ...]:
    """The numbers of a line where it was drawn. A move changes few of a draft's lines: the others have theirs still."""
    row = [curves[0].start.x, curves[0].start.y]
    for cubic in steady(curves):
        for point in (cubic.c1, cubic.c2, cubic.end):
            row += (point.x, point.y)
    return tuple(row)


class _Sheet:
    """The items and numbers of one state, in painting order."""

    def __init__(
        self, pattern: Pattern, view: View, seen: ShownPieces, places: Mapping[str, Vector], fate: Fates
    ) -> None:
        self.pattern = pattern
        self.view = view
        self.seen = seen
        self.places = places
        self.fate = fate
        self.labels = labels(pattern)
        self.items: list[dict[str, Any]] = []
        self.shape: list[int] = []
        self.numbers: list[float] = []
        self.edges: dict[str, str] = {}
        self.dims: list[str] = []

    def fill(self, block: Sequence[Piece], handles: Sequence[Handle]) -> None:
        layers = self.view.layers
        if "body" in layers:
            self._body(block)
        if "block" in layers:
            for name, piece in on_body(self.pattern, block).items():
                if name in self.places:
                    self._outline(piece, "block", "guide", self.places[name])
        if "ghost" in layers:
            self._ghost()
        for piece in self.seen.pieces:
            self._piece(piece)
        if "dims" in layers:
            for spot in self._spots():
                self._dimension(spot)
        if "stitch" in layers:
            for piece in self.seen.pieces:
                self._points(piece)
        ground = Ground(self.pattern, self.view.step, block)
        for handle in handles:
            self._handle(handle, ground)

    # ---- kinds of items ---------------------------------------------------------------------------------------

    def _add(self, kind: str, layer: str, role: str, numbers: Iterable[float], **more: Any) -> None:
        row = tuple(numbers)
        self.items.append({"k": kind, "layer": layer, "role": role, **more})
        self.shape.append((len(row) - 2) // 6 if kind == "path" else 0)
        self.numbers.extend(row)

    def _path(self, curves: Sequence[Curve], layer: str, role: str, by: Vector, **more: Any) -> None:
        """A line made of cubic segments: its start, then three points for each segment."""
        if not curves:
            return
        where = cycle((by.x, by.y))
        self._add("path", layer, role, map(add, _row(tuple(curves)), where), **more)

    def _text(self, text: str, at: Point, layer: str, role: str, **more: Any) -> None:
        self._add("text", layer, role, (at.x, at.y), text=text, **more)

    # ---- pieces -----------------------------------------------------------------------------------------------

    def _piece(self, piece: Piece) -> None:
        by = self.places[piece.name]
        record = self.seen.record
        fresh = {name for owner, name, _ in record.new if owner == piece.name} if record else set()
        layers = self.view.layers
        if "cut" in layers and has_allowances(piece):
            self._cut(piece, by)
        if "stitch" not in layers:
            self._title(piece, by)
            return
        for name, path in self._guides(piece, fresh):
            role = "new" if name in fresh else "guide"
            self._path(path.curves, "stitch", role, by, piece=piece.name, name=name)
        small: list[Item] = []
        for dart in piece.darts:
            small += in_step(piece, dart, "edge")
        for pleat in piece.pleats:
            small += pleat_in_step(piece, pleat, "edge", _SIGNS)
        for mark in piece.marks:
            small += mark_items(piece, mark, _SIGNS)
        for item in small:
            if isinstance(item, Stroke):
                self._path(item.curves, "stitch", item.role, by)
        for edge in piece.edges:
            self._edge(piece, edge, fresh, by)
        self._title(piece, by)

    def _edge(self, piece: Piece, edge: Edge, fresh: set[str], by: Vector) -> None:
        role = "edge" if self.seen.record is None else "kept"
        if edge.name in fresh:
            role = "new"
        elif edge.name == piece.fold:
            role = "fold"
        key = f"{piece.name}.{edge.name}"
        self._path(edge.path.curves, "stitch", role, by, piece=piece.name, name=edge.name, edge=key)
        self.edges[key] = self._said(piece, edge)

    def _said(self, piece: Piece, edge: Edge) -> str:
        """The edge's name, its length in both units and what it is sewn to."""
        values = {
            "edge": self.labels.get((piece.name, edge.name)) or edge_label(edge),
            "piece": title_said(piece.title or called(piece.name)),
            "length": both(edge.path.length, self.view.system),
        }
        told = self.fate.get((piece.name, edge.name), "")
        shut = sewn_length(piece, edge.name)
        if abs(shut - edge.path.length) > 0.5:
            return f"{say('canvas.edge_shut', values, shut=both(shut, self.view.system))} {told}".strip()
        return f"{say('canvas.edge', values)} {told}".strip()

    def _title(self, piece: Piece, by: Vector) -> None:
        corners = [edge.path.start for edge in piece.edges] or [path.start for _, path in piece.guides]
        box = piece.edges[0].path.bounds() if piece.edges else (0.0, 0.0, 0.0, 0.0)
        for edge in piece.edges[1:]:
            b = edge.path.bounds()
            box = (min(box[0], b[0]), min(box[1], b[1]), max(box[2], b[2]), max(box[3], b[3]))
        mean = Point(sum(p.x for p in corners) / len(corners), sum(p.y for p in corners) / len(corners))
        at = mean.mid(Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)) + by
        title = piece.title or called(piece.name).capitalize()
        self._text(title, at, "names", "name", piece=piece.name)

    def _cut(self, piece: Piece, by: Vector) -> None:
        try:
            line = cut_line(piece)
            ticks = notch_lines(piece)
        except KitError:
            return  # the proof says why
        self._path(line.curves, "cut", "cut", by, piece=piece.name)
        for tick in ticks:
            for each in tick.lines:
                self._path((each,), "cut", "notch", by)

    def _guides(self, piece: Piece, fresh: set[str]) -> list[tuple[str, Any]]:
        """Construction lines: all while the step draws by them, else those that lie by the piece."""
        if fresh or not piece.edges:
            return list(piece.guides)
        boxes = [edge.path.bounds() for edge in piece.edges]
        x0, y0 = min(b[0] for b in boxes) - 10, min(b[1] for b in boxes) - 10
        x1, y1 = max(b[2] for b in boxes) + 10, max(b[3] for b in boxes) + 10
        return [
            (name, path)
            for name, path in piece.guides
            if (b := path.bounds())[0] > x0 and b[2] < x1 and b[1] > y0 and b[3] < y1
        ]

    def _points(self, piece: Piece) -> None:
        """Named points that lie at the end of a line, and those the step has just made."""
        by, record = self.places[piece.name], self.seen.record
        fresh = {name for owner, name, _ in record.new_points if owner == piece.name} if record else set()
        ends = [end for edge in piece.edges for end in (edge.path.start, edge.path.end)]
        ends += [end for _, path in self._guides(piece, fresh) for end in (path.start, path.end)]
        for name, point in piece.points:
            if name in fresh or any(point.distance(end) < 0.5 for end in ends):
                role = "new" if name in fresh else "kept"
                said = say(
                    "canvas.point",
                    point=called(name),
                    piece=title_said(piece.title or called(piece.name)),
                )
                at = point + by
                self._add("dot", "stitch", role, (at.x, at.y), piece=piece.name, name=name, says=said)
        if self.view.corners:
            self._corners(piece, by)

    def _corners(self, piece: Piece, by: Vector) -> None:
        """The ends of edges where no point has a name."""
        for edge, after in zip(piece.edges, (*piece.edges[1:], *piece.edges[:1]), strict=True):
            end = edge.path.end
            if any(point.distance(end) < 0.5 for _, point in piece.points):
                continue
            said = say(
                "canvas_moves.corner_dot",
                first=edge_label(edge),
                second=edge_label(after),
                piece=title_said(piece.title or called(piece.name)),
            )
            at = end + by
            self._add("dot", "stitch", "kept", (at.x, at.y), piece=piece.name, name=f"{edge.name}.end", says=said)

    # ---- layers -----------------------------------------------------------------------------------------------

    def _outline(self, piece: Piece, layer: str, role: str, by: Vector) -> None:
        for edge in piece.edges:
            self._path(edge.path.curves, layer, role, by)

    def _ghost(self) -> None:
        """Lines of the step before that are not there any more."""
        for piece in self.seen.pieces:
            before = self.seen.before.get(piece.name)
            if before is None:
                continue
            now = {edge.path for edge in piece.edges}
            for edge in before.edges:
                if edge.path not in now:
                    self._path(edge.path.curves, "ghost", "removed", self.places[piece.name])

    def _body(self, block: Sequence[Piece]) -> None:
        for name, start in on_body(self.pattern, block).items():
            found = levels(self.pattern.body, start)
            if name not in self.places or not found:
                continue
            by = self.places[name]
            side = side_line(found)
            lines = tuple(Line(a, b) for a, b in pairwise(side))
            self._path(lines, "body", "hand", by)
            for level in found:
                self._path((Line(Point(0.0, level.y), Point(level.width, level.y)),), "body", "measure", by)
                at = Point(level.width / 2, level.y) + by
                self._text(level.text(self.view.system), at, "body", "small", above=True)

    def _spots(self) -> list[StepMeasure]:
        """What the step measures; for the whole draft, where its parameters are measured, each once."""
        if self.seen.record is not None:
            return [spot for spot in self.seen.record.spots if spot.piece in self.places]
        names = {value.name for value in self.pattern.values}
        found: dict[str, StepMeasure] = {}
        for record in self.pattern.steps:
            for spot in record.spots:
                if spot.name in names and spot.piece in self.places:
                    found.setdefault(spot.name, spot)
        return list(found.values())

    def _dimension(self, spot: StepMeasure) -> None:
        by = self.places[spot.piece]
        piece = next(p for p in self.seen.pieces if p.name == spot.piece)
        half = spot.start.mid(spot.end)
        side = 1.0
        if piece.edges:
            inside = Vector(-(spot.end - spot.start).y, (spot.end - spot.start).x)
            middle = sum((e.path.start.x for e in piece.edges), 0.0) / len(piece.edges)
            level = sum((e.path.start.y for e in piece.edges), 0.0) / len(piece.edges)
            side = -1.0 if inside.dot(Point(middle, level) - half) > 0 else 1.0
        text = say(
            "canvas.measure",
            name=place_said(spot, self.seen.pieces),
            value=shown_value(spot, self.view.system),
        )
        row = (spot.start.x + by.x, spot.start.y + by.y, spot.end.x + by.x, spot.end.y + by.y)
        self._add("dim", "dims", "measure", row, side=side, text=len(self.dims))
        self.dims.append(text)

    def _handle(self, handle: Handle, ground: Ground) -> None:
        at = ground.at(handle.anchor)
        on_cut = handle.anchor.kind == "cut"
        if at is None or (on_cut and "cut" not in self.view.layers):
            return
        point = at + self.places[handle.anchor.piece]
        tip = point + handle.direction * handle.rate
        self._add("handle", "handles", "new", (point.x, point.y, tip.x, tip.y), name=handle.name)
