# The booklet: its headings, tables and standing words.

# { $title } is the lesson's title.
booklet-title = { $title } – instruction booklet
booklet-kind = Instruction booklet
booklet-cover = Cover
booklet-contents = In this booklet
booklet-about = About this design
booklet-begin = Before you begin
booklet-take_care = Take care
booklet-how_to_read = How to read the pictures
booklet-measure = How to measure
booklet-sizes = Choose your size
booklet-finished = Finished measurements
booklet-cloth_and_notions = Cloth and notions
booklet-lays = Cutting layouts
booklet-pieces = Pieces
booklet-printing = Printing and taping the pattern
booklet-drafting = Drafting
booklet-sewing = Sewing
booklet-to_finish = To finish
booklet-worksheet = Worksheet for drafting by hand
booklet-fitting = What the fittings changed
booklet-variations = Variations
booklet-terms = Words used here
booklet-index = Where each measure is used
booklet-left_out = Left out

# A numbered step of the drafting or sewing, in the index of measures. In print ", page 9" may follow.
booklet-see_step = step { $number }
# The same within a sentence of the lesson, "marked in step 9": the lesson's words before it hold the article where the
# language has one ("en el paso 9", "al paso 9", "à l’étape 9").
booklet-in_step = step { $number }
# Follows a reference in print: the page number is set right after it. Keep the space at the end by the two characters {" "}.
booklet-comma_page = , page{" "}
booklet-stage = { $number } of { $count }
booklet-rest_pictured = the rest as pictured before
booklet-video_at = Video at { $clock }
booklet-video = The film that goes with this booklet: { $address }

## Cover

booklet-drafted_for = Drafted for
booklet-lengths_in = Lengths in
booklet-cm_first = centimetres, then inches
booklet-inch_first = inches, then centimetres
booklet-cm_only = centimetres
booklet-inch_only = inches
booklet-edition = Edition
booklet-for_whom = For whom
booklet-front_view = Front
booklet-proof_failed = Proof failed
booklet-do_not_cut = Do not cut from this pattern. The proof found:
booklet-more_findings =
    { $count ->
        [one] And one more: see findings.json.
       *[other] And { $count } more: see findings.json.
    }

## Before you begin

booklet-how_to_use = Read a whole step before you draw or cut. Draft on paper first, try the garment on in cheap cloth, and only then cut the good one.
booklet-how_to_use_pages = You can draft the pattern yourself, step by step, or print the pattern pages and begin with the sewing.
booklet-reading_inks = Heavy lines in the accent ink are new in that step; thin grey lines stand from before; dashed pale lines are taken away.
booklet-reading_units = Lengths come in both systems. Work in one of them from beginning to end.
# The system the author thinks in, where the booklet is read in the other.
booklet-reading_own_cm = This lesson is drafted in centimetres; its inches are converted, and rounded to the marks of a ruler.
booklet-reading_own_inch = This lesson is drafted in inches; its centimetres are converted, and rounded to the marks of a ruler.
booklet-reading_cloths = Cloth is drawn with a tint and a pattern, as in the key below.
booklet-reading_ticks = Tick a step when it is done; this device remembers it.

## Measuring

booklet-measure_intro = Measure over underwear or a thin top. Stand as you always stand, breathe easily, and let somebody else hold the tape if you can: close to the body, never tight.
booklet-measure_waist = Tie a narrow tape around the waist first; several measures start or end at it.

## Sizes and measurements

