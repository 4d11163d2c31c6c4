"""Pleats and tucks written in steps: distances with units, named measures, records for picture and proof."""

from __future__ import annotations

import pytest

from kit.blocks import skirt_block
from kit.body import workshop_chart
from kit.errors import KitError
from kit.lesson.bench import BenchPiece
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.picture.draft import step_drawing
from kit.picture.drawing import Dimension, Stroke
from kit.piece.dart import sewn_length
from kit.piece.pleat import intake, pleat_of
from kit.proof import prove
from kit.units import Length, cm, mm
from tests.pleated import panel

BODY = workshop_chart()["W4"]


def bench() -> BenchPiece:
    return BenchPiece(panel())


def test_styles_directions_and_places() -> None:
    skirt = bench()
    skirt.add_pleat("one", "waist", at=10 * cm, intake=6 * cm)
    assert pleat_of(skirt.freeze(), "one").laid == "start"  # the side lies at the waist's start
    skirt.add_pleat("two", skirt.waist, at=18 * cm, intake=4 * cm, laid="centre", held="both")
    found = pleat_of(skirt.freeze(), "two")
    assert (found.laid, found.far, found.held) == ("end", "hem", "both")
    assert skirt.sewn_length("waist") == pytest.approx(260.0)
    other = bench()
    other.add_pleat("box", "waist", at=13 * cm, intake=8 * cm, style="box", face=6 * cm, along=other.centre)
    first, second = pleat_of(other.freeze(), "box_1"), pleat_of(other.freeze(), "box_2")
    assert second.start - first.end == pytest.approx(60.0)
    tapered = bench()
    tapered.add_pleat("swing", "waist", at=10 * cm, intake=5 * cm, to=("hem", 15 * cm), tapered=True)
    assert pleat_of(tapered.freeze(), "swing").tapered
    aimed = bench()
    aimed.mark(foot=aimed.hem.at(12 * cm))
    aimed.add_pleat("aimed", "waist", at=10 * cm, intake=5 * cm, to=aimed.foot)
    assert pleat_of(aimed.freeze(), "aimed").far == "hem"


def test_a_row_of_tucks() -> None:
    skirt = bench()
    skirt.add_tuck("tuck", "waist", at=6 * cm, depth=5 * mm, count=4, apart=2 * cm, sewn=12 * cm, along=skirt.centre)
    piece = skirt.freeze()
    assert [p.name for p in piece.pleats] == ["tuck_1", "tuck_2", "tuck_3", "tuck_4"]
    assert all(p.kind == "tuck" and p.sewn == 120.0 for p in piece.pleats)
    assert sewn_length(piece, "waist") == pytest.approx(260.0)
    skirt.true_pleat("tuck_2")
    assert skirt.sewn_length("waist") == pytest.approx(260.0)


@pytest.mark.parametrize(
    ("given", "words"),
    [
        ({"intake": 6}, "has no unit"),
        ({"intake": 6 * cm, "style": "knive"}, "no pleat style"),
        ({"intake": 6 * cm, "held": "hem"}, "not held"),
        ({"intake": 6 * cm, "laid": "left"}, "not pressed"),
        ({"intake": 6 * cm, "face": 3 * cm}, "only a box pleat"),
        ({"intake": 6 * cm, "to": "hem"}, "not a place"),
        ({"intake": 6 * cm, "to": ("him", 2 * cm)}, "no edge 'him'"),
    ],
)
def test_what_cannot_be_drawn_is_refused(given: dict[str, object], words: str) -> None:
    with pytest.raises(KitError) as caught:
        bench().add_pleat("pleat", "waist", at=10 * cm, **given)  # type: ignore[arg-type]
    assert words in str(caught.value)


def test_rows_need_a_count_and_a_spacing() -> None:
    with pytest.raises(KitError, match="how far apart"):
        bench().add_tuck("tuck", "waist", at=5 * cm, depth=5 * mm, count=3)
    with pytest.raises(KitError, match="whole number"):
        bench().add_tuck("tuck", "waist", at=5 * cm, depth=5 * mm, count=2.5, apart=2 * cm)  # type: ignore[arg-type]


@pytest.fixture(scope="module")
def pleated_skirt() -> Pattern:
    lesson = Lesson("Pleated Dune skirt", start=skirt_block, units="cm", date="2026-11")
    lesson.length("pleat_intake", 6 * cm, least=2 * cm, most=12 * cm, why="how full the skirt hangs")

    @lesson.step("Fold a pleat into the front")
    def pleat(front: BenchPiece, pleat_intake: Length) -> None:
        """Slash from the waist to the hem and spread by {pleat_intake}."""
        front.add_pleat("front_pleat", "waist", at=3 * cm, intake=pleat_intake)

    return lesson.work(BODY)


def test_the_step_keeps_what_was_redrawn_and_dimensions_the_intake(pleated_skirt: Pattern) -> None:
    record = pleated_skirt.steps[-1]
    assert {name for _, name, _ in record.new} >= {"waist", "hem"}
    assert {name for _, name, _ in record.removed} >= {"waist", "hem"}
    (spot,) = (spot for spot in record.spots if spot.name == "pleat_intake")
    assert spot.value == pytest.approx(60.0)
    assert intake(pleat_of(pleated_skirt.piece("front"), "front_pleat")) == pytest.approx(60.0)
    items = step_drawing(record).items
    assert [i.role for i in items if isinstance(i, Stroke) and i.name == "front.front_pleat"] == ["new", "new"]
    assert any(isinstance(i, Stroke) and i.name == "front.front_pleat.laid" and i.arrow == "end" for i in items)
    assert any(isinstance(i, Dimension) and i.name == "pleat_intake" for i in items)


def test_the_proof_finds_no_fault_with_it(pleated_skirt: Pattern) -> None:
    assert not [f for f in prove(pleated_skirt) if f.code.startswith(("pleat", "dart", "crosses", "not_closed"))]
