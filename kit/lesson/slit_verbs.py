"""Slits drawn on a piece: where it is cut open for a placket."""

from __future__ import annotations

from dataclasses import replace

from kit.diagnostic import measured, message, named_edge
from kit.errors import KitError
from kit.geometry import Path
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import At, PaperLine
from kit.lesson.verb import verb
from kit.piece.piece import Mark
from kit.piece.slit import CLEAR, room, slit_of
from kit.units import Size


@verb
def slit(bench: OpenPiece, name: str, edge: str | PaperLine, *, at: At, size: Size, said: str = "") -> None:
    """A slit that is cut into the piece square to an edge, `at` this far along it and `size` long, such as that of a
    sleeve. It is cut when its placket is sewn: `make.bound_placket(...)`.

    Example::

        front.slit("neck_slit", "shoulder", at=6 * cm, size=9 * cm)
    """
    if any(name == mark.name for mark in bench.piece.marks):
        raise KitError(f"'{name}' is already marked.", where=bench.where, do="Give it another name.")
    edge = bench.edge_name(edge)
    path, where = bench.path(edge), bench.place_on(edge, at)
    long = distance(size, f"{name}, size")
    if not long > 0:
        raise KitError(message("refusal.zero"), where=bench.where, do=message("refusal.zero_do"))
    piece = bench.freeze()
    inward = path.normal_at(where)
    if not piece.outline.contains(path.at(where) + inward * 1.0):
        inward = inward * -1.0
    mark = Mark(name, "slit", path=Path.line(path.at(where), path.at(where) + inward * float(long)), said=said)
    found = slit_of(replace(piece, marks=(mark,)), mark)
    if found is None or room(piece, found) < CLEAR:
        raise KitError(
            message(
                "refusal.slit_long", slit=mark.label, length=measured(float(long)), edge=named_edge(piece.edge(edge))
            ),
            where=piece.title,
            do=message("refusal.slit_long_do", least=measured(CLEAR, "allowance")),
        )
    bench.change(marks=(*bench.piece.marks, mark))
    bench.note(long, found.line.start, found.line.end)
