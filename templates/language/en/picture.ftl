# What is written in pictures (labels, legends, figures) and in their alternative texts. Labels stand in narrow rooms:
# keep them short. Titles of pieces and names of edges and points are the lesson's own words.

# ---- how a piece is cut: on the piece, in the booklet's cut list, in alternative texts

picture-cut =
    { $how ->
        [fold] cut { $count } on the fold, { $cloth }
        [mirrored] cut { $count } mirrored, { $cloth }
        [single] cut { $count } single, right side up, { $cloth }
       *[plain] cut { $count }, { $cloth }
    }
picture-cut_interfacing = interfacing: cut { $count }
picture-cloth_main = main cloth
picture-cloth_interfacing = interfacing
picture-cloth_lining = lining

# ---- what else is written on a piece

picture-edition = edition { $edition }
picture-place_on_fold = place on fold
picture-one_way = one way
picture-one_way_top = one way: arrow to the top
picture-nap_one_way = one-way cloth: arrow to the top
picture-nap_print = one-way cloth: match the print
picture-grain_crosswise = crosswise grain
picture-grain_bias = bias grain

# ---- alternative text of a piece. $cut is the message picture-cut

picture-piece = Pattern piece { $number }, { $title }: { $cut }.
picture-piece_edges = Edges: { $edges }.
picture-edge_on_fold = { $edge } on the fold
picture-edge_allowance = { $edge } with { $allowance } allowance
picture-piece_marks = Marks: { $marks }.
# A mark that is for one half of a pair alone: $half is one of the two messages after it; as written on the piece.
picture-mark_on_one = { $mark }: { $half }
picture-one_of_pair = { $side } { $piece } only
picture-one_half =
    { $side ->
        [left] left half only
       *[right] right half only
    }
picture-piece_darts = Darts: { $darts }.
picture-piece_pleats = Pleats and tucks: { $pleats }.
# A dart or pleat and how much of the edge it takes up.
picture-taking = { $name } taking { $intake }
picture-laid_crosswise = Laid on the crosswise grain.
picture-laid_bias = Laid on the bias grain.
picture-for_one_way = For one-way cloth: arrow to the top.
picture-for_print = For one-way cloth: match the print.

# ---- pictures of drafting steps

# A traced piece lying on another one: its title, and which edge of it is named.
picture-traced_edge = { $piece }: { $edge } edge
picture-strip_cut = { $strip }, cut { $count }
# A named measure and its value, beside a dimension line.
picture-measure = { $name } { $value }
# A measure that is the allowance of an edge, by the name of the edge.
picture-allowance_of = { $edge } allowance
picture-step_title = { $title }.
picture-step_pieces = Pieces: { $pieces }.
picture-step_new = New, drawn heavy: { $lines }.
picture-step_points = New points: { $points }.
picture-step_measures = Measures: { $measures }.
picture-step_marked = Marked: { $marks }.
picture-step_cut_line = The cut line is drawn around: { $pieces }.
picture-step_removed = Taken away, shown dashed: { $lines }.
picture-step_strip = { $strip }: strip { $length } by { $width }.
picture-lettered_point = { $letter }, { $point }
picture-enlarged = enlarged { $times } times
picture-step_order = In the order of the hand on { THE($piece) }: { $moves }.
picture-step_squares = Square sign: { $places }.
picture-step_tangents = Runs in without a corner: { $places }.
picture-step_diagonals = The diagonals are drawn and marked as equal.
picture-step_enlarged_too = Enlarged beside it: { $measures }.
picture-hand_mark = measure to a point
picture-hand_across = square across
picture-hand_rule = rule { $line }
picture-hand_curve = draw { $line }
picture-hand_parallel = draw the parallel { $line }
picture-hand_trace = trace { $piece }
picture-hand_mirror = mirror
picture-sign_on = { $line } to { $other }
picture-hand_point = mark { $point }
# A line or mark and its piece, both by their plain names.
picture-line_on = { $line } on { THE($piece) }
picture-notch_on =
    { $kind ->
        [double] a double notch on { THE($edge) } of { THE($piece) }
       *[single] a single notch on { THE($edge) } of { THE($piece) }
    }
picture-draft = The draft of { $title } for { $body }: { $pieces }.
picture-draft_piece = { $piece }, { $width } by { $height }

# ---- sewing pictures

# The name of a layer where it shows; the letters stand on the layer.
picture-layer_face =
    { $face ->
        [right] { $piece }: right side
        [wrong] { $piece }: wrong side
       *[interfacing] { $piece }: interfacing
    }
picture-half =
    { $side ->
        [left] { $piece }, left
        [right] { $piece }, right
       *[both] { $piece }
    }
picture-section = cross-section
picture-strip_as_cut = { $strip }, as cut
picture-strip_laid = right sides together, stitched
picture-strip_opened = opened out
picture-strip_folded = folded and stitched
picture-strip_sewn = seamed, the wrong side out
picture-strip_hemmed = hemmed
picture-strip_turned = turned and pressed
picture-turn_over = turn over
picture-floor = floor
picture-scene_layers = From the bottom up: { $layers }.
# One layer: $piece is picture-half, $lies picture-lies_...
picture-scene_layer =
    { $face ->
        [right] { $piece }, right side up, { $lies }
        [wrong] { $piece }, wrong side up, { $lies }
       *[interfacing] { $piece }, interfacing, { $lies }
    }
picture-lies_together = laid on it so that the edges meet
picture-lies_open = opened out beside it
picture-lies_flat = laid flat
picture-scene_rows = Stitched along: { $runs }.
picture-scene_run =
    { $side ->
        [left] { $piece } left { $edges }
        [right] { $piece } right { $edges }
       *[both] { $piece } { $edges }
    }
