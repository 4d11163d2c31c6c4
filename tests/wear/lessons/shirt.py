"""A shirt with button bands, a collar on a stand, set-in sleeves with plackets and cuffs (invented)."""

from kit import Lesson, bodice_block, cm, mm, with_sleeve

lesson = Lesson(
    "Curlew shirt",
    start=with_sleeve(bodice_block, ease=2 * cm),
    size="W4",
    units="cm",
    author="A sewing teacher",
    level="You have set in a sleeve before.",
    summary="A shirt with a button band, a collar on a stand, cuffs and plackets.",
    cloth="Light cotton: poplin, chambray, lawn.",
    cloth_widths=("150 cm", "112 cm"),
    notions=(
        "sewing thread to match",
        "light fusible interfacing",
        "7 buttons, 11 mm",
        "2 buttons, 11 mm, for the cuffs",
    ),
)
lesson.length("below_waist", 18 * cm, least=10 * cm, most=19 * cm, why="how far it reaches below the waist")
lesson.length("band_width", 3 * cm, least=2.4 * cm, most=4 * cm, why="finished width of the button band")
lesson.length("stand_height", 3 * cm, least=2.5 * cm, most=3.5 * cm, why="of the collar stand")
lesson.length("stand_rise", 1 * cm, least=5 * mm, most=2 * cm, why="how far the stand bends up at the front")
lesson.length("collar_depth", 4.5 * cm, least=4 * cm, most=6 * cm, why="covers the stand at the back")
lesson.length("collar_point", 7 * cm, least=6 * cm, most=9 * cm, why="length of the point")
lesson.length("cuff_width", 5 * cm, least=4 * cm, most=8 * cm, why="finished width")
lesson.length("cuff_ease", 4 * cm, least=3 * cm, most=7 * cm, why="room round the wrist")
lesson.length("overlap", 2 * cm, least=1.5 * cm, most=3 * cm, why="of the cuff, for the button")
lesson.length("slit_length", 9 * cm, least=7 * cm, most=12 * cm, why="the hand goes through")
lesson.length("seam", 1 * cm, least=8 * mm, most=1.5 * cm, why="all seams", said="seam allowance")
lesson.length("hem_allowance", 1.4 * cm, least=1 * cm, most=2 * cm, why="a narrow hem")


@lesson.step("Rule the hem")
def hem(front, back, below_waist):
    """On front and back rule the hem {below_waist} below the waistline."""
    for piece in (front, back):
        piece.draw(hem=piece.waist.parallel(below_waist, "down"), instead_of=piece.hip)
        piece.join(piece.side, piece.hem)
        piece.join(piece.hem, piece.centre)
    front.true(front.side, back.side)


@lesson.step("Cut the button band off the front", makes="band")
def button_band(front, band, band_width):
    """The band is {band_width} wide and lies half of it on either side of the centre. Rule the front edge half of the
    band inside the centre. Trace the band onto fresh paper, and once more beyond its fold."""
    half = band_width / 2
    low = front.hem.end.out(half)
    edge = low.ruled("up", 70 * cm).to(front.neck)
    a = edge.end
    c = front.centre_neck
    front.draw(front_edge=edge, instead_of=front.centre)
    front.neck = front.neck.to(front.front_edge, end="start")
    front.hem = front.hem.to(front.front_edge)
    # the band
    top_a, bottom_a = band.place(half, a.y), band.place(half, low.y)
    top_m, bottom_m = band.place(-half, a.y), band.place(-half, low.y)
    top_b, bottom_b = band.place(-half * 3, a.y), band.place(-half * 3, low.y)
    band.draw(
        outer=bottom_a.to(top_a),
        top=top_a.arc(top_m, through=band.place(0 * mm, c.y)),
        inner_top=top_m.arc(top_b, through=band.place(-half * 2, c.y)),
        inner=top_b.to(bottom_b),
        bottom=bottom_b.to(bottom_a),
    )
    band.mark_line("fold", top_m.to(bottom_m), said="fold line")


@lesson.step("Draw the collar stand", makes=("stand", "inner_stand"))
def draw_stand(front, back, band, stand, inner_stand, stand_height, stand_rise, band_width):
    """Measure the neck from the centre back over the front to the edge of the band: {half_neck}. Draw the lower edge of
    the stand this long, bending up by {stand_rise}; it is {stand_height} high and rounded at the front."""
    long = back.neck.length + front.neck.length + band.top.length
    radius = long * (long / (stand_rise * 2))
    cb = stand.place(0 * mm, 0 * mm)
    lower = cb.arc(about="up", radius=radius, length=long, toward="out")
    top = cb.up(stand_height).arc(
        about="up", radius=radius - stand_height, length=long - band_width / 2 - 2 * mm, toward="out"
    )
    stand.draw(
        lower=lower,
        end=lower.end.curve_to(top.end, square_to=lower, end_toward="in"),
        top=top,
        centre=top.start.to(cb),
    )
    stand.measure(half_neck=lower)
    inner_stand.trace(stand)


