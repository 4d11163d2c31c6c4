"""A skirt panel on a yoke whose lower edge is hollow: the yoke's allowance must be clipped before the straight top of
the panel can be pinned to it (invented)."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Yoke skirt", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))


@lesson.step("Draw yoke and panel", makes=("yoke", "panel"))
def draw(yoke, panel):
    """The yoke's lower edge is the upper half of a circle, the panel's top as long as this is."""
    a, b = yoke.place(-20 * cm, 0 * mm), yoke.place(-10 * cm, 0 * mm)
    c, d = yoke.place(10 * cm, 0 * mm), yoke.place(20 * cm, 0 * mm)
    e, f = yoke.place(20 * cm, 25 * cm), yoke.place(-20 * cm, 25 * cm)
    yoke.draw(
        near=a.to(b),
        neck=b.arc(c, through=yoke.place(0 * mm, 10 * cm)),
        far=c.to(d),
        right=d.to(e),
        top=e.to(f),
        left=f.to(a),
    )
    half = yoke.neck.length / 2
    p, q = panel.place(-half, 0 * mm), panel.place(half, 0 * mm)
    r, s = panel.place(half, 40 * cm), panel.place(-half, 40 * cm)
    panel.draw(hem=p.to(q), right=q.to(r), top=r.to(s), left=s.to(p))


@lesson.step("Allowances")
def allowances(yoke, panel):
    """1 cm all round."""
    yoke.allow(near=1 * cm, neck=1 * cm, far=1 * cm, right=1 * cm, top=1 * cm, left=1 * cm)
    panel.allow(hem=1 * cm, right=1 * cm, top=1 * cm, left=1 * cm)
    for piece in (yoke, panel):
        piece.cut(1)
        piece.grain()


@lesson.sew("Sew the yoke on")
def join(make, yoke, panel):
    """Slowly."""
    make.plain_seam(yoke.neck, panel.top, allowance=1 * cm, press="panel")
