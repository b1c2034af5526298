# The help of the terminal: what each command and option does. What is typed (names of commands and
# options, and words such as “right”) is the same in every language.

## The program and its commands.

help-marlinspeak = Dit chaque étape d’un bonnet turc à qui le noue, à voix haute et en grands caractères.
help-marlinspeak-more =
    Dit chaque étape d’un bonnet turc à qui le noue, à voix haute et en grands caractères.

    Sans commande, ouvre la fenêtre ; avec --leads et --bights, sur ce nœud déjà commencé.
help-steps = Écrire toutes les étapes d’un nœud
help-fit = Trouver les nœuds qui couvrent un objet, le meilleur d’abord
help-rig = Dire comment préparer un tube pour un nœud : picots, bagues, cordon
help-shelf = Les nœuds gardés : les voir, les transmettre, les sauvegarder, les vérifier
help-tie = Guider un nœud dans le terminal ; si aucun n’est nommé, le dernier en cours
help-sheet = Faire du papier pour l’établi : une fiche, une bande ou une image
help-count = Compter un nœud qu’on apporte jusqu’à le connaître
help-doctor = Dire ce qui marche ici de l’écran, de la parole, du son, des pédales et des dossiers, et comment réparer le reste
help-install-artifacts = Écrire les pages de manuel, les complétions et les icônes qui s’installent
help-shelf-list = Montrer les nœuds de l’étagère, le plus récent d’abord
help-shelf-export = Écrire un nœud dans un fichier à transmettre
help-shelf-import = Mettre sur l’étagère le nœud d’un fichier
help-shelf-verify = Vérifier tous les documents : code de sortie 0 seulement s’ils sont tous intacts
help-shelf-backup = Sauvegarder tous les nœuds et le journal dans un fichier
help-shelf-restore = Mettre sur l’étagère tous les nœuds d’une sauvegarde ; aucun de ceux qui y sont n’est remplacé
help-shelf-delete = Ôter un nœud de l’étagère
help-shelf-undo = Faire revenir un nœud supprimé
help-sheet-card = Le nœud, ses chiffres et tous les trajets en tableau
help-sheet-strip = Numéros des picots et repères des trous en vraie grandeur, à poser autour du tube ; pour un tapis, la feuille de sa planche ; en place, les bandes de repères
help-sheet-stage = L’image d’une étape
help-sheet-reel = Le nœud entier en image animée, trajet par trajet, avec ses mots

## What describes a knot.

help-leads = Brins, de 2 à 999 : cordons rencontrés en ligne droite d’un bord à l’autre
help-bights = Ganses, de 2 à 999 : festons de chaque bord, et picots de chaque bague
help-passes = Passes, de 1 à 9 : 1 est simple, 2 doublé, 3 triplé [sinon : 1]
help-weave = Enjamber n, glisser sous n ; ou un code par rang, en o (enjamber) et u (glisser sous), depuis la base, comme ouuo [sinon : 1, avec des ganses emboîtées autant qu’il y en a, commencé en enjambant ou en glissant, selon ce qui fait glisser le moins]
help-side = Le côté du premier cordon où restent les passes suivantes : right (droite) ou left (gauche), dans le sens où va le cordon ; si vous avancez vers la droite, right est le côté base [sinon : right]
help-hand = Le sens où vous avancez autour du tube : right (droite) ou left (gauche) [sinon : right]
help-order = Avec plusieurs circuits : passes pose d’abord la première passe de tous, strands finit un circuit après l’autre [sinon : passes, avec des ganses emboîtées strands]
help-cords = Comment vous appelez les cordons : un nom pour chaque circuit, ou pour chaque passe de chaque circuit (d’abord toutes celles du premier), comme « bleu,blanc »

## Object, cord and tube.

help-object = Diamètre de l’objet ; s’il s’amincit, ceux de ses deux bouts, celui du bas d’abord
help-girth = Tour de l’objet, au lieu de son diamètre
help-ball = Diamètre d’une boule à couvrir, au lieu d’un objet
help-mat = Un tapis plat, au lieu d’un objet : d’un bord à l’autre, et son trou après un deux-points
help-in-place = Le faire sur ce qu’il couvre, sans tube : rien n’est enfilé
help-cover = Longueur de l’objet à couvrir ; s’il s’amincit, la longueur sur laquelle il le fait
help-cord = Le cordon : son épaisseur, une norme comme III ou 550, ou le nom d’un cordon gardé
help-firm = Ce qu’est le cordon : hard (dur : rond, garde sa forme), soft (souple : tressé ou câblé) ou flat (plat : ruban, tresse creuse) [sinon : soft, ou comme il a été gardé]
help-cord-give = À quelle distance sont deux passages du cordon avec un autre entre eux, en épaisseurs de cordon, comme 1,7 ; au lieu de --firm
help-tube = Le tube : son diamètre, ou le nom d’un tube gardé
help-rows = Trous de chaque rangée d’une bague, comme 14,20 ; un tube sans bagues n’en a pas
help-pin = Longueur des picots
help-thread = Filetage des picots, comme M4 ou M5
help-wall = Épaisseur de ce que traversent les picots
help-ring-width = Largeur de chaque bague le long du tube
help-tube-length = Longueur du tube
help-have = Cordon disponible
help-price-metre = Ce que coûte un mètre de cordon
help-price-hour = Ce que vaut une heure de votre travail
help-keep-tube = Garder le tube sous ce nom, pour --tube NOM
help-keep-cord = Garder le cordon sous ce nom, pour --cord NOM

