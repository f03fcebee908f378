"""The form's headings, labels, help lines and choices, and what can be wrong with it, in Spanish as on US sites."""
# No safety sentence stands here; everything is from memory.

MESSAGES = {
    # headings and folds
    "form.section_job": "Nombre del trabajo",
    "form.section_job.help": "Sale arriba en la hoja.",
    "form.section_degree": "Grado de curva: solo carreteras y ferrocarriles",
    "form.section_degree.help": "Este no es el ángulo de todo el ~arco~; ese es el ángulo central, arriba.",
    "form.section_sides": "O tres distancias medidas con ~cinta~",
    "form.section_sides.help": (
        "C es cualquier punto del ~arco~ entre los extremos, mejor cerca de la mitad. No dicen de qué lado queda la "
        "curva."
    ),
    "form.section_points": "O tres puntos sobre el ~arco~",
    "form.section_points.help": (
        "El primero es el extremo A, el tercero el extremo B, el segundo cualquiera entre ellos. Ponga x a la "
        "derecha (este) e y hacia adelante (norte), como en un ~plano~. Si los cambia, se voltea la curva."
    ),
    "form.section_ties": "~Medidas de amarre~, para volver a ubicar los extremos",
    "form.section_ties.help": "En cada extremo, mida a dos objetos fijos: la esquina de un muro, un hidrante.",
    "form.section_found": "~Cuerda del arco~ medida en la obra",
    "form.section_found.help": (
        "Úsela cuando A a B no mide lo que dice el ~plano~. Mida dos veces, una desde cada extremo. Donde las "
        "~estacas~ van separadas de la línea, mida A0 a B0, no entre ~estacas~."
    ),
    "form.section_got": "Dónde quedó una ~estaca~",
    "form.section_got.help": (
        "Para una ~estaca~ que no se puede mover: ponga su ~flecha~, o las dos ~cuerdas cortas~, como midieron. Los "
        "números que siguen regresan el ~trazo~ al ~arco~."
    ),
    "form.row_got": "Fila {number}",
    "form.tie_row": "Extremo {end}, ~medida de amarre~ {number}",
    "form.point_row_0": "Primer punto: extremo A",
    "form.point_row_1": "Segundo punto: cualquiera entre ellos",
    "form.point_row_2": "Tercer punto: extremo B",
    # labels and their help lines
    "form.title": "Título",
    "form.note": "Nota",
    "form.unit": "Unidad",
    "form.unit.help": "Un número solo va en esta unidad; con pies y pulgadas, va en pies.",
    "form.radius": "~Radio~",
    "form.arc_diameter": "O diámetro",
    "form.arc_diameter.help": "En línea recta, de lado a lado de todo el círculo. Se usa en vez del ~radio~.",
    "form.chord": "~Cuerda del arco~",
    "form.sagitta": "~Flecha~",
    "form.arc_length": "Largo del ~arco~",
    "form.central_angle": "Ángulo central",
    "form.tangent_length": "Largo de la ~tangente~",
    "form.external": "Externa",
    "form.greater": "Si con estos números salen dos ~arcos~, usar el que gira más",
    "form.degree": "Grado de curva",
    "form.degree.help": "Se usa en vez del ~radio~; con otra medida de arriba queda fijo el ~arco~.",
    "form.degree_by": "El grado se cuenta sobre",
    "form.degree_by.arc": "100 ft de ~arco~ (carreteras)",
    "form.degree_by.chord": "una ~cuerda del arco~ de 100 ft (ferrocarriles)",
    "form.side_0": "A a C",
    "form.side_1": "C a B",
    "form.side_2": "A a B",
    "form.point_0_0": "x de A (este)",
    "form.point_0_1": "y de A (norte)",
    "form.point_1_0": "x entre ellos (este)",
    "form.point_1_1": "y entre ellos (norte)",
    "form.point_2_0": "x de B (este)",
    "form.point_2_1": "y de B (norte)",
    "form.drawn_to": "Las medidas del ~plano~ van a",
    "form.drawn_to.short": "A qué línea van las medidas del ~plano~",
    "form.driven": "Qué queda sobre la línea",
    "form.offset": "~Distancia a escuadra~ de las ~estacas~ a la línea del ~plano~",
    "form.offset.help": (
        "A cuánto van los ~trompos~, o el grueso de la ~tabla~ (ahí el borde de la ~estaca~). En blanco: en la línea."
    ),
    "form.width": "Ancho",
    "form.width.of_wall": "Espesor del muro",
    "form.width.help": "De borde a borde del ~concreto~.",
    "form.diameter": "Diámetro de la ~estaca de acero~",
    "form.diameter.help": (
        "Escriba su unidad. Donde sigue una ~tabla~, el ~centro~ de la ~estaca de acero~ va separado de la línea "
        "la mitad de esto."
    ),
    "form.toward": "~Distancia a escuadra~ hacia",
    "form.toward.help": (
        "El ~centro~: por dentro de la curva. Afuera: alejándose del ~centro~. Las ~estacas~ detrás de una ~tabla~ "
        "van del lado contrario al ~concreto~."
    ),
    "form.end_a": "~Referencia~ en A",
    "form.end_a.help": "Algo que cualquiera en la obra pueda ver ahí.",
    "form.end_b": "~Referencia~ en B",
    "form.end_b.help": "Algo distinto de A.",
    "form.side.short": "De qué lado queda la curva",
    "form.start": "Qué hay ya en el terreno",
    "form.tie_to": "De {end} a",
    "form.tie_distance": "Distancia",
    "form.mark": "Leer la ~cinta~ a",
    "form.mark.help": "Lo normal: 1/8 in o 0.01 ft.",
    "form.mark.help.metric": "Lo normal: 5 mm.",
    "form.mark_usual": "la marca normal",
    "form.tolerance": "~Tolerancia~ a través del ~arco~",
    "form.tolerance.help": "Cuánto puede quedar una ~estaca~ fuera de su lugar exacto. Escriba su unidad.",
    "form.fair": "~Tolerancia~ de la curva pareja",
    "form.fair.help": (
        "Cuánto puede fallar una ~estaca~ de la ~flecha~ sobre sus dos vecinas. En blanco: la mitad de la ~tolerancia~."
    ),
    "form.spacing": "~Separación~ máxima entre ~estacas~",
    "form.spacing.help": "En blanco: 4 ft.",
    "form.spacing.help.metric": "En blanco: 1.2 m.",
    "form.levels": "O rondas por mitades",
    "form.levels.help": "1 a 12. Mandan sobre la ~separación~.",
    "form.found_first": "Medida desde A",
    "form.found_second": "Medida desde B",
    "form.found_tape": "Cómo se tuvo la ~cinta~",
    "form.found_fall": "Desnivel de extremo a extremo",
    "form.found_fall.help": "Solo con ~cinta~ sobre el terreno; 0 si está parejo.",
    "form.found_hold": "Qué mantener",
    "form.found_sure": "Medida otra vez, y seguro",
    "form.got_stake": "Nombre de la ~estaca~",
    "form.got_sagitta": "Su ~flecha~",
    "form.got_measure_from": "Leído desde",
    "form.got_measure_to": "Leído hasta",
    "form.got_measure_distance": "Dio",
    "form.got_half_first": "O ~cuerda corta~, lado de A",
    "form.got_half_second": "y ~cuerda corta~, lado de B",
    # choices
    "form.unit.ft-in": "pies y pulgadas",
    "form.unit.ft": "pies, décimos, centésimos",
    "form.unit.m": "metros",
    "form.unit.mm": "milímetros",
    "form.beside.ft-in": "ft, in",
    "form.beside.ft": "ft",
    "form.beside.m": "m",
    "form.beside.mm": "mm",
    "form.beside.angle": "°",
    "form.drawn_to.face": "~cara del concreto~",
    "form.drawn_to.back": "cara de atrás del muro o la ~guarnición~",
    "form.drawn_to.centre": "eje central",
    "form.drawn_to.flow line": "~línea de flujo~ de la ~guarnición~",
    "form.drawn_to.lip": "~labio~ de la cuneta",
    "form.drawn_to.unsure": "no estoy seguro",
    "form.driven.pin": "una ~estaca de acero~ sola (lo normal)",
    "form.driven.marked": "una ~estaca~, marcada arriba después de clavarla",
    "form.driven.hub": "un ~trompo~ con ~tachuela~",
    "form.driven.board": "una ~tabla~ de ~forma~, su lado del ~concreto~",
    "form.toward.none": "sin ~distancia a escuadra~",
    "form.toward.centre": "el ~centro~",
    "form.toward.outside": "afuera",
    "form.turn.short": "Para dónde dobla la curva",
    "form.turn.none": "Dejarlo sin decir",
    "form.side.none": "Dejarlo sin decir",
    "form.start.ends": "los dos extremos",
    "form.start.one-end": "A y su recta",
    "form.start.corner": "la esquina donde se juntan las rectas",
    "form.start.neither": "todavía ningún extremo",
    "form.found_tape.none": "todavía sin medir",
    "form.found_tape.level": "~a nivel~",
    "form.found_tape.ground": "sobre el terreno",
    "form.found_hold.none": "todavía sin escoger",
    "form.found_hold.radius": "el ~radio~",
    "form.found_hold.sagitta": "la ~flecha~",
    "form.found_hold.arc_length": "el largo del ~arco~",
    "form.found_hold.directions": "las direcciones en los extremos",
    # what can be wrong
    "form.side_missing.wrong": "Hacen falta tres lados, y este está en blanco.",
    "form.side_missing.remedy": "Llénelo, o borre los tres.",
    "form.point_missing.wrong": "Tres puntos necesitan las seis coordenadas, y esta está en blanco.",
    "form.point_missing.remedy": "Llénela (0 cuenta), o bórrelas todas.",
    "form.tie_missing.wrong": (
        "Volver a ubicar el extremo {end} pide dos objetos y las dos distancias, y este dato está en blanco."
    ),
    "form.tie_missing.remedy": "Llénelo, o borre las dos ~medidas de amarre~ del extremo {end}.",
    "form.found_twice.wrong": (
        "La ~cuerda del arco~ medida cuenta solo si se midió dos veces, y esta medida está en blanco."
    ),
    "form.found_twice.remedy": "Mídala también desde el otro extremo, o borre todo lo de la ~cuerda del arco~ medida.",
    "form.half_missing.wrong": "Una ~cuerda corta~ sin la otra no fija la ~estaca~.",
    "form.half_missing.remedy": "Dé las dos ~cuerdas cortas~, o la ~flecha~ sola.",
}
