"""The dart moves as a teacher writes them in a step: `front.move_dart("bust_dart", to="shoulder", at=6 * cm)`.

Each verb checks what is given, calls a move (kit/lesson/moves.py) and lays the result on the bench. Distances are
lengths with a unit; a place on an edge is a length along it or a point marked near it.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Literal

from kit.errors import KitError, near
from kit.lesson import moves
from kit.lesson.dart_out import all_darts, dart_into, dart_out
from kit.lesson.headings import distance
from kit.lesson.open_piece import OpenPiece
from kit.lesson.pencil import At, PaperLine, PaperPoint
from kit.lesson.verb import verb
from kit.piece.dart import dart_of, meant
from kit.piece.dart import intake as taken
from kit.piece.dart import sewn_length as length_sewn
from kit.piece.darts_and_pleats import Dart, Pressed
from kit.units import Length, Size

_PRESSED = ("centre", "side", "up", "down", "start", "end")


@verb
def add_dart(
    bench: OpenPiece,
    name: str,
    edge: str | PaperLine,
    *,
    at: At,
    intake: Size,
    apex: PaperPoint,
    pressed: str = "centre",
) -> None:
    """A dart on `edge`, its middle `at` this far along (or at a point), taking up `intake`, pointing to `apex`
    and pressed to the "centre", "side", "up" or "down". Its legs are equal and its cap is drawn.

    Example::

        front.add_dart("neck_dart", "neck", at=5 * cm, intake=1 * cm, apex=front.bust_point)
    """
    name_of = bench.edge_name(edge)
    wide = distance(intake, f"{name}, intake")
    way = pressed_way(bench, name_of, pressed)
    piece = moves.add_dart(
        bench.freeze(),
        name,
        name_of,
        at=bench.place_on(name_of, at),
        intake=float(wide),
        apex=apex.point,
        pressed=way,
    )
    bench.lay(moves.true_dart(piece, name))
    _note_dart(bench, name, wide)


@verb
def lay_dart(bench: OpenPiece, dart: Dart) -> None:
    """A dart on an edge that is already drawn through its mouth; its cap is drawn."""
    piece = bench.freeze()
    bench.lay(moves.true_dart(replace(piece, darts=(*piece.darts, dart)), dart.name))
    _note_dart(bench, dart.name)


@verb
def spare_darts(bench: OpenPiece, *names: str) -> None:
    """Note darts that other figures have and this one does not need: steps that shape them and operations that sew them
    pass over them.

    Example::

        front.spare_darts("waist_dart_2")
    """
    piece = bench.freeze()
    bench.lay(replace(piece, spared=tuple(dict.fromkeys((*piece.spared, *names)))))


def _is_spared(bench: OpenPiece, name: str) -> bool:
    """Whether this figure needs no dart of that name."""
    return name in bench.piece.spared and all(dart.name != name for dart in bench.piece.darts)


@verb
def move_dart(
    bench: OpenPiece,
    name: str,
    *,
    to: str | PaperLine,
    at: At,
    way: Literal["pivot", "slash"] = "pivot",
    pressed: str = "",
    true: bool = True,
) -> None:
    """Move a dart to any edge by pivoting about its apex, or by slashing to the apex and closing the old
    dart; both give the same. The new cap is drawn unless true=False.

    Example::

        front.move_dart("bust_dart", to="shoulder", at=6 * cm, pressed="centre")
    """
    if way not in ("pivot", "slash"):
        raise KitError(f"a dart is moved by 'pivot' or 'slash', not '{way}'.", do=near(way, ("pivot", "slash")))
    edge = bench.edge_name(to)
    if _is_spared(bench, name):
        return
    name = meant(bench.piece, name)
    press = pressed_way(bench, edge, pressed) if pressed else None
    piece = moves.move_dart(bench.freeze(), name, edge, bench.place_on(edge, at), way=way, pressed=press)
    bench.lay(moves.true_dart(piece, name) if true else piece)
    _note_dart(bench, name)


@verb
def split_dart(
    bench: OpenPiece, name: str, *, apart: Size, share: float = 0.5, new_name: str = "", true: bool = True
) -> None:
    """Take a share of a dart out as a second one on the same edge, `apart` beyond it.

    Example::

        front.split_dart("waist_dart", apart=4 * cm, share=0.5)
    """
    second = new_name or f"{name}_2"
    if _is_spared(bench, name):
        return spare_darts(bench, second)
    name = meant(bench.piece, name)
    gap = distance(apart, f"{name}, apart")
    piece = moves.split_dart(bench.freeze(), name, apart=float(gap), share=share, new_name=second)
    if true:
        piece = moves.true_dart(moves.true_dart(piece, name), second)
    bench.lay(piece)
    _note_dart(bench, name)
    _note_dart(bench, second)


@verb
def shorten_dart(bench: OpenPiece, name: str, by: Size) -> None:
    """Stop the stitching this far before the apex; the dart still pivots about the apex.

    Example::

        front.shorten_dart("bust_dart", 2 * cm)
    """
    if _is_spared(bench, name):
        return
    name = meant(bench.piece, name)
    bench.lay(moves.shorten_dart(bench.freeze(), name, float(distance(by, f"{name}, shortened by"))))


@verb
def true_dart(bench: OpenPiece, name: str, pressed: str = "") -> None:
    """Fold the dart shut and draw its cap, so that the edge runs true.

    Example::

        front.true_dart("waist_dart", pressed="centre")
    """
    if _is_spared(bench, name):
        return
    name = meant(bench.piece, name)
    dart = dart_of(bench.piece, name)
    bench.lay(moves.true_dart(bench.freeze(), name, pressed_way(bench, dart.edge, pressed) if pressed else None))


@verb
def dart_to_gathers(bench: OpenPiece, name: str, over: Size | None = None) -> None:
    """Leave a dart unsewn and gather its intake into the edge, between two notches `over` this far apart.

    Example::

        front.dart_to_gathers("waist_dart", over=12 * cm)
    """
    _fullness(bench, name, "gathers", over)


@verb
def dart_to_ease(bench: OpenPiece, name: str, over: Size | None = None) -> None:
    """Leave a dart unsewn and ease its intake into the edge, between two notches `over` this far apart.

    Example::

        back.dart_to_ease("shoulder_dart", over=8 * cm)
    """
    _fullness(bench, name, "ease", over)


@verb
def remove_dart(bench: OpenPiece, name: str = "", *, into: str | PaperLine | None = None) -> None:
    """Take a dart away without sewing it, or all of the piece where none is named, however many this figure needs.

    Its width stays in its edge, for elastic or a casing to draw in, or is closed `into` the edge beside it, such as
    "side": taken off there, running out as far down as the dart was deep. True that seam with its partner afterwards.

    Example::

        front.remove_dart("waist_dart", into="side")
    """
    if name and _is_spared(bench, name):
        return
    beside = bench.edge_name(into) if into is not None else ""
    names = [meant(bench.piece, name)] if name else all_darts(bench.freeze(), beside)
    for each in names:
        before = bench.freeze()
        dart = dart_of(before, each)
        edge = before.edge(dart.edge).path
        wide = Length(taken(before, dart), f"{each}_intake")
        bench.lay(dart_into(before, each, beside) if beside else dart_out(before, each))
        now = bench.freeze().edge(dart.edge).path
        if not beside:
            bench.note(wide, edge.at(dart.start), edge.at(dart.end))
        elif now.end.distance(edge.end) > 0:
            bench.note(wide, now.end, edge.end)
        else:
            bench.note(wide, edge.start, now.start)


def _fullness(bench: OpenPiece, name: str, how: Literal["gathers", "ease"], over: Size | None) -> None:
    if _is_spared(bench, name):
        return
    name = meant(bench.piece, name)
    wide = None if over is None else float(distance(over, f"{name}, over"))
    bench.lay(moves.dart_to_fullness(bench.freeze(), name, how, wide))


@verb
def sewn_length(bench: OpenPiece, edge: str | PaperLine) -> Length:
    """An edge's length with its darts sewn.

    Example::

        round_waist = (front.sewn_length("waist") + back.sewn_length("waist")) * 2
    """
    return Length(length_sewn(bench.freeze(), bench.edge_name(edge)))


def pressed_way(bench: OpenPiece, edge: str, word: str) -> Pressed:
    """The end of an edge that a dart or pleat on it is pressed to, said by a direction of the paper."""
    if word not in _PRESSED:
        raise KitError(f"a dart is not pressed '{word}'.", do=near(word, _PRESSED))
    path = bench.path(edge)
    if word in ("start", "end"):
        return "start" if word == "start" else "end"
    if word in ("centre", "side"):
        nearer = abs(path.start.x) < abs(path.end.x)
        return "start" if nearer == (word == "centre") else "end"
    higher = path.start.y > path.end.y
    return "start" if higher == (word == "up") else "end"


def _note_dart(bench: OpenPiece, name: str, given: Length | None = None) -> None:
    piece = bench.freeze()
    dart = dart_of(piece, name)
    path = piece.edge(dart.edge).path
    value = given if given is not None and given.name else Length(taken(piece, dart), f"{name}_intake")
    bench.note(value, path.at(dart.start), path.at(dart.end))
