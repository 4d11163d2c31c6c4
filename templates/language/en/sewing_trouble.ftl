# What speaks against sewing in the order of the lesson: what is wrong, and what to do (keys that end in _do). The piece's
# title stands before it, so that "it" is that piece or strip. $place is a piece with its edge or mark ("front side"),
# $edge an edge, $piece a piece; lengths come with their units. What is written in the notebook, such as make.press(...),
# stays as it is.

sewing_trouble-band_not_set = { THE($place) } is not sewn to the garment yet, so there is no seam to close over.
sewing_trouble-band_not_set_do = Set the band on first: make.set_band(...).
sewing_trouble-band_not_pressed = the seam along { THE($place) } is not pressed yet, and once the band is closed no iron reaches it.
sewing_trouble-band_not_pressed_do = Press it first: make.press(..., way=...).
sewing_trouble-band_not_seamed = { THE($piece) } is not seamed to the outer band yet.
sewing_trouble-band_not_seamed_do = Seam the two and turn them out first: make.seam_band(...), make.turn_out(...).
sewing_trouble-band_end_open = { THE($edge) } of { THE($piece) } is still raw; once the inner edge is closed it can no longer be turned in.
sewing_trouble-band_end_open_do = Stitch the ends first, and turn the band out.
sewing_trouble-band_end_raw = { THE($place) } is still raw where the band begins or ends.
sewing_trouble-band_end_raw_do = Hem or face that edge, set in its zip or sew its seam first: the band ends at its finished line.
sewing_trouble-turned_already = { THE($piece) } has been turned already, so its end can no longer be stitched from inside.
sewing_trouble-turned_already_do = Stitch the ends before the band is turned.
# Said of a strip; its title stands before. $length is the length cut, $ends what is turned under, $left what it measures when done.
sewing_trouble-strip_length = cut { $length } long with { $ends } turned under at each end it comes out { $left } long, not { $finished_length }.
sewing_trouble-strip_length_do = Change the cut length, the turned ends or the finished length.
sewing_trouble-loop_before_seam = it is stitched onto { THE($place) } before that seam is sewn.
sewing_trouble-do_sew_seam_first = Sew the seam first.
sewing_trouble-too_few_strips_bound =
    { $count ->
        [one] { $count } is sewn on
       *[other] { $count } are sewn on
    }, but only { $cut } cut.
sewing_trouble-too_few_strips_bound_do = Cut more, or bind fewer edges.
sewing_trouble-binding_width = cut { $width } wide it does not give { $finished }: that needs { $cut_width }.
sewing_trouble-binding_width_do = Change the cut width or the finished width.
sewing_trouble-binding_short_edge = it is cut { $length } long, but the edge with its ends needs { $needed }.
sewing_trouble-binding_short_edge_do = Cut it longer, or say how many strips share the edges: count=....
sewing_trouble-binding_not_bias = { THE($place) } is curved, but { THE($piece) } is cut on the straight grain and does not bend round it.
sewing_trouble-binding_not_bias_do = Cut the strip on the bias.
sewing_trouble-buttons_and_holes =
    { $number ->
        [one] there is { $number } button
       *[other] there are { $number } buttons
    } for { $wanted ->
        [one] { $wanted } buttonhole
       *[other] { $wanted } buttonholes
    }.
