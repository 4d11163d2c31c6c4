# A set for every row of a table of bodies.
roster-label = No. { $number }
roster-heading = { $title }: the sets
roster-sum = { $count ->
    [one] One row,
   *[other] { $count } rows,
  } { $ready ->
    [0] none of them ready to print.
    [one] one of them ready to print.
   *[other] { $ready } of them ready to print.
  }
roster-as_table = The same as a table
roster-print_note = Print pattern pages without scaling, and measure the test square on the first page before anything is cut.
roster-ignored = Columns left aside: { $columns }.
roster-kept = { $count ->
    [one] One set is there already and stands.
   *[other] { $count } sets are there already and stand.
  }
roster-left_seconds = under a minute left
roster-left_minutes = about { $minutes } min left
roster-left_hours = about { $hours } h { $minutes } min left
roster-ready = Ready to print
roster-failed = The proof failed: do not cut
roster-none = No set
roster-number = number
roster-line = line of the table
roster-state = state
roster-folder = folder
roster-cloth = Cloth to buy
roster-fit = Fit changes, had it been a size of the chart
roster-fit_note = The pages are drafted to each person’s own measurements. The fit changes are what a pattern in a size of the chart would need.
roster-doubts = Measurements to look at again
roster-found = What the proof found
roster-estimated = Estimated measurements
roster-finished = Finished measurements
roster-trouble = Why there is no set
