# Phrases de kit/sewing/operations/band_closing.py.

close_band-turn = Replier la marge de { $allowance } sur l’envers et repasser : { $edge }.
close_band-pin = Poser le pli par-dessus la couture, juste au-delà des points, et épingler ou bâtir.
close_band-edgestitch = Surpiquer au ras sur l’endroit, à travers toutes les épaisseurs, en prenant le pli de dessous.
close_band-groove = Sur l’endroit, piquer dans le sillon de la couture en prenant le pli de dessous.
close_band-hand = Coudre le pli sur les points de la couture, à la main, au point coulé.
close_band-why = Posé un rien au-delà de la couture, le pli est sûrement pris par la piqûre faite de l’autre côté.
