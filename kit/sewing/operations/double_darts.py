"""Darts with two points: sewn from the middle to either point, clipped, pressed.

From the middle outwards, so that both halves run out along the fold: common practice, no source."""

from __future__ import annotations

from kit.piece.double_dart import DoubleDart, double_dart
from kit.sewing.mark_spot import ground, halves
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
    why = ("why",)
    gives = (Of("double_dart", "places"),)
    rules = (once("double_dart"),)
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

    def minutes(self, pattern: Cut) -> float:
        """8 minutes each: folding, sewing in two parts, tying off, clipping, pressing (common practice, no source)."""
        return 2.0 + 8.0 * sum(len(halves(pattern, place)) for place in self.places)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        found = [Sentence("double_dart.fold", {"places": (self.places, "mark")})]
        deep = False
        for place in self.places:
            dart = _dart(place)
            half = dart.intake / 2
            deep = deep or half > self.needs_clip
            found.append(
                Sentence(
                    "double_dart.sew",
                    {
                        "dart": ((place,), "mark"),
                        "half": (half, "allowance"),
                        "down": (dart.down, "length"),
                        "up": (dart.up, "length"),
                        "over": (OVERLAP, "allowance"),
                    },
                )
            )
        found.append(Sentence("double_dart.tie", {}))
        if deep:
            found.append(Sentence("double_dart.clip", {"left": (CLIP, "allowance")}))
        runs = [ground(pattern, place) for place in self.places if place.side is None]
        return (*found, Sentence(f"double_dart.press_{self.press}", {}), *both_sides(pattern, runs))

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
