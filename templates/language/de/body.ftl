# Wie ein Körper auf Teilen und Seiten heißt: eine Größe der Tabelle oder der Name einer Person.

body-size = Größe { $name }
body-one_size = Einheitsgröße

# Welche Größe für einen Körper zu zeichnen ist und wo die Linien übergehen. $measure ist measure-..., $value und $off sind Längen.

body-advice_draw = Größe { $size } zeichnen; maßgebend: { $measure }, { $value }.
body-advice_between = Größe { $size } zeichnen: { $measure }, { $value }, liegt zwischen { $smaller } und { $larger }. Für eine weite Form genügt { $smaller }, für eine anliegende Form oder festen Stoff { $larger } nehmen.
body-advice_beyond = Über die größte Größe hinaus: { $measure }, { $value }; { $size } ist um { $off } zu klein. Statt einer Größe die eigenen Maße zur Schnittzeichnung nehmen.
body-advice_below = Unter der kleinsten Größe: { $measure }, { $value }; { $size } ist um { $off } zu groß. Statt einer Größe die eigenen Maße zur Schnittzeichnung nehmen.
body-advice_fuller_bust = Die Brust ist um { $off } stärker, als Größe { $size } vorsieht: die Schultern der Größe { $size } beibehalten und an der Brust zugeben.
body-advice_one_draft = In einem Zug konstruiert, ohne Übergänge zu zeichnen, ist das die Größe { $size }.
# Die Seitennaht geht in die einer anderen Größe über: nach außen zur größeren, nach innen zur kleineren.
body-advice_waist =
    { $way ->
        [out] Das Maß „{ $measure }“, { $value }, entspricht der Größe { $size }: unterhalb der Achsel die Seitennaht nach außen zur Linie der Größe { $size } an der Taille übergehen lassen.
       *[in] Das Maß „{ $measure }“, { $value }, entspricht der Größe { $size }: unterhalb der Achsel die Seitennaht nach innen zur Linie der Größe { $size } an der Taille übergehen lassen.
    }
body-advice_hip =
    { $way ->
        [out] Das Maß „{ $measure }“, { $value }, entspricht der Größe { $size }: unterhalb der Taille die Seitennaht nach außen zur Linie der Größe { $size } an der Hüfte übergehen lassen.
       *[in] Das Maß „{ $measure }“, { $value }, entspricht der Größe { $size }: unterhalb der Taille die Seitennaht nach innen zur Linie der Größe { $size } an der Hüfte übergehen lassen.
    }
# Eine Länge wird zwischen zwei Linien geändert; $measure beginnt die Zeile.
body-advice_back_waist_length =
    { $way ->
        [longer] { $measure }: zwischen Achsel und Taille um { $off } verlängern.
       *[shorter] { $measure }: zwischen Achsel und Taille um { $off } kürzen.
    }
body-advice_waist_to_hip =
    { $way ->
        [longer] { $measure }: zwischen Taille und Hüfte um { $off } verlängern.
       *[shorter] { $measure }: zwischen Taille und Hüfte um { $off } kürzen.
    }
body-advice_arm_length =
    { $way ->
        [longer] { $measure }: im Ärmel oberhalb des Ellbogens um { $off } verlängern.
       *[shorter] { $measure }: im Ärmel oberhalb des Ellbogens um { $off } kürzen.
    }

# Maße, die nicht zueinander passen: $part und $whole sind measure-...

