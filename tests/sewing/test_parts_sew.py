"""What holds of a part of an edge alone, tried on the orders of `data/parts_sew.toml`; the labels were judged there."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

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
