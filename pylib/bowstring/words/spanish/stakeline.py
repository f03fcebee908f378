"""Which point of the stake is on the line, and how to work with it, in Spanish as on US sites."""
# No safety sentence of an agency stands here; everything is from memory.

MESSAGES = {
    "on_line.pin": "La línea es el ~centro~ de cada ~estaca de acero~.",
    "on_line.marked": "La línea es la marca arriba de cada ~estaca~, no la cara de la ~estaca~.",
    "on_line.hub": "La línea es la ~tachuela~ de cada ~trompo~.",
    "on_line.board": "La línea es el lado del ~concreto~ de la ~tabla~.",
    "on_line.board_off": "La línea es la cara de cada ~estaca~, hacia la ~tabla~.",
    "on_line.pin_back": "La línea es el borde de cada ~estaca de acero~ hacia la ~tabla~, no su ~centro~.",
    "on_line.pin_maybe": (
        "La línea es el ~centro~ de cada ~estaca de acero~. Donde una ~tabla~ va contra ella, es su borde hacia la "
        "~tabla~."
    ),
    "on_line.pin_centers": "Para trabajar por ~centros~, ponga {size} en la ~distancia a escuadra~.",
    "on_line.pin_past": (
        "~Centros~ a media ~estaca de acero~ detrás de la ~tabla~: ahí sostienen la ~tabla~ en su línea."
    ),
    "on_line.pin_back_first": "Aplome cada ~estaca de acero~, y lea la ~cinta~ en su borde hacia la ~tabla~.",
    "on_line.card_back": "En la línea: el borde hacia la ~tabla~, no el ~centro~.",
    "on_line.card_maybe": "Si una ~tabla~ va contra ella: su borde va en la línea.",
    "on_line.pin_first": "Aplome cada ~estaca de acero~, y lea la ~cinta~ en su ~centro~.",
    "on_line.pin_held": (
        "Donde sigue una ~tabla~, la línea es el borde de la ~estaca de acero~ hacia la ~tabla~. Ponga el ~centro~ "
        "a {half} de la línea. Una ~estaca de acero~ de {size} centrada en la línea aparta la ~tabla~ {half}."
    ),
    "on_line.pin_feet": (
        "Donde sigue una ~tabla~, la línea es el borde de la ~estaca de acero~ hacia la ~tabla~. Centrada en la "
        "línea, la ~estaca de acero~ aparta la ~tabla~ la mitad de su propio grueso. Si es de 5/8 in, la aparta 5/16 "
        "in."
    ),
    "on_line.pin_metric": (
        "Donde sigue una ~tabla~, la línea es el borde de la ~estaca de acero~ hacia la ~tabla~. Centrada en la "
        "línea, la ~estaca de acero~ aparta la ~tabla~ la mitad de su propio grueso. Si es de 16 mm, la aparta 8 mm."
    ),
    "on_line.marked_first": "Primero clave la ~estaca~. Luego lea la ~cinta~ otra vez, y marque la línea arriba.",
    "on_line.marked_then": "Trabaje solo desde la marca. De la cara de la ~estaca~ a su mitad hay {size}.",
    "on_line.size_feet": "3/4 in en una de 2x2",
    "on_line.size_metric": "25 mm en una ~estaca~ de 50 mm",
    "on_line.hub_first": (
        "Clave el ~trompo~ casi al ras. Luego lea la ~cinta~ otra vez encima de él, y ponga la ~tachuela~."
    ),
    "on_line.hub_then": "Mida otra vez hasta la ~tachuela~. Si no da, mueva la ~tachuela~, no el ~trompo~.",
    "on_line.board_first": "Ponga la línea con ~estacas de acero~ provisionales, y doble la ~tabla~ contra ellas.",
    "on_line.board_off_first": (
        "Mejor sin ~distancia a escuadra~. Ponga la línea de la cara con ~estacas de acero~ provisionales, y doble "
        "la ~tabla~ contra ellas."
    ),
    "on_line.board_then": (
        "Ponga las ~estacas~ detrás de la ~tabla~ usando un pedazo de la misma ~tabla~. No mida ese grueso ~a "
        "escuadra~."
    ),
    "on_line.drawn_to_face": (
        "La línea del ~plano~ es la ~cara del concreto~ o su borde. La ~distancia a escuadra~ se mide desde ahí."
    ),
    "on_line.drawn_to_back": (
        "La línea del ~plano~ es la cara de atrás. La de enfrente está al grueso del ~concreto~. Para poner ~estacas~ "
        "en la de enfrente, ponga ese grueso en la ~distancia a escuadra~."
    ),
    "on_line.drawn_to_centre": (
        "La línea del ~plano~ es el eje central. Cada cara está a la mitad del ancho. Para poner ~estacas~ en una "
        "cara, ponga eso en la ~distancia a escuadra~."
    ),
    "on_line.drawn_to_flow line": (
        "La línea del ~plano~ es la ~línea de flujo~, donde la cuneta topa con la ~guarnición~. La cara de atrás de "
        "la ~guarnición~ y el ~labio~ son otras líneas. Para poner ~estacas~ en una, ponga su distancia en la "
        "~distancia a escuadra~."
    ),
    "on_line.drawn_to_lip": (
        "La línea del ~plano~ es el ~labio~, el borde de afuera de la cuneta. La ~línea de flujo~ y la cara de "
        "atrás de la ~guarnición~ son otras líneas. Para poner ~estacas~ en una, ponga su distancia en la ~distancia "
        "a escuadra~."
    ),
    "on_line.width": "Con {width} de ancho, cada cara está a {half} del eje central.",
    "on_line.come_back": (
        "Para volver a la línea, corte un listón de {offset} de largo. Gírelo desde {each}: la ~tabla~ apenas toca "
        "cada barrido."
    ),
    "on_line.each_pin": "el ~centro~ de cada ~estaca de acero~",
    "on_line.each_pin_back": "el borde de cada ~estaca de acero~ hacia la ~tabla~",
    "on_line.each_marked": "la marca de cada ~estaca~",
    "on_line.each_hub": "cada ~tachuela~",
    "on_line.overrun": "Donde la obra sigue recta, extienda la ~tabla~ {length} pasando {ends}, por la ~tangente~.",
    "on_line.string": "el ~hilo~",
    "on_line.line": "la línea A-B",
    "on_line.overrun_past": (
        "Su ~estaca~: prolongue {line} más allá del extremo por {along}, luego mida ~a escuadra~ {off}, alejándose "
        "de la curva. Del extremo a ella da {length}."
    ),
    "on_line.overrun_before": (
        "Su ~estaca~: desde el extremo, regrese siguiendo {line} por {along}, luego mida ~a escuadra~ {off}, "
        "alejándose de la curva. Del extremo a ella da {length}."
    ),
    "on_line.overrun_square": (
        "Su ~estaca~: en el extremo, ~a escuadra~ con {line}, mida {off}, alejándose de la curva."
    ),
    "on_line.overrun_straight": "Su ~estaca~: en línea con la recta, a {length} del extremo.",
    "on_line.overrun_lap": "En {end} traslápela por el borde del ~concreto~ viejo, o córtela ahí y apuntale la punta.",
    "on_line.overrun_blocked": "Más allá de {end} estorba {what}: ahí no extienda nada.",
    "on_line.brace": "Contra ~concreto~ no se extiende nada: apuntale la punta de la ~tabla~ al ~arco~.",
    "draw.on_line.title": "Qué punto va en la línea",
    "draw.on_line.desc": (
        "Visto de lado, clavado en el terreno: {driven}; la línea va a plomo por el punto que cuenta. {point}"
    ),
    "draw.on_line.line": "la línea",
    "draw.on_line.ground": "terreno",
    "draw.on_line.pin": "~estaca de acero~",
    "draw.on_line.marked": "~estaca~",
    "draw.on_line.hub": "~trompo~",
    "draw.on_line.tack": "~tachuela~",
    "draw.on_line.board": "~tabla~",
    "draw.on_line.stake": "~estaca~",
    "draw.on_line.concrete": "~concreto~",
    "draw.on_line.mark": "marca",
    "draw.on_line.where_board": "donde sigue una ~tabla~",
}
