"""What holds of a part of an edge alone, tried on the orders of `data/parts_sew.toml`; the labels were judged there."""

from __future__ import annotations

import tomllib
from dataclasses import replace
from pathlib import Path

import pytest

from kit.errors import KitError
from kit.piece.piece import CutPlan, Mark
from kit.proof import prove
from kit.sewing.lying import Lying
from kit.units import cm, mm

CASES = tomllib.loads(Path(__file__).with_name("data").joinpath("parts_sew.toml").read_text(encoding="utf-8"))["case"]
BAGS = (
    "make.pocket_bag(front_bag.mouth, front.pocket, allowance=15 * mm)",
    "make.pocket_bag(back_bag.mouth, back.pocket, allowance=15 * mm)",
)


@pytest.fixture(scope="module")
def vest(garments):
    def half(name):
        return garments.polygon(
            name,
            [(0, 0), (70, 20), (150, 0), (150, -400), (0, -400)],
            {"neck": 10, "shoulder": 15, "side": 15, "hem": 20, "centre": 0},
            cut=CutPlan(fold="centre"),
            marks=(
                Mark("pocket", "opening", edge="side", start=80, end=230, said="pocket mouth"),
                Mark("slit", "opening", edge="side", start=300, end=400, said="slit"),
            ),
        )

    def bag(name):
        edges = {"mouth": 15, "bottom": 15, "outer": 15, "upper": 15}
        return garments.polygon(name, [(150, -80), (150, -230), (50, -260), (50, -60)], edges, cut=garments.PAIR)

    facing = garments.polygon(
        "slit_facing",
        [(150, -300), (150, -400), (110, -400), (110, -300)],
        {"inner": 15, "hem": 20, "outer": 0, "upper": 15},
        cut=garments.PAIR,
    )
    return half("front"), half("back"), bag("front_bag"), bag("back_bag"), facing


def written(line):
    def step(make, front, back, front_bag, back_bag, slit_facing):
        names = {
            "front_round": front_bag.bottom + front_bag.outer + front_bag.upper,
            "back_round": back_bag.bottom + back_bag.outer + back_bag.upper,
        }
        eval(line, {"cm": cm, "mm": mm}, {**locals(), **names})

    return step


@pytest.mark.parametrize("case", CASES, ids=lambda case: case["name"])
def test_an_order_that_would_sew_is_let_pass_and_another_is_not(sewn, vest, case):
    lines = [line for step in case["steps"] for line in (BAGS if step == "bags" else (step,))]
    found = sewn(vest, *map(written, lines))
    unpressed = [each.code for each in prove(found.pattern) if each.code == "never_pressed"]
    against = found.codes + (unpressed if not found.codes else [])
    assert (not against) == case["sews"], against


# ---- beside a slit --------------------------------------------------------------------------------------------------


def beside_the_slit(*more):
    """The sides sewn down to the slit, the slit hemmed by itself."""
    lines = [
        "make.plain_seam(front.side.before(front.slit), back.side.before(back.slit), allowance=15 * mm, "
        "opening=(8 * cm, 23 * cm))",
        "make.narrow_hem(front.side.after(front.slit.start), back.side.after(back.slit.start), turn=5 * mm)",
    ]
    return [written(line) for line in (*lines, *more)]


def test_hems_beside_a_slit_are_rows_of_their_own(sewn, vest):
    """Front and back are hemmed alike; nothing will be sewn where they end (common practice, no source)."""
    hems = "make.hem(front.hem, back.hem, first=5 * mm, second=15 * mm)"
    assert sewn(vest, *beside_the_slit(hems)).codes == []
    assert sewn(vest, written(hems)).codes == ["not_joined_yet"]  # the sides are still to come


