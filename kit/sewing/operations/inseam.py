"""Pockets in a side seam: two bags, one sewn to each side of the mouth, then seam and bags in one row.

The bags are two pieces (a front and a back bag). What closes what: the mouth of the seam's two edges and the bags' own
mouth edges are closed by `pocket_bag`; the rest of the seam and the round of the bags by `pocket_seam`. Every raw
stretch is closed once.
"""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.fields import EMPTY, opening
from kit.sewing.operations.joined import Seam, pinned, pressing
from kit.sewing.reading import mark_label
from kit.sewing.sections import pockets as shapes
from kit.sewing.vocabulary import *

_FINISH = Say("finish", lambda seam: seam.finish != "none")


def _part_of_edge(pocket: PocketBag, state: State, pattern: Cut, run: Run) -> bool:
    """Something of the seam is left above or below the bag."""
    size = pattern.piece(run.piece).edge(run.edges[0]).path.length
    return run.start is not None and run_length(pattern, run) < size - 1.0


@operation
class PocketBag(Seam):
    """Sew the mouth edge of a pocket bag to an opening marked on the garment's edge.

    Example::

        make.pocket_bag(front_bag.mouth, skirt_front.pocket_mouth, allowance=1.5 * cm)
    """

    # right sides together, and turned out beside the garment
    kind = "pocket_bag"
    seam_class = "1"
    cautions = ("needle", "pins", "iron")
    tools = ("machine", "pins", "iron")
    says = ("pin", "sew", _FINISH, "press", both("b"))
    gives = (Of("pocket_bag", "a", each="half"),)
    wanted = (Of("bag_closed", "a", each="half"),)
    rules = (whole_edges("a"), Rule(Each("b", _part_of_edge), "mouth_whole_edge", says="bag_whole_seam", each=True))

    a: tuple[Run, ...] = meets(
        "b", argument="bag", marked="b", closes="sewn", takes="allowance", role="pocket", fills={"bag": "piece"}
    )
    b: tuple[Run, ...] = meets(
        "a", argument="to", marked="b", closes="sewn", takes="allowance", fills={"garment": "piece", "edge": "edge"}
    )
    allowance: float = width()
    finish: str = word(FINISHES, default="zigzag", fills={"": "word.finish"})
    press: str = fixed("one side")
    ease: float = fixed(0.0)

    def effect(self, pattern: Cut) -> Effect:
        found, at = super().effect(pattern), (span for run in self.b for span in spans(pattern, run))
        mouth = tuple(("pocket_mouth", *span.key, f"{span.start:.0f}", f"{span.end:.0f}") for span in at)
        return replace(found, facts=found.facts + mouth, faced=self.runs())

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        bag, garment = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        return (
            together(garment, bag, Row(garment), pins=(garment,), section=section.superimposed("main", "lining")),
            opened(garment, bag, Row(garment, ink="old"), up="right", arrows=((bag, "in"),), section=shapes.bag_sewn()),
        )


def _bags(given: Any, asked: Asked, name: str) -> tuple[Run, Run]:
    if asked.read["mouth"] is None or not isinstance(given, tuple | list) or len(given) != 2:
        raise KitError(
            "the mouth or one of the two bags is missing.",
            where=asked.where,
            do="Write bags=(front_bag.round, back_bag.round), mouth=front.pocket_mouth.",
        )
    one, two = asked.reader.pair(given[0], given[1], asked.at(name))
    return one[0], two[0]


def _where_bags_are(seam: PocketSeam, state: State, pattern: Cut) -> Iterator[Case]:
    """The mouth is the stretch that bags have been sewn to, if any have."""
    sewn = [fact for fact in state.facts if fact[0] == "pocket_mouth"]

    def meant(fact: tuple[str, ...], span: Span) -> bool:
        off = max(abs(float(fact[4]) - span.start), abs(float(fact[5]) - span.end))
        return fact[1:4] == (span.piece, span.side, span.edge) and off <= 1.0

    for span in seam.opens(pattern) if sewn else ():
        at, values = (
            Run(span.piece, (span.edge,), span.side),
            {"start": measured(span.start), "end": measured(span.end)},
        )
        yield Case(any(meant(fact, span) for fact in sewn), at, values=values)


