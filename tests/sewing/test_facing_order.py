"""A facing, a turned piece, a band and a sleeve in the order of the trade, each part a step that is left out or moved.

The order (stitch, trim, grade, clip, press away, understitch, turn, press, topstitch or tack down): common practice, no
source.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.geometry import Cubic, Path, Vector
from kit.picture.sewing import scene_drawing
from kit.piece.piece import CutPlan
from kit.proof import prove
from kit.prose import sentences
from kit.sewing.sections import bands as shapes
from kit.units import cm, mm

from .test_bands import changed, codes, operation_of
from .test_facings import neck, seams

neck = neck


def stitch(make, front, back, front_facing, back_facing):
    make.attach_facing(
        [front_facing.neck, back_facing.neck],
        [front.neck, back.neck],
        allowance=1 * cm,
        grade=False,
        clip=False,
        press="later",
        rows="stitch",
    )


def trim(make, front, **p):
    make.trim(front.neck, to="half")


def grade(make, front_facing, back_facing, **p):
    make.grade(front_facing.neck, back_facing.neck, to=3 * mm, wider=5 * mm)


def clip(make, front, back, **p):
    make.clip(front.neck, back.neck)


def away(make, front_facing, back_facing, **p):
    make.press(front_facing.neck, way=front_facing)
    make.press(back_facing.neck, way=back_facing)


def understitch(make, front_facing, back_facing, **p):
    make.understitch(front_facing.neck, back_facing.neck)


def turn(make, front, back, **p):
    make.finish(front.neck, back.neck)


def press(make, front, back, **p):
    make.press(front.neck, back.neck, way="edge")


def topstitch(make, front, back, **p):
    make.topstitch(front.neck, back.neck, distance=5 * mm)


def finish(make, front_facing, back_facing, **p):
    make.finish_facing(front_facing.outer, back_facing.outer)


def tack(make, front, front_facing, back_facing, **p):
    make.tack_down(front_facing.outer, back_facing.outer, to=front.shoulder)


ORDER = (stitch, trim, grade, clip, away, understitch, turn, press, finish, topstitch, tack)
FREE = (trim, grade, clip, away, understitch, topstitch, tack)
"""What the garment holds together without."""


def told(found, write, steps) -> list[str]:
    (made, *_) = found.pattern.sewing[steps.index(write)].operations
    return sentences(found.pattern, made)


def test_a_facing_is_set_in_the_order_of_the_trade(sewn, neck):
    steps = (seams, *ORDER)
    found = sewn(neck, *steps)
    assert found.codes == []
    assert not any("Trim" in line or "Clip" in line or "press" in line for line in told(found, stitch, steps))
    assert told(found, understitch, steps) == [
        "Stitch on the front facing and the back facing, 2 mm (1/16 in) beside the seam, through that layer and the "
        "allowances only."
    ]
    assert told(found, turn, steps)[1:3] == ["Turn the facing to the inside.", "Do not press it yet."]
    assert told(found, press, steps)[0].startswith("Roll the seam along")


@pytest.mark.parametrize("gone", FREE)
def test_each_part_may_be_left_out(sewn, neck, gone):
    steps = tuple(step for step in (seams, *ORDER) if step is not gone)
    found = sewn(neck, *steps)
    assert found.codes == []
    if gone is away:
        assert told(found, understitch, steps)[0].startswith("Open out the front facing and the back facing and press")


@pytest.mark.parametrize("number", range(1, 5))
def test_scissors_and_iron_may_change_places(sewn, neck, number):
    row = list(ORDER)
    row[number], row[number + 1] = row[number + 1], row[number]
    assert sewn(neck, seams, *row).codes == []


def test_a_facing_that_is_never_turned_or_pressed_is_told(sewn, neck):
    def findings(gone):
        pattern = sewn(neck, seams, *(step for step in ORDER if step not in gone)).pattern
        return {each.code for each in prove(pattern) if each.level != "note"}

    whole = findings(())
    assert "never_finished" in findings((turn, press, topstitch)) - whole
    assert "never_pressed" in findings((press, topstitch)) - whole
    early = sewn(neck, seams, stitch, press, turn)
    assert "pressed_no_edge" in early.codes
    assert "topstitched_unpressed" in sewn(neck, seams, stitch, turn, topstitch).codes


def test_understitched_after_it_is_turned_it_is_opened_and_folded_back(sewn, neck):
    steps = (seams, stitch, turn, press, understitch)
    assert [line.split()[0] for line in told(sewn(neck, *steps), understitch, steps)] == ["Open", "Stitch", "Fold"]


def test_facings_finished_each_by_itself_on_purpose_get_no_note(sewn, neck):
    def outer(**more):
        return lambda make, front_facing, back_facing, **p: make.finish_facing(
            front_facing.outer, back_facing.outer, **more
        )

    assert sewn(neck, outer()).codes == ["facing_apart"]
    assert sewn(neck, outer(apart=True)).codes == []


# ---- what is turned ---------------------------------------------------------------------------------------------


def test_a_turned_piece_is_pressed_in_a_step_of_its_own(garments):
    def out(t):
        t.make.turn_out(t.band, t.inner_band, through=t.band.neck, press="later")

    later = changed(garments.JACKET, "Turn band", out)
    assert [each.code for each in prove(later) if each.code == "never_pressed"]
    assert not any("press" in line.lower() for line in sentences(later, operation_of(later, "Turn band"))[:1])
    steps = [(name, out if name == "Turn band" else own) for name, own in garments.JACKET.steps]
    at = [name for name, _ in steps].index("Turn band") + 1
    steps.insert(at, ("Press band", lambda t: t.make.press(t.band.end, t.band.top, way="edge")))
    pattern = garments.JACKET.pattern(steps)
    assert codes(pattern) == []
    assert not [each for each in prove(pattern) if each.code == "never_pressed"]


# ---- a band tacked down at the seams it meets ---------------------------------------------------------------------


def tacked(t):
    t.make.close_band(t.inner_band.neck, t.band.neck, allowance=1 * cm, method="seams")


def test_the_inner_side_of_a_band_is_tacked_at_the_seams_it_meets(garments):
    pattern = changed(garments.JACKET, "Close band", tacked)
    assert codes(pattern) == []
    made = operation_of(pattern, "Close band")
    assert sentences(pattern, made)[-1].startswith("At every seam it meets sew the fold to the allowances underneath")
    (scene,) = made.scenes(pattern)
    assert [row.style for row in scene.rows] == ["hand"]
    (spot,) = [row.run for row in scene.rows]
    # The band's end lies at the front edge; the shoulder seam is as far along it as the front's neck is long.
    (front,) = (each.path.length for each in pattern.piece("front").edges if each.name == "neck")
    long = pattern.piece("inner_band").edge("neck").path.length
    assert (spot.start + spot.end) / 2 == pytest.approx(long - front, abs=6.0)
    assert scene_drawing(scene, pattern).items


def test_where_no_seam_meets_a_band_it_is_closed_all_round(sewn, garments):
    panel = garments.rectangle(
        "panel", 300, 200, {"hem": 10, "side": 10, "waist": 10, "other": 10}, cut=CutPlan(count=1)
    )
    band = garments.rectangle("band", 300, 60, {"outer": 10, "end": 10, "inner": 10, "start": 10}, cut=CutPlan(count=1))

    def edges(make, panel, band):
        make.narrow_hem(panel.side, panel.other, turn=5 * mm)
        make.band_ends(band.start, band.end, allowance=1 * cm)
        make.turn_out(band, through=band.inner)
        make.set_band(band.outer, panel.waist, allowance=1 * cm)

    def close(method):
        return lambda make, panel, band: make.close_band(band.inner, band.outer, allowance=1 * cm, method=method)

    assert sewn((panel, band), edges, close("seams")).codes == ["band_meets_no_seam"]
    assert sewn((panel, band), edges, close("hand")).codes == []


# ---- a sleeve -----------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("press", "words", "finish"),
    [
        ("one side", "towards the sleeve", "together"),
        ("sleeve", "towards the sleeve", "together"),
        ("open", "Press the seam open over the cap", "each raw edge by itself"),
        ("front", "towards the garment", "together"),
    ],
)
def test_a_sleeve_seam_is_pressed_as_it_is_said(garments, press, words, finish):
    def set_in(t):
        t.make.set_in_sleeve(
            t.sleeve.back_cap + t.sleeve.front_cap,
            [t.back.armscye, t.front.armscye],
            allowance=15 * mm,
            ease=25 * mm,
            press=press,
        )

    pattern = changed(garments.JACKET, "Sleeves", set_in)
    said = sentences(pattern, operation_of(pattern, "Sleeves"))
    assert any(words in line for line in said) and any(finish in line for line in said)


def test_a_sleeve_seam_cut_through():
    """Counted by hand: open, one allowance on either side; towards the garment, both on its side."""
    opened, in_, out = (shapes.sleeve_set(way) for way in ("_open", "", "_garment"))
    assert [opened.at(x) for x in (-3.0, 3.0)] == [("body", "body"), ("sleeve", "sleeve")]
    assert (in_.at(-3.0), in_.at(3.0)) == (("body",), ("body", "sleeve", "sleeve"))
    assert (out.at(3.0), out.at(-3.0)) == (("sleeve",), ("sleeve", "body", "body"))


def bent(piece):
    """The piece with its neck hollowed by 25 mm, as necks are."""

    def hollow(edge):
        one, two = edge.path.start, edge.path.end
        down = Vector(15.0, -40.0)
        return replace(edge, path=Path.of(Cubic(one, one.lerp(two, 0.3) + down, one.lerp(two, 0.7) + down, two)))

    return replace(piece, edges=tuple(hollow(edge) if edge.name == "neck" else edge for edge in piece.edges))


def test_clips_of_a_step_of_their_own_let_a_facing_lie_flat(sewn, neck):
    """Both allowances of a seam are clipped, whichever edge is named."""
    pieces = tuple(map(bent, neck))

    def not_flat(*steps):
        return {each.piece for each in prove(sewn(pieces, seams, *steps).pattern) if each.code == "facing_not_flat"}

    bare = not_flat(*(step for step in ORDER if step is not clip))
    assert bare == {"front", "back", "front_facing", "back_facing"}
    assert not_flat(*ORDER) == set()
