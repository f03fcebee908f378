"""Words on the drawings, and what a person is told who can't see them, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES: dict[str, str] = {
    "draw.stopped": "Todavía no construya con esto.",
    "draw.some_levels": "Las ~estacas~ después de la ronda {level} no se dibujan.",
    "draw.at_left": "A se dibuja a la izquierda, con la curva arriba del ~hilo~.",
    "draw.at_right": "A se dibuja a la derecha, con la curva arriba del ~hilo~.",
    # labels
    "draw.chord": "~cuerda del arco~ {shown}",
    "draw.sagitta": "~flecha~",
    "draw.sagitta.shown": "~flecha~ {shown}",
    "draw.half.each": "cada mitad {shown}",
    "draw.half_chord.both": "las dos ~cuerdas cortas~ {shown}",
    "draw.half_chord.two": "~cuerdas cortas~ {first} y {second}",
    "draw.half_chords": "~Cuerdas cortas~, de los extremos del ~hilo~ a {name}: las dos {shown}.",
    "draw.centre": "~centro~",
    "draw.tangents": "~tangentes~ en los extremos",
    "draw.straights.corner": "rectas, se juntan en la esquina P",
    "draw.straights.off": "rectas hacia la esquina P, cortadas: P queda fuera del dibujo",
    "draw.straights.one_end": "recta por S y {start}; ~a escuadra~ de ella en F hasta {end}",
    "draw.parallel": "~hilo~ {start} a {end}, paralelo a A-B, {shown} más allá",
    "draw.parallel.behind": "~hilo~ {start} a {end}, paralelo a A-B, {shown} detrás",
    "draw.obstacle.row": "{number} {name}",
    "draw.obstacle.away": "Estorban, pero quedan fuera de este dibujo: {names}.",
    "draw.to": "a {name}",
    "draw.arc": "~arco~, ~radio~ {radius}",
    "draw.arc.staked": "~arco~ de las ~estacas~, ~radio~ {radius}",
    "draw.arc.drawn": "~arco~ del ~plano~, ~radio~ {radius}",
    "draw.arc.gap": "Entre el ~arco~ de las ~estacas~ y el del ~plano~ hay {shown}.",
    "draw.arc.gap.forced": "Entre el ~arco~ de las ~estacas~ y el del ~plano~ hay {shown}: eso no está a escala.",
    "draw.end": "{name}: {landmark}",
    "draw.scale.number.ft": "{number} ft",
    "draw.scale.number.in": "{number} in",
    "draw.scale.number.m": "{number} m",
    "draw.scale.number.mm": "{number} mm",
    "draw.scale": "Dibujado a escala.",
    "draw.stretch": "Curva dibujada {factor}x para que se vea; la barra solo vale a lo largo de la ~cuerda del arco~.",
    "draw.stretch.level": "Curva dibujada {factor}x para que se vea.",
    "draw.low.gap": "La distancia entre los ~arcos~ no está a escala.",
    "draw.not_to_scale": "Sin escala.",
    # plan
    "draw.plan.title": "Planta del ~arco~",
    "draw.plan.title.named": "Planta del ~arco~: {title}",
    "draw.plan.desc": (
        "{hand} ~Cuerda del arco~ {chord}, ~flecha~ {sagitta} en su ~punto medio~. ~Estacas~ de A a B: {names}."
    ),
    "draw.plan.desc.end": " {name} está en: {landmark}.",
    "draw.plan.desc.corner": "Las rectas por {start} y {end} se juntan en la esquina P.",
    "draw.plan.desc.corner.off": (
        "Las rectas por {start} y {end} están cortadas: la esquina P, donde se juntan, queda fuera del dibujo."
    ),
    "draw.plan.desc.one_end": "La recta pasa por S y {start}; desde F sobre ella, {end} se saca ~a escuadra~.",
    # one level
    "draw.level.title": "Ronda {level}: ~cuerdas del arco~ y ~flechas~",
    "draw.level.desc": (
        "{hand} {strings} de ~estaca~ a ~estaca~. Desde el ~punto medio~ de cada uno, ~a escuadra~ hacia la curva, "
        "una ~flecha~ da {names}."
    ),
    "draw.level.strings.one": "Un ~hilo~",
    "draw.level.strings.many": "{count} ~hilos~",
    "draw.level.detail.one": "El ~hilo~ de {start} a {end}, sin escala",
    "draw.level.detail.two": "Uno de 2 ~hilos~, {start} a {end}, sin escala; el otro da igual",
    "draw.level.detail.many": "Uno de {count} ~hilos~, {start} a {end}, sin escala; los otros dan igual",
    "draw.level.detail.differ": "Los ~hilos~ son distintos. Tome los números de cada uno:",
    "draw.level.each": "{name}: {numbers}",
    # keeping square
    "draw.triangle.title": "Ronda {level}: la ~flecha~ ~a escuadra~",
    "draw.triangle.slide.desc": (
        "El ~hilo~ de {start} a {end} con su ~punto medio~ marcado, y {name}, a {sagitta} de él."
    ),
    "draw.triangle.found": "Como quedó: ~cuerdas cortas~ {first} y {second}.",
    "draw.triangle.slide.alike": "Mueva la ~estaca~ de lado hasta que las dos ~cuerdas cortas~ den igual.",
    "draw.triangle.alone": "Solo para {name}: los otros ~hilos~ de esta ronda tienen sus propios números.",
    "draw.triangle.slide": "Mueva la ~estaca~ de lado hasta que las dos ~cuerdas cortas~ den {half_chord}.",
    "draw.triangle.triangle.desc": (
        "Un triángulo ~a escuadra~ con su esquina en el ~punto medio~ del ~hilo~ de {start} a {end}. Mide {along} "
        "sobre el ~hilo~, {out} hacia afuera, y su lado largo {long_side}. La ~estaca~ {name} va en la línea del lado "
        "hacia afuera, a {sagitta} del ~hilo~."
    ),
    "draw.triangle.along": "sobre el ~hilo~ {shown}",
    "draw.triangle.out": "hacia afuera {shown}",
    "draw.triangle.out.stake": "hacia afuera hasta {name} {shown}",
    "draw.triangle.long_side": "lado largo {shown}",
    "draw.triangle.square": "Esquina de la ~escuadra de carpintero~ en el ~punto medio~, un brazo sobre el ~hilo~.",
    "draw.triangle.square.desc": (
        "Una ~escuadra de carpintero~ con su esquina en el ~punto medio~ del ~hilo~ de {start} a {end}. Un brazo "
        "va sobre el ~hilo~; el otro apunta a {name}, a {sagitta}."
    ),
    "draw.triangle.whole": "triángulo {whole}",
    # the story stick
    "draw.stick.title": "Listón de medidas",
    "draw.stick.desc": "Un listón con cada marca medida desde su punta cero: {marks}.",
    "draw.stick.zero": "punta cero",
    "draw.stick.mark": "{label}: {shown}",
    "draw.stick.stale": (
        "{names}: fuera del ~arco~ como quedó. Las ~flechas~ que siguen llevan sus números en los pasos; no las "
        "tome de este listón."
    ),
    "draw.stick.note": "Mida cada marca desde la punta cero.",
    "draw.way.title": "Cómo se ponen las ~estacas~",
    "draw.way.desc": "{hand} El ~hilo~ A a B y el ~arco~, con cada línea que se mide.",
    "draw.way.one": "Líneas gruesas: lo que pone {stake}, con sus números. Líneas delgadas: lo mismo para las demás.",
    "draw.way.deflection": "{angle} desde la ~tangente~",
    "draw.way.cut": "Una línea con zigzag sigue fuera del dibujo.",
    "draw.scatter.title": "Dónde pueden quedar las ~estacas~",
    "draw.scatter.desc": (
        "Una elipse en cada ~estaca~ abarca 19 de 20 ~trazos~. La más ancha a través del ~arco~ está en {at}: una "
        "desviación estándar es {across}."
    ),
    "draw.scatter.enlarged": "Cada elipse abarca 19 de 20 ~trazos~, agrandada {factor} veces respecto al ~arco~.",
    "draw.some_stakes": "Solo se dibujan algunas ~estacas~.",
}
