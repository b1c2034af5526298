# Voix : lesquelles sont naturelles, et comment l’une sonne avant d’être prise.

# Natural: made of the recorded speech of a person. $names: what the service calls them.
voices-natural = Voix naturelles, faites d’enregistrements d’une personne : { $names }.
# $way: debian (a package of Debian), non-free (one of its sections contrib and non-free) or elsewhere. $package: its name.
voices-no-natural = Aucune d’elles n’est naturelle, faite d’enregistrements d’une personne. { $way ->
        [debian] « sudo apt install { $package } » en ajoute une.
        [non-free] « sudo apt install { $package } » en ajoute une, une fois les sections contrib et non-free activées (sous Ubuntu : universe et multiverse).
       *[elsewhere] Un module du service de parole comme pico, RHVoice ou piper en ajoute une : voyez parmi les paquets de ce système.
    }

# Said in the voice itself: a turn of phrase from a step, to hear it by. $kind: name, natural or usual (the service chooses). $name: what the service calls it.
voice-trial-say = { $kind ->
        [usual] La voix que choisit le service de parole.
        [natural] { $name }, une voix naturelle.
       *[name] { $name }.
    } Enjambez un cordon, passez sous deux, enjambez-en un. Puis contournez le picot de tête 3. Entrée prend cette voix, Échap garde celle d’avant.
