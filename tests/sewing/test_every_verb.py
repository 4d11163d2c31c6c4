"""Every verb of `make`, once: the allowance it takes, the raw edge it closes, which face lies up, where its rows run.

What is taken and closed is the sum of the call's own widths and the geometry of the sampler's pieces. Which side is up
and where a row lies is how the trade sews it (common practice, no source): seams right sides together, hems seen from
the wrong side, topstitching from the right; a row 2 mm from a fold, ease and gathering rows inside the allowance.
"""

from __future__ import annotations

import math
from typing import Any, NamedTuple

import pytest

from kit.body.body import Body
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.reference.sampler import BEFORE, PIECES, STRIPS
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import Make
from kit.sewing.operation import Operation
from kit.sewing.verb import VERBS
from kit.units import cm, mm

SHOULDER = math.hypot(130, 30)
FRONT_NECK, BACK_NECK = math.hypot(90, 50), math.hypot(70, 10)
FRONT_OUTER, BACK_OUTER = math.hypot(140, 108), math.hypot(120, 68)
CAP = math.hypot(150, 130)
SLANT = math.hypot(50, 600)


class Sewn(NamedTuple):
    """What one call does: `takes` {"piece.edge": mm}; `closes` {"piece.edge": (how, mm on all halves)}; for each scene
    the `faces` of its layers from below ("r" right side up, "w" wrong) and its new `rows`: (mm inside the stitch line,
    how it is stitched)."""

    call: str
    takes: dict[str, float]
    closes: dict[str, tuple[str, float]]
    faces: tuple[str, ...]
    rows: tuple[tuple[tuple[float, str], ...], ...]
    before: tuple[str, ...] = ()


M, H, B, G = "machine", "hand", "baste", "gather"


def both(how: str, length: float, *edges: str) -> dict[str, tuple[str, float]]:
    """Edges closed alike on two halves."""
    return {edge: (how, 2 * length) for edge in edges}


