"""A worked lesson and its notebook with the lesson's own words in another language."""

from __future__ import annotations

import copy
from dataclasses import replace
from pathlib import Path

from babel.messages.catalog import Catalog
from nbformat import NotebookNode

from kit.booklet.handover import Handover
from kit.language import known_language, lettered, letters_of, respelt, say, written_tag
from kit.lesson.markdown_blocks import blocks_said
from kit.lesson.own_words import Translator
from kit.lesson.word_file import path_of, read_words
from kit.lesson.words_in_values import WordsWalk
from kit.prose.readings import ruling_of
from kit.rulers import ruled
from kit.wording import written_lengths

PRIVATE = "notes-to-self"


def in_language(
    given: Handover, notebook: NotebookNode, catalogue: Catalog | None, language: str, file: str = ""
) -> tuple[Handover, NotebookNode, tuple[str, ...]]:
    """The handover and the notebook in `language`, and a sentence that says how many texts have no translation (none
    when all have). Patterns of other sizes, fittings and the size chart go with it. `KitError` for a translation
    whose placeholders are not those of its original."""
    translator = Translator(catalogue, language, given, file)
    made: Handover = translator.of(given)
    titles = dict(zip((title for title, _ in given.pattern.finished), made.pattern.finished, strict=True))
    chart = tuple(
        replace(row, finished=tuple((titles[title][0] if title in titles else title, mm) for title, mm in row.finished))
        for row in made.chart
    )
    book = copy.deepcopy(notebook)
    for number, cell in enumerate(_public(book), 1):
        cell.source = translator.markdown(cell.source, f"Markdown cell {number}")
    names = tuple(translator.names(given.pattern).items())
    made = replace(made, chart=chart, names=names, genders=tuple(translator.genders.items()))
    return made, book, _told(translator, given.pattern.lesson.language, file)


def spoken(
    given: Handover, notebook: NotebookNode, path: Path, language: str
) -> tuple[Handover, NotebookNode, tuple[str, ...]]:
    """`in_language` with the words of the file beside the notebook at `path`: of `language` with its region where there
    is one, else of the language. A sentence says where nothing is written for the region. `KitError` for a broken file.
    """
    own = given.pattern.lesson.language
    if own.lower() == language.lower():
        return given, notebook, ()
    made, book, told = _spoken(given, notebook, path, language)
    if letters_of(language) and not path_of(path, language).is_file():
        made, book = _lettered(made, book, language)
    return made, book, told


def _lettered(given: Handover, notebook: NotebookNode, language: str) -> tuple[Handover, NotebookNode]:
    """With words written for a language at large in the letters that the region of `language` writes."""

    def said(text: str, *_: object) -> str:
        return lettered(text, language)

    made: Handover = WordsWalk(said, known_language(language)).of(given)
    chart = tuple(replace(row, finished=tuple((said(title), mm) for title, mm in row.finished)) for row in made.chart)
    book = copy.deepcopy(notebook)
    for cell in _public(book):
        cell.source = blocks_said(cell.source, "", said)
    names = tuple((name, said(called)) for name, called in made.names)
    genders = tuple((said(name), letter) for name, letter in made.genders)
    return replace(made, chart=chart, names=names, genders=genders), book


def _spoken(
    given: Handover, notebook: NotebookNode, path: Path, language: str
) -> tuple[Handover, NotebookNode, tuple[str, ...]]:
    own = given.pattern.lesson.language
    base = known_language(language)
    told = () if language == base or respelt(language) else (_told_region(language, base),)
    if (file := path_of(path, language)).is_file() or known_language(own) != base:
        code = language if file.is_file() else base
        file = path_of(path, code)
        made, book, notes = in_language(given, notebook, read_words(file, code), code, file.name)
        return made, book, (*told, *notes)
    return given, notebook, told


def _told_region(language: str, base: str) -> str:
    return say("own_words.region", region=written_tag(language), language=base)


def in_one_system(given: Handover, notebook: NotebookNode) -> tuple[Handover, NotebookNode]:
    """The handover and the notebook with the lengths that the lesson's author wrote out in words in the system that is
    printed alone. They are read in the language spoken; call it after `spoken`."""
    system = given.pattern.lesson.units
    # The list of notions is read in one system where it is printed, and tells how lengths are read that are sold.
    notions = frozenset(given.pattern.lesson.notions)

    def said(text: str, *_: object) -> str:
        return text if text in notions else written_lengths.in_one_system(text, system)

    with ruled(ruling_of(given.pattern)):
        made: Handover = WordsWalk(said).of(given)
        book = copy.deepcopy(notebook)
        for cell in _public(book):
            cell.source = blocks_said(cell.source, "", said)
    return made, book


def markdown_cells(notebook: NotebookNode) -> list[str]:
    """The markdown of a notebook that readers see."""
    return [cell.source for cell in _public(notebook)]


def _public(notebook: NotebookNode) -> list[NotebookNode]:
    return [
        cell for cell in notebook.cells if cell.cell_type == "markdown" and PRIVATE not in cell.metadata.get("tags", [])
    ]


def _told(translator: Translator, source: str, file: str) -> tuple[str, ...]:
    if not translator.missing:
        return ()
    return (say("own_words.missing", count=len(translator.missing), language=source, file=file),)
