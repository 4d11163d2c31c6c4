# Refusals: what is wrong with a value, a measurement, a file or a draft, and what to do (keys that end in _do).
# The place stands before it. What is written in a notebook stays as it is.

refusal-near = Did you mean '{ $name }'?
refusal-known = Known here: { $names }.
refusal-none = There are none here yet.

# ---- lines and curves ----
refusal-near_point = { $across } across, { $up } up
refusal-move_end_do = Move one end.
refusal-move_point_do = Move one of the points.
refusal-no_direction = a line without length has no direction.
refusal-no_parallel = a line without length has no parallel.
refusal-same_points = two points fall on the same place, so there is no direction from one to the other.
refusal-no_place = a point does not come out as a place on the paper.
refusal-no_place_do = Look for a division by zero or a missing measurement in the step that made it.
refusal-lines_apart = the lines of a path do not join: one ends { $gap } from where the next begins.
refusal-lines_apart_do = Start each line where the one before it ends.
refusal-off_end = { $along } along a line that is { $length } long falls off its end.
refusal-off_end_do = Use a distance between 0 and { $length }.
refusal-cut_off_end = a line { $length } long cannot be cut { $along } along.
refusal-cut_off_end_do = Cut it between 0 and { $length }.
refusal-nothing_between = there is nothing between { $start } and { $end } along a line.
refusal-nothing_between_do = Give two different distances.
refusal-carried_back = a line cannot be carried on by { $by }.
refusal-above_zero_do = Give a distance above zero.
refusal-never_meets = a line carried on straight from its end never meets the other line.
refusal-never_meets_do = Check the direction of the line, or make the other one longer.
refusal-curve_same_points = two points of a curve fall on the same place.
refusal-leave_one_out_do = Leave one of them out.
refusal-arc_radius = an arc needs a radius above zero, and this one is { $radius }.
refusal-arc_radius_do = Check the measure the radius is taken from.
refusal-arc_sweep = an arc cannot sweep through { $degrees }°.
refusal-arc_sweep_do = Use an angle up to a full turn, and not zero.
refusal-curve_ends = a curve needs two different ends, and both fall on the same place.
refusal-fullness = a fullness of { $fullness } gives no usable curve.
refusal-fullness_do = Use a fullness from { $least } to { $most }.
refusal-curve_crosses = the curve would cross itself.
refusal-curve_crosses_do = Move its ends further apart, or use less fullness.
refusal-doubles_back = the curve would double back: at one end it runs { $degrees }° off the straight line to the other.
refusal-doubles_back_do = Move its ends so that each can be reached from the other with less than a right angle's turn.
refusal-doubles_back_full = the curve would double back on itself with a fullness of { $fullness }.
refusal-doubles_back_full_do = Use less fullness.
refusal-curve_no_room = the curve has no room: both its ends fall on the same place.
refusal-curve_no_room_do = Make the opening smaller, or carry the edge further before the curve begins.
refusal-curve_chord = { $what } Its ends are { $across } apart across and { $up } up and down.
refusal-turns_back = the line turns back on itself by { $degrees }°, too sharply for a parallel.
refusal-turns_back_do = Blunt the corner.
refusal-corner_short = the lines at an inner corner are too short for a parallel at { $by }.
refusal-corner_short_do = Use less than { $by } there, or lengthen the shorter line.
refusal-curve_tight = a parallel at { $by } cannot follow a curve of radius { $radius }; it would fold back on itself.
refusal-curve_tight_do = Use less than { $radius } there, or draw a flatter curve.
refusal-edge_gap = { THE($edge) } ends { $gap } from where { THE($next) } begins.
refusal-edge_open = { THE($edge) } does not close: it ends { $gap } from its beginning.
refusal-edge_gap_do = Make the edges meet, or draw the edge that is missing between them.

