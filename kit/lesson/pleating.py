"""Pleats and tucks put into paper: slashed across and spread straight by what they take up, or swung to nothing.

Pure functions from piece to piece. The paper is cut along a straight line from the edge; what lies on the moved part
goes with it, and the edge is redrawn through the folded pleat so that it runs true (`cap`).
"""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Path, Point, Vector
from kit.lesson.shaping import opened
from kit.lesson.slash import SAME, AlongEdge, on_edge, with_path
from kit.piece.darts_and_pleats import Pleat
from kit.piece.piece import Piece
from kit.piece.pleat import cap, pleat_of

Laid = Literal["start", "end"]
Style = Literal["knife", "box", "inverted"]
Held = Literal["near", "both"]


def across(piece: Piece, edge: str, at: float, way: Vector | None = None) -> AlongEdge:
    """The place on another edge straight across from `at` mm along `edge`: square to it, or in the direction `way`
    (either sense of it). `KitError` when no edge lies there."""
    start = on_edge(piece, edge, at)
    inward = piece.edge(edge).path.normal_at(at) * (1.0 if piece.outline.area > 0 else -1.0)
    ahead = inward if way is None else way.unit() * (1.0 if way.dot(inward) >= 0 else -1.0)
    if abs(ahead.dot(inward)) < 0.2:
        raise KitError(
            message("refusal.pleat_along", edge=named_edge(piece.edge(edge))),
            where=piece.title,
            do=message("refusal.pleat_along_do"),
        )
    ray = Path.line(start + ahead * 0.5, start + ahead * 4000.0)
    found = [(start.distance(p), e.name, e.path.nearest(p)) for e in piece.edges for p in ray.crossings(e.path)]
    if not found:
        raise KitError(message("refusal.no_edge_across"), where=piece.title, do=message("refusal.no_edge_across_do"))
    _, name, far = min(found)
    return name, far


def add_pleat(
    piece: Piece,
    name: str,
    near: AlongEdge,
    far: AlongEdge,
    intake: float,
    *,
    tapered: bool = False,
    laid: Laid = "end",
    held: Held = "near",
    kind: Literal["pleat", "tuck"] = "pleat",
    sewn: float | None = None,
    said: str = "",
) -> Piece:
    """One pleat or tuck that takes up `intake` mm at the place `near`, its slash running to `far`: spread straight
    from edge to edge, or `tapered` to nothing there. A tuck is stitched for `sewn` mm, along all of it when None.
    `held`: whether the far end is folded into its seam too. `KitError` when it cannot be drawn."""
    _new_name(piece, name)
    if not intake > 0:
        raise KitError(
            message("refusal.takes_nothing"), where=piece.title, do=message("refusal.more_do", size=measured(30.0))
        )
    if near[0] == far[0]:
        raise KitError(
            message("refusal.pleat_same_edge", edge=named_edge(piece.edge(near[0]))),
            where=piece.title,
            do=message("refusal.pleat_same_edge_do"),
        )
    spread, where = opened(piece, near, far, intake, hinged=tapered)
    start, low = where(*near, False), 0.0 if tapered else where(*far, False)
    # The paper is slashed and spread first; then the pleat's two lines run where the slash's two sides lie now. Its far
    # ends come in the other order, for the far edge runs against the near one around the piece.
    path = spread.edge(near[0]).path
    one, two = path.at(start), path.at(start + intake)
    if tapered:
        tip = _moved_tip(spread, far, where(*far, True))
        lines = (Path.line(one, tip), Path.line(two, tip))
    else:
        other = spread.edge(far[0]).path
        lines = (Path.line(one, other.at(low + intake)), Path.line(two, other.at(low)))
    long = lines[0].length
    if sewn is not None and not 0 < sewn <= long + 0.05:
        raise KitError(
            message("refusal.tuck_short", long=measured(long), sewn=measured(sewn)),
            where=piece.title,
            do=message("refusal.tuck_short_do"),
        )
    stitched = 0.0 if kind == "pleat" else long if sewn is None else min(sewn, long)
    pleat = Pleat(name, near[0], start, start + intake, lines, kind, stitched, laid, said)
    if not tapered:
        through = held == "both" or stitched > long - 0.05
        pleat = replace(pleat, far=far[0], far_start=low, far_end=low + intake, held="both" if through else "near")
    return true_pleat(replace(spread, pleats=(*spread.pleats, pleat)), name)


def _moved_tip(piece: Piece, far: AlongEdge, at: float) -> Point:
    return piece.edge(far[0]).path.at(min(max(at, 0.0), piece.edge(far[0]).path.length))


def _new_name(piece: Piece, name: str) -> None:
    if any(p.name == name for p in piece.pleats) or any(d.name == name for d in piece.darts):
        raise KitError(f"there is already a '{name}'.", where=piece.title, do="Choose another name.")


def true_pleat(piece: Piece, name: str) -> Piece:
    """The pleat folded and laid, and its edge redrawn through it at both ends, so that it runs true."""
    piece = _with_stretch(piece, name, far=False)
    return _with_stretch(piece, name, far=True) if pleat_of(piece, name).far else piece


def _with_stretch(piece: Piece, name: str, far: bool) -> Piece:
    pleat = pleat_of(piece, name)
    edge = pleat.far if far else pleat.edge
    start, end = (pleat.far_start, pleat.far_end) if far else (pleat.start, pleat.end)
    path, new = piece.edge(edge).path, cap(piece, pleat, far)
    parts = [path.between(0.0, start)] if start > SAME else []
    parts.append(new)
    if path.length - end > SAME:
        parts.append(path.between(end, path.length))
    shift = new.length - (end - start)
    return with_path(piece, edge, Path.of(*parts), lambda d: d + shift if d >= end - SAME else d)


