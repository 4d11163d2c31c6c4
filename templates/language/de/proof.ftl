# Befunde der Prüfung: was nicht stimmt und was zu tun ist (Schlüssel auf _do). Der Ort steht davor.
# Namen von Teilen, Kanten, Abnähern und Markierungen sind die der Lektion; Längen kommen mit ihren Einheiten.
# Was im Notebook steht, etwa make.press(...) oder ease=..., bleibt, wie es ist.

proof-at = { $where }: { $what }
proof-where_step = { $piece }, Schritt „{ $step }“
proof-where_step_alone = Schritt „{ $step }“
# { $piece } ist der Titel des Teils, { $edge } eine Kante daran.
proof-where_edge = { $piece }, { $edge }, Schritt „{ $step }“
proof-where_start = Anfang
proof-where_notions = Kurzwaren

# ---- Teile ----
proof-crosses_itself_above = { $edge } kreuzt sich selbst, { $across } von der senkrechten Linie der Schnittzeichnung und { $along } über der waagerechten.
proof-crosses_itself_below = { $edge } kreuzt sich selbst, { $across } von der senkrechten Linie der Schnittzeichnung und { $along } unter der waagerechten.
proof-crosses_another_above = { $edge } kreuzt { $other }, { $across } von der senkrechten Linie der Schnittzeichnung und { $along } über der waagerechten.
proof-crosses_another_below = { $edge } kreuzt { $other }, { $across } von der senkrechten Linie der Schnittzeichnung und { $along } unter der waagerechten.
proof-crosses_do = Das zuletzt geänderte Maß wieder in Richtung des alten Werts ändern oder eine der beiden neu zeichnen.
proof-no_allowance = { $edge } hat keine Nahtzugabe.
proof-no_allowance_do = Am Schnitt eine angeben, 0, wo auf der Linie geschnitten wird.
proof-no_grainline = Das Teil hat keinen Fadenlauf.
proof-no_grainline_do = Einen einzeichnen, damit es gerade auf den Stoff gelegt werden kann.
proof-no_fold_edge = Das Teil wird im Stoffbruch „{ $edge }“ zugeschnitten, hat aber keine solche Kante.
proof-no_fold_edge_do = Die Kante nennen, die am Stoffbruch liegt.
proof-fold_not_straight = { $edge } liegt im Stoffbruch, ist aber nicht gerade.
proof-fold_not_straight_do = Die Kante gerade ziehen oder das Teil als Paar zuschneiden.