# ---- pieces ----
refusal-allowance_missing = { THE($edge) } has no allowance yet.
refusal-allowance_missing_do = Give it one, or 0 where it is cut on the line.
refusal-allowance_negative = the allowance of { THE($edge) } is { $value }; it cannot be less than nothing.
refusal-allowance_negative_do = Give it a width, or 0 where it is cut on the line.
refusal-notch_off = a notch lies { $at } along { THE($edge) }, which is only { $length } long.
refusal-notch_off_do = Move the notch onto the edge.
refusal-allowances_meet = the allowances of { THE($one) } ({ $one_width }) and { THE($other) } ({ $other_width }) run into each other at their corner.
refusal-allowances_meet_do = Make one of them narrower, or the corner wider.
refusal-allowance_tight = { THE($edge) } bends tighter than its allowance of { $width }.
refusal-allowance_tight_do = Make the curve rounder or the allowance narrower.
refusal-dart_off = { THE($dart) } opens from { $start } to { $end } along { THE($edge) }, which is { $length } long.
refusal-dart_off_do = Put the dart on the edge.
refusal-dart_legs = the legs of { THE($dart) } are { $one } and { $other } long; they must be equal to be sewn together.
refusal-dart_legs_do = Move the point, or one of the legs, until both are equally long.
refusal-fold_no_edge = { THE($fold) } is folded to a side of { THE($edge) } where no edge is left for it to lie under.
refusal-fold_no_edge_do = Fold it the other way, or move it.
refusal-fold_beyond_edge = the folded { $fold } does not lie under its edge.
refusal-dart_beyond_do = Make the dart narrower.
refusal-pleat_beyond_do = Make it shallower, or draw it squarer to the edge.
refusal-edge_folded_away = nothing is left of the edge when its darts and pleats are folded.
refusal-folds_over = two darts or pleats lie over one another on { THE($edge) }.
refusal-folds_over_do = Move one of them.
refusal-off_sewn = { $at } along { THE($place) } is off the edge, which is { $length } long as sewn.
refusal-off_sewn_do = Give a shorter distance, measured from the end where the two edges meet.
refusal-edges_apart = { THE($one) } and { THE($other) } do not follow one another: their nearest ends are { $gap } apart.
refusal-edges_apart_do = Name the edges of a run in the order they follow around the piece.
refusal-pleat_lines = the two lines of { THE($pleat) } are { $one } and { $other } long; they must be equal to lie on each other.
refusal-pleat_lines_do = Draw it again from edge to edge, or move an end until both are equally long.
refusal-pleat_nothing = the lines of { THE($pleat) } have no length.
refusal-draw_again_do = Draw it again.
refusal-pleat_off = { THE($pleat) } does not lie on { THE($edge) }, which is { $length } long.
refusal-pleat_off_do = Put the pleat on the edge.
refusal-joins_eat = pieces of { $longest } are used up by joins that take { $cost } each.
refusal-joins_eat_do = Cut longer pieces, or join them with a narrower allowance.
refusal-strip_nothing = it measures { $value }.
refusal-strip_nothing_do = Give it a length and a width above zero.
refusal-fold_curved = it cannot be opened along { THE($edge) }, which is not straight.
refusal-fold_curved_do = Rule the fold straight, or cut the piece as a pair.

# ---- lengths that are typed ----
refusal-not_a_length = '{ $text }' cannot be read as a length.
refusal-not_a_length_do = Type, for example, 2.5 cm, 25 mm, 1 1/2 in or 3/8".
refusal-by_zero = '{ $text }' divides by zero.
refusal-by_zero_do = Type, for example, 3/8 in.
refusal-no_unit = '{ $text }' has no unit.
refusal-no_unit_do = Type { $text } cm or { $text } in.
refusal-not_finite = a length must be a finite number.
refusal-not_finite_do = Look for a division by zero, or type a length such as 2.5 cm.

# ---- numbers ----
refusal-no_number = a value that is no number

