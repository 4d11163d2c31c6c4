"""What the families of operations are written with, under one roof: `from kit.sewing.vocabulary import *`.

Only what most of them need: the frame, the words for fields, the rules, runs and their spans, scenes, and what a
message is made of. What one family needs alone it imports by name.
"""

from collections.abc import Iterable, Iterator
from dataclasses import replace
from typing import Any, ClassVar

from kit.diagnostic import Diagnostic, Value, measured, message, titled
from kit.errors import KitError
from kit.geometry import Path
from kit.sewing.before import state_before
from kit.sewing.cut import Cut
from kit.sewing.facts import facts_of, place_facts
from kit.sewing.fields import (
    Asked,
    direction,
    fixed,
    flag,
    meets,
    pieces,
    places,
    read_by,
    row,
    run,
    runs,
    size,
    strip,
    whole,
    width,
    word,
)
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.marked import Place
from kit.sewing.named import placed
from kit.sewing.operation import (
    Also,
    Keys,
    Operation,
    Rules,
    Say,
    Sentence,
    Words,
    both,
    both_sides,
    closings,
    operation,
    shown,
    taken,
)
from kit.sewing.outcome import Bound, Closing, Effect, Fact, Turned, Uses
from kit.sewing.reading import DEEPEST_HEM, FINISHES
from kit.sewing.rules import (
    Asking,
    Case,
    Closed,
    Excess,
    First,
    Made,
    Of,
    Raw,
    Rule,
    Seamed,
    Suits,
    broken,
    in_a_row,
    whole_edges,
)
from kit.sewing.run import Run
from kit.sewing.scene import Layer, Row, Scene, Section, Thing
from kit.sewing.scenes import folded_over, laid, lined, opened, seen, together, turned_up
from kit.sewing.spans import Span, neighbours, path_of, run_length, sides_of, spans
from kit.sewing.stage import Stage
from kit.sewing.state import State
from kit.units import mm

__all__ = [
    "replace",
    "Iterable",
    "Iterator",
    "Any",
    "ClassVar",
    "Stage",
    "facts_of",
    "place_facts",
    "state_before",
    "Path",
    "Value",
    "Turned",
    "Bound",
    "Diagnostic",
    "measured",
    "message",
    "titled",
    "KitError",
    "Cut",
    "Asked",
    "direction",
    "fixed",
    "flag",
    "meets",
    "pieces",
    "places",
    "read_by",
    "row",
    "run",
    "runs",
    "size",
    "strip",
    "whole",
    "width",
    "word",
    "placed",
    "Also",
    "Keys",
    "Operation",
    "Rules",
    "Say",
    "Sentence",
    "Words",
    "both",
    "both_sides",
    "closings",
    "operation",
    "shown",
    "taken",
    "Closing",
    "Effect",
    "Fact",
    "Uses",
    "DEEPEST_HEM",
    "FINISHES",
    "Asking",
    "Case",
    "Closed",
    "Excess",
    "First",
    "Made",
    "Of",
    "Raw",
    "Rule",
    "Seamed",
    "Suits",
    "broken",
    "in_a_row",
    "whole_edges",
    "PieceHandle",
    "Place",
    "Run",
    "StripHandle",
    "Layer",
    "Row",
    "Scene",
    "Section",
    "Thing",
    "folded_over",
    "laid",
    "lined",
    "opened",
    "seen",
    "together",
    "turned_up",
    "Span",
    "neighbours",
    "path_of",
    "run_length",
    "sides_of",
    "spans",
    "State",
    "mm",
]
