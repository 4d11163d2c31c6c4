# Lo que hay en un lugar del borde cuando una línea de costura se hace rodar sobre la otra.

walk-start = comienzo
walk-end = final
walk-notch = piquete
walk-double_notch = piquete doble
walk-corner = esquina
# Donde un borde de una serie se encuentra con el siguiente.
walk-seam = { $first } con { $second }
# $first es el nombre de una abertura marcada en el borde.
walk-mark_start = comienzo de { $first }
walk-mark_end = final de { $first }
walk-both = { $names }
