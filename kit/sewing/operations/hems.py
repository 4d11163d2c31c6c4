"""Hems stitched by machine: turned once, turned twice, narrow."""

from __future__ import annotations

from kit.sewing import section
from kit.sewing.named import ends_within
from kit.sewing.places import raw_beside
from kit.sewing.vocabulary import *

EDGE = 2.0  # mm from the inner fold to the row


def clipped(hem: Hem, pattern: Cut) -> Iterable[Sentence]:
    """Where the hem ends before its edge does, the allowance is clipped: the rest lies as it was (common practice, no
    source)."""
    ends = ends_within(pattern, hem.edges)
    return (Sentence("hem.clip_ends", {"ends": (ends, "landmarks")}),) if ends else ()


BEGUN = (Say("hem.ring", lambda hem: hem.ring), clipped, Say("hem.catch", lambda hem: hem.catching))
"""What every hem says first."""
FINISHED = Say("hem.finish", lambda hem: hem.second == 0 and hem.finish != "none")
TURNED = (
    Say("hem.first", lambda hem: hem.second > 0 and not hem.narrow),
    Say("hem.second", lambda hem: hem.second > 0 and not hem.narrow),
    FINISHED,
    Say("hem.single", lambda hem: hem.second == 0),
)
"""How the edge is turned up, once or twice."""


def _one_row_each(hem: Hem, state: State, pattern: Cut) -> Iterable[Case]:
    """By the time they are stitched edges named together are one row, or each is a row of its own: beside a slit its
    ends are finished edges, where nothing will be sewn any more."""
    for case in EndToEnd("edges").cases(hem, state, pattern):
        own = not case.holds and raw_beside(state, pattern, hem.edges) is None
        yield case._replace(holds=True) if own else case


ONE_ROW_EACH = Rule(Asking(_one_row_each), "not_joined_yet", each=True)


def stitched(*says: str | Say, press: str = "press") -> Stage:
    """The second stage of a hem, what is folded being stitched."""
    return Stage("stitch", (*says, press), rules=(ONE_ROW_EACH,))


@operation
class Hem(Operation):
    """Turn an edge up: twice when `second` is given, else once with its raw edge finished.

    Example::

        make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
    """

    # second: the finished hem, stitched near the inner fold; 0: turned once; catching: facing ends folded in with it;
    # ring: the edge is a closed ring already, as at a sleeve or cuff
    kind = "hem"
    tools: ClassVar[Words] = ("machine", "pins", "iron")
    crosses = True
    stages: ClassVar[tuple[Stage, ...]] = (
        Stage("fold", (*BEGUN, Say("narrow", lambda hem: hem.narrow), *TURNED), sews=False),
        stitched("{sewn}", Say("lap_rows", lambda hem: hem.ring)),
    )
    lastly = (in_two_rows("edges"),)
    why: ClassVar[Keys] = ("why_{turned}",)
    also: ClassVar[tuple[Also, ...]] = (Also("total", lambda hem, pattern: hem.first + hem.second), Also("row", EDGE))
    gives: ClassVar[tuple[Of, ...]] = (
        Of("shut_in", "edges", when=lambda hem: hem.second > 0),
        Of("shut_in", "catching", when=lambda hem: hem.second > 0),
    )
    changes = (
        Brings(
            "turned",
            lambda hem, pattern: tuple(
                Turned(run, hem.depth, hem.rows(run)[0].inset) for run in (*hem.edges, *hem.catching)
            ),
        ),
    )
    rules: ClassVar[Rules] = (
        Rule(Hanging("catching", "edges"), "caught_loose", each=True),
        Rule(Ring("edges"), "not_a_ring_yet", when=lambda hem: hem.ring),
        deeper_turn("edges", when=lambda hem: hem.second > 0),
    )

    edges: tuple[Run, ...] = runs(closes="hemmed", takes=("first", "second"))
    first: float = width(most=DEEPEST_HEM, said="first turn")
    second: float = size(default=0, most=DEEPEST_HEM, said="second turn")
    catching: tuple[Run, ...] = row(
        by_name=True, default=(), closes="hemmed", takes=("first", "second"), fills={"caught": "place"}
    )
    finish: str = word(FINISHES, default="zigzag", fills={"": "word.finish"})
    narrow: bool = fixed(False)
    ring: bool = flag(default=False)

    @property
    def depth(self) -> float:
        """mm of the finished hem."""
        return self.second if self.second > 0 else self.first

    @property
    def turned(self) -> str:
        """The key of how it is turned."""
        return "narrow" if self.narrow else "twice" if self.second > 0 else "once"

    @property
    def sewn(self) -> str:
        """The key of how it is sewn."""
        if self.second:
            return "sew"
        return "sew_raw" if self.finish == "none" else "sew_single"

    def cautioned(self, pattern: Cut) -> Words:
        """A hem on a part of an edge is clipped at its ends."""
        return (*self.cautions, "scissors") if ends_within(pattern, self.edges) else self.cautions

    def values(self, pattern: Cut) -> dict[str, tuple[object, str]]:
        part = "part" if self.second > 0 else "allowance"
        return super().values(pattern) | {"first": (self.first, part), "second": (self.second, part)}

    def _section(self) -> Section:
        return section.hem_twice(self.first, self.second) if self.second > 0 else section.hem_once()

    def rows(self, run: Run) -> tuple[Row, ...]:
        return (Row(run, inset=max(self.depth - EDGE, self.depth / 2)),)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.edges[0])
        scene = turned_up(run, self.depth, *self.rows(run), section=self._section())
        caught = [shown(pattern, end, run.side) for end in self.catching if end.side in (None, run.side)]
        turns = [tuple((edge, self.depth) for edge in end.edges) for end in caught]
        ends = (Layer(end, stuff="facing", on=run, turn=turn) for end, turn in zip(caught, turns, strict=True))
        return (replace(scene, layers=(*scene.layers, *ends)),)


@operation(verb="narrow_hem")
class NarrowHem(Hem):
    """Two equal narrow turns.

    Example::

        make.narrow_hem(sleeve.wrist, turn=5 * mm)
    """

    first: float = width(default=5 * mm, most=15.0, argument="turn")
    second: float = read_by(lambda given, asked, name: asked.read["first"], "", way="none", held=0.0)
    finish: str = fixed("zigzag")
    narrow: bool = fixed(True)
