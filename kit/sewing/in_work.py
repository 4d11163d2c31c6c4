"""The scenes of an operation as the garment lies when it is sewn.

An operation says what it does: which pieces it lays together, where its rows run. What those pieces have become by then
is not its business; it is put in here, from `Lying`: edges sewn before are drawn sewn and with what they are sewn to,
hems turned, darts shut, facings inside, bands hanging from their edge, rings closed. So no operation can show cloth
that is no longer there.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace

from kit.errors import KitError
from kit.piece.piece import Side
from kit.sewing.beside_others import alike_before, turned
from kit.sewing.caught import come_out
from kit.sewing.clipped_first import clipped_first, gathers_on_top
from kit.sewing.cut import Cut
from kit.sewing.in_the_round import in_the_round
from kit.sewing.legs import End, Leg, run_legs
from kit.sewing.lying import Lying, lying_before
from kit.sewing.on_band import band_layers, folded_beside
from kit.sewing.operation import Operation
from kit.sewing.outcome import Hung
from kit.sewing.over_fold import over_folds
from kit.sewing.places import inside
from kit.sewing.right_sides import in_cloth, right_sides
from kit.sewing.run import Run
from kit.sewing.scene import EdgeLie, Face, Layer, Row, Scene, Stuff, Thing
from kit.sewing.spans import Span, path_of, reach, run_length, runs_opposed, sides_of
from kit.sewing.state import EdgeKey, State

LONG = 180.0
"""mm of a run that are shown whole."""
CROP = 120.0
"""mm of a longer one that are shown."""
_ZIP = 80.0  # mm of a zip that are shown where it is sewn along in one go
_CLOSE = 10.0  # mm from the stitch line within which trimming and folding is seen from near
_NEARER = 55.0  # mm of a run that are shown then
_NEAR = 60.0  # mm from what is shown within which a corner is seen
_BESIDE = 80.0  # mm of a seam along which two pieces are laid beside each other at a corner
_REACH = 0.6  # shares of a long seam's length within which the edge across from it may be seen
_DRAWN_THROUGH = ("elastic", "cord")
_ROUND = 0.15  # share of its chord that a seam may bow and still be laid open
_STRAIGHT = 0.04  # a run bends less than this share of its length, and a part of it tells as much as the whole

_OTHER: dict[Face, Face] = {"right": "wrong", "wrong": "right"}


def shown_scenes(pattern: Cut, operation: Operation) -> tuple[Scene, ...]:
    """The scenes of an operation in a pattern's sewing order, with the cloth as it lies by then. Raises `KitError` as
    `Operation.scenes` does."""
    before = lying_before(pattern, operation)
    look = _Look(pattern, operation, before)
    found: list[Scene] = []
    sewn = before.state
    again = alike_before(pattern, operation)
    scenes = operation.scenes(pattern)
    cut_first = clipped_first(pattern, operation, scenes)
    scenes = tuple(gathers_on_top(pattern, operation, sewn, scene) for scene in scenes)
    if cut_first is not None:
        scenes = (cut_first.alone(pattern), *scenes)
    for number, scene in enumerate(scenes):
        if scene.once and again:
            continue
        lies = look.at(scene)
        if cut_first is not None and number == 1:
            as_it_stands = any(layer.round is not None for layer in lies.layers)
            lies = (
                replace(lies, things=cut_first.cuts(pattern))
                if as_it_stands
                else look.at(cut_first.pinned(pattern, scene))
            )
        made = replace(lies, sewn=sewn, faces=right_sides(scene), section=in_cloth(pattern, scene))
        made = look.dress_beyond(come_out(pattern, operation, made), len(made.layers))
        if not found:
            sewn = _after(pattern, operation, before)
        found.append(replace(made, over=True) if found and turned(found[-1], made) else made)
    return tuple(found)


def pictured_before(pattern: Cut, operation: Operation) -> bool:
    """Whether pictures of an operation are left out, as they would be those of one before it in its step."""
    return alike_before(pattern, operation) and any(scene.once for scene in operation.scenes(pattern))


def _after(pattern: Cut, operation: Operation, before: Lying) -> State:
    """The garment when the first row of an operation is sewn: what its later pictures show."""
    try:
        return before.state.after(operation.outcome(pattern), pattern)
    except KitError:
        return before.state


def _all_along(scene: Scene) -> bool:
    """Whether a zip is sewn along in one straight go, which looks the same from end to end."""
    new = [row for row in scene.rows if row.ink == "new"]
    zips = bool(scene.things) and all(thing.kind in ("zip", "zip_tape") for thing in scene.things)
    return zips and bool(new) and all(row.line is None for row in new)


def _close(layer: Layer) -> tuple[float, ...]:
    """mm from the stitch line to where a layer's allowance is trimmed, folded or lies over in this step."""
    return (*(mm for _, mm in (*layer.trimmed, *layer.creased)), layer.lain or 0.0)