# ---- steps and values ----
refusal-step = Step '{ $step }'
refusal-finished = Finished measurement '{ $title }'
refusal-block = The block the lesson starts from
refusal-endless = drafting was stopped after { $seconds } s, { $took } s of which were spent here.
refusal-endless_do = Move the value back that was moved last, and look for a loop that never ends. A lesson that needs longer says so: Lesson(..., time_limit=20).
refusal-interrupted = drafting was interrupted.
refusal-interrupted_do = What is shown is older. Move a value, or run the cell again.
refusal-line = line
refusal-here = { $place }
refusal-out_of_range = { $name } is { $value }, outside its range of { $least } to { $most }.
refusal-out_of_range_do = Choose a value inside the range, or change the range where the parameter is defined.
refusal-not_a_share = '{ $text }' cannot be read as a share.
refusal-not_a_share_do = Type, for example, 70 %.
refusal-not_a_count = '{ $text }' cannot be read as a whole number.
refusal-not_a_count_do = Type, for example, 4.
refusal-crosses_worn = { THE($edge) } crosses { THE($other) } { $across } from the centre line and { $up } above the waist.
refusal-crosses = { THE($edge) } crosses { THE($other) } { $across } to the right of the paper's zero and { $up } above it.
refusal-crosses_do = Change the last measure you moved back toward its old value, or draw one of the two anew.

