# Plans de coupe et métrage à acheter.

lay-yardage_note = Chaque longueur est celle d’un plan de coupe calculé avec les vrais contours des pièces, toutes en droit-fil et à { $apart } l’une de l’autre, arrondie comme le tissu se vend.
lay-yardage_shrinkage = Elle tient compte des { $share } de longueur que le tissu perd au lavage ; laver et repasser le tissu avant de couper.
lay-yardage_unwashed = Rien n’est ajouté pour le retrait ; acheter davantage d’un tissu qui rétrécit, et le laver avant de couper.
lay-may_fold = { $sign } Cette longueur suffit aussi sur tissu plié.
lay-falls = La taille { $smaller } demande plus que la taille { $larger } : ses pièces ont été placées tout aussi souvent, mais elles s’emboîtent moins bien.
lay-interfacing_pieced = L’entoilage de ces pièces se coupe en deux longueurs qui se chevauchent de { $overlap } : { $pieces }. En une seule longueur, il en faudrait autant que la pièce est longue.

# L’image.
lay-title = Plan de coupe
lay-heading_main = Tissu principal, { $width } de large, { $length } de long
lay-heading_lining = Doublure, { $width } de large, { $length } de long
lay-heading_interfacing = Entoilage, { $width } de large, { $length } de long
lay-flat_cloth = Déplié à plat, endroit dessus. Couper une seule épaisseur.
lay-flat_interfacing = Déplié à plat ; face encollée, s’il y en a une, dessous. Couper une seule épaisseur.
lay-folded_cloth = Plié dans la longueur, endroit contre endroit. Couper les deux épaisseurs.
lay-folded_interfacing = Plié dans la longueur. Couper les deux épaisseurs.
lay-opened_cloth = Le reste, { $length } de long, déplié à plat, endroit dessus. Couper une seule épaisseur.
lay-opened_interfacing = Le reste, { $length } de long, déplié à plat ; face encollée, s’il y en a une, dessous. Couper une seule épaisseur.
lay-dashed = Contour en tirets : ici le papier est retourné, face imprimée dessous ; une moitié se retourne autour de sa ligne de pliure.
lay-fold = pli
lay-selvedge = lisière
lay-selvedges = les deux lisières
lay-grain = droit-fil
lay-grain_nap = hauts de ce côté
lay-half_width = moitié : { $half }
lay-piece_title = { $number } { $title }
lay-turned_over = papier retourné
lay-strips = { $count ->
    [one] { $count } bande
   *[other] { $count } bandes
}
# Pour qui ne voit pas l’image.
lay-alt = Plan de coupe. { $heading }.
lay-alt_flat = Le tissu est déplié à plat, une seule épaisseur, endroit dessus.
lay-alt_lengthwise = Le tissu est plié dans sa longueur, lisières ensemble.
lay-alt_part = Le tissu est plié dans sa longueur sur la première partie et déplié à plat au-delà.
lay-alt_piece = { $count ->
    [one] La pièce { $number }, { $title }, est placée { $count } fois.
   *[other] La pièce { $number }, { $title }, est placée de façon à en donner { $count }.
}
lay-alt_fold = La pièce { $number }, { $title }, est placée au pli.
lay-alt_over = { $count ->
    [one] { $count } pièce de patron est retournée.
   *[other] { $count } pièces de patron sont retournées.
}
lay-alt_half = { $count ->
    [one] Le papier d’une pièce est une moitié, retournée autour de sa ligne de pliure pour l’autre.
   *[other] Le papier de { $count } pièces est une moitié, retournée autour de sa ligne de pliure pour l’autre.
}
