"""What of the body must pass an opening, and the room it wants: girths of the body, and what the trade asks besides.

A measurement that a grown body has not, as where a chart has no head, is taken as the mean of women: 2012
Anthropometric Survey of U.S. Army Personnel (Gordon et al., NATICK/TR-15/007, 2014; 1986 women): head 561 mm, hand 187,
heel and ankle 310.
"""

from __future__ import annotations

from collections.abc import Mapping

from kit.body.body import Body

MEANS: Mapping[str, float] = {"head_girth": 561.0, "hand_girth": 187.0, "heel_girth": 310.0}
GROWN = 720.0
"""mm of bust from which a body is taken for a grown woman's (common practice, no source)."""
_TALL = 1500.0
HIP_GIVES = 0.04
"""The part by which hips give way when a skirt is drawn over them (common practice, no source)."""
SHOULDERS = 1.02
"""How much more than the bust must pass what is put on over the head: the raised arms, one after the other (common
practice, no source; with the arms down the survey named above has 1028 mm round both arms, 1.09 times the chest)."""
ARMHOLE = 1.1
"""How much more than the upper arm an armhole is round, at least: it runs over the shoulder's joint (common practice,
no source)."""
UPPER, ELBOW = 0.25, 0.55
"""Down to which part of the arm's length it is as thick as the upper arm, and where the elbow lies (common practice, no
source)."""


def taken(body: Body, name: str) -> float | None:
    """A measurement of the body, mm; else the mean of women where there is one and the body is as large as theirs.

    >>> from kit import workshop_chart
    >>> taken(workshop_chart()["W4"], "head_girth"), taken(Body("a child", ()), "head_girth")
    (560.0, None)
    """
    if name in body:
        return body[name]
    return MEANS.get(name) if "bust_girth" in body and body["bust_girth"] >= GROWN else None


def is_child(body: Body) -> bool:
    """Whether a body is known to be a child's: by its bust, or where it has none by a height under 150 cm (common
    practice, no source). Of a body that tells neither it is not known.

    >>> from kit.body.body import Measure
    >>> is_child(Body("110", (Measure("height", 1100.0),))), is_child(Body("a bag", ()))
    (True, False)
    """
    if "bust_girth" in body:
        return body["bust_girth"] < GROWN
    return "height" in body and body["height"] < _TALL


def arm_girth(body: Body, down: float) -> float | None:
    """How thick the arm is `down` mm from the shoulder's tip: the upper arm as far as the elbow, which a sleeve passes
    when the arm is raised, then running down to the wrist."""
    if any(name not in body for name in ("upper_arm_girth", "wrist_girth", "arm_length")):
        return None
    part = down / body["arm_length"]
    if part <= ELBOW:
        return body["upper_arm_girth"]
    elbow = body["elbow_girth"] if "elbow_girth" in body else (body["upper_arm_girth"] + body["wrist_girth"]) / 2
    share = min((part - ELBOW) / (1.0 - ELBOW), 1.0)
    return elbow + (body["wrist_girth"] - elbow) * share