# ---- Abnäher und Falten ----
proof-dart_spared = diese Figur braucht hier keinen Abnäher.
proof-dart_spared_do = Was ein Schritt damit tut, wird übergangen.
proof-dart_again_do = Den Abnäher neu zeichnen.
proof-dart_legs = { $dart }: die Schenkel sind { $one } und { $other } lang, so schließt der Abnäher nicht.
proof-dart_legs_do = Die Spitze oder einen Schenkel versetzen, bis beide gleich lang sind.
proof-slit_adrift = { $slit } beginnt an keiner Kante des Teils.
proof-slit_adrift_do = Von der Kante aus zeichnen, an der er sich öffnet.
proof-slit_long = { $slit } lässt hinter seinem Ende { $room } Stoff.
proof-slit_long_do = Kürzer machen, sodass mindestens { $least } bleiben.
proof-slit_raw = { $slit } wird eingeschnitten, aber nichts versäubert die beiden Seiten.
proof-slit_raw_do = Einen Schlitzbesatz nähen: { $call }.
proof-double_dart_legs_do = Die breiteste Stelle auf die Linie von Spitze zu Spitze setzen oder eine Spitze versetzen, bis beide Schenkel gleich lang sind.
proof-double_dart_edge = { $dart } läuft in diese Kante hinein: { $edge }. Dort hat der Abnäher keine Spitze.
proof-double_dart_edge_do = Kürzen, bis er im Innern des Teils ausläuft, oder einen Abnäher zeichnen, der sich an dieser Kante öffnet.
proof-double_dart_sharp = { $dart } nimmt { $intake } auf nur { $length } auf: an der Spitze stünde der Stoff als Beule hoch.
proof-double_dart_sharp_do = Länger oder schmaler machen oder die Weite in zwei Abnähern aufnehmen.
proof-double_darts_cross = { $dart } und { $other } überschneiden sich.
proof-double_darts_cross_do = Einen von beiden zur Seite rücken.
proof-dart_point_outside = { $dart }: die Spitze liegt außerhalb des Teils.
proof-dart_point_outside_do = Die Spitze ins Teil hinein setzen.
proof-dart_not_true = { $edge } knickt um { $degrees } Grad, wo der Abnäher zugelegt ist: { $dart }.
proof-dart_not_true_do = Die Kante über den zugelegten Abnäher glatt neu zeichnen.
# { $fold } ist der Name eines Abnähers, einer Falte oder Biese.
proof-no_cap = { $fold }: Die Kante ist dort nicht ausgeformt; zugelegt fehlen ihr { $amount }.
# { $call } ist, was im Notebook steht.
proof-no_cap_do = Ausgleichen: { $call }.
proof-pleat_off_edge = { $fold } liegt nicht auf der Kante: von { $start } bis { $end } entlang „{ $edge }“.
proof-pleat_off_edge_do = Auf die Kante setzen oder nach dem Ändern der Kante neu zeichnen.
proof-pleat_lines = { $fold }: die beiden Linien sind { $one } und { $other } lang und liegen darum nicht aufeinander.
proof-pleat_lines_do = Von Kante zu Kante neu zeichnen oder ein Ende versetzen, bis beide gleich lang sind.
proof-pleat_moved = { $fold }: die Linien beginnen { $amount } neben ihrer Stelle an der Kante ({ $edge }).
proof-pleat_moved_do = Die Falte neu zeichnen: die Kante wurde danach geändert.
proof-pleats_overlap = { $fold } und { $other } nehmen dieselben { $amount } der Kante auf: { $edge }.
proof-pleats_overlap_do = Beide auseinanderrücken oder eine flacher machen.
proof-pleat_not_true = { $edge } knickt um { $degrees } Grad, wo die Falte gelegt ist: { $fold }.
proof-pleat_not_true_do = Die Kante über die gelegte Falte glatt neu zeichnen.
proof-never_folded = { $fold } wird nie gelegt.
proof-never_sewn = { $fold } wird nie genäht.
proof-never_folded_do = Nähen: { $call }.

# ---- Kanten und Nahtzugaben ----
proof-edge_never_sewn = { $edge } wird nie genäht, belegt oder gesäumt ({ $length }).
# { $part } ist, was von der ganzen Länge { $length } offen bleibt.
proof-edge_left_raw = { $edge } bleibt { $stretch } offen, { $part } von { $length }.
proof-raw_edge_do = Die Naht, den Beleg oder Saum ergänzen, der die Kante schließt, oder mit make.edge_finish(..., leave=True) versäubern.
proof-ends_of_ring_caught = Die Enden des Streifens soll eine spätere Naht mitfassen, aber { $place } gehört hier schon zu einem geschlossenen Ring: keine Naht kreuzt ihn mehr.
proof-ends_of_ring_caught_do = ends="ring" schreiben, dann werden die Enden verbunden, oder ends= weglassen.
proof-ends_not_caught = Die Enden des Streifens soll eine spätere Naht mitfassen, aber an { $place } wird nach diesem Schritt keine mehr genäht.
proof-ends_not_caught_do = Diese Naht erst danach nähen, oder ends="turned" schreiben, dann werden die Enden eingeschlagen.
proof-allowance_too_wide = Der Schnitt gibt hier { $given } Zugabe ({ $edge }), beim Nähen werden aber { $taken } gebraucht: { $amount } zu viel.
proof-allowance_too_narrow = Der Schnitt gibt hier { $given } Zugabe ({ $edge }), beim Nähen werden aber { $taken } gebraucht: { $amount } zu wenig.
proof-allowance_do = Die Nahtzugabe am Schnitt ändern oder die Breiten im Nähschritt.