# ---- drawing ----
refusal-below_zero = { $value } is less than nothing.
refusal-below_zero_do = Give a distance of zero or more.
refusal-square_misses = squaring across from here never meets { THE($line) }.
refusal-square_misses_do = Try the other way.
refusal-line_nothing = a line needs two different points.
refusal-line_nothing_do = Give it some length.
refusal-lines_added = lines on paper are not added with +.
refusal-lines_added_do = Name several edges in a row, as [front.neck, back.neck], or make one line of two that meet: one.joined(other).
refusal-line_short = { THE($line) } is only { $length } long, so there is no point { $at } along it.
refusal-shorter_do = Give a shorter distance.
refusal-lines_miss = { THE($line) } does not meet { THE($other) }.
refusal-lines_miss_do = Check that both are where you expect.
refusal-share_outside = a share lies between 0 and 1, not { $share }.
refusal-share_outside_do = Give a number from 0 to 1.
refusal-join_below = the curve should join { THE($line) } { $at } down, but { THE($line) } is only { $length } long.
refusal-join_below_do = Let it join higher up, or make the garment longer.
refusal-reaches_below = { THE($line) } is { $length } deep and reaches lower than the end of { THE($other) }.
refusal-reaches_below_do = Make { THE($line) } shallower or { THE($other) } longer.
refusal-no_room_to_round = from the end of { THE($line) } no curve of { $radius } radius runs into { THE($other) }: there is no room for it above its end.
refusal-no_room_to_round_do = Make { THE($line) } shorter or let the curve be tighter, or make { THE($other) } longer.
refusal-never_clear = a line { $size } long from there does not reach { $by } outside { THE($line) }, however it is bent.
refusal-never_clear_do = Begin farther out, or make it longer: it must end outside { THE($line) }.
refusal-edges_miss = { THE($one) } and { THE($other) } do not meet, even carried on straight.
refusal-edges_miss_do = Check the lines before them, or draw the corner by hand.
refusal-grain_outside = the grainline would lie outside the piece.
refusal-grain_outside_do = Put it inside: at=....
refusal-grain_curved = a grainline is straight; { THE($line) } is curved.
refusal-grain_curved_do = Name a straight line, or a direction: along="up".
refusal-fold_is_curved = cloth folds straight; { THE($edge) } is curved.
refusal-fold_is_curved_do = Rule it straight, or cut the piece as a pair.
refusal-paper_fold_curved = the paper folds only along a straight line; { THE($line) } is curved.
refusal-strip_size = a strip needs a length and a width; it is { $length } long and { $width } wide.
refusal-notch_past = a notch at { $at } lies past the end of { THE($edge) }, which is { $length } long.
refusal-nearer_do = Put it nearer.
refusal-opening_off = the opening from { $start } to { $end } does not fit on { THE($edge) }, which is { $length } long.
refusal-opening_off_do = Make the opening shorter or move it up, or lengthen the garment.
refusal-notch_taken = there is already a notch { $at } along { THE($edge) }.
refusal-notch_taken_do = Leave this one out, or place it elsewhere.
refusal-mark_over = { THE($mark) } would run over two edges.
refusal-mark_over_do = Mark a part for each edge.
refusal-point_off = the point does not lie on { THE($place) }.
refusal-point_off_do = Mark it on the edge.
refusal-mark_off = { THE($mark) } does not lie on { THE($place) }.
refusal-mark_off_do = Name the edge it is marked on.
refusal-level_misses = squared across from that point, no line meets { THE($edge) }.
refusal-level_misses_do = Take another point.
refusal-line_misses_edge = { THE($line) } does not meet { THE($edge) }, as it lies or folded over the centre line.
refusal-line_misses_edge_do = Give the height as a length, or a point level with it.
refusal-buttonholes_off = buttonholes from { $start } to { $end } do not lie on { THE($edge) }, which is { $length } long.
refusal-buttonholes_off_do = Give the first place before the last, both measured from the start of the edge.
refusal-buttonhole_nothing = a buttonhole needs some length.
refusal-buttonhole_nothing_do = Give, say, button=1.5 * cm.
refusal-slits_meet = slits { $size } long every { $gap } run into one another.
refusal-slits_meet_do = Set fewer, or lay them square to the edge.
refusal-buttons_length = { THE($edge) } for the buttons is { $length } long, and the edge of the buttonholes { $other }.
refusal-buttons_length_do = Make the two edges equal first, or true them.
refusal-laid_outside = { THE($piece) } laid there reaches { $by } out of the piece.
refusal-laid_outside_do = Lay it farther in, or make it smaller.
refusal-laid_over_fold_do = It reaches over the fold, where the other half lies: cut it on the fold too and lay its fold there, or lay it farther in.
refusal-dart_in_way = a dart opens on { THE($edge) }.
refusal-dart_in_way_do = Set the buttonholes by another line.
refusal-buttonholes_count = { $count } buttonholes do not fill { $length }.
refusal-buttonholes_count_do = Give at least 2, or the same first and last place for 1.
refusal-spacing_nothing = the spacing is nothing.
refusal-spacing_nothing_do = Give, say, spacing=8 * cm.
refusal-buttonholes_many = { $count } buttonholes are more than a garment has.
refusal-unit_do = Check the unit.
refusal-outside_piece = it lies outside the piece.
refusal-outside_piece_do = Move it in.
refusal-folds_order = the folds lie at { $folds }.
refusal-folds_order_do = Give them from the stitch line outward, at least 1 mm apart: folds=(0, 4 * cm).
refusal-fold_beyond = a fold { $at } outside { THE($edge) } lies beyond the cloth, which ends at { $most }.
refusal-fold_beyond_do = Fold nearer the stitch line, or make the allowance wider.
refusal-corner_size = a size of { $size } cannot be cut.
refusal-corner_size_do = Give the distance from the stitch lines' corner.
refusal-corner_arc = an arc { $size } from the corner would cut into the allowance, which is { $width } wide.
refusal-corner_arc_do = Make it { $width } or more, or leave size out.
refusal-corner_reach = the point lies { $reach } from the corner, so { $size } cuts nothing off.
refusal-corner_reach_do = Give a size below { $reach }.

