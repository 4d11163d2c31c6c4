"""The reference in plain text: what `lessonkit help` prints and `lesson.help(...)` shows."""

from __future__ import annotations

import inspect
import textwrap
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

from kit.body.measures import MEASUREMENTS
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.reference.blocks import BLOCKS, FOR, block_text
from kit.reference.entry import VerbEntry, entries, groups
from kit.reference.lookup import look_up, offered_names
from kit.reference.measurements import WORDS, measurements_text
from kit.reference.verb_help import Verb, in_full

_WIDE = 92
_IN_FULL = 2
"""So many things of a lesson or the kit are shown in full; of more, a line each."""
_REFUSALS = Path(__file__).parent / "data" / "refusals.md"


def help_on(topic: str) -> str:
    """What is known of a topic, as text; without one, every verb by subject. `KitError` with the near ones for one that
    is not known."""
    if not topic.strip():
        return overview()
    if topic.strip() in ("refusals", "refusal"):
        return "\n".join(_wrapped(line) for line in _REFUSALS.read_text(encoding="utf-8").splitlines())
    asked = topic.strip().lower()
    if asked in MEASUREMENTS:
        return measurements_text(asked)
    if asked in WORDS:
        return "\n\n\n".join([measurements_text(), _offered_text("lesson.measurement", Lesson.measurement)])
    found = look_up(topic)
    parts = [entry_text(entry) for entry in found.entries]
    offered = found.offered or {}
    if len(offered) > _IN_FULL:
        parts.append("\n".join(f"  {name:24} {_line(one)}" for name, one in offered.items()))
    else:
        parts += [_offered_text(name, one) for name, one in offered.items()]
    wanted = [_wanted_text(words, keys) for words, keys in (found.wanted or {}).items()]
    if parts and wanted:
        wanted = [say("reference.also"), *wanted]
    return "\n\n\n".join(parts + (["\n\n".join(wanted)] if wanted else []))


def overview() -> str:
    """Every verb by subject, with a line about each."""
    parts = [_wrapped(say("reference.overview"))]
    every = entries()
    for part in ("drafting", "sewing"):
        for group in groups(part):
            lines = [f"  {key:24} {every[key].verb.line}" for key in group.keys]
            parts.append("\n".join([group.title, *lines]))
    return "\n\n".join(parts)


def entry_text(entry: VerbEntry) -> str:
    """One entry in full."""
    head = f"{entry.key}  ({say('reference.kind_' + entry.kind.replace(' ', '_'))})"
    parts = [head, in_full(entry.verb, entry.owner)]
    heading = "reference.shows" if entry.drafts else "reference.says"
    parts.append(_listed(say(heading), entry.says()))
    refuses = entry.refuses
    parts.append(_listed(say("reference.refuses"), refuses) if refuses else _wrapped(say("reference.refuses_nothing")))
    parts.append(_listed(say("reference.wanted"), entry.wanted_for))
    return "\n\n".join(part for part in parts if part)


def _offered_text(name: str, one: Callable[..., Any]) -> str:
    kind, _, word = name.partition(".")
    head = f"{name}  ({say('reference.kind_' + kind)})"
    if inspect.isfunction(one) and kind == "lesson":
        return f"{head}\n\n{in_full(Verb(word, one), kind)}"
    if word in BLOCKS:
        about = _wrapped(f"{FOR[word]}.") if word != "with_sleeve" else in_full(Verb(word, one), kind)
        return f"{head}\n\n{about}\n\n" + "\n".join(_hanging(line) for line in block_text(word).split("\n"))
    try:
        call = f"{word}{inspect.signature(one)}".replace("'", "")
    except (TypeError, ValueError):
        call = word
    return f"{head}\n\n{_wrapped(call)}\n\n{inspect.getdoc(one) or ''}".rstrip()


def _line(one: Callable[..., Any]) -> str:
    name = next((name for name, block in BLOCKS.items() if block is one), "")
    return FOR[name] if name else (inspect.getdoc(one) or "").split("\n")[0]


def _wanted_text(words: str, keys: Iterable[str]) -> str:
    every = entries()
    lines = [f"  {key:24} {every[key].verb.line if key in every else _line(offered_names()[key])}" for key in keys]
    return "\n".join([say("reference.several", topic=words), *lines])


def _listed(heading: str, texts: Iterable[str]) -> str:
    lines = [textwrap.fill(text, _WIDE, initial_indent="  - ", subsequent_indent="    ") for text in texts]
    return "\n".join([heading, *lines]) if lines else ""


def _hanging(line: str) -> str:
    return textwrap.fill(line, _WIDE, subsequent_indent="    " if line.startswith("  ") else "")


def _wrapped(text: str) -> str:
    return textwrap.fill(text, _WIDE, subsequent_indent="  " if text.startswith("- ") else "")
