"""A band set on in the order of the trade: scissors before and after the seam, pressed away, each a step of its own;
what its sentences say of the garment as it is by then."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Arc, Path, Point
from kit.piece.piece import CutPlan, Edge, Piece
from kit.sewing.before import state_before
from kit.sewing.curves import clip_spacing, needs_scissors, tightest
from kit.sewing.order import sew
from kit.sewing.run import Run
from kit.units import cm, mm

PAIR = CutPlan(count=2, mirrored=True)
HOLLOW = Arc(Point(0, 300), 80, 0, -math.pi / 2)
ROUND = Arc(Point(80, 220), 80, math.pi / 2, math.pi / 2)
LONG = 40 * math.pi


def panel(curve: Arc = HOLLOW, allowance: float = 10.0) -> Piece:
    """A panel with a quarter circle of 80 mm radius at one corner: hollow like a neck, or round."""
    hem, side = Path.line(Point(0, 0), Point(300, 0)), Path.line(Point(300, 0), Point(300, 300))
    upper, centre = Path.line(Point(300, 300), Point(80, 300)), Path.line(Point(0, 220), Point(0, 0))
    paths = {"hem": hem, "side": side, "upper": upper, "neck": Path.of(curve), "centre": centre}
    edges = tuple(Edge(name, path, allowance if name == "neck" else 15.0) for name, path in paths.items())
    return Piece("panel", "Panel", edges, cut=PAIR)


@pytest.fixture
def band(garments) -> Piece:
    """As long as the curve, 60 mm wide, to be folded lengthwise."""
    return garments.rectangle("band", LONG, 60, {"outer": 10, "far_end": 10, "inner": 10, "near_end": 10}, cut=PAIR)


def edges(make, panel, **others):
    make.narrow_hem(panel.upper, turn=5 * mm)
    make.narrow_hem(panel.centre, turn=5 * mm)


def set_on(**more):
    return lambda make, panel, band: make.set_band(band.outer, panel.neck, allowance=1 * cm, **more)


def keys(found) -> list[str]:
    return [key.removeprefix("set_band.") for key, _ in found.last.sentences(found.pattern)]


# ---- curves: circles of a known radius (plane geometry) ----------------------------------------------------------


@pytest.mark.parametrize("radius", [20.0, 80.0, 400.0])
def test_the_tightest_place_of_a_circle_is_its_radius(sewn, radius):
    """The circle through three points of a circle is that circle."""
    arc = Arc(Point(0, 300 + radius - 80), radius, 0, -math.pi / 6)
    edge = Path.of(arc)
    square = [Point(edge.end.x, 0), Point(edge.start.x, 0)]
    rest = [Path.line(edge.end, square[0]), Path.line(square[0], square[1]), Path.line(square[1], edge.start)]
    names = ("neck", "near", "hem", "far")
    piece = Piece("panel", "Panel", tuple(Edge(n, p, 10.0) for n, p in zip(names, [edge, *rest], strict=True)))
    pattern = sewn((piece,)).pattern
    run = Run("panel", ("neck",))
    found = [tightest(pattern, run, "in"), tightest(pattern, run, "out")]
    assert sorted(found, key=str)[0] == pytest.approx(radius, rel=1e-6) and None in found
    assert tightest(pattern, Run("panel", ("hem",)), "in") is None


def test_a_hollow_curve_bends_in_and_a_round_one_out(sewn):
    for curve, way, other in ((HOLLOW, "in", "out"), (ROUND, "out", "in")):
        pattern = sewn((panel(curve),)).pattern
        run = Run("panel", ("neck",))
        assert tightest(pattern, run, way) == pytest.approx(80.0, rel=1e-6)
        assert tightest(pattern, run, other) is None
        long = Run("panel", ("upper", "neck", "centre"))
        assert tightest(pattern, long, way) == pytest.approx(80.0, rel=1e-6)


def test_clips_stand_so_far_apart_that_each_opens_two_millimetres():
    """Worked by hand: 10 mm from a stitch line of radius 80 mm the edge is 1/8 shorter; 2 mm of that are 16 mm, down to
    the next 5."""
    assert clip_spacing(80.0, 10.0) == 15.0
    assert clip_spacing(80.0, 20.0) == 5.0
    assert clip_spacing(20.0, 10.0) == 5.0
    assert clip_spacing(900.0, 10.0) == 25.0
    assert needs_scissors(199.0, 10.0) and not needs_scissors(201.0, 10.0) and not needs_scissors(None, 10.0)


# ---- a straight band and a curve -----------------------------------------------------------------------------------


def test_a_hollow_curve_is_staystitched_and_clipped_before_a_straight_band_is_pinned(sewn, band):
    found = sewn((panel(), band), edges, set_on())
    assert found.codes == []
    assert keys(found) == ["staystitch", "pin", "match_raw", "sew", "trim", "press", "both_sides"]
    assert found.said[0] == (
        "Staystitch the neck edge of the panel 3 mm (1/8 in) outside the stitch line and clip the allowance up to that "
        "row, about every 1.5 cm (5/8 in) where the curve is tightest: so it spreads and lies straight along the band."
    )
    (clips,) = found.last.scenes(found.pattern)[0].things
    assert (clips.kind, clips.apart, clips.run.piece) == ("clips", 15.0, "panel")


def test_what_steps_of_their_own_have_done_is_not_said_again(sewn, band):
    def staystitch(make, panel, band):
        make.staystitch(panel.neck)

    def clip(make, panel, band):
        make.clip_first(panel.neck)

    pieces = (panel(), band)
    assert keys(sewn(pieces, edges, staystitch, set_on()))[0] == "clip_curve"
    found = sewn(pieces, edges, staystitch, clip, set_on())
    assert (found.codes, keys(found)[0]) == ([], "pin")
    assert keys(sewn(pieces, edges, set_on(clip=False)))[0] == "pin"
    assert len(found.last.scenes(found.pattern)) == 1


def test_for_a_round_curve_the_straight_band_is_clipped(sewn, band):
    def clip(make, panel, band):
        make.clip_first(band.outer, fit=panel.neck)

    pieces = (panel(ROUND), band)
    found = sewn(pieces, edges, set_on())
    assert keys(found)[0] == "clip_band"
    assert found.said[0] == (
        "Clip the allowance of the outer edge of the band almost to its stitch line, about every 1.5 cm (5/8 in) where "
        "the neck edge of the panel curves most tightly, so that it spreads around the curve."
    )
    found = sewn(pieces, edges, clip, set_on())
    assert (found.codes, keys(found)[0]) == ([], "pin")


def test_a_shaped_band_is_clipped_after_the_seam_and_a_straight_edge_not_at_all(sewn, band, garments):
    shaped = replace(panel(ROUND), name="band", title="Band")
    made = (panel(), replace(shaped, edges=tuple(replace(e, allowance=10.0) for e in shaped.edges)))

    def write(make, panel, band):
        make.set_band(band.neck, panel.neck, allowance=1 * cm)

    assert keys(sewn(made, edges, write)) == ["pin", "match_raw", "sew", "trim", "clip", "press", "both_sides"]
    skirt = garments.SKIRT.pattern()
    (step,) = [record for record in skirt.sewing if record.title == "Set waistband"]
    assert [key for key, _ in step.operations[0].sentences(skirt)] == [
        f"set_band.{key}" for key in ("pin", "ends_beyond_raw", "sew", "trim", "press")
    ]


@pytest.mark.parametrize(
    ("curve", "writes", "code"),
    [
        (HOLLOW, ("clip",), "clip_first_loose"),
        (ROUND, ("clip",), "clip_first_straight"),
        (HOLLOW, ("stay", "clip", "sew", "clip"), "clip_first_late"),
        (HOLLOW, ("clip band",), "clip_first_straight"),
    ],
)
def test_clipping_first_is_refused(sewn, band, curve, writes, code):
    words = {
        "stay": lambda make, panel, band: make.staystitch(panel.neck),
        "clip": lambda make, panel, band: make.clip_first(panel.neck),
        "clip band": lambda make, panel, band: make.clip_first(band.outer, fit=panel.neck),
        "sew": set_on(),
    }
    assert sewn((panel(curve), band), edges, *(words[word] for word in writes)).codes == [code]


# ---- each part a step of its own -----------------------------------------------------------------------------------


def close(make, panel, band):
    make.band_ends(band.near_end, band.far_end, allowance=1 * cm)
    make.turn_out(band, through=band.inner)
    make.close_band(band.inner, band.outer, allowance=1 * cm)


def test_a_band_step_by_step(sewn, band):
    def scissors(make, panel, band):
        make.trim(band.outer, to="half")
        make.grade(panel.neck, to=3 * mm, wider=5 * mm)

    def press(make, panel, band):
        make.press(panel.neck, way=band)

    pieces, by_hand = (panel(), band), set_on(clip=False, grade=False, press="later")
    found = sewn(pieces, edges, by_hand)
    assert keys(found) == ["pin", "match_raw", "sew", "press_later", "both_sides"]
    assert sewn(pieces, edges, by_hand, scissors, press, close).codes == []
    assert "band_not_pressed" in sewn(pieces, edges, by_hand, scissors, close).codes
    assert (
        sewn(pieces, edges, by_hand, press).said[0]
        == "Press the seam along the neck edge of the panel towards the band."
    )


def test_an_allowance_is_trimmed_in_half(sewn, band):
    def trim(make, panel, band):
        make.trim(panel.neck, to="half")

    found = sewn((panel(), band), edges, set_on(), trim)
    assert (found.codes, found.last.to) == ([], 5.0)
    assert found.said[0] == "Trim the allowances along the neck edge of the panel in half, to 5 mm (3/16 in)."
    with pytest.raises(KitError, match="no one allowance to be halved"):
        sewn((panel(), band), lambda make, panel, band: make.trim(panel.neck, panel.side, to="half"))
    with pytest.raises(KitError, match="no step says how wide"):
        bare = panel(allowance=None)  # type: ignore[arg-type]
        sewn((bare, band), lambda make, panel, band: make.trim(panel.neck, to="half"))
    assert "trimmed_away" in sewn((panel(allowance=3.0), band), edges, set_on(), trim).codes


def test_what_is_seamed_to_be_turned_is_clipped_and_notched_only_where_it_curves(sewn):
    """A neck facing's hollow curve is clipped, a collar's round one notched, a straight one left alone."""

    def keys_of(curve, *names, **more):
        outer, inner = panel(curve), replace(panel(curve), name="lining", title="Lining")

        def write(make, panel, lining):
            make.seam_to_turn(getattr(panel, names[0]), getattr(lining, names[0]), allowance=1 * cm, **more)

        found = sewn((outer, inner), write)
        return [key.removeprefix("seam_to_turn.") for key, _ in found.last.sentences(found.pattern)][1:-1]

    assert keys_of(HOLLOW, "neck") == ["sew", "trim", "clip"]
    assert keys_of(ROUND, "neck") == ["sew", "trim", "notch"]
    assert keys_of(ROUND, "hem") == ["sew", "trim"]
    assert keys_of(ROUND, "neck", grade=False, clip=False) == ["sew"]


# ---- what the sentences say of the garment by then -----------------------------------------------------------------


def test_a_band_whose_ends_are_joined_is_a_ring_with_no_ends_to_match(sewn, band):
    def join(make, panel, band):
        make.plain_seam(band.near_end, band.far_end, allowance=1 * cm)

    assert "match_ring" in keys(sewn((panel(), band), edges, join, set_on()))
    assert "match_ring" not in keys(sewn((panel(), band), edges, set_on()))


def test_finished_ends_lie_at_the_edges_ends_and_raw_ones_reach_beyond(garments):
    pattern = garments.JACKET.pattern()
    said = {record.title: record.operations[0].sentences(pattern) for record in pattern.sewing}
    assert "set_band.match" in [key for key, _ in said["Set band"]]  # seamed and turned out before
    (lies,) = [values for key, values in said["Set cuffs"] if key == "set_band.ends_beyond"]
    assert lies["end"] == ((Run("cuff", ("end",)),), "edge")


def test_the_ends_of_a_band_that_hangs_on_the_garment_are_stitched_up_to_its_seam(sewn, band):
    def ends(make, panel, band):
        make.band_ends(band.near_end, band.far_end, allowance=1 * cm)

    pieces = (panel(), band)
    first, later = sewn(pieces, edges, ends), sewn(pieces, edges, set_on(), ends)
    assert [key for key, _ in first.last.sentences(first.pattern)][1] == "band_ends.sew"
    assert [key for key, _ in later.last.sentences(later.pattern)][1] == "band_ends.sew_set"
    assert len(later.said) == len(first.said)


def test_the_state_before_an_operation(garments):
    pattern = garments.JACKET.pattern()
    (made,) = [op for record in pattern.sewing if record.title == "Set band" for op in record.operations]
    before = state_before(pattern, made)
    assert ("turned_out", "band") in before.facts
    assert not any(fact[0] == "band_set" for fact in before.facts)
    assert before.facts < sew(pattern)[0].facts
    stranger = replace(made, allowance=7.0)
    assert state_before(pattern, stranger).closed == ()
