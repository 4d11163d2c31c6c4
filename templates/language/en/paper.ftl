# What stands on pattern pages, copy-shop sheets and the projector's sheet, in drawing files, and what is said while they
# are made. $title is the lesson's title. Sizes such as "W4" are names.

# ---- papers

paper-name_a4 = A4
paper-name_a3 = A3
paper-name_a0 = A0
paper-name_letter = US Letter
paper-name_tabloid = Tabloid
paper-name_a4_or_letter = A4 or US Letter
paper-name_roll_36in = 36 in roll
paper-name_roll_914mm = 914 mm roll

# ---- page heads and captions, parted by a middle dot

paper-edition = edition { $edition }
paper-document = { $title }, { $edition }
paper-document_pages = { $title }, { $edition }, pages on { $paper }
paper-document_projector = { $title }, { $edition }, for a projector
# The line under the title of the first page.
paper-about_upright =
    { $count ->
        [one] pattern pages on { $paper }, upright · { $count } page to follow
       *[other] pattern pages on { $paper }, upright · { $count } pages to follow
    }
paper-about_sideways =
    { $count ->
        [one] pattern pages on { $paper }, on its side · { $count } page to follow
       *[other] pattern pages on { $paper }, on its side · { $count } pages to follow
    }
paper-page_of = page { $page } of { $pages }
paper-sheet_of = sheet { $page } of { $pages }
# $pieces is paper-pieces.
paper-on_sheets =
    { $count ->
        [one] { $pieces } on { $count } sheet
       *[other] { $pieces } on { $count } sheets
    }
paper-on_one_sheet = { $pieces } on one sheet
paper-pieces =
    { $count ->
        [one] { $count } paper piece
       *[other] { $count } paper pieces
    }
paper-place = row { $row }, column { $column }
# In the grey area of a page: the name of the page that is glued there, such as 2B.
paper-glue = glue { $page } here

# ---- the first page

paper-print = Print
paper-print_first = Print this page first, at 100 % (actual size), with no scaling and no fitting to the page.
paper-print_first_common = Print this page first, at 100 % (actual size), with no scaling and no fitting to the page. Print on either A4 or US Letter, in the middle of it.
paper-print_measure = Measure a square before you cut: the metric one measures { $metric } on each side, the other { $inch }.
paper-print_others = Then print the other pages with the same settings.
paper-join = Join
paper-join_plan = Lay the pages out as in the page plan. Rows have numbers, columns letters.
paper-join_trim = Cut each page along its broken trim lines (✂), at the left and at the top. Pages without such a line there stay as they are.
paper-join_trim_all = Cut each page along its broken trim lines (✂), on every side that has one.
paper-join_glue = Glue or tape the cut page on the grey area of the page before it. Bring halves with the same number together: the ring must close and its diagonals must cross in the centre.
paper-join_tape = Lay the cut edges against each other, not over each other, and tape them. Bring halves with the same number together: the ring must close and its diagonals must cross in the centre.
paper-join_rows = Join the pages of each row first, then row to row.
paper-cut = Cut
paper-cut_line = Cut the pieces on the heavy solid line.
paper-cut_blades = Blades are sharp. Cut away from your fingers and yourself, close a rotary cutter each time you put it down, use it on a cutting mat, and keep blades and pins away from children. The maker's instructions and the rules of your workroom come first.
paper-practise = Practise
paper-practise_smaller = These pages are for drafting practice on a table. Everything is drawn smaller, words excepted: nothing cut from them fits a body.
paper-practise_blades = Keep blades and pins away from children. The rules of your classroom come first.

# ---- the page plan

paper-plan = Page plan
paper-plan_pages =
    { $count ->
        [one] { $count } page
       *[other] { $count } pages
    }
paper-plan_rows =
    { $count ->
        [one] { $count } row
       *[other] { $count } rows
    }
paper-plan_columns =
    { $count ->
        [one] { $count } column
       *[other] { $count } columns
    }
