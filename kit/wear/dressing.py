"""Findings: a garment that goes on no way, an armhole or sleeve that no arm passes, a leg that no foot passes."""

from __future__ import annotations

from collections.abc import Iterator

from kit.diagnostic import Diagnostic, measure, measured, message
from kit.wear.edges import Loop
from kit.wear.girth import Worn
from kit.wear.needs import ARMHOLE, arm_girth, taken
from kit.wear.passage import STRETCHED, Narrow, has_neck, is_top, ways_on
from kit.wear.told import told

_ENOUGH = 3.0  # mm
_LEVEL = 20.0  # mm from the waist that is at the waist
BENT = 25.0
"""mm of ease without which an arm cannot be bent in a woven sleeve: half of what a sleeve is given (arm and 2 in,
Threads magazine, 27 September 2021; the half is common practice, no source)."""


def no_way_on(worn: Worn) -> list[Diagnostic]:
    """Where every way on is too narrow: told of the way that misses least; of what hangs from the waist, of stepping
    in."""
    ways = ways_on(worn)
    if not ways or any(not narrow for narrow in ways.values()):
        return []
    stepped = ways.get("into") if not has_neck(worn) else None
    best = stepped or min(ways.values(), key=lambda narrow: sum(each.missing for each in narrow))
    return [_too_narrow(worn, each) for each in best]


def _too_narrow(worn: Worn, narrow: Narrow) -> Diagnostic:
    part = {"part": measure(narrow.part), "girth": measured(narrow.girth), "has": measured(narrow.has)}
    part["need"] = measured(narrow.need)
    far, missing = measured(abs(narrow.height or 0.0)), measured(narrow.missing)
    if narrow.height is None:
        top = next(loop for loop in worn.edges.open if is_top(worn, loop))
        edge = next(stretch for stretch in top.stretches if not stretch.zip)
        return told(
            "neck_small",
            "error",
            message(
                "wear.neck_small",
                part=part["part"],
                need=part["girth"],
                has=part["has"],
                amount=missing,
            ),
            message("wear.neck_small_do", half=measured(narrow.missing / 2), amount=missing),
            amount=narrow.missing,
            piece=edge.piece,
            edge=edge.edge,
            measures=(narrow.part,),
        )
    where = "at" if abs(narrow.height) < _LEVEL else "below" if narrow.height < 0 else "above"
    says = message(f"wear.narrow_{where}", **part, **({} if where == "at" else {"far": far}))
    can = message("wear.narrow_do", half=measured(narrow.missing / 2), amount=missing)
    if narrow.drawn:
        can = message("wear.narrow_elastic_do", amount=measured(narrow.missing / STRETCHED))
    drawn = ("", "") if worn.zip_step else worn.side
    return told(
        "no_way_on",
        "error",
        says,
        can,
        amount=narrow.missing,
        step=worn.zip_step,
        piece=drawn[0],
        edge=drawn[1],
        measures=(narrow.part,),
    )


# ---- arms and legs --------------------------------------------------------------------------------------------


def limbs(worn: Worn) -> list[Diagnostic]:
    """Sleeve openings and armholes against hand and arm, and trouser hems against the heel; both sides alike are told
    once."""
    if worn.hung is None:
        return []
    found: list[Diagnostic] = []
    for loop in worn.edges.open:
        if is_arm(loop):
            found += _arm(worn, loop)
        elif worn.legs and "hem" in loop.roles and not is_top(worn, loop):
            found += _leg(worn, loop)
    found += _upper_arm(worn)
    once: dict[tuple[str, str], Diagnostic] = {}
    for each in found:
        once.setdefault((each.code, each.piece), each)
    return list(once.values())


def is_arm(loop: Loop) -> bool:
    """Whether a loop is what an arm goes through: of a sleeve, an armhole, the opening of a cut-on sleeve."""
    if loop.roles & {"neck", "waist", "hem", "hip"} and not loop.arm:
        return False
    return loop.arm or bool(loop.roles & {"armhole", "opening", "wrist"})