def box_pleat(
    piece: Piece,
    name: str,
    near: AlongEdge,
    far: AlongEdge,
    intake: float,
    *,
    inverted: bool = False,
    face: float | None = None,
    tapered: bool = False,
    held: Held = "near",
    said: str = "",
) -> Piece:
    """Two pleats that take up `intake` mm together. A box lies on top, `face` mm wide (half the intake by default,
    so that the two folds behind it meet), its pleats laid toward each other under it; an inverted one has its two
    folds meeting on top (`face` 0) and lies behind, its pleats laid apart."""
    _new_name(piece, f"{name}_1")
    _new_name(piece, f"{name}_2")
    wide = 0.0 if inverted else intake / 2 if face is None else face
    if not inverted and wide < intake / 4:
        raise KitError(
            message("refusal.box_narrow", wide=measured(wide), deep=measured(intake / 4)),
            where=piece.title,
            do=message("refusal.box_narrow_do"),
        )
    label = said or name.replace("_", " ")
    if inverted:
        whole = add_pleat(piece, name, near, far, intake, tapered=tapered, held=held)
        return _divided(piece, whole, name, label, near, far, intake, tapered=tapered, held=held)
    direction = (_at(piece, far) - _at(piece, near)).unit()
    for number, side, laid in ((2, 0.5, "start"), (1, -0.5, "end")):
        at = (near[0], near[1] + side * wide)
        on_edge(piece, *at)
        to = far if tapered else across(piece, *at, direction)
        piece = add_pleat(
            piece,
            f"{name}_{number}",
            at,
            to,
            intake / 2,
            tapered=tapered,
            laid=laid,  # type: ignore[arg-type]
            held=held,
            said=f"{label}, {'first' if number == 1 else 'second'} fold",
        )
    return piece


def _divided(
    piece: Piece,
    whole: Piece,
    name: str,
    label: str,
    near: AlongEdge,
    far: AlongEdge,
    intake: float,
    *,
    tapered: bool,
    held: Held,
) -> Piece:
    """The spread of an inverted pleat shared between two that meet in its middle."""
    spread, where = opened(piece, near, far, intake, hinged=tapered)
    first = pleat_of(whole, name)
    one, two = first.lines
    middle = Path.line(one.start.mid(two.start), one.end.mid(two.end))
    start = where(*near, False)
    half = intake / 2
    a = Pleat(f"{name}_1", near[0], start, start + half, (one, middle), laid="start", said=f"{label}, first fold")
    b = Pleat(
        f"{name}_2", near[0], start + half, start + intake, (middle, two), laid="end", said=f"{label}, second fold"
    )
    if not tapered:
        low = where(*far, False)
        a = replace(a, far=far[0], far_start=low + half, far_end=low + intake, held=held)
        b = replace(b, far=far[0], far_start=low, far_end=low + half, held=held)
    laid = replace(spread, pleats=(*spread.pleats, a, b))
    return true_pleat(true_pleat(laid, a.name), b.name)


def _at(piece: Piece, place: AlongEdge) -> Point:
    return on_edge(piece, *place)


def tuck_row(
    piece: Piece,
    name: str,
    near: AlongEdge,
    *,
    count: int,
    depth: float,
    apart: float,
    way: Vector | None = None,
    sewn: float | None = None,
    laid: Laid = "end",
    said: str = "",
) -> Piece:
    """`count` tucks `depth` mm deep, each taking up twice that, parallel to each other: the first at `near`, the
    next seam `apart` mm further along the edge as it was before. `KitError` when they do not fit on the edge."""
    if count < 1:
        raise KitError(message("refusal.row_empty", count=count), where=piece.title, do=message("refusal.row_empty_do"))
    edge, at = near
    length = piece.edge(edge).path.length
    last = at + apart * (count - 1)
    if count > 1 and apart < depth - 1e-6:
        raise KitError(
            message("refusal.tucks_over", depth=measured(depth), apart=measured(apart)),
            where=piece.title,
            do=message("refusal.tucks_over_do", depth=measured(depth)),
        )
    if last > length + SAME:
        raise KitError(
            message(
                "refusal.tucks_off",
                count=count,
                apart=measured(apart),
                last=measured(last),
                edge=named_edge(piece.edge(edge)),
                length=measured(length),
            ),
            where=piece.title,
            do=message("refusal.tucks_off_do"),
        )
    # One direction for the whole row, square to the edge in the middle of the row: each tuck square to its own place
    # on a curved edge would make them fan out.
    path = piece.edge(edge).path
    middle = (at + last) / 2
    straight = path.normal_at(middle) if way is None else way
    # From the last to the first: a tuck makes the edge longer beyond itself only, so the places of those still to
    # come stay what they were on the edge as it was before.
    for number in range(count, 0, -1):
        place = (edge, at + apart * (number - 1))
        one = name if count == 1 else f"{name}_{number}"
        words = said or name.replace("_", " ")
        piece = add_pleat(
            piece,
            one,
            place,
            across(piece, *place, straight),
            2 * depth,
            kind="tuck",
            sewn=sewn,
            laid=laid,
            said=words if count == 1 else f"{words} {number}",
        )
    if count == 1:
        return piece
    # Put in last to first, and told first to last.
    order = {p.name: p for p in piece.pleats}
    row = [order[f"{name}_{i}"] for i in range(1, count + 1)]
    return replace(piece, pleats=(*(p for p in piece.pleats if p not in row), *row))