# $pages, $rows and $columns are the three messages above.
paper-plan_grid = { $pages }, { $rows } by { $columns }
# $plan is paper-plan_grid.
paper-plan_patches = { $plan }, in { $patches } patches
paper-plan_single = { $plan }, none to be joined
# $plan is one of the three messages above.
paper-plan_blank =
    { $count ->
        [one] { $plan }; { $count } blank page is left out
       *[other] { $plan }; { $count } blank pages are left out
    }

# ---- test squares and the printer gauge

paper-square = test square: measure it before you cut
paper-square_small = This square measures { $side } and stands for { $stands_for }.
paper-class_half = half scale: not for cutting cloth
paper-class_quarter = quarter scale: not for cutting cloth
paper-gauge_short = Printer gauge, short side of the paper
paper-gauge_long = Printer gauge, long side of the paper
paper-gauge_sheet_width = Printer gauge, along the sheet's width
paper-gauge_sheet_height = Printer gauge, along the sheet's height
paper-gauge_sheet_short = Printer gauge, the paper's short side
paper-gauge_sheet_long = Printer gauge, the paper's long side
# These two follow a row of numbers, which are per cent.
paper-gauge_metric = %, at the ruler's 100 mm
paper-gauge_inch = %, at the ruler's 4 in
paper-gauge_zero = Lay the ruler's zero on the line at this end.
paper-gauge_how = Printed too small or too large? If a gauge bar measures 97 mm your printer printed at 97 %: look for a scaling setting first. A printer that will not obey is put right by pages made for it: ask whoever made the pattern for pages at 97 %, or at 97 % along the paper's short side and 98.5 % along its long side, as the bars say.
paper-gauge_corrected = These pages are made for a printer that prints at { $scale } %. There the test square is true and the gauge reads what was corrected. On any other printer they come out wrong.
paper-gauge_corrected_two = These pages are made for a printer that prints at { $short } % along the paper's short side and { $long } % along its long side. There the test square is true and the gauge reads what was corrected. On any other printer they come out wrong.

# ---- the head of a copy-shop sheet

paper-head_print = Print at 100 %, on paper at least as wide as this sheet, with no scaling and no fitting to the page.
paper-head_measure = Measure the squares before you cut: { $metric } and { $inch } on each side.
paper-head_blades = Blades are sharp: cut away from yourself, and keep blades and pins away from children.

# ---- pages that hold several sizes

# A run of sizes, such as W1 to W4, and several of them (paper-sizes_run or names) with the word for "and".
paper-sizes_run = { $first } to { $last }
paper-sizes_alike = { $sizes }, all alike
paper-sizes_hint = Page { $page } says how to find your size and which pages it needs.
paper-sizes_find = Find your size
paper-sizes_hold = These pages hold the sizes { $sizes } of { $title }, one over the other.
paper-sizes_count = Count the marks between two long dashes: a dot is one, a short dash is five. Even sizes are heavier than odd ones.
paper-sizes_shared = An unbroken line is shared: it belongs to every size whose line runs into it. The name of a size stands in its line here and there; colour your line before you cut.
paper-sizes_bunch = Where lines run too close together for names, the words beside them tell their order: a leader crosses the lines from the first size named, next to the words, to the last.
paper-sizes_layers = In a program that shows layers, switch off the sizes you do not need; the stitch line of each size is a layer of its own, off until you switch it on.
paper-sizes_allowances = Allowances are included; their widths stand along the edges.
paper-sizes_print = Print only the pages listed for your size; the first one has the test square.
paper-sizes_head_size = Size
paper-sizes_head_line = Its cut line
paper-sizes_head_pages = Print these pages
paper-sizes_plan = Pages for { $sizes }
paper-sizes_all = all
paper-sizes_all_line = shared by sizes
paper-strips = Cut without a paper piece
paper-strip_every = { $strip }: { $length } by { $width } in every size.
# $sizes is made of paper-strip_size, parted by semicolons.
paper-strip_sizes = { $strip }: { $sizes }.
paper-strip_size = { $sizes } { $length } by { $width }
# Names of layers, as a reader's program lists them.
paper-layers = Sizes
paper-layer_stitch = { $size } stitch line