sewing_trouble-buttons_and_holes_do = Give every buttonhole its button; name one side where a mark is on both halves (front.left).
sewing_trouble-no_buttonhole = a button is set under a buttonhole that is not worked yet.
sewing_trouble-no_buttonhole_do = Work the buttonholes first: make.buttonholes(...).
# $size is the button, $sizes the shortest buttonhole.
sewing_trouble-button_wide = a button { $size } across does not pass a buttonhole of { $sizes }.
sewing_trouble-button_wide_do = Work the buttonhole as long as the button is wide and { $more } more. Mark it as long on the draft: buttonholes(..., thick=...).
sewing_trouble-buttonhole_size = { THE($place) } is marked { $length } long, but worked { $worked }.
sewing_trouble-buttonhole_size_do = Mark and work it alike.
sewing_trouble-button_slips = a button { $size } across slips out of a buttonhole of { $sizes }.
sewing_trouble-button_slips_do = Take larger buttons, or work shorter buttonholes.
sewing_trouble-casing_turns = the first turn is deeper than the second, so it does not fit inside the casing.
sewing_trouble-do_deepen_second_turn = Make the second turn at least as deep as the first.
sewing_trouble-gap_elsewhere = the gap lies on { THE($place) }, which is not part of the casing.
sewing_trouble-gap_elsewhere_do = Leave it in one of the edges of the casing.
sewing_trouble-channel_one_layer = nothing lies under { THE($place) } yet: two rows through one layer leave no channel.
sewing_trouble-channel_one_layer_do = Join it to its lining or facing and turn it first (make.seam_to_turn, make.turn_out), or hem it deeply.
sewing_trouble-channel_beyond = the second row lies { $far } inside { THE($place) }, but one of the layers reaches only { $reach } in.
sewing_trouble-channel_beyond_do = Stitch nearer to the edge, or cut the lining, facing or hem deeper.
sewing_trouble-channel_shallow = between rows { $depth } apart no cord runs.
sewing_trouble-channel_shallow_do = Set the rows at least { $least } apart.
sewing_trouble-channel_twice = there is a casing along { THE($place) } already.
sewing_trouble-no_slit = the cord is to come out at { THE($place) }, but no seam has left that open.
sewing_trouble-no_slit_do = Leave it open in the seam: make.plain_seam(..., opening=...).
sewing_trouble-slit_off_casing = { THE($place) } reaches beyond the casing, whose row lies { $high } from the fold.
sewing_trouble-slit_off_casing_do = Mark it nearer to the fold, or make the casing deeper.
sewing_trouble-hole_off_channel = { THE($place) } does not lie between the rows of the channel, which are { $low } and { $high } from the edge.
sewing_trouble-hole_off_channel_do = Move it, or the rows: distance and depth of make.channel.
# $share is a percentage.
sewing_trouble-not_gathered_yet = { THE($place) } is { $share } longer than what it is sewn to: too much to ease in.
sewing_trouble-not_gathered_yet_do = Gather it first: make.gather(..., fit=...). Where the shorter one stretches and is pulled to fit, say so: Lesson(..., stretch=0.6).
sewing_trouble-not_eased_yet = { THE($place) } is { $ease } longer than what it is sewn to, and nothing draws it in yet.
sewing_trouble-not_eased_yet_do = Run a row of ease stitching along it first: make.ease_stitch(...).
sewing_trouble-no_casing = there is no casing along { THE($place) } yet to draw anything through.
sewing_trouble-no_casing_do = Make the casing first: make.casing(...) or make.channel(...).
sewing_trouble-threaded_twice = something has been drawn through the casing of { THE($place) } already.
sewing_trouble-threaded_out_twice = a cord comes out at { $place } already.
sewing_trouble-do_take_one_operation_out = Take one of the two operations out.
sewing_trouble-gap_shut = it is to be threaded through the gap in { THE($place) }, but that is sewn shut.
sewing_trouble-gap_shut_do = Leave the gap in the casing: make.casing(..., gap=...) or make.channel(..., gap=...).
sewing_trouble-elastic_wide = elastic { $width } wide does not run freely in a { $tube } { $deep } deep.
sewing_trouble-elastic_wide_do = Take narrower elastic, or make the { $tube } deeper.
sewing_trouble-cord_no_room = elastic { $width } wide leaves no room for a cord in a { $tube } { $deep } deep.
sewing_trouble-cord_no_room_do = Make the { $tube } deeper, or take narrower elastic.
sewing_trouble-cords_no_room = two cords take { $cords } and do not run freely beside each other in a { $tube } { $deep } deep.
sewing_trouble-cords_no_room_do = Make the { $tube } deeper, or draw only one cord through it.
sewing_trouble-elastic_long = the elastic measures { $worn } when joined, but the { $tube } is only { $whole } long: it would draw nothing in.
sewing_trouble-elastic_long_do = Cut the elastic shorter than the edge.
sewing_trouble-strip_not_made_drawn_in = it is drawn in before it is made.
sewing_trouble-do_make_strip_first = Make the strip first.
sewing_trouble-no_eyelet = the cord is to come out at { THE($place) }, but there is no eyelet yet.
sewing_trouble-no_eyelet_do = Work the eyelets before the casing is sewn: make.eyelets(...).
sewing_trouble-cord_short = the cord is { $length } long, but the { $tube } { $whole }: its ends would slip inside.
sewing_trouble-cord_short_do = Take a longer cord: the edge and enough at both ends to tie.
sewing_trouble-mock_french_turn = an allowance of { $allowance } turned in by { $turn } leaves { $left }: the turned edges do not fit between the seam and the fold.
sewing_trouble-mock_french_turn_do = Turn in at least { $least } and less than half of the allowance.
sewing_trouble-felled_trim = the trimmed allowance is { $trim } wide, too wide to lie flat in a fell of { $width }.
sewing_trouble-felled_trim_do = Trim it to { $most } or less, or make the fell wider.
sewing_trouble-felled_width = a fell of { $width } leaves { $turned } of { THE($allowance) } allowance to turn under.
sewing_trouble-felled_width_do = At least { $least } must be turned under, and no more than the fell is wide: change the width or the allowance.
sewing_trouble-lapped_row = the row lies { $edgestitch } from the fold, beyond the allowance under it, which is { $allowance } wide.
sewing_trouble-lapped_row_do = Stitch nearer the fold.
sewing_trouble-free_edge_raw = { THE($place) } is sewn down while it is still raw.
sewing_trouble-free_edge_raw_do = Turn it under (turn=...), or finish it before.
sewing_trouble-no_interfacing_cut = it is interfaced, but no interfacing is cut for it.
sewing_trouble-no_interfacing_cut_do = Say in the piece's cutting plan that it is cut in interfacing too, or draw its interfacing.
sewing_trouble-fused_twice = it has been interfaced already.
sewing_trouble-fused_late = it has been sewn already; interfacing is put on the flat piece.
sewing_trouble-fused_late_do = Interface this piece before its first seam.
sewing_trouble-understitched_early = { $place } is not sewn to anything yet, so there is no seam to understitch.
sewing_trouble-understitched_early_do = Attach the facing first.
sewing_trouble-fasteners_unequal =
    { $number ->
        [one] there is { $number } place on top
       *[other] there are { $number } places on top
    } and { $other } underneath.
