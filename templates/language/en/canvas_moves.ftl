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
canvas_moves-at_edge = at the { $edge }
canvas_moves-square_way = at the { $edge }, { $way }
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
canvas_moves-from_edge = from the { $edge }

# What the step says.
canvas_moves-corner = corner of { $first } and { $second }
canvas_moves-ruled_again = Rule the { $edge } again from its other end to there.
canvas_moves-curved_again = Draw the { $edge } again from there as one smooth curve, with the directions it had at both ends.
canvas_moves-allowed = Add { $amount } along the { $edge }.
canvas_moves-on_pieces = Do this on { $pieces } alike.

canvas_moves-point_title = { $way ->
    [up] Raise the { $point }
    [down] Lower the { $point }
    [out] Move the { $point } out
   *[in] Move the { $point } in
}
canvas_moves-point = { $way ->
    [up] From the { $point } square up { $amount } and mark.
    [down] From the { $point } square down { $amount } and mark.
    [out] From the { $point } measure { $amount } straight out toward the side and mark.
   *[in] From the { $point } measure { $amount } straight in toward the centre and mark.
}
canvas_moves-extend_title = Carry the { $edge } on
canvas_moves-extend = Carry the { $edge } on straight past the { $beside } for { $amount }.
canvas_moves-edge_title = { $way ->
    [up] Raise the { $edge }
    [down] Lower the { $edge }
    [out] Move the { $edge } out
   *[in] Move the { $edge } in
}
canvas_moves-edge = { $way ->
    [up] Draw the { $edge } again { $amount } farther up and parallel to itself. Trim the { $before } and the { $after } to meet it, or carry them on straight.
    [down] Draw the { $edge } again { $amount } farther down and parallel to itself. Trim the { $before } and the { $after } to meet it, or carry them on straight.
    [out] Draw the { $edge } again { $amount } farther out and parallel to itself. Trim the { $before } and the { $after } to meet it, or carry them on straight.
   *[in] Draw the { $edge } again { $amount } farther in and parallel to itself. Trim the { $before } and the { $after } to meet it, or carry them on straight.
}
canvas_moves-square_title = Square off the { $edge }
canvas_moves-square = { $way ->
    [up] At the end of the { $edge } by the { $beside } square up { $amount }: this is the { $thing }.
    [down] At the end of the { $edge } by the { $beside } square down { $amount }: this is the { $thing }.
    [out] At the end of the { $edge } by the { $beside } square out { $amount }: this is the { $thing }.
   *[in] At the end of the { $edge } by the { $beside } square in { $amount }: this is the { $thing }.
}
canvas_moves-line_title = Square a line off the { $edge }
canvas_moves-line = { $way ->
    [up] At the end of the { $edge } by the { $beside } square up { $amount } and rule the line: this is the { $thing }.
    [down] At the end of the { $edge } by the { $beside } square down { $amount } and rule the line: this is the { $thing }.
    [out] At the end of the { $edge } by the { $beside } square out { $amount } and rule the line: this is the { $thing }.
   *[in] At the end of the { $edge } by the { $beside } square in { $amount } and rule the line: this is the { $thing }.
}
canvas_moves-round_title = Round off the corner of { $first } and { $second }
canvas_moves-round = Mark { $amount } from the corner along the { $first } and along the { $second }. Join the marks by a curve that runs into both without a corner.
canvas_moves-curve_title = Draw the { $edge } as a curve
canvas_moves-curve = { $way ->
    [square] Draw the { $edge } again as one curve, square to the { $before } and square to the { $after }. Its fullness is { $amount } of an even curve.
    [smooth] Draw the { $edge } again as one curve that runs into the { $before } and the { $after } without a corner. Its fullness is { $amount } of an even curve.
    [square_smooth] Draw the { $edge } again as one curve, square to the { $before } and running into the { $after } without a corner. Its fullness is { $amount } of an even curve.
   *[smooth_square] Draw the { $edge } again as one curve that runs into the { $before } without a corner and meets the { $after } square. Its fullness is { $amount } of an even curve.
}
canvas_moves-into_title = Curve the { $edge } into the { $second }
canvas_moves-into = { $way ->
    [smooth] Measure { $amount } along the { $second } from the { $edge }. Draw the { $edge } as one smooth curve: it leaves the { $first } square and runs into the { $second } there without a corner.
   *[square] Measure { $amount } along the { $second } from the { $edge }. Draw the { $edge } as one smooth curve: it leaves the { $first } square and meets the { $second } square there.
}
canvas_moves-between_title = Draw from the { $first } to the { $second }
canvas_moves-between = Rule a line from the { $first } to the { $second }: this is the { $thing }.
canvas_moves-between_curve = { $way ->
    [square] Draw a curve from the { $first } to the { $second }, square to the { $one } and square to the { $other }, with { $amount } of the fullness of an even curve: this is the { $thing }.
   *[smooth] Draw a curve from the { $first } to the { $second } that runs along the { $one } at its start and along the { $other } at its end, with { $amount } of the fullness of an even curve: this is the { $thing }.
}
canvas_moves-parallel_title = Draw a parallel to the { $edge }
canvas_moves-parallel = { $way ->
    [inside] Draw a line parallel to the { $edge }, { $amount } inside it: this is the { $thing }.
   *[outside] Draw a line parallel to the { $edge }, { $amount } outside it: this is the { $thing }.
}
# $example: what one of the new lines is called, such as "far hem".
canvas_moves-mirror_title = Trace the other half over the { $edge }
canvas_moves-mirror = Fold the paper along the { $edge } and trace the other half. Its lines are called { $example } and so on.
canvas_moves-spread_title = Spread from { $first } to { $second }
canvas_moves-spread = { $way ->
    [parallel] Slash from the middle of the { $first } to the middle of the { $second } and spread the paper by { $amount } all along.
   *[hinged] Slash from the middle of the { $first } to the middle of the { $second } and spread the paper by { $amount } at the { $first }; at the { $second } it hangs together.
}
canvas_moves-cut_title = Cut the { $thing } off the { $piece }
canvas_moves-cut = On the { $first } of the { $piece } measure { $amount } from the { $beside } and mark. Square across from there to the { $second } and cut along this line. The part with the { $beside } is the { $thing }; the line is its { $seam }.
canvas_moves-cut_part = the part with the { $edge }
canvas_moves-opening_title = Leave an opening in the { $edge }
canvas_moves-opening = { $way ->
    [middle] In the middle of the { $edge } mark an opening of { $amount }. It is left open when the seam is sewn.
   *[other] On the { $edge } mark an opening of { $amount }, measured from the { $beside }. It is left open when the seam is sewn.
}
canvas_moves-notch_title = Notch the { $edge }
canvas_moves-notch = Notch the { $edge } { $amount } from the { $beside }.
# $one and $other: the pieces the edges belong to.
canvas_moves-pair_title = Notch { $first } and { $second } together
canvas_moves-pair = Notch the { $first } of the { $one } and the { $second } of the { $other } together, { $amount } along from the ends that meet: single on the { $one }, double on the { $other }.

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
canvas_moves-has_dart = A dart opens on the { $edge }; move the dart to another edge first.
canvas_moves-has_pleat = A pleat ends on the { $edge }; make this move before the pleat is drawn.
canvas_moves-has_corner = The { $edge } has a corner within it, which a new line would lose. Draw it by hand.
canvas_moves-on_fold = The { $edge } is placed on the fold and must stay where it is; its end can only go along it.
canvas_moves-fold_straight = The { $edge } is placed on the fold; cloth folds straight.
canvas_moves-fold_moved = The { $edge } is placed on the fold and must stay where it is. Make this move before the step that puts it on the fold.
canvas_moves-fold_curved = The paper folds only along a straight edge; the { $edge } is curved.
canvas_moves-mirrored_already = The other half is traced already over the { $edge }.
canvas_moves-no_corner = The { $point } is not a corner of the outline.
canvas_moves-no_corner_there = The { $first } runs into the { $second } without a corner; there is nothing to round.
canvas_moves-no_edge_at = No edge ends at the { $point }, so a curve has nothing to go by there. Choose a ruled line.
canvas_moves-not_neighbours = The { $first } and the { $second } do not meet. Choose a corner, or two edges that meet there.
canvas_moves-not_one_between = One edge must lie between the { $first } and the { $second }: it becomes the curve.
canvas_moves-same_place = The two points are the same place.
canvas_moves-cut_earlier = The { $piece } has its allowances or notches already. Choose an earlier step in “Show” and cut it there.
canvas_moves-too_long = The { $edge } is only { $length } long. Give less.
canvas_moves-too_small = Give an amount above nothing.
# $name: what was typed.
canvas_moves-bad_amount = “{ $name }” is not a percentage. Type, for example, 90 %.
