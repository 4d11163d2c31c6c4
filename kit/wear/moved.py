"""Findings about moving in it: an arm raised, a sleeve's cap eased in, an armhole without a sleeve, sitting down.

An arm that is raised takes with it what is sewn to the sleeve: from the waist up the side and down the underarm of the
sleeve the garment must be about as long as the body is from the waist to the armpit and on to where the sleeve ends,
else its hem goes up by what is missing. A deep armhole with a high cap is short there twice.
"""

from __future__ import annotations

from itertools import pairwise

from kit.diagnostic import Diagnostic, measured, message
from kit.piece.piece import Piece
from kit.sewing.operations.drawn_in import ThreadElastic
from kit.sewing.operations.preparing import Gather
from kit.sewing.operations.sleeves import SetInSleeve
from kit.sewing.order import operations
from kit.wear.dressing import down_the_arm, is_arm
from kit.wear.girth import Worn
from kit.wear.told import told

INCH = 25.4
ARMPIT = 120.0
"""mm from the shoulder's tip down to the armpit: 157 from the nape (2012 Anthropometric Survey of U.S. Army Personnel,
Gordon et al., NATICK/TR-15/007, 2014; 993 women), less what the tip lies lower (about 40; common practice, no
source)."""
LIFTS = 100.0
"""mm by which a raised arm may lift the hem (common practice, no source)."""
LONG = 0.8
"""The part of the arm from which a sleeve is long, and is held at the wrist instead of sliding up (common practice, no
source)."""
CAP = 1.5 * INCH
"""mm of ease in a sleeve's cap, at most: 1 to 1 1/2 in (SFD Learning Center; Madalynne, who quotes textbooks). Others
want none (Fashion-Incubator): it is told as advice."""
CAP_KNIT = 0.75 * INCH
"""The same in cloth that stretches: 1/2 to 3/4 in or none (the same pages)."""
BARE = 3 * INCH
"""mm from armpit to armhole: 1 to 2 in below (New Mexico State University, Extension Guide C-220), and an inch."""
SEATED = 15.0
"""mm that the crotch seam may be shorter than the body (common practice, no source)."""
_ENOUGH = 3.0
GIVES = 1.15
"""Cloth that stretches more goes with the body (common practice, no source)."""


def armpit(worn: Worn) -> float | None:
    """How high above the waist the armpit is, mm."""
    body = worn.body
    if "back_waist_length" not in body or "armscye_depth" not in body:
        return None
    return body["back_waist_length"] - body["armscye_depth"]


def underarm_long(sleeve: Piece) -> float:
    """How long a sleeve is down its underarm, mm: the mean of its front and back, each of which may be of several edges
    end to end; 0.0 where it has none. One side alone lies on a sleeve cut on the fold, and on half of one."""
    roles = [edge.role == "underarm" for edge in sleeve.edges]
    begins = sum(here and not before for before, here in pairwise((roles[-1], *roles)))
    long = sum(edge.path.length for edge in sleeve.edges if edge.role == "underarm")
    return long if sleeve.fold or begins <= 1 else long / 2


def raised_arm(worn: Worn) -> list[Diagnostic]:
    """Long set-in sleeves that lift the garment when an arm is raised."""
    at = armpit(worn)
    sleeve = next((piece for piece in worn.edges.worn if piece.role == "sleeve"), None)
    if at is None or sleeve is None or worn.gives >= GIVES or worn.underarm > 1e6 or "arm_length" not in worn.body:
        return []
    ys = [point.y for edge in sleeve.edges for point in edge.path.points(1.0)]
    long = max(ys) - min(ys)
    under = underarm_long(sleeve)
    if not under or long < LONG * worn.body["arm_length"]:
        return []
    has, need = worn.underarm + under, at + long - ARMPIT
    if has >= need - LIFTS:
        return []
    says = message("wear.arm_raised", has=measured(has), need=measured(need), up=measured(need - has))
    can = message("wear.arm_raised_do", amount=measured(need - LIFTS - has))
    return [told("arm_raised", "warning", says, can, amount=need - LIFTS - has, piece=sleeve.name)]


def cap_ease(worn: Worn) -> list[Diagnostic]:
    """A sleeve's cap with more ease than its cloth takes; a gathered one is meant so."""
    most = CAP_KNIT if worn.gives >= GIVES else CAP
    gathered = {
        (run.piece, edge)
        for _, operation in operations(worn.pattern)
        if isinstance(operation, Gather)
        for run in operation.along
        for edge in run.edges
    }
    for record, operation in operations(worn.pattern):
        if not isinstance(operation, SetInSleeve) or operation.ease <= most + _ENOUGH:
            continue
        if any((run.piece, edge) in gathered for run in operation.a for edge in run.edges):
            continue
        says = message("wear.cap_ease", ease=measured(operation.ease), most=measured(most))
        can = message("wear.cap_ease_do", amount=measured(operation.ease - most))
        piece = operation.a[0].piece
        return [told("cap_ease", "warning", says, can, amount=operation.ease - most, step=record.key, piece=piece)]
    return []


def bare_armhole(worn: Worn) -> list[Diagnostic]:
    """An armhole without a sleeve that ends far below the armpit."""
    at = armpit(worn)
    open_arms = [loop for loop in worn.edges.open if is_arm(loop) and down_the_arm(worn, loop) == 0.0]
    if at is None or not open_arms or worn.underarm > 1e6 or at - worn.underarm <= BARE:
        return []
    first, low = open_arms[0].stretches[0], at - worn.underarm
    says = message("wear.armhole_low", has=measured(low), most=measured(2 * INCH))
    can = message("wear.armhole_low_do", amount=measured(low - 2 * INCH))
    return [told("armhole_low", "warning", says, can, amount=low - 2 * INCH, piece=first.piece, edge=first.edge)]


def seated(worn: Worn) -> list[Diagnostic]:
    """A crotch seam, from the upper edge in front to the one behind, that is shorter than the body there."""
    if "total_crotch_length" not in worn.body or not worn.legs or worn.gives >= GIVES:
        return []
    if any(isinstance(operation, ThreadElastic) for _, operation in operations(worn.pattern)):
        return []  # where it is worn, its wearer decides
    has = need = 0.0
    halves: list[Piece] = []
    for piece in worn.torso:
        for edge in piece.edges:
            if edge.role == "crotch":
                has += edge.path.length
                # What starts below the waist has that much less to go round; a back raised above it is room.
                need += min(worn.up(piece, max(edge.path.start.y, edge.path.end.y)), 0.0)
                halves.append(piece)
    need += worn.body["total_crotch_length"]
    if len(halves) != 2 or has >= need - SEATED:
        return []
    says = message("wear.crotch_short", has=measured(has), need=measured(need))
    can = message("wear.crotch_short_do", amount=measured(need - has))
    measures = ("total_crotch_length",)
    return [told("crotch_short", "error", says, can, amount=need - has, piece=halves[-1].name, measures=measures)]
