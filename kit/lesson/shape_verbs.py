"""Moving edges and spreading paper as a teacher writes it in a step: `front.lower_neckline(2 * cm, wider=1 * cm)`.

The moves are pure functions in kit/lesson/shaping.py.
"""

from __future__ import annotations

from kit.lesson import shaping
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import At, PaperLine
from kit.lesson.verb import verb
from kit.units import Size


@verb
def spread(
    bench: OpenPiece,
    first: tuple[str | PaperLine, At],
    second: tuple[str | PaperLine, At],
    amount: Size,
    *,
    hinged: bool = False,
) -> None:
    """Slash from a place on one edge to a place on another, given as (edge, how far along), and spread by
    `amount`: parallel, or hinged at the second place.

    Example::

        front.spread(("hip", 10 * cm), ("shoulder", 5 * cm), 4 * cm, hinged=True)
    """
    wide = distance(amount, "spread")
    one, two = bench.edge_name(first[0]), bench.edge_name(second[0])
    a, b = bench.place_on(one, first[1]), bench.place_on(two, second[1])
    piece = bench.freeze()
    start, end = piece.edge(one).path.at(a), piece.edge(two).path.at(b)
    bench.lay(shaping.spread(piece, (one, a), (two, b), float(wide), hinged=hinged))
    bench.note(wide, start, start + (end - start).unit().left() * float(wide))


@verb
def add_ease(bench: OpenPiece, amount: Size, edge: str | PaperLine = "") -> None:
    """Add ease to this quarter: the side (or the `edge` named) moves out by `amount`.

    Example::

        front.add_ease(1 * cm)
        back.add_ease(1 * cm)
    """
    name, by = bench.edge_or(edge, "side"), distance(amount, "ease")
    middle = bench.path(name).at(bench.path(name).length / 2)
    bench.lay(shaping.add_ease(bench.freeze(), float(by), name))
    path = bench.path(name)
    bench.note(by, middle, path.at(path.length / 2))


@verb
def extend_hem(bench: OpenPiece, edge: str | PaperLine, by: Size) -> None:
    """Move a hem outward, parallel; the edges beside it run on to meet it.

    Example::

        front.extend_hem("hip", 3 * cm)
    """
    name, size = bench.edge_name(edge), distance(by, "hem")
    middle = bench.path(name).at(bench.path(name).length / 2)
    bench.lay(shaping.extend_hem(bench.freeze(), name, float(size)))
    path = bench.path(name)
    bench.note(size, middle, path.at(path.nearest(middle)))


@verb
def lower_neckline(bench: OpenPiece, by: Size, *, wider: Size = 0, edge: str | PaperLine = "") -> None:
    """Lower the neckline (or the `edge` named) at the centre, and make it `wider` along the shoulder.

    Example::

        front.lower_neckline(2 * cm, wider=1 * cm)
    """
    name, down, out = bench.edge_or(edge, "neck"), distance(by, "neckline"), distance(wider, "neckline, wider")
    old = bench.path(name)
    bench.lay(shaping.lower_neckline(bench.freeze(), float(down), wider=float(out), edge=name))
    new = bench.path(name)
    bench.note(down, old.start, new.start)
    bench.note(out, old.end, new.end)
