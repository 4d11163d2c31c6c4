"""Bands, sleeves and pieces turned through a gap: what is refused, what they close and take, their sections."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.piece.piece import CutPlan, Mark
from kit.proof.edges import raw_edges
from kit.proof.seams import seam_lengths
from kit.prose import sentences
from kit.sewing.in_work import shown_scenes
from kit.sewing.order import sew
from kit.sewing.places import beside, is_ring, without_end
from kit.sewing.run import Run
from kit.sewing.sections import bands as shapes
from kit.units import cm, mm
from tests.wear.garments import lesson_of


def codes(pattern) -> list[str]:
    return [refusal.code for refusal in sew(pattern)[1]]


def changed(garment, title, write):
    """The garment's order with one step written otherwise."""
    return garment.pattern([(name, write if name == title else own) for name, own in garment.steps])


def operation_of(pattern, title):
    return next(record for record in pattern.sewing if record.title == title).operations[0]


# ---- what reaches beyond --------------------------------------------------------------------------------------


def test_the_extension_lies_next_to_its_end(garments):
    pattern = garments.SKIRT.pattern()
    end = Run("waistband", ("end",))
    one, two = beside(pattern, end, 30.0)
    assert {(run.edges[0], run.start, run.end) for run in (one, two)} == {
        ("waist", 800.0, 830.0),
        ("inner", 0.0, 30.0),
    }
    assert without_end(pattern, Run("waistband", ("waist",)), end, 30.0) == (
        Run("waistband", ("waist",), None, 0.0, 800.0),
    )
    assert without_end(pattern, Run("waistband", ("inner",)), end, 30.0) == (
        Run("waistband", ("inner",), None, 30.0, 830.0),
    )


def test_an_extension_on_one_half_of_a_band_on_the_fold(garments):
    pattern = garments.JACKET.pattern()
    left = Run("band", ("end",), "left")
    halves = without_end(pattern, Run("band", ("neck",)), left, 20.0)
    size = garments.NECK
    assert halves == (Run("band", ("neck",), "left", 0.0, size - 20.0), Run("band", ("neck",), "right"))


def test_every_part_of_a_waistband_is_closed_by_its_own_step(garments):
    pattern = garments.SKIRT.pattern()
    state, _ = sew(pattern)
    closed = {
        edge: sorted((done.step, round(done.span.length)) for done in state.on(("waistband", "right", edge)))
        for edge in ("waist", "end", "inner", "start")
    }
    assert closed == {
        "waist": [("Set waistband", 800), ("Waistband ends", 30)],
        "inner": [("Close waistband", 800), ("Waistband ends", 30)],
        "end": [("Waistband ends", 70)],
        "start": [("Waistband ends", 70)],
    }


# ---- lengths --------------------------------------------------------------------------------------------------


def test_a_band_too_short_for_its_edge_is_refused(garments):
    def set_short(t):
        t.make.set_band(
            t.waistband.waist,
            [t.back.left.waist, t.front.waist, t.back.right.waist],
            allowance=1 * cm,
            overlap=5 * cm,
            at=t.waistband.end,
        )

    pattern = changed(garments.SKIRT, "Set waistband", set_short)
    (found,) = [r for r in sew(pattern)[1] if r.code == "band_length"]
    assert found.amount == pytest.approx(20.0)
    assert found.what == (
        "the waistband waist gives 78 cm (30 3/4 in), but the edge it is sewn to is 2 cm (3/4 in) longer than that."
    )


def test_gathers_drawn_up_to_another_length_are_refused(garments):
    pattern = changed(garments.JACKET, "Gather wrists", lambda t: t.make.gather(t.sleeve.wrist, to=15 * cm))
    assert codes(pattern) == ["band_length"]


