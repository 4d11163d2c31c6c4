"""What `make` refuses, where the teacher wrote it, and in words that say what to do."""

from __future__ import annotations

import inspect
import pickle

import pytest

from kit.errors import KitError
from kit.piece.piece import CutPlan
from kit.sewing.handle import PieceHandle
from kit.sewing.verb import VERBS
from kit.units import cm, mm


def refused(write, *words: str) -> None:
    with pytest.raises(KitError) as caught:
        write()
    for word in words:
        assert word in str(caught.value)


def test_a_bare_number_is_refused(wrap):
    t = wrap.table()
    refused(
        lambda: t.make.french_seam(t.front.overarm, t.back.overarm, first=6, second=4 * mm),
        "French seam, first row",
        "6 has no unit",
        "6 * mm",
    )
    assert t.make.operations == ()


def test_a_width_out_of_reason_is_refused(wrap):
    t = wrap.table()
    refused(lambda: t.make.plain_seam(t.front.side, t.back.side, allowance=15 * cm), "15 cm", "Check the unit")
    refused(lambda: t.make.plain_seam(t.front.side, t.back.side, allowance=0 * cm), "it is zero")
    refused(lambda: t.make.plain_seam(t.front.side, t.back.side, allowance=-1 * cm), "less than nothing")


def test_a_misspelt_edge_is_refused_with_the_near_one(wrap):
    t = wrap.table()
    refused(lambda: t.front.overam, "no edge or mark 'overam'", "Front", "'overarm'")


def test_a_misspelt_word_is_refused_with_the_near_one(wrap):
    t = wrap.table()
    seam = (t.front.side, t.back.side)
    refused(lambda: t.make.plain_seam(*seam, allowance=1 * cm, press="opem"), "press is 'opem'", "'open'")
    refused(lambda: t.make.plain_seam(*seam, allowance=1 * cm, finish="zigzg"), "'zigzag'")
    refused(lambda: t.make.plain_seam(*seam, allowance=1 * cm, press="sleeve"), "press is 'sleeve'")


def test_a_french_seam_cannot_be_pressed_open(wrap):
    t = wrap.table()
    refused(lambda: t.make.french_seam(t.front.side, t.back.side, first=6 * mm, second=4 * mm, press="open"), "shut in")


def test_a_piece_or_a_mark_is_not_an_edge(wrap):
    t = wrap.table()
    refused(lambda: t.make.hem(t.front, first=1 * cm), "Front is a whole piece", "hem")
    refused(lambda: t.make.hem(t.front.tie_opening, first=1 * cm), "tie opening", "is a mark")
    refused(lambda: t.make.hem(first=1 * cm), "no edge is named")
    refused(lambda: t.make.hem("hem", first=1 * cm), "'hem' is not an edge")


def test_one_side_cannot_meet_both(wrap):
    t = wrap.table()
    refused(
        lambda: t.make.plain_seam(t.front.right.side, t.back.side, allowance=1 * cm),
        "one side only",
        "back.right.side",
    )


def test_an_edge_is_not_sewn_to_itself_but_a_pair_is_sewn_left_to_right(wrap):
    t = wrap.table()
    refused(lambda: t.make.plain_seam(t.back.side, t.back.side, allowance=1 * cm), "sewn to itself")
    t.make.plain_seam(t.front.wrap_edge, t.front.wrap_edge, allowance=1 * cm)
    (seam,) = t.make.operations
    assert (seam.a[0].side, seam.b[0].side) == ("left", "right")


def test_edges_of_a_run_must_follow_one_another(wrap):
    t = wrap.table()
    refused(lambda: t.make.hem(t.front.overarm + t.front.hem, first=1 * cm), "the overarm and the hem", "apart")


def test_an_opening_must_lie_on_its_seam(wrap):
    t = wrap.table()
    seam = (t.front.right.side, t.back.right.side)
    refused(lambda: t.make.plain_seam(*seam, allowance=1 * cm, opening=(18 * cm, 25 * cm)), "25 cm", "21 cm")
    refused(lambda: t.make.plain_seam(*seam, allowance=1 * cm, opening=(5 * cm, 3 * cm)), "nearer end first")
    refused(lambda: t.make.plain_seam(*seam, allowance=1 * cm, opening=(5, 8)), "has no unit")
    refused(lambda: t.make.plain_seam(*seam, allowance=1 * cm, opening="tie_opening"), "is not an opening")
    refused(
        lambda: t.make.plain_seam(
            t.front.right.overarm, t.back.right.overarm, allowance=1 * cm, opening=t.front.right.tie_opening
        ),
        "'side' is not part of this run",
    )


