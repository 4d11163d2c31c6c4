"""What a try-on says, shows and objects to, told for every way a line can move: all along, to nothing, unequal,
crossing, a belly, in and out; before and after seams, basting, darts and trims; marks, folds, openings, strips and
pieces of one draft alone.

Front and back are alike, 100 mm wide and 200 high in the first draft. What stands in `try_ons_told` was made by the
kit; every length in it is a difference of two numbers below, square to the line.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import fields, replace
from pathlib import Path as File
from typing import Any

import pytest

from kit.geometry import Cubic, Path, Point, Vector
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import CutPlan, Mark, Piece, Strip
from kit.sewing.operations.try_ons import TryOn
from kit.sewing.refit import Turn
from kit.sewing.refitting import refit
from kit.sewing.run import Run
from kit.units import cm, mm
from tests.sewing.garments import polygon
from tests.sewing.table import sewn
from tests.sewing.telling import told_objection, told_operation
from tests.told import Kept, told, usual

Write = Callable[..., None]


def pieces(
    top: float = 100.0, low: float = 100.0, bow: float = 0.0, side: float = 20.0, **more: Any
) -> tuple[Piece, ...]:
    found = []
    for name in ("front", "back"):
        piece = polygon(
            name,
            [(0, 0), (low, 0), (top, 200), (0, 200)],
            {"hem": 30, "side": side, "top": 10, "centre": 15},
            cut=CutPlan(2, mirrored=True),
            **more,
        )
        if bow:
            a, b = Point(low, 0), Point(top, 200)
            out = Vector(bow * 4 / 3, 0.0)
            path = Path((Cubic(a, a.lerp(b, 1 / 3) + out, a.lerp(b, 2 / 3) + out, b),))
            piece = piece.with_edges(side=replace(piece.edge("side"), path=path))
        found.append(piece)
    return tuple(found)


def _seam(make: Any, front: Any, back: Any, **_: Any) -> None:
    make.plain_seam(front.side, back.side, allowance=2 * cm)


def _hem(make: Any, front: Any, back: Any, **_: Any) -> None:
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)


def _baste(make: Any, front: Any, back: Any, **_: Any) -> None:
    make.baste(front.side, back.side)


def _trim(make: Any, front: Any, back: Any, **_: Any) -> None:
    make.trim(front.side, back.side, to=5 * mm)


def _french(make: Any, front: Any, back: Any, **_: Any) -> None:
    make.french_seam(front.side, back.side, first=12 * mm, second=8 * mm)


def _darts(make: Any, front: Any, **_: Any) -> None:
    make.dart(front)


def _with_opening(make: Any, front: Any, back: Any, **_: Any) -> None:
    make.plain_seam(front.side, back.side, allowance=2 * cm, opening=front.slit)


def _up_to_the_slit(make: Any, front: Any, **_: Any) -> None:
    make.topstitch(front.side.before(front.slit), distance=6 * mm)


def _slit(at: float) -> dict[str, Any]:
    return {"marks": (Mark("slit", "opening", edge="side", start=at, end=at + 50, said="side slit"),)}


def _spot(x: float) -> dict[str, Any]:
    return {
        "marks": (Mark("tie", "point", point=Point(x, 90), said="tie place"), Mark("pin", "drill", point=Point(x, 50)))
    }


def _dart(x: float) -> dict[str, Any]:
    return {"darts": (Dart("dart", "top", Point(x, 140), 40, 60, said="waist dart"),)}


def _strip(long: float, wide: float, name: str = "tie") -> Strip:
    return Strip(name, name.capitalize(), long, wide, 1)


def _renamed(found: tuple[Piece, ...]) -> tuple[Piece, ...]:
    front, back = found
    yoke = replace(back, name="yoke", title="Yoke")
    return front, yoke


def _other_edge(found: tuple[Piece, ...]) -> tuple[Piece, ...]:
    front, back = found
    edges = tuple(replace(edge, name="slope", role="") if edge.name == "top" else edge for edge in front.edges)
    return replace(front, edges=edges), back


Draft = tuple[tuple[Piece, ...], tuple[Piece, ...], tuple[Write, ...], tuple[tuple[Strip, ...], tuple[Strip, ...]]]
NONE: tuple[tuple[Strip, ...], tuple[Strip, ...]] = ((), ())
CASES: dict[str, Draft] = {
    "in all along, nothing sewn": (pieces(), pieces(85, 85), (), NONE),
    "in all along, sewn": (pieces(), pieces(85, 85), (_seam, _hem), NONE),
    "out all along, sewn": (pieces(), pieces(110, 110), (_seam,), NONE),
    "out too far": (pieces(), pieces(130, 130), (_seam,), NONE),
    "out too far at the hem": (pieces(), pieces(100, 128), (_seam,), NONE),
    "in at the top, to nothing": (pieces(), pieces(80, 100), (_seam,), NONE),
    "out at the hem, to nothing": (pieces(), pieces(100, 112), (_baste,), NONE),
    "in, more at the hem": (pieces(), pieces(92, 80), (_seam,), NONE),
    "out, more at the top": (pieces(), pieces(114, 106), (_french,), NONE),
    "crossing, in above": (pieces(), pieces(90, 108), (_seam,), NONE),
    "crossing, out above": (pieces(), pieces(108, 90), (_seam,), NONE),
    "a belly out": (pieces(), pieces(bow=12), (_seam,), NONE),
    "a belly in": (pieces(), pieces(bow=-12), (_seam,), NONE),
    "a belly and one end": (pieces(bow=12), pieces(90, 100), (_seam,), NONE),
    "trimmed, out": (pieces(), pieces(104, 104), (_seam, _trim), NONE),
    "trimmed, in": (pieces(), pieces(92, 92), (_seam, _trim), NONE),
    "shut in, out": (pieces(), pieces(104, 104), (_french,), NONE),
    "narrow allowances": (pieces(side=8), pieces(105, 105, side=8), (), NONE),
    "a narrower place": (pieces(side=12), pieces(100, 108, side=12), (), NONE),
    "no allowance at the side": (pieces(side=0), pieces(90, 90, side=0), (), NONE),
    "an opening that moved": (pieces(**_slit(60)), pieces(85, 85, **_slit(80)), (_with_opening,), NONE),
    "a row that ended at a mark": (pieces(**_slit(60)), pieces(**_slit(80)), (_up_to_the_slit,), NONE),
    "marks that moved": (pieces(**_spot(50)), pieces(**_spot(60)), (), NONE),
    "a dart that moved, sewn": (pieces(**_dart(50)), pieces(**_dart(58)), (_darts,), NONE),
    "a dart that moved, not sewn": (pieces(**_dart(50)), pieces(**_dart(58)), (), NONE),
    "a piece of another name": (pieces(), _renamed(pieces()), (), NONE),
    "an edge of another name": (pieces(), _other_edge(pieces(95)), (), NONE),
    "strips longer and wider": (pieces(), pieces(), (), ((_strip(500, 40),), (_strip(520, 46),))),
    "strips shorter and narrower": (pieces(), pieces(), (), ((_strip(500, 40),), (_strip(480, 36),))),
    "nothing at all": (pieces(), pieces(), (_seam,), NONE),
}
TURNS = (
    Turn("width", "half width", "length", 100.0, 85.0),
    Turn("rise", "rise", "share", 0.1, 0.15),
    Turn("loops", "loops", "count", 2, 3),
)


def _told(name: str) -> Iterator[str]:
    was, now, before, strips = CASES[name]
    old = sewn(was, *before, strips=strips[0])
    new = sewn(now, *before, strips=strips[1])
    found = refit(old.pattern, new.pattern, (len(before), 0), TURNS)
    for each in fields(found):
        value = getattr(found, each.name)
        if each.name not in ("turns", "pieces", "fresh", "gone") and not usual(each, value):
            yield f"{each.name} {told(value)}"
    yield f"nothing {found.nothing}, {len(list(found.edges()))} edges; side closed by {found.seam_of('front', 'side')}"
    made = TryOn(note="It gapes.", asks=(("width", None, 1),), stage="changed", refit=found)
    yield from told_operation(made, new.pattern)
    yield from (told_objection(one) for one in made.check(new.state, new.pattern))
    if found.fresh or found.gone:
        yield "-- as the first draft tells it"
        yield from told_operation(made, old.pattern)
    for number, scene in enumerate(made.scenes(new.pattern), 1):
        yield f"picture {number}: {', '.join(told(layer) for layer in scene.layers)}, sewn again {told(scene.resewn)}"
    for one in _leaving(found).check(new.state, new.pattern):
        yield f"left in place: {told_objection(one)}"


def _leaving(found: Any) -> TryOn:
    leave = (Run("front", ("side",)),)
    return TryOn(asks=(("width", None, 1),), leave=leave, stage="changed", refit=found)


@pytest.mark.parametrize("name", CASES)
def test_what_it_tells(name: str) -> None:
    file = File(__file__).with_name("try_ons_told") / f"{name.replace(' ', '_').replace(',', '')}.txt"
    Kept(file).holds({name: "\n".join(_told(name))})


def test_what_it_says_where_nothing_changes_here() -> None:
    found = sewn(pieces())
    lines = []
    for stage in ("", "corrected", "elsewhere", "refused"):
        for note in ("", "It gapes."):
            made = TryOn(note=note, asks=(("width", None, 1),), stage=stage, why_refused="it is too wide")  # type: ignore[arg-type]
            lines.append(f"-- {stage or 'none'}, {note or 'no note'}")
            lines += told_operation(made, found.pattern)
            lines += map(told_objection, made.check(found.state, found.pattern))
    Kept(File(__file__).with_name("try_ons_told") / "elsewhere.txt").holds({"elsewhere": "\n".join(lines)})
