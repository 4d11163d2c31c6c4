"""Darts, pleats and tucks: sewn before their edge is closed, said in words, and missed when left out."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.blocks import darted_bodice_block, skirt_block, trouser_block
from kit.body import workshop_chart
from kit.body.body import Body
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.pattern import LessonInfo, Pattern, SewRecord
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import CutPlan
from kit.proof.unfinished import unfinished
from kit.prose import operation_alt, sentences
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make
from kit.sewing.order import sew
from kit.sewing.sections import folds as shapes
from kit.units import cm


@pytest.fixture
def skirt(wrap):
    """A straight half skirt: dart in the waist 80 to 100 mm from the centre, laid toward the centre, 100 mm deep."""
    plain = wrap.polygon(
        "skirt",
        [(0, 0), (200, 0), (200, -500), (0, -500)],
        {"waist": 10, "side": 10, "hem": 30, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    return replace(plain, darts=(Dart("waist_dart", "waist", Point(90, -120), 80, 100, "start", 20),))


def pleated(wrap, kind: str, **more):
    lines = (Path.line(Point(80, 0), Point(80, -100)), Path.line(Point(120, 0), Point(120, -100)))
    plain = wrap.polygon(
        "skirt",
        [(0, 0), (200, 0), (200, -500), (0, -500)],
        {"waist": 10, "side": 10, "hem": 30, "centre": 0},
        cut=CutPlan(count=2, mirrored=True),
    )
    return replace(plain, pleats=(Pleat(f"waist_{kind}", "waist", 80, 120, lines, kind=kind, **more),))


def order(piece, *writes):
    """(pattern, state, refusal codes)."""
    records = []
    for number, write in enumerate(writes):
        make = Make((piece,))
        write(make, PieceHandle(piece))
        records.append(SewRecord(f"s{number}", f"Step {number}", "", "", make.operations))
    pattern = Pattern(LessonInfo("Skirt", "skirt"), Body("W4", ()), (), (piece,), (), (), tuple(records))
    state, refusals = sew(pattern)
    return pattern, state, [refusal.code for refusal in refusals]


def dart(make, skirt):
    make.dart(skirt)


def waist(make, skirt):
    make.hem(skirt.waist, first=1 * cm)


def test_a_dart_is_said_as_a_teacher_says_it(skirt):
    pattern, _, codes = order(skirt, dart)
    (operation,) = pattern.sewing[0].operations
    assert codes == []
    assert sentences(pattern, operation) == [
        "Fold the dart of the skirt right sides together along its middle line, so that its two stitching lines lie on "
        "each other, and pin.",
        "Stitch the waist dart from the waist of the skirt to its point, 10 cm (3 15/16 in) long: it begins 1 cm "
        "(3/8 in) from the fold, and the last few stitches run along the very fold.",
        "Do not backstitch at the point: leave long thread ends and tie them.",
        "Press the dart flat as it was sewn, then towards the centre line, over a rounded pad so that no crease is "
        "pressed beyond the point.",
        "Work the left and the right side alike.",
    ]
    assert operation.closes(pattern) == () and operation.takes(pattern) == {}
    assert operation.minutes(pattern) == 14.0


@pytest.mark.parametrize("kind", ["pleat", "tuck"])
def test_a_dart_that_this_figure_does_not_need_is_a_dart_all_the_same(skirt, kind):
    bare = replace(skirt, darts=(), spared=("waist_dart",))
    with pytest.raises(KitError, match=f"skirt waist dart is a dart, not a {kind}"):
        order(bare, lambda make, s: getattr(make, kind)(s.waist_dart))
    assert order(bare, lambda make, s: make.dart(s.waist_dart))[2] == []


def test_the_only_dart_is_the_first_of_two_that_others_have(skirt):
    """A lesson for two darts, on a figure that needs one: the one is sewn, the other passed over."""
    both = lambda make, s: make.dart(s.waist_dart_1, s.waist_dart_2)  # noqa: E731
    one = replace(skirt, spared=("waist_dart_2",))
    _, state, codes = order(one, both, waist)
    assert codes == [] and ("dart", "skirt", "left", "waist_dart") in state.facts
    with pytest.raises(KitError, match="no edge or mark 'waist_dart_1'"):
        order(skirt, lambda make, s: make.dart(s.waist_dart_1))  # nothing says that others have two


def test_a_dart_leaves_its_fact_on_both_halves(skirt):
    _, state, _ = order(skirt, dart)
    assert {("dart", "skirt", side, "waist_dart") for side in ("left", "right")} <= state.facts
    _, state, _ = order(skirt, lambda make, s: make.dart(s.left.waist_dart))
    assert {fact for fact in state.facts if fact[0] == "dart"} == {("dart", "skirt", "left", "waist_dart")}


def test_an_edge_may_not_be_closed_over_an_open_dart(skirt):
    assert order(skirt, dart, waist)[2] == []
    assert order(skirt, waist)[2] == ["dart_open"]
    assert order(skirt, waist, dart)[2] == ["dart_open", "dart_late"]
    assert order(skirt, dart, dart, waist)[2] == ["dart_twice"]
    half = lambda make, s: make.dart(s.left.waist_dart)  # noqa: E731
    assert order(skirt, half, waist)[2] == ["dart_open"]


def test_a_part_of_the_edge_beside_the_dart_may_be_closed(skirt):
    assert order(skirt, lambda make, s: make.hem(s.waist.between(0 * cm, 7 * cm), first=1 * cm))[2] == []


def test_a_dart_left_open_is_found_at_the_end_once(skirt):
    pattern, state, _ = order(skirt, lambda make, s: make.hem(s.hem, first=3 * cm))
    assert [finding.code for finding in unfinished(pattern, state)] == ["never_folded"]
    pattern, state, _ = order(skirt, waist)
    assert unfinished(pattern, state) == []  # told when the waist was closed
    pattern, state, _ = order(skirt, dart, waist)
    assert unfinished(pattern, state) == []


def test_what_is_no_dart_is_refused(skirt, wrap):
    make = Make((skirt,))
    with pytest.raises(KitError, match="is no dart"):
        make.dart("waist_dart")
    with pytest.raises(KitError, match="has no pleat"):
        make.pleat(PieceHandle(skirt))
    with pytest.raises(KitError, match="is a tuck, not a pleat"):
        piece = pleated(wrap, "tuck", sewn=60.0)
        Make((piece,)).pleat(PieceHandle(piece).waist_tuck)
    with pytest.raises(KitError, match="waist_dart"):
        PieceHandle(skirt).waist_drat  # noqa: B018


def test_a_pleat_is_folded_laid_and_basted(wrap):
    pattern, state, codes = order(pleated(wrap, "pleat"), lambda make, s: make.pleat(s), waist)
    assert codes == []
    assert ("pleated", "skirt", "right", "waist_pleat") in state.facts
    assert sentences(pattern, pattern.sewing[0].operations[0]) == [
        "On the right side of the skirt fold the waist pleat along its fold line; it takes up 4 cm (1 9/16 in).",
        "Bring its two lines together, lay the fold towards the side seam and pin.",
        "Baste across it inside the allowance of the waist of the skirt.",
        "Press the fold lightly, through a cloth, as far as it is to stay sharp.",
        "Work the left and the right side alike.",
    ]
    assert order(pleated(wrap, "pleat"), waist)[2] == ["pleat_open"]


def test_a_tuck_is_stitched_as_far_as_drawn(wrap):
    pattern, _, codes = order(pleated(wrap, "tuck", sewn=60.0), lambda make, s: make.tuck(s), waist)
    assert codes == []
    said = sentences(pattern, pattern.sewing[0].operations[0])
    assert said[1].startswith("Stitch along the line, 2 cm (3/4 in) from the fold, for 6 cm (2 3/8 in) from the waist")
    (row,) = pattern.sewing[0].operations[0].scenes(pattern)[0].rows
    assert row.line.length == pytest.approx(60.0)


def test_a_pleat_held_at_both_ends_is_open_there_too(wrap):
    lines = (Path.line(Point(80, 0), Point(80, -500)), Path.line(Point(120, 0), Point(120, -500)))
    both = replace(
        pleated(wrap, "pleat"),
        pleats=(Pleat("box", "waist", 80, 120, lines, far="hem", far_start=80, far_end=120, held="both"),),
    )
    hem = lambda make, s: make.hem(s.hem, first=3 * cm)  # noqa: E731
    assert order(both, hem)[2] == ["pleat_open"]
    free = replace(both, pleats=(replace(both.pleats[0], held="near"),))
    assert order(free, hem)[2] == []


def test_the_fold_is_a_line_through_the_middle_of_the_dart(skirt):
    pattern, _, _ = order(skirt, dart)
    first, last = pattern.sewing[0].operations[0].scenes(pattern)
    fold = first.layers[0].fold
    assert fold is not None and fold.distance_to(Point(90, -50)) < 1e-6
    (leg,) = first.rows
    assert leg.line.length == pytest.approx(100.5, abs=0.1)  # 20 short, and sewn from the edge to the point
    assert leg.line.start.y > leg.line.end.y
    assert last.rows == () and last.folds == last.layers[0].shut == (skirt.darts[0].name,)  # then it is shut
    left = (fold.end - fold.start).cross(first.rows[0].line.at(50.0) - fold.start)
    assert left > 0  # the leg that stays where it is, not the one folded over
    assert "folded" in operation_alt(pattern, pattern.sewing[0].operations[0])


def test_sections_by_hand():
    """A folded dart or tuck lies threefold beside its stitching, which goes through the two upper plies' fold alone
    (common practice, no source)."""
    done = shapes.folded()
    assert done.at(3.0) == ("main",) * 3 and done.at(-3.0) == ("main",) and done.at(7.0) == ("main",)
    assert done.through(0) == ("main", "main")
    assert [ply.folds for ply in done.plies] == [2]
    assert done.raw_edges == 0
    assert shapes.folded(sewn=False).stitches == ()
    assert shapes.folded_double().at(2.0) == ("main", "main")
    assert len(shapes.drawn_up(2).stitches) == 2 and shapes.drawn_up().raw_edges == 1


@pytest.mark.parametrize(
    "block", [skirt_block, darted_bodice_block, trouser_block], ids=["skirt", "bodice", "trousers"]
)
def test_the_darts_of_the_blocks_can_be_sewn(block):
    """Every dart of a block is sewn by one line, and only then may its edge be closed."""
    for piece in block(workshop_chart()["W4"]):
        edges = dict.fromkeys(each.edge for each in piece.darts)
        if not edges:
            continue
        close = [lambda make, p, edge=edge: make.hem(getattr(p, edge), first=1 * cm) for edge in edges]
        pattern, state, codes = order(piece, dart, *close)
        assert codes == []
        assert {fact[3] for fact in state.facts if fact[0] == "dart"} == {each.name for each in piece.darts}
        stitched = [
            line
            for line in sentences(pattern, pattern.sewing[0].operations[0])
            if line.startswith("Stitch ") and " dart " in line and " to its point" in line
        ]
        assert len(stitched) == len(piece.darts)
        assert set(order(piece, *close)[2]) == {"dart_open"}
