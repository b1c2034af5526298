# Why something was refused or not believed, by kind, in words of our own: what the system and the
# readers of files say themselves is English or another language, and stands in the log file alone.

# It stands in brackets inside other sentences. $why: no-room, not-allowed, not-found, in-use,
# read-only, is-there, not-a-folder, not-a-file, bad-name, broken, no-answer, damaged, newer, other.
# Exemple : (il n’y a plus de place sur le disque)
reason = { $why ->
        [no-room] il n’y a plus de place sur le disque
        [not-allowed] vous n’en avez pas le droit à cet endroit
        [not-found] il n’y a rien à cet endroit
        [in-use] un autre programme s’en sert
        [read-only] le disque peut être lu, mais rien ne peut y être écrit
        [is-there] il y a déjà quelque chose de ce nom
        [not-a-folder] un fichier se trouve là où il faudrait un dossier
        [not-a-file] un dossier se trouve là où il faudrait un fichier
        [bad-name] aucun fichier ne peut porter ce nom
        [broken] le disque ou la liaison avec lui est en panne
        [no-answer] aucune réponse n’est venue à temps
        [damaged] le contenu est abîmé
        [newer] un Marlinspeak plus récent l’a écrit
       *[other] le système refuse ; le journal en dit plus
    }

# What is wrong with a document. $fault: too-large, not-a-file, not-json, newer, checksum or shape. $place: line, field or
# version, as below, or nothing.
# Exemple : (ligne 3, colonne 7 : ce n’est pas du JSON)
fault = { $fault ->
        [too-large] il est trop gros
        [not-a-file] ce n’est pas un fichier ordinaire
        [not-json] { $place } : ce n’est pas du JSON
        [newer] { $place } : plus récente que ce programme
        [checksum] le contenu ne répond pas à sa somme de contrôle
       *[shape] { $place ->
            [none] le contenu n’est pas ce qu’il devrait être
           *[known] { $place } : le contenu n’est pas ce qu’il devrait être
        }
    }

# Where in a document the fault is. $place: line, field or version. $name: its number or name; $column: the column, as text.
fault-place = { $place ->
        [line] ligne { $name }, colonne { $column }
        [field] champ « { $name } »
       *[version] version { $name }
    }
