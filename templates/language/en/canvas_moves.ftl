# Drawing on the canvas: a move is chosen and the step cell for it is written. Sentences that begin "canvas_moves-point",
# "-extend", "-edge" and so on are read by students in the step; $amount stands for the length drawn.

canvas_moves-draw = Draw
canvas_moves-choose = Click edges and points to choose them, click again to let them go; then choose a move.
canvas_moves-move = Move
canvas_moves-way = How
canvas_moves-amount = Amount
canvas_moves-title = Title
canvas_moves-measure = Name of the measure
canvas_moves-thing = Name of what is drawn
canvas_moves-why = Why (for the student; may stay empty)
canvas_moves-says = Students will read
canvas_moves-write = Write the cell
canvas_moves-copy = Copy the cell
canvas_moves-copied = Copied.
canvas_moves-source = The cell
canvas_moves-cancel = Cancel
canvas_moves-grip = Drag to set the amount
canvas_moves-writing = Writing the cell …
canvas_moves-written = The cell stands in the notebook and was run. Save the notebook to keep it.
canvas_moves-not_run = The cell stands in the notebook but was not run. Click into it and press Shift and Enter.
# $step: the title of the step the cell must follow.
canvas_moves-by_hand = This notebook's program does not let the canvas add a cell. Copy the text, add a code cell below “{ $step }”, paste it there and run it.
canvas_moves-by_hand_first = This notebook's program does not let the canvas add a cell. Copy the text, add a code cell below the one that makes the lesson, paste it there and run it.
# $chosen: the edges and points chosen, with their pieces.
canvas_moves-chosen = Chosen: { $chosen }
canvas_moves-one_chosen = { $name } ({ $piece })
canvas_moves-corner_dot = Corner of { $first } and { $second }, { $piece }

# The moves in the menu.
canvas_moves-name_point = Move a point
canvas_moves-name_extend = Carry an edge on
canvas_moves-name_edge = Move an edge, parallel
canvas_moves-name_square = Square off a new edge
canvas_moves-name_round = Round off a corner
canvas_moves-name_curve = Draw an edge as a curve
canvas_moves-name_into = Curve from one edge into another
canvas_moves-name_between = Line or curve between two points
canvas_moves-name_line = Square off a construction line
canvas_moves-name_parallel = Parallel construction line
canvas_moves-name_mirror = Trace the other half
canvas_moves-name_spread = Slash and spread
canvas_moves-name_cut = Cut the piece in two
canvas_moves-name_opening = Leave an opening
canvas_moves-name_notch = Notch

# How a move is done.
canvas_moves-way_up = up
canvas_moves-way_down = down
canvas_moves-way_out = out, to the side
canvas_moves-way_in = in, to the centre
canvas_moves-at_edge = at { THE($edge) }
canvas_moves-square_way = at { THE($edge) }, { $way }
canvas_moves-inside = inside the piece
canvas_moves-outside = outside the piece
canvas_moves-curve_square = square to both neighbours
canvas_moves-curve_smooth = running into both neighbours
canvas_moves-curve_square_smooth = first end square, last end running in
canvas_moves-curve_smooth_square = first end running in, last end square
canvas_moves-into_smooth = running into it without a corner
canvas_moves-into_square = meeting it square
canvas_moves-between_straight = a ruled line
canvas_moves-between_square = a curve square to the edges there
canvas_moves-between_smooth = a curve running along the edges there
canvas_moves-spread_parallel = the same all along
canvas_moves-spread_hinged = at the first edge only
canvas_moves-in_middle = in the middle
canvas_moves-from_edge = from { THE($edge) }

# What the step says.
canvas_moves-corner = corner of { $first } and { $second }
canvas_moves-ruled_again = Rule { THE($edge) } again from its other end to there.
canvas_moves-curved_again = Draw { THE($edge) } again from there as one smooth curve, with the directions it had at both ends.
canvas_moves-allowed = Add { $amount } along { THE($edge) }.
canvas_moves-on_pieces = Do this on { $pieces } alike.

