# The screens of the app.

app-title = Marlinspeak

## The very first start, where nothing was ever begun

first-start-heading = Et si nous faisions le premier ensemble ?
first-start-what = Un bonnet turc est une tresse sans fin autour d’un cordage, d’une rambarde ou d’un manche. Ici, vous le faites de picot en picot sur un tube, étape par étape.
first-start-needs = Il vous faut un tube de 45 mm avec deux bagues de cinq picots, les bagues à 12 mm l’une de l’autre ; un mètre de cordon de 4 mm, du ruban adhésif, un épissoir.
first-start-begin = Faire le premier
first-start-past = Autre chose
first-start-say = Et si nous faisions le premier ensemble ? Il vous faut un tube de 45 mm avec deux bagues de cinq picots, les bagues à 12 mm l’une de l’autre ; un mètre de cordon de 4 mm, du ruban adhésif, un épissoir. Appuyez sur la barre d’espace pour commencer, ou sur tabulation pour autre chose.

## The start screen

start-heading = Qu’allez-vous couvrir ?
start-by-numbers = Ou nommez le nœud par ses nombres
start-name-heading = Nommer le nœud par ses nombres
start-leads = Brins
start-bights = Ganses
start-passes = Passes
start-weave = Tressage (o enjamber, u glisser sous)
# $example: a row code for the leads that stand in the form, such as ouou.
start-weave-hint = Vide : enjamber un, glisser sous un, commencé de façon à glisser le moins possible. 1 commence en enjambant ; 2 : par deux ; ou un code par rang, comme { $example } (o enjamber, u glisser sous)
start-nested = Ganses emboîtées (vide : 1)
start-lands = Le premier cordon arrive au rang (vide : le plus en dedans)
start-hand = Avancer
start-hand-right = à droite
start-hand-left = à gauche
start-side = Les passes suivantes
start-side-bottom = côté base
start-side-top = côté tête
start-begin = Commencer ce nœud

