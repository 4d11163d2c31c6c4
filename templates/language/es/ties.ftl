# Frases para asas y tiras con dos extremos.

attach_handle-caught_place = Coloque los dos extremos { DEL($strip) } por el derecho sobre { EL($run) }, borde con borde, { $spots }.
attach_handle-in_hem_place = Coloque por dentro los dos extremos { DEL($strip) } sobre { EL($run) }, borde con borde, { $spots }.
attach_handle-stitched_on_place = Coloque por dentro los dos extremos { DEL($strip) } sobre { EL($run) }, montados { $lap }, { $spots }.
attach_handle-notches = Los piquetes marcan los dos lugares.
attach_handle-twist = Compruebe que nada quede retorcido.
attach_handle-caught_sew = Hilvane los extremos dentro del margen; los sujetará la costura siguiente. Mantenga apartado el resto de la tira.
attach_handle-in_hem_sew = Hilvane los extremos dentro del margen. Doble el dobladillo por encima; una vez cosido, doble { EL($strip) } hacia arriba sobre el dobladillo y cosa también ahí.
attach_handle-stitched_on_sew = Cosa cada extremo en un recuadro pequeño con una cruz.
attach_handle-why = Lo que soporta peso va sujeto en una costura o un dobladillo y sujeto por una segunda costura: una sola se desgarra.
