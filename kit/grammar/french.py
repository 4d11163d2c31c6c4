"""French: le, du and au with their elisions, and agreement.

Rules: Grevisse, Le bon usage (elision before a vowel and a mute h, contraction of de and à with le, les; from memory).
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Callable
from typing import Any

from kit.grammar.nouns import starting
from kit.grammar.romance import Tongue

_ASPIRATED = re.compile(r"(?:hanche|haut|hache|halter|hausse|hamac|housse|huit)")
_TONGUE = Tongue(
    "fr",
    between=re.compile(r"( et | ainsi que | ou |, |\s?; )"),
    determined=re.compile(r"^(?:les?|la|du|des|aux?|une?|chaque|cette?|ce|ces|deux)\s|^(?:l|d)[’']", re.IGNORECASE),
    going_on=re.compile(r"(?:de|du|des|à|au|aux|en)\s|d[’']"),
    leading=re.compile(r"^(?:petite?s?|grande?s?|premi(?:er|ère)s?|seconde?s?)\s", re.IGNORECASE),
)
_ARTICLES = {
    "le": {"m": "le ", "f": "la ", "mp": "les ", "fp": "les "},
    "du": {"m": "du ", "f": "de la ", "mp": "des ", "fp": "des "},
    "au": {"m": "au ", "f": "à la ", "mp": "aux ", "fp": "aux "},
}
_ELIDED = {"le": "l’", "du": "de l’", "au": "à l’"}
_TAKEN = {
    "du": (("les ", "des "), ("le ", "du ")),
    "au": (("les ", "aux "), ("le ", "au ")),
    "le": (),
}
_BARE = {"le": "", "du": "de ", "au": "à "}


def _elides(name: str) -> bool:
    letters = "".join(c for c in unicodedata.normalize("NFD", name.casefold()) if not unicodedata.combining(c))
    letters = letters.lstrip('«\u00a0\u202f "“')
    return letters[:1] in tuple("aeiouœæ") or (letters[:1] == "h" and not _ASPIRATED.match(letters))


def _with(article: str) -> Callable[..., str]:
    def put(name: str, gender: str) -> str:
        if gender in ("m", "f") and _elides(name):
            return _ELIDED[article] + name
        return _ARTICLES[article][gender] + name

    def kept(name: str) -> str:
        for one, other in _TAKEN[article]:
            if name.startswith(one):
                return other + name[len(one) :]
        return _BARE[article] + name

    def said(text: Any) -> str:
        """The names with this article, or with the bare preposition where a gender is not known."""
        found = _TONGUE.each(str(text), put, kept)
        if found is not None:
            return found
        return f"d’{text}" if article == "du" and _elides(str(text)) else f"{_BARE[article]}{text}"

    return said


def _sided(text: Any, side: Any) -> str:
    """Names of the left or the right half: "devant gauche", "manche droite"; without a known gender "Front (côté
    gauche)". A seam of a side is told by its side ("couture de côté droit"): "droite" would call it straight."""
    right = "droit" in str(side)
    ending = {"m": "", "f": "e" if right else "", "mp": "s", "fp": "es" if right else "s"}
    word = "droit" if right else "gauche"
    found = _TONGUE.each(
        str(text), lambda name, gender: f"{name} {word}{'' if name.endswith(' de côté') else ending[gender]}", str
    )
    return f"{text} (côté {word})" if found is None else found


FRENCH: dict[str, Callable[..., str]] = {
    "LE": _with("le"),
    "DU": _with("du"),
    "AU": _with("au"),
    "SIDE": _sided,
    "START": starting,
    "GENDER": _TONGUE.gender_of,
}
