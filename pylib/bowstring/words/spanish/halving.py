"""The halving worked by hand, and the ways to keep a sagitta square, in Spanish as on US sites."""
# No safety sentence stands here; everything is from memory.

MESSAGES = {
    "level.how_one": (
        "En el ~hilo~, marque el ~punto medio~, a {half} de cada extremo. Ahí mida {sagitta} ~a escuadra~ a la "
        "{hand}. Sin cambiar esa distancia, mueva la ~estaca~ de lado hasta que las dos ~cuerdas cortas~ den "
        "{half_chord}. Eso solo la pone ~a escuadra~: mida {sagitta} dos veces."
    ),
    "level.how": (
        "En cada ~hilo~, marque el ~punto medio~, a {half} de cada extremo. Ahí mida {sagitta} ~a escuadra~ a la "
        "{hand}. Sin cambiar esa distancia, mueva la ~estaca~ de lado hasta que las dos ~cuerdas cortas~ den "
        "{half_chord}. Eso solo la pone ~a escuadra~: mida {sagitta} dos veces."
    ),
    "level.hand": "{hand} (parado en el extremo más cerca de A, mirando al otro)",
    "hand_work.first": (
        "La primera ~flecha~ viene del ~plano~: no hay nada que calcular. También se llama sagita u ~ordenada~ "
        "media; en ~planos~ en inglés, mid-ordinate o rise."
    ),
    "hand_work.first_root": "Con el ~radio~ y ~media cuerda~: raíz cuadrada de ({radius}² - {half}²) = {root} {unit}.",
    "hand_work.first_under": (
        "Primera ~flecha~: {half}² ÷ ({radius} + {root}) = {half}² ÷ {total} = {first} {unit}, a la marca más "
        "cercana {shown}."
    ),
    "hand_work.first_over": (
        "Primera ~flecha~, pasado medio círculo: {radius} + {root} = {first} {unit}, a la marca más cercana {shown}."
    ),
    "hand_work.chord": "~Cuerda corta~: raíz cuadrada de ({half}² + {sagitta}²) = {chord} {unit}.",
    "hand_work.sagitta": (
        "~Flecha~ siguiente: {chord} × ({chord} - {half}) ÷ (2 × {sagitta}) = {chord} × {more} ÷ {twice} = {next} "
        "{unit}, a la marca más cercana {shown}."
    ),
    "hand_work.flat": (
        "~Flecha~ siguiente: {chord} × {sagitta} ÷ (2 × ({chord} + {half})) = {chord} × {sagitta} ÷ {both} = {next} "
        "{unit}, a la marca más cercana {shown}."
    ),
    "square.prefer_slide": "Guíese por las ~cuerdas cortas~; use el triángulo solo cuando no se alcanza un extremo.",
    "square.prefer_square": (
        "Aquí basta una ~escuadra de carpintero~. Si hay tiempo, iguale también las ~cuerdas cortas~."
    ),
    "square.slide": (
        "Mueva la ~estaca~ de lado hasta que las dos ~cuerdas cortas~ den igual ({half_chord}). Si difieren por "
        "una marca:"
    ),
    "square.triangle_whole": (
        "Triángulo {shape}: {along} a lo largo del ~hilo~ desde el ~punto medio~, {out} hacia afuera, lado largo "
        "{long_side}. Con una marca de error:"
    ),
    "square.triangle_computed": (
        "Triángulo: {along} a lo largo del ~hilo~ desde el ~punto medio~, {out} hacia afuera, lado largo "
        "{long_side}. Con una marca de error:"
    ),
    "square.blade": "~Escuadra de carpintero~ sobre el ~hilo~. Con una marca de error en su brazo de {blade}:",
    "square.eye": "A ojo, con {degrees}° de error (práctica común, sin fuente):",
    "square.cost": (
        "la ~estaca~ se corre {aside} a lo largo del ~arco~ y {here} fuera de él. Las ~estacas~ de la ronda "
        "siguiente quedan {next} fuera."
    ),
    "square.cost_last": "la ~estaca~ se corre {aside} a lo largo del ~arco~ y {here} fuera de él.",
    "square.each": (
        "Saque cada ~distancia a escuadra~ con un triángulo {shape} donde sale del ~hilo~. Ponga {along} sobre "
        "la parte más larga del ~hilo~, y {out} hacia afuera; el lado largo da {long_side}."
    ),
    "square.own": "Para {marks}, en vez de eso: {square}.",
    "square.with_triangle": (
        "un triángulo {shape}, {along} a lo largo de la línea hacia {toward}, {out} hacia afuera, lado largo "
        "{long_side}"
    ),
    "square.with_blade": "una ~escuadra de carpintero~, con su brazo de {blade} sobre la línea",
    "square.each_cost": (
        "Una marca ({mark}) mal en el lado largo mueve {stake}, la más alejada ({offset}), {aside} por el ~arco~."
    ),
    "square.each_short": (
        "Para ~distancias a escuadra~ hasta {enough}, ponga contra el ~hilo~ una ~escuadra de carpintero~ de {blade}."
    ),
}