@lesson.step("Draw the collar", makes=("collar", "under_collar"))
def draw_collar(stand, collar, under_collar, collar_depth, collar_point):
    """As long as the upper edge of the stand, {collar_depth} deep at the back, with points {collar_point} long."""
    cb = collar.place(0 * mm, 0 * mm)
    neck = cb.ruled("out", stand.top.length)
    point = neck.end.up(collar_point * 0.95).out(collar_point * 0.3)
    top = cb.up(collar_depth)
    collar.draw(neck=neck, end=neck.end.to(point), outer=point.curve_to(top, end_toward="in"), centre=top.to(cb))
    under_collar.trace(collar)


@lesson.step("Shorten the sleeve and draw the cuff", makes="cuff")
def cuff_step(sleeve, cuff, cuff_width, cuff_ease, overlap, wrist_girth, slit_length):
    """Take the width of the cuff, {cuff_width}, off the sleeve's lower edge. The cuff is as long as the wrist with
    {cuff_ease} of room and {overlap} to button: {cuff_length}. Mark the slit {slit_length} long, on the back."""
    wrist = sleeve.wrist.parallel(cuff_width, "up")
    sleeve.draw(wrist=wrist, instead_of=sleeve.wrist)
    sleeve.join(sleeve.front_underarm, sleeve.wrist)
    sleeve.join(sleeve.wrist, sleeve.back_underarm)
    long = wrist_girth + cuff_ease + overlap
    a, b = cuff.place(0 * mm, 0 * mm), cuff.place(long, 0 * mm)
    c, d = cuff.place(long, cuff_width * 2), cuff.place(0 * mm, cuff_width * 2)
    cuff.draw(outer=a.to(b), far_end=b.to(c), inner=c.to(d), near_end=d.to(a))
    middle = cuff.place(0 * mm, cuff_width)
    cuff.mark_line("fold", middle.to(cuff.place(long, cuff_width)), said="fold line")
    cuff.measure(cuff_length=cuff.outer)
    sleeve.slit("cuff_slit", "wrist", at=sleeve.wrist.length * 0.75, size=slit_length)


@lesson.step("Cut the placket strips", strips="placket")
def strips(placket, slit_length):
    """These need no paper."""
    placket.band(
        cut_length=slit_length * 2 + 2 * cm, cut_width=3 * cm, allowance=6 * mm, count=2, title="Placket strip"
    )


@lesson.step("Notches, buttons and buttonholes")
def marks(front, back, sleeve, band, stand, cuff, band_width, stand_height, overlap, cuff_width):
    """Notch the sides. Six buttonholes on the band and one on the stand; one on each cuff."""
    front.match(front.side, back.side, at=[15 * cm])
    band.cut(2, mirrored=True, interfacing=2, title="Button band", number=4)
    band.buttonholes(
        "outer",
        inside=band_width / 2,
        first=8 * cm,
        last=band.outer.length - 6 * cm,
        count=6,
        button=11 * mm,
        thick=2 * mm,
        lie="vertical",
    )
    stand.cut(1, fold="centre", interfacing=1, title="Stand", number=5)
    stand.buttonholes(
        "lower",
        inside=stand_height / 2,
        first=stand.lower.length - band_width / 2,
        last=stand.lower.length - band_width / 2,
        count=1,
        button=11 * mm,
        thick=2 * mm,
        lie="vertical",
    )
    cuff.cut(2, mirrored=True, interfacing=2, title="Cuff", number=9)
    cuff.buttonholes(
        "near_end",
        inside=1.2 * cm,
        first=cuff_width / 2,
        last=cuff_width / 2,
        count=1,
        button=11 * mm,
        thick=2 * mm,
        onto="far_end",
    )


@lesson.step("Allowances and words")
def allowances(front, back, sleeve, band, stand, inner_stand, collar, under_collar, cuff, seam, hem_allowance):
    """Add {seam} everywhere, and {hem_allowance} at the hem."""
    for piece in (front, back):
        piece.allow(neck=seam, shoulder=seam, armhole=seam, side=seam, hem=hem_allowance)
        piece.grain()
    front.allow(front_edge=seam)
    sleeve.allow(front_underarm=seam, back_underarm=seam, front_cap=seam, back_cap=seam, wrist=seam)
    sleeve.grain()
    band.allow(outer=seam, inner=seam, top=seam, inner_top=seam, bottom=seam)
    band.grain(along=band.outer)
    for piece in (stand, inner_stand):
        piece.allow(lower=seam, end=seam, top=seam)
        piece.grain(along=piece.centre)
    for piece in (collar, under_collar):
        piece.allow(neck=seam, end=seam, outer=seam)
        piece.grain(along=piece.centre)
    cuff.allow(outer=seam, inner=seam, near_end=seam, far_end=seam)
    cuff.grain(along=cuff.outer)
    front.cut(2, mirrored=True, title="Front", number=1)
    back.cut(1, fold="centre", title="Back", number=2)
    sleeve.cut(2, mirrored=True, title="Sleeve", number=3)
    inner_stand.cut(1, fold="centre", title="Inner stand", number=6)
    collar.cut(1, fold="centre", interfacing=1, title="Collar", number=7)
    under_collar.cut(1, fold="centre", title="Under collar", number=8)


