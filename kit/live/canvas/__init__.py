"""The canvas: the draft drawn in the browser from its control points, with handles that shape it.

The kernel sends numbers, the browser draws them. `shown` says which pieces a view shows and where they lie, `state`
turns them into items and one row of numbers, `handles` finds what can be dragged, `sewn` what each edge is sewn to,
`outline` draws the body; `menu` answers the Draw menu; `widget` joins them to the lesson and to
`templates/live/canvas.js`.
"""
