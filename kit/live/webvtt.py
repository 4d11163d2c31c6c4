"""Chapters and captions as files that players of films read: WebVTT (https://www.w3.org/TR/webvtt1/, section 4)."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass

_CONTROL = re.compile("[\x00-\x1f\x7f]|[\ud800-\udfff]")


@dataclass(frozen=True)
class Cue:
    """`lines` of text shown from `start` to `end`, seconds from the start of the film; `key` names it."""

    start: float
    end: float
    lines: tuple[str, ...]
    key: str = ""


def webvtt(cues: Sequence[Cue]) -> str:
    """A WebVTT file of the `cues`, by their start. What would be no cue is left out: one without text, or one that
    does not end after it begins, in whole thousandths of a second.

    >>> print(webvtt([Cue(0, 2.5, ("Press <lightly> & let it cool",), "press")]))
    WEBVTT
    <BLANKLINE>
    press
    00:00:00.000 --> 00:00:02.500
    Press &lt;lightly&gt; &amp; let it cool
    <BLANKLINE>
    """
    blocks = ["WEBVTT"]
    for cue in sorted(cues, key=lambda cue: (cue.start, cue.end)):
        start, end = round(cue.start * 1000), round(cue.end * 1000)
        lines = [text for line in cue.lines if (text := _text(line))]
        if not lines or end <= start:
            continue
        head = [_text(cue.key)] if cue.key.strip() else []
        blocks.append("\n".join([*head, f"{_time(start)} --> {_time(end)}", *lines]))
    return "\n\n".join(blocks) + "\n"


def _time(ms: int) -> str:
    """A WebVTT timestamp, hours always told (two figures of them or more)."""
    return f"{ms // 3_600_000:02d}:{ms // 60_000 % 60:02d}:{ms // 1000 % 60:02d}.{ms % 1000:03d}"


def _text(line: str) -> str:
    """One line of cue text: no line ends, and nothing that reads as a tag, an entity or an arrow."""
    plain = " ".join(_CONTROL.sub(" ", line).split(" ")).strip()
    return plain.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
