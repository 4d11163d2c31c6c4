"""The one room where names, lists, values and messages are put into words, in the spoken language."""