def test_a_little_fullness_is_eased_by_a_row_of_long_stitches(garments):
    """Ease of 3 of 18 cm is gathered, 1 of 21 is eased (common practice, no source)."""

    def cuff_of(wide: float):
        return garments.rectangle(
            "cuff",
            wide,
            100,
            {"lower": 10, "end": 10, "inner": 10, "start": 10},
            cut=CutPlan(count=2, mirrored=True, interfacing=2),
        )

    def set_(ease):
        return lambda t: t.make.set_band(
            t.cuff.lower, t.sleeve.wrist, allowance=1 * cm, overlap=3 * cm, at=t.cuff.end, ease=ease
        )

    steps = [step for step in garments.JACKET.steps if step[0] not in ("Gather wrists", "Buttonholes", "Buttons")]

    def order(ease, *first):
        return [
            piece
            for name, own in steps
            for piece in ([*first, (name, set_(ease))] if name == "Set cuffs" else [(name, own)])
        ]

    eased = ("Ease wrists", lambda t: t.make.ease_stitch(t.sleeve.wrist))
    narrow, wide = cuff_of(210.0), cuff_of(240.0)
    assert codes(garments.JACKET.pattern(order(8 * cm), cuff=narrow)) == ["not_gathered_yet"]
    assert codes(garments.JACKET.pattern(order(2 * cm), cuff=wide)) == ["not_eased_yet"]
    assert codes(garments.JACKET.pattern(order(2 * cm, eased), cuff=wide)) == []
    assert codes(garments.JACKET.pattern(order(1 * cm, eased), cuff=wide)) == ["band_length"]


def test_an_overlap_is_named_with_its_end(garments):
    def broken(t):
        t.make.set_band(t.waistband.waist, t.front.waist, allowance=1 * cm, overlap=3 * cm)

    with pytest.raises(KitError, match="needs the end"):
        changed(garments.SKIRT, "Set waistband", broken)

    def long(t):
        t.make.band_ends(t.waistband.end, allowance=1 * cm, overlap=8 * cm, at=t.waistband.waist)

    with pytest.raises(KitError, match="takes all of the"):
        changed(garments.SKIRT, "Waistband ends", long)