CASES = {
    # ---- seams
    "plain_seam": Sewn(
        "make.plain_seam(front.side, back.side, allowance=1.5 * cm)",
        {"front.side": 15, "back.side": 15},
        both("sewn", math.hypot(20, 300), "front.side", "back.side"),
        ("rw", "ww"),
        (((0, M),), ()),
    ),
    "french_seam": Sewn(
        "make.french_seam(front.shoulder, back.shoulder, first=6 * mm, second=4 * mm)",
        {"front.shoulder": 10, "back.shoulder": 10},
        both("sewn", SHOULDER, "front.shoulder", "back.shoulder"),
        ("wr", "wr", "rw", "ww"),  # wrong sides together first; trimmed; turned; opened out and pressed
        (((-4, M),), (), ((0, M),), ()),
    ),
    "mock_french_seam": Sewn(
        "make.mock_french_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)",
        {"front.shoulder": 15, "back.shoulder": 15},
        both("sewn", SHOULDER, "front.shoulder", "back.shoulder"),
        ("rw", "rw", "ww"),
        (((0, M),),),
    ),
    "flat_felled_seam": Sewn(
        "make.flat_felled_seam(front.shoulder, back.shoulder, allowance=1.5 * cm, lap=back)",
        {"front.shoulder": 15, "back.shoulder": 15},
        both("sewn", SHOULDER, "front.shoulder", "back.shoulder"),
        ("wr", "wr", "rr"),  # wrong sides together, so that the fell lies outside
        (((0, M),),),
    ),
    "lapped_seam": Sewn(
        "make.lapped_seam(back.shoulder, front.shoulder, allowance=1.5 * cm)",
        {"front.shoulder": 15, "back.shoulder": 15},
        both("sewn", SHOULDER, "front.shoulder", "back.shoulder"),
        ("w", "rr"),
        ((), ((2, M),)),  # 2 mm from the fold
    ),
    "seam_to_turn": Sewn(
        "make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)",
        {"flap.outer": 6, "flap_lining.outer": 6},
        both("sewn", 120, "flap.outer", "flap_lining.outer"),
        ("rw",),
        (((0, M),),),
    ),
    "slip_stitch": Sewn(
        "make.slip_stitch(flap.upper, flap_lining.upper, allowance=1 * cm)",
        {"flap.upper": 10, "flap_lining.upper": 10},
        both("sewn", 120, "flap.upper", "flap_lining.upper"),
        ("rr",),
        (((0, H),),),
    ),
    "seam_band": Sewn(
        "make.seam_band(band.top, inner_band.top, allowance=1 * cm)",
        {"band.top": 10, "inner_band.top": 10},
        both("sewn", FRONT_NECK + BACK_NECK, "band.top", "inner_band.top"),
        ("rw",),
        (((0, M),),),
    ),
    "set_in_sleeve": Sewn(
        "make.set_in_sleeve(sleeve.back_cap + sleeve.front_cap, [back.armhole, front.armhole], allowance=1.5 * cm, "
        "ease=3.7 * cm)",
        {"sleeve.back_cap": 15, "sleeve.front_cap": 15, "back.armhole": 15, "front.armhole": 15},
        {
            **both("sewn", CAP, "sleeve.back_cap", "sleeve.front_cap"),
            **both("sewn", 180, "back.armhole", "front.armhole"),
        },
        ("w", "w"),
        (((-3, G),), ((0, M),)),
        BEFORE["set_in_sleeve"],
    ),
    # ---- hems
    "hem": Sewn(
        "make.hem(skirt_front.hem, first=1 * cm, second=2 * cm)",
        {"skirt_front.hem": 30},
        both("hemmed", 250, "skirt_front.hem"),
        ("w",),
        (((18, M),),),  # 2 mm from the inner fold
    ),
    "narrow_hem": Sewn(
        "make.narrow_hem(sleeve.wrist, turn=5 * mm)",
        {"sleeve.wrist": 10},
        both("hemmed", 220, "sleeve.wrist"),
        ("w",),
        (((3, M),),),
    ),
    "blind_hem": Sewn(
        "make.blind_hem(skirt_front.hem, depth=3 * cm)",
        {"skirt_front.hem": 30},
        both("hemmed", 250, "skirt_front.hem"),
        ("w",),
        (((24, H),),),  # under the edge, a quarter of an inch from it
    ),
    "wide_hem": Sewn(
        "make.wide_hem(skirt_front.hem, depth=4 * cm, tape=True)",
        {"skirt_front.hem": 40},
        both("hemmed", 250, "skirt_front.hem"),
        ("w",),
        (((34, H),),),
    ),
    "rolled_hem": Sewn(
        "make.rolled_hem(sleeve.wrist, turn=6 * mm)",
        {"sleeve.wrist": 6},
        both("hemmed", 220, "sleeve.wrist"),
        ("w",),
        (((2, H),),),  # rolled into a third of what is turned
    ),
    "faced_hem": Sewn(
        "make.faced_hem(hem_facing.lower, skirt_front.hem, allowance=1 * cm, free=hem_facing.upper, turn=6 * mm)",
        {"hem_facing.lower": 10, "skirt_front.hem": 10, "hem_facing.upper": 6},
        {
            **both("sewn", 250, "hem_facing.lower"),
            **both("faced", 250, "skirt_front.hem"),
            **both("hemmed", 250, "hem_facing.upper"),
        },
        ("rw", "rw", "wr"),
        (((0, M),), (), ((1.5, H),)),
    ),
    "casing": Sewn(
        "make.casing(tote.top, first=1 * cm, depth=3 * cm)",
        {"tote.top": 40},
        {"tote.top": ("hemmed", 350)},
        ("w",),
        (((28, M),),),
    ),
    "channel": Sewn(
        "make.channel(flap.outer, distance=2 * cm, depth=1.5 * cm)",
        {},
        {},  # the edge is turned already
        ("r",),
        (((20, M), (35, M)),),
        BEFORE["channel"],
    ),
    "pocket_hem": Sewn(
        "make.pocket_hem(pocket.top, first=6 * mm, second=3 * cm)",
        {"pocket.top": 36},
        both("hemmed", 120, "pocket.top"),
        ("r", "w"),  # its ends are stitched right sides together, then it is turned
        (((0, M), (0, M)), ((28, M),)),
    ),
    # ---- facings and bindings
    "attach_facing": Sewn(
        "make.attach_facing([front_facing.inner, back_facing.inner], [front.neck, back.neck], allowance=1 * cm)",
        {"front_facing.inner": 10, "back_facing.inner": 10, "front.neck": 10, "back.neck": 10},
        {
            **both("sewn", FRONT_NECK, "front_facing.inner"),
            **both("sewn", BACK_NECK, "back_facing.inner"),
            **both("faced", FRONT_NECK, "front.neck"),
            **both("faced", BACK_NECK, "back.neck"),
        },
        ("rw", "rw", "wr"),
        (((0, M),), ()),
        BEFORE["attach_facing"],
    ),
    "finish_facing": Sewn(
        'make.finish_facing(front_facing.outer, back_facing.outer, stitch="turned", turn=6 * mm)',
        {"front_facing.outer": 6, "back_facing.outer": 6},
        {**both("hemmed", FRONT_OUTER, "front_facing.outer"), **both("hemmed", BACK_OUTER, "back_facing.outer")},
        ("w",),
        (((3, M),),),
        BEFORE["finish_facing"],
    ),
    "face_with_interfacing": Sewn(
        "make.face_with_interfacing(front_facing.outer, allowance=6 * mm)",
        {"front_facing.outer": 6},
        both("faced", FRONT_OUTER, "front_facing.outer"),
        ("rw", "wr"),
        (((0, M),), ()),
    ),
    "bias_facing": Sewn(
        'make.bias_facing(front.armhole, strip=facing_strip, finished=1 * cm, ends="caught", count=2)',
        {"front.armhole": 6},
        both("faced", 180, "front.armhole"),
        ("r", "w"),
        (((0, M),), ((8, M),)),  # 2 mm from its free edge
        BEFORE["bias_facing"],
    ),
    "bind": Sewn(
        'make.bind(tote.top, strip=binding, finished=1 * cm, ends="turned")',
        {"tote.top": 0},  # it shuts in the edge as it is cut
        {"tote.top": ("faced", 350)},
        ("r", "w", "r"),  # laid on and sewn; wrapped to the wrong side; from the right side in the groove
        (((10, M),), (), ((10, M),)),
    ),
    "understitch": Sewn(
        "make.understitch(front_facing.inner, back_facing.inner)",
        {},
        {},
        ("r",),
        (((2, M),),),
        BEFORE["understitch"],
    ),
    "tack_down": Sewn(
        "make.tack_down(front_facing.outer, to=front.shoulder)", {}, {}, ("r",), (((1, H),),), BEFORE["tack_down"]
    ),
    # ---- bands
    "set_band": Sewn(
        "make.set_band(band.neck, [front.neck, back.neck], allowance=1 * cm)",
        {"band.neck": 10, "front.neck": 10, "back.neck": 10},
        {
            **both("sewn", FRONT_NECK + BACK_NECK, "band.neck"),
            **both("sewn", FRONT_NECK, "front.neck"),
            **both("sewn", BACK_NECK, "back.neck"),
        },
        ("rw",),
        (((0, M),),),
        BEFORE["set_band"],
    ),
    "band_ends": Sewn(
        "make.band_ends(waistband.start, waistband.end, allowance=1 * cm, overlap=3 * cm, at=waistband.end)",
        {"waistband.start": 10, "waistband.end": 10, "waistband.waist": 10, "waistband.inner": 10},
        {
            "waistband.start": ("sewn", 70),
            "waistband.end": ("sewn", 70),
            "waistband.waist": ("sewn", 30),
            "waistband.inner": ("sewn", 30),
        },
        ("r",),
        (((0, M), (0, M), (0, M)),),
    ),
    "close_band": Sewn(
        "make.close_band(cuff.inner, cuff.lower, allowance=1 * cm, overlap=3 * cm, at=cuff.end)",
        {"cuff.inner": 10},
        both("faced", 210 - 30, "cuff.inner"),
        ("r",),
        (((2, M),),),
        BEFORE["close_band"],
    ),
    # ---- pockets and closures
    "pocket_bag": Sewn(
        "make.pocket_bag(front_bag.mouth, skirt_front.pocket_mouth, allowance=1.5 * cm)",
        {"front_bag.mouth": 15, "skirt_front.side": 15},
        both("sewn", 150, "front_bag.mouth", "skirt_front.side"),
        ("rw", "rr"),
        (((0, M),), ()),
    ),
    "pocket_seam": Sewn(
        "make.pocket_seam(skirt_front.side, skirt_back.side, bags=(front_bag.bottom, back_bag.bottom), "
        "mouth=skirt_front.pocket_mouth, allowance=1.5 * cm, bag_allowance=1 * cm)",
        {"skirt_front.side": 15, "skirt_back.side": 15, "front_bag.bottom": 10, "back_bag.bottom": 10},
        {
            **both("sewn", SLANT - 150, "skirt_front.side", "skirt_back.side"),  # less the mouth
            **both("sewn", math.hypot(120, 60), "front_bag.bottom", "back_bag.bottom"),
        },
        ("rw", "rw"),
        (((0, M),), ((0, M),)),
        BEFORE["pocket_seam"],
    ),
    "patch_pocket": Sewn(
        "make.patch_pocket(pocket.left_side, pocket.bottom, pocket.right_side, at=front.pocket_place, "
        "allowance=1 * cm)",
        {"pocket.left_side": 10, "pocket.bottom": 10, "pocket.right_side": 10},
        {**both("sewn", 140, "pocket.left_side", "pocket.right_side"), **both("sewn", 120, "pocket.bottom")},
        ("r", "r"),
        (((2, M), (2, M), (2, M)), ((0, M),)),
        BEFORE["patch_pocket"],
    ),
    "lapped_zip": Sewn(
        "make.lapped_zip(skirt_back.left.zip_opening, skirt_back.right.zip_opening, allowance=2 * cm, length=19 * cm)",
        {"skirt_back.centre": 20},
        {"skirt_back.centre": ("sewn", 400)},
        (
            "ww",
            "w",
            "rr",
        ),  # both folds are pressed, the zip is sewn under from inside, the lap over it from the right side
        ((), ((2, M),), ((0, M),)),  # beside the fold; along the lap, half an inch from its fold, and across
        BEFORE["lapped_zip"],
    ),
    "centred_zip": Sewn(
        "make.centred_zip(skirt_back.left.zip_opening, skirt_back.right.zip_opening, allowance=2 * cm, length=19 * cm)",
        {"skirt_back.centre": 20},
        {"skirt_back.centre": ("sewn", 400)},
        ("rw", "ww"),
        (((0, B),), ((7, M),)),  # basted shut, then a quarter of an inch to either side
        BEFORE["centred_zip"],
    ),
    # ---- rows by themselves
    "staystitch": Sewn("make.staystitch(front.neck, back.neck)", {}, {}, ("r",), (((-3, M),),)),
    "baste": Sewn("make.baste(front.side)", {}, {}, ("r",), (((-3, B),),)),
    "ease_stitch": Sewn("make.ease_stitch(sleeve.front_cap, to=18 * cm)", {}, {}, ("r",), (((-3, G),),)),
    "gather": Sewn("make.gather(sleeve.wrist, to=18 * cm)", {}, {}, ("r",), (((-3, G), (-6, G)),)),
    "topstitch": Sewn(
        "make.topstitch(front.side, distance=6 * mm, rows=2)",
        {},
        {},
        ("r",),
        (((6, M), (12, M)),),
        ('make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="one side")',),
    ),
    "edgestitch": Sewn(
        "make.edgestitch(back.shoulder)",
        {},
        {},
        ("r",),
        (((2, M),),),
        ('make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm, press="one side")',),
    ),
    "edge_finish": Sewn('make.edge_finish(front.side, stitch="overlock")', {}, {}, ("r",), (((-3, M),),)),
}