booklet-size = Size
booklet-body_measurements = Body measurements
booklet-cm_above = Centimetres above, inches below.
booklet-inch_above = Inches above, centimetres below.
booklet-cm_alone = All in centimetres.
booklet-inch_alone = All in inches.
# { $order } is one of the two sentences before.
booklet-drafted_for_size = { $order } This booklet is drafted for size { $size }.
booklet-drafted_for_body = { $order } This booklet is drafted for the measurements of { $name }, listed below.
booklet-not_in_sizes = { $order } With these choices it cannot be drafted in { $sizes }.
booklet-estimated = estimated
booklet-measured = measured
booklet-estimated_value = { $value }, estimated
booklet-estimated_note = Estimated from the nearest size, not measured: { $names }. Measure them before you cut.
booklet-not_in_figure = (Not shown in the figure.)
booklet-measurements_of = Measurements of { $name }
booklet-measurement = Measurement
booklet-value = Value
booklet-garment = Garment
booklet-finished_value = Finished
booklet-back_view = Back
booklet-on_body = On the body it is drafted for ({ $body }), front and back at one scale, with the finished widths and lengths.
booklet-on_body_to_scale = Worn, front and back at one scale.
booklet-laid_flat_front = Laid flat, seen from the front. A measure taken all round goes on along the other side.
booklet-laid_flat_back = Laid flat, seen from the back. A measure taken all round goes on along the other side.
booklet-ease = Ease
booklet-goes_over = Over
booklet-body_value = Body
booklet-ease_value = Ease
booklet-fit_close = It is meant to fit closely.
booklet-fit_easy = It is meant to fit easily.
booklet-fit_loose = It is meant to fit loosely.
booklet-ease_note = Ease is how much larger the garment is than the body it goes over: room to move, and the look of the design.
booklet-choices = Choices in this draft
booklet-choice = Measure
booklet-here = Here
booklet-range = Range
booklet-why = Why
booklet-from_to = { $least } to { $most }

## Cloth, notions, cutting

booklet-fibre = Fibre
booklet-weight = Weight
booklet-drape = Drape
booklet-avoid = Better not
booklet-prewash = Before cutting
booklet-cloth = Cloth
booklet-width = Width
booklet-to_buy = Length to buy
booklet-laid = Laid
booklet-laid_lengthwise = folded lengthwise
booklet-laid_flat = opened out flat
booklet-laid_part = partly folded
booklet-laid_either = { $folded }, or { $flat }
booklet-cloth_to_buy = Cloth to buy
booklet-cloth_main = Main cloth
booklet-cloth_lining = Lining
booklet-cloth_interfacing = Interfacing
booklet-too_narrow = too narrow
booklet-lengths_by_size = Cloth to buy for each size
# A row of that table: which cloth, how wide.
booklet-cloth_wide = { $cloth }, { $width }
booklet-notions = Notions
booklet-tools = Tools
booklet-lays_intro = Chalk around the pieces and check each grainline against the selvedge before you cut. What is cut from the opened cloth comes last.

## Pieces

booklet-no = No.
booklet-piece = Piece
booklet-to_cut = Cut
booklet-cut_list = Cut list
booklet-strip = Strip
booklet-strips = Strips
booklet-strip_size = Length × width as cut
# How many layers of which cloth are cut: { $cloth } is one of these three.
booklet-of_main = main cloth
booklet-of_lining = lining
booklet-of_interfacing = interfacing
booklet-cut = Cut { $count } of { $cloth }
booklet-cut_interfaced = Cut { $count } of { $cloth } and { $interfacing } of interfacing
booklet-cut_fold = Cut { $count } of { $cloth }, with { THE($edge) } on the fold
booklet-cut_fold_interfaced = Cut { $count } of { $cloth } and { $interfacing } of interfacing, with { THE($edge) } on the fold
booklet-cut_pair = Cut { $count } of { $cloth }, as a mirrored pair
booklet-cut_pair_interfaced = Cut { $count } of { $cloth } and { $interfacing } of interfacing, as a mirrored pair
booklet-cut_pairs = Cut { $count } of { $cloth }, as mirrored pairs
booklet-cut_pairs_interfaced = Cut { $count } of { $cloth } and { $interfacing } of interfacing, as mirrored pairs
booklet-cut_face_up =
    { $count ->
        [one] Cut 1 of { $cloth }, single, right side up
       *[other] Cut { $count } of { $cloth }, each single, right side up
    }
booklet-cut_face_up_interfaced =
    { $count ->
        [one] Cut 1 of { $cloth } and { $interfacing } of interfacing, single, right side up
       *[other] Cut { $count } of { $cloth } and { $interfacing } of interfacing, each single, right side up
    }
