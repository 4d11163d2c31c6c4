"""The lesson's words and lists: placeholders that stand for nothing, notions that are missing."""

from __future__ import annotations

import re
from dataclasses import replace

from kit.diagnostic import Diagnostic, Told, list_of, message
from kit.errors import KitError, nearest
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.placeholder import names
from kit.wording.needs import named_by, need_told, tools_said

_BRACED = re.compile(r"\{\w+(:\w+)?\}")


def placeholders(pattern: Pattern) -> list[Diagnostic]:
    """Braces in the teacher's words that name no value of the step."""
    found: list[Diagnostic] = []
    records: tuple[StepRecord | SewRecord, ...] = (*pattern.steps, *pattern.sewing)
    for record in records:
        known = {value[0] for value in record.values}
        where = message("proof.where_step_alone", step=record.title)
        try:
            unknown = [name for name in names(record.text) if name not in known]
        except KitError as error:
            found.append(replace(error.told, code="brace", at=where, step=record.key))
            continue
        found += [
            Diagnostic(
                "placeholder",
                "error",
                message("proof.placeholder", name=f"{{{name}}}"),
                where,
                can=_known(name, known),
                step=record.key,
            )
            for name in unknown
        ]
    return found


def _known(name: str, known: set[str]) -> Told:
    """The nearest known name, else all of them."""
    close = nearest(name, known)
    if close:
        return message("proof.placeholder_near", name=close)
    return (
        message("proof.placeholder_known", names=list_of(sorted(known), "string"))
        if known
        else message("proof.placeholder_none")
    )


def start(pattern: Pattern) -> list[Diagnostic]:
    """What must be known of the block or traced top the lesson starts from."""
    return [Diagnostic("start", "note", text, message("proof.where_start")) for text in pattern.lesson.start_notes]


def notions(pattern: Pattern) -> list[Diagnostic]:
    """Things the sewing uses up that the lesson's notions do not list, things listed for nothing, and names in braces,
    which the list prints as they are typed."""
    listed = " ".join(pattern.lesson.notions).lower()
    wanted = {need for record in pattern.sewing for operation in record.operations for need in operation.notions}
    if any(piece.cut.interfacing or piece.cut.cloth == "interfacing" for piece in pattern.pieces):
        wanted.add("interfacing")
    found = [
        Diagnostic(
            "notion_missing",
            "warning",
            message("proof.notion_missing", need=need_told(need)),
            message("proof.where_notions"),
            can=message("proof.notion_missing_do", need=need_told(need)),
        )
        for need in sorted(wanted)
        if not any(word in listed for word in named_by(need))
    ]
    found += [
        Diagnostic(
            "notion_braces",
            "warning",
            message("proof.notion_braces", notion=text),
            message("proof.where_notions"),
            can=message("proof.notion_braces_do"),
        )
        for text in pattern.lesson.notions
        if _BRACED.search(text)
    ]
    if pattern.sewing:
        found += _spare(pattern, wanted)
    return found


def _spare(pattern: Pattern, wanted: set[str]) -> list[Diagnostic]:
    """Notions that are listed and that no step uses, nor any of its tools."""
    tools = {tool for record in pattern.sewing for operation in record.operations for tool in operation.tools}
    used = {word for need in wanted for word in named_by(need)} | tools_said(tools)
    return [
        Diagnostic(
            "notion_spare",
            "warning",
            message("proof.notion_spare", notion=text),
            message("proof.where_notions"),
            can=message("proof.notion_spare_do"),
        )
        for text in pattern.lesson.notions
        if not any(word in text.lower() for word in used)
    ]
