"""The lessons on paper, and the page with string and chalk, in Spanish as on US sites."""

# No safety sentence stands here; everything is from memory.

MESSAGES = {
    "handout.answers": "RESPUESTAS",
    "handout.name": "Nombre",
    "handout.exercise": "Calcúlelo",
    "handout.answer": "Respuesta:",
    "handout.1.parts": (
        "El arco de flechas es el {arc}. Su cuerda es la {chord}. Lo que sale del ~punto medio~ es la ~flecha~."
    ),
    "handout.1.arc": "~arco~",
    "handout.1.chord": "~cuerda del arco~",
    "handout.1.product": "Izquierda por derecha: {half} × {half} = {square}.",
    "handout.1.rest": "Arriba por abajo es lo mismo: {square} ÷ {out} = {rest}, lo que falta de la línea.",
    "handout.1.radius": "La mitad de toda la línea: ({rest} + {out}) ÷ 2 = {radius} {unit}, el ~radio~.",
    "handout.2.slip": "El lado largo de cada triángulo tiene {error} de más. ¿Cuánto se va su línea a {far}?",
    "handout.2.rule": "Se va: {error} × lado largo ÷ primer lado ÷ segundo lado × {far}.",
    "handout.2.one": "{sides}: se va {off}",
    "handout.2.where": "En M lo ladeado corre la ~estaca~ y cuesta {at_m}. Cerca de un extremo la deja {end}.",
    "handout.2.nothing": "nada",
    "handout.2.off": "fuera del ~arco~",
    "handout.3.round": "Ronda {round}: ~punto medio~ a {half}, ~a escuadra~ {out}, las dos ~cuerdas cortas~ {long}.",
    "handout.3.half": "El ~punto medio~ de la ronda 2 es {word} de la ~cuerda corta~ de la ronda 1.",
    "handout.3.half_word": "la mitad",
    "handout.3.proof": (
        "~Cuerdas cortas~ iguales prueban que M está {square}. No prueban su {length}: mídala dos veces."
    ),
    "handout.3.square": "~a escuadra~",
    "handout.3.length": "~flecha~",
    "handout.4.names": (
        "Con un ~hilo~ de {chord}, a es la mitad: {half} {unit}. s es la ~flecha~, h la ~cuerda corta~."
    ),
    "handout.4.why": "La ~flecha~ crece como la ~cuerda corta~ al cuadrado. La mitad: {half} × {other} = {quarter}.",
    "handout.4.climb": (
        "Con la segunda s de la tabla: la mitad de h es {half}. La siguiente ~cuerda corta~ es √(mitad² + {next}²) = "
        "{long}."
    ),
    "handout.4.more": "Por eso es {longer} que la mitad de h, y la siguiente es {more} de un cuarto.",
    "handout.4.longer": "más larga",
    "handout.4.more_word": "más",
    "handout.4.out": "s",
    "handout.4.bend": "ángulo",
    "handout.4.long": "h = √(a² + s²)",
    "handout.4.past": "h − a",
    "handout.4.next": "h × (h − a) ÷ 2s",
    "handout.4.quarter": "s ÷ 4",
    "handout.4.miss": "falla",
    "handout.5.given": "Por mitades, M queda {wrong} más afuera. Todo lo demás está bien hecho.",
    "handout.5.hint": "Una ~estaca~ puesta sobre un ~hilo~ toma como la mitad del error de cada extremo.",
    "handout.5.one": "{stake} queda {off} fuera",
    "handout.5.count": "~Estacas~ que se llevó: por mitades {halving}, por ~ordenadas~ {ordinates}.",
    "handout.6.given": "El ~hilo~ es de {chord}, la ~flecha~ de {out}.",
    "handout.6.quarters": "Un cuarto de la ~flecha~ es {quarter}. Un cuarto de eso es {again}.",
    "handout.6.up": "Recto hacia arriba, a {away} del ~punto medio~, la parábola está a {parabola}.",
    "handout.6.circle": "Ahí el círculo está a {circle}. Se llevan {gap}.",
    "handout.6.differ": "~A escuadra~ de la ~cuerda corta~, como en la lección 4, al cuarto le falta solo {there}.",
    "handout.6.share": "Ahí la parte exacta es {share}, y no un cuarto.",
    "chalk.title": "Pruébelo con ~hilo~ y gis",
    "chalk.room_feet": "para un piso de 10 ft de ancho",
    "chalk.room_metres": "para un piso de 3 m de ancho",
    "chalk.needs": "Usted necesita",
    "chalk.need_1": "un ~hilo~, una ~cinta~, gis, y cinta adhesiva para las puntas del ~hilo~",
    "chalk.need_2": "una ~escuadra de carpintero~, o una hoja de papel con una esquina recta",
    "chalk.need_3": "dos personas, mejor tres",
    "chalk.need_4": "un listón delgado, o una tira de cartón, para doblarlo por las marcas",
    "chalk.do": "Haga esto",
    "chalk.ends": "Marque A y B a {chord} uno del otro. Tienda el ~hilo~ entre los dos.",
    "chalk.middle": (
        "Marque el ~punto medio~ a {half}. Salga {out} ~a escuadra~ y marque M. Las dos ~cuerdas cortas~ deben dar "
        "{long}."
    ),
    "chalk.second": (
        "Tienda el ~hilo~ de A a M. ~Punto medio~ a {half}, ~a escuadra~ {out}: marque Q1. Lo mismo de M a B: Q2."
    ),
    "chalk.third": "Otra vez en los cuatro ~hilos~. ~Punto medio~ a {half}, ~a escuadra~ {out}.",
    "chalk.join": "Doble el listón por las marcas y trace el ~arco~ con gis.",
    "chalk.prove": (
        "Compruébelo. Desde M pase por el ~punto medio~ y siga {center} más allá del ~hilo~. Desde ahí, un "
        "~hilo~ de {radius} toca todas las marcas."
    ),
    "chalk.quarter": "Pruebe con un cuarto en la ronda 2: {quarter}. Le faltan {miss}. ¿Se nota?",
}
