"""A line of several pieces and the slab along it, in Spanish as on US sites."""

MESSAGES = {
    "lined.arc": "~Arco~ {number}",
    "lined.straight": "Recta {number}",
    "lined.arc_text": "R {radius}, {angle} {hand}, {length}",
    "lined.kink": "{angle} {hand}",
    "lined.looks": "{off} de desvío en {length}",
    "lined.row": "{length}, {count} tramos",
    "lined.row_tangent": "Todo ~tangente~, sin quiebres",
    "lined.row_kinks": "*Quiebres:* {count}",
    "lined.conclusion": "La línea mide *{length}*, en {count} tramos.",
    "lined.none": "recta",
    "lined.head_piece": "Tramo",
    "lined.head_station": "Termina en",
    "lined.head_radius": "R",
    "lined.head_chord": "~Cuerda del arco~",
    "lined.pieces": "A lo largo de la línea",
    "lined.kink_at": "En {station}, el tramo {piece} lleva un quiebre de {kink}: {looks}.",
    "lined.order": "Trace un tramo tras otro. Cada uno empieza donde termina el anterior.",
    "lined.first_straight": "del tramo 1",
    "lined.first_arc": "de la ~tangente~ del tramo 1",
    "lined.begins_head": "Dónde empieza cada tramo: desde el inicio, viendo a lo largo {first}",
    "lined.head_begins": "Empieza",
    "lined.head_ahead": "Adelante",
    "lined.head_off": "Izquierda o derecha",
    "lined.behind": "{size} atrás",
    "lined.off_left": "{size} a la izquierda",
    "lined.off_right": "{size} a la derecha",
    "lined.straight_on": (
        "*{straight}:* el PI del {arc} está {tangent} recto más allá de su A. Del PI, por su B, sigue la recta."
    ),
    "lined.ends_on": "Desde el inicio, viendo a lo largo {first}, la línea termina {ahead} justo adelante.",
    "lined.ends_left": (
        "Desde el inicio, viendo a lo largo {first}, la línea termina {ahead} adelante y {off} a su IZQUIERDA."
    ),
    "lined.ends_right": (
        "Desde el inicio, viendo a lo largo {first}, la línea termina {ahead} adelante y {off} a su DERECHA."
    ),
    "lined.ends_back_on": "Desde el inicio, viendo a lo largo {first}, la línea termina {ahead} justo atrás.",
    "lined.ends_back_left": (
        "Desde el inicio, viendo a lo largo {first}, la línea termina {ahead} atrás y {off} a su IZQUIERDA."
    ),
    "lined.ends_back_right": (
        "Desde el inicio, viendo a lo largo {first}, la línea termina {ahead} atrás y {off} a su DERECHA."
    ),
    "lined.overlap": "La losa se encima: tramo {first} y tramo {second}. Revise el ~plano~.",
    "lined.no_edge": "No hay losa en esta línea",
    "lined.edges_row": "Bordes {left}, {right}",
    # both edges
    "lined.edges_more": "izquierdo, derecho; {width} de ancho",
    "lined.edges_tight": "interior R {radius}, tramo {piece}: cerrado",
    "lined.edges_conclusion": "El borde izquierdo mide *{left}*, el derecho *{right}*, a {width} uno del otro.",
    "lined.left_edge": "Borde izquierdo, caminando por la línea",
    "lined.right_edge": "Borde derecho, caminando por la línea",
    "lined.head_long": "Largo",
    "lined.stick_line": "la línea",
    "lined.how_halved": "La vara da cada borde, a {width} de la línea.",
    "lined.first_left": ("Ponga primero la ~tabla~ izquierda: la línea es su cara. La vara da la derecha, a {width}."),
    "lined.first_right": ("Ponga primero la ~tabla~ derecha: la línea es su cara. La vara da la izquierda, a {width}."),
    "lined.how_square": ("Tenga la vara ~a nivel~, y ~a escuadra~ con la línea. En un ~arco~ apunta al ~centro~."),
    "lined.first_off": "Ponga una ~tabla~ midiendo de sus ~estacas~. La vara da la otra, a {width}.",
    "lined.edges_off": "Desde sus ~estacas~, caminando por la línea: bordes a {at}.",
    "lined.faces_off": "Desde sus ~estacas~, caminando por la línea: caras del muro a {at}.",
    "lined.footing_off": "Bordes de la zapata a {at}.",
    "lined.dig_off": "Líneas de excavación a {at}.",
    "lined.pair_left": "{near} y {far} a la IZQUIERDA",
    "lined.pair_right": "{near} y {far} a la DERECHA",
    "lined.pair_both": "{left} a la IZQUIERDA y {right} a la DERECHA",
    "lined.tape_square": "Mida ~a nivel~ y ~a escuadra~ con la línea. En un ~arco~, hacia el ~centro~ o alejándose.",
    "lined.miter": (
        "Donde empieza {piece}, las dos ~formas~ se juntan a inglete. La {outer} pasa {on} de la escuadra del quiebre, "
        "en los dos tramos. La {inner} se queda corta: {before} antes, {after} después."
    ),
    "lined.miter_run": (
        "Donde empieza {piece}, la ~forma~ {outer} pasa {on} de la escuadra del quiebre, en los dos tramos, hasta su "
        "inglete. La {inner} dobla en la esquina de la línea."
    ),
    "lined.miter_cut": (
        "Donde empieza {piece}, la ~forma~ {inner} no llega a la escuadra del quiebre: {before} antes, {after} "
        "después. La {outer} dobla en la esquina de la línea."
    ),
    "lined.miter_how": (
        "En un quiebre no use la vara: tienda ~hilos~ por los bordes de ambos tramos hasta que se crucen."
    ),
    "lined.swing": ("{piece}: el borde interior es cerrado. Si alcanza su ~centro~, trácelo desde ahí con {radius}."),
    "lined.dig_all": "{piece}: por dentro la excavación llega al ~centro~. Excave todo.",
    "lined.dig_deep": "Excave hasta *{deep}* abajo del canto de las ~formas~: {thickness} de losa y {base} de base.",
    "lined.dig_bare": "Excave hasta *{deep}* abajo del canto de las ~formas~: no lleva base.",
    "lined.dig_no_base": "Excave hasta *{thickness}* abajo del canto de las ~formas~, y más si lleva base: no se dio.",
    "lined.dig_edges": "A lo largo de las dos ~formas~, {wide} de ancho, hasta *{deep}*.",
    "lined.dig_apron": "Ahí son *{deep}* abajo del canto de las ~formas~.",
    "lined.dig_apron_no_base": "Ahí son *{deep}* abajo del canto de las ~formas~, sin contar la base.",
    "lined.ends_square": "Los dos extremos de la losa van ~a escuadra~ con la línea.",
    "lined.beside": "{what}: a {off} de la ~forma~, a {dig} de la línea de excavación.",
    "lined.beside_left": "{what}, en {at}: a {off} de la ~forma~ izquierda, a {dig} de la línea de excavación.",
    "lined.beside_right": "{what}, en {at}: a {off} de la ~forma~ derecha, a {dig} de la línea de excavación.",
    # the joints
    "lined.joints_row": "{count} paneles, hasta {longest}",
    "lined.joints_one": "Un panel, {longest} de largo",
    "lined.joints_more": "el más corto {shortest}; corte {depth} o más",
    "lined.joints_shortest": "lado más corto {shortest}",
    "lined.joints_no_joint": "sin ~juntas~",
    "lined.joints_corner": "esquina de {corner} en un quiebre: pregunte",
    "lined.joints_ratio_near": "panel {number}: {ratio} a 1, límite 1.5",
    "lined.joints_ratio_over": "panel {number}: {ratio} a 1, pasa de 1.5",
    "lined.joints_conclusion": "*{count} paneles*, ninguno de más de {longest}. El lado más corto mide {shortest}.",
    "lined.joints_conclusion_one": "*Un panel*, sin ~juntas~: {longest} del lado largo, {shortest} del otro.",
    "lined.joints_long": "Panel pasa de {most} con {thickness}",
    "lined.joints_long_plain": "Panel pasa de {most}",
    "lined.joints_long_more": "hasta {longest}: agregue una ~junta~",
    "lined.joints_stop": "El panel más largo es de {longest}; lo usual es {most} cuando mucho. Ponga más paneles.",
    "lined.left_form": "~forma~ izquierda, desde el inicio",
    "lined.right_form": "~forma~ derecha, desde el inicio",
    "lined.there": "qué hay ahí",
    "lined.begins": "empieza {piece}",
    "lined.the_end": "el final",
    "lined.joints_taped": (
        "Mida cada una desde el inicio de la línea, nunca de marca a marca, por la *~cara del concreto~*. Por fuera "
        "de un ~arco~, la ~tabla~ por atrás mide más."
    ),
    "lined.joints_square": (
        "Tire línea de marca a marca, ~a escuadra~ con los dos bordes. En un ~arco~ esa línea apunta al ~centro~."
    ),
    "lined.joints_miter": "En un quiebre la ~junta~ va en el inglete, de esquina a esquina.",
    "lined.joints_corner_sharp": (
        "Un inglete deja una esquina de solo {corner}. Con menos de 60° se quiebra: pregunte al proyectista."
    ),
    "lined.joints_meet": "Donde se juntan dos tramos siempre va una ~junta~.",
    "lined.shape_long": "El panel {number} es de {ratio} a 1, más de 1.5: muy largo. Ponga más paneles.",
    "lined.shape_short": (
        "El panel {number} es de {ratio} a 1, más de 1.5: corto para su ancho. Haga paneles más largos, o pregunte "
        "al proyectista."
    ),
    "lined.shape_odd": (
        "El panel {number} es de {ratio} a 1, más de 1.5: pregunte al proyectista dónde van las ~juntas~."
    ),
    "lined.most_every": "Los paneles son de {most} cuando mucho sobre cualquiera de las dos ~formas~, como usted dijo.",
    "lined.count_taken": "Usted dijo {said} paneles. Con una ~junta~ donde se juntan dos tramos son {count}.",
    "lined.kink_longer": "Junto a un quiebre hay uno más largo: {longest}.",
    # the concrete
    "lined.counted_twice": "La losa se encima: el pedido cuenta dos veces ese lugar.",
    "lined.call_left": "Cuándo llamar a la planta: distancias sobre la ~forma~ izquierda desde el inicio",
    "lined.call_right": "Cuándo llamar a la planta: distancias sobre la ~forma~ derecha desde el inicio",
    "lined.reach_left": (
        "Cuele desde el inicio. Si no llega a esa marca, el pedido no alcanza hasta el final. Si pasa, alcanza "
        "mientras la base siga igual. Pregunte al chofer cuánto lleva vaciado; mida por la ~forma~ izquierda."
    ),
    "lined.reach_right": (
        "Cuele desde el inicio. Si no llega a esa marca, el pedido no alcanza hasta el final. Si pasa, alcanza "
        "mientras la base siga igual. Pregunte al chofer cuánto lleva vaciado; mida por la ~forma~ derecha."
    ),
    "lined.panels_take": "Los paneles llevan de *{least}* a *{most}*.",
    "lined.panels_bags": "Los paneles llevan de *{least}* a *{most} bultos*.",
    "lined.bulkhead_left": (
        "Tenga lista una tapa en la *~junta~ {joint}*: {left} en la ~forma~ izquierda, {right} en la derecha. Con la "
        "base {low} más baja en todo, este pedido se acaba en {ends} de la izquierda."
    ),
    "lined.bulkhead_right": (
        "Tenga lista una tapa en la *~junta~ {joint}*: {left} en la ~forma~ izquierda, {right} en la derecha. Con la "
        "base {low} más baja en todo, este pedido se acaba en {ends} de la derecha."
    ),
    "lined.bulkhead_short": "Tenga lista una tapa en la *~junta~ {joint}*.",
    "lined.bulkhead_last": (
        "Tenga lista una tapa en la *~junta~ {joint}*: {left} en la ~forma~ izquierda, {right} en la derecha. "
        "Si falta ~concreto~, ahí se corta."
    ),
}
