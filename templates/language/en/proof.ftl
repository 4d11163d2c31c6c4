# Findings of the proof: what is wrong, and what to do (keys that end in _do). The place stands before it, so that "it" is
# the piece or strip named there. Names of pieces, edges, darts and marks are the lesson's own; lengths come with their
# units. What is written in the notebook, such as make.press(...) or ease=..., stays as it is.

# ---- where ----
proof-at = { $where }: { $what }
proof-where_step = { $piece }, step '{ $step }'
proof-where_step_alone = step '{ $step }'
# $piece is the piece's title as given, $edge an edge of it.
proof-where_edge = { $piece }, { $edge }, step '{ $step }'
proof-where_start = Start
proof-where_notions = Notions

# ---- pieces ----
proof-crosses_itself_above = { THE($edge) } crosses itself, { $across } from the draft's upright line and { $along } above its level line.
proof-crosses_itself_below = { THE($edge) } crosses itself, { $across } from the draft's upright line and { $along } below its level line.
proof-crosses_another_above = { THE($edge) } crosses { THE($other) }, { $across } from the draft's upright line and { $along } above its level line.
proof-crosses_another_below = { THE($edge) } crosses { THE($other) }, { $across } from the draft's upright line and { $along } below its level line.
proof-crosses_do = Move the measure you changed last back towards its old value, or redraw one of the two.
proof-no_allowance = { THE($edge) } has no allowance.
proof-no_allowance_do = Declare one on the pattern, 0 where it is cut on the line.
proof-no_grainline = it has no grainline.
proof-no_grainline_do = Draw one, so that it can be laid straight on the cloth.
proof-no_fold_edge = it is cut on the fold of '{ $edge }', but has no such edge.
proof-no_fold_edge_do = Name the edge that lies on the fold.
proof-fold_not_straight = { THE($edge) } lies on the fold but is not straight.
proof-fold_not_straight_do = Rule it straight, or cut the piece as a pair.

# ---- darts and pleats ----
proof-dart_spared = this figure needs no dart here.
proof-dart_spared_do = Whatever a step does with one is passed over.
proof-dart_again_do = Draw the dart again.
proof-dart_legs = the legs of { THE($dart) } are { $one } and { $other } long, so it does not close.
proof-dart_legs_do = Move its point or a leg until both are equally long.
proof-slit_adrift = { THE($slit) } begins on no edge of the piece.
proof-slit_adrift_do = Draw it from the edge where it opens.
proof-slit_long = { THE($slit) } leaves { $room } of cloth beyond its end.
proof-slit_long_do = Make it shorter, so that at least { $least } remain.
proof-slit_raw = { THE($slit) } is cut open, but nothing finishes its sides.
proof-slit_raw_do = Sew a placket: { $call }.
proof-double_dart_legs_do = Put its widest place on the line from point to point, or move a point, until both legs are equally long.
proof-double_dart_edge = { THE($dart) } runs into { THE($edge) }: it has no point there.
proof-double_dart_edge_do = Shorten it until it runs out inside the piece, or draw a dart that opens on that edge.
proof-double_dart_sharp = { THE($dart) } takes up { $intake } within { $length }: at its point the cloth would stand up in a bubble.
proof-double_dart_sharp_do = Make it longer or narrower, or take the cloth up in two darts.
proof-double_darts_cross = { THE($dart) } and { THE($other) } cross.
proof-double_darts_cross_do = Move one of them aside.
proof-dart_point_outside = the point of { THE($dart) } lies outside the piece.
proof-dart_point_outside_do = Put the point inside.
proof-dart_not_true = { THE($edge) } bends by { $degrees } degrees where { THE($dart) } is folded shut.
proof-dart_not_true_do = Redraw the edge smooth across the closed dart.
# $fold is the name of a dart, pleat or tuck.
proof-no_cap = { THE($fold) } has no cap: folded, it would miss the edge by { $amount }.
# $call is what is written in the notebook.
proof-no_cap_do = True it: { $call }.
proof-pleat_off_edge = { THE($fold) } does not lie on its edge: it runs from { $start } to { $end } along '{ $edge }'.
proof-pleat_off_edge_do = Put it on the edge, or draw it again after changing the edge.
proof-pleat_lines = the two lines of { THE($fold) } are { $one } and { $other } long, so they do not lie on each other.
proof-pleat_lines_do = Draw it again from edge to edge, or move an end until both are equally long.
proof-pleat_moved = the lines of { THE($fold) } start { $amount } away from its place on { THE($edge) }.
proof-pleat_moved_do = Draw the pleat again: the edge was changed after it.
proof-pleats_overlap = { THE($fold) } and { THE($other) } take up the same { $amount } of { THE($edge) }.
proof-pleats_overlap_do = Move them apart or make one shallower.
proof-pleat_not_true = { THE($edge) } bends by { $degrees } degrees where { THE($fold) } is folded.
proof-pleat_not_true_do = Redraw the edge smooth across the folded pleat.
proof-never_folded = { THE($fold) } is never folded.
proof-never_sewn = { THE($fold) } is never sewn.
proof-never_folded_do = Sew it: { $call }.