body-check_very_small = Das Maß „{ $part }“, { $part_value }, ist sehr klein im Verhältnis zum Maß „{ $whole }“, { $whole_value }.
body-check_smaller = Das Maß „{ $part }“, { $part_value }, ist kleiner als das Maß „{ $whole }“, { $whole_value }.
body-check_much_smaller = Das Maß „{ $part }“, { $part_value }, ist viel kleiner als das Maß „{ $whole }“, { $whole_value }.
body-check_larger = Das Maß „{ $part }“, { $part_value }, ist größer als das Maß „{ $whole }“, { $whole_value }.
body-check_larger_by_far = Das Maß „{ $part }“, { $part_value }, ist bei weitem größer als das Maß „{ $whole }“, { $whole_value }.
body-check_much_larger = Das Maß „{ $part }“, { $part_value }, ist viel größer als das Maß „{ $whole }“, { $whole_value }.
body-check_small = Das Maß „{ $part }“, { $part_value }, ist klein im Verhältnis zum Maß „{ $whole }“, { $whole_value }.
body-check_large = Das Maß „{ $part }“, { $part_value }, ist groß im Verhältnis zum Maß „{ $whole }“, { $whole_value }.
body-check_short = Das Maß „{ $part }“, { $part_value }, ist kurz im Verhältnis zum Maß „{ $whole }“, { $whole_value }.
body-check_long = Das Maß „{ $part }“, { $part_value }, ist lang im Verhältnis zum Maß „{ $whole }“, { $whole_value }.
body-check_low = Das Maß „{ $part }“, { $part_value }, ist niedrig im Verhältnis zum Maß „{ $whole }“, { $whole_value }.
body-check_high = Das Maß „{ $part }“, { $part_value }, ist hoch im Verhältnis zum Maß „{ $whole }“, { $whole_value }.
body-check_shorter = Das Maß „{ $part }“, { $part_value }, ist kürzer als das Maß „{ $whole }“, { $whole_value }.
body-check_longer_by_far = Das Maß „{ $part }“, { $part_value }, ist bei weitem länger als das Maß „{ $whole }“, { $whole_value }.
body-check_again = Beide noch einmal messen; wenn sie stimmen, weitermachen.
body-check_shoulders =
    { $how ->
        [narrow] Die Maße „{ $shoulder }“, { $shoulder_value }, und „{ $back }“, { $back_value }, passen nicht zusammen: Der Rücken ist schmal für Schultern, die von Spitze zu Spitze etwa { $across } messen.
       *[wide] Die Maße „{ $shoulder }“, { $shoulder_value }, und „{ $back }“, { $back_value }, passen nicht zusammen: Der Rücken ist breit für Schultern, die von Spitze zu Spitze etwa { $across } messen.
    }
body-check_shoulders_do = Das Ende des Schulterknochens noch einmal suchen, dazu den Arm heben, und beide noch einmal messen.
body-check_nape = { $back } und { $waist } zusammen, { $sum }, reichen bei { $height } Körpergröße nicht bis zum Nackenwirbel.
body-check_nape_do = Ein Band um die Taille binden und alle drei Maße bis dorthin oder von dort messen.
body-check_rise = { $waist } weniger { $inside } ergibt { $left }, aber das Maß „{ $rise }“ ist { $rise_value }.
body-check_rise_do = Die Sitzhöhe auf einem flachen, harten Stuhl sitzend messen, das Innenbein bis zum Boden.

