"""A size between: one size of a chart above the waist and another below it, such as "W4/W6", or with a third at the
waist, "W4/W5/W6".

Two sizes meet halfway at the waist. What is measured above the waist is the first size's, what is measured below it the
last one's; the height belongs to neither and lies halfway. So the draft itself runs from one size into the other, its
curves true and its seams equal, which a line drawn by eye from one nested size to the next is not. (Common practice,
no source, that buyers blend sizes at the waist.)
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence

SIGN = "/"
"""What stands between the sizes."""

_BELOW = frozenset(
    {
        "hip_girth",
        "waist_to_hip",
        "thigh_girth",
        "knee_girth",
        "calf_girth",
        "ankle_girth",
        "heel_girth",
        "foot_girth",
        "foot_length",
        "body_rise",
        "total_crotch_length",
        "waist_height",
        "outside_leg_length",
        "inside_leg_length",
    }
)
_AT = frozenset({"waist_girth"})
_WHOLE = frozenset({"height"})


def parts(size: str, sizes: Sequence[str]) -> tuple[str, str, str] | None:
    """The sizes above, at and below the waist that the name of a size between tells; an empty one at the waist is
    halfway. None for what is no such name, and for one size with itself.

    >>> parts("S/M", ("S", "M", "L")), parts("S/M/L", ("S", "M", "L")), parts("S/X", ("S", "M"))
    (('S', '', 'M'), ('S', 'M', 'L'), None)
    """
    if size in sizes:  # a chart may call a size "36/38"
        return None
    named = [part.strip() for part in size.split(SIGN)]
    if len(named) not in (2, 3) or len(set(named)) == 1 or any(part not in sizes for part in named):
        return None
    return (named[0], named[1] if len(named) == 3 else "", named[-1])


def between(values: Mapping[str, Mapping[str, float]], above: str, at: str, below: str) -> dict[str, float]:
    """Every measurement of the body between; `values` are mm by size and measurement.

    >>> chart = {"S": {"bust_girth": 840.0, "waist_girth": 660.0}, "M": {"bust_girth": 920.0, "waist_girth": 740.0}}
    >>> between(chart, "S", "", "M")
    {'bust_girth': 840.0, 'waist_girth': 700.0}
    """
    found = {}
    for name, value in values[above].items():
        other = values[below][name]
        if name in _WHOLE or (name in _AT and not at):
            found[name] = (value + other) / 2
        elif name in _AT:
            found[name] = values[at][name]
        else:
            found[name] = other if name in _BELOW else value
    return found
