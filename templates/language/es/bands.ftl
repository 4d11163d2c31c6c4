# Frases para bandas y pretinas.

seam_band-why = La banda exterior es la que se ve; lleva entretela para que ni los márgenes ni el uso se marquen por fuera.

band_ends-fold = Doble { $pieces } a lo largo, derecho con derecho, canto con canto.
band_ends-sew = Cosa de través en { $edge }, a { $allowance } del canto, por las dos capas, y asegure con puntadas atrás en el doblez.
band_ends-extra = En el extremo que monta, siga la costura doblando la esquina, por los dos cantos largos, hasta donde empieza la prenda. Dé ahí un corte en el margen hasta las puntadas.
band_ends-trim = Recorte los márgenes y corte las esquinas en diagonal, muy cerca de las puntadas.
band_ends-why = Los extremos se cosen por dentro y se vuelven del derecho, para que no quede ningún canto sin rematar donde se abrocha la banda.

set_band-pin = Prenda con alfileres { $band } sobre { $edge }, derecho con derecho.
set_band-match = Haga coincidir centros, costuras y piquetes; los extremos de { $band } quedan justo en los extremos del borde.
set_band-ends_beyond = Haga coincidir centros, costuras y piquetes; un extremo de { $band } sobresale { $beyond } del borde.
set_band-ease = El borde es a propósito { $ease } más largo en total: reparta esa amplitud por igual y préndala con alfileres.
set_band-sew = Cosa a { $allowance } del borde.
set_band-trim = Recorte los márgenes, más estrecho el de { $band }, y dé cortes en las curvas.
set_band-press = Planche los dos márgenes hacia { $band }.
set_band-why = Los márgenes rellenan la banda y quedan dentro al cerrarla; no caen nunca sobre la prenda, donde se marcarían al planchar.

close_band-turn = Doble { $allowance } hacia dentro en { $edge } y planche.
close_band-pin = Coloque el doblez sobre la costura, apenas más allá de las puntadas, y prenda con alfileres o hilvane.
close_band-edgestitch = Pespuntee al filo por el derecho a través de todas las capas, de modo que por debajo quede cogido el doblez.
close_band-groove = Cosa por el derecho en el surco de la costura, de modo que por debajo quede cogido el doblez.
close_band-hand = Cosa a mano el doblez a las puntadas, con puntada escondida.
close_band-why = Si el doblez sobrepasa apenas la costura, la costura hecha desde el otro lado lo coge con seguridad.
