"""Strips by themselves: seamed and turned in two steps with scissors between them, edgestitched, hemmed, drawn so."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.picture.sewing import scene_drawing
from kit.piece.piece import CutPlan, Strip
from kit.proof import prove
from kit.prose import sentences
from kit.sewing import section
from kit.units import cm, mm

TIE = Strip("tie", "Tie", 620, 80, 2, finished_length=600, finished_width=30, fold="in_two")
LOOP = Strip("loop", "Loop", 80, 40, 1, finished_length=60, finished_width=10, fold="in_four")
SASH = Strip("sash", "Sash", 1020, 120, 1, finished_length=1000, finished_width=100, fold="hemmed")
BIAS = Strip("bias", "Bias strip", 400, 32, 1, grain="bias")


@pytest.fixture
def panel(garments):
    return (
        garments.polygon(
            "panel",
            [(0, 0), (150, 0), (150, -200), (0, -200)],
            {"top": 10, "side": 15, "hem": 30, "centre": 0},
            cut=CutPlan(fold="centre"),
        ),
    )


def sewing(*more, **turned):
    """The tie seamed, then `more` with the scissors, then turned: each in a step of its own."""

    def seam(make, tie, **_):
        make.turn_strip(tie, allowance=1 * cm, rows="sew", **turned)

    def turn(make, tie, **_):
        make.finish(tie)

    return (seam, *more, turn)


def told(found, step: int) -> list[str]:
    (made,) = found.pattern.sewing[step].operations
    return sentences(found.pattern, made)


def lines(found, step: int, scene: int = -1) -> list[tuple[str, tuple[float, float, float, float]]]:
    """The rows in the picture of a step: (role, start x, y, end x, y)."""
    (made,) = found.pattern.sewing[step].operations
    drawing = scene_drawing(made.scenes(found.pattern)[scene], found.pattern)
    return [
        (item.role, (line.start.x, line.start.y, line.end.x, line.end.y))
        for item in drawing.items
        if getattr(item, "role", "") in ("row", "old_row")
        for line in item.curves
    ]


# ---- scissors between sewing and turning -----------------------------------------------------------------------


def test_the_seam_of_a_strip_is_trimmed_and_graded_before_it_is_turned(sewn, panel):
    def trim(make, tie, **_):
        make.trim(tie.sides, to=5 * mm)

    def half(make, tie, **_):
        make.trim(tie.sides, to="half")

    def grade(make, tie, **_):
        make.grade(tie.sides, to=3 * mm, wider=6 * mm)

    found = sewn(panel, *sewing(trim), strips=(TIE,))
    assert found.codes == [] and found.state.made == ("tie",)
    assert told(found, 1) == ["Trim the allowances along the seam of the tie to 5 mm (3/16 in)."]
    assert told(found, 2)[0] == "Go on with the tie."
    assert told(found, 2)[1].startswith("Turn right side out and press: 3 cm")
    assert told(sewn(panel, *sewing(half), strips=(TIE,)), 1)[0].endswith("in half, to 5 mm (3/16 in).")
    assert told(sewn(panel, *sewing(grade), strips=(TIE,)), 1) == [
        "Grade the seam of the tie: trim one allowance to 3 mm (1/8 in) and leave the other 6 mm (1/4 in) wide."
    ]
    assert not [each for each in prove(found.pattern) if each.level == "error" and "tie" in str(each)]


def test_scissors_reach_a_strip_between_sewing_and_turning_only(sewn, panel):
    def trim(make, tie, **_):
        make.trim(tie.sides, to=5 * mm)

    seam, turn = sewing()
    cases = (
        ((trim, seam, turn), "strip_seam_not_sewn"),
        ((seam, turn, trim), "strip_seam_not_sewn"),
        ((seam, lambda make, tie, **_: make.trim(tie.ends, to=5 * mm), turn), "strip_end_open"),
        ((seam, lambda make, tie, **_: make.trim(tie.sides, to=1 * mm), turn), "trimmed_away"),
        ((seam, lambda make, tie, **_: make.trim(tie.sides, to=10 * mm), turn), "strip_nothing_to_trim"),
        ((seam, lambda make, tie, **_: make.grade(tie.sides, wider=10 * mm), turn), "strip_nothing_to_trim"),
    )
    for steps, code in cases:
        assert sewn(panel, *steps, strips=(TIE,)).codes == [code]


def test_the_slanted_end_is_trimmed_by_itself(sewn, panel):
    def trim(make, tie, **_):
        make.trim(tie.ends, to=4 * mm)

    found = sewn(panel, *sewing(trim, slant=3 * cm, trim=False), strips=(TIE,))
    assert found.codes == []
    assert not any("Trim" in line for line in told(found, 0))
    assert told(found, 1)[0].startswith("Trim the allowances across the seamed end of the tie to 4 mm")


def test_edges_of_pieces_and_of_strips_are_cut_in_calls_of_their_own(sewn, panel):
    with pytest.raises(KitError, match="named together"):
        sewn(panel, lambda make, panel, tie: make.trim(panel.top, tie.sides, to=5 * mm), strips=(TIE,))
    with pytest.raises(KitError, match=r"tie\.sides or tie\.ends"):
        sewn(panel, lambda make, tie, **_: make.trim(tie, to=5 * mm), strips=(TIE,))


def test_a_strip_begun_and_never_turned_is_not_made(sewn, panel):
    seam, _ = sewing()

    def fix(make, panel, tie):
        make.attach_strip(tie, panel.left.side, at=5 * cm, method="caught")

    assert sewn(panel, seam, fix, strips=(TIE,)).codes == ["strip_not_made"]
    (left,) = [each for each in prove(sewn(panel, seam, strips=(TIE,)).pattern) if each.code == "never_finished"]
    assert "Tie" in str(left) and "make.finish(tie)" in str(left)


def test_a_strip_is_gone_on_with_once_by_its_name(sewn, panel):
    seam, turn = sewing()
    with pytest.raises(KitError, match="finished already"):
        sewn(panel, seam, turn, turn, strips=(TIE,))
    with pytest.raises(KitError, match="nothing is begun"):
        sewn(panel, turn, strips=(TIE,))


def test_a_bias_facing_is_graded_between_its_rows(sewn, panel):
    def first(make, panel, bias):
        make.bias_facing(panel.top, strip=bias, allowance=1 * cm, finished=12 * mm, trim=False, rows="first")

    def grade(make, panel, bias):
        make.grade(bias.sides, to=4 * mm, wider=7 * mm)

    def rest(make, panel, bias):
        make.finish(panel.top)

    found = sewn(panel, first, grade, rest, strips=(BIAS,))
    assert found.codes == []
    assert told(found, 1) == [
        "Grade the seam that holds the bias strip: trim the allowance of the bias strip to 4 mm (1/8 in) and leave "
        "that of the garment 7 mm (1/4 in) wide."
    ]
    assert not any("Trim and clip" in line for line in told(found, 2))
    assert sewn(panel, first, rest, grade, strips=(BIAS,)).codes == ["strip_seam_not_sewn"]


# ---- rows of stitching, hems, slants, and how they are drawn ----------------------------------------------------


def test_one_side_or_both_are_edgestitched(sewn, panel):
    def fold(sides):
        return lambda make, loop, **_: make.fold_strip(loop, ends=0, sides=sides)

    one, both = (sewn(panel, fold(sides), strips=(LOOP,)) for sides in ("one side", "both sides"))
    assert one.said[-1] == "Edgestitch 2 mm (1/16 in) from the open long edge, where the two folds meet."
    assert both.said[-1] == "Edgestitch 2 mm (1/16 in) from both long edges."
    assert (len(lines(one, 0)), len(lines(both, 0))) == (1, 2)
    (low, high) = sorted(y for _, (_, y, _, _) in lines(both, 0))
    assert high - low == pytest.approx(10 - 2 * 2)

    def turn(stitched):
        return lambda make, tie, **_: make.turn_strip(tie, allowance=1 * cm, stitched=stitched)

    found = {word: sewn(panel, turn(word), strips=(TIE,)) for word in ("none", "one side", "both sides")}
    assert [len(lines(each, 0)) for each in found.values()] == [0, 1, 2]
    assert "Edgestitch 2 mm (1/16 in) from the seamed edge." in found["one side"].said


def test_a_slanted_end_is_drawn_slanted(sewn, panel):
    """The seamed edge is 3 cm shorter than the fold, before and after turning."""
    found = sewn(panel, lambda make, tie, **_: make.turn_strip(tie, allowance=1 * cm, slant=3 * cm), strips=(TIE,))
    (along, slant) = lines(found, 0, 0)
    assert along[1][2] - slant[1][2] == pytest.approx(-30.0) and slant[1][:2] == along[1][2:]
    (made,) = found.pattern.sewing[0].operations
    drawing = scene_drawing(made.scenes(found.pattern)[-1], found.pattern)
    turned = next(item for item in drawing.items if getattr(item, "role", "") == "strip")
    ends = sorted({round(point.x, 3) for line in turned.curves for point in (line.start, line.end)})
    assert ends == [0.0, 570.0, 600.0]


def test_a_strip_of_one_layer_is_hemmed(sewn, panel):
    def hem(ends="both", turn=5 * mm):
        return lambda make, sash, **_: make.hem_strip(sash, turn=turn, ends=ends)

    found = sewn(panel, hem(), strips=(SASH,))
    assert found.codes == [] and found.state.made == ("sash",)
    assert found.said == [
        "Turn both long edges of the sash 5 mm (3/16 in) to the wrong side, twice, and press: 10 cm (3 15/16 in) wide.",
        "Stitch close to the inner folds.",
        "Turn in both short ends in the same way, the corners folded flat, and stitch across.",
    ]
    assert [len(lines(sewn(panel, hem(ends), strips=(SASH,)), 0)) for ends in ("none", "one", "both")] == [2, 3, 4]
    assert sewn(panel, hem(turn=7 * mm), strips=(SASH,)).codes == ["strip_width"]
    with pytest.raises(KitError, match="cut to be hemmed, not in four"):
        sewn(panel, lambda make, sash, **_: make.fold_strip(sash), strips=(SASH,))
    with pytest.raises(KitError, match=r"fold_strip"):
        sewn(panel, lambda make, loop, **_: make.hem_strip(loop), strips=(LOOP,))


def test_strips_cut_through():
    """Counted by hand: how many plies a row passes, and the raw edges that are shut in."""
    assert len(section.folded_in_four(False).stitches) == 1
    assert len(section.folded_in_four(False).through(0)) == 4
    tube = section.tube()
    assert (tube.through(0), tube.raw_edges, tube.enclosed) == (("strip", "strip"), 2, 0)
    assert len(section.turned_tube(2).stitches) == 3 and len(section.turned_tube(2).through(1)) == 4
    assert len(section.turned_tube(2).through(2)) == 2
    hemmed = section.hemmed_both()
    assert hemmed.raw_edges == hemmed.enclosed == 2
    assert [len(hemmed.through(row)) for row in (0, 1)] == [3, 3]
