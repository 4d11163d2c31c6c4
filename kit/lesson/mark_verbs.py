"""What a step marks on a piece: notches, openings, lines and points."""

from __future__ import annotations

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Path
from kit.lesson.headings import distance
from kit.lesson.match_verbs import level
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import At, PaperLine, PaperPoint
from kit.lesson.verb import verb
from kit.piece.piece import Mark, Notch
from kit.units import Length, Size


@verb
def notch(bench: OpenPiece, edge: str | PaperLine, at: Size, *, double: bool = False, name: str = "") -> None:
    """A notch this far along an edge: single, or double for the back (common practice, no source).

    Example::

        front.notch("armhole", 8 * cm)
        back.notch("armhole", 8 * cm, double=True)
    """
    edge = bench.edge_name(edge)
    path = bench.path(edge)
    size = distance(at, f"{bench.where}, notch on {edge}")
    if size > path.length + 1e-6:
        raise KitError(
            message("refusal.notch_past", at=measured(size), edge=named_edge(edge), length=measured(path.length)),
            where=bench.where,
            do=message("refusal.nearer_do"),
        )
    place = min(float(size), path.length)
    rest = size.rest  # from the other end of the edge
    if rest is not None and abs(float(size) + float(rest) - path.length) < 1e-6:
        _measured(bench, rest, path, place, path.length)
    else:
        _measured(bench, size, path, 0.0, place)
    cut = Notch(edge, place, "double" if double else "single", name)
    bench.change(notches=(*bench.piece.notches, cut))


def _measured(bench: OpenPiece, size: Length, path: Path, low: float, high: float) -> None:
    """A named measure along an edge, dimensioned from the end it is measured from."""
    if high - low > 1e-6:
        way = path.between(low, high)
        bench.note(size, way.start, way.end, None if way.is_straight else way)


@verb
def leave_open(
    bench: OpenPiece, name: str, edge: str | PaperLine, *, at: At | PaperLine, size: Size, said: str = ""
) -> None:
    """An opening left in a seam: `size` long, its first end `at` this far along the edge; or level with a point,
    or where a line such as the wrap edge, folded over about the centre, meets the edge.

    Example::

        front.leave_open("zip_opening", "side", at=2 * cm, size=15 * cm)
    """
    edge = bench.edge_name(edge)
    path = bench.path(edge)
    if isinstance(at, PaperLine | PaperPoint):
        at = level(bench, edge, at)
    start = distance(at, f"{bench.where}, {name}")
    long = distance(size, f"{bench.where}, {name}")
    if start + long > path.length + 1e-6:
        raise KitError(
            message(
                "refusal.opening_off",
                start=measured(start),
                end=measured(start + long),
                edge=named_edge(bench.piece.edge(edge)),
                length=measured(path.length),
            ),
            where=bench.where,
            do=message("refusal.opening_off_do"),
        )
    mark = Mark(name, "opening", edge=edge, start=float(start), end=float(start + long), said=said)
    bench.change(marks=(*bench.piece.marks, mark))
    bench.note(long, path.at(float(start)), path.at(float(start + long)))


@verb
def mark_line(bench: OpenPiece, name: str, line: PaperLine, said: str = "") -> None:
    """A line drawn inside the piece, such as the waistline.

    Example::

        front.mark_line("bust", front.bust_line, said="bust line")
    """
    mark = Mark(name, "line", path=line.path, said=said)
    bench.line_named(name, line.path)
    bench.change(marks=(*bench.piece.marks, mark))


@verb
def mark_point(bench: OpenPiece, name: str, point: PaperPoint, said: str = "") -> None:
    """A point marked inside the piece or at its edge, such as where a tie is set.

    Example::

        front.mark_point("tie_place", front.side.share(0.5), said="tie")
    """
    mark = Mark(name, "point", point=point.point, said=said)
    bench.point_named(name, point.point)
    bench.change(marks=(*bench.piece.marks, mark))
