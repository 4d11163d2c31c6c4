"""The booklet's letters: where their files lie, and how many lines a text takes.

The faces are Source Sans Pro and Source Serif Pro (SIL Open Font License), which travel as packages, so that a page
breaks the same way on every machine; DejaVu, which travels with matplotlib, has the signs they lack.
"""

from __future__ import annotations

import re
from functools import lru_cache
from pathlib import Path

import font_source_sans_pro
import font_source_serif_pro
from PIL import ImageFont

from kit.resources import sign_letters

SANS, SERIF, SIGNS = "Booklet Sans", "Booklet Serif", "Booklet Signs"
_SANS = Path(font_source_sans_pro.__file__).parent / "files"
_SERIF = Path(font_source_serif_pro.__file__).parent / "files"
_SIGNS = sign_letters()

# (family, weight, style, file)
FACES: tuple[tuple[str, int, str, Path], ...] = (
    (SANS, 400, "normal", _SANS / "SourceSansPro-Regular.ttf"),
    (SANS, 400, "italic", _SANS / "SourceSansPro-It.ttf"),
    (SANS, 600, "normal", _SANS / "SourceSansPro-Semibold.ttf"),
    (SANS, 600, "italic", _SANS / "SourceSansPro-SemiboldIt.ttf"),
    (SANS, 700, "normal", _SANS / "SourceSansPro-Bold.ttf"),
    (SANS, 700, "italic", _SANS / "SourceSansPro-BoldIt.ttf"),
    (SERIF, 400, "normal", _SERIF / "SourceSerifPro-Regular.ttf"),
    (SERIF, 400, "italic", _SERIF / "SourceSerifPro-It.ttf"),
    (SERIF, 600, "normal", _SERIF / "SourceSerifPro-Semibold.ttf"),
    (SERIF, 700, "normal", _SERIF / "SourceSerifPro-Bold.ttf"),
    (SIGNS, 400, "normal", _SIGNS / "DejaVuSans.ttf"),
)

_TRIAL = 100  # px at which widths are measured


@lru_cache(maxsize=4)
def _font(path: Path) -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(str(path), _TRIAL)


@lru_cache(maxsize=20000)
def _width(word: str, path: Path) -> float:
    """Width of `word` in ems."""
    return float(_font(path).getlength(word)) / _TRIAL


def lines(text: str, measure: float, size: float, face: str = SANS) -> int:
    """How many lines `text` takes in a column of `measure` mm, set in `size` pt, broken at spaces."""
    path = next(file for family, weight, style, file in FACES if (family, weight, style) == (face, 400, "normal"))
    em = size * 25.4 / 72
    space = _width(" ", path) * em
    count, used = 0, measure + 1.0
    for word in re.split(r"[ \n\t]+", text.strip()):
        wide = _width(word, path) * em
        if used + space + wide > measure:
            count, used = count + 1, wide
        else:
            used += space + wide
    return count
