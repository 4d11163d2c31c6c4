"""A lesson worked in two Pythons: settings and bodies drawn at random, and how far apart the answers are.

CPython's mathematics comes from the C library of the machine, the browser's from musl compiled to WebAssembly; both
are allowed to differ in the last bit, and `sum` of floats is another one from Python 3.12 on.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from random import Random
from typing import Any

from kit.page.engine import Engine

NEAR = 1e-9
"""mm that a number may be another in the browser."""
Ask = Callable[[dict[str, Any]], dict[str, Any]]


def settings(engine: Engine, ask: Ask, random: Random, count: int) -> Iterator[dict[str, Any]]:
    """`count` settings: up to four sliders anywhere within their ends, a size or a body of one's own (measurements of a
    size, up to an eighth smaller or larger each), units, and any picture of any step."""
    about = ask({"do": "about"})
    sliders = ask({"do": "draw"})["sliders"]
    used = [each["name"] for each in about["measures"] if each["used"]]
    chart = engine.lesson.sizes
    for _ in range(count):
        values = {}
        for each in random.sample(sliders, min(random.randint(1, 4), len(sliders))):
            values[each["name"]] = random.randint(each["first"], each["last"]) * each["size"]
        body: dict[str, Any] = {}
        if about["sizes"]:
            size = random.choice(about["sizes"])
            known = [name for name in used if name in chart[size]]
            typed = {
                name: f"{chart[size][name] * random.uniform(0.875, 1.125) / 10:.1f} cm"
                for name in (*chart.keys, *random.sample(known, random.randint(0, len(known))))
                if name in known
            }
            body = random.choice([{"size": size}, {"name": "Ines", "typed": typed}])
        units = random.choice(("cm", "inch"))
        step = {**random.choice(about["steps"]), "picture": random.choice((1, -1))}
        yield {"values": values, "body": body, "units": units, "step": step, "room": [390, 372]}


@dataclass
class Apart:
    """What two Pythons answered: how many settings were `asked`, how many of them were `refused` by both, how many
    pictures had every text in the same place (`placed`), the `farthest` that numbers were apart, in mm, and what else
    was not the same (`other`)."""

    asked: int = 0
    refused: int = 0
    placed: int = 0
    farthest: float = 0.0
    other: list[str] = field(default_factory=list)

    def compare(self, here: Ask, there: Ask, setting: dict[str, Any]) -> None:
        """Ask both for the picture in words, its numbers, and the proof."""
        self.asked += 1
        for wanted in ("draw", "data", "prove"):
            message = {"do": wanted, **setting}
            mine, its = here(message), there(message)
            if wanted == "draw":
                self.refused += not mine["ok"]
                self.placed += mine.pop("svg", "") == its.pop("svg", "")
            before = len(self.other)
            self.tell(mine, its, wanted)
            if len(self.other) > before:
                self.other[-1] += f" (for {setting})"

    def tell(self, mine: Any, its: Any, where: str) -> None:
        """Compare two answers part by part."""
        numbers = [isinstance(each, int | float) and not isinstance(each, bool) for each in (mine, its)]
        if all(numbers):
            self.farthest = max(self.farthest, abs(mine - its))
            if not abs(mine - its) <= NEAR:
                self.other.append(f"{where}: {_short(mine, its)}")
        elif isinstance(mine, dict) and isinstance(its, dict) and mine.keys() == its.keys():
            for key in mine:
                self.tell(mine[key], its[key], f"{where} > {key}")
        elif mine and isinstance(mine, list) and isinstance(its, list) and mine[0] == its[0] == "Arc":
            # A direction is the same a full turn further: it is compared by where on the circle the arc begins.
            self.tell(_begun(mine), _begun(its), where)
        elif isinstance(mine, list) and isinstance(its, list) and len(mine) == len(its):
            for number, (one, other) in enumerate(zip(mine, its, strict=True)):
                self.tell(one, other, f"{where} > {number}")
        elif isinstance(mine, list) and isinstance(its, list):
            at = next((i for i, (one, other) in enumerate(zip(mine, its, strict=False)) if not _alike(one, other)), -1)
            self.other.append(
                f"{where}: {len(mine)} parts are {len(its)} in the browser, {_short(mine[at:], its[at:])}"
            )
        elif mine != its:
            self.other.append(f"{where}: {_short(mine, its)}")


def _alike(mine: Any, its: Any) -> bool:
    apart = Apart()
    apart.tell(mine, its, "")
    return not apart.other


def _short(mine: Any, its: Any) -> str:
    """Both from a little before they part, so far as a line can hold them."""
    one, other = repr(mine), repr(its)
    at = max(0, next((i for i, (a, b) in enumerate(zip(one, other, strict=False)) if a != b), 0) - 80)
    return f"{one[at : at + 240]} is {other[at : at + 240]} in the browser"


def _begun(arc: list[Any]) -> list[Any]:
    """An arc's data (kind, centre, radius in mm, angle in radians, sweep) with its beginning as a point."""
    _, centre, radius, angle, sweep = arc
    return [centre, radius, centre[1] + radius * math.cos(angle), centre[2] + radius * math.sin(angle), sweep * radius]
