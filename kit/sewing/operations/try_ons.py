"""Fittings while a garment is sewn: trying it on, and what is changed of cloth that is cut."""

from __future__ import annotations

from typing import Literal

from kit.body.measures import MEASUREMENTS
from kit.diagnostic import Message, named_edge
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.recut import SLACK, TOLD, EdgeChange, PieceChange
from kit.sewing.new_lines import NEAR, narrow_places, new_lines, runs_there
from kit.sewing.reading import Runs
from kit.sewing.refit import Refit
from kit.sewing.verb import verb
from kit.sewing.vocabulary import *
from kit.units import Size

LEAST_LEFT = 6.0
"""mm of allowance that a plain seam can be sewn and finished with (common practice, no source)."""

_NOT_SEEN = ("facing", "lining", "interfacing", "bag")
Met = Literal["", "changed", "corrected", "elsewhere", "refused"]
Asks = tuple[str, Any, Any]


@operation(verb="")
class TryOn(Operation):
    """A fitting. `asks` are values it changes as written: (parameter, before or None, after). What follows from them is
    filled in when the lesson is worked: the `stage` ("": none is changed; "changed" here and now; "corrected": the
    pattern has the last values already; "elsewhere": this lesson's values are others, so nothing changes; "refused":
    one of its drafts cannot be drawn, `why_refused` says it), and the `refit`. `leave` are edges whose rows stay."""

    kind = "try_on"
    why = ()
    cautions = ("pins",)
    tools = ("pins", "chalk")
    says = (
        lambda made, pattern: Sentence(f"try_on.wear{'_head' if _on_head(pattern) else ''}", {}),
        Say("mark", lambda made: made.places),
        Say("note", lambda made: made.note and made.stage in ("", "changed", "refused")),
        Say("found", lambda made: made.note and made.stage == "corrected"),
        Say("look", lambda made: made.note and made.stage == "elsewhere"),
        lambda made, pattern: made.changed(pattern),
    )

    places: tuple[Place, ...] = ()
    note: str = ""
    asks: tuple[Asks, ...] = ()
    leave: tuple[Run, ...] = ()
    stage: Met = ""
    refit: Refit | None = None
    why_refused: Message | str = ""

    @property
    def uses(self) -> Uses:
        return Uses(pieces=tuple(dict.fromkeys(place.piece for place in self.places)))

    def runs(self) -> tuple[Run, ...]:
        return ()

    def values(self, pattern: Cut) -> dict[str, tuple[Any, str]]:
        return {"places": (self.places, "mark"), "note": (self.note, "text")}

    def effect(self, pattern: Cut) -> Effect:
        """What is basted has been tried on."""
        return Effect(also={"basted": "tried_on"}, refit=self.refit if self.stage == "changed" else None)

    def cautioned(self, pattern: Cut) -> Words:
        """Where it changes cloth, that is trimmed."""
        return (*self.cautions, "scissors") if self.stage == "changed" else self.cautions

    def minutes(self, pattern: Cut) -> float:
        """4 minutes to put it on, 10 for each pair of edges that are marked and sewn anew (common practice, no
        source)."""
        return 4.0 + (5.0 * len(list(self.refit.edges())) if self.refit else 0.0)

    # ---- what it says -----------------------------------------------------------------------------------------

    def changed(self, pattern: Cut) -> Iterator[Sentence]:
        """What changes from now on: values, lines, what is unpicked, trimmed, and the cloth that is left."""
        change = self.refit
        if change is None or self.stage != "changed":
            return
        labels = {value.name: value.label for value in getattr(pattern, "values", ())}
        for turn in change.turns:
            key = "changed" if turn.kind == "length" else f"changed_{turn.kind}"
            kind = "length" if turn.kind == "length" else "count"
            scale = 100 if turn.kind == "share" else 1
            values = {"before": (turn.before * scale, kind), "after": (turn.after * scale, kind)}
            label = labels.get(turn.name, turn.label)
            yield Sentence(f"try_on.{key}", {"name": (label[:1].upper() + label[1:], "text"), **values})
        for line in new_lines(change, pattern):
            yield Sentence(f"try_on.line_{line.key}", {"place": (tuple(line.runs), "place"), **line.values})
        yield from self._other_marks(change, pattern)
        unpicked = runs_there(pattern, (run for run in change.unpicked if not _held(run, self.leave)))
        if unpicked:
            yield Sentence("try_on.unpick", {"place": (unpicked, "place")})
        for key, found in (("open", change.opened), ("basted", change.basted)):
            if runs_there(pattern, found):
                yield Sentence(f"try_on.{key}", {"place": (runs_there(pattern, found), "place")})
        for kind, span in change.shifted:
            runs = runs_there(pattern, [Run(span.piece, (span.edge,))])
            if runs:
                lies = {"stretch": ((runs[0], span.start, span.end), "stretch")}
                ends = {"spot": ((runs[0], span.start), "spot")}
                yield Sentence(
                    f"try_on.{kind}_moved", {"place": (runs, "place"), **(lies if kind == "opening" else ends)}
                )
        yield from self._cloth(change, pattern)
        touched = [Run(piece.now.name, (edge.edge,)) for piece, edge in change.edges()]
        yield from both_sides(pattern, runs_there(pattern, touched))

    def _other_marks(self, change: Refit, pattern: Cut) -> Iterator[Sentence]:
        for piece in change.pieces:
            title = (piece.now.title, "text")
            if piece.only:
                yield Sentence("try_on.redrawn", {"piece": title})
            names = [mark.label for mark in piece.now.marks if mark.name in piece.marks]
            if names:
                yield Sentence("try_on.marks", {"piece": title, "marks": (tuple(names), "names")})
            folds: tuple[Dart | Pleat, ...] = (*piece.now.darts, *piece.now.pleats)
            sewn = {fold for name, fold in change.folded if name == piece.now.name}
            for key, wanted in (("folds_unpick", True), ("folds", False)):
                told = [f.label for f in folds if f.name in piece.folds and (f.name in sewn) is wanted]
                if told:
                    yield Sentence(f"try_on.{key}", {"piece": title, "folds": (tuple(told), "names")})
        for fresh in change.fresh:
            yield Sentence("try_on.fresh", {"piece": (fresh.title, "text")})
        for gone in change.gone:
            yield Sentence("try_on.gone", {"piece": (gone.title, "text")})
        for strip in change.strips:
            for key, by in (("longer", strip.longer), ("wider", strip.wider)):
                if abs(by) > TOLD:
                    way = key if by > 0 else {"longer": "shorter", "wider": "narrower"}[key]
                    values = {"strip": (strip.strip.title, "text"), "size": (abs(by), "length")}
                    yield Sentence(f"try_on.strip_{way}", values)

    def _cloth(self, change: Refit, pattern: Cut) -> Iterator[Sentence]:
        """What is cut off outside the new lines, and where less is left than the allowance."""
        widths: dict[float, list[Run]] = {}
        for piece, edge in change.edges():
            run = Run(piece.now.name, (edge.edge,))
            held = piece.now.edge(edge.edge)
            if edge.shortest is not None:
                continue
            if edge.spare > SLACK * 2 and not held.extra:
                widths.setdefault(held.allowance or 0.0, []).append(run)
        for width, found in widths.items():
            there = runs_there(pattern, found)
            if there and width:
                yield Sentence("try_on.trim", {"place": (there, "place"), "allowance": (width, "allowance")})
            elif there:
                yield Sentence("try_on.trim_line", {"place": (there, "place")})
        for line in narrow_places(change, pattern):
            yield Sentence(f"try_on.{line.key}", {"place": (tuple(line.runs), "place"), **line.values})

    # ---- what it shows ----------------------------------------------------------------------------------------

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        found = []
        for name in self.uses.pieces:
            piece = pattern.piece(name)
            found.append(Layer(shown(pattern, Run(name, (piece.edges[0].name,))), up="right"))
        body = [piece for piece in pattern.pieces if piece.worn and piece.role not in _NOT_SEEN]
        tried = tuple(Layer(shown(pattern, Run(piece.name, (piece.edges[0].name,)))) for piece in body)
        hems = tuple(Run(piece.name, (edge.name,)) for piece in body for edge in piece.edges if edge.role == "hem")
        marked: tuple[Scene, ...] = ()
        if tried:  # where nothing else is looked for, it is hung and its hem levelled
            marked = (Scene(layers=tried, worn=True, pins=() if self.asks else hems),)
        if found:
            marked = (*marked, Scene(layers=tuple(found)))
        if self.refit is None or self.stage != "changed":
            return marked
        sewn = {(run.piece, run.edges[0]) for run in (*self.refit.unpicked, *self.refit.basted)}
        recut = []
        for change in self.refit.pieces:
            if not any(other.name == change.now.name for other in pattern.pieces):
                continue
            there = pattern.piece(change.now.name)
            layer = Layer(shown(pattern, Run(there.name, (there.edges[0].name,))), up="wrong")
            rows = tuple(edge.edge for edge in change.moved if (there.name, edge.edge) in sewn)
            recut.append(Scene(layers=(layer,), recut=change, resewn=rows))
        return (*marked, *recut)

    # ---- what speaks against it -------------------------------------------------------------------------------

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        if self.stage == "refused":
            says = message("sewing_trouble.try_on_refused", why=self.why_refused)
            return (trouble("try_on_refused", says, can=message("sewing_trouble.try_on_refused_do")),)
        change = self.refit if self.stage == "changed" else None
        where = "elsewhere" if self.stage == "elsewhere" else "nothing" if change and change.nothing else ""
        if where and self.asks:
            says, do = (message(f"sewing_trouble.tried_on_{where}{end}") for end in ("", "_do"))
            return (trouble("tried_on_nothing", says, can=do, level="note"),)
        if change is None or not self.asks:
            return ()
        return (*_too_little_cloth(change), *self._left_in_place(change), *_short_strips(change))

    def _left_in_place(self, change: Refit) -> Iterator[Diagnostic]:
        for piece, edge in change.edges():
            run = Run(piece.now.name, (edge.edge,))
            if run not in change.unpicked or not _held(run, self.leave):
                continue
            off = edge.most.off
            way = "in" if off < 0 else "out"
            yield trouble(
                "old_row_left",
                message(f"sewing_trouble.old_row_left_{way}", edge=_named(piece, edge), amount=measured(abs(off))),
                piece.now.title,
                message("sewing_trouble.old_row_left_do"),
                amount=abs(off),
                piece=piece.now.name,
                edge=edge.edge,
            )