# ---- Ablehnungen ----
body-not_plausible = { $value } kann nicht stimmen; Menschen messen zwischen { $least } und { $most }.
body-slip_cm_as_mm = Wurde ein Wert in cm als mm eingegeben?
body-slip_mm_as_cm = Wurde ein Wert in mm als cm eingegeben?
body-slip_inch_as_cm = Wurde ein Wert in Zoll als cm eingegeben?
body-slip_inch_as_mm = Wurde ein Wert in Zoll als mm eingegeben?
body-slip_cm_as_inch = Wurde ein Wert in cm als Zoll eingegeben?
body-measure_again = Noch einmal messen.
body-unknown_measure = Es gibt kein Körpermaß „{ $name }“.
body-no_body_name = Körper
body-no_girth = Es ist kein Umfang angegeben, der in der Maßtabelle steht.
body-no_girth_do = Mindestens den Brustumfang messen, oder Oberbrust-, Hüft- oder Taillenumfang.
body-no_size_girth = Ohne einen Umfang lässt sich keine Größe wählen.
body-no_size_girth_do = Den Brustumfang dieses Körpers angeben.
body-no_advice = Ohne einen Umfang lässt sich keine Größe empfehlen.
body-no_advice_do = Brust-, Taillen- und Hüftumfang messen.
body-no_such_size = Es gibt keine Größe „{ $size }“.
body-no_such_kind = Es gibt keine Maßart „{ $kind }“.
body-nothing_to_save = Es wurde nichts gemessen, also gibt es nichts zu speichern.
body-nothing_to_save_do = Zuerst messen.
body-file_key = „{ $name }“ gehört nicht in eine Maßdatei.
body-file_key_measure = „{ $name }“ gehört nicht hierher. Maße stehen unter der Zeile [measured].
body-file_units = Die Einheit ist „{ $units }“.
body-write_do = Zum Beispiel schreiben: { $line }
body-file_name = Der Name ist { $name }, kein Text.
body-file_empty = Sie enthält keine Maße.
body-file_large = Die Datei ist viel zu groß für eine Maßdatei.
body-file_own_do = Die Maßdatei selbst nennen.
body-file_missing = Es gibt keine solche Datei.
body-file_missing_do = Namen und Ordner prüfen.
body-file_folder = Das ist ein Ordner.
body-file_folder_do = Die Datei darin nennen.
body-file_not_text = Die Datei ist kein einfacher Text.
body-file_not_text_do = Als einfachen Text speichern (UTF-8).
body-file_unread = Die Datei lässt sich nicht lesen.
body-file_unread_do = Die Datei und ihre Rechte prüfen.
body-file_broken_line = Die Datei ist beschädigt: Zeile { $line } ist nicht zu lesen.
body-file_broken = Die Datei ist beschädigt: sie ist nicht bis zum Ende zu lesen.
body-box_unusable = Was hier eingegeben ist, lässt sich noch nicht verwenden: { $measures }.
body-box_unusable_do = Berichtigen oder das Feld leeren.
body-no_girth_yet = Es gibt noch keinen Umfang.
body-name_of_size = „{ $name }“ ist der Name einer Größe.
body-name_of_size_do = Diesem Körper einen eigenen Namen geben.
body-other_file = Eine Datei dieses Namens gibt es schon, und sie ist keine Maßdatei.
body-other_file_do = Sie bleibt, wie sie war. Einen anderen Namen wählen.
body-file_no_name = Die Datei hat keinen Namen.
body-file_no_name_do = Zum Beispiel mine.toml eingeben.
body-where_name = Name
body-where_file = Datei

# ---- Tabellen mit Personen ----
body-people_none = Es stehen keine Personen darin.
body-people_none_do = Eine Zeile mit Spaltennamen angeben, dann für jede Person eine Zeile.
body-people_columns = Keine Spalte ist ein Körpermaß; es sind: { $columns }.
body-people_columns_do = Die Spalten wie in einer Maßdatei benennen, etwa bust_girth, waist_girth, hip_girth.
body-people_save_do = Die Tabelle als CSV (UTF-8) speichern.
body-people_line = Zeile { $line } ist nicht zu lesen.
body-people_bust = Die Spalte „{ $column }“ kann der Brustumfang über der stärksten Stelle sein oder der Oberbrustumfang darüber.
body-people_bust_do = In bust_girth oder upper_chest_girth umbenennen.
body-people_twice = Die Spalten „{ $one }“ und „{ $other }“ sind dasselbe Maß: { $measure }.
body-people_twice_do = Eine davon behalten.
body-report_do = Eine Datei für den Bericht nennen, etwa report.json.

body-proposal = { $change }: { $amount }
body-advice_changes = Änderungen für Größe { $size }: { $changes }.
body-advice_cut = Der Körper verlangt mehr, als an diesem Modell möglich ist. Nur so weit wie möglich eingestellt: { $changes }. Ein Probeteil nähen oder die eigenen Maße zur Schnittzeichnung nehmen.
body-advice_elsewhere = An diesem Modell nicht zu machen: { $changes }.
body-advice_build = So wird es gebaut: { $command }
