"""Straight trousers (invented): darts, a zip in the left side seam, a waistband with a button."""

from kit import Lesson, cm, mm, trouser_block

lesson = Lesson(
    "Straight trousers",
    start=trouser_block,
    units="cm",
    size="W4",
    notions=("sewing thread", "zip, 18 cm", "1 button", "fusible interfacing"),
)
lesson.length("zip_length", 18 * cm, least=3 * cm, most=22 * cm, why="the trousers pass over the hips")
lesson.length("leg_in", 0 * cm, least=0 * cm, most=8 * cm, why="each side of the leg is narrowed at the hem")
lesson.length("thigh_in", 0 * cm, least=0 * cm, most=6 * cm, why="each side seam is taken in")
lesson.length("band_width", 3.5 * cm, least=2 * cm, most=6 * cm, why="finished width of the waistband")
lesson.length("overlap", 3 * cm, least=2 * cm, most=5 * cm, why="room for the button")
lesson.length("seam", 1.5 * cm, least=1 * cm, most=2 * cm, why="all seams", said="seam allowance")


@lesson.step("Narrow the legs")
def narrow(front, back, leg_in, thigh_in):
    """At the hem come in by {leg_in} on both sides and rule new seams from the knee down."""
    for piece in (front, back):
        if thigh_in > 0 * cm:
            piece.side = piece.side.parallel(thigh_in, "inside")
            piece.join(piece.waist, piece.side)
            piece.join(piece.side, piece.hem)
        if leg_in > 0 * cm:
            low, near = piece.side.end.into(leg_in), piece.inseam.start.out(leg_in)
            upper = piece.side.to(piece.knee_line)
            inner = piece.inseam.to(piece.knee_line, end="start")
            piece.side = upper.joined(upper.end.to(low))
            piece.inseam = near.to(inner.start).joined(inner)
            piece.hem = low.to(near)


@lesson.step("Draw the waistband", makes="waistband")
def band(front, back, waistband, band_width, overlap):
    """The waistband is as long as the sewn waist and {overlap}, twice {band_width} wide."""
    long = (front.sewn_length(front.waist) + back.sewn_length(back.waist)) * 2 + overlap
    a, b = waistband.place(0 * mm, 0 * mm), waistband.place(long, 0 * mm)
    c, d = waistband.place(long, band_width * 2), waistband.place(0 * mm, band_width * 2)
    waistband.draw(outer=a.to(b), button_end=b.to(c), inner=c.to(d), front_end=d.to(a))
    waistband.buttonholes(
        "front_end",
        inside=1.2 * cm,
        first=band_width * 1.5,
        last=band_width * 1.5,
        count=1,
        button=18 * mm,
        thick=3 * mm,
        onto="button_end",
    )


@lesson.step("Zip, allowances, cutting")
def allowances(front, back, waistband, zip_length, seam):
    """Mark {zip_length} from the waist down the side for the zip. Add {seam} to the seams."""
    front.leave_open("zip_opening", "side", at=0 * mm, size=zip_length)
    back.leave_open("zip_opening", "side", at=0 * mm, size=zip_length)
    for piece in (front, back):
        piece.allow(side=seam, inseam=seam, crotch=seam, waist=1 * cm, hem=4 * cm)
    waistband.allow(outer=1 * cm, inner=1 * cm, front_end=1 * cm, button_end=1 * cm)
    waistband.grain(along=waistband.outer)
    waistband.cut(1, interfacing=1, title="Waistband")


@lesson.sew("Darts and seams")
def seams(make, front, back, seam, zip_length):
    """Left and right leg first, then one crotch seam through both."""
    make.dart(front)
    make.dart(back)
    make.plain_seam(front.right.side, back.right.side, allowance=seam, press="open")
    make.plain_seam(front.left.side.after(zip_length), back.left.side.after(zip_length), allowance=seam, press="open")
    make.plain_seam(front.inseam, back.inseam, allowance=seam, press="open")
    make.plain_seam(
        front.left.crotch + back.left.crotch, front.right.crotch + back.right.crotch, allowance=seam, press="open"
    )


@lesson.sew("Zip")
def set_zip(make, front, back, seam, zip_length):
    """The front laps over."""
    make.lapped_zip(front.left.zip_opening, back.left.zip_opening, allowance=seam, length=zip_length)


@lesson.sew("Waistband, button, hem")
def finish(make, front, back, waistband, overlap):
    """The band ends at the zip."""
    make.fuse(waistband)
    make.set_band(
        waistband.outer,
        [front.left.waist, front.right.waist, back.right.waist, back.left.waist],
        allowance=1 * cm,
        overlap=overlap,
        at=waistband.button_end,
    )
    make.band_ends(
        waistband.front_end, waistband.button_end, allowance=1 * cm, overlap=overlap, at=waistband.button_end
    )
    make.turn_out(waistband, through=waistband.inner.after(overlap))
    make.close_band(
        waistband.inner, waistband.outer, allowance=1 * cm, method="hand", overlap=overlap, at=waistband.button_end
    )
    make.buttonholes(waistband.buttonhole_1, length=21 * mm)
    make.buttons(waistband.buttonhole_button_1, size=18 * mm, holes=waistband.buttonhole_1)
    make.hem(front.hem, back.hem, first=1 * cm, second=3 * cm)
