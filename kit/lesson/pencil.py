"""Points and lines as a drafting step handles them: they know the piece they lie on, they are moved with
lengths that carry a unit, and what is measured is written down for the picture.

`PaperPoint` and `PaperLine` wrap the plain geometry values; every verb gives a new one. Directions are as the
paper lies: "up" to the neck, "down" to the hem, "out" to the side seam, "in" to the centre line.
"""

from __future__ import annotations

from typing import Protocol

from kit.diagnostic import Told, Value, measured, message, named_edge, number
from kit.errors import KitError, near
from kit.geometry import Cubic, Line, Path, Point, Vector, parallel
from kit.units import Length, Size, length

DIRECTIONS = {"up": Vector(0, 1), "down": Vector(0, -1), "out": Vector(1, 0), "in": Vector(-1, 0)}
FAR = 4000.0
REACH = 50.0


class Sheet(Protocol):
    """What a point or line needs of the piece it lies on."""

    @property
    def piece_name(self) -> str: ...

    def note(self, value: Length, start: Point, end: Point, along: Path | None = None) -> None:
        """Write down a named measure for the picture."""

    def inside_is_left(self) -> bool:
        """Whether the cloth lies to the left when the outline is walked in edge order."""


def heading(direction: str) -> Vector:
    """The unit vector of a direction word."""
    if direction not in DIRECTIONS:
        raise KitError(f"'{direction}' is not a direction on the paper.", do=near(direction, DIRECTIONS))
    return DIRECTIONS[direction]


def distance(value: Size, what: Told) -> Length:
    """A distance given to a verb, as a Length that is not negative."""
    found = length(value, what)
    if found < 0:
        raise KitError(
            message("refusal.below_zero", value=measured(found)), where=what, do=message("refusal.below_zero_do")
        )
    return found


class PaperPoint:
    """A point marked on a piece. `x` and `y` are Lengths from the centre line and the waistline."""

    def __init__(self, sheet: Sheet, point: Point) -> None:
        self.sheet: Sheet = getattr(sheet, "_open", sheet)  # a piece is named by its handle, too
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

    def _moved(self, direction: Vector, how_far: Size, verb: str) -> PaperPoint:
        size = distance(how_far, verb)
        end = self.point + direction * float(size)
        self.sheet.note(size, self.point, end)
        return PaperPoint(self.sheet, end)

    def up(self, how_far: Size) -> PaperPoint:
        """The point this far straight up.

        Example::

            raised = front.shoulder_tip.up(1 * cm)
        """
        return self._moved(DIRECTIONS["up"], how_far, "up")

    def down(self, how_far: Size) -> PaperPoint:
        """The point this far straight down.

        Example::

            lower = front.centre_neck.down(2 * cm)
        """
        return self._moved(DIRECTIONS["down"], how_far, "down")

    def out(self, how_far: Size) -> PaperPoint:
        """The point this far toward the side seam.

        Example::

            wider = front.neck_point.out(1 * cm)
        """
        return self._moved(DIRECTIONS["out"], how_far, "out")

    def into(self, how_far: Size) -> PaperPoint:
        """The point this far toward, or past, the centre line.

        Example::

            inside = front.shoulder_tip.into(1 * cm)
        """
        return self._moved(DIRECTIONS["in"], how_far, "into")

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
        return self._line(end)

    def ruled(self, direction: str, how_far: Size) -> PaperLine:
        """A straight line of this length in a direction of the paper.

        Example::

            yoke = front.centre_neck.down(8 * cm).ruled("out", 20 * cm)
        """
        return self._line(self._moved(heading(direction), how_far, "ruled").point)

    def across(self, line: PaperLine, direction: str = "in") -> PaperPoint:
        """Where a line squared across from here meets `line` (carried on if straight).

        Example::

            level = front.underarm_point.across(front.centre, "in")
        """
        ray = Path.of(Line(self.point, self.point + heading(direction) * FAR))
        path = line.path
        if path.is_straight:
            path = path.extended(FAR, end="start").extended(FAR, end="end")
        found = ray.crossings(path)
        if not found:
            raise KitError(message("refusal.square_misses", line=line.told), do=message("refusal.square_misses_do"))
        return PaperPoint(self.sheet, min(found, key=self.point.distance))

    def curve_to(
        self,
        target: PaperPoint,
        *,
        square_to: PaperLine | None = None,
        along: PaperLine | None = None,
        end_square_to: PaperLine | None = None,
        end_along: PaperLine | None = None,
        fullness: float = 1.0,
    ) -> PaperLine:
        """A smooth curve to `target`. It leaves square to, or along, a line through this point, and arrives
        square to, or along, one through the target; where none is named it heads straight for the other end.


        Example::

            neck = front.centre_neck.curve_to(front.neck_point, square_to=front.centre)
        """
        chord = (target.point - self.point).unit()
        leave = _at_end(square_to, along, self.point, chord)
        arrive = _at_end(end_square_to, end_along, target.point, chord)
        curve = Cubic.square(self.point, leave, target.point, arrive, fullness)
        return PaperLine(self.sheet, Path.of(curve))

    def distance_to(self, other: PaperPoint) -> Length:
        """How far it is to `other`, straight.

        Example::

            front_height = front.centre_neck.distance_to(front.centre_waist)
        """
        return Length(self.point.distance(other.point))

    def _line(self, end: Point) -> PaperLine:
        if self.point.distance(end) < 1e-6:
            raise KitError(message("refusal.line_nothing"), do=message("refusal.line_nothing_do"))
        return PaperLine(self.sheet, Path.of(Line(self.point, end)))


