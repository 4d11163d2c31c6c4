# The panel of sliders beside the draft, what is shown under the cells, and the forms for a body and for naming edges
# (kit/live: panel, choices, row, figures, tried_on, fragments, body_form, name_edges). All of it is read on a screen.

# Size, units and view.
panel-size = Size
panel-size_tip = The size the lesson is drafted in
# One of the sizes to choose: $name is the name of somebody who was measured.
panel-own_measurements = { $name } (own measurements)
panel-units = Units
panel-units_cm = cm
panel-units_inch = inch
panel-units_cm_tip = Centimetres first
panel-units_inch_tip = Inches first
panel-view = Show
panel-view_tip = What the picture shows
panel-view_draft = The draft
panel-view_step = Step { $number }: { $title }
panel-view_flat_front = Laid flat, front
panel-view_flat_back = Laid flat, back
panel-view_worn = As worn

# Values. A preset is a named set of values; $title is the name the lesson gives one.
panel-preset = Values
panel-preset_tip = Sets of values to choose from
panel-preset_none = as on the sliders
panel-preset_default = The lesson's own
panel-preset_opened = As the last session left them
panel-reset = Reset values
panel-reset_tip = Put every value back to the lesson's own
panel-fresh = Start fresh
panel-fresh_tip = Put away what the last session left: every value back to the lesson's own
panel-left_values = The values are those the last session left. Start fresh puts every value back to the lesson's own.
panel-undo = Undo
panel-undo_tip = Take the last change of values back
panel-redo = Redo
panel-redo_tip = Make the change taken back last again
panel-old_picture = This picture is older: the last draft that worked.

# A row: the name of a parameter, and why it is there.
panel-row_tip = { $name }: { $why }
panel-follows = Follows from your { $measures }.
panel-follows_size = It has a value for each size.
# Beside a value during a fitting: what it was before.
panel-before = was { $value }
# Beside a value that the proof has something to say about.
panel-marked = { $count ->
    [one] The proof names this.
   *[other] The proof names this { $count } times.
}
# $level is one of the words of the levels below, $what the finding in full.
panel-marked_with = { $level }: { $what }

# Beneath the picture.
panel-finished = Finished measurements
# Beside a finished measurement. $over is a body measurement such as bust girth, $ease a length in both systems.
panel-ease = { $ease } ease over { $over }
panel-ease_less = { $ease } less than { $over }
panel-proof = Proof
panel-checking = Checking …
panel-passed = Every check passed.
panel-level_error = To put right
panel-level_warning = Look again
panel-level_note = Note
# $level is one of the three words above.
panel-finding = { $level }.
# $names are the parameters that a finding depends on.
panel-depends = Depends on: { $names }.
panel-show_where = Show where
panel-estimates = Estimated from the size chart for { $name }, not measured: { $measures }.
# $titles are titles of steps in quotes, with commas.
panel-stale = The cell of { $titles } is not in the notebook any more, and the step is still in the draft. To take it out, restart the kernel and run all cells; if the cell is new, save the notebook.
panel-quoted = “{ $title }”

# Cloth and pages.
panel-figures = Cloth and pages
panel-figures_tip = Work out how much cloth and how many pages it takes
# $width is a width of cloth such as 140 cm (55 in).
panel-cloth_main = Cloth, { $width } wide
panel-cloth_lining = Lining, { $width } wide
panel-cloth_interfacing = Interfacing, { $width } wide
# $paper is a size of paper, such as A4.
panel-pages_on = Pages, { $paper }
panel-pages = { $count ->
    [one] { $count } page
   *[other] { $count } pages
}
# A figure that has not been worked out again since a value was moved.
panel-figure_was = was { $figure }
panel-figure_waiting = …
panel-figure_none = not yet known
# Instead of a length: a piece is wider than the cloth.
panel-figure_narrow = too narrow

# After try-on: what somebody changes at a fitting, and why.
panel-tryon = After try-on
panel-tryon_tip = Record what a fitting changes, and why
panel-tryon_name = Fitting
# What a new fitting is called at first; $number counts the lesson's fittings.
panel-tryon_title = Try-on { $number }
panel-tryon_begin = Begin
panel-tryon_begin_tip = Remember every value as it is now, then move the sliders
panel-tryon_going = Fitting: { $title }. Move the sliders to what the try-on asks for.
panel-tryon_nothing = Nothing has changed yet.
panel-tryon_piece = Piece
panel-tryon_most = the most moved
panel-tryon_why = Why
panel-tryon_why_hint = What was seen on the body, in your words
panel-tryon_keep = Keep
panel-tryon_keep_tip = Record the changes with their reason
panel-tryon_cancel = Cancel
panel-tryon_cancel_tip = Give it up and put the values back
panel-tryon_kept = Kept
panel-tryon_none = choose a fitting
panel-tryon_one_dated = { $title }, { $date }
panel-tryon_back = Take back
panel-tryon_back_tip = Remove this fitting and put its values back
panel-tryon_copy = To have it in the notebook, copy this into a cell:
# Something the kit did not foresee; $kind and $what are technical.
panel-kit_wrong = Something in the kit itself went wrong ({ $kind }: { $what }). Your values are kept. Move the value you changed last back, and run the cell again.
# $trouble is a sentence, $line the line of the lesson's code that caused it.
panel-line_of_cell = { $trouble } (Line { $number } of the cell: { $line })

# Under a cell.
panel-cell_finished = { $title }:

# The form for a body.
panel-body_mine = Mine
panel-body_name = Name
panel-body_name_tip = Whose body
panel-body_cm_tip = A number without a unit is in cm
panel-body_inch_tip = A number without a unit is in inches
panel-body_more = Show every measurement
panel-body_use = Use this body
panel-body_use_tip = Draft the lesson for this body
panel-body_file = File
# The name of a file: letters without accents, and .toml at its end.
panel-body_file_mine = mine.toml
panel-body_save = Save
panel-body_save_tip = Keep this body in the file
panel-body_load = Load
panel-body_load_tip = Read a body from the file
panel-body_empty = not measured
panel-body_value = { $value }.
panel-body_estimated = { $value }, estimated.
panel-body_used = The lesson is now drafted for { $name }.
# $code is a line of code.
panel-body_saved_code = Saved to { $path }. To build the booklet for this body, put { $code } in a cell below the lesson.
panel-body_loaded = { $name } is read from { $path }. Press “Use this body” to draft for it.

# The form that names the edges of a traced outline.
panel-edges_copy_tip = Copy this into a cell
panel-edges_done = Every edge is named. Keep this in the notebook:
panel-edges_piece = Piece
panel-edges_piece_tip = What the piece is called in code; empty to leave this outline out
# An edge between two numbered corners; $length is how long it is.
panel-edges_edge = { $from } to { $to } ({ $length })
panel-edges_edge_tip = The edge from corner { $from } to corner { $to }
panel-edges_waist = Waistline
panel-edges_waist_tip = Where the waistline is
panel-edges_waist_hint = corner, edge, or 20 cm above the lowest point
panel-edges_outline = Outline { $name }

panel-fit = Fit changes
panel-fit_tip = Alter the pattern for a figure: lengthen, full bust, sway back and others
panel-fit_choose = Choose a change
panel-fit_add = Add
panel-fit_by_size = A size of the chart needs no change by itself. Choose a body to read what it asks for, or add a change by hand.
panel-fit_take =
    { $count ->
        [0] Draw size { $size }
        [one] Draw size { $size } with this change
       *[other] Draw size { $size } with these changes
    }
panel-fit_add_tip = Add this change with a slider of its own
panel-fit_take_tip = Choose the size advised for this body, and set the changes it asks for
