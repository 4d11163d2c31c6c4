"""Pleats and tucks as a teacher writes them in a step: `skirt.add_pleat("pleat", "waist", at=8 * cm, intake=6 * cm)`.

Each verb checks what is given, calls the functions in `pleating.py` and lays the result on the bench. Distances are
lengths with a unit; a place on an edge is a length along it or a point marked near it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from kit.errors import KitError, near
from kit.geometry import Vector
from kit.lesson import pleating
from kit.lesson.dart_verbs import pressed_way
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import At, PaperLine, PaperPoint
from kit.lesson.verb import verb
from kit.piece.piece import Piece
from kit.piece.pleat import intake as taken
from kit.piece.pleat import pleat_of
from kit.units import Length, Size

if TYPE_CHECKING:
    from kit.lesson.slash import AlongEdge

_STYLES = ("knife", "box", "inverted")


@verb
def add_pleat(
    bench: OpenPiece,
    name: str,
    edge: str | PaperLine,
    *,
    at: At,
    intake: Size,
    to: tuple[str | PaperLine, At] | PaperPoint | None = None,
    along: PaperLine | None = None,
    style: str = "knife",
    face: Size | None = None,
    tapered: bool = False,
    laid: str = "side",
    held: str = "near",
    said: str = "",
) -> None:
    """A pleat folded into `edge` `at` this far along, taking up `intake` in all.

    The paper is slashed square to the edge as far as the edge across from it, or parallel to the straight line
    `along`, or `to` a place (edge, how far along), and spread straight; `tapered` swings it to nothing there.
    `style` knife is one fold laid to the "side", "centre", "up" or "down"; box is two with a `face` between
    them; inverted two that meet. `held`="both" folds it into the seam at the far edge too; else it hangs free.


    Example::

        back.add_pleat("back_pleat", "waist", at=4 * cm, intake=6 * cm, along=back.centre)
    """
    if style not in _STYLES:
        raise KitError(f"there is no pleat style '{style}'.", where=bench.where, do=near(style, _STYLES))
    if held not in ("near", "both"):
        raise KitError(f"a pleat is not held '{held}'.", where=bench.where, do='Say held="near" or held="both".')
    edge_name, wide = bench.edge_name(edge), distance(intake, f"{name}, intake")
    piece = bench.freeze()
    start = (edge_name, bench.place_on(edge_name, at))
    far = _far(bench, piece, start, to, along)
    ends: pleating.Held = "both" if held == "both" else "near"
    if style == "knife":
        if face is not None:
            raise KitError("only a box pleat has a face.", where=bench.where, do='Say style="box".')
        way = pressed_way(bench, edge_name, laid)
        result = pleating.add_pleat(
            piece, name, start, far, float(wide), tapered=tapered, laid=way, held=ends, said=said
        )
    else:
        size = None if face is None else float(distance(face, f"{name}, face"))
        result = pleating.box_pleat(
            piece,
            name,
            start,
            far,
            float(wide),
            inverted=style == "inverted",
            face=size,
            tapered=tapered,
            held=ends,
            said=said,
        )
    bench.lay(result)
    _note_pleat(bench, name if style == "knife" else f"{name}_1", wide if style == "knife" else None)


@verb
def add_tuck(
    bench: OpenPiece,
    name: str,
    edge: str | PaperLine,
    *,
    at: At,
    depth: Size,
    count: int = 1,
    apart: Size | None = None,
    along: PaperLine | None = None,
    sewn: Size | None = None,
    laid: str = "side",
    said: str = "",
) -> None:
    """A tuck, or a row of `count` of them with their seams `apart` from one to the next: each `depth` deep from
    fold to stitching, taking up twice that. They run across the piece square to the edge, or parallel to the
    straight line `along`, and are stitched for `sewn`, or all the way.

    Example::

        back.add_tuck("tuck", "waist", at=1 * cm, depth=5 * mm, count=3, apart=1 * cm,
                      sewn=8 * cm, along=back.centre)
    """
    edge_name, deep = bench.edge_name(edge), distance(depth, f"{name}, depth")
    if isinstance(count, bool) or not isinstance(count, int):
        raise KitError(f"a row has a whole number of tucks, not {count!r}.", where=bench.where, do="Say count=5.")
    if count > 1 and apart is None:
        raise KitError("it is not said how far apart the tucks are.", where=bench.where, do="Say apart=1 * cm.")
    gap = 0.0 if apart is None else float(distance(apart, f"{name}, apart"))
    result = pleating.tuck_row(
        bench.freeze(),
        name,
        (edge_name, bench.place_on(edge_name, at)),
        count=count,
        depth=float(deep),
        apart=gap,
        way=None if along is None else _straight(bench, along),
        sewn=None if sewn is None else float(distance(sewn, f"{name}, sewn")),
        laid=pressed_way(bench, edge_name, laid),
        said=said,
    )
    bench.lay(result)
    first = pleat_of(result, name if count == 1 else f"{name}_1")
    one, two = (leg.at(leg.length / 2) for leg in first.lines)
    if deep.name:
        bench.note(deep, one, one.mid(two))
    else:
        bench.note(Length(float(deep), f"{name}_depth"), one, one.mid(two))


@verb
def true_pleat(bench: OpenPiece, name: str) -> None:
    """Fold the pleat or tuck and redraw its edges through it, so that they run true.

    Example::

        back.add_pleat("back_pleat", "waist", at=4 * cm, intake=6 * cm, along=back.centre)
        back.true_pleat("back_pleat")
    """
    bench.lay(pleating.true_pleat(bench.freeze(), name))


def _far(
    bench: OpenPiece,
    piece: Piece,
    start: AlongEdge,
    to: tuple[str | PaperLine, At] | PaperPoint | None,
    along: PaperLine | None,
) -> AlongEdge:
    if to is None:
        return pleating.across(piece, *start, None if along is None else _straight(bench, along))
    if along is not None:
        raise KitError("it is said twice which way the pleat runs.", where=bench.where, do="Give to= or along=.")
    if isinstance(to, tuple) and len(to) == 2:
        name = bench.edge_name(to[0])
        return name, bench.place_on(name, to[1])
    if isinstance(to, PaperPoint):
        nearest = min(piece.edges, key=lambda e: e.path.distance_to(to.point))
        return nearest.name, nearest.path.nearest(to.point)
    raise KitError(
        "the far end of the pleat is not a place.", where=bench.where, do='Say to=("hem", 12 * cm) or a point.'
    )


def _straight(bench: OpenPiece, line: PaperLine) -> Vector:
    if not line.path.is_straight:
        raise KitError("pleats run parallel to a straight line.", where=bench.where, do="Name a straight line.")
    return line.path.end - line.path.start


def _note_pleat(bench: OpenPiece, name: str, given: Length | None) -> None:
    pleat = pleat_of(bench.freeze(), name)
    value = given if given is not None and given.name else Length(taken(pleat), f"{name}_intake")
    bench.note(value, pleat.lines[0].start, pleat.lines[1].start)
