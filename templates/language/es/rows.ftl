# Frases de kit/sewing/portion.py.

rows-go_on = Siga ahora con { $place }.
