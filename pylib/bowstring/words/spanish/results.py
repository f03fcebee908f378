"""Rule of thumb, rounding, checks, gaps, story stick, field fit, offsets, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "miss.inside": "{miss} por dentro del ~arco~",
    "miss.outside": "{miss} por fuera del ~arco~",
    "miss.none": "exacto sobre el ~arco~",
    "rule.inside": "por dentro",
    "rule.outside": "por fuera",
    "rule.one_level": "Con estas rondas, la regla del cuarto y los números exactos son lo mismo.",
    "rule.no_tolerance": "Por cuartos, la ~estaca~ {at} quedaría {worst} {where} del ~arco~ verdadero.",
    "rule.holds": (
        "Por cuartos, la ~estaca~ {at} quedaría {worst} {where} del ~arco~ verdadero: cumple la ~tolerancia~ de "
        "{tolerance}."
    ),
    "rule.fails": (
        "Aquí no trabaje por cuartos: la ~estaca~ {at} quedaría {worst} {where} del ~arco~ verdadero, y se permite "
        "{tolerance}."
    ),
    "rule.alternate": (
        "Las ~separaciones~ iguales no lo muestran. Lo muestra la ~flecha~ sobre una ~estaca~ sí y otra no. Es "
        "{true} en todo el ~arco~, pero {wrong} en {at} por cuartos (hay {apart} entre las dos)."
    ),
    "rule.good_up_to": (
        "Con ~cuerda del arco~ de {chord}, los cuartos cumplen {tolerance} hasta una ~flecha~ de {rise}. Eso es "
        "{ratio} de la ~cuerda del arco~; aquí es {here}."
    ),
    "rule.good_always": (
        "Con ~cuerda del arco~ de {chord}, los cuartos cumplen {tolerance} con toda ~flecha~ hasta medio círculo."
    ),
    "rule.planned": "Esto compara la regla con el ~trazo~ planeado, antes de anotar ~estacas~ como quedaron.",
    "rounding.fine": (
        "Con los números mostrados ({mark}), la peor ~estaca~, {at}, queda fuera {worst} por puro redondeo."
    ),
    "rounding.eats": (
        "Con los números mostrados ({mark}), la ~estaca~ {at} queda fuera {worst}. El redondeo se lleva más de la "
        "mitad de la ~tolerancia~ de {tolerance}. Lea la ~cinta~ a {finer}."
    ),
    "rounding.eats_all": (
        "Con los números mostrados ({mark}), la ~estaca~ {at} queda fuera {worst}. El redondeo se lleva más de la "
        "mitad de la ~tolerancia~ de {tolerance}. No hay marca más fina: use menos rondas."
    ),
    "check.to": " a ",
    "check.alternate": "~Hilo~ {start_pair}: de su ~punto medio~ a {end} debe dar {shown}.",
    "check.alternate_inside": (
        "~Hilo~ {start_pair}: {end} está adentro de él, hacia el ~centro~. De su ~punto medio~ a {end} debe dar "
        "{shown}."
    ),
    "check.ordinate": "En el ~hilo~ A a B, a {along} de A, ~a escuadra~ hasta {end}: debe dar {shown}.",
    "check.ordinate_inside": (
        "En el ~hilo~ A a B, a {along} de A, ~a escuadra~ hasta {end}, alejándose de la curva. Debe dar {shown}."
    ),
    "check.cross": "{start} a {end}: debe dar {shown}.",
    "check.half": "{start} a {end}: debe dar {shown}.",
    "check.far": "{start} a {end}: debe dar {shown}.",
    "check.gap": "{start} a {end}: debe dar {shown}.",
    "check.closing": "La ~separación~ que cierra, {start} a {end}, se mide al último: debe dar {shown}.",
    "check.no_judge": "No decide: las lecturas varían más de la mitad de eso.",
    "check.external": "Esquina P a {end}: debe dar {shown}.",
    "gap.left": (
        "Las ~estacas~ quedan cada {gap}, medido en línea recta. Los tramos rectos fallarían del ~arco~ por "
        "{rise} en su ~punto medio~; una ~tabla~ doblada lo sigue mucho mejor."
    ),
    "gap.left_got": (
        "Las ~estacas~ quedan hasta a {gap}, medido en línea recta. Ahí un tramo recto fallaría del ~arco~ por "
        "{rise} en su ~punto medio~; una ~tabla~ doblada lo sigue mucho mejor."
    ),
    "stick.level": "ronda {level}: {stakes}",
    "stick.to": "{first} a {last}",
    "fit.hold_radius": "mantener el ~radio~",
    "fit.hold_sagitta": "mantener la ~flecha~",
    "fit.hold_arc_length": "mantener el largo del ~arco~",
    "fit.hold_directions": "mantener las direcciones de los extremos",
    "fit.kink": "{degrees}°, {off} fuera de línea a los 10 ft (3.05 m)",
    "fit.agrees": (
        "La ~cuerda del arco~ medida es {found}, la del ~plano~ {drawn}: coinciden, y vale el ~arco~ del ~plano~."
    ),
    "fit.apart": (
        "Las dos medidas de la ~cuerda del arco~ difieren {apart}: mídala otra vez, desde los dos extremos. Hasta "
        "que coincidan, esta hoja usa el ~arco~ del ~plano~. No construya con ella."
    ),
    "fit.slip": (
        "La ~cuerda del arco~ medida ({found}) difiere {difference} de la del ~plano~ ({drawn}): parece una "
        "equivocación de ~cinta~. Mida otra vez. Hasta estar seguro, esta hoja usa el ~arco~ del ~plano~. No "
        "construya con ella."
    ),
    "fit.choose": (
        "La ~cuerda del arco~ medida es {found}, la del ~plano~ {drawn} ({difference}). Escoja qué mantener. "
        "Mientras tanto, esta hoja usa el ~arco~ del ~plano~. No construya con ella."
    ),
    "fit.looks_like": "Parece esto: {slip}",
    "fit.taken": (
        "La ~cuerda del arco~ medida es {found}, la del ~plano~ {drawn}: se recalculó el ~arco~ sobre la medida "
        "({hold})."
    ),
    "fit.do_not_build": (
        "No construya esto: pregunte. La ~cuerda del arco~ medida es {found}, la del ~plano~ {drawn}. Con la "
        "medida, los extremos harían un quiebre de {kink}, o cambiaría la curva."
    ),
    "slip.stakes_chord": (
        "la ~cuerda del arco~ entre las ~estacas~ tomada por A0 a B0 de la línea del ~plano~: sería {would_be}."
    ),
    "slip.foot": "un pie mal contado: sería {would_be}.",
    "slip.inch": "una pulgada mal contada, o empezó en 1 pulgada y no la restó: sería {would_be}.",
    "slip.metre": "un metro mal contado: sería {would_be}.",
    "slip.decimetre": "un décimo de metro mal contado: sería {would_be}.",
    "slip.arc_for_chord": "el largo del ~arco~ tomado por la ~cuerda del arco~: sería {would_be}.",
    "slip.tenths_as_inches": "décimos de pie leídos como pulgadas: sería {would_be}.",
    "slip.inches_as_tenths": "pulgadas leídas como décimos de pie: sería {would_be}.",
    "slip.swapped_digits": "dos dígitos cambiados de lugar: sería {would_be}.",
    "offset.centre": "Se clavan {driven} a {shown} de la línea del ~plano~, hacia el ~centro~, sobre su propio ~arco~.",
    "offset.outside": (
        "Se clavan {driven} a {shown} de la línea del ~plano~, alejándose del ~centro~, sobre su propio ~arco~."
    ),
    "driven.pin": "~estacas de acero~",
    "driven.marked": "~estacas~ marcadas",
    "driven.board": "~estacas~ detrás de la ~tabla~",
    "driven.hub": "~trompos~",
}
