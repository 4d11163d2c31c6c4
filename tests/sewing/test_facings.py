"""Interfacing sewn in, a facing's free edge, a facing all round a neck."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.piece.piece import CutPlan
from kit.proof.edges import raw_edges
from kit.sewing.order import sew
from kit.units import cm, mm


@pytest.fixture(scope="module")
def neck(garments):
    """Two halves on the fold with a neck, and facings for both."""

    def half(name: str, **more):
        return garments.polygon(
            name,
            [(0, 0), (70, 20), (150, 0), (150, -200), (0, -200)],
            {"neck": 10, "shoulder": 15, "side": 15, "hem": 20, "centre": 0},
            cut=CutPlan(fold="centre"),
            **more,
        )

    def facing(name: str):
        return garments.polygon(
            name,
            [(0, 0), (70, 20), (110, 10), (0, -50)],
            {"neck": 10, "shoulder": 10, "outer": 6, "centre": 0},
            cut=CutPlan(fold="centre", interfacing=1),
        )

    return half("front"), half("back"), facing("front_facing"), facing("back_facing")


def seams(make, front, back, front_facing, back_facing):
    make.plain_seam(front.shoulder, back.shoulder, allowance=15 * mm)
    make.plain_seam(front_facing.shoulder, back_facing.shoulder, allowance=1 * cm)


def attach(make, front, back, front_facing, back_facing):
    make.attach_facing([front_facing.neck, back_facing.neck], [front.neck, back.neck], allowance=1 * cm)


def test_a_facing_all_round_with_its_outer_edge_overcast(sewn, neck):
    found = sewn(
        neck,
        lambda make, **p: make.baste_interfacing(p["front_facing"], p["back_facing"]),
        seams,
        lambda make, **p: make.finish_facing(p["front_facing"].outer, p["back_facing"].outer),
        attach,
        lambda make, **p: make.understitch(p["front_facing"].neck, p["back_facing"].neck),
    )
    assert found.codes == []
    assert {finding.edge for finding in raw_edges(found.pattern, found.state)} == {"side", "hem"}
    assert ("interfaced", "front_facing") in found.state.facts
    assert found.state.fused == ("front_facing", "back_facing")


def test_an_outer_edge_turned_under_takes_its_turn(sewn, neck):
    found = sewn(
        neck,
        seams,
        lambda make, **p: make.finish_facing(
            [p["front_facing"].outer, p["back_facing"].outer], stitch="turned", turn=6 * mm
        ),
    )
    operation = found.last
    assert operation.takes(found.pattern) == {("front_facing", "outer"): 6.0, ("back_facing", "outer"): 6.0}
    assert {closing.how for closing in operation.closes(found.pattern)} == {"hemmed"}
    assert found.said[:3] == [
        "Stitch a guide row along the outer edge of the front facing and back facing, 6 mm (1/4 in) from the cut edge. "
        "Clip the curves up to it.",
        "Press the edge under along the guide row.",
        "Edgestitch along the fold, through the turned edge only.",
    ]


def test_facings_finished_before_they_are_joined_get_a_note(sewn, neck):
    found = sewn(
        neck, lambda make, **p: make.finish_facing([p["front_facing"].outer, p["back_facing"].outer], stitch="turned")
    )
    assert found.codes == ["facing_apart"]
    assert sew(found.pattern)[1][0].level == "note"


def test_sewn_in_interfacing_says_where_it_is_basted(sewn, neck):
    found = sewn(neck, lambda make, **p: make.baste_interfacing(p["front_facing"]))
    assert found.codes == []
    assert found.said[1] == "Baste all round in the allowance, 3 mm (1/8 in) outside the stitch line."
    assert found.last.notions == ("thread", "sewn_in_interfacing")
    assert [key for key, _ in found.last.whys(found.pattern)] == ["baste_interfacing.why"]


@pytest.mark.parametrize(
    ("writes", "code"),
    [
        ((lambda make, **p: make.baste_interfacing(p["front"]),), "no_interfacing_cut"),
        ((lambda make, **p: make.baste_interfacing(p["front_facing"], distance=7 * mm),), "basting_outside_cloth"),
        (
            (
                lambda make, **p: make.fuse(p["front_facing"]),
                lambda make, **p: make.baste_interfacing(p["front_facing"]),
            ),
            "fused_twice",
        ),
        ((seams, lambda make, **p: make.baste_interfacing(p["front_facing"])), "fused_late"),
    ],
)
def test_interfacing_is_refused(sewn, neck, writes, code):
    assert sewn(neck, *writes).codes == [code]


def test_understitching_wants_a_seam_and_a_second_row_does_no_harm(sewn, neck):
    def row(make, **p):
        make.understitch(p["front_facing"].neck, p["back_facing"].neck)

    assert "understitched_early" in sewn(neck, seams, row).codes
    assert sewn(neck, seams, attach, row, row).codes == []


def test_words_are_read(sewn, neck):
    with pytest.raises(KitError, match="turned"):
        sewn(neck, lambda make, **p: make.finish_facing(p["front_facing"].outer, stitch="turn"))
    with pytest.raises(KitError, match="no piece is named"):
        sewn(neck, lambda make, **p: make.baste_interfacing())


def test_a_facing_without_interfacing_needs_none(sewn, neck):
    plain = tuple(replace(piece, cut=replace(piece.cut, interfacing=0)) for piece in neck)
    assert sewn(plain, seams, attach).codes == []
