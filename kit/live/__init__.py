"""The lesson in a running notebook: what is shown under each cell, and the panel with its sliders."""
