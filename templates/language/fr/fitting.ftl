# Ce qu’un essayage a changé, en phrases et dans l’image qui superpose le tracé d’avant et celui d’après.

# $name est une mesure comme la leçon la nomme.
fitting-changed = { $name } : de { $before } à { $after }.

fitting-no_line_moves = Aucune ligne de couture ne bouge.
fitting-new_piece = { $piece } : cette pièce est nouvelle.
fitting-gone_piece = { $piece } : cette pièce ne sert plus.
fitting-hardly = { $piece } : ses lignes bougent de moins d’un millimètre.
fitting-darts = { $piece } : les pinces ou les plis sont à une autre place.
fitting-meets_elsewhere = { $piece } : les lignes restent, mais se rencontrent à un autre endroit.

# Le déplacement d’un bord. $at et $to nomment les bords voisins à ses extrémités.
fitting-all_along =
    { $way ->
        [up] { $piece } : { LE($edge) } monte de { $size } sur toute sa longueur.
        [down] { $piece } : { LE($edge) } descend de { $size } sur toute sa longueur.
        [out] { $piece } : { LE($edge) } s’écarte de { $size } vers l’extérieur sur toute sa longueur.
       *[in] { $piece } : { LE($edge) } rentre de { $size } vers l’intérieur sur toute sa longueur.
    }
fitting-to_nothing =
    { $way ->
        [up] { $piece } : { LE($edge) } monte de { $size } { AU($at) } et meurt à rien { AU($to) }.
        [down] { $piece } : { LE($edge) } descend de { $size } { AU($at) } et meurt à rien { AU($to) }.
        [out] { $piece } : { LE($edge) } s’écarte de { $size } vers l’extérieur { AU($at) } et meurt à rien { AU($to) }.
       *[in] { $piece } : { LE($edge) } rentre de { $size } vers l’intérieur { AU($at) } et meurt à rien { AU($to) }.
    }
fitting-middle =
    { $way ->
        [up] { $piece } : { LE($edge) } monte de { $size } au plus entre ses extrémités.
        [down] { $piece } : { LE($edge) } descend de { $size } au plus entre ses extrémités.
        [out] { $piece } : { LE($edge) } s’écarte de { $size } au plus vers l’extérieur entre ses extrémités.
       *[in] { $piece } : { LE($edge) } rentre de { $size } au plus vers l’intérieur entre ses extrémités.
    }
fitting-unequal =
    { $way ->
        [up] { $piece } : { LE($edge) } monte de { $size } { AU($at) } et de { $other } { AU($to) }.
        [down] { $piece } : { LE($edge) } descend de { $size } { AU($at) } et de { $other } { AU($to) }.
        [out] { $piece } : { LE($edge) } s’écarte de { $size } vers l’extérieur { AU($at) } et de { $other } { AU($to) }.
       *[in] { $piece } : { LE($edge) } rentre de { $size } vers l’intérieur { AU($at) } et de { $other } { AU($to) }.
    }
fitting-one_end =
    { $way ->
        [up] { $piece } : { LE($edge) } monte de { $size } { AU($at) }.
        [down] { $piece } : { LE($edge) } descend de { $size } { AU($at) }.
        [out] { $piece } : { LE($edge) } s’écarte de { $size } vers l’extérieur { AU($at) }.
       *[in] { $piece } : { LE($edge) } rentre de { $size } vers l’intérieur { AU($at) }.
    }

# L’image.
fitting-title = { $piece }, avant et après
fitting-alt = { $piece } avant l’essayage, en tirets, et après, l’un sur l’autre. Ce qui a bougé est en trait épais. { $words }
# La même image pendant qu’une valeur bouge.
fitting-alt_moving = { $piece } avant l’essayage, en tirets, et dans son état actuel, l’un sur l’autre.
