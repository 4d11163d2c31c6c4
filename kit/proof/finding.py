"""A finding: one thing the proof has to say about a pattern."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from typing import Any, Literal

from kit.language import say

Level = Literal["error", "warning", "note"]


@dataclass(frozen=True)
class Finding:
    """`code` for machines; `what` is wrong, `where`, by how much (`amount` in mm, None where no length says
    it), what to `do`; `step`, `piece` and `edge` are names for finding the place."""

    code: str
    level: Level
    what: str
    where: str = ""
    amount: float | None = None
    do: str = ""
    step: str = ""
    piece: str = ""
    edge: str = ""

    def __str__(self) -> str:
        head = say("proof.at", where=self.where, what=self.what) if self.where else self.what
        return f"{head} {self.do}" if self.do else head

    def as_dict(self) -> dict[str, Any]:
        """For findings.json; amounts in mm to a hundredth."""
        found = asdict(self)
        if self.amount is not None:
            found["amount"] = round(self.amount, 2)
        return found


def failed(findings: tuple[Finding, ...]) -> bool:
    """Whether any finding is an error."""
    return any(finding.level == "error" for finding in findings)