# ---- darts, pleats and slashes ----
refusal-legs_differ = the legs of { THE($dart) } differ by { $by }.
refusal-legs_differ_do = Make its legs equal before moving it.
refusal-dart_share = a part of a dart is a share above 0 and up to 1, not { $share }.
refusal-dart_on_old = the new dart would lie on the old one.
refusal-beside_do = Give a place beside it.
refusal-slash_fold = the slash would cut the fold in two.
refusal-other_edge_do = Choose another edge.
refusal-dart_nothing = a dart needs an intake above nothing.
refusal-more_do = Give, for example, { $size }.
refusal-dart_no_fit = a dart of { $intake } does not fit { $at } along { THE($edge) }, which is { $length } long.
refusal-dart_no_fit_do = Make it narrower, or put it nearer the middle.
refusal-dart_points_out = the dart would point outside the piece.
refusal-dart_points_out_do = Put its point inside.
refusal-dart_wide = the dart is wider than it is deep.
refusal-dart_wide_do = Make it narrower or deeper.
refusal-dart_legs_miss = the legs of the dart do not both reach { THE($edge) }.
refusal-dart_aside = the dart's point lies too far to one side of its place on { THE($edge) }.
refusal-dart_opposite_do = Put the dart opposite its point.
refusal-dart_short = { THE($dart) } is { $deep } deep; its point cannot stop { $by } before the apex.
refusal-shorten_less_do = Shorten it less.
refusal-take_in = { $amount } cannot be taken in over { $over }.
refusal-spread_more_do = Spread it further.
refusal-pleat_along = the line runs nearly along { THE($edge) }, so nothing can be folded into it.
refusal-pleat_along_do = Give a line that crosses the edge.
refusal-no_edge_across = there is no edge straight across.
refusal-no_edge_across_do = Name the edge it runs to.
refusal-takes_nothing = it must take up more than nothing.
refusal-pleat_same_edge = it starts and ends on { THE($edge) }.
refusal-pleat_same_edge_do = Run it to another edge.
refusal-tuck_short = a tuck { $long } long cannot be stitched for { $sewn }.
refusal-tuck_short_do = Stitch it for less, or leave sewn= out to stitch all of it.
refusal-box_narrow = a box { $wide } wide cannot hide two folds { $deep } deep.
refusal-box_narrow_do = Make the box wider, or take up less.
refusal-row_empty = a row has at least one tuck, not { $count }.
refusal-row_empty_do = Give a count from 1 on.
refusal-tucks_over = tucks { $depth } deep and { $apart } apart would lie over each other's stitching.
refusal-tucks_over_do = Set them at least { $depth } apart.
refusal-tucks_off = { $count } tucks { $apart } apart end { $last } along { THE($edge) }, which is { $length } long.
refusal-tucks_off_do = Make fewer, set them closer, or start nearer the beginning.
refusal-spread_far = it cannot be spread that far.
refusal-spread_far_do = Spread it less.
refusal-dart_opens_on = { THE($dart) } opens on { THE($edge) }; changing that edge would make its legs differ.
refusal-dart_opens_on_do = Move the dart to another edge first.
refusal-pleat_ends_on = { THE($pleat) } ends on { THE($edge) }; changing that edge would leave its lines behind.
refusal-pleat_ends_on_do = Change the edge first and draw the pleat then.
refusal-edge_short = { THE($edge) } is only { $length } long.
refusal-move_less_do = Move it less.
refusal-neck_into_dart = the neckline would run into { THE($dart) }.
refusal-widen_less_do = Widen it less.
refusal-no_place_on = there is no place { $at } along { THE($edge) }, which is { $length } long.
refusal-inside_fold = { $at } along { THE($edge) } lies inside { THE($fold) }.
refusal-slash_leaves = the slash line leaves the paper at { THE($edge) }.
refusal-slash_leaves_do = Choose a place that can be reached in a straight line.
refusal-slash_outside = the slash line lies outside the paper.
refusal-other_place_do = Choose another place.
refusal-slash_through = the slash line runs through { THE($fold) }.
refusal-slash_dart_do = Move that dart first.
refusal-slash_pleat_do = Keep the two apart, or draw this one first.

