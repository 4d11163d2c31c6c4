"""Fit changes: how a pattern drafted for one figure is altered for another, under the names the trade has for them.

A change works on all the pieces it concerns at once, so that edges sewn together stay equal: lengthened fronts and
backs, a sleeve whose cap follows its armhole. It is a parameter and a drafting step; what is drawn after it, a facing
or a hem, follows. Which changes there are, how much of each is usual and which pieces they go by is the table at the
end. Amounts are whole ones, round the body or on both sides alike, in mm.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass, replace

from kit.body.body import Body
from kit.diagnostic import measured, message
from kit.errors import KitError, near
from kit.geometry import Point, Vector
from kit.language import say
from kit.lesson import fit_bust, fit_centre, fit_shoulders
from kit.lesson.fit_lengths import crossed, lengthened
from kit.lesson.fit_partners import equal_partners, run_on
from kit.lesson.lengthen_lines import LevelStretch, cut_heights, upward
from kit.lesson.parameter import Parameter
from kit.lesson.redrawn import common_end, evened, lacking
from kit.lesson.run_smooth import made_smooth
from kit.piece.piece import Piece

SpotMove = tuple[str, Point, Point]
"""Where an amount is shown: the piece, from where to where."""


@dataclass(frozen=True)
class Altered:
    """What a change made: the pieces it changed, and where its amount lies on each."""

    pieces: tuple[Piece, ...]
    spots: tuple[SpotMove, ...]


Work = Callable[[Sequence[Piece], float, Body], Altered]


@dataclass(frozen=True)
class FitChange:
    """A fit change: its `name`, how it is worked, `most` mm of it, in how many `parts` its amount is taken (2: half on
    each side, 4: a quarter on each side edge), and the change that does the `opposite`. `shown` is the amount (mm) that
    pictures of it are drawn with."""

    name: str
    work: Work
    most: float
    parts: int = 1
    opposite: str = ""
    shown: float = 20.0

    @property
    def title(self) -> str:
        """What it is called, in the language spoken."""
        return say(f"fit.{self.name}")

    def told(self, amount: str = "", *, sleeve: bool = True) -> str:
        """How it is done by hand, `amount` being what is said of how much ("": as much as the body asks for, which a
        language may say in other words where half of it is meant); also on the `sleeve`, where there is one that
        follows."""
        kind = self.name.split("_")[0]
        key = f"{kind}_text" if kind in ("lengthen", "shorten") else f"{self.name}_text"
        text = say(f"fit.{key}", amount=amount or say("fit.the_difference"), known="yes" if amount else "no")
        return f"{text} {say(f'fit.{self.name}_sleeve')}" if sleeve and self.name in _SLEEVE_FOLLOWS else text

    def parameter(self, default: float = 0.0) -> Parameter:
        return Parameter(self.name, "length", default, 0.0, self.most, "", self.title)


_SLEEVE_FOLLOWS = (
    "sloping_shoulder",
    "square_shoulder",
    "forward_shoulder",
    "let_out_sides",
    "take_in_sides",
    "lower_underarm",
    "raise_underarm",
)
"""Changes of front and back that ask something of a set-in sleeve too."""


def named(name: str) -> FitChange:
    """The change of that name, written with spaces or underscores. `KitError` with the near one when there is none."""
    key = "_".join(name.lower().replace("-", " ").replace("_", " ").split())
    if key not in FIT_CHANGES:
        raise KitError(
            f"there is no fit change '{name}'.", do=near(key, FIT_CHANGES) or "Known: " + ", ".join(FIT_CHANGES) + "."
        )
    return FIT_CHANGES[key]


def possible(pieces: Sequence[Piece], body: Body, names: Iterable[str] | None = None) -> tuple[str, ...]:
    """The changes that can be made to these pieces; of `names`, where some are named."""
    found = []
    wanted = None if names is None else set(names)
    for name, change in FIT_CHANGES.items():
        if wanted is not None and name not in wanted:
            continue
        try:
            altered = change.work(pieces, min(change.most, 10.0), body)
            for piece in altered.pieces:
                piece.outline.area  # noqa: B018  # refuses one that does not close
        except KitError:
            continue
        found.append(name)
    return tuple(found)


# ---- which pieces -----------------------------------------------------------------------------------------


def _bodices(pieces: Iterable[Piece], worn: str = "") -> list[Piece]:
    """Fronts and backs that are worn (no facing, no lining of one), or those worn there alone."""
    found = [p for p in pieces if p.edges and p.role in ("front", "back") and worn in ("", p.role)]
    if not found:
        raise KitError(message("fit.no_piece"), do=message("fit.lacking_do"))
    return found


def has_sleeve(pieces: Iterable[Piece]) -> bool:
    """Whether there is a set-in sleeve, which follows a change of its armhole."""
    return bool(_sleeves(pieces))


def _sleeves(pieces: Iterable[Piece]) -> list[Piece]:
    return [p for p in pieces if p.edges and p.role == "sleeve" and p.with_role("cap")]


def _altered(befores: Sequence[Piece], afters: Sequence[Piece], spots: Iterable[SpotMove]) -> Altered:
    closing = [new if new is old else made_smooth(evened(new), old) for old, new in zip(befores, afters, strict=True)]
    made = run_on(befores, equal_partners(befores, closing))
    changed = tuple(evened(new) for old, new in zip(befores, made, strict=True) if new is not old)
    return Altered(changed, tuple(spots))


# ---- the changes ------------------------------------------------------------------------------------------


def _lengthen(keys: tuple[tuple[str, str], ...], way: float, *, crotch: bool | None = None) -> Work:
    def work(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
        names = [p for p in pieces if crotch is None or bool(p.with_role("crotch")) == crotch]
        cuts = [(piece, stretch, height) for piece, stretch, height in cut_heights(names) if stretch.key in keys]
        if not cuts:
            raise KitError(message("fit.no_level"), do=message("fit.lacking_do"))
        done, spots = [], []
        for piece, stretch, height in cuts:
            lower_stays = _waist_below(stretch)
            done.append(lengthened(piece, height, amount * way, lower_stays=lower_stays))
            first = crossed(piece, height)[0]
            at = piece.edge(first[0]).path.at(first[1])
            up = upward(piece)
            spots.append((piece.name, at, at + up * (amount if lower_stays == (way > 0) else -amount)))
        return _altered([piece for piece, _, _ in cuts], done, spots)

    return work


def _waist_below(stretch: LevelStretch) -> bool:
    """What lies toward the waist stays where it is."""
    return stretch.upper in ("bust_line", "under_bust_line")


def _each(
    alter: Callable[[Piece, float], Piece],
    spot: Callable[[Piece, Piece], tuple[Point, Point]],
    worn: str = "",
    way: float = 1.0,
) -> Work:
    """A change made to each front and back (or those worn there alone) by itself."""

    def work(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
        found = _bodices(pieces, worn)
        done = [alter(piece, amount * way) for piece in found]
        return _altered(found, done, [(a.name, *spot(a, b)) for a, b in zip(found, done, strict=True)])

    return work


def _tip(piece: Piece) -> Point:
    return common_end(piece, "shoulder", "armhole")


def _underarm(piece: Piece) -> Point:
    return common_end(piece, "side", "armhole")


def _bust(way: float) -> Work:
    def work(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
        found = _bodices(pieces, "front")
        if "bust_point_width" not in body:
            raise lacking(found[0])
        width = body["bust_point_width"]
        done = [fit_bust.fuller(piece, amount / 2 * way, width) for piece in found]
        spots = []
        for piece in found:
            at = fit_bust.bust_point(piece, width)
            out = 1.0 if piece.outline.label_point().x > 0 else -1.0
            spots.append((piece.name, at, at + Vector(out * way * amount / 2, 0.0)))
        return _altered(found, done, spots)

    return work


def _slope(way: float) -> Work:
    def work(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
        found = _bodices(pieces)
        first = fit_shoulders.sloped(found[0], amount * way)
        longer = fit_shoulders.shoulder_run(first) - fit_shoulders.shoulder_run(found[0])
        done = [first, *(fit_shoulders.sloped(piece, amount * way, longer) for piece in found[1:])]
        tips = [(p.name, _tip(p), _tip(p) + Vector(0.0, -amount * way)) for p in found]
        return _altered(found, done, tips)

    return work


def _forward(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
    fronts, backs, sleeves = _bodices(pieces, "front"), _bodices(pieces, "back"), _sleeves(pieces)
    fore = [fit_shoulders.forward(piece, amount) for piece in fronts]
    longer = fit_shoulders.shoulder_run(fore[0]) - fit_shoulders.shoulder_run(fronts[0])
    aft = [fit_shoulders.forward(piece, -amount, longer) for piece in backs]
    caps = [fit_shoulders.cap_forward(piece, amount) for piece in sleeves]
    before, after = [*fronts, *backs, *sleeves], [*fore, *aft, *caps]
    spots = [(p.name, _tip(p), _tip(q)) for p, q in zip([*fronts, *backs], [*fore, *aft], strict=True)]
    return _altered(before, after, spots)


def _armhole(
    alter: Callable[[Piece, float], Piece],
    spot: Callable[[Piece, Piece], tuple[Point, Point]],
    how: str,
    way: float,
    parts: int,
) -> Work:
    """A change of front and back that makes their armholes longer or shorter; the caps of sleeves follow."""

    def work(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
        found = [p for p in _bodices(pieces) if p.with_role("side")]
        if not found:
            raise lacking(_bodices(pieces)[0])
        done = [alter(piece, amount * way / parts) for piece in found]
        more = {"front": 0.0, "back": 0.0}
        for old, new in zip(found, done, strict=True):
            for edge in old.with_role("armhole"):
                more[old.worn or "front"] += new.edge(edge.name).path.length - edge.path.length
        sleeves = _sleeves(pieces)
        caps = [fit_shoulders.cap_longer(s, more["front"], more["back"], how) for s in sleeves]
        spots = [(a.name, *spot(a, b)) for a, b in zip(found, done, strict=True)]
        return _altered([*found, *sleeves], [*done, *caps], spots)

    return work


def _side_spot(before: Piece, after: Piece) -> tuple[Point, Point]:
    old, new = (p.edge(before.with_role("side")[0].name).path for p in (before, after))
    return old.at(old.length / 2), new.at(new.length / 2)


def _arm(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
    found = _sleeves(pieces)
    if not found:
        raise KitError(message("fit.no_sleeve"), do=message("fit.lacking_do"))
    done = [fit_bust.arm_fuller(piece, amount) for piece in found]
    spots = []
    for piece, new in zip(found, done, strict=True):
        for edge in piece.with_role("cap"):
            for old, now in (
                (edge.path.start, new.edge(edge.name).path.start),
                (edge.path.end, new.edge(edge.name).path.end),
            ):
                if abs(old.x - now.x) > amount / 4:
                    spots.append((piece.name, Point(old.x, now.y), now))
    return _altered(found, done, spots)


def _wedge(where: Callable[[Piece], float], way: float) -> Work:
    def work(pieces: Sequence[Piece], amount: float, body: Body) -> Altered:
        found = _bodices(pieces, "back")
        done, spots = [], []
        for piece in found:
            height = where(piece)
            done.append(fit_centre.wedged(piece, height, amount * way))
            at = fit_centre.centre_spot(piece, height)
            spots.append((piece.name, at, at + Vector(0.0, amount * way)))
        return _altered(found, done, spots)

    return work


def _seat_height(piece: Piece) -> float:
    """At the hip; on trousers halfway from there to the waist, above the curve of the crotch."""
    hip = piece.guide_of("hip_line")
    if hip is None or not piece.with_role("waist"):
        raise lacking(piece)
    at = hip.start.mid(hip.end).y
    if not piece.with_role("crotch"):
        return at
    low = min(min(p.y for p in (e.path.start, e.path.end)) for e in piece.with_role("waist"))
    return at + (low - at) * 0.3


def _blade_height(piece: Piece) -> float:
    """Halfway up the armhole."""
    return (_tip(piece).y + _underarm(piece).y) / 2


def _sway_spot(before: Piece, after: Piece) -> tuple[Point, Point]:
    return fit_centre.waist_spot(before), fit_centre.waist_spot(after)


_ABOVE_WAIST = (("bust_line", "waist_line"), ("under_bust_line", "waist_line"))
_BELOW_WAIST = (("waist_line", "hip_line"), ("waist_line", "end"))
_PLACES: Mapping[str, tuple[tuple[tuple[str, str], ...], bool | None]] = {
    "above_waist": (_ABOVE_WAIST, None),
    "below_waist": (_BELOW_WAIST, None),
    "above_hip": ((("top", "hip_line"),), False),
    "above_hem": ((("hip_line", "end"),), None),
    "above_knee": ((("thigh_line", "knee_line"),), None),
    "below_knee": ((("knee_line", "end"),), None),
    "above_elbow": ((("upper_arm_line", "elbow_line"),), None),
    "below_elbow": ((("elbow_line", "end"),), None),
}


def _table() -> Iterable[FitChange]:
    for place, (keys, crotch) in _PLACES.items():
        most = 60.0 if place == "above_hip" else 150.0
        yield FitChange(f"lengthen_{place}", _lengthen(keys, 1.0, crotch=crotch), most, 1, f"shorten_{place}", 25.0)
        yield FitChange(
            f"shorten_{place}", _lengthen(keys, -1.0, crotch=crotch), most * 0.8, 1, f"lengthen_{place}", 25.0
        )
    rise = (("top", "hip_line"),)
    yield FitChange("long_rise", _lengthen(rise, 1.0, crotch=True), 60.0, 1, "short_rise")
    yield FitChange("short_rise", _lengthen(rise, -1.0, crotch=True), 60.0, 1, "long_rise")
    yield FitChange("full_bust", _bust(1.0), 120.0, 2, "small_bust", 40.0)
    yield FitChange("small_bust", _bust(-1.0), 60.0, 2, "full_bust", 30.0)
    yield FitChange("full_seat", _wedge(_seat_height, 1.0), 50.0, 1, "flat_seat")
    yield FitChange("flat_seat", _wedge(_seat_height, -1.0), 40.0, 1, "full_seat")
    yield FitChange("sway_back", _each(fit_centre.swayed, _sway_spot, "back"), 30.0)
    yield FitChange("round_back", _wedge(_blade_height, 1.0), 35.0)
    yield FitChange("broad_shoulder", _each(fit_shoulders.broadened, _run_spot), 30.0, 1, "narrow_shoulder", 15.0)
    yield FitChange(
        "narrow_shoulder", _each(fit_shoulders.broadened, _run_spot, way=-1.0), 30.0, 1, "broad_shoulder", 15.0
    )
    yield FitChange("sloping_shoulder", _slope(1.0), 25.0, 1, "square_shoulder", 15.0)
    yield FitChange("square_shoulder", _slope(-1.0), 25.0, 1, "sloping_shoulder", 15.0)
    yield FitChange("forward_shoulder", _forward, 25.0, 1, "", 15.0)
    yield FitChange("full_upper_arm", _arm, 80.0, 2, "", 30.0)
    yield FitChange(
        "let_out_sides", _armhole(fit_shoulders.let_out, _side_spot, "out", 1.0, 4), 100.0, 4, "take_in_sides", 60.0
    )
    yield FitChange(
        "take_in_sides", _armhole(fit_shoulders.let_out, _side_spot, "out", -1.0, 4), 80.0, 4, "let_out_sides", 60.0
    )
    down = fit_shoulders.underarm_lowered
    yield FitChange("lower_underarm", _armhole(down, _underarm_spot, "down", 1.0, 1), 60.0, 1, "raise_underarm")
    yield FitChange("raise_underarm", _armhole(down, _underarm_spot, "down", -1.0, 1), 30.0, 1, "lower_underarm")


def _run_spot(before: Piece, after: Piece) -> tuple[Point, Point]:
    return _tip(before), _tip(after)


def _underarm_spot(before: Piece, after: Piece) -> tuple[Point, Point]:
    return _underarm(before), Point(_underarm(before).x, _underarm(after).y)


FIT_CHANGES: Mapping[str, FitChange] = {change.name: change for change in _table()}
"""Every fit change by its name."""


def altered(pieces: Mapping[str, Piece], change: FitChange, amount: float, body: Body) -> Altered:
    """What a change of `amount` mm makes of these pieces. `KitError`, under the change's name, where it cannot be."""
    try:
        made = change.work(tuple(pieces.values()), amount, body)
        for piece in made.pieces:
            piece.outline.area  # noqa: B018  # refuses one that does not close
    except KitError as error:
        raise error.at(change.title) from None
    return replace(made, pieces=tuple(p for p in made.pieces if p.name in pieces))


def altered_or_how_far(pieces: Mapping[str, Piece], change: FitChange, amount: float, body: Body) -> Altered:
    """As `altered`; where so much cannot be done but less can, the `KitError` says how far it goes, to the mm."""
    try:
        return altered(pieces, change, amount, body)
    except KitError as error:
        done, refused = 0.0, amount
        while refused - done > 1.0:
            tried = (done + refused) / 2
            try:
                altered(pieces, change, tried, body)
                done = tried
            except KitError:
                refused = tried
        most = math.floor(done)
        if most < 1:
            raise error from None
        raise KitError(
            message("fit.too_far", most=measured(most), amount=measured(amount)),
            where=change.title,
            do=message("fit.too_far_do", most=measured(most)),
        ) from None
