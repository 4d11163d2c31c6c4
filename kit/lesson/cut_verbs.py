"""Making up a piece: allowances, names as people say them, how it is cut and how it lies on the grain."""

from __future__ import annotations

from typing import cast, get_args

from kit.diagnostic import message, named_edge
from kit.errors import KitError, near
from kit.geometry import Line, Path
from kit.lesson.headings import FAR, distance, heading
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.roles import said_as, titled
from kit.lesson.verb import verb
from kit.piece.changed import changed
from kit.piece.piece import Cloth, CutPlan, Grain, GrainKind
from kit.units import Size

CLOTHS: tuple[str, ...] = get_args(Cloth)
GRAINS: tuple[str, ...] = get_args(GrainKind)


@verb
def allow(bench: OpenPiece, /, **allowances: Size) -> None:
    """Give edges their seam or hem allowance.

    Example::

        front.allow(side=1.5 * cm, shoulder=1.5 * cm, neck=6 * mm)
    """
    way = -1.0 if bench.inside_is_left() else 1.0
    fresh = []
    for name, value in allowances.items():
        edge = bench.piece.edge(bench.edge_name(name))
        size = distance(value, f"{bench.where}, allowance on {name}")
        fresh.append(changed(edge, allowance=float(size)))
        middle = edge.path.length / 2
        outward = edge.path.normal_at(middle) * way
        at = edge.path.at(middle)
        if size > 0:
            bench.spot(f"{name}_allowance", float(size), at, at + outward * float(size), None, name)
        part = size.parts[0] if size.parts is not None else None
        if part is not None and part.name:  # a hem, and what is turned in of it: the hem lies next to the seam
            beside = edge.path.at(middle * 0.8)
            away = edge.path.normal_at(middle * 0.8) * way
            bench.spot(part.name, float(part), beside, beside + away * float(part), None)
    bench.put_edges(*fresh)


@verb
def allow_to_fit(bench: OpenPiece, /, **extra: Size) -> None:
    """Cut edges wider than they are sewn: extra cloth beside the allowance, to fit with. The pattern says so at the
    edge, and `make.trim_to_fit` takes it off once the fit is right.

    Example::

        front.allow(side=1.5 * cm)
        front.allow_to_fit(side=2 * cm)
    """
    fresh = []
    for name, value in extra.items():
        edge = bench.piece.edge(bench.edge_name(name))
        size = float(distance(value, f"{bench.where}, cloth to fit with on {name}"))
        if edge.name == bench.piece.fold:
            raise KitError(
                message("refusal.extra_on_fold", edge=named_edge(edge)),
                where=bench.where,
                do=message("refusal.extra_on_fold_do"),
            )
        fresh.append(changed(edge, extra=size))
        way = -1.0 if bench.inside_is_left() else 1.0
        middle = edge.path.length / 2
        outward = edge.path.normal_at(middle) * way
        at = edge.path.at(middle) + outward * (edge.allowance or 0.0)
        if size > 0:
            bench.spot(f"{name}_extra", size, at, at + outward * size, None, name, extra=True)
    bench.put_edges(*fresh)


@verb
def say(bench: OpenPiece, /, **names: str) -> None:
    """How people say the names of edges.

    Example::

        front.say(side="side seam", centre="front edge")
    """
    bench.put_edges(*(said_as(bench.piece.edge(bench.edge_name(name)), said) for name, said in names.items()))