# ---- was zugeschnitten und gebraucht wird ----
proof-interfacing_piece_unused = Zugeschnitten für { $piece }, aber nie aufgebügelt.
proof-interfacing_piece_unused_do = Das Aufbügeln als ersten Schritt dieses Teils ergänzen oder die Einlage aus dem Schnitt nehmen.
proof-piece_unused = Das Teil wird zugeschnitten, aber kein Nähschritt verwendet es.
proof-piece_unused_do = Es nähen oder aus dem Schnitt nehmen.
proof-interfacing_unused = Dafür wird Einlage zugeschnitten, aber nie aufgebügelt.
proof-interfacing_unused_do = Das Aufbügeln als ersten Schritt dieses Teils ergänzen oder keine Einlage zuschneiden.
proof-interfacing_count =
    { $cloth ->
        [one] { $cloth } Teil wird aus Stoff zugeschnitten
       *[other] { $cloth } Teile werden aus Stoff zugeschnitten
    }, aus Einlage aber { $interfacing }.
proof-interfacing_count_do = Für jedes Teil Einlage zuschneiden: { $call }.
proof-strip_never_made = Der Streifen wird zugeschnitten, aber nie gearbeitet.
proof-strip_never_attached = Der Streifen wird zugeschnitten, aber nie angenäht.
proof-strip_too_few = Der Streifen wird zugeschnitten, angenäht werden aber nur { $count } von { $cut }.
proof-strip_unused_do = Ihn arbeiten und annähen oder von der Zuschnittliste nehmen.
# { $pieces } ist eine Aufzählung, { $count } die Zahl der genannten Teile.
proof-loose_piece =
    { $count ->
        [one] { $pieces } wird nie mit dem Rest verbunden.
       *[other] { $pieces } werden nie mit dem Rest verbunden.
    }
proof-loose_piece_do = Die verbindende Naht ergänzen.

# ---- Nähte ----
# { $longer } und { $shorter } sind Kanten mit ihren Teilen.
proof-seam_length = { $longer } ist, an der Nahtlinie gemessen, { $amount } länger als die Gegenkante: { $shorter }.
proof-seam_length_do = Beide in der Schnittzeichnung gleich lang machen oder in der Naht angeben, dass eine eingehalten wird: ease=...
proof-facing_length_do = Den Beleg von der Kante des Kleidungsstücks abnehmen.
proof-ease_amount = Laut Naht werden { $ease } eingehalten, die Kanten unterscheiden sich aber um { $amount }.
proof-ease_amount_do = Die Mehrweite oder die Schnittzeichnung ändern, bis beide übereinstimmen.
proof-notch_alone = { $run }: das Passzeichen bei { $at } wird auf { $other } genäht und hat dort kein Gegenstück.
proof-notch_misses = { $run }: das Passzeichen bei { $at } wird auf { $other } genäht und verfehlt dort sein Gegenstück um { $amount }.
proof-notch_do = Beide Passzeichen in denselben Abstand auf der Naht setzen.
# { $left } und { $right } sind Anfang und Ende der Öffnung, die das Nähen lässt.
proof-opening_moved = { $mark } ist von { $start } bis { $end } markiert ({ $edge }), beim Nähen bleibt aber { $left } bis { $right } offen.
proof-opening_moved_do = Auf beiden Seiten der Naht an derselben Stelle markieren.
proof-opening_sewn_shut = { $mark } ist markiert, aber keine Naht lässt die Öffnung frei.
proof-opening_sewn_shut_do = Die Markierung in der Naht nennen, die darüber läuft: opening=..., oder gap=..., wenn sie nur zum Wenden dient.
proof-no_sewing = Die Lektion hat keine Nähschritte; Nähte und offene Kanten sind darum nicht geprüft.
proof-no_sewing_do = Die Nähschritte ergänzen.

# ---- Ecken ----
proof-corner_facing = Am Ende von { $edge } ({ $piece }) misst die Ecke zu { $beside } { $degrees } Grad, am Gegenstück ({ $facing }) aber { $facing_degrees }: die beiden werden nicht aufeinanderliegen.
proof-corner_facing_do = Den Beleg von den Kanten des Kleidungsstücks abnehmen.
proof-corner_point = Wo { $edge } ({ $piece }) am Ende dieser Naht auf { $other_edge } ({ $other_piece }) trifft, knickt die Linie um { $degrees } Grad: es entsteht eine Spitze.
proof-corner_dip = Wo { $edge } ({ $piece }) am Ende dieser Naht auf { $other_edge } ({ $other_piece }) trifft, knickt die Linie um { $degrees } Grad: es entsteht eine Delle.
proof-corner_point_halves = Wo { $edge } ({ $piece }) am Ende dieser Naht auf das Gegenstück der anderen Hälfte trifft, knickt die Linie um { $degrees } Grad: es entsteht eine Spitze.
proof-corner_dip_halves = Wo { $edge } ({ $piece }) am Ende dieser Naht auf das Gegenstück der anderen Hälfte trifft, knickt die Linie um { $degrees } Grad: es entsteht eine Delle.
proof-corner_do = Den Übergang ausgleichen: die Naht zusammenlegen und die Linie glatt darüberzeichnen; oder die Ecke angeben, wo eine gemeint ist.

