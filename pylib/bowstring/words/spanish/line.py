"""What can be wrong with a line of straights and arcs, and what it leaves open, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "line.with_arc.wrong": "El trabajo tiene un ~arco~ y también una línea.",
    "line.with_arc.remedy": "Dé uno de los dos. Un ~arco~ puede ser un tramo de la línea.",
    "line.beside.wrong": "En una línea, cada ~arco~ lleva lo suyo.",
    "line.beside.remedy": "Delo en el tramo de ese ~arco~.",
    "line.no_arc.wrong": "La línea no tiene ningún ~arco~.",
    "line.no_arc.remedy": "Agregue un ~arco~: las rectas solas no necesitan ~trazo~.",
    "line.at_no_arc.wrong": "Este tramo de la línea no es un ~arco~.",
    "line.at_no_arc.remedy": "Tome uno de los ~arcos~: {arcs}.",
    "line.at_alone.wrong": "El trabajo no tiene línea, así que no hay tramo que escoger.",
    "line.at_alone.remedy": "Quite esto, o dé la línea.",
    "line.empty.wrong": "La línea no tiene tramos.",
    "line.empty.remedy": "Dé los tramos, rectas y ~arcos~, en el orden en que se caminan.",
    "line.piece_kind.wrong": "Un tramo es una recta o un ~arco~.",
    "line.piece_kind.remedy": (
        'Dé {{"straight": "20 ft"}}, o {{"arc": {{"radius": "31 ft", "central_angle": 70}}, "turn": "left"}}.'
    ),
    "line.no_turn.wrong": "Este ~arco~ no dice si dobla a la izquierda o a la derecha.",
    "line.no_turn.remedy": "Dé el lado como lo ve quien camina por la línea.",
    "line.turn_of_straight.wrong": "Una recta no dobla.",
    "line.turn_of_straight.remedy": "Quite el lado, o dé el ángulo del quiebre que tiene antes.",
    "line.turn_and_points.wrong": "Lado según los tres puntos: {points}. Lado que dice este ~arco~: {turn}.",
    "line.turn_and_points.remedy": "Revise el orden de los puntos, o quite el lado.",
    "line.first_kink.wrong": "Antes del primer tramo no hay nada: no puede llevar quiebre.",
    "line.first_kink.remedy": "Quite el quiebre.",
    "line.kink_sharp.wrong": "Con un quiebre de más de {most} la línea casi se regresa.",
    "line.kink_sharp.remedy": "Dé cuánto se desvía de seguir recto, no el ángulo entre los dos tramos.",
    "line.kink_hands.wrong": "{typed} y lo que está junto no dicen el mismo lado del quiebre.",
    "line.kink_hands.remedy": "Diga izquierda o derecha una sola vez, y sin signo menos.",
    "line.no_radius.wrong": "Tramo {piece}, borde: {hand}. La losa llega al ~centro~: el ~radio~ es de {radius}.",
    "line.no_radius.remedy": "Dé menos ancho, o lleve la línea por el otro borde.",
    "line.no_taper.wrong": "La losa cambia de ancho, y la línea tiene varios tramos.",
    "line.no_taper.remedy": "Quite el ancho en B: la losa de una línea tiene un solo ancho.",
    "line.no_fill.wrong": "Una losa que llena la curva tiene un solo ~arco~, y esta línea tiene varios tramos.",
    "line.no_fill.remedy": "Dé un ancho a la losa, o trace el ~arco~ solo.",
    "line.no_fill_sides.wrong": (
        "Una losa que llena la curva tiene un solo ~arco~ y lados rectos propios: sin tramos rectos."
    ),
    "line.no_fill_sides.remedy": "Quite los tramos rectos. Dé los lados en “{panel}”.",
    "line.no_room.wrong": "Tramo {piece}, borde: {hand}. No cabe: los tramos son cortos para ese ancho.",
    "line.no_room.remedy": "Dé menos ancho o tramos más largos, o ponga un ~arco~ en vez del quiebre.",
    # a question that stops the sheet
    "line.kink_at_end": (
        "No construya todavía: en {end} hay un quiebre y la recta no es ~tangente~ a este ~arco~. Parta de los dos "
        "extremos."
    ),
    "line.arc_at_end": (
        "En {end} el tramo {piece} es un ~arco~. Mire por la ~tangente~, nunca a lo largo de ese ~arco~."
    ),
    "line.kink_asked": (
        "Caminando por la línea, ¿el tramo {piece} se quiebra a la izquierda o a la derecha en {station}?"
    ),
}
