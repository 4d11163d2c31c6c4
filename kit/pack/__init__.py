"""Fitting shapes together on a ground of cells: which a shape takes, where it is free to lie, in what order to lay."""
