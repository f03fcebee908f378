"""Both edges, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "edges.open": "Faltan el ancho y el lado",
    "edges.open_width": "Falta el ancho",
    "edges.open_side": "Falta el lado",
    "edges.row_inside": "Interior R {radius}, a {width}",
    "edges.row_outside": "Exterior R {radius}, a {width}",
    "edges.row_both": "R {outer} y {inner}",
    "edges.row_tight": "Interior R {radius}: cerrado",
    "edges.row_tapers": "{first} en A, {last} en B",
    "edges.more": "vara de ancho; diagonales {diagonal}",
    "edges.more_both": "{width} de ancho; diagonales {diagonal}",
    "edges.more_bays": "vara de ancho; diagonales por espacio",
    "edges.more_tapers": "cada ~estaca~ con su ancho",
    "edges.more_tight": "use el ~centro~",
    "edges.no_inner": "Sin borde interior: muy ancha para R",
    "edges.no_inner_more": "{width} de ancho, R {radius}",
    "edges.no_inner_half": "la mitad de {width}, R {radius}",
    "edges.title": "Bordes",
    "edges.other_inside": "Borde interior R {radius}, a {width}",
    "edges.other_outside": "Borde exterior R {radius}, a {width}",
    "edges.both": "Borde exterior R {outer}, interior R {inner}, {width} de ancho",
    "edges.tapers": "{first} de ancho en A, {last} en B",
    "edges.off_head": "Cada línea desde sus ~estacas~",
    "edges.line": "línea",
    "edges.radius": "~radio~",
    "edges.chord": "~cuerda del arco~, A a B",
    "edges.mid_ordinate": "~flecha~",
    "edges.arc": "~arco~",
    "edges.off": "desde sus ~estacas~",
    "edges.line_footing_outside": "Zapata, borde exterior",
    "edges.line_footing_inside": "Zapata, borde interior",
    "edges.line_dig_outside": "Excavación, por fuera",
    "edges.line_outer_form": "~Estacas~ de ~forma~, por fuera",
    "edges.line_outside": "Borde exterior",
    "edges.line_centre": "Eje central",
    "edges.line_inside": "Borde interior",
    "edges.line_inner_form": "~Estacas~ de ~forma~, por dentro",
    "edges.line_dig_inside": "Excavación, por dentro",
    "edges.line_stakes": "~Estacas~ de ~trazo~",
    "edges.note_dig": "borde y {size} más",
    "edges.note_dig_footing": "zapata y {size} más",
    "edges.note_footing": "{width} de ancho, bajo el medio",
    "edges.note_back": "atrás de la {board}",
    "edges.note_edge": "~concreto~, {what}",
    "edges.note_both": "{first}, {other}",
    "edges.note_drawn": "la línea del ~plano~",
    "edges.note_drawn.back": "la línea del ~plano~: atrás de la ~guarnición~",
    "edges.note_drawn.flow line": "la línea del ~plano~: ~línea de flujo~",
    "edges.note_drawn.lip": "la línea del ~plano~: ~labio~",
    "edges.note_marks": "{first} a {last}",
    "edges.yours_pin": "sus ~estacas de acero~",
    "edges.yours_marked": "sus ~estacas~",
    "edges.yours_hub": "sus ~trompos~",
    "edges.yours_board": "sus ~estacas~",
    "edges.held_pin": "el borde de sus ~estacas de acero~",
    "edges.held_pin_past": "sus ~estacas de acero~, ~centros~ media más atrás",
    "edges.held_marked": "sus marcas",
    "edges.held_hub": "sus ~trompos~",
    "edges.held_board": "sus ~estacas~",
    "edges.what": "qué va ahí",
    "edges.stopped": "{text}: {more}.",
    "edges.change": "Cambie el ancho",
    "edges.none": "-",
    "edges.off_none": "0",
    "edges.off_out": "{size} por fuera",
    "edges.off_in": "{size} por dentro",
    "edges.off_tapers": "de {first} a {last}",
    "edges.mark_inside": "{stake} int",
    "edges.mark_outside": "{stake} ext",
    "edges.form_outside": "Las ~estacas~ de ~forma~ van {size} por fuera de las suyas: ahí entra la {board}.",
    "edges.form_inside": "Las ~estacas~ de ~forma~ van {size} por dentro de las suyas: ahí entra la {board}.",
    "edges.form_pull": (
        "Atornille la ~tabla~, marque en su canto de arriba cada ~estaca~ de ~trazo~ y saque la ~estaca~."
    ),
    "edges.form_pull_pin": (
        "Saque cada ~estaca de acero~ al llegar la ~tabla~: la cara va donde estaba su ~centro~. Márquelo arriba."
    ),
    "edges.form_pull_marked": (
        "Saque cada ~estaca~ de ~trazo~ al llegar la ~tabla~: su cara va donde estaba la marca. Marque el lugar arriba."
    ),
    "edges.pins_back": (
        "Sus ~estacas de acero~ sostienen una ~tabla~: ponga en la línea el borde de cada una, no su ~centro~."
    ),
    "edges.pins_past": (
        "Sus ~estacas de acero~ sostienen una ~tabla~: sus ~centros~ van media ~estaca~ detrás de ella."
    ),
    "edges.in_the_way_pin": "Sus ~estacas de acero~ ocupan el lugar de una ~tabla~: saque cada una antes de la suya.",
    "edges.in_the_way_marked": "Sus ~estacas~ ocupan el lugar de una ~tabla~: saque cada una antes de la suya.",
    "edges.form_behind": "Las ~estacas~ de ~forma~ van {size} atrás de cada borde: ahí entra la {board}.",
    "edges.passes": "En dos pasadas",
    "edges.hubs_first": "Primero clave ~trompos~ fuera de la excavación: al excavar se pierden sus ~estacas~.",
    "edges.paint": "Pinte la línea de excavación {size} más allá de cada borde, y excave.",
    "edges.paint_ends": "También pasando {ends}: {size}.",
    "edges.paint_at": "Pinte la línea de excavación sobre cada borde, y excave.",
    "edges.paint_footing": "Pinte la línea de excavación {size} más allá de cada borde de la zapata, y excave.",
    "edges.paint_footing_at": "Pinte la línea de excavación sobre cada borde de la zapata, y excave.",
    "edges.line_again": "Después de excavar y tender la base, trace otra vez la línea desde los ~trompos~.",
    "edges.clear_of_dig": "Sus ~estacas~ quedan fuera de la excavación.",
    "edges.line_again_stakes": "Después de excavar y tender la base, trace otra vez la línea desde sus ~estacas~.",
    "edges.stick": "Vara de ancho: {length}",
    "edges.stick_tapers": "Vara de ancho: una marca por ~estaca~",
    "edges.stick_first": "cara de la primera ~tabla~",
    "edges.stick_line": "la línea de sus ~estacas~",
    "edges.stick_other": "cara de la otra ~tabla~",
    "edges.stick_form": "sus ~estacas~, atrás de la {board}",
    "edges.stick_edge": "cara de cada ~tabla~",
    "edges.stick_at": "{size}: {what}",
    "edges.stick_drawn": "Una vara con tres marcas: {marks}.",
    "edges.first_outside": "Ponga primero la ~tabla~ exterior.",
    "edges.first_inside": "Ponga primero la ~tabla~ interior.",
    "edges.how_halved": "La vara da cada borde, a la mitad del ancho de sus ~estacas~.",
    "edges.how_square": "Tenga la vara ~a nivel~, y ~a escuadra~ con la curva, a ojo.",
    "edges.long_stick": "Es mucho para una vara: use la ~cinta~, bien tirante y ~a nivel~.",
    "edges.proves_square": "Para probar la escuadra: de la punta a la ~estaca~ de cada lado debe medir {length}.",
    "edges.proves_square_both": (
        "Para probar la escuadra: de la punta a la ~estaca~ vecina mide {outer} por fuera, {inner} por dentro."
    ),
    "edges.proves_square_each": (
        "Para probar la escuadra, mida de la punta a las ~estacas~ de los lados: las diagonales están abajo."
    ),
    "edges.from_stakes": "Directo desde sus ~estacas~: al borde exterior {outer}, al interior {inner}.",
    "edges.off_hub": "{stake} queda {miss}: ponga su ~trompo~ a {off} y escríbale {usual}.",
    "edges.off_gauge": "{stake} queda {miss}: desde ella el borde exterior va a {outer}, el interior a {inner}.",
    "edges.off_curve": "{stake} queda {miss}: desde ella el borde curvo va a {edge}.",
    "edges.got": "Una ~estaca~ fuera del ~arco~ se lleva el otro borde: ahí mida desde la ~tabla~.",
    "edges.slip": "Con la punta {slip} fuera de escuadra, al ~concreto~ le falta de ancho menos de {narrow}.",
    "edges.ends_head": "{edge}: sus extremos, sin usar el ~centro~",
    "edges.end_in": "{mark}: {width} desde {near}, hacia el ~centro~, y {diagonal} desde {far}.",
    "edges.end_out": "{mark}: {width} desde {near}, alejándose del ~centro~, y {diagonal} desde {far}.",
    "edges.end_same": "{mark}: igual, {near} y {far}.",
    "edges.chord_reads": "{first} a {last}: {chord}.",
    "edges.ends_by_stick": (
        "{first} y {last}: con la vara, ~a escuadra~ con la curva. Luego, de {first} a {last} debe medir {chord}."
    ),
    "edges.string_stopped": "El ~hilo~ de {first} a {last} topa con {what}: use la vara.",
    "edges.string_no_room": "No hay lugar para el ~hilo~ de {first} a {last}: use la vara.",
    "edges.check_head": "~Revisión~: las diagonales",
    "edges.check_alike": (
        "De ~forma~ interior a exterior en la ~estaca~ siguiente, y al revés: {diagonal} en los {count} espacios."
    ),
    "edges.check_each": "En cada espacio, de ~forma~ interior a exterior en la ~estaca~ siguiente, y al revés.",
    "edges.check_taper": "Las dos difieren donde cambia el ancho: cada una debe medir lo de la lista.",
    "edges.check_where": "La lista: Obra, Bordes.",
    "edges.check_slid": "Si una no da, una ~estaca~ se corrió a lo largo de la curva.",
    "edges.diagonal": "{start} a {end}",
    "edges.bay": "diagonal",
    "edges.reads": "debe medir",
    "edges.some": "Las primeras {shown} de {count}: en la hoja no caben todas.",
    "edges.own": "{edge} desde su propio ~hilo~, ~a escuadra~ hacia la {hand}",
    "edges.stake": "~estaca~",
    "edges.along": "a lo largo, desde {first}",
    "edges.square_off": "~a escuadra~",
    "edges.width": "ancho de losa",
    "edges.width_of_wall": "espesor del muro",
    "edges.from_stake": "desde su ~estaca~",
    "edges.before": "{size} antes de {mark}",
    "edges.past": "{size} pasando {mark}",
    "edges.other_side": "{size}, del otro lado",
    "edges.taper_even": "El ancho cambia parejo a lo largo de la curva: {first} en A, {last} en B.",
    "edges.taper_one": (
        "El borde que cambia de ancho no es ~arco~ exacto: trácelo por los anchos, y deje la ~tabla~ pareja."
    ),
    "edges.taper_both": "Ningún borde es ~arco~ exacto: trace los dos por los anchos, y deje las ~tablas~ parejas.",
    "edges.taper_dig": (
        "Donde cambia el ancho, del borde a las ~estacas~ de ~forma~ va el grueso de la ~tabla~. A la excavación, "
        "{size}."
    ),
    "edges.level": "Todas son medidas ~a nivel~: en esta ~pendiente~, tenga la ~cinta~ ~a nivel~.",
    "edges.swing": "El borde interior es cerrado. Si alcanza el ~centro~, trácelo desde ahí con {radius}.",
    "edges.dig_all": "Por dentro, la excavación llega al ~centro~: excave todo.",
    "edges.curb_lines": "El ~plano~ da una línea de la ~guarnición~. Las otras, en su detalle: aquí no se suponen.",
    "edges.footing_middle": "La zapata se toma centrada bajo el muro, {past} más allá de cada cara.",
    "edges.footing_narrow": "La zapata se toma centrada bajo el muro, {past} adentro de cada cara.",
    "edges.footing_toe": (
        "Cuál borde es la punta depende de qué lado esté la tierra. Vea el ~plano~; si no va centrada, cambian los dos."
    ),
    "edges.footing_tapers": "La zapata se toma centrada bajo el muro, del mismo ancho en todo.",
    "edges.overdig_taken": "La excavación pasa {size} de cada borde, si no se dice otra cosa.",
    "edges.in_the_concrete": "En el ~concreto~ queda: {what}.",
    "edges.in_the_wall": "En el muro queda: {what}.",
    "edges.in_the_dig": "En la excavación queda: {what}.",
    "edges.dig_thing": (
        "En la excavación queda: {what}. Ahí no llegue con la excavación. Pregunte antes de cortar raíces o moverlo."
    ),
    "edges.dig_thing_outside": (
        "En {at} queda en la excavación: {what}, {deep} adentro de su línea exterior. Ahí no llegue con la excavación. "
        "Pregunte antes de cortar raíces o moverlo."
    ),
    "edges.dig_thing_inside": (
        "En {at} queda en la excavación: {what}, {deep} adentro de su línea interior. Ahí no llegue con la excavación. "
        "Pregunte antes de cortar raíces o moverlo."
    ),
    "edges.dig_thing_left": (
        "En {at} queda en la excavación: {what}, {deep} adentro de su línea izquierda. Ahí no llegue con la "
        "excavación. Pregunte antes de cortar raíces o moverlo."
    ),
    "edges.dig_thing_right": (
        "En {at} queda en la excavación: {what}, {deep} adentro de su línea derecha. Ahí no llegue con la excavación. "
        "Pregunte antes de cortar raíces o moverlo."
    ),
    "edges.dig_thing_end": (
        "Más allá de {end} queda en la excavación: {what}, {deep} adentro de su línea. Ahí no llegue con la "
        "excavación. Pregunte antes de cortar raíces o moverlo."
    ),
    "edges.stands": "{mark} cae en {what}. Pregunte antes de excavar.",
}
