"""A language asked for with its region: which words, spelling, numbers, dates and paper a booklet then has.

Outside: paper by region is that of Unicode CLDR 46 (supplemental data, measurementData, paperSize); numbers and the
names of units are those of CLDR through Babel.
"""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from pathlib import Path

import pytest
from babel import Locale

from kit.booklet.asked_forms import asked_forms
from kit.booklet.build import build
from kit.language import known_language, language, language_tag, lettered, respelt, say, speaking, spoken_for
from kit.paper.papers import papers_of
from kit.resources import templates
from kit.units import plain
from kit.wording.dates import date_said

Writer = Callable[..., Path]
LETTER = {"BZ", "CA", "CL", "CO", "CR", "GT", "MX", "NI", "PA", "PH", "PR", "SV", "US", "VE"}


@pytest.mark.parametrize(
    ("asked", "words", "written"),
    [("de-AT", "de", "de-AT"), ("es-mx", "es", "es-MX"), ("es-419", "es", "es-419"), ("EN-us", "en", "en-US")],
)
def test_words_come_from_the_language_and_the_tag_is_kept(asked: str, words: str, written: str) -> None:
    with speaking(asked):
        assert (language(), language_tag()) == (words, written)
        own = say("booklet.care")
    with speaking(words):
        assert say("booklet.care") == own and language_tag() == words


def test_a_lesson_in_a_region_s_language_is_not_told_in_english() -> None:
    assert (spoken_for("de-AT"), known_language("de-AT")) == ("de-AT", "de")
    assert (spoken_for("nl-BE"), known_language("nl-BE")) == ("en", "en")


@pytest.mark.parametrize("tag", ["de-AT", "de-CH", "es-MX", "es-ES", "es-419", "fr-CA", "en-US", "en-GB"])
def test_numbers_have_the_decimal_mark_of_the_region(tag: str) -> None:
    with speaking(tag):
        assert plain(2.5) == f"2{Locale.parse(tag, sep='-').number_symbols['latn']['decimal']}5"


def test_a_region_nobody_wrote_down_counts_and_dates_as_its_language() -> None:
    with speaking("de-ZZ"):
        assert (plain(2.5), date_said("2026-09-14")) == ("2,5", "14. September 2026")


def test_the_united_states_spell_their_own_way() -> None:
    with speaking("en-US"):
        assert date_said("2026-09-14") == "September 14, 2026"
        assert say("notion.zip") == "zipper"
    assert respelt("en-US") and not respelt("en-GB") and not respelt("es-MX")


def test_no_word_is_spelt_as_in_britain_for_the_united_states() -> None:
    """Words in -our, -tre and -metre, and those CLDR itself writes otherwise in the two countries."""
    with speaking("en-US"):
        said = [text for key in _plain_keys() if (text := say(key))]
    british = re.compile(r"\b(\w+metres?|\w*centre[sd]?|\w*(?:col|neighb|fav)our\w*|fibres?|grey|towards)\b", re.I)
    assert len(said) > 500
    assert [text for text in said if british.search(text)] == []
    units = {
        tag: Locale.parse(tag, sep="-").unit_display_names["length-centimeter"]["long"] for tag in ("en-US", "en-GB")
    }
    assert units == {"en-US": "centimeters", "en-GB": "centimetres"}


def _plain_keys() -> list[str]:
    """Messages of the English catalogue without places to fill."""
    found = []
    for path in sorted((templates() / "language" / "en").glob("*.ftl")):
        for line in path.read_text("utf-8").splitlines():
            if (one := re.match(r"([a-z][\w-]*) = (.+)", line)) and "{" not in one[2]:
                found.append(one[1].replace("-", ".", 1))
    return found


