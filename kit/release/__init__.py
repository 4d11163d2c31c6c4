"""A lesson made ready to sell or to hand out: one folder with all its files, checked before it is made."""
