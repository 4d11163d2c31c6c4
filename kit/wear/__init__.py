"""The garment on the body: where its levels lie, how far round it is at each, what goes in and out of it, and how it is
worn. Pure functions of a pattern; nothing here is compiled."""