def _equal_bags(seam: PocketSeam, state: State, pattern: Cut) -> Iterator[Case]:
    one, two = (sewn_length(pattern, (run,)) / len(sides_of(pattern, run)) for run in seam.bags)
    yield off_by(seam.bags[0], abs(one - two), 2.0, gap=abs(one - two))


def _part_of_seam(seam: PocketSeam, state: State, pattern: Cut) -> Iterator[Case]:
    start, end = seam.mouth
    yield Case(start >= 1.0 or end <= run_length(pattern, seam.a[0]) - 1.0, seam.a[0])


@operation
class PocketSeam(Seam):
    """Sew a seam with its pocket in one row. `bags`: the round edges of both bags; `mouth`: the opening mark on `a`.

    Example::

        front_round = front_bag.bottom + front_bag.outer + front_bag.upper
        back_round = back_bag.bottom + back_bag.outer + back_bag.upper
        make.pocket_seam(skirt_front.side, skirt_back.side, bags=(front_round, back_round),
                         mouth=skirt_front.pocket_mouth, allowance=1.5 * cm, bag_allowance=1 * cm)
    """

    # down to the mouth, round the bags, and on from the other end of the mouth
    kind = "pocket_seam"
    seam_class = "1.01.01"
    cautions = ("needle", "pins", "iron", "scissors")
    tools = ("machine", "pins", "iron", "scissors")
    says = (pinned("right"), "sew", "round", "on", _FINISH, "clip", "press", both("a", "b"))
    also = (Also("from", lambda seam, pattern: (seam.a[0], seam.mouth[0]), "measured"),)
    gives = (Of("bag_closed", "bags", each="half"),)
    rules = (
        Rule(Of("pocket_bag", "bags", each="half"), "bag_not_set", each=True),
        Rule(Asking(_where_bags_are), "mouth_moved"),
        Rule(Asking(_equal_bags), "bags_unequal"),
        Rule(Asking(_part_of_seam), "mouth_whole_edge", says="mouth_whole_seam"),
    )

    allowance: float = width()
    mouth: tuple[float, float] = opening("a", "b", default=EMPTY)  # mm along a
    bags: tuple[Run, Run] = read_by(_bags, "tuple[Run, Run]", takes="bag_allowance", fills={"": "piece"})
    bag_allowance: float = width(default=None)
    press: str = pressing(default="one side")
    finish: str = word(FINISHES, default="zigzag", fills={"": "word.finish"})
    mark: str = read_by(lambda given, asked, name: mark_label(asked.given["mouth"]), "", way="none", held="")
    ease: float = fixed(0.0)

    @classmethod
    def made(cls, asked: Asked) -> PocketSeam:
        return cls(**asked.read | {"bag_allowance": asked.read["bag_allowance"] or asked.read["allowance"]})

    @property
    def joins(self) -> tuple[tuple[Run, Run], ...]:
        return (*super().joins, self.bags)

    def pocket_mouths(self, pattern: Cut) -> tuple[Run, Run]:
        """The mouth on each of the two edges."""
        return on_both(pattern, self.a[0], self.b[0], self.mouth)

    def closes(self, pattern: Cut) -> tuple[Closing, ...]:
        return closed_but(pattern, self.runs(), self.pocket_mouths(pattern), "sewn")

    def opens(self, pattern: Cut) -> tuple[Span, ...]:
        return tuple(span for run in self.pocket_mouths(pattern) for span in spans(pattern, run))

    def minutes(self, pattern: Cut) -> float:
        return super().minutes(pattern) + 6.0

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        a, b = shown(pattern, self.a[0]), shown(pattern, self.b[0])
        one, two = shown(pattern, self.bags[0]), shown(pattern, self.bags[1])
        return (
            together(b, a, Row(a, gap=self.mouth), pins=(a,), section=section.superimposed()),
            together(two, one, Row(one), section=shapes.bags_together()),
        )
