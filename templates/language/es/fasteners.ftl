# Frases para broches, corchetes y ojetes.

snaps-first = Cosa la mitad plana de cada broche a presión, la que lleva la bolita, por el interior del lado que monta, solo por la capa de dentro: { $places }.
snaps-second = Píntela con tiza, cierre la prenda para marcar dónde toca y cosa ahí las otras mitades: { $under }.
snaps-why = La tiza marca el lugar exacto, para que el borde cerrado quede plano.

hooks-first = Cosa los ganchos de los corchetes por el interior del lado que monta, un poco retirados del borde: { $places }.
hooks-second = Cierre la prenda, marque hasta dónde llegan los ganchos y cosa ahí las presillas: { $under }.
hooks-why = Un poco retirado del borde, el gancho no se ve y el lado que monta queda tenso.
eyes-first = Cosa los ganchos por el interior de un borde, con la curva retirada { $reach } del borde, por los dos aros y sobre el vástago por debajo de la curva: { $places }.
eyes-second = Cosa las anillas por el interior del otro borde, de modo que sobresalgan { $reach }, por los dos aros y sobre el alambre a ambos lados junto al borde: { $under }.
eyes-close = Engánchelos: los bordes se tocan justo, sin montar ni abrirse.
eyes-why = Retirado lo mismo que sobresale la anilla, el gancho junta los dos bordes y queda escondido detrás.

eyelets-back = Termofije o hilvane un retal de entretela por detrás: { $places }.
eyelets-set = Ponga en cada lugar un ojete según las instrucciones del fabricante, o haga un ojal pequeño, solo a través de esta capa.
eyelets-why = En una sola capa, el cordón sale de la jareta y no atraviesa la prenda; el retal evita que el agujero se desgarre.
lacing_eyelets-back = Compruebe que hay entretela entre las capas donde van los ojetes; si no, termofije o hilvane una tira a lo largo del borde.
lacing_eyelets-set = Haga un agujero pequeño a través de todas las capas: { $places }, y enfrente: { $opposite }. Ponga en cada uno un ojete según las instrucciones del fabricante, con la cara buena por fuera.
lacing_eyelets-lace = Ate los dos bordes con el cordón: cada ojete debe quedar a la altura del de enfrente.
lacing_eyelets-why = El cordón tira con fuerza de cada agujero: todas las capas y la entretela reparten el esfuerzo.
