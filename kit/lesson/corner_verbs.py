"""How a step says by hand what happens at a corner of the allowances."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace
from itertools import pairwise
from typing import get_args

from kit.diagnostic import list_of, measured, message, named_edge
from kit.errors import KitError, near
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine
from kit.lesson.verb import verb
from kit.piece.corner import Corner, Declared, Rule
from kit.piece.piece import Edge
from kit.units import Size, length

WIDEST = 300.0  # mm from a stitch line that a fold or a cut-off point may lie
RULES: tuple[str, ...] = get_args(Rule)


@verb
def finish_corner(
    bench: OpenPiece,
    first: str | PaperLine,
    second: str | PaperLine,
    rule: str,
    *,
    turned: str | PaperLine | None = None,
    folds: Size | Sequence[Size] = 0,
    size: Size = 0,
) -> None:
    """Say how the allowances of two neighbouring edges meet, whatever the sewing order would make of it:

    "mitre" carries both cut lines on until they meet; "squared" ends the allowance of `turned` (the edge named
    first, if not said) square to its own stitch line; "turned" shapes its end so that it lies flush once folded
    at each of `folds`, measured outward from its stitch line (0 is the stitch line; a hem turned twice folds at
    `folds=(0, 4 * cm)`); "clipped" cuts the point off straight, and "rounded" in an arc, `size` from the corner
    of the stitch lines, else as far as the wider allowance.

    Raises `KitError` for edges that are not neighbours, an unknown rule, and sizes and folds that do not fit.


    Example::

        front.finish_corner(front.side, front.hip, "clipped", size=1 * cm)
    """
    before, after, named_first = _corner_of(bench, first, second)
    where = f"{bench.where}, corner of {bench.piece.edge(before).label} and {bench.piece.edge(after).label}"
    if rule not in RULES:
        raise KitError(f"'{rule}' is not a way to join allowances.", where=where, do=near(rule, RULES))
    folded = named_first if turned is None else bench.edge_name(turned)
    if folded not in (before, after):
        raise KitError(
            f"the {bench.piece.edge(folded).label} does not meet this corner.",
            where=where,
            do=f"Say turned={before} or turned={after}.",
        )
    if turned is not None and rule not in ("turned", "squared"):
        raise KitError(
            f"a corner that is {_said(rule)} has no turned edge.",
            where=where,
            do='Leave turned out, or say "turned".',
        )
    made = Corner(before, after, rule, by_hand=True)  # type: ignore[arg-type]
    if rule in ("turned", "squared"):
        made = replace(made, turned=folded)
    if rule == "turned":
        made = replace(made, folds=_folds(bench, folds, bench.piece.edge(folded), where))
    elif not _is_zero(folds):
        raise KitError(
            f"a corner that is {_said(rule)} is not folded.", where=where, do='Leave folds out, or say "turned".'
        )
    if rule in ("clipped", "rounded"):
        made = replace(made, size=_cut_size(bench, size, made, where))
    elif not _is_zero(size):
        raise KitError(
            f"a corner that is {_said(rule)} has no size.", where=where, do='Leave size out, or say "clipped".'
        )
    kept = tuple(c for c in bench.piece.corners if {c.before, c.after} != {before, after})
    bench.change(corners=(*kept, made))


@verb
def declare(bench: OpenPiece, first: str | PaperLine, second: str | PaperLine, *, why: str) -> None:
    """Say that the corner of two neighbouring edges is drawn on purpose, and `why`: "V point", "slit", "gusset".
    The line across a seam there need not run smooth. Raises `KitError` for edges that are not neighbours.

    Example::

        front.declare(front.side, front.hip, why="slit")
    """
    before, after, _ = _corner_of(bench, first, second)
    if not isinstance(why, str) or not why.strip():
        raise KitError(
            "it is not said why the corner is drawn so.", where=bench.where, do='Say what it is: why="V point".'
        )
    kept = tuple(d for d in bench.piece.declared if {d.before, d.after} != {before, after})
    bench.change(declared=(*kept, Declared(before, after, why.strip())))


def _corner_of(bench: OpenPiece, first: str | PaperLine, second: str | PaperLine) -> tuple[str, str, str]:
    """(edge before, edge after, the one named first), in the order around the piece."""
    names = []
    for item in (first, second):
        if isinstance(item, PaperLine):
            if item.sheet is not bench:
                raise KitError(
                    f"the {item.said} lies on another piece, {item.sheet.piece_name.replace('_', ' ')}.",
                    where=bench.where,
                    do="Name two edges of this piece.",
                )
        elif not isinstance(item, str):
            raise KitError(
                f"{item!r} is not an edge.",
                where=bench.where,
                do="Name two edges, such as front.side and front.hem.",
            )
        names.append(bench.edge_name(item))
    order = bench.order
    a, b = names
    count = len(order)
    if a == b:
        raise KitError(f"the corner has '{a}' on both sides.", where=bench.where, do="Name the two edges that meet.")
    if (order.index(a) + 1) % count == order.index(b):
        return a, b, a
    if (order.index(b) + 1) % count == order.index(a):
        return b, a, a
    beside = order[order.index(a) - 1], order[(order.index(a) + 1) % count]
    raise KitError(
        f"'{a}' and '{b}' are not neighbours on the outline, so they have no corner.",
        where=bench.where,
        do=f"The neighbours of {a} are {beside[0]} and {beside[1]}.",
    )


def _folds(bench: OpenPiece, given: Size | Sequence[Size], edge: Edge, where: str) -> tuple[float, ...]:
    many = given if isinstance(given, tuple | list) else (given,)
    found = tuple(0.0 if _is_zero(fold) else float(distance(fold, f"{where}, fold")) for fold in many)
    if not found or any(b - a < 1.0 for a, b in pairwise(found)):
        raise KitError(
            message("refusal.folds_order", folds=list_of([measured(fold) for fold in found], "string"))
            if found
            else message("refusal.folds_none"),
            where=where,
            do=message("refusal.folds_order_do"),
        )
    most = edge.allowance if edge.allowance else WIDEST
    if found[-1] >= most:
        raise KitError(
            message("refusal.fold_beyond", at=measured(found[-1]), edge=named_edge(edge), most=measured(most)),
            where=where,
            do=message("refusal.fold_beyond_do"),
        )
    return found


def _cut_size(bench: OpenPiece, given: Size, corner: Corner, where: str) -> float:
    if _is_zero(given):
        return 0.0
    size = float(length(given, f"{where}, size"))
    if not 0 < size <= WIDEST:
        raise KitError(
            message("refusal.corner_size", size=measured(size)),
            where=where,
            do=message("refusal.corner_size_do"),
        )
    one, two = bench.piece.edge(corner.before), bench.piece.edge(corner.after)
    if not one.allowance or not two.allowance:
        return size
    wider = max(one.allowance, two.allowance)
    if corner.rule == "rounded" and size < wider - 0.01:
        raise KitError(
            message("refusal.corner_arc", size=measured(size), width=measured(wider)),
            where=where,
            do=message("refusal.corner_arc_do", width=measured(wider)),
        )
    turn = one.path.end_tangent.turn_to(two.path.start_tangent)
    if abs(math.sin(turn)) > 0.05:
        beyond = (two.allowance - one.allowance * math.cos(turn)) / abs(math.sin(turn))
        reach = math.hypot(one.allowance, beyond)
        if size >= reach:
            raise KitError(
                message("refusal.corner_reach", reach=measured(reach), size=measured(size)),
                where=where,
                do=message("refusal.corner_reach_do", reach=measured(reach)),
            )
    return size


def _said(rule: str) -> str:
    return {"mitre": "mitred"}.get(rule, rule)


def _is_zero(value: object) -> bool:
    return isinstance(value, int | float) and float(value) == 0.0
