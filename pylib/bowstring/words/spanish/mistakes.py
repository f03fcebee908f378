"""The common blunders: what was done, what sees it or what does where no check sees it, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "mistake.burned_foot": (
        "Una vez se empezó en la marca de {burn} de la ~cinta~ sin restarla. {mark} necesita {right}, y solo se "
        "midió {wrong}."
    ),
    "mistake.burned_foot.instead": (
        "Diga en voz alta la marca que sostiene, siempre, y mida otra vez desde la punta de la ~cinta~."
    ),
    "mistake.burned_foot_all": (
        "Cada medida larga empezó en la marca de {burn} y no se restó: a todas les falta {short}."
    ),
    "mistake.burned_foot_all.instead": (
        "Diga en voz alta la marca que sostiene, siempre, y mida una otra vez desde la punta de la ~cinta~."
    ),
    "mistake.tenths_as_inches": (
        "Los pies decimales se leyeron siempre como pies y pulgadas: para {mark}, {right} se midió como {wrong}."
    ),
    "mistake.tenths_as_inches.instead": "Revise qué ~cinta~ es: pies en pulgadas, o pies en décimos.",
    "mistake.wrong_leg": (
        "Se puso mal cada triángulo de escuadrar (a lo largo {along}, hacia afuera {out}, lado largo {long_side}). "
        "El lado largo fue sobre el ~hilo~; ninguna medida quedó ~a escuadra~."
    ),
    "mistake.wrong_leg_first": (
        "La primera ~flecha~ se escuadró con un triángulo (a lo largo {along}, hacia afuera {out}, lado largo "
        "{long_side}). El lado largo se puso sobre el ~hilo~; no quedó ~a escuadra~."
    ),
    "mistake.wrong_leg.instead": "Mida otra vez los tres lados del triángulo.",
    "mistake.arc_for_chord": (
        "Se midió el largo del ~arco~ en vez de la ~cuerda del arco~. B queda a {wrong} de {start} en vez de {right}."
    ),
    "mistake.arc_for_chord.instead": "Mida los extremos antes que nada.",
    "mistake.arc_for_gaps": (
        "En cada ~separación~ recta se midió el largo del ~arco~: para {mark}, {wrong} en vez de {right}."
    ),
    "mistake.arc_for_gaps.instead": "Mida también la última ~separación~ hasta B.",
    "mistake.wrong_hand": "Toda la curva se trazó del lado equivocado.",
    "mistake.wrong_hand.instead": "{told}",
    "mistake.wrong_hand.unseen": (
        "NINGUNA ~revisión~ de esta hoja lo detecta: cada distancia sigue dando lo que debe. {told}"
    ),
    "mistake.diameter": "Se midió el diámetro en vez del ~radio~: {wrong} en vez de {right}.",
    "mistake.diameter.instead": "Pregunte si el número del ~plano~ es ~radio~ o diámetro.",
    "mistake.wrong_radius": (
        "Desde el ~centro~ se midió el ~radio~ del ~plano~ ({wrong}); el de las ~estacas~ es {right}."
    ),
    "mistake.wrong_radius.instead": "Mida de la línea del ~plano~ a las ~estacas~: debe dar {offset} en todas partes.",
    "mistake.no_offset": (
        "Se olvidó la ~distancia a escuadra~ de {offset} desde la línea del ~plano~. Sus extremos A0 y B0 se "
        "tomaron por A y B, y lo demás siguió esta hoja."
    ),
    "mistake.no_offset.instead": "Mida de la línea del ~plano~ a A y a B: debe dar {offset}.",
    "mistake.seen.alternate": (
        "El ~hilo~ {pair} lo detecta: de su ~punto medio~ a {end} daría {reads}; debe dar {should}."
    ),
    "mistake.seen.ordinate": (
        "El ~hilo~ A a B lo detecta. A {along} de A, ~a escuadra~ hasta {end} daría {reads}; debe dar {should}."
    ),
    "mistake.seen.cross": "La ~cinta~ de {start} a {end} lo detecta: daría {reads}; debe dar {should}.",
    "mistake.seen.half": "La ~cinta~ de {start} a {end} lo detecta: daría {reads}; debe dar {should}.",
    "mistake.seen.closing": (
        "La ~separación~ que cierra, {start} a {end}, lo detecta: daría {reads}; debe dar {should}."
    ),
    "mistake.seen.gap": "La ~separación~ de {start} a {end} lo detecta: daría {reads}; debe dar {should}.",
    "mistake.seen.external": "La ~cinta~ de la esquina P a {end} lo detecta: daría {reads}; debe dar {should}.",
    "mistake.string_proof": "{start} a {end} lo detecta antes de poner ~estacas~: daría {reads}; debe dar {should}.",
    "mistake.string": "Medir A a B lo detecta antes de poner ~estacas~: daría {reads}; debe dar {should}.",
    "mistake.unseen": "NINGUNA ~revisión~ de esta hoja lo detecta, y {at} quedaría a {miss} de la línea. {instead}",
    "mistake.unseen_along": (
        "NINGUNA ~revisión~ de esta hoja lo detecta. Todas las ~estacas~ están sobre la línea, pero {at} está "
        "corrida {miss} a lo largo. {instead}"
    ),
    "mistake.unseen_within": (
        "NINGUNA ~revisión~ de esta hoja lo detecta. La peor ~estaca~, {at}, quedaría a {miss} de la línea, y se "
        "permite {tolerance}."
    ),
    "mistake.later": "Ninguna ~revisión~ posterior lo detectaría, y {at} quedaría a {miss} de la línea.",
    "mistake.later_along": (
        "Ninguna ~revisión~ posterior lo detectaría. Todas las ~estacas~ están sobre la línea, pero {at} está "
        "corrida {miss} a lo largo."
    ),
    "mistake.later_within": (
        "Ninguna ~revisión~ posterior lo detectaría. La peor ~estaca~, {at}, quedaría a {miss} de la línea, y se "
        "permite {tolerance}."
    ),
    "mistake.slid": "Su propio paso lo muestra: {start} a {end} daría {reads}; debe dar {should}.",
    "mistake.draw.title": "Y si pasa: las ~estacas~ después de una equivocación",
    "mistake.draw.desc": "{text} {told} {hand}",
    "mistake.draw.each": "{name} quedaría a {shown} de su lugar.",
    "mistake.draw.square": "cuadro: donde va la ~estaca~",
    "mistake.draw.cross": "cruz: donde quedaría",
    "mistake.draw.off": "a {shown}",
    "mistake.draw.larger": "La distancia del cuadro a la cruz se dibuja {factor} veces más grande.",
    "mistake.draw.smaller": "La distancia del cuadro a la cruz está recortada: es {factor} veces más larga.",
    "mistake.draw.some": "No se dibujan todas las ~estacas~.",
}
