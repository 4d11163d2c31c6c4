# The step player: going through the steps in front of a camera.

# $lesson: the lesson's title.
player-title = Steps of { $lesson }
player-help = Right and left arrow: next and back. Space: play or pause. Home and End: first and last. F: full window.
player-step_draft = Drafting step { $number }
player-step_sew = Sewing step { $number }
# Which picture of a step it is.
player-part = Picture { $number } of { $count }
# Where one is in the whole lesson, counted in pictures.
player-place = { $number } of { $count }
player-first = First step
player-back = Back
player-play = Play
player-pause = Pause
player-next = Next
player-last = Last step
player-again = Draw again
player-speed = Speed
player-ground = Background
player-ground_paper = Paper
player-ground_white = Plain white
player-ground_green = Plain green
player-ground_blue = Plain blue
player-show_words = Words
player-full = Full window
player-leave = Leave full window
player-silent = No answer. Wait a moment, or restart the kernel and run all cells.
player-empty = This lesson has no steps yet.
player-no_picture = No picture belongs to this step.
# The clock: it counts from the moment the camera starts, and notes when each step is shown.
player-clock = Clock
player-clock_start = Start the clock
player-clock_stop = Stop the clock
player-clock_help = Start it together with the camera. A step that is shown for two seconds is noted.
player-marks = Times in the film
player-marks_none = No step has been noted yet.
player-mark_step = Step
player-mark_time = Time
# $step: the step's title. The name of the field in which its time can be put right.
player-mark_of = Time of { $step }
player-chapters = Chapters
player-copy = Copy
player-copied = Copied.
# $file: a file name.
player-chapters_in = Kept in { $file }.
player-export = Pictures and clips
player-export_kind = Kind
player-export_mp4 = Film (MP4)
player-export_gif = Moving picture (GIF)
player-export_png = Picture, clear background (PNG)
player-export_svg = Drawing (SVG)
player-export_which = Steps
player-export_this = This step
player-export_all = All steps
player-export_size = Size
player-export_seconds = Seconds for each picture
player-export_go = Export
player-export_cancel = Cancel
# $percent: how much is done, 0 to 100; $file: the name of the file being written.
player-export_doing = { $percent } % done: { $file }
# $count: how many files were written; $folder: the folder they are in.
player-export_done =
    { $count ->
        [one] { $count } file is in the folder { $folder }.
       *[other] { $count } files are in the folder { $folder }.
    }
player-export_cancelled =
    { $count ->
        [0] Cancelled; no file was written.
        [one] Cancelled; { $count } finished file is in the folder { $folder }.
       *[other] Cancelled; { $count } finished files are in the folder { $folder }.
    }
player-film_missing = The film cannot be written: what writes MP4 films is not installed.
# $command: what to type, never translated.
player-film_install = Choose a moving picture (GIF) or pictures instead, or install it: type in a cell { $command }, run it, and export again.
player-clock_brief = Count steps shown briefly
player-clock_brief_help = A step counts at once, however short it is shown.
player-export_film = Captions and shot list (VTT, HTML)
player-export_sentence = Sentence below the picture
# The shot list of a film: what is shown, and what to lay ready for it. $lesson: the lesson's title.
player-shots = Shot list: { $lesson }
player-shots_step = Shot
player-shots_picture = Picture
player-shots_ready = Have ready
player-shots_pieces = Pieces
player-shots_pencil = pencil and eraser
player-shots_ruler = long ruler
player-shots_set_square = set square
player-shots_curve = curved ruler
player-shots_compasses = compasses
player-shots_lasts = Its words take about { $seconds } s.
player-shots_short = On show for { $shown } s, and its words take about { $seconds } s: hold the step longer, or its captions go by too fast to be read.
player-film_untimed = The chapters and captions are written once a step has a time.
