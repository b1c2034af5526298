# Stimmen: welche natürlich sind, und wie eine klingt, bevor sie genommen wird.

# Natural: made of the recorded speech of a person. $names: what the service calls them.
voices-natural = Natürliche Stimmen, aus Aufnahmen eines Menschen gemacht: { $names }.
# $way: debian (a package of Debian), non-free (one of its sections contrib and non-free) or elsewhere. $package: its name.
voices-no-natural = Keine davon ist natürlich, aus Aufnahmen eines Menschen gemacht. { $way ->
        [debian] „sudo apt install { $package }“ bringt eine.
        [non-free] „sudo apt install { $package }“ bringt eine, sobald die Bereiche contrib und non-free eingeschaltet sind (unter Ubuntu: universe und multiverse).
       *[elsewhere] Ein Modul des Sprachdienstes wie pico, RHVoice oder piper bringt eine: Sieh unter den Paketen dieses Systems nach.
    }

# Said in the voice itself: a turn of phrase from a step, to hear it by. $kind: name, natural or usual (the service chooses). $name: what the service calls it.
voice-trial-say = { $kind ->
        [usual] Die Stimme, die der Sprachdienst wählt.
        [natural] { $name }, eine natürliche Stimme.
       *[name] { $name }.
    } Über eine Schnur, unter zwei durch, über eine. Dann um Kopf-Stift 3. Die Eingabetaste nimmt diese Stimme, Escape lässt die vorige.