# ---- edges and allowances ----
proof-edge_never_sewn = { THE($edge) } is never sewn, faced or hemmed ({ $length }).
# $part is what is left raw of the whole $length.
proof-edge_left_raw = { THE($edge) } is left raw { $stretch }, { $part } of { $length }.
proof-raw_edge_do = Add the seam, facing or hem that closes it, or finish it with make.edge_finish(..., leave=True).
proof-ends_of_ring_caught = the ends of the strip are to be caught in a later seam, but by now { THE($place) } is part of one closed ring: no seam crosses it any more.
proof-ends_of_ring_caught_do = Write ends="ring", so that its ends are joined, or leave ends= out.
proof-ends_not_caught = the ends of the strip are to be caught in a later seam, but none is sewn along { THE($place) } after this step.
proof-ends_not_caught_do = Sew that seam later than this, or write ends="turned", so that the ends are turned in.
proof-allowance_too_wide = the pattern gives { THE($edge) } { $given }, but the sewing takes { $taken }: { $amount } too much.
proof-allowance_too_narrow = the pattern gives { THE($edge) } { $given }, but the sewing takes { $taken }: { $amount } too little.
proof-allowance_do = Change the allowance on the pattern, or the widths in the sewing step.

# ---- what is cut and used ----
proof-interfacing_piece_unused = it is cut for { THE($piece) }, but never fused.
proof-interfacing_piece_unused_do = Add the fusing as the first step of that piece, or take it off the pattern.
proof-piece_unused = it is cut, but no sewing step uses it.
proof-piece_unused_do = Sew it, or take it off the pattern.
proof-interfacing_unused = interfacing is cut for it, but never fused.
proof-interfacing_unused_do = Add the fusing as the first step of this piece, or cut no interfacing.
proof-interfacing_count =
    { $cloth ->
        [one] { $cloth } is cut of cloth
       *[other] { $cloth } are cut of cloth
    }, but { $interfacing } of interfacing.
proof-interfacing_count_do = Cut interfacing for each: { $call }.
proof-strip_never_made = it is cut, but never made.
proof-strip_never_attached = it is cut, but never attached.
proof-strip_too_few = it is cut, but only { $count } of { $cut } attached.
proof-strip_unused_do = Make and attach it, or take it off the cutting list.
# $pieces is a list such as "the front and the back", $count how many pieces it names.
proof-loose_piece =
    { $count ->
        [one] { $pieces } is never joined to the rest.
       *[other] { $pieces } are never joined to the rest.
    }
proof-loose_piece_do = Add the seam that is missing.

# ---- seams ----
# $longer and $shorter are pieces with their edges ("front side").
proof-seam_length = { THE($longer) } is { $amount } longer than { THE($shorter) } it is sewn to, measured along the stitch line.
proof-seam_length_do = Make the two equal on the draft, or say in the seam that one is eased: ease=...
proof-facing_length_do = Draw the facing from the garment's own edge.
proof-ease_amount = the seam says it is eased by { $ease }, but its edges differ by { $amount }.
proof-ease_amount_do = Change the ease or the draft so that they agree.
proof-notch_alone = the notch { $at } along { THE($run) } is sewn to { THE($other) } and has no partner there.
proof-notch_misses = the notch { $at } along { THE($run) } is sewn to { THE($other) } and misses its partner there by { $amount }.
proof-notch_do = Put both notches at the same distance along the seam.
# $left and $right are where the opening that sewing leaves begins and ends.
proof-opening_moved = { THE($mark) } is marked from { $start } to { $end } along { THE($edge) }, but sewing leaves { $left } to { $right } open.
proof-opening_moved_do = Mark both sides of the seam at the same place.
proof-opening_sewn_shut = { THE($mark) } is marked on it, but no seam leaves it open.
proof-opening_sewn_shut_do = Name the mark in the seam that runs over it: opening=..., or gap=... where it is only for turning.
proof-no_sewing = the lesson has no sewing steps, so seams and raw edges are not proved.
proof-no_sewing_do = Add the sewing steps.

