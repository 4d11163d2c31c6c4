"""The own words of example lessons stand beside them in three languages, all of them, as the lessons are now.

What is checked is each notebook itself, run once: a text that changes in it shows here as missing or fuzzy.
`lessonkit words example_notebooks/tideline_wrap_top.ipynb --language de` brings a file up to date.
"""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from nbformat import NotebookNode

from kit.booklet.handover import Handover
from kit.booklet.own_language import markdown_cells, spoken
from kit.booklet.run_notebook import read_notebook
from kit.language import alphabetical
from kit.lesson.own_words import own_texts
from kit.lesson.word_file import merged, path_of, read_words
from tests.ran import ran_example

FOLDER = Path(__file__).resolve().parents[2] / "example_notebooks"
NOTEBOOKS = {
    "tideline_wrap_top": 150,
    "neap_tide_wrap": 130,
    "harbour_jacket": 120,
    "dune_skirt": 65,
    "lantern_bag": 55,
    "ferry_tote": 45,
    "eddy_skirt": 65,
    "slack_water_trousers": 65,
    "oyster_apron": 78,
    "limpet_hat": 76,
    "breaker_skirt": 75,
    "sandbar_top": 83,
}
"""The lessons that are translated, and how many texts each has at least."""
CODES = ("de", "es", "fr")
QUOTES = {"de": "„“", "es": "«»", "fr": "«»"}

pytestmark = pytest.mark.slow


def lesson(name: str) -> Path:
    return FOLDER / f"{name}.ipynb"


@pytest.fixture(scope="module", params=NOTEBOOKS)
def ran(request: pytest.FixtureRequest) -> tuple[Path, Handover, NotebookNode]:
    """A notebook's path, what it hands over, and the notebook."""
    path = lesson(request.param)
    return path, ran_example(request.param).handover, read_notebook(path)


@pytest.mark.parametrize("code", CODES)
def test_every_text_is_translated(ran: tuple[Path, Handover, NotebookNode], code: str) -> None:
    path, given, notebook = ran
    known = read_words(path_of(path, code), code)
    assert known is not None
    texts = own_texts(given, markdown_cells(notebook))
    assert len(texts) > NOTEBOOKS[path.stem]
    wanted = {text for text, _ in texts}
    assert sorted(wanted - {message.id for message in known if message.string}) == []
    assert sorted(str(message.id) for message in known if message.id and message.fuzzy) == []
    _, counted = merged(known, texts, given.pattern.lesson.title, code)
    assert (counted.done, counted.fuzzy) == (counted.total, 0)


@pytest.mark.parametrize("code", CODES)
def test_the_lesson_speaks_without_a_mark(ran: tuple[Path, Handover, NotebookNode], code: str) -> None:
    """The whole handover goes into the language: every place between braces kept, nothing left marked."""
    path, given, notebook = ran
    made, book, told = spoken(given, notebook, path, code)
    assert told == ()
    assert made.pattern.lesson.language == code
    said = [text for text, _ in own_texts(made, markdown_cells(book))]
    assert not [text for text in said if "[en]" in text]
    assert given.pattern.lesson.title.split()[0] in made.pattern.lesson.title
    assert {made.pattern.lesson.title} & {given.pattern.lesson.title} == set()


@pytest.mark.parametrize("code", CODES)
@pytest.mark.parametrize("name", NOTEBOOKS)
def test_nothing_stands_as_in_english(name: str, code: str) -> None:
    known = read_words(path_of(lesson(name), code), code)
    assert known is not None
    assert [message.id for message in known if message.id and message.string == message.id] == []


@pytest.mark.parametrize("code", CODES)
@pytest.mark.parametrize("name", NOTEBOOKS)
def test_the_signs_are_those_of_print(name: str, code: str) -> None:
    """Curly apostrophes, the language's quotation marks, French spaces before its double signs (Imprimerie nationale,
    "Lexique des règles typographiques", from memory), a number and its unit kept together."""
    known = read_words(path_of(lesson(name), code), code)
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
