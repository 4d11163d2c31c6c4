"""What sewing uses up, as people say it and as lists of notions write it."""

from __future__ import annotations

from kit.diagnostic import Message, message
from kit.language import SOURCE, language, say, says, speaking


def need_told(need: str) -> Message:
    """What the sewing needs, within a message. `KeyError` for a need that no catalogue has a word for."""
    for key in (f"proof.need_{need}", f"notion.{need}"):
        if says(key):
            return message(key)
    raise KeyError(need)


def need_said(need: str) -> str:
    """What the sewing needs, as people say it."""
    return str(need_told(need))


def named_by(need: str) -> tuple[str, ...]:
    """Words by which a list of notions is taken to name that need, in the spoken language and in the source's: a
    lesson's own words may be in either."""
    found: list[str] = []
    for code in dict.fromkeys((SOURCE, language())):
        with speaking(code):
            key = f"proof.listed_{need}"
            found += say(key).lower().split("|") if says(key) else [need_said(need).lower()]
    return tuple(word.strip() for word in found)


def listed_as(tool: str) -> tuple[str, ...]:
    """Words by which a list of notions is taken to name that tool, in the spoken language and in the source's."""
    found: list[str] = []
    for code in dict.fromkeys((SOURCE, language())):
        with speaking(code):
            key = f"tool_listed.{tool}"
            found += say(key).lower().split("|") if says(key) else []
    return tuple(word.strip() for word in found)


def tools_said(tools: set[str]) -> set[str]:
    """Tools as the spoken language and the source call them, in small letters."""
    found = {tool.replace("_", " ") for tool in tools}
    return found if language() == SOURCE else found | {say(f"tool.{tool}").lower() for tool in tools}
