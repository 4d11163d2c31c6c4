# The hand-drafting worksheet: every step in numbers, for someone with a ruler, a set square and paper.
# Points have letters (A, B, ...). Every length is text in one system.

# The first part: the block the lesson starts from.
worksheet-start = The starting block
worksheet-how = Points are measured from O, where two lines square to each other cross: first along the level line, then square to it. Curves are set off from the straight line between two points: step the distances off along it, set the offsets square to it, and draw one smooth curve through the marks.
worksheet-alike = { $pieces }: all alike
worksheet-origin = On paper rule an upright line and a level line square to it. They cross at O.
# $line names a line of the draft that lies on it ("centre line").
worksheet-upright = The upright line is { THE($line) }.
worksheet-level = The level line is { THE($line) }.

# Where a point lies: cells of a table.
worksheet-right = { $length } right
worksheet-left = { $length } left
worksheet-up = { $length } up
worksheet-down = { $length } down
worksheet-on_upright = on the upright line
worksheet-on_level = on the level line
worksheet-at_origin = at O
worksheet-point = { $letter }: { $across }, { $above }.
# $name is the point's own name ("shoulder tip").
worksheet-named_point = { $letter }, { $name }: { $across }, { $above }.
worksheet-point_at_origin = { $letter }: at O.
worksheet-named_point_at_origin = { $letter }, { $name }: at O.

# Lines. $edge is a line's name, $start and $end letters of points.
worksheet-rule = { $edge }: rule from { $start } to { $end }, { $length }.
worksheet-curve = { $edge }: draw a curve from { $start } to { $end }. The straight line between them is { $chord } long.
# Which side of the straight line, seen from its first point to its second.
worksheet-off_left = { $length } to the left
worksheet-off_right = { $length } to the right
worksheet-off_none = on the line
worksheet-offset = { $along } from { $start }: { $off }.
worksheet-leaves = At { $start } aim for a place { $along } along and then { $off }.
worksheet-leaves_straight = At { $start } set off along the straight line.
# $along is measured back from $end.
worksheet-arrives = Come into { $end } from a place { $along } before it and then { $off }.
worksheet-arrives_straight = Come into { $end } along the straight line.
worksheet-trim = { $edge }: of the line drawn before keep only what runs from { $start } to { $end }.
# $line is a line of the piece $piece.
worksheet-trace = { $edge }: trace { THE($line) } of { $piece } from { $start } to { $end }.
worksheet-rub_out = Rub out { THE($lines) }.

# What is marked on the lines.
worksheet-notch =
    { $kind ->
        [double] { $edge }: a double notch { $length } from { $start } along the line.
       *[single] { $edge }: a notch { $length } from { $start } along the line.
    }
worksheet-opening = { $edge }: mark { THE($mark) } from { $low } to { $high } along the line from { $start }.
worksheet-mark_on_edge = { $edge }: mark { THE($mark) } { $length } from { $start } along the line.
worksheet-allow = Add { $width } of allowance outside { THE($lines) }.
worksheet-grain = grainline
worksheet-strip = { $title }: cut { $count ->
        [one] { $count } strip
       *[other] { $count } strips
    } { $length } long and { $width } wide.

# The picture.
worksheet-title = { $piece }, to draw by hand
worksheet-alt = { $piece } with its points by letter, the straight lines the curves are set off from, and the offsets. { $words }

# Points and lines of the kit's own blocks, where the lesson has no words of its own for them.
worksheet-name-back_cap = back of the sleeve cap
worksheet-name-front_cap = front of the sleeve cap
worksheet-name-bust_line = bust line
worksheet-name-elbow_line = elbow line
worksheet-name-hip_line = hip line
worksheet-name-knee_line = knee line
worksheet-name-sleeve_centre = centre of the sleeve
worksheet-name-thigh_line = thigh line
worksheet-name-upper_arm_line = upper arm line
worksheet-name-waist_line = waistline
worksheet-name-back_crossing = back crossing
worksheet-name-back_hollow = back hollow
worksheet-name-back_swell = back swell
worksheet-name-back_underarm_point = back underarm point
worksheet-name-back_wrist = back of the wrist
worksheet-name-bust_point = bust point
worksheet-name-cap_top = top of the cap
worksheet-name-centre_hem = hem at the centre
worksheet-name-centre_hip = hip at the centre
worksheet-name-centre_neck = neck at the centre
worksheet-name-centre_waist = waist at the centre
worksheet-name-crotch_point = crotch point
worksheet-name-front_crossing = front crossing
worksheet-name-front_hollow = front hollow
worksheet-name-front_swell = front swell
worksheet-name-front_underarm_point = front underarm point
worksheet-name-front_wrist = front of the wrist
worksheet-name-neck_point = neck point
worksheet-name-shoulder_tip = shoulder tip
worksheet-name-side_hem = hem at the side
worksheet-name-side_hip = hip at the side
worksheet-name-side_waist = waist at the side
worksheet-name-underarm_point = underarm point

# Extra cloth outside the allowance, trimmed after a fitting.
worksheet-allow_extra = Add { $width } more outside that along { THE($lines) }, to fit with.
