# Phrases de kit/sewing/portion.py.

rows-go_on = Reprendre ici : { $place }.
rows-go_on_strip = Reprendre ici : la bande ({ $strip }).
