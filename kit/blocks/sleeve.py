"""The straight sleeve: a cap that eases into a bodice's armscye by a stated amount, seams from upper arm to wrist.

`with_sleeve(darted_bodice_block, ease=3 * cm)` is a block that gives the bodice's pieces and the `sleeve`. It is
written as a lesson whose steps say how it is drafted; `.lesson` is that lesson, to read and to change.
"""

from __future__ import annotations

from collections.abc import Callable

from kit.blocks.block import Block, block_step, drafted
from kit.blocks.sleeve_plan import BACK_NOTCH, FRONT_NOTCH, SleevePlan, sleeve_plan
from kit.body.body import Body
from kit.body.chart import workshop_chart
from kit.diagnostic import measured, message, own
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.parameter import Parameter
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.piece.dart import darts_on, sewn_length
from kit.piece.piece import Edge, Piece
from kit.piece.role import EdgeRole
from kit.units import Length, Size, length

__all__ = ["ARM_SHARE", "CAP_EASE", "WRIST_EASE", "with_sleeve"]

CAP_EASE = 30.0
"""By how much the cap is longer than the armscye, shrunk in over the top so that it rounds over the shoulder."""
ARM_SHARE = 0.18
"""Around the upper arm, as a part of it: room to bend the elbow and lift the arm. 5 cm (2 in) for an arm of 28 cm, more
for a fuller one."""
WRIST_EASE = 65.0
"""Around the wrist: room for the hand to slip through, as there is no opening."""
CLOSE = 60.0
"""A bodice with no more ease than this around it, level with the underarm, gets a sleeve that is as close."""
LOOSER = 1.5
"""By how much more a sleeve is eased around the arm for every mm of a looser bodice: its cap comes out lower than that
of a close one, for its armscye is longer and its arm is lifted more freely. The wrist gets as much."""

MEASURES = ("upper_arm_girth", "wrist_girth", "arm_length")


def _the(piece: Piece, role: EdgeRole) -> Edge:
    """The one edge of that role. `KitError` when there is none or more than one."""
    found = piece.with_role(role)
    if len(found) != 1:
        raise KitError(
            f"there is no edge '{role}', so a sleeve cannot be fitted to it."
            if not found
            else f"{len(found)} edges are each a {role}: {', '.join(edge.name for edge in found)}.",
            where=piece.title,
            do="Name the edges of the armscye 'armhole' and the side seams 'side', or say with roles which they are.",
        )
    return found[0]


def _armscye(piece: Piece) -> float:
    """The armhole's stitch line with its darts closed, in mm."""
    _the(piece, "side")
    return sewn_length(piece, _the(piece, "armhole").name)


def _from_underarm(piece: Piece, how_far: float) -> float:
    """The place on the armhole `how_far` from the underarm along its stitch line, from the start of its path."""
    hole, side = _the(piece, "armhole"), _the(piece, "side").path
    path = hole.path
    last = min(path.end.distance(side.start), path.end.distance(side.end))
    first = min(path.start.distance(side.start), path.start.distance(side.end))
    darts = [(dart.start, dart.end) for dart in darts_on(piece, hole.name)]
    if last <= first:
        place = path.length - how_far
        for start, end in sorted(darts, reverse=True):
            if end > place:
                place -= end - start
        return place
    place = how_far
    for start, end in sorted(darts):
        if start < place:
            place += end - start
    return place


def _plan(front: BenchPiece, back: BenchPiece, body: Body, cap: float, arm: float, wrist: float) -> SleevePlan:
    one, other = front.freeze(), back.freeze()
    sizes = (_armscye(one), _armscye(other))
    underarm = _the(one, "armhole").path.at(_from_underarm(one, 0.0))
    return sleeve_plan(body, *sizes, float(cap), float(arm), float(wrist), underarm.y)


@block_step("Measure the armscye")
def armscye(front: BenchPiece, back: BenchPiece) -> None:
    """Stand a tape on edge along the stitch line of each armhole: {front_armscye} at the front and {back_armscye} at
    the back. From the underarm up notch the front armhole once at {front_notch}, and the back armhole twice at
    {back_notch}."""
    for piece, name, part in ((front, "front", FRONT_NOTCH), (back, "back", BACK_NOTCH)):
        frozen = piece.freeze()
        size = _armscye(frozen)
        hole = _the(frozen, "armhole")
        path = hole.path
        up = part * size
        at = _from_underarm(frozen, up)
        piece.notch(hole.name, Length(at), double=piece is back, name="sleeve_notch")
        opened(piece).spot(f"{name}_armscye", size, path.start, path.end, path)
        underarm = _from_underarm(frozen, 0.0)
        opened(piece).spot(
            f"{name}_notch",
            up,
            path.at(underarm),
            path.at(at),
            path.between(min(at, underarm), max(at, underarm)),
        )