booklet-cut_continuous = Cut { $count } of { $cloth }, one after the other from a continuous bias strip
booklet-cut_joined = Cut { $count } of { $cloth }, { $lengths } to each strip
booklet-cut_in_two = { $said }, the interfacing in two lengths that overlap by { $overlap }
booklet-length_by_width = { $length } × { $width }
booklet-wide = { $width } wide
booklet-without_paper = Pieces without paper
booklet-without_paper_note = These pieces are rectangles: chalk them straight onto the cloth, the length along the grain, and check that both diagonals are equal. Allowances are included; all distances are from the cut edge.
booklet-without_paper_marks = Edges and marks
booklet-strips_note = Strips have no paper piece: chalk them straight onto the cloth, along the grain. Allowances are included.
booklet-strips_note_mixed = Strips have no paper piece: chalk them straight onto the cloth, on the grain each names. Allowances are included.
booklet-strip_crosswise = across the cloth
booklet-strip_bias = on the bias
booklet-strip_square = as one continuous strip from a square of { $square } sewn into a tube with seams of { $seams }
booklet-strip_pieced_straight =
    { $joins ->
        [one] the strip pieced with one join, straight, with { $seams } to each side
       *[other] the strip pieced with { $joins } joins, straight, with { $seams } to each side
    }
booklet-strip_pieced_straight_each =
    { $joins ->
        [one] each strip pieced with one join, straight, with { $seams } to each side
       *[other] each strip pieced with { $joins } joins, straight, with { $seams } to each side
    }
booklet-strip_pieced_diagonal =
    { $joins ->
        [one] the strip pieced with one join, diagonal, with { $seams } to each side
       *[other] the strip pieced with { $joins } joins, diagonal, with { $seams } to each side
    }
booklet-strip_pieced_diagonal_each =
    { $joins ->
        [one] each strip pieced with one join, diagonal, with { $seams } to each side
       *[other] each strip pieced with { $joins } joins, diagonal, with { $seams } to each side
    }

## Printing

booklet-printing_alone = Print the first pattern page alone, at 100 % or “actual size”. Switch off “fit to page” and “shrink”.
booklet-printing_squares = Measure its test squares: one is 100 mm (10 cm), the other 4 in along each side. If either is off, find the scaling setting of your printer before you print on.
booklet-printing_rest = Print the rest. The plan on the first page shows where each page goes: by row and column.
booklet-printing_join = Cut each page along its trim line on two sides only, lay it over its neighbour so that the joining marks meet, and tape it.
booklet-printing_check = Check one long measure on the taped sheet against this booklet before you cut into cloth.

## Worksheet

# The head of a row of distances along a straight line that begins at the point { $start }.
booklet-along = From { $start }
# The row under it: how far the curve lies off the straight line at each of those distances.
booklet-off = Off the line

## Fittings

booklet-fitting_intro = Each change was made after trying on. The dashed line is the draft before it, the heavy line the draft as it is now.
booklet-fitting_on = { $title }, { $date }

## Index and rights

booklet-index_intro = Measures in alphabetical order, with the steps that use them.
booklet-licence = Licence
booklet-made_with = Drafted, proved and set from one source. Every picture and number in it follows the draft.
# Where a point lies, read after its letter; $name is what the point is called.
booklet-place = { $across }, { $above }
booklet-named_place = { $name }: { $across }, { $above }
booklet-named_place_at_origin = { $name }: at O
# The same for what is not worn, such as a bag.
booklet-how_to_use_plain = Read a whole step before you draw or cut. Draft on paper first, sew it once in cheap cloth, and only then cut the good one.

# References between a try-on in the sewing and the chapter of fittings; in print the page follows.
booklet-see_fitting = What this fitting changed
booklet-tried_on_in = Tried on in step { $number }
booklet-stretch = Stretch
booklet-stretch_across = Fold the cloth crosswise, away from the edge, and lay { $relaxed } of the fold, relaxed, on the gauge below. Drawn gently, it must reach { $stretched } ({ $share }) and go back.
booklet-stretch_along = Along the grain it gives { $share }.
booklet-stretch_sewing = Seams that stretch
booklet-stretch_seams = Sew with a ball-point needle, which parts the loops of the cloth, and with a narrow zigzag, a stretch stitch or an overlock; turn hems with a twin needle or a zigzag. A plain straight row breaks when it is stretched. Hold shoulders with tape, and do not pull the cloth as it is fed.
booklet-stretch_gauge = Stretch gauge
booklet-stretch_relaxed = relaxed, { $length }
booklet-stretch_reach = at least { $length }
booklet-stretch_here = hold here
booklet-stretch_gauge_note = It tells the truth however large it is printed: only the two lengths compare.
booklet-stretch_gauge_alt = A bar with three marks: hold the fold at the first, its relaxed length ends at the second, and stretched it must reach the third.
booklet-needle = Needle and stitch
# $needle: sizes such as 80/12; $stitch: a length in mm.
booklet-needle_for = A needle { $needle }, stitches { $stitch } mm long. Try both on two layers of a scrap.
booklet-fine_seams = Cloth as fine as this takes narrow rows, { $near } to { $far } from the edge or the fold.

