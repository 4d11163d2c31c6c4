"""A wrap skirt (invented), drawn on blank paper: its two fronts lie over one another, and two ties at the corners of
the waist hold them."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Wrap skirt", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))
lesson.length("lap", 14 * cm, least=2 * cm, most=24 * cm, why="how far each front passes the centre")
lesson.length("skirt_length", 65 * cm, least=40 * cm, most=90 * cm, why="from the waist to the hem")
lesson.length("tie_length", 95 * cm, least=30 * cm, most=140 * cm, why="round the waist and a bow")


@lesson.step("Draw the back", makes="back")
def draw_back(back, hip_girth, skirt_length):
    """A rectangle, a quarter of the hip and 2 cm wide and {skirt_length} long, its left edge on the fold."""
    top, low = back.place(0 * mm, 0 * mm), back.place(0 * mm, skirt_length * -1)
    side, foot = top.out(hip_girth / 4 + 2 * cm), low.out(hip_girth / 4 + 2 * cm)
    back.draw(centre=top.to(low), hem=low.to(foot), side=foot.to(side), waist=side.to(top))
    back.guide(waist_line=top.to(side))


@lesson.step("Draw the front", makes="front")
def draw_front(front, hip_girth, skirt_length, lap):
    """The same, and {lap} beyond the centre."""
    top, low = front.place(lap * -1, 0 * mm), front.place(lap * -1, skirt_length * -1)
    side = front.place(hip_girth / 4 + 2 * cm, 0 * mm)
    foot = front.place(hip_girth / 4 + 2 * cm, skirt_length * -1)
    front.draw(wrap_edge=top.to(low), hem=low.to(foot), side=foot.to(side), waist=side.to(top))
    front.guide(waist_line=top.to(side))


@lesson.step("Allowances, cutting, strips", strips=("tie", "binding"))
def allowances(front, back, tie, binding, tie_length):
    """1.5 cm at the sides, 2 cm at edges and hem; the waist is bound."""
    front.allow(wrap_edge=2 * cm, hem=2 * cm, side=1.5 * cm, waist=0 * mm)
    back.allow(hem=2 * cm, side=1.5 * cm, waist=0 * mm)
    front.cut(2, mirrored=True)
    back.cut(1, fold="centre")
    front.grain(along=front.wrap_edge)
    back.grain(along=back.centre)
    tie.fold_in_four(finished_length=tie_length, finished_width=25 * mm, ends=1 * cm, count=2, title="Tie")
    waist = (front.waist.length + back.waist.length) * 2
    binding.bind(finished_length=waist + 4 * cm, finished_width=1 * cm)


@lesson.sew("Sew the skirt")
def sew_up(make, front, back, tie, binding, waist_girth, lap):
    """Sides, front edges, the waist gathered and bound, the hem, then the ties at the corners."""
    make.plain_seam(front.side, back.side, allowance=1.5 * cm, press="open")
    make.hem(front.wrap_edge, first=1 * cm, second=1 * cm)
    make.gather(front.waist, to=waist_girth / 4 + 1 * cm + lap)
    make.gather(back.waist, to=waist_girth / 4 + 1 * cm)
    make.bind(front.left.waist, back.waist, front.right.waist, strip=binding, finished=1 * cm, ends="turned")
    make.hem(front.hem, back.hem, first=1 * cm, second=1 * cm)
    make.fold_strip(tie, edgestitch=2 * mm, ends=1 * cm)
    make.attach_strip(tie, front.wrap_edge, at="start", lap=2 * cm)
