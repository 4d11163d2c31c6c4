"""A boxy top with straight set-in sleeves (invented), drawn on blank paper of straight lines, so that every length of
it can be worked by hand."""

from kit import Lesson, blank_paper, cm, mm

lesson = Lesson("Boxy top", start=blank_paper, units="cm", size="W4", notions=("sewing thread",))
lesson.length("armhole", 24 * cm, least=18 * cm, most=36 * cm, why="from the end of the shoulder to the underarm")
lesson.length("cap", 4 * cm, least=0 * cm, most=20 * cm, why="how high the sleeve rises above the underarm")
lesson.length("sleeve_length", 50 * cm, least=15 * cm, most=60 * cm, why="from the dropped shoulder to the wrist")
lesson.length("seam", 1 * cm, least=6 * mm, most=2 * cm, why="all seams", said="seam allowance")


@lesson.step("Draw the front", makes="front")
def draw_front(front, bust_girth, armhole):
    """A quarter of the bust and 4 cm wide. The shoulder runs from 12.5 cm beside the centre to the side; the armhole is
    {armhole} straight down from there."""
    half = bust_girth / 4 + 4 * cm
    centre, neck = front.place(0 * cm, 31 * cm), front.place(12.5 * cm, 40 * cm)
    tip = front.place(half, 40 * cm)
    under = tip.down(armhole)
    low, foot = front.place(half, -20 * cm), front.place(0 * cm, -20 * cm)
    curve = centre.curve_to(neck, square_to=centre.to(foot), end_square_to=neck.to(tip))
    front.draw(
        centre=foot.to(centre),
        neck=curve,
        shoulder=neck.to(tip),
        armhole=tip.to(under),
        side=under.to(low),
        hem=low.to(foot),
    )
    front.guide(waist_line=front.place(0 * cm, 0 * cm).ruled("out", half))


@lesson.step("Draw the back", makes="back")
def draw_back(front, back):
    """The same, its neck only 3 cm deep."""
    back.trace(front)
    low = back.place(0 * cm, 37 * cm)
    foot = back.place(0 * cm, -20 * cm)
    neck = low.curve_to(back.neck.end, square_to=low.to(foot), end_square_to=back.shoulder)
    back.draw(neck=neck, instead_of=back.neck)
    back.draw(centre=foot.to(low), instead_of=back.centre)


@lesson.step("Draw the sleeve", makes="sleeve")
def draw_sleeve(sleeve, armhole, cap, sleeve_length):
    """From the top {cap} down, and as far out on both sides as the armhole reaches from the top; {sleeve_length} long,
    as wide at the wrist."""
    out = (float(armhole) ** 2 - float(cap) ** 2) ** 0.5
    top = sleeve.place(0 * cm, 0 * cm)
    one, two = sleeve.place(-out * mm, -float(cap) * mm), sleeve.place(out * mm, -float(cap) * mm)
    low = -float(sleeve_length) * mm
    left, right = sleeve.place(-out * mm, low), sleeve.place(out * mm, low)
    sleeve.draw(
        back_cap=one.to(top),
        front_cap=top.to(two),
        front_underarm=two.to(right),
        wrist=right.to(left),
        back_underarm=left.to(one),
    )
    sleeve.role("sleeve", back_cap="cap", front_cap="cap", front_underarm="underarm", back_underarm="underarm")


@lesson.step("Allowances, cutting, binding", strips="neck_binding")
def allowances(front, back, sleeve, neck_binding, seam):
    """{seam} on seams, 3 cm at hem and wrist; the neck is bound."""
    for piece in (front, back):
        piece.allow(neck=0 * mm, shoulder=seam, armhole=seam, side=seam, hem=3 * cm)
        piece.cut(1, fold="centre")
        piece.grain(along=piece.centre)
        piece.declare(piece.side, piece.armhole, why="slit")
    sleeve.declare(sleeve.front_underarm, sleeve.front_cap, why="point")
    sleeve.allow(back_cap=seam, front_cap=seam, front_underarm=seam, back_underarm=seam, wrist=3 * cm)
    sleeve.cut(2, mirrored=True)
    sleeve.grain(at=sleeve.place(0 * cm, -10 * cm))
    neck_binding.bind(finished_length=(front.neck.length + back.neck.length) * 2 + 4 * cm, finished_width=8 * mm)


@lesson.sew("Sew the top")
def sew_up(make, front, back, sleeve, neck_binding, seam):
    """Shoulders, neck, sides; the sleeves closed, hemmed and set in; the hem."""
    make.plain_seam(front.shoulder, back.shoulder, allowance=seam, press="open")
    make.bind(front.neck, back.neck, strip=neck_binding, finished=8 * mm, ends="ring")
    make.plain_seam(front.side, back.side, allowance=seam, press="open")
    make.plain_seam(sleeve.front_underarm, sleeve.back_underarm, allowance=seam, press="open")
    make.hem(sleeve.wrist, first=1 * cm, second=2 * cm)
    make.set_in_sleeve(sleeve.back_cap + sleeve.front_cap, [back.armhole, front.armhole], allowance=seam)
    make.hem(front.hem, back.hem, first=1 * cm, second=2 * cm)