@dataclass(frozen=True)
class _Look:
    """What one operation's scenes are completed by."""

    pattern: Cut
    operation: Operation
    lying: Lying
    known: dict[tuple[str, Side], tuple[EdgeLie, ...]] = field(default_factory=dict)

    def at(self, scene: Scene) -> Scene:
        """The scene with the cloth as it lies."""
        if scene.recut is not None or scene.worn or not scene.layers:
            return scene
        scene = band_layers(self.pattern, self.lying, self._hung(), scene)
        scene = in_the_round(self.pattern, self.lying, self.operation, scene)
        if any(layer.round is not None for layer in scene.layers):
            return replace(scene, layers=tuple(self._fused(layer) for layer in scene.layers))
        whole = over_folds(self.pattern, self.operation, scene)
        own, further = whole.rows[: len(scene.rows)], whole.rows[len(scene.rows) :]
        scene = self._cropped(replace(whole, rows=own))
        scene = replace(scene, layers=tuple(self._dressed(layer) for layer in scene.layers))
        scene = self._joined(scene)
        return replace(scene, rows=(*scene.rows, *further))

    def _hung(self) -> tuple[Hung, ...]:
        try:
            own = self.operation.effect(self.pattern).hung
        except KitError:
            own = ()
        return self.lying.state.hung + tuple(hung for hung in own if hung not in self.lying.state.hung)

    def _fused(self, layer: Layer) -> Layer:
        return replace(layer, fused=layer.fused or self.lying.fused(layer.run.piece))

    def dress_beyond(self, scene: Scene, known: int) -> Scene:
        """The scene with its layers from the number `known` on dressed."""
        return replace(scene, layers=scene.layers[:known] + tuple(map(self._dressed, scene.layers[known:])))

    # ---- one layer ----------------------------------------------------------------------------------------------

    def _dressed(self, layer: Layer) -> Layer:
        """A layer with its sewn edges, its darts and its interfacing."""
        piece = self.pattern.piece(layer.run.piece)
        side = layer.run.side or sides_of(self.pattern, layer.run)[-1]
        if layer.along is not None:
            return replace(layer, fused=self.lying.fused(piece.name))
        mine = {edge for edge, _ in layer.turn}
        if not self.operation.begins:  # what is gone on with lies as its own pictures say
            mine |= {edge for run in self.operation.runs() if run.piece == piece.name for edge in run.edges}
        lies = tuple(lie for lie in self._lies(piece.name, side) if lie.edge not in mine)
        shut = tuple(dict.fromkeys((*layer.shut, *self.lying.shut(piece, side))))
        bound = (*layer.bound, *self._bound(piece.name, side))
        return replace(layer, lies=lies, shut=shut, fused=layer.fused or self.lying.fused(piece.name), bound=bound)

    def _bound(self, piece: str, side: Side) -> tuple[tuple[Run, float], ...]:
        """The edges of one half that are bound by now."""
        found: list[tuple[Run, float]] = []
        for each in self.lying.state.bound:
            halves = sides_of(self.pattern, each.run) if each.run.piece == piece else ()
            found += [(replace(each.run, side=half), each.wide) for half in halves if self._of(half, piece, side)]
        return tuple(found)

    def _of(self, half: Side, piece: str, side: Side) -> bool:
        """Whether a half belongs to what a layer of another half shows: a piece on the fold lies there whole."""
        return half == side or bool(self.pattern.piece(piece).fold)

    def _lies(self, piece: str, side: Side) -> tuple[EdgeLie, ...]:
        if (piece, side) not in self.known:
            self.known[piece, side] = self.lying.edges(self.pattern, self.pattern.piece(piece), side)
        return self.known[piece, side]

    def _way(self, key: EdgeKey, at: float | None = None) -> str:
        """How most of an edge lies, or how it lies `at` mm along it; "" where it is a cut edge."""
        lies = [lie for lie in self._lies(key[0], key[1]) if lie.edge == key[2]]
        if at is not None:
            lies = [lie for lie in lies if lie.start <= at <= lie.end]
        return max(lies, key=lambda lie: lie.end - lie.start).way if lies else ""

    def _partners(self, key: EdgeKey) -> tuple[EdgeKey, ...]:
        """The edges that one is sewn to, the likeliest first: a seam of several edges joins two runs as wholes, and of
        those that one lies beside its partner that is as long and, in one draft, in the same place."""
        own = self.pattern.piece(key[0]).edge(key[2]).path

        def unlike(other: EdgeKey) -> float:
            path = self.pattern.piece(other[0]).edge(other[2]).path
            straight = own.start.distance(path.start) + own.end.distance(path.end)
            crossed = own.start.distance(path.end) + own.end.distance(path.start)
            return abs(own.length - path.length) + min(straight, crossed) * 0.1

        return tuple(sorted(self.lying.partners(key), key=unlike))

    # ---- the part that is shown -----------------------------------------------------------------------------------

    def _ends(self, run: Run) -> dict[End, str]:
        """The edges that meet a run's line at its ends."""
        line = run_legs(self.pattern.piece(run.piece), run.edges, run.side)
        return {"start": line[0].beside("start"), "end": line[-1].beside("end")}

    def _upper(self, focus: Run) -> Run:
        """The stretch of an opening at the end of its edge, where what is sewn in begins; all of a short one."""
        low, high = reach(self.pattern, focus)
        if high - low < 1.5 * _ZIP or len(focus.edges) != 1:
            return focus
        at_end = run_length(self.pattern, replace(focus, start=None, end=None)) - high < low
        return replace(focus, start=high - _ZIP, end=high) if at_end else replace(focus, start=low, end=low + _ZIP)

    def _key(self, run: Run, edge: str) -> EdgeKey:
        return (run.piece, run.side or sides_of(self.pattern, run)[-1], edge)

    def _cropped(self, scene: Scene) -> Scene:
        """The scene with its focus on the part of a long straight run that tells most: the end of a gap, a corner where
        it runs over a seam, else its start."""
        focus = scene.focus
        if focus is not None and _all_along(scene):
            return replace(scene, focus=self._upper(focus))
        if focus is None or focus.start is not None or focus.end is not None:
            return scene
        if scene.things:
            return scene
        try:
            size, path = run_length(self.pattern, focus), path_of(self.pattern, focus)
        except KitError:
            return scene
        narrow = [mm for layer in scene.layers for mm in _close(layer) if 0 < mm <= _CLOSE]
        if len(scene.layers) > 1:  # a row in an allowance that is trimmed or shut in later
            narrow += [row.inset for row in scene.rows if row.ink == "new" and -_CLOSE <= row.inset < 0]
        crop = _NEARER if narrow else CROP
        if any(layer.how == "open" and layer.along is None for layer in scene.layers):
            if not narrow or size < LONG:
                return scene
            left = next((row.gap for row in scene.rows if row.gap is not None), (size, size))
            low, high = max((0.0, left[0]), (left[1], size), key=lambda part: part[1] - part[0])
            middle = min(max((low + high) / 2, crop / 2), size - crop / 2)
            return replace(scene, focus=replace(focus, start=middle - crop / 2, end=middle + crop / 2))
        chord = path.end - path.start
        if size < LONG or chord.length < 1.0:
            return scene
        bow = max(abs(chord.unit().cross(path.at(size * share) - path.start)) for share in (0.2, 0.35, 0.5, 0.65, 0.8))
        if bow > size * _STRAIGHT:
            return scene
        gap = next((row.gap for row in scene.rows if row.gap is not None), None)
        if gap is not None:
            low = max(min(gap[0] - crop / 2, size - crop), 0.0)
            return replace(scene, focus=replace(focus, start=low, end=min(low + crop, size)))
        ends = self._ends(focus)
        faced = [end for end, edge in ends.items() if edge and self._way(self._key(focus, edge)) == "faced"]
        if len(scene.layers) > 1 and faced and all(layer.on in (None, focus) for layer in scene.layers):
            low = 0.0 if faced[0] == "start" else size - crop
            return replace(scene, focus=replace(focus, start=low, end=low + crop))
        sewn = [end for end, edge in ends.items() if edge and self._way(self._key(focus, edge)) in ("seamed", "hung")]
        if not sewn and any(row.folded == "start" for row in scene.rows):  # it begins at the other end
            return replace(scene, focus=replace(focus, start=size - crop, end=size))
        if "start" in sewn or not sewn:
            return replace(scene, focus=replace(focus, start=0.0, end=crop))
        return replace(scene, focus=replace(focus, start=size - crop, end=size))

    # ---- what hangs together --------------------------------------------------------------------------------------

    def _joined(self, scene: Scene) -> Scene:
        """The scene with what its pieces are sewn to, where that is seen."""
        focus = scene.focus
        layers: list[Layer] = []
        more_of_it: list[Row | Thing] = []
        for layer in scene.layers:
            layers.append(layer)
            if layer.along is not None or layer.stuff == "interfacing" or layer.fold is not None:
                continue
            if layer.against is not None:  # the garment under a band that bends is seen as far as its own edge goes
                continue
            run = focus if focus is not None and focus.piece == layer.run.piece else layer.run
            if layer.run.side is not None and run.side != layer.run.side:  # both halves of one piece, on each other
                run = replace(run, side=layer.run.side)
            if run.side is None:
                run = replace(run, side=sides_of(self.pattern, run)[-1])
            if focus is None:
                continue
            there = {(each.run.piece, each.run.side) for each in (*scene.layers, *layers)}
            more, on = self._beside(scene, layer, run, there)
            layers += more
            covered = any(
                each.how == "together"
                and each.on is not None
                and each.on.piece == layer.run.piece
                and each.on.side == layer.run.side
                for each in scene.layers
            )
            more_of_it += on if not covered else []
            layers += self._across(scene, layer, run, there)
        layers, sewn = self._unpressed(layers)
        rows = [each for each in more_of_it if isinstance(each, Row)]
        things = [each for each in more_of_it if isinstance(each, Thing)]
        return replace(scene, layers=tuple(layers), rows=(*scene.rows, *rows, *sewn), things=(*scene.things, *things))

    def _unpressed(self, layers: list[Layer]) -> tuple[list[Layer], list[Row]]:
        """Where two pieces lie on each other along a seam that waits for the iron, its allowances stand out flat beside
        the row."""
        flat: set[EdgeKey] = set()
        rows: list[Row] = []
        for layer in layers:
            on = layer.on
            if not layer.ring or layer.how != "together" or on is None:
                continue
            for seam in self.lying.state.seams:
                keys = sorted(seam, key=lambda key: key[0] != on.piece)
                if {key[0] for key in keys} != {on.piece, layer.run.piece} or len(keys) != 2:
                    continue
                if all(self.lying.state.touches(("unpressed", *key)) for key in keys):
                    flat |= set(keys)
                    rows.append(Row(Run(keys[0][0], (keys[0][2],), keys[0][1]), ink="old"))
        if not flat:
            return layers, []
        return [
            replace(layer, lies=tuple(lie for lie in layer.lies if self._key(layer.run, lie.edge) not in flat))
            for layer in layers
        ], sorted(rows, key=lambda row: self._place(row.run))

    def _place(self, run: Run) -> tuple[int, int]:
        """Where a run of one edge stands in the draft: its piece and its edge, as they were drawn."""
        piece = self.pattern.piece(run.piece)
        return self.pattern.pieces.index(piece), [edge.name for edge in piece.edges].index(run.edges[0])

    def _across(self, scene: Scene, layer: Layer, run: Run, there: set[tuple[str, Side | None]]) -> list[Layer]:
        """What is sewn to the edge across from a long seam that is opened out, where the picture reaches that far."""
        seam = layer.on is not None and layer.how == "open"
        if not (seam or any(each.how == "open" and each.along is None for each in scene.layers)) or layer.ring:
            return []
        path = path_of(self.pattern, run)
        piece, beside = self.pattern.piece(run.piece), set(self._ends(run).values())
        for edge in piece.edges:
            if edge.name in run.edges or edge.name in beside or edge.name == piece.fold:
                continue
            key = self._key(run, edge.name)
            if (
                path.distance_to(edge.path.at(edge.path.length / 2)) > path.length * _REACH
                or self._way(key) != "seamed"
            ):
                continue
            for partner in self._partners(key):
                if {(partner[0], partner[1]), (partner[0], None)} & there or not self._one_cloth(partner, key):
                    continue
                there.add((partner[0], partner[1]))
                other, on = Run(partner[0], (partner[2],), partner[1]), Run(key[0], (key[2],), key[1])
                stuff = self._stuff(partner[0])
                return [self._dressed(Layer(other, up=layer.up, stuff=stuff, on=on, how="open"))]
        return []

    def _beside(
        self, scene: Scene, layer: Layer, run: Run, there: set[tuple[str, Side | None]]
    ) -> tuple[list[Layer], list[Row | Thing]]:
        """What one layer is sewn to along the run that is looked at, and at its ends."""
        own = self._along(scene, layer, run, there)
        if own:
            return own, []
        ends = self._ends(run)
        piece = self.pattern.piece(run.piece)
        keys = {end: self._key(run, edge) for end, edge in ends.items() if edge and edge != piece.fold}
        far = self._far_side(run, keys, folded=piece.fold in ends.values())
        if far is not None and far[0] != run.piece and not {(far[0], far[1]), (far[0], None)} & there:
            end = next(iter(keys))
            beyond = self._beyond(run, end, keys[end], far)[1]
            return self._ring(layer, run, keys[end], far, beyond), []
        found: list[Layer] = []
        rows: list[Row | Thing] = []
        found += self._beyond_opening(layer, run, there)
        for end, key in keys.items():
            if not self._in_sight(run, end):
                continue
            way = self._way(key)
            for partner in self._partners(key):
                if (
                    (partner[0], partner[1]) in there
                    or (partner[0], None) in there
                    or not self._one_cloth(partner, key)
                ):
                    continue
                there.add((partner[0], partner[1]))
                if way == "seamed":
                    more, on_it = self._at_corner(scene, layer, run, end, key, partner)
                    found.append(more)
                    rows += on_it
                elif way == "faced" and layer.up == "wrong":
                    found.append(self._facing(key, partner))
                elif way == "hung":
                    band = Run(partner[0], (partner[2],), partner[1])
                    hanging = folded_beside(self.pattern, self.lying, self._hung(), layer, band)
                    found += [hanging] if hanging is not None else []
                break
        return found, rows

    def _ring(self, layer: Layer, run: Run, key: EdgeKey, far: EdgeKey, beyond: str) -> list[Layer]:
        """The far side of a tube, below; what lies inside it along the edge there covers it."""
        turn = tuple((beyond, deep) for _, deep in layer.turn[:1] if self._now(far, beyond))
        there, up = Run(far[0], (far[2],), far[1]), _OTHER[layer.up]
        on = Run(run.piece, (key[2],), run.side)
        back = tuple((self._gap(run, (far[0], far[1], beyond)), deep) for held, deep in layer.back if held == run)
        below = Layer(there, up=up, stuff=self._stuff(far[0]), on=on, how="together", ring=True, turn=turn, back=back)
        found = [self._dressed(below)]
        at = (far[0], far[1], beyond)
        if up == "wrong" and self._way(at) == "faced":
            for partner in self._partners(at):
                if self._one_cloth(partner, at):
                    return [*found, replace(self._facing(at, partner), ring=True)]
        return found

    def _gap(self, run: Run, partner: EdgeKey) -> Run:
        """The part of the partner's edge that lies beside a gap, whose allowance is folded in as well."""
        key = self._key(run, run.edges[0])
        return Run(partner[0], (partner[2],), partner[1], *self._same_part(key, self._part_of(key, run), partner))

    def _beyond_opening(self, layer: Layer, run: Run, there: set[tuple[str, Side | None]]) -> list[Layer]:
        """What the same edge is sewn to beyond an end of the run: the seam above or below an opening."""
        if len(run.edges) != 1 or (run.start is None and run.end is None):
            return []
        key = self._key(run, run.edges[0])
        size = self.pattern.piece(run.piece).edge(run.edges[0]).path.length
        low, high = self._part_of(key, run)
        if self._way(key, (low + high) / 2) == "seamed" and not self.lying.open_at(Span(*key, low, high)):
            return []
        for part in ((high, min(high + _BESIDE, size)), (max(low - _BESIDE, 0.0), low)):
            if part[1] - part[0] < 5.0 or self._way(key, (part[0] + part[1]) / 2) != "seamed":
                continue
            for partner in self._partners(key):
                if {(partner[0], partner[1]), (partner[0], None)} & there or not self._one_cloth(partner, key):
                    continue
                there.add((partner[0], partner[1]))
                on = Run(*key[:1], (key[2],), key[1], *part)
                other = Run(partner[0], (partner[2],), partner[1], *self._same_part(key, part, partner))
                under = any(edge == key[2] for edge, _ in layer.turn)  # its own edge there may be raw still
                stuff = self._stuff(partner[0])
                back = tuple((self._gap(run, partner), deep) for held, deep in layer.back if held == run)
                beside = Layer(other, up=layer.up, stuff=stuff, on=on, how="open", ring=under, back=back)
                return [self._dressed(beside)]
        return []

    def _one_cloth(self, partner: EdgeKey, key: EdgeKey) -> bool:
        """Whether the partner is the half beside this one, and not its other half as well."""
        halves = self.pattern.piece(partner[0]).sides
        return len(halves) == 1 or partner[1] == key[1] or len(self.pattern.piece(key[0]).sides) == 1

    def _along(self, scene: Scene, layer: Layer, run: Run, there: set[tuple[str, Side | None]]) -> list[Layer]:
        """What is sewn to the run itself, where it is a seam already."""
        key = self._key(run, run.edges[-1] if run is not layer.run else run.edges[0])
        part = self._part_of(key, run)
        way = self._way(key, (part[0] + part[1]) / 2)
        sewn_now = any(each.on is not None and run.piece in (each.on.piece, each.run.piece) for each in scene.layers)
        if way not in ("seamed", "faced") or (sewn_now and len(scene.layers) > 1):
            return []
        for partner in self._partners(key):
            if (partner[0], partner[1]) in there or not self._one_cloth(partner, key):
                continue
            if way == "seamed" or scene.beside:
                on = Run(key[0], (key[2],), key[1], *part)
                other = Run(partner[0], (partner[2],), partner[1], *self._same_part(key, part, partner))
                stuff = self._stuff(partner[0])
                if self._together(scene, key, on):
                    there.add((partner[0], partner[1]))
                    on, other = replace(on, start=None, end=None), replace(other, start=None, end=None)
                    made = Layer(other, up=_OTHER[layer.up], stuff=stuff, on=on, how="together", ring=True)
                else:
                    made = Layer(other, up=layer.up, stuff=stuff, on=on, how="open")
                return [self._dressed(made)]
            if layer.up == "wrong":
                return [self._facing(key, partner)]
        return []

    def _together(self, scene: Scene, key: EdgeKey, on: Run) -> bool:
        """Whether two pieces still lie on each other along their seam: it waits for the iron, which this step does not
        bring, or bends so much that opened out it does not lie flat."""
        path = path_of(self.pattern, on)
        chord = path.end - path.start
        waits = self.lying.state.touches(("unpressed", *key)) and not scene.arrows
        if waits or chord.length < 1.0:
            return True
        bow = max(abs(chord.unit().cross(path.at(path.length * s) - path.start)) for s in (0.25, 0.5, 0.75))
        return bow > _ROUND * chord.length

    def _part_of(self, key: EdgeKey, run: Run) -> tuple[float, float]:
        """The part of an edge that a run of edges takes, mm along the edge as drafted."""
        size = self.pattern.piece(key[0]).edge(key[2]).path.length
        if run.start is None and run.end is None:
            return 0.0, size
        at = 0.0
        for leg in run_legs(self.pattern.piece(run.piece), run.edges, run.side):
            if leg.edge == key[2]:
                low = min(max((run.start or 0.0) - at, 0.0), leg.size)
                high = min(max((leg.size + at if run.end is None else run.end) - at, 0.0), leg.size)
                if high - low < 1.0:
                    return 0.0, size
                return (low, high) if leg.forward else (leg.size - high, leg.size - low)
            at += leg.size
        return 0.0, size

    def _same_part(self, key: EdgeKey, part: tuple[float, float], partner: EdgeKey) -> tuple[float, float]:
        """The part of the partner's edge that lies beside a part of an edge."""
        size = self.pattern.piece(partner[0]).edge(partner[2]).path.length
        own = self.pattern.piece(key[0]).edge(key[2]).path.length
        low, high = part[0] / own * size, part[1] / own * size
        return (size - high, size - low) if self._opposed(key, partner) else (low, high)

    def _opposed(self, key: EdgeKey, partner: EdgeKey) -> bool:
        return runs_opposed(self.pattern, Run(key[0], (key[2],), key[1]), Run(partner[0], (partner[2],), partner[1]))

    def _facing(self, key: EdgeKey, partner: EdgeKey) -> Layer:
        """What lies inside a finished edge, on top of the piece's wrong side."""
        on, run = Run(key[0], (key[2],), key[1]), Run(partner[0], (partner[2],), partner[1])
        return self._dressed(Layer(run, up="right", stuff=self._stuff(partner[0]), on=on, how="together"))

    def _stuff(self, piece: str) -> Stuff:
        return "facing" if self.pattern.piece(piece).role == "facing" else "main"

    def _in_sight(self, run: Run, end: End) -> bool:
        """Whether a run's corner lies near the part of it that is shown."""
        if end == "start":
            return (run.start or 0.0) < _NEAR
        return run.end is None or sum(leg.size for leg in self._line(run)) - run.end < _NEAR

    def _line(self, run: Run) -> Iterable[Leg]:
        return run_legs(self.pattern.piece(run.piece), run.edges, run.side)

    def _far_side(self, run: Run, keys: dict[End, EdgeKey], folded: bool) -> EdgeKey | None:
        """The edge on the far side of a tube: both ends of the run lie at seams with one and the same piece."""
        found = []
        for end, key in keys.items():
            if self._way(key) != "seamed" or self._open_there(run, end, key):
                return None
            found.append([partner for partner in self._partners(key) if self._one_cloth(partner, key)])
        if not found or not all(found) or (len(found) == 1 and not folded):
            return None
        pieces = {each[0][0] for each in found}
        return found[0][0] if len(pieces) == 1 else None

    def _at_corner(
        self, scene: Scene, layer: Layer, run: Run, end: End, key: EdgeKey, partner: EdgeKey
    ) -> tuple[Layer, list[Row | Thing]]:
        """The piece beyond a seam at the end of the run, laid open beside it; what this step does along the run goes on
        there: rows, and what is drawn through a casing."""
        (part, theirs), next_edge = self._beyond(run, end, key, partner)
        now = self._now(partner, next_edge)
        turn = tuple((next_edge, depth) for edge, depth in layer.turn if edge in run.edges and now)
        made = Layer(
            Run(partner[0], (partner[2],), partner[1], *theirs),
            up=layer.up,
            stuff=self._stuff(partner[0]) if layer.stuff != "main" else "main",
            on=Run(key[0], (key[2],), key[1], *part),
            how="open",
            turn=turn[:1],
        )
        found: list[Row | Thing] = []
        if now:
            going = Run(partner[0], (next_edge,), partner[1])
            found += [
                replace(row, run=going, goes_on=True, gap=None)
                for row in scene.rows
                if row.line is None and row.run.piece == run.piece and set(row.run.edges) <= set(run.edges)
            ]
            for thing in scene.things:
                if thing.kind in _DRAWN_THROUGH and set(thing.run.edges) <= set(run.edges):
                    deep = path_of(self.pattern, run).distance_to(thing.line.at(thing.line.length / 2))
                    line = inside(self.pattern, going, deep)
                    found.append(replace(thing, run=going, line=line))
        return self._dressed(made), found

    def _beyond(
        self, run: Run, end: End, key: EdgeKey, partner: EdgeKey
    ) -> tuple[tuple[tuple[float, float], tuple[float, float]], str]:
        """At the end of a run, where the edge beside it is sewn to a partner: the first bit of the edge and of the
        partner's (mm along each as drafted), and the partner piece's own edge that goes on there."""
        legs = tuple(self._line(run))
        first = legs[0 if end == "start" else -1].point(end)
        path = self.pattern.piece(key[0]).edge(key[2]).path
        size = path.length
        at_start = path.start.distance(first) < path.end.distance(first)
        part = (0.0, min(_BESIDE, size)) if at_start else (max(size - _BESIDE, 0.0), size)
        theirs = self._same_part(key, part, partner)
        other = self.pattern.piece(partner[0])
        far = other.edge(partner[2]).path.length
        corner: End = "start" if theirs[0] < far - theirs[1] else "end"
        return (part, theirs), Leg(other, partner[1], partner[2]).beside(corner)

    def _open_there(self, run: Run, end: End, key: EdgeKey) -> bool:
        """Whether the seam beside the end of a run is an opening just there: a zip, a vent."""
        legs = tuple(self._line(run))
        first = legs[0 if end == "start" else -1].point(end)
        path = self.pattern.piece(key[0]).edge(key[2]).path
        low = 0.0 if path.start.distance(first) < path.end.distance(first) else path.length - 2.0
        return self.lying.open_at(Span(key[0], key[1], key[2], low, low + 2.0))

    def _now(self, partner: EdgeKey, edge: str) -> bool:
        """Whether this operation works along an edge of the partner's half."""
        return any(
            run.piece == partner[0] and edge in run.edges and partner[1] in sides_of(self.pattern, run)
            for run in self.operation.runs()
        )
