"""Pieces derived from others, as a teacher writes them in a step: facings, interfacings, linings.

`facing.face(front.neck, depth=5 * cm, ends=("centre", "shoulder"))` draws a facing from the garment as it lies now;
`kit.lesson.derive` and `kit.lesson.lining` hold the geometry.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import cast

from kit.errors import KitError, near
from kit.geometry import Path, Point
from kit.lesson import lining
from kit.lesson.cut_verbs import grain
from kit.lesson.derive import Laid, facing, joined, laid
from kit.lesson.hand import HandMove
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine
from kit.lesson.roles import derived
from kit.lesson.verb import verb
from kit.piece.piece import CutPlan, Piece
from kit.piece.role import PieceRole
from kit.units import Length, Size, show

Across = str | tuple[str | PaperLine, str | PaperLine] | Sequence[str | tuple[str | PaperLine, str | PaperLine]]
"""The seams a run goes on over: for each a name that both pieces have, or the two edges."""


@verb
def face(
    bench: OpenPiece,
    *run: OpenPiece | tuple[str, ...] | PaperLine,
    depth: Size,
    ends: tuple[str, str],
    short: Size = 0,
    short_at: str | Sequence[str] | None = None,
    across: Across = (),
    only: OpenPiece | None = None,
    moved: Size = 0,
    toward: OpenPiece | None = None,
) -> None:
    """Derive a facing from a run of edges: the run itself with its darts and pleats folded shut and its notches,
    a parallel `depth` inside it named `outer`, and the two short ends along the neighbouring edges, named by
    `ends` in the order of the run.

    The run is said edge by edge, `face(front.wrap_edge, front.wrap_neck, ...)`, or as a piece and names. It may
    go on to the next piece `across` a seam (a name both pieces have, or the two edges): the pieces are laid seam
    on seam, and the facing is one piece with edges named front_neck, back_neck. With `only` one of two pieces the
    seam is kept and its part alone is drawn, its own two ends named by `ends`, that at the seam too:
    `face(front.neck, back.neck, across="shoulder", only=front, ends=("centre", "shoulder"), ...)`. `moved` this far
    `toward` one of them the seam lies there instead.

    The outer edge is drawn `short` by this much `short_at` these ends (when nothing is said, at the last) so that
    the facing pulls taut; where nothing is said an end on the garment's fold is kept.


    Example::

        facing.face(front.neck, depth=6 * cm, ends=("centre", "shoulder"))
    """
    where = bench.where
    runs = _runs(bench, run)
    size = distance(depth, f"{where}, facing depth")
    want = distance(short, f"{where}, short by")
    by = distance(moved, f"{where}, seam moved by")
    if size <= 0:
        raise KitError("a facing needs a depth.", where=where, do="Say, for example, depth=5 * cm.")
    two = isinstance(ends, tuple) and len(ends) == 2 and all(isinstance(end, str) and end for end in ends)
    if not two:
        raise KitError("its two ends are not named.", where=where, do='Say, for example, ends=("centre", "shoulder").')
    try:
        lying, motions = joined(runs, _seams(across, runs), float(size))
    except KitError as error:
        raise error.at(where) from None
    cut, base = _part(bench, lying, only, float(by), toward)
    if base:
        back = motions[base].inverse()
        lying = tuple(item.moved(back) for item in lying)
    drawn = _drawn_short(ends, short_at, float(want), lying, cut, where)
    made = facing(lying, float(size), ends, drawn, cut, where)
    for edge in made.edges:
        bench.free(edge.name, "an edge")
    bench.drawn.update(edge.name for edge in made.edges)
    bench.piece = derived(bench.piece, "facing", lying[base].piece)
    bench.change(
        edges=made.edges,
        points=(),
        guides=(),
        source=lying[base].piece.name,
        notches=made.notches,
        marks=made.marks,
        darts=(),
        pleats=(),
        corners=(),
        declared=(),
        landmarks=(),
    )
    bench.note(size, made.middle, made.outer.at(made.outer.nearest(made.middle)))
    outer = bench.path("outer") if not drawn[1] else bench.path("outer").reversed()
    if want.name and want > 0 and any(drawn):
        bench.spot(want.name, float(want), outer.end, outer.end + outer.end_tangent * float(want), None)
    _by_hand(bench, lying[base].piece.name, made.outer, size, outer.end, want if any(drawn) else None)


def _by_hand(bench: OpenPiece, source: str, outer: Path, depth: Length, end: Point, short: Length | None) -> None:
    """A facing as the hand draws it: trace, set off the parallel, draw its end in."""
    first = bench.piece.edges[0].path.start
    bench.did(HandMove("trace", bench.piece_name, first, first, source=source))
    bench.did(
        HandMove("parallel", bench.piece_name, outer.start, outer.end, outer, float(depth), depth.name, name="outer")
    )
    if short:
        bench.did(HandMove("mark", bench.piece_name, end, end, size=float(short), measure=short.name))


@verb
def interface(
    bench: OpenPiece,
    *source: OpenPiece | tuple[str, ...] | PaperLine,
    beyond: Size | None = None,
    depth: Size | None = None,
    ends: tuple[str, str] = ("start", "end"),
    across: Across = (),
) -> None:
    """Derive an interfacing piece: over the whole of a piece, or `depth` deep along a run of edges as `face` takes
    them. It has the garment's allowances, or is cut `beyond` the stitch line by this much, 0 for at the stitch
    line. It is cut from interfacing as often as its piece, on the same grain.

    Example::

        interfacing.interface(front.neck, depth=6 * cm, ends=("centre", "shoulder"), beyond=2 * mm)
    """
    where = bench.where
    more = None if beyond is None else float(distance(beyond, f"{where}, beyond the stitch line"))
    if depth is None:
        piece = _whole(bench, source, "interface(front)")
        edges = lining.interfacing(piece, more)
        _derived(bench, replace(piece, edges=edges, corners=piece.corners if more is None else ()), "interfacing")
        bench.change(cut=replace(piece.cut, cloth="interfacing", interfacing=0), marks=())
        return
    runs = _runs(bench, source)
    bench.piece = derived(bench.piece, "interfacing", runs[0].piece)
    face(bench, *source, depth=depth, ends=ends, across=across)
    try:
        lying, _ = joined(runs, _seams(across, runs), float(distance(depth, where)))
    except KitError as error:
        raise error.at(where) from None
    beside = {ends[0]: (lying[0], lying[0].head[0]), ends[1]: (lying[-1], lying[-1].tail[0])}
    own = {(f"{s.piece}_{s.edge}" if len(lying) > 1 else s.edge): (run, s.edge) for run in lying for s in run.stretches}
    fold = ""
    changed = []
    for edge in bench.piece.edges:
        name = edge.name
        run, there = {**own, **beside}.get(name, (None, ""))
        width = run.piece.edge(there).allowance if run else 0.0
        if run and there == run.piece.fold:
            fold, width = name, 0.0
        elif more is not None:
            width = more
        changed.append(replace(edge, allowance=width))
    bench.put_edges(*changed)
    plan = lying[0].piece.cut
    halves = bool(plan.fold) and not fold  # the run leaves the fold: one for each side
    count, mirrored = (plan.count * 2, True) if halves else (plan.count, plan.mirrored and not fold)
    bench.change(
        cut=CutPlan(count, mirrored, fold, "interfacing", 0, plan.right_side_up),
    )
    if len(lying) == 1:
        _grain_of(bench, lying[0].piece)


@verb
def line(
    bench: OpenPiece,
    source: OpenPiece,
    *,
    facing: PaperLine | Sequence[PaperLine] = (),
    depth: Size = 0,
    pleat: Size = 0,
    at: str = "",
    shorter: Size = 0,
    hem: str = "",
) -> None:
    """Derive a lining from a piece as it lies now: less a facing `depth` deep along the `facing` edges, where it
    stops at the facing's outer edge and gets an edge called `facing`; with cloth for a `pleat` added beyond the
    edge `at`, the centre where none is named; the hem (or the edge `hem`) this much `shorter`. It is cut from lining as
    often as its piece, on the same grain, and keeps its allowances; `facing` has that of the first edge it stands
    for.

    Example::

        lining.line(back, facing=back.neck, depth=5 * cm, shorter=2 * cm, hem="hip")
    """
    where = bench.where
    piece = _whole(bench, (source,), "line(front)")
    lines = (facing,) if isinstance(facing, PaperLine) else tuple(facing)
    deep, wide = distance(depth, f"{where}, facing depth"), distance(pleat, f"{where}, pleat")
    less = distance(shorter, f"{where}, hem shorter by")
    if bool(lines) != (deep > 0):
        raise KitError(
            "the facing it stops at needs both its edges and its depth.",
            where=where,
            do="Say, for example, facing=front.neck, depth=5 * cm.",
        )
    for line in lines:
        if not isinstance(line, PaperLine) or line.sheet is not source:
            raise KitError("the facing's edges are not of this piece.", where=where, do="Name edges of one piece.")
    before = piece
    hem = source.edge_or(hem, "hem") if less > 0 else ""
    at = source.edge_or(at, "centre") if wide > 0 else ""
    try:
        if less > 0:
            piece = lining.shortened(piece, hem, float(less))
        if lines:
            piece = lining.without_facing(piece, [source.edge_name(line) for line in lines], float(deep))
        if wide > 0:
            piece = lining.with_pleat(piece, at, float(wide))
        piece = lining.inside(piece)
    except KitError as error:
        raise error.at(where) from None
    _derived(bench, piece, "lining")
    bench.change(cut=replace(piece.cut, cloth="lining", interfacing=0))
    _grain_of(bench, piece)
    if less > 0:
        old, new = before.edge(hem).path, piece.edge(hem).path
        middle = new.at(new.length / 2)
        bench.note(less, old.at(old.nearest(middle)), middle)
    if wide > 0:
        old, new = before.edge(at).path, piece.edge(at).path
        middle = old.at(old.length / 2)
        bench.note(wide, middle, new.at(new.nearest(middle)))
    if lines:
        old, new = before.edge(source.edge_name(lines[0])).path, piece.edge("facing").path
        middle = old.at(old.length / 2)
        bench.note(deep, middle, new.at(new.nearest(middle)))


# ---- shared ---------------------------------------------------------------------------------------


def _derived(bench: OpenPiece, piece: Piece, role: PieceRole) -> None:
    own = derived(bench.piece, role, piece)
    bench.drawn.update(edge.name for edge in piece.edges)
    bench.piece = replace(
        piece,
        name=own.name,
        title=own.title,
        number=own.number,
        source=piece.name,
        guides=(),
        role=own.role,
        worn=own.worn,
        by_hand=own.by_hand,
    )


def _grain_of(bench: OpenPiece, piece: Piece) -> None:
    """The grainline of the piece it was derived from, drawn where it lies inside this one."""
    old = piece.grain
    if old is not None:
        grain(bench, PaperLine(bench, Path.line(old.start, old.end)), None, old.kind, old.one_way)


def _whole(bench: OpenPiece, source: Sequence[object], example: str) -> Piece:
    if len(source) != 1 or not isinstance(source[0], OpenPiece):
        raise KitError(
            "it is not said which piece it is traced from.",
            where=bench.where,
            do=f"Name one piece: {bench.piece_name}.{example}; for a part of it say its edges and a depth.",
        )
    piece = source[0].freeze()
    if not piece.edges:
        raise KitError(f"nothing is drawn on {piece.title} yet.", where=bench.where, do="Draw it first.")
    return piece


def _runs(bench: OpenPiece, given: Sequence[object]) -> list[Laid]:
    """The run as it was said, piece by piece."""
    groups: list[tuple[OpenPiece, list[str]]] = []
    if len(given) == 2 and isinstance(given[0], OpenPiece) and not isinstance(given[1], PaperLine):
        names = (given[1],) if isinstance(given[1], str) else tuple(cast("tuple[str, ...]", given[1]))
        groups = [(given[0], [given[0].edge_name(name) for name in names])]
    else:
        for line in given:
            if not isinstance(line, PaperLine) or not line.name or not isinstance(line.sheet, OpenPiece):
                raise KitError(
                    "a facing follows edges of pieces.",
                    where=bench.where,
                    do="Name them: front.neck, or front.wrap_edge, front.wrap_neck.",
                )
            name = line.sheet.edge_name(line)
            if groups and groups[-1][0] is line.sheet:
                groups[-1][1].append(name)
            else:
                groups.append((line.sheet, [name]))
    if not groups or not all(names for _, names in groups):
        raise KitError("it is not said which edges it faces.", where=bench.where, do="Name them: front.neck.")
    try:
        return [laid(sheet.freeze(), names) for sheet, names in groups]
    except KitError as error:
        raise error.at(bench.where) from None


def _part(
    bench: OpenPiece, runs: tuple[Laid, ...], only: object, by: float, toward: object
) -> tuple[tuple[int, float, str] | None, int]:
    """(how the joined run is cut, number of the piece the facing is drawn on)."""
    if only is None:
        if by or toward is not None:
            raise KitError(
                "a moved seam divides the facing, and it is not said which part this is.",
                where=bench.where,
                do="Say only=front for the front's facing, and only=back for the back's.",
            )
        return None, 0
    names = [run.piece.name for run in runs]
    if len(runs) != 2:
        raise KitError(
            f"a part is kept of a run over two pieces; this one lies on {len(runs)}.",
            where=bench.where,
            do="Name the edges of two pieces that meet at the seam.",
        )

    def number(piece: object, word: str) -> int:
        name = getattr(piece, "piece_name", "")
        if name not in names:
            raise KitError(
                f"{word} names {name or 'no piece'}, which the run does not cross.",
                where=bench.where,
                do=near(name, names) or f"Name {' or '.join(names)}.",
            )
        return names.index(name)

    mine = number(only, "only")
    if by and toward is None:
        raise KitError(
            f"the seam is moved {show(by)}, but not said which way.",
            where=bench.where,
            do=f"Say toward={names[0]} or toward={names[1]}.",
        )
    sign = 1.0 if toward is not None and number(toward, "toward") == 1 else -1.0
    return (0, by * sign, "before" if mine == 0 else "after"), mine


def _seams(across: Across, runs: Sequence[Laid]) -> list[tuple[str, str]]:
    """The seams a run crosses, as (edge of the one piece, edge of the next)."""
    pair = isinstance(across, tuple) and len(across) == 2 and all(isinstance(item, PaperLine) for item in across)
    items = [across] if isinstance(across, str) or pair else list(cast("Sequence[object]", across))
    found: list[tuple[str, str]] = []
    for number, item in enumerate(items):
        one, two = (item, item) if isinstance(item, str) else cast("tuple[object, object]", item)
        names = [str(getattr(edge, "name", edge)) for edge in (one, two)]
        for name, run in zip(names, runs[number : number + 2], strict=False):
            run.piece.edge(name)
        found.append((names[0], names[1]))
    return found


def _drawn_short(
    ends: tuple[str, str],
    at: str | Sequence[str] | None,
    want: float,
    runs: Sequence[Laid],
    cut: tuple[int, float, str] | None,
    where: str,
) -> tuple[float, float]:
    """mm to draw the outer edge in at its start and its end."""
    beside = (
        (runs[0].piece.fold, runs[0].head[0] if cut is None or cut[2] == "before" else ""),
        (runs[-1].piece.fold, runs[-1].tail[0] if cut is None or cut[2] == "after" else ""),
    )
    on_fold = [bool(fold) and fold in (name, end) for (fold, name), end in zip(beside, ends, strict=True)]
    names = (ends[1],) if at is None else (at,) if isinstance(at, str) else tuple(at)
    for name in names:
        if name not in ends:
            raise KitError(
                f"'{name}' is not an end of the facing.",
                where=where,
                do=near(name, ends) or f"Name {' or '.join(ends)}.",
            )
    # Without a word on it the start is kept: it lies on a fold or is caught in a hem with the garment's own edge.
    first, last = (
        want if end in names and (at is not None or not fold) else 0.0 for end, fold in zip(ends, on_fold, strict=True)
    )
    return first, last
