"""The six lessons and their exercises, in Spanish as on US sites."""

# No safety sentence stands here; everything is from memory.

MESSAGES = {
    "lesson.number": "Lección {number}",
    "lesson.exercise": "Ahora usted: calcúlelo antes de la siguiente raya.",
    "lesson.guess": "Léalo y anote su respuesta.",
    "lesson.step": "{step}",
    "lesson.comes_out": "Da {answer}.",
    # 1
    "lesson.1.name": "Arco, cuerda y ~flecha~",
    "lesson.1.question": "Dos medidas de un arco: ¿qué tan grande es su círculo?",
    "lesson.1.answer": "La cuerda y la ~flecha~ dan el ~radio~.",
    "lesson.1.told": (
        "El arco de flechas es el ~arco~ y su cuerda es la ~cuerda del arco~; la ~flecha~ se llama igual. Las "
        "dos dan el ~radio~, {radius}."
    ),
    "lesson.1.bow": "Este es un arco de flechas. En el ~plano~ es un ~arco~.",
    "lesson.1.bow_word": "arco de flechas = ~arco~",
    "lesson.1.string": "Su cuerda es la ~cuerda del arco~.",
    "lesson.1.string_word": "cuerda = ~cuerda del arco~",
    "lesson.1.arrow": (
        "Su ~flecha~ sale ~a escuadra~ del ~punto medio~ de la cuerda. Sagita viene del latín y quiere decir flecha."
    ),
    "lesson.1.arrow_word": "~flecha~",
    "lesson.1.sagitta_word": "= sagita",
    "lesson.1.job_word": "En la obra decimos ~flecha~. En los ~planos~ en inglés dice mid-ordinate.",
    "lesson.1.on_the_job": "En ~planos~ en inglés: mid-ordinate.",
    "lesson.1.circle": "Todo ~arco~ es parte de un círculo entero.",
    "lesson.1.halves": "La ~flecha~ parte la cuerda en dos mitades de {half}.",
    "lesson.1.out": "La ~flecha~ es de {out}.",
    "lesson.1.guess": "La línea de la ~flecha~ sigue hasta el otro lado del círculo. ¿Cuánto mide lo que falta?",
    "lesson.1.crossed": "Izquierda por derecha es arriba por abajo: {half} por {half} es {out} por {down}.",
    "lesson.1.radius": "{down} más {out} es la línea completa. La mitad es el ~radio~, {radius}.",
    "lesson.1.sum": "({down} + {out}) ÷ 2 = {radius}: ~radio~ {shown}",
    "lesson.1.exercise": "Un ~hilo~ de {chord} tiene una ~flecha~ de {out}.",
    "lesson.1.exercise_then": "¿Cuánto mide el ~radio~?",
    # 2
    "lesson.2.name": "3-4-5, 5-12-13, 8-15-17",
    "lesson.2.question": "El lado largo {error} de más: ¿cuánto se ladea la línea?",
    "lesson.2.answer": "Escuadre con el triángulo más grande que quepa.",
    "lesson.2.told": (
        "Cuatro triángulos sobre un ~hilo~, cada uno con el lado largo un poco de más. El más grande se ladea menos."
    ),
    "lesson.2.string": "Sacamos la escuadra de este ~hilo~, con el lado largo {error} de más.",
    "lesson.2.slip": "El lado largo tiene {error} de más. Lo ladeado a {far} va dibujado {times} veces más grande.",
    "lesson.2.sides": "El primer lado va sobre el ~hilo~, el segundo ~a escuadra~.",
    "lesson.2.one": "Con {sides} la línea se va {off} a {far}. Adivine la siguiente.",
    "lesson.2.big": "Mientras más grande el triángulo, menos se ladea por un error chico.",
    "lesson.2.cost": "¿Qué cuesta que se ladee? Depende de dónde.",
    "lesson.2.cost_told": (
        "En M lo ladeado corre la ~estaca~ por el ~arco~ y no cuesta nada. Cerca de un extremo la saca del ~arco~."
    ),
    "lesson.2.arc": "El ~arco~ sobre su ~hilo~. Ahora la línea se ladea.",
    "lesson.2.at_middle": "En M corre la ~estaca~ {slid} por el ~arco~. Eso cuesta {off}.",
    "lesson.2.middle_word": "En M: se corre {slid}, fuera {off}",
    "lesson.2.at_end": "Cerca del extremo se corre {slid}, y la ~estaca~ queda {off} fuera del ~arco~.",
    "lesson.2.end_word": "Cerca del extremo: se corre {slid}, fuera {off}",
    "lesson.2.exaggerated": "lo ladeado, dibujado mucho más grande",
    "lesson.2.exercise": "Escuadre con {sides}, con el lado largo {error} de más.",
    "lesson.2.exercise_then": "¿Cuánto se va la línea a {far}?",
    "lesson.2.sum": "error × lado largo ÷ primer lado: {error} × {long} ÷ {along}",
    # 3
    "lesson.3.name": "Por mitades",
    "lesson.3.question": "Ronda 1, ronda 2: ¿qué es igual?",
    "lesson.3.answer": "Cada ronda es igual, en un ~hilo~ más corto.",
    "lesson.3.told": (
        "Dos rondas con las mismas marcas: el ~punto medio~, ~a escuadra~, y dos ~cuerdas cortas~ que dan igual."
    ),
    "lesson.3.round": "Ronda {round}",
    "lesson.3.round_1": "La ronda 1 va de A a B.",
    "lesson.3.numbers_1": "Su ~punto medio~ está a {half}. Su ~flecha~ es de {out}.",
    "lesson.3.round_2": "La ronda 2 va de A a M. ¿Qué es igual?",
    "lesson.3.numbers_2": "Su ~punto medio~ está a {half}. Su ~flecha~ es de {out}.",
    "lesson.3.half_of_it": "La mitad de la ~cuerda corta~ es el ~punto medio~ del siguiente ~hilo~.",
    "lesson.3.half_word": "la mitad",
    "lesson.3.alike": "~Punto medio~, ~a escuadra~ al mismo lado, ~cuerdas cortas~ iguales: en cada ronda.",
    "lesson.3.middle_word": "~punto medio~",
    "lesson.3.off_word": "~a escuadra~, mismo lado",
    "lesson.3.same_word": "~cuerdas cortas~ iguales",
    "lesson.3.proof_question": "Las dos ~cuerdas cortas~ dan igual. ¿Qué prueba eso?",
    "lesson.3.proof_answer": "Si dan igual, está ~a escuadra~. El largo no lo prueban.",
    "lesson.3.proof_told": (
        "Con la ~estaca~ corrida a un lado, las ~cuerdas cortas~ salen muy distintas. Con la ~estaca~ más afuera "
        "casi no cambian."
    ),
    "lesson.3.proof_right": "Donde va M, las dos ~cuerdas cortas~ dan {long}.",
    "lesson.3.proof_aside": "Si queda corrida {shown}, se llevan {apart}. Eso se ve.",
    "lesson.3.proof_square": "Corrida {shown}: las dos se llevan {apart}",
    "lesson.3.proof_far": "Si queda {shown} más afuera, las dos dan solo {same} de más. Eso casi no se ve.",
    "lesson.3.proof_length": "{shown} más afuera: las dos igual, {same} de más",
    "lesson.3.proof_twice": "Por eso la ~flecha~ se mide dos veces.",
    "lesson.3.exercise": "Ronda 1: ~hilo~ {chord}, ~flecha~ {out}, ~cuerdas cortas~ {long}.",
    "lesson.3.exercise_then": (
        "Ronda 2: ¿a cuánto está el ~punto medio~, cuánto sale, y cuánto dan las dos ~cuerdas cortas~?"
    ),
    "lesson.3.step_middle": "~punto medio~ a {middle}",
    "lesson.3.step_off": "~a escuadra~ {out}",
    "lesson.3.comes_out": "{middle}; {out}; {long}",
    # 4
    "lesson.4.name": "Por qué un cuarto, y por qué no exacto",
    "lesson.4.question": "¿Qué parte de la primera ~flecha~ es la siguiente?",
    "lesson.4.answer": "Un cuarto si hay poca curva; más si hay mucha.",
    "lesson.4.told": (
        "Tres ~arcos~ sobre un ~hilo~. La siguiente ~flecha~ es un cuarto de la primera, y más con más curva."
    ),
    "lesson.4.flat": "Casi recto, {angle} grados de curva.",
    "lesson.4.job": "Con más curva: {angle} grados.",
    "lesson.4.semi": "Medio círculo. ¿Todavía tomaría un cuarto?",
    "lesson.4.flat_word": "casi recto",
    "lesson.4.job_word": "con más curva",
    "lesson.4.semi_word": "medio círculo",
    "lesson.4.half": "La ~flecha~ crece como la ~cuerda corta~ al cuadrado. Con la mitad de largo da un cuarto.",
    "lesson.4.half_word": "s = h × h ÷ 2R. Media h da mitad × mitad: un cuarto.",
    "lesson.4.climb": "Pero la siguiente ~cuerda corta~ sube de A a Q1. Es más larga que la mitad de h.",
    "lesson.4.climb_word": "Pero la siguiente ~cuerda corta~ sube: pasa de la mitad de h.",
    "lesson.4.exact": "Exacto: uno entre cuatro veces el coseno al cuadrado de un octavo del ángulo.",
    "lesson.4.exact_word": "Exacto: sig. = s ÷ (4 cos²(ángulo ÷ 8))",
    "lesson.4.slider": "Dóblelo: ¿cuánto falla un cuarto, con {chord}?",
    "lesson.4.slider_answer": "A más curva, más le falta al cuarto.",
    "lesson.4.slider_told": (
        "Un control dobla el ~arco~ sobre un ~hilo~ de {chord}. La regla del cuarto falla cada vez más."
    ),
    "lesson.4.track": "De casi recto a más de medio círculo, siempre con un ~hilo~ de {chord}.",
    "lesson.4.bend": "Arrastre el control, u oprima los corchetes. S lo recorre todo.",
    "lesson.4.mark_right": "{angle}°",
    "lesson.4.mark_half": "{angle}°: medio círculo",
    "lesson.4.mark_job": "{angle}°: aquí",
    "lesson.4.graph": "{most} al final",
    "lesson.4.row_bend": "ángulo {angle}°, parte {share}",
    "lesson.4.row_miss": "es lo que le falta al cuarto",
    "lesson.4.row_exact": "siguiente, exacta: {exact}",
    "lesson.4.row_quarter": "un cuarto: {quarter}",
    "lesson.4.exercise": "Un ~hilo~ de {chord} tiene una ~flecha~ de {out}.",
    "lesson.4.exercise_then": "¿Cuánto le falta a un cuarto para llegar a la siguiente?",
    "lesson.4.step_bend": "ángulo {angle}°, parte {share}",
    "lesson.4.step_next": "siguiente {exact}, un cuarto {quarter}",
    # 5
    "lesson.5.name": "Errores que se pasan, errores que no",
    "lesson.5.question": "M quedó {wrong} más afuera. ¿Quién más está mal?",
    "lesson.5.answer": "Por mitades el error se pasa. Por ~ordenadas~ no.",
    "lesson.5.told": "M quedó {wrong} más afuera. Por mitades se lleva {count} ~estacas~, por ~ordenadas~ ninguna.",
    "lesson.5.halving": "Por mitades, con M {wrong} más afuera y todo lo demás bien hecho.",
    "lesson.5.halving_word": "Por mitades",
    "lesson.5.count": "Una ~estaca~ mala se llevó {count}.",
    "lesson.5.one_bad": "1 mala,",
    "lesson.5.dragged": "{count} movidas",
    "lesson.5.ordinates": "Por ~ordenadas~ cada ~estaca~ se mide solo desde el ~hilo~. M otra vez {wrong} más afuera.",
    "lesson.5.ordinates_word": "~Ordenadas~",
    "lesson.5.none": "Una ~estaca~ mala, y no se llevó ninguna.",
    "lesson.5.check": "¿Qué lo habría mostrado? De A a M da {reads} y no {right}.",
    "lesson.5.check_word": "Su ~revisión~ casi no lo muestra: A a M da {reads}, no {right}.",
    "lesson.5.larger": "errores {times} veces más grandes",
    "lesson.5.exercise": "Por mitades, tres rondas: Q1 queda {off} más afuera.",
    "lesson.5.exercise_then": "¿Qué otras ~estacas~ quedan mal? ¿Y por ~ordenadas~?",
    "lesson.5.step_moved": "Por mitades solo sus vecinas {stakes}: {off} cada una",
    "lesson.5.step_ordinates": "Por ~ordenadas~ ninguna",
    # 6
    "lesson.6.name": "Parábola contra círculo",
    "lesson.6.question": "Cuartos, siempre derecho hacia arriba: ¿da un círculo?",
    "lesson.6.answer": "Cuartos derecho hacia arriba dan una parábola.",
    "lesson.6.told": (
        "Los cuartos medidos derecho hacia arriba caen en una parábola. El círculo queda afuera, dibujado {times} "
        "veces más lejos de lo que está."
    ),
    "lesson.6.string": "El ~hilo~, y {out} hacia arriba en el ~punto medio~.",
    "lesson.6.quarter": "Un cuarto de eso, {out}, derecho hacia arriba desde el ~punto medio~ de la ~cuerda corta~.",
    "lesson.6.again": "Un cuarto de eso, {out}, otra vez derecho hacia arriba.",
    "lesson.6.parabola": "Todos caen en una parábola.",
    "lesson.6.parabola_word": "parábola",
    "lesson.6.circle": "El círculo queda afuera. La diferencia se dibuja {times} veces más grande de lo que es.",
    "lesson.6.circle_word": "círculo",
    "lesson.6.apart": "A medio camino del extremo se llevan {gap}.",
    "lesson.6.most": "Lo más que se llevan es {gap}.",
    "lesson.6.scale": "Ojo con la escala: solo la diferencia se dibuja {times} veces más grande.",
    "lesson.6.scale_word": "La diferencia se dibuja {times} veces más grande de lo que es.",
    "lesson.6.differ": "Aquí {here}, y en la lección 4 {there}. ¿Por qué?",
    "lesson.6.differ_word": "Aquí {here} a medio camino, y en la lección 4 {there}. ¿Por qué?",
    "lesson.6.because": (
        "Allá salimos ~a escuadra~ de la ~cuerda corta~. Derecho hacia arriba va sesgado, y un cuarto no llega tan "
        "lejos."
    ),
    "lesson.6.because_word": "Allá, ~a escuadra~. Derecho hacia arriba va sesgado: no llega tan lejos.",
    "lesson.6.road": "Un camino sobre una loma es una parábola. Ahí un cuarto es exacto.",
    "lesson.6.road_word": "Un camino sobre una loma es parábola: ahí un cuarto es exacto.",
    "lesson.6.exercise": "Un ~hilo~ de {chord} tiene una ~flecha~ de {out}.",
    "lesson.6.exercise_then": "A {away} del ~punto medio~: ¿cuánto se llevan parábola y círculo?",
    "lesson.6.step_parabola": "parábola {up}",
    "lesson.6.step_circle": "círculo {up}",
}