# ---- corners ----
proof-corner_facing = at the end of { THE($edge) } of { THE($piece) } the corner to { THE($beside) } measures { $degrees } degrees, that of { THE($facing) } it is turned onto { $facing_degrees }: the two will not lie on one another.
proof-corner_facing_do = Draw the facing from the garment's own edges.
proof-corner_point = where { THE($edge) } of { THE($piece) } meets { THE($other_edge) } of { THE($other_piece) } at the end of this seam, the line bends by { $degrees } degrees: it comes to a point.
proof-corner_dip = where { THE($edge) } of { THE($piece) } meets { THE($other_edge) } of { THE($other_piece) } at the end of this seam, the line bends by { $degrees } degrees: it dips in.
proof-corner_point_halves = where { THE($edge) } of { THE($piece) } meets that of the other half at the end of this seam, the line bends by { $degrees } degrees: it comes to a point.
proof-corner_dip_halves = where { THE($edge) } of { THE($piece) } meets that of the other half at the end of this seam, the line bends by { $degrees } degrees: it dips in.
proof-corner_do = True the two edges: lay the seam together and draw the line across it smooth; or declare the corner where it is meant to be one.

# ---- hems, facings and allowances folded back ----
# $depth: how deep it is turned; $surplus: over the whole edge; $sharp: within $window where it is worst, $at along the edge.
proof-fold_longer = turned { $depth } deep, { THE($edge) } is { $surplus } longer at its turned edge than the line it lies on; it is worst { $at } along, { $sharp } within { $window } ({ $share }, and cloth eases about { $eases }).
proof-fold_longer_by_far = turned { $depth } deep, { THE($edge) } is { $surplus } longer at its turned edge than the line it lies on; it is worst { $at } along, { $sharp } within { $window } (more than { $share }, and cloth eases about { $eases }).
proof-fold_shorter = turned { $depth } deep, { THE($edge) } is { $surplus } shorter at its turned edge than the line it lies on; it is worst { $at } along, { $sharp } within { $window } ({ $share }, and cloth eases about { $eases }).
proof-fold_longer_there = turned { $depth } deep, { THE($edge) } is { $sharp } longer within { $window } at its turned edge than the line it lies on, { $at } along ({ $share }, and cloth eases about { $eases }).
proof-fold_shorter_there = turned { $depth } deep, { THE($edge) } is { $sharp } shorter within { $window } at its turned edge than the line it lies on, { $at } along ({ $share }, and cloth eases about { $eases }).
# One of these four follows as a sentence of its own.
proof-fold_can_be_eased = Over its whole length it can be eased in, not there alone.
proof-fold_can_be_drawn_out = Over its whole length it can be drawn out, not there alone.
proof-fold_in_pleats = It will lie in pleats.
proof-fold_pulls = It will pull.
proof-fold_clip_do = Clip the curve: clip=True.
proof-fold_shallower_do = Turn it no deeper than { $depth }, or face the edge.
proof-fold_ease_do = Draw it in with an ease stitch along the hem, or turn it no deeper than { $depth }.
proof-fold_face_do = Face or bind the edge: no turned hem lies flat there.
proof-end_angle = { THE($edge) } is curved, and the end of its allowance at { THE($beside) } lies { $degrees } degrees beside the mirror image of that edge.
proof-hem_end_angle_do = Let the end of the hem mirror the edge it meets, or square the hem to it.
proof-seam_end_angle_do = Let the end of the allowance mirror the edge it meets.
proof-hem_beside_fold = { THE($edge) } does not meet the fold at a right angle: turned, its allowance lies { $amount } beside the fold.
proof-seam_beside_fold = { THE($edge) } does not meet the fold at a right angle: folded back, its allowance lies { $amount } beside the fold.
proof-beside_fold_do = Draw the last stretch of the hem square to the fold, or declare the corner if a point is meant.
proof-hem_end_beyond = turned, the end of { THE($edge) } sticks out beyond the cut edge of { THE($beside) } by { $amount }.
proof-hem_end_short = turned, the end of { THE($edge) } falls short of the cut edge of { THE($beside) } by { $amount }.
proof-seam_end_beyond = folded back, the end of { THE($edge) } sticks out beyond the cut edge of { THE($beside) } by { $amount }.
proof-seam_end_short = folded back, the end of { THE($edge) } falls short of the cut edge of { THE($beside) } by { $amount }.
# "turned" is what is written in the notebook.
proof-end_do = Let its end mirror { THE($beside) }: leave the corner to the sewing order or say "turned"; where the angle is too sharp for that, make the allowance narrower or face the edge.

