"""Operations as no example of theirs is: strips cut back before they are turned, pockets on closed lines, rows left
and gone on with out of turn, parts of lines over several pieces, edges that meet at an opening.

What each says, needs, brings about and shows, and what speaks against it, stands in `otherwise_sewn`. It was made by
the kit, and read in samples (common practice, no source); the pieces are those of `kit/reference/sampler.py`.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path as File
from typing import Any

import pytest

from kit.body.body import Body
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import CutPlan, Mark, Piece
from kit.reference import sampler
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.in_work import shown_scenes
from kit.sewing.make import Make
from kit.sewing.order import sew
from kit.units import cm, mm
from tests.exact import refusal
from tests.sewing.telling import told_objection, told_operation, told_scene
from tests.told import Kept


def _ring(*points: tuple[float, float]) -> Path:
    at = [Point(*point) for point in points]
    path = Path.line(at[0], at[1])
    for one, two in zip(at[1:], [*at[2:], at[0]], strict=True):
        path = path.joined(Path.line(one, two))
    return path


def _placed(path: Path) -> Piece:
    """The front with its pocket's place drawn otherwise."""
    marks = tuple(replace(mark, path=path) if mark.name == "pocket_place" else mark for mark in sampler.FRONT.marks)
    return replace(sampler.FRONT, marks=marks)


POCKET = (
    "make.pocket_hem(pocket.top, second=3 * cm)",
    "make.fold_pocket(pocket.left_side, pocket.bottom, pocket.right_side, allowance=1 * cm)",
    "make.patch_pocket(pocket.left_side, pocket.bottom, pocket.right_side, at=front.pocket_place, allowance=1 * cm)",
)
TURNED = "tube = make.turn_strip(tie, allowance=6 * mm, rows='sew')"
FRENCH = "first=6 * mm, second=4 * mm"
NECK = sampler.SHOULDERS
CASES: dict[str, tuple[tuple[str, ...], tuple[Piece, ...]]] = {
    "a pocket on a closed line": (POCKET, (_placed(_ring((60, 150), (60, 10), (180, 10), (180, 150))),)),
    "a pocket on a closed line, the other way round": (
        POCKET,
        (_placed(_ring((180, 150), (180, 10), (60, 10), (60, 150))),),
    ),
    "a pocket on a slanting line": (POCKET, (_placed(_ring((60, 160), (40, 21.4), (158.8, 4.3), (178.8, 142.9))),)),
    "a pocket on a line too short": (POCKET, (_placed(Path.line(Point(60, 150), Point(60, 40))),)),
    "the sides of a strip trimmed": ((TURNED, "make.trim(tie.sides, to=3 * mm)", "make.finish(tube)"), ()),
    "the ends of a strip trimmed": ((TURNED, "make.trim(tie.ends, to=3 * mm)", "make.finish(tube)"), ()),
    "the sides of a strip graded": (
        (TURNED, "make.grade(tie.sides, to=3 * mm, wider=5 * mm)", "make.finish(tube)"),
        (),
    ),
    "sides and ends to half": ((TURNED, "make.trim(tie.sides, tie.ends, to='half')", "make.finish(tube)"), ()),
    "a strip trimmed that nobody seamed": (("make.trim(tie.sides, to=3 * mm)",), ()),
    "finished twice": ((TURNED, "make.finish(tube)", "make.finish(tube)"), ()),
    "a seam gone on with after another": (
        (
            f"one = make.french_seam(front.shoulder, back.shoulder, {FRENCH}, rows='first')",
            f"two = make.french_seam(front.side, back.side, {FRENCH}, rows='first')",
            "make.finish(two)",
            "make.finish(front.shoulder, back.shoulder)",
        ),
        (),
    ),
    "gone on with before it is begun": ((f"make.finish(make.french_seam(front.side, back.side, {FRENCH}))",), ()),
    "a part of a neck in two pieces": (
        (NECK, "make.topstitch((front.neck + back.neck).between(5 * cm, 14 * cm), distance=6 * mm)"),
        (),
    ),
    "all round a neck": ((NECK, "make.staystitch(front.left.neck + back.neck + front.right.neck)"), ()),
    "over the fold": (("make.narrow_hem(back.left.hem + back.right.hem, turn=6 * mm)",), ()),
    "below a slit": (
        (
            "make.plain_seam(front.side.after(9 * cm), back.side.after(9 * cm), allowance=1.5 * cm)",
            "make.narrow_hem(front.side.before(9 * cm), turn=6 * mm)",
            "make.topstitch(front.side.before(9 * cm), distance=5 * mm)",
            "make.topstitch(front.side.after(9 * cm), distance=5 * mm)",
        ),
        (),
    ),
    "a seam with a gap, closed by hand": (
        (
            "make.plain_seam(front.side, back.side, allowance=1.5 * cm, gap=(5 * cm, 12 * cm))",
            "low, high = 5 * cm, 12 * cm",
            "make.slip_stitch(front.side.between(low, high), back.side.between(low, high), allowance=15 * mm)",
        ),
        (),
    ),
    "a seam sewn from the other end": (
        (f"make.french_seam(back.side, front.side, {FRENCH}, opening=(20 * cm, 28 * cm))",),
        (),
    ),
    "one half alone": (
        ("make.hem(front.left.hem, first=1 * cm, second=2 * cm)", "make.hem(front.right.hem, first=1 * cm)"),
        (),
    ),
    "a single piece": (
        (
            "make.hem(front.hem, first=1 * cm, second=2 * cm)",
            "make.plain_seam(front.side, front.neck, allowance=1 * cm)",
        ),
        (replace(sampler.FRONT, cut=CutPlan(said=True), marks=()),),
    ),
    "buttonholes to a mark on an edge": (
        (
            "make.hem(front.front_edge, first=1 * cm, second=3 * cm)",
            "make.buttonholes(front.left.hole, length=20 * mm)",
        ),
        (replace(sampler.FRONT, marks=(Mark("hole", "buttonhole", edge="front_edge", start=90.0),)),),
    ),
    "pressed before and after": (
        (
            NECK,
            "make.press(front.shoulder, back.shoulder, way='open')",
            "make.press(front.shoulder, back.shoulder, way=back)",
        ),
        (),
    ),
    "taken out again": (("make.baste(front.side, back.side)", "make.remove_basting(front.side)", "make.try_on()"), ()),
}


