# Ein Kurs in einem Raum (kit/room). Was in room_page und room_board in Klammern steht, setzt die Seite selbst ein.

# ---- die Tür ----
room-code_often = Zu viele falsche Codes von diesem Gerät. Warten Sie eine Minute und sehen Sie den Code noch einmal an.
room-device_full =
    { $count ->
        [one] An diesem Gerät ist schon jemand im Kurs. Machen Sie in dem offenen Fenster weiter.
       *[other] An diesem Gerät sind schon { $count } Lernende im Kurs. Machen Sie in einem der offenen Fenster weiter.
    }
room-teacher_ask = Das ist die Tafel der Lehrkraft. Geben Sie den Code der Lehrkraft ein; er steht dort, wo der Kurs geöffnet wurde.
room-teacher_wrong = Das ist nicht der Code der Lehrkraft. Er ist ein anderer als der Code des Kurses.

# ---- die Seite der Lernenden ----
room_page-class = Im Kurs
room_page-name = Vorname (wenn Sie mögen)
room_page-hand_up = Hand heben
room_page-hand_down = Hand senken
room_page-may_look = Meine Lehrkraft darf meinen Schnitt ansehen und seinen Umriss ohne meinen Namen im Kurs zeigen
room_page-private_own = Ihre Werte und Maße bleiben auf diesem Gerät. Die Lehrkraft sieht, bei welchem Schritt Sie sind, was die Prüfung fand und welche Übungen gelöst sind; mehr nur, wenn Sie es erlauben oder Schnittmusterseiten erstellen lassen.
room_page-private_room = Der Rechner der Lehrkraft rechnet für diese Seite. Er behält weder Ihre Werte noch Ihre Maße. Die Lehrkraft sieht, bei welchem Schritt Sie sind, was die Prüfung fand und welche Übungen gelöst sind.
room_page-follow_on = Sie gehen mit Ihrer Lehrkraft mit.
room_page-follow_off = Ihre Lehrkraft führt den Kurs durch die Schritte.
room_page-let_go = Eigenen Weg gehen
room_page-go_along = Mitgehen
room_page-sent_step = Ihre Lehrkraft hat alle zu diesem Schritt geschickt.
room_page-sent_values = Ihre Lehrkraft hat Werte für alle eingestellt.
room_page-sent_preset = Ihre Lehrkraft hat „{ $title }“ für alle eingestellt.
room_page-take_back = Zurück zu meinen Werten
room_page-keep = Behalten
room_page-queue = Warten. Vor Ihnen: { $place }
room_page-booklet_follows = Das Heft folgt.
room_page-refused_often = Sie haben eben mehrmals Seiten erstellen lassen. Warten Sie einige Minuten.
room_page-refused_disk = Auf dem Rechner der Lehrkraft ist kein Platz mehr für Seiten. Sagen Sie es Ihrer Lehrkraft.
room_page-refused_large = Diese Seiten sind größer, als sie sein dürfen. Prüfen Sie Ihre Werte.
room_page-lost = Keine Verbindung zum Kurs. Neuer Versuch …
room_page-gone = Ihr Platz in diesem Kurs ist wieder frei. Laden Sie die Seite neu, um zurückzukommen.
room_page-busy = Im Kurs ist gerade viel zu tun. Ihre Zeichnung kommt gleich.
room_page-too_large = Das ist mehr, als auf einmal gesendet werden kann.

# ---- die Tafel ----
room_board-board = Tafel der Lehrkraft
room_board-join = Zum Kurs
room_board-code = Kurscode
room_board-large = Groß zeigen
room_board-close = Schließen
room_board-name = Name
room_board-people = Wer da ist
room_board-count = { $count } von { $number }
room_board-nobody = Noch niemand.
room_board-student = Platz { $number }
room_board-away = nicht da
room_board-step = Schritt
room_board-place = { $number } von { $count }
room_board-exercises = Übungen
room_board-solved = gelöst
room_board-open = noch nicht
room_board-found = Prüfung
room_board-found_none = nichts gefunden
room_board-found_errors = zu berichtigen: { $count }
room_board-found_warnings = anzusehen: { $count }
room_board-hand = Hand
room_board-hand_seen = Hand gehoben – gesehen
room_board-look = Ansehen
room_board-look_not = hat es nicht erlaubt
room_board-looked_none = Der Schnitt wurde nicht gezeigt: Die Seite ist nicht geöffnet, oder es ist nicht mehr erlaubt.
room_board-free = Diesen Platz freigeben
room_board-worked_here = auf diesem Rechner berechnet
room_board-stage = Den Kurs führen
room_board-back = Zurück
room_board-on = Weiter
room_board-play = Abspielen
room_board-pause = Anhalten
room_board-send_step = Alle zu diesem Schritt schicken
room_board-follow = Mit mir gehen
room_board-unfollow = Loslassen
room_board-value = Wert
room_board-send_value = Diesen Wert allen schicken
room_board-preset = Voreinstellung
room_board-send_preset = Diese Voreinstellung allen schicken
room_board-sent = Geschickt an { $count }.
room_board-over = Alle Schnitte übereinander
room_board-over_none = Noch erlaubt niemand, den eigenen Schnitt zu zeigen.
room_board-over_count = Gezeigte Schnitte: { $count }
room_board-lost = Keine Verbindung zum Kurs. Neuer Versuch …
room_board-no_picture = Dieser Schritt hat kein Bild.
