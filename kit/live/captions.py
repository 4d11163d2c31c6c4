"""What is to be read along a film: its chapters, and the words of each step while it is on show.

A caption has two lines at most and stays as long as it takes to read it without hurry; where a step is shown for less,
its captions share the time there is.
"""

from __future__ import annotations

import math
import re
import textwrap
from collections.abc import Mapping, Sequence
from itertools import pairwise

from kit.live.film import LEAST, Showing
from kit.live.webvtt import Cue
from kit.units import set_fractions

WIDE, LINES = 42, 2
"""Letters of a line and lines of a caption at most (common practice, no source)."""
PACE = 13.0
"""Letters read in a second without hurry (common practice, no source)."""
SHORTEST = 1.5
"""Seconds a caption stays at least, where there is so much time (common practice, no source)."""
_AMOUNT = re.compile(r"(?<=[\d½¼¾⅛⅜⅝⅞⁄₀-₉]) (?=[^\W\d]{1,5}\b)")
_BOTH = re.compile("(\N{NO-BREAK SPACE}[^\\W\\d]{1,5}\\.?) (?=\\([\\d½¼¾⅛⅜⅝⅞])")
_SENTENCE = re.compile(r"(?<=[.!?…])\s+(?=[^\sa-zäöüßàâçéèêëîïôûñáíóú([])")


def chapter_cues(marks: Mapping[str, float], titles: Mapping[str, str], opening: str, end: float) -> list[Cue]:
    """A chapter for each marked step, up to the next; the last goes on to the `end` of the film (s). With `opening`
    before the first where that does not begin at once. Steps of one moment share a chapter."""
    begun: dict[float, list[str]] = {}
    for at, key in sorted((at, key) for key, at in marks.items() if key in titles):
        begun.setdefault(at, []).append(key)
    if not begun:
        return []
    first = min(begun)
    found = [Cue(0.0, first, (opening,))] if first > 0 else []
    ends = [*list(begun)[1:], max(end, max(begun) + LEAST)]
    for (at, keys), until in zip(begun.items(), ends, strict=True):
        found.append(Cue(at, until, (" · ".join(titles[key] for key in keys),), keys[0]))
    return found


def spans(marks: Mapping[str, float], shown: Sequence[Showing], least: float = LEAST) -> list[Showing]:
    """When each marked step is on show, in order and one at a time. `shown` is what the clock says, of which showings
    of `least` seconds count; the first of a step begins at its mark, which may be put in by hand. A step whose end
    nobody noted stays until the next: its end is inf where none follows."""
    found: list[Showing] = []
    met: set[str] = set()
    for one in shown:
        if one.key not in marks or one.end - one.start < least - 1e-6:
            continue
        start = one.start if one.key in met else marks[one.key]
        met.add(one.key)
        found.append(Showing(one.key, start, one.end if one.end > start else math.inf))
    found += [Showing(key, at, math.inf) for key, at in marks.items() if key not in met]
    found.sort(key=lambda one: one.start)
    cut = [Showing(one.key, one.start, min(one.end, after.start)) for one, after in pairwise(found)]
    return [*cut, *found[-1:]]


def caption_cues(found: Sequence[Showing], words: Mapping[str, Sequence[str]]) -> list[Cue]:
    """Captions of what is on show: the `words` of each step, a text for each paragraph."""
    cues: list[Cue] = []
    for number, one in enumerate(found, 1):
        texts = [pair for text in words.get(one.key, ()) for pair in lines_of(text)]
        takes = [_taken(pair) for pair in texts]
        room = one.end - one.start
        k = min(1.0, room / sum(takes)) if takes else 1.0
        at = one.start
        for part, (pair, seconds) in enumerate(zip(texts, takes, strict=True), 1):
            cues.append(Cue(at, at + seconds * k, pair, f"{number}-{part}-{one.key}"))
            at += seconds * k
    return cues


def lasting(texts: Sequence[str]) -> float:
    """Seconds that it takes to read those texts as captions without hurry; spoken they take about as long."""
    return sum(_taken(pair) for text in texts for pair in lines_of(set_fractions(text)))


def _taken(lines: tuple[str, ...]) -> float:
    return max(SHORTEST, sum(map(len, lines)) / PACE)


def lines_of(text: str) -> list[tuple[str, ...]]:
    r"""`text` as captions: each sentence anew, in as few captions as hold it, their lines of like length.

    >>> lines_of("Pin the side seams. Stitch them from hem to armhole, 1.5 cm (5/8 in) from the edge.")
    [('Pin the side seams.',), ('Stitch them from hem to armhole,', '1.5\xa0cm\xa0(5/8\xa0in) from the edge.')]
    """
    found: list[tuple[str, ...]] = []
    for sentence in _SENTENCE.split(text.strip()):
        rows = len(_wrapped(sentence, WIDE))
        wide = WIDE
        while wide > 1 and rows and len(_wrapped(sentence, wide - 1)) == rows:
            wide -= 1
        lines = _wrapped(sentence, wide)
        found += [tuple(lines[i : i + LINES]) for i in range(0, len(lines), LINES)]
    return found


def held(text: str) -> str:
    """`text` in which no line breaks between an amount and its unit, nor between a length and the same in the other
    system."""
    return _BOTH.sub("\\1\N{NO-BREAK SPACE}", _AMOUNT.sub("\N{NO-BREAK SPACE}", text))


def _wrapped(text: str, wide: int) -> list[str]:
    """Lines of at most `wide` letters; a longer word stays whole."""
    return textwrap.wrap(held(text), wide, break_long_words=False, break_on_hyphens=False)
