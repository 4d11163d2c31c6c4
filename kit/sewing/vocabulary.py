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
from kit.sewing.base import (
    Amounts,
    Brings,
    Changes,
    Rules,
    Words,
    Work,
    both,
    both_sides,
    closings,
    over_the_fold,
    shown,
    taken,
)
from kit.sewing.before import state_before
from kit.sewing.cut import Cut
from kit.sewing.facts import facts_of, place_facts
from kit.sewing.fields import (
    Asked,
    direction,
    fixed,
    flag,
    mark,
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
from kit.sewing.joined_lengths import sewn_length
from kit.sewing.mark_spot import ground, halves, nearest, spot
from kit.sewing.marked import Place
from kit.sewing.named import placed
from kit.sewing.operation import Operation, operation
from kit.sewing.outcome import Bound, Closing, Effect, Fact, Turned, Uses
from kit.sewing.places import (
    Hanging,
    Ring,
    alike_of,
    around,
    both_open,
    closed_but,
    free_ends,
    half_of,
    in_two_rows,
    inside,
    is_ring,
    left_of,
    on_both,
    side_of,
)
from kit.sewing.reading import DEEPEST_HEM, FINISHES, Reader, in_call, read_word
from kit.sewing.rules import (
    Asking,
    Case,
    Closed,
    Each,
    EndToEnd,
    EnoughStrips,
    Excess,
    First,
    Made,
    Of,
    Pressed,
    Raw,
    Rule,
    Seamed,
    Suits,
    at_least,
    at_most,
    broken,
    deeper_turn,
    in_a_row,
    off_by,
    whole_edges,
)
from kit.sewing.run import Run
from kit.sewing.scene import Face, Layer, Row, Scene, Section, StripShape, Thing, ThingKind
from kit.sewing.scenes import (
    folded_over,
    laid,
    lined,
    lone,
    opened,
    over_to_one_side,
    pressed_over,
    seen,
    together,
    turned_up,
)
from kit.sewing.sentence import PRESS_LATER, Also, Keys, Say, Sentence
from kit.sewing.spans import Span, minus, neighbours, path_of, run_length, sides_of, spans
from kit.sewing.stage import Stage
from kit.sewing.state import State
from kit.sewing.trouble import trouble
from kit.units import mm