# ---- Säume, Belege und umgeschlagene Zugaben ----
# { $depth }: wie tief umgeschlagen; { $surplus }: über die ganze Kante; { $sharp }: innerhalb von { $window } an der schlimmsten Stelle { $at }.
proof-fold_longer = { $edge }: { $depth } umgeschlagen, ist die Kante um { $surplus } länger als die Linie, auf der sie liegt; am meisten bei { $at }, dort { $sharp } auf { $window } ({ $share }; Stoff lässt sich um etwa { $eases } einhalten).
proof-fold_longer_by_far = { $edge }: { $depth } umgeschlagen, ist die Kante um { $surplus } länger als die Linie, auf der sie liegt; am meisten bei { $at }, dort { $sharp } auf { $window } (mehr als { $share }; Stoff lässt sich um etwa { $eases } einhalten).
proof-fold_shorter = { $edge }: { $depth } umgeschlagen, ist die Kante um { $surplus } kürzer als die Linie, auf der sie liegt; am meisten bei { $at }, dort { $sharp } auf { $window } ({ $share }; Stoff lässt sich um etwa { $eases } dehnen).
proof-fold_longer_there = { $edge }: { $depth } umgeschlagen, ist die Kante bei { $at } auf { $window } um { $sharp } länger als die Linie, auf der sie liegt ({ $share }; Stoff lässt sich um etwa { $eases } einhalten).
proof-fold_shorter_there = { $edge }: { $depth } umgeschlagen, ist die Kante bei { $at } auf { $window } um { $sharp } kürzer als die Linie, auf der sie liegt ({ $share }; Stoff lässt sich um etwa { $eases } dehnen).
# Einer dieser vier folgt als eigener Satz.
proof-fold_can_be_eased = Auf die ganze Länge verteilt lässt sie sich einhalten, nur an dieser Stelle nicht.
proof-fold_can_be_drawn_out = Auf die ganze Länge verteilt lässt sie sich dehnen, nur an dieser Stelle nicht.
proof-fold_in_pleats = Sie wird Falten werfen.
proof-fold_pulls = Sie wird ziehen.
proof-fold_clip_do = Die Rundung einschneiden: clip=True.
proof-fold_shallower_do = Nicht tiefer als { $depth } umschlagen oder die Kante belegen.
proof-fold_ease_do = Mit einem Einhaltefaden am Saum einhalten oder nicht tiefer als { $depth } umschlagen.
proof-fold_face_do = Die Kante belegen oder einfassen: ein umgeschlagener Saum liegt dort nicht flach.
proof-end_angle = { $edge } ist rund, und das Ende der Zugabe an { $beside } liegt { $degrees } Grad neben dem Spiegelbild dieser Kante.
proof-hem_end_angle_do = Das Ende des Saums die angrenzende Kante spiegeln lassen oder den Saum im rechten Winkel zu ihr führen.
proof-seam_end_angle_do = Das Ende der Zugabe die angrenzende Kante spiegeln lassen.
proof-hem_beside_fold = { $edge } trifft nicht im rechten Winkel auf den Stoffbruch: umgeschlagen liegt die Zugabe { $amount } neben dem Bruch.
proof-seam_beside_fold = { $edge } trifft nicht im rechten Winkel auf den Stoffbruch: zurückgelegt liegt die Zugabe { $amount } neben dem Bruch.
proof-beside_fold_do = Das letzte Stück des Saums im rechten Winkel zum Bruch zeichnen oder die Ecke angeben, wenn eine Spitze gemeint ist.
proof-hem_end_beyond = Umgeschlagen steht das Ende dieser Kante ({ $edge }) um { $amount } über die Schnittkante der Nachbarkante hinaus: { $beside }.
proof-hem_end_short = Umgeschlagen bleibt das Ende dieser Kante ({ $edge }) um { $amount } hinter der Schnittkante der Nachbarkante zurück: { $beside }.
proof-seam_end_beyond = Zurückgelegt steht das Ende dieser Kante ({ $edge }) um { $amount } über die Schnittkante der Nachbarkante hinaus: { $beside }.
proof-seam_end_short = Zurückgelegt bleibt das Ende dieser Kante ({ $edge }) um { $amount } hinter der Schnittkante der Nachbarkante zurück: { $beside }.
# "turned" ist, was im Notebook steht.
proof-end_do = Das Ende die Nachbarkante spiegeln lassen ({ $beside }): die Ecke der Nähreihenfolge überlassen oder "turned" angeben; wo der Winkel dafür zu spitz ist, die Zugabe schmaler machen oder die Kante belegen.