@verb
def cut(
    bench: OpenPiece,
    count: int = 1,
    *,
    mirrored: bool = False,
    fold: str = "",
    interfacing: int = 0,
    title: str = "",
    number: int | None = None,
    right_side_up: bool = False,
    cloth: str = "",
) -> None:
    """How many to cut: a mirrored pair, one with an edge on the fold, or single; `right_side_up` when it is cut
    with the right sides of cloth and pattern up, because its mirror image would not fit. `cloth` is "main",
    "lining" or "interfacing" (when nothing is said, what it was derived for).

    Example::

        front.cut(2, mirrored=True)
        back.cut(1, fold="centre", title="Back")
    """
    if right_side_up and (mirrored or fold):
        raise KitError(
            f"a piece cut {'as a mirrored pair' if mirrored else 'on the fold'} has no single right side up.",
            where=bench.where,
            do="Leave right_side_up out, or cut it single.",
        )
    if cloth and cloth not in CLOTHS:
        raise KitError(f"'{cloth}' is not a cloth of the pattern.", where=bench.where, do=near(cloth, CLOTHS))
    if count < 1:
        raise KitError(f"{count} cannot be cut.", where=bench.where, do="Cut at least one.")
    if cloth == "interfacing" and interfacing:
        raise KitError(
            "a piece of interfacing is not interfaced itself.", where=bench.where, do="Leave interfacing=... out."
        )
    if mirrored and fold:
        raise KitError("a piece is cut as a mirrored pair or on the fold, not both.", where=bench.where)
    if mirrored and count % 2:
        raise KitError(f"a mirrored pair is cut in even numbers, not {count}.", where=bench.where)
    if fold:
        edge = bench.piece.edge(bench.edge_name(fold))
        if not edge.path.is_straight:
            raise KitError(
                message("refusal.fold_is_curved", edge=named_edge(fold)),
                where=bench.where,
                do=message("refusal.fold_is_curved_do"),
            )
        bench.put_edges(changed(edge, allowance=0.0))
    stuff = cast("Cloth", cloth) if cloth else bench.piece.cut.cloth
    plan = CutPlan(count, mirrored, fold, stuff, interfacing, right_side_up, said=True)
    if title:
        bench.piece = titled(bench.piece, title)
    bench.change(
        cut=plan,
        number=bench.piece.number if number is None else number,
    )


@verb
def grain(
    bench: OpenPiece,
    along: PaperLine | str | None = None,
    at: PaperPoint | None = None,
    kind: str = "lengthwise",
    one_way: bool = False,
) -> None:
    """Draw the grainline, straight up the paper, in a direction of the paper or parallel to a straight line, `at` a
    point or in the middle. `kind` is what of the cloth it is laid along: its "lengthwise" or "crosswise" grain, or
    the "bias" at 45 degrees to both. `one_way`: the piece has a top that must not be turned round.

    Example::

        front.grain(along=front.centre)
    """
    if kind not in GRAINS:
        raise KitError(f"'{kind}' is not a grain of the cloth.", where=bench.where, do=near(kind, GRAINS))
    if isinstance(along, PaperLine):
        if not along.path.is_straight:
            raise KitError(
                message("refusal.grain_curved", line=along.told),
                where=bench.where,
                do=message("refusal.grain_curved_do"),
            )
        direction = (along.path.end - along.path.start).unit()
        if direction.y < -1e-9:  # its top is the upper end as drafted
            direction = direction * -1.0
    elif isinstance(along, str) and bench.piece.has_edge(along):
        grain(bench, PaperLine(bench, bench.path(along), along), at, kind, one_way)
        return
    else:
        direction = heading("up" if along is None else along)
    if not bench.piece.edges:
        raise KitError("nothing is drawn on it yet.", where=bench.where, do="Draw its outline before its grainline.")
    centre = bench.freeze().outline.label_point() if at is None else at.point
    ray = Path.of(Line(centre - direction * FAR, centre + direction * FAR))
    hits = [p for e in bench.piece.edges for p in ray.crossings(e.path)]
    above = min((p for p in hits if (p - centre).dot(direction) > 0), key=centre.distance, default=centre)
    below = min((p for p in hits if (p - centre).dot(direction) < 0), key=centre.distance, default=centre)
    if above.distance(below) < 1e-6:
        raise KitError(message("refusal.grain_outside"), where=bench.where, do=message("refusal.grain_outside_do"))
    drawn = Grain(below.lerp(above, 0.12), below.lerp(above, 0.88), cast("GrainKind", kind), one_way)
    bench.change(grain=drawn)
