"""A wall and its footing, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "walled.asked": "{thickness} de espesor: ¿es un muro?",
    "walled.asked_more": "sin eso no hay pedido",
    "walled.first": "¿Losa o muro?",
    "walled.is_wall": "Un muro, {thickness} de alto",
    "walled.is_slab": "Una losa, {thickness} de espesor",
    "walled.told": "{thickness} de espesor: ¿es un muro?|¿O están al revés espesor y ancho?",
    "walled.line": "El muro: {width} de espesor, {height} de alto",
    "walled.line_footing": "zapata de {width} x {depth}",
    "walled.blank": "?",
    "walled.swapped": "{width} de espesor y {height} de alto|¿Están al revés?",
    "walled.narrow": "Zapata de {footing}, muro de {width}|La zapata es más angosta que el muro que carga.",
    # the concrete
    "walled.then": "{first}, luego {last}",
    "walled.unit_yards": "yardas: zapata, luego muro",
    "walled.unit_metres": "m³: zapata, luego muro",
    "walled.unit_bags": "bultos de {bag}: zapata, luego muro",
    "walled.unit_mixed": "zapata, luego muro; bultos de {bag}",
    "walled.so_many_bags": "{count} bultos",
    "walled.so_many_yards": "{volume} yardas",
    "walled.order_yards": "Zapata {first}, luego muro {last} yardas",
    "walled.order_metres": "Zapata {first}, luego muro {last} m³",
    "walled.order_bags": "Zapata {first}, luego muro {last} bultos de {bag}",
    "walled.order_mixed": "Zapata {first}, luego muro {last}",
    "walled.more_yards": "{number} yardas en dos colados",
    "walled.more_metres": "{number} m³ en dos colados",
    "walled.more_bags": "dos colados",
    "walled.why_footing": "Zapata *{net}* sin desperdicio, {with_waste} con {waste}.",
    "walled.why_wall": "Muro *{net}* sin desperdicio, {with_waste} con {waste}.",
    "walled.footing_first": "Primero la zapata: {told}",
    "walled.wall_then": "Luego el muro: {told}",
    "walled.lift": "{height} de alto del muro lleva *{volume}*. Súbalo por capas, parejo a todo lo largo.",
    "walled.call_half": ("Medio camión vaciado: *{plan}* de alto, parejo. Llame a la planta si va abajo de *{call}*."),
    "walled.call_last": (
        "Medio camión {number} vaciado: *{plan}* de alto, parejo. Llame a la planta si va abajo de *{call}*."
    ),
    "walled.panel": "Cada panel lleva *{volume}*.",
    "walled.bed_dug": (
        "Una base de {base} son {volume} ya en su lugar bajo la zapata, {dug} en toda la excavación. Pida más: se "
        "compacta."
    ),
    "walled.bed": "Una base de {base} bajo la zapata son {volume} ya en su lugar. Pida más: se compacta.",
    "walled.if_high": "muro de {height} de alto",
    "walled.if_deep": "zapata de {depth} de espesor",
    "walled.call_small": "zapata, ~forma~ exterior, desde A",
    "walled.reach_note": "Es de la zapata, colada desde A. Si no llega a esa marca, el pedido no alcanza hasta B.",
    # its top and joints
    "walled.level_top": "Arriba ~a nivel~, a lo largo y a lo ancho",
    "walled.level_how": "La misma altura en cada ~estaca~, en las dos caras.",
    "walled.joints": "~Juntas~ según el ~plano~",
    "walled.taped": "Mida cada una desde A, nunca de marca a marca, por la *~cara del concreto~*.",
    "walled.taped_line": (
        "Mida cada una desde el inicio de la línea, nunca de marca a marca, por la *~cara del concreto~*."
    ),
    # what is under it
    "walled.below": "Bajo el canto del muro: zapata por arriba *{footing}*, fondo de la excavación *{dig}*.",
    "walled.below_base": (
        "Bajo el canto del muro: zapata por arriba *{footing}*, fondo de la zapata {under}, fondo de la excavación "
        "*{dig}* con la base."
    ),
    "walled.below_bottom": "Pie del muro: *{height}* abajo del canto.",
    "walled.of_top": "canto {at}",
    "walled.of_wall": "pie del muro {at}",
    "walled.of_footing": "zapata por arriba {at}",
    "walled.of_under": "fondo de la zapata {at}",
    "walled.of_dig": "fondo de la excavación {at}",
    "walled.levels": "Elevaciones, {unit}: {told}.",
    "walled.rods": "El estadal marca: {told}.",
    "walled.read": "{feet} ({marks})",
    "walled.all_along": "En todo el largo",
    "walled.at_A": "En A",
    "walled.head_below": "abajo del canto",
    "walled.head_level": "elevación, {unit}",
    "walled.head_rod": "estadal; aparato {hi}",
    "walled.row_top": "Canto del muro",
    "walled.row_wall": "Pie del muro",
    "walled.row_footing": "Zapata por arriba",
    "walled.row_under": "Fondo de la zapata",
    "walled.row_dig": "Fondo de la excavación",
    "walled.digs": "Corte o relleno; terreno",
    "walled.over_ground": "{form}; terreno",
    "walled.ground_at": "{dig}; {level}",
    "walled.runs_with_top": ("Se toma que la zapata corre con el canto. Si no, excave según el ~plano~."),
    "walled.to_base": "Corte y relleno son hasta el fondo de la base, bajo la zapata.",
    "walled.near_cut_row": "~estacas~ a {gap} de una excavación de {deep} de hondo",
    "walled.near_cut": (
        "Sus ~estacas~ quedan a {gap} de una excavación de {deep} de hondo. Lo usual: tan lejos como es de honda."
    ),
    "walled.no_base": "No se dio base: corte y relleno son hasta el fondo de la zapata.",
    "walled.needs_height": "Falta el alto del muro, para su zapata y su excavación.",
    "walled.needs_footing": "Falta el tamaño de la zapata: corte y relleno son hasta su fondo.",
    # its faces, its footing's forms, its dig
    "walled.faces": "Caras de {outside} y {inside}",
    "walled.faces_footing": "zapata: {board}",
    "walled.faces_low": "zapata: {board} es baja, {height} de alto",
    "walled.faces_unlisted": "las ~tablas~ de la zapata no se listan",
    "walled.forms_designed": "Las ~formas~ del muro se calculan",
    "walled.by_supplier": "no van ~tablas~ y ~estacas~",
    "walled.faces_designed": "sus ~formas~ se calculan",
    "walled.forms": "~Formas~ del muro: {outside} por fuera, {inside} por dentro, {height} de alto",
    "walled.areas": "Área de contacto: {outside} por fuera, {inside} por dentro.",
    "walled.end_forms": "Cabezales: 2, de {width} x {height} de alto.",
    "walled.end_forms_tapered": "Cabezales: {near} de ancho en A, {far} en B, {height} de alto.",
    "walled.ends_flush": "Se supone que la zapata termina al ras del muro.",
    "walled.plywood": (
        "Triplay de hasta {thickness} se dobla en seco a R {radius}, veta a lo largo; la lista del "
        "fabricante admite {least}."
    ),
    "walled.no_plywood": "Ningún triplay de la lista se dobla en seco a R {radius}: {least} cuando menos.",
    "walled.sheets": "Hojas de {across} x {along}, del alto del muro: {outer} por fuera, {inner} por dentro.",
    "walled.sheets_ripped": (
        "Hojas de {across} x {along}: {outer} por fuera, {inner} por dentro, y {ripped} para tiras: la fila de arriba "
        "es de solo {strip} de alto."
    ),
    "walled.sheets_strips": "Hojas de {across} x {along}: {ripped} para las dos caras, en tiras de {strip} de alto.",
    "walled.footing_edges": (
        "~Formas~ de la zapata: {outer} por fuera en R {out_radius}, {inner} por dentro en R {in_radius}."
    ),
    "walled.footing_boards": "Zapata: {told} {stakes} ~estacas~ de ~forma~, 10% de repuesto.",
    "walled.footing_title": "~Formas~ de la zapata: cortes y ~estacas~",
    "walled.footing_list": "{boards} ~tablas~, {stakes} ~estacas~ de ~forma~, 10% de repuesto",
    "walled.first_outside": "Ponga primero la ~forma~ exterior.",
    "walled.first_inside": "Ponga primero la ~forma~ interior.",
    "walled.line_outside": "Cara exterior",
    "walled.line_inside": "Cara interior",
    "walled.other_inside": "Cara interior R {radius}, a {width}",
    "walled.other_outside": "Cara exterior R {radius}, a {width}",
    "walled.both": "Cara exterior R {outer}, interior R {inner}, {width} de espesor",
    "walled.from_stakes": "Directo desde sus ~estacas~: a la cara exterior {outer}, a la interior {inner}.",
    "walled.draw_outside": "cara exterior R {radius}",
    "walled.draw_outside_taper": "cara exterior, cambia de espesor",
    "walled.draw_inside": "cara interior R {radius}",
    "walled.draw_inside_taper": "cara interior, cambia de espesor",
    "walled.taper_one": "La cara que cambia de espesor no es ~arco~ exacto: trácela por el espesor en cada ~estaca~.",
    "walled.taper_both": "Ninguna cara es ~arco~ exacto: trace las dos por el espesor en cada ~estaca~.",
    "walled.ends_square": "Los dos extremos del muro van ~a escuadra~ con la línea.",
    "walled.slip": "Con la punta {slip} fuera de escuadra, al muro le falta de espesor menos de {narrow}.",
    "walled.row_forms": "~Formas~",
    "walled.ask_level": "¿Va ~a nivel~ arriba?",
    "walled.designed": "Presión, tirantes y puntales: el fabricante y un ingeniero con licencia.",
    "walled.stick_two": "Una vara con dos marcas: {marks}.",
    "walled.stick_first": "una cara",
    "walled.stick_other": "la otra cara",
    "walled.line_is_left": "La línea es la cara izquierda. La vara da la derecha, a {width}.",
    "walled.line_is_right": "La línea es la cara derecha. La vara da la izquierda, a {width}.",
    "walled.unlisted": "No se listan las ~tablas~ de la zapata: calcúlelas de sus bordes.",
    "walled.no_stakes": "Sin ~estacas~ de ~forma~: las ~formas~ del muro van sobre la zapata.",
    "walled.line_first": "Antes de colar la zapata, la línea en sus ~formas~: anclas y llave.",
    "walled.line_again": "Colada la zapata, la línea otra vez, desde los ~trompos~.",
    "walled.line_again_stakes": "Colada la zapata, la línea otra vez.",
    "walled.dig": "La excavación: {area} en planta, {volume} por cada {deep} de hondo.",
    "walled.dig_ends": "Excave {size} también pasando {ends}.",
    "walled.in_dig": (
        "Sus ~estacas~ quedan en la excavación|Póngalas retiradas de la línea: a "
        "más de {outside} por fuera, o {inside} por dentro."
    ),
    "walled.in_dig_fill": (
        "Sus ~estacas~ quedan en la excavación|Póngalas retiradas de la línea: a más de {outside} por fuera."
    ),
    "walled.in_dig_row": "sus ~estacas~ quedan en la excavación",
    # estacas que la excavación se lleva, antes de clavar una
    "in_dig.told": "{head}. {dug}",
    "in_dig.head": "Sus ~estacas~ quedan en la excavación",
    "in_dig.head_slab": "La excavación se lleva estas ~estacas~",
    "in_dig.past_footing": "{past} más allá de la zapata",
    "in_dig.past_wall": "{past} más allá de cada cara",
    "in_dig.past_slab": "{past} más allá de cada borde",
    "in_dig.dug": "Se excava {past}.",
    "in_dig.by_depth": "Quédese tan lejos de la excavación como es de honda (se tomó {deep}).",
    "in_dig.deep_each": "{outside} por fuera, {inside} por dentro",
    "in_dig.hint": "Si las deja: ~trompos~ afuera antes de excavar.",
    "in_dig.hint_deep": "Tan lejos como es de honda (se tomó {deep}), o ponga antes ~trompos~.",
    "in_dig.outside": "Ponerlas {off} por fuera",
    "in_dig.inside": "Ponerlas {off} por dentro",
}
