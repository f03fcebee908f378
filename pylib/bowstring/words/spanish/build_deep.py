"""A thicker stretch of a slab, and the depths measured down to its base, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "deep.apron_title": "El tramo grueso",
    "deep.apron_short": "{depth} de espesor {stretch} por la ~forma~ exterior",
    "deep.on_paper": "Tramo grueso {depth}: exterior {outer}, interior {inner}.",
    "deep.stretch": "de {first} a {last}",
    "deep.on_both": (
        "Desde A: de {outer_first} a {outer_last} por la ~forma~ exterior, de {first} a {last} por la interior."
    ),
    "deep.on_line": "Dado por la línea del ~plano~: de {first} a {last}. Si la losa se ensancha, ahí se queda.",
    "deep.on_outer": "Dado por la ~forma~ exterior. ¿Lo midió por la línea del ~plano~? Dígalo con la losa.",
    "deep.depth_apron": "{depth}, tramo grueso {apron},",
    "deep.depth_mean": "{mean}, promedio de {count} profundidades,",
    "deep.draw": "tramo grueso {depth}",
    "deep.bed_under": "Tramo grueso: {apron}. Ahí la base baja de golpe, *{gap} abajo del pie*.",
    "deep.bed_at": "Tramo grueso: {apron}. Ahí la base baja de golpe, hasta el pie.",
    "deep.bed_over": "Tramo grueso: {apron}. Ahí la base baja de golpe, *{gap} arriba del pie*.",
    "deep.dig": "*Tramo grueso, {stretch} por la ~forma~ exterior:* excave {deeper} más entre las ~formas~.",
    "deep.dig_line": "*Tramo grueso, {stretch} por la línea:* excave {deeper} más entre las ~formas~.",
    "deep.step": "En sus extremos la base baja de golpe; en talud lleva más.",
    "deep.apron_takes": "El tramo grueso es de {area} con {depth} de espesor: *{extra}* más que la losa sola.",
    "deep.apron_forms": (
        "En el tramo grueso las ~formas~ siguen de igual altura. No toque donde se apoyan: corte lo hondo por dentro."
    ),
    "deep.begins": "empieza el tramo grueso",
    "deep.ends": "termina el tramo grueso",
    "deep.joints_stand": (
        "*Las ~juntas~ {first} y {last} van en los extremos del tramo grueso:* de aislamiento, de {gap} de ancho, "
        "salvo que se especifique otra cosa."
    ),
    "deep.joint_stands": (
        "*La ~junta~ {joint} va en el extremo del tramo grueso:* de aislamiento, de {gap} de ancho, salvo que se "
        "especifique otra cosa."
    ),
    "deep.joints_short": "*~Juntas~ {joints} (tramo grueso):* aislamiento, {gap}; dentro, {depth} de hondo.",
    "deep.joint_none": (
        "*Falta ~junta~ en {where}, donde termina el tramo grueso:* agregue una de aislamiento, de {gap}, salvo que se "
        "especifique otra cosa."
    ),
    "deep.end_arc": "{outside} por fuera, {inside} por dentro",
    "deep.end_line": "{at}: ~forma~ izquierda {left}, derecha {right}",
    "deep.joint_depth": "Dentro del tramo grueso las ~juntas~ se cortan *{depth} de hondo*.",
    "deep.no_joint": "los extremos del tramo grueso no tienen ~junta~",
    "deep.sign_both": "{depth}, tramo grueso {apron}",
    "deep.sign_apron": "Base bajo el canto, tramo grueso",
    "deep.measured_title": "Las profundidades medidas",
    "deep.by_depths": "por {count} profundidades medidas, promedio {mean}",
    "deep.one": "hay una sola profundidad: hacen falta dos",
    "deep.crown": "El bombeo va arriba del ~hilo~ entre ~formas~: mida desde la regla con bombeo.",
    "deep.two_needed": "Hay una sola profundidad. Hacen falta {least}: el pedido va por el ~plano~.",
    "deep.drawn_yards": "Solo con el espesor del ~plano~ se pedirían {order} yardas.",
    "deep.drawn_metres": "Solo con el espesor del ~plano~ se pedirían {order} m³.",
    "deep.drawn_bags": "Solo con el espesor del ~plano~ serían {order} bultos.",
    "deep.ends_taken": (
        "Entre dos profundidades cambia parejo, por área. Antes de la primera y después de la última queda igual."
    ),
    "deep.edges_taken": "Al borde grueso se le supone el mismo error que a la base de al lado.",
    "deep.mean_before": "Antes del tramo grueso: {mean} en promedio, de {count} medidas.",
    "deep.mean_apron": "En el tramo grueso: {mean} en promedio, de {count} medidas.",
    "deep.mean_after": "Después del tramo grueso: {mean} en promedio, de {count} medidas.",
    "deep.unread_before": "Antes del tramo grueso no se midió: {mean} según el ~plano~.",
    "deep.unread_apron": "En el tramo grueso no se midió: {mean} según el ~plano~.",
    "deep.unread_after": "Después del tramo grueso no se midió: {mean} según el ~plano~.",
    "deep.thin": "*Aquí queda delgada: en {at} solo {depth} de {drawn}.*",
    "deep.thin_limit": (
        "ACI 117-10, 4.5.4, según se cita: hasta {mean} menos en promedio, {one} en un punto. Manda su especificación."
    ),
    "deep.thin_over": (
        "*Pasa de ACI 117-10, 4.5.4, según se cita:* {mean} en promedio, {one} en un punto. Rebaje la base."
    ),
    "deep.fills": "Con {order} se llena una base hasta {low} más baja que lo medido, sin tirar nada.",
    "deep.if_drawn": "{thickness} según el ~plano~, sin medir",
    "deep.panels": "Los paneles llevan de *{least}* a *{most}*, según cambia la profundidad.",
    "deep.wall": "Sin pedido: un muro no lleva tramo grueso",
    "deep.wall_more": "Quite el tramo grueso.",
    "deep.wall_depths": "Sin pedido: las profundidades medidas no son para un muro",
    "deep.wall_depths_more": "Quite las profundidades.",
    "deep.fill": "Sin pedido: no hay tramo grueso en una losa que llena su curva",
    "deep.fill_more": "Quítelo y calcule ese tramo aparte.",
    "deep.fill_depths": "Sin pedido: no hay profundidades medidas en una losa que llena su curva",
    "deep.fill_depths_more": "Quite las profundidades.",
    "deep.apron_past": "Sin pedido: el tramo grueso pasa de B",
    "deep.apron_past_more": "Llega a {at}; la ~forma~ exterior mide {length}.",
    "deep.apron_past_line": "Sin pedido: el tramo grueso pasa del final de la línea",
    "deep.apron_past_line_more": "Llega a {at}; la línea mide {length}.",
    "deep.apron_kink": "Sin pedido: el tramo grueso termina en la esquina de un quiebre",
    "deep.apron_kink_more": "Ahí no puede terminar ~a escuadra~: mueva ese extremo por la línea.",
    "deep.apron_none": "Sin pedido: el tramo grueso no tiene largo",
    "deep.apron_none_more": "Empieza donde termina la losa, en {at}.",
    "deep.depth_past": "Sin pedido: una profundidad queda pasando B",
    "deep.depth_past_more": "Está en {at}; la ~forma~ exterior mide {length}.",
    "deep.depth_past_line": "Sin pedido: una profundidad queda pasando el final de la línea",
    "deep.depth_past_line_more": "Está en {at}; la línea mide {length}.",
    "deep.depth_step": "Sin pedido: una profundidad está justo en el extremo del tramo grueso",
    "deep.depth_step_more": "La base baja de golpe en {at}: mida a un lado.",
    "deep.depth_kink": "Sin pedido: dos profundidades están en la esquina de un quiebre",
    "deep.depth_kink_more": "Deje fuera una.",
    "deep.change": "Cambiar la losa",
    "deep.edge_band": "a lo largo de las dos ~formas~",
    "deep.edge_string": "a lo largo de la curva y del ~hilo~",
    "deep.edge_back": "a lo largo de la curva, los lados y atrás",
    "deep.edge_both": "a lo largo de las dos curvas y los lados",
    "deep.edge_building": "a lo largo de la curva, los lados y el edificio",
    "deep.edge_dug": (
        "*Borde grueso:* zanja {where}, por dentro de las ~formas~, *{wide}* de ancho, a *{deep}* bajo los cantos."
    ),
    "deep.edge_no_base": (
        "*Borde grueso:* zanja {where}, por dentro de las ~formas~, *{wide}* de ancho; {depth} de ~concreto~ bajo los "
        "cantos."
    ),
    "deep.edge_footing": "No excave bajo la zapata del edificio.",
    "deep.edge_signed": "{depth}; {wide}",
    "deep.edge_bed": (
        "Borde grueso, {where}: {wide} de ancho, ahí la base está *{depth} abajo del canto de las ~formas~*."
    ),
    "deep.edge_curve": "en la curva",
    "deep.edge_curves": "en las dos curvas",
    "deep.edge_sides": "en la curva y los dos lados",
    "deep.cut": "Corte y relleno {where} son hasta el fondo de la zanja, *{deep}* abajo de los cantos.",
    "deep.cut_beside": (
        "Corte y relleno {where} son hasta el fondo de la zanja, *{deep}* abajo de los cantos. En A-2 y B-2, hasta "
        "abajo de la base."
    ),
    "deep.past_held": "Más afuera excave solo hasta el pie de la ~tabla~, sin base.",
    "deep.past_boards": "Ábrala hasta la línea de excavación: sus ~tablas~ bajan {foot}.",
    "deep.edge_asked": "*¿Borde grueso todo alrededor?*",
    "deep.edge_or": "Solo {where}: *{order}*.",
}
