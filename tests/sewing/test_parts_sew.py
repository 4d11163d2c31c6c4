"""What holds of a part of an edge alone, tried on the orders of `data/parts_sew.toml`; the labels were judged there."""

from __future__ import annotations

import tomllib
from pathlib import Path

import pytest

from kit.piece.piece import CutPlan, Mark
from kit.proof import prove
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