sewing_trouble-fasteners_unequal_do = Name as many places on either side.
sewing_trouble-fasteners_apart = { THE($place) } is { $size } from the one before it, but their partners on the other side are { $other } apart.
sewing_trouble-fasteners_apart_do = Mark both sides at equal distances: closed like this, { $amount } would pucker between the two.
sewing_trouble-eyelet_late = the casing at { THE($place) } is sewn already: an eyelet would go through both its layers.
sewing_trouble-eyelet_late_do = Set the eyelets before the casing is folded.
sewing_trouble-eyelet_in_lining = at { THE($place) } two layers lie on each other by now: an eyelet would hold them together, and no cord gets out between them.
sewing_trouble-eyelet_in_lining_do = Set the eyelets in the outer layer alone, before a lining, facing or hem lies under it.
sewing_trouble-staystitched_late = { THE($place) } is sewn already; staystitching holds the raw edge before it can stretch.
sewing_trouble-staystitched_late_do = Put it before the first seam there.
sewing_trouble-finished_late = the raw edge of { THE($place) } is shut in already; there is nothing left to finish.
sewing_trouble-finished_late_do = Put it before that, or take it out.
sewing_trouble-topstitched_raw = { THE($place) } is topstitched while it is still raw.
sewing_trouble-topstitched_raw_do = Sew, face or hem it first.
sewing_trouble-topstitched_unpressed = { THE($place) } is topstitched before its seam is pressed.
sewing_trouble-topstitched_unpressed_do = Press it first: make.press(...).
sewing_trouble-staystitch_outside_cloth = the row would lie on or beyond the cut edge.
sewing_trouble-staystitch_outside_cloth_do = Sew it nearer the stitch line than the allowance is wide.
sewing_trouble-blind_hem_narrow = a hem { $depth } deep is too narrow to be sewn blind.
sewing_trouble-blind_hem_narrow_do = Make it at least { $least } deep, or roll it by hand.
sewing_trouble-wide_hem_short = the edge curves inward, so that the raw edge turned up { $first } is { $surplus } too short for the place it is sewn to and would pull.
sewing_trouble-do_face_or_narrow_hem = Face it (make.faced_hem), or make the hem narrower.
sewing_trouble-wide_hem_full = turned up { $first }, the raw edge is { $surplus } longer than the place it is sewn to: too much to lie flat on so curved an edge.
sewing_trouble-rolled_hem_wide = an edge turned { $first } is too much to roll between the fingers.
sewing_trouble-rolled_hem_wide_do = Give it { $most } or less, or sew a narrow hem.
sewing_trouble-caught_loose = { THE($place) } is to be caught in the hem, but the piece is not sewn to the garment yet.
sewing_trouble-caught_loose_in_seam = { THE($place) } is to be caught in the seam, but the piece is not sewn to the garment yet.
sewing_trouble-caught_loose_do = Attach it first.
sewing_trouble-caught_length = { THE($place) } is { $amount } long, and no edge of the band it is to lie along is as long.
sewing_trouble-caught_length_do = Draw the edge of the collar as long as the edge of the stand that it lies along.
sewing_trouble-not_a_ring_yet = { THE($place) } is hemmed as a ring, but its ends are not sewn together yet.
sewing_trouble-not_a_ring_yet_do = Sew the seam that closes it first, or leave out ring=True and hem it flat.
sewing_trouble-hem_turns = the first turn is deeper than the second, so it does not fit inside the hem.
sewing_trouble-bags_unequal = the two bags differ by { $gap } around the pocket.
sewing_trouble-bags_unequal_do = Draw both bags alike.
sewing_trouble-mouth_whole_seam = the mouth takes the whole seam.
sewing_trouble-mouth_whole_seam_do = Leave part of the seam to sew.
sewing_trouble-bag_whole_seam = the bag is sewn along all of { THE($place) }, so nothing of the seam is left above or below.
sewing_trouble-bag_whole_seam_do = Sew it to the opening marked for the pocket's mouth.
sewing_trouble-bag_not_set = { THE($piece) } is not sewn to its side of the mouth yet.
sewing_trouble-bag_not_set_do = Sew both bags on first: make.pocket_bag(...).
sewing_trouble-mouth_moved = the seam leaves { $start } to { $end } open, but no bag is sewn on there.
sewing_trouble-mouth_moved_do = Name the same opening for the bags and for the seam.
sewing_trouble-basting_outside_cloth = basted { $distance } outside the stitch line it would lie on or beyond the cut edge.
sewing_trouble-basting_outside_cloth_do = Baste nearer the stitch line than the allowance is wide.
sewing_trouble-not_joined_yet = { $place } and { $other } are sewn as one row, but the pieces are not joined there yet.
sewing_trouble-not_joined_yet_do = Sew the seam between them first, or sew the two one after the other.
sewing_trouble-gathers_not_taken_up = { THE($place) } is gathered, but the seam takes up no fullness there.
sewing_trouble-gathers_not_taken_up_do = Say in the seam by how much the gathered edge is longer (ease=...), or leave out the gathering.
sewing_trouble-gathered_to_another_length = { THE($place) } is drawn up to { $to }, but the edge it is sewn to is { $size }.
sewing_trouble-gathered_to_another_length_do = Draw it up to fit that edge: fit=... names it.
sewing_trouble-pocket_place_size = the pocket is { $own } round its sewn edges, but the line it is laid on is { $length }.
sewing_trouble-pocket_place_size_do = Draw the placement from the pocket, or the pocket from its placement.
sewing_trouble-pocket_turns = the first turn is deeper than the second, so it does not fit inside the pocket's hem.
sewing_trouble-folded_twice = { THE($place) } is pressed under already.
sewing_trouble-do_take_one_out = Take one of the two out.
sewing_trouble-folded_late = { THE($place) } is sewn already; its allowance is pressed under before the pocket is sewn on.
sewing_trouble-folded_late_do = Put it before the pocket is sewn on.
sewing_trouble-pocket_not_hemmed = { THE($piece) } is sewn on before its mouth is hemmed; afterwards the hem's ends cannot be reached.
sewing_trouble-pocket_not_hemmed_do = Hem it first: make.pocket_hem(pocket.top, ...).
sewing_trouble-pocket_not_folded = { THE($edge) } of { THE($piece) } is not pressed under yet, so its raw edge would show.
sewing_trouble-pocket_not_folded_do = Press the edges under first: make.fold_pocket(...).
sewing_trouble-pocket_twice = there is a pocket at { THE($place) } already.
sewing_trouble-pocket_twice_do = Take one of the two out, or name another mark.
sewing_trouble-gathers_too_few = { THE($place) } is { $full } long; drawn up to { $drawn } it shows no gathers.
sewing_trouble-gathers_too_few_do = Make the edge longer, draw it up to less, or ease it: make.ease_stitch(...).
# $ratio is a number such as 3.5.
sewing_trouble-gathers_too_many = { THE($place) } is { $full } long, { $ratio } times { THE($drawn) } it is to be drawn up to: so much cloth cannot be pushed together.
sewing_trouble-gathers_too_many_do = Make the edge shorter, or lay it in pleats.
sewing_trouble-basted_late = { THE($place) } is closed already; there is nothing left for basting to hold.
sewing_trouble-basted_late_do = Put it before the seam there.
sewing_trouble-not_basted = there is no basting along { THE($place) } to take out.
sewing_trouble-not_basted_do = Baste it first, or take this out.
sewing_trouble-basting_out_early = { THE($place) } is not sewn yet, so only the basting holds it.
sewing_trouble-basting_out_early_do = Sew it first, or try it on: make.try_on(...).
sewing_trouble-basted_otherwise = { THE($place) } is still basted on its stitch line, right sides together, which keeps it from being laid as this seam begins.
sewing_trouble-basted_otherwise_do = Take the basting out first: make.remove_basting(...).
sewing_trouble-pressed_early = there is no seam along { $place } to press yet.
sewing_trouble-pressed_early_do = Sew it first, or name the edge of the seam that is meant.
sewing_trouble-pressed_open_shut_in = the allowances along { $place } are shut in, so they cannot be pressed open.
sewing_trouble-pressed_open_shut_in_do = Press it to one side: make.press(..., way="one side").
sewing_trouble-pressed_no_edge = nothing is turned to the inside along { $place } yet, so that no seam lies at the edge there.
sewing_trouble-pressed_no_edge_do = Turn the facing or the piece first; press a seam that stays inside open or to one side.
sewing_trouble-band_meets_no_seam = no seam of the garment meets { THE($place) }: the inner side of the band would hang loose.
sewing_trouble-band_meets_no_seam_do = Close it all round: method="hand", "groove" or "edgestitch".
sewing_trouble-binding_short_seam = binding its allowances takes { $wanted }, but only { $left } of the strip is left.
sewing_trouble-binding_short_seam_do = Cut more of it, or make it longer.
sewing_trouble-french_seam_trimmed = the trimmed allowances are { $trim } wide, no narrower than the second row, { $second } from the crease: their raw edges would show.
sewing_trouble-french_seam_trimmed_do = Trim them narrower, or make the second row wider.
sewing_trouble-french_seam_rows = the second row is { $second } from the crease, too narrow to shut in trimmed raw edges.
sewing_trouble-french_seam_rows_do = Make the second row at least { $least }.
sewing_trouble-opening_outside_seam = the opening ends { $end } along { $place }, which is only { $size } long.
sewing_trouble-opening_outside_seam_do = Move the opening up, or make it smaller.
sewing_trouble-opening_narrow = an allowance of { $depth } is too narrow to be turned under along the opening.
sewing_trouble-opening_narrow_do = Give the seam an allowance of at least { $least }.
sewing_trouble-cap_not_eased = the cap is { $ease } longer than the armhole, and no ease stitching draws it in yet.
sewing_trouble-cap_not_eased_do = Run it along the cap first: make.ease_stitch(sleeve.cap, fit=...).
sewing_trouble-place_outside_run = it is placed { $at } along { THE($place) }, which is only { $size } long.
sewing_trouble-place_outside_run_do = Measure from the start of the run.
sewing_trouble-strip_not_made = it is attached before it is made.
sewing_trouble-too_few_strips =
    { $count ->
        [one] { $count } is attached
       *[other] { $count } are attached
    }, but only { $cut } cut.
