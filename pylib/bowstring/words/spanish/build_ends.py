"""The ends of a slab that meets concrete which stands there, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "ends.no_fill.wrong": "Una losa que llena su curva no tiene extremo propio en A ni en B.",
    "ends.no_fill.remedy": "Quite ese extremo, o diga que la losa es una franja a lo largo de la curva.",
    "ends.no_closed.wrong": "Esta línea se cierra: no tiene extremo que tope con ~concreto~ viejo.",
    "ends.no_closed.remedy": "Quite los dos extremos.",
    "ends.both": "A y B",
    "ends.both_of_line": "los dos extremos",
    "ends.of_line.A": "el inicio",
    "ends.of_line.B": "el final",
    "ends.draw": "~concreto~ viejo",
    "ends.draw_hatched": "rayado: ~concreto~ viejo",
    "ends.told": (
        "En {ends}, contra el ~concreto~ viejo: sin cabezal, sin excavar más allá. La tira de aislamiento se "
        "descuenta del largo."
    ),
    "ends.told_wall": (
        "En {ends}, contra el ~concreto~ viejo: sin cabezal, sin excavar más allá. La ~junta~: según el ~plano~."
    ),
    "ends.dig_stops": "En {ends} excave solo hasta el ~concreto~ viejo; no lo socave.",
    "ends.sign": "Tira en {ends}; al ras",
    "ends.lap": (
        "En {ends} traslape las ~tablas~ por el borde del ~concreto~ viejo. Contra ~guarnición~ o muro, córtelas ahí "
        "y ponga ~estacas~ en las puntas."
    ),
    "ends.no_lap": "En {ends} las ~tablas~ van a tope con el ~concreto~ viejo, con ~estaca~ en cada punta.",
    "ends.first_lap": "Prense una punta en {end}, por el borde del ~concreto~ viejo, y atorníllela.",
    "ends.past_lap": "Pasando {ends} se cuentan ~estacas~ para el traslape. Si ahí corta las ~tablas~, no las ponga.",
    "ends.form": "cabezal en {ends}",
    "ends.stakes": "Cabezal en {ends}: cada {gap}, {spaces}, con ~estaca~ en cada punta.",
    "ends.wall_form": "Cabezal solo en {ends}: de {width} x {height} de alto.",
    "ends.wall_none": "Sin cabezales: los dos extremos topan con ~concreto~ viejo.",
    "ends.buy": "Compre también tira de aislamiento: {pieces}, {gap} de grueso, {deep} de hondo.",
    "ends.buy_full": "Compre también tira de aislamiento: {pieces}, {gap} de grueso, tan honda como el ~concreto~.",
    "ends.joint": (
        "*~Junta~ de aislamiento de {gap} en {end}*, contra el ~concreto~ viejo: {width} de largo, {deep} de "
        "hondo, todo el espesor."
    ),
    "ends.joint_full": (
        "*~Junta~ de aislamiento de {gap} en {end}*, contra el ~concreto~ viejo: {width} de largo, tan honda como el "
        "~concreto~."
    ),
    "ends.dowels": "Con pasajuntas o sin ellas: como diga el ~plano~.",
    "ends.joint_wall": "En {ends}, contra el ~concreto~ viejo: la ~junta~ y sus pasajuntas, como diga el ~plano~.",
    "ends.top_open": (
        "En {end} el canto exterior queda {first}; el interior, {last}. Mida ahí la altura del ~concreto~ viejo."
    ),
    "ends.top_open.of_line": (
        "En {end} el canto izquierdo queda {first}; el derecho, {last}. Mida ahí la altura del ~concreto~ viejo."
    ),
    "ends.lip": "Un escalón hace tropezar.",
    "ends.top_met": (
        "En {end} el canto exterior es el que dio: coincide si se midió ahí. Mida también el interior: queda {last}."
    ),
    "ends.top_met.of_line": (
        "En {end} el canto izquierdo es el que dio: coincide si se midió ahí. Mida también el derecho: queda {last}."
    ),
}