def _on_head(pattern: Cut) -> bool:
    """Whether it is worn on the head, where shoes make no difference: of the body's measurements it asks for that of
    the head alone."""
    asked = {name for step in getattr(pattern, "steps", ()) for name in step.uses}
    return asked & MEASUREMENTS.keys() == {"head_girth"}


def _held(run: Run, leave: Iterable[Run]) -> bool:
    return any(run.piece == other.piece and run.edges[0] in other.edges for other in leave)


# ---- cloth that does not suffice ------------------------------------------------------------------------------


def _too_little_cloth(change: Refit) -> Iterator[Diagnostic]:
    for piece in change.pieces:
        short = {edge.edge for edge in piece.moved if edge.shortest}
        for edge in piece.edges:
            at = edge.shortest
            if at is None or at.left is None or at.need is None:
                continue
            if not edge.moved and short & {edge.before, edge.after}:
                continue  # its end lies outside because its neighbour does, of which it is told
            length = edge.new.length
            near = at.along <= length / 2
            far = at.along if near else length - at.along
            beside = named_edge(piece.now.edge(edge.before if near else edge.after))
            spot = message("sewing_trouble.spot_at", edge=beside)
            if far >= length * NEAR:
                spot = message("sewing_trouble.spot_from", far=measured(far), edge=beside)
            values: dict[str, Value | Message] = {"edge": _named(piece, edge), "spot": spot}
            if at.left < 0:
                found = "cloth_beyond", -at.left, {**values, "amount": measured(-at.left)}
                level: Literal["error", "note"] = "error"
            else:
                both = {"left": measured(at.left, "allowance"), "need": measured(at.need, "allowance")}
                plain = change.seam_of(piece.now.name, edge.edge) == "plain_seam" and at.left >= LEAST_LEFT
                found = "cloth_narrow_plain" if plain else "cloth_narrow", at.short, {**values, **both}
                level = "note" if plain else "error"
            key, amount, filled = found
            yield trouble(
                "cloth_short",
                message(f"sewing_trouble.{key}", **filled),
                piece.now.title,
                message(f"sewing_trouble.{key}_do"),
                amount=amount,
                piece=piece.now.name,
                edge=edge.edge,
                level=level,
            )


