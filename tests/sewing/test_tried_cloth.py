"""Try-ons of cut cloth: where the new line runs, what is unpicked, opened and trimmed, whether the cloth suffices."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.errors import KitError
from kit.language import speaking
from kit.proof import prove
from kit.prose import sentences
from kit.units import cm, mm
from tests.fitted import IN, codes, nothing, sewn, told, tunic


@pytest.fixture(autouse=True)
def alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


# ---- what it says and proves -----------------------------------------------------------------------------------


def test_what_was_sewn_on_the_old_line_is_unpicked_and_sewn_again() -> None:
    pattern = tunic(lambda make: make.try_on("It gapes.", **IN), before=sewn, seam=nothing).work()
    said = told(pattern)
    assert (
        "Along the side seam of the front and back the new stitch line runs 3 cm (1 3/16 in) in at the top, tapering "
        "to nothing at the hem." in said
    )
    assert any(line.startswith("Unpick the stitching of the side seam of the front and back") for line in said)
    assert any(line.startswith("Open the top of the front and back") for line in said)
    assert "Trim the side seam of the front and back to 1.5 cm (5/8 in) outside the new line." in said
    assert codes(pattern, "error") == []


def test_nothing_is_unpicked_where_nothing_was_sewn() -> None:
    said = told(tunic(lambda make: make.try_on("It gapes.", **IN)).work())
    assert not any(line.startswith(("Unpick", "Open")) for line in said)


def test_basting_on_the_old_line_comes_out_unless_it_is_out_already() -> None:
    def based(make, front, back):
        make.baste(front.side, back.side, distance=0 * mm)

    def out(make, front, back):
        make.remove_basting(front.side, back.side)

    said = told(tunic(lambda make: make.try_on(**IN), before=based, after=out).work())
    assert any("basting of the side seam" in line for line in said)
    assert not any(line.startswith("Unpick") for line in said)

    def gone(make, front, back):
        based(make, front, back)
        out(make, front, back)

    assert not any("basting" in line for line in told(tunic(lambda make: make.try_on(**IN), before=gone).work()))


def test_a_row_left_on_an_old_line_is_an_error() -> None:
    lesson = tunic(before=sewn, seam=nothing)

    @lesson.sew("Try it on")
    def trial(make, front):
        make.try_on("It gapes.", top_width=(28 * cm, 25 * cm), leave=front.side)

    pattern = lesson.work()
    (left,) = [finding for finding in prove(pattern) if finding.level == "error"]
    assert (left.code, left.piece, left.edge) == ("old_row_left", "front", "side") and left.amount == pytest.approx(
        30, abs=0.1
    )
    assert any("Unpick the stitching of the side seam of the back" in line for line in told(pattern))


@pytest.mark.parametrize(
    ("before", "seam", "errors", "notes"),
    [
        (24.5, sewn, [], ["cloth_short", "cloth_short"]),  # 1 cm of 1.5 cm is left: a plain seam can be sewn
        (24.0, sewn, ["cloth_short", "cloth_short"], []),  # 5 mm is left
        (20.0, sewn, ["cloth_short", "cloth_short"], []),  # beyond the cut edge
        (25.5, sewn, [], []),
    ],
)
def test_whether_the_cloth_suffices(before: float, seam, errors: list[str], notes: list[str]) -> None:
    """6 mm is the least a plain seam is sewn with (common practice, no source); written before the check was run."""
    pattern = tunic(lambda make: make.try_on(top_width=(before * cm, 25 * cm)), seam=seam).work()
    assert (codes(pattern, "error"), codes(pattern, "note")) == (errors, notes)


def test_a_french_seam_needs_all_of_its_allowance() -> None:
    def french(make, front, back):
        make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm)

    pattern = tunic(lambda make: make.try_on(top_width=(24.5 * cm, 25 * cm)), seam=french).work()
    assert codes(pattern, "error") == ["cloth_short", "cloth_short"]


def test_a_fault_of_the_other_draft_is_found_too() -> None:
    lesson = tunic(lambda make: make.try_on("It gapes.", **IN))

    @lesson.step("A back that follows its own mind")
    def odd(back, top_width):
        """Wider by {top_width}."""
        if top_width > 27 * cm:
            back.allow(side=1 * cm)

    found = [finding for finding in prove(lesson.work()) if finding.level == "error"]
    assert [finding.code for finding in found if "cut at first" in finding.what] == ["allowance"]


# ---- cloth to fit with -----------------------------------------------------------------------------------------


def trim(make, front, back):
    make.trim_to_fit(front.side, back.side)


def test_extra_cloth_counts_at_the_try_on_and_is_trimmed_afterwards() -> None:
    pattern = tunic(lambda make: make.try_on(top_width=(20 * cm, 25 * cm)), extra=5 * cm, after=trim).work()
    assert codes(pattern, "error") == []
    assert not any(line.startswith("Trim") for line in told(pattern)), "trim_to_fit does it"
    last = pattern.sewing[-1].operations[0]
    assert sentences(pattern, last)[0].endswith("1.5 cm (5/8 in) of allowance is left outside the stitch line.")


def test_extra_cloth_that_is_never_trimmed_is_an_error() -> None:
    assert codes(tunic(extra=2 * cm).work(), "error").count("extra_left") == 2
    assert codes(tunic(extra=2 * cm, after=trim).work(), "error") == []


def test_extra_cloth_is_trimmed_while_scissors_reach_it_and_once() -> None:
    def late(make, front, back):
        make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm)
        trim(make, front, back)

    assert "trimmed_to_fit_late" in codes(tunic(extra=2 * cm, seam=late).work(), "error")

    def twice(make, front, back):
        trim(make, front, back)
        trim(make, front, back)

    assert "trimmed_to_fit_twice" in codes(tunic(extra=2 * cm, after=twice).work(), "error")
    assert "no_extra_to_trim" in codes(tunic(after=trim).work(), "error")


def test_an_edge_with_its_extra_cloth_is_basted_and_not_sewn() -> None:
    def basted(make, front, back):
        make.baste(front.side, back.side, distance=0 * mm)

    def ready(make, front, back):
        make.remove_basting(front.side, back.side)
        trim(make, front, back)

    def late(make, front, back):
        sewn(make, front, back)
        trim(make, front, back)

    assert codes(tunic(extra=2 * cm, before=basted, after=ready).work(), "error") == []
    assert codes(tunic(extra=2 * cm, seam=late).work(), "error") == ["extra_sewn", "extra_sewn"]


def test_extra_cloth_that_is_trimmed_is_hatched() -> None:
    from kit.picture.sewing import scene_drawing
    from kit.prose import scene_alt

    pattern = tunic(extra=2 * cm, after=trim).work()
    scenes = pattern.sewing[-1].operations[0].scenes(pattern)
    assert [scene.recut.now.name for scene in scenes] == ["front", "back"]
    drawing = scene_drawing(scenes[0], pattern)
    names = [getattr(item, "name", "") for item in drawing.items]
    assert "front.hatch" in names and "front.trimmed" in names and "the extra cloth to trim off" in drawing.alt
    assert scene_alt(pattern, scenes[0]) == drawing.alt


def test_extra_cloth_is_cut_and_not_sewn() -> None:
    from kit.piece.allowance import cut_line

    wide, plain = tunic(extra=2 * cm, after=trim).work(), tunic().work()
    one, two = (cut_line(p.piece("front")).bounds() for p in (wide, plain))
    assert 20 < one[2] - two[2] < 25, "2 cm square to the side, a little more at the corner of a slanted one"
    assert wide.piece("front").edge("side").allowance == 15


def test_no_less_than_none_and_none_on_the_fold() -> None:
    for write, says in (
        (lambda front: front.allow_to_fit(side=-1 * cm), "less than nothing"),
        (lambda front: front.allow_to_fit(centre=1 * cm), "on the fold"),
    ):
        lesson = tunic()
        lesson.step("More cloth")(_written(write))
        with pytest.raises(KitError, match="More cloth") as caught:
            lesson.work()
        assert says in str(caught.value)


def _written(write):
    def more(front):
        """More."""
        write(front)

    return more


@pytest.mark.parametrize("code", ["de", "es", "fr"])
def test_every_sentence_in_other_languages(code: str) -> None:
    pattern = tunic(lambda make: make.try_on("It gapes.", **IN), before=sewn, seam=nothing).work()
    with speaking(code):
        said = told(pattern)
        assert len(said) == 8 and not any("{" in line or "new" in line.split() for line in said)


def test_the_state_knows_both_drafts() -> None:
    from kit.sewing.order import sew

    state, _ = sew(tunic(lambda make: make.try_on("It gapes.", **IN)).work())
    (change,) = state.refits
    assert {piece.was.edge("top").path.length for piece in change.pieces} == {280}
    assert {piece.now.edge("top").path.length for piece in change.pieces} == {250}


def test_a_seam_begun_before_the_try_on_is_finished_on_the_new_line() -> None:
    """Between the rows of a French seam of 9 and 6 mm nothing is trimmed yet: 1.5 cm lie outside the stitch line. Let
    out by 5 mm there is 1 cm, and its two rows take 1.5 cm again."""
    held = {}

    def first(make, front, back):
        held["seam"] = make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm, rows="first")

    def last(make, front, back):
        make.finish(held["seam"])

    taken_in = tunic(lambda make: make.try_on(**IN), before=first, seam=last).work()
    assert codes(taken_in, "error") == [] and any(line.startswith("Unpick") for line in told(taken_in))
    let_out = tunic(lambda make: make.try_on(top_width=(24.5 * cm, 25 * cm)), before=first, seam=last).work()
    found = [finding for finding in prove(let_out) if finding.level == "error"]
    assert [finding.code for finding in found] == ["cloth_short", "cloth_short"]
    assert found[0].what.startswith("only 1 cm")


def test_a_straight_taper_runs_to_its_end_however_little_it_is() -> None:
    said = told(tunic(lambda make: make.try_on(top_width=(24.8 * cm, 25 * cm))).work())
    assert any("2 mm (1/16 in) out at the top, tapering to nothing at the hem" in line for line in said)


def test_extra_cloth_is_said_on_the_printed_piece_in_words_and_in_figures() -> None:
    from kit.paper.export import pattern_json
    from kit.picture.drawing import Label
    from kit.picture.piece_sheet import piece_drawing
    from kit.prose.worksheet import worksheet

    pattern = tunic(extra=2 * cm, after=trim).work()
    drawing = piece_drawing(pattern.piece("front"), pattern)
    assert "3.5 cm, includes 2 cm to fit with" in [item.text for item in drawing.items if isinstance(item, Label)]
    assert "1.5 cm allowance and 2 cm to fit with" in drawing.alt
    (step,) = [step for step in pattern.steps if step.key == "draw_front"]
    assert {(spot.name, spot.value) for spot in step.spots if spot.extra} == {("side_extra", 20.0)}
    edges = {edge["name"]: edge for edge in pattern_json(pattern)["pieces"][0]["edges"]}
    assert (edges["side"]["allowance"], edges["side"]["extra"], edges["top"]["extra"]) == (15.0, 20.0, 0.0)
    assert "Add 2 cm more outside that along the side seam, to fit with." in str(worksheet(pattern))
