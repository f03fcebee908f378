"""A slab with one rounded end or two, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "pad.no_fill.wrong": "Los lados rectos salen atrás de una curva que la losa llena, y esta losa es una franja.",
    "pad.no_fill.remedy": "Diga que la losa es todo lo de adentro de la curva, o quite los lados rectos.",
    "pad.no_length.wrong": "Dos puntas redondas llevan lados rectos en medio.",
    "pad.no_length.remedy": "Dé el largo de los lados, de A a la otra curva.",
    "pad.no_sides": "Aquí no hay lados rectos",
    "pad.no_sides_more": "la curva pasa de medio círculo",
    "pad.change": "Cambiar la losa",
    "pad.without": "Quitar los lados rectos",
    "pad.no_form_sheet": "No hay hoja de ~formas~ hasta resolverlo: con lados rectos, medio círculo cuando mucho.",
    "pad.row_one": "Punta R {radius}, lados {sides}",
    "pad.row_both": "Puntas R {radius}, lados {sides}",
    "pad.row_more": "{chord} de ancho, {deep} de largo total",
    "pad.back_of": "{stake}-2",
    "pad.conclusion_one": "Punta redonda R {radius}, lados rectos {sides}, atrás {chord}; {deep} en total",
    "pad.conclusion_both": "Las dos puntas R {radius}, lados rectos {sides}, separados {chord}; {deep} en total",
    "pad.line_sides": "Lados rectos",
    "pad.line_back": "Borde de atrás",
    "pad.line_other_curve": "La otra curva",
    "pad.note_straight": "~concreto~; {board} detrás, ~estacas~ a {size}, excavado {past} más allá",
    "pad.note_other_curve": "la primera curva, volteada",
    "pad.square_back": "~a escuadra~, atrás de {a} y {b}",
    "pad.across": "de A-2 a B-2",
    "pad.off_other_curve": "en A-2 y B-2",
    "pad.tangent": "En {a} y {b} la curva sigue recta por los lados: ~tangente~, sin esquina.",
    "pad.corner": "En {a} y {b} la curva llega a los lados con {corner}, por dentro de la losa.",
    "pad.square": (
        "Ponga los lados ~a escuadra~ con el ~hilo~ en {a} y en {b}, {shape}: {along} por el ~hilo~, {out} hacia "
        "atrás, {long_side} en diagonal."
    ),
    "pad.square_past": (
        "Ponga los lados ~a escuadra~ con el ~hilo~ en {a} y en {b}, {shape}: {along} por el ~hilo~, {out} hacia "
        "atrás, {long_side} en diagonal. Hacia atrás pasa de la esquina."
    ),
    "pad.square_blade": "Ponga los lados ~a escuadra~ con el ~hilo~ en {a} y en {b}, con una ~escuadra de carpintero~.",
    "pad.pull": "Mida {sides} hacia atrás desde cada una: la esquina A-2 queda justo detrás de {a}; la B-2, de {b}.",
    "pad.stand_straight": (
        "Las ~estacas~ de ~forma~ de los lados y de atrás van a {size} del borde: ahí entra la {board}."
    ),
    "pad.stand_sides": "Las ~estacas~ de ~forma~ de los lados van a {size} del borde: ahí entra la {board}.",
    "pad.stand_beside": ("En los primeros {past} de un lado junto a la curva van a {size}: ahí está la {board} curva."),
    "pad.no_back.wrong": "Una punta cuadrada va detrás de lados rectos, y esta losa no la tiene.",
    "pad.no_back.remedy": "Dé el largo de los lados y una sola punta redonda, o quite la punta cuadrada.",
    "pad.no_along.wrong": "Hasta dónde va el borde grueso se pregunta con lados rectos, y esta losa no los tiene.",
    "pad.no_along.remedy": "Dé el largo de los lados, o no diga hasta dónde va el borde grueso.",
    "pad.line_against": "Borde contra el edificio",
    "pad.note_against": "sin ~forma~, y sin excavar más allá",
    "pad.against": (
        "La punta cuadrada va contra el edificio: ahí no lleva ~forma~, ni ~estacas~, ni excavación más allá. Las "
        "~formas~ de los lados terminan en su cara."
    ),
    "pad.against_strip": "Tira de aislamiento junto al edificio: {gap} de grueso, {chord} de largo, {deep}.",
    "pad.strip_deep": "{deep} de hondo",
    "pad.strip_ends": "{deep} de hondo, *{edge} de hondo* a lo largo de {ends} en A-2 y en B-2",
    "pad.strip_full": "tan honda como el ~concreto~",
    "pad.strip_signed": "{gap}; {deep}",
    "pad.strip_signed_ends": "{gap}; {deep}, puntas {edge}",
    "pad.against_length": (
        "La tira se quita del largo: {sides} hasta el edificio dejan {left} de ~concreto~ ({gap} menos)."
    ),
    "pad.short_building": "El agua corre al edificio",
    "pad.more_building": "atrás queda bajo, {slope}: pregunte",
    "pad.water_building": "El agua corre al edificio. Dele ~pendiente~ hacia afuera, o pregunte al proyectista.",
    "pad.set_back": "La ~forma~ de atrás va entre las de los lados, de A-2 a B-2: {chord}.",
    "pad.set_other": (
        "Ponga la otra curva con los mismos números: A-2 en vez de {a}, B-2 en vez de {b}. Da vuelta al lado contrario."
    ),
    "pad.other_left": "Párese en A-2, mire a B-2: la otra curva queda a su IZQUIERDA.",
    "pad.other_right": "Párese en A-2, mire a B-2: la otra curva queda a su DERECHA.",
    "pad.sides_head": "Los lados rectos",
    "pad.check_head": "~Revisión~: diagonales y largo",
    "pad.check": (
        "De A-2 a B-2 debe medir {chord}. Las dos diagonales, de {a} a B-2 y de {b} a A-2, deben medir {diagonal}."
    ),
    "pad.check_deep": "~A escuadra~ desde el medio del borde de atrás, la curva queda a {deep}.",
    "pad.check_deep_both": "Del medio de una curva al medio de la otra hay {deep}.",
    "pad.other_curve": "Otra curva",
    "pad.two_curves": "Se doblan las dos curvas, R {radius}; los lados son rectos.",
    "pad.straight_forms": "rectas: lados, atrás",
    "pad.side_forms": "rectas: lados",
    "pad.back_form": "recta: atrás",
    "pad.carry_tangent": (
        "Pase la ~tabla~ curva {past} más allá de {a} y {b}, por los lados. Las ~formas~ de los lados van a tope en "
        "sus puntas."
    ),
    "pad.carry_corner": (
        "Pase la ~tabla~ curva {past} más allá de {a} y {b}, recto: así queda dentro de la excavación."
    ),
    "pad.bevel": (
        "Las ~formas~ de los lados van a tope en su cara: córtelas en bisel, {angle} fuera de escuadra, {face} con la "
        "cara."
    ),
    "pad.bevel_marked": "Si la sierra no se inclina tanto, marque {face} con la cara y corte por la marca.",
    "pad.long_point": "La punta larga va al ~concreto~, en {a} y en {b}; por atrás mide {shorter} menos.",
    "pad.cut_long": "Las ~formas~ de los lados se miden a la punta larga.",
    "pad.no_overrun_tangent": (
        "Sus ~tablas~ acaban en {a} y {b}. Pase la ~tabla~ curva {past} más allá, por los lados, para corregirlo."
    ),
    "pad.no_overrun_corner": (
        "Sus ~tablas~ acaban en {a} y {b}. Pase la ~tabla~ curva {past} más allá, recto, para corregirlo."
    ),
    "pad.no_room": "La ~tabla~ curva acaba en {a} y {b}: la excavación no deja lugar para pasarla.",
    "pad.stakes_sides": "~Formas~ de los lados: cada {gap}, {spaces} en cada una.",
    "pad.stakes_back": "~Forma~ de atrás: cada {gap}, {spaces}.",
    "pad.call_back": "desde el borde de atrás, hacia la curva",
    "pad.call_building": "desde el edificio, hacia la curva",
    "pad.strip_out": "Al ~concreto~ se le quita la tira de aislamiento del edificio, {gap}.",
    "pad.buy_strip": "Compre también tira de aislamiento: {chord} de {gap}, {deep}.",
    "pad.call_other": "desde el medio de la otra curva, hacia A y B",
    "pad.reach_note_both": (
        "Empiece por la otra curva, con el frente paralelo a A-B. Si no llega a esa marca, el pedido no alcanza. "
        "Pregunte al chofer cuánto lleva vaciado; mida por el medio de la losa."
    ),
    "pad.reach_note": (
        "Empiece por la punta cuadrada, con el frente paralelo a A-B. Si no llega a esa marca, el pedido no alcanza. "
        "Pregunte al chofer cuánto lleva vaciado; mida por el medio de la losa."
    ),
    "pad.joints": "{columns} paneles de ancho por {rows} de largo,\n{panel} por {across}",
    "pad.joints_one_row": "{columns} paneles, uno junto a otro,\n{panel} por {across}",
    "pad.joints_one_column": "{rows} paneles, uno tras otro,\n{panel} por {across}",
    "pad.joints_none": "Un panel, sin ~juntas~:\n{wide} de ancho, {deep} de largo total",
    "pad.taped_both": (
        "Mida en la *~cara del concreto~*, desde el lado de A: por el ~hilo~, las dos curvas y los lados. Por atrás, "
        "la ~tabla~ curva mide {longer} más."
    ),
    "pad.taped": (
        "Mida en la *~cara del concreto~*, desde el lado de A: por el ~hilo~, el borde de atrás, la curva y los lados. "
        "Por atrás, la ~tabla~ curva mide {longer} más."
    ),
    "pad.joint_building": (
        "*~Junta~ de aislamiento de {gap}* en el edificio, de A-2 a B-2, a todo el espesor del ~concreto~. En otra "
        "parte, solo donde esté especificada."
    ),
    "pad.end_row": "La fila de la curva mide {deep} en su medio: así ninguna ~junta~ llega a ella con menos de 60°.",
    "pad.on_string": "Una ~junta~ va donde empieza la curva: los paneles miden {behind} atrás, {beyond} adelante.",
    "pad.shape": "Los paneles son de {ratio} a 1, más de 1.5. Pregunte al proyectista por las ~juntas~.",
    "pad.on_sides": "lados",
    "pad.ahead": "{size} al frente",
    "pad.behind": "{size} atrás",
    "pad.at_string": "de {a} a {b}",
    "pad.at_other": "de A-2 a B-2",
    "pad.water_back": "El agua corre hacia el borde de atrás, ~a escuadra~ con él.",
    "pad.water_back_end": "El agua corre al borde de atrás del lado de {end}: {slope}, a {angle} del ~hilo~.",
    "pad.water_other": "El agua corre hacia la otra curva, ~a escuadra~ con A-B.",
    "pad.water_other_end": "El agua corre a la otra curva del lado de {end}: {slope}, a {angle} del ~hilo~.",
    "pad.total_fall": "Caída total en la losa: {fall}.",
    "pad.string_top": "El canto de las ~formas~ rectas va recto de esquina a esquina: tienda un ~hilo~.",
    "pad.names_one": "A-2 y B-2 son las esquinas de atrás, justo detrás de {a} y {b}.",
    "pad.names_both": "Un nombre con -2 es de la otra curva: esa ~estaca~ queda justo detrás de la primera.",
    "pad.paper_one": "Losa de {chord} x {deep}, redonda en una punta; lados de {sides} atrás de {a} y {b}.",
    "pad.paper_both": "Losa de {chord} x {deep}, redonda en las dos puntas; lados de {sides}.",
    "pad.sign_tops": "Cantos en A-2; B-2",
    "pad.far_tops": "{first}; {last}",
    "pad.sign_strip": "Tira de aislamiento, A-2 a B-2",
    "pad.sign_deep": "Largo total, por el medio",
    "pad.sign_sides": "Dos lados; atrás, A-2 a B-2",
    "pad.sign_diagonals": "Diagonales; difieren máx.",
    "pad.draw_sides": "lados {sides}, {a}-{b} {chord}",
    "pad.draw_diagonal": "diagonal {shown}",
    "pad.draw_building": "edificio",
}
