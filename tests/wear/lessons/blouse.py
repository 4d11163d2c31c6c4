"""A blouse with long sleeves (invented): its front opens from neck to hem and is buttoned."""

from kit import Lesson, bodice_block, cm, mm, with_sleeve

lesson = Lesson(
    "Long-sleeved blouse",
    start=with_sleeve(bodice_block, ease=3 * cm, arm_ease=6 * cm, wrist_ease=7 * cm),
    units="cm",
    size="W4",
    notions=("sewing thread", "5 buttons"),
)
lesson.length("lap", 2 * cm, least=1 * cm, most=4 * cm, why="the fronts lie over one another")
lesson.length("seam", 1.5 * cm, least=1 * cm, most=2 * cm, why="all seams", said="seam allowance")


@lesson.step("Lay the fronts over one another")
def fronts(front, lap):
    """Rule the front edge {lap} beyond the centre, and carry neck and hem on to it."""
    top = front.centre.end.into(lap)
    low = front.centre.start.into(lap)
    front.draw(
        band_bottom=front.centre.start.to(low),
        edge=low.to(top),
        band_top=top.to(front.centre.end),
        instead_of=front.centre,
    )
    front.role(band_bottom="hem", edge="centre", band_top="neck")


@lesson.step("Buttons, allowances, cutting", strips="neck_binding")
def allowances(front, back, sleeve, neck_binding, seam, lap):
    """Five buttonholes down the front. Add {seam} to the seams, 3 cm to the front edges and hems."""
    front.buttonholes(
        "edge",
        inside=lap,
        first=8 * cm,
        last=front.edge("edge").length - 2 * cm,
        count=5,
        button=12 * mm,
        thick=3 * mm,
        lie="vertical",
        name="hole",
    )
    front.allow(
        neck=0 * mm,
        band_top=0 * mm,
        shoulder=seam,
        armhole=8 * mm,
        side=seam,
        hip=3 * cm,
        band_bottom=3 * cm,
        edge=3 * cm,
    )
    front.cut(2, mirrored=True)
    front.grain(along=front.edge("edge"))
    back.allow(neck=0 * mm, shoulder=seam, armhole=8 * mm, side=seam, hip=3 * cm)
    back.cut(1, fold="centre")
    back.grain(along=back.centre)
    sleeve.allow(front_underarm=seam, back_underarm=seam, front_cap=8 * mm, back_cap=8 * mm, wrist=3 * cm)
    neck = (front.neck.length + back.neck.length + front.band_top.length) * 2
    neck_binding.bind(finished_length=neck + 4 * cm, finished_width=8 * mm)


@lesson.sew("Bodice")
def bodice(make, front, back, neck_binding, seam):
    """Shoulders and sides, the front edges, neck and hem."""
    make.plain_seam(front.shoulder, back.shoulder, allowance=seam, press="open")
    make.plain_seam(front.side, back.side, allowance=seam, press="open")
    make.hem(front.edge, first=1 * cm, second=2 * cm)
    make.bind(
        front.left.band_top + front.left.neck,
        back.neck,
        front.right.neck + front.right.band_top,
        strip=neck_binding,
        finished=8 * mm,
        ends="turned",
    )
    make.hem(front.band_bottom + front.hip, back.hip, first=1 * cm, second=2 * cm)


@lesson.sew("Sleeves")
def sleeves(make, front, back, sleeve, seam):
    """Close each sleeve, hem it, ease the cap and set it in."""
    make.plain_seam(sleeve.front_underarm, sleeve.back_underarm, allowance=seam, press="open")
    make.hem(sleeve.wrist, first=1 * cm, second=2 * cm)
    make.ease_stitch(sleeve.back_cap + sleeve.front_cap)
    make.set_in_sleeve(sleeve.back_cap + sleeve.front_cap, [back.armhole, front.armhole], allowance=8 * mm, ease=3 * cm)


@lesson.sew("Buttons")
def button_up(make, front):
    """The right front laps over."""
    holes = [front.right.hole_1, front.right.hole_2, front.right.hole_3, front.right.hole_4, front.right.hole_5]
    make.buttonholes(*holes, length=15 * mm)
    buttons = [
        front.left.hole_button_1,
        front.left.hole_button_2,
        front.left.hole_button_3,
        front.left.hole_button_4,
        front.left.hole_button_5,
    ]
    make.buttons(*buttons, size=12 * mm, holes=holes)