def sewn(case: Sewn) -> tuple[Operation, Pattern]:
    make = Make(PIECES, STRIPS)
    names: dict[str, Any] = {piece.name: PieceHandle(piece) for piece in PIECES}
    names |= {strip.name: StripHandle(strip) for strip in STRIPS} | {"cm": cm, "mm": mm, "make": make}
    for line in (*case.before, case.call):
        exec(line, names)
    record = SewRecord("step", "Step", "", "", make.operations)
    return make.operations[-1], Pattern(LessonInfo("T", "t"), Body("W4", ()), (), PIECES, STRIPS, (), (record,))


@pytest.fixture(scope="module")
def every() -> dict[str, tuple[Operation, Pattern]]:
    return {name: sewn(case) for name, case in CASES.items()}


def test_they_are_verbs() -> None:
    assert CASES.keys() <= VERBS.keys()


@pytest.mark.parametrize("name", CASES)
def test_what_it_takes_of_the_allowance(every: dict[str, tuple[Operation, Pattern]], name: str) -> None:
    operation, pattern = every[name]
    found = {f"{piece}.{edge}": mm for (piece, edge), mm in operation.takes(pattern).items()}
    assert found == pytest.approx(CASES[name].takes)


@pytest.mark.parametrize("name", CASES)
def test_what_it_closes(every: dict[str, tuple[Operation, Pattern]], name: str) -> None:
    operation, pattern = every[name]
    found: dict[str, tuple[str, float]] = {}
    for closing in operation.closes(pattern):
        edge = f"{closing.span.piece}.{closing.span.edge}"
        how, so_far = found.get(edge, (closing.how, 0.0))
        assert how == closing.how
        found[edge] = (how, so_far + closing.span.length)
    assert found.keys() == CASES[name].closes.keys()
    for edge, (how, length) in CASES[name].closes.items():
        assert (found[edge][0], found[edge][1]) == (how, pytest.approx(length)), edge


@pytest.mark.parametrize("name", CASES)
def test_which_face_is_up_and_where_its_rows_run(every: dict[str, tuple[Operation, Pattern]], name: str) -> None:
    operation, pattern = every[name]
    scenes = operation.scenes(pattern)
    assert tuple("".join(layer.up[0] for layer in scene.layers) for scene in scenes) == CASES[name].faces
    for scene, rows in zip(scenes, CASES[name].rows, strict=False):
        new = [row for row in scene.rows if row.ink == "new"]
        assert [(row.inset, row.style) for row in new] == [(pytest.approx(inset), style) for inset, style in rows]
