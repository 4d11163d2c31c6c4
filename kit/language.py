"""The language people read: every sentence, label and unit comes from a catalogue in `templates/language`.

A catalogue is a folder of Fluent files (https://projectfluent.org), one file for each subject, read through
fluent.runtime. English is the source: a message another language lacks is said in English with a visible mark.
The language is set for a stretch of work (`with speaking("de"):`), as a reader opens one booklet at a time; views
stay pure functions of the pattern and that language. Names come with their articles by the functions of `kit.grammar`;
a sentence that begins with such a name begins with a capital. Keys are dotted in code and hyphenated in the files:
`plain_seam.sew` is the message `plain_seam-sew`.

A language may be asked for with its region ("de-AT", "en-US"): words come from the catalogue of the language, spelt as
that region spells where `templates/language/<code>/spelling_<region>.toml` says how, numbers and dates from the region.
There `[words]` are changed whole, `[letters]` wherever they stand, in an author's words of the language as well.
"""

from __future__ import annotations

import re
import tomllib
import unicodedata
from collections.abc import Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import lru_cache
from itertools import pairwise
from pathlib import Path
from types import MappingProxyType
from typing import Any

from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax import ast, visitor

from kit.errors import KitError, near
from kit.grammar import FUNCTIONS
from kit.resources import templates

SOURCE = "en"
_ROOM = 900
_spoken: ContextVar[tuple[str, str]] = ContextVar("spoken", default=(SOURCE, SOURCE))
"""The catalogue's code, and the tag that was asked for."""
_names: ContextVar[Mapping[str, str]] = ContextVar("names", default=MappingProxyType({}))


@lru_cache(maxsize=1)
def languages() -> tuple[str, ...]:
    """The codes of the languages that have a catalogue, the source first (BCP 47, such as "en")."""
    found = sorted(path.name for path in (templates() / "language").glob("*/"))
    return (SOURCE, *(code for code in found if code != SOURCE))


def language() -> str:
    """The code of the language spoken now, without a region."""
    return _spoken.get()[0]


def language_tag() -> str:
    """The language spoken now as it was asked for, with its region where one was: "de-AT"."""
    return _spoken.get()[1]


@lru_cache(maxsize=64)
def catalogue_of(tag: str) -> str:
    """The code of the catalogue that serves a language tag: the tag is shortened from its end until there is one
    (RFC 4647, section 3.4, lookup). Empty where there is none.

    >>> catalogue_of("es-MX"), catalogue_of("DE-at"), catalogue_of("nl-BE")
    ('es', 'de', '')
    """
    known, parts = {code.lower(): code for code in languages()}, tag.lower().split("-")
    return next((known[code] for end in range(len(parts), 0, -1) if (code := "-".join(parts[:end])) in known), "")


def written_tag(tag: str) -> str:
    """A language tag as it is usually written (RFC 5646, section 2.1.1): the language small, a script with a capital, a
    region in capitals.

    >>> written_tag("ES-mx"), written_tag("zh-hant-tw"), written_tag("de")
    ('es-MX', 'zh-Hant-TW', 'de')
    """
    first, *others = tag.lower().split("-")
    return "-".join([first, *({2: part.upper(), 4: part.title()}.get(len(part), part) for part in others)])


def region_of(tag: str) -> str:
    """The region of a language tag (ISO 3166-1 or UN M49), empty where it has none.

    >>> region_of("es-MX"), region_of("es-419"), region_of("zh-Hant"), region_of("de")
    ('MX', '419', '', '')
    """
    parts = tag.upper().split("-")[1:]
    return next((part for part in parts if re.fullmatch(r"[A-Z]{2}|[0-9]{3}", part)), "")


@contextmanager
def speaking(code: str) -> Iterator[None]:
    """Say everything in the language `code` inside the block, which may have a region ("de-AT"). `KitError` for a
    language without a catalogue."""
    found = catalogue_of(code)
    if not found:
        raise KitError(f"there is no language '{code}'.", do=near(code, languages()))
    token = _spoken.set((found, written_tag(code)))
    try:
        yield
    finally:
        _spoken.reset(token)


def known_language(code: str) -> str:
    """The language of that code where the kit speaks it, else its own.

    >>> known_language("de-CH"), known_language("nl")
    ('de', 'en')
    """
    return catalogue_of(code) or SOURCE


def spoken_for(code: str) -> str:
    """What is spoken for a lesson whose own words are in `code`: that language with its region, or the kit's own.

    >>> spoken_for("de-at"), spoken_for("nl-BE")
    ('de-AT', 'en')
    """
    return written_tag(code) if catalogue_of(code) else SOURCE


