"""The garment as it grows, and what the order refuses."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.sewing.order import sew
from kit.sewing.run import Run
from kit.sewing.spans import path_of, run_length, runs_opposed, spans
from kit.units import cm, mm


def codes(pattern):
    return [refusal.code for refusal in sew(pattern)[1]]


def test_the_whole_order_is_sound_and_closes_every_edge(wrap):
    pattern = wrap.pattern_of(wrap.whole_order())
    state, refusals = sew(pattern)
    assert refusals == ()
    for piece in pattern.pieces:
        for side in piece.sides:
            for edge in piece.edges:
                assert state.raw(piece, side, edge.name) == ()


def test_one_side_is_closed_alone(wrap):
    def left_only(t):
        t.make.plain_seam(t.front.left.side, t.back.left.side, allowance=15 * mm)

    pattern = wrap.pattern_of([("Left", left_only)])
    state, _ = sew(pattern)
    assert state.raw(wrap.FRONT, "left", "side") == ()
    (right,) = state.raw(wrap.FRONT, "right", "side")
    assert right.length == pytest.approx(210)


def test_an_opening_is_hemmed_and_the_rest_sewn(wrap):
    pattern = wrap.pattern_of(wrap.whole_order())
    state, _ = sew(pattern)
    for piece in ("front", "back"):
        parts = [(done.how, done.span.start, done.span.end) for done in state.on((piece, "right", "side"))]
        assert sorted(parts, key=lambda part: part[1]) == [
            ("sewn", 0.0, 20.0),
            ("hemmed", pytest.approx(20.0), pytest.approx(50.0)),
            ("sewn", pytest.approx(50.0), 210.0),
        ]
        assert {done.how for done in state.on((piece, "left", "side"))} == {"sewn"}


def test_the_fold_has_no_raw_edge_and_may_not_be_sewn(wrap):
    state, _ = sew(wrap.pattern_of([]))
    assert state.raw(wrap.BACK, "left", "centre") == ()
    assert "fold_sewn" in codes(wrap.pattern_of([("Fold", lambda t: t.make.hem(t.back.centre, first=1 * cm))]))


@pytest.mark.parametrize(
    ("earlier", "later", "code"),
    [
        ("Facing shoulders", "Facing", "not_joined_yet"),
        ("Facing", "Understitch", "understitched_early"),
        ("Make ties", "Ties", "strip_not_made"),
        ("Side seams", "Loop", "loop_before_seam"),
        ("Staystitch", "Facing", "staystitched_late"),
        ("Facing", "Ties", "edge_still_raw"),
        ("Side seams", "Hem", "not_joined_yet"),
        ("Interface and face", "Facing shoulders", "fused_late"),
    ],
)
def test_an_order_turned_round_is_refused(wrap, earlier, later, code):
    steps = wrap.whole_order()
    names = [title for title, _ in steps]
    i, j = names.index(earlier), names.index(later)
    moved = [*steps[:i], *steps[i + 1 : j + 1], steps[i], *steps[j + 1 :]]
    assert code in codes(wrap.pattern_of(moved))


def test_sewing_an_edge_twice_names_what_did_it_first(wrap):
    steps = [*wrap.whole_order(), ("Hem again", lambda t: t.make.narrow_hem(t.front.left.hem))]
    (refusal,) = sew(wrap.pattern_of(steps))[1]
    assert refusal.code == "closed_twice"
    assert "by 'Hem'" in refusal.what
    assert refusal.amount == pytest.approx(350)
    assert "Hem again" in refusal.where and refusal.step


def test_more_strips_than_are_cut(wrap):
    steps = [*wrap.whole_order(), ("Third tie", lambda t: t.make.attach_strip(t.tie, t.front.left.wrap_edge))]
    assert codes(wrap.pattern_of(steps)) == ["too_few_strips"]


def test_a_strip_that_does_not_come_out_as_said(wrap):
    from dataclasses import replace

    strips = (replace(wrap.TIE, finished_width=20.0), replace(wrap.LOOP, finished_length=50.0))
    found = codes(wrap.pattern_of(wrap.whole_order(), strips=strips))
    assert found == ["strip_width", "strip_length"]


def test_an_operation_on_a_piece_that_is_gone_is_told_not_raised(wrap):
    pattern = wrap.pattern_of(wrap.whole_order())
    from dataclasses import replace

    fewer = replace(pattern, pieces=pattern.pieces[:3])
    assert "cannot_be_sewn" in codes(fewer)


def test_runs_turn_their_edges_to_follow_on(wrap):
    pattern = wrap.pattern_of([])
    forward = Run("front", ("wrap_edge", "wrap_neck"), "left")
    backward = Run("front", ("wrap_neck", "wrap_edge"), "left")
    ahead, back = path_of(pattern, forward), path_of(pattern, backward)
    assert ahead.start.close_to(back.end, 1e-6) and ahead.end.close_to(back.start, 1e-6)
    assert runs_opposed(pattern, forward, backward)
    assert run_length(pattern, forward) == pytest.approx(ahead.length)
    (only,) = spans(pattern, backward.between(0 * mm, 100 * mm))
    size = pattern.piece("front").edge("wrap_neck").path.length
    assert (only.edge, only.start, only.end) == ("wrap_neck", pytest.approx(size - 100), pytest.approx(size))


def test_a_part_may_run_to_the_end_of_its_edge(wrap):
    side = Run("front", ("side",), "left").after(5 * cm)
    pattern = wrap.pattern_of([])
    assert run_length(pattern, side) == pytest.approx(160)
    (span,) = spans(pattern, side)
    assert (span.start, span.end) == (pytest.approx(50), pytest.approx(210))
    with pytest.raises(KitError, match="front left side"):
        side.after(5)
