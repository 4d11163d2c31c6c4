# A lesson that lives in the reader's own browser (kit/page). $number and $count count steps; what stands in braces
# here is put in by the page itself.

# While it opens.
page-opening = Getting ready …
page-opening_first = The first visit loads about { $size } MB. Afterwards the lesson opens without the internet.
page-cannot_run = This browser cannot run the lesson. A newer version of Firefox, Chrome, Edge or Safari can.
page-not_loaded = Part of the lesson could not be loaded. Check your connection and load the page again.
page-needs_scripts = This page needs JavaScript.
page-kept = The lesson is kept on this device and opens without the internet.
page-newer = There is a newer edition of this lesson.
page-newer_take = Load it
page-edition = Edition { $edition }

# Steps and picture.
page-steps = Steps
page-drafting = Drafting
page-sewing = Sewing
page-back = Back
page-on = Next
page-place = Step { $number } of { $count }
page-measures = Measures in this picture
page-no_picture = This step has no picture.
page-larger = Enlarge
page-smaller = Fit the screen
page-picture = Picture
page-stale = The picture shows the last draft that could be drawn.
page-stopped = This did not come to an end and was stopped. What you changed last was put back.

# What can be set.
page-values = Values
page-reset = The lesson’s own values
page-less = Less: { $name }
page-more = More: { $name }
page-body = Body
page-size = Size
page-own_body = My own measurements
page-private = What you type stays on this device.
page-name = Name
page-all_measures = Show every measurement
page-use_body = Draft for these measurements
page-body_used = The lesson is now drafted for { $name }.
page-save_body = Save as a file
page-load_body = Load a file
page-body_file = mine.toml
page-language = Language
page-units = Units
page-cm = cm
page-inch = inches
page-language_en = English
page-language_de = Deutsch
page-language_fr = Français
page-language_es = Español

# What is told.
page-check = Check
page-checking = Checking …
page-mend = What would mend it?
page-mending = Looking for what mends it …
page-finished = Finished measurements
page-cloth = Cloth to buy
page-cloth_note = For size { $size } with the values this page was made with.
page-cloth_nearest = For size { $size }, the nearest to your measurements, with the values this page was made with.
page-exercises = Exercises
page-hint = Show a hint
page-no_hint = No more hints
page-about = About this page
page-left_out = This page prints no pattern and lays out no cloth. Send your body file to your teacher, who can print your size.
page-notices = Notices and licences

# The reader's own pattern pages, where the page can write them. $size are megabytes, $name is a file.
page-pages = My pages
page-pages_how = Pattern pages for the size, the measurements and the values set on this page, as a PDF to print. The first time loads about { $size } MB more.
page-pages_paper = Paper
page-pages_make = Make my pages
page-pages_stop = Stop
page-pages_loading = Loading what writes the pages …
page-pages_laying = Laying the pieces and writing the pages. This can take some minutes …
page-pages_stopped = Stopped. No pages were made.
page-pages_done = Your pages are ready. Print them without scaling, and measure the test square before you cut.
page-pages_save = Save { $name }
page-pages_not_here = What writes the pages could not be loaded. Check your connection and try again, or send your body file to your teacher, who can print your size.
page-pages_left_out = This page lays out no cloth.

# What the engine refuses. $name and $value are what was sent to it.
page-not_asked = the page asked for something this lesson does not know.
page-again_do = Load the page again.
page-no_units = { $units } are no units.
page-no_values = the values cannot be read.
page-no_body = the body cannot be read.
page-no_number = { $value } is no value of { $name }.
page-no_slider = this lesson has no value called { $name }.
page-no_measure = there is no measurement called { $name }.
page-no_steps = this lesson has no steps yet.
page-length_do = Type a length such as 94 cm or 37 in.
page-kit_wrong = Something in the lesson went wrong ({ $kind }: { $what }). Put the value you changed last back.

# The booklet beside the page, as it follows the reader's body. $name is a size or a person, $size the size that the
# booklet was built in.
page-booklet_link = The booklet, for your measurements
page-booklet_mine = This booklet for your own measurements
page-booklet_how = Type your measurements once, and the steps, pictures, lengths and tables of this booklet are drawn for you. What you type stays on your device.
page-booklet_how_plain = The steps, pictures and lengths of this booklet follow the values you set on the lesson’s page.
page-booklet_open = Use my measurements
page-booklet_back = Back to the booklet as printed
page-booklet_page = The lesson’s page, with its values to move
page-booklet_type = Choose a size, or type your measurements below.
page-booklet_drawing = Drawing for { $name }: step { $number } of { $count } …
page-booklet_done = Everything in this booklet is now for { $name }, but for what says otherwise.
page-booklet_done_values = Everything in this booklet is now for { $name } and the values set on the lesson’s page, but for what says otherwise.
page-booklet_stands = The booklet still stands for { $name }.
page-booklet_wrong = This draft fails its proof. Do not cut from it:
page-booklet_no_lays = Cutting layouts are left out here: they were made for size { $size }, not for you. Lay your own pieces before you buy.
page-booklet_no_sheet = Drafting by hand from numbers is left out here: the numbers were those of size { $size }. The steps above are for you.
page-booklet_no_pages = Printed pattern pages do not follow: they are of a size. Save your measurements as a file and send it to whoever gave you this lesson.
page-booklet_drawn_for = The pictures of this part are drawn in size { $size }.
page-booklet_differs = For you this step is sewn otherwise than in size { $size }, which stands here. See it on the lesson’s page.
