# Frases para broches, corchetes y ojetes.

snaps-first = Cosa la mitad plana de cada broche a presión, la que lleva la bolita, por el interior del lado que monta, en { EL($places) }, solo por la capa de dentro.
snaps-second = { $count ->
    [one] Píntela con tiza, cierre la prenda para marcar dónde toca y cosa la otra mitad en { EL($under) }.
   *[other] Píntela con tiza, cierre la prenda para marcar dónde toca y cosa las otras mitades en { EL($under) }.
}
snaps-why = La tiza marca el lugar exacto, para que el borde cerrado quede plano.

hooks-first = { $count ->
    [one] Cosa el gancho del corchete por el interior del lado que monta, en { EL($places) }, un poco retirado del borde.
   *[other] Cosa los ganchos de los corchetes por el interior del lado que monta, en { EL($places) }, un poco retirados del borde.
}
hooks-second = { $count ->
    [one] Cierre la prenda, marque hasta dónde llega el gancho y cosa la presilla en { EL($under) }.
   *[other] Cierre la prenda, marque hasta dónde llegan los ganchos y cosa las presillas en { EL($under) }.
}
hooks-why = Un poco retirado del borde, el gancho no se ve y el lado que monta queda tenso.
eyes-first = { $count ->
    [one] Cosa el gancho por el interior de un borde, en { EL($places) }, con la curva retirada { $reach } del borde, por los dos aros y sobre el vástago por debajo de la curva.
   *[other] Cosa los ganchos por el interior de un borde, en { EL($places) }, con la curva retirada { $reach } del borde, por los dos aros y sobre el vástago por debajo de la curva.
}
eyes-second = { $count ->
    [one] Cosa la anilla por el interior del otro borde, en { EL($under) }, de modo que sobresalga { $reach }, por los dos aros y sobre el alambre a ambos lados junto al borde.
   *[other] Cosa las anillas por el interior del otro borde, en { EL($under) }, de modo que sobresalgan { $reach }, por los dos aros y sobre el alambre a ambos lados junto al borde.
}
eyes-close = { $count ->
    [one] Engánchelo: los bordes se tocan justo, sin montar ni abrirse.
   *[other] Engánchelos: los bordes se tocan justo, sin montar ni abrirse.
}
eyes-why = Retirado lo mismo que sobresale la anilla, el gancho junta los dos bordes y queda escondido detrás.

eyelets-back = Termofije o hilvane un retal de entretela por detrás, en { EL($places) }.
eyelets-set = Ponga en cada lugar un ojete según las instrucciones del fabricante, o haga un ojal pequeño, solo a través de esta capa.
eyelets-why = En una sola capa, el cordón sale de la jareta y no atraviesa la prenda; el retal evita que el agujero se desgarre.
cord_holes-work = Haga un ojal pequeño en { EL($places) } a través de esta sola capa y su entretela, tan largo que el cordón corra sin esfuerzo.
cord_holes-cut = Ponga un alfiler atravesado en cada extremo y abra el ojal con el descosedor, desde el centro hacia fuera.
lacing_eyelets-back = Compruebe que hay entretela entre las capas donde van los ojetes; si no, termofije o hilvane una tira a lo largo del borde.
lacing_eyelets-set = Haga un agujero pequeño a través de todas las capas en { EL($places) } y, enfrente, en { EL($opposite) }. Ponga en cada uno un ojete según las instrucciones del fabricante, con la cara buena por fuera.
lacing_eyelets-lace = Ate los dos bordes con el cordón: cada ojete debe quedar a la altura del de enfrente.
lacing_eyelets-why = El cordón tira con fuerza de cada agujero: todas las capas y la entretela reparten el esfuerzo.
