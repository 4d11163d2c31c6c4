# Constats de la vérification : ce qui ne va pas, et que faire (clés en _do). Le lieu est dit avant. Les noms sont ceux de la
# leçon ; on les met entre guillemets après « le bord », « la pièce », « le repère », pour que rien n’ait à s’accorder.

# ---- où ----
proof-at = { $where } : { $what }
proof-where_step = { $piece }, étape « { $step } »
proof-where_step_alone = étape « { $step } »
proof-where_edge = { $piece }, { $edge }, étape « { $step } »
proof-where_start = Départ
proof-where_notions = Mercerie

# ---- pièces ----
proof-crosses_itself_above = le bord « { $edge } » se croise lui-même, à { $across } de la ligne verticale du tracé et à { $along } au-dessus de sa ligne horizontale.
proof-crosses_itself_below = le bord « { $edge } » se croise lui-même, à { $across } de la ligne verticale du tracé et à { $along } au-dessous de sa ligne horizontale.
proof-crosses_another_above = le bord « { $edge } » croise le bord « { $other } », à { $across } de la ligne verticale du tracé et à { $along } au-dessus de sa ligne horizontale.
proof-crosses_another_below = le bord « { $edge } » croise le bord « { $other } », à { $across } de la ligne verticale du tracé et à { $along } au-dessous de sa ligne horizontale.
proof-crosses_do = Ramener vers son ancienne valeur la mesure changée en dernier, ou redessiner l’un des deux.
proof-no_allowance = le bord « { $edge } » n’a pas de marge.
proof-no_allowance_do = En déclarer une sur le patron, 0 s’il se coupe sur la ligne.
proof-no_grainline = cette pièce n’a pas de droit-fil.
proof-no_grainline_do = En tracer un, pour pouvoir la placer droite sur le tissu.
proof-no_fold_edge = cette pièce se coupe au pli de « { $edge } », mais n’a pas de bord de ce nom.
proof-no_fold_edge_do = Nommer le bord qui se place au pli.
proof-fold_not_straight = le bord « { $edge } » se place au pli, mais n’est pas droit.
proof-fold_not_straight_do = Le tracer à la règle, ou couper la pièce en double.

# ---- pinces et plis ----
proof-dart_spared = cette silhouette n’a pas besoin de pince ici.
proof-dart_spared_do = Ce qu’une étape en fait est sauté.
proof-dart_again_do = Retracer la pince.
proof-dart_legs = les côtés de la pince « { $dart } » mesurent { $one } et { $other } : elle ne ferme pas.
proof-dart_legs_do = Déplacer sa pointe ou un côté jusqu’à ce que les deux aient la même longueur.
proof-slit_adrift = « { $slit } » ne part d’aucun bord de la pièce.
proof-slit_adrift_do = Le tracer depuis le bord où il s’ouvre.
proof-slit_long = « { $slit } » laisse { $room } de tissu après sa fin.
proof-slit_long_do = Le raccourcir, pour qu’il reste au moins { $least }.
proof-slit_raw = « { $slit } » est coupé, mais rien ne finit ses côtés.
proof-slit_raw_do = Piquer une patte : { $call }.
proof-double_dart_legs_do = Placer son endroit le plus large sur la ligne de pointe à pointe, ou déplacer une pointe, jusqu’à ce que les deux côtés aient la même longueur.
proof-double_dart_edge = la pince « { $dart } » entre dans le bord « { $edge } » : elle n’y a pas de pointe.
proof-double_dart_edge_do = La raccourcir pour qu’elle finisse dans la pièce, ou tracer une pince qui s’ouvre sur ce bord.
proof-double_dart_sharp = la pince « { $dart } » prend { $intake } sur { $length } : à la pointe le tissu ferait une cloque.
proof-double_dart_sharp_do = L’allonger ou la rétrécir, ou répartir l’ampleur en deux pinces.
proof-double_darts_cross = les pinces « { $dart } » et « { $other } » se croisent.
proof-double_darts_cross_do = En écarter une.
proof-dart_point_outside = la pointe de la pince « { $dart } » est hors de la pièce.
proof-dart_point_outside_do = Mettre la pointe à l’intérieur.
proof-dart_not_true = le bord « { $edge } » casse de { $degrees } degrés là où la pince « { $dart } » est fermée.
proof-dart_not_true_do = Redessiner le bord en ligne régulière, pince fermée.
# $fold est le nom d’une pince, d’un pli ou d’un pli piqué.
proof-no_cap = il manque le chapeau de « { $fold } » : plié, le tissu n’atteindrait pas le bord, à { $amount } près.
proof-no_cap_do = Le raccorder : { $call }.
proof-pleat_off_edge = « { $fold } » n’est pas sur son bord : de { $start } à { $end } le long de « { $edge } ».
proof-pleat_off_edge_do = Le remettre sur le bord, ou le retracer après avoir changé le bord.
proof-pleat_lines = les deux lignes de « { $fold } » mesurent { $one } et { $other } : elles ne se superposent pas.
proof-pleat_lines_do = Le retracer d’un bord à l’autre, ou déplacer un bout jusqu’à ce que les deux aient la même longueur.
proof-pleat_moved = les lignes de « { $fold } » commencent à { $amount } de leur place sur le bord « { $edge } ».
proof-pleat_moved_do = Retracer le pli : le bord a changé après lui.
proof-pleats_overlap = « { $fold } » et « { $other } » prennent les mêmes { $amount } du bord « { $edge } ».
proof-pleats_overlap_do = Les écarter ou en faire un moins profond.
proof-pleat_not_true = le bord « { $edge } » casse de { $degrees } degrés là où « { $fold } » se plie.
proof-pleat_not_true_do = Redessiner le bord en ligne régulière, pli fermé.
proof-never_folded = aucune étape ne plie « { $fold } ».
proof-never_sewn = aucune étape ne pique « { $fold } ».
proof-never_folded_do = Ajouter l’étape : { $call }.