def _at_end(square: PaperLine | None, along: PaperLine | None, at: Point, chord: Vector) -> Vector:
    """The direction of travel at one end, turned toward the way the curve goes."""
    if square is None and along is None:
        return chord
    line = square or along
    assert line is not None
    tangent = line.path.tangent_at(line.path.nearest(at))
    direction = tangent.left() if square is not None else tangent
    return direction if direction.dot(chord) >= 0 else direction * -1.0


class PaperLine:
    """A line, straight or curved, on a piece; an edge when it has a `name`."""

    def __init__(self, sheet: Sheet, path: Path, name: str = "") -> None:
        self.sheet: Sheet = getattr(sheet, "_open", sheet)  # a piece is named by its handle, too
        self.path = path
        self.name = name

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
        self.sheet.note(size, self.path.start, point, self.path.between(0.0, size) if size > 1e-6 else None)
        return PaperPoint(self.sheet, point)

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
        return PaperPoint(self.sheet, self.path.at(self.path.length * part))

    def square(self, how_far: Size, direction: str, *, at: str = "end") -> PaperLine:
        """A straight line square to this one at its "start" or "end", toward a direction of the paper.

        Example::

            yoke = front.centre.square(20 * cm, "out", at="start")
        """
        size = distance(how_far, message("refusal.here", place=self.told))
        along = 0.0 if at == "start" else self.path.length
        begin = self.path.at(along)
        normal = self.path.normal_at(along)
        if normal.dot(heading(direction)) < 0:
            normal = normal * -1.0
        end = begin + normal * float(size)
        self.sheet.note(size, begin, end)
        return PaperLine(self.sheet, Path.of(Line(begin, end)))

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
            left = self.path.normal_at(middle).dot(heading(toward)) > 0
        path = parallel(self.path, float(size) if left else -float(size))
        begin = self.path.at(middle)
        self.sheet.note(size, begin, path.at(path.nearest(begin)))
        return PaperLine(self.sheet, path)

    def to(self, other: PaperLine, *, end: str = "end") -> PaperLine:
        """Trimmed at, or carried on straight to, the crossing with `other`.

        Example::

            side = front.side.to(front.waist)
        """
        return PaperLine(self.sheet, self.path.to(other.path, end="start" if end == "start" else "end"), self.name)

    def extended(self, how_far: Size, *, end: str = "end") -> PaperLine:
        """Carried on straight by this much.

        Example::

            longer = front.side.extended(6 * cm)
        """
        size = distance(how_far, message("refusal.here", place=self.told))
        path = self.path.extended(float(size), end="start" if end == "start" else "end")
        return PaperLine(self.sheet, path, self.name)

    def curve_into(self, other: PaperLine, at: Size, *, fullness: float = 1.0) -> PaperLine:
        """A curve that leaves the end of this line square to it and runs into `other` without a corner, `at`
        this far along `other`.

        Example::

            overarm = front.neck_point.through(front.shoulder_tip, beyond=25 * cm)
            wrist = overarm.square(20 * cm, "down")
            underarm = wrist.curve_into(front.side, 12 * cm)
        """
        size = distance(at, message("refusal.here", place=other.told))
        if size > other.path.length:
            raise KitError(
                message("refusal.join_below", line=other.told, at=measured(size), length=measured(other.path.length)),
                do=message("refusal.join_below_do"),
            )
        if other.path.nearest(self.path.end) > other.path.length - 1e-3 and other.path.length > 1.0:
            raise KitError(
                message("refusal.reaches_below", line=self.told, length=measured(self.path.length), other=other.told),
                do=message("refusal.reaches_below_do", line=self.told, other=other.told),
            )
        join = other.path.at(float(size))
        self.sheet.note(size, other.path.start, join, other.path.between(0.0, size) if size > 1e-6 else None)
        arrive = other.path.tangent_at(float(size))
        return self._curve(join, arrive, fullness, other)

    def curve_square_to(self, other: PaperLine, at: Size, *, fullness: float = 1.0) -> PaperLine:
        """A curve that leaves the end of this line square to it and meets `other` square, `at` this far along
        `other` from its start.

        Example::

            top = front.shoulder_tip.down(1 * cm)
            armhole = front.neck_point.to(top).curve_square_to(front.side, 1 * cm)
        """
        size = distance(at, message("refusal.here", place=other.told))
        join = other.path.at(min(float(size), other.path.length))
        return self._curve(join, self._sided(other.path.normal_at(float(size)), join), fullness, other)

    def _sided(self, direction: Vector, target: Point) -> Vector:
        return direction if direction.dot(target - self.path.end) >= 0 else direction * -1.0

    def _curve(self, join: Point, arrive: Vector, fullness: float, other: PaperLine) -> PaperLine:
        leave = self._sided(self.path.normal_at(self.path.length), join)
        chord = join - self.path.end
        if arrive.dot(chord) < -0.2 * chord.length or leave.dot(chord) <= 0:
            raise KitError(
                message("refusal.curve_back", line=self.told, other=other.told),
                do=message("refusal.curve_back_do", line=self.told, other=other.told),
            )
        return PaperLine(self.sheet, Path.of(Cubic.square(self.path.end, leave, join, arrive, fullness)))

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