@block_step("Rule the sleeve", makes=("sleeve",))
def frame(
    sleeve: BenchPiece,
    front: BenchPiece,
    back: BenchPiece,
    body: Body,
    arm_length: Length,
    upper_arm_girth: Length,
    wrist_girth: Length,
    cap_ease: Length,
    upper_arm_ease: Length,
    wrist_ease: Length,
) -> None:
    """Rule the centre line, {arm_length} long. Mark {cap_height} down from its top and square the upper arm line
    across there: the upper arm girth of {upper_arm_girth} and {upper_arm_ease} of ease, {front_width_of_sleeve} of it
    before the centre line and {back_width_of_sleeve} behind it. The cap height is found by trial: a higher cap is a
    longer one, and it is right when the whole cap measures the armscye and {cap_ease} to be eased in. The centre
    line lies right when front and back of the cap each fit their own armhole.

    Draw the wrist line, {wrist_girth} and {wrist_ease} of ease, and rule the two underarm seams down to it. They are
    equally long. The wrist line hollows a little so that it meets both seams square and runs on when they are sewn.
    """
    draft = _plan(front, back, body, cap_ease, upper_arm_ease, wrist_ease)
    sleeve.draw(
        front_underarm=PaperLine(sleeve, draft.front.seam),
        wrist=PaperLine(sleeve, draft.wrist),
        back_underarm=PaperLine(sleeve, draft.back.seam.reversed()),
    )
    foot = Point(0.0, draft.top.y - float(arm_length))
    crown = Point(0.0, draft.top.y - draft.cap_height)
    sleeve.guide(
        sleeve_centre=PaperLine(sleeve, Path.line(draft.top, foot)),
        upper_arm_line=PaperLine(sleeve, draft.upper_arm),
        elbow_line=PaperLine(sleeve, draft.elbow),
    )
    sleeve.mark(
        cap_top=PaperPoint(sleeve, draft.top),
        front_underarm_point=PaperPoint(sleeve, draft.front.seam.start),
        back_underarm_point=PaperPoint(sleeve, draft.back.seam.start),
        front_wrist=PaperPoint(sleeve, draft.front.seam.end),
        back_wrist=PaperPoint(sleeve, draft.back.seam.end),
    )
    sleeve.measure(
        arm_length=sleeve.sleeve_centre,
        cap_height=(sleeve.cap_top, PaperPoint(sleeve, crown)),
        front_width_of_sleeve=(PaperPoint(sleeve, crown), sleeve.front_underarm_point),
        back_width_of_sleeve=(PaperPoint(sleeve, crown), sleeve.back_underarm_point),
    )


@block_step("Draw the cap")
def cap(
    sleeve: BenchPiece,
    front: BenchPiece,
    back: BenchPiece,
    body: Body,
    cap_ease: Length,
    upper_arm_ease: Length,
    wrist_ease: Length,
) -> None:
    """Rule a slant from each underarm to the top of the cap. Mark three places beside each: a hollow below it near
    the underarm, deeper at the front; a crossing near its middle; a swell above it, fuller at the back. Draw each
    half through its three places. It leaves the underarm square to the seam, so that the two halves run on in one
    curve when the seam is sewn, and lies level at the top. Walk it: {front_cap_length} at the front and
    {back_cap_length} at the back, {cap_ease} more than the armscye."""
    draft = _plan(front, back, body, cap_ease, upper_arm_ease, wrist_ease)
    sleeve.draw(
        back_cap=PaperLine(sleeve, draft.back.cap),
        front_cap=PaperLine(sleeve, draft.front.cap.reversed()),
        after="back_underarm",
    )
    sleeve.guide(front_slant=PaperLine(sleeve, draft.front.slant), back_slant=PaperLine(sleeve, draft.back.slant))
    for name, half in (("front", draft.front), ("back", draft.back)):
        for place, point in zip(("hollow", "crossing", "swell"), half.places, strict=True):
            sleeve.mark(**{f"{name}_{place}": PaperPoint(sleeve, point)})
    sleeve.measure(front_cap_length=sleeve.front_cap, back_cap_length=sleeve.back_cap)


