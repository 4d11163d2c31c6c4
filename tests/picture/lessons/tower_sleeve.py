"""A shirt sleeve's lower part with a tower placket (invented)."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Tower sleeve", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))


@lesson.step("Draw sleeve and tower", makes=("sleeve", "tower"))
def draw(sleeve, tower):
    """The slit is 14 cm long, the tower 2.5 cm wide when it is made."""
    a, b = sleeve.place(-14 * cm, 0 * mm), sleeve.place(14 * cm, 0 * mm)
    c, d = sleeve.place(16 * cm, 35 * cm), sleeve.place(-16 * cm, 35 * cm)
    sleeve.draw(wrist=a.to(b), front_underarm=b.to(c), cap=c.to(d), back_underarm=d.to(a))
    sleeve.slit("cuff_slit", "wrist", at=7 * cm, size=14 * cm)
    e, f = tower.place(0 * mm, 0 * mm), tower.place(5 * cm, 0 * mm)
    g, h = tower.place(5 * cm, 17 * cm), tower.place(37.5 * mm, 18.5 * cm)
    i, j = tower.place(25 * mm, 17 * cm), tower.place(0 * mm, 17 * cm)
    tower.draw(low=e.to(f), outer=f.to(g), right_point=g.to(h), left_point=h.to(i), step=i.to(j), edge=j.to(e))


@lesson.step("Allowances and strip", strips="placket")
def allowances(sleeve, tower, placket):
    """1 cm; 6 mm on the tower."""
    sleeve.allow(wrist=1 * cm, front_underarm=1.5 * cm, cap=1.5 * cm, back_underarm=1.5 * cm)
    tower.allow(low=1 * cm, outer=6 * mm, right_point=6 * mm, left_point=6 * mm, step=6 * mm, edge=6 * mm)
    sleeve.cut(2, mirrored=True)
    tower.cut(2, mirrored=True)
    for piece in (sleeve, tower):
        piece.grain()
    placket.band(cut_length=16 * cm, cut_width=26 * mm, allowance=6 * mm, count=2, title="Placket strip")


@lesson.sew("Finish the slit")
def finish(make, sleeve, tower, placket):
    """While the sleeve lies flat."""
    make.tower_placket(
        tower.edge,
        around=[tower.step, tower.left_point, tower.right_point, tower.outer],
        under=placket,
        slit=sleeve.cuff_slit,
    )