# ---- bords et marges ----
proof-edge_never_sewn = le bord « { $edge } » n’est jamais cousu, fini par une parementure ni ourlé ({ $length }).
proof-edge_left_raw = le bord « { $edge } » reste brut { $stretch }, soit { $part } sur { $length }.
proof-raw_edge_do = Ajouter la couture, la parementure ou l’ourlet qui le ferme, ou le finir avec make.edge_finish(..., leave=True).
proof-ends_of_ring_caught = les bouts de la bande doivent être pris dans une couture faite plus tard, mais « { $place } » fait déjà partie d’un tour fermé : plus aucune couture ne le croise.
proof-ends_of_ring_caught_do = Écrire ends="ring" pour que les bouts soient raccordés, ou ne pas écrire ends=.
proof-ends_not_caught = les bouts de la bande doivent être pris dans une couture faite plus tard, mais aucune n’est faite le long de « { $place } » après cette étape.
proof-ends_not_caught_do = Faire cette couture après, ou écrire ends="turned" pour que les bouts soient rentrés.
proof-allowance_too_wide = le patron donne { $given } au bord « { $edge } », mais la couture en prend { $taken } : { $amount } de trop.
proof-allowance_too_narrow = le patron donne { $given } au bord « { $edge } », mais la couture en prend { $taken } : il manque { $amount }.
proof-allowance_do = Changer la marge sur le patron, ou les largeurs dans l’étape de couture.

# ---- ce qui est coupé et utilisé ----
proof-interfacing_piece_unused = cet entoilage est coupé pour la pièce « { $piece } », mais jamais collé.
proof-interfacing_piece_unused_do = Ajouter l’entoilage comme première étape de cette pièce, ou l’ôter du patron.
proof-piece_unused = cette pièce est coupée, mais aucune étape de couture ne s’en sert.
proof-piece_unused_do = La coudre, ou l’ôter du patron.
proof-interfacing_unused = un entoilage est coupé pour cette pièce, mais jamais collé.
proof-interfacing_unused_do = Ajouter l’entoilage comme première étape de cette pièce, ou ne pas couper d’entoilage.
proof-interfacing_count =
    { $cloth ->
        [one] { $cloth } pièce est coupée en tissu
       *[other] { $cloth } pièces sont coupées en tissu
    }, mais { $interfacing } en entoilage.
proof-interfacing_count_do = Couper l’entoilage pour chacune : { $call }.
proof-strip_never_made = cette bande est coupée, mais jamais confectionnée.
proof-strip_never_attached = cette bande est coupée, mais jamais posée.
proof-strip_too_few =
    { $count ->
        [one] cette bande est coupée, mais { $count } seule est posée sur { $cut }.
       *[other] cette bande est coupée, mais { $count } seulement sont posées sur { $cut }.
    }
proof-strip_unused_do = La confectionner et la poser, ou l’ôter de la liste de coupe.
proof-loose_piece =
    { $count ->
        [one] aucune couture ne relie cette pièce au reste : { $pieces }.
       *[other] aucune couture ne relie ces pièces au reste : { $pieces }.
    }
proof-loose_piece_do = Ajouter la couture qui manque.

