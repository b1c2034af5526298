# Voces: cuáles son naturales, y cómo suena una antes de quedarse con ella.

# Natural: made of the recorded speech of a person. $names: what the service calls them.
voices-natural = Voces naturales, hechas de grabaciones de una persona: { $names }.
# $way: debian (a package of Debian), non-free (one of its sections contrib and non-free) or elsewhere. $package: its name.
voices-no-natural = Ninguna de ellas es natural, hecha de grabaciones de una persona. { $way ->
        [debian] «sudo apt install { $package }» añade una.
        [non-free] «sudo apt install { $package }» añade una, con las secciones contrib y non-free activadas (en Ubuntu: universe y multiverse).
       *[elsewhere] Un módulo del servicio de voz como pico, RHVoice o piper añade una: míralo entre los paquetes de este sistema.
    }

# Said in the voice itself: a turn of phrase from a step, to hear it by. $kind: name, natural or usual (the service chooses). $name: what the service calls it.
voice-trial-say = { $kind ->
        [usual] La voz que elige el servicio de voz.
        [natural] { $name }, una voz natural.
       *[name] { $name }.
    } Encima de un cabo, debajo de dos, encima de uno. Luego rodea la clavija 3 de la cabeza. La tecla Intro se queda con esta voz, Escape deja la de antes.
