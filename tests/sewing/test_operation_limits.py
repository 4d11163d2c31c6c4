"""What operations take, just inside and just outside their limits: widths, depths, shares, places. The limits are
common practice without a source, as the operations themselves say; here each is held from both sides."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from kit.body.body import Body
from kit.errors import KitError
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.piece import Piece, Strip
from kit.reference.sampler import BEFORE, PIECES, STRIPS, ZIP_SEAM
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.sewing.order import sew
from kit.units import cm, mm

SHOULDERS = "make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)"
CLEAN, REFUSED = "", "refused"


def sewn(*lines: str, strips: tuple[Strip, ...] = STRIPS, pieces: tuple[Piece, ...] = PIECES) -> str:
    """The codes of what speaks against the lines, "refused" where they cannot be written at all."""
    make = Make(pieces, strips)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in pieces}
    names |= {strip.name: StripHandle(strip) for strip in strips} | {"cm": cm, "mm": mm, "make": make}
    try:
        for line in lines:
            exec(line, names)
    except KitError:
        return REFUSED
    record = SewRecord("step", "Step", "", "", make.operations)
    pattern = Pattern(LessonInfo("T", "t"), Body("W4", ()), (), pieces, strips, (), (record,))
    return " ".join(found.code for found in sew(pattern)[1])


LIMITS: list[tuple[str, dict[Any, str], tuple[str, ...]]] = [
    # (a call with a gap, {what stands in it: what speaks against it}, what was sewn before)
    (
        "make.hem(skirt_front.hem, first={} * mm, second=20 * mm)",
        {0: REFUSED, 0.1: CLEAN, 20.4: CLEAN, 20.6: "hem_turns"},
        (),
    ),
    ("make.hem(skirt_front.hem, first={} * mm)", {300: CLEAN, 300.1: REFUSED}, ()),
    ("make.narrow_hem(sleeve.wrist, turn={} * mm)", {0: REFUSED, 15: CLEAN, 15.1: REFUSED}, ()),
    ("make.blind_hem(skirt_front.hem, depth={} * mm)", {14.9: "blind_hem_narrow", 15: CLEAN}, ()),
    ("make.rolled_hem(sleeve.wrist, turn={} * mm)", {10: CLEAN, 10.1: "rolled_hem_wide"}, ()),
    ("make.casing(tote.top, first={} * mm, depth=30 * mm)", {30.4: CLEAN, 30.6: "hem_turns"}, ()),
    ("make.pocket_hem(pocket.top, first={} * mm, second=30 * mm)", {30.4: CLEAN, 30.6: "hem_turns"}, ()),
    (
        "make.french_seam(front.shoulder, back.shoulder, first=6 * mm, second={} * mm)",
        {2.9: "french_seam_rows", 3: CLEAN},
        (),
    ),
    ("make.trim(front.shoulder, to={} * mm)", {1.9: "trimmed_away", 2: CLEAN, 14: CLEAN}, (SHOULDERS,)),
    # from a twentieth more to four times as much: 220 mm drawn up
    (
        "make.gather(sleeve.wrist, to={} * mm)",
        {54.9: "gathers_too_many", 55.1: CLEAN, 209.4: CLEAN, 209.7: "gathers_too_few"},
        (),
    ),
    # a slit is at least a millimetre wider than its button; from one half as wide again and 3 mm it slips out
    (
        "make.buttons(front.right.button_1, size={} * mm, holes=front.left.hole_1)",
        {11.9: "button_slips", 12.1: CLEAN, 20: CLEAN, 20.1: "button_wide", 60.1: REFUSED},
        (*BEFORE["buttonholes"], "make.buttonholes(front.left.hole_1, length=21 * mm)"),
    ),
    ("make.bind(tote.top, strip=binding, finished={} * mm, ends='turned')", {10: CLEAN, 10.6: "binding_width"}, ()),
    (
        "make.flat_felled_seam(front.shoulder, back.shoulder, allowance=1.5 * cm, lap=back, trim={} * mm)",
        {7: CLEAN, 7.6: "felled_trim"},
        (),
    ),
    (
        "make.grade(front_facing.inner, back_facing.inner, to=4 * mm, wider={} * mm)",
        {3.9: REFUSED, 4.1: CLEAN},
        BEFORE["grade"],
    ),
    (
        "make.thread_elastic(tote.top, length=30 * cm, width={} * mm)",
        {26: CLEAN, 28.1: "elastic_wide"},
        ("make.casing(tote.top, depth=3 * cm, gap=tote.top.between(2 * cm, 5 * cm))",),
    ),
    # up to 15 hundredths more, 220 mm drawn up to 191.3
    (
        "make.ease_stitch(sleeve.wrist, to={} * mm)",
        {191: "too_much_to_ease", 191.6: CLEAN, 219: CLEAN, 221: "nothing_to_ease"},
        (),
    ),
    (
        "make.lapped_zip(skirt_back.left.zip_opening, skirt_back.right.zip_opening, allowance=2 * cm, length={} * cm)",
        {18: "zip_short", 19: CLEAN, 20: CLEAN, 21: "zip_long", 121: REFUSED},
        (ZIP_SEAM,),
    ),
    (
        "make.belt_loop(loop, front.side, at={} * mm)",
        {0: CLEAN, 300: CLEAN, 305: REFUSED},
        ("make.plain_seam(front.side, back.side, allowance=1.5 * cm)", "make.fold_strip(loop, ends=0)"),
    ),
]


@pytest.mark.parametrize(
    ("call", "value", "code", "before"),
    [(call, value, code, before) for call, values, before in LIMITS for value, code in values.items()],
)
def test_just_inside_and_just_outside(call: str, value: float, code: str, before: tuple[str, ...]) -> None:
    assert sewn(*before, call.replace("{}", str(value))) == code


@pytest.mark.parametrize(
    ("width", "code"), [(99.0, CLEAN), (101.9, CLEAN), (97.9, "strip_width"), (102.1, "strip_width")]
)
def test_a_strip_comes_out_as_wide_as_it_is_meant_within_half_a_millimetre(width: float, code: str) -> None:
    """Folded in four it comes out a quarter as wide; 25 mm are meant."""
    strips = tuple(replace(strip, width=width) if strip.name == "handle" else strip for strip in STRIPS)
    assert sewn("make.fold_strip(handle, ends=0)", strips=strips) == code


@pytest.mark.parametrize(("wider", "code"), [(0.0, CLEAN), (3.8, CLEAN), (4.2, "pocket_place_size")])
def test_a_pocket_fits_its_place(wider: float, code: str) -> None:
    """The line it is laid on and the pocket's own edges agree within a few millimetres."""
    call = (
        "make.patch_pocket(pocket.left_side, pocket.bottom, pocket.right_side, at=front.pocket_place, allowance=1 * cm)"
    )
    from kit.geometry import Path, Point

    pocket = next(piece for piece in PIECES if piece.name == "pocket")
    at = [Point(0, 0), Point(120 + wider, 0), Point(120 + wider, 140), Point(0, 140)]
    edges = tuple(
        replace(edge, path=Path.line(a, b)) for edge, a, b in zip(pocket.edges, at, [*at[1:], at[0]], strict=True)
    )
    pieces = tuple(replace(pocket, edges=edges) if piece.name == "pocket" else piece for piece in PIECES)
    found = sewn(*BEFORE["patch_pocket"], call, pieces=pieces)
    assert found == code
