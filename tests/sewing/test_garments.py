"""A jacket, a skirt and a tote sewn from beginning to end, and what is noticed when their order is broken."""

from __future__ import annotations

import re

import pytest

from kit.picture.sewing import scene_drawing
from kit.proof import prove
from kit.prose import operation_alt, sentences
from kit.sewing.in_work import shown_scenes
from kit.sewing.order import sew

NAMES = ("JACKET", "SKIRT", "TOTE")


def objections(pattern) -> list[str]:
    """Codes of what the order refuses, of the proof's errors, and of facts that are wanted and do not hold."""
    state, refusals = sew(pattern)
    wanted = {fact for record in pattern.sewing for each in record.operations for fact in each.wants(pattern)}
    found = [refusal.code for refusal in refusals]
    found += [f"wants {fact[0]}" for fact in sorted(wanted - state.facts)]
    return found + [finding.code for finding in prove(pattern) if finding.level == "error"]


@pytest.mark.parametrize("name", NAMES)
def test_a_garment_is_sewn_without_objection_and_every_edge_ends_closed(garments, name):
    pattern = getattr(garments, name).pattern()
    state, refusals = sew(pattern)
    assert refusals == ()
    assert objections(pattern) == []
    assert state.inside_out == frozenset()
    for piece in pattern.pieces:
        for side in piece.sides:
            for edge in piece.edges:
                assert state.raw(piece, side, edge.name) == (), (piece.name, side, edge.name)
                closed = sum(done.span.length for done in state.on((piece.name, side, edge.name)))
                assert closed == pytest.approx(0.0 if edge.name == piece.fold else edge.path.length)


@pytest.mark.parametrize("name", NAMES)
def test_every_operation_says_and_shows_itself(garments, name):
    pattern = getattr(garments, name).pattern()
    for record in pattern.sewing:
        for operation in record.operations:
            for system in ("cm", "inch"):
                for line in sentences(pattern, operation, system):
                    assert re.fullmatch(r"[A-Z].*[.]", line), line
                    assert "{" not in line and "_" not in line, line
            assert operation.minutes(pattern) > 0
            assert operation.uses.pieces or operation.uses.strips
            alt = operation_alt(pattern, operation)
            assert "{" not in alt and "_" not in alt
            for scene in shown_scenes(pattern, operation):
                assert scene_drawing(scene, pattern).items


LEFT_OUT = {
    # what is left out: (garment, one of the objections)
    "Interface": ("JACKET", "interfacing_unused"),
    "Pocket hem": ("JACKET", "pocket_not_hemmed"),
    "Pocket edges": ("JACKET", "pocket_not_folded"),
    "Pockets": ("JACKET", "wants pocket_edge_sewn"),
    "Front edges": ("JACKET", "band_end_raw"),
    "Shoulders": ("JACKET", "not_joined_yet"),
    "Seam band": ("JACKET", "right_side_out_already"),
    "Turn band": ("JACKET", "inside_out"),
    "Set band": ("JACKET", "band_not_set"),
    "Close band": ("JACKET", "raw_edge"),
    "Side seams": ("JACKET", "armhole_no_ring"),
    "Ease caps": ("JACKET", "not_eased_yet"),
    "Sleeve seams": ("JACKET", "sleeve_no_ring"),
    "Gather wrists": ("JACKET", "band_length"),
    "Cuffs": ("JACKET", "band_end_open"),
    "Set cuffs": ("JACKET", "band_not_set"),
    "Close cuffs": ("JACKET", "buttonhole_early"),
    "Sleeves": ("JACKET", "loose_piece"),
    "Hem": ("JACKET", "raw_edge"),
    "Make loops": ("JACKET", "strip_not_made"),
    "Loops": ("JACKET", "strip_unused"),
    "Buttonholes": ("JACKET", "no_buttonhole"),
    "Buttons": ("JACKET", "wants buttoned"),
    "Pocket bags": ("SKIRT", "bag_not_set"),
    "Centre seam": ("SKIRT", "seam_below_zip"),
    "Zip": ("SKIRT", "band_end_raw"),
    "Set waistband": ("SKIRT", "band_not_set"),
    "Waistband ends": ("SKIRT", "band_end_open"),
    "Turn waistband": ("SKIRT", "inside_out"),
    "Close waistband": ("SKIRT", "raw_edge"),
    "Sides and bottom": ("TOTE", "not_joined_yet"),
    "Boxed corners": ("TOTE", "raw_edge"),
    "Make straps": ("TOTE", "strip_not_made"),
    "Straps": ("TOTE", "strip_unused"),
    "Top hem": ("TOTE", "raw_edge"),
}


