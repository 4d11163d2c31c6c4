"""What the proof found in a lesson, and what mends it, as a command prints it."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import TYPE_CHECKING

from kit.diagnostic import Diagnostic, reading

if TYPE_CHECKING:
    from kit.booklet.handover import MendingAdvice
    from kit.lesson.pattern import Pattern


def print_findings(findings: Sequence[Diagnostic], pattern: Pattern) -> None:
    """A line for each finding, in the units of its pattern."""
    from kit.prose.readings import ruling_of
    from kit.rulers import ruled

    with reading(pattern.lesson.units), ruled(ruling_of(pattern)):
        for finding in findings:
            where = f"{finding.where}: " if finding.where else ""
            text = re.sub(r"\s+", " ", f"{where}{finding.what} {finding.do}").strip()
            print(f"{finding.level}: {text}")


def print_advice(found: Sequence[MendingAdvice]) -> None:
    """What mends the lesson; for its own values also what is wrong, which nothing else tells."""
    from kit.language import say
    from kit.proof.remedy import heading

    for advice in found:
        if advice.own:
            print(say("remedy.own_values"))
            for trouble in advice.trouble:
                print(f"error: {trouble}")
        if advice.remedies:
            print(heading(advice.remedies))
        for remedy in advice.remedies:
            print(say("remedy.line", remedy=str(remedy)))
