# Phrases de kit/sewing/operations/facings.py.

fuse-lay = Poser l’entoilage, face encollée dessous, sur l’envers { DU($pieces) }.
fuse-press = Couvrir d’une pattemouille et presser, en soulevant le fer d’un endroit à l’autre. Laisser refroidir à plat.
fuse-why = L’entoilage empêche un bord de s’étirer et donne aux boutons, aux bandes et aux cols quelque chose de ferme où tenir. On le colle en premier, car une pièce à plat s’entoile sans faux plis.

face_with_interfacing-lay = Poser l’entoilage sur l’endroit { DU($pieces) }, face encollée dessus, et épingler le long { DU($edge) }.
face_with_interfacing-sew = Piquer à { $allowance } { DU($edge) }.
face_with_interfacing-clip = Cranter les marges là où le bord est courbe, presque jusqu’aux points.
face_with_interfacing-turn = Retourner l’entoilage sur l’envers, la colle contre le tissu, et marquer le bord à l’ongle. Ne pas repasser à ce stade.
face_with_interfacing-fuse = Lisser les deux épaisseurs à plat, couvrir d’une pattemouille et thermocoller. { START(LE($edge)) } est ainsi { GENDER($edge) ->
    [f] finie
    [fp] finies
    [mp] finis
   *[m] fini
    }.
face_with_interfacing-why = La couture enferme les deux bords bruts. On colle en dernier, car avant de retourner le fer collerait les mauvaises faces.

attach_facing-pin = Épingler { LE($facing) } sur { LE($edge) }, endroit contre endroit.
attach_facing-sew = Piquer à { $allowance } du bord, sur toute sa longueur.
attach_facing-grade = Dégrader les marges : recouper plus court celle de la parementure.
attach_facing-clip = Cranter les courbes presque jusqu’aux points et dégarnir les angles.
attach_facing-turn = Retourner la parementure vers l’intérieur et repasser, la couture juste au bord.
attach_facing-turn_only = Retourner la parementure vers l’intérieur.
attach_facing-why = Des épaisseurs recoupées à des largeurs différentes ne marquent pas ; les crans laissent une marge courbe s’étaler à plat une fois retournée.

understitch-press = Déplier { LE($facing) } et coucher les marges au fer de ce côté.
understitch-sew = Sous-piquer : piquer sur { LE($facing) }, à { $distance } de la couture, à travers cette épaisseur et les marges seulement.
understitch-roll = Rabattre { LE($facing) } à l’intérieur et repasser : la couture se place d’elle-même un peu à l’intérieur.
understitch-why = La sous-piqûre tire la couture un peu vers l’intérieur, si bien que la parementure ne peut ni ressortir ni se voir.