# ---- coutures ----
# $longer et $shorter sont des bords avec leur pièce.
proof-seam_length = le bord « { $longer } » est plus long de { $amount } que le bord « { $shorter } » auquel il est cousu, mesure prise sur la ligne de couture.
proof-seam_length_do = Rendre les deux égaux sur le tracé, ou dire dans la couture que l’un est soutenu : ease=...
proof-facing_length_do = Tracer la parementure d’après le bord même du vêtement.
proof-ease_amount = la couture annonce un embu de { $ease }, mais ses bords diffèrent de { $amount }.
proof-ease_amount_do = Changer l’embu ou le tracé pour qu’ils s’accordent.
proof-notch_alone = le cran à { $at } le long de « { $run } » est cousu à « { $other } » et n’y a pas de cran en face.
proof-notch_misses = le cran à { $at } le long de « { $run } » est cousu à « { $other } » et y manque son cran de { $amount }.
proof-notch_do = Mettre les deux crans à la même distance le long de la couture.
proof-opening_moved = le repère « { $mark } » va de { $start } à { $end } le long du bord « { $edge } », mais la couture laisse ouvert de { $left } à { $right }.
proof-opening_moved_do = Marquer les deux côtés de la couture au même endroit.
proof-opening_sewn_shut = le repère « { $mark } » y est tracé, mais aucune couture ne le laisse ouvert.
proof-opening_sewn_shut_do = Nommer le repère dans la couture qui passe dessus : opening=..., ou gap=... s’il ne sert qu’à retourner l’ouvrage.
proof-no_sewing = la leçon n’a pas d’étapes de couture : coutures et bords bruts ne sont pas vérifiés.
proof-no_sewing_do = Ajouter les étapes de couture.

# ---- angles ----
proof-corner_facing = au bout du bord « { $edge } » (pièce « { $piece } »), l’angle avec « { $beside } » mesure { $degrees } degrés ; celui de la pièce « { $facing } », qui se retourne dessus, { $facing_degrees } : les deux ne se superposeront pas.
proof-corner_facing_do = Tracer la parementure d’après les bords mêmes du vêtement.
proof-corner_point = là où le bord « { $edge } » (pièce « { $piece } ») rencontre « { $other_edge } » (pièce « { $other_piece } »), au bout de cette couture, la ligne casse de { $degrees } degrés : elle fait une pointe.
proof-corner_dip = là où le bord « { $edge } » (pièce « { $piece } ») rencontre « { $other_edge } » (pièce « { $other_piece } »), au bout de cette couture, la ligne casse de { $degrees } degrés : elle fait un creux.
proof-corner_point_halves = là où le bord « { $edge } » (pièce « { $piece } ») rencontre celui de l’autre moitié, au bout de cette couture, la ligne casse de { $degrees } degrés : elle fait une pointe.
proof-corner_dip_halves = là où le bord « { $edge } » (pièce « { $piece } ») rencontre celui de l’autre moitié, au bout de cette couture, la ligne casse de { $degrees } degrés : elle fait un creux.
proof-corner_do = Raccorder les deux bords : fermer la couture et tracer par-dessus une ligne régulière ; ou déclarer l’angle s’il est voulu.

