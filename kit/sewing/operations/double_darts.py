"""Darts with two points: sewn from the middle to either point, clipped, pressed.

From the middle outwards, so that both halves run out along the fold: common practice, no source."""

from __future__ import annotations

from kit.piece.double_dart import DoubleDart, double_dart
from kit.sewing.operations.buttons import once
from kit.sewing.operations.folds import staying, through
from kit.sewing.sections import folds as section
from kit.sewing.vocabulary import *

OVERLAP = 20.0
"""mm by which the second part of the row begins over the first (common practice, no source)."""
CLIP = 3.0
"""mm of cloth left between a clip and the stitching (common practice, no source)."""


def _dart(place: Place) -> DoubleDart:
    dart = double_dart(place.mark)
    assert dart is not None  # read so
    return dart


@operation
class SewDoubleDarts(Operation):
    """Sew darts with two points, drawn inside a piece with `add_double_dart`, and press them to the centre or side.

    Example::

        make.double_dart(dress_back.waist_dart)
    """

    kind = "double_dart"
    cautions = ("needle", "pins", "iron", "scissors")
    tools = ("machine", "pins", "iron", "scissors")
    says = ("fold", lambda made, pattern: made.rows(pattern), "press_{press}", lambda made, cut: made.alike(cut))
    gives = (Of("double_dart", "places"),)
    rules = (once("double_dart"),)
    work = Work(2.0, each=8.0, of="places")  # folding, sewing in two parts, tying off, clipping, pressing
    needs_clip: ClassVar[float] = 2 * CLIP

    places: tuple[Place, ...] = places()
    press: str = word(("centre", "side"), default="centre")

    @classmethod
    def agree(cls, asked: Asked) -> None:
        for place in asked.read["places"]:
            if double_dart(place.mark) is None:
                raise KitError(
                    message("refusal.no_double_dart", mark=place.mark.label),
                    where=asked.where,
                    do=message("refusal.no_double_dart_do"),
                )

    def rows(self, pattern: Cut) -> Iterator[Sentence]:
        """How each is sewn, and that those that are deep are clipped."""
        darts = [_dart(place) for place in self.places]
        for place, dart in zip(self.places, darts, strict=True):
            lengths = {"down": (dart.down, "length"), "up": (dart.up, "length"), "over": (OVERLAP, "allowance")}
            half = {"half": (dart.intake / 2, "allowance")}
            yield Sentence("double_dart.sew", {"dart": ((place,), "mark"), **half, **lengths})
        yield Sentence("double_dart.tie", {})
        if any(dart.intake / 2 > self.needs_clip for dart in darts):
            yield Sentence("double_dart.clip", {"left": (CLIP, "allowance")})

    def alike(self, pattern: Cut) -> tuple[Sentence, ...]:
        """That both halves are sewn alike, where all is."""
        return both_sides(pattern, [ground(pattern, place) for place in self.places if place.side is None])

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        first = self.places[0]
        dart, piece = _dart(first), pattern.piece(first.piece)
        run = shown(pattern, ground(pattern, first))
        across = through(piece, dart.fold)
        leg = Row(run, line=staying(across, dart.legs))
        darts = [_dart(place) for place in self.places if place.piece == first.piece]
        legs = (Row(run, line=line) for dart in darts for line in dart.legs)
        return (
            folded_over(run, across, leg, up="right", focus=None, section=section.folded_double()),
            laid(run, *legs, up="wrong", focus=None, section=section.folded()),
        )
