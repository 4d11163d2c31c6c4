"""A teacher's own words with live values: `{sleeve_length}`, `{hem:inch}`, `{overlap:percent}`."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from kit.errors import KitError, near
from kit.placeholder import REFERENCES, Placeholder, fill
from kit.units import System, both, percent, plain, show

FORMATS = {
    "length": ("cm", "inch", "allowance", "finished"),
    "share": ("percent", "number"),
    "count": ("number",),
}


def fill_words(
    text: str,
    values: Sequence[tuple[str, float, str]],
    system: System = "cm",
    refer: Callable[[Placeholder], str] | None = None,
) -> str:
    """`text` with its placeholders replaced. `values` are (name, value, kind): a length is in mm and shown in
    both systems, `system` first, or in one ({x:cm}, {x:inch}), or rounded as an {x:allowance} or a {x:finished}
    measurement; a share (0..1) as percent or {x:number}; a count as a whole number. A reference {x:step} or {x:piece}
    is said by `refer`, else by its name. Plain text out, nothing escaped. Raises `KitError` for an unknown name or
    format, or a brace left open."""
    return fill(text, lambda found: worded(found, values, system, refer))


def worded(
    found: Placeholder,
    values: Sequence[tuple[str, float, str]],
    system: System = "cm",
    refer: Callable[[Placeholder], str] | None = None,
) -> str:
    """What stands for one placeholder, as `fill_words` says it."""
    if found.format in REFERENCES:
        return refer(found) if refer else found.name.replace("_", " ")
    known = {name: (float(value), kind) for name, value, kind in values}
    if found.name not in known:
        raise KitError(f"the text names {{{found.name}}}, which this step does not know.", do=near(found.name, known))
    value, kind = known[found.name]
    if found.format and found.format not in FORMATS.get(kind, ()):
        raise KitError(
            f"{{{found.name}:{found.format}}}: a {kind} cannot be shown as '{found.format}'.",
            do=near(found.format, FORMATS.get(kind, ())),
        )
    return _shown(value, kind, found.format, system)


def _shown(value: float, kind: str, style: str, system: System) -> str:
    if kind == "share":
        return plain(value, 2) if style == "number" else percent(value, 1)
    if kind == "count":
        return f"{round(value)}"
    if style == "cm":
        return show(value, "cm")
    if style == "inch":
        return show(value, "inch")
    if style == "allowance":
        return both(value, system, "allowance")
    if style == "finished":
        return both(value, system, "finished")
    return both(value, system)
