"""A lesson's own words in other languages: which they are, the file they are translated in, the lesson in them."""

from __future__ import annotations

import gettext
import io
import os
import shutil
import subprocess
from dataclasses import fields, is_dataclass, replace
from pathlib import Path
from typing import Any

import nbformat
import pytest
from babel.messages.catalog import Catalog
from babel.messages.mofile import write_mo

from kit.blocks import Block, bodice_block, darted_bodice_block, skirt_block, trouser_block, with_sleeve
from kit.body import workshop_chart
from kit.booklet.fetch import LessonFolder
from kit.booklet.handover import Handover, SizeRow
from kit.booklet.live_values import live
from kit.booklet.own_language import in_language, spoken
from kit.booklet.words import fill_markdown
from kit.cli import main
from kit.errors import KitError
from kit.geometry import Path as Curve
from kit.grammar import knowing
from kit.language import speaking
from kit.lesson import words_in_values
from kit.lesson.another import open_lesson
from kit.lesson.markdown_blocks import split_blocks
from kit.lesson.own_words import OwnText, Translator, own_texts, translate, translate_markdown
from kit.lesson.pattern import Pattern
from kit.lesson.word_file import merged, path_of, read_words, write_words
from kit.placeholder import name_of
from kit.prose import sentences, step_alt
from kit.prose.step_measures import place_said
from kit.wording.names import edge_said
from tests.example import EXAMPLE


@pytest.fixture(scope="module")
def pattern() -> Pattern:
    lesson = open_lesson(EXAMPLE)
    lesson.reset()
    lesson.photo("hem.jpg", beside=lesson.entries[0].name, alt="A hem being ruled", caption="Flat")
    made = lesson.work(body=lesson.sizes["W4"])
    info = replace(made.lesson, fibre="linen", credits=("Drawn by hand",), variations=(("Long", "Lower the hem."),))
    return replace(made, lesson=info)  # type: ignore[no-any-return]


def upper(text: str) -> str:
    """A made-up language: capitals, with braces' contents as they are."""
    parts = text.replace("{", "\0{").replace("}", "}\0").split("\0")
    return "".join(part if part.startswith("{") else part.upper() for part in parts)


def whole(pattern: Any, markdown: tuple[str, ...] = ()) -> Catalog:
    """A catalogue with every text of the lesson in the made-up language."""
    catalogue = Catalog(locale="es")
    for text, _ in own_texts(pattern, markdown):
        catalogue.add(text, upper(text))
    return catalogue


def strings(thing: Any, seen: set[int] | None = None) -> list[str]:
    """Every string anywhere in a value."""
    seen = set() if seen is None else seen
    if isinstance(thing, str):
        return [thing]
    if id(thing) in seen or isinstance(thing, Curve):
        return []
    seen.add(id(thing))
    if isinstance(thing, tuple | list):
        return [text for item in thing for text in strings(item, seen)]
    if is_dataclass(thing):
        return [text for field in fields(thing) for text in strings(getattr(thing, field.name), seen)]
    return []


# ---- which texts ------------------------------------------------------------------------------------------


def test_every_kind_of_text_is_found(pattern: Pattern) -> None:
    found = {text for text, _ in own_texts(pattern, ("# Before\n\nTake *care*.",))}
    wanted = {
        pattern.lesson.title,
        pattern.lesson.summary,
        "linen",
        "Drawn by hand",
        "Long",
        "Lower the hem.",
        "A hem being ruled",
        "Flat",
        "Before",
        "Take *care*.",
        *(record.title for record in (*pattern.steps, *pattern.sewing)),
        *(record.text for record in (*pattern.steps, *pattern.sewing) if record.text),
        *(piece.title for piece in pattern.pieces),
        *(strip.title for strip in pattern.strips),
        *(value.label for value in pattern.values),
        *(value.why for value in pattern.values if value.why),
        *(title for title, _ in pattern.finished),
        *(mark.label for piece in pattern.pieces for mark in piece.marks),
    }
    assert wanted - {""} <= found
    assert not found & {"hem.jpg", pattern.lesson.slug, "front", "shoulder_tip"}