# ---- was begonnen und nie beendet wird ----
proof-never_pressed = Die Naht an { $edge } sollte später gebügelt werden und wird es nie.
proof-never_pressed_do = Ergänzen: { $call }.
proof-never_finished = { $place }: angefangen und nie fertiggenäht; es fehlen noch Arbeitsgänge.
proof-never_finished_do = { $call } ergänzen, in diesem Schritt nach dem Anfang oder in einem späteren.
# { $place } ist eine Kante oder Markierung.
proof-never_turned_out = Das Teil ist zum Wenden genäht und wird nie gewendet.
proof-never_turned_out_do = Ergänzen: make.turn_out(...).
proof-never_band_closed = Der angesetzte Bund wird nie über der Naht geschlossen: { $place }.
proof-never_band_closed_do = Ergänzen: make.close_band(...).
proof-never_buttoned = Für dieses Knopfloch gibt es keinen Knopf: { $place }.
proof-never_buttoned_do = Ergänzen: make.buttons(..., holes=...). Ein Bindeband geht durch eine Öffnung in einer Naht: front.leave_open(...).
proof-never_eyelet_used = Hier kommt keine Kordel heraus: { $place }.
proof-never_eyelet_used_do = Eine Kordel einziehen: make.thread_cord(...).
proof-never_threaded = Dieser Tunnel bleibt leer: { $place }.
proof-never_threaded_do = Gummiband oder eine Kordel einziehen.
proof-never_row_gap_closed = Die Öffnung im Tunnel wird nie geschlossen: { $place }.
proof-never_row_gap_closed_do = Sie nennen, wo Gummiband oder Kordel eingezogen wird: gap=....
proof-never_bag_closed = Der Taschenbeutel wird nie geschlossen.
proof-never_bag_closed_do = Die beiden Beutel zusammennähen.
proof-never_pocket_edge_sewn = { $place } wird umgebügelt und nie festgesteppt.
proof-never_pocket_edge_sewn_do = Die Tasche aufsteppen: make.patch_pocket(...).
proof-never_basting_out = Diese Heftfäden werden nie herausgezogen: { $place }.
proof-never_basting_out_do = Ergänzen: make.remove_basting(...).
proof-never_used = Wofür diese Stelle vorbereitet wurde, wird nie ausgeführt: { $place }.
proof-never_used_do = Fertig arbeiten.

