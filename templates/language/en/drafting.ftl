# Refusals of curves and arcs that cannot be drawn. $line and $other are names of lines, $way one of the word-way_...; lengths
# come with their units, angles in degrees.
word-way_up = up
word-way_down = down
word-way_out = out to the side
word-way_in = in toward the centre

drafting-neither_side = { THE($line) } does not let a curve leave or arrive { $toward }.
drafting-neither_side_do = There it goes { $one } or { $other }: say one of these.
drafting-turns_back = the curve would set out { $way } and double back: at one end it runs { $off }° off the straight line to the other, and { $most }° is the most.
drafting-turns_back_do = Move its ends so that each is reached with less of a turn, let it set out the other way with toward=, or draw a part of a circle with arc.
drafting-doubles_back = the curve from the end of { THE($line) } to { THE($other) }, setting out { $way }, would double back on itself.
drafting-doubles_back_do = Move the place where it joins { THE($other) }, shorten { THE($line) }, or say with toward= in which direction it sets out.
drafting-arc_angle = an arc cannot go through { $angle }°.
drafting-arc_angle_do = Give an angle above zero, at most a full turn of 360°; between two points less than that.
drafting-arc_length = an arc { $length } long does not lie on a circle that is { $most } round.
drafting-arc_length_do = Give a length above zero and no more than the circle, or a larger radius.
drafting-arc_radius = an arc needs a radius above zero, and this one is { $radius }.
drafting-arc_radius_do = Check the measure the radius is taken from.
drafting-arc_misses = the compass set to { $radius } does not reach the other end: it lies { $far } from the centre.
drafting-arc_misses_do = Move the end or the centre, or say how far the arc goes with angle= or length=.
drafting-arc_no_way = an arc that is drawn between two points needs two different ones.
drafting-arc_no_way_do = Move one of them, or say where the centre is.
drafting-arc_in_line = the three points lie in one straight line, or two of them on the same place.
drafting-arc_in_line_do = Move the middle one aside.
drafting-arc_short = a radius of { $radius } is too small to span { $chord }.
drafting-arc_short_do = Make it { $least } or more, or bring the ends closer together.

# $run and $edge are edges, $piece the title of a piece.
drafting-facing_end = a facing { $depth } deep does not fit at one end: there { THE($edge) } of { $piece }, { $long } long, stands at { $angle }° to { THE($run) }, and the facing's outer edge never meets it.
drafting-facing_end_do = Make the facing narrower, let it run on along { THE($edge) }, or draw the two edges closer to square.
