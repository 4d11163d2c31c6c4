# The page that is read first of a released folder, and what its preview pictures show.
release-title = Start here
release-edition = edition { $edition }
release-do_read = Read the booklet.
release-read = On a phone or tablet open { $screen }, on paper print { $printed }. It tells your size, what to buy, and every step.
release-read_one = Open { $file }. It tells your size, what to buy, and every step.
release-do_choose = Choose your size.
release-choose = Measure yourself and compare with the size table of the booklet, which also says what to do between two sizes.
release-do_print = Print the pages.
release-print = Take the file of your size from the list below, and print its first page at 100 %, not fitted to the paper. Measure the test square; when it is right, print the rest.
release-do_nested = All sizes at once:
release-nested = The last line of the list is a file with every size over one another. Its page with the key says which pages each size needs.
release-do_sheets = At a copy shop:
release-sheets = Have one file from { $folder } printed at 100 % on the paper its name says. Measure its test square before you pay.
release-do_projector = With a projector:
release-projector = Take a file from { $folder }, light or dark. Measure its two squares on the table before you cut.
release-do_files = With another program:
release-files = { $folder } holds the pattern at full scale as SVG and DXF, and as plain data.
release-do_join = Join, cut, sew.
release-join = Join the pages by their marks, cut out the paper pieces, lay them as the booklet shows, and go on with its steps.
release-what_to_print = What to print
release-size = Size
release-pages_a4 = On A4
release-pages_letter = On US Letter
release-file_pages = { $count ->
    [one] { $file }, { $count } page
   *[other] { $file }, { $count } pages
 }
release-all_sizes = All, nested
release-mind = Mind your hands
release-caution_blades = Scissors, rotary cutters, pins and needles injure: cut away from yourself, close the blade when you lay it down, keep fingers clear of the needle, and keep all of it out of reach of children.
release-caution_iron = An iron burns, and so does its steam: set it down on its heel, and unplug it when you leave.
release-licence = What you may do with it
release-sums = SHA256SUMS lists a checksum of each file, by which a copy can be checked.
release-preview_cover = The first page of the booklet "{ $title }".
release-preview_step = A page of the booklet with the step "{ $step }", its picture and its words.
release-preview_sizes = The page of the booklet with its table of sizes.
