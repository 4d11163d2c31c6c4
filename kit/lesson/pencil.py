"""Points and lines as a drafting step handles them: they know the piece they lie on, they are moved with
lengths that carry a unit, and what is measured is written down for the picture.

`PaperPoint` and `PaperLine` wrap the plain geometry values; every verb gives a new one. Directions are as the
paper lies: "up" to the neck, "down" to the hem, "out" to the side seam, "in" to the centre line.
"""

from __future__ import annotations

from dataclasses import replace
from typing import NoReturn

from kit.diagnostic import Value, measured, message, named_edge, number
from kit.errors import KitError
from kit.geometry import Line, Path, Point, Vector, parallel
from kit.lesson import compass
from kit.lesson.curve_ends import cleared, curve_into, curve_square_to, way_at
from kit.lesson.curving import curve
from kit.lesson.hand import SQUARE, HandMove, Kind, Sign, end_sign, square_sign
from kit.lesson.headings import FAR, NotedSheet, OpenSheet, distance, heading, open_paper
from kit.sewing.call import answering
from kit.units import Length, Size

REACH = 50.0
"""mm that a straight line is carried on to meet another: past a seam's end, not to the other side of the piece."""


@answering
class PaperPoint:
    """A point marked on a piece. `x` and `y` are Lengths from the centre line and the waistline."""

    def __init__(self, sheet: NotedSheet, point: Point) -> None:
        self.sheet: OpenSheet = open_paper(sheet)
        self.point = point

    @property
    def x(self) -> Length:
        """How far it lies from the centre line.

        Example::

            width = front.side_waist.x
        """
        return Length(self.point.x)

    @property
    def y(self) -> Length:
        """How far it lies above the waistline.

        Example::

            height = front.neck_point.y
        """
        return Length(self.point.y)

    def _heading(self, direction: str) -> Vector:
        return heading(direction, self.sheet, self.point)

    def _moved(self, direction: Vector, how_far: Size, verb: str) -> PaperPoint:
        size = distance(how_far, verb)
        end = self.point + direction * float(size)
        self.sheet.note(size, self.point, end)
        if size > 1e-6:
            # Square on the paper are the four directions; along a straight line to another point there is no square.
            signs = () if verb == "toward" else square_sign(self.point, direction, self.sheet.lines())
            self._did("mark", end, size, signs=signs)
        return PaperPoint(self.sheet, end)

    def _did(
        self, kind: Kind, end: Point, size: Length, path: Path | None = None, signs: tuple[Sign, ...] = ()
    ) -> None:
        move = HandMove(kind, self.sheet.piece_name, self.point, end, path, float(size), size.name, signs=signs)
        self.sheet.did(move)

    def up(self, how_far: Size) -> PaperPoint:
        """The point this far straight up.

        Example::

            raised = front.shoulder_tip.up(1 * cm)
        """
        return self._moved(self._heading("up"), how_far, "up")

    def down(self, how_far: Size) -> PaperPoint:
        """The point this far straight down.

        Example::

            lower = front.centre_neck.down(2 * cm)
        """
        return self._moved(self._heading("down"), how_far, "down")

    def out(self, how_far: Size) -> PaperPoint:
        """The point this far toward the side seam.

        Example::

            wider = front.neck_point.out(1 * cm)
        """
        return self._moved(self._heading("out"), how_far, "out")

    def into(self, how_far: Size) -> PaperPoint:
        """The point this far toward, or past, the centre line.

        Example::

            inside = front.shoulder_tip.into(1 * cm)
        """
        return self._moved(self._heading("in"), how_far, "into")

    def toward(self, other: PaperPoint, how_far: Size) -> PaperPoint:
        """The point this far along the straight line to `other`.

        Example::

            lower = front.shoulder_tip.toward(front.underarm_point, 2 * cm)
        """
        return self._moved((other.point - self.point).unit(), how_far, "toward")

    def to(self, other: PaperPoint) -> PaperLine:
        """The straight line to `other`.

        Example::

            shoulder = front.neck_point.to(front.shoulder_tip)
        """
        return self._line(other.point)

    def through(self, other: PaperPoint, *, beyond: Size = 0) -> PaperLine:
        """The straight line to `other`, carried on `beyond` it.

        Example::

            raised = front.shoulder_tip.up(1 * cm)
            overarm = front.neck_point.through(raised, beyond=20 * cm)
        """
        size = distance(beyond, "through")
        end = other.point + (other.point - self.point).unit() * float(size)
        self.sheet.note(size, other.point, end)
        return self._line(end, size)

    def ruled(self, direction: str, how_far: Size) -> PaperLine:
        """A straight line of this length in a direction of the paper.

        Example::

            yoke = front.centre_neck.down(8 * cm).ruled("out", 20 * cm)
        """
        size, way = distance(how_far, "ruled"), self._heading(direction)
        end = self.point + way * float(size)
        self.sheet.note(size, self.point, end)
        return self._line(end, size, square_sign(self.point, way, self.sheet.lines()))

    def across(self, line: PaperLine, direction: str = "in") -> PaperPoint:
        """Where a line squared across from here meets `line` (carried on if straight).

        Example::

            level = front.underarm_point.across(front.centre, "in")
        """
        ray = Path.of(Line(self.point, self.point + self._heading(direction) * FAR))
        path = line.path
        if path.is_straight:
            path = path.extended(FAR, end="start").extended(FAR, end="end")
        found = ray.crossings(path)
        if not found:
            raise KitError(message("refusal.square_misses", line=line.told), do=message("refusal.square_misses_do"))
        met = min(found, key=self.point.distance)
        if met.distance(self.point) > 1e-6:
            back = (self.point - met).unit()
            tangent = line.path.tangent_at(line.path.nearest(met))
            if abs(tangent.dot(back)) < SQUARE:
                signs: tuple[Sign, ...] = (Sign("square", met, back, tangent, line.name),)
            else:  # it meets that line aslant, and is square to what it sets out from
                signs = square_sign(self.point, back * -1.0, self.sheet.lines())
            self._did("across", met, Length(0.0), signs=signs)
        return PaperPoint(self.sheet, met)

    def curve_to(
        self,
        target: PaperPoint,
        *,
        square_to: PaperLine | None = None,
        along: PaperLine | None = None,
        toward: str = "",
        end_square_to: PaperLine | None = None,
        end_along: PaperLine | None = None,
        end_toward: str = "",
        fullness: float = 1.0,
    ) -> PaperLine:
        """A smooth curve to `target`. It leaves square to, or along, a line through this point, and arrives
        square to, or along, one through the target; where none is named it heads straight for the other end.

        Of the two ways along a line it takes the shorter one, of those square to the end of an edge the one on the
        cloth's side where it can. `toward` says in which direction it leaves, `end_toward` in which it arrives: "in",
        "out", "up", "down", "inside", "outside"; so said it may turn back a little, or in an S, and a curve that goes
        halfway round or more and is alike at both ends is part of a circle. For a circle use `arc`.

        Example::

            neck = front.centre_neck.curve_to(front.neck_point, square_to=front.centre)
        """
        chord = target.point - self.point
        leave = way_at(self.point, chord, self.sheet, square=square_to, along=along, toward=toward)
        arrive = way_at(
            target.point,
            chord,
            target.sheet,
            square=end_square_to,
            along=end_along,
            toward=end_toward,
            arriving=True,
        )
        path = Path.of(curve(self.point, leave, target.point, arrive, fullness))
        signs = (*end_sign(path, True, square_to, along), *end_sign(path, False, end_square_to, end_along))
        self._did("curve", target.point, Length(0.0), path, signs)
        return PaperLine(self.sheet, path)

    def arc(
        self,
        target: PaperPoint | None = None,
        *,
        about: PaperPoint | str | None = None,
        radius: Size | None = None,
        angle: float | None = None,
        length: Size | None = None,
        through: PaperPoint | None = None,
        toward: str = "",
        far: bool = False,
    ) -> PaperLine:
        """Part of a circle, as a compass draws it, beginning here: about a centre, of a radius, or through a point.

        About a centre, a point or a direction ("up" with `radius=20 * cm`), it goes round through `angle` degrees, up
        to 360, or for a `length` along the arc, setting out `toward` "in", "out", "up" or "down"; or the shorter way to
        where the line from the centre to `target` crosses it. To a `target` it is drawn with a `radius` or an `angle`,
        its belly `toward` a direction (of two such arcs the larger one when `far`), or `through` a third point.

        Example::

            waist = front.centre_hip.arc(about="up", radius=11 * cm, length=17 * cm, toward="out")
            middle = front.centre_hip.up(11 * cm)
            hem = front.centre_hip.down(20 * cm).arc(about=middle, angle=90, toward="out")
        """
        reach = None if radius is None else distance(radius, "arc")
        centre = about.point if isinstance(about, PaperPoint) else None
        if isinstance(about, str):
            if reach is None:
                raise KitError(f"how far {about} the centre lies is not said.", do="Say radius=20 * cm with it.")
            centre = self.point + self._heading(about) * float(reach)
            self.sheet.note(reach, self.point, centre)
        elif centre is not None and reach is not None:
            raise KitError(
                "the centre says how large the arc is, and so does radius=.",
                do='Leave radius out, or say in which direction the centre lies: about="up".',
            )
        drawn = compass.arc(
            self.point,
            None if target is None else target.point,
            centre=centre,
            radius=None if reach is None else float(reach),
            angle=angle,
            length=None if length is None else float(distance(length, "arc")),
            through=None if through is None else through.point,
            toward=heading(toward, self.sheet, self.point) if toward else None,
            far=far,
        )
        path = Path.of(drawn)
        self._did("curve", path.end, Length(0.0), path)
        return PaperLine(self.sheet, path)

    def distance_to(self, other: PaperPoint) -> Length:
        """How far it is to `other`, straight.

        Example::

            front_height = front.centre_neck.distance_to(front.centre_waist)
        """
        return Length(self.point.distance(other.point))

    def _line(self, end: Point, size: Length | None = None, signs: tuple[Sign, ...] = ()) -> PaperLine:
        if self.point.distance(end) < 1e-6:
            raise KitError(message("refusal.line_nothing"), do=message("refusal.line_nothing_do"))
        path = Path.of(Line(self.point, end))
        self._did("rule", end, size or Length(0.0), path, signs)
        return PaperLine(self.sheet, path)


