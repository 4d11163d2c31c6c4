"""Every finding is provoked once; the sound wrap top has none that is an error."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest

from kit.geometry import Path, Point
from kit.piece.piece import Grain, Mark, Notch
from kit.proof import Finding, failed, prove
from kit.units import cm, mm


@pytest.fixture
def top(wrap):
    return wrap.pattern_of(wrap.whole_order())


def only(pattern, code: str) -> list[Finding]:
    return [finding for finding in prove(pattern) if finding.code == code]


def changed(pattern, name: str, **changes):
    return replace(pattern, pieces=tuple(replace(p, **changes) if p.name == name else p for p in pattern.pieces))


def edged(pattern, name: str, edge: str, **changes):
    piece = pattern.piece(name)
    return changed(pattern, name, edges=piece.with_edges(**{edge: replace(piece.edge(edge), **changes)}).edges)


def test_the_sound_top_has_no_errors(top):
    assert [str(finding) for finding in prove(top) if finding.level == "error"] == []
    assert not failed(prove(top))


@pytest.mark.parametrize("index", [1, 2, 3, 4, 6, 7, 8, 9, 10, 11, 12])
def test_leaving_out_any_step_is_found(wrap, index):
    """Staystitching (0) and understitching (5) close nothing and hold nothing: a top is whole without them."""
    steps = wrap.whole_order()
    assert failed(prove(wrap.pattern_of([*steps[:index], *steps[index + 1 :]])))


@pytest.mark.parametrize("index", [1, 2, 3, 4, 6, 7, 8, 9, 10, 11, 12])
def test_doing_any_step_twice_is_found(wrap, index):
    """A second row of staystitching (0) or understitching (5) does no harm."""
    steps = wrap.whole_order()
    assert failed(prove(wrap.pattern_of([*steps[: index + 1], *steps[index:]])))


def test_a_part_left_raw_is_named_by_its_ends(wrap):
    steps = [step for step in wrap.whole_order() if step[0] != "Sleeve hems"]

    def part(t):
        t.make.hem([t.front.right.opening, t.back.right.opening], first=1 * cm, second=1 * cm)
        t.make.hem(t.back.left.opening, first=1 * cm, second=1 * cm)
        t.make.hem(t.front.left.opening.between(0 * cm, 8 * cm), first=1 * cm, second=1 * cm)

    (finding,) = only(wrap.pattern_of([*steps, ("Part of the sleeve hem", part)]), "raw_edge")
    assert "left sleeve opening is left raw from 8 cm" in finding.what and "to 12 cm" in finding.what
    assert (finding.amount, finding.piece, finding.edge) == (pytest.approx(40), "front", "opening")


def test_both_sides_raw_alike_are_told_once(wrap):
    steps = [step for step in wrap.whole_order() if step[0] != "Sleeve hems"]
    found = only(wrap.pattern_of(steps), "raw_edge")
    assert sorted((finding.piece, finding.edge) for finding in found) == [("back", "opening"), ("front", "opening")]


def test_an_edge_left_overcast_counts_as_finished_only_when_said(wrap):
    steps = [step for step in wrap.whole_order() if step[0] != "Sleeve hems"]
    for leave, wanted in ((False, 2), (True, 0)):
        more = ("Overcast", lambda t, leave=leave: t.make.edge_finish(t.front.opening, t.back.opening, leave=leave))
        assert len(only(wrap.pattern_of([*steps, more]), "raw_edge")) == wanted


def test_a_seam_pair_of_unequal_length(top):
    longer = Path.line(Point(80, 200), Point(310, 180))
    opening = Path.line(Point(310, 180), Point(300, 60))
    broken = edged(edged(top, "front", "overarm", path=longer), "front", "opening", path=opening)
    (finding,) = only(broken, "seam_length")
    assert finding.amount == pytest.approx(longer.length - top.piece("back").edge("overarm").path.length, abs=1e-6)
    assert "front overarm is 9.9" not in finding.what and "1 cm (3/8 in) longer than the back overarm" in finding.what
    assert finding.step == "shoulders"


def test_ease_on_purpose_is_accepted_and_a_wrong_amount_is_not(wrap, top):
    def eased(amount):
        def shoulders(t):
            t.make.french_seam(t.front.overarm, t.back.overarm, first=6 * mm, second=4 * mm, ease=amount)

        steps = [(n, shoulders if n == "Shoulders" else w) for n, w in wrap.whole_order()]
        broken = edged(wrap.pattern_of(steps), "front", "overarm", path=Path.line(Point(80, 200), Point(305, 180)))
        return edged(broken, "front", "opening", path=Path.line(Point(305, 180), Point(300, 60)))

    assert only(eased(5 * mm), "seam_length") == only(eased(5 * mm), "ease_amount") == []
    assert len(only(eased(12 * mm), "ease_amount")) == 1


def test_a_facing_longer_than_its_edge(top):
    broken = edged(top, "front_facing", "wrap_edge", path=Path.line(Point(-150, -153), Point(-150, -60)))
    (finding,) = only(
        edged(broken, "front_facing", "hem", path=Path.line(Point(-90, -150), Point(-150, -153))), "facing_length"
    )
    assert finding.amount == pytest.approx(3, abs=1e-6)
    assert finding.piece == "front_facing"


def test_an_allowance_the_sewing_does_not_take(top):
    (finding,) = only(edged(top, "back", "overarm", allowance=15.0), "allowance")
    assert finding.amount == pytest.approx(5)
    assert "1.5 cm (5/8 in)" in finding.what and "takes 1 cm (3/8 in)" in finding.what and "too much" in finding.what
    assert only(edged(top, "back", "overarm", allowance=10.4), "allowance") == []


def test_an_allowance_never_declared_is_not_filled_in(top):
    (finding,) = only(edged(top, "back", "overarm", allowance=None), "no_allowance")
    assert (finding.piece, finding.edge, finding.level) == ("back", "overarm", "error")


def test_pieces_strips_and_interfacing_that_nobody_uses(wrap, top):
    pocket = wrap.polygon("pocket", [(0, 0), (50, 0), (50, 50)], {"a": 10, "b": 10, "c": 10})
    more = replace(top, pieces=(*top.pieces, pocket))
    assert [finding.piece for finding in only(more, "piece_unused")] == ["pocket"]
    spare = replace(top, strips=(*top.strips, replace(wrap.TIE, name="loop", title="Button loop")))
    assert "never made" in only(spare, "strip_unused")[0].what
    three = replace(top, strips=(replace(wrap.TIE, count=3), wrap.LOOP))
    assert "only 2 of 3 attached" in only(three, "strip_unused")[0].what
    stiff = changed(top, "back", cut=replace(wrap.BACK.cut, interfacing=1))
    assert [finding.piece for finding in only(stiff, "interfacing_unused")] == ["back"]
    odd = changed(top, "front_facing", cut=replace(wrap.FRONT_FACING.cut, interfacing=1))
    assert len(only(odd, "interfacing_count")) == 1
    none = changed(top, "front_facing", cut=replace(wrap.FRONT_FACING.cut, interfacing=0))
    assert len(only(none, "no_interfacing_cut")) == 1


def test_a_piece_hemmed_but_never_joined(wrap, top):
    scarf = wrap.polygon("scarf", [(0, 0), (50, 0), (50, 50)], {"a": 10, "b": 10, "c": 10})
    pattern = replace(top, pieces=(*top.pieces, scarf))
    from kit.lesson.pattern import SewRecord
    from kit.sewing.handle import PieceHandle
    from kit.sewing.make import Make

    make, handle = Make((scarf,)), PieceHandle(scarf)
    make.narrow_hem(handle.a, handle.b, handle.c)
    pattern = replace(pattern, sewing=(*pattern.sewing, SewRecord("scarf", "Scarf", "", "", make.operations)))
    assert [finding.piece for finding in only(pattern, "loose_piece")] == ["scarf"]


def test_outlines_that_do_not_close_or_that_cross(top):
    gap = edged(top, "back", "hem", path=Path.line(Point(200, -150), Point(5, -150)))
    (finding,) = only(gap, "not_closed")
    assert finding.piece == "back" and finding.level == "error"
    bow = edged(top, "back", "overarm", path=Path.line(Point(80, 200), Point(60, -100)))
    bow = edged(bow, "back", "opening", path=Path.line(Point(60, -100), Point(300, 60)))
    bow = edged(bow, "back", "neck", path=Path.line(Point(0, 200), Point(80, 200)))
    bow = edged(bow, "back", "underarm", path=Path.line(Point(300, 60), Point(-50, 60)))
    bow = edged(bow, "back", "side", path=Path.line(Point(-50, 60), Point(200, -150)))
    assert len(only(bow, "crosses_itself")) == 1


def test_a_cut_line_that_cannot_be_drawn(top):
    assert len(only(edged(top, "back", "overarm", allowance=-3.0), "cut_line")) == 1


def test_placeholders_that_stand_for_nothing(top):
    first = replace(top.sewing[0], text="Stitch {distnce} away.", values=(("distance", 3.0, "length"),))
    (finding,) = only(replace(top, sewing=(first, *top.sewing[1:])), "placeholder")
    assert "{distnce}" in finding.what and "'distance'" in finding.do
    first = replace(first, text="Stitch {distance away.")
    assert len(only(replace(top, sewing=(first, *top.sewing[1:])), "brace")) == 1


def test_notions_missing_and_spare(top):
    bare = replace(top, lesson=replace(top.lesson, notions=("chalk",)))
    assert [finding.what.split(",")[0] for finding in only(bare, "notion_missing")] == [
        "the sewing needs interfacing",
        "the sewing needs thread",
    ]


def test_marks_grain_and_fold(top, wrap):
    assert len(only(top, "no_grainline")) == 4
    straight = changed(top, "back", grain=Grain(Point(50, 100), Point(50, -100)))
    assert len(only(straight, "no_grainline")) == 3
    bent = Path.line(Point(0, -150), Point(5, 0)).joined(Path.line(Point(5, 0), Point(0, 200)))
    assert len(only(edged(top, "back", "centre", path=bent), "fold_not_straight")) == 1


def test_notches_are_walked_along_the_seam(top):
    front = changed(top, "front", notches=(Notch("overarm", 100), Notch("side", 80)))
    both = changed(front, "back", notches=(Notch("overarm", 100), Notch("side", 84)))
    found = only(both, "notch_unmatched")
    assert sorted((finding.piece, finding.edge) for finding in found) == [("back", "side"), ("front", "side")]
    assert [finding.amount for finding in found] == [pytest.approx(4)] * 2
    assert [finding.amount for finding in only(front, "notch_unmatched")] == [None, None]


def test_openings_marked_twice_must_agree_and_be_left_open(top, wrap):
    mark = Mark("tie_opening", "opening", edge="side", start=20, end=50)
    assert only(changed(top, "back", marks=(mark,)), "opening_moved") == []
    (finding,) = only(changed(top, "back", marks=(replace(mark, end=60),)), "opening_moved")
    assert finding.amount == pytest.approx(10)
    shut = changed(top, "back", marks=(replace(mark, name="pocket_opening", edge="overarm"),))
    assert len(only(shut, "opening_sewn_shut")) == 1


def test_corners_lie_true_when_the_seam_is_laid_together(wrap):
    """Two rectangles sewn side to side run on straight; with one tilted end they bend by its angle."""
    from kit.lesson.pattern import SewRecord
    from kit.sewing.handle import PieceHandle
    from kit.sewing.make import Make

    def sewn(drop: float):
        edges = {"top": 10, "seam": 10, "bottom": 10, "far": 10}
        a = wrap.polygon("left_panel", [(0, 100), (100, 100), (100, 0), (0, drop)], edges)
        b = wrap.polygon("right_panel", [(0, 100), (100, 100), (100, 0), (0, 0)], edges)
        make = Make((a, b))
        make.plain_seam(PieceHandle(a).seam, PieceHandle(b).seam, allowance=1 * cm)
        record = SewRecord("seam", "Seam", "", "", make.operations)
        return replace(wrap.pattern_of([], pieces=(a, b), strips=()), sewing=(record,))

    assert only(sewn(0), "corner_not_true") == []
    (finding,) = only(sewn(-30), "corner_not_true")
    assert "bends by 17 degrees" in finding.what  # atan(30 / 100) = 16.7 degrees
    assert (finding.piece, finding.edge, finding.level) == ("left_panel", "bottom", "warning")


def test_a_draft_without_sewing_is_a_note(wrap):
    found = prove(wrap.pattern_of([]))
    assert not failed(found) and [finding.code for finding in found if finding.level == "note"] == ["no_sewing"]


def test_findings_go_to_json_and_errors_come_first(top):
    found = prove(edged(top, "back", "overarm", allowance=15.0))
    assert found[0].level == "error"
    told = json.loads(json.dumps([finding.as_dict() for finding in found]))
    fields = {"code", "level", "what", "where", "amount", "do", "step", "piece", "edge"}
    assert set(told[0]) == fields | {"key", "values"}
    assert told[0]["key"].startswith("proof.") and told[0]["values"]["edge"]["kind"] == "edge"
    assert told[0]["amount"] == 5.0
