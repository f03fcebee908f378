"""The concrete, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "pour.title": "~Concreto~",
    "pour.open": "Faltan ancho y espesor",
    "pour.open_width": "Falta el ancho",
    "pour.open_edge": "Falta de qué lado va la losa",
    "pour.open_thickness": "Falta el espesor",
    "pour.open_more": "sin los dos no hay pedido",
    "pour.no_inner": "Sin pedido: el ancho llega al ~centro~",
    "pour.order_yards": "Pida {number} yardas",
    "pour.order_metres": "Pida {number} m³",
    "pour.bags": "{count} bultos de {bag}",
    "pour.unit_yards": "yardas para pedir",
    "pour.unit_metres": "m³ para pedir",
    "pour.unit_bags": "bultos de {bag}",
    "pour.more": "{volume} en ~formas~; {waste} de desperdicio",
    "pour.tight": "{waste} con desperdicio: sigue {next}",
    "pour.feet2": "{area} ft²",
    "pour.metres2": "{area} m²",
    "pour.yards3": "{volume} yd³",
    "pour.metres3": "{volume} m³",
    "pour.why_quarter": (
        "{area} por {depth} son {volume}; con {waste} de desperdicio, {with_waste}; hasta el siguiente cuarto de yarda."
    ),
    "pour.why_quarter_metre": (
        "{area} por {depth} son {volume}; con {waste} de desperdicio, {with_waste}; hasta el siguiente cuarto de m³."
    ),
    "pour.why_step": (
        "{area} por {depth} son {volume}; con {waste} de desperdicio, {with_waste}; hasta el siguiente {step}."
    ),
    "pour.why_bags": "{area} por {depth} son {volume}; con {waste} de desperdicio, {with_waste}.",
    "pour.call": "Llame a la planta",
    "pour.call_small": "~forma~ exterior, desde A",
    "pour.call_table": "Cuándo llamar a la planta; distancias: {where}",
    "pour.out": "camión vaciado",
    "pour.on_plan": "va bien en",
    "pour.call_at": "llame si no llega a",
    "pour.out_half": "1/2",
    "pour.out_three_quarters": "3/4",
    "pour.out_full": "todo el camión {number}",
    "pour.out_last_half": "1/2 del camión {number}",
    "pour.out_last_three_quarters": "3/4 del camión {number}",
    "pour.at_joint": "~junta~ {joint}",
    "pour.reach_note": (
        "Cuele desde A. Si no llega a esa marca, el pedido no alcanza hasta B. Si pasa, alcanza mientras la base siga "
        "igual. Pregunte al chofer cuánto lleva vaciado; mida por la ~forma~ exterior."
    ),
    "pour.bulkhead": (
        "Tenga lista una tapa en la *~junta~ {joint}*: {outside} por fuera, {inside} por dentro. Con la base {low} más "
        "baja en todo, este pedido se acaba en {ends}."
    ),
    "pour.bulkhead_last": (
        "Tenga lista una tapa en la *~junta~ {joint}*, {outside} por fuera, {inside} por dentro. "
        "Si falta ~concreto~, ahí se corta."
    ),
    "pour.changes": "Qué lo cambia",
    "pour.if": "si",
    "pour.then_yards": "pedido, yd³",
    "pour.then_metres": "pedido, m³",
    "pour.then_bags": "bultos",
    "pour.depth_edges": "{depth}, bordes de {edge},",
    "pour.if_low": "base {low} más baja en todo",
    "pour.if_thick": "{thickness} de espesor",
    "pour.if_wide": "{width} de ancho",
    "pour.if_wider": "{more} más ancho en todo",
    "pour.if_waste": "{waste} de desperdicio",
    "pour.low_over": "+{extra}: más que el desperdicio",
    "pour.low_under": "+{extra}: sale del desperdicio",
    "pour.fills": "Con {order} se llena una base hasta {low} más baja en promedio, sin tirar nada.",
    "pour.fills_bags": "Con {order} bultos se llena una base hasta {low} más baja en promedio, sin tirar nada.",
    "pour.fills_none": "{order}: apenas para llenar las ~formas~ como en el ~plano~.",
    "pour.measure": "Mida la base en cada ~estaca~ antes de pedir.",
    "pour.comes": "Cómo llega",
    "pour.one_truck": "*Un camión* de hasta {truck}.",
    "pour.trucks": (
        "*{count} camiones* de {truck}, {last} en el último. "
        "Pregunte a la planta cómo los reparte y cada cuánto los manda."
    ),
    "pour.small_load": "En camión son *{order}*: pregunte a la planta cuánto cobra por camión incompleto.",
    "pour.panel": "Cada panel lleva *{panel}*; {one} alcanza para *{reach}* de la ~forma~ exterior.",
    "pour.panel_one": "Lleva *{panel}*; {one} alcanza para *{reach}* de la ~forma~ exterior.",
    "pour.panels_taper": "Los paneles llevan de *{least}* a *{most}*, según cambia el ancho.",
    "pour.panel_bags": "Cada panel lleva como *{count} bultos*.",
    "pour.one_yard": "una yarda",
    "pour.one_metre": "un m³",
    "pour.bag_feet": "0.60 ft³",
    "pour.bag_litres": "11.5 litros",
    "pour.bag_makes": "Se calcula que un bulto de {bag} rinde {made}: vea el bulto.",
    "pour.bags_many": "*{count} bultos de {bag}*: pida camión.",
    "pour.form_even": "La ~forma~ mide {height} de alto, lo mismo que la losa.",
    "pour.form_short": "La ~forma~ mide {height} de alto: la base queda {off} abajo de su pie. Arrímele tierra.",
    "pour.form_measured": (
        "La ~forma~ mide {height} de alto: según lo medido la base queda hasta {off} abajo de su pie. Arrímele tierra."
    ),
    "pour.form_low": "Una ~forma~ de {height} de alto deja una abertura de {off} bajo su pie: use ~tabla~ más alta.",
    "pour.form_deep": "La ~forma~ mide {height} de alto: su pie entra {off} en la base.",
    "pour.edges": (
        "Los bordes de {depth} de hondo por {wide} {where} suman *{extra}*, de lados a plomo. Inclinados llevan más."
    ),
    "pour.footing": (
        "La zapata, de {wide} de ancho y {depth} de espesor bajo el medio, lleva {volume}. "
        "Se cuela primero: pida *{order}* para ella, con {waste} de desperdicio."
    ),
    "pour.form_wall": "Sus ~formas~ y puntales se calculan, no son ~tablas~ con ~estacas~.",
    "pour.base_dug": "*Base {base}:* {volume} ya en su lugar, en toda la excavación.",
    "pour.base_slab": "*Base {base}:* {volume} ya en su lugar, bajo la losa.",
    "pour.bed_dug": (
        "Una base de {base} son {volume} ya en su lugar bajo la losa, {dug} en toda la excavación. Pida más: se "
        "compacta."
    ),
    "pour.bed": "Una base de {base} bajo la losa son {volume} ya en su lugar. Pida más: se compacta.",
    "pour.both": "{order} son {other}.",
    "pour.taken_waste": "Se toma {waste} de desperdicio; lo usual es 5 a 10%.",
    "pour.taken_step": "Se redondea de a {step}: pregunte a su planta cómo vende.",
    "pour.burns": "*El cemento fresco quema sin doler al principio.* Guantes, botas, rodilleras; lávese.",
    "pour.mix": "La mezcla, el aire, el revenimiento y el curado los dicen la especificación y la planta. Aquí no.",
}
