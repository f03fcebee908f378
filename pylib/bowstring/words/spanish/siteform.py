"""The form's words for the method, and for what it is told of the site and of the crew, in Spanish as on US sites."""
# No safety sentence stands here; everything is from memory.

MESSAGES = {
    # headings and folds
    "form.section_options": "Opciones del método",
    "form.section_options.help": "Déjelas en blanco si no tiene un motivo; se usan los valores normales.",
    "form.section_tape": "~Cinta~ y ~cuadrilla~",
    "form.section_tape.help": "Deciden qué métodos se pueden usar, y qué tan exactas quedan las ~estacas~.",
    "form.section_room": "Espacio para trabajar",
    "form.section_known": "~Puntos conocidos~",
    "form.section_known.help": (
        "Puntos que ya están en el terreno. Las ~cintas~ y el instrumento pueden salir de ellos."
    ),
    "form.section_fall": "La ~pendiente~ del terreno",
    "form.section_fall.help": (
        "Una ~cinta~ sobre la ~pendiente~ da de más. La hoja dice entonces qué medir por cada largo ~a nivel~."
    ),
    "form.section_errors": "Con qué exactitud trabaja",
    "form.section_errors.help": (
        "Una desviación estándar cada uno: dos de cada tres intentos salen mejor. En blanco: el valor normal. "
        "Cambian la exactitud que se muestra, no dónde van las ~estacas~."
    ),
    "form.section_control": "Las coordenadas del ~plano~",
    "form.section_control.help": (
        "Dos puntos con coordenadas en el ~plano~: x e y, o norte y este. La hoja muestra entonces las ~estacas~ "
        "también en esas coordenadas."
    ),
    "form.row_ground": "Obstáculo {number}",
    "form.row_known": "Punto {number}",
    "form.row_control": "Punto de control {number}",
    # the method and its options
    "form.method": "Método",
    "form.method.centre": "girar desde el ~centro~",
    "form.method.none": "el recomendado",
    "form.method.halving": "por mitades",
    "form.method.rule": "regla del cuarto, no exacta",
    "form.method.ordinates": "~ordenadas~ desde la ~cuerda del arco~",
    "form.method.tangent": "desde la ~tangente~",
    "form.method.tapes": "dos ~cintas~",
    "form.method.produced": "cuerdas prolongadas",
    "form.method.angles": "ángulos de deflexión",
    "form.method.coordinates": "coordenadas",
    "form.method_apart": "Métodos de instrumento y de carretera:",
    "form.tangent_from": "Desde la ~tangente~, saliendo de",
    "form.tangent_from.help": "Con los dos extremos salen más cortas. Use uno solo donde el otro no tiene espacio.",
    "form.tangent_from.both": "los dos extremos",
    "form.tangent_from.A": "extremo A",
    "form.tangent_from.B": "extremo B",
    "form.tapes_from_0": "Primera ~cinta~ fija en",
    "form.tapes_from_0.help": "A, B o un ~punto conocido~, para dos ~cintas~. En blanco: A.",
    "form.tapes_from_1": "Segunda ~cinta~ fija en",
    "form.tapes_from_1.help": "Otro punto. En blanco: B.",
    "form.halve_first": "Primero, rondas por mitades",
    "form.halve_first.help": "0 a 6, para ~ordenadas~. Así salen más cortas, desde cada ~cuerda corta~.",
    "form.stations": "~Ordenadas~ a",
    "form.stations.help": (
        "Distancias desde A a lo largo de la ~cuerda del arco~, con ; entre ellas. Reemplazan las ~separaciones~ "
        "iguales."
    ),
    "form.first_gap": "Primera ~separación~",
    "form.first_gap.help": "Distancia de A a la primera ~estaca~; la última ~separación~ se lleva lo que sobra.",
    # tape and hands
    "form.tape_length": "~Cinta~ más larga",
    "form.tape_length.help": "En blanco: 100 ft. Lo más largo se reporta como no posible.",
    "form.tape_length.help.metric": "En blanco: 30.48 m. Lo más largo se reporta como no posible.",
    "form.centre_reachable": "El ~centro~ del ~arco~",
    "form.centre_reachable.help": "Solo después de ver que ahí cabe una ~estaca de acero~ y que el giro está libre.",
    "form.centre_reachable.none": "no se alcanza, o no se sabe",
    "form.centre_reachable.reachable": "se alcanza",
    "form.tape_class": "Clase de exactitud de la ~cinta~",
    "form.tape_class.help": (
        "Impresa cerca del cero de la ~cinta~: I, II o III. Con mejor clase, las tiradas largas salen más exactas."
    ),
    "form.tape_class.none": "la clase normal",
    "form.tape_class.I": "I",
    "form.tape_class.II": "II",
    "form.tape_class.III": "III",
    "form.hands": "Cuántas personas",
    "form.hands.help": "En blanco: 2. Una sola persona solo puede girar desde el ~centro~.",
    # what is in the way
    "form.ground_name": "Nombre",
    "form.ground_name.help": "Cómo lo llama la hoja.",
    "form.ground_stops": "Qué impide",
    "form.ground_stops.help": "~Hilos~ y ~cintas~ pasan al menos a 3 in de lo que estorba.",
    "form.ground_stops.help.metric": "~Hilos~ y ~cintas~ pasan al menos a 75 mm de lo que estorba.",
    "form.ground_stops.short": "Qué impide",
    "form.ground_stops.none": "elija",
    "form.ground_stops.removed": "nada: quitarlo",
    "form.ground_stops.tape": "~cinta~ y paso (un muro)",
    "form.ground_stops.feet": "solo el paso (un estanque)",
    "form.ground_at": "~Centro~, si es redondo",
    "form.ground_at.help": "Un árbol, poste, caja o pozo de visita: x, y de su ~centro~, como 12, -3.",
    "form.ground_diameter": "Su diámetro",
    "form.ground_diameter.help": "Con el ~centro~, en vez de esquinas. Ponga lo más ancho.",
    "form.ground_outline": "Esquinas, en orden",
    "form.ground_outline.help": (
        "Cada una como x, y con ; entre ellas. La x va por la ~cuerda del arco~ desde A. La y sale de ella hacia "
        "la curva, con signo menos detrás de la ~cuerda del arco~. Como 12, -3; 20, -3; 16, -8."
    ),
    "form.room_behind": "Espacio detrás de la ~cuerda del arco~",
    "form.room_behind.help": "Hasta dónde se puede ir hacia atrás. En blanco: sin límite.",
    "form.room_inside": "Espacio por dentro de la curva",
    "form.room_inside.help": "De la curva hacia su ~centro~.",
    "form.room_outside": "Espacio por fuera de la curva",
    "form.room_outside.help": "De la curva, alejándose de su ~centro~.",
    "form.parallel": "~Hilo~ paralelo a A-B: a cuánto de ella",
    "form.parallel.help": (
        "Para ~ordenadas~ donde A-B misma está tapada. Con signo menos queda detrás de A-B, como -8; sin él, el "
        "~hilo~ queda hacia la curva. La hoja lo compara con los otros métodos. Para usarlo, escoja ~ordenadas~."
    ),
    # known marks
    "form.known_name": "Nombre",
    "form.known_name.help": "Un nombre suyo, como hidrante; A y B para los extremos.",
    "form.known_x": "A lo largo de la ~cuerda del arco~",
    "form.known_x.help": "x, de A hacia B.",
    "form.known_y": "Fuera de la ~cuerda del arco~",
    "form.known_y.help": "y, hacia la curva; con signo menos detrás de la ~cuerda del arco~.",
    "form.known_sigma": "Cuánto puede fallar",
    "form.known_sigma.help": "Una desviación estándar en x e y. En blanco: es exacto.",
    # the slope
    "form.fall_along": "Cuánto baja el terreno de A a B",
    "form.fall_along.help": "Con signo menos donde el terreno sube.",
    "form.fall_across": "Cuánto baja al alejarse de la ~cuerda del arco~",
    "form.fall_across.help": "Hacia el lado de la curva; con signo menos donde sube.",
    # errors
    "form.error_read": "Leer la ~cinta~",
    "form.error_read.help": "En un extremo de una tirada. Importa más donde se suman muchos tramos cortos.",
    "form.error_scale": "La escala de la ~cinta~",
    "form.error_scale.help": "En decimal: 0.0002 es 1 parte en 5,000. Importa en tiradas largas.",
    "form.error_stake": "Aplomar y clavar",
    "form.error_stake.help": "A cuánto queda una ~estaca~ de donde se tuvo.",
    "form.error_line": "Seguir un ~hilo~",
    "form.error_line.help": "Hacia un lado de él.",
    "form.error_angle": "Girar un ángulo",
    "form.error_angle.help": "El del instrumento, en grados. Importa solo para ángulos de deflexión y coordenadas.",
    # control
    "form.control_mark": "Punto",
    "form.control_mark.help": "A, B o un ~punto conocido~.",
    "form.control_x": "x (este)",
    "form.control_y": "y (norte)",
    "form.control_n": "Norte",
    "form.control_e": "Este",
    "form.beside.percent": "%",
    # drawing on the plan
    "form.draw_tape": "Muro: impide ~cinta~ y paso",
    "form.draw_feet": "Estanque: impide solo el paso",
    "form.draw_round": "Árbol o poste",
    "form.draw_undo": "Deshacer",
    "form.draw_done": "Terminar el dibujo",
    "form.draw_cancel": "Cancelar",
    "form.no_plan": "Todavía no hay croquis donde dibujar. Primero dé los números del ~arco~ y conteste de qué lado.",
    # what can be wrong
    "form.outline_pair.wrong": "La esquina {number} no son dos largos con una coma entre ellos.",
    "form.outline_pair.remedy": "Escriba cada esquina como x, y con ; entre esquinas. Como 12, -3; 20, -3; 16, -8.",
    "form.outline_comma.wrong": (
        "La esquina {number} tiene una coma justo entre dos cifras: puede separar dos largos o ser coma decimal."
    ),
    "form.outline_comma.remedy": (
        "Ponga un espacio después de la coma que separa x de y, y escriba decimales con punto: 1.5, 2."
    ),
    "form.place_one.wrong": "Eso es más de un lugar.",
    "form.place_one.remedy": "Dé solo el ~centro~, como x, y: 12, -3. Las esquinas van en su propia casilla.",
    "form.stations_comma.wrong": "La coma puede separar dos distancias o ser coma decimal.",
    "form.stations_comma.remedy": "Ponga ; entre dos distancias, y punto para decimales.",
    "form.two_marks.wrong": "Dos ~cintas~ se fijan en dos puntos, y este está en blanco.",
    "form.two_marks.remedy": "Ponga los dos, o borre los dos para A y B.",
    "form.control_both.wrong": "Están llenos los dos pares, x e y, y norte y este: solo uno puede valer.",
    "form.control_both.remedy": "Borre x e y de los dos puntos, o norte y este de los dos.",
}
