"""What a cell shows of an answer: a table with pictures where HTML is shown, the same in lines of text elsewhere."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Generic, TypeVar

Found = TypeVar("Found")


@dataclass(frozen=True)
class ShownAnswer(Generic[Found]):
    """`found` is the answer as data, `text` the same in lines, `html` with its tables and pictures, all of it escaped.

    >>> ShownAnswer(3, "three", "<p>three</p>")
    three
    """

    found: Found
    text: str
    html: str

    def __str__(self) -> str:
        return self.text

    def __repr__(self) -> str:
        return self.text

    def _repr_html_(self) -> str:
        return self.html
