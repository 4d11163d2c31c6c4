"""What the families of operations are written with, under one roof: `from kit.sewing.vocabulary import *`.

Only what most of them need: the frame, the words for fields, the rules, runs and their spans, scenes, and what a
message is made of. What one family needs alone it imports by name.
"""

from kit.diagnostic import Diagnostic, measured, message, titled
from kit.errors import KitError
from kit.sewing.cut import Cut
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
from kit.sewing.outcome import Closing, Effect, Fact, Uses
from kit.sewing.reading import DEEPEST_HEM, FINISHES
from kit.sewing.rules import Asking, Case, Closed, Excess, First, Made, Of, Raw, Rule, Seamed, Suits, broken, in_a_row
from kit.sewing.run import PieceHandle, Place, Run, StripHandle
from kit.sewing.scene import Layer, Row, Scene, Section, Thing
from kit.sewing.scenes import folded_over, laid, lined, opened, together, turned_up
from kit.sewing.spans import Span, neighbours, path_of, run_length, sides_of, spans
from kit.sewing.state import State
from kit.units import mm

__all__ = [
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
