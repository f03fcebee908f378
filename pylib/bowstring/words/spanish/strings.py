"""The sentences of ordinates from the middle of a string, and from a string parallel to the chord; in Spanish as on US
sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "note.steep": (
        "De {start} a {end} la ~separación~ en línea recta es {gap}: ahí la curva se aparta rápido de su ~hilo~. "
        "Para ~estacas~ más juntas, anote una ~separación~ máxima, o póngalas por mitades."
    ),
    "note.halve_first_wins": (
        "Se pidieron primero por mitades y también un ~hilo~ paralelo. Se usó primero por mitades."
    ),
    "step.string_middle": (
        "Marque el ~punto medio~ del ~hilo~ de {start} a {end}: {length0} de cada extremo. Ponga ahí el cero de la "
        "~cinta~ para las distancias que siguen."
    ),
    "step.ordinate_mid": (
        "{stake}: del ~punto medio~ del ~hilo~ hacia {end} marque {length0}. Ahí mida {length1} ~a escuadra~ a "
        "la {hand} (mirando de A a B). Clave {stake}."
    ),
    "step.ordinate_middle": (
        "{stake}: en el ~punto medio~ del ~hilo~ mida {length0} ~a escuadra~ a la {hand} (mirando de A a B). "
        "Clave {stake}."
    ),
    "step.parallel_crossed_curve": (
        "{peg}, un extremo del ~hilo~ paralelo: cruce {length0} desde {start} con {length1} desde {end}. Queda a la "
        "{hand} (mirando de A a B), del lado de la curva. Clave una ~estaca de acero~ en {peg}."
    ),
    "step.parallel_crossed_behind": (
        "{peg}, un extremo del ~hilo~ paralelo: cruce {length0} desde {start} con {length1} desde {end}. Queda a la "
        "{other_hand} (mirando de A a B), del lado contrario a la curva. Clave una ~estaca de acero~ en {peg}."
    ),
    "step.parallel_squared_curve": (
        "{peg}, un extremo del ~hilo~ paralelo: en {start} mida {length0} ~a escuadra~ del ~hilo~ A-B. Queda a "
        "la {hand} (mirando de A a B), del lado de la curva. Clave una ~estaca de acero~ en {peg}."
    ),
    "step.parallel_squared_behind": (
        "{peg}, un extremo del ~hilo~ paralelo: en {start} mida {length0} ~a escuadra~ del ~hilo~ A-B. Queda a "
        "la {other_hand} (mirando de A a B), del lado contrario a la curva. Clave una ~estaca de acero~ en {peg}."
    ),
    "step.parallel_crossed": (
        "Mida {start} a {end}: debe dar {length0}, igual que A a B. A a {end} y B a {start} deben dar igual entre sí. "
        "Si no, ponga otra vez las dos ~estacas de acero~. Tienda el ~hilo~ de {start} a {end}: queda paralelo a A-B."
    ),
    "step.parallel_squared": (
        "Mida {start} a {end}: debe dar {length0}, igual que A a B. Si no, saque las dos ~a escuadra~ otra vez. "
        "Tienda el ~hilo~ de {start} a {end}: queda paralelo a A-B."
    ),
    "step.parallel_leaning": (
        "Tienda el ~hilo~ de {start} a {end}. En él marque {seen}, a {length0} de {start}. Mida {eye} a {seen}: debe "
        "dar {length1}. Si no, ponga otra vez las dos ~estacas de acero~. El ~hilo~ queda paralelo a A-B."
    ),
    "step.parallel_strung": (
        "Tienda el ~hilo~ de {start} a {end}. La ~cinta~ no alcanza de una a otra: saque cada esquina ~a "
        "escuadra~ dos veces."
    ),
    "step.parallel_stood": (
        "Mida {start} a {end}: debe dar {length0}. Si no, mida otra vez dónde están las dos ~estacas de acero~. Tienda "
        "el ~hilo~ entre ellas. Una de sus ~estacas de acero~ está fuera de lugar, así que el ~hilo~ no queda paralelo "
        "a A-B. Las distancias que siguen toman eso en cuenta."
    ),
    "step.parallel_stood_strung": (
        "Tienda el ~hilo~ de {start} a {end}. Una de sus ~estacas de acero~ está fuera de lugar, así que el ~hilo~ no "
        "queda paralelo a A-B. Las distancias que siguen toman eso en cuenta."
    ),
    "step.parallel_toward_on": (
        "{stake}: en el ~hilo~ paralelo de {start} hacia {end} marque {length0}. Ahí mida {length1} ~a escuadra~ "
        "a la {cross_hand} (mirando de {start} a {end}), hacia A-B. Clave {stake}."
    ),
    "step.parallel_away_on": (
        "{stake}: en el ~hilo~ paralelo de {start} hacia {end} marque {length0}. Ahí mida {length1} ~a escuadra~ "
        "a la {cross_hand} (mirando de {start} a {end}), alejándose de A-B. Clave {stake}."
    ),
    "step.parallel_toward_past": (
        "{stake}: prolongue el ~hilo~ paralelo de {end} más allá de {start}, {length0}. Ahí mida {length1} ~a "
        "escuadra~ a la {cross_hand} (mirando como de {start} a {end}), hacia A-B. Clave {stake}."
    ),
    "step.parallel_away_past": (
        "{stake}: prolongue el ~hilo~ paralelo de {end} más allá de {start}, {length0}. Ahí mida {length1} ~a "
        "escuadra~ a la {cross_hand} (mirando como de {start} a {end}), alejándose de A-B. Clave {stake}."
    ),
    "step.parallel_toward_end": (
        "{stake}: vaya a {start}, en el ~hilo~ paralelo. Ahí mida {length0} ~a escuadra~ a la {cross_hand} "
        "(mirando de {start} a {end}), hacia A-B. Clave {stake}."
    ),
    "step.parallel_away_end": (
        "{stake}: vaya a {start}, en el ~hilo~ paralelo. Ahí mida {length0} ~a escuadra~ a la {cross_hand} "
        "(mirando de {start} a {end}), alejándose de A-B. Clave {stake}."
    ),
    "step.parallel_toward_mid": (
        "{stake}: del ~punto medio~ del ~hilo~ paralelo hacia {end} marque {length0}. Ahí mida {length1} ~a "
        "escuadra~ a la {cross_hand} (mirando de {start} a {end}), hacia A-B. Clave {stake}."
    ),
    "step.parallel_away_mid": (
        "{stake}: del ~punto medio~ del ~hilo~ paralelo hacia {end} marque {length0}. Ahí mida {length1} ~a "
        "escuadra~ a la {cross_hand} (mirando de {start} a {end}), alejándose de A-B. Clave {stake}."
    ),
    "step.parallel_toward_middle": (
        "{stake}: vaya al ~punto medio~ del ~hilo~ paralelo. Ahí mida {length0} ~a escuadra~ a la {cross_hand} "
        "(mirando de {start} a {end}), hacia A-B. Clave {stake}."
    ),
    "step.parallel_away_middle": (
        "{stake}: vaya al ~punto medio~ del ~hilo~ paralelo. Ahí mida {length0} ~a escuadra~ a la {cross_hand} "
        "(mirando de {start} a {end}), alejándose de A-B. Clave {stake}."
    ),
    "step.parallel_over_on": (
        "{stake}: en el ~hilo~ paralelo de {start} hacia {end} marque {length0}. Clave {stake} ahí, sobre el ~hilo~."
    ),
    "step.parallel_over_past": (
        "{stake}: prolongue el ~hilo~ paralelo de {end} más allá de {start}, {length0}. Clave {stake} ahí, en esa "
        "línea."
    ),
    "step.parallel_over_end": "{stake} queda en {start} mismo: clávela ahí.",
    "step.parallel_over_mid": (
        "{stake}: del ~punto medio~ del ~hilo~ paralelo hacia {end} marque {length0}. Clave {stake} ahí, sobre el "
        "~hilo~."
    ),
    "step.parallel_over_middle": "{stake}: clávela en el ~punto medio~ del ~hilo~ paralelo, sobre el ~hilo~.",
}
