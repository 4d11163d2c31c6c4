# Values kept beside the notebook, when they are not used.
saved-broken = { $file }: the saved values cannot be read; the lesson’s own stand. The file is kept when you save anew.
saved-broken_line = { $file }: the saved values cannot be read in line { $line }; the lesson’s own stand. The file is kept when you save anew.
saved-another = { $file } holds values of another lesson, '{ $other }'; they are not used. If they are meant for this one, write "lesson": "{ $slug }" in it.
saved-no_size = { $file } names the size '{ $size }', which this lesson does not have; another is drawn. Choose a size and save.
saved-no_units = { $file } names the units '{ $units }'; only cm and inch are known. The lesson’s own are used. Choose units and save.
saved-out_of_range = { $file }: { $trouble } The lesson’s own value is used: { $value }.
saved-apart = { $other } in this folder has the same title. The values of this notebook are kept apart from it, in { $file }.
