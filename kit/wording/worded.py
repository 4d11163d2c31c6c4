"""Messages and their values put into words."""

from __future__ import annotations

import math

from kit.diagnostic import Message, System, Value
from kit.errors import KitError
from kit.language import called, say
from kit.units import Style, both, kept, percent, plain
from kit.wording.lists import listed, strung
from kit.wording.names import (
    edge_on_side,
    edge_said,
    landmark_said,
    measure_said,
    piece_said,
    place_said,
    stretch_said,
    title_said,
)

_STYLES: dict[str, Style] = {"length": "draft", "allowance": "allowance", "finished": "finished"}


def worded(told: Message, system: System = "cm") -> str:
    """A message in the spoken language, lengths in both systems with `system` first. `KitError` when no catalogue has
    it or a place stays empty."""
    return say(told.key, {name: value_said(value, system) for name, value in told.values})


def value_said(value: Value, system: System = "cm") -> str | int:
    """What stands in a place of a message. `KitError` for an unknown kind."""
    given, kind = value.value, value.kind
    system = value.system or system
    if isinstance(given, float) and not math.isfinite(given):
        return say("refusal.no_number")
    if kind in _STYLES:
        return both(given, system, _STYLES[kind])
    match kind:
        case "least" | "most":
            return kept(given, system, least=kind == "least")
        case "text":
            return str(given)
        case "count":
            return int(given)
        case "exact":
            return say("unit.mm", amount=plain(given, 2))
        case "number":
            return plain(given)
        case "share":
            return percent(given)
        case "word":
            return say(f"word.{given}")
        case "key":
            return say(given)
        case "name":
            return called(given)
        case "measure":
            return measure_said(given)
        case "measure_first":
            text = measure_said(given)
            return text[:1].upper() + text[1:]
        case "message":
            return worded(given, system)
        case "list" | "string" | "parted" | "row":
            return _several(value, system)
        case _:
            return _name_said(value, system)


def _name_said(value: Value, system: System) -> str:
    given, kind = value.value, value.kind
    match kind:
        case "title":
            return title_said(given)
        case "piece":
            return piece_said(*given)
        case "edge":
            return edge_said(given)
        case "edge_on":
            edge, side = given
            return edge_on_side(edge_said(edge), side)
        case "place":
            return place_said(given, system)
        case "landmark":
            return landmark_said(given, system)
        case "stretch":
            return stretch_said(given, system)
    raise KitError(f"a value is of the unknown kind '{kind}'.")


def _several(value: Value, system: System) -> str:
    if value.kind == "row":
        return strung([place_said(spot, system) for spot in value.value], "row")
    texts = [str(value_said(each, system)) for each in value.value]
    if value.kind == "list":
        return listed(texts)
    return strung(texts, "parted" if value.kind == "parted" else "more")
