"""What can be wrong with what a job says of the site, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "site.whole.wrong": "Esto no es un número entero.",
    "site.whole.remedy": "Dé un número entero.",
    "site.rows.wrong": "Aquí va una lista de {most} filas a lo más.",
    "site.rows.remedy": "Dé una lista, o no la ponga.",
    "site.stops_unsaid.wrong": "No se dijo qué impide este obstáculo.",
    "site.stops_unsaid.remedy": (
        "Diga ~cinta~ (tape) si no pasa ni ~cinta~ ni visual (un muro, una bodega). Diga pies (feet) si ahí no "
        "se puede parar, pero la ~cinta~ cruza (un estanque, una jardinera)."
    ),
    "site.outline_short.wrong": "Un contorno necesita tres esquinas o más.",
    "site.outline_short.remedy": (
        "Dé las esquinas en orden, cada una como par: a lo largo de A-B desde A, y fuera de A-B."
    ),
    "site.outline_thin.wrong": "Este contorno no tiene ancho que una ~cinta~ pueda mostrar.",
    "site.outline_thin.remedy": "Dé a una cerca o un muro su grueso: 4 in o 100 mm bastan, si es más delgado.",
    "site.outline_crossed.wrong": "Este contorno se cruza o se toca solo.",
    "site.outline_crossed.remedy": "Dé las esquinas en el orden en que se camina alrededor.",
    "site.outline_and_circle.wrong": "Este obstáculo tiene esquinas, y también ~centro~ o diámetro.",
    "site.outline_and_circle.remedy": (
        "Dé una cosa o la otra: esquinas para un muro o una jardinera, ~centro~ y diámetro para un árbol."
    ),
    "site.circle_half.wrong": "Un obstáculo redondo necesita su ~centro~ y su diámetro, y falta uno.",
    "site.circle_half.remedy": "Diga dónde está su ~centro~ (a lo largo de A-B desde A, y fuera de A-B) y su diámetro.",
    "site.circle_small.wrong": "Algo tan delgado no estorba.",
    "site.circle_small.remedy": "Dé {least} o más, y revise la unidad.",
    "site.obstacle": "Obstáculo {number}",
    "site.obstacle_name.wrong": '"{name}" se puede confundir con un punto del ~trazo~.',
    "site.obstacle_name.remedy": "Llámelo por lo que es, como bodega, estanque o árbol viejo.",
    "site.obstacle_twice.wrong": "Dos obstáculos se llaman {name}.",
    "site.obstacle_twice.remedy": "Dé a cada uno su nombre, para que la hoja diga cuál estorba.",
    "site.error_large.wrong": "Ese no es un error chico: {most} a lo más.",
    "site.error_large.remedy": "Diga cuánto suele fallar la ~cuadrilla~, y revise la unidad.",
    "site.angle_large.wrong": "Ese no es un error chico para un ángulo: {most} grados a lo más.",
    "site.angle_large.remedy": "Diga cuánto suele fallar un ángulo girado, como 0°1' o 0.02.",
    "site.known_name.wrong": 'Un ~punto conocido~ no puede llamarse "{name}".',
    "site.known_name.remedy": (
        "Use un nombre que no sea un punto del ~trazo~, como hidrante o esquina del muro. A y B son los extremos."
    ),
    "site.known_twice.wrong": "Dos ~puntos conocidos~ se llaman {name}.",
    "site.known_twice.remedy": "Dé a cada uno su nombre.",
    "site.known_place.wrong": "No se dijo dónde está el ~punto conocido~ {name}.",
    "site.known_place.remedy": (
        "Dé x (a lo largo de la ~cuerda del arco~ desde A) e y (fuera de ella, hacia la curva)."
    ),
    "site.known_off.wrong": "El ~punto conocido~ {name} está a {off} del {name} del ~trazo~.",
    "site.known_off.remedy": (
        "Un extremo dado como ~punto conocido~ necesita su lugar en el ~trazo~: x {x}, y 0. Si está en otra "
        "parte, dé la ~cuerda del arco~ medida, u otro nombre."
    ),
    "site.no_such_mark.wrong": "Ese punto no existe en el terreno.",
    "site.no_such_mark.remedy": "Use uno de estos: {known}.",
    "site.mark_twice.wrong": "{mark} está dos veces.",
    "site.mark_twice.remedy": "Nombre dos puntos distintos.",
    "site.control_place.wrong": "No se dieron las coordenadas de este punto en el ~plano~.",
    "site.control_place.remedy": "Dé {axes}.",
    "site.control_axes.wrong": "Esta coordenada no es de los ejes que se escogieron.",
    "site.control_axes.remedy": "Dé {axes} y nada más, o escoja los otros ejes.",
    "site.control_far.wrong": (
        "Por las coordenadas del ~plano~ hay {drawn} entre los dos puntos de control. En el ~trazo~ hay {here}: "
        "una diferencia de {off}."
    ),
    "site.control_far.remedy": (
        "Revise qué puntos son, el orden de los ejes y la unidad. Luego pregunte al proyectista."
    ),
    "site.first_gap_alone.wrong": (
        "Una primera ~separación~ necesita la ~separación~ de las que siguen, y nada de rondas por mitades."
    ),
    "site.first_gap_alone.remedy": "Dé la ~separación~ de las demás, o quite la primera.",
    "site.first_gap_long.wrong": "La primera ~separación~, {gap}, no es más corta que toda la ~cuerda del arco~.",
    "site.first_gap_long.remedy": "Dé una ~separación~ que deje lugar para una ~estaca~.",
    "site.first_gap_wide.wrong": "La primera ~separación~, {gap}, es mayor que la máxima, {spacing}.",
    "site.first_gap_wide.remedy": "Dé una primera ~separación~ más corta, o una máxima mayor.",
    "site.first_gap_method.wrong": "La primera ~separación~ es de los métodos que van por tramos iguales.",
    "site.first_gap_method.remedy": (
        "Escoja girar desde el ~centro~, dos ~cintas~, cuerdas prolongadas, ángulos de deflexión o coordenadas, o "
        "quítela."
    ),
    "site.stations_none.wrong": "La lista de estaciones está vacía.",
    "site.stations_none.remedy": "Dé una o más, o quite la lista.",
    "site.stations_twice.wrong": "Dos estaciones están en {station}.",
    "site.stations_twice.remedy": "Dé cada estación una vez.",
    "site.stations_off.wrong": "Una estación en {station} no queda entre los extremos de la ~cuerda del arco~.",
    "site.stations_off.remedy": (
        "Dé distancias desde A a lo largo de la ~cuerda del arco~, mayores que 0 y menores que {chord}."
    ),
    "site.stations_method.wrong": "Las estaciones escogidas van con ~ordenadas~ desde la ~cuerda del arco~.",
    "site.stations_method.remedy": "Escoja ~ordenadas~, o quite las estaciones.",
    "site.parallel_close.wrong": "Ese ~hilo~ es la ~cuerda del arco~ A-B misma, o casi.",
    "site.parallel_close.remedy": (
        "Dé {least} o más, con signo menos detrás de la ~cuerda del arco~. Para ~ordenadas~ desde A-B quítelo."
    ),
    "site.halve_first_method.wrong": "Ir por mitades antes de otro método solo va con ~ordenadas~.",
    "site.halve_first_method.remedy": "Escoja ~ordenadas~, o quítelo.",
    "site.halve_first_stations.wrong": "Estaciones en la ~cuerda del arco~ y empezar por mitades no se combinan.",
    "site.halve_first_stations.remedy": "Quite uno de los dos.",
    "site.halve_first_levels.wrong": "No puede haber más rondas por mitades al principio que rondas en total.",
    "site.halve_first_levels.remedy": "Dé más rondas, o menos por mitades.",
    "site.got_method.wrong": "~Flecha~ y ~cuerdas cortas~ se leen en ~estacas~ puestas por mitades.",
    "site.got_method.remedy": "Dé lo que mide este paso, en measures.",
}
