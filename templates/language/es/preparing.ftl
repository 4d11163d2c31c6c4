# Frases para fruncir, embeber e hilvanar.

gather-sew = Ponga la puntada más larga y haga dos hileras en { EL($edge) }, separadas { $apart }, una a cada lado de la línea de costura. Deje los hilos largos y no remate.
gather-sew_more = Ponga la puntada más larga y haga { $rows } hileras en { EL($edge) }, separadas { $apart }. Deje los hilos largos y no remate.
gather-mark = Marque los cuartos { DEL($edge) } y los del borde con el que se va a coser.
gather-draw = Tire de los hilos de la bobina desde los dos extremos hasta que mida { $to } en vez de { $full }, y enrósquelos en un alfiler.
gather-draw_to_fit = Tire de los hilos de la bobina desde los dos extremos hasta que el borde coincida con { EL($fit) }: { $to } en vez de { $full }. Enrósquelos en un alfiler.
gather-spread = Reparta los frunces por igual entre las marcas.
gather-why = Con dos hileras los pequeños pliegues quedan uno junto a otro; con una sola se vuelcan.
gather-why_quarters = Con los cuartos marcados, la amplitud queda donde la pide el diseño.

ease_stitch-sew = Haga una hilera de puntadas largas en { EL($edge) }, a { $distance } por fuera de la línea de costura, y deje los hilos largos.
ease_stitch-sew_two = Haga dos hileras de puntadas largas dentro del margen { DEL($edge) }, la primera a { $distance } por fuera de la línea de costura, y deje los hilos largos.
ease_stitch-draw = Tire del hilo de la bobina hasta que el borde mida { $less } menos y quede en { $to }.
ease_stitch-draw_to_fit = Tire del hilo de la bobina hasta que el borde mida { $less } menos y quede en { $to }: así coincide con { EL($fit) }.
ease_stitch-draw_later = Tire un poco del hilo de la bobina, hasta que el borde empiece a curvarse.
ease_stitch-smooth = Reparta la amplitud con los dedos hasta que no se vea ningún pliegue y encójala con vapor.
ease_stitch-why = Un borde más largo, recogido sin pliegues, da espacio al cuerpo: en el hombro, en el codo, en las nalgas.

baste-sew = Hilvane { EL($edge) } a { $distance } por fuera de la línea de costura, a través de todas las capas.
baste-sew_on_line = Hilvane { EL($edge) } por la línea de costura, a través de todas las capas, con un hilo de otro color.
baste-sew_together = Sujete con alfileres { EL($edge) }, derecho con derecho, e hilvane por la línea de costura con un hilo de otro color.
baste-later = Este hilván se quita después. Si la costura empieza revés con revés o con un doblez, antes de la primera pasada; si no, cuando la costura está cosida, muy cerca del hilván y no a través de él.
baste-why = Las puntadas largas sujetan las capas donde con alfileres se moverían, y se quitan con facilidad.

remove_basting-pull = Quite el hilván { DEL($edge) }: córtelo cada pocas puntadas y tire.