# ---- die Worte der Lektion und ihre Liste der Kurzwaren ----
# { $name } steht in geschweiften Klammern, wie in der Lektion.
proof-placeholder = Der Text nennt { $name }, was der Schritt nicht kennt.
proof-placeholder_near = Ist „{ $name }“ gemeint?
proof-placeholder_known = Hier bekannt: { $names }.
proof-placeholder_none = Hier gibt es noch keine.
proof-notion_missing = Beim Nähen wird gebraucht, was die Liste der Kurzwaren nicht nennt: { $need }.
proof-notion_missing_do = In die Kurzwaren der Lektion aufnehmen: { $need }.
proof-notion_braces = die Liste der Kurzwaren sagt „{ $notion }“, und zwischen den Klammern wird dort nichts eingesetzt: Es wird gedruckt, wie es dasteht.
proof-notion_braces_do = Die Zahl ausschreiben oder weglassen: Der Nähschritt sagt, wie viel zugeschnitten wird.
proof-notion_spare = Die Liste der Kurzwaren nennt „{ $notion }“, aber kein Nähschritt braucht es.
proof-notion_spare_do = Von der Liste nehmen oder den Schritt ergänzen, der es braucht.
proof-notion_count = genäht wird mit { $wanted }× { $need }, auf der Zutatenliste stehen { $listed }.
proof-notion_count_do = { $wanted }× { $need } auf die Liste schreiben.
proof-notion_length = genäht wird mit { $wanted } { $need }, auf der Zutatenliste stehen { $listed }.
proof-notion_length_do = { $wanted } auf die Liste schreiben oder ändern, was genäht wird.

# Was das Nähen braucht, im Satz.
proof-need_thread = Nähgarn
proof-need_interfacing = Einlage
proof-need_sewn_in_interfacing = einnähbare Einlage
proof-need_zip = Reißverschluss
proof-need_invisible_zip = nahtverdeckter Reißverschluss
proof-need_buttons = Knöpfe
proof-need_snaps = Druckknöpfe
proof-need_hooks = Haken
proof-need_eyelets = Ösen
proof-need_elastic = Gummiband
proof-need_cord = Kordel
proof-need_bias_binding = Schrägband
proof-need_hem_tape = Saumband

# Wörter oder Wortteile, an denen die Liste der Kurzwaren sie erkennt (durch | getrennt, klein geschrieben).
proof-listed_thread = garn | nähfaden | nähseide | thread
proof-listed_interfacing = einlage | vlies | interfacing
proof-listed_sewn_in_interfacing = einlage | vlies | interfacing
proof-listed_zip = reißverschl | reissverschl | zip
proof-listed_invisible_zip = nahtverdeckt | nahtfein | unsichtbar | invisible zip | concealed zip
proof-listed_buttons = knopf | knöpf | button
proof-listed_snaps = druckknopf | druckknöpf | snap
proof-listed_hooks = haken | häkchen | hook
proof-listed_eyelets = öse | eyelet
proof-listed_elastic = gummi | elastic
proof-listed_cord = kordel | schnur | cord
proof-listed_bias_binding = schrägband | schrägstreifen | einfassband | bias binding
proof-listed_hem_tape = saumband | hem tape
proof-halves_crossed = { $edge } wird an { $other } ({ $piece }) genäht: Eins von beiden liegt dann mit der linken Seite nach außen.
proof-halves_crossed_do = Links an links und rechts an rechts nähen.
proof-band_way = { $piece }: In der Reihenfolge, in der die Kanten genannt sind, liegt { $end } hier: { $place }. So gezeichnet und mit der bedruckten Seite nach oben auf der rechten Stoffseite zugeschnitten, kommt dieses Ende hier zu liegen: { $other }.
proof-band_way_do = Die Kanten in umgekehrter Reihenfolge nennen oder das Teil mit diesem Ende auf der anderen Seite zeichnen.

# ---- Anprobezugaben, und Fassungen, die eine Anprobe ändert ----
proof-extra_left = diese Kante ist für die Anprobe { $amount } breiter zugeschnitten, und das wird nie abgeschnitten: { $edge }.
proof-extra_left_do = Abschneiden, wenn der Sitz stimmt: { $call }.
proof-extra_sewn = diese Kante wird genäht, solange ihre Anprobezugabe von { $amount } noch da ist; von der Schnittkante gemessen liegt die Naht um so viel zu weit außen: { $edge }.
proof-extra_sewn_do = Für die Anprobe auf der Nahtlinie heften, make.baste(..., distance=0 * mm), und vor der Naht abschneiden: { $call }.
proof-in_draft_first = in der zuerst zugeschnittenen Fassung: { $what }
proof-in_draft_corrected = in der geänderten Fassung: { $what }
proof-raw_inside = innen bleibt die Schnittkante offen ({ $edges }) und kann beim Waschen ausfransen.
proof-raw_inside_do = Stoff, der nicht franst, kann so bleiben. Sonst versäubern oder einfassen, oder eine verdeckte Naht nähen.
