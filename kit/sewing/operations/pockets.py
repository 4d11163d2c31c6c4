"""Patch pockets: hemmed, their edges pressed under, sewn on at a placement mark."""

from __future__ import annotations

from kit.geometry import beside
from kit.sewing import section
from kit.sewing.placement import PLACE_AGREES, row_laid
from kit.sewing.sections import pockets as shapes
from kit.sewing.spans import cloth_left, neighbours
from kit.sewing.vocabulary import *

CORNERS = ("square", "mitred", "curved")
_ON_LINE = 0.1  # mm from the stitch line within which a row lies on it


@operation
class PocketHem(Operation):
    """Hem the mouth of a pocket with its own cloth: `first` turned under, `second` deep; its ends are stitched at the
    side allowance `ends`.

    Example::

        make.pocket_hem(pocket.top, first=6 * mm, second=3 * cm)
    """

    kind = "pocket_hem"
    seam_class = "6.03.01"
    tools = ("machine", "iron", "scissors")
    says = ("turn", "fold", "ends", "out", "sew")
    also = (Also("total", lambda hem, pattern: hem.first + hem.second),)
    changes = (Brings("turned", lambda hem, pattern: (Turned(hem.mouth, hem.second, hem.row),)),)
    rules = (whole_edges("mouth"), deeper_turn("mouth", says="pocket_turns"))

    mouth: Run = run(only="Name the pocket's mouth: pocket.top.", closes="hemmed", takes=("first", "second"))
    first: float = width(default=6 * mm, most=DEEPEST_HEM, said="first turn", fills="part")
    second: float = width(most=DEEPEST_HEM, said="second turn", fills="part")
    ends: float = size(default=10 * mm)

    @property
    def row(self) -> float:
        """mm from the fold of the mouth to the row."""
        return max(self.second - 2.0, self.second / 2)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.mouth)
        whole = replace(run, side=None) if pattern.piece(run.piece).fold else run  # one on the fold is seen whole
        across = tuple(Row(whole, line=line) for line in self._across_ends(pattern, run))
        hemmed = section.hem_twice(self.first, self.second)
        return (
            turned_up(run, self.second, *across, up="right", focus=run),
            turned_up(run, self.second, Row(run, inset=self.row), arrows=(), section=hemmed),
        )

    def _across_ends(self, pattern: Cut, run: Run) -> Iterable[Path]:
        """The rows across the ends of the hem, from its fold down to its inner edge, where the cloth lies double; at
        the fold of a piece there is none."""
        piece, mouth = pattern.piece(run.piece), path_of(pattern, run)
        for name in neighbours(piece, run.edges):
            if name == piece.fold:
                continue
            path, added = piece.edge(name).path, piece.edge(name).allowance or 0.0
            downward = mouth.distance_to(path.start) < mouth.distance_to(path.end)
            path = (path if downward else path.reversed()).between(0.0, min(self.second, path.length))
            inset = self.ends - added if cloth_left(piece, path) else added - self.ends
            yield beside(path, inset) if abs(inset) > _ON_LINE else path


def _as_added(fold: FoldPocket, state: State, pattern: Cut) -> Iterable[Case]:
    """As much is pressed under as was added to the edge."""
    for each in fold.edges:
        for name in each.edges:
            added = pattern.piece(each.piece).edge(name).allowance
            if added is not None:
                off, values = abs(added - fold.allowance), {"added": measured(added, "allowance")}
                yield Case(off <= 1.0, each, name, off, values)


@operation
class FoldPocket(Operation):
    """Press the edges of a pocket under; its lower corners square, mitred or curved.

    Example::

        make.pocket_hem(pocket.top, second=3 * cm)
        make.fold_pocket(pocket.left_side, pocket.bottom, pocket.right_side, allowance=1 * cm)
    """

    kind = "fold_pocket"
    tools = ("iron", "scissors")
    says = (Say("prepare_{corners}", lambda fold: fold.corners != "square"), "press", "{corners}")
    why = ("why_{corners}",)
    gives = (Of("folded", "edges"),)
    wanted = (Of("pocket_edge_sewn", "edges"),)
    changes = (Brings("turned", lambda fold, pattern: tuple(Turned(run, fold.allowance) for run in fold.edges)),)
    rules = (
        whole_edges("edges"),
        Rule(Of("folded", "edges"), "folded_twice", holds=False, do="do_take_one_out", ends="all"),
        Rule(Raw("edges"), "folded_late", each=True),
        Rule(Asking(_as_added), "folded_otherwise"),
    )

    edges: tuple[Run, ...] = runs(role="pocket", fills={"edge": "edge", "pocket": "piece"})
    allowance: float = width()
    corners: str = word(CORNERS, default="square")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        runs = [shown(pattern, run) for run in self.edges]
        turn = tuple((edge, self.allowance) for run in runs for edge in run.edges)
        layers = (Layer(runs[0], up="wrong", turn=turn),)
        return (Scene(layers, arrows=tuple((run, "in") for run in runs), section=shapes.pocket_edge_folded()),)


def _mouth_done(pocket: PatchPocket, state: State, pattern: Cut) -> Iterable[Case]:
    """What is not sewn on, the mouth, is finished: hemmed, faced or bound."""
    held = {(each.piece, name) for each in pocket.edges for name in each.edges}
    for each in pocket.edges:
        piece = pattern.piece(each.piece)
        free = [edge.name for edge in piece.edges if (piece.name, edge.name) not in held]
        raw = any(state.raw(piece, side, name) for side in sides_of(pattern, each) for name in free)
        yield Case(not raw, each)


