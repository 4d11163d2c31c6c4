"""A half apron gathered into a band, a tie caught in either end of the band; and a pocket flap of two layers with a
tie caught in its seam (invented)."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Tied apron", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))


@lesson.step("Draw apron and band", makes=("skirt", "band"))
def draw(skirt, band):
    """60 cm wide at the waist and 50 cm long; the band is folded to 4 cm."""
    a, b = skirt.place(-30 * cm, -50 * cm), skirt.place(30 * cm, -50 * cm)
    c, d = skirt.place(30 * cm, 0 * mm), skirt.place(-30 * cm, 0 * mm)
    skirt.draw(hem=a.to(b), left_side=b.to(c), waist=c.to(d), right_side=d.to(a))
    skirt.role(left_side="side", right_side="side")
    skirt.guide(waist_line=d.to(c))
    e, f = band.place(0 * mm, 0 * mm), band.place(60 * cm, 0 * mm)
    g, h = band.place(60 * cm, 8 * cm), band.place(0 * mm, 8 * cm)
    band.draw(outer=e.to(f), end=f.to(g), inner=g.to(h), start=h.to(e))


@lesson.step("Allowances and ties", strips="tie")
def allowances(skirt, band, tie):
    """1 cm, and hems."""
    skirt.allow(hem=3 * cm, left_side=2 * cm, right_side=2 * cm, waist=1 * cm)
    band.allow(outer=1 * cm, end=1 * cm, inner=1 * cm, start=1 * cm)
    for piece in (skirt, band):
        piece.cut(1)
        piece.grain()
    tie.fold_in_four(finished_length=70 * cm, finished_width=25 * mm, ends=1 * cm, count=2, title="Tie")


@lesson.sew("Hem the apron")
def hems(make, skirt):
    """Sides first."""
    make.hem(skirt.left_side, first=1 * cm, second=1 * cm)
    make.hem(skirt.right_side, first=1 * cm, second=1 * cm)
    make.hem(skirt.hem, first=1 * cm, second=2 * cm)


@lesson.sew("Set the band on and catch the ties")
def banded(make, skirt, band, tie):
    """A tie lies in either end."""
    make.fold_strip(tie, ends=1 * cm)
    make.set_band(band.outer, skirt.waist, allowance=1 * cm)
    make.attach_strip(tie, band.end, at=2 * cm, method="caught")
    make.attach_strip(tie, band.start, at=6 * cm, method="caught")
    make.band_ends(band.start, band.end, allowance=1 * cm)
    make.turn_out(band, through=band.inner)
    make.close_band(band.inner, band.outer, allowance=1 * cm)
