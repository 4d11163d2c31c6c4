"""What is folded out of a piece before its edge is sewn: darts, pleats and tucks."""

from __future__ import annotations

from kit.diagnostic import named_edge
from kit.piece.dart import dart_of
from kit.piece.dart import depth as dart_depth
from kit.piece.dart import fold_line as dart_fold
from kit.piece.dart import intake as dart_intake
from kit.piece.dart import legs as dart_legs
from kit.piece.darts_and_pleats import Dart, Pleat
from kit.piece.piece import Piece
from kit.piece.pleat import fold_line as pleat_fold
from kit.piece.pleat import intake, pleat_of
from kit.sewing.handle import piece_of
from kit.sewing.marked import Fold
from kit.sewing.open_folds import open_folds
from kit.sewing.scenes import sewn_shut
from kit.sewing.sections import folds as shapes
from kit.sewing.vocabulary import *


def _read(given: tuple[object, ...], asked: Asked, name: str) -> tuple[Fold, ...]:
    """Folds named one by one, or all of the operation's kind on whole pieces."""
    reader, kind, where = asked.reader, asked.where, asked.where
    found: list[Fold] = []
    for each in given:
        if isinstance(each, list | tuple):
            found += _read(tuple(each), asked, name)
        elif isinstance(each, Fold):
            found.append(each)
        elif isinstance(each, Place) and each.mark.kind == "dart":
            raise KitError(
                f"{each.said} has two points and opens on no edge.",
                where=where,
                do="Write make.double_dart(...) for it.",
            )
        elif isinstance(each, PieceHandle):
            piece, side = piece_of(each)
            names = {name: edge for k, name, edge in _all(reader.cut.piece(piece.name)) if k == kind}
            if not names and kind == "dart" and (spared := reader.cut.piece(piece.name).spared):
                found.append(Fold(piece.name, spared[0], "", side))
            elif not names:
                raise KitError(f"it has no {kind}.", where=f"{where}, {piece.title}", do="Draw one, or leave it out.")
            found += [Fold(piece.name, name, edge, side) for name, edge in names.items()]
        else:
            raise KitError(
                f"{each!r} is no {kind}.", where=where, do=f"Name a piece with {kind}s, or one of them: front.{kind}_1."
            )
    if not found:
        raise KitError(f"no {kind} is named.", where=where, do=f"Name a piece with {kind}s, or one of them.")
    for fold in found:
        drawn = [k for k, name, _ in _all(reader.cut.piece(fold.piece)) if name == fold.name]
        (real,) = drawn if fold.edge else ("dart",)  # what a figure does not need is always a dart
        if real != kind:
            raise KitError(f"{fold.said} is a {real}, not a {kind}.", where=where, do=f"Write make.{real}(...) for it.")
    return tuple(dict.fromkeys(found))


def _all(piece: Piece) -> list[tuple[str, str, str]]:
    """(dart, pleat or tuck; name; edge)."""
    return [("dart", d.name, d.edge) for d in piece.darts] + [(p.kind, p.name, p.edge) for p in piece.pleats]