# ---- ourlets, parementures et marges repliés ----
# $depth : profondeur du repli ; $surplus : sur tout le bord ; $sharp : dans $window au pire endroit, à $at le long du bord.
proof-fold_longer = replié sur { $depth }, le bord « { $edge } » est, à son bord replié, plus long de { $surplus } que la ligne où il se pose ; le pire est à { $at } du début, { $sharp } sur { $window } ({ $share }, et le tissu se résorbe d’environ { $eases }).
proof-fold_longer_by_far = replié sur { $depth }, le bord « { $edge } » est, à son bord replié, plus long de { $surplus } que la ligne où il se pose ; le pire est à { $at } du début, { $sharp } sur { $window } (plus de { $share }, et le tissu se résorbe d’environ { $eases }).
proof-fold_shorter = replié sur { $depth }, le bord « { $edge } » est, à son bord replié, plus court de { $surplus } que la ligne où il se pose ; le pire est à { $at } du début, { $sharp } sur { $window } ({ $share }, et le tissu se prête d’environ { $eases }).
proof-fold_longer_there = replié sur { $depth }, le bord « { $edge } » est, à son bord replié, plus long de { $sharp } sur { $window } que la ligne où il se pose, à { $at } du début ({ $share }, et le tissu se résorbe d’environ { $eases }).
proof-fold_shorter_there = replié sur { $depth }, le bord « { $edge } » est, à son bord replié, plus court de { $sharp } sur { $window } que la ligne où il se pose, à { $at } du début ({ $share }, et le tissu se prête d’environ { $eases }).
proof-fold_can_be_eased = Sur toute sa longueur, cela se résorbe, mais pas à ce seul endroit.
proof-fold_can_be_drawn_out = Sur toute sa longueur, cela s’étire, mais pas à ce seul endroit.
proof-fold_in_pleats = Il fera des plis.
proof-fold_pulls = Il tirera.
proof-fold_clip_do = Cranter la courbe : clip=True.
proof-fold_shallower_do = Ne pas replier plus de { $depth }, ou poser une parementure au bord.
proof-fold_ease_do = Le resserrer par un fil d’embu le long de l’ourlet, ou ne pas replier plus de { $depth }.
proof-fold_face_do = Poser une parementure ou border le bord : aucun ourlet replié ne sera plat ici.
proof-end_angle = le bord « { $edge } » est courbe, et le bout de sa marge à la rencontre de « { $beside } » s’écarte de { $degrees } degrés de l’image en miroir de ce bord.
proof-hem_end_angle_do = Tracer le bout de l’ourlet en miroir du bord qu’il rencontre, ou mettre l’ourlet d’équerre avec lui.
proof-seam_end_angle_do = Tracer le bout de la marge en miroir du bord qu’il rencontre.
proof-hem_beside_fold = le bord « { $edge } » ne rencontre pas le pli à angle droit : repliée, sa marge tombe à { $amount } du pli.
proof-seam_beside_fold = le bord « { $edge } » ne rencontre pas le pli à angle droit : rabattue, sa marge tombe à { $amount } du pli.
proof-beside_fold_do = Tracer la fin de l’ourlet d’équerre avec le pli, ou déclarer l’angle si une pointe est voulue.
proof-hem_end_beyond = une fois replié, le bout du bord « { $edge } » dépasse de { $amount } le bord coupé de « { $beside } ».
proof-hem_end_short = une fois replié, le bout du bord « { $edge } » s’arrête à { $amount } du bord coupé de « { $beside } ».
proof-seam_end_beyond = une fois rabattu, le bout du bord « { $edge } » dépasse de { $amount } le bord coupé de « { $beside } ».
proof-seam_end_short = une fois rabattu, le bout du bord « { $edge } » s’arrête à { $amount } du bord coupé de « { $beside } ».
proof-end_do = Tracer son bout en miroir de « { $beside } » : laisser l’angle suivre l’ordre de couture ou écrire "turned" ; si l’angle est trop aigu pour cela, réduire la marge ou poser une parementure au bord.

# ---- ce qui est commencé et jamais fini ----
proof-never_pressed = la couture « { $edge } » devait être repassée plus tard et ne l’est jamais.
proof-never_pressed_do = Ajouter { $call }.
proof-never_finished = { $place } : commencé et jamais terminé ; il reste des piqûres à faire.
proof-never_finished_do = Écrire { $call } dans cette étape, après le début, ou dans une étape suivante.
proof-never_turned_out = cette pièce est cousue pour être retournée et ne l’est jamais.
proof-never_turned_out_do = Ajouter make.turn_out(...).
proof-never_band_closed = la ceinture (ou le poignet, le col) montée le long de « { $place } » n’est jamais refermée sur la couture.
proof-never_band_closed_do = Ajouter make.close_band(...).
proof-never_buttoned = aucun bouton pour « { $place } ».
proof-never_buttoned_do = Ajouter make.buttons(..., holes=...). Un lien passe par une ouverture laissée dans une couture : front.leave_open(...).
proof-never_eyelet_used = aucun cordon ne sort ici : « { $place } ».
proof-never_eyelet_used_do = Enfiler un cordon : make.thread_cord(...).
proof-never_threaded = la coulisse de « { $place } » reste vide.
proof-never_threaded_do = Y passer un élastique ou un cordon.
proof-never_row_gap_closed = l’ouverture laissée dans la coulisse de « { $place } » n’est jamais fermée.
proof-never_row_gap_closed_do = La nommer là où l’on enfile l’élastique ou le cordon : gap=....
proof-never_bag_closed = le sac de sa poche n’est jamais fermé.
proof-never_bag_closed_do = Coudre les deux sacs ensemble.
proof-never_pocket_edge_sewn = le bord « { $place } » est replié au fer et jamais cousu.
proof-never_pocket_edge_sewn_do = Coudre la poche : make.patch_pocket(...).
proof-never_basting_out = le bâti le long de « { $place } » n’est jamais retiré.
proof-never_basting_out_do = Ajouter make.remove_basting(...).
proof-never_used = ce que préparait « { $place } » n’est jamais fait.
proof-never_used_do = Le terminer.