def _named(piece: PieceChange, edge: EdgeChange) -> Value:
    return named_edge(piece.now.edge(edge.edge))


def _short_strips(change: Refit) -> Iterator[Diagnostic]:
    for strip in change.strips:
        amount = max(strip.longer, strip.wider)
        if amount > TOLD:
            yield trouble(
                "cloth_short",
                message("sewing_trouble.strip_cut_short", amount=measured(amount), strip=titled(strip.strip.title)),
                strip.strip.title,
                message("sewing_trouble.strip_cut_short_do"),
                amount=amount,
            )


# ---- the verb -------------------------------------------------------------------------------------------------


@verb
def try_on(
    reader: Reader,
    *found: Place | str,
    note: str = "",
    leave: Runs = (),
    **changes: Size | float | tuple[Size | float, Size | float],
) -> TryOn:
    """Stop for a fitting: what is found, in words and as marks. A parameter given with its value before and after,
    `underarm_drop=(14 * cm, 11 * cm)`, says that the cloth was cut with the first and is sewn with the second from here
    on; one value alone is the second, the lesson's present one the first.

    The pair tells what this lesson's own cloth went through, as a story is told. It counts while the lesson stands at
    one of these values: whoever sets another has cut other cloth, and nothing changes at this try-on; a difference
    found on one body would be none on the next. The draft that is shown follows the sliders as ever; a build makes the
    corrected pattern, or with `--as-cut` the one first cut. Rows on lines that move are unpicked and sewn again, unless
    `leave` names their edges.

    Example::

        make.try_on("The skirt hangs low at the back.", hem_drop=(9 * cm, 8 * cm))
    """
    where = "try on"
    words = [each for each in found if isinstance(each, str)]
    if len(words) + bool(note) > 1:
        raise KitError("it says twice what was found.", where=where, do="Write it in one text.")
    places = tuple(each for each in found if not isinstance(each, str))
    for place in places:
        if not isinstance(place, Place):
            raise KitError(f"{place!r} is not a mark on a piece.", where=where, do="Name a mark: front.tie_place.")
    asks: list[Asks] = []
    for name, given in changes.items():
        if not isinstance(given, tuple | list):
            asks.append((name, None, given))
        elif len(given) == 2:
            asks.append((name, *given))
        else:
            raise KitError(
                f"{name} needs two values, before and after.", where=where, do=f"Write {name}=(14 * cm, 11 * cm)."
            )
    runs = reader.runs((leave,), f"{where}, leave", True)
    return TryOn(places=places, note=str(words[0] if words else note), asks=tuple(asks), leave=runs)
