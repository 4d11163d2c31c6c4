"""Where each slider of the page stands: its bounds as the other values leave them, and its value in words."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from contextlib import suppress
from typing import Any

from kit.errors import KitError
from kit.forgetting import forgettable
from kit.language import language_tag
from kit.lesson.bounds import Known, narrowed
from kit.lesson.following import told as follows_from
from kit.lesson.lesson import Lesson
from kit.lesson.parameter import Parameter
from kit.lesson.pattern import Pattern
from kit.lesson.scale import Scale
from kit.rulers import Ruling, ruling
from kit.units import System
from kit.wording.worded import worded


def sliders(
    lesson: Lesson, values: Mapping[str, float], pattern: Pattern, names: Sequence[str], units: System
) -> list[dict[str, Any]]:
    """For each of the parameters `names`: `label` and `why`, the `value` (mm, share or count) and as `shown`, whether
    it is a `length`, its `first` and `last` step and the one it stands `at` (a step is `size` of the value's own unit),
    and what it `follows` from where it was not moved. `first` and `last` are narrowed by what other values leave."""
    said = {value.name: value for value in pattern.values}
    known = Known({parameter.name: parameter for parameter in lesson.parameters}, values, lesson.body)
    plain = ruling() == Ruling()  # what is kept was read by no booklet's rulers
    made = []
    for parameter in lesson.parameters:
        if parameter.name not in names:
            continue
        value, word = values[parameter.name], said[parameter.name]
        narrow = parameter
        if parameter.at_least is not None or parameter.at_most is not None:
            with suppress(KitError):  # what is wrong with a bound is told by the draft
                narrow = narrowed(parameter, known)
        scale = Scale(parameter, units)
        steps = scale.within(narrow.least, narrow.most)
        follows = follows_from(parameter, lesson.sizes) if abs(value - parameter.default) < 1e-6 else None
        made.append(
            {
                "name": parameter.name,
                "label": word.label[:1].upper() + word.label[1:],
                "why": word.why,
                "value": value,
                "own": parameter.default,
                "shown": _shown(parameter, value, units, language_tag()) if plain else parameter.show(value, units),
                "length": parameter.kind == "length",
                "first": steps.start if steps else 0,
                "last": steps.stop - 1 if steps else 0,
                "at": round(value / scale.at(1)),
                "size": scale.at(1),
                "least": narrow.least,
                "most": narrow.most,
                "follows": "" if follows is None else worded(follows, units),
            }
        )
    return made


@forgettable(512)  # one slider moves at a time; the others say what they said
def _shown(parameter: Parameter, value: float, units: System, language: str) -> str:
    """`value` as people read it in the `language` spoken."""
    return parameter.show(value, units)
