"""The numbers face: what is told of the slab and of its slope, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "numbers.line_slab": "Losa o muro",
    "numbers.line_slope": "~Pendiente~ de arriba",
    "numbers.panel_slab": "¿Qué ancho, de qué lado, qué espesor?",
    "numbers.panel_slope": "¿Hacia dónde va la ~pendiente~?",
    "numbers.unsaid": "Sin dar",
    # the slab's line
    "numbers.slab_wide": "{width} de ancho",
    "numbers.slab_tapers": "de {width} a {end} de ancho",
    "numbers.slab_no_width": "falta el ancho",
    "numbers.slab_lies.outside": "por dentro",
    "numbers.slab_lies.centre": "la mitad a cada lado",
    "numbers.slab_lies.inside": "por fuera",
    "numbers.slab_lies.left": "su línea es el borde izquierdo",
    "numbers.slab_lies.right": "su línea es el borde derecho",
    "numbers.slab_fills": "llena la curva",
    "numbers.slab_sides": "lados de {sides} atrás",
    "numbers.slab_both_sides": "lados de {sides}, dos puntas redondas",
    "numbers.slab_no_side": "falta el lado",
    "numbers.slab_back.formed": "punta cuadrada con ~forma~",
    "numbers.slab_back.against": "punta cuadrada contra un edificio",
    "numbers.slab_thick": "{thickness} de espesor",
    "numbers.slab_conflict": "Eje central en el ~plano~: ¿qué lado?",
    "numbers.slab_reaches": "{width} de ancho: sin borde interior",
    # what its panel says as it is typed
    "numbers.slab_inner": "Borde interior R {radius}|~cuerda del arco~ {chord}, ~flecha~ {sagitta}",
    "numbers.slab_outer": "Borde exterior R {radius}|~cuerda del arco~ {chord}, ~flecha~ {sagitta}",
    "numbers.slab_edges": "Bordes R {outer} y R {inner}|{half} a cada lado de su línea",
    "numbers.slab_tapered": "{width} en A, {end} en B|Un borde que cambia de ancho no es ~arco~ exacto.",
    "numbers.slab_filled": "Llena la curva|De A a B {chord}, {deep} de fondo, {area}.",
    "numbers.slab_pad": "Llena la curva, con lados|{chord} de ancho, {deep} de largo total, {area}.",
    "numbers.slab_no_sides": "Sin lados rectos|La curva pasa de medio círculo: sus puntas regresan debajo de ella.",
    "numbers.slab_no_inner": "Sin borde interior|La losa llega al ~centro~ del ~arco~. Revise el ancho y el lado.",
    "numbers.slab_no_inner.of_wall": (
        "Sin borde interior|El muro llega al ~centro~ del ~arco~. Revise el espesor y el lado."
    ),
    "numbers.slab_centre": "La mitad a cada lado|Su ~plano~ va al eje central: la losa queda a los dos lados.",
    "numbers.slab_centre.of_wall": "La mitad a cada lado|Su ~plano~ va al eje central: el muro queda a los dos lados.",
    "numbers.slab_which": "¿De qué lado queda la losa?|Su ~plano~ va al eje central, pero la losa está de un lado.",
    "numbers.slab_which.of_wall": (
        "¿De qué lado queda el muro?|Su ~plano~ va al eje central, pero el muro está de un lado."
    ),
    "numbers.slab_both": "Está a los dos lados",
    "numbers.slab_line": "No es el eje central",
    # the pictures
    "numbers.picture_slab.outside": "La losa va de su línea hacia el ~centro~.",
    "numbers.picture_slab.centre": "La mitad de la losa queda a cada lado de su línea.",
    "numbers.picture_slab.inside": "La losa va de su línea hacia afuera, alejándose del ~centro~.",
    "numbers.picture_center": "~centro~",
    "numbers.lies_small.outside": "hacia el ~centro~",
    "numbers.lies_small.centre": "la mitad a cada lado",
    "numbers.lies_small.inside": "hacia afuera",
    # the slope's line
    "numbers.slope_up": "baja {slope}%, de {end} a {other}",
    "numbers.slope_level": "~a nivel~ de A a B",
    "numbers.slope_no_end": "{slope}%, falta el extremo alto",
    "numbers.slope_no_slope": "extremo alto {end}, falta la ~pendiente~",
    "numbers.slope_tops": "canto {first} en A, {last} en B",
    "numbers.slope_top": "canto {top} en {end}",
    "numbers.slope_down.left": "baja {cross}% a la izquierda",
    "numbers.slope_down.right": "baja {cross}% a la derecha",
    "numbers.slope_down.inside": "baja {cross}% hacia adentro",
    "numbers.slope_down.outside": "baja {cross}% hacia afuera",
    "numbers.slope_flat": "~a nivel~ a lo ancho",
    "numbers.slope_no_edge": "falta el borde bajo",
    "numbers.slope_crown": "bombeo {crown}",
    "numbers.slope_limits": "límites",
}
