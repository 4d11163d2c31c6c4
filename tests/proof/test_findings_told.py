"""Every finding told in full, by making one thing of a sound garment wrong at a time: a corner moved, an allowance, a
notch, a mark, a dart or pleat changed, a piece cut otherwise, a step left out, doubled or sewn too late. What is told:
the code, the level, the step, piece, edge and half, the amount, the keys of what is said and of what to do, all values.

What stands in `findings_told` was made by the kit, and read in samples: a corner moved by 3 mm across and 5 up makes a
straight edge between moved corners no longer, and its neighbours longer by what the moves are along them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import replace
from difflib import ndiff
from functools import partial
from pathlib import Path as File
from typing import Any

import pytest

from kit.body.body import Body
from kit.diagnostic import Diagnostic
from kit.errors import KitError
from kit.geometry import Path, Point, Vector
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import CutPlan, Edge, Grain, Notch, Piece
from kit.proof import prove
from kit.reference import sampler
from kit.reference.verb_help import verbs_of
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.units import cm, mm
from tests.exact import exact, refusal
from tests.sewing import garments
from tests.sewing.telling import told_objection
from tests.told import Kept


def line_of(found: Diagnostic) -> str:
    where = [each for each in (found.step, found.piece, found.edge, found.side, found.parameter) if each]
    return f"{'.'.join(where) or '-'}: {told_objection(found)}"


def told(pattern: Pattern) -> list[str]:
    return [line_of(found) for found in prove(pattern)]


def _moved(piece: Piece, number: int, by: Vector) -> Piece:
    """The corner after the edge of that number moved, the straight edges beside it redrawn."""
    edges = list(piece.edges)
    after = (number + 1) % len(edges)
    corner = edges[number].path.end + by
    edges[number] = replace(edges[number], path=Path.line(edges[number].path.start, corner))
    edges[after] = replace(edges[after], path=Path.line(corner, edges[after].path.end))
    return replace(piece, edges=tuple(edges))


def changes(piece: Piece) -> Iterator[tuple[str, Piece]]:
    """One thing of a piece otherwise."""
    for number, edge in enumerate(piece.edges):
        straight = edge.path.is_straight and piece.edges[(number + 1) % len(piece.edges)].path.is_straight
        if straight and not any(dart.edge == edge.name for dart in piece.darts):
            yield f"the corner after {edge.name} 3 across, 5 up", _moved(piece, number, Vector(3.0, 5.0))
        if number < 2:
            yield (
                f"{edge.name} 3 mm less to sew with",
                _edge(piece, edge, allowance=max((edge.allowance or 0) - 3, 0.0)),
            )
        if number == 1:
            yield f"{edge.name} without allowance", _edge(piece, edge, allowance=None)
            yield f"{edge.name} with cloth to fit", _edge(piece, edge, extra=20.0)
            yield f"{edge.name} notched at 30", replace(piece, notches=(*piece.notches, Notch(edge.name, 30.0)))
            yield f"{edge.name} notched beyond", replace(piece, notches=(Notch(edge.name, 5000.0),))
            yield (
                f"{edge.name} stops 2 mm short",
                _edge(piece, edge, path=edge.path.between(0.0, edge.path.length - 2.0)),
            )
    for number, mark in enumerate(piece.marks):
        others = piece.marks[:number], piece.marks[number + 1 :]
        if mark.edge:
            moved = replace(mark, start=mark.start + 12.0, end=mark.end + 12.0)
            yield f"{mark.name} 12 mm further on", replace(piece, marks=(*others[0], moved, *others[1]))
            beyond = replace(mark, start=4000.0, end=5000.0)
            yield f"{mark.name} beyond its edge", replace(piece, marks=(*others[0], beyond, *others[1]))
        elif mark.path is not None:
            by = Vector(7.0, -9.0)
            path = Path.line(mark.path.start + by, mark.path.end + by) if mark.path.is_straight else None
            path = path or mark.path.between(5.0, mark.path.length)
            yield f"{mark.name} elsewhere", replace(piece, marks=(*others[0], replace(mark, path=path), *others[1]))
        elif mark.point is not None:
            moved = replace(mark, point=Point(mark.point.x + 900, mark.point.y))
            yield f"{mark.name} off the piece", replace(piece, marks=(*others[0], moved, *others[1]))
    for dart in piece.darts:
        yield f"{dart.name} 4 mm wider", replace(piece, darts=(replace(dart, end=dart.end + 4.0),))
        yield f"{dart.name} its point aside", replace(piece, darts=(replace(dart, apex=dart.apex + Vector(30.0, 5.0)),))
        yield f"{dart.name} pressed the other way", replace(piece, darts=(replace(dart, pressed="end"),))
        yield f"{dart.name} beyond its edge", replace(piece, darts=(replace(dart, end=4000.0),))
        yield f"{dart.name} stitched far short", replace(piece, darts=(replace(dart, short=80.0),))
    for pleat in piece.pleats:
        one, two = pleat.lines
        yield f"{pleat.name} 4 mm wider", replace(piece, pleats=(replace(pleat, end=pleat.end + 4.0),))
        longer = (one, Path.line(two.start, two.end + Vector(0.0, -6.0)))
        yield f"{pleat.name} its lines unlike", replace(piece, pleats=(replace(pleat, lines=longer),))
        yield f"{pleat.name} held at both ends", replace(piece, pleats=(replace(pleat, held="both"),))
        yield f"{pleat.name} laid the other way", replace(piece, pleats=(replace(pleat, laid="start"),))
    cut = piece.cut
    yield "cut once more", replace(piece, cut=replace(cut, count=cut.count + 1))
    yield "cut single", replace(piece, cut=CutPlan())
    yield "one more of interfacing", replace(piece, cut=replace(cut, interfacing=cut.interfacing + 1))
    box = piece.outline.bounds()
    middle = Point((box[0] + box[2]) / 2, (box[1] + box[3]) / 2)
    yield "a grainline", replace(piece, grain=Grain(middle, middle + Vector(0.0, 10.0)))
    yield "a grainline off it", replace(piece, grain=Grain(middle, middle + Vector(0.0, 3000.0)))


def _edge(piece: Piece, edge: Edge, **more: Any) -> Piece:
    return piece.with_edges(**{edge.name: replace(edge, **more)})


def _otherwise(sound: list[str], write: Callable[[], Pattern]) -> str:
    try:
        found = told(write())
    except KitError as error:
        return f"refused: {refusal(error)}"
    return "\n".join(line for line in ndiff(sound, found) if line[0] in "+-") or "the same"


GARMENTS = {name.lower(): getattr(garments, name) for name in ("SKIRT", "TOTE")}


@pytest.mark.parametrize("name", GARMENTS)
def test_what_is_found_when_one_thing_is_wrong(name: str) -> None:
    garment = GARMENTS[name]
    sound = told(garment.pattern())
    found = {"as it is": "\n".join(sound)}
    for piece in garment.pieces:
        for title, changed in changes(piece):
            write = partial(garment.pattern, **{piece.name: changed})
            found[f"{piece.name}: {title}"] = _otherwise(sound, write)
    steps = [title for title, _ in garment.steps]
    for number, title in enumerate(steps):
        found[f"without {title}"] = _otherwise(sound, partial(garment.without, title))
        found[f"{title} twice"] = _otherwise(sound, partial(garment.twice, title))
        if number + 1 < len(steps):
            found[f"{title} too late"] = _otherwise(sound, partial(garment.swapped, title, steps[-1]))
    Kept(File(__file__).with_name("findings_told") / f"{name}.txt").holds(found)


# ---- pieces with darts, pleats, slits -----------------------------------------------------------------------------

FOLDED = ("skirt_front", "panel", "dress_back", "sleeve", "front", "back_bag")
SEWN = ("dart", "pleat", "double_dart", "bound_placket")


def _sampler(**changed: Piece) -> Pattern:
    pieces = tuple(changed.get(piece.name, piece) for piece in sampler.PIECES)
    make = Make(pieces, sampler.STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in pieces} | {"cm": cm, "mm": mm, "make": make}
    names |= {strip.name: StripHandle(strip) for strip in sampler.STRIPS}
    for verb in SEWN:
        exec("\n".join((*sampler.BEFORE.get(verb, ()), verbs_of("make")[verb].example)), names)
    record = SewRecord("step", "Step", "", "", make.operations)
    return Pattern(LessonInfo("T", "t"), Body("W4", ()), (), pieces, sampler.STRIPS, (), (record,))


@pytest.mark.parametrize("name", FOLDED)
def test_what_is_found_of_folded_pieces(name: str) -> None:
    sound = told(_sampler())
    piece = next(piece for piece in sampler.PIECES if piece.name == name)
    found = {}
    for title, changed in changes(piece):
        found[title] = _otherwise(sound, partial(_sampler, **{name: changed}))
    found["as it is"] = "\n".join(line for line in sound if f"{name}." in line or f"{name}:" in line) or exact(())
    Kept(File(__file__).with_name("findings_told") / f"of_{name}.txt").holds(found)
