# A lesson shown large (kit/live/large.py): before a room or a camera. Read from far away, so short.
large-open = Show large
large-leave = Leave
large-back = Back
large-next = Next
large-look = Ground
large-sliders = Sliders
large-help = Page Up and Page Down go through the steps, B changes the ground, H hides the sliders, Esc leaves.
large-look_light = Light
large-look_dark = Dark
large-look_green = Green
large-look_blue = Blue