# ---- les mots de la leçon et sa liste de mercerie ----
proof-placeholder = le texte nomme { $name }, que l’étape ne connaît pas.
proof-placeholder_near = Fallait-il lire « { $name } » ?
proof-placeholder_known = Connus ici : { $names }.
proof-placeholder_none = Il n’y en a pas encore ici.
proof-notion_missing = il faut pour coudre : { $need } ; la liste de mercerie ne le dit pas.
proof-notion_missing_do = Ajouter à la mercerie de la leçon : { $need }.
proof-notion_braces = la liste de mercerie dit « { $notion } », et rien n’y est mis entre les accolades : c’est imprimé tel quel.
proof-notion_braces_do = Écrire le nombre, ou le laisser de côté : l’étape de couture dit combien couper.
proof-notion_spare = la liste de mercerie nomme « { $notion } », mais aucune étape de couture ne s’en sert.
proof-notion_spare_do = L’ôter de la liste, ou ajouter l’étape qui en a besoin.
proof-notion_count = la couture emploie { $wanted } × { $need }, et la liste de mercerie en compte { $listed }.
proof-notion_count_do = Inscrire { $wanted } × { $need } sur la liste.
proof-notion_length = la couture demande { $wanted } ({ $need }), et la liste de mercerie indique { $listed }.
proof-notion_length_do = Inscrire { $wanted } sur la liste, ou changer ce que la couture demande.

proof-need_thread = fil
proof-need_interfacing = entoilage
proof-need_sewn_in_interfacing = entoilage à coudre
proof-need_zip = fermeture à glissière
proof-need_invisible_zip = fermeture invisible
proof-need_buttons = boutons
proof-need_snaps = boutons-pression
proof-need_hooks = agrafes
proof-need_eyelets = œillets
proof-need_elastic = élastique
proof-need_cord = cordon
proof-need_bias_binding = biais
proof-need_hem_tape = extra-fort

# Mots ou débuts de mots auxquels se reconnaît la mercerie d’une leçon (séparés par |, en minuscules).
proof-listed_thread = fil | thread
proof-listed_interfacing = entoilage | thermocollant | vlieseline | interfacing
proof-listed_sewn_in_interfacing = entoilage | triplure | interfacing
proof-listed_zip = fermeture à glissière | fermeture éclair | fermeture | zip
proof-listed_invisible_zip = fermeture invisible | fermeture à glissière invisible | invisible zip
proof-listed_buttons = bouton | button
proof-listed_snaps = pression | snap
proof-listed_hooks = agrafe | crochet | hook
proof-listed_eyelets = œillet | oeillet | eyelet
proof-listed_elastic = élastique | elastique | elastic
proof-listed_cord = cordon | cord
proof-listed_bias_binding = biais | bias binding
proof-listed_hem_tape = extra-fort | ruban d’ourlet | ruban d’ourlet | hem tape
proof-halves_crossed = { $edge } est cousu à { $other } de { $piece } : l’un des deux se retrouve alors à l’envers.
proof-halves_crossed_do = Coudre gauche sur gauche et droite sur droite.
proof-band_way = { $piece } : dans l’ordre où les bords sont nommés, { $end } se trouve ici : { $place } ; dessinée ainsi et coupée face imprimée dessus, sur l’endroit du tissu, cette extrémité se trouve ici : { $other }.
proof-band_way_do = Nommer les bords dans l’ordre inverse, ou dessiner la pièce avec cette extrémité de l’autre côté.

# ---- surplus d’essayage, et tracés qu’un essayage change ----
proof-extra_left = ce bord est coupé plus large de { $amount } pour l’essayage, et cela n’est jamais recoupé : { $edge }.
proof-extra_left_do = Le recouper une fois le vêtement ajusté : { $call }.
proof-extra_sewn = ce bord est cousu alors que son surplus de { $amount } est encore là ; mesurée depuis le bord coupé, la couture se trouve d’autant trop à l’extérieur : { $edge }.
proof-extra_sewn_do = Pour l’essayage, bâtir sur la ligne de couture, make.baste(..., distance=0 * mm), et recouper avant de coudre : { $call }.
proof-in_draft_first = dans le tracé coupé d’abord : { $what }
proof-in_draft_corrected = dans le tracé corrigé : { $what }
proof-raw_inside = à l’intérieur le bord reste à cru ({ $edges }) et peut s’effilocher au lavage.
proof-raw_inside_do = Un tissu qui ne s’effiloche pas peut rester ainsi. Sinon surfiler ou border, ou faire une couture fermée.
