"""The fly: a zip behind a faced edge that laps over, with a curved row of stitching, and a shield behind it if one is
wanted. The author says which side laps, by naming it first.

The order (seam below, facing on the lap, zip to the under side, lap closed as worn, tape to the facing alone, the curve
last with the shield out of the way) is common practice, no source."""

from __future__ import annotations

from kit.geometry import Cubic, parallel
from kit.piece.role import PieceRole
from kit.sewing import section as seams
from kit.sewing.fields import part
from kit.sewing.operations.zips import Zip, flush
from kit.sewing.sections import closures as section
from kit.sewing.vocabulary import *

BEYOND = 5.0
"""mm by which the facing must reach beyond the curve that holds it (common practice, no source)."""
OUTSIDE = 3.0
"""mm outside its stitch line that the under side is folded, so that the lap covers the zip when it is strained (common
practice, no source)."""
_SPARE = 20.0  # mm that facing and shield may be longer than the opening
_TURN = 1.2  # the curve begins so many laps above its end


def _wide(pattern: Cut, run: Run) -> float:
    """mm from a run to the farthest point of its piece."""
    path = path_of(pattern, run)
    return max(
        path.distance_to(point) for curve in pattern.piece(run.piece).outline.curves for point in curve.points(1)
    )


def _facing_wide(fly: FlyZip, state: State, pattern: Cut) -> Iterator[Case]:
    wide, least = _wide(pattern, fly.facing), fly.lap + BEYOND
    yield off_by(fly.facing, least - wide, wide=wide, lap=fly.lap, least=least)


def _as_long(fly: FlyZip, state: State, pattern: Cut) -> Iterator[Case]:
    """Facing and shield are as long as the opening, or a little longer below."""
    opening = run_length(pattern, fly.over)
    for run in (fly.facing, fly.shield):
        if run is not None:
            long = run_length(pattern, run)
            values = {"length": measured(long), "opening": measured(opening), "most": measured(opening + _SPARE)}
            yield Case(-1.0 <= long - opening <= _SPARE + 0.5, run, amount=abs(long - opening), values=values)


def _lower_end(fly: FlyZip, state: State, pattern: Cut) -> Iterator[Case]:
    """The shield is sewn together at its lower end: one of the edges beside its long one is closed."""
    if fly.shield is None:
        return
    piece = pattern.piece(fly.shield.piece)
    beside = neighbours(piece, fly.shield.edges)
    for side in sides_of(pattern, fly.shield):
        yield Case(any(state.on((piece.name, side, name)) or name == piece.fold for name in beside), fly.shield)


@operation
class FlyZip(Zip):
    """Set in a zip under a fly: the side that laps `over` first, then the one `under` it, as parts of two edges or
    opening marks. `facing` is the edge of the fly facing, `shield` that of a fly shield; `lap` is how far from the edge
    the curved row runs.

    Example::

        left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
        make.fly_zip(left, right, facing=fly_facing.edge, allowance=2 * cm, length=19 * cm)
    """

    kind = "fly_zip"
    cautions = ("needle", "pins", "iron", "scissors")
    tools = ("machine", "zip_foot", "pins", "iron", "chalk", "scissors")
    caught = False
    joined = (*Zip.joined, ("facing", "over"), ("shield", "under"))
    says = (
        "face",
        "press",
        flush("under"),
        Say("shield", lambda fly: fly.shield),
        "stitch_under",
        "close",
        Say("away", lambda fly: fly.shield),
        "tape",
        "curve",
        "bar",
        Say("bar_shield", lambda fly: fly.shield),
    )
    why = ("why", "why_tape")
    also = (Also("out", OUTSIDE),)
    rules = (
        *Zip.rules,
        Rule(Asking(_facing_wide), "fly_facing_narrow"),
        Rule(Asking(_as_long), "fly_facing_length", each=True),
        Rule(Asking(_lower_end), "fly_shield_open"),
    )

    lap: float = width(default=35 * mm)
    facing: Run = part(by_name=True, closes="sewn", takes="allowance")
    shield: Run | None = part(by_name=True, default=None, closes="sewn", takes="allowance")

    @classmethod
    def agree(cls, asked: Asked) -> None:
        super().agree(asked)
        over, under, *more = (asked.read[name] for name in ("over", "under", "facing", "shield"))
        pieces = [run.piece for run in more if run is not None]
        if len({*pieces, over.piece}) < len(pieces) + 1 or under.piece in pieces:
            raise KitError(
                message("refusal.fly_same_piece"), where=in_call(asked.where), do=message("refusal.fly_same_piece_do")
            )

    def roles(self) -> tuple[tuple[str, PieceRole, str], ...]:
        return ((self.facing.piece, "facing", self.over.piece),)

    def minutes(self, pattern: Cut) -> float:
        return 60.0 if self.shield is None else 75.0

    def curve(self, pattern: Cut) -> Path:
        """The curved row on the side that laps over: `lap` mm inside its edge, rounding to the end of the opening."""
        edge = self.line(pattern, self.over)
        lap, long = self.lap, edge.length
        turn = min(_TURN * lap, 0.6 * long)
        straight = edge.between(0.0, long - turn)
        middle = edge.at(long / 2)
        inside = pattern.piece(self.over.piece).outline.contains(middle + edge.normal_at(long / 2) * 2.0)
        row = parallel(straight, lap if inside else -lap)
        inward = edge.normal_at(long) * (1.0 if inside else -1.0)
        round_in = Cubic(row.end, row.end + row.end_tangent * (turn * 0.6), edge.end + inward * (lap * 0.5), edge.end)
        return row.joined(Path.of(round_in))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        over, under, facing = (shown(pattern, run) for run in (self.over, self.under, self.facing))
        zip, shape = Thing("zip", under, self.line(pattern, under), 25.0), section.zip_fly(self.shield is not None)
        return (
            together(over, facing, Row(over), stuff="facing", section=seams.superimposed("main", "facing")),
            laid(under, Row(under, inset=-OUTSIDE), things=(zip,)),
            opened(under, over, Row(over, line=self.curve(pattern)), up="right", section=shape),
        )
