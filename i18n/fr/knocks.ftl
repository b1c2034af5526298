# Les coups sur l’établi : où on les essaie, et ce qui est dit du micro.

knocks-heading = Coups sur l’établi
knocks-try = Posez le micro sur l’établi et frappez deux coups, comme vous le ferez en nouant. Frappez la main vide, jamais avec une lame ou une aiguille. Chaque série reconnue est montrée et dite ici ; les coups ne font rien d’autre ici.
knocks-off = Les coups sont désactivés : aucun micro n’écoute. Suivant les active. Rien n’est enregistré ni gardé.
# Said when they are switched on there.
knocks-on = Les coups sont activés : un micro écoute. Rien n’est enregistré ni gardé ; il n’en sort que le moment et la force de chaque coup.

# Le niveau du son en ce moment. $under : de combien de décibels il est sous le plus fort.
knocks-level = Niveau du son en ce moment : { $under ->
        [one] { $under } décibel
       *[other] { $under } décibels
    } sous le plus fort que le micro puisse entendre.
knocks-level-none = Niveau du son en ce moment : rien ne vient d’un micro.

# Une série de coups qui a été prise. $number : combien. $over : de combien ils dépassent la pièce, en décibels. $clear :
# faint où c’est trop peu pour être pris à chaque fois, sinon clear.
knocks-taken = { $number ->
        [one] 1 coup
       *[other] { $number } coups
    }, { $over } décibels au-dessus du bruit de la pièce : { $clear ->
        [faint] faible. Rapprochez le micro, ou frappez plus fort.
       *[clear] net.
    }

no-microphone = Il n’y a pas de micro pour entendre les coups. Touches et pédales servent comme avant ; dès qu’il y en a un, il écoute.
microphone-again = Le micro est de nouveau là : les coups sont entendus.
