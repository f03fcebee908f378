"""Headings and labels of the sheet, the same in text and in HTML, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "sheet.stops": "ALTO: todavía no construya con esta hoja",
    "sheet.steps_later": "Los pasos y sus números salen cuando esto quede resuelto.",
    "sheet.short": "El ~trazo~ de un vistazo",
    "sheet.short_caption": "Cada ~estaca~: desde el ~punto medio~ de su ~hilo~, ~a escuadra~ hacia la curva",
    "sheet.nearest": "Los números se redondean a {mark}. Una lectura que no se pase de {mark} es buena.",
    "sheet.split": "Si las dos mitades no suman, reparta la diferencia.",
    "sheet.drive": "clavar",
    "sheet.neighbours": "cada par de vecinas",
    "sheet.middle_at": "~punto medio~ a",
    "sheet.square_off": "~a escuadra~",
    "sheet.halves_read": "las dos ~cuerdas cortas~ dan",
    "sheet.each_own": "cada una distinta",
    "sheet.before": "Antes de empezar",
    "sheet.arc": "El ~arco~",
    "sheet.on_line": "Qué punto va sobre la línea",
    "sheet.ends": "Los extremos y el ~hilo~",
    "sheet.level_each": "Ronda {level}: {stakes}, cada ~hilo~ con sus propios números",
    "sheet.level_one": "Ronda {level}: ~estaca~ {stakes}, ~flecha~ {sagitta}",
    "sheet.level": "Ronda {level}: ~estacas~ {stakes}, ~flecha~ {sagitta}",
    "sheet.between": "Entre las ~estacas~",
    "sheet.checks": "~Revisiones~",
    "sheet.rule": "La regla del cuarto, y lo que costaría",
    "sheet.rounding": "Lo que cuesta redondear",
    "sheet.stakes": "Lugar de las ~estacas~",
    "sheet.stick": "Listón de medidas",
    "sheet.readings": "Cómo se leyeron sus datos",
    "sheet.notes": "Notas",
    "sheet.bar_metric": (
        "Esta barra mide 100 mm. Si no, la impresora cambió la escala de los dibujos; sus números siguen valiendo."
    ),
    "sheet.bar_inches": (
        "Esta barra mide 4 in. Si no, la impresora cambió la escala de los dibujos; sus números siguen valiendo."
    ),
    "sheet.link": "Enlace a este trabajo:",
    "sheet.untitled": "Un ~arco~",
    "sheet.untitled_pad": "Una losa",
    "sheet.untitled_line": "Línea de {count} tramos",
    "sheet.version": "Bowstring {version}",
    "sheet.measure": "medida",
    "sheet.value": "valor",
    "sheet.drawn": "línea del ~plano~",
    "sheet.held": "línea que se mantiene ahora",
    "sheet.staked": "línea de las ~estacas~",
    "sheet.none": "no hay",
    "sheet.given": "dato",
    "sheet.typed": "escrito",
    "sheet.computed": "este ~arco~ tiene",
    "sheet.agrees": "coincide",
    "sheet.yes": "sí",
    "sheet.no": "NO",
    "sheet.given_caption": "Los datos junto al ~arco~ que mejor les queda",
    "sheet.drawn_to_edge": "Las medidas del ~plano~ van al borde del ~concreto~.",
    "sheet.drawn_to_face": "Las medidas del ~plano~ van a la ~cara del concreto~.",
    "sheet.drawn_to_back": "Las medidas del ~plano~ van a la cara de atrás.",
    "sheet.drawn_to_centre": "Las medidas del ~plano~ van al eje central.",
    "sheet.drawn_to_flow line": "Las medidas del ~plano~ van a la ~línea de flujo~ de la cuneta.",
    "sheet.drawn_to_lip": "Las medidas del ~plano~ van al ~labio~ de la cuneta.",
    "sheet.drawn_to_unsure": "Todavía no se sabe a qué línea van las medidas del ~plano~.",
    "sheet.hold": "mantener",
    "sheet.radius": "~radio~",
    "sheet.rise": "~flecha~",
    "sheet.arc_length": "largo del ~arco~",
    "sheet.kink": "quiebre en cada extremo",
    "sheet.build": "¿Se puede construir?",
    "sheet.may_build": "dentro de los límites",
    "sheet.ask": "no construya: pregunte",
    "sheet.taken": " (en uso)",
    "sheet.fit_caption": (
        "~Cuerda del arco~ medida {found}, en el ~plano~ {drawn} ({difference}): el ~arco~ según cada opción"
    ),
    "sheet.landmarks": "A está en: {first}. B está en: {second}.",
    "sheet.landmarks_drawn": (
        "Extremos de la línea del ~plano~: A0 está en: {first}. B0 está en: {second}. A y B quedan separados de ellos."
    ),
    "sheet.no_landmark": "sin ~referencia~",
    "sheet.end": "extremo",
    "sheet.tied_to": "amarrado a",
    "sheet.distance": "distancia",
    "sheet.ties_caption": "Para volver a hallar los extremos",
    "sheet.stake": "~estaca~",
    "sheet.string": "~hilo~",
    "sheet.from_to": "{start} a {end}",
    "sheet.every_string": "Lo mismo para los {count} ~hilos~ entre ~estacas~ vecinas, de {first} a {last}.",
    "sheet.to_got": "¿~Estaca~ fuera de lugar? Escriba lo que midió",
    "sheet.to_square": "Todos los modos de sacar escuadra",
    "sheet.square": "Manténgala ~a escuadra~. {text} {best}",
    "sheet.square_each": (
        "Mantenga cada una ~a escuadra~: mueva la ~estaca~ de lado hasta que sus dos ~cuerdas cortas~ den igual."
    ),
    "sheet.halves_alike": (
        "Con una ~flecha~ tan corta, medio ~hilo~ y las ~cuerdas cortas~ difieren menos de una marca. Aquí todas "
        "dan {shown}."
    ),
    "sheet.squaring": "Modos de sacar escuadra, y lo que hace un error chico",
    "sheet.squaring_how": "Use el primero para el que haya espacio.",
    "sheet.squaring_level": "Ronda {level}, ~flecha~ {sagitta}",
    "sheet.checks_intro": (
        "Ningún paso midió estas. 19 de 20 lecturas quedan dentro del límite. Si se pasa: mida otra vez y halle la "
        "causa antes de seguir."
    ),
    "sheet.checks_worst": (
        "Peor caso: cada ~estaca~ de la ~revisión~ está fuera por toda su ~tolerancia~. Los dos se redondean "
        "hacia abajo, a una marca."
    ),
    "sheet.checks_first": "¿Poco tiempo? Haga primero estas: {checks}.",
    "sheet.checks_none_judge": (
        "Aquí ninguna ~revisión~ decide por sí sola. Trabaje más fino, o mida otra vez cada ~estaca~ desde A y B."
    ),
    "sheet.checks_closing_alone": (
        "La última ~separación~, medida arriba, es aquí la ~revisión~: ninguna otra decide por sí sola."
    ),
    "sheet.gap_odd": "{names}: {shown}",
    "sheet.check_first": "{kind}, {where}: {shown}",
    "sheet.cant_judge": "no decide",
    "sheet.cant_judge_why": "No decide: el límite pasa de la mitad de lo que debe dar. Una buena lectura prueba poco.",
    "sheet.closing": (
        "Cierre el trabajo: mida la última ~separación~, de {start} a {end}. Debe dar {shown}, con {limit} de más "
        "o de menos. Si se pasa: halle la ~separación~ mala antes de seguir."
    ),
    "sheet.closing_only": (
        "Cierre el trabajo: mida la última ~separación~, de {start} a {end}. Debe dar {shown}. No decide mucho: "
        "las lecturas varían {limit}."
    ),
    "sheet.no_checks": (
        "Ninguna ~revisión~ detecta una falla dentro de esta ~tolerancia~: use una ~cinta~ más fina o más rondas."
    ),
    "sheet.no_checks_left": (
        "Los pasos ya leen cada distancia entre estas ~estacas~; no queda ~revisión~. Mida cada ~flecha~ dos veces."
    ),
    "sheet.note": "Nota: {note}",
    "sheet.contents": "Ir a una parte de esta hoja",
    "sheet.check": "~revisión~",
    "sheet.where": "dónde",
    "sheet.must_read": "debe dar",
    "sheet.limit": "límite",
    "sheet.worst_case": "peor caso",
    "sheet.check_alternate": "~flecha~ sobre una ~estaca~ sí y otra no",
    "sheet.check_alternate_uneven": "del ~punto medio~ del ~hilo~, directo a la ~estaca~",
    "sheet.check_ordinate": "~a escuadra~ del ~hilo~ A a B",
    "sheet.check_cross": "diagonal larga",
    "sheet.check_half": "~cuerda corta~",
    "sheet.check_gap": "~separación~ entre vecinas",
    "sheet.check_external": "de la esquina a la mitad",
    "sheet.over_string": "{stake} sobre {string}",
    "sheet.at_along": "{stake}, a {along} de A",
    "sheet.and_more": "{names}, y {count} más; la última es {last}",
    "sheet.level_word": "ronda",
    "sheet.exact": "~flecha~ exacta",
    "sheet.quartered": "por cuartos",
    "sheet.rule_miss": "quedaría fuera por",
    "sheet.rule_caption": (
        "Clavada por cuartos, qué tan fuera del ~arco~ quedaría cada ~estaca~; un menos es por dentro, hacia el "
        "~centro~"
    ),
    "sheet.along_arc": "a lo largo del ~arco~ desde A",
    "sheet.along_chord": "a lo largo del ~hilo~ A a B",
    "sheet.off_chord": "~a escuadra~ de él",
    "sheet.stakes_caption": "Dónde va cada ~estaca~, medido desde A",
    "sheet.stakes_some": "Las ~estacas~ de las primeras cuatro rondas; {count} en total",
    "sheet.stick_how": (
        "Copie estas marcas en un listón, todas desde la misma punta. La ~flecha~ de cada ronda es entonces una marca."
    ),
    "sheet.from_end": "desde la punta",
    "sheet.field": "dato",
    "sheet.read_as": "se leyó como",
    "sheet.readings_caption": "Compare con el ~plano~: cada dato como se escribió y como se leyó",
    "sheet.way": "Ponga las ~estacas~: {method}",
    "sheet.rows_some": "Las primeras {shown} de {count} ~estacas~.",
    "sheet.steps_some": "Los primeros {shown} de {count} pasos. Los demás se hacen igual, con los números del cuadro.",
    "sheet.method_taken": "El trabajo no dice el método; esta hoja usa este: {method}.",
    "sheet.advice": "Método recomendado",
    "sheet.ways_caption": (
        "Peor ~estaca~: 19 de 20 veces, la que puede quedar más fuera no pasa de esto, con todo y redondeo. Entre "
        "paréntesis: lo mismo contra la ~flecha~ sobre sus dos vecinas. Lecturas: todo lo que se mide, se gira y "
        "se saca ~a escuadra~ para todas las ~estacas~."
    ),
    "sheet.way_way": "método",
    "sheet.way_possible": "se puede aquí",
    "sheet.way_worst_stake": "peor ~estaca~",
    "sheet.way_fair": "{miss} ({fair})",
    "sheet.way_readings": "lecturas",
    "sheet.way_longest": "tirada más larga",
    "sheet.way_people": "personas",
    "sheet.way_yes": "sí",
    "sheet.way_unsound": "no es de fiar: las líneas cruzan muy cerradas, o los errores se juntan",
    "sheet.way_this": "{name} (esta hoja)",
    "sheet.way_advised": "{name} (recomendado)",
    "sheet.accuracy": "Qué tan exactas quedarán las ~estacas~",
    "sheet.across": "a través del ~arco~",
    "sheet.along": "a lo largo de él",
    "sheet.off_fair": "fuera de la curva de sus vecinas",
    "sheet.scatter_caption": (
        "Una desviación estándar: 2 de 3 ~estacas~ quedan más cerca que esto, 19 de 20 dentro de casi el doble."
    ),
    "sheet.shifts": "Errores que puede evitar",
    "sheet.model": "Errores supuestos",
    "sheet.model_what": "de dónde viene el error",
    "sheet.model_size": "desviación estándar",
    "sheet.model_from": "base",
    "sheet.model_caption": (
        "Cámbielos en el formulario si tiene mejores números. No cubren las equivocaciones; esas solo las hallan "
        "las ~revisiones~."
    ),
    "sheet.stick_offsets": (
        "Copie estas marcas en un listón, todas desde la misma punta. Cada ~distancia a escuadra~ es entonces una "
        "marca."
    ),
    "sheet.mistakes": "Si algo salió mal",
    "sheet.mistakes_intro": "Equivocaciones comunes, una por una, y qué ~revisión~ detecta cada una.",
    "sheet.mistakes_worst": "Donde ninguna ~revisión~ la detecta, lo dice.",
    "sheet.mistake": "{text} {at} quedaría a {moved} de su lugar. {told}",
    "sheet.mistake_show": "Ver dónde quedarían las ~estacas~",
}
