"""Spanish: el, del and al, and agreement.

Rules: Real Academia Española, Diccionario panhispánico de dudas ("el": el before a stressed a-, contraction of de and a
with el; from memory).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Any

from kit.grammar.nouns import starting
from kit.grammar.romance import Tongue

_STRESSED = re.compile(r"(?:asa|agua|ala|alza|ancla|arca|área|aguja de arria)\b", re.IGNORECASE)
_TONGUE = Tongue(
    "es",
    between=re.compile(r"( y | e | o | u |, así como |, |; )"),
    determined=re.compile(r"^(?:el|la|los|las|del|al|un|una|unos|unas|cada|este|esta)\s", re.IGNORECASE),
    going_on=re.compile(r"(?:de|del|a|al|en)\s"),
    leading=re.compile(r"^(?:primera?|segund[oa]|gran)\s", re.IGNORECASE),
)
_ARTICLES = {
    "el": {"m": "el", "f": "la", "mp": "los", "fp": "las"},
    "del": {"m": "del", "f": "de la", "mp": "de los", "fp": "de las"},
    "al": {"m": "al", "f": "a la", "mp": "a los", "fp": "a las"},
}
_BARE = {"el": "", "del": "de ", "al": "a "}


def _with(article: str) -> Callable[..., str]:
    def put(name: str, gender: str) -> str:
        masculine = gender == "f" and _STRESSED.match(name)
        return f"{_ARTICLES[article]['m' if masculine else gender]} {name}"

    def kept(name: str) -> str:
        if article != "el" and name.startswith("el "):
            return f"{article} {name[3:]}"
        return _BARE[article] + name

    def said(text: Any) -> str:
        """The names with this article, or with the bare preposition where a gender is not known."""
        found = _TONGUE.each(str(text), put, kept)
        return f"{_BARE[article]}{text}" if found is None else found

    return said


def _sided(text: Any, side: Any) -> str:
    """Names of the left or the right half: "delantero izquierdo"; without a known gender "Front de la izquierda"."""
    stem = "derech" if str(side).startswith("derech") else "izquierd"
    ending = {"m": "o", "f": "a", "mp": "os", "fp": "as"}
    found = _TONGUE.each(str(text), lambda name, gender: f"{name} {stem}{ending[gender]}", str)
    return f"{text} de la {side}" if found is None else found


SPANISH: dict[str, Callable[..., str]] = {
    "EL": _with("el"),
    "DEL": _with("del"),
    "AL": _with("al"),
    "SIDE": _sided,
    "START": starting,
    "GENDER": _TONGUE.gender_of,
}
