"""Patch pockets: hemmed, their edges pressed under, sewn on at a placement mark."""

from __future__ import annotations

from kit.geometry import Motion, parallel
from kit.piece.piece import Piece
from kit.sewing import section
from kit.sewing.fields import mark
from kit.sewing.placement import laid_on
from kit.sewing.places import sewn_length
from kit.sewing.sections import pockets as shapes
from kit.sewing.vocabulary import *

CORNERS = ("square", "mitred", "curved")
PLACE_AGREES = 4.0
"""mm by which a pocket and the line it is laid on may differ."""


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
    why = ("why",)
    also = (Also("total", lambda hem, pattern: hem.first + hem.second),)
    rules = (
        whole_edges("mouth"),
        Rule(
            Excess(lambda hem: hem.first - hem.second, of="mouth", slack=0.5),
            "hem_turns",
            says="pocket_turns",
            do="do_deepen_second_turn",
            tells=(),
        ),
    )

    mouth: Run = run(only="Name the pocket's mouth: pocket.top.", closes="hemmed", takes=("first", "second"))
    first: float = width(default=6 * mm, most=DEEPEST_HEM, said="first turn", fills="part")
    second: float = width(most=DEEPEST_HEM, said="second turn", fills="part")
    ends: float = size(default=10 * mm)

    @property
    def row(self) -> float:
        """mm from the fold of the mouth to the row."""
        return max(self.second - 2.0, self.second / 2)

    def effect(self, pattern: Cut) -> Effect:
        return replace(super().effect(pattern), turned=(Turned(self.mouth, self.second, self.row),))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        run = shown(pattern, self.mouth)
        row = Row(run, inset=self.row)
        return (
            turned_up(run, self.second, up="right"),
            turned_up(run, self.second, row, arrows=(), section=section.hem_twice(self.first, self.second)),
        )


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
    stitch_type = ""
    tools = ("iron", "scissors")
    notions = ()
    says = (Say("prepare_{corners}", lambda fold: fold.corners != "square"), "press", "{corners}")
    why = ("why_{corners}",)
    gives = (Of("folded", "edges"),)
    wanted = (Of("pocket_edge_sewn", "edges"),)
    rules = (
        whole_edges("edges"),
        Rule(Of("folded", "edges"), "folded_twice", holds=False, do="do_take_one_out", ends="all"),
        Rule(Raw("edges"), "folded_late", each=True),
        Rule(Asking(_as_added), "folded_otherwise", tells=("edge", "allowance", "added")),
    )

    edges: tuple[Run, ...] = runs(role="pocket", fills={"edge": "edge", "pocket": "piece"})
    allowance: float = width()
    corners: str = word(CORNERS, default="square")

    def effect(self, pattern: Cut) -> Effect:
        return replace(super().effect(pattern), turned=tuple(Turned(run, self.allowance) for run in self.edges))

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


def _in_line(paths: list[Path]) -> Path | None:
    """Paths that follow one another as one, each turned round where it must be; None where they do not."""
    first, *others = paths
    for found in (first, first.reversed()):
        for path in others:
            if found.end.distance(path.start) > 0.5:
                path = path.reversed()
            if found.end.distance(path.start) > 0.5:
                break
            found = found.joined(path)
        else:
            return found
    return None


def _whole_row(piece: Piece, half: Path, line: Path, inset: float) -> Path | None:
    """The row along both halves of a pocket that is cut on the fold, on its outline as it is laid opened out; None
    where the row does not cross the fold or is no outline of the pocket."""
    fold = piece.edge(piece.fold).path
    if fold.distance_to(half.start) < 0.5:
        half = half.reversed()
    if fold.distance_to(half.end) >= 0.5:
        return None
    begins = next(i for i, edge in enumerate(piece.edges) if edge.name == piece.fold)
    first = piece.edges[(begins + 1) % len(piece.edges)].path
    turn = first.tangent_at(0.0).turn_to(line.tangent_at(0.0))
    laid = Motion.rotation(turn, first.start).then(Motion.translation(line.start - first.start))
    left = piece.outline.contains(half.at(half.length / 2) + half.normal_at(half.length / 2) * 2.0)
    try:
        whole = half.joined(half.reversed().moved(Motion.reflection(fold.start, fold.end)))
        row = parallel(whole, inset if left else -inset).moved(laid)
    except KitError:
        return None
    return row if line.distance_to(row.start) < inset + 1.0 else None


