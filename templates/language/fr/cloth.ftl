# Ce que le tissu demande à la façon de placer les pièces.

cloth-nap = Placer toutes les pièces dans le même sens, le haut du même côté : aucune n’est retournée, ni ici ni à la coupe.
cloth-print = Placer toutes les pièces dans le même sens, le haut du même côté : aucune n’est retournée, ni ici ni à la coupe. Raccorder le motif aux coutures ; pour cela, acheter un raccord de plus par rangée de pièces.
