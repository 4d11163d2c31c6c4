"""Which way a band goes round, worked by hand on a skirt with a zip in its left side.

Seen from in front the wearer's left is at the viewer's right. Beside the zip, seen from outside, the front's edge is at
the viewer's left and the back's at the viewer's right. A band whose lower edge is drawn from left to right goes, right
side out, from the back's edge along the back, round the right side and along the front to its edge.
"""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.piece.piece import CutPlan
from kit.proof.band_way import band_ways
from kit.units import cm, mm

ENDS = {"low": 10, "right_end": 10, "high": 10, "left_end": 10}


@pytest.fixture(scope="module")
def skirt(garments):
    def half(name):
        corners = [(0, 0), (150, 0), (150, -500), (0, -500)]
        edges = {"waist": 10, "side": 15, "hem": 30, "centre": 0}
        return garments.polygon(name, corners, edges, cut=CutPlan(fold="centre"), role=name, worn=name)

    return half("front"), half("back"), garments.rectangle("band", 630, 60, ENDS)


def told(sewn, pieces, seam, order, end):
    def sides(make, front, back, band):
        make.plain_seam(front.right.side, back.right.side, allowance=15 * mm)
        make.plain_seam(front.left.side.after(18 * cm), back.left.side.after(18 * cm), allowance=15 * mm)

    def put_on(make, front, back, band):
        edges = [{"front": front, "back": back}[name].waist for name in order]
        ends = {"left": band.left_end, "right": band.right_end}
        make.set_band(getattr(band, seam), edges, allowance=1 * cm, overlap=3 * cm, at=ends[end])

    return [(each.level, str(each.what)) for each in band_ways(sewn(pieces, sides, put_on).pattern)]


@pytest.mark.parametrize(
    ("seam", "order", "end", "goes"),
    [
        ("low", ("back", "front"), "left", True),  # the left end reaches beyond the back: it buttons under the front
        ("low", ("back", "front"), "right", True),
        ("low", ("front", "back"), "right", False),
        ("low", ("front", "back"), "left", False),
        ("high", ("front", "back"), "right", False),  # hung by its upper edge, drawn on from the right end: the same
        ("high", ("back", "front"), "right", True),
    ],
)
def test_a_band_goes_the_way_its_edges_are_named_or_the_other(sewn, skirt, seam, order, end, goes):
    assert (told(sewn, skirt, seam, order, end) == []) is goes


def test_the_place_is_named_where_the_end_would_lie(sewn, skirt):
    ((level, said),) = told(sewn, skirt, "low", ("front", "back"), "right")
    assert level == "note" and said.index("back left waist") < said.index("front left waist")


def test_a_band_that_has_no_mirror_image_is_warned_of(sewn, skirt):
    front, back, band = skirt
    band = replace(band, cut=CutPlan(1, right_side_up=True))
    assert told(sewn, (front, back, band), "low", ("front", "back"), "right")[0][0] == "warning"
