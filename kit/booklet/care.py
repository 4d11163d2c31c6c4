"""How what was sewn is washed and pressed: the lesson's own words first, then what its cloth and fastenings ask for
(common practice, no source)."""

from __future__ import annotations

from kit.language import say
from kit.lesson.pattern import Pattern

_SHUT = {"zip", "invisible_zip", "hooks", "snaps", "buttons"}


def care(pattern: Pattern) -> tuple[str, ...]:
    """Sentences on keeping the garment; none for a lesson that sews nothing."""
    if not pattern.sewing:
        return ()
    used = {need for record in pattern.sewing for operation in record.operations for need in operation.notions}
    own = [pattern.lesson.care] if pattern.lesson.care else []
    found = [say("booklet.care_wash")]
    if used & _SHUT:
        found.append(say("booklet.care_shut"))
    if "interfacing" in used:
        found.append(say("booklet.care_fused"))
    if pattern.lesson.stretch or pattern.lesson.stretch_along:
        found.append(say("booklet.care_stretch"))
    return (*own, " ".join(found))