sewing_trouble-too_few_strips_do = Cut more, or attach fewer (name one side: front.left).
sewing_trouble-strip_made_twice = it has been made already.
sewing_trouble-strip_made_twice_do = Take one out.
sewing_trouble-strip_width = cut { $width } wide it comes out { $comes } wide, not { $finished_width }.
sewing_trouble-strip_width_do = Change the cut width or the finished width.
sewing_trouble-slant_long = a slant of { $slant } is more than half of its length of { $length }.
sewing_trouble-slant_long_do = Make the slant shorter.
sewing_trouble-edge_closed_already = { THE($place) } is closed already, so no seam can catch it there.
sewing_trouble-edge_closed_already_do = Attach it before that seam is sewn, or stitch it on.
sewing_trouble-strip_edge_raw = it is stitched onto { THE($place) } while that edge is still raw.
sewing_trouble-strip_edge_raw_do = Finish the edge first, or let the seam catch it.
sewing_trouble-end_outside_run = an end is placed { $at } along { THE($place) }, which is only { $size } long.
sewing_trouble-end_outside_run_do = Measure both places from the start of the run.
sewing_trouble-handle_twice = a strip is fixed at this place of { THE($place) } already.
sewing_trouble-handle_edge_raw = it is stitched onto { THE($place) } while that edge is still raw.
sewing_trouble-handle_edge_raw_do = Finish the edge first, or let a seam or hem catch it.
sewing_trouble-handle_edge_closed = { THE($place) } is closed already, so nothing can catch the ends there.
sewing_trouble-handle_edge_closed_do = Attach it before that edge is sewn or hemmed, or stitch it on.
sewing_trouble-trimmed_away = an allowance of { $to } frays out of its seam.
sewing_trouble-trimmed_away_do = Leave at least { $least }.
sewing_trouble-nothing_to_trim = the allowance of { THE($place) } is only { $width } wide, so trimming it to { $to } takes nothing off.
sewing_trouble-nothing_to_trim_do = Trim it narrower, or leave this out.
sewing_trouble-strip_seam_not_sewn = the seam of { THE($piece) } is not sewn yet, or is out of reach of the scissors.
sewing_trouble-strip_seam_not_sewn_do = Trim it between sewing and turning: make.turn_strip(..., rows="sew"), then this, then make.finish(...).
sewing_trouble-strip_nothing_to_trim = the allowance of { THE($piece) } is { $width } wide, so that nothing is left to cut off to { $to }.
sewing_trouble-strip_end_open = no seam runs across the ends of { THE($piece) }.
sewing_trouble-strip_end_open_do = Name its sides, or seam an end on a slant: make.turn_strip(..., slant=3 * cm).
sewing_trouble-one_layer_graded = { THE($place) } is sewn to no other edge, so there are no two allowances to grade.
sewing_trouble-one_layer_graded_do = Sew the seam first, or trim it: make.trim(...).
sewing_trouble-tacked_raw = { THE($place) } is tacked down while it is still raw.
sewing_trouble-tacked_raw_do = Finish it first.
sewing_trouble-tacked_to_no_seam = there is no seam along { THE($place) } yet to tack it to.
sewing_trouble-tacked_to_no_seam_do = Sew that seam first.
sewing_trouble-tacked_loose = { THE($piece) } is not sewn to the garment yet.
sewing_trouble-tacked_loose_do = Attach it first, then tack its edge down.
sewing_trouble-inside_out = { THE($piece) } is still inside out.
sewing_trouble-inside_out_do = Turn it first: make.turn_out(..., through=...).
sewing_trouble-right_side_out_already = { THE($piece) } is not inside out, so there is nothing to turn.
sewing_trouble-right_side_out_already_do = Sew it right sides together first, or take this out.
sewing_trouble-gap_narrow = a gap of { $size } is too narrow to turn the piece through.
sewing_trouble-gap_narrow_do = Leave at least { $least }; more in thick cloth.
sewing_trouble-gap_unequal = the two edges of the gap differ: { $one } and { $two }.
sewing_trouble-gap_unequal_do = Name the same part of both edges.
sewing_trouble-turned_gap_shut = it is to be turned through { THE($place) }, but that is sewn shut.
sewing_trouble-turned_gap_shut_do = Leave a gap in the seam, or turn it before that edge is closed.
sewing_trouble-zip_sides = the two sides of its opening differ: { $size } and { $other }.
sewing_trouble-zip_sides_do = Mark the opening at the same place on both edges.
sewing_trouble-seam_below_zip = { THE($place) } is not sewn beside the opening yet; a zip is set into a seam that ends at it.
sewing_trouble-seam_below_zip_do = Sew the seam up to the opening first.
sewing_trouble-slit_adrift = { THE($place) } begins on no edge of its piece, so it cannot be opened there.
sewing_trouble-slit_adrift_do = Draw the slit from the edge where it opens.
sewing_trouble-placket_late = { THE($place) } is closed already where the slit opens, so the slit can no longer be pulled straight.
sewing_trouble-placket_late_do = Sew the placket while that edge is still raw, before its gathers, cuff or hem.
sewing_trouble-placket_short = it is cut { $length } long, but both sides of the slit need { $needed }.
sewing_trouble-placket_short_do = Cut it longer.
sewing_trouble-placket_narrow = it is cut { $width } wide: folded over, it would not cover its own seam, which needs { $needed }.
sewing_trouble-placket_narrow_do = Cut it wider, or sew it with a narrower allowance.
sewing_trouble-tower_short = the tower reaches { $given } along the slit, and ends before the row that holds it.
sewing_trouble-tower_short_do = Cut it at least { $least } long inside its allowances, or make the slit shorter.
sewing_trouble-tower_narrow = the tower is { $given } wide when folded, too narrow to cover the end of the slit.
sewing_trouble-tower_narrow_do = It must be at least { $least } wide when folded: cut it wider, or the box narrower.
sewing_trouble-fly_facing_narrow = the fly facing is { $wide } wide: the curve { $lap } from the edge would hardly catch it.
sewing_trouble-fly_facing_narrow_do = Cut it at least { $least } wide inside its allowances, or stitch nearer to the edge.
sewing_trouble-fly_facing_length = { THE($place) } is { $length } long, and the opening { $opening }.
sewing_trouble-fly_facing_length_do = Cut it as long as the opening, or a little longer at its lower end: up to { $most }.
sewing_trouble-fly_shield_open = { THE($place) } is to be caught with the zip, but both its ends are still raw.
sewing_trouble-fly_shield_open_do = Sew the shield together at its lower end and turn it out first; afterwards its end cannot be reached.
sewing_trouble-seam_before_zip = { THE($place) } is sewn already beside the opening; an invisible zip is sewn to two flat pieces, and the seam beside it afterwards.
sewing_trouble-seam_before_zip_do = Set the zip in before the seam below it.
sewing_trouble-zip_late = { THE($edge) } is closed already, so the upper end of the zip can no longer be sewn in there.
sewing_trouble-zip_late_do = Set the zip in before the waistband, facing or hem that covers its end.
sewing_trouble-fold_sewn = { THE($edge) } lies on the fold, so there is no raw edge to sew.
sewing_trouble-fold_sewn_do = Name another edge, or cut the piece as a pair with a seam there.
sewing_trouble-band_inner_longer = { THE($place) } is { $amount } longer than the edge it is laid over.
sewing_trouble-band_inner_shorter = { THE($place) } is { $amount } shorter than the edge it is laid over.
sewing_trouble-band_inner_do = Draw both edges of the band alike.
sewing_trouble-band_inner_deeper = { THE($place) } lies { $amount } lower than the outer band: its fold hangs that far past the seam.
sewing_trouble-band_inner_shallower = { THE($place) } lies { $amount } higher than the outer band: its fold does not reach the seam.
sewing_trouble-band_inner_depth_do = Draw both pieces of the band equally deep; or write deeper=3 * mm where the fold is to reach past the seam.
sewing_trouble-worked_before_band = { THE($piece) } is not closed yet: only one layer lies at { THE($place) }.
sewing_trouble-worked_before_band_do = Close the band first: make.close_band(...).
sewing_trouble-worked_at_raw_edge = { THE($edge) } beside { THE($place) } is still raw: only one layer lies there yet.
sewing_trouble-worked_at_raw_edge_do = Finish that edge first (facing, band or hem).
sewing_trouble-worked_twice = { THE($place) } has been worked already.
# $wanted is what the first edge measures.
sewing_trouble-fits_longer = { THE($place) } gives { $wanted }, but the edge it is sewn to is { $amount } longer than that.
sewing_trouble-fits_shorter = { THE($place) } gives { $wanted }, but the edge it is sewn to is { $amount } shorter than that.
sewing_trouble-fits_longer_with_ease = { THE($place) } gives { $wanted }, but the edge it is sewn to is { $amount } longer than that with its ease.
sewing_trouble-fits_shorter_with_ease = { THE($place) } gives { $wanted }, but the edge it is sewn to is { $amount } shorter than that with its ease.
sewing_trouble-fits_do = Draw the two alike, gather the longer one to fit, or say the overlap and the ease.
# $fold is the name of a dart, pleat or tuck.
sewing_trouble-fold_twice = { THE($fold) } is sewn or folded already.
sewing_trouble-fold_late = { THE($fold) } opens on { THE($edge) }, which is closed already.
sewing_trouble-fold_late_do = Put it before the first seam, hem, facing or band there.
sewing_trouble-seam_not_gathered = { THE($place) } is { $share } longer than what it is sewn to: too much to ease in.
sewing_trouble-seam_not_gathered_do = Gather it first: make.gather(...). Where the shorter one stretches and is pulled to fit, say so: Lesson(..., stretch=0.6).
sewing_trouble-seam_not_eased = { THE($place) } is { $share } longer than what it is sewn to: too much to be pinned in by hand.
sewing_trouble-seam_not_eased_do = Run a row of ease stitching along it first: make.ease_stitch(...).
sewing_trouble-drawn_up_late = { THE($place) } is sewn already, so it cannot be drawn up any more.
sewing_trouble-drawn_up_late_do = Put it before the seam that takes up the fullness.
sewing_trouble-gathered_twice = { THE($place) } is gathered already.
sewing_trouble-eased_twice = { THE($place) } is eased already.
sewing_trouble-nothing_to_ease = { THE($place) } is { $full } long and to be eased to { $drawn }, which is not less.
sewing_trouble-nothing_to_ease_do = Check the two lengths.
sewing_trouble-too_much_to_ease = { THE($place) } is { $full } long and to be eased to { $drawn }: { $share } is too much to lie smooth.
sewing_trouble-too_much_to_ease_do = Gather it, or lay a dart or pleats in it.
sewing_trouble-sleeve_no_ring = { THE($place) } is no closed ring: its underarm seam is not sewn yet.
sewing_trouble-sleeve_no_ring_do = Sew the sleeve's underarm seam first, or sew the sleeve in flat with a plain seam.
sewing_trouble-armhole_no_ring = { THE($place) } is no closed ring: the shoulder or the side seam beside it is not sewn yet.
sewing_trouble-armhole_no_ring_do = Sew both first, or sew the sleeve in flat with a plain seam.
# Said of trimming, clipping, notching and grading an allowance.
sewing_trouble-cut_into_early = the allowance of { THE($place) } is cut before its seam is sewn.
sewing_trouble-cut_into_late = the allowance of { THE($place) } is shut in already, where no scissors reach it.
sewing_trouble-cut_into_late_do = Put it before that.
sewing_trouble-clip_first_late = { THE($place) } is sewn already; clipping it first can no longer help.
sewing_trouble-clip_first_late_do = Put it before the first seam there, or clip the sewn edge: make.clip(...).
sewing_trouble-clip_first_straight = { THE($place) } need not spread: there is no tight curve to follow.
sewing_trouble-clip_first_straight_do = Leave this out, or name the curve that a straight edge is to fit: fit=front.waist.
sewing_trouble-clip_first_loose = { THE($place) } is not staystitched; from the clips it would tear on.
sewing_trouble-clip_first_loose_do = Staystitch it first: make.staystitch(...).
sewing_trouble-clipped_outward_curve = { THE($place) } bends outward: turned, its clipped allowance would still lie in a heap.
sewing_trouble-clipped_outward_curve_do = Notch it instead: make.notch_curve(...).
sewing_trouble-notched_inward_curve = { THE($place) } bends inward: its allowance must spread when turned, and wedges cut away would leave gaps.
sewing_trouble-notched_inward_curve_do = Clip it instead: make.clip(...).
sewing_trouble-zip_length = the zip is { $length } long, but its opening { $opening }.
sewing_trouble-zip_long_do = Take a shorter zip or a longer opening.
sewing_trouble-zip_short_do = Take a longer zip or a shorter opening; no more than { $most } may be left at the top.
sewing_trouble-zip_ends_short = the zip is { $length } long: its slider would lie in the way of the last stitches.
sewing_trouble-zip_ends_short_do = Take a zip of at least { $least } for this opening of { $opening }; what is too long is cut off below.
sewing_trouble-fold_open = { THE($edge) } is closed while { THE($fold) } in it is still open.
# $call is what is written in the notebook, such as make.dart(front).
sewing_trouble-fold_open_do = Sew it first: { $call }.
sewing_trouble-not_pressed = { THE($edge) } is crossed before it is pressed.
sewing_trouble-not_pressed_do = Press that seam first: make.press(...), or say press=... where it is sewn.
sewing_trouble-half_sewn = { THE($edge) } is crossed before its last row is sewn.
sewing_trouble-half_sewn_do = Finish that seam first: make.finish(...).
sewing_trouble-not_left_there = { THE($place) } is gone on with before it is begun, or twice.
sewing_trouble-not_left_there_do = Sew its rows one after another, each once.
sewing_trouble-closed_twice_do = Take one of the two operations out, or name only the part that is still raw, as front.side.before(front.slit).
# $amount is a length, $step the title of a sewing step.
sewing_trouble-closed_twice_sewn = { $amount } of { THE($edge) } is already sewn.
sewing_trouble-closed_twice_sewn_by = { $amount } of { THE($edge) } is already sewn by '{ $step }'.
sewing_trouble-closed_twice_faced = { $amount } of { THE($edge) } is already faced.
sewing_trouble-closed_twice_faced_by = { $amount } of { THE($edge) } is already faced by '{ $step }'.
sewing_trouble-closed_twice_hemmed = { $amount } of { THE($edge) } is already hemmed.
sewing_trouble-closed_twice_hemmed_by = { $amount } of { THE($edge) } is already hemmed by '{ $step }'.
sewing_trouble-closed_twice_finished = { $amount } of { THE($edge) } is already finished.
sewing_trouble-closed_twice_finished_by = { $amount } of { THE($edge) } is already finished by '{ $step }'.
sewing_trouble-understitched_garment = { THE($place) } is the garment's side of the seam; understitching is a row on the facing and must not show outside.
sewing_trouble-understitched_garment_do = Name the facing's edges: make.understitch(front_facing.inner, ...).
sewing_trouble-understitched_wide = understitched { $distance } from the seam { THE($place) } catches no allowance, for these are { $wide } wide.
sewing_trouble-understitched_wide_do = Sew nearer to the seam, about 2 mm beside it.
sewing_trouble-button_on_hole = the button is sewn onto { $place }, which is worked as a buttonhole.
sewing_trouble-button_on_hole_do = Name the place of the button, on the layer below.
sewing_trouble-folded_otherwise = { $allowance } are pressed under along { THE($edge) }, where { $added } were added.
sewing_trouble-folded_otherwise_do = Press under what was added, or add what is pressed under.
sewing_trouble-pockets_and_places = { $number ->
    [one] one pocket is sewn on
   *[other] { $number } pockets are sewn on
} and { $places ->
    [one] one place is named.
   *[other] { $places } places are named.
}
sewing_trouble-pockets_and_places_do = Name a place for each pocket: a mark of a mirrored piece, without left or right, is one on each half.
sewing_trouble-loop_over_opening = it is stitched across an opening in { THE($place) } and closes it.
sewing_trouble-loop_over_opening_do = Place it beside the opening, or on the other side.
sewing_trouble-facing_apart = { $place } and { $other } are finished apart, before the facings are joined.
sewing_trouble-facing_apart_do = Joined first, the seam between them has its ends under the finish; it can stay as it is.
# Said of a try-on that changes values of cloth that is cut. $why says which draft cannot be drawn.
sewing_trouble-try_on_refused = one of its two drafts cannot be drawn: { $why }
sewing_trouble-try_on_refused_do = Change the values of the try-on, or those of the lesson.
sewing_trouble-tried_on_nothing = nothing of the draft changes at this try-on.
sewing_trouble-tried_on_nothing_do = Name the value that was changed with what it was before and after, or leave it out.
sewing_trouble-tried_on_elsewhere = nothing changes at this try-on: the lesson stands at other values than those it was made with.
sewing_trouble-tried_on_elsewhere_do = Set the value to the one before or after it to see what was changed.
# Where along an edge: $edge is the edge it meets there.
sewing_trouble-spot_at = at { THE($edge) }
sewing_trouble-spot_from = { $far } from { THE($edge) }
sewing_trouble-cloth_beyond = the new stitch line of { THE($edge) } lies { $amount } beyond the edge of the cloth, { $spot }.
sewing_trouble-cloth_beyond_do = Cut this edge with extra cloth to fit with, allow_to_fit(...), let it out less, or cut the piece anew.
sewing_trouble-cloth_narrow = only { $left } of cloth is left outside the new stitch line of { THE($edge) }, { $spot }; its seam takes { $need }.
sewing_trouble-cloth_narrow_do = Cut this edge with extra cloth to fit with, allow_to_fit(...), or let it out less.
sewing_trouble-cloth_narrow_plain = only { $left } of { THE($need) } of allowance is left outside the new stitch line of { THE($edge) }, { $spot }.
sewing_trouble-cloth_narrow_plain_do = A plain seam can be sewn with it; finish its edges before they fray.
sewing_trouble-strip_cut_short = { THE($strip) } is cut { $amount } too small for what it is to be from now on.
sewing_trouble-strip_cut_short_do = Cut it larger at first, or anew.
sewing_trouble-old_row_left_in = the row along { THE($edge) } is left in place, up to { $amount } outside the new line.
sewing_trouble-old_row_left_out = the row along { THE($edge) } is left in place, up to { $amount } inside the new line, where it shows and pulls.
sewing_trouble-old_row_left_do = Take this edge out of leave=..., so that the row is unpicked.
sewing_trouble-no_extra_to_trim = { THE($place) } has no extra cloth to fit with.
sewing_trouble-no_extra_to_trim_do = Give it some in a drafting step, allow_to_fit(...), or leave it out here.
sewing_trouble-trimmed_to_fit_twice = the extra cloth of { THE($place) } is trimmed already.
sewing_trouble-trimmed_to_fit_late = the extra cloth of { THE($place) } is shut in or turned under already, where no scissors reach it.
sewing_trouble-trimmed_to_fit_late_do = Trim it before that.
sewing_trouble-part_of_edge = { $place } is a part, and this is sewn along the whole edge.
sewing_trouble-part_of_edge_do = Name the whole edge.
