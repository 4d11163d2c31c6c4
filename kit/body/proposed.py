"""Which fit changes a body asks for beside a size of a chart, and how much of each.

What is measured is compared with the size that is drawn, measurement by measurement; a difference worth altering is a
proposal under the name the trade has for it (kit/lesson/fit_change.py makes them). Amounts are the differences. The
thresholds are common practice, no source, but for the bust: a size is chosen by the upper chest where the bust is 2 in
or more fuller (Principles of Pattern Alteration, extension text). Shoulders that slope or lie forward, and a back that
sways, no tape tells: they are seen at a try-on.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace

from kit.body.body import Body
from kit.language import say
from kit.units import System, both

BUST = 20.0
"""mm of bust between the size and the body from which the front is altered."""
LENGTH = 10.0
"""mm of a length."""
SHOULDER = 6.0
"""mm of the shoulder: a quarter of an inch."""
ARM = 15.0
"""mm round the upper arm."""
SEAT = 20.0
"""mm of the crotch length that the rise does not explain."""


@dataclass(frozen=True)
class Proposal:
    """A fit change by its `name` and its `amount` (mm), and the `measure` of the body that asks for it."""

    name: str
    amount: float
    measure: str

    def told(self, system: System) -> str:
        """ "Full bust: 3 cm"."""
        return say("body.proposal", change=say(f"fit.{self.name}"), amount=both(self.amount, system))


def within(changes: Sequence[Proposal], most: Mapping[str, float], system: System) -> tuple[tuple[Proposal, ...], str]:
    """The `changes` that can be made where each can be made by at most `most` (mm, by name; one not there cannot be
    made at all), each no more than that, and a sentence that tells of those cut ("": none was)."""
    made = tuple(replace(one, amount=min(one.amount, most[one.name])) for one in changes if one.name in most)
    cut = [one.told(system) for one in made if one not in changes]
    return made, say("body.advice_cut", changes="; ".join(cut)) if cut else ""


def proposals(taken: Mapping[str, float], size: Body, *, by_bust: bool) -> tuple[Proposal, ...]:
    """What measured values (mm, by name) ask for beside a size. `by_bust`: the size was chosen by the bust, so that it
    needs no change."""
    return tuple(_found({name: value - size[name] for name, value in taken.items() if name in size}, by_bust))


def _found(off: Mapping[str, float], by_bust: bool) -> Iterator[Proposal]:
    if not by_bust:
        yield from _either(off, "bust_girth", BUST, "full_bust", "small_bust")
    yield from _back(off)
    if "body_rise" in off:
        yield from _either(off, "body_rise", LENGTH, "long_rise", "short_rise")
    yield from _either(off, "waist_to_hip", LENGTH, "lengthen_above_hip", "shorten_above_hip")
    yield from _halves(off, "arm_length", "elbow")
    yield from _halves(off, "inside_leg_length", "knee")
    yield from _either(off, "shoulder_length", SHOULDER, "broad_shoulder", "narrow_shoulder")
    if off.get("upper_arm_girth", 0.0) >= ARM:
        yield Proposal("full_upper_arm", off["upper_arm_girth"], "upper_arm_girth")
    yield from _either(off, "armscye_depth", LENGTH, "lower_underarm", "raise_underarm")
    if "total_crotch_length" in off and "body_rise" in off:
        seat = off["total_crotch_length"] - 2 * off["body_rise"]
        if abs(seat) >= SEAT:
            yield Proposal("full_seat" if seat > 0 else "flat_seat", abs(seat) / 2, "total_crotch_length")


def _either(off: Mapping[str, float], measure: str, least: float, more: str, less: str) -> Iterator[Proposal]:
    by = off.get(measure, 0.0)
    if abs(by) >= least:
        yield Proposal(more if by > 0 else less, abs(by), measure)


def _halves(off: Mapping[str, float], measure: str, joint: str) -> Iterator[Proposal]:
    """A limb longer or shorter: half above its joint, half below."""
    by = off.get(measure, 0.0)
    if abs(by) >= LENGTH:
        way = "lengthen" if by > 0 else "shorten"
        yield Proposal(f"{way}_above_{joint}", abs(by) / 2, measure)
        yield Proposal(f"{way}_below_{joint}", abs(by) / 2, measure)


def _back(off: Mapping[str, float]) -> Iterator[Proposal]:
    """From nape to waist: what the front is longer as well lengthens the bodice; what the back alone is longer is a
    high round back."""
    back = off.get("back_waist_length")
    if back is None:
        return
    alone = back - off["front_waist_length"] if "front_waist_length" in off else 0.0
    if alone >= LENGTH:
        yield Proposal("round_back", alone, "back_waist_length")
        back -= alone
    if abs(back) >= LENGTH:
        yield Proposal("lengthen_above_waist" if back > 0 else "shorten_above_waist", abs(back), "back_waist_length")
