# Un dessous-de-plat sur une planche : deux cercles de picots, qui sont des épingles en T. Celui de dehors est celui du bord, celui
# de dedans celui du centre ; « dedans » et « dehors » disent déjà où le cordon tourne dans une ganse.

-all-through = À chaque passage dessous, il y passe tout entier.
-At-the-bottom = Au bord
-at-the-bottom = au bord
-At-the-top = Au centre
-at-the-top = au centre
-Back-down = Ressortez
-Back-up = Rentrez
-before-lifting = Avant d’ôter les picots,
-being-rigged = La planche est en préparation
-Bottom = Bord
-bottom = bord
-bottom-bight = ganse du bord
-Bottom-pin = Picot du bord
-bottom-pin = picot du bord
-bottom-pins = picots du bord
-card-left = Avancez vers la gauche, dans le sens de la montre ; les picots sont numérotés dans ce sens.
-card-right = Avancez vers la droite, contre le sens de la montre ; les picots sont numérotés dans ce sens.
-coming-off = On ôte les picots
-down = sortez
-down-to-bottom = sortez au bord
-falling = en sortant
-falls = sort
-from-the-bottom = depuis le bord
-Going-down = Vous sortez
-Going-up = Vous entrez
-how-to-stand = Posez la planche à plat devant vous, et regardez du bord vers le centre. Tournez la planche à mesure que vous avancez. Posez chaque trajet en une courbe large et lâche autour du centre, comme sur l’image ; ne le tendez jamais tout droit.
-in-line-with = dans le prolongement
-laid-and-lifted = Tout est posé, les picots sont ôtés ;
-lane-bottom = bord
-lane-top = centre
-Lifting = Ôter
-of-bottom = du bord
-of-the-way-down = de la sortie
-of-the-way-up = de l’entrée
-of-top = du centre
-on-the-tube = sur la planche
-on-the-tube-side = du côté de la planche
-planned-so = préparé avec sa planche et son cordon.
-rigging = Préparation
-rise = entrent
-rises = entre
-rising = en entrant
-side-bottom = côté bord
-side-top = côté centre
-to-be-lifted = il reste à ôter les picots.
-Top = Centre
-top = centre
-top-bight = ganse du centre
-top-pin = picot du centre
-top-pins = picots du centre
-tops-staggered = les picots du centre un demi-pas plus loin.
-tops-straight = les picots du centre dans le prolongement.
-towards-the-middle = vers le milieu entre les deux cercles
-tube-is-empty = la planche est vide.
-turn = tour du centre
-turn-it-round = Faites tourner la planche
-turns = tours du centre
-up = entrez
-up-to-top = entrez au centre
-upright = Planche à plat, regardez du bord vers le centre.
-upright-shown = Planche à plat, dormant fixé au ruban. Courbes larges, jamais tendues tout droit.
-work-left = Vous avancez vers la gauche, dans le sens de la montre, et les picots sont numérotés dans ce sens.
-work-right = Vous avancez vers la droite, contre le sens de la montre, et les picots sont numérotés dans ce sens.

## Rows of nested bights: outside and inside are the circles

pin-of-row-say = { $number } du rang { $row }
pin-of-row-say-brief = { $number } rang { $row }
pin-of-row-say-teach = { $number } du rang { $row }
pin-of-row = { $number } (rang { $row })

## The legs: an arrow for the way along a tube means nothing on a mat

lay-show = { $heading ->
        [falling] Du { $from } { -of-top }, { -down } au { $to } { -of-bottom }
       *[rising] Du { $from } { -of-bottom }, { -up } au { $to } { -of-top }
    }

## The bag

kit-pins-say = Il vous faut, { $number } sur { $items } : { $count } épingles en T, de { $length } de long ou plus. Appuyez sur suivant quand vous les avez.
kit-pins-say-brief = { $count } épingles en T, de { $length } de long ou plus.
kit-pins-say-teach = Il vous faut, { $number } sur { $items } : { $count } épingles en T, de { $length } de long ou plus. Appuyez sur suivant quand vous les avez. Une moitié tient les ganses du bord, l’autre celles du centre.
kit-pins-show = { $count } épingles en T, { $length }
kit-pins-note = { "" }
kit-tape-say-teach = Il vous faut, { $number } sur { $items } : du ruban de masquage, { $tape } et un peu plus. Appuyez sur suivant quand vous l’avez. Il retient le dormant et la feuille imprimée.

## On paper

card-pins = Piquez { $pins } épingles en T également réparties sur chacun { $rows ->
        [one] de deux cercles
       *[other] des cercles
    }, { $staggered ->
        [yes] chaque { -top-pin } à mi-chemin entre deux { -bottom-pins } : le { -top-pin } 1 un demi-pas plus loin que le { -bottom-pin } 1.
       *[no] chaque { -top-pin } dans le prolongement du { -bottom-pin } de même numéro.
    }
card-pins-apart = Sur un cercle de { $tube }, les picots sont à { $apart } l’un de l’autre, mesurés tout autour.
card-lift = Ôter : marquez la { -bottom-bight } 1 d’un bout de ruban, et qu’aucune extrémité ne file. Ôtez les épingles une par une, en tenant l’ouvrage à plat.
card-caution-pins = Les épingles en T dépassent de la planche : attention aux yeux et aux paumes.
