"""The sentences of a language, read from `templates/sentences`, and how lists and places are said in it."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping, Sequence
from functools import lru_cache
from typing import Any

from kit.errors import KitError, near
from kit.placeholder import Placeholder, fill
from kit.resources import templates


@lru_cache(maxsize=8)
def _table(folder: str, language: str) -> Mapping[str, Any]:
    """The language's file, or all files of its folder put together."""
    root = templates() / folder
    files = sorted((root / language).glob("*.toml")) or [root / f"{language}.toml"]
    if not files[0].is_file():
        known = {found.stem for found in root.glob("*.toml")} | {found.name for found in root.glob("*/")}
        raise KitError(f"there are no {folder} in the language '{language}'.", do=near(language, known))
    whole: dict[str, Any] = {}
    for path in files:
        try:
            _merge(whole, tomllib.loads(path.read_text(encoding="utf-8")), str(path))
        except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
            raise KitError(f"it cannot be read: {error}.", where=str(path), do="Mend the file.") from None
    return whole


def _merge(whole: dict[str, Any], more: Mapping[str, Any], where: str) -> None:
    for key, value in more.items():
        if isinstance(value, Mapping):
            _merge(whole.setdefault(key, {}), value, where)
        elif key in whole:
            raise KitError(f"'{key}' is written twice.", where=where, do="Take one out.")
        else:
            whole[key] = value


def sentence_table(language: str = "en") -> Mapping[str, Any]:
    """Everything in templates/sentences/LANGUAGE/, a file for each family of operations."""
    return _table("sentences", language)


def word_table(language: str = "en") -> Mapping[str, Any]:
    """Everything in templates/words/LANGUAGE.toml."""
    return _table("words", language)


def template(key: str, language: str = "en") -> str:
    """The sentence of a dotted key; keys without a family stand in [common]. `KitError` when there is none."""
    here: Any = sentence_table(language)
    path = key.split(".") if "." in key else ["common", key]
    for part in path:
        if not isinstance(here, Mapping) or part not in here:
            raise KitError(f"there is no sentence '{key}'.", where=f"templates/sentences/{language}")
        here = here[part]
    if not isinstance(here, str):
        raise KitError(f"'{key}' is a family of sentences, not one.", where=f"templates/sentences/{language}")
    return here


def word(key: str, language: str = "en") -> str:
    """A small word by its key; `KitError` when there is none."""
    words = sentence_table(language)["words"]
    if key not in words:
        raise KitError(f"there is no word '{key}'.", where=f"templates/sentences/{language}")
    return str(words[key])


def put(text: str, values: Mapping[str, str], where: str = "") -> str:
    """`text` with its placeholders filled from `values` (plain text). `KitError` for one that is not there."""

    def value_of(found: Placeholder) -> str:
        if found.name not in values:
            raise KitError(f"'{{{found.name}}}' stands for nothing here.", where=where, do=near(found.name, values))
        return values[found.name]

    return fill(text, value_of)


def say(key: str, values: Mapping[str, str], language: str = "en") -> str:
    """The sentence of `key`, filled."""
    return put(template(key, language), values, key)


def phrase(key: str, language: str = "en", **values: str) -> str:
    """A phrase such as "{edge} of the {piece}", filled."""
    return say(f"phrases.{key}", values, language)


def listed(items: Sequence[str], language: str = "en") -> str:
    """Items as people list them: a, b and c."""
    found = list(dict.fromkeys(items))
    if len(found) < 2:
        return "".join(found)
    head = found[0]
    for item in found[1:-1]:
        head = phrase("more", language, first=head, last=item)
    return phrase("two", language, first=head, last=found[-1])