@answering
class PaperLine:
    """A line, straight or curved, on a piece; an edge when it has a `name`."""

    def __init__(self, sheet: NotedSheet, path: Path, name: str = "", beside: Path | None = None) -> None:
        self.sheet: OpenSheet = open_paper(sheet)
        self.path = path
        self.name = name
        self.beside = beside  # the line it was squared from

    def __add__(self, other: object) -> NoReturn:
        """Refused: it is how edges are joined where they are sewn, not on paper."""
        where = message("refusal.here", place=self.told)
        raise KitError(message("refusal.lines_added"), where=where, do=message("refusal.lines_added_do"))

    @property
    def said(self) -> str:
        """The name as people say it."""
        return self.name.replace("_", " ") or "line"

    @property
    def told(self) -> Value:
        """The name as a value of a message."""
        return named_edge(self.name) if self.name else Value("refusal.line", "key")

    @property
    def start(self) -> PaperPoint:
        """The point it begins at.

        Example::

            centre_neck = front.neck.start
        """
        return PaperPoint(self.sheet, self.path.start)

    @property
    def end(self) -> PaperPoint:
        """The point it ends at.

        Example::

            underarm = front.armhole.end
        """
        return PaperPoint(self.sheet, self.path.end)

    @property
    def length(self) -> Length:
        """How long it is.

        Example::

            quarter_hip = front.hip.length
        """
        return Length(self.path.length)

    @property
    def middle(self) -> PaperPoint:
        """The point halfway along.

        Example::

            place = front.side.middle
        """
        return PaperPoint(self.sheet, self.path.at(self.path.length / 2))

    def at(self, how_far: Size) -> PaperPoint:
        """The point this far along from the start.

        Example::

            button = front.centre.at(3 * cm)
        """
        size = distance(how_far, message("refusal.here", place=self.told))
        if size > self.path.length + 1e-6:
            raise KitError(
                message("refusal.line_short", line=self.told, length=measured(self.path.length), at=measured(size)),
                do=message("refusal.shorter_do"),
            )
        point = self.path.at(min(float(size), self.path.length))
        low, high, said = 0.0, float(size), size
        rest = size.rest
        if (
            rest is not None and abs(float(size) + float(rest) - self.path.length) < 1e-6
        ):  # measured back from the other end
            low, high, said = float(size), self.path.length, rest
        way = self.path.between(low, high) if high - low > 1e-6 else None
        if way is not None:
            first, last = (point, way.end) if said is rest else (way.start, point)
            self.sheet.note(said, first, last, way)
            start = way.end if said is rest else way.start
            self._drew("mark", start, point, way, said)
        return PaperPoint(self.sheet, point)

    def _drew(
        self, kind: Kind, start: Point, end: Point, path: Path, size: Length, signs: tuple[Sign, ...] = ()
    ) -> None:
        self.sheet.did(HandMove(kind, self.sheet.piece_name, start, end, path, float(size), size.name, signs=signs))

    def meets(self, other: PaperLine) -> Length:
        """How far along this line, from its start, it meets `other` (carried on a little if straight).

        Example::

            how_far = front.side.meets(front.waist)
        """
        path = other.path
        if path.is_straight:
            path = path.extended(REACH, end="start").extended(REACH, end="end")
        found = self.path.crossings(path)
        if not found:
            raise KitError(
                message("refusal.lines_miss", line=self.told, other=other.told), do=message("refusal.lines_miss_do")
            )
        return Length(min(self.path.nearest(point) for point in found))

    def share(self, part: float) -> PaperPoint:
        """The point at a share (0 to 1) of the length from the start.

        Example::

            place = front.side.share(0.5)
        """
        if not 0 <= part <= 1:
            raise KitError(
                message("refusal.share_outside", share=number(part)),
                where=message("refusal.here", place=self.told),
                do=message("refusal.share_outside_do"),
            )
        path = self.path
        point = path.at(path.length * part)
        if path.length * part > 1e-6:
            self._drew("mark", path.start, point, path.between(0.0, path.length * part), Length(0.0))
        return PaperPoint(self.sheet, point)

    def square(
        self,
        how_far: Size,
        direction: str,
        *,
        at: str = "end",
        clear_of: PaperLine | None = None,
        by: Size = Length(0.0),
    ) -> PaperLine:
        """A straight line square to this one at its "start" or "end", toward a direction of the paper. `clear_of`:
        where its end would lie less than `by` outside that line, it is bent outward on a circle until it does, as an
        armhole is; it keeps its length.

        Example::

            yoke = front.centre.square(20 * cm, "out", at="start")
            overarm = front.neck_point.through(front.shoulder_tip, beyond=12 * cm)
            opening = overarm.square(17 * cm, "down", clear_of=front.side, by=3 * cm)
        """
        size = distance(how_far, message("refusal.here", place=self.told))
        along = 0.0 if at == "start" else self.path.length
        begin = self.path.at(along)
        normal = self.path.normal_at(along)
        if normal.dot(heading(direction, self.sheet, begin)) < 0:
            normal = normal * -1.0
        path = Path.of(Line(begin, begin + normal * float(size)))
        if clear_of is not None:
            path = cleared(begin, normal, size, clear_of, distance(by, "by"))
        end = path.end
        self.sheet.note(size, begin, end, None if path.is_straight else path)
        tangent = self.path.tangent_at(along)
        sign = Sign("square", begin, normal, tangent if at == "start" else tangent * -1.0, self.name)
        self._drew("rule", begin, end, path, size, (sign,))
        return PaperLine(self.sheet, path, beside=self.path)

    def parallel(self, how_far: Size, toward: str) -> PaperLine:
        """The parallel at this distance, toward a direction of the paper or "inside" / "outside".

        Example::

            hem = front.waist.parallel(10 * cm, "down")
            facing_edge = front.neck.parallel(6 * cm, "inside")
        """
        size = distance(how_far, message("refusal.here", place=self.told))
        middle = self.path.length / 2
        if toward in ("inside", "outside"):
            left = self.sheet.inside_is_left() == (toward == "inside")
        else:
            left = self.path.normal_at(middle).dot(heading(toward, self.sheet, self.path.at(middle))) > 0
        path = parallel(self.path, float(size) if left else -float(size))
        begin = self.path.at(middle)
        self.sheet.note(size, begin, path.at(path.nearest(begin)))
        self._drew("parallel", path.start, path.end, path, size)
        return PaperLine(self.sheet, path)

    def to(self, other: PaperLine | PaperPoint, *, end: str = "end") -> PaperLine:
        """Trimmed at, or carried on straight to, the crossing with `other`, or trimmed at a point on it; with
        end="start" it is the start that moves.

        Example::

            side = front.side.to(front.waist)
            below = front.side.to(front.side.at(20 * cm), end="start")
        """
        if isinstance(other, PaperPoint):
            at = self.path.nearest(other.point)
            if self.path.at(at).distance(other.point) > 1.0:
                raise KitError(message("refusal.point_off", place=self.told), do=message("refusal.point_off_do"))
            part = self.path.between(at, self.path.length) if end == "start" else self.path.between(0.0, at)
            return PaperLine(self.sheet, part, self.name)
        return PaperLine(self.sheet, self.path.to(other.path, end="start" if end == "start" else "end"), self.name)

    def extended(self, how_far: Size, *, end: str = "end") -> PaperLine:
        """Carried on straight by this much.

        Example::

            longer = front.side.extended(6 * cm)
        """
        size = distance(how_far, message("refusal.here", place=self.told))
        path = self.path.extended(float(size), end="start" if end == "start" else "end")
        return PaperLine(self.sheet, path, self.name)

    def curve_into(
        self,
        other: PaperLine,
        at: Size,
        *,
        fullness: float = 1.0,
        toward: str = "",
        least_radius: Size | None = None,
        at_most: Size | None = None,
    ) -> PaperLine:
        """A curve that leaves the end of this line square to it and runs into `other` without a corner, `at`
        this far along `other`. It leaves on the cloth's side of an edge where it can, or `toward` "in", "out", "up",
        "down", "inside" or "outside"; so said it may turn back a little, or in an S. With `least_radius` it bends no
        tighter: where it would, it joins `other` as much farther along, `at_most` that far; and where no smooth curve
        has room, it is a part of a circle between two straight runs.

        Example::

            overarm = front.neck_point.through(front.shoulder_tip, beyond=25 * cm)
            wrist = overarm.square(20 * cm, "down")
            underarm = wrist.curve_into(front.side, 12 * cm)
            underarm = wrist.curve_into(front.side, 12 * cm, least_radius=2.5 * cm)
        """
        path = curve_into(self, other, at, fullness, toward, least_radius, at_most)
        if least_radius is not None and (far := other.path.nearest(path.end)) > float(at) + 0.05:
            at = Length(far)
        return self._curved(path, other, at, Sign("tangent", path.end, path.end_tangent * -1.0, path.end_tangent))

    def curve_square_to(self, other: PaperLine, at: Size, *, fullness: float = 1.0, toward: str = "") -> PaperLine:
        """A curve that leaves the end of this line square to it and meets `other` square, `at` this far along
        `other` from its start. `toward` as for `curve_into`.

        Example::

            top = front.shoulder_tip.down(1 * cm)
            armhole = front.neck_point.to(top).curve_square_to(front.side, 1 * cm)
        """
        path = curve_square_to(self, other, at, fullness, toward)
        onward = other.path.tangent_at(other.path.nearest(path.end))
        return self._curved(path, other, at, Sign("square", path.end, path.end_tangent * -1.0, onward))

    def _curved(self, path: Path, other: PaperLine, at: Size, arrives: Sign) -> PaperLine:
        """A curve from the end of this line, square to it, whose place on `other` was measured first."""
        size = distance(at, "")
        if size > 1e-6:
            other._drew("mark", other.path.start, path.end, other.path.between(0.0, float(size)), size)
        back = self.path.end_tangent * -1.0
        leaves = Sign("square", path.start, path.start_tangent, back, self.name)
        self._drew("curve", path.start, path.end, path, Length(0.0), (leaves, replace(arrives, to=other.name)))
        return PaperLine(self.sheet, path)

    def mirrored(self, line: PaperLine) -> PaperLine:
        """Mirrored across a straight line.

        Example::

            other_neck = front.neck.mirrored(front.centre)
        """
        return PaperLine(self.sheet, self.path.mirrored(Line(line.path.start, line.path.end)))

    def joined(self, other: PaperLine) -> PaperLine:
        """This line and the next one as one.

        Example::

            whole = front.shoulder.joined(front.armhole)
        """
        return PaperLine(self.sheet, self.path.joined(other.path))


At = Size | PaperPoint
"""A place on an edge: a length along it, or a point near it."""