def _sewn(lines: tuple[str, ...], changed: tuple[Piece, ...]) -> Iterator[str]:
    others = {piece.name: piece for piece in changed}
    pieces = tuple(others.get(piece.name, piece) for piece in sampler.PIECES)
    make = Make(pieces, sampler.STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in pieces} | {"cm": cm, "mm": mm, "make": make}
    names |= {strip.name: StripHandle(strip) for strip in sampler.STRIPS}
    for line in lines:
        try:
            exec(line, names)
        except KitError as error:
            yield f"refused: {refusal(error)}"
    record = SewRecord("step", "Step", "", "", make.operations)
    pattern = Pattern(LessonInfo("T", "t"), Body("W4", ()), (), pieces, sampler.STRIPS, (), (record,))
    for operation in make.operations[min(len(lines) - 1, 1) :]:
        yield from told_operation(operation, pattern)
        try:
            scenes = shown_scenes(pattern, operation)
        except KitError as error:
            yield f"no picture: {refusal(error)}"
            continue
        for number, scene in enumerate(scenes, 1):
            yield f"picture {number}"
            yield from told_scene(scene)
    yield from (told_objection(found) for found in sew(pattern)[1])


@pytest.mark.parametrize("name", CASES)
def test_what_it_tells(name: str) -> None:
    lines, pieces = CASES[name]
    file = File(__file__).with_name("otherwise_sewn") / f"{name.replace(' ', '_').replace(',', '')}.txt"
    Kept(file).holds({name: "\n".join(_sewn(lines, pieces))})