picture-scene_strip = Strip: { $strip }.
picture-scene_empty = Sewing picture.

# ---- the garment laid flat

picture-on_body_worn = { $title } as it is worn ({ $body }), seen from the front and the back.
picture-on_body_hand = { $title }, carried in the hand, seen from the front and the back.
picture-on_body_shoulder = { $title }, carried over the shoulder, seen from the front and the back.
picture-on_body_head = { $title } on the head, seen from the front and the back.
picture-flat_front = { $title } laid flat, seen from the front: { $pieces }.
picture-flat_back = { $title } laid flat, seen from the back: { $pieces }.
picture-flat_finished = Its finished measurements: { $sizes }.
picture-flat_with = With { $pieces }.
picture-flat_beside = Beside it: { $pieces }.
picture-flat_left_out = Not shown: { $pieces }.

# ---- the legend

picture-legend_right_side = right side
picture-legend_wrong_side = wrong side
picture-legend_interfacing = interfacing
picture-legend_facing = facing
picture-legend_strip = strip
picture-legend_lining = lining
picture-legend_cut = cut line
picture-legend_stitch = stitch line
picture-legend_fold = fold
picture-legend_mark = marking
picture-legend_lengthen = lengthen or shorten here
picture-legend_placement = piece laid on here
picture-legend_pleat = pleat or tuck line
picture-legend_new = new in this step
picture-legend_traced = traced
picture-legend_aid = ruled on the way
picture-legend_check = must be equal or run through
picture-legend_removed = taken away
picture-legend_guide = guide line
picture-legend_row = stitching of this step
picture-legend_row_sign = start, direction and end of a row
picture-legend_crease = folded edge
picture-legend_baste = basting or gathering
picture-legend_hand = hand stitches
picture-legend_old_row = stitching done before
picture-legend_hidden = lies underneath
picture-legend_press = press this way
picture-legend_grain = grainline
picture-legend_notch = notches
picture-legend_kept = from an earlier step
picture-legend_lens = enlarged beside it
picture-legend_sign_square = square corner
picture-legend_sign_tangent = runs on without a corner
picture-legend_pin = pinned here
picture-legend_point_new = new point
picture-legend_point_kept = point from before
picture-legend_ply = cloth, cut through
picture-legend_ply_face = right side of the cloth, cut through
picture-legend_cut_mark = cross-section taken here, seen this way
picture-legend_needle = stitching, cut through

# ---- the measuring figure

picture-figure_title_front = Where to measure, front
picture-figure_title_back = Where to measure, back
picture-figure_front = A standing figure seen from the front, with a numbered tape for each measurement: { $tapes }.
picture-figure_back = A standing figure seen from the back, with a numbered tape for each measurement: { $tapes }.
picture-figure_none = none

# ---- walked seams: one edge rolled along the other, place by place

picture-walk_title = { START(THE($rolled)) } of { THE($rolled_piece) } walked along { THE($still) } of { THE($still_piece) }
picture-walk_title_sentence = { $title }.
picture-walk_numbered = { $number }: { $place }.
# A place on both edges: what it is, how far along, and picture-walk_equal or picture-walk_longer.
picture-walk_place = { $place } at { $at }: { $difference }
picture-walk_place_alone = { $place } at { $at } on { THE($piece) } only
picture-walk_notch_alone = { $place } at { $at } on { THE($piece) } only, without a partner
picture-walk_equal = equal
picture-walk_longer = { $piece } { $by } longer
picture-walk_all = In all { $first } and { $second }: { $difference }.
picture-walk_all_eased = In all { $first } and { $second }: { $difference }, which is eased in.
picture-walk_heads = left: { $first }; right: { $second }
picture-walk_start = start
picture-walk_end = end: { $difference }

# ---- the place of a finding

picture-corner_title = Where the corner is not true
picture-corner_bends = bends by { $degrees }°
picture-corner_differs = corners differ by { $degrees }°
picture-angle = { $degrees }°
# An edge and its piece, beside the edge.
picture-corner_edge = { $edge }, { $piece }

# ---- a traced outline

picture-outline = Outline { $outline } with { $corners } corners, numbered clockwise from the lowest left one

# Cloth that is cut, after a try-on. $piece is the title of a piece, $size a length.
picture-recut = { $piece }: old and new stitch line
picture-tried_on_alt = The garment as sewn so far, seen from the front and the back.
picture-tried_on_level = Pins stand along its hem all round, at one height above the floor.
picture-recut_alt = { $piece } as it was cut, its wrong side up: the old stitch line thin and dashed, the new one heavy, with the distances between them; what is trimmed off is hatched.
picture-recut_left = { $size } left
picture-recut_lack = { $size } lacking

# Extra cloth to fit with, beside the allowance: on the printed edge ($width is the whole), in the alternative text, and
# as the name of a measure.
picture-with_extra = { $width }, includes { $extra } to fit with
picture-edge_allowance_extra = { $edge } with { $allowance } allowance and { $extra } to fit with
picture-extra_of = { $edge } extra to fit with
# Extra cloth that is trimmed off, once the fit is right.
picture-trim_extra = { $piece }: trimming the extra cloth
picture-trim_extra_alt = { $piece } as it was cut, its wrong side up: the extra cloth to trim off is hatched, the stitch line dashed.

# ---- lengthen and shorten lines

picture-lengthen_here = lengthen or shorten here
picture-piece_lengthen =
 { $count ->
    [one] One lengthen or shorten line across it.
   *[other] { $count } lengthen or shorten lines across it.
 }
