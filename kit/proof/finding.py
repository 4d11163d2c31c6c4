"""A finding: a diagnostic of a pattern."""

from __future__ import annotations

from collections.abc import Iterable

from kit.diagnostic import Diagnostic

Finding = Diagnostic
"""What the proof has to say of a pattern; see `kit.diagnostic`."""


def failed(findings: Iterable[Diagnostic]) -> bool:
    """Whether any finding is an error."""
    return any(finding.level == "error" for finding in findings)
