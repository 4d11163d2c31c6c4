# Ce qui remédie à un tracé refusé ou qui ne passe pas la vérification : des valeurs trouvées en essayant.
# { $name } est le nom d’une valeur ; { $value } y remédie et { $was } est en place, avec leur unité.

remedy-least = { $name } : au moins { $value }, à présent { $was }.
remedy-most = { $name } : au plus { $value }, à présent { $was }.
remedy-to = { $name } : mettre { $value }, à présent { $was }.
remedy-each = { $name } : { $value }
remedy-together = Ensemble : { $changes }.
remedy-back = Revenir à des valeurs qui vont : { $changes }.
remedy-back_many = { $count ->
    [one] Revenir à une valeur qui va.
   *[other] Revenir à { $count } valeurs qui vont.
}
remedy-one_of = { $count ->
    [one] Ceci y remédie, les autres valeurs restant telles quelles :
   *[other] Chacune de ces valeurs y remédie, les autres restant telles quelles :
}
remedy-no_single = { $count ->
    [one] Aucune valeur seule n’y remédie entre ses limites. Ceci y remédie :
   *[other] Aucune valeur seule n’y remédie entre ses limites. Chacun de ces changements y remédie :
}
remedy-none = Aucune valeur qui y remédie n’a été trouvée entre ses limites.
remedy-for_proof = Pour corriger ce que la vérification a trouvé :
remedy-looking = Recherche de valeurs qui y remédient…
remedy-take = Mettre
remedy-take_back = Revenir
remedy-take_tip = Mettre : { $remedy }
remedy-line = remède : { $remedy }
remedy-own_values = Avec les valeurs de la leçon elle-même :
