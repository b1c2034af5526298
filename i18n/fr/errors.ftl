# One sentence for each thing that can go wrong: what is wrong, what is allowed, what to try.

# $quantity: leads, bights, passes, nested or lands. $given: what was typed.
knot-not-a-number = { $quantity ->
        [leads] Le nombre de brins
        [bights] Le nombre de ganses
        [nested] Le nombre de ganses emboîtées
        [lands] Le numéro du rang où arrive le premier cordon
       *[passes] Le nombre de passes
    } doit être entier, et « { $given } » ne l’est pas : donnez un nombre de { $least } à { $most }, par exemple { $example }.

# A field of the start screen is empty.
knot-empty = Il manque { $quantity ->
        [leads] le nombre de brins
        [bights] le nombre de ganses
       *[passes] le nombre de passes
    } : donnez un nombre entier de { $least } à { $most }, par exemple { $example }.

knot-out-of-range = { $quantity ->
        [leads] Le nombre de brins
        [bights] Le nombre de ganses
        [nested] Le nombre de ganses emboîtées
        [lands] Le numéro du rang où arrive le premier cordon
       *[passes] Le nombre de passes
    } doit être de { $least } à { $most }, et { $given } n’y est pas : essayez { $example }.

knot-missing = { $quantity ->
        [leads] Le nombre de brins manque : ajoutez --leads avec un nombre de { $least } à { $most }, par exemple --leads { $example }.
       *[bights] Le nombre de ganses manque : ajoutez --bights avec un nombre de { $least } à { $most }, par exemple --bights { $example }.
    }

knot-weave-unreadable = « { $given } » n’est pas un tressage : donnez un pas comme 1 (enjamber un, glisser sous un), ou un code par rang, de la base vers la tête, en lettres o (enjamber) et u (glisser sous), par exemple ouo.

# $rows: rows of crossings, one less than the leads.
knot-run-too-long = Un pas de { $given } ne va pas avec { $leads } brins, qui se croisent sur { $rows ->
        [one] 1 rang
       *[other] { $rows } rangs
    } : prenez un pas de 1 à { $rows }, ou plus de brins.

knot-code-length = Un code par rang de { $letters ->
        [one] 1 lettre
       *[other] { $letters } lettres
    } ne va pas avec { $leads } brins : donnez une lettre, o ou u, { $rows ->
        [one] pour le seul rang, donc 1 lettre.
       *[other] pour chacun des { $rows } rangs, de la base vers la tête.
    }

cords-unreadable = « { $given } » laisse un cordon sans nom : donnez des noms séparés par des virgules, par exemple --cords bleu,blanc.

# $given: how many names there are. $all: strands times passes. $example: a name for each strand.
cords-do-not-go = { $given ->
        [one] 1 nom de cordon ne va pas
       *[other] { $given } noms de cordons ne vont pas
    } avec ce nœud : { $strands ->
        [one] { $passes ->
            [one] il a un seul circuit en une passe ; donnez un seul nom, par exemple --cords bleu.
           *[other] donnez un nom pour chacune de ses { $passes } passes, par exemple --cords bleu,blanc ; ou un seul nom pour le tout.
        }
       *[other] { $passes ->
            [one] donnez un nom pour chacun des { $strands } circuits, par exemple { $example }.
           *[other] donnez un nom pour chacun des { $strands } circuits, par exemple { $example } ; ou un pour chaque passe de chaque circuit, { $all } noms, d’abord les passes du premier circuit.
        }
    }
# Names of cords with commas between them, for examples.
cords-example = rouge,blanc,bleu,vert

choice-unknown = « { $given } » n’est pas un choix pour { $option }, qui accepte { $allowed } : essayez { $option } { $example }.

language-unknown = Marlinspeak ne parle pas « { $given } » ; les langues connues : { $known }. Essayez --lang { $example }.

# What the command line itself can get wrong.
cli-unknown-option = Il n’y a ici ni option ni commande « { $given } » : « { $help } » montre celles qui existent.
cli-unknown-command = Il n’y a ici ni option ni commande « { $given } » : « { $before } » accepte { $allowed } ; « { $help } » dit ce que fait chacune.
cli-which-command = Cette commande n’est pas complète : « { $before } » accepte { $allowed } ; « { $help } » dit ce que fait chacune.
cli-missing-value-for = L’option { $option } (« { $what } ») demande une valeur après elle : « { $help } » montre laquelle.
cli-missing-value = L’option { $option } demande une valeur après elle : « { $help } » montre laquelle.
cli-twice = L’option { $option } est donnée plus d’une fois : donnez-la une seule fois.
cli-options-first = Les options qui nomment un nœud viennent après la commande : écrivez « marlinspeak steps --leads 5 --bights 7 ».
cli-needs-command = Cette commande n’est pas complète : « { $help } » montre comment l’écrire.
cli-no-text = Un mot de cette commande n’est pas du texte (UTF-8) : tapez-le à nouveau ; « { $help } » montre comment l’écrire.

at-once-unreadable = --at-once demande un nombre de croisements de 1 à 999, ou « leg » pour des trajets entiers, et « { $given } » n’est ni l’un ni l’autre : essayez --at-once 4.

app-no-display = Il n’y a pas d’écran où ouvrir une fenêtre : lancez Marlinspeak depuis une session de bureau, ou utilisez « marlinspeak steps » dans le terminal.
app-without-window = Ce Marlinspeak a été compilé pour le terminal seul et n’a pas de fenêtre : utilisez ici « marlinspeak tie », ou installez celui qui en a une.
app-window-failed = La fenêtre n’a pas pu s’ouvrir sur l’écran « { $display } » : lancez Marlinspeak depuis une session de bureau, ou utilisez « marlinspeak steps » dans le terminal.
app-fault = Marlinspeak s’est arrêté à cause d’un défaut interne, noté dans le journal : relancez-le et reprenez le nœud là où il a été enregistré.
output-failed = Le résultat n’a pas pu être écrit ({ $reason }) : vérifiez sa destination et réessayez.

# $nested: rows of pins at each rim.
knot-lands-beyond = { $nested ->
        [one] Un nœud sans ganses emboîtées a 1 rang de picots à chaque bord, et pas de rang { $given } : enlevez le rang où arrive le premier cordon, ou emboîtez 2 ganses à chaque bord.
       *[other] Les picots sont sur { $nested } rangs à chaque bord, le rang 1 le plus en dehors, et il n’y a pas de rang { $given } : donnez le rang où arrive le premier cordon, un nombre de 1 à { $nested }.
    }
knot-no-leads-left = Avec { $leads } brins, il n’en reste aucun pour les autres cordons : faites arriver le premier cordon au rang le plus en dedans, le rang { $nested }, ou prenez 3 brins ou plus.
knot-weave-nested = Ce tressage ne va pas avec les { $rows } rangs de croisements de ce nœud entrelacé : donnez un pas de 1 à { $rows }, ou un code de { $rows } lettres, de la base vers la tête.
