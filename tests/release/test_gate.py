"""What keeps a lesson from being released, each reason by itself. That a picture must have a text in its place: WCAG
2.2, success criterion 1.1.1; that an ornament may be hidden: HTML standard, 4.8.4.4."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit import Lesson, bodice_block, cm, open_lesson
from kit.booklet.handover import Handover, SizeRow
from kit.booklet.ranged import Ranges
from kit.errors import KitError
from kit.language import languages
from kit.proof.ranges import Mixture, RangeTried
from kit.release.gate import (
    NAMES,
    NotReady,
    Reason,
    picture_reasons,
    proof_reasons,
    range_reasons,
    read_allowed,
    read_languages,
    silent,
    size_reasons,
)
from kit.resources import examples


def block() -> Handover:
    """A block without allowances: every edge is an error of the proof."""
    lesson = Lesson("Block", start=bodice_block)
    sizes = tuple(lesson.work(body=lesson.sizes[name]) for name in ("W4", "W5"))
    return Handover(sizes[0], sizes=sizes)


def test_errors_of_the_proof_are_told_with_their_sizes() -> None:
    reasons = list(proof_reasons(block()))
    assert all(reason.name == "proof" for reason in reasons)
    assert reasons[0].what.startswith("In every size: Front bodice: ") and reasons[0].do
    assert "more like these" in reasons[-1].what  # not all of them one by one


def test_notions_listed_in_another_number_or_length_than_the_sewing_uses() -> None:
    """A warning of the proof, and no release: the skirt is sewn with one button and a zip of 18 cm."""
    lesson = open_lesson(examples() / "dune_skirt.ipynb")
    sizes = [lesson.work(body=lesson.sizes[name]) for name in ("W4", "W5")]

    def reasons(*notions: str) -> list[Reason]:
        listed = [replace(each, lesson=replace(each.lesson, notions=notions)) for each in sizes]
        return list(proof_reasons(Handover(listed[0], sizes=tuple(listed))))

    rest = ("sewing thread", "interfacing")
    assert reasons(*rest, "zip, 18 cm", "1 button, 18 mm") == []
    (two,) = reasons(*rest, "zip, 18 cm", "2 buttons, 18 mm")
    assert two.name == "notions" and two.what.startswith("In every size: ") and "has 2" in two.what and two.do
    (zip_,) = reasons(*rest, "zip, 22 cm", "1 button")
    assert zip_.name == "notions" and "22 cm" in zip_.what
    (none,) = reasons(*rest, "zip, 18 cm")
    assert none.name == "notions" and "button" in none.what


def test_a_size_that_cannot_be_drafted() -> None:
    rows = (SizeRow("W1", ()), SizeRow("W2", (), trouble="the dart is wider than the piece."))
    (reason,) = size_reasons(replace(block(), chart=rows))
    assert (reason.name, "Size W2" in reason.what, "the dart" in reason.what) == ("sizes", True, True)


@pytest.mark.parametrize(
    ("html", "found"),
    [
        ('<img src="a.png" alt="A hem">', []),
        ("<img src='a.png' alt='A hem'>", []),
        ('<img src="a.png">', ["a.png"]),
        ('<IMG ALT="" SRC="a.png">', ["a.png"]),
        ('<img src="a.png" alt="&nbsp; ">', ["a.png"]),
        ('<img src="data:image/png;base64,AA" alt="">', ["within the text"]),
        ('<img src="a.png" alt="" role="presentation">', []),
        ('<img src="a.png" alt="" aria-hidden="true">', []),
        ("<svg><title>A hem</title></svg>", []),
        ('<svg aria-label="A hem"></svg>', []),
        ("<svg><title> </title></svg>", ["number 1 of those drawn"]),
        ('<svg aria-hidden="true"></svg><svg viewBox="0 0 1 1"><path/></svg>', ["number 2 of those drawn"]),
    ],
)
def test_pictures_that_say_nothing(html: str, found: list[str]) -> None:
    assert list(silent(html)) == found
    assert [reason.name for reason in picture_reasons(html)] == ["pictures"] * len(found)


def test_ranges_that_do_not_hold() -> None:
    lesson = Lesson("Vest", start=bodice_block)
    lesson.length("drop", 5 * cm, least=0 * cm, most=60 * cm)
    (parameter,) = lesson.parameters
    sound = tuple(Mixture("W4", ()) for _ in range(96))
    wrong = tuple(Mixture("W4", (), "too long") for _ in range(4))
    holding = Ranges("Vest", "cm", ("W4",), (RangeTried(parameter, "W4", 3),), (*sound, *wrong))
    assert list(range_reasons(holding)) == []
    failing = replace(holding, reaches=(RangeTried(parameter, "W4", 3, ((600.0, "too long"),), 0.0, 300.0),))
    assert [reason.what for reason in range_reasons(failing)] == [
        "Drop fails in W4.",
        "Of 100 settings drawn at random 96 are sound.",
    ]
    lost = replace(holding, mixtures=(*sound, *(replace(each, mended=False) for each in wrong)))
    said = "Of 100 settings drawn at random 96 are sound; nothing mends 4 of the others."
    assert [reason.what for reason in range_reasons(lost)] == [said]
    few = replace(holding, mixtures=(*sound[:60], *wrong))
    assert [reason.what for reason in range_reasons(few)] == ["Of 64 settings drawn at random 60 are sound."]


def test_all_reasons_stand_in_the_refusal_with_how_to_waive_them() -> None:
    reasons = [Reason("words", "12 texts are missing.", "Write them."), Reason("proof", "A seam is long.", "Trim it.")]
    said = str(NotReady.of("Top", reasons))
    assert "words: 12 texts are missing. Write them." in said and "proof: A seam is long. Trim it." in said
    assert "--allow words,proof" in said and "Nothing was written" in said


def test_names_that_may_be_waived() -> None:
    assert read_allowed(" Proof, ranges,proof") == ("proof", "ranges") and read_allowed("") == ()
    assert read_allowed(",".join(NAMES)) == NAMES
    with pytest.raises(KitError, match=r"nothing is called 'prof'.*proof"):
        read_allowed("prof")


def test_languages_that_are_asked_for() -> None:
    assert read_languages("", "de") == ("de",) and read_languages("", "nl") == ("en",)
    assert read_languages("de, EN", "en") == ("de", "en") and read_languages("all", "en") == tuple(languages())
    with pytest.raises(KitError, match="does not speak 'xx'"):
        read_languages("en,xx", "en")
