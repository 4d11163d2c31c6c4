"""Made by `python -m kit.lesson.stubs` from the verbs, for editors and type checkers. Not to be edited."""

from typing import Literal

from kit.sewing.handle import PieceHandle, StripEdges, StripHandle
from kit.sewing.marked import Fold, Place
from kit.sewing.operation import Operation
from kit.sewing.reading import Opening, Runs
from kit.sewing.run import Run
from kit.units import Size

class MakeVerbs:
    def attach_facing(
        self,
        facing: Runs,
        to: Runs,
        *,
        allowance: Size,
        clip: bool = True,
        grade: bool = True,
        press: Literal["edge", "later"] = "edge",
        ease: Size = 0,
        rows: Literal["stitch", "trim", "turn"] | None = None,
    ) -> Operation:
        """Sew facing runs to garment runs right sides together and turn the facing in. What steps of their own do is left
        out here: `grade=False`, `clip=False`, `press="later"`; with `rows="stitch"` it is left before it is turned, to
        trim, clip, press away and understitch first.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.attach_facing([front_facing.inner, back_facing.inner],
                               [front.neck, back.neck], allowance=1 * cm)"""

    def attach_handle(
        self, strip: StripHandle, to: Run, *, at: tuple[Size, Size], method: str = "caught", lap: Size = ...
    ) -> Operation:
        """Fix both ends of a made strip to a run, at two lengths along it.

        Example::

            make.fold_strip(handle, ends=0)
            make.attach_handle(handle, tote.top, at=(8 * cm, 27 * cm), method="in_hem")"""

    def attach_strip(
        self,
        strip: StripHandle,
        to: Run | Place,
        *,
        at: Size | None = None,
        method: str = "stitched_on",
        lap: Size = ...,
    ) -> Operation:
        """Fix a made strip to a run at its "start", its "end" (so unless said) or a length along it, or at a mark.

        Example::

            make.turn_strip(tie, allowance=6 * mm)
            make.attach_strip(tie, front.left.side, at=12 * cm, method="caught")"""

    def band_ends(
        self, *ends: Runs, allowance: Size, overlap: Size = 0, at: Run | None = None, trim: bool = True
    ) -> Operation:
        """Fold a band lengthwise right sides together and stitch its ends across; `overlap` beyond the garment at the
        end `at`.

        Example::

            make.band_ends(waistband.start, waistband.end, allowance=1 * cm,
                           overlap=3 * cm, at=waistband.end)"""

    def baste(self, *along: Runs, distance: Size = ...) -> Operation:
        """Hold layers with long stitches `distance` outside the stitch line; `distance=0 * mm` on it, for a fitting.

        Example::

            make.baste(front.side, back.side, distance=0 * mm)"""

    def baste_interfacing(self, *pieces: PieceHandle, distance: Size = ...) -> Operation:
        """Baste sewn-in interfacing to the wrong side of whole pieces, `distance` outside the stitch line.

        Example::

            make.baste_interfacing(waistband)"""

    def belt_loop(
        self, strip: StripHandle, seam: Run | Place, *, at: Size | None = None, ends: Size = ...
    ) -> Operation:
        """Stitch a made strip over a seam as a loop, its top end `at` along the seam, or at a mark on it.

        Example::

            make.plain_seam(front.side, back.side, allowance=1.5 * cm)
            make.fold_strip(loop, ends=0)
            make.belt_loop(loop, front.side, at=10 * cm)"""

    def bias_facing(
        self,
        *edges: Runs,
        strip: StripHandle,
        allowance: Size = ...,
        trim: bool = True,
        finished: Size = ...,
        ends: Literal["ring", "turned", "caught"] | None = None,
        count: int = 1,
        rows: Literal["first", "second"] | None = None,
    ) -> Operation:
        """Face a row of edges with a strip that is turned wholly to the inside, `finished` wide there. `trim=False` where
        steps of their own trim, grade and clip between its rows.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.bias_facing(front.armhole, back.armhole, strip=facing_strip, finished=1 * cm,
                             ends="caught", count=2)"""

    def bind(
        self,
        *edges: Runs,
        strip: StripHandle,
        finished: Size,
        double: bool = False,
        trim: Size = 0,
        last: Literal["machine", "hand"] = "machine",
        ends: Literal["ring", "turned", "caught"] | None = None,
        count: int = 1,
        rows: Literal["first", "second"] | None = None,
    ) -> Operation:
        """Bind a row of edges with a strip that shows on both sides, `finished` wide. `trim`: the allowance cut off
        first. `ends`: "ring", "turned" or "caught", else as the edge is: joined all round a ring, turned in at open ends,
        caught where a later seam closes these. `last`: the last row by machine or by hand; `count` strips are used.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.bind(tote.top, strip=binding, finished=1 * cm)"""

    def blind_hem(
        self,
        *edges: Runs,
        depth: Size,
        turn: Size = 0,
        by: Literal["hand", "machine"] = "hand",
        catching: Runs = (),
        finish: Literal["zigzag", "overlock", "pinked", "none"] = "zigzag",
        ring: bool = False,
        rows: Literal["fold", "stitch"] | None = None,
    ) -> Operation:
        """A hem `depth` deep whose stitches do not show, sewn by "hand" or "machine". `turn`: its raw edge is turned under
        by so much first, else it gets its `finish`.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.blind_hem(skirt_front.hem, depth=3 * cm)"""

    def bound_placket(self, strip: StripHandle, *, slit: Place, allowance: Size = ...) -> Operation:
        """Cut a slit open and bind both its sides with one straight strip, as for a cuff. Each half takes a strip, cut with
        `strip.band(cut_length=..., cut_width=..., allowance=...)` at least twice as long as the slit.

        Example::

            make.bound_placket(placket, slit=sleeve.cuff_slit)"""

    def buttonholes(self, *places: Place, length: Size) -> Operation:
        """Work buttonholes at marks of that kind.

        Example::

            make.buttonholes(front.left.hole_1, front.left.hole_2, length=21 * mm)"""

    def buttons(
        self, *places: Place, size: Size, holes: Place | list[Place] | tuple[Place, ...] = (), shank: bool = True
    ) -> Operation:
        """Sew on buttons, `size` across, at marks; `holes` are the buttonholes they are for.

        Example::

            make.buttons(front.right.button_1, size=18 * mm, holes=front.left.hole_1)"""

    def casing(self, *edges: Runs, depth: Size, first: Size = ..., gap: Run | Place | None = None) -> Operation:
        """Fold an edge over to a tunnel `depth` deep. `gap`: a part of it (front.waist.between(...)) left open.

        Example::

            make.casing(tote.top, first=1 * cm, depth=3 * cm)"""

    def centred_zip(
        self, over: Run | Place, under: Run | Place, *, length: Size, allowance: Size, lap: Size = ...
    ) -> Operation:
        """Set in a zip centred under a seam: parts of two edges or opening marks.

        Example::

            left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
            make.centred_zip(left, right, allowance=2 * cm, length=19 * cm)"""

    def channel(self, *edges: Runs, depth: Size, distance: Size = ..., gap: Run | Place | None = None) -> Operation:
        """Stitch a channel for a cord or elastic through an edge lined, faced or hemmed: a row `distance` from the edge, a
        second `depth` below it. `gap`: a part of that left open, for elastic.

        Example::

            make.channel(flap.outer, distance=2 * cm, depth=1.5 * cm)"""

    def clip(self, *along: Runs) -> Operation:
        """Snip into the allowance of a sewn edge that bends inward.

        Example::

            make.clip(front.neck, back.neck)"""

    def clip_first(self, *along: Runs, fit: Runs = ()) -> Operation:
        """Clip an edge before it is sewn, so that it spreads: a curve that bends inward up to its staystitching, to be laid
        along a straight band; a straight edge almost to its stitch line, to `fit` a curve that bends outward.

        Example::

            make.staystitch(bib.neck)
            make.clip_first(bib.neck)"""

    def close_band(
        self,
        inner: Runs,
        over: Runs,
        *,
        allowance: Size,
        method: Literal["edgestitch", "groove", "hand", "seams"] = "edgestitch",
        deeper: Size = 0,
        overlap: Size = 0,
        at: Run | None = None,
    ) -> Operation:
        """Turn the other edge of a band under and close it over the seam of `over`. `at` is the end of the band (of its
        inner piece, where it is two) at which the overlap lies; `deeper` is how far its fold reaches past the seam on
        purpose, 2 to 3 mm where it is caught from the right side. `method`: "edgestitch", "groove", by "hand", or tacked
        down at the "seams" it meets alone.

        Example::

            make.close_band(cuff.inner, cuff.lower, allowance=1 * cm, overlap=3 * cm, at=cuff.end)"""

    def dart(self, *what: PieceHandle | Fold) -> Operation:
        """Sew darts: all those of a piece (`make.dart(front)`), or one (`make.dart(front.left.waist_dart)`).

        Example::

            make.dart(skirt_front)"""

    def double_dart(self, *places: Place, press: Literal["centre", "side"] = "centre") -> Operation:
        """Sew darts with two points, drawn inside a piece with `add_double_dart`, and press them to the centre or side.

        Example::

            make.double_dart(dress_back.waist_dart)"""

    def ease_stitch(self, *along: Runs, rows: int = 1, to: Size | None = None, fit: Runs | None = None) -> Operation:
        """A row of long stitches by which an edge is eased, `to` a length or to `fit` the edge it will be sewn to.

        Example::

            make.ease_stitch(sleeve.back_cap + sleeve.front_cap, to=36 * cm)"""

    def edge_finish(
        self, *edges: Runs, stitch: Literal["zigzag", "overlock", "pinked"] = "zigzag", leave: bool = False
    ) -> Operation:
        """Overcast raw edges. `leave=True`: that is all the edge gets.

        Example::

            make.edge_finish(front.side, back.side, stitch="overlock")"""

    def edgestitch(self, *along: Runs, distance: Size = ...) -> Operation:
        """A row on the right side, very close to a finished edge or seam.

        Example::

            make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm, press="one side")
            make.edgestitch(back.shoulder)"""

    def eyelets(
        self,
        *places: Place,
        opposite: Place | list[Place] | tuple[Place, ...] = (),
        worked: Literal["eyelet", "buttonhole"] = "eyelet",
    ) -> Operation:
        """Set eyelets where a cord comes out of a casing, or work them as a "buttonhole" each; or, with those `opposite`
        them, in two finished edges that are laced together.

        Example::

            make.eyelets(tote.eyelet)"""

    def face_with_interfacing(self, *outer: Runs, allowance: Size, clip: bool = True) -> Operation:
        """Finish the outer edges of facings with their own interfacing: seamed, turned, fused.

        Example::

            make.face_with_interfacing(front_facing.outer, allowance=6 * mm)"""

    def faced_hem(
        self,
        facing: Runs,
        to: Runs,
        *,
        allowance: Size,
        free: Runs,
        turn: Size = 0,
        by: Literal["hand", "machine"] = "hand",
        clip: bool = False,
        grade: bool = True,
        ease: Size = 0,
        rows: Literal["stitch", "trim", "turn"] | None = None,
    ) -> Operation:
        """Face a hem with a piece: its edge `facing` is sewn to `to`, and its `free` edge, turned under by `turn` (0: it is
        finished already), sewn down inside by "hand" or "machine".
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.faced_hem(hem_facing.lower, skirt_front.hem, allowance=1 * cm,
                           free=hem_facing.upper, turn=6 * mm)"""

    def fasteners(
        self,
        *places: Place,
        under: Place | list[Place] | tuple[Place, ...],
        kind: Literal["snaps", "hooks", "eyes"] = "snaps",
    ) -> Operation:
        """Sew on "snaps", "hooks" with their bars or, where two edges only meet, hooks with round "eyes": `places` on the
        overlap, `under` below them.

        Example::

            make.fasteners(waistband.hook, under=waistband.bar, kind="hooks")"""

    def finish(self, *begun: Operation | Runs | StripHandle, rows: str | None = None) -> Operation:
        """Go on with what was begun with `rows=`: what its verb gave, or in a later step its edges or its strip. `rows`: no
        further than that stage.

        Example::

            side = make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm, rows="first")
            make.try_on(note="Pin the side seams where they are too wide.")
            make.finish(side)"""

    def finish_facing(
        self,
        *outer: Runs,
        stitch: Literal["zigzag", "overlock", "pinked", "turned"] = "zigzag",
        turn: Size = ...,
        apart: bool = False,
    ) -> Operation:
        """Finish the free edge of a facing: zigzag, overlock, pinked, or turned under by `turn` and stitched. Facings are
        joined first; `apart=True` where each is finished by itself on purpose.

        Example::

            make.finish_facing(front_facing.outer, back_facing.outer, stitch="turned", turn=6 * mm)"""

    def flat_felled_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: Size,
        lap: PieceHandle | str | None = None,
        width: Size | None = None,
        trim: Size | None = None,
        outside: bool = True,
        ease: Size = 0,
        opening: Opening | None = None,
        rows: Literal["first", "opening", "second"] | None = None,
    ) -> Operation:
        """Two rows. `lap` is the piece that laps over the other (the first, where nothing is said). The fell is `width`
        wide (5/8 of the allowance), the other allowance is trimmed to `trim` (half of the fell). `outside`: sewn wrong
        sides together, so that the fell shows on the right side.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.flat_felled_seam(front.side, back.side, allowance=1.5 * cm, lap=back)"""

    def fly_zip(
        self,
        over: Run | Place,
        under: Run | Place,
        *,
        facing: Run | Place,
        length: Size,
        allowance: Size,
        lap: Size = ...,
        shield: Run | Place | None = None,
    ) -> Operation:
        """Set in a zip under a fly: the side that laps `over` first, then the one `under` it, as parts of two edges or
        opening marks. `facing` is the edge of the fly facing, `shield` that of a fly shield; `lap` is how far from the edge
        the curved row runs.

        Example::

            left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
            make.fly_zip(left, right, facing=fly_facing.edge, allowance=2 * cm, length=19 * cm)"""

    def fold_pocket(
        self, *edges: Runs, allowance: Size, corners: Literal["square", "mitred", "curved"] = "square"
    ) -> Operation:
        """Press the edges of a pocket under; its lower corners square, mitred or curved.

        Example::

            make.pocket_hem(pocket.top, second=3 * cm)
            make.fold_pocket(pocket.left_side, pocket.bottom, pocket.right_side, allowance=1 * cm)"""

    def fold_strip(
        self,
        strip: StripHandle,
        *,
        edgestitch: Size = ...,
        sides: Literal["one side", "both sides"] = "both sides",
        ends: Size = ...,
    ) -> Operation:
        """Make a strip folded in four and edgestitched, along "both sides" or the open one alone.

        Example::

            make.fold_strip(loop, edgestitch=2 * mm, ends=0)"""

    def french_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        first: Size,
        second: Size,
        press: str = "one side",
        ease: Size = 0,
        trim: Size | None = None,
        opening: Opening | None = None,
        rows: Literal["first", "opening", "second"] | None = None,
    ) -> Operation:
        """Two rows: `first` from the edge wrong sides together, `second` from the crease right sides together. `trim`: how
        wide the first allowances are left in between.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.french_seam(front.shoulder, back.shoulder, first=6 * mm, second=4 * mm)"""

    def fuse(self, *pieces: PieceHandle) -> Operation:
        """Fuse interfacing onto the wrong side of whole pieces.

        Example::

            make.fuse(cuff, front_facing)"""

    def gather(self, *along: Runs, to: Size | None = None, fit: Runs | None = None, rows: int = 2) -> Operation:
        """Gather an edge `to` a length on each half, or to `fit` the edge it will be sewn to.

        Example::

            make.gather(sleeve.wrist, to=18 * cm)"""

    def grade(self, *along: Runs | StripEdges, to: Size = ..., wider: Size = ...) -> Operation:
        """Trim the allowances of a seam to two widths: `to` at this edge, `wider` at the one it is sewn to. Of a strip's
        seam by its `tie.sides` or `tie.ends`.

        Example::

            make.grade(front_facing.inner, back_facing.inner, to=4 * mm, wider=7 * mm)"""

    def hem(
        self,
        *edges: Runs,
        first: Size,
        second: Size = 0,
        catching: Runs = (),
        finish: Literal["zigzag", "overlock", "pinked", "none"] = "zigzag",
        ring: bool = False,
        rows: Literal["fold", "stitch"] | None = None,
    ) -> Operation:
        """Turn an edge up: twice when `second` is given, else once with its raw edge finished.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)"""

    def hem_strip(
        self, strip: StripHandle, *, turn: Size = ..., ends: Literal["both", "one", "none"] = "both"
    ) -> Operation:
        """Make a strip of a single layer: a narrow hem of two equal turns along both long edges, and across "both" short
        ends, "one" (the other is caught in a seam or gathered) or "none".

        Example::

            make.hem_strip(sash, turn=5 * mm)"""

    def invisible_zip(
        self, over: Run | Place, under: Run | Place, *, length: Size, allowance: Size, from_top: Size = ...
    ) -> Operation:
        """Set in an invisible zip: parts of two edges or opening marks. The seam below it is sewn afterwards.

        Example::

            left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
            make.invisible_zip(left, right, allowance=2 * cm, length=25 * cm)"""

    def lapped_seam(
        self,
        over: Runs,
        under: Runs,
        *,
        allowance: Size,
        edgestitch: Size = ...,
        turned: bool = True,
        finish: Literal["zigzag", "overlock", "pinked", "none"] = "zigzag",
        ease: Size = 0,
        opening: Opening | None = None,
        rows: Literal["fold", "opening", "stitch"] | None = None,
    ) -> Operation:
        """`over` is turned under and laid on `under`, stitched near its fold. `turned=False` for cloth that does not
        fray. `finish` is that of the raw edges inside.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.lapped_seam(back.shoulder, front.shoulder, allowance=1.5 * cm)"""

    def lapped_zip(
        self, over: Run | Place, under: Run | Place, *, length: Size, allowance: Size, lap: Size = ...
    ) -> Operation:
        """Set in a zip under a lap: parts of two edges or opening marks, the side on top first.

        Example::

            left, right = skirt_back.left.zip_opening, skirt_back.right.zip_opening
            make.lapped_zip(left, right, allowance=2 * cm, length=19 * cm)"""

    def mock_french_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: Size,
        turn: Size = ...,
        press: str = "one side",
        ease: Size = 0,
        opening: Opening | None = None,
        rows: Literal["first", "opening", "second"] | None = None,
    ) -> Operation:
        """A plain seam whose raw edges are turned in towards each other by `turn` and stitched together.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.mock_french_seam(front.side, back.side, allowance=1.5 * cm)"""

    def narrow_hem(
        self,
        *edges: Runs,
        turn: Size = ...,
        catching: Runs = (),
        ring: bool = False,
        rows: Literal["fold", "stitch"] | None = None,
    ) -> Operation:
        """Two equal narrow turns.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.narrow_hem(sleeve.wrist, turn=5 * mm)"""

    def notch_curve(self, *along: Runs) -> Operation:
        """Cut wedges out of the allowance of a sewn edge that bends outward.

        Example::

            make.plain_seam(front.armhole, front_lining.armhole, allowance=1 * cm)
            make.notch_curve(front.armhole)"""

    def patch_pocket(self, *edges: Runs, at: Place, allowance: Size, distance: Size = ...) -> Operation:
        """Stitch a pocket onto a placement mark along its folded edges. Each mark on each half takes one pocket.

        Example::

            make.patch_pocket(pocket.left_side, pocket.bottom, pocket.right_side,
                              at=front.pocket_place, allowance=1 * cm)"""

    def plain_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: Size,
        press: str = "open",
        finish: Literal["bound", "zigzag", "overlock", "pinked", "none"] = "zigzag",
        gap: Opening | None = None,
        ease: Size = 0,
        together: bool = False,
        binding: StripHandle | None = None,
        ends: Literal["raw edge", "stitch line"] = "raw edge",
        opening: Opening | None = None,
    ) -> Operation:
        """One row, right sides together. `opening` is a mark on the seam, or (start, end) along `a`. `finish`: zigzag,
        overlock, pinked, bound (with the strip `binding`, or bought binding) or none, of each allowance or of both
        `together`. `press`: open, one side, a piece's name, or "later" with `make.press` to follow. `ends`: "raw edge", or
        "stitch line" to begin and end where the neighbouring stitch lines cross.

        Example::

            make.plain_seam(front.side, back.side, allowance=1.5 * cm, finish="overlock")"""

    def pleat(self, *what: PieceHandle | Fold) -> Operation:
        """Fold pleats and baste them: all those of a piece, or one.

        Example::

            make.pleat(panel)"""

    def pocket_bag(
        self,
        bag: Runs,
        to: Run | Place,
        *,
        allowance: Size,
        finish: Literal["zigzag", "overlock", "pinked", "none"] = "zigzag",
    ) -> Operation:
        """Sew the mouth edge of a pocket bag to an opening marked on the garment's edge.

        Example::

            make.pocket_bag(front_bag.mouth, skirt_front.pocket_mouth, allowance=1.5 * cm)"""

    def pocket_hem(self, mouth: Run, *, second: Size, first: Size = ..., ends: Size = ...) -> Operation:
        """Hem the mouth of a pocket with its own cloth: `first` turned under, `second` deep; its ends are stitched at the
        side allowance `ends`.

        Example::

            make.pocket_hem(pocket.top, first=6 * mm, second=3 * cm)"""

    def pocket_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: Size,
        mouth: Opening,
        bags: tuple[Run, Run],
        bag_allowance: Size | None = None,
        press: str = "one side",
        finish: Literal["zigzag", "overlock", "pinked", "none"] = "zigzag",
    ) -> Operation:
        """Sew a seam with its pocket in one row. `bags`: the round edges of both bags; `mouth`: the opening mark on `a`.

        Example::

            front_round = front_bag.bottom + front_bag.outer + front_bag.upper
            back_round = back_bag.bottom + back_bag.outer + back_bag.upper
            make.pocket_seam(skirt_front.side, skirt_back.side, bags=(front_round, back_round),
                             mouth=skirt_front.pocket_mouth, allowance=1.5 * cm, bag_allowance=1 * cm)"""

    def press(self, *seams: Runs, way: str | PieceHandle = "open") -> Operation:
        """Press seams already sewn, each named by one of its edges. `way`: open, one side, the piece they are pressed
        towards, or "edge" where a facing or a lining is turned: the seam at the very edge.

        Example::

            make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="later")
            make.press(front.side, way="open")"""

    def remove_basting(self, *along: Runs) -> Operation:
        """Take basting out again: once the seam is sewn, or tried on, before it.

        Example::

            make.baste(front.side, back.side, distance=0 * mm)
            make.try_on("Is the waist too wide?")
            make.remove_basting(front.side, back.side)"""

    def rolled_hem(self, *edges: Runs, turn: Size = ..., ring: bool = False) -> Operation:
        """A fine edge rolled and slip-stitched by hand; it takes `turn` in all.

        Example::

            make.rolled_hem(sleeve.wrist, turn=6 * mm)"""

    def seam_band(
        self,
        outer: Runs,
        inner: Runs,
        *,
        allowance: Size,
        overlap: Size = 0,
        at: Run | None = None,
        catching: Runs = (),
        grade: bool = True,
        clip: bool = True,
    ) -> Operation:
        """Seam outer and inner band along their upper edges and ends. `overlap` beyond the garment at the end `at`;
        `catching` are edges of a collar, made and turned, that lie between the two.

        Example::

            make.seam_band(band.end + band.top, inner_band.end + inner_band.top, allowance=1 * cm)"""

    def seam_to_turn(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: Size,
        gap: Opening | None = None,
        ease: Size = 0,
        grade: bool = True,
        clip: bool = True,
    ) -> Operation:
        """Sew two pieces right sides together to be turned out. `gap`: a mark, or (start, end) along `a`, left raw. What
        steps of their own do is left out here: `grade=False`, `clip=False`.

        Example::

            make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)"""

    def set_band(
        self,
        band: Runs,
        to: Runs,
        *,
        allowance: Size,
        ease: Size = 0,
        overlap: Size = 0,
        at: Run | None = None,
        catching: Runs = (),
        clip: bool = True,
        grade: bool = True,
        press: Literal["band", "later"] = "band",
    ) -> Operation:
        """Sew the lower edge of a band to a garment's edge. `overlap` reaches beyond it at the band's end `at`; `ease`
        is how much longer the garment's edge is in all (ribbing is pulled to it, by up to half of the lesson's `stretch`);
        `catching` are facing ends sewn into the seam with it. What steps of their own do is left out here: `clip=False`,
        `grade=False`, `press="later"`.

        Example::

            make.set_band(band.neck, [front.neck, back.neck], allowance=1 * cm)"""

    def set_in_sleeve(
        self,
        cap: Runs,
        armhole: Runs,
        *,
        allowance: Size,
        ease: Size = 0,
        press: str = "one side",
        finish: Literal["zigzag", "overlock", "pinked", "none"] = "zigzag",
        trim: bool = True,
    ) -> Operation:
        """Sew the cap of a closed sleeve into the closed armhole; the cap is `ease` longer on each half. `press`: over the
        cap "one side" (towards the sleeve), a piece it is pressed towards, or "open", as in a tailored sleeve.

        Example::

            cap = sleeve.back_cap + sleeve.front_cap
            make.set_in_sleeve(cap, [back.armhole, front.armhole], allowance=1.5 * cm, ease=3.7 * cm)"""

    def slip_stitch(self, a: Run | Place, b: Run | Place, *, allowance: Size) -> Operation:
        """Close a gap by hand: the same part of two edges, as front.side.between(10 * cm, 20 * cm).

        Example::

            make.slip_stitch(flap.upper, flap_lining.upper, allowance=1 * cm)"""

    def staystitch(self, *along: Runs, distance: Size = ...) -> Operation:
        """A row in the allowance that keeps a curve from stretching.

        Example::

            make.staystitch(front.neck, back.neck)"""

    def tack_down(self, *edges: Runs, to: Runs) -> Operation:
        """Hold the finished edges of a facing to the allowances of the seams `to` they cross.

        Example::

            make.tack_down(front_facing.outer, to=front.shoulder)"""

    def thread_cord(
        self,
        *edges: Runs,
        cord: StripHandle | Size,
        through: Place | list[Place] | tuple[Place, ...],
        gap: Run | Place | None = None,
    ) -> Operation:
        """Draw a cord through a casing or channel, its ends out at eyelets or openings marked on seams. `cord` is a made
        strip, or how long a bought cord is.

        Example::

            make.thread_cord(tote.top, cord=60 * cm, through=tote.eyelet)"""

    def thread_elastic(
        self, *edges: Runs, length: Size, width: Size, ring: bool = True, gap: Run | Place | None = None
    ) -> Operation:
        """Draw elastic through a casing or channel and close the `gap` it went in by, the same as was left. A cord may
        share the casing where it is deep enough for both.

        Example::

            gap = tote.top.between(2 * cm, 5 * cm)
            make.casing(tote.top, depth=3 * cm, gap=gap)
            make.thread_elastic(tote.top, length=30 * cm, width=2 * cm, gap=gap)"""

    def topstitch(self, *along: Runs, distance: Size = ..., rows: int = 1) -> Operation:
        """Rows on the right side, the first `distance` inside a closed edge or beside a seam, the others 6 mm further in.

        Example::

            make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="one side")
            make.topstitch(front.side, distance=6 * mm, rows=2)"""

    def tower_placket(
        self, tower: Run, *, around: Runs, under: StripHandle, slit: Place, box: Size = ..., allowance: Size = ...
    ) -> Operation:
        """Finish the slit of a shirt sleeve: `tower` is the long edge of the tower that is sewn to the slit, `around` its
        edges that are pressed under and stitched down, the point too; `under` a strip for the other side. `box` is how wide
        the slit is cut out at its end.

        Example::

            make.tower_placket(tower.edge, around=[tower.left_point, tower.right_point, tower.outer],
                               under=placket, slit=sleeve.cuff_slit)"""

    def trim(self, *along: Runs | StripEdges, to: Size | Literal["half"]) -> Operation:
        """Cut the allowance of a sewn edge back `to` a width, or to "half" of what it is; of a strip's seam too, by its
        `tie.sides` or `tie.ends`.

        Example::

            make.plain_seam(front.shoulder, back.shoulder, allowance=1.5 * cm)
            make.trim(front.shoulder, to=6 * mm)"""

    def trim_to_fit(self, *along: Runs) -> Operation:
        """Trim the cloth that was cut to fit with, once the fit is right: the edges keep the allowance they are sewn with.

        Example::

            make.trim_to_fit(front.side, back.side)"""

    def try_on(
        self,
        *found: Place | str,
        note: str = "",
        leave: Runs = (),
        **changes: Size | float | tuple[Size | float, Size | float],
    ) -> Operation:
        """Stop for a fitting: what is found, in words and as marks. A parameter given with its value before and after,
        `underarm_drop=(14 * cm, 11 * cm)`, says that the cloth was cut with the first and is sewn with the second from here
        on; one value alone is the second, the lesson's present one the first.

        The pair tells what this lesson's own cloth went through, as a story is told. It counts while the lesson stands at
        one of these values: whoever sets another has cut other cloth, and nothing changes at this try-on; a difference
        found on one body would be none on the next. The draft that is shown follows the sliders as ever; a build makes the
        corrected pattern, or with `--as-cut` the one first cut. Rows on lines that move are unpicked and sewn again, unless
        `leave` names their edges.

        Example::

            make.try_on("The skirt hangs low at the back.", hem_drop=(9 * cm, 8 * cm))"""

    def tuck(self, *what: PieceHandle | Fold) -> Operation:
        """Stitch tucks: all those of a piece, or one.

        Example::

            make.tuck(yoke)"""

    def turn_out(
        self, *pieces: PieceHandle, through: Runs | Place, press: Literal["edge", "later"] = "edge"
    ) -> Operation:
        """Turn pieces right side out through runs that are still raw. With `press="later"` the seam waits for the iron:
        `make.press(..., way="edge")`.

        Example::

            make.seam_to_turn(flap.outer, flap_lining.outer, allowance=6 * mm)
            make.turn_out(flap, flap_lining, through=[flap.upper, flap_lining.upper])"""

    def turn_strip(
        self,
        strip: StripHandle,
        *,
        allowance: Size,
        ends: Size = 0,
        slant: Size = 0,
        stitched: Literal["none", "one side", "both sides"] = "none",
        edgestitch: Size = ...,
        trim: bool = True,
        rows: Literal["sew", "turn"] | None = None,
    ) -> Operation:
        """Make a strip seamed right sides together and turned; with `slant`, one end is seamed on a slant. `stitched`:
        edgestitched then, `edgestitch` from "one side" (the seamed one) or "both sides". What steps of their own do is left
        out here: `trim=False`.
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.turn_strip(tie, allowance=6 * mm, ends=6 * mm)"""

    def understitch(self, *along: Runs, distance: Size = ...) -> Operation:
        """A row on the facing beside its seam, through facing and allowances only.

        Example::

            make.understitch(front_facing.inner, back_facing.inner)"""

    def wide_hem(
        self,
        *edges: Runs,
        depth: Size,
        tape: bool = False,
        by: Literal["hand", "machine"] = "hand",
        catching: Runs = (),
        finish: Literal["zigzag", "overlock", "pinked", "none"] = "zigzag",
        ring: bool = False,
        rows: Literal["fold", "stitch"] | None = None,
    ) -> Operation:
        """A deep hem turned once, eased where its edge curves, its raw edge finished or covered with hem `tape`, sewn down
        by "hand" or "machine".
        `rows`: no further than that stage; `make.finish` goes on.

        Example::

            make.wide_hem(skirt_front.hem, depth=4 * cm, tape=True)"""
