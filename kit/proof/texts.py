"""The lesson's words and lists: placeholders that stand for nothing, notions that are missing."""

from __future__ import annotations

from kit.errors import KitError, nearest
from kit.language import SOURCE, language, say, says, speaking
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.placeholder import names
from kit.proof.finding import Finding
from kit.sewing.told import strung


def _said(need: str) -> str:
    """What the sewing needs, as people say it."""
    key = f"proof.need_{need}"
    return say(key) if says(key) else need.replace("_", " ")


def named_by(need: str) -> tuple[str, ...]:
    """Words by which a list of notions is taken to name that need, in the spoken language and in the source's: a
    lesson's own words may be in either."""
    found: list[str] = []
    for code in dict.fromkeys((SOURCE, language())):
        with speaking(code):
            key = f"proof.listed_{need}"
            found += say(key).lower().split("|") if says(key) else [_said(need).lower()]
    return tuple(word.strip() for word in found)


def placeholders(pattern: Pattern) -> list[Finding]:
    """Braces in the teacher's words that name no value of the step."""
    found: list[Finding] = []
    records: tuple[StepRecord | SewRecord, ...] = (*pattern.steps, *pattern.sewing)
    for record in records:
        known = {value[0] for value in record.values}
        where = say("proof.where_step_alone", step=record.title)
        try:
            unknown = [name for name in names(record.text) if name not in known]
        except KitError as error:
            found.append(Finding("brace", "error", error.what, where, do=error.do, step=record.key))
            continue
        found += [
            Finding(
                "placeholder",
                "error",
                say("proof.placeholder", name=f"{{{name}}}"),
                where,
                do=_known(name, known),
                step=record.key,
            )
            for name in unknown
        ]
    return found


def _known(name: str, known: set[str]) -> str:
    """The nearest known name, else all of them."""
    close = nearest(name, known)
    if close:
        return say("proof.placeholder_near", name=close)
    return say("proof.placeholder_known", names=strung(sorted(known))) if known else say("proof.placeholder_none")


def start(pattern: Pattern) -> list[Finding]:
    """What must be known of the block or traced top the lesson starts from."""
    return [Finding("start", "note", str(text), say("proof.where_start")) for text in pattern.lesson.start_notes]


def notions(pattern: Pattern) -> list[Finding]:
    """Things the sewing uses up that the lesson's notions do not list, and things listed for nothing."""
    listed = " ".join(pattern.lesson.notions).lower()
    wanted = {need for record in pattern.sewing for operation in record.operations for need in operation.notions}
    if any(piece.cut.interfacing or piece.cut.cloth == "interfacing" for piece in pattern.pieces):
        wanted.add("interfacing")
    found = [
        Finding(
            "notion_missing",
            "warning",
            say("proof.notion_missing", need=_said(need)),
            say("proof.where_notions"),
            do=say("proof.notion_missing_do", need=_said(need)),
        )
        for need in sorted(wanted)
        if not any(word in listed for word in named_by(need))
    ]
    if pattern.sewing:
        found += _spare(pattern, wanted)
    return found


def _spare(pattern: Pattern, wanted: set[str]) -> list[Finding]:
    """Notions that are listed and that no step uses, nor any of its tools."""
    tools = {tool for record in pattern.sewing for operation in record.operations for tool in operation.tools}
    used = {word for need in wanted for word in named_by(need)} | {tool.replace("_", " ") for tool in tools}
    if language() != SOURCE:
        used |= {say(f"tool.{tool}").lower() for tool in tools}
    return [
        Finding(
            "notion_spare",
            "warning",
            say("proof.notion_spare", notion=text),
            say("proof.where_notions"),
            do=say("proof.notion_spare_do"),
        )
        for text in pattern.lesson.notions
        if not any(word in text.lower() for word in used)
    ]