## Which knots are wanted.

help-most = Tant de nœuds au plus [sinon : 10, ou tous avec --json]
help-fit-passes = Seulement des nœuds de tant de passes, de 1 à 4 : 1 est simple, 2 doublé, 3 triplé
help-least-leads = Seulement des nœuds de tant de brins ou plus, de 2 à 60
help-least-bights = Seulement des nœuds de tant de ganses ou plus, de 2 à 60
help-one-cord = Seulement des nœuds d’un seul cordon
help-most-legs = Seulement des ouvrages de tant de trajets au plus, toutes passes comprises
help-least-hidden = Cacher au moins cette part de l’objet, en pour cent [sinon : neuf dixièmes de ce que cache le nœud serré]
help-fit-weave = Enjamber n, glisser sous n, même si commencer en glissant demande moins de passages dessous [sinon : 1, avec des ganses emboîtées autant qu’il y en a, comme il y en a le moins]

## How it is told, and what comes out.

help-lang = La langue des mots, comme fr [sinon : celle des réglages ou du système]
help-detail = Combien on dit d’une étape : brief (bref), plain (normal) ou teach (détaillé) [sinon : plain]
help-json = Écrire un document JSON au lieu de texte
help-summary = Écrire combien il y a d’étapes de chaque sorte, et les secondes qu’elles prennent à dire
help-at-once = Tant de croisements au plus dans une étape, de 1 à 999, ou « leg » pour des trajets entiers ; avec 1, matériel, préparation et égalisation viennent un par un [sinon : 4]
help-tie-at-once = Tant de croisements au plus dans une étape, de 1 à 999, ou « leg » pour des trajets entiers [sinon : comme enregistré, ou 4]
help-checks = Quand on regarde l’ouvrage : après chaque aller-retour (round) ou chaque passe (pass) [sinon : round]
help-lesson = Une leçon des premiers nœuds, par son numéro
help-speech = Dire aussi chaque étape à voix haute, avec les sons de la fenêtre
help-step = L’étape, comme les compte « marlinspeak steps » [sinon : la dernière]
help-rolled-out = Montrer le tube ouvert et déroulé à plat, au lieu de tel qu’il est
help-out = Le fichier à écrire ; plusieurs pages en PNG reçoivent -1, -2, … avant l’extension
help-reel-out = Le fichier à écrire, de la sorte que dit son extension : gif, png ou webp
help-reel-width = Pixels en largeur, de 320 à 1920 ; les trois quarts en hauteur [sinon : 800]
help-replace = Remplacer un fichier qui existe déjà
help-pdf = Faire un PDF, quelle que soit l’extension du fichier
help-dpi = Points par pouce d’un PNG, de 72 à 600 [sinon : 300]
help-paper = Le papier, a4 ou letter [sinon : a4]
help-shelf-tie = Le nœud, sous le nom que lui donne « shelf list »
help-shelf-undo-tie = Le nœud, sous le nom que lui a donné « shelf delete »
help-file-out = Le fichier à écrire
help-file-in = Le fichier à lire
help-folder = Le dossier où écrire ; ce qui s’y trouve déjà est remplacé
help-help = Afficher cette aide
help-version = Afficher la version

## Headings.

help-usage = Pour l’écrire :
help-commands = Commandes :
help-arguments = Arguments :
help-options = Options :

## What stands for a value: one word, in capitals.

value-options = OPTIONS
value-command = COMMANDE
value-number-or-code = N|CODE
value-side = CÔTÉ
value-hand = SENS
value-names = NOMS
value-name = NOM
value-tag = CODE
value-depth = DÉTAIL
value-length = LONGUEUR
value-lengths = LONGUEUR[:LONGUEUR]
value-length-or-name = LONGUEUR|NOM
value-decimal = NOMBRE
value-thread = FILETAGE
value-price = PRIX
value-percent = POURCENT
value-paper = PAPIER
value-file = FICHIER
value-folder = DOSSIER
value-tie = NŒUD

help-nested = Ganses emboîtées l’une dans l’autre à chaque bord, de 1 à 9 ; à partir de 2, autant de cordons ou plus sont entrelacés
help-lands = Le rang de picots de tête où arrive le premier cordon, le rang 1 le plus en dehors ; sinon, le plus en dedans
help-fit-nested = Nœuds à tant de ganses emboîtées à chaque bord, de 1 à 9, tous les cordons avec autant de brins ; sinon, des nœuds sans ganses emboîtées et les meilleurs entrelacés
