"""The lesson's words and lists: placeholders that stand for nothing, notions that are missing."""

from __future__ import annotations

from kit.errors import KitError, near
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.placeholder import names
from kit.proof.finding import Finding

_WORDS = {
    "thread": ("thread",),
    "interfacing": ("interfacing",),
    "sewn_in_interfacing": ("interfacing",),
    "buttons": ("button",),
    "snaps": ("snap",),
    "hooks": ("hook",),
    "eyelets": ("eyelet",),
}


def _said(need: str) -> str:
    return need.replace("_", " ")


def placeholders(pattern: Pattern) -> list[Finding]:
    """Braces in the teacher's words that name no value of the step."""
    found: list[Finding] = []
    records: tuple[StepRecord | SewRecord, ...] = (*pattern.steps, *pattern.sewing)
    for record in records:
        known = {value[0] for value in record.values}
        try:
            unknown = [name for name in names(record.text) if name not in known]
        except KitError as error:
            found.append(Finding("brace", "error", error.what, f"step '{record.title}'", do=error.do, step=record.key))
            continue
        found += [
            Finding(
                "placeholder",
                "error",
                f"the text names {{{name}}}, which the step does not know.",
                f"step '{record.title}'",
                do=near(name, known),
                step=record.key,
            )
            for name in unknown
        ]
    return found


def start(pattern: Pattern) -> list[Finding]:
    """What must be known of the block or traced top the lesson starts from."""
    return [Finding("start", "note", text, "Start") for text in pattern.lesson.start_notes]


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
            f"the sewing needs {_said(need)}, which the list of notions does not name.",
            "Notions",
            do=f"Add {_said(need)} to the lesson's notions.",
        )
        for need in sorted(wanted)
        if not any(word in listed for word in _WORDS.get(need, (_said(need),)))
    ]
    if pattern.sewing:
        found += _spare(pattern, wanted)
    return found


def _spare(pattern: Pattern, wanted: set[str]) -> list[Finding]:
    """Notions that are listed and that no step uses, nor any of its tools."""
    tools = {tool for record in pattern.sewing for operation in record.operations for tool in operation.tools}
    used = {word for need in wanted for word in _WORDS.get(need, (_said(need),))} | {_said(tool) for tool in tools}
    return [
        Finding(
            "notion_spare",
            "warning",
            f"the list of notions names '{text}', but no sewing step uses it.",
            "Notions",
            do="Take it off the list, or add the step that needs it.",
        )
        for text in pattern.lesson.notions
        if not any(word in text.lower() for word in used)
    ]
