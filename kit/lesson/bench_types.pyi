"""Made by `python -m kit.lesson.stubs` from the verbs, for editors and type checkers. Not to be edited."""

from collections.abc import Sequence
from typing import Literal, overload

from kit.lesson.bench import BenchPiece
from kit.lesson.face_verbs import Across
from kit.lesson.match_verbs import Notched
from kit.lesson.pencil import At, PaperLine, PaperPoint
from kit.lesson.true_verbs import Edges
from kit.lesson.truing import Ends, Share
from kit.piece.darts_and_pleats import Dart
from kit.units import Length, Size

class PaperName(PaperLine, PaperPoint):
    """What a name drawn on a piece stands for, `front.side` or `front.neck_point`: a line or a point. Which, only the
    draft knows, so that both are offered; `front.edge("side")` and `front.point("neck_point")` say it."""

    def to(self, other: PaperLine | PaperPoint, *, end: str = "end") -> PaperLine: ...

class BenchVerbs:
    def __getattr__(self, name: str) -> PaperName: ...
    def add_dart(
        self, name: str, edge: str | PaperLine, *, at: At, intake: Size, apex: PaperPoint, pressed: str = "centre"
    ) -> None:
        """A dart on `edge`, its middle `at` this far along (or at a point), taking up `intake`, pointing to `apex`
        and pressed to the "centre", "side", "up" or "down". Its legs are equal and its cap is drawn.

        Example::

            front.add_dart("neck_dart", "neck", at=5 * cm, intake=1 * cm, apex=front.bust_point)"""

    def add_double_dart(
        self,
        name: str,
        *,
        top: PaperPoint,
        bottom: PaperPoint,
        intake: Size,
        at: PaperPoint | None = None,
        said: str = "",
    ) -> None:
        """A dart with two points inside the piece, from `top` to `bottom`. It takes up `intake` at its widest place: midway
        or `at` a point between them, such as the place on the waistline. `make.double_dart(...)` sews it.

        A dart of the block that is to run on below the waist is read first (`dart = front.waist_dart` has `tip`, `middle`
        and `intake`), taken away with `remove_dart`, and drawn so once the piece reaches lower.

        Example::

            waist = front.centre.at(38 * cm).out(9 * cm)
            front.add_double_dart("waist_dart", top=waist.up(14 * cm), bottom=waist.down(2 * cm),
                                  at=waist, intake=2 * cm)"""

    def add_ease(self, amount: Size, edge: str | PaperLine = "") -> None:
        """Add ease to this quarter: the side (or the `edge` named) moves out by `amount`.

        Example::

            front.add_ease(1 * cm)
            back.add_ease(1 * cm)"""

    def add_pleat(
        self,
        name: str,
        edge: str | PaperLine,
        *,
        at: At,
        intake: Size,
        to: tuple[str | PaperLine, At] | PaperPoint | None = None,
        along: PaperLine | None = None,
        style: str = "knife",
        face: Size | None = None,
        tapered: bool = False,
        laid: str = "side",
        held: str = "near",
        said: str = "",
    ) -> None:
        """A pleat folded into `edge` `at` this far along, taking up `intake` in all.

        The paper is slashed square to the edge as far as the edge across from it, or parallel to the straight line
        `along`, or `to` a place (edge, how far along), and spread straight; `tapered` swings it to nothing there.
        `style` knife is one fold laid to the "side", "centre", "up" or "down"; box is two with a `face` between
        them; inverted two that meet. `held`="both" folds it into the seam at the far edge too; else it hangs free.


        Example::

            back.add_pleat("back_pleat", "waist", at=4 * cm, intake=6 * cm, along=back.centre)"""

    def add_tuck(
        self,
        name: str,
        edge: str | PaperLine,
        *,
        at: At,
        depth: Size,
        count: int = 1,
        apart: Size | None = None,
        along: PaperLine | None = None,
        sewn: Size | None = None,
        laid: str = "side",
        said: str = "",
    ) -> None:
        """A tuck, or a row of `count` of them with their seams `apart` from one to the next: each `depth` deep from
        fold to stitching, taking up twice that. They run across the piece square to the edge, or parallel to the
        straight line `along`, and are stitched for `sewn`, or all the way.

        Example::

            back.add_tuck("tuck", "waist", at=1 * cm, depth=5 * mm, count=3, apart=1 * cm,
                          sewn=8 * cm, along=back.centre)"""

    def allow(self, /, **allowances: Size) -> None:
        """Give edges their seam or hem allowance.

        Example::

            front.allow(side=1.5 * cm, shoulder=1.5 * cm, neck=6 * mm)"""

    def allow_to_fit(self, /, **extra: Size) -> None:
        """Cut edges wider than they are sewn: extra cloth beside the allowance, to fit with. The pattern says so at the
        edge, and `make.trim_to_fit` takes it off once the fit is right.

        Example::

            front.allow(side=1.5 * cm)
            front.allow_to_fit(side=2 * cm)"""

    def buttonholes(
        self,
        line: str | PaperLine,
        *,
        inside: Size,
        first: Size,
        last: Size,
        count: int | None = None,
        spacing: Size | None = None,
        button: Size | None = None,
        thick: Size = 0,
        slit: Size | None = None,
        lie: Literal["horizontal", "vertical"] = "horizontal",
        onto: str | PaperLine | None = None,
        turned: bool | None = None,
        name: str = "buttonhole",
    ) -> int:
        """Buttonholes along an edge, `inside` it by this much, from the `first` place along it to the `last`: by their
        `count`, evenly, or from the first one at a `spacing`, as many as reach the last.

        The slit is as long as the button's diameter and its thickness together (common practice, no source), or as
        long as `slit` says. Horizontal slits lie square to the edge and begin 3 mm nearer to it than the button
        stands; vertical ones lie along it with the button at their middle. The buttons are marked on the edge `onto`
        of the piece that laps under, at the same distances from the ends that meet and as far inside; without it on
        this piece, as on a mirrored pair, where each mark is a hole on one half and a button's place on the other
        (`front.left.buttonhole_1`). Gives how many there are.

        Example::

            front.cut(2, mirrored=True)
            front.buttonholes(front.centre, inside=2 * cm, first=3 * cm, last=33 * cm, count=5,
                              button=15 * mm)"""

    def cut(
        self,
        count: int = 1,
        *,
        mirrored: bool = False,
        fold: str = "",
        interfacing: int = 0,
        title: str = "",
        number: int | None = None,
        right_side_up: bool = False,
        cloth: str = "",
    ) -> None:
        """How many to cut: a mirrored pair, one with an edge on the fold, or single; `right_side_up` when it is cut
        with the right sides of cloth and pattern up, because its mirror image would not fit. `cloth` is "main",
        "lining" or "interfacing" (when nothing is said, what it was derived for).

        Example::

            front.cut(2, mirrored=True)
            back.cut(1, fold="centre", title="Back")"""

    def dart_to_ease(self, name: str, over: Size | None = None) -> None:
        """Leave a dart unsewn and ease its intake into the edge, between two notches `over` this far apart.

        Example::

            back.dart_to_ease("shoulder_dart", over=8 * cm)"""

    def dart_to_gathers(self, name: str, over: Size | None = None) -> None:
        """Leave a dart unsewn and gather its intake into the edge, between two notches `over` this far apart.

        Example::

            front.dart_to_gathers("waist_dart", over=12 * cm)"""

    def declare(self, first: str | PaperLine, second: str | PaperLine, *, why: str) -> None:
        """Say that the corner of two neighbouring edges is drawn on purpose, and `why`: "V point", "slit", "gusset".
        The line across a seam there need not run smooth. Raises `KitError` for edges that are not neighbours.

        Example::

            front.declare(front.side, front.hip, why="slit")"""

    def draw(
        self,
        /,
        *,
        instead_of: str | PaperLine | Sequence[str | PaperLine] = (),
        after: str | PaperLine = "",
        **lines: PaperLine,
    ) -> None:
        """Draw new edges, in order around the piece: `instead_of` one or several neighbouring old ones, or `after` one that
        stays. Each line may run either way; they are turned to follow one another. A new edge has the role of what it
        stands instead of, unless its name says another.

        Example::

            line = front.centre_neck.down(2 * cm).curve_to(front.neck_point, square_to=front.centre)
            front.draw(neckline=line, instead_of=front.neck)
            front.join(front.centre, front.neckline)"""

    def drill(self, name: str, point: PaperPoint, said: str = "") -> None:
        """A drill mark: a point inside the piece pricked through all layers.

        Example::

            front.drill("pocket_corner", front.side_waist.into(8 * cm), said="pocket corner")"""

    def edge(self, name: str) -> PaperLine:
        """The edge of that name, whatever else its name may mean: front.edge("line").

        Example::

            top = front.edge("neck").start"""

    def extend_hem(self, edge: str | PaperLine, by: Size) -> None:
        """Move a hem outward, parallel; the edges beside it run on to meet it.

        Example::

            front.extend_hem("hip", 3 * cm)"""

    def face(
        self,
        *run: BenchPiece | tuple[str, ...] | PaperLine,
        depth: Size,
        ends: tuple[str, str],
        short: Size = 0,
        short_at: str | Sequence[str] | None = None,
        across: Across = (),
        only: BenchPiece | None = None,
        moved: Size = 0,
        toward: BenchPiece | None = None,
    ) -> None:
        """Derive a facing from a run of edges: the run itself with its darts and pleats folded shut and its notches,
        a parallel `depth` inside it named `outer`, and the two short ends along the neighbouring edges, named by
        `ends` in the order of the run.

        The run is said edge by edge, `face(front.wrap_edge, front.wrap_neck, ...)`, or as a piece and names. It may
        go on to the next piece `across` a seam (a name both pieces have, or the two edges): the pieces are laid seam
        on seam, and the facing is one piece with edges named front_neck, back_neck. With `only` one of two pieces the
        seam is kept and its part alone is drawn, its own two ends named by `ends`, that at the seam too:
        `face(front.neck, back.neck, across="shoulder", only=front, ends=("centre", "shoulder"), ...)`. `moved` this far
        `toward` one of them the seam lies there instead.

        The outer edge is drawn `short` by this much `short_at` these ends (when nothing is said, at the last) so that
        the facing pulls taut; where nothing is said an end on the garment's fold is kept.


        Example::

            facing.face(front.neck, depth=6 * cm, ends=("centre", "shoulder"))"""

    def fastener(
        self,
        name: str,
        point: PaperPoint,
        *,
        kind: Literal["hook", "bar", "eye", "snap", "socket", "eyelet"],
        size: Size = ...,
        toward: str | PaperLine | None = None,
        said: str = "",
    ) -> None:
        """A hook, the bar or eye it goes into, a "snap" (its ball half) or its "socket", an eyelet: marked and printed as
        what it is, its middle at the point. Hooks and eyes point `toward` an edge, the nearest where none is named, and a
        bar lies along it, each `size` long. `make.fasteners(...)` and `make.eyelets(...)` sew them on.

        Example::

            front.fastener("hook", front.shoulder.middle.down(3 * cm), kind="hook", toward="shoulder")"""

    def finish_corner(
        self,
        first: str | PaperLine,
        second: str | PaperLine,
        rule: str,
        *,
        turned: str | PaperLine | None = None,
        folds: Size | Sequence[Size] = 0,
        size: Size = 0,
    ) -> None:
        """Say how the allowances of two neighbouring edges meet, whatever the sewing order would make of it:

        "mitre" carries both cut lines on until they meet; "squared" ends the allowance of `turned` (the edge named
        first, if not said) square to its own stitch line; "turned" shapes its end so that it lies flush once folded
        at each of `folds`, measured outward from its stitch line (0 is the stitch line; a hem turned twice folds at
        `folds=(0, 4 * cm)`); "clipped" cuts the point off straight, and "rounded" in an arc, `size` from the corner
        of the stitch lines, else as far as the wider allowance.

        Raises `KitError` for edges that are not neighbours, an unknown rule, and sizes and folds that do not fit.


        Example::

            front.finish_corner(front.side, front.hip, "clipped", size=1 * cm)"""

    def grain(
        self,
        along: PaperLine | str | None = None,
        at: PaperPoint | None = None,
        kind: str = "lengthwise",
        one_way: bool = False,
    ) -> None:
        """Draw the grainline, straight up the paper, in a direction of the paper or parallel to a straight line, `at` a
        point or in the middle. `kind` is what of the cloth it is laid along: its "lengthwise" or "crosswise" grain, or
        the "bias" at 45 degrees to both. `one_way`: the piece has a top that must not be turned round.

        Example::

            front.grain(along=front.centre)"""

    @overload
    def guide(self, name: str, /) -> PaperLine:
        """Draw and name construction lines, which are not part of the outline; with a name in quotation marks, the line
        already drawn of that name.

        Example::

            front.guide(yoke=front.centre_neck.down(8 * cm).ruled("out", 20 * cm))"""

    @overload
    def guide(self, /, **lines: PaperLine) -> None:
        """Draw and name construction lines, which are not part of the outline; with a name in quotation marks, the line
        already drawn of that name.

        Example::

            front.guide(yoke=front.centre_neck.down(8 * cm).ruled("out", 20 * cm))"""

    def interface(
        self,
        *source: BenchPiece | tuple[str, ...] | PaperLine,
        beyond: Size | None = None,
        depth: Size | None = None,
        ends: tuple[str, str] = ...,
        across: Across = (),
    ) -> None:
        """Derive an interfacing piece: over the whole of a piece, or `depth` deep along a run of edges as `face` takes
        them. It has the garment's allowances, or is cut `beyond` the stitch line by this much, 0 for at the stitch
        line. It is cut from interfacing as often as its piece, on the same grain.

        Example::

            interfacing.interface(front.neck, depth=6 * cm, ends=("centre", "shoulder"), beyond=2 * mm)"""

    def join(self, first: str | PaperLine, second: str | PaperLine) -> None:
        """Trim or carry on two neighbouring edges so that the first ends, and the second begins, where they
        meet.

        Example::

            front.draw(hem=front.waist.parallel(8 * cm, "down"), instead_of=front.hip)
            front.join(front.side, front.hem)
            front.join(front.hem, front.centre)"""

    def lay_dart(self, dart: Dart) -> None:
        """A dart on an edge that is already drawn through its mouth; its cap is drawn."""

    def leave_open(self, name: str, edge: str | PaperLine, *, at: At | PaperLine, size: Size, said: str = "") -> None:
        """An opening left in a seam: `size` long, its first end `at` this far along the edge; or level with a point,
        or where a line such as the wrap edge, folded over about the centre, meets the edge.

        Example::

            front.leave_open("zip_opening", "side", at=2 * cm, size=15 * cm)"""

    def lengthen_line(self, *through: PaperPoint) -> None:
        """Say where this piece may be lengthened or shortened: on lines square to the grain through these points, instead
        of those the kit places between the levels of the body. Without a point it has none.

        Example::

            front.lengthen_line(front.side_waist.up(8 * cm), front.side_waist.down(8 * cm))
            back.lengthen_line()"""

    def line(
        self,
        source: BenchPiece,
        *,
        facing: PaperLine | Sequence[PaperLine] = (),
        depth: Size = 0,
        pleat: Size = 0,
        at: str = "",
        shorter: Size = 0,
        hem: str = "",
    ) -> None:
        """Derive a lining from a piece as it lies now: less a facing `depth` deep along the `facing` edges, where it
        stops at the facing's outer edge and gets an edge called `facing`; with cloth for a `pleat` added beyond the
        edge `at`, the centre where none is named; the hem (or the edge `hem`) this much `shorter`. It is cut from lining as
        often as its piece, on the same grain, and keeps its allowances; `facing` has that of the first edge it stands
        for.

        Example::

            lining.line(back, facing=back.neck, depth=5 * cm, shorter=2 * cm, hem="hip")"""

    def lower_neckline(self, by: Size, *, wider: Size = 0, edge: str | PaperLine = "") -> None:
        """Lower the neckline (or the `edge` named) at the centre, and make it `wider` along the shoulder.

        Example::

            front.lower_neckline(2 * cm, wider=1 * cm)"""

    def mark(self, /, **points: PaperPoint) -> None:
        """Mark and name points.

        Example::

            front.mark(button_place=front.centre_neck.down(3 * cm))"""

    def mark_line(self, name: str, line: PaperLine, said: str = "") -> None:
        """A line drawn inside the piece, such as the waistline.

        Example::

            front.mark_line("bust", front.bust_line, said="bust line")"""

    def mark_point(self, name: str, point: PaperPoint, said: str = "") -> None:
        """A point marked inside the piece or at its edge, such as where a tie is set.

        Example::

            front.mark_point("tie_place", front.side.share(0.5), said="tie")"""

    def match(
        self,
        own: Edges,
        other: Edges,
        *,
        at: Notched | list[Notched],
        measured_from: Literal["start", "end"] = "start",
        double: Literal["other", "own", "neither"] = "other",
        name: str = "",
        turned: bool | None = None,
    ) -> None:
        """Notches in pairs on an edge of this piece and the edge it is sewn to.

        `at` is one place or a list of them: a length along both edges as sewn, darts folded shut, from the ends that
        meet (those at the start of this piece's edge, or at its "end"); a point marked on this piece's edge; or a pair
        of lengths (along own, along other) where ease lies before the notch. The front is notched once and the back
        twice (common practice, no source): `double` says which edge gets the double notches, the other one unless
        said. `turned` says by hand that the other edge runs the other way.

        Example::

            front.match(front.side, back.side, at=[8 * cm, 15 * cm])"""

    def measure(self, /, **between: tuple[PaperPoint, PaperPoint] | PaperLine) -> None:
        """Write down measures by name: two points, or a line whose length it is. They can stand in the text
        as {name} and are dimensioned in the picture.

        Example::

            front.measure(neck_depth=(front.neck_point, front.centre_neck), side_seam=front.side)"""

    def mirror(self, axis: str | PaperLine, prefix: str = "far_") -> None:
        """Fold the paper along a straight edge and trace the other half as guide lines, named with `prefix`
        (far_side, far_hem, ...).

        Example::

            front.mirror("centre")"""

    def move_dart(
        self,
        name: str,
        *,
        to: str | PaperLine,
        at: At,
        way: Literal["pivot", "slash"] = "pivot",
        pressed: str = "",
        true: bool = True,
    ) -> None:
        """Move a dart to any edge by pivoting about its apex, or by slashing to the apex and closing the old
        dart; both give the same. The new cap is drawn unless true=False.

        Example::

            front.move_dart("bust_dart", to="shoulder", at=6 * cm, pressed="centre")"""

    def notch(self, edge: str | PaperLine, at: Size, *, double: bool = False, name: str = "") -> None:
        """A notch this far along an edge: single, or double for the back (common practice, no source).

        Example::

            front.notch("armhole", 8 * cm)
            back.notch("armhole", 8 * cm, double=True)"""

    def place(self, out: Size, up: Size) -> PaperPoint:
        """A point measured from the corner of the paper (the centre line and the waistline of a block): this
        far out to the side and this far up.

        Example::

            corner = pouch.place(2 * cm, 0)
            base, top = corner.ruled("out", 15 * cm), corner.up(20 * cm)
            pouch.draw(base=base, slope=base.end.to(top), side=top.to(corner))"""

    def placement(
        self,
        name: str,
        other: BenchPiece,
        *,
        at: PaperPoint,
        by: PaperPoint | None = None,
        turned: float = 0.0,
        said: str = "",
    ) -> None:
        """Where another piece, such as a pocket, is laid on this one: its outline, its point `by` (its first corner
        where none is named) at the point `at`, turned by this many degrees anticlockwise. A piece on the fold is drawn
        opened out, unless its fold is laid on the fold of this one; their `cut` tells, so write it before this.

        Example::

            front.placement("pocket_place", pocket, at=front.centre_waist.out(6 * cm))"""

    def point(self, name: str) -> PaperPoint:
        """The point of that name, whatever else its name may mean: front.point("mark").

        Example::

            tip = front.point("shoulder_tip").up(1 * cm)"""

    def remove_dart(self, name: str = "", *, into: str | PaperLine | None = None) -> None:
        """Take a dart away without sewing it, or all of the piece where none is named, however many this figure needs.

        Its width stays in its edge, for elastic or a casing to draw in, or is closed `into` the edge beside it, such as
        "side": taken off there, running out as far down as the dart was deep. True that seam with its partner afterwards.

        Example::

            front.remove_dart("waist_dart", into="side")"""

    def role(self, /, piece: str | None = None, *, worn: str | None = None, **edges: str) -> None:
        """Say what the piece is ("front", "back", "sleeve", "pocket", "facing", ...), where it is worn ("front" or
        "back"), and what its edges are ("hem", "neck", "side", ...); "" for nothing of that kind. A point or guide is
        named in the same way: `neck_point`, `bust_line`, .... What is said here stays, whatever name, title and sewing
        would make of it.

        Example::

            front.role("front", hip="hem")"""

    def say(self, /, **names: str) -> None:
        """How people say the names of edges.

        Example::

            front.say(side="side seam", centre="front edge")"""

    def sewn_length(self, edge: str | PaperLine) -> Length:
        """An edge's length with its darts sewn.

        Example::

            round_waist = (front.sewn_length("waist") + back.sewn_length("waist")) * 2"""

    def sewn_width(self, line: PaperLine) -> Length:
        """How wide the piece is along a line across it, such as the waistline, with the darts that it crosses sewn. A level
        that a moved dart has parted (`bust_line`, `bust_line_2`) is measured whole.

        Example::

            waist = front.centre.at(38 * cm).to(front.side.at(20 * cm))
            round_waist = front.sewn_width(waist) * 4"""

    def shorten_dart(self, name: str, by: Size) -> None:
        """Stop the stitching this far before the apex; the dart still pivots about the apex.

        Example::

            front.shorten_dart("bust_dart", 2 * cm)"""

    def slit(self, name: str, edge: str | PaperLine, *, at: At, size: Size, said: str = "") -> None:
        """A slit that is cut into the piece square to an edge, `at` this far along it and `size` long, such as that of a
        sleeve. It is cut when its placket is sewn: `make.bound_placket(...)`.

        Example::

            front.slit("neck_slit", "shoulder", at=6 * cm, size=9 * cm)"""

    def spare_darts(self, *names: str) -> None:
        """Note darts that other figures have and this one does not need: steps that shape them and operations that sew them
        pass over them.

        Example::

            front.spare_darts("waist_dart_2")"""

    def split_dart(self, name: str, *, apart: Size, share: float = 0.5, new_name: str = "", true: bool = True) -> None:
        """Take a share of a dart out as a second one on the same edge, `apart` beyond it.

        Example::

            front.split_dart("waist_dart", apart=4 * cm, share=0.5)"""

    def spread(
        self,
        first: tuple[str | PaperLine, At],
        second: tuple[str | PaperLine, At],
        amount: Size,
        *,
        hinged: bool = False,
    ) -> None:
        """Slash from a place on one edge to a place on another, given as (edge, how far along), and spread by
        `amount`: parallel, or hinged at the second place.

        Example::

            front.spread(("hip", 10 * cm), ("shoulder", 5 * cm), 4 * cm, hinged=True)"""

    def trace(self, other: BenchPiece) -> None:
        """Trace another piece's outline, points and guides onto this one, in place of its own.

        Example::

            pouch.trace(front)"""

    def transfer(
        self, source: BenchPiece, name: str, edge: Edges, to: Edges, *, turned: bool | None = None, said: str = ""
    ) -> None:
        """Carry a mark over from an edge of `source` to the edge of this piece that it is sewn to: an opening comes to
        the same place along the seam, and so does a point marked on the edge. Both edges are taken as sewn, from the
        ends that meet; where one is eased, the place lies in proportion between the notches they share.

        Example::

            front.leave_open("tie_opening", "side", at=10 * cm, size=4 * cm)
            back.transfer(front, "tie_opening", front.side, back.side)"""

    def true(
        self,
        own: Edges,
        other: Edges,
        *,
        share: Share = "half",
        hold: Literal["start", "end"] = "start",
        ends: Ends = "both",
        ease: Size = 0,
        turned: bool | None = None,
    ) -> Length:
        """Make this piece's edge and the one it is sewn to agree, on both pieces at once: the difference is made up
        half on each (or all on "own", or on "other") at the end that is not held, and the lines across the seam are
        drawn to run on smoothly at both `ends`. `ease` is how much longer the other is meant to be. The ends that
        meet are found from the draft; `turned` says by hand that the other edge runs the other way. Gives by how much
        they differed.

        Example::

            difference = front.true(front.side, back.side)"""

    def true_dart(self, name: str, pressed: str = "") -> None:
        """Fold the dart shut and draw its cap, so that the edge runs true.

        Example::

            front.true_dart("waist_dart", pressed="centre")"""

    def true_pleat(self, name: str) -> None:
        """Fold the pleat or tuck and redraw its edges through it, so that they run true.

        Example::

            back.add_pleat("back_pleat", "waist", at=4 * cm, intake=6 * cm, along=back.centre)
            back.true_pleat("back_pleat")"""
