# The class copy: exercises with their goals, and the student's own pages.
# $what is a place such as "Front: underarm seam"; lengths come with their unit, in both systems.

class_copy-edge = { $piece }: { $edge }

class_copy-grows = { $what } – to become { $by } longer.
class_copy-grows_met = { $what } – { $change } longer, as asked.
class_copy-grows_none = { $what } – not longer yet; { $missing } missing.
class_copy-grows_short = { $what } – { $change } longer so far; { $missing } missing.
class_copy-grows_over = { $what } – { $change } longer; that is { $over } too much.
class_copy-grows_wrong = { $what } – { $change } shorter now; it should become { $by } longer.

class_copy-shrinks = { $what } – to become { $by } shorter.
class_copy-shrinks_met = { $what } – { $change } shorter, as asked.
class_copy-shrinks_none = { $what } – not shorter yet; { $missing } missing.
class_copy-shrinks_short = { $what } – { $change } shorter so far; { $missing } missing.
class_copy-shrinks_over = { $what } – { $change } shorter; that is { $over } too much.
class_copy-shrinks_wrong = { $what } – { $change } longer now; it should become { $by } shorter.

class_copy-keeps = { $what } – to stay as it is.
class_copy-keeps_met = { $what } – as it was.
class_copy-keeps_longer = { $what } – { $by } longer; it should stay as it was.
class_copy-keeps_shorter = { $what } – { $by } shorter; it should stay as it was.
class_copy-keeps_moved = { $what } – moved by { $by }; it should stay where it was.

class_copy-is_length = { $what } – to measure { $length }.
class_copy-at_least = { $what } – to measure { $length } or more.
class_copy-at_most = { $what } – to measure { $length } or less.
class_copy-length_met = { $what } – { $length }, as asked.
class_copy-too_short = { $what } – { $length }; { $missing } missing.
class_copy-too_long = { $what } – { $length }; { $over } too much.

# $way is how a point moves: "2 cm (3/4 in) up", or two ways joined.
class_copy-moves = { $what } – to move { $way }.
class_copy-moves_met = { $what } – moved { $way }, as asked.
class_copy-moves_short = { $what } – still to move { $way }.
class_copy-up = { $by } up
class_copy-down = { $by } down
class_copy-out = { $by } outward
class_copy-in = { $by } inward

class_copy-sound = The proof finds nothing wrong.
class_copy-sound_met = The proof finds nothing wrong.
# $first is the first finding, a sentence.
class_copy-sound_not =
    { $count ->
        [one] The proof finds something to look at. { $first }
       *[other] The proof finds { $count } things to look at. { $first }
    }

# The exercise on the screen.
class_copy-exercise = Exercise: { $title }
class_copy-done = Well done – { $title } is solved.
class_copy-start = Start from the lesson's values
class_copy-start_tooltip = Puts every value back; goals are measured from the lesson's own draft
class_copy-hint =
    { $left ->
        [one] Show a hint (one left)
       *[other] Show a hint ({ $left } left)
    }
class_copy-no_hint = No more hints
class_copy-hint_tooltip = Hints come one at a time
class_copy-goal_met = done
class_copy-goal_open = not yet
class_copy-answer = Show the answer
# $value comes with its unit.
class_copy-answer_line = { $name }: { $value }
class_copy-waiting = The draft cannot be drawn with these values yet.

# The class copy's own page.
class_copy-title = { $title } – class copy
class_copy-welcome = Move the sliders: the picture, the numbers and the proof follow. Enter your own measurements, try the exercises, and print the pattern in your size. Your values are kept for you alone.
class_copy-values = Values
class_copy-body = Your own measurements
class_copy-exercises = Exercises
class_copy-print = Your pattern

# The student's own pages.
class_copy-print_mine = Print my size
class_copy-print_tooltip = Makes your booklet and your pattern pages, in your size and with your values
class_copy-paper = Paper
class_copy-booklet_too = With the booklet
class_copy-cancel = Cancel
class_copy-print_run = Drafting the lesson in your size …
class_copy-print_prove = Checking the pattern …
class_copy-print_booklet = Setting the booklet …
class_copy-print_pages = Laying out the pattern pages …
class_copy-print_cancelled = Cancelled. What was made before is still there.
class_copy-print_failed = That did not work: { $why }
class_copy-print_kept = The files below are from before.
class_copy-print_lost = It stopped without saying why. Try again.
# $who is the size or the name of the body, $when a time such as 14:05.
class_copy-print_done = Made for { $who } at { $when }.
class_copy-print_unsound = The proof found something to put right: do not cut from these pages yet.
class_copy-file_booklet = Booklet
class_copy-file_pages = Pattern pages, { $paper }

# The door of a class served to a room.
class_copy-room = Pattern class
class_copy-code = Class code
class_copy-code_enter = Enter
class_copy-code_ask = Type the code your teacher has put on the board.
class_copy-code_wrong = That is not the code of this class. Look again: there is no letter o, i or l and no figure 0 or 1 in it.
class_copy-room_full =
    { $count ->
        [one] There is room for one student, and somebody is here already. Try again when they have left.
       *[other] There is room for { $count } students, and they are all here. Try again when somebody has left.
    }

# ---- a student's refusals ----
class_copy-lesson_gone = the lesson '{ $path }' is not there.
class_copy-lesson_gone_do = Keep the folder that came with the class copy beside it.
class_copy-no_lesson = it is no lesson that can be shown.
class_copy-no_lesson_do = Make the class copy again.
