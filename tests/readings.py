"""What a page says of lengths: every pair such as "1.5 cm (5/8 in)", read back as numbers.

Nothing of the kit's own rounding is used, only the signs of the units and exact arithmetic (one inch is exactly
25.4 mm, one yard 914.4 mm: international yard and pound agreement, 1959).
"""

from __future__ import annotations

import re
from collections import defaultdict
from collections.abc import Iterable
from fractions import Fraction
from functools import cache, lru_cache
from html import unescape
from typing import NamedTuple

from kit.units import System

_METRIC = {"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000)}
_ENGLISH = {"in": Fraction(254, 10), "Zoll": Fraction(254, 10), "pulg.": Fraction(254, 10), "po": Fraction(254, 10)}
_YARDS = {"yd": Fraction(9144, 10), "vg": Fraction(9144, 10)}
_SIGNS = {"½": "1/2", "¼": "1/4", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8"}
_RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉⁄", "01234567890123456789/")
_NUMBER = r"(?:\d+ )?\d+/\d+|\d+(?:[.,]\d+)?"
_LENGTH = rf"({_NUMBER}) ?(mm|cm|m|in|Zoll|pulg\.|po|yd|vg)"
_PAIR = re.compile(rf"(?<![\d.,/]){_LENGTH}(?![\w²]) ?\({_LENGTH}(?![\w²])\)")
_ALONE = re.compile(rf"(?<![\d.,/]){_LENGTH}(?![\w²])")
_STACKED = re.compile(r"<td[^>]*>([^<>]+)<small>([^<>]+)</small>")


class Pair(NamedTuple):
    """One length as it is printed in both systems, exact mm of what each says; `bought`: cloth, in metres and yards,
    both of which are rounded up."""

    metric: Fraction
    english: Fraction
    said: str
    bought: bool = False

    def first(self, system: System) -> Fraction:
        return self.metric if system == "cm" else self.english

    def second(self, system: System) -> Fraction:
        return self.english if system == "cm" else self.metric


@cache  # the same texts stand in many pictures and booklets
def plain(text: str) -> str:
    """Text with its fractions and blanks as typed on a keyboard."""
    text = re.sub(r"[\u00a0\u202f\u2009]", " ", unescape(text))
    text = re.sub(r"([⁰¹²³⁴⁵⁶⁷⁸⁹]+⁄[₀₁₂₃₄₅₆₇₈₉]+)", lambda found: " " + found[1].translate(_RAISED), text)
    for sign, typed in _SIGNS.items():
        text = re.sub(rf"(?<=\d){sign}", f" {typed}", text).replace(sign, typed)
    return re.sub(r" +", " ", text)


def number(text: str) -> Fraction:
    """'1 1/2', '5/8', '2,5' as a number."""
    return sum((Fraction(part.replace(",", ".")) for part in text.split()), Fraction(0))


def _mm(amount: str, unit: str) -> tuple[Fraction, str]:
    for kind, units in (("metric", _METRIC), ("english", _ENGLISH), ("yards", _YARDS)):
        if unit in units:
            return number(amount) * units[unit], kind
    raise AssertionError(unit)


def length_of(text: str) -> tuple[Fraction, str]:
    """'1.5 cm' as (15, "metric"), '5/8 in' as (127/8, "english")."""
    ((amount, unit),) = _ALONE.findall(text)
    return _mm(amount, unit)


@lru_cache(maxsize=2)  # of one page several things are asked in turn
def pairs(html: str) -> tuple[Pair, ...]:
    """Every length that a page says in both systems: in its text, its pictures, its alternative texts and, one number
    over the other, in its charts."""
    html = re.sub(r"<(style|script)\b.*?</\1>", "", html, flags=re.DOTALL)
    found = []
    said = re.findall(r'\b(?:aria-label|alt)="([^"]*)"', html)
    for text in map(plain, [*said, re.sub(r"<[^>]*>", "\n", html)]):
        for one, unit, two, other in _PAIR.findall(text):
            (a, kind), (b, second) = _mm(one, unit), _mm(two, other)
            if {kind, second} not in ({"metric", "english"}, {"metric", "yards"}):
                continue
            metric, english = (a, b) if kind == "metric" else (b, a)
            found.append(Pair(metric, english, f"{one} {unit} ({two} {other})", "yards" in (kind, second)))
    for one, two in _STACKED.findall(html):
        a, b = plain(one), plain(two)
        (x, kind), (y, second) = (_mm(*got[0]) if (got := _ALONE.findall(t)) else (Fraction(0), "") for t in (a, b))
        if kind and second:
            metric, english = (x, y) if kind == "metric" else (y, x)
            found.append(Pair(metric, english, f"{a} over {b}", True))
        elif re.fullmatch(_NUMBER, a) and re.fullmatch(_NUMBER, b):
            x, y = number(a), number(b)
            metric, english = (x * 10, y * Fraction(254, 10)) if x > y else (y * 10, x * Fraction(254, 10))
            found.append(Pair(metric, english, f"{a} over {b}"))
    return tuple(found)


def lines(html: str) -> list[str]:
    """Every line of a page's texts."""
    html = re.sub(r"<(style|script)\b.*?</\1>", "", html, flags=re.DOTALL)
    said = re.findall(r'\b(?:aria-label|alt)="([^"]*)"', html)
    return [line.strip() for text in [*said, re.sub(r"<[^>]*>", "\n", html)] for line in plain(text).splitlines()]


def units_in(text: str) -> set[str]:
    """The signs of the units of every length that a text names."""
    return {unit for _, unit in _ALONE.findall(plain(re.sub(r"<[^>]*>", "\n", text)))}


def read_two_ways(found: Iterable[Pair], own: System) -> dict[Fraction, set[str]]:
    """Lengths of the lesson's `own` system that stand with two lengths of the other. Cloth to buy is left out: 1.3 m
    and 1 3/8 yd are two purchases."""
    with_it: dict[Fraction, dict[Fraction, str]] = defaultdict(dict)
    for pair in found:
        if not pair.bought:
            with_it[pair.first(own)][pair.second(own)] = pair.said
    return {length: set(said.values()) for length, said in with_it.items() if len(said) > 1}


def far_off(found: Iterable[Pair]) -> set[str]:
    """Pairs whose two lengths differ by more than 1 mm and more than 3 in a hundred. Cloth to buy differs by what it is
    rounded up to: less than an eighth of a yard."""
    far = set()
    for pair in found:
        off = abs(pair.metric - pair.english)
        if off > (Fraction(1143, 10) if pair.bought else max(Fraction(1), pair.metric * 3 / 100)):
            far.add(pair.said)
    return far
