"""A booklet's words without the search for places: for tests that read a page and do not look at its pictures.

Every text of a picture is written, whole, where the picture was asked to put it, so that all of them are on the page;
what a picture shows besides stays as it is, or is left out where its words alone are read (`words_alone`). Where texts
come to stand is tested in tests/picture.
"""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import replace

import pytest

import kit.booklet.pictures as pictures
from kit.picture.drawing import Dimension, Drawing, Label
from kit.picture.lettered import Growth, Lettered, WrittenText, drawn_box
from kit.picture.theme import THEME, Theme


def lettered(
    drawing: Drawing, width: float | None = 640.0, height: float | None = None, theme: Theme = THEME
) -> Lettered:
    """As `kit.picture.lettered.lettered`, every text where it was put."""
    x0, y0, x1, y1 = bounds = drawing.bounds or drawn_box(drawing)
    unit = max((x1 - x0) / (width or 1e9), (y1 - y0) / (height or 1e9), 1e-6)
    texts = []
    for number, item in enumerate(drawing.items):
        if isinstance(item, Label | Dimension):
            role = "measure" if isinstance(item, Dimension) else item.role
            at = item.end if isinstance(item, Dimension) else item.at
            em = theme.texts[role].size * unit
            texts.append(WrittenText(item.text, role, at.x, at.y, em, em, 0.0, em, number))
    return Lettered(drawing, bounds, unit, tuple(texts))


def words_of(
    drawing: Drawing, width: float | None = 640.0, height: float | None = None, theme: Theme = THEME
) -> Lettered:
    """As `lettered`, without a line, a fill or a dot."""
    bounds = drawing.bounds or drawn_box(drawing)
    texts = tuple(item for item in drawing.items if isinstance(item, Label | Dimension))
    return lettered(replace(drawing, items=texts, bounds=bounds), width, height, theme)


def growth_of(drawing: Drawing, width: float, height: float, theme: Theme = THEME) -> Growth:
    """As `kit.picture.lettered.growth_of`, its texts left out."""
    x0, y0, x1, y1 = drawing.bounds or drawn_box(drawing)
    return Growth(0.0, (y1 - y0) / max(x1 - x0, 1e-6))


def unplaced(patch: pytest.MonkeyPatch, words_alone: bool = False) -> None:
    """Booklets are composed without the search while `patch` holds."""
    patch.setattr(pictures, "lettered", words_of if words_alone else lettered)
    patch.setattr(pictures, "growth_of", growth_of)


@contextmanager
def texts_unplaced(words_alone: bool = False) -> Iterator[None]:
    with pytest.MonkeyPatch.context() as patch:
        unplaced(patch, words_alone)
        yield
