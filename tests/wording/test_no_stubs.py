"""What a booklet prints of its names stands in sentences: none hangs on a colon, in brackets or in quotation marks, and
no word points at a thing that another sentence named.

Sentences of steps are put together from messages that do not know of one another: "this fold" then means the fold of
whatever message came in between. Both rules are those of a printed pattern (common practice, no source).
"""

from __future__ import annotations

import re
from collections.abc import Iterator

import pytest
from fluent.syntax import FluentParser, FluentSerializer, ast

from kit.resources import templates

CODES = ("en", "de", "fr", "es")
NOT_PRINTED = frozenset(
    (
        *("blocks", "body", "building", "canvas", "canvas_moves", "class_copy", "drafting", "family", "handling"),
        *("large", "lay", "measures", "own_words", "page", "panel", "paper", "picture", "player", "proof", "reference"),
        *("refusal", "release", "remedy", "room", "roster", "saved", "screen", "sewing_trouble", "stage", "units"),
        *("walk", "wear"),
    )
)
"""Families that a booklet does not print as sentences: screens, commands, refusals; and labels and descriptions of
pictures, which are lists ("Marks: ...")."""
LISTED = {
    "booklet-video": "an address",
    "booklet-marks_on_one": "a cell of a table: marks of one half",
    "booklet-notches_on": "a cell of a table: notches of one edge",
    "booklet-allowances_line": "lengths",
    "booklet-measurements_of": "the title of a table",
    "booklet-drafted_for_body": "a name that the reader chose, in no known gender",
    "booklet-not_in_sizes": "names of sizes",
    "try_on-look": "the teacher's own note",
    "worksheet-offset": "a length",
    "fit-too_far": "a length",
    "fit-dart": "a refusal",
}
"""Messages that may, and what stands there."""
LENGTHS = frozenset(("total", "share", "stretched", "places", "body", "amount", "second", "first", "to", "size"))
"""Values that are lengths or whom a booklet is for: no names."""
WHOLE = ("booklet-", "term_meaning-", "caution")
"""Texts that stand by themselves: a note under its table, the meaning of a word."""
POINTING = {
    "en": r"\b(?:[Tt]his|[Tt]hese)\s(?:crease|fold|line|edge|seam|end|row|piece|strip|corner|mark)s?\b",
    "de": r"\b[Dd]iese[rsnm]?\s(?:Falz|Bruch|Linie|Kante|Naht|Ende|Reihe|Teil|Streifen|Ecke|Markierung)",
    "fr": r"\b[Cc]e(?:t|tte|s)?\s(?:pliure|pli|ligne|bord|couture|bout|piqûre|pièce|bande|angle|repère)s?\b",
    "es": r"\b[Ee]s(?:t|)[aeo]s?\s(?:doblez|línea|borde|costura|extremo|pespunte|pieza|tira|esquina|marca|raya)s?\b",
}


def messages(code: str) -> Iterator[tuple[str, str]]:
    """(key, text of one variant) of all that a booklet prints as sentences."""
    for path in sorted((templates() / "language" / code).glob("*.ftl")):
        if path.stem in NOT_PRINTED:
            continue
        for entry in FluentParser().parse(path.read_text(encoding="utf-8")).body:
            if isinstance(entry, ast.Message) and entry.value and not entry.id.name.startswith(("alt-", "phrase-")):
                for text in variants(entry.value):
                    yield entry.id.name, text


def variants(pattern: ast.Pattern) -> list[str]:
    """The texts that a message may come to, one for each variant of what it selects, its places as "{name}"."""
    texts = [""]
    for element in pattern.elements:
        if isinstance(element, ast.TextElement):
            pieces = [element.value]
        elif isinstance(element.expression, ast.SelectExpression):
            pieces = [text for each in element.expression.variants for text in variants(each.value)]
        else:
            said = FluentSerializer().serialize(
                ast.Resource([ast.Message(ast.Identifier("x"), ast.Pattern([element]))])
            )
            found = re.search(r"\$(\w+)", said)
            pieces = ["{" + (found[1] if found else "") + "}"]
        texts = [text + piece for text in texts for piece in pieces]
    return texts


HUNG = re.compile(r"(?::\s*|[(«„“\"]\s*)\{(\w+)\}\s*(?:[)»“”\"]|\.?$)")


def hung(text: str) -> list[str]:
    """The names in a text that hang on a colon at its end, or stand alone in brackets or quotation marks."""
    return [name for name in HUNG.findall(text) if name not in LENGTHS]


@pytest.mark.parametrize("code", CODES)
def test_no_name_hangs_on_a_colon_in_brackets_or_in_quotation_marks(code: str) -> None:
    found = {key: text for key, text in messages(code) if key not in LISTED and hung(text)}
    assert not found


@pytest.mark.parametrize("code", CODES)
def test_no_word_points_into_another_sentence(code: str) -> None:
    """It may, where the same message names the thing before, or begins with the name of a piece that it goes on to."""
    found = {}
    for key, text in messages(code):
        if key.startswith(WHOLE):
            continue
        for match in re.finditer(POINTING[code], text):
            noun = match[0].split()[-1].rstrip("s")[:5].casefold()
            before = text[: match.start()].casefold()
            if noun not in before and not re.match(r"\{(piece|edge|dart|caught)\}", before):
                found[key] = text
    assert not found


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("Ausradieren: {lines}.", ["lines"]),
        ("Bas : relever « {line} » de la pièce « {piece} ».", ["line", "piece"]),
        ("Seitennaht: {line} ({piece}) abpausen.", ["piece"]),
        ("1× aus {cloth}, im Stoffbruch: {edge}", ["edge"]),
        ("{edge}: rule from {start} to {end}, {length}.", []),
        ("Rub out {lines}.", []),
        ("Saumzugabe insgesamt: {total}.", []),
    ],
)
def test_what_hangs_is_seen(text: str, names: list[str]) -> None:
    assert hung(text) == names


def test_every_exception_is_there_and_needed() -> None:
    texts = [(key, text) for code in CODES for key, text in messages(code)]
    assert set(LISTED) <= {key for key, text in texts if hung(text) or ": {" in text or " : {" in text}
