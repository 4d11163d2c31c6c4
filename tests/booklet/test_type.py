"""The booklet's faces hold every sign that the kit says in its four languages, as fontTools reads the font files."""

from __future__ import annotations

import re
import unicodedata
from functools import cache
from pathlib import Path

import nbformat
import pytest
from fontTools.ttLib import TTFont

from kit.booklet.forms import FORMS, SCREEN, Form
from kit.booklet.html import environment
from kit.booklet.theme_file import BookTheme
from kit.booklet.type import FACES, SIGNS
from kit.language import languages
from kit.resources import templates
from kit.units import set_fractions

# What no pen draws: spaces, and marks that join, part or turn text.
UNDRAWN = {"Zs", "Cc", "Cf"}
# Every letter of the Latin alphabets of these languages (CLDR, main exemplar characters), said yet or not.
LETTERS = {
    "en": "abcdefghijklmnopqrstuvwxyz",
    "de": "abcdefghijklmnopqrstuvwxyzäöüß",
    "es": "abcdefghijklmnopqrstuvwxyzáéíñóúü",
    "fr": "abcdefghijklmnopqrstuvwxyzàâæçéèêëîïôœùûüÿ",
}


@cache
def signs_of(path: Path) -> frozenset[str]:
    with TTFont(path, lazy=True) as font:
        return frozenset(map(chr, font.getBestCmap()))


def said(code: str, root: Path) -> set[str]:
    """The signs of a catalogue, of the examples' words in that language, and of fractions as they are printed."""
    files = sorted((templates() / "language" / code).glob("*.ftl"))
    files += sorted((root / "example_notebooks").glob(f"*.{code}.po"))
    texts = [path.read_text(encoding="utf-8") for path in files]
    if code == "en":
        for path in sorted((root / "example_notebooks").glob("*.ipynb")):
            texts += [cell.source for cell in nbformat.read(path, 4).cells]
    texts += [set_fractions(f"{n}/{of} in") for of in (2, 4, 8, 16) for n in range(1, of)]
    texts += [LETTERS[code], LETTERS[code].upper()]
    return {sign for text in texts for sign in text if unicodedata.category(sign) not in UNDRAWN}


def test_every_language_is_looked_at() -> None:
    assert set(LETTERS) == set(languages())


@pytest.mark.parametrize("code", sorted(LETTERS))
def test_letters_and_figures_are_in_every_face(code: str, root: Path) -> None:
    """No word is set in two faces."""
    wanted = {sign for sign in said(code, root) if unicodedata.category(sign)[0] in "LN"}
    assert len(wanted) > 60
    for family, weight, style, path in FACES:
        lacking = wanted - signs_of(path) if family != SIGNS else set()
        assert not lacking, f"{family} {weight} {style} lacks {sorted(lacking)}"


@pytest.mark.parametrize("code", sorted(LETTERS))
def test_every_other_sign_is_in_the_face_or_in_that_of_the_signs(code: str, root: Path) -> None:
    signs = next(signs_of(path) for family, _, _, path in FACES if family == SIGNS)
    for family, weight, style, path in FACES:
        lacking = said(code, root) - signs_of(path) - signs
        assert not lacking, f"{family} {weight} {style} lacks {sorted(lacking)}"


def test_a_sign_that_is_nowhere_would_be_found() -> None:
    everywhere = frozenset().union(*(signs_of(path) for *_, path in FACES))
    assert "裁" not in everywhere and "ß" in everywhere


@pytest.mark.parametrize("form", [SCREEN, FORMS["a4"]], ids=lambda form: form.key)
def test_where_a_face_is_missing_another_of_its_kind_is_named(form: Form) -> None:
    """CSS Fonts 4, "Generic font families": a list of families ends with one, for a page or an e-book on a machine that
    has none of those named before it."""
    sheet = environment().get_template("booklet.css.j2").render(form=form, look=BookTheme())
    if form.screen:
        sheet += environment().get_template("screen.css.j2").render(form=form, look=BookTheme())
        sheet += (templates() / "booklet" / "reader.css").read_text(encoding="utf-8")
    named = re.findall(r"(?<![\w-])font(?:-family)?:([^;}]*\"[^;}]*)", sheet)
    assert len(named) > 4
    for families in named:
        assert re.search(r"(?:^|[\s,])(?:sans-serif|serif|monospace)\s*$", families), families