# ---- the projector's sheet

paper-projector_about = { $edition } · for a projector, 1:1 · grain from left to right
paper-projector_measure = measure each side on the table

# ---- the SVG file: what programs show as the names of groups

paper-svg_about = One user unit is one millimetre. A group for each size and for what sizes share, in it a group for each piece, in that a group for each kind of line.
paper-svg_size = Size { $size }
paper-svg_all_sizes = All sizes
paper-svg_shared = Shared by { $sizes }
paper-svg_text = Text
paper-svg_square = Test square, 100 mm
paper-svg_measure = 100 mm: measure this square
paper-svg_cut_line = { $piece }: cut line
paper-svg_stitch_line = { $piece }: stitch line
paper-svg_fold = { $piece }: fold
paper-svg_grainline = { $piece }: grainline
paper-svg_notches = { $piece }: notches
paper-svg_marks = { $piece }: marks
paper-svg_names = { $piece }: names

# ---- what is said while pages are made

paper-doing_pages = Laying the pieces on pages
paper-doing_sheet = Laying the pieces on one sheet
paper-doing_writing = Writing the pages
paper-doing_size = Size { $size }
paper-doing_projector = Making the projector's sheet
paper-doing_nested = Making { THE($paper) } pages of { $sizes }
# $amount is one of the messages below.
paper-doing_paper = { $paper }: { $amount }
paper-amount_roll = { $length } of it
paper-amount_pages =
    { $count ->
        [one] { $count } page
       *[other] { $count } pages
    }
paper-amount_sheets =
    { $count ->
        [one] { $count } sheet
       *[other] { $count } sheets
    }
# $amount is paper-amount_pages or paper-amount_sheets.
paper-amount_blank = { $amount }, { $blank } blank left out

# ---- what cannot be printed ----
paper-margins_eat = within the margins { $width } x { $height } mm are left, too little for the test squares and gauges.
paper-margins_eat_do = Choose larger paper or smaller margins; { $least } mm each way must be left.
paper-paper_place = { $paper } paper
paper-no_sizes = no sizes are chosen.
paper-no_sizes_do = Name some, such as --sizes W3,W4, or all.
paper-size_twice = the size { $size } is chosen twice.
paper-size_twice_do = Name each size once.
paper-no_pieces = this pattern has no pieces, so there is nothing to print.
paper-no_pieces_do = Run the drafting steps that make the pieces.
paper-no_class_scale = several sizes over one another cannot be read at a class scale.
paper-no_class_scale_do = Print one size at that scale, or leave --scale out.
paper-roll_long = the pieces need { $length } m of { THE($roll) }, more than one page of a PDF can hold.
paper-roll_long_do = Choose a wider paper, or sheets such as A0; at most { $most } m can be written.
paper-no_such = there is no paper '{ $paper }'.
paper-no_such_do = { $near } A size of your own is written like 300x500mm or 13x19in.
paper-size_no_unit = the paper size '{ $paper }' does not say its unit.
paper-size_two_units = the paper size '{ $paper }' mixes two units.
paper-size_do = Write { $first }x{ $second }mm, or cm or in.
paper-too_small = a paper of { $paper } is too small: the first page must hold a test square of 100 mm and a printer gauge.
paper-too_small_do = Choose at least { $width } x { $height } mm.
paper-too_long = a paper of { $paper } is longer than a page of a PDF can be.
paper-too_long_do = Choose at most { $most } m (200 in).
paper-margin_overlap = with a margin of { $margin } mm and an overlap of { $overlap } mm too little of the page is left for the pattern.
paper-margin_overlap_do = Give a smaller margin or overlap.
paper-margin_small = a page margin of { $margin } mm is less than most printers can print.
paper-margin_small_do = Give at least 5 mm.
paper-projector_long = the sheet would be { $size } long, more than a page of a PDF can be.
paper-projector_long_do = Keep it under { $most } m.
paper-projector_narrow = the pieces do not fit on a sheet of { $width } by { $height }; it must be at least { $least } wide.
paper-projector_low = the pieces do not fit on a sheet of { $width } by { $height }; it must be at least { $least } high.
paper-projector_small_do = Give a larger sheet, or none to have it fitted.
paper-not_a_sheet = '{ $text }' is not a size of sheet.
paper-not_a_sheet_do = Write 1500x900mm or 60x40in, or nothing.
paper-no_file_kind = there is no file of the kind '{ $kind }'.
paper-not_a_margin = '{ $text }' is not a margin.
paper-not_a_margin_do = Write 8mm, or 6mm,15mm for sides and top and bottom.
paper-not_a_printer_scale = '{ $text }' does not say how large the printer prints.
paper-not_a_printer_scale_do = Read the gauge on the first page and write 97%, or 97%,98.5% for the paper's short and long side.
paper-not_a_scale = '{ $text }' is not a scale for the class.
paper-scale_do = Choose 1, 1/2 or 1/4.
paper-none_named = no paper is named.
paper-none_named_do = Name one, such as --paper a4.
paper-printer_off = a printer that prints at { $share } is too far from true scale to correct.
paper-printer_off_do = Look for a setting such as 'fit to page' and switch it off; then measure the gauge again.
paper-no_pattern = the lesson ran, but gave no pattern.
paper-no_pattern_do = Ask your teacher to make the class copy again.
paper-no_name = this notebook has no name yet.
paper-no_name_do = Save it, then press the button again.

