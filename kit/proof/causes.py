"""Which parameters a finding depends on, and which move brought it."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from kit.lesson.pattern import Pattern
from kit.lesson.steps import Entry
from kit.proof.finding import Finding

Key = tuple[str, str, str, str]
_WORSE = 0.5  # mm by which a finding must grow to count as brought again


def parameters_of(
    finding: Finding, pattern: Pattern, entries: Sequence[Entry], names: Iterable[str]
) -> tuple[str, ...]:
    """The parameters among `names` that the step of a finding uses, or the steps that drew its edge; where it names
    only a piece, those of every step that drew on it. In the order of `names`."""
    uses = {entry.name: entry.uses for entry in entries}
    found = set(uses.get(finding.step, ()))
    drew = [
        record.key
        for record in pattern.steps
        if any(piece == finding.piece and (edge == finding.edge or not finding.edge) for piece, edge, _ in record.new)
    ]
    if finding.piece and (finding.edge or not finding.step):
        for key in drew:
            found |= set(uses.get(key, ()))
    return tuple(name for name in names if name in found)


class Moves:
    """Remembers which values were moved when a finding first came."""

    def __init__(self) -> None:
        self._before: dict[Key, float] | None = None
        self._values: Mapping[str, float] = {}
        self._brought: dict[Key, tuple[str, ...]] = {}

    def note(self, findings: Sequence[Finding], values: Mapping[str, float]) -> None:
        """The proof found these for these values."""
        now = {_key(finding): finding.amount or 0.0 for finding in findings if finding.level != "note"}
        moved = tuple(name for name in values if name in self._values and values[name] != self._values[name])
        if self._before is not None and moved:
            for key, amount in now.items():
                if key not in self._before or amount > self._before[key] + _WORSE:
                    self._brought[key] = moved
        self._brought = {key: names for key, names in self._brought.items() if key in now}
        self._before, self._values = now, dict(values)

    def brought(self, finding: Finding) -> tuple[str, ...]:
        """The parameters whose move brought it; none for one that was there from the start."""
        return self._brought.get(_key(finding), ())


def _key(finding: Finding) -> Key:
    return finding.code, finding.step, finding.piece, finding.edge