def alphabetical(text: str) -> tuple[str, str]:
    """The key that sorts words as a dictionary does: case aside, and a letter with a mark beside the letter without it
    (German: DIN 5007-1; from memory)."""
    letters = unicodedata.normalize("NFKD", text.casefold())
    return "".join(letter for letter in letters if not unicodedata.combining(letter)), text


@contextmanager
def naming(names: Mapping[str, str]) -> Iterator[None]:
    """Inside the block call a lesson's points and lines as `names` say, by the name they have in code."""
    token = _names.set(names)
    try:
        yield
    finally:
        _names.reset(token)


def called(name: str) -> str:
    """What a point or line that has only a name in code is called: as the lesson's translation says, else as the kit
    calls a point or edge of that name, else the name itself with blanks. In the source it is the name itself."""
    own = _names.get().get(name)
    if own:
        return own
    if language() != SOURCE:
        for key in (f"worksheet.name.{name}", f"edge.{name}"):
            if says(key):
                return say(key)
    return name.replace("_", " ")


def _fitting(value: Any) -> Any:
    """A text that a message has room for: the library refuses places of more than a thousand characters."""
    return f"{value[:_ROOM]}…" if isinstance(value, str) and len(value) > _ROOM else value


def say(key: str, values: Mapping[str, Any] | None = None, /, **more: Any) -> str:
    """The message of `key` in the spoken language, its places filled from `values` and `more`: texts as they are,
    whole numbers with the language's plurals. `KitError` when no catalogue has it or a place stays empty."""
    given = {name: _fitting(value) for name, value in {**(values or {}), **more}.items()}
    code, tag = _spoken.get()
    name = key.replace(".", "-")
    catalogue = _catalogue(code) if tag == code else _catalogue_in(code, region_of(tag))
    mark = ""
    if name not in catalogue and code != SOURCE:
        catalogue, mark = _catalogue(SOURCE), f" [{SOURCE}]"
    if name not in catalogue:
        raise KitError(f"there is no sentence '{key}'.", where=f"templates/language/{SOURCE}", do=_hint(name))
    text, errors = catalogue.said(name, given)
    if errors:
        raise KitError(f"'{key}' cannot be said: {errors[0]}.", where=f"templates/language/{code}")
    return text + mark


def says(key: str) -> bool:
    """Whether the spoken language (or the source) has a message of that key."""
    name = key.replace(".", "-")
    return name in _catalogue(language()) or name in _catalogue(SOURCE)


def variables(key: str) -> tuple[str, ...]:
    """The names of the values that the source's message of that key is filled with."""
    return tuple(dict.fromkeys(re.findall(r"\$(\w+)", _catalogue(SOURCE).written[key.replace(".", "-")])))


def keys(start: str) -> tuple[str, ...]:
    """The rest of every key that begins with `start` and a dot, in the order of the source's files."""
    head = start.replace(".", "-") + "-"
    return tuple(name[len(head) :] for name in _catalogue(SOURCE).files if name.startswith(head))


class _Catalogue:
    """One language's messages. A message is parsed when it is first wanted: parsing all of them takes longer than most
    work that needs a few. No message may therefore name another one."""

    def __init__(self, code: str, region: str = "") -> None:
        self._respelt = _Respelt(_spelling(code, region)) if _spelling(code, region) else None
        self._bundle = FluentBundle([code], functions=FUNCTIONS.get(code, FUNCTIONS[SOURCE]), use_isolating=False)
        self._led: set[str] = set()  # messages that begin with a name put by a function
        self._unread: dict[str, str] = {}
        self.written: dict[str, str] = {}
        self.files: dict[str, Path] = {}
        for path in sorted((templates() / "language" / code).glob("*.ftl")):
            text = path.read_text(encoding="utf-8")
            found = list(_ID.finditer(text))
            # A message reaches to where the next one begins, and the first from the top of the file, so that whatever
            # cannot be read lies in one of them.
            cuts = [0, *(later.start() for later in found[1:]), len(text)]
            for (begin, end), one in zip(pairwise(cuts), found, strict=False):
                if one[1] in self.files:
                    raise KitError(f"'{one[1]}' is written twice.", where=str(path), do="Take one out.")
                self.files[one[1]], self._unread[one[1]] = path, text[begin:end]
                self.written[one[1]] = _WITHOUT_REMARKS.sub("", text[begin:end])

    def __contains__(self, name: str) -> bool:
        return name in self.files

    def said(self, name: str, given: Mapping[str, Any]) -> tuple[str, list[Any]]:
        if name in self._unread:
            self._add(self._unread[name], self.files[name])
            del self._unread[name]
        pattern = self._bundle.get_message(name).value
        if pattern is None:
            raise KitError(f"'{name}' says nothing.", where=str(self.files[name]), do="Give it a text.")
        text, errors = self._bundle.format_pattern(pattern, dict(given))
        said = str(text)
        if name in self._led and said[-1:] in ".:!?":  # a sentence
            said = said[:1].upper() + said[1:]
        return said, errors

    def _add(self, written: str, path: Path) -> None:
        resource = FluentResource(written)
        broken = [entry for entry in resource.body if isinstance(entry, ast.Junk)]
        if broken:
            line = str(broken[0].content).splitlines()[0]
            raise KitError(f"it cannot be read at '{line}'.", where=str(path), do="Mend that message.")
        if self._respelt:
            self._respelt.visit(resource)
        self._led |= {entry.id.name for entry in resource.body if isinstance(entry, ast.Message) and _led(entry.value)}
        self._bundle.add_resource(resource)


