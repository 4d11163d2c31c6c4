"""Made by `python -m kit.lesson.stubs` from the verbs, for editors and type checkers. Not to be edited."""

from kit.piece.piece import Mark
from kit.sewing.reading import Runs
from kit.sewing.run import Fold, PieceHandle, Place, Run, StripHandle

class MakeVerbs:
    def attach_facing(
        self, facing: Runs, to: Runs, *, allowance: object, clip: bool = True, grade: bool = True, ease: object = 0
    ) -> None:
        """Sew facing runs to garment runs right sides together and turn the facing in."""

    def attach_handle(
        self, strip: StripHandle, to: Run, *, at: tuple[object, object], method: str = "caught", lap: object = ...
    ) -> None:
        """Fix both ends of a made strip to a run, at two lengths along it."""

    def attach_strip(
        self, strip: StripHandle, to: Run | Place, *, at: object = "end", method: str = "stitched_on", lap: object = ...
    ) -> None:
        """Fix a made strip to a run at its "start", its "end" or a length along it, or at a mark."""

    def band_ends(self, *ends: Runs, allowance: object, overlap: object = 0, at: Run | None = None) -> None:
        """Fold a band lengthwise right sides together and stitch its ends across; `overlap` beyond the garment at the
        end `at`."""

    def baste(self, *along: Runs, distance: object = ...) -> None:
        """Hold layers with long stitches `distance` outside the stitch line; `distance=0 * mm` on it, for a fitting."""

    def baste_interfacing(self, *pieces: PieceHandle, distance: object = ...) -> None:
        """Baste sewn-in interfacing to the wrong side of whole pieces, `distance` outside the stitch line."""

    def belt_loop(self, strip: StripHandle, seam: Run, *, at: object, ends: object = ...) -> None:
        """Stitch a made strip over a seam as a loop, its top end `at` along the seam."""

    def bias_facing(
        self,
        *edges: Runs,
        strip: StripHandle,
        allowance: object = ...,
        finished: object = ...,
        ends: str = "ring",
        count: int = 1,
    ) -> None:
        """Face a row of edges with a strip that is turned wholly to the inside, `finished` wide there."""

    def bind(
        self,
        *edges: Runs,
        strip: StripHandle,
        finished: object,
        double: bool = False,
        trim: object = 0,
        ends: str = "ring",
        last: str = "machine",
        count: int = 1,
    ) -> None:
        """Bind a row of edges with a strip that shows on both sides, `finished` wide. `trim`: the allowance cut off
        first. `ends`: ring, turned or caught; `last`: the last row by machine or by hand; `count` strips are used."""

    def blind_hem(
        self,
        *edges: Runs,
        depth: object,
        turn: object = 0,
        by: str = "hand",
        finish: str = "zigzag",
        catching: Runs = (),
        ring: bool = False,
    ) -> None:
        """A hem `depth` deep whose stitches do not show, sewn by "hand" or "machine". `turn`: its raw edge is turned under
        by so much first, else it gets its `finish`."""

    def buttonholes(self, *places: Place, length: object) -> None:
        """Work buttonholes at marks of that kind."""

    def buttons(
        self, *places: Place, size: object, holes: Place | list[Place] | tuple[Place, ...] = (), shank: bool = True
    ) -> None:
        """Sew on buttons, `size` across, at marks; `holes` are the buttonholes they are for."""

    def casing(self, *edges: Runs, first: object = ..., depth: object, gap: Run | Place | None = None) -> None:
        """Fold an edge over to a tunnel `depth` deep. `gap`: a part of it (front.waist.between(...)) left open."""

    def centred_zip(
        self, over: Run | Place, under: Run | Place, *, allowance: object, length: object, lap: object = ...
    ) -> None:
        """Set in a zip centred under a seam: parts of two edges or opening marks."""

    def clip(self, *along: Runs) -> None:
        """Snip into the allowance of a sewn edge that bends inward."""

    def close_band(
        self,
        inner: Runs,
        over: Runs,
        *,
        allowance: object,
        method: str = "edgestitch",
        overlap: object = 0,
        at: Run | None = None,
    ) -> None:
        """Turn the other edge of a band under and close it over the seam of `over`. `at` is the end of the band (of its
        inner piece, where it is two) at which the overlap lies."""

    def dart(self, *what: PieceHandle | Fold) -> None:
        """Sew darts: all those of a piece (`make.dart(front)`), or one (`make.dart(front.left.waist_dart)`)."""

    def ease_stitch(self, *along: Runs, to: object = None, fit: object = None, rows: int = 1) -> None:
        """A row of long stitches by which an edge is eased, `to` a length or to `fit` the edge it will be sewn to."""

    def edge_finish(self, *edges: Runs, stitch: str = "zigzag", leave: bool = False) -> None:
        """Overcast raw edges. `leave=True`: that is all the edge gets."""

    def edgestitch(self, *along: Runs, distance: object = ...) -> None:
        """A row on the right side, very close to a finished edge or seam."""

    def eyelets(self, *places: Place) -> None:
        """Set eyelets where a cord comes out of a casing."""

    def face_with_interfacing(self, *outer: Runs, allowance: object, clip: bool = True) -> None:
        """Finish the outer edges of facings with their own interfacing: seamed, turned, fused."""

    def faced_hem(
        self,
        facing: Runs,
        to: Runs,
        *,
        allowance: object,
        free: Runs,
        turn: object = 0,
        by: str = "hand",
        clip: bool = False,
        grade: bool = True,
        ease: object = 0,
    ) -> None:
        """Face a hem with a piece: its edge `facing` is sewn to `to`, and its `free` edge, turned under by `turn` (0: it is
        finished already), sewn down inside by "hand" or "machine"."""

    def fasteners(self, *places: Place, under: Place | list[Place] | tuple[Place, ...], kind: str = "snaps") -> None:
        """Sew on snaps or hooks: `places` on the overlap, `under` below them."""

    def finish_facing(self, *outer: Runs, stitch: str = "zigzag", turn: object = ...) -> None:
        """Finish the free edge of a facing: zigzag, overlock, pinked, or turned under by `turn` and stitched."""

    def flat_felled_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: object,
        lap: object = None,
        width: object = None,
        trim: object = None,
        outside: bool = True,
        ease: object = 0,
    ) -> None:
        """Two rows. `lap` is the piece that laps over the other (the first, where nothing is said). The fell is `width`
        wide (5/8 of the allowance), the other allowance is trimmed to `trim` (half of the fell). `outside`: sewn wrong
        sides together, so that the fell shows on the right side."""

    def fold_pocket(self, *edges: Runs, allowance: object, corners: str = "square") -> None:
        """Press the edges of a pocket under; its lower corners square, mitred or curved."""

    def fold_strip(self, strip: StripHandle, *, edgestitch: object = ..., ends: object = ...) -> None:
        """Make a strip folded in four and edgestitched."""

    def french_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        first: object,
        second: object,
        press: str = "one side",
        ease: object = 0,
        trim: object = None,
    ) -> None:
        """Two rows: `first` from the edge wrong sides together, `second` from the crease right sides together. `trim`: how
        wide the first allowances are left in between."""

    def fuse(self, *pieces: PieceHandle) -> None:
        """Fuse interfacing onto the wrong side of whole pieces."""

    def gather(self, *along: Runs, to: object = None, fit: object = None, rows: int = 2) -> None:
        """Gather an edge `to` a length on each half, or to `fit` the edge it will be sewn to."""

    def grade(self, *along: Runs, to: object = ..., wider: object = ...) -> None:
        """Trim the allowances of a seam to two widths: `to` at this edge, `wider` at the one it is sewn to."""

    def hem(
        self,
        *edges: Runs,
        first: object,
        second: object = 0,
        catching: Runs = (),
        finish: str = "zigzag",
        ring: bool = False,
    ) -> None:
        """Turn an edge up: twice when `second` is given, else once with its raw edge finished."""

    def lapped_seam(
        self,
        over: Runs,
        under: Runs,
        *,
        allowance: object,
        edgestitch: object = ...,
        turned: bool = True,
        finish: str = "zigzag",
        ease: object = 0,
    ) -> None:
        """`over` is turned under and laid on `under`, stitched near its fold. `turned=False` for cloth that does not
        fray. `finish` is that of the raw edges inside."""

    def lapped_zip(
        self, over: Run | Place, under: Run | Place, *, allowance: object, length: object, lap: object = ...
    ) -> None:
        """Set in a zip under a lap: parts of two edges or opening marks, the side on top first."""

    def mock_french_seam(
        self, a: Runs, b: Runs, *, allowance: object, turn: object = ..., press: str = "one side", ease: object = 0
    ) -> None:
        """A plain seam whose raw edges are turned in towards each other by `turn` and stitched together."""

    def narrow_hem(self, *edges: Runs, turn: object = ..., catching: Runs = (), ring: bool = False) -> None:
        """Two equal narrow turns."""

    def notch_curve(self, *along: Runs) -> None:
        """Cut wedges out of the allowance of a sewn edge that bends outward."""

    def patch_pocket(self, *edges: Runs, at: Place, allowance: object, distance: object = ...) -> None:
        """Stitch a pocket onto a placement mark along its folded edges."""

    def plain_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: object,
        press: str = "open",
        finish: str = "zigzag",
        opening: Mark | Place | tuple[object, object] | None = None,
        ease: object = 0,
        together: bool = False,
        binding: StripHandle | None = None,
        ends: str = "raw edge",
    ) -> None:
        """One row, right sides together. `opening` is a mark on the seam, or (start, end) along `a`. `finish`: zigzag,
        overlock, pinked, bound (with the strip `binding`, or bought binding) or none, of each allowance or of both
        `together`. `press`: open, one side, a piece's name, or "later" with `make.press` to follow. `ends`: "raw edge", or
        "stitch line" to begin and end where the neighbouring stitch lines cross."""

    def pleat(self, *what: PieceHandle | Fold) -> None:
        """Fold pleats and baste them: all those of a piece, or one."""

    def pocket_bag(self, bag: Run, to: Run | Place, *, allowance: object, finish: str = "zigzag") -> None:
        """Sew the mouth edge of a pocket bag to an opening marked on the garment's edge."""

    def pocket_hem(self, mouth: Run, *, first: object = ..., second: object, ends: object = ...) -> None:
        """Hem the mouth of a pocket with its own cloth: `first` turned under, `second` deep; its ends are stitched at the
        side allowance `ends`."""

    def pocket_seam(
        self,
        a: Runs,
        b: Runs,
        *,
        bags: tuple[Run, Run],
        mouth: Mark | Place | tuple[object, object],
        allowance: object,
        bag_allowance: object = None,
        press: str = "one side",
        finish: str = "zigzag",
    ) -> None:
        """Sew a seam with its pocket in one row. `bags`: the round edges of both bags; `mouth`: the opening mark on `a`."""

    def press(self, *seams: Runs, way: str | PieceHandle = "open") -> None:
        """Press seams already sewn, each named by one of its edges. `way`: open, one side, or the piece they are pressed
        towards."""

    def remove_basting(self, *along: Runs) -> None:
        """Take basting out again."""

    def rolled_hem(self, *edges: Runs, turn: object = ..., ring: bool = False) -> None:
        """A fine edge rolled and slip-stitched by hand; it takes `turn` in all."""

    def seam_band(
        self, outer: Runs, inner: Runs, *, allowance: object, overlap: object = 0, at: Run | None = None
    ) -> None:
        """Seam outer and inner band along their upper edges and ends. `overlap` beyond the garment at the end `at`."""

    def seam_to_turn(
        self,
        a: Runs,
        b: Runs,
        *,
        allowance: object,
        gap: Mark | Place | tuple[object, object] | None = None,
        ease: object = 0,
    ) -> None:
        """Sew two pieces right sides together to be turned out. `gap`: a mark, or (start, end) along `a`, left raw."""

    def set_band(
        self, band: Runs, to: Runs, *, allowance: object, ease: object = 0, overlap: object = 0, at: Run | None = None
    ) -> None:
        """Sew the lower edge of a band to a garment's edge. `overlap` reaches beyond it at the band's end `at`; `ease`
        is how much longer the garment's edge is in all."""

    def set_in_sleeve(
        self,
        cap: Runs,
        armhole: Runs,
        *,
        allowance: object,
        ease: object = 0,
        press: str = "one side",
        finish: str = "zigzag",
    ) -> None:
        """Sew the cap of a closed sleeve into the closed armhole; the cap is `ease` longer on each half."""

    def slip_stitch(self, a: Run | Place, b: Run | Place, *, allowance: object) -> None:
        """Close a gap by hand: the same part of two edges, as front.side.between(10 * cm, 20 * cm)."""

    def staystitch(self, *along: Runs, distance: object = ...) -> None:
        """A row in the allowance that keeps a curve from stretching."""

    def tack_down(self, *edges: Runs, to: Runs) -> None:
        """Hold the finished edges of a facing to the allowances of the seams `to` they cross."""

    def thread_cord(
        self, *edges: Runs, cord: StripHandle | object, through: Place | list[Place], gap: Run | Place | None = None
    ) -> None:
        """Draw a cord through a casing, its ends out at eyelets. `cord` is a made strip, or how long a bought cord is."""

    def thread_elastic(
        self, *edges: Runs, length: object, width: object, gap: Run | Place | None = None, ring: bool = True
    ) -> None:
        """Draw elastic through a casing and close the gap it went in by."""

    def topstitch(self, *along: Runs, distance: object = ..., rows: int = 1) -> None:
        """Rows on the right side."""

    def trim(self, *along: Runs, to: object) -> None:
        """Cut the allowance of a sewn edge back `to` a width."""

    def try_on(self, *places: Place, note: str = "") -> None:
        """Stop for a fitting and mark what is found."""

    def tuck(self, *what: PieceHandle | Fold) -> None:
        """Stitch tucks: all those of a piece, or one."""

    def turn_out(self, *pieces: PieceHandle, through: Runs | Place) -> None:
        """Turn pieces right side out through runs that are still raw."""

    def turn_strip(self, strip: StripHandle, *, allowance: object, ends: object = 0, slant: object = 0) -> None:
        """Make a strip seamed right sides together and turned; with `slant`, one end is seamed on a slant."""

    def understitch(self, *along: Runs, distance: object = ...) -> None:
        """A row on the facing beside its seam."""

    def wide_hem(
        self,
        *edges: Runs,
        depth: object,
        tape: bool = False,
        by: str = "hand",
        finish: str = "zigzag",
        catching: Runs = (),
        ring: bool = False,
    ) -> None:
        """A deep hem turned once, eased where its edge curves, its raw edge finished or covered with hem `tape`, sewn down
        by "hand" or "machine"."""