@lesson.finished("Chest", over="bust_girth")
def chest(front, back, band_width):
    return (front.bust_line.length + back.bust_line.length) * 2


@lesson.finished("Cuff, buttoned", over="wrist_girth")
def cuff_round(cuff, overlap):
    return cuff.outer.length - overlap


@lesson.sew("Fuse the interfacing")
def fuse(make, band, stand, collar, cuff):
    """Try it on a scrap first."""
    make.fuse(band, stand, collar, cuff)


@lesson.sew("Sew the shoulders and sides")
def seams(make, front, back, seam):
    """Staystitch the neck first."""
    make.staystitch(front.neck, back.neck)
    make.flat_felled_seam(front.shoulder, back.shoulder, allowance=seam, lap=back)
    make.plain_seam(front.side, back.side, allowance=seam, press="back", together=True)


@lesson.sew("Sew placket, sleeve and cuff")
def sleeves(make, front, back, sleeve, placket, cuff, seam, overlap):
    """The placket while the sleeve lies flat."""
    make.bound_placket(placket, slit=sleeve.cuff_slit)
    make.ease_stitch(sleeve.back_cap + sleeve.front_cap, fit=[back.armhole, front.armhole])
    make.plain_seam(sleeve.front_underarm, sleeve.back_underarm, allowance=seam, together=True, press="one side")
    make.gather(sleeve.wrist, to=cuff.outer.length - overlap)
    make.set_band(cuff.outer, [sleeve.wrist], allowance=seam, overlap=overlap, at=cuff.far_end)
    make.band_ends(cuff.near_end, cuff.far_end, allowance=seam, overlap=overlap, at=cuff.far_end)
    make.turn_out(cuff, through=cuff.inner)
    make.close_band(cuff.inner, cuff.outer, allowance=seam, overlap=overlap, at=cuff.far_end)


@lesson.sew("Set the sleeves in")
def set_in(make, front, back, sleeve, seam):
    """Single notches to the front."""
    make.set_in_sleeve(sleeve.back_cap + sleeve.front_cap, [back.armhole, front.armhole], allowance=seam, ease=2 * cm)


@lesson.sew("Try on and hem")
def hem_up(make, front, back, hem_allowance):
    """Before the bands close the ends of the hem."""
    make.try_on()
    make.narrow_hem(front.hem, back.hem, turn=hem_allowance / 2)


@lesson.sew("Set the button bands on")
def bands(make, front, band, seam):
    """Both sides alike."""
    make.set_band(band.outer, front.front_edge, allowance=seam)
    make.band_ends(band.bottom, allowance=seam)
    make.turn_out(band, through=band.inner)
    make.close_band(band.inner, band.outer, allowance=seam)


@lesson.sew("Make the collar and set it on")
def collar_on(make, front, back, band, stand, inner_stand, collar, under_collar, seam):
    """The collar first, then the stand round it."""
    make.seam_to_turn(collar.end + collar.outer, under_collar.end + under_collar.outer, allowance=seam)
    make.turn_out(collar, under_collar, through=[collar.neck, under_collar.neck])
    make.topstitch(collar.end + collar.outer, distance=6 * mm)
    make.seam_band(
        stand.end + stand.top,
        inner_stand.end + inner_stand.top,
        allowance=seam,
        catching=[collar.neck, under_collar.neck],
    )
    make.turn_out(stand, inner_stand, through=[stand.lower, inner_stand.lower])
    make.set_band(
        stand.lower,
        [band.left.top, front.left.neck, back.neck, front.right.neck, band.right.top],
        allowance=seam,
        catching=[band.inner_top],
    )
    make.close_band(inner_stand.lower, stand.lower, allowance=seam)


@lesson.sew("Buttonholes and buttons")
def buttons(make, band, stand, cuff):
    """Right over left."""
    holes = [getattr(band.right, f"buttonhole_{n}") for n in range(1, 7)]
    make.buttonholes(*holes, stand.right.buttonhole_1, cuff.buttonhole_1, length=13 * mm)
    make.buttons(*[getattr(band.left, f"buttonhole_button_{n}") for n in range(1, 7)], size=11 * mm, holes=holes)
    make.buttons(
        stand.left.buttonhole_button_1,
        cuff.buttonhole_button_1,
        size=11 * mm,
        holes=[stand.right.buttonhole_1, cuff.buttonhole_1],
    )
