"""The form sheet on paper, in Spanish as on US sites."""

# From memory, all of it; the cautions as in face_paper.

MESSAGES = {
    "forms.front": "~FORMAS~, frente",
    "forms.back": "~FORMAS~, atrás",
    "forms.more": "~FORMAS~, más",
    "forms.front_title": "{title}: ~formas~",
    "forms.back_title": "{title}: niveles y colado",
    "forms.turn_over": "Voltee: niveles, colado",
    "forms.foot_grades": "Cada canto se redondea de su valor exacto.",
    "forms.stakes_on": "Sus ~estacas~: {line}.",
    "forms.slab_outside": "Losa POR DENTRO de la curva desde la línea, {width} de ancho.",
    "forms.slab_inside": "Losa POR FUERA de la curva desde la línea, {width} de ancho.",
    "forms.slab_centre": "Losa mitad a cada lado de la línea, {width} de ancho.",
    "forms.none": "No hay hoja de ~formas~ hasta resolverlo. ¿La losa es todo lo de adentro de la curva? Dígalo así.",
    "forms.slab_fills": "La losa llena la curva, hasta A-B, {width} de fondo.",
    "forms.slab_tapers": "Losa de {width} de ancho en A, {far} en B.",
    "forms.stakes_off_outside": "Sus ~estacas~: {shown} POR FUERA de la línea del ~plano~.",
    "forms.stakes_off_centre": "Sus ~estacas~: {shown} POR DENTRO de la línea del ~plano~.",
    "forms.wall_outside": "Muro de {size}, POR DENTRO de la línea del ~plano~.",
    "forms.wall_inside": "Muro de {size}, POR FUERA de la línea del ~plano~.",
    "forms.wall_centre": "Muro de {size}, mitad a cada lado de la línea del ~plano~.",
    "forms.wall_thick": "{width} de espesor",
    "forms.wall_tapers": "{width} de espesor en A, {far} en B",
    "forms.wall_high": "{thick}, {height} de alto",
    "forms.wall_footing": "Zapata de {width} x {depth}.",
    "forms.thick": "{depth} de espesor.",
    "forms.line": "línea",
    "forms.off_stakes": "desde sus ~estacas~",
    "forms.radius": "~radio~",
    "forms.chord": "~cuerda del arco~",
    "forms.mid_ordinate": "~flecha~",
    "forms.arc": "~arco~",
    "forms.cut": "{name}: {boards}",
    "forms.form_stakes": "{count} ~estacas~ de ~forma~",
    "forms.own_string": "{name}, desde su propio ~hilo~, {hand}",
    "forms.own_string_no_hand": "{name}, desde su propio ~hilo~",
    "forms.stake": "~estaca~",
    "forms.along": "a lo largo",
    "forms.square_off": "~a escuadra~",
    "forms.joint": "~junta~",
    "forms.joints": "~Juntas~: todas desde A, en la ~cara del concreto~",
    "forms.outer_form": "~forma~ exterior",
    "forms.inner_form": "~forma~ interior",
    "forms.outer": "exterior",
    "forms.inner": "interior",
    "forms.both": "las dos",
    "forms.top": "canto",
    "forms.feet": "ft",
    "forms.as_set": "quedó",
    "forms.base_under": "base bajo el canto",
    "forms.sign_off": "Antes del camión: firme",
    "forms.what": "qué",
    "forms.must": "debe ser",
    "forms.got": "dio",
    "forms.init": "inic.",
    "forms.within": "dentro de {tolerance}",
    "forms.as_above": "como arriba",
    "forms.sign_arc": "~Arco~ en A, cuartos, M, B",
    "forms.sign_chord": "~Cuerda del arco~; ~flecha~",
    "forms.sign_width": "Ancho en A, a la mitad, en B",
    "forms.sign_tops": "Cantos en A, M, B y cada ~junta~",
    "forms.sign_joints": "~Juntas~: corte; hondo; cuándo",
    "forms.sign_stakes": "~Estacas~: tornillo, bajas, ~tapón~",
    "forms.elevation": "elev.",
    "forms.rod": "estadal",
    "forms.both_form": "las dos ~formas~",
    "forms.outer_set": "exterior quedó",
    "forms.inner_set": "interior quedó",
    "forms.sign_footing_width": "Zapata: ancho",
    "forms.sign_footing_depth": "Zapata: hondo",
    "forms.sign_thick": "Espesor del muro en A, a la mitad, en B",
    "forms.sign_high": "Alto del muro",
    "forms.sign_sleeves": "Tubos, pasajuntas, varilla",
    "forms.sign_services": "Servicios, espacios libres",
    "forms.sign_booked": "Inspección pedida, para",
    "forms.truck_out": "camión vaciado",
    "forms.plan": "va bien en",
    "forms.call_short": "llame si no llega a",
    "forms.call": "Llame a la planta ({where})",
    "forms.plant": "Planta, teléfono",
    "forms.ordered": "Pedido, para qué hora",
    "forms.date_time": "fecha, hora",
    "forms.may_pour": "se puede colar: nombre",
    "forms.safe_governs": (
        "Mandan el ~plano~, las especificaciones y el código local. La mezcla es de la especificación y de la planta."
    ),
    "forms.safe_cement_wall": "El cemento fresco quema sin doler al principio: guantes, botas, rodilleras.",
    "forms.safe_cement": (
        "El cemento fresco quema sin doler al principio: guantes, botas, rodilleras. Al cortar: agua, respirador."
    ),
    "forms.safe_line": (
        "Revise línea y nivel justo antes de colar. Llame al 811, espere las marcas; póngale ~tapón~ al acero."
    ),
    "forms.sign_slopes": "Borde más empinado; a lo ancho, nivel de {level}",
    "forms.sign_base": "Base bajo canto: prom., mín.",
    "forms.tapers": "A {near}, B {far}",
    "forms.level_feet": "4 ft",
    "forms.level_metric": "1.2 m",
    "forms.diagonals_wall": "*~Revisión~:* las dos diagonales de cada espacio deben dar *{shown}*.",
    "forms.diagonals": (
        "*~Revisión~:* las dos diagonales de cada espacio deben dar *{shown}*. Si una no da, una ~estaca~ se corrió a "
        "lo largo de la curva."
    ),
    "forms.screws": (
        "*Atornille cada ~estaca~, las dos ~tablas~.* Dos tornillos donde la ~tabla~ se despega: exterior, segunda "
        "~estaca~; interior, las dos puntas."
    ),
    "forms.dig": (
        "Excave {past} más allá de cada borde. Primero los ~trompos~ fuera de la excavación; después de excavar se "
        "vuelve a trazar desde ellos."
    ),
    "forms.cut_from": ("{name}, {pieces}: de {boards}"),
    "forms.diagonals_each": ("*~Revisión~:* las diagonales de cada espacio: {told}."),
    "forms.diagonals_rest": ("las demás *{shown}*"),
    "forms.dig_deep": (
        "Excave {past} más allá de cada borde, a *{deep}* bajo los cantos. Primero los ~trompos~, afuera."
    ),
    "forms.dig_apron": (
        "Excave {past} más allá de cada borde, a *{deep}* bajo los cantos, *{apron}* en el tramo grueso. Primero "
        "los ~trompos~, afuera."
    ),
    "forms.wide": "ancho",
}