def down_the_arm(worn: Worn, loop: Loop) -> float | None:
    """How far from the shoulder's tip a sleeve ends, mm: 0 of an armhole; None where it cannot be told."""
    if "armhole" in loop.roles and not loop.arm:
        return 0.0
    for piece in worn.edges.worn:
        if piece.role == "sleeve":
            ys = [p.y for edge in piece.edges for p in edge.path.points(1.0)]
            return max(ys) - min(ys)
    for piece in worn.torso:
        shoulders = piece.with_role("shoulder")
        if piece.with_role("opening") and shoulders and "shoulder_length" in worn.body:
            return max(sum(edge.path.length for edge in shoulders) - worn.body["shoulder_length"], 0.0)
    return None


def _arm(worn: Worn, loop: Loop) -> Iterator[Diagnostic]:
    if all(stretch.slit for stretch in loop.stretches):
        return  # a placket above a cuff: nothing goes through it alone, the cuff is told for itself
    first = loop.stretches[0]
    down, has = down_the_arm(worn, loop), loop.length * worn.gives
    place = {"piece": first.piece, "edge": first.edge}
    hand = taken(worn.body, "hand_girth")
    if down == 0.0:
        arm = taken(worn.body, "upper_arm_girth")
        if arm is not None and has < arm * ARMHOLE - _ENOUGH:
            need = arm * ARMHOLE
            says = message("wear.armhole_small", has=measured(has), arm=measured(arm), need=measured(need))
            can = message("wear.armhole_small_do", amount=measured(need - has))
            yield told("armhole_small", "error", says, can, amount=need - has, measures=("upper_arm_girth",), **place)
        return
    if hand is not None and has < hand - _ENOUGH:
        says = message("wear.hand_stuck", has=measured(has), need=measured(hand))
        can = message("wear.hand_stuck_do", amount=measured(hand - has))
        yield told("hand_stuck", "error", says, can, amount=hand - has, measures=("hand_girth",), **place)
        return
    arm = None if down is None else arm_girth(worn.body, down)
    if arm is not None:
        yield from _tight_arm(worn, has, arm, first.piece, first.edge)


def _tight_arm(worn: Worn, has: float, arm: float, piece: str, edge: str) -> Iterator[Diagnostic]:
    """A sleeve that the arm does not pass, or cannot be bent in where it covers the upper arm."""
    upper = arm >= worn.body["upper_arm_girth"] - 0.5
    if has < arm - _ENOUGH:
        says = message("wear.arm_stuck", has=measured(has), need=measured(arm))
        can = message("wear.arm_stuck_do", amount=measured(arm - has))
        yield told("arm_stuck", "error", says, can, amount=arm - has, piece=piece, edge=edge)
    elif upper and worn.gives == 1.0 and has < arm + BENT - _ENOUGH:
        says = message("wear.arm_tight", ease=measured(max(has - arm, 0.0)), least=measured(BENT))
        can = message("wear.arm_tight_do", amount=measured(arm + BENT - has))
        yield told("arm_tight", "warning", says, can, amount=arm + BENT - has, piece=piece, edge=edge)


def _upper_arm(worn: Worn) -> Iterator[Diagnostic]:
    """The upper arm of sleeves that are set in."""
    has = sleeve_girth(worn)
    if has is not None and "upper_arm_girth" in worn.body and "wrist_girth" in worn.body:
        piece = next(piece for piece in worn.edges.worn if piece.role == "sleeve")
        yield from _tight_arm(worn, has * worn.gives, worn.body["upper_arm_girth"], piece.name, "")


def sleeve_girth(worn: Worn) -> float | None:
    """mm round one sleeve at its own line for the upper arm; None where it has none."""
    total = 0.0
    for piece in worn.edges.worn:
        line = piece.guide_of("upper_arm_line") if piece.role == "sleeve" else None
        if line is not None:
            side = piece.sides[-1]
            outline = worn.outline(piece, side)
            y = (line.start.y + line.end.y) / 2 - 2.0
            total += sum(each.high - each.low - outline.shut(y, each.low, each.high) for each in outline.across(y))
    return total or None


def _leg(worn: Worn, loop: Loop) -> Iterator[Diagnostic]:
    heel, first = taken(worn.body, "heel_girth"), loop.stretches[0]
    has = loop.length * worn.gives
    if heel is not None and has < heel - _ENOUGH:
        missing = heel - has
        says = message("wear.heel_stuck", has=measured(has), need=measured(heel))
        can = message("wear.heel_stuck_do", amount=measured(missing))
        yield told(
            "heel_stuck",
            "error",
            says,
            can,
            amount=missing,
            piece=first.piece,
            edge=first.edge,
            measures=("heel_girth",),
        )