@block_step("Notch and mark the sleeve")
def notches(sleeve: BenchPiece, front: BenchPiece, back: BenchPiece) -> None:
    """From the underarm up notch the front cap once at {front_notch} and the back cap twice at {back_notch}, just as
    the armholes are notched: below the notches cap and armhole are sewn flat, and all ease lies between them over the
    top. Mark the top of the cap, which meets the shoulder seam. The grainline is the centre line. Cut a pair."""
    for piece, name, part in ((front, "front", FRONT_NOTCH), (back, "back", BACK_NOTCH)):
        path = sleeve.freeze().edge(f"{name}_cap").path
        up = part * _armscye(piece.freeze())
        at = up if piece is back else path.length - up
        sleeve.notch(f"{name}_cap", Length(at), double=piece is back, name="sleeve_notch")
        whole = path.between(0.0, at) if piece is back else path.between(at, path.length)
        opened(sleeve).spot(f"{name}_notch", up, whole.start, whole.end, whole)
    sleeve.mark_point("shoulder_match", sleeve.cap_top, "shoulder seam")
    sleeve.say(front_underarm="front underarm seam", back_underarm="back underarm seam")
    sleeve.cut(2, mirrored=True, title="Sleeve")
    sleeve.grain(at=sleeve.sleeve_centre.middle)


STEPS = (armscye, frame, cap, notches)


def _looser(bodice: Callable[[Body], tuple[Piece, ...]]) -> float:
    """How much more ease than a close bodice it has around it level with the underarm, mm, in the middle size; a
    draft that cannot be measured so counts as close. Its halves lie with their centre on x = 0."""
    chart = workshop_chart()
    body = chart.bodies()[len(chart.names) // 2]
    try:
        points = [dict(piece.points).get("underarm_point") for piece in bodice(body) if piece.name in ("front", "back")]
    except KitError:
        return 0.0
    wide = [point.x for point in points if point is not None]
    return max(2 * sum(wide) - body["bust_girth"] - CLOSE, 0.0) if len(wide) == 2 else 0.0


def _ease(
    name: str, value: Size | None, most: float, why: str, usual: Callable[..., Length] | None = None
) -> Parameter:
    if value is None:
        return Parameter(name, "length", 0.0, 0.0, most, why, follows=usual)
    size = float(length(value, name.replace("_", " ")))
    if size < 0:
        raise KitError(
            message("blocks.ease_negative"),
            where=message("refusal.here", place=own(name)),
            do=message("refusal.more_do", size=measured(30.0)),
        )
    return Parameter(name, "length", size, 0.0, max(most, size), why)


def with_sleeve(
    bodice: Block,
    *,
    ease: Size = Length(CAP_EASE),
    arm_ease: Size | None = None,
    wrist_ease: Size | None = None,
) -> Block:
    """A block that gives the pieces of `bodice` and a `sleeve` for its armscye.

    `bodice` gives pieces `front` and `back`, each with an armhole and a side. `ease` is how much longer the cap is than
    the armscye, front and back together; `arm_ease` and `wrist_ease` go around the arm. All carry a unit. What is not
    given around the arm follows from the arm and the bodice: 18 per cent of the upper arm, 6.5 cm at the wrist, and
    more where the bodice is looser, so that its cap is lower. The sleeve's edges are `front_underarm`, `wrist`,
    `back_underarm`, `back_cap`, `front_cap`; it is cut as a mirrored pair. When
    called it raises `KitError` naming the measurement that cannot be drafted.

    >>> from kit import bodice_block, cm, workshop_chart
    >>> pieces = with_sleeve(bodice_block, ease=2 * cm)(workshop_chart()["W4"])
    >>> [piece.name for piece in pieces]
    ['front', 'back', 'sleeve']
    """
    title = f"{bodice.title} with a sleeve"
    more = LOOSER * _looser(bodice) if arm_ease is None or wrist_ease is None else 0.0

    def eased(part: float) -> tuple[Parameter, ...]:
        def around_arm(upper_arm_girth: Length) -> Length:
            return Length(ARM_SHARE * float(upper_arm_girth) + part * more)

        def around_wrist(wrist_girth: Length) -> Length:
            return Length(WRIST_EASE + part * more)

        return (
            _ease("cap_ease", ease, 60.0, "shrunk in over the top of the cap, so that it rounds over the shoulder"),
            _ease("upper_arm_ease", arm_ease, 250.0, "room to bend the elbow and lift the arm", around_arm),
            _ease("wrist_ease", wrist_ease, 250.0, "room for the hand to slip through", around_wrist),
        )

    def draft(body: Body) -> tuple[Piece, ...]:
        """What a looser bodice gives the sleeve more gives way, by halves, where a full arm leaves the cap too low."""
        for part in (1.0, 0.5) if more else ():
            try:
                return drafted(title, STEPS, bodice, eased(part))(body)
            except KitError:
                continue
        return drafted(title, STEPS, bodice, eased(0.0))(body)

    parameters = eased(1.0)
    measures = tuple(dict.fromkeys((*getattr(bodice, "measures", ()), *MEASURES)))
    said = message("block_title.with_sleeve", block=getattr(bodice, "told", bodice.title))
    return Block(title, measures, draft, STEPS, bodice, parameters, said)
