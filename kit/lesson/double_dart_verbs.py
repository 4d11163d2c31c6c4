"""Darts with two points, drawn inside a piece, and how wide a piece is where they are."""

from __future__ import annotations

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.lesson.verb import verb
from kit.piece.double_dart import DoubleDart, around, double_dart
from kit.piece.double_dart import sewn_width as width_sewn
from kit.piece.piece import Mark, Piece
from kit.units import Length, Size

CLEAR = 5.0
"""mm of cloth that must lie between the stitch line and a point of a dart that runs out inside the piece (common
practice, no source)."""


@verb
def add_double_dart(
    bench: OpenPiece,
    name: str,
    *,
    top: PaperPoint,
    bottom: PaperPoint,
    intake: Size,
    at: PaperPoint | None = None,
    said: str = "",
) -> None:
    """A dart with two points inside the piece, from `top` to `bottom`. It takes up `intake` at its widest place: midway
    or `at` a point between them, such as the place on the waistline. `make.double_dart(...)` sews it.

    A dart of the block that is to run on below the waist is read first (`dart = front.waist_dart` has `tip`, `middle`
    and `intake`), taken away with `remove_dart`, and drawn so once the piece reaches lower.

    Example::

        waist = front.centre.at(38 * cm).out(9 * cm)
        front.add_double_dart("waist_dart", top=waist.up(14 * cm), bottom=waist.down(2 * cm),
                              at=waist, intake=2 * cm)
    """
    if any(name == mark.name for mark in bench.piece.marks) or any(name == dart.name for dart in bench.piece.darts):
        raise KitError(f"'{name}' is already marked.", where=bench.where, do="Give it another name.")
    wide = distance(intake, f"{name}, intake")
    if not wide > 0:
        raise KitError(
            message("refusal.dart_nothing"), where=bench.where, do=message("refusal.more_do", size=measured(25.0))
        )
    middle = at.point if at is not None else top.point.mid(bottom.point)
    line = bottom.point - top.point
    between = (middle - top.point).dot(line)
    if line.length < 1.0 or not 0 < between < line.dot(line):
        raise KitError(
            message("refusal.double_dart_order"), where=bench.where, do=message("refusal.double_dart_order_do")
        )
    aside = line.unit().left() * (float(wide) / 2)
    path = around(top.point, middle + aside, bottom.point, middle - aside)
    mark = Mark(name, "dart", path=path, said=said)
    dart = double_dart(mark)
    assert dart is not None
    _inside(bench.freeze(), dart)
    bench.change(marks=(*bench.piece.marks, mark))
    bench.note(wide if wide.name else Length(float(wide), f"{name}_intake"), dart.one, dart.other)


def _inside(piece: Piece, dart: DoubleDart) -> None:
    """Raises `KitError` where the dart reaches an edge: there it opens, and is a dart of that edge."""
    for corner in (dart.top, dart.one, dart.bottom, dart.other):
        edge = min(piece.edges, key=lambda each: each.path.distance_to(corner))
        gap = edge.path.distance_to(corner)
        if not piece.outline.contains(corner) or gap < CLEAR:
            raise KitError(
                message("refusal.double_dart_edge", dart=dart.label, edge=named_edge(edge)),
                where=piece.title,
                do=message("refusal.double_dart_edge_do", least=measured(CLEAR, "allowance")),
            )


@verb
def sewn_width(bench: OpenPiece, line: PaperLine) -> Length:
    """How wide the piece is along a line across it, such as the waistline, with the darts that it crosses sewn. A level
    that a moved dart has parted (`bust_line`, `bust_line_2`) is measured whole.

    Example::

        waist = front.centre.at(38 * cm).to(front.side.at(20 * cm))
        round_waist = front.sewn_width(waist) * 4
    """
    piece = bench.freeze()
    parts = [path for name, path in piece.guides if _is_part(name, line.name) and path != line.path]
    return Length(width_sewn(piece, line.path) + sum(width_sewn(piece, path) for path in parts))


def _is_part(name: str, of: str) -> bool:
    """Whether a line is named as another part of the line `of`: "bust_line_2" of "bust_line"."""
    return bool(of) and name.startswith(f"{of}_") and name.removeprefix(f"{of}_").isdecimal()
