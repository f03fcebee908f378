"""The construction on a wall: what stands over each picture, on it, and what is said, in Spanish as on US sites."""

# No safety sentence stands here; everything is from memory.

MESSAGES = {
    "wall.title": "En la pared",
    "wall.job": "Este trabajo",
    "wall.job_strokes": "El trabajo, raya por raya",
    "wall.by_halving": "por mitades",
    "wall.chord": "~hilo~",
    "wall.mid_ordinate": "~flecha~",
    "wall.drawn_steeper": "dibujado con más curva de la que tiene",
    "wall.drawn_flatter": "dibujado con menos curva de la que tiene",
    "wall.half_of_h": "mitad de h",
    "wall.next_word": "sig.",
    "wall.stopped": "Este trabajo está detenido.",
    "wall.stopped_told": "Resuelva primero lo que lo detiene: luego se puede mostrar.",
    "wall.got": "Una ~estaca~ de este trabajo quedó en otro lugar.",
    "wall.got_told": "Las que siguen llevan números propios: están en las tarjetas.",
    "wall.not_yet": "Este trabajo todavía no tiene ~arco~.",
    "wall.not_yet_told": "Escriba dos números del ~arco~. Las lecciones sirven sin eso.",
    "wall.no_figure": "Las lecciones están en las teclas de la 1 a la 6.",
    # the ends
    "wall.ends": "Lo que tenemos: dos ~estacas~ y un ~hilo~ bien tirante.",
    "wall.ends.told": (
        "Dos ~estacas~, un ~hilo~ de {chord} entre ellas, el ~arco~ que queremos en puntos, y su ~centro~ fuera "
        "de alcance."
    ),
    "wall.ends.stake": "La ~estaca~ {end} ya está puesta.",
    "wall.ends.other": "La ~estaca~ {end} también.",
    "wall.ends.string": "Un ~hilo~ de una a otra, bien tirante.",
    "wall.ends.number": "Mídalo dos veces: {chord}.",
    "wall.ends.arc": "El ~arco~ de puntos es el que queremos.",
    "wall.ends.wanted": "el ~arco~ que queremos",
    "wall.ends.center": "Desde el ~centro~ no se puede girar: ahí nadie puede pararse.",
    "wall.ends.away": "su ~centro~: a {away} del ~hilo~, y nunca vamos ahí",
    "wall.ends.inside": "su ~centro~: {away} más allá del ~hilo~, y nunca vamos ahí",
    "wall.ends.middle": "su ~centro~: el ~punto medio~ de este mismo ~hilo~",
    # round 1
    "wall.first": "~Punto medio~. ~A escuadra~ {out}. Clave M.",
    "wall.first.told": (
        "Desde el ~punto medio~ del ~hilo~, a {half} de cada extremo, {out} ~a escuadra~ hasta M. Las dos "
        "~cuerdas cortas~ dan {long}."
    ),
    "wall.first.halves": "La mitad del ~hilo~ es {half}. Doble la ~cinta~, o mida desde los dos extremos.",
    "wall.first.middle": "Este es el ~punto medio~. De aquí salimos ~a escuadra~.",
    "wall.first.arrow": "¿De qué lado? Del lado de la curva.",
    "wall.first.number": "La ~flecha~ es de {out}.",
    "wall.first.drive": "Clave M.",
    "wall.first.short": "Mida las dos ~cuerdas cortas~, de M a cada extremo. ¿Por qué las dos?",
    "wall.first.same": "Las dos dan igual: M está ~a escuadra~ del ~punto medio~.",
    "wall.first.square": "~Cuerdas cortas~ iguales: M está ~a escuadra~.",
    "wall.first.reads": "Deben dar {long}.",
    "wall.first.twice": "Casi no prueban la ~flecha~: {inch} de más se nota solo {seen}. Mida {out} dos veces.",
    "wall.first.tape_twice": "Casi no prueban el largo: mida {out} dos veces.",
    # round 2
    "wall.next": "Ronda 2: el mismo triángulo, en la mitad de h.",
    "wall.next.told": (
        "El triángulo delgado en M tiene la forma del que está sobre la mitad de la ~cuerda corta~. Por eso {stake} "
        "queda a {out}."
    ),
    "wall.next.half": "Vea una sola mitad, de {end} a M.",
    "wall.next.string": "La ~cuerda corta~ h es el siguiente ~hilo~.",
    "wall.next.swing": "Sujete la ~cinta~ en {end} y gire h hasta el primer ~hilo~.",
    "wall.next.slim": "Cae {past} más allá del ~punto medio~. Así sale un triángulo delgado.",
    "wall.next.same": (
        "{stake} hace el mismo triángulo sobre la mitad de h: los dos giran la mitad del ángulo en {end}."
    ),
    "wall.next.stake": "Así que {stake} va aquí, ~a escuadra~ del ~punto medio~ de h.",
    "wall.next.sides": "a es {half}, s es {out}, h es {long}.",
    "wall.next.like": "sig. ÷ mitad de h = (h − a) ÷ s",
    "wall.next.proportion": "Misma forma, misma proporción: la siguiente es a la mitad de h como h menos a es a s.",
    "wall.next.formula": "sig. = h × (h − a) ÷ (2 × s)",
    "wall.next.solved": "Despeje la siguiente: h por h menos a, entre dos veces s.",
    "wall.next.sum": "{long} por {past}, entre {twice}.",
    "wall.next.result": "Son {next} {unit}: en la ~cinta~ {out}.",
    "wall.next.both": "La otra mitad lleva el mismo número: {stake} y {other}.",
    # the ratio
    "wall.rounds": "Cada vez un cuarto, y un poco más.",
    "wall.rounds.told": (
        "Las ~flechas~ de las rondas a una escala: cada una es un poco más de un cuarto de la anterior."
    ),
    "wall.rounds.scale": "todas a una escala",
    "wall.rounds.first": "Ronda {round}: {out}.",
    "wall.rounds.one": "La ronda {round} dio {out}.",
    "wall.rounds.ratio": "Es el número anterior por {share}. ¿Quién dijo un cuarto?",
    "wall.rounds.squared": "Un ~hilo~ de la mitad sube mitad × mitad: un cuarto.",
    "wall.rounds.quarter": "De ahí sale el cuarto: la mitad del ~hilo~, y la mitad al cuadrado es un cuarto.",
    "wall.rounds.formula": "Pero h es más larga que a: exacto, 1 ÷ (4 cos²({angle}° ÷ 8)) = {share}",
    "wall.rounds.exact": "Pero la ~cuerda corta~ pasa de la mitad del ~hilo~. Con {angle} grados es {share} exacto.",
    # the stakes
    "wall.stakes": "{rounds} números, {stakes} ~estacas~, un ~arco~ exacto.",
    "wall.stakes.one": "Un número, una ~estaca~, un ~arco~ exacto.",
    "wall.stakes.told": (
        "El ~arco~ terminado con sus {stakes} ~estacas~ entre los extremos, de {rounds} rondas por mitades."
    ),
    "wall.stakes.round_1": "Ronda 1: {out}, una vez.",
    "wall.stakes.round_2": "Ronda 2: {out}, en los dos ~hilos~.",
    "wall.stakes.round_3": "Ronda 3: {out}, en los cuatro. ¿Quién lo vio venir?",
    "wall.stakes.round_4": "Ronda 4: {out}, en los ocho.",
    "wall.stakes.board": "Doble la ~tabla~ a lo largo de ellas.",
    "wall.stakes.driven": "Cada ~estaca~ está sobre el ~arco~.",
    "wall.stakes.numbers": "Eso es todo lo que se midió.",
    "wall.stakes.to": "a {stakes}",
    "wall.stakes.more": "y así hasta la ronda {last}",
    # the script's
    "wall.list": "Oprima un número.",
    "wall.keys": "→ sigue. ← vuelve. L: lista. N: números. H: ejercicios. F: pantalla completa. B: blanco. Esc: salir.",
    "wall.numbers": "Números propios",
    "wall.full_screen": "Pantalla completa",
    "wall.to_job": "Volver al trabajo",
    "wall.own": "Los números del grupo",
    "wall.own_show": "Mostrarlos",
    "wall.own_keep": "Guardar como trabajo",
    "wall.own_back": "Los números de este trabajo",
    "wall.own_enter": "Intro los muestra. Esc sale. El trabajo queda como está.",
    "wall.own_job": "Números del grupo",
    "wall.own_missing.wrong": "Falta un número: {name}.",
    "wall.own_missing.remedy": "Escriba los dos.",
    "wall.own_round.wrong": "Es casi un círculo entero: no se puede dibujar sobre su ~hilo~.",
    "wall.own_round.remedy": "Use una ~flecha~ de {most} a lo más, o un ~hilo~ más largo.",
    "wall.handout": "Ejercicios",
    "wall.try_it": "Pruébelo con ~hilo~ y gis",
    "wall.stroke_of": "Raya {stroke} de {count}",
    "wall.progress": "rayas mostradas",
}