def test_an_opening_mark_counts_from_the_start_of_the_run(wrap):
    t = wrap.table()
    run = t.front.right.underarm + t.front.right.side
    t.make.plain_seam(
        run, t.back.right.underarm + t.back.right.side, allowance=15 * mm, opening=t.front.right.tie_opening
    )
    assert t.make.operations[0].opening == pytest.approx((120.0, 150.0))  # 100 mm of underarm, then 20 to 50


def test_strips_are_placed_on_the_run_or_refused(wrap):
    t = wrap.table()
    refused(lambda: t.make.attach_strip(t.tie, t.front.wrap_edge, at="top"), "'top' is not a place")
    refused(lambda: t.make.attach_strip(t.tie, t.front.wrap_edge, at=40 * cm), "off the edge", "9 cm")
    refused(lambda: t.make.attach_strip(t.front, t.front.wrap_edge), "is not a strip")
    refused(lambda: t.make.belt_loop(t.belt_loop, t.front.left.side, at=50), "has no unit")
    refused(lambda: t.make.turn_strip(t.tie, allowance=1 * cm), "folded in four, not in two")
    t.make.attach_strip(t.tie, t.front.tie_place)
    (strip,) = t.make.operations
    assert (strip.to.edges, strip.at, strip.halves, strip.mark) == (("wrap_edge",), 80.0, 2, "tie place")


def test_operations_are_values(wrap):
    pattern = wrap.pattern_of(wrap.whole_order())
    for record in pattern.sewing:
        for operation in record.operations:
            assert pickle.loads(pickle.dumps(operation)) == operation
            hash(operation)
            with pytest.raises(AttributeError):
                operation.kind_of_row = 1


def test_every_operation_can_say_all_of_itself(wrap):
    pattern = wrap.pattern_of(wrap.whole_order())
    kinds = set()
    for record in pattern.sewing:
        for operation in record.operations:
            kinds.add(operation.kind)
            assert operation.sentences(pattern)
            assert operation.scenes(pattern)
            assert operation.uses.pieces or operation.uses.strips
            for run in operation.runs():
                assert pattern.piece(run.piece).has_edge(run.edges[0])
    assert kinds == {
        "attach_facing",
        "attach_strip",
        "belt_loop",
        "face_with_interfacing",
        "fold_strip",
        "french_seam",
        "hem",
        "plain_seam",
        "staystitch",
        "understitch",
    }


def test_make_offers_its_verbs_and_nothing_else(wrap):
    make = wrap.table().make
    assert dir(make) == sorted(VERBS) and len(VERBS) > 60
    for inside in ("runs", "pair", "spot", "pressing", "opening", "mark_on_edge", "piece", "strip", "cut"):
        refused(lambda inside=inside: getattr(make, inside), f"there is no sewing operation '{inside}'")


def test_an_operation_is_read_by_the_reader_that_make_holds(wrap):
    for name, function in VERBS.items():
        (first, *_) = inspect.signature(function).parameters.values()
        assert (first.name, first.annotation) == ("reader", "Reader"), name


def test_layers_cut_alike_have_no_left_half(garments):
    """Two layers that are no mirror images: the teacher is told the one word that is missing."""
    piece = garments.rectangle("flap", 100, 50, {"low": 10, "one": 10, "top": 10, "two": 10}, cut=CutPlan(2, said=True))
    with pytest.raises(KitError, match=r"no left half: its 2 layers are cut alike.*flap.cut\(2, mirrored=True\)"):
        _ = PieceHandle(piece).left


def test_edges_and_marks_are_given_by_a_name_put_together_in_code(garments):
    """As on the bench: front.edge("side"); an edge that bears that very name is meant first."""
    front = PieceHandle(garments.JACKET_FRONT)
    assert front.edge("side") == front.side
    assert [front.right.mark(f"hole_{n}") for n in (1, 2)] == [front.right.hole_1, front.right.hole_2]
    with pytest.raises(KitError, match="Did you mean 'hole_2'"):
        front.mark("hole_3")
    own = garments.rectangle("own", 100, 100, {"edge": 10, "b": 10, "c": 10, "d": 10})
    assert PieceHandle(own).edge.edges == ("edge",)
