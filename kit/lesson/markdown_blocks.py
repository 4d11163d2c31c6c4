"""Markdown as blocks, each said by itself: translated block by block, and marked where it has no translation."""

from __future__ import annotations

import re
from collections.abc import Callable

_FENCE = re.compile(r" {0,3}(`{3,}(?=[^`]*$)|~{3,})")
_HEADING = re.compile(r"(\s{0,3}#{1,6}\s+)(\S.*?)(?:\s+#+)?\s*")

Speak = Callable[[str, str, bool], str]
"""Says a text: the text, where it stands, and whether it is markdown with placeholders."""


def split_blocks(source: str) -> list[str]:
    """Markdown as blocks and what lies between them, by turns: [block, blank lines, block, ...]. Blocks are split at
    blank lines outside fenced code; joined, they are the source."""
    parts = [""]
    fence = ""
    for line in source.splitlines(keepends=True):
        blank = not line.strip() and not fence
        if blank == (len(parts) % 2 == 1):  # a block is an even part, what lies between an odd one
            parts.append("")
        parts[-1] += line
        found = _FENCE.match(line.rstrip("\n"))
        if fence:
            closing = line.strip()
            fence = "" if closing.startswith(fence) and not closing.strip(fence[0]) else fence
        elif found:
            fence = found[1]
    return parts


def unfenced(source: str) -> str:
    """Markdown without its fenced blocks."""
    return "\n\n".join(block for block in split_blocks(source)[::2] if not _FENCE.match(block.split("\n")[0]))


def blocks_said(source: str, where: str, speak: Speak) -> str:
    """Markdown with every block said; of a heading, what stands after its marks."""
    made = []
    for at, part in enumerate(split_blocks(source)):
        body = part.rstrip()
        if at % 2 or not any(letter.isalpha() for letter in body):
            made.append(part)
            continue
        heading = _HEADING.fullmatch(body) if "\n" not in body else None
        if heading:
            made.append(heading[1] + speak(heading[2], where, True) + part[len(body) :])
        else:
            made.append(speak(body, where, True) + part[len(body) :])
    return "".join(made)


def marked(text: str, mark: str, markdown: bool) -> str:
    """`text` with a visible mark at its end, where markdown shows it."""
    if not markdown:
        return text + mark
    last = text.rstrip().split("\n")[-1]
    if _FENCE.match(last) or last.rstrip().endswith("|") or re.fullmatch(r"\s*(=+|-+)\s*", last) or last[:4] == "    ":
        return f"{text.rstrip()}\n\n{mark.strip()}"
    return text.rstrip() + mark