@operation
class Folding(Operation):
    """Darts, pleats or tucks of pieces, each on the halves it is meant on."""

    cautions = ("needle", "pins", "iron")
    tools = ("machine", "pins", "iron")
    fact: ClassVar[str] = "pleated"

    folds: tuple[Fold, ...] = read_by(_read, "PieceHandle | Fold", way="rest", argument="what", needed=True)

    @property
    def real(self) -> tuple[Fold, ...]:
        """Those that there are, without the darts this figure does not need."""
        return tuple(fold for fold in self.folds if fold.edge)

    def runs(self) -> tuple[Run, ...]:
        """The edges they open on."""
        return tuple(dict.fromkeys(_edge(fold) for fold in self.real))

    def _halves(self, pattern: Cut) -> list[tuple[Fold, Fact]]:
        return [
            (fold, (self.fact, fold.piece, side, fold.name))
            for fold in self.real
            for side in sides_of(pattern, _edge(fold))
        ]

    def effect(self, pattern: Cut) -> Effect:
        return Effect(facts=tuple(fact for _, fact in self._halves(pattern)))

    def minutes(self, pattern: Cut) -> float:
        """6 minutes each: folding, sewing, tying off, pressing (common practice, no source)."""
        if not self.real:
            return 0.0
        return 2.0 + 6.0 * len(self._halves(pattern))

    def check(self, state: State, pattern: Cut) -> tuple[Diagnostic, ...]:
        found: dict[str, Diagnostic] = {}
        for fold, fact in self._halves(pattern):
            piece = pattern.piece(fold.piece)
            self._whole(piece, fold.name)
            for mouth in (each for each in open_folds(piece) if each.name == fold.name):
                span = Span(piece.name, fact[2], mouth.edge, mouth.start, mouth.end)  # type: ignore[arg-type]
                late = any(done.span.overlap(span) > 0.5 for done in state.on(span.key))
                if late or fact in state.facts:
                    code, do = ("late", "fold_late_do") if late else ("twice", "do_take_one_out")
                    values = {"edge": named_edge(piece.edge(mouth.edge))} if late else {}
                    found[fold.said] = trouble(
                        f"{'dart' if mouth.kind == 'dart' else 'pleat'}_{code}",
                        message(f"sewing_trouble.fold_{code}", fold=mouth.label, **values),
                        piece.title,
                        message(f"sewing_trouble.{do}"),
                        piece=piece.name,
                        edge=mouth.edge,
                    )
        return tuple(found.values())

    def _whole(self, piece: Piece, name: str) -> Dart | Pleat:
        raise NotImplementedError

    def _near(self, pattern: Cut) -> tuple[Piece, Run, Run]:
        """The piece that is shown, the edge of its first fold, and the part of that edge to look at."""
        fold = self.real[0]
        piece, run = pattern.piece(fold.piece), shown(pattern, _edge(fold))
        it = self._whole(piece, fold.name)
        wide, size = it.end - it.start, piece.edge(fold.edge).path.length
        return piece, run, replace(run, start=max(0.0, it.start - wide), end=min(size, it.end + wide))


def _edge(fold: Fold) -> Run:
    """The edge that a fold opens on."""
    return Run(fold.piece, (fold.edge,), fold.side)


def _toward(piece: Piece, edge: str, end: str) -> str:
    """The edge that lies beyond the start or end of another."""
    path = piece.edge(edge).path
    here = path.start if end == "start" else path.end
    beside = neighbours(piece, (edge,))
    ends = {name: (piece.edge(name).path.start, piece.edge(name).path.end) for name in beside}
    return min(beside, key=lambda name: min(here.distance(point) for point in ends[name]))


def through(piece: Piece, fold: Path) -> Path:
    """The fold as a line right across the piece."""
    box = piece.outline.bounds()
    reach = (box[2] - box[0]) + (box[3] - box[1])
    way = (fold.end - fold.start).unit()
    return Path.line(fold.start - way * reach, fold.end + way * reach)


def staying(across: Path, lines: tuple[Path, Path]) -> Path:
    """That of two lines which stays in its place when what lies right of the fold is folded over."""
    way, foot = (across.end - across.start).unit(), across.start
    return max(lines, key=lambda line: way.cross(line.at(line.length / 2) - foot))


@operation
class SewDarts(Folding):
    """Sew darts: all those of a piece (`make.dart(front)`), or one (`make.dart(front.left.waist_dart)`).

    Example::

        make.dart(skirt_front)
    """

    kind = "dart"
    why = ("why", "why_point")
    fact = "dart"

    def _whole(self, piece: Piece, name: str) -> Dart:
        return dart_of(piece, name)

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        none = tuple(dict.fromkeys(fold.piece for fold in self.folds if not fold.edge))
        spared = (Sentence("dart.spared", {"pieces": (none, "piece")}),) if none else ()
        if not self.real:
            return spared
        pieces = tuple(dict.fromkeys(fold.piece for fold in self.real))
        one = len(self.real) == 1
        found = [*spared, Sentence("dart.fold_one" if one else "dart.fold", {"pieces": (pieces, "piece")})]
        pressed: list[Sentence] = []
        for fold in self.real:
            piece = pattern.piece(fold.piece)
            dart = dart_of(piece, fold.name)
            run = (_edge(fold),)
            values: dict[str, tuple[object, str]] = {
                "dart": (dart.label, "text"),
                "edge": (run, "place"),
                "intake": (dart_intake(piece, dart) / 2, "allowance"),
                "depth": (dart_depth(piece, dart), "length"),
                "pieces": ((fold.piece,), "piece"),
                "toward": ((Run(fold.piece, (_toward(piece, fold.edge, dart.pressed),)),), "edge"),
            }
            found.append(Sentence("dart.sew", values))
            press = {name: values[name] for name in ("pieces", "edge", "toward")}
            sentence = Sentence("dart.press" if one else "dart.press_of", press)
            pressed += [sentence] if sentence not in pressed else []
        return (*found, Sentence("dart.tie", {}), *pressed, *both_sides(pattern, self.runs()))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        if not self.real:
            return ()
        piece, run, near = self._near(pattern)
        darts = [dart_of(piece, fold.name) for fold in self.real if fold.piece == piece.name]
        across = through(piece, dart_fold(piece, darts[0]))
        leg = Row(run, line=staying(across, dart_legs(piece, darts[0])).reversed())
        near = self._all_near(pattern, run, darts)
        return (
            folded_over(run, across, leg, up="right", focus=near, section=shapes.folded_double()),
            sewn_shut(run, [dart.name for dart in darts], up="wrong", focus=near, section=shapes.folded()),
        )

    def _all_near(self, pattern: Cut, run: Run, darts: list[Dart]) -> Run:
        """The part of the edge that its darts take up, and as much again on either side of one."""
        mine = [dart for dart in darts if dart.edge in run.edges]
        low, high = min(dart.start for dart in mine), max(dart.end for dart in mine)
        wide = max(dart.end - dart.start for dart in mine)
        size = run_length(pattern, run)
        return replace(run, start=max(0.0, low - wide), end=min(size, high + wide))


