"""Methods side by side, what is in the way, and the advice, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory. A method's name and a place's
# name stand without an article: they go behind a colon, "de", "a" or "en" alike.

MESSAGES = {
    "method.name.centre": "girar desde el ~centro~",
    "method.name.halving": "por mitades",
    "method.name.rule": "la regla del cuarto",
    "method.name.ordinates": "~ordenadas~ desde la ~cuerda del arco~",
    "method.name.tangent": "desde la ~tangente~",
    "method.name.tapes": "dos ~cintas~",
    "method.name.produced": "cuerdas prolongadas",
    "method.name.angles": "ángulos de deflexión",
    "method.name.coordinates": "coordenadas con instrumento",
    "method.parallel": "~ordenadas~ desde un ~hilo~ paralelo a A-B, {size} más allá, hacia la curva",
    "method.parallel_behind": "~ordenadas~ desde un ~hilo~ paralelo a A-B, {size} detrás",
    "method.mixed_once": "una vez por mitades, luego ~ordenadas~ desde cada ~cuerda corta~",
    "method.mixed": "{times} rondas por mitades, luego ~ordenadas~ desde cada ~cuerda corta~",
    "method.few_hands": "Se necesitan {hands} personas.",
    "block.tape": "De {start} a {end} hay que medir {size}; la ~cinta~ solo tiene {there}.",
    "block.pull": "La ~cinta~ de {start} a {end} topa con {what}.",
    "block.pull_out": "La ~cinta~ hacia {end} topa con {what}.",
    "block.string": "El ~hilo~ de {start} a {end} topa con {what}.",
    "block.sight": "La visual de {start} a {end} topa con {what}.",
    "block.pull_near": "La ~cinta~ de {start} a {end} pasa a {gap} de {what}; hacen falta {clear}.",
    "block.pull_out_near": "La ~cinta~ hacia {end} pasa a {gap} de {what}; hacen falta {clear}.",
    "block.string_near": "El ~hilo~ de {start} a {end} pasa a {gap} de {what}; hacen falta {clear}.",
    "block.sight_near": "La visual de {start} a {end} pasa a {gap} de {what}; hacen falta {clear}.",
    "block.triangle": "En {start} {what} no deja espacio para un triángulo de escuadrar.",
    "block.triangle_room": "No hay espacio para un triángulo de escuadrar en {start}.",
    "block.feet": "En {start} nadie se puede parar: {what}.",
    "block.behind": (
        "La línea de {start} a {end} necesita {size} detrás de la ~cuerda del arco~; solo hay {there} libres."
    ),
    "block.inside": "La línea de {start} a {end} necesita {size} por dentro de la curva; solo hay {there} libres.",
    "block.outside": "La línea de {start} a {end} necesita {size} por fuera de la curva; solo hay {there} libres.",
    "place.mid": "~punto medio~ para {stake}",
    "place.foot": "la marca de {stake} en el ~hilo~",
    "place.par": "la marca de {stake} en el ~hilo~ paralelo",
    "place.tan": "la marca de {stake} en la ~tangente~",
    "place.ahead": "la marca de adelante para {stake}",
    "advice.take": "Use este método: {method}. La razón: {reason}. {miss}{blocked}",
    "advice.miss": "19 de 20 veces su peor ~estaca~ no se pasa de {miss}.",
    "advice.miss_holds": "19 de 20 veces su peor ~estaca~ no se pasa de {miss}, y se permite {tolerance}.",
    "advice.miss_over": (
        "19 de 20 veces su peor ~estaca~ no se pasa de {miss}. Aquí ningún método cumple con seguridad su "
        "~tolerancia~ de {tolerance}: tenga más cuidado, y revise cada ~estaca~."
    ),
    "advice.miss_far": (
        "19 de 20 veces su peor ~estaca~ no se pasa de {miss}. Aquí ningún método se acerca a su ~tolerancia~ de "
        "{tolerance}: pida al proyectista o al topógrafo otros puntos de control."
    ),
    "advice.miss_misses": "19 de 20 veces su peor ~estaca~ no se pasa de {miss}; se permite {tolerance}.",
    "advice.fair_holds": (
        "Ninguna ~estaca~ se sale más de {fair} de la curva pareja por sus vecinas, y se permite {limit}."
    ),
    "advice.fair_over": (
        "Una ~estaca~ puede salirse {fair} de la curva pareja por sus vecinas, y se permite {limit}. Mire a lo "
        "largo de las ~estacas~, y revise cada una contra sus vecinas."
    ),
    "advice.decided_place": "Lo decidió el lugar en el ~plano~.",
    "advice.decided_fair": "Lo decidió la curva pareja.",
    "advice.only": "es el único método que sirve aquí",
    "advice.plain": "aquí es el único método sin instrumento ni cuerdas prolongadas",
    "advice.fewest": "pide menos lecturas ({count}) entre los {good} métodos más exactos",
    "advice.fewest_near": "pide menos lecturas ({count}) entre los {good} métodos que más se acercan a los dos límites",
    "advice.fewest_hold": "pide menos lecturas ({count}) entre los {good} métodos que cumplen los dos límites",
    "advice.truest": "es el método más exacto de los que sirven aquí",
    "advice.truest_near": "es el que más se acerca a los dos límites, lugar y curva pareja",
    "advice.truest_hold": "es el que cumple los dos límites, lugar y curva pareja",
    "advice.instead": "Más rápido, pero aquí no se puede: {method}. {why}",
    "advice.none": (
        "Ningún método sirve en este terreno, y un solo cambio no lo arregla. Pida al proyectista o al topógrafo otros "
        "puntos de control."
    ),
    "advice.none_but": (
        "Tal como está, ningún método sirve. Lo arregla cualquiera de estos cambios: {changes}.{alone} Si no, pida al "
        "proyectista o al topógrafo otros puntos de control."
    ),
    "advice.none_string": (
        "{why} En su lugar: {string}.{others} Si no, pida al proyectista o al topógrafo otros puntos de control."
    ),
    "advice.others": "O bien: {changes}.",
    "advice.none_alone": (
        " O diga que se puede llegar al ~centro~: una persona gira el ~arco~ desde una ~estaca de acero~ ahí. Está "
        "a {size} de la curva."
    ),
    "advice.none_service": (
        "Ningún método sirve en este terreno. Lo que estorba puede ser una línea de servicio: {what}. No la mueva. "
        "Pida al proyectista o al topógrafo otros puntos de control."
    ),
    "advice.or": "; o ",
    "advice.change_tape": "una ~cinta~ de {size}, para este método: {method}",
    "advice.change_obstacle": "quitar del paso (pregunte primero) {what}, para este método: {method}",
    "advice.change_string": "{method}",
    "advice.string_toward": "~Hilo~ a {size} de A-B, del lado de la curva",
    "advice.string_behind": "~Hilo~ a {size} de A-B, por detrás",
    "advice.change_start_ends": "los dos extremos ya marcados en el terreno, para este método: {method}",
    "advice.change_start_corner": (
        "los dos extremos puestos desde la esquina de las dos rectas, para este método: {method}"
    ),
    "advice.change_start_one-end": "el otro extremo puesto desde un extremo y su recta, para este método: {method}",
    "advice.change_levels": "~estacas~ cada {size}, para este método: {method}",
    "advice.change_hands": "{size} personas, para este método: {method}",
    "advice.change_room_behind": "{size} de espacio detrás de la ~cuerda del arco~, para este método: {method}",
    "advice.change_room_inside": "{size} de espacio por dentro de la curva, para este método: {method}",
    "advice.change_room_outside": "{size} de espacio por fuera de la curva, para este método: {method}",
}
