"""What the findings say: in four languages, with the amounts that mend, and found by the panel's remedies too."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from kit.language import speaking
from kit.proof import prove
from kit.proof.causes import parameters_of
from kit.proof.mending import remedies
from kit.sewing.order import sew
from kit.units import Length, cm
from kit.wear.worn import worn
from tests.wear.garments import labelled, lesson_of

NOT_WORN = {garment.name: garment for garment in labelled() if not garment.worn}
LANGUAGES = ("en", "de", "es", "fr")


def told(name: str):
    garment = NOT_WORN[name]
    pattern = lesson_of(garment.base, garment.changes).work()
    return worn(pattern, sew(pattern)[0])


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_finding_is_a_sentence_in_every_language(language: str) -> None:
    with speaking(language):
        for name in list(NOT_WORN)[::2] if language != "en" else NOT_WORN:
            for finding in told(name):
                for text in (finding.what, finding.where, finding.do):
                    assert text and not re.search(r"[{}_]|wear[.-]", text), text
                assert finding.do.endswith(".")


def test_an_amount_is_what_is_missing() -> None:
    (skirt,) = told("dune_skirt-4")  # a band of 65.5 cm round a waist of 71.5
    assert skirt.code == "too_small" and skirt.amount == pytest.approx(60.0, abs=0.5)
    (hat,) = told("hat-1")  # 53 cm round a head of 56
    assert hat.code == "head_small" and hat.amount == pytest.approx(30.0, abs=0.1)
    (strap,) = told("apron-2")  # a loop of 24 and 22 cm
    assert strap.code == "strap_small" and strap.amount == pytest.approx(100.0, abs=0.1)
    (neck,) = [each for each in told("tunic-1") if each.code == "neck_small"]
    assert neck.amount is not None and neck.amount > 150.0


def test_ties_that_make_a_knot_and_no_bow_are_a_warning() -> None:
    """45 cm each: 90 for a way of 57 leave 33."""
    change = (
        'lesson.length("tie_length", 75 * cm, least=50 * cm',
        'lesson.length("tie_length", 45 * cm, least=10 * cm',
    )
    unbound = (", at_least=once_round", "")  # the slider itself ends at a bow, and so does the strip
    short = ("max(tie_length, waist_girth / 2 + 20 * cm)", "max(tie_length, waist_girth * 0)")
    pattern = lesson_of("tideline_wrap_top", (change, unbound, short)).work()
    (found,) = worn(pattern, sew(pattern)[0])
    assert (found.code, found.level) == ("ties_no_bow", "warning")


def test_the_proof_tells_it_and_remedies_say_which_measure_mends_it() -> None:
    garment = NOT_WORN["dune_skirt-1"]
    lesson = lesson_of(garment.base, garment.changes)
    assert [finding.code for finding in prove(lesson.work()) if finding.level == "error"] == ["no_way_on"]
    (remedy,) = remedies(lesson)
    assert "Zip length: at least" in str(remedy)
    mended = prove(lesson.work(values={**lesson.values, **remedy.values}))
    assert not [finding for finding in mended if finding.level == "error"]


def test_the_panel_can_mark_the_values_it_depends_on() -> None:
    garment = NOT_WORN["dune_skirt-1"]
    lesson = lesson_of(garment.base, garment.changes)
    (finding,) = told("dune_skirt-1")
    names = [parameter.name for parameter in lesson.parameters]
    assert "zip_length" in parameters_of(finding, lesson.work(), lesson.entries, names)
    (wide,) = [each for each in told("tunic-5") if each.code == "no_way_on"]
    assert (wide.piece, wide.edge) == ("front", "side")


@pytest.mark.parametrize("name", ["lengthen_above_waist", "shorten_above_waist"])
@pytest.mark.parametrize("amount", [2 * cm, 3.5 * cm])
def test_a_wrap_made_for_a_longer_or_shorter_body_is_held_against_that_body(name: str, amount: Length) -> None:
    """A woman longer from shoulder to waist than her size has the pattern lengthened by that: what lies on her is her
    own front. The same length added without such a change still stands away (the next test)."""
    lesson = lesson_of("harbour_jacket", ())
    lesson.change(**{name: amount})
    pattern = lesson.work()
    assert not [each for each in worn(pattern, sew(pattern)[0]) if each.code in ("wrap_gapes", "wrap_pulls")]


def test_a_front_longer_than_the_body_it_is_worn_on_stands_away() -> None:
    lesson = lesson_of("harbour_jacket", ())
    lesson.change(lengthen_above_waist=3 * cm)
    pattern = lesson.work()
    unsaid = tuple(each for each in pattern.values if each.name != "lengthen_above_waist")
    pattern = replace(pattern, values=unsaid)
    (found,) = [each for each in worn(pattern, sew(pattern)[0]) if each.code == "wrap_gapes"]
    assert found.amount == pytest.approx(30.0, abs=3.0)
