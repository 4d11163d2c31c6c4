"""German: the article in four cases, the adjective before a noun, the noun's own ending.

Rules: Duden, Die Grammatik (weak adjectives after the definite article, genitive -es after a hissing sound, dative
plural -n; from memory).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from kit.grammar.nouns import nouns, starting, told

_ARTICLES = {
    "nom": {"m": "der", "f": "die", "n": "das", "p": "die"},
    "acc": {"m": "den", "f": "die", "n": "das", "p": "die"},
    "dat": {"m": "dem", "f": "der", "n": "dem", "p": "den"},
    "gen": {"m": "des", "f": "der", "n": "des", "p": "der"},
}
_STRONG = {"m": "er", "f": "e", "n": "es", "p": "e"}
_JOINED = {
    **{f"{short} dem": long for short, long in (("an", "am"), ("in", "im"), ("von", "vom"), ("zu", "zum"))},
    "bei dem": "beim",
    "zu der": "zur",
    "an das": "ans",
    "in das": "ins",
}
_SIDES = {"links": "link", "rechts": "recht"}
_DETERMINED = re.compile(r"^(?:der|die|das|den|dem|des|ein|eine|einen|einem|einer|eines|beide|beiden)\b", re.IGNORECASE)
_BETWEEN = re.compile(r"(?<!-)( und | sowie | oder |, |; )")
_ADJECTIVE = re.compile(r"(\w+?)(?:er|es|en|e)$")
_HISSING = re.compile(r"(?:s|ß|x|z|sch|st|nd)$")


@dataclass(frozen=True)
class _Name:
    """One name taken apart: adjectives, what else stands before the noun, the noun, and what stands behind it."""

    adjectives: tuple[str, ...]
    before: str
    noun: str
    behind: str
    gender: str


def _taken_apart(text: str) -> _Name | None:
    """The name, or None where its gender is not known."""
    words = text.split(" ")
    first = next((at for at, word in enumerate(words) if not word[:1].islower()), len(words))
    last = first
    while last < len(words) and not (words[last][:1].islower() and words[last - 1][-1:] != "-"):
        last += 1  # the capital words, and what joins two parts of one word: "Schulter- und Oberarmnaht"
    own = told(text)
    for at in range(last - 1, first - 1, -1):
        gender = own or told(words[at]) or _gender(words[at])
        if gender and words[at][-1:] != "-":
            before, behind = " ".join(words[first:at]), " ".join(words[at + 1 :])
            return _Name(tuple(words[:first]), before, words[at], behind, gender)
    return None


def _gender(word: str) -> str:
    """The gender of a noun by the longest noun of the list that it ends with, or ""."""
    known, bare = nouns("de"), word.casefold().rsplit("-", 1)[-1]
    return next((known[bare[at:]] for at in range(len(bare)) if bare[at:] in known), "")


def _declined(name: _Name, case: str) -> str:
    if name.behind.isdigit() and not name.adjectives:
        return _joined("von" if case == "gen" else "", name.before, name.noun, name.behind)  # "Knopfloch 1": no article
    singular, oblique = name.gender != "p", case in ("dat", "gen")
    weak = "en" if oblique or not singular or (case == "acc" and name.gender == "m") else "e"
    noun = name.noun
    if case == "gen" and name.gender in ("m", "n"):
        noun += "es" if _HISSING.search(noun) else "s"
    if case == "dat" and not singular and noun[-1] not in "ns":
        noun += "n"
    adjectives = (_ADJECTIVE.sub(rf"\1{weak}", word) for word in name.adjectives)
    return _joined(_ARTICLES[case][name.gender], *adjectives, name.before, noun, name.behind)


def _joined(*parts: str) -> str:
    return " ".join(part for part in parts if part)


def _each(text: str, put: Callable[[_Name], str]) -> str | None:
    """The text with each of its names put by `put`, or None where one of them has no known gender."""
    parts = [text] if told(text) else _BETWEEN.split(text)
    said = []
    for at, part in enumerate(parts):
        if at % 2 or _DETERMINED.match(part) or (at and part.split(" ")[0] in ("von", "an", "am", "im", "in", "zu")):
            said.append(part)
        elif name := _taken_apart(part):
            said.append(put(name))
        else:
            return None
    return "".join(said)


def _in_case(case: str) -> Callable[..., str]:
    def said(text: Any, **options: Any) -> str:
        """The names with their article in this case, behind the preposition `with` where one is given."""
        wanted, before = str(text), str(options.get("with", ""))
        found = _each(wanted, lambda name: _declined(name, case))
        if found is None:
            if before == "zu" and wanted[:1].isdigit():
                return wanted  # "bis 3 cm ab dem Saum": "bis zu 3 cm" would mean at most
            return f"{before or ('von' if case == 'gen' else '')} {wanted}".strip()
        if not before:
            return found
        parts = _BETWEEN.split(found)
        article = parts[0].split(" ")[0]
        if f"{before} {article}" not in _JOINED:
            return f"{before} {found}"
        # "am Saum und an der Taille": a preposition that took the article in is said before every name
        return "".join(part if at % 2 else _preposed(before, part) for at, part in enumerate(parts))

    return said


def _preposed(before: str, part: str) -> str:
    article, _, rest = part.partition(" ")
    if article not in _ARTICLES["nom"].values() and article not in ("dem", "den", "des"):
        return part
    return f"{_JOINED.get(f'{before} {article}', f'{before} {article}')} {rest}"


def _sided(text: Any, side: Any) -> str:
    """A name of the left or the right half: "linkes Vorderteil"; without a known gender "Front links"."""
    stem = _SIDES.get(str(side), "")

    def put(name: _Name) -> str:
        return _joined(stem + _STRONG[name.gender], *name.adjectives, name.before, name.noun, name.behind)

    said = _each(str(text), put)
    return said if said and stem else f"{text} {side}"


def _gender_of(text: Any) -> str:
    """The letter of the gender, "p" for several names, "none" where it is not known."""
    parts = [str(text)] if told(str(text)) else _BETWEEN.split(str(text))[::2]
    names = [_taken_apart(_DETERMINED.sub("", part).strip()) for part in parts]
    if not all(names):
        return "none"
    return "p" if len(names) > 1 else names[0].gender if names[0] else "none"


GERMAN: dict[str, Callable[..., str]] = {
    "NOM": _in_case("nom"),
    "ACC": _in_case("acc"),
    "DAT": _in_case("dat"),
    "GEN": _in_case("gen"),
    "SIDE": _sided,
    "START": starting,
    "GENDER": _gender_of,
}
