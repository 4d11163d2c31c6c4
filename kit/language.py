"""The language people read: every sentence, label and unit comes from a catalogue in `templates/language`.

A catalogue is a folder of Fluent files (https://projectfluent.org), one file for each subject, read through
fluent.runtime. English is the source: a message another language lacks is said in English with a visible mark.
The language is set for a stretch of work (`with speaking("de"):`), as a reader opens one booklet at a time; views
stay pure functions of the pattern and that language. Keys are dotted in code and hyphenated in the files:
`plain_seam.sew` is the message `plain_seam-sew`.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from contextvars import ContextVar
from functools import lru_cache
from typing import Any

from fluent.runtime import FluentBundle, FluentResource
from fluent.syntax import FluentParser, ast

from kit.errors import KitError, near
from kit.resources import templates

SOURCE = "en"
_spoken: ContextVar[str] = ContextVar("spoken", default=SOURCE)


@lru_cache(maxsize=1)
def languages() -> tuple[str, ...]:
    """The codes of the languages that have a catalogue, the source first (BCP 47, such as "en")."""
    found = sorted(path.name for path in (templates() / "language").glob("*/"))
    return (SOURCE, *(code for code in found if code != SOURCE))


def language() -> str:
    """The code of the language spoken now."""
    return _spoken.get()


@contextmanager
def speaking(code: str) -> Iterator[None]:
    """Say everything in the language `code` inside the block. `KitError` for a language without a catalogue."""
    if code not in languages():
        raise KitError(f"there is no language '{code}'.", do=near(code, languages()))
    token = _spoken.set(code)
    try:
        yield
    finally:
        _spoken.reset(token)


def say(key: str, values: Mapping[str, Any] | None = None, /, **more: Any) -> str:
    """The message of `key` in the spoken language, its places filled from `values` and `more`: texts as they are,
    whole numbers with the language's plurals. `KitError` when no catalogue has it or a place stays empty."""
    given = {**(values or {}), **more}
    code = _spoken.get()
    name = key.replace(".", "-")
    bundle = _bundle(code)
    mark = ""
    if not bundle.has_message(name) and code != SOURCE:
        bundle, mark = _bundle(SOURCE), f" [{SOURCE}]"
    if not bundle.has_message(name):
        raise KitError(f"there is no sentence '{key}'.", where=f"templates/language/{SOURCE}", do=_hint(name))
    pattern = bundle.get_message(name).value
    if pattern is None:
        raise KitError(f"'{key}' says nothing.", where=f"templates/language/{code}", do="Give it a text.")
    text, errors = bundle.format_pattern(pattern, given)
    if errors:
        raise KitError(f"'{key}' cannot be said: {errors[0]}.", where=f"templates/language/{code}")
    return str(text) + mark


def says(key: str) -> bool:
    """Whether the spoken language (or the source) has a message of that key."""
    name = key.replace(".", "-")
    return bool(_bundle(_spoken.get()).has_message(name) or _bundle(SOURCE).has_message(name))


def keys(start: str) -> tuple[str, ...]:
    """The rest of every key that begins with `start` and a dot, in the order of the source's files."""
    head = start.replace(".", "-") + "-"
    return tuple(name[len(head) :] for name in _order() if name.startswith(head))


@lru_cache(maxsize=8)
def _bundle(code: str) -> FluentBundle:
    bundle = FluentBundle([code], use_isolating=False)
    folder = templates() / "language" / code
    for path in sorted(folder.glob("*.ftl")):
        resource = FluentResource(path.read_text(encoding="utf-8"))
        broken = [entry for entry in resource.body if isinstance(entry, ast.Junk)]
        if broken:
            line = str(broken[0].content).splitlines()[0]
            raise KitError(f"it cannot be read at '{line}'.", where=str(path), do="Mend that message.")
        twice = [name for name in _names(resource.body) if bundle.has_message(name)]
        if twice:
            raise KitError(f"'{twice[0]}' is written twice.", where=str(path), do="Take one out.")
        bundle.add_resource(resource)
    return bundle


@lru_cache(maxsize=1)
def _order() -> tuple[str, ...]:
    parser = FluentParser()
    found: list[str] = []
    for path in sorted((templates() / "language" / SOURCE).glob("*.ftl")):
        found += _names(parser.parse(path.read_text(encoding="utf-8")).body)
    return tuple(found)


def _names(entries: Iterable[object]) -> list[str]:
    return [str(entry.id.name) for entry in entries if isinstance(entry, ast.Message)]


def _hint(name: str) -> str:
    return near(name, _order())
