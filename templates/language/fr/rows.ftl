# Phrases de kit/sewing/portion.py.

rows-go_on = Reprendre ici : { $place }.
