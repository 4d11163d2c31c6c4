# Two editions, sizes or settings of a lesson beside each other, and what an edition changed (lessonkit compare).

# $title is the lesson, $before and $after what is compared: sizes ("W3"), editions, "as it stands".
family-title = { $title }: { $before } beside { $after }
family-errata = { $title }: what edition { $after } changed
# For buyers. $before is the edition they have.
family-errata_lead = For those who have edition { $before }: this is all that is different. Change it in your booklet by hand, or print the new one.
family-nothing = Nothing differs that could be noticed.
family-edition = edition { $edition }
family-edition_dated = edition { $edition } ({ $date })
family-as_it_stands = as it stands
family-with = with { $values }
family-as_cut = as first cut
family-corrected = as corrected
family-first = the first
family-second = the second
family-measures = Measures
family-pieces = Pieces
family-drafting = Drafting
family-sewing = Sewing
family-notions = Notions
family-measure = measure
family-difference = difference
family-of_edge = { $name }, length along the stitch line
family-of_allowance = { $name }, seam allowance
family-of_extra = { $name }, cloth to fit with
family-of_notch = { $name }, notch: from the start of the edge
family-of_strip_length = { $name }, length as cut
family-of_strip_width = { $name }, width as cut
family-of_cut = { $name }, how many are cut
family-of_cloth = { $cloth }, { $width } wide, to buy
family-step_new = New: { $title }
family-step_gone = Left out: { $title }
family-was = Was:
family-now = Now:
# A picture of one piece twice. $before is dashed.
family-picture = { $piece }: { $before } dashed, { $after } drawn
family-picture_alt = { $piece }, { $before } dashed and { $after } over it; what differs is drawn heavy. { $words }
family-no_such_place = no piece of both has a place '{ $place }'.
family-edition_missing = there is no file '{ $file }'.
family-edition_missing_do = Name the file pattern.json of an earlier build, its folder or that of a release, or a notebook.
family-edition_size = there is no size { $size } in the release '{ $file }'.
family-edition_size_do = It has { $sizes }.
family-edition_closed = '{ $file }' cannot be read ({ $reason }).
family-edition_closed_do = Check the file and its permissions.
family-edition_damaged = '{ $file }' is damaged: it does not hold a whole pattern.
family-edition_damaged_do = Take it from a copy of that edition, or build it again from the notebook of that time.
family-edition_large = '{ $file }' is larger than a pattern can be.
family-edition_large_do = Name the file pattern.json of an earlier build.
family-edition_other = '{ $file }' is not a pattern of this kit.
family-edition_other_do = Name the file pattern.json of an earlier build, its folder or that of a release, or a notebook.
family-edition_version = '{ $file }' is a pattern of version { $version }, which this kit does not know.
family-edition_version_do = Use the kit it was built with, or a newer one.
# What is asked of the command. Keys that end in _do say what to do.
family-one_edition = one edition alone cannot be compared.
family-one_edition_do = Name a notebook or another edition after it.
family-one_notebook = it is not said what the notebook is compared with.
family-one_notebook_do = Give one of --sizes W3,W4, --values sleeve_length=45cm, --preset "Long sleeve" or --as-cut, or name a second notebook or edition.
family-two_sizes = { $count ->
    [one] one size is given.
   *[other] { $count } sizes are given.
}
family-two_sizes_do = Give two of the lesson's sizes: --sizes W3,W4.
family-two_given = two are given, and one of them is to be compared with itself.
family-two_given_do = Leave out --sizes and --as-cut, or the second name.
family-one_size = the lesson uses no measurement of the body, so it has one size.
family-one_size_do = Compare two values instead: --values length=40cm.
family-no_lesson = there is no lesson to compare.
family-no_lesson_do = Give a lesson: compare(lesson, sizes=("W3", "W5")).
family-no_other = it is not said what the lesson is compared with.
family-no_other_do = Write compare(lesson, sizes=("W3", "W5")), compare(lesson, seam=1 * cm), or name another lesson or the folder of an earlier build.
# The grade: a lesson in all its sizes (lessonkit grade).
family-of_dart = { $name }, width at its open end
# $piece is a title, $name a measure on it.
family-of_piece = { $piece }: { $name }
family-grade = { $title }: the grade
family-grade_unit = { $unit ->
    [inch] values in inches, under each the step from the size before
   *[cm] values in cm, under each the step from the size before
}
family-grade_breaks = Other steps are meant from here on: { $sizes }.
family-grade_same = The same in every size
family-grade_even = Every step is like its neighbours.
family-grade_follows = Uneven because the body's own measurements are
family-grade_jump = { $name }: from { $before } to { $size } it steps by { $step }, beside steps of { $usual }.
family-grade_turn = { $name }: from { $before } to { $size } it goes the other way, { $step }, beside steps of { $usual }.
family-grade_scales = { $name }: it is not the same in { $before } and { $size } ({ $step }). If it is meant to be, take out what makes it follow the size.
family-grade_missing = { $name }: one of { $before } and { $size } has it, the other has not.
family-grade_because = So does the measurement: { $name }.
family-no_grade_do = A grade needs two sizes and more; check the lesson's size chart.
family-not_drafted = { $size } is left out, for it cannot be drafted: { $why }
# One size lies off the line of the two beside it. $way is above or below.
family-grade_off =
    { $way ->
        [above] { $name }: { $size } is { $by } more than { $before } and { $after } lead to expect.
       *[below] { $name }: { $size } is { $by } less than { $before } and { $after } lead to expect.
    }
family-two_editions = two editions are as they were built; no size and no values can be given for them.
family-two_editions_do = Leave out --size, --values and --preset, or name the notebook.
family-other_language = The two are told in different languages, so the words of their steps are not compared.
