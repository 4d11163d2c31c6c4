"""A buyer's booklet: what one sews by, and not a word of how it was made."""

from __future__ import annotations

import json
import re
from pathlib import Path

import pytest

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import FORMS
from kit.booklet.html import to_html
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.resources import examples, templates
from tests.booklet.conftest import Writer, markdown
from tests.example import lesson_notebooks
from tests.unplaced import texts_unplaced

# Words of the workshop behind a pattern, in the four languages; a buyer has neither the program nor the notebook.
MAKING = re.compile(
    r"\b(slider|notebook|command line|lessonkit|schieberegler|regler|befehlszeile|deslizador|control deslizante|"
    r"cuaderno de|línea de comandos|curseur|ligne de commande)s?\b|(?<!\w)--[a-z]",
    re.IGNORECASE,
)
SHOWN = ("booklet", "paper", "picture", "lay", "cloth", "fitting", "measures", "words")
"""The families of messages that a booklet or a pattern page prints."""
NOT_PRINTED = re.compile(r"^paper-(no_name|\w+_do) ")
"""What to do about a refusal, said to whoever runs the command."""
IN_USE = (
    *("about", "begin", "printing", "reading", "measuring", "sizes", "fit-changes", "cloth", "lays", "marking"),
    *("pieces", "drafting", "worksheet", "sewing", "fitting", "care", "variations"),
    *("closing", "terms", "index"),
)
"""Chapters in the order in which they are used (common practice of printed instructions, no source)."""
NEEDED = {"about", "begin", "printing", "measuring", "sizes", "cloth", "pieces", "marking", "drafting", "sewing"}
"""Those that no booklet of a draft on the body goes without."""


@pytest.mark.parametrize("code", ["en", "de", "es", "fr"])
@pytest.mark.parametrize("family", SHOWN)
def test_what_the_kit_prints_says_nothing_of_its_making(code: str, family: str) -> None:
    path = templates() / "language" / code / f"{family}.ftl"
    lines = [line for line in path.read_text(encoding="utf-8").splitlines() if not line.startswith("#")]
    found = [line for line in lines if MAKING.search(line) and not NOT_PRINTED.match(line)]
    assert not found


@pytest.mark.parametrize("path", lesson_notebooks(), ids=lambda path: path.stem)
def test_the_examples_words_for_buyers_say_nothing_of_it(path: Path) -> None:
    for cell in json.loads(path.read_text(encoding="utf-8"))["cells"]:
        tags = cell["metadata"].get("tags", [])
        if cell["cell_type"] == "markdown" and not {"for-class", "notes-to-self"} & set(tags):
            assert not MAKING.search("".join(cell["source"])), cell["id"]


@pytest.mark.parametrize("path", sorted(examples().glob("*.po")), ids=lambda path: path.name)
def test_the_examples_translations_say_nothing_of_it(path: Path) -> None:
    told = [part.split("msgstr", 1)[-1] for part in path.read_text(encoding="utf-8").split("\n\n")]
    assert not [part for part in told if MAKING.search(part)]


def test_a_buyer_gets_what_is_sewn_by_and_the_worksheet_apart(write_lesson: Writer) -> None:
    path = write_lesson(
        {
            "end": [
                markdown("## To finish\n\nPress it once more."),
                markdown("Move the slider and run `lessonkit pages`.", "for-class"),
            ]
        }
    )
    ran = run_notebook(read_notebook(path), path.parent, name=path.name, size="W4", units="cm")
    folder = LessonFolder(path.parent)
    with texts_unplaced():
        taught = compose(ran.handover, ran.notebook, folder, form=FORMS["a5"])
        sold = compose(ran.handover, ran.notebook, folder, form=FORMS["a5"], audience="buyers")
    assert taught.worksheet and taught.index and not taught.apart
    assert not (sold.worksheet or sold.index or sold.fittings)
    assert [step.title for step in sold.apart] == [step.title for step in taught.worksheet]
    assert [block for block in sold.sewing.blocks] and len(sold.drafting.blocks) == len(taught.drafting.blocks)
    for book, said in ((taught, True), (sold, False)):
        html = re.sub(r"<style.*?</style>", " ", to_html(book, FORMS["a5"]), flags=re.DOTALL)
        text = re.sub(r"<[^>]+>", " ", html)
        assert bool(MAKING.search(text)) is said
        assert "Press it once more." in text
        ids = set(re.findall(r'\bid="([^"]+)"', html))
        assert {link for link in re.findall(r'href="#([^"]+)"', html)} <= ids, "a reference to what is not there"
    for book in (taught, sold):
        found = re.findall(r'<section class="part[^"]*" id="([^"]+)"', to_html(book, FORMS["a5"]))
        assert found == [part for part in IN_USE if part in found] and set(found) >= NEEDED
    sheet = to_html(sold, FORMS["a5"], sheet_only=True)
    assert 'id="worksheet"' in sheet and 'id="sewing"' not in sheet
    assert 'id="worksheet"' not in to_html(sold, FORMS["a5"])
    ids = set(re.findall(r'\bid="([^"]+)"', sheet))
    assert {link for link in re.findall(r'href="#([^"]+)"', sheet)} <= ids