@pytest.mark.parametrize("title", LEFT_OUT)
def test_what_is_left_out_is_noticed(garments, title):
    name, code = LEFT_OUT[title]
    assert code in objections(getattr(garments, name).without(title))


@pytest.mark.parametrize("name", NAMES)
def test_nothing_can_be_done_twice(garments, name):
    garment = getattr(garments, name)
    for title, _ in garment.steps:
        assert objections(garment.twice(title)), title


@pytest.mark.parametrize(
    ("name", "earlier", "later", "code"),
    [
        ("JACKET", "Interface", "Seam band", "fused_late"),
        ("JACKET", "Pocket hem", "Pockets", "pocket_not_hemmed"),
        ("JACKET", "Pocket edges", "Pockets", "folded_late"),
        ("JACKET", "Front edges", "Set band", "band_end_raw"),
        ("JACKET", "Turn band", "Set band", "gap_shut"),
        ("JACKET", "Seam band", "Turn band", "right_side_out_already"),
        ("JACKET", "Set band", "Close band", "band_not_set"),
        ("JACKET", "Ease caps", "Sleeves", "not_eased_yet"),
        ("JACKET", "Sleeve seams", "Sleeves", "sleeve_no_ring"),
        ("JACKET", "Side seams", "Sleeves", "armhole_no_ring"),
        ("JACKET", "Gather wrists", "Set cuffs", "band_length"),
        ("JACKET", "Cuffs", "Close cuffs", "band_end_open"),
        ("JACKET", "Buttonholes", "Buttons", "no_buttonhole"),
        ("JACKET", "Close cuffs", "Buttonholes", "buttonhole_early"),
        ("SKIRT", "Interface", "Set waistband", "fused_late"),
        ("SKIRT", "Pocket bags", "Side seams", "bag_not_set"),
        ("SKIRT", "Centre seam", "Zip", "seam_below_zip"),
        ("SKIRT", "Zip", "Set waistband", "zip_late"),
        ("SKIRT", "Waistband ends", "Close waistband", "band_end_open"),
        ("SKIRT", "Turn waistband", "Close waistband", "gap_shut"),
        ("TOTE", "Straps", "Top hem", "edge_closed_already"),
        ("TOTE", "Make straps", "Straps", "strip_not_made"),
        ("TOTE", "Sides and bottom", "Boxed corners", "not_joined_yet"),
    ],
)
def test_an_order_turned_round_is_refused(garments, name, earlier, later, code):
    assert code in objections(getattr(garments, name).swapped(earlier, later))


@pytest.mark.parametrize(
    ("name", "earlier", "later"),
    [
        ("JACKET", "Pockets", "Side seams"),
        ("JACKET", "Interface", "Shoulders"),
        ("JACKET", "Shoulders", "Turn band"),
        ("JACKET", "Ease caps", "Sleeve seams"),
        ("JACKET", "Close band", "Hem"),
        ("JACKET", "Hem", "Loops"),
        ("SKIRT", "Set waistband", "Turn waistband"),
        ("SKIRT", "Side seams", "Zip"),
        ("SKIRT", "Hook", "Hem"),
        ("TOTE", "Boxed corners", "Straps"),
    ],
)
def test_an_order_that_would_sew_as_well_is_let_be(garments, name, earlier, later):
    assert objections(getattr(garments, name).swapped(earlier, later)) == []


def test_notions_can_be_counted(garments):
    def amounts(garment):
        found = {}
        pattern = garment.pattern()
        for record in pattern.sewing:
            for operation in record.operations:
                for notion, (amount, unit) in operation.notion_amounts(pattern).items():
                    found[notion] = (found.get(notion, (0, unit))[0] + amount, unit)
        return found

    assert amounts(garments.JACKET) == {"buttons": (4, "count")}
    assert amounts(garments.SKIRT) == {"zip": (190.0, "length"), "hooks": (1, "count")}
    assert amounts(garments.TOTE) == {}
