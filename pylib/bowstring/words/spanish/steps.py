"""The sentences of the construction's steps, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "hand.left": "izquierda",
    "hand.right": "derecha",
    "landmark": " ({landmark})",
    "step.have_ends": (
        "Busque las marcas {start}{first_landmark} y {end}{second_landmark}. Mida de {start} a {end}, ~a nivel~: debe "
        "dar {length0}. Si no da, pare y anote lo que midió."
    ),
    "step.set_ends": (
        "Todavía no hay ningún extremo en el suelo. Ponga {start}{first_landmark} y {end}{second_landmark}, cada uno "
        "con las medidas del ~plano~ a dos objetos fijos. Si el ~plano~ no las trae, pregunte. Luego mida de {start} a "
        "{end}, ~a nivel~: debe dar {length0}."
    ),
    "step.have_ends_untaped": (
        "Busque las marcas {start}{first_landmark} y {end}{second_landmark}. Aquí ninguna tirada sola va de una a "
        "otra. El siguiente paso las comprueba."
    ),
    "step.set_ends_untaped": (
        "Todavía no hay ningún extremo en el suelo. Ponga {start}{first_landmark} y {end}{second_landmark}, cada uno "
        "con las medidas del ~plano~ a dos objetos fijos. Si el ~plano~ no las trae, pregunte. Aquí ninguna tirada "
        "sola va de uno a otro. El siguiente paso los comprueba."
    ),
    "step.prove_two": (
        "Tienda el ~hilo~ de {start} a {end}, bien tirante. Sobre él, ~a nivel~, ponga el ~clavo~ {nail} a "
        "{length0} de {start}. De {nail} a {end} debe dar {rest}; las dos tiradas sumadas son {whole}. Si no da, "
        "pare y anote cuánto suman las dos tiradas."
    ),
    "step.prove_parts": (
        "Tienda el ~hilo~ de {start} a {end}, bien tirante. Sobre él, ~a nivel~, ponga los ~clavos~ {nail} a "
        "{last}, cada {length0} desde {start}. De {last} a {end} debe dar {rest}; todas las tiradas sumadas son "
        "{whole}. Si no da, pare y anote cuánto suman."
    ),
    "step.prove_beside": (
        "Compruebe {start} y {end} desde un punto {beside}, del lado contrario a la curva. Cruce {length0} desde "
        "{start} con {length1} desde {end}: ponga {beside}. Desde {beside} marque {toward} a {length2} hacia {start}, "
        "y {other} a {length3} hacia {end}. De {toward} a {other} debe dar {length4}, {part} de {whole}. Si no da, "
        "pare. Multiplique lo que leyó por {times} y anótelo como la ~cuerda del arco~ medida."
    ),
    "step.prove_beside_inside": (
        "Compruebe {start} y {end} desde un punto {beside}, del lado de la curva. Cruce {length0} desde {start} con "
        "{length1} desde {end}: ponga {beside}. Desde {beside} marque {toward} a {length2} hacia {start}, y {other} a "
        "{length3} hacia {end}. De {toward} a {other} debe dar {length4}, {part} de {whole}. Si no da, pare. "
        "Multiplique lo que leyó por {times} y anótelo como la ~cuerda del arco~ medida."
    ),
    "proof.part_2": "la mitad",
    "proof.part_3": "la tercera parte",
    "proof.part_4": "la cuarta parte",
    "step.prove_corner": (
        "Compruebe la esquina. Desde P marque {toward} a {length0} hacia S, y {other} a {length1} hacia T. De {toward} "
        "a {other} debe dar {length2}. Si no da, las rectas no se cruzan con el ángulo del ~plano~: pregunte."
    ),
    "step.have_straight": (
        "Busque {start}{first_landmark}, el PC: ahí termina la recta y empieza la curva. Marque S sobre la recta, al "
        "menos {back} atrás de {start}: S y {start} dan su dirección."
    ),
    "step.have_straight_short": (
        "Busque {start}{first_landmark}: ahí termina la recta y empieza la curva. Ponga S donde empieza esa recta, "
        "{length0} atrás de {start}: S y {start} dan su dirección."
    ),
    "step.have_arc": (
        "Busque {start}{first_landmark} y D, los extremos del tramo {piece}, un ~arco~. Su ~tangente~ en "
        "{start} entra en "
        "este. Desde {start} mida {length0} por la línea hacia D y ponga una marca. Desde ella mida ~a "
        "escuadra~ {length1} a "
        "la {off_hand}, mirando a D: ponga S. Sin soltar esa medida, mueva S hasta que de {start} a S dé {length2}. "
        "{far_check}"
    ),
    "step.have_arc_past": (
        "Busque {start}{first_landmark} y D, los extremos del tramo {piece}, un ~arco~. Su ~tangente~ en "
        "{start} entra en "
        "este. Prolongue la línea desde D, {length0} más allá de {start}, y ponga una marca. Desde ella mida "
        "~a escuadra~ "
        "{length1} a la {off_hand}, mirando a D: ponga S. Sin soltar esa medida, mueva S hasta que de {start} a S dé "
        "{length2}. {far_check}"
    ),
    "step.have_arc_square": (
        "Busque {start}{first_landmark} y D, los extremos del tramo {piece}, un ~arco~. Su ~tangente~ en {start} entra "
        "en este. En {start} mida {length0} ~a escuadra~ de la línea a D, a la {off_hand}, mirando a D: ponga S. "
        "{far_check}"
    ),
    "step.far_check": "Revise: de {last} a S debe dar {length}. Si no, ponga S otra vez.",
    # B desde el tramo anterior
    "kinked.back": "¿Falta poner {end}? Marque {mark} en la recta {piece}, {back} atrás de {start}.",
    "kinked.whole": "¿Falta poner {end}? Ponga {mark} donde empieza la recta {piece}, {back} atrás de {start}.",
    "kinked.begins": "¿Falta poner {end}? Busque {mark}, donde empieza el ~arco~ {piece}.",
    "kinked.on": (
        "Prolongue la línea desde {mark}, {along} más allá de {start}. Desde ahí mida ~a escuadra~ {off} a la "
        "{hand}, de "
        "espaldas a {mark}: {end}."
    ),
    "kinked.behind": (
        "Desde {start} mida {along} hacia atrás, por la línea a {mark}. Desde ahí mida ~a escuadra~ {off} a "
        "la {hand}, de "
        "espaldas a {mark}: {end}."
    ),
    "kinked.straight": "Prolongue la línea desde {mark}, {along} más allá de {start}: {end}.",
    "kinked.check": "Revise: de {mark} a {end} debe dar {check}.",
    "kinked.short_back": "¿Falta {end}? Ponga {mark} {back} atrás en la recta {piece}.",
    "kinked.short_whole": "¿Falta {end}? Ponga {mark} donde empieza la recta {piece}, {back} atrás.",
    "kinked.short_begins": "¿Falta {end}? Busque {mark}, donde empieza el ~arco~ {piece}.",
    "kinked.short_on": (
        "Siga {along} más allá de {start}. De espaldas a {mark}, ~a escuadra~ {off} a la {hand}, ponga {end}."
    ),
    "kinked.short_behind": (
        "De {start} mida {along} hacia {mark}. De espaldas a {mark}, ~a escuadra~ {off} a la {hand}, ponga {end}."
    ),
    "kinked.short_straight": "En línea con {mark}, siga {along} más allá de {start} hasta {end}.",
    "kinked.short_check": "De {mark} a {end}: {check}.",
    "step.from_straight": (
        "Prolongue la recta más allá de {start}, en línea con S, {length0}: marque F. En F mida {length1} ~a "
        "escuadra~ a la {turn} (de espaldas a S): ponga {end}{second_landmark}, el PT. Sin cambiar esa distancia "
        "desde F, mueva {end} hasta que {start} a {end} dé {length2}."
    ),
    "step.from_straight_back": (
        "Desde {start} mida hacia atrás sobre la recta, hacia S, {length0}: marque F. En F mida {length1} ~a escuadra~ "
        "a la {turn} (de espaldas a S): ponga {end}{second_landmark}, el PT. Sin cambiar esa distancia desde F, mueva "
        "{end} hasta que {start} a {end} dé {length2}."
    ),
    "step.from_straight_untaped": (
        "Prolongue la recta más allá de {start}, en línea con S, {length0}: marque F. En F mida {length1} ~a "
        "escuadra~ a la {turn} (de espaldas a S): ponga {end}{second_landmark}, el PT. Póngalo ~a escuadra~ con "
        "{square}. El siguiente paso lo comprueba."
    ),
    "step.from_straight_back_untaped": (
        "Desde {start} mida hacia atrás sobre la recta, hacia S, {length0}: marque F. En F mida {length1} ~a "
        "escuadra~ a la {turn} (de espaldas a S): ponga {end}{second_landmark}, el PT. Póngalo ~a escuadra~ con "
        "{square}. El siguiente paso lo comprueba."
    ),
    "step.have_corner": (
        "Busque la esquina P, el PI, donde se cruzan las dos rectas. Marque S sobre la recta del lado de "
        "A{first_landmark} y T sobre la recta del lado de B{second_landmark}. Ponga cada una al menos {back} "
        "atrás de P."
    ),
    "step.corner_hand": (
        "Párese en {start}, mirando a {end}: P debe quedar a la {hand}, del lado de la curva; si no, pare."
    ),
    "step.from_corner": (
        "Desde P mida hacia atrás, hacia S, {length0}: ponga {start} (PC). Desde P mida hacia atrás, hacia T, "
        "{length1}: ponga {end} (PT). Revise: de {start} a {end} debe dar {length2}. Si no da, las rectas no se cruzan "
        "con el ángulo del ~plano~: pregunte. {corner_hand}"
    ),
    "step.from_corner_untaped": (
        "Desde P mida hacia atrás, hacia S, {length0}: ponga {start} (PC). Desde P mida hacia atrás, hacia T, "
        "{length1}: ponga {end} (PT). {corner_hand}"
    ),
    "step.offset_away_arc": (
        "{end}: prolongue la línea de {other} más allá de {start}, {length0}, y ponga ahí una marca. Desde ella mida "
        "{length1} ~a escuadra~ a la {off_hand} (mirando de {start} a {other}), del lado de la curva. Ponga {end}. De "
        "{start} a {end} debe dar {length2}."
    ),
    "step.offset_away_back": (
        "{end}: prolongue la línea de {other} más allá de {start}, {length0}, y ponga ahí una marca. Desde ella mida "
        "{length1} ~a escuadra~ a la {off_hand} (mirando de {start} a {other}), alejándose de la curva. Ponga {end}. "
        "De {start} a {end} debe dar {length2}."
    ),
    "step.offset_toward_arc": (
        "{end}: desde {start} mida {length0} hacia {other} y ponga ahí una marca. Desde ella mida {length1} ~a "
        "escuadra~ a la {off_hand} (mirando de {start} a {other}), del lado de la curva. Ponga {end}. De {start} a "
        "{end} debe dar {length2}."
    ),
    "step.offset_toward_back": (
        "{end}: desde {start} mida {length0} hacia {other} y ponga ahí una marca. Desde ella mida {length1} ~a "
        "escuadra~ a la {off_hand} (mirando de {start} a {other}), alejándose de la curva. Ponga {end}. De {start} a "
        "{end} debe dar {length2}."
    ),
    "step.offset_square_out": (
        "{end}: en {start} mida {length0} ~a escuadra~ de la recta, alejándose del ~centro~ de la curva. Ponga "
        "ahí {end}."
    ),
    "step.offset_square_in": (
        "{end}: en {start} mida {length0} ~a escuadra~ de la recta, hacia el ~centro~ de la curva. Ponga ahí {end}."
    ),
    "step.offset_toward_near": (
        "{end}: desde {start} mida {length0} hacia {other} y ponga ahí una marca. Desde ella mida {length1} ~a "
        "escuadra~ del lado de {far}: ponga {end}. De {start} a {end} debe dar {length2}."
    ),
    "step.offset_toward_far": (
        "{end}: desde {start} mida {length0} hacia {other} y ponga ahí una marca. Desde ella mida {length1} ~a "
        "escuadra~ del lado contrario a {far}: ponga {end}. De {start} a {end} debe dar {length2}."
    ),
    "step.offset_away_near": (
        "{end}: prolongue la línea de {other} más allá de {start}, {length0}, y ponga ahí una marca. Desde ella mida "
        "{length1} ~a escuadra~ del lado de {far}: ponga {end}. De {start} a {end} debe dar {length2}."
    ),
    "step.offset_away_far": (
        "{end}: prolongue la línea de {other} más allá de {start}, {length0}, y ponga ahí una marca. Desde ella mida "
        "{length1} ~a escuadra~ del lado contrario a {far}: ponga {end}. De {start} a {end} debe dar {length2}."
    ),
    "step.offset_away": "{end}: prolongue la línea de {other} más allá de {start}, {length0}. Ponga ahí {end}.",
    "step.offset_toward": "{end}: desde {start} mida {length0} hacia {other}. Ponga ahí {end}.",
    "step.string": "Tienda el ~hilo~ de {start} a {end}, bien tirante. {told}",
    "step.no_string": "{told}",
    "step.ends_taped": (
        "Mida de {start} a {end}, ~a nivel~: debe dar {length0}. Si no da, ponga otra vez los dos extremos. {told}"
    ),
    "step.string_up": "Deje puesto el ~hilo~ de {start} a {end}. {told}",
    "step.string_none": ("Aquí ningún ~hilo~ va directo de {start} a {end}. {told}"),
    "step.string_taped": (
        "Tienda el ~hilo~ de {start} a {end}, bien tirante, y mídalo ~a nivel~: debe dar {length0}. Si no da, ponga "
        "otra vez los dos extremos. {told}"
    ),
    "step.stake_back": (
        "{stake}: ~hilo~ de {start} a {end}. Su ~punto medio~ queda a {length0} de cada extremo. CUIDADO: aquí el "
        "~hilo~ queda por fuera del ~arco~. Del ~punto medio~ mida {length1} ~a escuadra~ para el OTRO lado, a la "
        "{hand} (mirando de {start} a {end}). Clave {stake}. Mida {length1} por segunda vez."
    ),
    "step.stake": (
        "{stake}: ~hilo~ de {start} a {end}. Su ~punto medio~ queda a {length0} de cada extremo. Ahí mida "
        "{length1} ~a escuadra~ a la {hand} (mirando de {start} a {end}). Sin cambiar esa distancia, mueva "
        "{stake} de lado hasta que {start} a {stake} y {stake} a {end} den igual ({half_chord}). Eso solo la "
        "pone ~a escuadra~: mida {length1} por segunda vez. Clave {stake}."
    ),
    "step.stake_crossed": (
        "{stake}: aquí no se puede usar el ~punto medio~ del ~hilo~. Cruce {length0} desde {start} con {length1} "
        "desde {end}, a la {cross_hand} (mirando de {start} a {end}). Clave {stake}, y mida las dos por segunda "
        "vez."
    ),
    "step.got_short": "está a {shown}",
    "step.back_short": "{shown}, para el OTRO lado ({hand})",
    "step.stands": "{stake} ya está puesta, {off}. Los números que siguen parten de donde está.",
    "step.stands_alone": "{stake} ya está puesta, {off}. No cambia el número de ninguna otra ~estaca~.",
    "step.stands_helper": "{mark} ya está ahí. Los números que siguen parten de donde está.",
    "step.stake_got": (
        "{stake}: ~hilo~ de {start} a {end}. Su ~punto medio~ queda a {length0} de cada extremo. {stake} debe quedar a "
        "{wanted} hacia afuera, a la {hand}. Está a {length1}, o sea, {off}. Los números que siguen parten de donde "
        "está."
    ),
    "step.stake_got_alone": (
        "{stake}: ~hilo~ de {start} a {end}. Su ~punto medio~ queda a {length0} de cada extremo. {stake} debe quedar a "
        "{wanted} hacia afuera, a la {hand}. Está a {length1}, o sea, {off}. No cambia el número de ninguna "
        "otra ~estaca~."
    ),
}
