# Voices: which are natural ones, and how one sounds before it is taken.

# Natural: made of the recorded speech of a person. $names: what the service calls them.
voices-natural = Natural voices, made of a person’s own speech: { $names }.
# $way: debian (a package of Debian), non-free (one of its sections contrib and non-free) or elsewhere. $package: its name.
voices-no-natural = None of them is natural, made of a person’s own speech. { $way ->
        [debian] “sudo apt install { $package }” adds one.
        [non-free] “sudo apt install { $package }” adds one, with the sections contrib and non-free switched on (on Ubuntu: universe and multiverse).
       *[elsewhere] A module of the speech service such as pico, RHVoice or piper adds one: look among the packages of this system.
    }

# Said in the voice itself: a turn of phrase from a step, to hear it by. $kind: name, natural or usual (the service chooses). $name: what the service calls it.
voice-trial-say = { $kind ->
        [usual] The voice that the speech service chooses.
        [natural] { $name }, a natural voice.
       *[name] { $name }.
    } Over 1 cord, under 2, over 1. Then round top pin 3. Enter takes this voice, escape keeps the one before.