def test_edges_the_kit_has_words_for_are_not_the_lessons(pattern: Pattern) -> None:
    front = pattern.piece("front")
    edges = (*(replace(e, said="") for e in front.edges if e.name == "side"), *front.edges[:1])
    edges = (edges[0], replace(edges[1], name="slant_end", said=""), replace(edges[1], name="neck", said="collar edge"))
    given = replace(pattern, pieces=(replace(front, edges=edges),), steps=(), sewing=())
    found = [text for text, where in own_texts(given) if ", edge '" in where]
    assert found == ["slant end", "collar edge"]
    made, missing = translate(given, None, "es")
    assert [found.text for found in missing if ", edge '" in found.where] == found
    assert [edge.said for edge in made.piece("front").edges][1:] == ["slant end [en]", "collar edge [en]"]


def test_the_kits_own_words_for_an_edge_come_from_its_catalogue(
    pattern: Pattern, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(words_in_values, "languages", lambda: ("en", "es"))
    monkeypatch.setattr(
        words_in_values, "_kit_words", lambda name, code="en": {"en": "side seam", "es": "costado"}[code]
    )
    edge = replace(pattern.piece("front").edge("side"), said="side seam")
    given = replace(pattern, pieces=(replace(pattern.piece("front"), edges=(edge,)),), steps=(), sewing=())
    made, _ = translate(given, None, "es")
    assert made.piece("front").edges[0].said == "costado"


@pytest.mark.parametrize("code", ["de", "es", "fr"])
@pytest.mark.parametrize("block", [with_sleeve(bodice_block), darted_bodice_block, skirt_block, trouser_block])
def test_titles_of_the_kits_own_blocks_come_from_its_catalogue(pattern: Pattern, block: Block, code: str) -> None:
    given = replace(pattern, pieces=block(workshop_chart()["W4"]), steps=(), sewing=())
    assert not [text for text, where in own_texts(given) if where.startswith("Piece") and where.endswith("title")]
    made, missing = translate(given, None, code)
    assert not [found for found in missing if found.text in {piece.title for piece in given.pieces}]
    for before, after in zip(given.pieces, made.pieces, strict=True):
        assert after.title != before.title and "[" not in after.title
    first = given.pieces[0].title
    assert translate(given, one(first, "Own"), code)[0].pieces[0].title == "Own"  # the author's word goes before


def test_an_edges_allowance_is_called_by_the_edge(pattern: Pattern) -> None:
    record = next(record for record in pattern.steps if any(spot.edge for spot in record.spots))
    spot = next(spot for spot in record.spots if spot.edge)
    assert spot.name == f"{spot.edge}_allowance" == place_said(spot, record.pieces).replace(" ", "_")
    assert spot.label not in {text for text, _ in own_texts(replace(pattern, steps=(record,), sewing=()))}
    made, _ = translate(pattern, whole(pattern), "de")
    german = made.steps[pattern.steps.index(record)]
    edge = next(p for p in german.pieces if p.name == spot.piece).edge(spot.edge)
    with speaking("de"):
        assert place_said(german.spots[record.spots.index(spot)], german.pieces) == f"Zugabe ({edge_said(edge)})"
        assert f"Zugabe ({edge_said(edge)}) " in step_alt(german)


def test_a_measure_with_the_lessons_own_name_keeps_it(pattern: Pattern) -> None:
    """An allowance that is a parameter of the lesson's is called as the lesson calls it."""
    names = {value.name: value.label for value in pattern.values}
    spots = [(spot, record) for record in pattern.steps for spot in record.spots if spot.name in names]
    assert any(spot.name.endswith("_allowance") for spot, _ in spots)
    assert all(place_said(spot, record.pieces) == names[spot.name] for spot, record in spots)


def test_texts_say_where_they_stand(pattern: Pattern) -> None:
    places = dict(reversed([(where, text) for text, where in own_texts(pattern, ("Hello.",))]))
    key = pattern.steps[0].key
    assert places[f"Step '{key}', title"] == pattern.steps[0].title
    assert places["Piece 'front', title"] == pattern.piece("front").title
    assert places["Markdown cell 1"] == "Hello." and places["Lesson, title"] == pattern.lesson.title


@pytest.mark.parametrize(
    ("source", "blocks"),
    [
        ("one\n\ntwo", ["one\n", "two"]),
        ("one\ntwo\n \n\nthree\n", ["one\ntwo\n", "three\n"]),
        ("```\na\n\nb\n```\n\nc", ["```\na\n\nb\n```\n", "c"]),
        ("~~~~\n```\n\n~~~\n\n~~~~\n\nd", ["~~~~\n```\n\n~~~\n\n~~~~\n", "d"]),
        ("\n\na", ["", "a"]),
        ("", [""]),
    ],
)
def test_markdown_is_split_at_blank_lines_outside_code(source: str, blocks: list[str]) -> None:
    parts = split_blocks(source)
    assert "".join(parts) == source
    assert [part for part in parts[::2]] == blocks


# ---- the lesson in another language -----------------------------------------------------------------------


def test_a_whole_translation_leaves_nothing_of_the_original(pattern: Pattern) -> None:
    made, missing = translate(pattern, whole(pattern), "es")
    assert missing == ()
    before = {text for text, _ in own_texts(pattern) if upper(text) != text}
    read = [getattr(made, field.name) for field in fields(made) if field.name not in ("body", "start")]
    left = set(strings(tuple(read))) & before
    names = {piece.name for piece in pattern.pieces} | {strip.name for strip in pattern.strips}
    names |= {edge.name for record in pattern.steps for piece in record.pieces for edge in piece.edges}
    names |= {name for record in pattern.steps for name, *_ in record.values} | {v.name for v in pattern.values}
    names |= {mark.name for piece in pattern.pieces for mark in piece.marks}
    names |= {spot.name for record in pattern.steps for spot in record.spots}
    names |= {words_in_values._kit_words(name) for name in names}  # the kit says those
    assert left <= names, left - names
    assert made.lesson.language == "es" and made.lesson.slug == pattern.lesson.slug
    assert made.over == tuple((upper(title), name) for title, name in pattern.over)


def test_names_and_keys_never_change(pattern: Pattern) -> None:
    made, _ = translate(pattern, whole(pattern), "es")
    assert [piece.name for piece in made.pieces] == [piece.name for piece in pattern.pieces]
    assert [[edge.name for edge in p.edges] for p in made.pieces] == [[e.name for e in p.edges] for p in pattern.pieces]
    assert [record.key for record in made.steps] == [record.key for record in pattern.steps]
    assert [record.values for record in made.sewing] == [record.values for record in pattern.sewing]
    assert [photo.file for photo in made.lesson.photos] == ["hem.jpg"]
    assert made.body is pattern.body and made.pieces[0].edges[0].path is pattern.pieces[0].edges[0].path


def test_what_was_shared_stays_shared_and_the_original_stays(pattern: Pattern) -> None:
    before = strings(pattern)
    made, _ = translate(pattern, whole(pattern), "es")

    def edges(of: Pattern) -> list[object]:
        pieces = [piece for record in of.steps for piece in record.pieces]
        return [edge for piece in (*pieces, *of.pieces) for edge in piece.edges]

    first: dict[int, int] = {}
    pairs = [(first.setdefault(id(edge), at), at) for at, edge in enumerate(edges(pattern))]
    shared = [(one, other) for one, other in pairs if one != other]
    assert len(shared) > 20 and all(edges(made)[one] is edges(made)[other] for one, other in shared)
    assert strings(pattern) == before


def test_operations_speak_of_the_translated_pieces(pattern: Pattern) -> None:
    made, _ = translate(pattern, whole(pattern), "es")
    said = " ".join(
        text for record in made.sewing for operation in record.operations for text in sentences(made, operation)
    )
    assert any(piece.title.lower() in said.lower() for piece in made.pieces)
    assert not any(f" {piece.title.lower()} " in said for piece in pattern.pieces if " " in piece.title)


def test_what_is_missing_is_marked_and_listed(pattern: Pattern) -> None:
    catalogue = whole(pattern)
    front, summary = pattern.piece("front").title, pattern.lesson.summary
    catalogue[front].string = ""
    catalogue[summary].flags.add("fuzzy")
    made, missing = translate(pattern, catalogue, "es")
    assert {found.text for found in missing} == {front, summary}
    assert made.piece("front").title == f"{front} [en]" and made.lesson.summary == f"{summary} [en]"
    assert OwnText(front, "Piece 'front', title") in missing


def test_without_a_file_everything_is_marked(pattern: Pattern) -> None:
    made, missing = translate(pattern, None, "es")
    assert {found.text for found in missing} == {text for text, _ in own_texts(pattern)}
    assert made.lesson.title == f"{pattern.lesson.title} [en]" and made.steps[0].title.endswith(" [en]")


def test_in_its_own_language_nothing_changes(pattern: Pattern) -> None:
    made, missing = translate(pattern, None, "en")
    assert made is pattern and missing == ()
    assert translate_markdown("Hello.", None, pattern, "en") == ("Hello.", ())


def one(text: str, said: str) -> Catalog:
    catalogue = Catalog(locale="es")
    catalogue.add(text, said)
    return catalogue


@pytest.mark.parametrize(
    ("said", "wrong"),
    [
        ("Suba.", "it leaves out {lift:cm}"),
        ("Suba {lift:cm} y {otra}.", "it names {otra}, which the original does not"),
        ("Suba {lift}.", "it names {lift}, which the original does not, and it leaves out {lift:cm}"),
        ("Suba {lift:cm} {.", "a brace stands alone"),
    ],
)
def test_a_translation_keeps_the_places_of_its_original(pattern: Pattern, said: str, wrong: str) -> None:
    text = "Go up by {lift:cm}."
    with pytest.raises(KitError) as refused:
        translate_markdown(text, one(text, said), pattern, "es", "top.es.po")
    assert str(refused.value).startswith("top.es.po, entry “Go up by {lift:cm}.”") and wrong in str(refused.value)


def test_places_may_be_in_another_order_and_code_is_not_a_place(pattern: Pattern) -> None:
    text = "From {a} to {b}, `{c}`."
    made, missing = translate_markdown(text, one(text, "A {b} desde {a}, {a}, `{z}`."), pattern, "es")
    assert made == "A {b} desde {a}, {a}, `{z}`." and missing == ()


@pytest.mark.parametrize(
    ("source", "made"),
    [
        ("# Title", "# Title [en]"),
        ("## Title ##\n\nText.\n", "## Title [en]\n\nText. [en]\n"),
        ("```\ncode\n```", "```\ncode\n```\n\n[en]"),
        ("| a | b |\n|---|---|\n| 1 | 2 |", "| a | b |\n|---|---|\n| 1 | 2 |\n\n[en]"),
        ("Title\n=====", "Title\n=====\n\n[en]"),
        ("---\n\n* * *\n\n1", "---\n\n* * *\n\n1"),
        ("", ""),
    ],
)
def test_a_mark_never_breaks_markdown(pattern: Pattern, source: str, made: str) -> None:
    assert translate_markdown(source, None, pattern, "es")[0] == made


def test_a_heading_is_translated_without_its_signs(pattern: Pattern) -> None:
    assert translate_markdown("## Sewing\n", one("Sewing", "Costura"), pattern, "es") == ("## Costura\n", ())


def test_a_letter_at_the_end_of_a_name_tells_its_gender(pattern: Pattern) -> None:
    catalogue = Catalog(locale="de")
    names = {piece.title: f"Godet-{number}" for number, piece in enumerate(pattern.pieces, 1)}
    for title, name in names.items():
        catalogue.add(title, f"{name} {{n}}")
    made, _, _ = in_language(Handover(pattern), nbformat.v4.new_notebook(), catalogue, "de")
    assert [piece.title for piece in made.pattern.pieces] == list(names.values())
    assert dict(made.genders) == dict.fromkeys(names.values(), "n")
    facing = made.pattern.sewing[0].operations[0]
    with speaking("de"):
        assert "die rechte Stoffseite von Godet-" in sentences(made.pattern, facing)[0]
        with knowing(dict(made.genders)):
            assert "die rechte Stoffseite des Godet-" in sentences(made.pattern, facing)[0]


def test_a_letter_that_is_a_place_of_the_original_stays(pattern: Pattern) -> None:
    catalogue = Catalog(locale="de")
    catalogue.add("Cut {n}", "Zuschneiden: {n}")
    translator = Translator(catalogue, "de", pattern)
    assert translator.text("Cut {n}", filled=True) == "Zuschneiden: {n}" and translator.genders == {}


def test_a_finished_measurement_is_named_by_its_translated_title(pattern: Pattern, tmp_path: Path) -> None:
    title = pattern.finished[0][0]
    source = f"It is {{{name_of(title)}}} long."
    catalogue = whole(pattern, (source,))
    made, _ = translate(pattern, catalogue, "es")
    said, missing = translate_markdown(source, catalogue, pattern, "es")
    assert missing == () and f"{{{name_of(upper(title))}}}" in said
    assert " cm (" in fill_markdown(said, live(made), LessonFolder(tmp_path))


def test_a_handover_and_its_notebook(pattern: Pattern, tmp_path: Path) -> None:
    given = Handover(pattern, (SizeRow("W4", (), pattern.finished),), sizes=(pattern,))
    book = nbformat.v4.new_notebook()
    book.cells = [
        nbformat.v4.new_markdown_cell("# Hello"),
        nbformat.v4.new_markdown_cell("mine", metadata={"tags": ["notes-to-self"]}),
        nbformat.v4.new_code_cell("x = 1  # Hello"),
    ]
    made, said, told = in_language(given, book, whole(given, ("# Hello",)), "es", "top.es.po")
    assert [cell.source for cell in said.cells] == ["# HELLO", "mine", "x = 1  # Hello"] and told == ()
    assert made.chart[0].finished == made.pattern.finished and made.sizes[0] is made.pattern
    assert book.cells[0].source == "# Hello"
    _, _, told = in_language(given, book, None, "es", "top.es.po")
    assert "texts of the lesson have no translation in top.es.po" in told[0] and "[en]" in told[0]
    path = tmp_path / "top.ipynb"
    write_words(path_of(path, "es"), own_texts(given), "Top", "es")
    assert spoken(given, book, path, "es")[2] == told and spoken(given, book, path, "en") == (given, book, ())


# ---- the file ---------------------------------------------------------------------------------------------

TEXTS = [OwnText("Front", "Piece 'front', title"), OwnText("Rule the hem {hem_drop} below.", "Step 'lower', words")]


def test_a_file_is_written_and_keeps_its_translations(tmp_path: Path) -> None:
    path = path_of(tmp_path / "top.ipynb", "pt-BR")
    assert path.name == "top.pt-BR.po"
    counted = write_words(path, TEXTS, "Top", "pt-BR")
    assert (counted.done, counted.fuzzy, counted.total) == (0, 0, 2)
    text = path.read_text()
    assert "#. Piece 'front', title" in text and '"Language: pt_BR\\n"' in text and "#, fuzzy" not in text
    path.write_text(text.replace('msgid "Front"\nmsgstr ""', 'msgid "Front"\nmsgstr "Frente"'))
    assert write_words(path, TEXTS, "Top", "pt-BR").done == 1
    first = path.read_bytes()
    write_words(path, TEXTS, "Top", "pt-BR")
    assert path.read_bytes() == first
    catalogue = read_words(path, "pt-BR")
    assert catalogue is not None and catalogue["Front"].string == "Frente"


def test_a_changed_text_keeps_its_old_translation_fuzzy(tmp_path: Path) -> None:
    path = tmp_path / "top.es.po"
    known, _ = merged(None, TEXTS, "Top", "es")
    known[TEXTS[1].text].string = "Trace el bajo {hem_drop} más abajo."
    known["Front"].string = "Delantero"
    changed = [TEXTS[0], OwnText("Rule the new hem {hem_drop} below.", "Step 'lower', words")]
    updated, counted = merged(known, changed, "Top", "es")
    entry = updated[changed[1].text]
    assert entry.fuzzy and entry.string.startswith("Trace") and entry.previous_id == [TEXTS[1].text]
    assert (counted.done, counted.fuzzy, counted.total) == (1, 1, 2)
    _, missing = translate_markdown(changed[1].text, updated, _plain(), "es")
    assert len(missing) == 1
    gone, _ = merged(updated, changed[1:], "Top", "es")
    assert "Front" in gone.obsolete
    back, _ = merged(gone, changed, "Top", "es")
    assert back["Front"].string == "Delantero" and not back["Front"].fuzzy and "Front" not in back.obsolete
    assert not path.exists()


def _plain() -> Pattern:
    from kit.body.body import NOBODY
    from kit.lesson.pattern import LessonInfo

    return Pattern(LessonInfo("Top", "top"), NOBODY, (), (), (), (), ())


# GNU gettext manual, "The Format of PO Files": comments of translator and program, flags, previous and obsolete text.
MANUAL = """\
msgid ""
msgstr ""
"Content-Type: text/plain; charset=UTF-8\\n"

#  translator-comments
#. extracted-comments
#: lib/error.c:116
msgid "Unknown system error"
msgstr "Error desconegut del sistema"

#, fuzzy
#| msgid "previous-untranslated-string"
msgid "untranslated-string"
msgstr "translated-string"

msgid ""
"Here is an example of how one might continue a very long string\\n"
"for the common case the string represents multi-line output.\\n"
msgstr "llarg\\n"

#~ msgid "old"
#~ msgstr "vell"
"""


def test_the_manuals_format_is_read(tmp_path: Path) -> None:
    path = tmp_path / "manual.ca.po"
    path.write_text(MANUAL)
    catalogue = read_words(path, "ca")
    assert catalogue is not None
    said = Translator(catalogue, "ca", _plain())
    assert said.text("Unknown system error") == "Error desconegut del sistema"
    assert said.text("untranslated-string") == "untranslated-string [en]"
    assert said.text("old") == "old [en]"
    long = "Here is an example of how one might continue a very long string\n"
    assert said.text(long + "for the common case the string represents multi-line output.\n") == "llarg\n"


def test_our_files_are_what_gettext_reads(pattern: Pattern, tmp_path: Path) -> None:
    """Python's own gettext module reads the compiled file; GNU msgfmt, where installed, checks the file itself."""
    path = tmp_path / "top.es.po"
    texts = own_texts(pattern, ("100 % cotton, *washed*.",))
    write_words(path, texts, "Tideline", "es")
    catalogue = read_words(path, "es")
    assert catalogue is not None
    for message in catalogue:
        if message.id:
            message.string = upper(str(message.id))
    known, counted = merged(catalogue, texts, "Tideline", "es")
    assert counted.done == counted.total == len({text for text, _ in texts})
    out = io.BytesIO()
    write_mo(out, known)
    out.seek(0)
    reference = gettext.GNUTranslations(out)
    ours = Translator(known, "es", pattern)
    assert all(reference.gettext(text) == ours.text(text) == upper(text) for text, _ in texts)
    if shutil.which("msgfmt"):
        done = subprocess.run(["msgfmt", "-c", "-o", os.devnull, str(path)], capture_output=True, text=True)
        assert done.returncode == 0, done.stderr


@pytest.mark.parametrize(
    ("text", "said"),
    [
        (b'msgid "a"\nmsgstr "b\n', "it cannot be read; line 2"),
        (b"hello\n", "it cannot be read; line 1"),
        (b'msgid "\xff"\nmsgstr ""\n', "not text in UTF-8"),
    ],
)
def test_a_broken_file_is_told_and_stays(tmp_path: Path, text: bytes, said: str) -> None:
    path = tmp_path / "top.es.po"
    path.write_bytes(text)
    with pytest.raises(KitError) as refused:
        write_words(path, TEXTS, "Top", "es")
    assert str(refused.value).startswith("top.es.po: ") and said in str(refused.value)
    assert path.read_bytes() == text and list(tmp_path.iterdir()) == [path]


def test_not_a_language() -> None:
    with pytest.raises(KitError, match=r"'\.\./x' is not the code of a language"):
        path_of(Path("top.ipynb"), "../x")


# ---- the command ------------------------------------------------------------------------------------------


@pytest.fixture
def notebook(tmp_path: Path) -> Path:
    for name in ("tideline_wrap_top.ipynb",):
        shutil.copy(EXAMPLE.with_name(name), tmp_path / name)
    return tmp_path / "tideline_wrap_top.ipynb"


def test_the_command_writes_and_counts(notebook: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["words", str(notebook), "--language", "es"]) == 0
    said = capsys.readouterr().out
    path = notebook.with_name("tideline_wrap_top.es.po")
    assert str(path) in said and "0 of " in said
    text = path.read_text()
    assert 'msgid "Tideline wrap top"' in text
    path.write_text(text.replace('msgid "Tideline wrap top"\nmsgstr ""', 'msgid "Tideline wrap top"\nmsgstr "Marea"'))
    assert main(["words", str(notebook), "--language", "es"]) == 0
    assert "1 of " in capsys.readouterr().out and 'msgstr "Marea"' in path.read_text()


def test_the_command_refuses_the_lessons_own_language(notebook: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert main(["words", str(notebook), "--language", "Spanish"]) == 2
    assert "not the code of a language" in capsys.readouterr().err
    assert main(["words", str(notebook), "--language", "en"]) == 2
    assert "the lesson is written in that language (en)" in capsys.readouterr().err
    assert not list(notebook.parent.glob("*.po"))