@pytest.mark.parametrize("tag", ["de-CH", "de-LI"])
def test_switzerland_writes_no_sharp_s_and_its_own_quotation_marks(tag: str) -> None:
    """In all the kit says, and in words an author wrote for German at large; what is filled in and code stay as they
    are. That no ß is written there: Federal Chancellery, Leitfaden zur deutschen Rechtschreibung (from memory)."""
    files = sorted((templates() / "language" / "de").glob("*.ftl"))
    keys = [one for path in files for one in re.findall(r"^([a-z][\w-]*) = [^{]+$", path.read_text("utf-8"), re.M)]
    with speaking(tag):
        said = [say(key.replace("-", ".", 1)) for key in keys]
    with speaking("de"):
        german = [say(key.replace("-", ".", 1)) for key in keys]
    assert sum("ß" in text for text in german) > 20 and any("„" in text for text in german)
    assert not [text for text in said if set(text) & set("ßẞ„“")]
    assert [text.replace("ß", "ss").replace("„", "«").replace("“", "»") for text in german] == said
    assert respelt(tag) and lettered("`maß` {maß} Maß", tag) == "`maß` {maß} Mass"


def test_a_swiss_booklet_has_no_sharp_s_and_knows_its_names(write_lesson: Writer, tmp_path: Path) -> None:
    path = write_lesson()
    words = path.with_suffix(".de.po")
    words.write_text('msgid ""\nmsgstr ""\n\nmsgid "Pebble top"\nmsgstr "Kieselgroßes Oberteil"\n', encoding="utf-8")
    made = build(path, tmp_path / "ch", forms="html", size="W4", language="de-CH")
    page = made.paths["booklet.html"].read_text("utf-8")
    assert not set(re.sub(r"\{[^{}]*\}", "", page)) & set("ßẞ„“") and "Kieselgrosses Oberteil" in page
    with speaking("de-CH"):
        assert say("common.pin_right", a="Vorderteil", b="Rückenteil", edge="Aussenkante").endswith(
            "die Aussenkante stecken."
        )


def test_paper_is_what_printers_of_the_region_hold() -> None:
    for region in sorted({*LETTER, "AT", "DE", "CH", "FR", "ES", "GB", "IE", "AU", "AR", "PE", "EC", "BE", "LU"}):
        assert [each.name for each in papers_of(region)] == (["letter"] if region in LETTER else ["a4"]), region
    for region in ("", "419"):
        assert [each.name for each in papers_of(region)] == ["a4", "letter"]


def test_forms_follow_the_paper_unless_they_are_named() -> None:
    assert asked_forms("", ["letter"]).files == ("booklet-letter.pdf", "booklet.html", "booklet.epub")
    assert asked_forms("", ["a4"]).files == ("booklet-a4.pdf", "booklet.html", "booklet.epub")
    assert asked_forms("a4,fold", ["letter"]) == asked_forms("a4,fold")


def test_a_build_says_where_its_words_are_from_and_prints_on_the_region_s_paper(
    write_lesson: Writer, tmp_path: Path
) -> None:
    path = write_lesson()
    made = build(path, tmp_path / "at", forms="html", size="W4", language="de-AT")
    assert {name for name in made.paths if name.startswith("pages")} == {"pages-a4.pdf"}
    assert made.notes[0].startswith("Für de-AT gibt es keine eigenen Texte; es gelten die von de,")
    page = made.paths["booklet.html"].read_text("utf-8")
    assert 'lang="de-AT"' in page and "Zuschneiden" in page
    assert json.loads(made.paths["pattern.json"].read_text("utf-8"))["lesson"]["language"] == "de"


def test_english_words_of_a_lesson_stay_as_they_are_for_the_united_states(write_lesson: Writer, tmp_path: Path) -> None:
    made = build(write_lesson(), tmp_path / "us", forms="html", size="W4", language="en-US")
    assert made.notes == ()
    assert {name for name in made.paths if name.startswith("pages")} == {"pages-letter.pdf"}
    assert "[en]" not in made.paths["booklet.html"].read_text("utf-8")