# What the knot in the form comes to.
# Exemple : 5 brins, 7 ganses, un circuit. Chaque picot de tête est un demi-pas à droite du picot de
# base de même numéro.
# $tucks: in all passes. $other_tucks: the same begun with over, when it is begun with under, or 0. $staggered: yes or no. $uneven: yes when the weave leaves a fault at the rims. $turns: whole
# turns of the tube on each leg.
start-facts = { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, { $strands ->
        [one] un circuit
       *[other] { $strands } circuits
    }, { $tucks } passages dessous{ $other_tucks ->
        [0] { "" }
       *[other] , ou { $other_tucks } en commençant par enjamber
    }. { $staggered ->
        [yes] Chaque { -top-pin } est un demi-pas à { $hand ->
            [left] gauche
           *[right] droite
        } du { -bottom-pin } de même numéro.
       *[no] Chaque { -top-pin } est { -in-line-with } du { -bottom-pin } de même numéro.
    }{ $turns ->
        [0] { "" }
        [one] { " " }Chaque trajet fait une fois le { -turn } et davantage.
       *[other] { " " }Chaque trajet fait { $turns } fois le { -turn } et davantage.
    }{ $uneven ->
        [yes] { " " }Avec ce tressage, le motif se rompt aux bords.
       *[no] { "" }
    }

# What no knot must be trusted with, where one is chosen.
choice-caution = Le nœud ne fait que décorer : ne lui confiez jamais une personne ni une charge, et gardez cordon et petites pièces hors de portée des jeunes enfants.

# A knot of many evenings: it may be a slip of the hand. $legs: legs of all passes.
start-huge = { $leads } brins et { $bights } ganses font { $legs } trajets, l’ouvrage de bien des soirées. Appuyez encore une fois pour le commencer, ou changez les nombres.

# A tie in the list. $kind: usual for over one, under one; run for other runs of $weave; twin for a run of
# $weave begun with under; code for another weave, row by row in $weave.
# Exemple : 5 brins, 7 ganses, 2 passes
# Exemple : 5 brins, 7 ganses, tressage 2, vers la gauche
start-tie = { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }{ $passes ->
        [one] { "" }
        [2] , doublé
        [3] , triplé
       *[other] , { $passes } passes
    }{ $kind ->
        [usual] { "" }
        [run] , tressage { $weave }
        [twin] { $weave ->
            [1] , commencé en glissant
           *[other] , tressage { $weave } commencé en glissant
        }
       *[code] , tressage { $weave }
    }{ $hand ->
        [left] , vers la gauche
       *[right] { "" }
    }

# The same in its shortest form, by leads and bights.
start-tie-short = { $leads } × { $bights }{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées
    }{ $passes ->
        [one] { "" }
        [2] , doublé
        [3] , triplé
       *[other] , { $passes } passes
    }

# How a tie is told, beside it on the tying screen. $most: crossings at once, 0 for whole legs.
# Exemple : normal, 4 à la fois
telling = { $detail ->
        [brief] bref
        [teach] détaillé
       *[plain] normal
    }, { $most ->
        [0] trajets entiers
        [one] 1 croisement à la fois
       *[other] { $most } croisements à la fois
    }

# Exemple : 7 trajets posés sur 24, repris il y a 3 jours
# $days: whole days since.
start-tie-progress = { $laid ->
        [0] aucun trajet posé
        [one] 1 trajet posé
       *[other] { $laid } trajets posés
    } sur { $legs }, { $days ->
        [0] { $hours ->
            [0] { $minutes ->
                [0] dernière fois à l’instant
               *[other] dernière fois il y a { $minutes } min
            }
           *[other] dernière fois il y a { $hours } h
        }
        [one] dernière fois hier
       *[other] dernière fois il y a { $days } jours
    }

# Spoken when the app opens with a tie in progress.
start-offer-say = Un nœud attend : { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, { $laid ->
        [0] aucun trajet posé
        [one] 1 trajet posé
       *[other] { $laid } trajets posés
    } sur { $legs }. Appuyez sur la barre d’espace pour le reprendre, ou sur tabulation pour en faire un nouveau.
# Spoken when it opens with none.
start-empty-say = Aucun nœud n’attend. Appuyez sur la barre d’espace pour commencer { $leads } brins, { $bights } ganses{ $nested ->
        [one] { "" }
       *[other] , { $nested } emboîtées{ $lands ->
            [0] { "" }
           *[other] , premier cordon au rang { $lands }
        }
    }, ou sur tabulation pour saisir un autre nœud.

## The tying screen

# A part of the job in the strip of all of them, a word each. $part: kit (packing the bag), rig, lead,
# follow, lift, fair or finish.
job-part = { $part ->
        [kit] Matériel
        [rig] Préparer
        [lead] Poser
        [follow] Suivre
        [lift] { -Lifting }
        [fair] Égaliser
       *[finish] Finir
    }
# What is left of the job. $time: as in work-time. Example: about 25 min left
job-time-left = encore { $time } environ

# Said when the depth was changed, before the step. $detail: brief, plain or teach.
detail-say = { $detail ->
        [brief] Bref.
        [teach] Détaillé.
       *[plain] Normal.
    }
# $most: crossings told at once at the most; $whole: yes when legs are told whole.
at-once-say = { $fair ->
        [leg] Trajet par trajet.
        [item] Une chose à la fois.
        [page] Plusieurs choses à la fois.
        [round] Une reprise entière à la fois.
       *[no] { $whole ->
            [yes] Trajets entiers.
           *[no] Au plus { $most ->
                [one] 1 croisement
               *[other] { $most } croisements
            } à la fois.
        }
    }

## What the app has to report

# In the bar of keys, as short as can be, while the voice is lost.
voice-lost-sign = Pas de voix
voice-lost = Pas de voix : le service de parole ne répond pas. Les étapes continuent par écrit, et la parole reviendra d’elle-même.
saving-foreseen = Ce que vous faites à ce nœud ne peut pas être enregistré ({ $reason }) : il reste tel qu’il a été gardé, notez donc l’étape où vous vous arrêtez. Pour qu’il le soit, vérifiez que vous pouvez écrire dans le dossier et qu’il y a de la place sur le disque ; chaque appui le tente de nouveau.
saving-failed = Ce nœud ne peut pas être enregistré ({ $reason }). Un nouvel essai a lieu chaque seconde : faites de la place sur le disque ou vérifiez que vous pouvez écrire dans le dossier, et ne quittez pas avant que ce soit fait.
saving-nowhere = Ce nœud ne peut pas être enregistré ({ $reason }) : le dossier des nœuds est hors d’atteinte. Les étapes continuent ; pour garder ce nœud, vérifiez que vous pouvez écrire dans le dossier, et recommencez-le.
saving-slow = Pas encore enregistré : le disque tarde à répondre. Continuez l’ouvrage, et ne quittez pas tant que ceci est affiché.
# $known: yes when the reason is known, else no.
leaving-unsaved = Vos dernières touches ne sont pas enregistrées{ $known ->
        [yes] { " " }({ $reason })
       *[no] { "" }
    }. Fermez encore une fois pour quitter sans elles, ou continuez pour un nouvel essai.
saving-again = Ce nœud est de nouveau enregistré.
focus-lost = Une autre fenêtre reçoit les touches. Cliquez ici avant de continuer.

# A tie file that was set aside.
trouble-damaged = Le fichier { $file } n’a pas pu être lu et a été mis de côté sous le nom { $aside } ; rien n’y a été changé.
# The copy before a damaged file is used. $state: aside, gone or there. $copy: known, unknown or kept; $presses: how
# many presses it is behind.
trouble-restored = { $state ->
        [aside] Le fichier { $file } était abîmé et a été mis de côté sous le nom { $aside }
        [gone] Le fichier { $file } n’est plus là
       *[there] Le fichier { $file } est abîmé
    } ; { $copy ->
        [kept] la copie enregistrée auparavant est utilisée.
        [unknown] la copie d’avant est utilisée, et on ne peut dire de combien elle est en retard : comparez l’étape à votre ouvrage.
       *[known] { $presses ->
            [0] la copie d’avant est utilisée, et elle en est à la même étape.
            [one] la copie d’une touche plus tôt est utilisée : comparez l’étape à votre ouvrage.
           *[other] la copie de { $presses } touches plus tôt est utilisée : comparez l’étape à votre ouvrage.
        }
    }
# $path: the file or folder. $reason: as in reasons.ftl.
trouble-io = « { $path } » est hors d’accès ({ $reason }) : vérifiez que son dossier existe et qu’il y reste de la place, puis réessayez.
trouble-in-use = Ce nœud est ouvert dans une autre fenêtre ou un autre terminal : continuez là-bas, ou appuyez encore sur la même touche pour seulement regarder.
