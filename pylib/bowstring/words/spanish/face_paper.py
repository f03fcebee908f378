"""The sheet of paper that goes along, front and back, and the terminal's short sheet, in Spanish as on US sites."""
# Held against the 811 campaign's notices in Spanish: the call days ahead and the marks before any digging. Held against
# California's advice on impalement in Spanish: cap what stands up (it says "tapa"). Everything else is from memory.

MESSAGES = {
    "paper.front": "FRENTE",
    "paper.back": "REVERSO",
    "paper.more": "~ESTACAS~, página {number}",
    "paper.one_sheet": "FRENTE, 1 hoja",
    "paper.turn_over": "Voltee la hoja: precauciones, como quedó",
    "paper.turn_over_stopped": "Voltee la hoja: precauciones, notas",
    "paper.built_title": "{title}: como quedó",
    "paper.of": "{title}, {date}",
    "paper.measure": "{name} {shown}",
    "paper.arc": "~arco~",
    "paper.stakes_measure": "Línea de las ~estacas~: {measure}",
    "paper.drawing_face": "~Plano~: R {radius} a la ~CARA DEL CONCRETO~",
    "paper.drawing_outside": "~Plano~: R {radius} a la CARA EXTERIOR",
    "paper.drawing_inside": "~Plano~: R {radius} a la CARA INTERIOR",
    "paper.drawing_back": "~Plano~: R {radius} a la cara de ATRÁS",
    "paper.drawing_centre": "~Plano~: R {radius} al EJE CENTRAL",
    "paper.drawing_flow line": "~Plano~: R {radius} a la ~LÍNEA DE FLUJO~",
    "paper.drawing_lip": "~Plano~: R {radius} al ~LABIO~",
    "paper.drawing_unsure": "~Plano~: R {radius}",
    # which line, and what stands on it
    "paper.drawing_edge": "~Plano~: R {radius} al BORDE",
    "paper.line_edge": "Las medidas del ~plano~ van al BORDE del ~concreto~.",
    "paper.line_face": "Las medidas del ~plano~ van a la ~CARA DEL CONCRETO~.",
    "paper.line_back": "Las medidas del ~plano~ van a la cara de ATRÁS.",
    "paper.line_centre": "Las medidas del ~plano~ van al EJE CENTRAL.",
    "paper.line_flow line": "Las medidas del ~plano~ van a la ~LÍNEA DE FLUJO~.",
    "paper.line_lip": "Las medidas del ~plano~ van al ~LABIO~.",
    "paper.line_unsure": "¿Qué línea está en el ~plano~? PREGUNTE.",
    "paper.off_outside": "Las ~estacas~ van {shown} por FUERA de la línea del ~plano~.",
    "paper.off_centre": "Las ~estacas~ van {shown} por DENTRO de la línea del ~plano~.",
    # the hand
    "paper.stand": "Párese en {first}, mirando a {second}. La curva le queda a la",
    "paper.stand_unknown": "Párese en {first}, mirando a {second}. ¿De qué lado queda la curva?",
    "paper.end": "{name} ({landmark})",
    "paper.end_off": "{name} (separado de {landmark})",
    "paper.seen": "visto en el terreno",
    "paper.turns": "dobla a la {turn}",
    "paper.sign_hand": "De qué lado queda la curva",
    "paper.sign_line": "Qué punto va en la línea",
    "paper.hand_unknown": "PREGUNTE",
    "paper.left": "IZQUIERDA",
    "paper.right": "DERECHA",
    # before the first stake
    "paper.services": "¿Servicios marcados? Llame al 811 (EE. UU.) días antes. Número de boleto",
    "paper.ticket": "Servicios marcados. Número de boleto {ticket}.",
    "paper.called": "llamada: {date}",
    "paper.services_short": (
        "¿Servicios localizados, marcas puestas? Llame al 811 (EE. UU.) días antes; anote el número de boleto."
    ),
    "paper.marks_in": "marcas puestas",
    "paper.ties": "~Medidas de amarre~, ~a nivel~.",
    "paper.tie": "{end}: {ties}.",
    "paper.tie_one": "{to} {shown}",
    "paper.first.have_ends": "Mida {start} a {end} dos veces, ~cinta~ ~a nivel~: {m0}. Si no da, ALTO.",
    "paper.first.set_ends": (
        "Ponga {start} y {end} con las medidas del ~plano~. Mida dos veces, ~cinta~ ~a nivel~: {m0}. Si no da, ALTO."
    ),
    "paper.first.have_ends_untaped": "Busque {start} y {end}. No se alcanzan con una sola tirada de ~cinta~.",
    "paper.first.set_ends_untaped": (
        "Ponga {start} y {end} con las medidas del ~plano~. No se alcanzan con una sola tirada de ~cinta~."
    ),
    "paper.first.prove_two": (
        "En el ~hilo~ de {start} a {end} ponga el ~clavo~ {nail} a {m0}. {nail} a {end} debe dar {rest}. Si no, ALTO."
    ),
    "paper.first.prove_parts": (
        "En el ~hilo~ de {start} a {end} ponga los ~clavos~ {nail} a {last} cada {m0} desde {start}. {last} a "
        "{end} debe dar {rest}. Si no, ALTO."
    ),
    "paper.first.prove_beside": (
        "Del lado CONTRARIO a la curva cruce {m0} desde {start} y {m1} desde {end}: {beside}. Marque {toward} a "
        "{m2} hacia {start}, {other} a {m3} hacia {end}. {toward} a {other} debe dar {m4}. Si no, ALTO."
    ),
    "paper.first.prove_beside_inside": (
        "Del lado de la CURVA cruce {m0} desde {start} y {m1} desde {end}: {beside}. Marque {toward} a {m2} "
        "hacia {start}, {other} a {m3} hacia {end}. {toward} a {other} debe dar {m4}. Si no, ALTO."
    ),
    "paper.first.prove_corner": (
        "Desde P marque {toward} a {m0} hacia S, {other} a {m1} hacia T. {toward} a {other} debe dar {m2}. Si no, ALTO."
    ),
    "paper.first.have_straight": "Busque {start} (PC). Marque S sobre la recta, al menos {back} atrás.",
    "paper.first.have_straight_short": "Busque {start}, donde termina la recta. S donde empieza, {m0} atrás.",
    "paper.first.have_arc": (
        "{start} y D: extremos del tramo {piece}. De {start} hacia D {m0}; ahí ~a escuadra~ {m1} "
        "({bend_hand}), mirando a D: "
        "S. {start} a S debe dar {m2}, D a S {m3}."
    ),
    "paper.first.have_arc_past": (
        "{start} y D: extremos del tramo {piece}. De D, {m0} más allá de {start}; ahí ~a escuadra~ {m1} ({bend_hand}), "
        "mirando a D: S. {start} a S debe dar {m2}, D a S {m3}."
    ),
    "paper.first.have_arc_square": (
        "{start} y D: extremos del tramo {piece}. En {start} {m0} ~a escuadra~ de la línea a D ({bend_hand}), "
        "mirando a D: S. D a S debe dar {m1}."
    ),
    "paper.first.from_straight": (
        "Más allá de {start}, en línea con S, {m0}: F. En F, de espaldas a S, mida ~a escuadra~ {m1} ({turn}): {end} "
        "(PT). {start} a {end} debe dar {m2}."
    ),
    "paper.first.from_straight_back": (
        "Desde {start} de regreso hacia S {m0}: F. En F, de espaldas a S, mida ~a escuadra~ {m1} ({turn}): {end} "
        "(PT). {start} a {end} debe dar {m2}."
    ),
    "paper.first.from_straight_untaped": (
        "Más allá de {start}, en línea con S, {m0}: F. En F, de espaldas a S, mida ~a escuadra~ {m1} ({turn}): {end} "
        "(PT)."
    ),
    "paper.first.from_straight_back_untaped": (
        "Desde {start} de regreso hacia S {m0}: F. En F, de espaldas a S, mida ~a escuadra~ {m1} ({turn}): {end} (PT)."
    ),
    "paper.first.have_corner": (
        "Busque la esquina P (PI). Marque S sobre la recta de A, T sobre la de B, al menos {back} atrás."
    ),
    "paper.first.from_corner": (
        "Desde P hacia S {m0}: {start} (PC). Hacia T {m1}: {end} (PT). {start} a {end} debe dar {m2}. Si no, "
        "ALTO. En {start}, mirando a {end}, P le queda de este lado: {hand}."
    ),
    "paper.first.from_corner_untaped": (
        "Desde P hacia S {m0}: {start} (PC). Hacia T {m1}: {end} (PT). En {start}, mirando a {end}, P le queda "
        "de este lado: {hand}."
    ),
    "paper.first.offset_away_arc": (
        "{end}: desde {other} siga en línea hasta pasar {start} por {m0}; ~a escuadra~ {m1} hacia la curva. "
        "{start} a {end} debe dar {m2}."
    ),
    "paper.first.offset_away_back": (
        "{end}: desde {other} siga en línea hasta pasar {start} por {m0}; ~a escuadra~ {m1} alejándose de la "
        "curva. {start} a {end} debe dar {m2}."
    ),
    "paper.first.offset_toward_arc": (
        "{end}: desde {start} hacia {other} {m0}; ~a escuadra~ {m1} hacia la curva. {start} a {end} debe dar {m2}."
    ),
    "paper.first.offset_toward_back": (
        "{end}: desde {start} hacia {other} {m0}; ~a escuadra~ {m1} alejándose de la curva. {start} a {end} debe dar "
        "{m2}."
    ),
    "paper.first.offset_square_out": (
        "{end}: en {start}, ~a escuadra~ de la recta, {m0}, alejándose del ~centro~ de la curva."
    ),
    "paper.first.offset_square_in": (
        "{end}: en {start}, ~a escuadra~ de la recta, {m0}, hacia el ~centro~ de la curva."
    ),
    "paper.first.offset_toward_near": (
        "{end}: desde {start} hacia {other} {m0}; ~a escuadra~ {m1} del lado de {far}. {start} a {end} debe dar {m2}."
    ),
    "paper.first.offset_toward_far": (
        "{end}: desde {start} hacia {other} {m0}; ~a escuadra~ {m1} del lado contrario a {far}. {start} a {end} "
        "debe dar {m2}."
    ),
    "paper.first.offset_away_near": (
        "{end}: desde {other} siga en línea hasta pasar {start} por {m0}; ~a escuadra~ {m1} del lado de {far}. "
        "{start} a {end} debe dar {m2}."
    ),
    "paper.first.offset_away_far": (
        "{end}: desde {other} siga en línea hasta pasar {start} por {m0}; ~a escuadra~ {m1} del lado contrario a "
        "{far}. {start} a {end} debe dar {m2}."
    ),
    "paper.first.offset_away": "{end}: desde {other} siga en línea hasta pasar {start} por {m0}.",
    "paper.first.offset_toward": "{end}: desde {start} hacia {other} {m0}.",
    "paper.first.string": "Tienda el ~hilo~ de {start} a {end}, bien tirante. Sepa dónde está el cero de la ~cinta~.",
    "paper.first.string_up": "Deje tendido el ~hilo~ de {start} a {end}. Sepa dónde está el cero de la ~cinta~.",
    "paper.first.string_none": "No se puede tender ~hilo~ directo de {start} a {end}.",
    "paper.first.no_string_yet": "Todavía no hace falta ~hilo~ de {start} a {end}: las ~formas~ salen de él.",
    "paper.first.no_string": "No hace falta ~hilo~ de {start} a {end}.",
    "paper.first.ends_taped": "Mida {start} a {end}, ~cinta~ ~a nivel~: {m0}. Si no da, ponga los dos otra vez.",
    "paper.first.string_taped": (
        "Tienda el ~hilo~ de {start} a {end}, bien tirante. Debe dar {m0}. Si no, ponga los dos otra vez."
    ),
    "paper.first.string_middle": (
        "Marque el ~punto medio~ del ~hilo~, a {m0} de cada extremo. Ahí ponga el cero de la ~cinta~."
    ),
    "paper.first.parallel_crossed_curve": "{peg}: cruce {m0} desde {start} y {m1} desde {end}, hacia la curva.",
    "paper.first.parallel_crossed_behind": (
        "{peg}: cruce {m0} desde {start} y {m1} desde {end}, del lado contrario a la curva."
    ),
    "paper.first.parallel_squared_curve": "{peg}: en {start}, ~a escuadra~ {m0}, hacia la curva.",
    "paper.first.parallel_squared_behind": "{peg}: en {start}, ~a escuadra~ {m0}, alejándose de la curva.",
    "paper.first.parallel_crossed": (
        "{start} a {end} debe dar {m0}, y A a {end} lo mismo que B a {start}. Tienda el ~hilo~ de {start} a {end}."
    ),
    "paper.first.parallel_squared": (
        "{start} a {end} debe dar {m0}. Si no, saque las dos ~a escuadra~ otra vez. Tienda el ~hilo~ de {start} "
        "a {end}."
    ),
    "paper.first.parallel_leaning": (
        "Tienda el ~hilo~ de {start} a {end}; en él {seen}, a {m0} de {start}. {eye} a {seen} debe dar {m1}."
    ),
    "paper.first.parallel_strung": "Tienda el ~hilo~ de {start} a {end}. Saque cada esquina ~a escuadra~ dos veces.",
    "paper.first.peg": (
        "~Estaca de acero~ {peg}: desde {start} hacia {end} {m0}; ~a escuadra~ {m1} hacia la curva. Tienda el "
        "~hilo~ de {start} a {peg}."
    ),
    "paper.first.peg_back": (
        "~Estaca de acero~ {peg}: desde {end} siga en línea hasta pasar {start} por {m0}; ~a escuadra~ {m1} hacia la "
        "curva. Tienda el ~hilo~ de {start} a {peg}."
    ),
    "paper.first.peg_square": (
        "~Estaca de acero~ {peg}: en {start}, ~a escuadra~ {m0} hacia la curva. Tienda el ~hilo~ de {start} a {peg}."
    ),
    "paper.first.centre_behind": (
        "C, el ~centro~: cruce {m0} desde {start} y {end}, del lado CONTRARIO a la curva ({away}). Las dos "
        "~cintas~ deben seguir dando eso."
    ),
    "paper.first.centre_inside": (
        "C, el ~centro~: cruce {m0} desde {start} y {end}, del lado de la CURVA ({hand}). Las dos ~cintas~ deben "
        "seguir dando eso."
    ),
    "paper.first.centre_half": "C, el ~centro~: el ~punto medio~ del ~hilo~, a {m0} de cada extremo.",
    "paper.first.centre_near": (
        "C, el ~centro~: desde el ~punto medio~ del ~hilo~, {m0}, mida ~a escuadra~ {m1} ALEJÁNDOSE de la curva "
        "({away}). C a {start} debe dar {m2}, y C a {end} también."
    ),
    "paper.first.centre_near_inside": (
        "C, el ~centro~: desde el ~punto medio~ del ~hilo~, {m0}, mida ~a escuadra~ {m1} hacia la curva "
        "({hand}). C a {start} debe dar {m2}, y C a {end} también."
    ),
    # how each row of a table goes
    "paper.how.stake": (
        "Está ~a escuadra~ cuando las dos ~cuerdas cortas~ dan igual. Mida otra vez la ~distancia a escuadra~."
    ),
    "paper.how.stake_crossed": (
        "Cruce las dos ~cuerdas cortas~: {hand}, mirando a lo largo del ~hilo~ desde A. Mida las dos otra vez."
    ),
    "paper.how.ordinate": "Marque a lo largo del ~hilo~. Ahí mida ~a escuadra~: {hand}, mirando como de A a B.",
    "paper.how.ordinate_mid": (
        "Marque a lo largo del ~hilo~ desde su ~punto medio~. Ahí mida ~a escuadra~: {hand}, mirando a B desde A."
    ),
    "paper.how.parallel": "Marque a lo largo del ~hilo~ paralelo. Ahí mida ~a escuadra~ como dice la fila.",
    "paper.and": " y ",
    "paper.how.tangent_offset": (
        "Tienda ~hilo~ {strings}, bien tirante. Marque a lo largo, mirando hacia donde marca."
    ),
    "paper.how.cross": "Cruce las dos ~cintas~: {hand}, mirando a {end} desde {start}.",
    "paper.how.polar": "Instrumento sobre {start}, apuntando a {end}. Gire: {hand}. Luego mida con ~cinta~.",
    "paper.how.sight": (
        "Instrumento sobre {start}, apuntando a {end}. Gire desde la ~cuerda del arco~: {hand}. Mida la ~separación~ "
        "hasta caer en esa línea."
    ),
    "paper.how.sight_ahead": (
        "Instrumento sobre {start}, apuntando a {end}. Gire la deflexión: {hand}. Mida la ~separación~ hasta caer en "
        "esa línea."
    ),
    "paper.how.sight_back": (
        "Instrumento sobre {start}, apuntando atrás a {end}. Campanee y gire la deflexión: {hand}. Mida la "
        "~separación~ hasta caer en esa línea."
    ),
    "paper.how.swing": (
        "Enganche en C. Gire: {hand}, mirando a la ~estaca~ anterior, hasta que las dos ~cintas~ den lo que dice "
        "la fila."
    ),
    "paper.how.produce": (
        "Prolongue la línea y márquela. Ponga el cero en la ~estaca~ anterior y gire: {hand}, mirando a la marca."
    ),
    "paper.each_hand": "como dice la fila",
    "paper.off_string": "{string} (~a escuadra~ a la {hand})",
    "paper.head_hand": "{head}, {hand}",
    "paper.cross_both": "cruce {shown}",
    "paper.cross_two": "cruce {first}, {second}",
    "paper.none": "nada",
    "paper.slope": "{level} (~pendiente~ {slope})",
    "paper.done": "listo",
    "paper.goes_on": "Siguen más ~estacas~: página {page}.",
    "paper.check_out": "{what}: dio {shown}, debe dar {must}. Arréglelo antes de construir.",
    "paper.checks_out": "{count} ~revisiones~ FUERA. Arréglelas antes de construir.",
    "paper.apart_out": (
        "Las diagonales difieren en {shown}, se permite {limit}. Saque los lados ~a escuadra~ antes de construir."
    ),
    "paper.no_check_read": "Nadie ha leído las ~revisiones~. Mídalas antes de construir.",
    "paper.no_stake_check_read": "Nadie ha leído las ~revisiones~ de las ~estacas~. Mídalas antes de construir.",
    "paper.stands_off": "{stake} está {shown}. Mueva la ~estaca~, o pregunte.",
    "paper.stand_off": "{stakes} están fuera del ~arco~. Muévalas, o pregunte.",
    "paper.stakes_count": "{count} ~estacas~",
    "paper.some_rows": "Las primeras {shown} de {count} ~estacas~.",
    # checks
    "paper.checks": "~Revisiones~: medidas que ningún paso usó",
    "paper.must_read": "debe dar",
    "paper.may_be_out": "puede fallar por",
    "paper.you_read": "su lectura",
    "paper.in": "dentro",
    "paper.check.alternate": "~Hilo~ {string}: ~punto medio~ a {stake}",
    "paper.check.alternate_inside": "~Hilo~ {string}: ~punto medio~ a {stake}, ADENTRO del ~hilo~",
    "paper.check.ordinate": "{stake} ~a escuadra~ de A-B, a {along} de A",
    "paper.check.ordinate_inside": "{stake} ~a escuadra~ de A-B, a {along} de A, ALEJÁNDOSE de la curva",
    "paper.check.line": "{start} a {end}",
    "paper.check.closing": "Última ~separación~, {start} a {end}",
    "paper.no_check": "Ninguna ~revisión~ sirve aquí para juzgar. Mida otra vez cada ~estaca~ desde A y B.",
    "paper.no_check_left": "Aquí los pasos ya usan todas las distancias. Mida cada número dos veces.",
    "paper.no_check_tolerance": (
        "Ninguna ~revisión~ detecta un error dentro de la ~tolerancia~. Use una ~cinta~ más fina."
    ),
    # the end
    "paper.spring": (
        "Doble la ~tabla~ por las ~estacas~ y pásela más allá de cada extremo libre. Fije primero un extremo; párese "
        "fuera de su alcance."
    ),  # from memory
    "paper.hubs": "Mida otra vez hasta cada ~tachuela~. Si no da, mueva la ~tachuela~, no el ~trompo~.",
    "paper.back_stick": "Corte un listón de {shown} de largo. Gírelo desde cada ~estaca~ hacia la línea.",
    "paper.within": "Dentro de {tolerance}; números a {mark}. Si falla por más, busque por qué.",
    "paper.to_mark": "Números a {mark}. Si una ~revisión~ falla por más de lo permitido, busque por qué.",
    # a stop
    "paper.stop": "ALTO",
    "paper.stop_do": "No construya nada con esto. No da números hasta que esto quede resuelto:",  # from memory
    "paper.stop_take": "{method}: aquí sí sirve. Use ese método e imprima otra vez.",
    "paper.stop_asked": "a quién preguntó (nombre)",
    "paper.stop_answer": "la respuesta",
    # the back
    "paper.built_must": "debe ser, sobre el ~hilo~ A a B",
    "paper.built_is": "como quedó",
    "paper.built_grade": "rasante",
    "paper.built_drawing": "en el ~plano~",
    "paper.stake": "~estaca~",
    "paper.along": "a lo largo",
    "paper.square_off": "~a escuadra~",
    "paper.off_by": "falla por",
    "paper.off_out": "{off} por fuera",
    "paper.off_in": "{off} por dentro",
    "paper.off_on": "nada",
    "paper.stake_top": "cabeza de ~estaca~",
    "paper.cut_fill": "corte / relleno",
    "paper.stick": "Listón de medidas: marque un listón, todo desde la misma punta",
    "paper.stick_mark": "{shown} {stakes}",
    "paper.safe_authority": (
        "Mandan el ~plano~, las especificaciones, el código local y el ingeniero a cargo, no esta hoja."
    ),  # from memory
    "paper.safe_services": (
        "Servicios localizados y marcados antes de clavar nada, ni siquiera ~estacas de acero~ (EE. UU.: llame al 811)."
    ),
    "paper.safe_caps": "Póngale ~tapón~ a cada ~estaca de acero~ al clavarla.",
    "paper.safe_board": (
        "La ~tabla~ doblada es un resorte. Fije primero un extremo y párese fuera de su alcance."
    ),  # from memory
    "paper.safe_level": "Tenga la ~cinta~ ~a nivel~. Si empieza en 1 pie, réstelo.",
    "paper.safe_hand": (
        "Ninguna ~revisión~ detecta una curva del lado equivocado. En A, mirando a B, la curva le queda de este "
        "lado: {hand}, dobla a la {turn}."
    ),
    "paper.safe_one_more": "La hoja larga trae {count} precaución más. Léala.",
    "paper.safe_more": "La hoja larga trae {count} precauciones más. Léalas.",
    "paper.scan": "Escanee el código para abrir este trabajo:",
    "paper.no_code": "Este trabajo, demasiado largo para un código:",
    "paper.notes": "Notas",
    "paper.by": "trazó (iniciales)",
    "paper.checked": "revisó (iniciales)",
    "paper.date": "fecha",
    "paper.tape": "~cinta~ usada, su largo",
    # the terminal
    "paper.all": (
        "Agregue --all para verlo todo: precisión, todos los métodos, cómo sacar escuadra, equivocaciones, posiciones."
    ),
    "paper.first_title": "Primero",
    "paper.foot_of_arc": "{arc}. {told}",
    "paper.title_of_arc": "{title}: {arc}",
    "paper.first_after": "Después del {before}: {told}",
    "paper.stakes_title": "~Estacas~, en orden",
    "paper.cautions_title": "Precauciones",
}
