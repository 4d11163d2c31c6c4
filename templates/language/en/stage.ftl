# The stage (kit/live/stage.py): panel, canvas and player in one place.
stage-title = Stage of { $lesson }
stage-views = The views of the lesson
stage-panel = Sliders
stage-canvas = Drag
stage-player = Step by step
stage-large = Show large
stage-leave = Leave
stage-help = 1, 2 and 3 change the view, Esc leaves.
# The step on show. $step: "Drafting step 2"; $title: its title.
stage-at = { $step }: { $title }
