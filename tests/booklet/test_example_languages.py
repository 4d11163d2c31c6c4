"""The example lesson's own words stand beside it in three languages, all of them, as the lesson is now.

What is checked is the notebook itself, run once: a text that changes in it shows here as missing or fuzzy.
`lessonkit words example_notebooks/tideline_wrap_top.ipynb --language de` brings a file up to date.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from nbformat import NotebookNode

from kit.booklet.handover import Handover
from kit.booklet.own_language import markdown_cells, spoken
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.language import alphabetical
from kit.lesson.own_words import own_texts
from kit.lesson.word_file import merged, path_of, read_words

NOTEBOOK = Path(__file__).resolve().parents[2] / "example_notebooks" / "tideline_wrap_top.ipynb"
CODES = ("de", "es", "fr")
QUOTES = {"de": "„“", "es": "«»", "fr": "«»"}

pytestmark = pytest.mark.slow


@pytest.fixture(scope="module")
def ran() -> tuple[Handover, NotebookNode]:
    """What the notebook hands over, and the notebook."""
    notebook = read_notebook(NOTEBOOK)
    ran = run_notebook(notebook, NOTEBOOK.parent, name=NOTEBOOK.name, size="W4", units="cm")
    return ran.handover, notebook


@pytest.mark.parametrize("code", CODES)
def test_every_text_is_translated(ran: tuple[Handover, NotebookNode], code: str) -> None:
    given, notebook = ran
    known = read_words(path_of(NOTEBOOK, code), code)
    assert known is not None
    texts = own_texts(given, markdown_cells(notebook))
    assert len(texts) > 150
    wanted = {text for text, _ in texts}
    assert sorted(wanted - {message.id for message in known if message.string}) == []
    assert sorted(str(message.id) for message in known if message.id and message.fuzzy) == []
    _, counted = merged(known, texts, given.pattern.lesson.title, code)
    assert (counted.done, counted.fuzzy) == (counted.total, 0)


@pytest.mark.parametrize("code", CODES)
def test_the_lesson_speaks_without_a_mark(ran: tuple[Handover, NotebookNode], code: str) -> None:
    """The whole handover goes into the language: every place between braces kept, nothing left marked."""
    given, notebook = ran
    made, book, told = spoken(given, notebook, NOTEBOOK, code)
    assert told == ()
    assert made.pattern.lesson.language == code
    said = [text for text, _ in own_texts(made, markdown_cells(book))]
    assert not [text for text in said if "[en]" in text]
    assert "Tideline" in made.pattern.lesson.title
    assert {made.pattern.lesson.title} & {given.pattern.lesson.title} == set()


@pytest.mark.parametrize("code", CODES)
def test_nothing_stands_as_in_english(code: str) -> None:
    known = read_words(path_of(NOTEBOOK, code), code)
    assert known is not None
    assert [message.id for message in known if message.id and message.string == message.id] == []


@pytest.mark.parametrize("code", CODES)
def test_the_signs_are_those_of_print(code: str) -> None:
    """Curly apostrophes, the language's quotation marks, French spaces before its double signs (Imprimerie nationale,
    "Lexique des règles typographiques", from memory), a number and its unit kept together."""
    known = read_words(path_of(NOTEBOOK, code), code)
    assert known is not None
    for message in known:
        text = str(message.string) if message.id else ""
        assert not re.search(r"['\"`~]|  ", text), text
        assert not re.search(r"\d (?:mm|cm|m|g/m²|%)\b", text), text
        assert not set(text) & (set("„“”«»") - set(QUOTES[code])), text
        if code == "fr":
            words = re.sub(r"\{[^}]*\}", "", text)
            assert not re.search(r"(?<![\u202f]);|(?<![\u00a0]):|(?<![\u202f])[!?]", words), text


def test_words_are_filed_as_in_a_dictionary() -> None:
    """DIN 5007-1 for the umlauts (from memory); French accents count after letters."""
    assert sorted(["Wickelanteil", "Ärmelsaum", "Armloch", "Öffnung", "Oberarm"], key=alphabetical) == [
        "Ärmelsaum",
        "Armloch",
        "Oberarm",
        "Öffnung",
        "Wickelanteil",
    ]
    assert sorted(["fil", "épaule", "emmanchure", "endroit"], key=alphabetical)[-2:] == ["épaule", "fil"]
