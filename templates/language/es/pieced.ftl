# Frases de kit/sewing/pieced.py: unir los tramos de los que se compone una tira.

pieced-bias_lay = Coloque dos tramos { DEL($strip) } derecho con derecho en ángulo recto, extremo sesgado sobre extremo sesgado, de modo que los bordes largos se crucen a { $allowance } de los extremos sesgados: a cada lado sobresale una pequeña punta.
pieced-bias_sew = Cosa a { $allowance } de los extremos sesgados, de un cruce al otro.
pieced-bias_open = Abra la costura con la plancha y corte las puntas.
pieced-corner_lay = Coloque los extremos de dos tramos { DEL($strip) } derecho con derecho en ángulo recto, esquina sobre esquina.
pieced-corner_sew = Cosa en diagonal sobre el cuadrado que comparten, de modo que la esquina donde se juntan los dos extremos quede fuera de la costura.
pieced-corner_open = Corte la esquina a { $allowance } de la costura y abra la costura con la plancha.
pieced-straight_lay = Coloque los extremos de dos tramos { DEL($strip) } derecho con derecho.
pieced-straight_sew = Cosa a través, a { $allowance } de los extremos.
pieced-straight_open = Abra la costura con la plancha.
pieced-square_halve = Para { EL($strip) }, corte el cuadrado en dos, de esquina a esquina.
pieced-square_seam = Coloque las dos mitades derecho con derecho por dos bordes que van al hilo, de modo que resulte una pieza inclinada con dos bordes al bies, y cosa a { $allowance } del borde. Abra la costura con la plancha.
pieced-square_rule = Por el revés trace líneas separadas { $width }, empezando en un borde al bies y paralelas a él. Corte lo que sobre en el otro.
pieced-square_tube = Una en tubo, derecho con derecho, los dos bordes al hilo, desplazados una línea, de modo que las líneas coincidan a { $allowance } del borde y en cada extremo sobresalga una tira. Cosa a { $allowance } del borde y abra la costura con la plancha.
pieced-square_cut = Empiece donde sobresale la tira y corte por la línea, vuelta tras vuelta, hasta el otro extremo.
pieced-again = Una del mismo modo los demás tramos, { $joins } uniones en cada tira.
