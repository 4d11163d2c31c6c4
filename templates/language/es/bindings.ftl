# Frases para ribetear y para la vista al bies.

bind-trim = Recorte por completo el margen de { $trim } en { EL($edge) }: el ribete ocupa su lugar.
bind-fold = Doble { EL($strip) } por la mitad a lo largo y planche, lleve los dos bordes largos hasta el doblez central, planche y vuelva a abrir.
bind-fold_double = Doble { EL($strip) } por la mitad a lo largo, revés con revés, planche y deje el doblez hecho.
bind-pin = Sujete con alfileres { EL($strip) } sobre { EL($edge) } por el derecho, borde con borde. Embeba en las curvas hacia fuera y estire un poco en las curvas hacia dentro.
bind-ends_ring = Donde se encuentran los extremos, únalos planos antes de coser el último tramo, o doble uno { $turned } hacia dentro y meta en él el otro.
bind-ends_turned = Doble { $turned } hacia dentro en cada extremo.
bind-ends_caught = Deje que los extremos lleguen hasta el margen: los sujetará una costura posterior.
bind-sew = Cosa a { $finished } del borde.
bind-wrap = Vuelva la tira por encima del borde hacia el revés y meta su borde, de modo que el doblez cubra justo las puntadas.
bind-wrap_double = Vuelva el borde doblado hacia el revés, de modo que cubra justo las puntadas.
bind-last_machine = Cosa por el derecho en el surco de la costura, de modo que por debajo quede sujeto el doblez.
bind-last_hand = Cosa a mano el doblez a las puntadas, con puntada escondida.
bind-ties_out = Doble { EL($strip) } hacia fuera sobre el ribete y cosa allí un recuadro pequeño con una cruz.
bind-why = Una tira cortada al bies sigue la curva sin hacer pliegues; cortada cuatro veces más ancha que el ribete acabado, cubre el borde por los dos lados con sus propios bordes metidos.
bind-why_double = Doblada en dos se corta seis veces más ancha; dura más y es más fácil en telas finas, porque se cose un doblez y no hay que meter nada.

bias_facing-fold = Planche { $allowance } hacia el revés en uno de los bordes largos { DEL($strip) }.
bias_facing-pin = Sujete con alfileres el otro borde largo sobre { EL($edge) }, derecho con derecho.
bias_facing-sew = Cosa a { $allowance } del borde.
bias_facing-trim = Recorte los márgenes y dé cortes en las curvas.
bias_facing-turn = Vuelva toda la tira hacia dentro y planche, con la costura justo en el borde: ahí mide { $finished } de ancho.
bias_facing-stitch = Pespuntee al filo por el doblez, o cósalo a mano con puntada escondida.
bias_facing-why = Vuelta por completo hacia dentro, la tira es una vista de ancho parejo que no necesita pieza de patrón propia.
