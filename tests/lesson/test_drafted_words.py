"""What the kit's own words fill in of a lesson's, and what they leave alone."""

from __future__ import annotations

from functools import partial
from pathlib import Path

import pytest

from kit.lesson.drafted_words import drafted
from kit.lesson.own_words import OwnText
from kit.lesson.word_file import read_words, write_words


@pytest.mark.parametrize(
    ("text", "de", "fr", "es"),
    [
        ("side seam", "Seitennaht", "couture de côté", "costura lateral"),
        ("Waist", "Taille", "Ligne de taille", "Cintura"),
        ("left armhole", "linkes Armloch", "emmanchure gauche", "sisa izquierda"),
        ("hem 2", "Saum 2", "bas 2", "bajo 2"),
        ("Sewing", "Nähen", "Couture", "Costura"),
    ],
)
def test_a_name_the_kit_has_one_word_for(text: str, de: str, fr: str, es: str) -> None:
    assert [drafted(text, code) for code in ("de", "fr", "es")] == [de, fr, es]


@pytest.mark.parametrize("text", ["Dune skirt", "It is cut on the bias.", "left", "", "3", "left godet", "godet 2"])
def test_what_the_kit_has_no_word_for_stays_open(text: str) -> None:
    assert [drafted(text, code) for code in ("de", "fr", "es", "en", "nl")] == [""] * 5


def test_only_gaps_are_filled_and_each_says_so(tmp_path: Path) -> None:
    path = tmp_path / "lesson.de.po"
    texts = [OwnText("side seam", "Edge"), OwnText("Dune skirt", "Title"), OwnText("hem", "Edge")]
    write_words(path, texts, "Trial", "de")
    path.write_text(
        path.read_text("utf-8").replace('msgid "hem"\nmsgstr ""', 'msgid "hem"\nmsgstr "Rocksaum"'), "utf-8"
    )
    counted = write_words(path, texts, "Trial", "de", partial(drafted, language="de"))
    assert (counted.done, counted.total, counted.drafted) == (2, 3, 1)
    known = read_words(path, "de")
    assert known is not None
    assert {str(each.id): each.string for each in known if each.id} == {
        "side seam": "Seitennaht",
        "Dune skirt": "",
        "hem": "Rocksaum",
    }
    assert path.read_text("utf-8").count("filled in from the kit's own words") == 1
    assert write_words(path, texts, "Trial", "de", partial(drafted, language="de")).drafted == 0