# ---- truing, facings, linings ----
refusal-true_too_far = { THE($one) } is { $one_length } long and { THE($other) } { $other_length }: they differ by { $by }, more than truing should hide.
refusal-true_too_far_do = Look for the mistake in the draft, or say how much is eased: ease=....
refusal-true_fold = { THE($edge) } ends on the fold, which cannot be moved.
refusal-true_fold_do = Hold that end and change the other one.
refusal-true_take_off = { $by } cannot be taken off { THE($edge) }: only { $left } lie between its end and the next dart or corner.
refusal-true_take_off_do = Change the other edge, or the other end.
refusal-true_sharp = { THE($one) } and { THE($other) } meet at { $degrees }° at the end of the seam; that is too sharp to be drawn smooth.
refusal-true_sharp_do = Draw the corner anew, or declare it where it is meant to be one.
refusal-true_no_room = there is no room on { THE($edge) } to draw it smooth: only { $reach } before the next dart or corner.
refusal-true_no_room_do = Hold this end, with hold="start" or hold="end", or move the dart.
refusal-hem_shorter = the hem cannot be { $by } shorter: the edges beside it are only { $length } long.
refusal-dart_left_out = { THE($dart) } opens on { THE($edge) }, which the lining leaves out.
refusal-dart_left_out_do = Move the dart to another edge first, or sew it before the lining is traced.
refusal-facing_deeper = the facing is deeper than { THE($edge) } is long, so nothing is left there for the lining.
refusal-facing_narrower_do = Make the facing narrower.
refusal-pleat_curved = a pleat is added along a straight line; { THE($edge) } is curved.
refusal-pleat_curved_do = Name the centre edge: at='centre'.
refusal-dart_cut_away = { THE($dart) } opens where { THE($edge) } is cut away.
refusal-dart_cut_away_do = Move the dart to another place first.
refusal-facing_no_fit = a facing { $depth } deep does not fit inside { THE($pieces) }: { $what }
refusal-drawn_short = the outer edge is { $length } long and cannot be drawn short by { $by } at { THE($edge) }.
refusal-dart_not_beside = { THE($edge) } does not meet { THE($beside) }, so { THE($dart) } cannot be closed into it.
refusal-dart_not_beside_do = Name an edge that begins or ends where { THE($beside) } does.
refusal-dart_into_fold = { THE($edge) } lies on the fold, so { THE($dart) } cannot be closed into it.
refusal-dart_into_fold_do = Name the edge at the other end, or take the dart away before the piece is put on the fold.
refusal-drawn_short_do = Draw it in less.
refusal-seam_past = the seam is moved past the end of the run.
refusal-seam_past_do = Move it by less, or leave the seam out.
refusal-run_gone = nothing of the run is left for it.
refusal-seam_less_do = Move the seam by less.

