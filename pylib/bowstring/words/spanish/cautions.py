"""Cautions and notes, in Spanish as on US sites."""
# Held against the 811 campaign's notices in Spanish: the call, the working days, the marks before digging, and "líneas
# enterradas". Held against California's advice on impalement in Spanish: the caps (it says "tapa"; a builders' safety
# talk in Spanish says "tapón"). Everything else is from memory.

MESSAGES = {
    "top.authority": (
        "Mandan el ~plano~, las especificaciones, el código local y el ingeniero a cargo. Donde digan otra cosa que "
        "esta hoja, sígalos a ellos."
    ),  # from memory
    "top.services": (
        "Pida que localicen y marquen las líneas de servicios enterradas antes de clavar nada, ni siquiera "
        "~estacas de acero~. EE. UU.: llame al 811, espere las marcas unos días hábiles y anote el número de "
        "boleto. Reino Unido: detector CAT y permiso de excavación."
    ),
    "top.stakes": (
        "Póngale ~tapón~ a cada ~estaca de acero~ al clavarla. Donde alguien pueda caerle encima, use un ~tapón~ "
        "hecho contra empalamiento: el de plástico simple solo evita rasguños. La ~tabla~ doblada es un resorte: "
        "fije primero un extremo y párese fuera de su alcance."
    ),  # from memory
    "caution.odd_one": (
        "Los otros datos concuerdan entre sí, pero no con este: {field}. Se dio como {value}; con ellos sale "
        "{computed}. Lo más probable es que esté mal: pregunte, o no lo use. No construya con esta hoja hasta que se "
        "resuelva."
    ),
    "caution.odd_one_none": (
        "Los otros datos concuerdan entre sí, pero no con este: {field}. Se dio como {value}; el ~arco~ de ellos "
        "gira 180° o más y no lo tiene. Lo más probable es que esté mal. No construya con esta hoja hasta que se "
        "resuelva."
    ),
    "caution.differs": (
        "Este dato ({field}) se dio como {value}; con {pair} sale {computed}. Cabe en el redondeo del ~plano~, pero "
        "pasa de una marca de la ~cinta~."
    ),
    "caution.disagrees": (
        "Los datos no concuerdan. Este dato ({field}) se dio como {value}, pero con {pair} sale {computed}. "
        "Pregunte cuál es el correcto antes de construir."
    ),
    "caution.disagrees_none": (
        "Los datos no concuerdan. Este dato ({field}) se dio como {value}, pero con {pair} el ~arco~ gira 180° o "
        "más y no lo tiene. Pregunte antes de construir."
    ),
    "caution.two_arcs": (
        "Con estos números salen dos ~arcos~. Esta hoja usa {angle}, ~radio~ {radius}, ~flecha~ {sagitta}. El "
        "otro es {other_angle}, ~radio~ {other_radius}, ~flecha~ {other_sagitta}. Asegúrese de cuál está en el "
        "~plano~."
    ),
    "caution.hand_unsaid": (
        "No construya todavía: falta decir de qué lado queda la curva (parado en A, mirando a B). Esta hoja no dice "
        "ningún lado."
    ),
    "caution.turn_unsaid": (
        "No construya todavía: falta decir para dónde dobla (caminando por la recta hacia el ~arco~). Esta hoja no "
        "dice ningún lado."
    ),
    "caution.points_hand": (
        "Según los tres puntos, la curva queda a la {points}, parado en A y mirando a B. Eso toma x como este "
        "(derecha) e y como norte (adelante); si se cambian, se voltea la curva. Mire el ~plano~ antes de clavar "
        "una ~estaca~."
    ),
    "caution.points_other_hand": (
        "Los tres puntos ponen la curva a la {points} (x este, y norte), pero el trabajo dice: {side}. Esta hoja "
        "sigue el trabajo. No construya hasta saber cuál lado es el correcto."
    ),
    "caution.degree": (
        "El grado de curva es para carreteras y ferrocarriles. Se leyó como grados por cada 100 ft de ~arco~: un "
        "~radio~ de {radius}. En ferrocarriles se cuenta sobre una ~cuerda del arco~ de 100 ft. Si el ángulo del "
        "~plano~ es de todo el ~arco~, es el ángulo central."
    ),
    "caution.degree_chord": (
        "El grado de curva es para carreteras y ferrocarriles. Se leyó como grados sobre una ~cuerda del arco~ de "
        "100 ft: un ~radio~ de {radius}. En carreteras se cuenta por cada 100 ft de ~arco~. Si el ángulo del ~plano~ "
        "es de todo el ~arco~, es el ángulo central."
    ),
    "caution.line_unsure": (
        "No construya todavía. Pregunte a qué línea van las medidas del ~plano~ (cara, atrás, eje central, "
        "~línea de flujo~ o ~labio~)."
    ),
    "caution.line_unsaid": (
        "No construya todavía. Falta decir a qué línea van las medidas del ~plano~ (cara, atrás, eje central, "
        "~línea de flujo~ o ~labio~)."
    ),
    "caution.board_on_back": (
        "Las medidas del ~plano~ van a la cara de atrás; aquí se toma que la ~tabla~ va ahí. Si va en la cara de "
        "enfrente, sume el grueso del muro a la ~distancia a escuadra~."
    ),
    "caution.board_on_centre": (
        "No construya todavía: las medidas del ~plano~ van al eje central, y ahí no va ninguna ~tabla~. La "
        "~distancia a escuadra~ ({shown}) debe ser del eje central a la cara más el grueso de la ~tabla~."
    ),
    "caution.board_from_centre": (
        "Las medidas del ~plano~ van al eje central. La ~distancia a escuadra~ ({shown}) se toma del eje central "
        "a la cara más el grueso de la ~tabla~."
    ),
    "caution.landmark_same": (
        "No construya todavía: los dos extremos tienen la misma ~referencia~, o dos que se parecen. Si se cambian, "
        "se voltea la curva. Póngales ~referencias~ distintas."
    ),
    "caution.landmark_swapped": (
        "No construya todavía: la ~referencia~ en {end} es el nombre del otro extremo ({landmark}). Asegúrese de "
        "cuál extremo es cuál, y ponga lo que de veras hay ahí."
    ),
    "caution.landmark_mark": (
        "No construya todavía: la ~referencia~ en {end} ({landmark}) parece una marca de esta hoja. Ponga lo que de "
        "veras hay ahí."
    ),
    "caution.landmark_blank": "No construya todavía: la ~referencia~ en {end} no se ve en papel. Escríbala otra vez.",
    "caution.landmark_tie": (
        "Las dos ~medidas de amarre~ del extremo {end} van al mismo objeto. Con una sola no se puede volver a "
        "ubicar. Amárrelo a dos objetos distintos."
    ),
    "caution.tie_over_tape": (
        "La ~medida de amarre~ de {end} a {to} es de {shown}, y la ~cinta~ es solo de {tape}. Amarre {end} a algo "
        "más cerca."
    ),
    "caution.tie_blocked": "{what} estorba la ~medida de amarre~ de {end} a {to}. Amarre {end} a otra cosa.",
    "caution.unlikely_board": "¿Una ~tabla~ de {shown} de grueso? Revise la unidad antes de construir.",
    "caution.unlikely_hub": "¿~Trompos~ a {shown} de la línea? Revise la unidad antes de construir.",
    "caution.unlikely_tolerance": (
        "¿Una ~tolerancia~ de {shown}? Revise la unidad antes de construir: una ~revisión~ que permite tanto no "
        "detecta nada."
    ),
    "caution.got_over": (
        "No construya todavía: la ~estaca~ {stake} quedó {off}, y solo se permite {tolerance}. Muévala, o pregunte."
    ),
    "caution.got_astray": "No construya todavía: {mark} quedó {off}. Está demasiado lejos. Mida otra vez con ~cinta~.",
    "caution.got_astray_sure": (
        "No construya todavía: {mark} quedó {off}, y se midió dos veces. Ponga otra vez esa marca, o pregunte."
    ),
    "caution.got_unusual": (
        "Lo normal es que las ~estacas~ queden a {usual} o menos del ~arco~, y {stake} no. Regrésela, o pregunte."
    ),
    "caution.got": (
        "La ~estaca~ {stake} quedó {off}: {stands} en vez de {wanted}. Los números que siguen ya lo toman en cuenta."
    ),
    "caution.got_stands": "La ~estaca~ {stake} quedó {off}. Los números que siguen ya lo toman en cuenta.",
    "caution.got_alone": "La ~estaca~ {stake} quedó {off}. De ella no depende el número de ninguna otra ~estaca~.",
    "caution.got_helper": "{mark} quedó a {off} de su lugar. Los números que siguen ya lo toman en cuenta.",
    "caution.got_bump": (
        "Contra sus vecinas, la ~estaca~ {stake} hace una panza o quiebre de {bump}, y solo se permite {fair}. "
        "Regrésela al ~arco~."
    ),
    "caution.got_apart": (
        "No construya todavía: las lecturas en {mark} difieren {apart}. Una está mal leída: mídalas todas otra vez."
    ),
    "caution.got_slip": "No construya todavía: la lectura en {mark} puede ser una equivocación. {slip}",
    "caution.got_likely": "La lectura en {mark} puede ser una equivocación. {slip}",
    "caution.got_aside": (
        "La ~estaca~ {stake} quedó corrida {aside} del ~punto medio~ de su ~hilo~, hacia {end}. Eso casi no la saca "
        "del ~arco~, pero las ~separaciones~ a sus lados ya no son iguales."
    ),
    "caution.got_far": (
        "En la ~estaca~ {stake} se midió {stands} donde se pedía {wanted}, {off}: parece una equivocación. Mídala otra "
        "vez antes de seguir."
    ),
    "caution.sensitive": (
        "Una marca de la ~cinta~ ({mark}) en este dato ({field}) cambia el ~radio~ en {change}. {better}"
    ),
    "caution.sensitive_all": (
        "Una marca de la ~cinta~ ({mark}) en este dato ({field}) da otro ~arco~ o ninguno. {better}"
    ),
    "caution.better": (
        "Mejor consiga este dato: {field} (cerca de {value}). Ahí una marca cambia el ~radio~ en {change}."
    ),
    "caution.better_three_sides": "Mejor mida con ~cinta~ la ~cuerda del arco~ y su ~flecha~.",
    "caution.better_points": (
        "Use puntos más separados, con el de en medio cerca de la mitad, o saque el ~radio~ del ~plano~."
    ),
    "caution.services": (
        "Antes de la primera ~estaca~: ¿están localizadas y marcadas las líneas de servicios enterradas, y "
        "anotado el número de boleto? Póngale ~tapón~ a cada ~estaca de acero~ al clavarla."
    ),
    "caution.tape_zero": (
        "Sepa dónde está el cero de la ~cinta~ (gancho, argolla o marca). Si empieza en 1 pie o en 10 cm, réstelo de "
        "la lectura."
    ),
    "caution.slope": "Tenga la ~cinta~ ~a nivel~: sobre terreno inclinado da de más.",
    "caution.no_better": (
        "Ninguna otra medida de ~cinta~ ayuda mucho más aquí: saque del ~plano~ el ~radio~ o el ángulo central."
    ),
    "caution.straight": (
        "Toda la ~flecha~ ({sagitta}) es menos de una marca de la ~cinta~ ({mark}). Esta ~cinta~ no distingue el "
        "~arco~ de una línea recta."
    ),
    "caution.small_sagitta": (
        "Desde la ronda {level}, las ~flechas~ ({sagitta}) son menos de {few} marcas de la ~cinta~ ({mark}): casi "
        "puro redondeo. Haga menos rondas y doble una ~tabla~ por las ~estacas~."
    ),
    "caution.tolerance_under_mark": (
        "La ~tolerancia~ ({tolerance}) es más fina que la marca de la ~cinta~ ({mark}): ninguna ~revisión~ con esta "
        "~cinta~ puede cumplirla."
    ),
    "caution.one_level": (
        "Con una ronda, solo las ~cuerdas cortas~ revisan la ~estaca~. Una segunda ronda agrega ~revisiones~ que "
        "detectan más."
    ),
    "caution.wind": (
        "Un ~hilo~ de {chord} se comba {bow} con viento de lado de {wind} y un jalón de {pull}. Alinéelo con "
        "~estacas de acero~, y no mida desde él una ~flecha~ con viento."
    ),
    "caution.over_half": (
        "Este ~arco~ gira {angle}, más de medio círculo. Se sale más allá de los extremos de la ~cuerda del "
        "arco~. Ahí no llega ninguna ~distancia a escuadra~ desde el ~hilo~ A a B. Revise que haya espacio en "
        "los dos lados."
    ),
    "note.settled": "El ~arco~ se calculó con {pair}.",
    "note.resolved": "Luego se calculó otra vez sobre la ~cuerda del arco~ medida: {hold}.",
    "note.settled_points": "El ~arco~ se calculó con tres puntos; el primero es A, el tercero B.",
    "note.settled_sides": "El ~arco~ se calculó con tres lados medidos con ~cinta~.",
    "note.levels_win": "Se dieron rondas y también ~separación~: se usaron las rondas ({levels}).",
    "note.rounds_many": "Se piden {levels} rondas, así que el método es por mitades.",
    "note.rounds_one": "Se pide una ronda, así que el método es por mitades.",
    "note.rounds_usual": "Se piden rondas por mitades, así que el método es por mitades.",
    "note.landmarks": "Póngale una ~referencia~ a cada extremo, para que nadie empiece por el que no es.",
    "note.ties": "Antes de excavar, amarre cada extremo a dos objetos fijos, para poder volver a ubicarlo.",
    "note.offset": (
        "Del ~arco~ del ~plano~ al ~arco~ de las ~estacas~, la ~cuerda del arco~ cambia {chord} y la ~flecha~ "
        "{sagitta}. Nunca sume la ~distancia a escuadra~ a la ~flecha~."
    ),
    "note.tolerance": "No se dio ~tolerancia~, así que esta hoja no puede decir si un error importa.",
    "note.spring": (
        "La ~tabla~ doblada se curva pareja entre ~estacas~, pero en las puntas queda recta. Pásela más allá de "
        "cada extremo libre."
    ),
    "note.square": "Una ~flecha~ fuera de escuadra casi no se nota en su propia ~estaca~; se nota una ronda después.",
    "caution.method_blocked": (
        "No construya con esta hoja: este método ({method}) no se puede en este terreno. {why} Vea la recomendación."
    ),
    "caution.method_hands": (
        "No construya con esta hoja: este método ({method}) necesita {hands} personas, y usted tiene {there}."
    ),
    "caution.method_unreliable": (
        "No construya con esta hoja: con este método ({method}), los errores chicos crecen aquí sin control. "
        "Vea la recomendación."
    ),
    "caution.method_misses": (
        "Trazada con este método ({method}), la peor ~estaca~ puede fallar por {miss}, y se permite {tolerance}. Ni "
        "con cuidado se arregla tanto."
    ),
    "caution.method_hopeless": (
        "No construya con esta hoja: con este método ({method}), la peor ~estaca~ puede fallar por {miss}, y se "
        "permite {tolerance}. Ni con cuidado se arregla tanto. Mejor use este ({advised}): 19 de 20 veces su "
        "peor ~estaca~ falla por {best} o menos."
    ),
    "caution.rule_over": (
        "No construya con esta hoja: estos son los números de la regla del cuarto. Fallan del ~arco~ hasta por "
        "{worst} en {at}, y se permite {tolerance}. Por mitades con números exactos no es más trabajo."
    ),
    "caution.rule": (
        "Estos son los números de la regla del cuarto: fallan del ~arco~ hasta por {worst} en {at}. Por mitades "
        "con números exactos no es más trabajo."
    ),
    "caution.slope_numbers": (
        "El terreno está inclinado. Las medidas son horizontales; si la ~cinta~ va sobre la ~pendiente~, use el "
        "número de ~pendiente~ entre paréntesis. Un triángulo hecho sobre la ~pendiente~ no queda ~a escuadra~ visto "
        "desde arriba: tenga sus lados ~a nivel~."
    ),
    "caution.chord_over_tape": (
        "A a B son {chord} y la ~cinta~ es de {tape}. Se mide en más de una tirada, en línea, cada una con su propio "
        "error."
    ),
}
