# Phrases de kit/sewing/operations/hand_hems.py.

blind_hem-baste = Bâtir l’ourlet près de son pli, pour qu’il ne puisse pas bouger.
blind_hem-hand = Rabattre un peu le bord supérieur de l’ourlet et coudre de droite à gauche à points lâches : un point dans l’ourlet, le suivant dans un seul fil du vêtement.
blind_hem-machine = Replier le vêtement pour que le bord supérieur de l’ourlet dépasse un peu, et coudre au point d’ourlet invisible : les points droits restent sur l’ourlet, seule la pointe de chaque zigzag prend le pli.
blind_hem-press = Retirer le bâti et repasser seulement le pli, pour que le bord supérieur ne marque pas sur l’endroit.
blind_hem-why = Cachés entre l’ourlet et le vêtement, les points ne se voient pas ; laissés un peu lâches, ils ne tirent pas.

wide_hem-ease = Passer un fil d’embu tout près du bord brut { DU($edge) } : une fois relevé, le bord est plus long de { $surplus } que l’endroit où il sera cousu.
wide_hem-tape = Poser l’extra-fort sur l’endroit du bord brut, à cheval sur la moitié de sa largeur, et le piquer au ras du bord.
wide_hem-tape_eased = Resserrer le bord brut de { $surplus }, poser l’extra-fort sur son endroit, à cheval sur la moitié de sa largeur, et le piquer au ras du bord.
wide_hem-draw = Tirer le fil d’embu jusqu’à ce que l’ourlet soit à plat sur le vêtement, et résorber l’embu à la vapeur.
wide_hem-hand = Coudre le bord supérieur à la main à points invisibles lâches.
wide_hem-machine = Coudre le bord supérieur au point d’ourlet invisible de la machine.
wide_hem-press = Repasser seulement le pli, pour que le bord supérieur ne marque pas sur l’endroit.
wide_hem-why = Un ourlet profond leste le vêtement, qui tombe bien, et garde du tissu pour le rallonger plus tard.

rolled_hem-stay = Faire une piqûre à petits points à { $row } du bord coupé { DU($edge) }.
rolled_hem-trim = Recouper au ras de la piqûre à petits points, petit à petit.
rolled_hem-roll = Du pouce et de l’index humides, rouler le bord sur l’envers par-dessus la piqûre, jusqu’à ce que tous deux disparaissent ; cela prend { $first } en tout.
rolled_hem-slip = Coudre le roulotté à la main au point coulé : dans le rouleau, puis dans un seul fil du tissu.
rolled_hem-why = Un bord roulotté est l’ourlet le plus fin pour un tissu transparent : il est à peine plus large qu’un fil.
