"""The sentences of the steps of every method but halving, and why a method is none for an arc; in Spanish as on US
sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "step.centre_behind": (
        "C, el ~centro~: ponga una ~cinta~ en {start} y otra en {end}, y crúcelas a {length0} cada una. Párese en A, "
        "mirando a B: C queda a la {other_hand}. Eso es detrás de la ~cuerda del arco~, del lado contrario a la curva. "
        "Clave una ~estaca de acero~ en C; las dos ~cintas~ deben seguir dando {length0}."
    ),
    "step.centre_inside": (
        "C, el ~centro~: ponga una ~cinta~ en {start} y otra en {end}, y crúcelas a {length0} cada una. Párese en A, "
        "mirando a B: C queda a la {hand}. Ese es el lado de la curva: el ~arco~ pasa de medio círculo. Clave una "
        "~estaca de acero~ en C; las dos ~cintas~ deben seguir dando {length0}."
    ),
    "step.centre_half": (
        "C, el ~centro~: el ~punto medio~ del ~hilo~ de {start} a {end}, a {length0} de cada extremo. Clave una "
        "~estaca de acero~ en C."
    ),
    "step.centre_near": (
        "C, el ~centro~: empiece en el ~punto medio~ del ~hilo~ de {start} a {end}, a {length0} de cada extremo. Mida "
        "{length1} ~a escuadra~ a la {other_hand} (mirando de A a B), alejándose de la curva. Mueva C de lado hasta "
        "que quede a {length2} de los dos extremos. Clave una ~estaca de acero~ en C."
    ),
    "step.centre_near_inside": (
        "C, el ~centro~: empiece en el ~punto medio~ del ~hilo~ de {start} a {end}, a {length0} de cada extremo. Mida "
        "{length1} ~a escuadra~ a la {hand} (mirando de A a B), hacia la curva. Mueva C de lado hasta que quede a "
        "{length2} de los dos extremos. Clave una ~estaca de acero~ en C."
    ),
    "step.swing": (
        "{stake}: enganche la ~cinta~ en C y sosténgala en {length0}. Gírela a la {swing_hand} (mirando de C a "
        "{other}) hasta que {other} a {stake} mida {length1}. Clave {stake}."
    ),
    "step.swing_beside": (
        "{stake}: sostenga la ~cinta~ en C, donde está ahora su ~estaca de acero~, a {length0}. Gírela a la "
        "{swing_hand} (mirando de C a {other}) hasta que {other} a {stake} mida {length1}. Clave {stake}."
    ),
    "step.ordinate": (
        "{stake}: ~hilo~ de {first} a {last}. En él marque {length0} desde {start}. Ahí mida {length1} ~a escuadra~ a "
        "la {off_hand} (mirando de {first} a {last}). Clave {stake}."
    ),
    "step.cross": (
        "{stake}: cruce {length0} desde {start} con {length1} desde {end}, a la {cross_hand} (mirando de {start} a "
        "{end}). Clave {stake}."
    ),
    "step.polar": (
        "{stake}: instrumento sobre {start}, apuntado a {end}. Gire {angle0} a la {turn_hand}. Sobre esa línea mida "
        "{length0}. Clave {stake}."
    ),
    "step.peg": (
        "{peg}, ~estaca de acero~ sobre la ~tangente~ en {start}: en el ~hilo~ de {start} hacia {end}, marque "
        "{length0}. Ahí mida {length1} ~a escuadra~ a la {off_hand} (mirando de {start} a {end}). Clave {peg} y "
        "tienda un ~hilo~ de {start} hasta ella: la curva sale de {start} por ese ~hilo~."
    ),
    "step.peg_back": (
        "{peg}, ~estaca de acero~ sobre la ~tangente~ en {start}: prolongue el ~hilo~ de {end} más allá de "
        "{start}, {length0}. Ahí mida {length1} ~a escuadra~ a la {off_hand} (mirando de {start} a {end}). Clave "
        "{peg} y tienda un ~hilo~ de {start} hasta ella: la curva sale de {start} por ese ~hilo~."
    ),
    "step.peg_square": (
        "{peg}, ~estaca de acero~ sobre la ~tangente~ en {start}: en {start}, mida {length0} ~a escuadra~ del "
        "~hilo~ a {end}. Mida hacia la {off_hand} (mirando de {start} a {end}). Clave {peg} y tienda un ~hilo~ "
        "de {start} hasta ella: la curva sale de {start} por ese ~hilo~."
    ),
    "step.tangent_offset": (
        "{stake}: ~hilo~ de {start} a {other}, por la ~tangente~. En él marque {length0} desde {start}. Ahí mida "
        "{length1} ~a escuadra~ a la {off_hand} (mirando de {start} a {other}), hacia la ~cuerda del arco~. Clave "
        "{stake}."
    ),
    "step.tangent_offset_past": (
        "{stake}: prolongue la recta de {other} más allá de {start}, {length0}. Ahí mida {length1} ~a escuadra~ a la "
        "{off_hand} (de espaldas a {other}), hacia la ~cuerda del arco~. Clave {stake}."
    ),
    "step.tangent_offset_out": (
        "{stake}: ~hilo~ de {start} a {other}. En él marque {length0} desde {start}. Ahí mida {length1} ~a escuadra~ a "
        "la {off_hand} (mirando de {start} a {other}), alejándose de la ~cuerda del arco~. Clave {stake}."
    ),
    "step.produce_first": (
        "{stake}: en la ~tangente~ de {start} hacia {other} marque {length0}. Ponga el cero en {start} y gire "
        "{length0} hasta quedar a {length2} de la marca. Gire a la {swing_hand} (mirando la marca desde {start}). "
        "Clave {stake}."
    ),
    "step.produce_straight": (
        "{stake}: prolongue la recta de {other} más allá de {start}, {length0}, y marque ahí. Ponga el cero en {start} "
        "y gire {length0} hasta quedar a {length2} de la marca. Gire a la {swing_hand} (mirando la marca desde "
        "{start}). Clave {stake}."
    ),
    "step.produce": (
        "{stake}: prolongue la línea de {other} más allá de {start}, {length0}, y marque ahí. Ponga el cero en {start} "
        "y gire {length1} hasta quedar a {length2} de la marca. Gire a la {swing_hand} (mirando la marca desde "
        "{start}). Clave {stake}."
    ),
    "step.sight": (
        "{stake}, deflexión {deflection} desde la ~tangente~: instrumento sobre {start}, apuntado a {end}. Gire "
        "{angle0} a la {turn_hand}, desde la ~cuerda del arco~ A-B. {onto} Clave {stake}."
    ),
    "step.sight_ahead": (
        "{stake}, deflexión {deflection} desde la ~tangente~: instrumento sobre {start} (PC), apuntado a {end} "
        "(PI). Gire {angle0} a la {turn_hand}; desde la ~cuerda del arco~ A-B son {off_chord}. {onto} Clave "
        "{stake}."
    ),
    "step.sight_back": (
        "{stake}, deflexión {deflection} desde la ~tangente~: instrumento sobre {start} (PC). Apunte atrás a "
        "{end}, campanee y gire {deflection} a la {deflection_hand}. Sin campanear son {angle0} a la "
        "{turn_hand}; desde la ~cuerda del arco~ A-B son {off_chord}. {onto} Clave {stake}."
    ),
    "step.onto_first": "Mida {length} sobre esa línea.",
    "step.onto_next": "Mida {length} de {other} hasta esa línea, y tome el cruce más lejos de {start}.",
    "method.centre_unreached.wrong": "Nadie ha dicho que se alcanza el ~centro~ del ~arco~.",
    "method.centre_unreached.remedy": "Diga en el formulario que sí se alcanza, o elija otro método.",
    "method.ordinates_overhang.wrong": (
        "Este ~arco~ gira más de medio círculo y se sale de su ~cuerda del arco~: ninguna ~ordenada~ lo alcanza todo."
    ),
    "method.ordinates_overhang.remedy": "Use otro método: por mitades, dos ~cintas~ o girar desde el ~centro~.",
    "method.tangent_overhang.wrong": (
        "Este ~arco~ gira más de medio círculo, así que se regresa más allá de sus ~tangentes~."
    ),
    "method.tangent_overhang.remedy": "Use otro método: por mitades, dos ~cintas~ o girar desde el ~centro~.",
    "method.tangent_overhang_one.wrong": (
        "Este ~arco~ gira más de un cuarto de círculo: se regresa más allá de la ~tangente~ de un extremo."
    ),
    "method.tangent_overhang_one.remedy": "Mida ~distancias a escuadra~ desde las ~tangentes~ de los dos extremos.",
    "method.angles_turn_back.wrong": (
        "Cerca del final de este ~arco~ la ~separación~ regresa sobre la visual. Así no puede fijar la ~estaca~."
    ),
    "method.angles_turn_back.remedy": "Use otro método: por mitades, dos ~cintas~ o girar desde el ~centro~.",
    "method.chain_long.wrong": (
        "Con tantas ~estacas~, cada una puesta desde la anterior, los errores se juntarían demasiado."
    ),
    "method.chain_long.remedy": "Use ~separaciones~ más grandes, u otro método.",
    "method.too_many.wrong": "Con ~separaciones~ tan chicas saldrían más ~estacas~ de las que cualquiera clavaría.",
    "method.too_many.remedy": "Use ~separaciones~ más grandes, u otro método.",
    "method.too_small.wrong": (
        "Aquí sus pasos son más chicos que las marcas de la ~cinta~: dos puntos caerían en el mismo lugar."
    ),
    "method.too_small.remedy": "Lea una marca más fina, clave menos ~estacas~, o use otro método.",
    "method.marks_are_one.wrong": "Los dos puntos desde los que trabaja están en el mismo lugar.",
    "method.marks_are_one.remedy": "Nombre dos puntos que estén separados.",
    "method.marks_in_line.wrong": (
        "Los dos puntos de las ~cintas~ quedan en línea con la mitad del ~arco~: las ~cintas~ no se cruzan."
    ),
    "method.marks_in_line.remedy": "Ponga las ~cintas~ en puntos hacia un lado.",
    "method.control_on_stake.wrong": "El punto de control bajo el instrumento está donde va una ~estaca~.",
    "method.control_on_stake.remedy": "Ponga el instrumento en el otro punto.",
}
