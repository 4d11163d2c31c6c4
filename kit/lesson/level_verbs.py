"""Where a piece may be made longer or shorter, as a teacher says it in a step: `front.lengthen_line(point)`."""

from __future__ import annotations

from kit.errors import KitError
from kit.lesson.lengthen_lines import author_lines
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import PaperPoint
from kit.lesson.verb import verb


@verb
def lengthen_line(bench: OpenPiece, *through: PaperPoint) -> None:
    """Say where this piece may be lengthened or shortened: on lines square to the grain through these points, instead
    of those the kit places between the levels of the body. Without a point it has none.

    Example::

        front.lengthen_line(front.side_waist.up(8 * cm), front.side_waist.down(8 * cm))
        back.lengthen_line()
    """
    for point in through:
        if not isinstance(point, PaperPoint):
            raise KitError(
                f"{point!r} is not a point.", where=bench.where, do="Name a point: front.side_waist.up(8 * cm)."
            )
    bench.change(lengthen=author_lines(bench.freeze(), [point.point for point in through]))