@operation
class FoldPleats(Folding):
    """Fold pleats and baste them: all those of a piece, or one.

    Example::

        make.pleat(panel)
    """

    kind = "pleat"
    lastly: ClassVar[Keys] = (Sentence("pleat.press", {}),)

    def _whole(self, piece: Piece, name: str) -> Pleat:
        return pleat_of(piece, name)

    def _values(self, pattern: Cut, fold: Fold) -> dict[str, tuple[object, str]]:
        piece = pattern.piece(fold.piece)
        pleat = pleat_of(piece, fold.name)
        return {
            "pleat": (pleat.label, "text"),
            "pieces": ((fold.piece,), "piece"),
            "edge": ((_edge(fold),), "place"),
            "intake": (intake(pleat), "length"),
            "half": (intake(pleat) / 2, "allowance"),
            "sewn": (pleat.sewn, "length"),
            "far": ((Run(fold.piece, (pleat.far or fold.edge,), fold.side),), "place"),
            "toward": ((Run(fold.piece, (_toward(piece, fold.edge, pleat.laid),)),), "edge"),
        }

    def _keys(self, pleat: Pleat) -> tuple[str, ...]:
        """The keys of what is said of one of them."""
        return ("fold", "lay", "baste_both" if pleat.far and pleat.held == "both" else "baste")

    def sentences(self, pattern: Cut) -> tuple[Sentence, ...]:
        folds = [(pleat_of(pattern.piece(fold.piece), fold.name), self._values(pattern, fold)) for fold in self.folds]
        found = (Sentence(f"{self.kind}.{key}", values) for pleat, values in folds for key in self._keys(pleat))
        return (*found, *self.told(self.lastly, pattern), *both_sides(pattern, self.runs()))

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece, run, near = self._near(pattern)
        pleat = pleat_of(piece, self.folds[0].name)
        across = through(piece, pleat_fold(pleat))
        row, basting = Row(run, line=staying(across, pleat.lines), ink="old"), Row(near, inset=-3.0, style="baste")
        names = [fold.name for fold in self.folds if fold.piece == piece.name]
        return (
            folded_over(run, across, row, focus=near, section=replace(shapes.folded_double(), stitches=())),
            sewn_shut(run, names, basting, section=shapes.folded(sewn=False)),
        )


@operation
class SewTucks(FoldPleats):
    """Stitch tucks: all those of a piece, or one.

    Example::

        make.tuck(yoke)
    """

    kind = "tuck"
    lastly = ()

    def _keys(self, pleat: Pleat) -> tuple[str, ...]:
        return ("fold", "sew_part" if 0 < pleat.sewn < pleat.lines[0].length - 0.5 else "sew", "press")

    def scenes(self, pattern: Cut) -> tuple[Scene, ...]:
        piece, run, near = self._near(pattern)
        pleat = pleat_of(piece, self.folds[0].name)
        across = through(piece, pleat_fold(pleat))
        one, two = (line.between(0.0, pleat.sewn) if 0 < pleat.sewn < line.length else line for line in pleat.lines)
        rows = (Row(run, line=one), Row(run, line=two))
        row = Row(run, line=staying(across, (one, two)))
        return (
            folded_over(run, across, row, focus=near, section=shapes.folded_double()),
            laid(run, *rows, focus=near, section=shapes.folded()),
        )
