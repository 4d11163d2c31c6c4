# The canvas: the draft on the screen, with handles to drag.

canvas-title = The draft of { $lesson }
canvas-help = Drag a handle to change its value. Drag the paper to move it; after a click on it the wheel zooms. Tab goes from handle to line; the arrow keys move a handle, with Shift ten steps; plus, minus and 0 zoom.
canvas-show = Show
canvas-whole = The draft
# $number: which step it is; $title: the step's own title.
canvas-step = Step { $number }: { $title }
canvas-nearer = Zoom in
canvas-farther = Zoom out
canvas-fit = Fit
canvas-undo = Undo
canvas-redo = Redo
canvas-layers = Layers
canvas-layer_grid = Grid
canvas-layer_body = Body outline
canvas-layer_block = Block as started from
canvas-layer_ghost = Step before
canvas-layer_stitch = Stitch lines
canvas-layer_cut = Cut lines
canvas-layer_dims = Dimensions
canvas-grid_cm = Grid: 1 cm, heavy every 10 cm
canvas-grid_cm_far = Grid: 10 cm, heavy every metre
canvas-grid_inch = Grid: 1 in, heavy every 12 in
canvas-grid_inch_far = Grid: 12 in, heavy every 36 in
# $edge: the edge as people say it; $piece: the piece's title; $length: in both units.
canvas-edge = { $edge }, { $piece }: { $length }.
# $shut: its length once its darts, pleats and tucks are folded shut.
canvas-edge_shut = { $edge }, { $piece }: { $length }, { $shut } when folded shut.
# $edges: edges with their pieces, such as "side seam of the back".
canvas-sewn_to = Sewn to { $edges }.
canvas-hemmed = Hemmed.
canvas-faced = Faced.
canvas-finished = Finished.
canvas-on_fold = On the fold.
canvas-not_sewn = Not sewn to anything.
canvas-point = { $point }, { $piece }
# $parameter: what it is called; $value: its value in both units; $why: the reason the lesson gives.
canvas-handle = { $parameter }: { $value }
canvas-handle_why = { $parameter }: { $value } ({ $why })
canvas-measure = { $name } { $value }
# $measure: a girth as people say it, such as "waist girth".
canvas-quarter = quarter of { THE($measure) } { $length }
canvas-silent = The kernel does not answer. If it has stopped, restart it and run all cells.