@operation
class PatchPocket(Operation):
    """Stitch a pocket onto a placement mark along its folded edges. Each mark on each half takes one pocket.

    Example::

        make.patch_pocket(pocket.left_side, pocket.bottom, pocket.right_side,
                          at=front.pocket_place, allowance=1 * cm)
    """

    kind = "patch_pocket"
    seam_class = "2"  # lapped
    says = ("pin", "sew", "secure", lambda pocket, pattern: pocket.alike(pattern))
    why = ("why",)
    gives = (Of("pocket_on", "at"), Of("pocket_edge_sewn", "edges"))
    rules = (
        whole_edges("edges"),
        Rule(Asking(_mouth_done), "pocket_not_hemmed", tells=("piece",), on="edges"),
        Rule(Asking(_one_each), "pockets_and_places", tells=("number", "places"), on="edges"),
        Rule(Of("folded", "edges"), "pocket_not_folded", tells=("edge", "piece")),
        Rule(Of("pocket_on", "at"), "pocket_twice", holds=False, on="edges"),
        Rule(Asking(_off_place), "pocket_place_size", tells=("own", "length")),
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

    def effect(self, pattern: Cut) -> Effect:
        place = Run(self.at.piece, (self.at.mark.name,), self.at.side)
        return replace(super().effect(pattern), laid=((self.edges[0], place),))

    def minutes(self, pattern: Cut) -> float:
        return 12.0 * len(place_facts(pattern, (self.at,), ""))

    def alike(self, pattern: Cut) -> tuple[Sentence, ...]:
        """The closing sentence when both halves get one."""
        if self.at.side or _at_fold(pattern, self.at):
            return ()
        return both_sides(pattern, (replace(self.edges[0], side=None),))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece = pattern.piece(self.at.piece)
        ground = shown(pattern, Run(piece.name, (piece.edges[0].name,), self.at.side))
        line = self.at.mark.path
        sewn_on = replace(ground, side=None) if _at_fold(pattern, self.at) else ground
        rows = (Row(sewn_on, line=line),) if line is not None else ()
        own = shown(pattern, self.edges[0])
        side = None if pattern.piece(own.piece).fold else own.side  # a pocket cut on the fold is seen whole
        sewn = (Row(replace(run, side=side), inset=self.distance) for run in self.edges)
        around = None if line is None else self._around(pattern, line)
        whole = bool(pattern.piece(own.piece).fold)
        if around is not None and whole:
            rows = (Row(sewn_on, line=around),)
        if line is None or around is None or whole:
            return laid(own, *sewn, focus=None), laid(ground, *rows, focus=None, section=shapes.patch_edge())
        on = Layer(own, on=ground, place=line)
        before = replace(laid(ground, focus=own, pins=self.edges), layers=(Layer(ground), on))
        after = Row(ground, line=around)
        return before, replace(before, rows=(after,), pins=(), section=shapes.patch_edge())

    def _around(self, pattern: Cut, line: Path) -> Path | None:
        """The row on the ground, from one end of the mouth round to the other; None where the line is no outline of the
        pocket."""
        piece = pattern.piece(self.edges[0].piece)
        if line.start.distance(line.end) > 1.0 or _at_fold(pattern, self.at):
            return None
        found = _in_line([path_of(pattern, run) for run in self.edges])
        if found is None:
            return None
        if piece.fold:  # laid whole: the row goes on along the other half
            return _whole_row(piece, found, line, self.distance)
        left = piece.outline.contains(found.at(found.length / 2) + found.normal_at(found.length / 2) * 2.0)
        try:
            return parallel(found, self.distance if left else -self.distance).moved(laid_on(piece, line))
        except KitError:
            return None
