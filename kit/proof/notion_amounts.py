"""How much the sewing uses up of what is bought by the piece or by length, against the lesson's list of notions.

A list is read as its author wrote it: "2 buttons, 18 mm" is two of them, "zip, 18 cm" one of that length, "1.5 m of
bias binding, 2 cm wide" so long. Where no number or no length stands, nothing is compared; a length under 10 cm is
taken for a width.
"""

from __future__ import annotations

import re
from collections.abc import Iterator

from kit.diagnostic import Diagnostic, Message, measured, message
from kit.lesson.pattern import Pattern
from kit.sewing.order import operations
from kit.wording.needs import named_by, need_told
from kit.wording.notion_sizes import lengths_in, without_sizes

_WIDTH = 100.0  # mm
_ALIKE = 5.0  # mm by which a zip bought may differ: its teeth end a little before its tape
_ZIPS = ("zip", "invisible_zip")
_NUMBER = re.compile(r"(?<![\w.,/])\d+(?![\w.,/])")


def notion_amounts(pattern: Pattern) -> list[Diagnostic]:
    """Notions listed in another number or length than the sewing uses up."""
    found: list[Diagnostic] = []
    used: dict[str, list[tuple[float, str]]] = {}
    for _, operation in operations(pattern):
        for need, amount in operation.notion_amounts(pattern).items():
            used.setdefault(need, []).append(amount)
    for need, amounts in sorted(used.items()):
        texts = [text for text in pattern.lesson.notions if any(word in text.lower() for word in named_by(need))]
        whole = sum(amount for amount, _ in amounts)
        if amounts[0][1] == "count":
            found += _counted(need, round(whole), texts)
        elif need in _ZIPS:
            found += _each(need, [amount for amount, _ in amounts], texts)
        else:
            found += _long_enough(need, whole, texts)
    return found


def _counted(need: str, wanted: int, texts: list[str]) -> Iterator[Diagnostic]:
    numbers = [int(number[0]) for text in texts if (number := _NUMBER.search(without_sizes(text)))]
    if numbers and len(numbers) == len(texts) and sum(numbers) != wanted:
        yield _finding(
            "notion_count",
            message("proof.notion_count", need=need_told(need), wanted=wanted, listed=sum(numbers)),
            message("proof.notion_count_do", need=need_told(need), wanted=wanted),
        )


def _each(need: str, wanted: list[float], texts: list[str]) -> Iterator[Diagnostic]:
    """Zips are set in whole: each has its own length."""
    listed = [length for text in texts for length in lengths_in(text) if length >= _WIDTH]
    for length in wanted if listed else ():
        nearest = min(listed, key=lambda each: abs(each - length))
        if abs(nearest - length) > _ALIKE:
            yield _length(need, length, nearest)


def _long_enough(need: str, wanted: float, texts: list[str]) -> Iterator[Diagnostic]:
    listed = [length for text in texts for length in lengths_in(text) if length >= _WIDTH]
    if listed and sum(listed) < wanted - 1.0:
        yield _length(need, wanted, sum(listed))


def _length(need: str, wanted: float, listed: float) -> Diagnostic:
    says = message("proof.notion_length", need=need_told(need), wanted=measured(wanted), listed=measured(listed))
    return _finding("notion_length", says, message("proof.notion_length_do", wanted=measured(wanted)))


def _finding(code: str, says: Message, do: Message) -> Diagnostic:
    return Diagnostic(code, "warning", says, message("proof.where_notions"), can=do)