def test_a_slit_beside_an_opening_is_neither_moved_nor_sewn_shut(sewn, vest):
    found = sewn(vest, *beside_the_slit())
    assert not [each for each in prove(found.pattern) if each.code.startswith("opening")]
    shut = sewn(vest, written("make.plain_seam(front.side, back.side, allowance=15 * mm, opening=front.pocket)"))
    codes = [(each.piece, each.code) for each in prove(shut.pattern) if each.code.startswith("opening")]
    assert codes == [("front", "opening_sewn_shut"), ("back", "opening_sewn_shut")]


def test_an_opening_in_a_part_of_a_seam_is_measured_from_the_edge_beside_it(sewn, vest):
    line = "make.plain_seam(front.side.after(5 * cm), back.side.after(5 * cm), allowance=15 * mm, opening=front.pocket)"
    (said,) = (text for text in sewn(vest, written(line)).said if "unsewn" in text)
    assert "8 cm" in said and "23 cm" in said and "measured from the shoulder" in said


def test_an_edge_lies_stretch_by_stretch(sewn, vest):
    """Sewn, with an opening from 8 to 23 cm, down to a slit that is hemmed: three ways in one edge."""
    found = sewn(vest, *beside_the_slit())
    lies = [lie for lie in Lying(found.state).edges(found.pattern, vest[0], "left") if lie.edge == "side"]
    assert [(lie.start, lie.end, lie.way) for lie in lies] == [
        (0.0, 80.0, "seamed"),
        (80.0, 230.0, "turned"),
        (230.0, 300.0, "seamed"),
        (300.0, 400.0, "turned"),
    ]
    assert [lie.row for lie in lies] == [0.0, 0.0, 0.0, 3.0]  # the hem's row, 2 mm from its inner fold


def test_a_ring_named_over_the_fold_edge_by_edge_is_one_line(garments):
    """What runs round a piece on the fold, from its centre down one half and up the other."""
    from kit.sewing.handle import PieceHandle

    piece = garments.polygon(
        "front",
        [(0, 0), (150, 0), (150, -200), (0, -200)],
        {"top": 10, "side": 10, "hem": 10, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    front = PieceHandle(piece)
    left, right = front.left, front.right
    ring = left.top + left.side + left.hem + right.hem + right.side + right.top
    assert [(run.side, run.edges) for run in ring.runs] == [
        ("left", ("top", "side", "hem")),
        ("right", ("hem", "side", "top")),
    ]


def test_two_lengths_run_round_a_piece_that_is_on_the_fold(sewn, garments):
    """A left and a right length together are both halves; nobody is sent to one half of the other piece."""
    corners = [(0, 0), (150, 0), (150, -200), (0, -200)]
    front = garments.polygon(
        "front", corners, {"top": 10, "side": 10, "hem": 10, "centre": 0}, cut=CutPlan(fold="centre")
    )
    round_it = garments.polygon(
        "gusset",
        [(0, 0), (500, 0), (500, -80), (0, -80)],
        {"low": 10, "end": 10, "up": 10, "start": 10},
        cut=CutPlan(2, mirrored=True),
    )

    def write(make, front, gusset):
        make.plain_seam(gusset.left.end, gusset.right.end, allowance=10 * mm)
        make.plain_seam(gusset.left.start, gusset.right.start, allowance=10 * mm)
        make.plain_seam(gusset.left.low + gusset.right.low, front.top + front.side + front.hem, allowance=10 * mm)

    assert sewn((front, round_it), write).codes == []


def test_one_length_alone_is_told_what_to_write_of_the_other_piece(sewn, garments):
    corners = [(0, 0), (150, 0), (150, -200), (0, -200)]
    edges = {"top": 10, "side": 10, "hem": 10, "centre": 10}
    front = garments.polygon("front", corners, edges, cut=CutPlan(2, mirrored=True))
    back = replace(front, name="back", title="Back")
    with pytest.raises(KitError) as refused:
        sewn(
            (front, back),
            lambda make, front, back: make.plain_seam(front.left.side, back.top + back.side, allowance=10 * mm),
        )
    assert "back.left.top + back.left.side" in str(refused.value)