# ---- pieces that are cut by their measures and have no paper

paper-measures_fold = half of it, as it lies with { THE($edge) } on the fold
# Names of edges stand bare: a heading and what it is of.
paper-measures_along = Along the length: { $edges }
paper-measures_top = Towards the top of the cloth: { $edge }
paper-measures_allowance = Allowance, included: { $width } all round
paper-measures_allowances = Allowances, included: { $edges }
paper-measures_edge = { $edge } { $width }
paper-measures_notch =
    { $count ->
        [one] Single notch ({ $edge }): { $at } from the cut edge ({ $start })
       *[other] Single notches ({ $edge }): { $at } from the cut edge ({ $start })
    }
paper-measures_double =
    { $count ->
        [one] Double notch ({ $edge }), its middle: { $at } from the cut edge ({ $start })
       *[other] Double notches ({ $edge }), their middles: { $at } from the cut edge ({ $start })
    }
paper-measures_line = Line ({ $mark }): { $at } from the cut edge ({ $start }) and parallel to it
paper-measures_point = Mark ({ $mark }): { $at } from the cut edge ({ $start }), { $up } from the cut edge ({ $edge })
paper-measures_slit = Line ({ $mark }): from { $at } to { $to }, measured from the cut edge ({ $start }), { $up } from the cut edge ({ $edge })
paper-measures_opening = Opening ({ $edge }; { $mark }): from { $at } to { $to }, measured from the cut edge ({ $start })
paper-by_measures = No paper is needed for these: chalk them straight onto the cloth, length along the grain, allowances included. What to mark on them stands in the booklet. { $pieces }
paper-by_measures_sizes = No paper is needed for these; their measures stand on the page of the sizes, what to mark on them in the booklet of your size: { $pieces }.
paper-by_measures_one = { $piece }: { $size }
paper-by_measures_also = { $about } · without paper: { $pieces }
paper-about_no_pages = pattern on { $paper } · no pages to follow: every piece is cut by its measures
paper-no_such_piece = there is no piece '{ $name }' in this pattern.
paper-needs_paper = { $piece } cannot be cut by measures alone: with its allowances it is not a rectangle along the grain, or it has a dart, a pleat or a mark that measures cannot place.
paper-needs_paper_do = Give it paper: take its name out of no_paper.