booklet-marking = Cut and mark
booklet-allowances_line = Allowances are included in the pieces: { $seams }.
booklet-allowances_line_hems = Allowances are included in the pieces: seams { $seams }; hems { $hems }.
booklet-marking_cut_out = Cut along the outer line of each piece, the scissors flat on the table. Leave the paper on until all is marked.
booklet-marking_notch = Snip each notch no more than { $deep } deep, square to the edge; a double notch is two snips.
booklet-marking_mark = Carry every mark over to the wrong side with chalk, or with a thread through both layers; try the chalk on a scrap first.
booklet-marking_interface = Cut the interfacing by the same pieces and lay it with them, so that nothing is fused to the wrong one.
booklet-marking_table = What each piece is marked with
booklet-notches = Notches
booklet-marks = Marks
booklet-marks_on_one = { $half }: { $marks }
booklet-interfacing = Interfacing
booklet-notches_on =
    { $kind ->
        [double] { $edge }: { $count } double
       *[single] { $edge }: { $count }
    }
booklet-is_interfacing = is interfacing
booklet-interfaced_layers =
    { $count ->
        [one] 1 layer
       *[other] { $count } layers
    }
booklet-time_in_all = The sewing takes { $time } in all, without cutting out and without fittings.

booklet-care = Care
booklet-care_wash = Wash and press it as you washed and pressed the cloth before cutting; what the shop or the bolt says of the cloth comes first.
booklet-care_shut = Close its fastenings before it is washed.
booklet-care_fused = Where there is fusible interfacing, press through a cloth and no hotter than the interfacing bears.
booklet-care_stretch = Dry it lying flat, so that its own weight does not draw it out.
booklet-choose_bust_girth = Find your size by your bust girth: it is the hardest to alter once cut.
booklet-choose_waist_girth = Find your size by your waist girth.
booklet-choose_hip_girth = Find your size by your hip girth.
booklet-choose_between = Between two sizes, look at the finished garment below the chart: the larger size has more room, the smaller lies closer.
booklet-live_at = This lesson lives on the web as well. There its steps, pictures and lengths follow your own measurements, which stay on your device.
booklet-live_at_sized = This lesson lives on the web as well. There its steps, pictures and lengths follow your own measurements, which stay on your device; it opens in size { $size }, which this booklet is drawn in.
booklet-live_at_plain = This lesson lives on the web as well. There its pictures and lengths follow the values you choose.
booklet-live_code = Code that leads to { $address }
booklet-choose_over_both = If your waist or hip girth falls in another size, keep the size of your bust down to the underarm and lead the side seam over into the other, in a gentle curve between the two levels. Do the same on every piece that meets there.
booklet-choose_over_waist_girth = If your waist girth falls in another size, keep the size of your bust down to the underarm and lead the side seam over into the other, in a gentle curve between the two levels. Do the same on every piece that meets there.
booklet-choose_over_hip_girth = If your hip girth falls in another size, lead the side seam over into it, in a gentle curve between the two levels. Do the same on every piece that meets there.

booklet-fit_changes = Fit changes on paper
booklet-fit_changes_intro = Alter the paper before you cut cloth. How much is the difference between your measurement and that of your size. Alter facings, linings and interfacing like the piece they lie on, then lay edges that are sewn together on each other and see that they are equally long. Sew a toile first. Dashed: as it was; heavy: as it becomes; the arrow shows the place that moves.
