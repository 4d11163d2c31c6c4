"""The stages of an operation of several rows: it can be begun, left for something else, and finished later."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from kit.sewing.rules import Of, Rule
from kit.sewing.sentence import Keys


@dataclass(frozen=True)
class Stage:
    """One stage by its `name`, which a step writes: `rows="first"`. What an operation is, its stages are together.

    `says`: its sentences. `closes`: what it closes, as {name of a field: how, or "" for in whatever way}; what no stage
    names is closed by the last. `joins`: from here on the runs hang together; where the work is left after it, no other
    row may cross them and no topstitching holds them, until it is finished. Without a row that it `sews` it may itself
    lie across a seam that is not finished or pressed. `gives`, `undoes`: facts that hold from here on, or no longer;
    those of the operation itself come with its last stage. `brings`: parts of its effect (`outcome.Effect`) that come
    already with this stage. `rules` are asked before it, and hold before the first as well. Scenes name their stage
    (`Scene.stage`). `work`: its share of the time. `when`: it is a stage of those operations alone for which this is
    true."""

    name: str
    says: Keys = ()
    closes: Mapping[str, str] = field(default_factory=dict)
    joins: bool = False
    sews: bool = True
    gives: tuple[Of, ...] = ()
    undoes: tuple[Of, ...] = ()
    brings: tuple[str, ...] = ()
    rules: tuple[Rule, ...] = ()
    work: float = 1.0
    when: Callable[[Any], bool] | None = None