canvas_moves-point_title = { $way ->
    [up] Raise { THE($point) }
    [down] Lower { THE($point) }
    [out] Move { THE($point) } out
   *[in] Move { THE($point) } in
}
canvas_moves-point = { $way ->
    [up] From { THE($point) } square up { $amount } and mark.
    [down] From { THE($point) } square down { $amount } and mark.
    [out] From { THE($point) } measure { $amount } straight out toward the side and mark.
   *[in] From { THE($point) } measure { $amount } straight in toward the centre and mark.
}
canvas_moves-extend_title = Carry { THE($edge) } on
canvas_moves-extend = Carry { THE($edge) } on straight past { THE($beside) } for { $amount }.
canvas_moves-edge_title = { $way ->
    [up] Raise { THE($edge) }
    [down] Lower { THE($edge) }
    [out] Move { THE($edge) } out
   *[in] Move { THE($edge) } in
}
canvas_moves-edge = { $way ->
    [up] Draw { THE($edge) } again { $amount } farther up and parallel to itself. Trim { THE($before) } and { THE($after) } to meet it, or carry them on straight.
    [down] Draw { THE($edge) } again { $amount } farther down and parallel to itself. Trim { THE($before) } and { THE($after) } to meet it, or carry them on straight.
    [out] Draw { THE($edge) } again { $amount } farther out and parallel to itself. Trim { THE($before) } and { THE($after) } to meet it, or carry them on straight.
   *[in] Draw { THE($edge) } again { $amount } farther in and parallel to itself. Trim { THE($before) } and { THE($after) } to meet it, or carry them on straight.
}
canvas_moves-square_title = Square off { THE($edge) }
canvas_moves-square = { $way ->
    [up] At the end of { THE($edge) } by { THE($beside) } square up { $amount }: this is { THE($thing) }.
    [down] At the end of { THE($edge) } by { THE($beside) } square down { $amount }: this is { THE($thing) }.
    [out] At the end of { THE($edge) } by { THE($beside) } square out { $amount }: this is { THE($thing) }.
   *[in] At the end of { THE($edge) } by { THE($beside) } square in { $amount }: this is { THE($thing) }.
}
canvas_moves-line_title = Square a line off { THE($edge) }
canvas_moves-line = { $way ->
    [up] At the end of { THE($edge) } by { THE($beside) } square up { $amount } and rule the line: this is { THE($thing) }.
    [down] At the end of { THE($edge) } by { THE($beside) } square down { $amount } and rule the line: this is { THE($thing) }.
    [out] At the end of { THE($edge) } by { THE($beside) } square out { $amount } and rule the line: this is { THE($thing) }.
   *[in] At the end of { THE($edge) } by { THE($beside) } square in { $amount } and rule the line: this is { THE($thing) }.
}
canvas_moves-round_title = Round off the corner of { $first } and { $second }
canvas_moves-round = Mark { $amount } from the corner along { THE($first) } and along { THE($second) }. Join the marks by a curve that runs into both without a corner.
canvas_moves-curve_title = Draw { THE($edge) } as a curve
canvas_moves-curve = { $way ->
    [square] Draw { THE($edge) } again as one curve, square to { THE($before) } and square to { THE($after) }. Its fullness is { $amount } of an even curve.
    [smooth] Draw { THE($edge) } again as one curve that runs into { THE($before) } and { THE($after) } without a corner. Its fullness is { $amount } of an even curve.
    [square_smooth] Draw { THE($edge) } again as one curve, square to { THE($before) } and running into { THE($after) } without a corner. Its fullness is { $amount } of an even curve.
   *[smooth_square] Draw { THE($edge) } again as one curve that runs into { THE($before) } without a corner and meets { THE($after) } square. Its fullness is { $amount } of an even curve.
}
canvas_moves-into_title = Curve { THE($edge) } into { THE($second) }
canvas_moves-into = { $way ->
    [smooth] Measure { $amount } along { THE($second) } from { THE($edge) }. Draw { THE($edge) } as one smooth curve: it leaves { THE($first) } square and runs into { THE($second) } there without a corner.
   *[square] Measure { $amount } along { THE($second) } from { THE($edge) }. Draw { THE($edge) } as one smooth curve: it leaves { THE($first) } square and meets { THE($second) } square there.
}
canvas_moves-between_title = Draw from { THE($first) } to { THE($second) }
canvas_moves-between = Rule a line from { THE($first) } to { THE($second) }: this is { THE($thing) }.
canvas_moves-between_curve = { $way ->
    [square] Draw a curve from { THE($first) } to { THE($second) }, square to { THE($one) } and square to { THE($other) }, with { $amount } of the fullness of an even curve: this is { THE($thing) }.
   *[smooth] Draw a curve from { THE($first) } to { THE($second) } that runs along { THE($one) } at its start and along { THE($other) } at its end, with { $amount } of the fullness of an even curve: this is { THE($thing) }.
}
canvas_moves-parallel_title = Draw a parallel to { THE($edge) }
canvas_moves-parallel = { $way ->
    [inside] Draw a line parallel to { THE($edge) }, { $amount } inside it: this is { THE($thing) }.
   *[outside] Draw a line parallel to { THE($edge) }, { $amount } outside it: this is { THE($thing) }.
}
# $example: what one of the new lines is called, such as "far hem".
canvas_moves-mirror_title = Trace the other half over { THE($edge) }
canvas_moves-mirror = Fold the paper along { THE($edge) } and trace the other half. Its lines are called { $example } and so on.
canvas_moves-spread_title = Spread from { $first } to { $second }
canvas_moves-spread = { $way ->
    [parallel] Slash from the middle of { THE($first) } to the middle of { THE($second) } and spread the paper by { $amount } all along.
   *[hinged] Slash from the middle of { THE($first) } to the middle of { THE($second) } and spread the paper by { $amount } at { THE($first) }; at { THE($second) } it hangs together.
}
canvas_moves-cut_title = Cut { THE($thing) } off { THE($piece) }
canvas_moves-cut = On { THE($first) } of { THE($piece) } measure { $amount } from { THE($beside) } and mark. Square across from there to { THE($second) } and cut along this line. The part with { THE($beside) } is { THE($thing) }; the line is its { $seam }.
canvas_moves-cut_part = the part with { THE($edge) }
canvas_moves-opening_title = Leave an opening in { THE($edge) }
canvas_moves-opening = { $way ->
    [middle] In the middle of { THE($edge) } mark an opening of { $amount }. It is left open when the seam is sewn.
   *[other] On { THE($edge) } mark an opening of { $amount }, measured from { THE($beside) }. It is left open when the seam is sewn.
}
canvas_moves-notch_title = Notch { THE($edge) }
canvas_moves-notch = Notch { THE($edge) } { $amount } from { THE($beside) }.
# $one and $other: the pieces the edges belong to.
canvas_moves-pair_title = Notch { $first } and { $second } together
canvas_moves-pair = Notch { THE($first) } of { THE($one) } and { THE($second) } of { THE($other) } together, { $amount } along from the ends that meet: single on { THE($one) }, double on { THE($other) }.