def _led(pattern: ast.Pattern | None) -> bool:
    """Whether a text begins with a function's words, in one at least of its variants."""
    if pattern is None or not isinstance(pattern.elements[0], ast.Placeable):
        return False
    first = pattern.elements[0].expression
    if isinstance(first, ast.SelectExpression):
        return any(_led(variant.value) for variant in first.variants)
    # In English only what a message writes with a capital has one: a finding goes on behind its place and a colon.
    return isinstance(first, ast.FunctionReference) and first.id.name != "THE"


_WITHOUT_REMARKS = re.compile(r"^#.*$", re.MULTILINE)
_ID = re.compile(r"^([A-Za-z][\w-]*) *=", re.MULTILINE)


class _Respelt(visitor.Transformer):
    """Spells the text of messages otherwise, words and letters; names of values and messages stay."""

    def __init__(self, spelling: Mapping[str, Mapping[str, str]]) -> None:
        told = spelling.get("words", {})
        self._spelling = {**told, **{word.capitalize(): as_.capitalize() for word, as_ in told.items()}}
        words = sorted(map(re.escape, self._spelling), key=len, reverse=True)
        self._words = re.compile(rf"\b(?:{'|'.join(words)})\b") if words else None
        self._letters = str.maketrans(dict(spelling.get("letters", {})))

    def visit_TextElement(self, node: ast.TextElement) -> ast.TextElement:
        if self._words:
            node.value = self._words.sub(lambda found: self._spelling[found[0]], node.value)
        node.value = node.value.translate(self._letters)
        return node


@lru_cache(maxsize=8)
def _catalogue(code: str) -> _Catalogue:
    return _Catalogue(code)


@lru_cache(maxsize=8)
def _catalogue_in(code: str, region: str) -> _Catalogue:
    """The catalogue as a region spells its words, where that is told; else that of the language."""
    return _Catalogue(code, region) if _spelling(code, region) else _catalogue(code)


@lru_cache(maxsize=16)
def _spelling(code: str, region: str) -> Mapping[str, Mapping[str, str]]:
    path = templates() / "language" / code / f"spelling_{region}.toml"
    return tomllib.loads(path.read_text(encoding="utf-8")) if region and path.is_file() else {}


def letters_of(tag: str) -> Mapping[str, str]:
    """The letters of a language that the region of the tag writes otherwise: {letter: as written there}."""
    return _spelling(catalogue_of(tag), region_of(tag)).get("letters", MappingProxyType({}))


_AS_IT_IS = re.compile(r"(`+[^`]*`+|\{[^{}]*\})")  # code, and what is filled in


def lettered(text: str, tag: str) -> str:
    """A text of the language of that tag, such as an author's own, in the letters that its region writes.

    >>> lettered("Die „Außenkante“ um {maß} kürzen.", "de-CH")
    'Die «Aussenkante» um {maß} kürzen.'
    """
    table = str.maketrans(dict(letters_of(tag)))
    return "".join(part if at % 2 else part.translate(table) for at, part in enumerate(_AS_IT_IS.split(text)))


def respelt(tag: str) -> bool:
    """Whether the kit spells its words as the region of that tag does, rather than as the language at large."""
    return bool(_spelling(catalogue_of(tag), region_of(tag)))


def _hint(name: str) -> str:
    return near(name, _catalogue(SOURCE).files)
