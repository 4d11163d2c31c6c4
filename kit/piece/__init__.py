"""Pattern pieces: edges, allowances, notches, grain and fold."""