def _one_each(pocket: PatchPocket, state: State, pattern: Cut) -> Iterable[Case]:
    """As many pockets are sewn on as there are places."""
    first = pocket.edges[0]
    piece = pattern.piece(first.piece)
    pockets = 2 if piece.cut.mirrored and first.side is None else 1
    places = len(place_facts(pattern, (pocket.at,), ""))
    values = {"number": Value(pockets, "count"), "places": Value(places, "count")}
    yield Case(pockets == places or not piece.cut.mirrored, first, values=values)


def _at_fold(pattern: Cut, place: Place) -> bool:
    """The placement line runs to the fold of its piece: the other half of the pocket lies beyond."""
    piece, line = pattern.piece(place.piece), place.mark.path
    if line is None or not piece.fold:
        return False
    fold = piece.edge(piece.fold).path
    return min(fold.distance_to(line.start), fold.distance_to(line.end)) < 1.0


def _off_place(pocket: PatchPocket, state: State, pattern: Cut) -> Iterable[Case]:
    """The placement line is the pocket's outline, the outline without its mouth, or the line of its mouth. A pocket cut
    on the fold is laid whole, and where the line runs to the fold of its piece half of it is drawn there."""
    line = pocket.at.mark.path
    if line is None:
        return ()
    piece = pattern.piece(pocket.edges[0].piece)
    halves = 2 if piece.fold and not _at_fold(pattern, pocket.at) else 1
    around = halves * sum(edge.path.length for edge in piece.edges if edge.name != piece.fold)
    own = halves * sum(sewn_length(pattern, (replace(run, side=sides_of(pattern, run)[0]),)) for run in pocket.edges)
    off = min(abs(line.length - size) for size in (around, own, around - own))
    values = {"own": measured(own), "length": measured(line.length)}
    return (Case(off <= PLACE_AGREES, pocket.edges[0], amount=off, values=values),)


@operation
class PatchPocket(Operation):
    """Stitch a pocket onto a placement mark along its folded edges. Each mark on each half takes one pocket.

    Example::

        make.patch_pocket(pocket.left_side, pocket.bottom, pocket.right_side,
                          at=front.pocket_place, allowance=1 * cm)
    """

    kind = "patch_pocket"
    seam_class = "2"  # lapped
    says = (
        *("pin", "sew", "secure"),
        lambda pocket, pattern: () if _at_fold(pattern, pocket.at) else both_sides(pattern, (pocket.place,)),
    )
    work = Work(0.0, each=12.0, of="at")
    changes = (Brings("laid", lambda pocket, pattern: ((pocket.edges[0], pocket.place),)),)
    gives = (Of("pocket_on", "at"), Of("pocket_edge_sewn", "edges"))
    rules = (
        whole_edges("edges"),
        Rule(Asking(_mouth_done), "pocket_not_hemmed", on="edges"),
        Rule(Asking(_one_each), "pockets_and_places", on="edges"),
        Rule(Of("folded", "edges"), "pocket_not_folded"),
        Rule(Of("pocket_on", "at"), "pocket_twice", holds=False, on="edges"),
        Rule(Asking(_off_place), "pocket_place_size"),
    )

    edges: tuple[Run, ...] = runs(closes="sewn", takes="allowance", role="pocket", fills={"pocket": "piece"})
    at: Place = mark(
        "placement",
        refused="is no placement.",
        do="Mark on the piece where the pocket is laid, and name that mark: at=front.pocket_place.",
    )
    allowance: float = width()
    distance: float = width(default=2 * mm)

    @classmethod
    def agree(cls, asked: Asked) -> None:
        for edges in asked.read["edges"]:
            path_of(asked.reader.cut, edges)

    @property
    def place(self) -> Run:
        """What it is sewn on, told by its mark."""
        return Run(self.at.piece, (self.at.mark.name,), self.at.side)

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece = pattern.piece(self.at.piece)
        ground = shown(pattern, Run(piece.name, (piece.edges[0].name,), self.at.side))
        line = self.at.mark.path
        sewn_on = replace(ground, side=None) if _at_fold(pattern, self.at) else ground
        rows = (Row(sewn_on, line=self._row(pattern, line, True) or line),) if line is not None else ()
        own = shown(pattern, self.edges[0])
        side = None if pattern.piece(own.piece).fold else own.side  # a pocket cut on the fold is seen whole
        sewn = (Row(replace(run, side=side), inset=self.distance) for run in self.edges)
        around = None if line is None else self._row(pattern, line, False)
        if line is None or around is None:
            return laid(own, *sewn, focus=None), laid(ground, *rows, focus=None, section=shapes.patch_edge())
        on = Layer(own, on=ground, place=line)
        before = replace(laid(ground, focus=own, pins=self.edges), layers=(Layer(ground), on))
        after = Row(sewn_on, line=around)
        return before, replace(before, rows=(after,), pins=(), section=shapes.patch_edge())

    def _row(self, pattern: Cut, line: Path, half: bool) -> Path | None:
        """The row on the ground, from one end of the mouth round to the other, or `half` of it."""
        paths = [path_of(pattern, run) for run in self.edges]
        piece, at_fold = pattern.piece(self.edges[0].piece), _at_fold(pattern, self.at)
        return row_laid(piece, paths, line, self.distance, at_fold=at_fold, half=half)
