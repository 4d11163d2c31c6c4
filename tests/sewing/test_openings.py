"""Openings left in joining seams, and gaps for turning: what is sewn, what stays raw, what is clipped and said."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.piece.piece import Mark
from kit.proof.marks import openings
from kit.sewing.sections import seams as shapes
from kit.units import cm, mm

SEAMS = {
    "plain_seam": {"allowance": 15 * mm},
    "french_seam": {"first": 8 * mm, "second": 7 * mm},
    "mock_french_seam": {"allowance": 15 * mm},
    "flat_felled_seam": {"allowance": 15 * mm},
    "lapped_seam": {"allowance": 15 * mm},
}
MARK = Mark("slit", "opening", edge="side", start=90, end=130, said="slit")


@pytest.fixture
def marked(wrap):
    """Front and back of the wrap top, a slit of 4 cm marked on the side of both."""
    return tuple(replace(piece, marks=(MARK,)) for piece in (wrap.FRONT, wrap.BACK))


def sewing(name, **more):
    def write(make, front, back, **_):
        getattr(make, name)(front.right.side, back.right.side, **SEAMS[name], **more)

    return write


def with_slit(name, **more):
    def write(make, front, back, **_):
        getattr(make, name)(front.right.side, back.right.side, **SEAMS[name], opening=front.right.slit, **more)

    return write


def closed(found, how):
    return sorted(
        (done.span.piece, round(done.span.start), round(done.span.end))
        for done in found.state.closed
        if done.how == how
    )


@pytest.mark.parametrize("name", SEAMS)
def test_the_opening_stays_open_and_its_edges_are_finished(sewn, marked, name):
    """The side is 210 mm long: 90 sewn, 40 open, 80 sewn (the pieces of tests/sewing/wrap_top.py, by hand)."""
    found = sewn(marked, with_slit(name))
    assert found.codes == []
    assert closed(found, "hemmed") == [("back", 90, 130), ("front", 90, 130)]
    assert closed(found, "sewn") == [("back", 0, 90), ("back", 130, 210), ("front", 0, 90), ("front", 130, 210)]
    assert {(span.piece, span.start, span.end) for span in found.last.opens(found.pattern)} == {
        ("front", 90, 130),
        ("back", 90, 130),
    }
    left_side = [each for each in openings(found.pattern) if each.code != "opening_sewn_shut"]
    assert left_side == [] and len(openings(found.pattern)) == 0


@pytest.mark.parametrize("name", SEAMS)
def test_a_marked_opening_that_is_sewn_shut_or_left_elsewhere_is_noticed(sewn, marked, name):
    shut = sewn(marked, sewing(name))
    assert {each.code for each in openings(shut.pattern)} == {"opening_sewn_shut"}
    elsewhere = sewn(marked, sewing(name, opening=(5 * cm, 9 * cm)))
    assert {each.code for each in openings(elsewhere.pattern)} == {"opening_moved"}
    past = sewn(marked, sewing(name, opening=(15 * cm, 20.9 * cm)))
    assert past.codes == []
    with pytest.raises(KitError, match="an opening"):
        sewn(marked, sewing(name, opening=(15 * cm, 25 * cm)))


@pytest.mark.parametrize("name", [each for each in SEAMS if each != "plain_seam"])
def test_between_the_rows_the_allowance_is_clipped_turned_and_stitched(sewn, marked, name):
    found = sewn(marked, with_slit(name))
    stages = [stage.name for stage in found.last.staged()]
    assert stages[1] == "opening" and len(stages) == 3
    said = found.said
    clip = next(i for i, line in enumerate(said) if line.startswith("At both ends of the opening clip"))
    assert "1.5 cm (5/8 in) deep" in said[clip]
    assert said[clip + 1].startswith("Along the opening fold each allowance along its stitch line")
    again = said.index("Do not sew across the opening; backstitch at its ends.")
    where = next(i for i, line in enumerate(said) if line.startswith("Leave the slit unsewn between its marks: 4 cm"))
    assert where < clip < again
    assert "measured from the underarm" in said[where]
    whole = sewn(marked, sewing(name))
    assert len(whole.last.staged()) == 2 and not any("opening" in line for line in whole.said)


@pytest.mark.parametrize("name", SEAMS)
def test_every_row_of_the_pictures_stops_at_the_opening(sewn, marked, name):
    found = sewn(marked, with_slit(name))
    for scene in found.last.scenes(found.pattern):
        for row in scene.rows:
            at_it = row.run.start is not None  # the row that holds down what is turned along the opening
            assert at_it or row.gap is not None
    (opened,) = [s for s in found.last.scenes(found.pattern) if s.stage == "opening"] or [None]
    if name != "plain_seam":
        assert opened.layers[0].back[0][0].start == 90 and opened.section == shapes.opening()


def test_at_an_opening_each_side_is_by_itself():
    """Counted by hand on the diagram: three layers on each side (the cloth, and its edge turned back and under), both
    raw edges shut in, each row through one side alone."""
    shape = shapes.opening()
    assert shape.through(0) == ("left", "left", "left") and shape.through(1) == ("right", "right", "right")
    assert (shape.raw_edges, shape.enclosed) == (2, 2)
    assert shape.at(0.0) == ()


def test_only_the_clip_that_is_needed_is_said(sewn, marked):
    vent = sewn(marked, sewing("french_seam", opening=(15 * cm, 21 * cm))).said
    assert "Leave the 6 cm (2 3/8 in) of the right side seam next to the hem unsewn." in " ".join(vent)
    assert any(line.startswith("Where the opening meets the row, clip") for line in vent)
    flat = sewn(marked, with_slit("plain_seam")).said
    assert not any("clip" in line for line in flat)
    aside = sewn(marked, with_slit("plain_seam", press="one side")).said
    assert any(line.startswith("At both ends of the opening clip") for line in aside)


def test_a_narrow_allowance_cannot_be_turned_under(sewn, marked):
    tight = lambda make, front, back, **_: make.french_seam(  # noqa: E731
        front.right.side, back.right.side, first=2 * mm, second=3 * mm, opening=front.right.slit
    )
    assert sewn(marked, tight).codes == ["opening_narrow"]


def test_the_lap_of_a_felled_seam_may_be_the_second_piece(sewn, marked):
    """The opening is measured along the first edge that is named, whichever piece laps over."""
    moved = (marked[0], replace(marked[1], marks=()))
    for lap in ("front", "back"):
        found = sewn(moved, with_slit("flat_felled_seam", lap=lap))
        assert closed(found, "hemmed") == [("back", 90, 130), ("front", 90, 130)]


def test_cloth_that_does_not_fray_is_left_as_it_is_at_the_opening(sewn, marked):
    found = sewn(marked, with_slit("lapped_seam", turned=False))
    assert closed(found, "finished") == [("back", 90, 130), ("front", 90, 130)]
    assert not any("clip" in line for line in found.said)


# ---- a gap for turning ------------------------------------------------------------------------------------


def test_a_gap_is_raw_until_it_is_slip_stitched_and_its_mark_belongs_to_it(sewn, marked):
    gap = lambda make, front, back, **_: make.plain_seam(  # noqa: E731
        front.right.side, back.right.side, allowance=15 * mm, gap=front.right.slit
    )
    shut = lambda make, front, back, **_: make.slip_stitch(front.right.slit, back.right.slit, allowance=15 * mm)  # noqa: E731
    found = sewn(marked, gap)
    assert found.codes == [] and closed(found, "hemmed") == []
    assert openings(found.pattern) == []
    side = marked[0]
    assert [(span.start, span.end) for span in found.state.raw(side, "right", "side")] == [(90, 130)]
    assert sewn(marked, gap, shut).state.raw(side, "right", "side") == ()
    assert "for turning: from 9 cm" in " ".join(found.said) and "measured from the underarm" in " ".join(found.said)
    tight = lambda make, front, back, **_: make.plain_seam(  # noqa: E731
        front.right.side, back.right.side, allowance=15 * mm, gap=(5 * cm, 6 * cm)
    )
    assert sewn(marked, tight).codes == ["gap_narrow"]


def test_an_opening_and_a_gap_are_not_both_left(sewn, marked):
    with pytest.raises(KitError, match="both named"):
        sewn(marked, with_slit("plain_seam", gap=(2 * cm, 5 * cm)))


def test_the_mark_of_a_seam_to_turn_is_met_by_its_gap(sewn, marked):
    turn = lambda make, front, back, **_: make.seam_to_turn(  # noqa: E731
        front.right.side, back.right.side, allowance=15 * mm, gap=front.right.slit
    )
    assert openings(sewn(marked, turn).pattern) == []
