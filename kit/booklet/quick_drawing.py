"""Drawings written into a PDF with less to do than WeasyPrint makes of them, and looking the same or better.

A drawing's paths are in the words of SVG path data (SVG 2, 9.3), a PDF's in operators of its own (ISO 32000-1, 8.5.2):
for straight lines and curves with places reckoned from one origin each word has its operator, and the numbers are the
same. WeasyPrint reads and writes each number by itself. What is told otherwise (arcs, places reckoned from the last
one, other units, markers at corners) it draws as before.

A text it lays out letter by letter, since each letter of an SVG text may have a place of its own. Where none has, the
whole text is laid out at once: eight times less to do, and letters that go together are set so (kerning).
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from functools import lru_cache
from typing import Any

_NUMBER = r"-?(?:\d+(?:\.\d+)?|\.\d+)"
_WORD = re.compile(rf"[MLHVCZ]|{_NUMBER}")
_BETWEEN = " \t\r\n\f,"
_MARKERS = ("marker", "marker-start", "marker-mid", "marker-end")
_SPACED = ("dx", "dy", "rotate", "letter-spacing", "textLength")
_PLACED = ("x", "y")
_LIST = re.compile(r"\S[\s,]+\S")  # a place for each of several letters
_TAKES = {"M": (2, "m"), "L": (2, "l"), "C": (6, "c")}


_TRIED = ("68.", "70.")
"""The versions of WeasyPrint whose inside this leans on. Another draws by itself: slower, and nothing can be lost."""


def quick_drawing() -> None:
    """Have WeasyPrint draw so from now on, where it is a version that this was tried with."""
    from weasyprint import __version__, svg

    if not __version__.startswith(_TRIED):
        return
    tags = getattr(svg, "TAGS", {})
    for name, quick in (("path", _Path), ("text", _Text)):
        if name in tags and not isinstance(tags[name], _Quick):
            tags[name] = quick(tags[name])


class _Quick:
    """Stands for a function of WeasyPrint's, which knows its functions by what they equal."""

    def __init__(self, slow: Callable[[Any, Any, Any], None]) -> None:
        self.slow = slow

    def __eq__(self, other: object) -> bool:
        return other is self or other is self.slow

    def __hash__(self) -> int:
        return hash(self.slow)


class _Path(_Quick):
    def __call__(self, drawing: Any, node: Any, font_size: Any) -> None:
        operators = path_operators(node.get("d", ""))
        if operators is None or any(node.get(name) for name in _MARKERS):
            self.slow(drawing, node, font_size)
        elif operators:
            drawing.stream.stream.append(operators)


class _Text(_Quick):
    def __call__(self, drawing: Any, node: Any, font_size: Any) -> None:
        each = any(node.get(name) for name in _SPACED) or any(_LIST.search(node.get(name) or "") for name in _PLACED)
        self.slow(drawing, node if each or not node.text else _Undivided(node), font_size)


class _Undivided:
    """An element that is WeasyPrint's in all but its text."""

    __slots__ = ("_node",)

    def __init__(self, node: Any) -> None:
        object.__setattr__(self, "_node", node)

    @property
    def text(self) -> str:
        return _AtOnce(self._node.text)

    def __getattr__(self, name: str) -> Any:
        return getattr(self._node, name)

    def __setattr__(self, name: str, value: Any) -> None:
        setattr(self._node, name, value)


class _AtOnce(str):
    """A text that is taken as one letter by who goes through its letters."""

    __slots__ = ()

    def __iter__(self) -> Iterator[str]:
        yield str(self)


@lru_cache(maxsize=1024)
def path_operators(data: str) -> bytes | None:
    """SVG path data as PDF operators, None for what must be reckoned first. A cloth and its pattern are one path.

    >>> path_operators("M0 0L10-5.5H20V3C1,2 3,4 5,6Z")
    b'0 0 m 10 -5.5 l 20 -5.5 l 20 3 l 1 2 3 4 5 6 c h'
    >>> path_operators("M0 0h5"), path_operators("M0 0L1")
    (None, None)
    """
    if _WORD.sub("", data).strip(_BETWEEN):  # an arc, a small letter, an exponent
        return None
    out: list[str] = []
    x = y = begin_x = begin_y = "0"
    last, word, numbers = "", "", []
    for token in (*_WORD.findall(data), "."):
        if token[-1].isdigit():
            numbers.append(token)
            continue
        if word in ("H", "V"):
            if not numbers:
                return None
            for number in numbers:
                x, y = (number, y) if word == "H" else (x, number)
                out.append(f"{x} {y} l")
        elif word == "Z":
            if numbers or last in "MZ":  # it closes nothing
                return None
            out.append("h")
            x, y = begin_x, begin_y
        elif word:
            takes, operator = _TAKES[word]
            if not numbers or len(numbers) % takes:
                return None
            for at in range(0, len(numbers), takes):
                out.append(f"{' '.join(numbers[at : at + takes])} {operator}")
                operator = "l" if word == "M" else operator  # places after the first of a beginning are lines
            x, y = numbers[-2:]
            if word == "M":
                begin_x, begin_y = numbers[:2]
        elif numbers:
            return None
        last, word, numbers = word, token, []
    return " ".join(out).encode("ascii") if not out or out[0].endswith(" m") else None