def test_an_inner_band_drawn_otherwise_is_refused(garments):
    size = garments.NECK
    inner = garments.polygon(
        "inner_band",
        [(0, 0), (size - 5, 0), (size - 5, 35), (0, 35)],
        {"neck": 10, "end": 10, "top": 10, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    found = codes(garments.JACKET.pattern(inner_band=inner))
    assert "band_inner_length" in found


def lowered(garments, by: float):
    """The inner band drawn `by` mm deeper than the outer one, which is 35 mm deep."""
    size = garments.NECK
    return garments.polygon(
        "inner_band",
        [(0, -by), (size, -by), (size, 35), (0, 35)],
        {"neck": 10, "end": 10, "top": 10, "centre": 0},
        cut=CutPlan(fold="centre"),
    )


def closing(garments, by: float, **more):
    """Close the jacket's band over an inner piece that much deeper: codes, what is said, mm turned under."""

    def close(t):
        t.make.close_band(t.inner_band.neck, t.band.neck, allowance=1 * cm, **more)

    steps = [(name, close if name == "Close band" else own) for name, own in garments.JACKET.steps]
    pattern = garments.JACKET.pattern(steps, inner_band=lowered(garments, by))
    made = operation_of(pattern, "Close band")
    found = [code for code in codes(pattern) if code.startswith("band")]
    return found + [each.code for each in seam_lengths(pattern)], made.turned(pattern)


@pytest.mark.parametrize(
    ("by", "more", "found"),
    [
        (0.0, {}, []),
        (0.4, {"method": "hand"}, []),
        (20.0, {}, ["band_inner_deeper", "seam_length"]),
        (20.0, {"deeper": 3 * mm}, ["band_inner_deeper", "seam_length"]),
        (3.0, {"method": "hand"}, ["band_inner_deeper", "seam_length"]),
        (3.0, {"method": "groove"}, []),
        (5.0, {"method": "groove"}, ["band_inner_deeper", "seam_length"]),
        (3.0, {"deeper": 3 * mm}, []),
        (-4.0, {"method": "groove"}, ["band_inner_shallower", "seam_length"]),
    ],
)
def test_the_inner_piece_of_a_band_is_as_deep_as_its_outer_one_or_a_little_more_on_purpose(garments, by, more, found):
    """Stitched in the groove it reaches 2 to 3 mm past the seam, more is a slip (common practice, no source)."""
    assert closing(garments, by, **more)[0] == found


@pytest.mark.parametrize(
    ("fold", "more", "found"),
    [(50, {}, []), (35, {}, ["band_inner_deeper"]), (65, {}, ["band_inner_shallower"]), (48.5, {"deeper": 3 * mm}, [])],
)
def test_a_band_of_one_piece_is_measured_from_the_fold_that_is_marked_on_it(garments, fold, more, found):
    """The cuff is 100 mm wide: folded 35 mm above its lower edge its inner side hangs 30 mm too low."""
    cuff = garments.CUFF
    marks = (*cuff.marks, Mark("middle", "line", path=Path.line(Point(0, fold), Point(210, fold)), said="fold"))

    def close(t):
        t.make.close_band(t.cuff.inner, t.cuff.lower, allowance=1 * cm, overlap=3 * cm, at=t.cuff.end, **more)

    steps = [(name, close if name == "Close cuffs" else own) for name, own in garments.JACKET.steps]
    pattern = garments.JACKET.pattern(steps, cuff=replace(cuff, marks=marks))
    assert codes(pattern) == found
    first = sentences(pattern, operation_of(pattern, "Cuffs"))[0]
    assert ("along the marked line" in first) is (fold != 50)
    (scene,) = operation_of(pattern, "Cuffs").scenes(pattern)
    assert {round(scene.layers[0].fold.start.y, 1), round(scene.layers[0].fold.end.y, 1)} == {fold}


def test_a_fold_that_reaches_past_the_seam_is_drawn_so_or_turned_under_less(garments):
    assert closing(garments, 0.0)[1] == 10.0
    assert closing(garments, 0.0, deeper=3 * mm) == ([], 7.0)
    assert closing(garments, 3.0, deeper=3 * mm) == ([], pytest.approx(10.0))
    with pytest.raises(KitError, match="only 5 mm"):
        changed(
            garments.JACKET,
            "Close cuffs",
            lambda t: t.make.close_band(t.cuff.inner, t.cuff.lower, allowance=5 * mm, deeper=6 * mm),
        )


# ---- what it takes and says -----------------------------------------------------------------------------------


def test_a_facing_end_is_caught_in_the_seam_of_a_band(sewn, wrap):
    """Common practice, no source: the upper end of a front facing lies under the waistband and is sewn in with it."""
    front = wrap.polygon(
        "front",
        [(0, 0), (200, 0), (200, -300), (0, -300)],
        {"waist": 10, "side": 15, "hem": 30, "wrap": 10},
        cut=CutPlan(count=2, mirrored=True),
    )
    facing = wrap.polygon(
        "facing",
        [(0, 0), (60, 0), (60, -300), (0, -300)],
        {"waist": 10, "outer": 6, "hem": 30, "wrap": 10},
        cut=CutPlan(count=2, mirrored=True),
    )
    band = wrap.polygon(
        "band",
        [(0, 0), (200, 0), (200, 60), (0, 60)],
        {"waist": 10, "right_end": 10, "inner": 10, "left_end": 10},
        cut=CutPlan(count=2, mirrored=True),
    )

    def attach(make, front, facing, band):
        make.attach_facing(facing.wrap, front.wrap, allowance=1 * cm)

    def side(make, front, facing, band):
        make.narrow_hem(front.side, turn=7.5 * mm)

    def set_on(make, front, facing, band):
        make.set_band(band.waist, front.waist, allowance=1 * cm, catching=facing.waist)

    def without(make, front, facing, band):
        make.set_band(band.waist, front.waist, allowance=1 * cm)

    pieces = (front, facing, band)
    found = sewn(pieces, attach, side, set_on)
    assert found.codes == []
    assert found.said[0] == (
        "Lay the waist of the facing flat on the wrong side, raw edges even, so that the seam catches it."
    )
    assert found.last.takes(found.pattern)["facing", "waist"] == 10.0
    raw = {(each.piece, each.edge) for each in raw_edges(found.pattern, found.state)}
    assert ("facing", "waist") not in raw
    left = sewn(pieces, attach, side, without)
    assert ("facing", "waist") in {(each.piece, each.edge) for each in raw_edges(left.pattern, left.state)}
    assert not any("catches it" in each for each in left.said)
    (scene,) = found.last.scenes(found.pattern)
    assert scene.section.through(0) == ("facing", "garment", "outer band")

    def later(make, front, facing, band):
        make.set_band(band.waist, front.waist, allowance=1 * cm, catching=facing.waist, press="later")

    (scene,) = sewn(pieces, attach, side, later).last.scenes(found.pattern)
    assert scene.section.through(0) == ("facing", "garment", "outer band")
    assert [each for each in sewn(pieces, side, set_on, attach).codes if each == "caught_loose"] == ["caught_loose"]


def test_allowances_of_a_band(garments):
    pattern = garments.JACKET.pattern()
    assert operation_of(pattern, "Set band").takes(pattern) == {
        ("band", "neck"): 10.0,
        ("front", "neck"): 10.0,
        ("back", "neck"): 10.0,
    }
    assert operation_of(pattern, "Close band").takes(pattern) == {("inner_band", "neck"): 10.0}
    assert operation_of(pattern, "Cuffs").takes(pattern) == {
        ("cuff", edge): 10.0 for edge in ("start", "end", "lower", "inner")
    }


@pytest.mark.parametrize(("method", "key"), [("edgestitch", "Edgestitch"), ("groove", "From"), ("hand", "Slip")])
def test_a_band_is_closed_in_three_ways(garments, method, key):
    def close(t):
        t.make.close_band(t.inner_band.neck, t.band.neck, allowance=1 * cm, method=method)

    pattern = changed(garments.JACKET, "Close band", close)
    assert codes(pattern) == []
    assert sentences(pattern, operation_of(pattern, "Close band"))[2].startswith(key)


# ---- sleeves --------------------------------------------------------------------------------------------------


def test_rings(garments):
    pattern = garments.JACKET.without("Sleeves")
    state, _ = sew(pattern)
    hole = (Run("back", ("armscye",)), Run("front", ("armscye",)))
    cap = (Run("sleeve", ("back_cap", "front_cap")),)
    assert is_ring(state, pattern, hole) and is_ring(state, pattern, cap)
    assert not is_ring(state, pattern, (Run("back", ("armscye",)),))
    open_shoulders = garments.JACKET.without("Sleeves", "Shoulders")
    assert not is_ring(sew(open_shoulders)[0], open_shoulders, hole)


def test_a_cap_with_another_ease_is_found_by_the_proof(garments):
    from kit.proof import prove

    def sleeves(t):
        t.make.set_in_sleeve(
            t.sleeve.back_cap + t.sleeve.front_cap, [t.back.armscye, t.front.armscye], allowance=15 * mm, ease=2 * cm
        )

    pattern = changed(garments.JACKET, "Sleeves", sleeves)
    assert "ease_amount" in {finding.code for finding in prove(pattern)}


def test_a_sleeve_says_its_notches(garments):
    pattern = garments.JACKET.pattern()
    keys = [key for key, _ in operation_of(pattern, "Sleeves").sentences(pattern)]
    assert keys == [
        f"set_in_sleeve.{key}" for key in ("place", "pin_notched", "ease", "sew", "trim", "finish", "press")
    ] + ["both_sides"]
    bare = garments.JACKET.pattern(sleeve=replace(garments.SLEEVE, notches=()))
    assert "set_in_sleeve.pin" in [key for key, _ in operation_of(bare, "Sleeves").sentences(bare)]


# ---- turned through a gap -------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def pouch(garments):
    """Two squares to be seamed all round and turned through a gap."""

    def square(name):
        return garments.rectangle(name, 200, 200, {"lower": 10, "far": 10, "upper": 10, "near": 10})

    return square("front"), square("back")


def round_(gap=(6 * cm, 14 * cm)):
    def write(make, front, back):
        make.seam_to_turn(front.far + front.upper + front.near, back.far + back.upper + back.near, allowance=1 * cm)
        make.seam_to_turn(front.lower, back.lower, allowance=1 * cm, gap=gap)

    return write


def turn(make, front, back):
    make.turn_out(front, back, through=front.lower)


def close(make, front, back):
    make.slip_stitch(front.lower.between(6 * cm, 14 * cm), back.lower.between(6 * cm, 14 * cm), allowance=1 * cm)


def test_a_pouch_is_turned_through_its_gap_and_closed_by_hand(sewn, pouch):
    found = sewn(pouch, round_(), turn, close)
    assert found.codes == []
    assert found.state.inside_out == frozenset()
    for piece in pouch:
        for edge in piece.edges:
            assert found.state.raw(piece, "right", edge.name) == ()
    assert found.last.takes(found.pattern) == {("front", "lower"): 10.0, ("back", "lower"): 10.0}
    assert found.said[1].startswith("Slip stitch by hand")


@pytest.mark.parametrize(
    ("writes", "code"),
    [
        ((round_(gap=None), turn), "gap_shut"),
        ((round_(), close), "inside_out"),
        ((turn, round_()), "right_side_out_already"),
        ((round_(), turn, turn), "right_side_out_already"),
        ((round_(gap=(6 * cm, 7 * cm)), turn), "gap_narrow"),
    ],
)
def test_turning_is_refused(sewn, pouch, writes, code):
    assert code in sewn(pouch, *writes).codes


def test_a_piece_left_inside_out_is_wanted_turned(sewn, pouch):
    found = sewn(pouch, round_())
    wanted = {
        fact for record in found.pattern.sewing for each in record.operations for fact in each.wants(found.pattern)
    }
    assert {("turned_out", "front"), ("turned_out", "back")} <= wanted - found.state.facts


# ---- cross-sections: counts worked by hand (common practice, no source) ----------------------------------------

BY_HAND = {
    # name: (section, cut edges, of these shut in, folds of each ply)
    "set": (shapes.band_set(), 2, 1, [0, 1]),
    "set, a facing caught": (shapes.band_set(caught=True), 3, 2, [0, 0, 1]),
    "laid on, a facing caught": (shapes.band_laid_on_facing(), 3, 1, [0, 0, 0]),
    "closed": (shapes.band_closed(), 3, 3, [1, 0, 1]),
    "closed by hand": (shapes.band_closed(stitched=False), 3, 3, [1, 0, 1]),
    "turned": (shapes.turned_out(), 2, 2, [1, 1]),
    "end": (shapes.band_end(), 2, 0, [1]),
    "gap": (shapes.gap_closed(), 2, 2, [1, 1]),
    "sleeve": (shapes.sleeve_set(), 2, 1, [0, 1]),
}


@pytest.mark.parametrize("name", BY_HAND)
def test_cut_edges_and_folds(name):
    found, raw, enclosed, folds = BY_HAND[name]
    assert (found.raw_edges, found.enclosed) == (raw, enclosed)
    assert [ply.folds for ply in found.plies] == folds


def test_what_lies_in_a_closed_band():
    band = shapes.band_closed()
    assert band.at(2.0) == ("inner band", "inner band", "garment", "outer band", "outer band")
    assert band.at(-5.0) == ("garment",)
    assert band.at(8.0) == ("inner band", "outer band")
    assert band.through(0) == ("garment", "outer band")
    assert band.through(1) == ("inner band", "inner band", "garment", "outer band", "outer band")
    assert shapes.band_closed(stitched=False).through(1) == ("inner band", "inner band", "garment")
    assert shapes.sleeve_set().through(0) == ("body", "sleeve")
    assert shapes.gap_closed().through(0) == ("inner", "outer")


# ---- caught between two bands; shut in together later ---------------------------------------------------------


def both_in_one(t):
    return t.band.end + t.band.top, t.inner_band.end + t.inner_band.top


def collared(garments, long: float, bands=both_in_one):
    """The jacket with a collar caught between its two bands, its neck edge `long` on a half; how the edges of the
    `bands` are written."""
    collar = garments.polygon(
        "collar",
        [(0, 0), (long, 0), (long + 15, 60), (0, 50)],
        {"neck": 10, "end": 10, "outer": 10, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    under = replace(collar, name="under_collar", title="Under collar")

    def collar_made(t):
        one, other = t.collar, t.under_collar
        t.make.seam_to_turn(one.end + one.outer, other.end + other.outer, allowance=1 * cm)
        t.make.turn_out(one, other, through=[one.neck, other.neck])

    def seam(t):
        t.make.seam_band(
            *bands(t),
            allowance=1 * cm,
            catching=[t.collar.neck, t.under_collar.neck],
        )

    steps = [
        each
        for name, own in garments.JACKET.steps
        for each in ([("Collar", collar_made), (name, seam)] if name == "Seam band" else [(name, own)])
    ]
    return replace(garments.JACKET, pieces=(*garments.JACKET.pieces, collar, under)).pattern(steps)


def test_a_collar_is_caught_between_its_two_bands(garments):
    pattern = collared(garments, garments.NECK)
    state, refusals = sew(pattern)
    assert [each.code for each in refusals] == [] and not raw_edges(pattern, state)
    assert state.joined(("collar", "right"), ("band", "right"))
    seam = operation_of(pattern, "Seam band")
    assert sentences(pattern, seam)[0] == (
        "Lay the neck edge of the collar and under collar along the top of the band on the right side, raw edges even "
        "and centres matched, and baste: the seam catches it between the two layers."
    )
    assert seam.scenes(pattern)[0].section.plies[1].stuff == "strip"


@pytest.mark.parametrize(
    "bands",
    [
        lambda t: ([t.band.end, t.band.top], t.inner_band.end + t.inner_band.top),
        lambda t: (t.band.end + t.band.top, [t.inner_band.end, t.inner_band.top]),
        lambda t: ([t.band.end, t.band.top], [t.inner_band.end, t.inner_band.top]),
    ],
)
def test_the_edges_of_both_bands_may_be_written_apart(garments, bands):
    """What stands between them is the same, and so are the pictures of it, but for how the runs are parted."""
    pattern, usual = collared(garments, garments.NECK, bands), collared(garments, garments.NECK)
    assert codes(pattern) == codes(usual) == []
    for each in (pattern, usual):
        seam = operation_of(each, "Seam band")
        assert seam.caught_along(each, Run("collar", ("neck",), "right"), "inner_band").edges == ("top",)
        for record in each.sewing:
            assert all(shown_scenes(each, operation) is not None for operation in record.operations)


def test_a_collar_of_another_length_is_refused(garments):
    found = [r for r in sew(collared(garments, garments.NECK - 6))[1] if r.code == "caught_length"]
    assert [r.piece for r in found] == ["collar", "under_collar"]
    assert "no edge of the band it is to lie along is as long" in found[0].what


def button_band(garments, sewn, *after):
    """A front with a folded band along its edge, set on while the neck is raw; `after` comes next."""
    front = garments.rectangle("front", 200, 500, {"hem": 20, "side": 10, "neck": 10, "edge": 10})
    band = garments.polygon(
        "band",
        [(0, 0), (0, 500), (30, 500), (60, 500), (60, 0)],
        {"outer": 10, "top": 10, "inner_top": 10, "inner": 10, "bottom": 10},
    )

    def set_on(make, front, band):
        make.narrow_hem(front.hem, turn=1 * cm)
        make.set_band(band.outer, front.edge, allowance=1 * cm)
        make.band_ends(band.bottom, allowance=1 * cm)
        make.turn_out(band, through=band.inner)
        make.close_band(band.inner, band.outer, allowance=1 * cm)

    return sewn((front, band), set_on, *after).codes


def test_the_upper_end_of_a_button_band_is_shut_in_with_the_neck(garments, sewn):
    """The band is set on before the collar (common practice, no source); where nothing goes over neck and band in one
    later, its end stays raw."""
    assert button_band(garments, sewn) == ["band_end_raw", "band_end_open"]

    def neck(make, front, band):
        make.staystitch(front.neck)
        make.edge_finish(band.top + front.neck, band.inner_top)

    def neck_alone(make, front, band):
        make.edge_finish(front.neck)

    assert button_band(garments, sewn, neck_alone) == ["band_end_raw", "band_end_open"]
    assert button_band(garments, sewn, neck) == []


def wrapped(garments, sewn, row, hemmed=("edge",)):
    """A wrap front whose waist is drawn in two edges, with a band along both; `row` names them."""
    front = garments.polygon(
        "front",
        [(0, 0), (0, 300), (100, 300), (300, 300), (300, 0)],
        {"edge": 10, "wrap": 10, "waist": 10, "side": 10, "hem": 10},
    )
    band = garments.rectangle("band", 300, 50, {"lower": 10, "right": 10, "upper": 10, "left": 10})

    def set_on(make, front, band):
        make.narrow_hem(front.hem, front.side, turn=5 * mm)
        for name in hemmed:
            make.narrow_hem(getattr(front, name), turn=5 * mm)
        make.set_band(band.lower, row(front), allowance=1 * cm)

    return sewn((front, band), set_on).codes


@pytest.mark.parametrize(
    "row", [lambda front: [front.wrap, front.waist], lambda front: front.wrap + front.waist], ids=["list", "run"]
)
def test_edges_of_one_row_are_not_raw_beside_each_other(garments, sewn, row):
    """However the row is written, a band along both edges ends at the finished edges beside the row, and only there
    (common practice, no source)."""
    assert "band_end_raw" not in wrapped(garments, sewn, row)
    assert "band_end_raw" in wrapped(garments, sewn, row, hemmed=())


def test_a_cuff_may_begin_at_a_place_within_the_gathered_wrist(garments):
    """As at a slit: from there to the seam and from the seam on are together the whole edge as it is drawn up."""

    def parts(t):
        wrist = t.sleeve.wrist
        t.make.set_band(
            t.cuff.lower, [wrist.after(5 * cm), wrist.before(5 * cm)], allowance=1 * cm, overlap=3 * cm, at=t.cuff.end
        )

    assert codes(changed(garments.JACKET, "Set cuffs", parts)) == codes(garments.JACKET.pattern()) == []

    def less(t):
        t.make.gather(t.sleeve.wrist, to=15 * cm)

    steps = [(n, {"Gather wrists": less, "Set cuffs": parts}.get(n, own)) for n, own in garments.JACKET.steps]
    assert codes(garments.JACKET.pattern(steps)) == ["band_length"]


def test_a_band_is_shown_where_the_work_is_and_on_the_longest_of_its_edges(garments):
    """A folded button band is stitched across at its lower end, and a stand is set on the neck, not on the 3 cm of the
    band's upper end beside it."""
    pattern = lesson_of("shirt", ()).work()
    made = {
        (each.kind, (each.b if each.kind == "set_band" else each.ends)[0].piece): each
        for record in pattern.sewing
        for each in record.operations
        if each.kind in ("set_band", "band_ends")
    }
    (scene,) = shown_scenes(pattern, made["band_ends", "band"])
    front = pattern.piece("front").edge("front_edge").path
    focus = scene.focus
    assert focus.piece == "front" and focus.edges == ("front_edge",)
    middle = front.at(((focus.start or 0.0) + (focus.end or 0.0)) / 2)
    assert middle.y < front.at(front.length / 2).y  # near the hem
    scenes = shown_scenes(pattern, made["set_band", "band"])
    assert {layer.run.piece for scene in scenes for layer in scene.layers} >= {"front", "stand"}
    assert all(row.run.edges != ("top",) for scene in scenes for row in scene.rows)
