"""A finding: a diagnostic of a pattern."""

from __future__ import annotations

from collections.abc import Iterable

from kit.diagnostic import Diagnostic

Finding = Diagnostic
"""What the proof has to say of a pattern; see `kit.diagnostic`."""


def failed(findings: Iterable[Diagnostic]) -> bool:
    """Whether any finding is an error.

    >>> from kit import bodice_block
    >>> from kit.lesson.lesson import Lesson
    >>> from kit.proof import prove
    >>> failed(prove(Lesson("Block", start=bodice_block).work()))
    True
    """
    return any(finding.level == "error" for finding in findings)
