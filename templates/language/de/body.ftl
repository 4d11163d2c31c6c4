# Wie ein Körper auf Teilen und Seiten heißt: eine Größe der Tabelle oder der Name einer Person.

body-size = Größe { $name }
body-one_size = Einheitsgröße

# Welche Größe für einen Körper zu zeichnen ist und wo die Linien übergehen. $measure ist measure-..., $value und $off sind Längen.

body-advice_draw = Größe { $size } zeichnen; maßgebend: { $measure }, { $value }.
body-advice_between = Größe { $size } zeichnen: { $measure }, { $value }, liegt zwischen { $smaller } und { $larger }. Für eine weite Form genügt { $smaller }, für eine anliegende Form oder festen Stoff { $larger } nehmen.
body-advice_beyond = Über die größte Größe hinaus: { $measure }, { $value }; { $size } ist um { $off } zu klein. Statt einer Größe die eigenen Maße zur Schnittzeichnung nehmen.
body-advice_below = Unter der kleinsten Größe: { $measure }, { $value }; { $size } ist um { $off } zu groß. Statt einer Größe die eigenen Maße zur Schnittzeichnung nehmen.
body-advice_fuller_bust = Die Brust ist um { $off } stärker, als Größe { $size } vorsieht: die Schultern der Größe { $size } beibehalten und an der Brust zugeben.
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