# ---- what was begun and never finished ----
proof-never_pressed = the seam along { THE($edge) } was left to be pressed later and never is.
proof-never_pressed_do = Add { $call }.
proof-never_finished = { THE($place) } is begun and never finished: some of its rows are still to be sewn.
proof-never_finished_do = Write { $call } in this step, after it is begun, or in a later one.
# $place is an edge or a mark.
proof-never_turned_out = it is sewn to be turned right side out and never is.
proof-never_turned_out_do = Add make.turn_out(...).
proof-never_band_closed = the band set on along { THE($place) } is never closed over the seam.
proof-never_band_closed_do = Add make.close_band(...).
proof-never_buttoned = { THE($place) } has no button to go through it.
proof-never_buttoned_do = Add make.buttons(..., holes=...). A tie passes through an opening left in a seam: front.leave_open(...).
proof-never_eyelet_used = no cord comes out at { THE($place) }.
proof-never_eyelet_used_do = Thread a cord: make.thread_cord(...).
proof-never_threaded = the casing at { THE($place) } stays empty.
proof-never_threaded_do = Thread elastic or a cord through it.
proof-never_row_gap_closed = the gap left in the channel at { THE($place) } is never closed.
proof-never_row_gap_closed_do = Name it where elastic or a cord is drawn in: gap=....
proof-never_bag_closed = the bag of its pocket is never closed.
proof-never_bag_closed_do = Sew the two bags together.
proof-never_pocket_edge_sewn = { THE($place) } is pressed under and never sewn down.
proof-never_pocket_edge_sewn_do = Sew the pocket on: make.patch_pocket(...).
proof-never_basting_out = the basting along { THE($place) } is never taken out.
proof-never_basting_out_do = Add make.remove_basting(...).
proof-never_used = what { THE($place) } was prepared for is never done.
proof-never_used_do = Finish it.

# ---- the lesson's words and its list of notions ----
# $name stands in braces, as in the lesson.
proof-placeholder = the text names { $name }, which the step does not know.
proof-placeholder_near = Did you mean '{ $name }'?
proof-placeholder_known = Known here: { $names }.
proof-placeholder_none = There are none here yet.
proof-notion_missing = the sewing needs { $need }, which the list of notions does not name.
proof-notion_missing_do = Add { $need } to the lesson's notions.
proof-notion_braces = the list of notions says '{ $notion }', and nothing is filled in between its braces: it is printed as it is typed.
proof-notion_braces_do = Write the number out, or leave it away: the sewing step tells how much is cut.
proof-notion_spare = the list of notions names '{ $notion }', but no sewing step uses it.
proof-notion_spare_do = Take it off the list, or add the step that needs it.
proof-notion_count = the sewing uses { $need }: { $wanted }, and the list of notions has { $listed }.
proof-notion_count_do = Write { $wanted } { $need } on the list.
proof-notion_length = the sewing takes { $wanted } of { $need }, and the list of notions has { $listed }.
proof-notion_length_do = Write { $wanted } on the list, or change what the sewing takes.

# What the sewing needs, within a sentence.
proof-need_thread = thread
proof-need_interfacing = interfacing
proof-need_sewn_in_interfacing = sewn in interfacing
proof-need_zip = zip
proof-need_invisible_zip = invisible zip
proof-need_buttons = buttons
proof-need_snaps = snaps
proof-need_hooks = hooks
proof-need_eyelets = eyelets
proof-need_elastic = elastic
proof-need_cord = cord
proof-need_bias_binding = bias binding
proof-need_hem_tape = hem tape

# By which words or parts of words a lesson's list of notions is taken to name them (separated by |, in small letters).
proof-listed_thread = thread
proof-listed_interfacing = interfacing
proof-listed_sewn_in_interfacing = interfacing
proof-listed_zip = zip
proof-listed_invisible_zip = invisible zip | concealed zip
proof-listed_buttons = button
proof-listed_snaps = snap
proof-listed_hooks = hook
proof-listed_eyelets = eyelet
proof-listed_elastic = elastic
proof-listed_cord = cord
proof-listed_bias_binding = bias binding
proof-listed_hem_tape = hem tape
proof-halves_crossed = { THE($edge) } is sewn to { THE($other) } of { THE($piece) }: one of the two then lies wrong side out.
proof-halves_crossed_do = Sew left to left and right to right.
proof-band_way = in the order in which the edges are named { THE($end) } of { THE($piece) } lies at { THE($place) }; drawn as it is, printed side up on the right side of the cloth, it comes to lie at { THE($other) }.
proof-band_way_do = Name the edges in the other order, or draw the piece with this end at its other side.

# ---- cloth to fit with, and drafts that a try-on changes ----
# $amount is how much wider the edge is cut than it is sewn; $call is written in the notebook.
proof-extra_left = { THE($edge) } is cut { $amount } wider to fit with, and this is never trimmed.
proof-extra_left_do = Trim it once the fit is right: { $call }.
proof-extra_sewn = { THE($edge) } is sewn while its { $amount } of extra cloth are still there: measured from the raw edge, the row lies that much too far out.
proof-extra_sewn_do = For the fitting baste on the stitch line, make.baste(..., distance=0 * mm); trim before the seam: { $call }.
# $what is another finding.
proof-in_draft_first = in the draft that is cut at first, { $what }
proof-in_draft_corrected = in the corrected draft, { $what }
proof-raw_inside = { THE($edges) } is left raw inside and may fray in the wash.
proof-raw_inside_do = Cloth that does not fray can stay so. Else overcast or bind the edges, or sew an enclosed seam.