# ---- sewing ----
refusal-not_negative_do = Write a length of zero or more.
refusal-too_wide = { $value } is more than { $most }, wider than this work allows.
refusal-unit_mm_do = Check the unit: mm, cm or inch.
refusal-zero = it is zero.
refusal-zero_do = Write a width, such as 1 * cm.
refusal-opening_off_seam = an opening from { $start } to { $end } does not lie on a seam { $length } long.
refusal-opening_off_seam_do = Give the nearer end first and keep both on the seam.
refusal-opening_whole = the opening takes the whole seam.
refusal-opening_whole_do = Leave part of the seam to sew.
refusal-off_run = { $at } along { THE($place) } is off the edge, which is { $length } long.
refusal-from_start_do = Measure from the start of the run.
refusal-at_beside_mark = { $at } stands beside the mark “{ $mark }”, which is one place by itself.
refusal-at_past_mark = { $at } lies beyond the mark “{ $mark }”, which is { $length } long.
refusal-at_beside_mark_do = Leave out at=, or name the edge instead of the mark and measure along that.
refusal-at_missing = it is not said where along the edge.
refusal-at_missing_do = Write it: at=10 * cm; or name a mark instead of the edge.
refusal-band_fold_eaten = The fold is to reach { $deeper } past the seam, and only { $allowance } are turned under.
refusal-band_fold_eaten_do = Write a smaller deeper=, such as 3 mm, or a wider allowance.
refusal-no_part = a part from { $start } to { $end } is not a part of an edge.
refusal-no_part_do = Give the nearer end first, both measured from the start of the run.
refusal-part_before = a part cannot begin { $start } along an edge.
refusal-part_reversed = { $from } lies { $start } along and { $to } only { $end }, both measured from { $tip }: in this order no part lies between them.
refusal-part_reversed_do = Name the nearer one first.
refusal-part_empty = { $from } and { $to } are one place, { $start } along from { $tip }: no part lies between them.
refusal-part_empty_do = Name two places that lie apart, or move one of them in the draft.
refusal-part_past = the part ends { $end } along, but the run is only { $length } long.
refusal-part_backward = the part ends { $end } along, but begins { $start } along, and the edges are { $length } long.
refusal-zip_narrow = an allowance of { $width } is too narrow to sew a zip to.
refusal-zip_narrow_do = Give the opening at least { $least }.
refusal-zip_row = stitched { $at } from the fold, the row would miss the allowance of { $width } behind it.
refusal-zip_row_do = Stitch nearer to the fold, or give the opening a wider allowance.
refusal-tower_piece = the tower and the edges around it must lie on one piece of its own.
refusal-tower_piece_do = Name edges of the piece cut for the tower, as tower.edge and around=[tower.point, tower.outer].
refusal-slit_long = { THE($slit) }, { $length } long from { THE($edge) }, leaves no cloth beyond its end.
refusal-slit_long_do = Make it shorter: at least { $least } of the piece must lie beyond it.
refusal-fly_same_piece = the fly facing or its shield is no piece of its own.
refusal-fly_same_piece_do = Name the long edge of a piece cut for it, as facing=fly_facing.edge.
refusal-double_dart_order = its widest place does not lie between its two points.
refusal-double_dart_order_do = Name the upper point as top, the lower one as bottom, and a point between them as at.
refusal-double_dart_edge = { THE($dart) } reaches { THE($edge) }: a dart with two points runs out inside the piece.
refusal-double_dart_edge_do = Let it end at least { $least } inside, or draw a dart that opens on that edge with add_dart.
refusal-no_double_dart = the mark '{ $mark }' is no dart with two points.
refusal-no_double_dart_do = Draw one with add_double_dart and name it here; a dart that opens on an edge is sewn with make.dart.
refusal-other_fastener = the mark '{ $mark }' says: { $is }. Here comes another thing: { $wanted }.
refusal-other_fastener_do = Name a mark of that kind ({ $wanted }) or a plain point. What lies over has the hook or the ball half, what lies under the bar, eye or socket.
refusal-grade = { $wide } is not wider than { $narrow }.
refusal-grade_do = Grade to two different widths.
refusal-strip_eaten = an allowance of { $width } leaves nothing of a strip cut { $cut } wide.
refusal-strip_eaten_do = Cut it wider, or take a narrower allowance.
refusal-overlap_long = an overlap of { $size } takes all of { THE($edge) }, which is { $length } long.
refusal-overlap_long_do = Check the overlap, and name the short end of the band.
refusal-cloth_narrow = { $piece } is { $across } wide, more than cloth of { $width } gives.
refusal-cloth_narrow_do = Take wider cloth, or plan a seam in that piece.

# ---- the step's own code ----
refusal-at_line = { $place }, at “{ $line }”

# ---- corners ----
refusal-folds_none = no fold is named.
refusal-extra_on_fold = { THE($edge) } lies on the fold, where nothing is cut.
refusal-extra_on_fold_do = Give the extra cloth to an edge that is cut.

# A bound that follows from other values; $causes are these, each with its value.
refusal-bound_cause = { $name } { $value }
refusal-bound_at_least = { $name } is { $value }, and with { $causes } it must be at least { $bound }.
refusal-bound_at_least_do = Make { $name } at least { $bound }, or change what it follows from.
refusal-bound_at_most = { $name } is { $value }, and with { $causes } it can be at most { $bound }.
refusal-bound_at_most_do = Make { $name } at most { $bound }, or change what it follows from.
refusal-no_answer = the notebook gave no answer.
refusal-no_answer_do = Run it again.
refusal-cut_alike_left = { $piece } has no left half: its { $count } layers are cut alike.
refusal-cut_alike_right = { $piece } has no right half: its { $count } layers are cut alike.
refusal-cut_alike_do = For a left and a right one write { $call }.
refusal-no_moment = { $name } is '{ $said }', which is no number of seconds.
refusal-no_moment_do = Give whole seconds since the beginning of 1970, or leave it unset.
