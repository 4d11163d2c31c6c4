# The booklet as a web page (phone, tablet) and as an e-book: buttons, progress, contents.

# The button that opens the list of contents, and the heading of that list.
screen-contents = Contents
# In an e-book's list of places: where the text begins.
screen-start = Start of the booklet
# For readers who choose books by what they offer: shown in shops and libraries.
screen-access = Every picture has a text that says what it shows. Headings, lists and tables are marked as such, and the list of contents leads to every step.
screen-close = Close
# The name of the button on a picture. { $picture } is what the picture shows.
screen-enlarge = Enlarge: { $picture }
# The name of the button on a picture that has no text of its own.
screen-enlarge_plain = Enlarge the picture
screen-larger = Larger
screen-smaller = Smaller
# Shows the whole picture again.
screen-whole = Whole picture
# The name of the window in which a picture is enlarged.
screen-picture = Picture
# Beside the box that a reader ticks when a step is done. { $step } is the step's title.
screen-done = Done
screen-done_step = Done: { $step }
# How many steps are ticked, such as "3 of 20 steps done". { $done } and { $total } are figures that the page
# itself puts in: no plural can be chosen by them, so word it without one.
screen-progress = { $done } of { $total } steps done
# Unticks every step.
screen-again = Untick all steps
# Asked before every step is unticked.
screen-again_ask = Untick every step?
screen-again_yes = Untick all
screen-again_no = Keep them
# Shows each step by itself on the screen, the buttons that turn to another, and the one that shows all again.
screen-one = One step at a time
screen-before = The step before
screen-next = Next step
screen-all = Whole booklet
# Said below the steps when the browser does not let the page remember ticks.
screen-forgets = This browser will not keep your ticks: they last until you close the page.
# The last line after a folded booklet was made, and a text that can be printed with it. The numbers are whole.
screen-fold = Print booklet sheets at actual size on both sides, flip on the short edge; then fold the stack in the middle and staple it in the fold.
