# Phrases de kit/sewing/operations/faced_hems.py.

faced_hem-pin = Épingler { LE($facing) } sur { LE($edge) }, endroit contre endroit.
faced_hem-sew = Piquer à { $allowance } du bord, d’une seule traite.
faced_hem-grade = Recouper la marge de la parementure plus étroite que celle du vêtement.
faced_hem-press = Repasser les marges vers la parementure, puis retourner celle-ci vers l’intérieur et repasser, la couture juste en retrait du pli.
faced_hem-turn_free = Replier { $turn } sur l’envers au bord libre de la parementure et repasser.
faced_hem-finish_free = { START($finish) } le bord libre de la parementure.
faced_hem-free_done = Le bord libre de la parementure est déjà fini.
faced_hem-hand = La fixer à la main à points invisibles lâches.
faced_hem-machine = La piquer au ras de son bord libre.
faced_hem-why = Quand un bord est trop courbe, ou le tissu trop court ou trop épais pour un ourlet replié, une parementure à sa forme s’étale à plat.