# Why a move does not fit.
canvas_moves-choose_edge = { $count ->
    [one] Choose one edge.
   *[other] Choose { $count } edges of one piece.
}
canvas_moves-choose_point = { $count ->
    [one] Choose one point or corner.
   *[other] Choose { $count } points or corners of one piece.
}
canvas_moves-choose_alike = On several pieces choose edges and points of the same names and kinds, so that one step can draw them all.
canvas_moves-one_piece = Choose on one piece only.
canvas_moves-not_there_yet = What is chosen is not drawn yet at that step. Choose the step in “Show” first, then choose on it.
canvas_moves-not_closed = The piece needs at least three edges for this.
canvas_moves-has_dart = A dart opens on { THE($edge) }; move the dart to another edge first.
canvas_moves-has_pleat = A pleat ends on { THE($edge) }; make this move before the pleat is drawn.
canvas_moves-has_corner = { START(THE($edge)) } has a corner within it, which a new line would lose. Draw it by hand.
canvas_moves-on_fold = { START(THE($edge)) } is placed on the fold and must stay where it is; its end can only go along it.
canvas_moves-fold_straight = { START(THE($edge)) } is placed on the fold; cloth folds straight.
canvas_moves-fold_moved = { START(THE($edge)) } is placed on the fold and must stay where it is. Make this move before the step that puts it on the fold.
canvas_moves-fold_curved = The paper folds only along a straight edge; { THE($edge) } is curved.
canvas_moves-mirrored_already = The other half is traced already over { THE($edge) }.
canvas_moves-no_corner = { START(THE($point)) } is not a corner of the outline.
canvas_moves-no_corner_there = { START(THE($first)) } runs into { THE($second) } without a corner; there is nothing to round.
canvas_moves-no_edge_at = No edge ends at { THE($point) }, so a curve has nothing to go by there. Choose a ruled line.
canvas_moves-not_neighbours = { START(THE($first)) } and { THE($second) } do not meet. Choose a corner, or two edges that meet there.
canvas_moves-not_one_between = One edge must lie between { THE($first) } and { THE($second) }: it becomes the curve.
canvas_moves-same_place = The two points are the same place.
canvas_moves-cut_earlier = { START(THE($piece)) } has its allowances or notches already. Choose an earlier step in “Show” and cut it there.
canvas_moves-too_long = { START(THE($edge)) } is only { $length } long. Give less.
canvas_moves-too_small = Give an amount above nothing.
# $name: what was typed.
canvas_moves-bad_amount = “{ $name }” is not a percentage. Type, for example, 90 %.
