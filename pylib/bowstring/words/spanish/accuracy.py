"""How true the stakes will be, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "todo.pin": "~Estacas de acero~ solas",
    "todo.marked": "~Estacas~ marcadas arriba después de clavarlas",
    "todo.hub": "~Trompos~ y ~tachuelas~, leídos otra vez después de clavarlos",
    "todo.board": "~Tablas~ de ~forma~",
    "todo.read_to": "{driven}, la ~cinta~ leída a {mark}",
    "todo.expect": "{driven}: espere fallas de hasta unos {worst}.",
    "todo.holds": "{driven}: {tolerance} se cumple en {share}.",
    "todo.at_best": "{driven}: cuando mucho, {tolerance} se cumple en {share}.",
    "todo.no_finer": (
        "No se ofrece nada más fino: {tolerance} se cumple en {share}. Revise cada ~estaca~ y mueva la que esté fuera."
    ),
    "todo.share": "{part} de {of} ~trazos~",
    "todo.share_one": "1 de {of} ~trazos~",
    "todo.hardly": "casi ningún ~trazo~",
    "accuracy.fair": (
        "Fuera de la curva pareja: 19 de 20 veces la ~estaca~ {at} queda a {miss} o menos. Se compara con la "
        "~flecha~ sobre sus dos vecinas."
    ),
    "accuracy.fair_holds": (
        "Fuera de la curva pareja: 19 de 20 veces la ~estaca~ {at} queda a {miss} o menos. Se compara con la "
        "~flecha~ sobre sus dos vecinas. Se permite {limit}."
    ),
    "accuracy.fair_over": (
        "Curva pareja: la ~estaca~ {at} puede fallar {miss} contra la ~flecha~ sobre sus vecinas, y se permite "
        "{limit}. Mire a lo largo de las ~estacas~, mida esa ~flecha~, y mueva lo que salga de línea."
    ),
    "accuracy.worst": (
        "La ~estaca~ que puede quedar más fuera es {at}. 19 de 20 veces queda a {miss} o menos de su lugar, a "
        "través del ~arco~."
    ),
    "accuracy.all": (
        "Las {count} ~estacas~ a la vez: en 19 de 20 ~trazos~ ninguna se pasa de {miss}. Es más que para una "
        "sola ~estaca~, porque cualquiera puede ser la que falle."
    ),
    "accuracy.chance": "Toda ~estaca~ dentro de la ~tolerancia~ de {tolerance}: {chance} de los ~trazos~.",
    "accuracy.chance_poor": (
        "Solo en {chance} de los ~trazos~ queda toda ~estaca~ dentro de {tolerance}. Tenga más cuidado: ponga a "
        "plomo cada ~estaca~, y lea a una marca más fina."
    ),
    "accuracy.over": "más de {percent}",
    "accuracy.under": "menos de {percent}",
    "accuracy.unreliable": (
        "No confíe en estos números. Las ~cintas~ cruzan muy cerradas, o los errores se juntan tanto, que el "
        "cálculo ya no vale. Use otro método."
    ),
    "accuracy.scale_shown": "{part} partes por millón, {size} en {on}",
    "accuracy.given": "su número",
    "accuracy.usual": "valor normal",
    "accuracy.error_read": "leer la ~cinta~, en cada extremo",
    "accuracy.error_scale": "la ~cinta~ misma, igual en cada tirada",
    "accuracy.error_stake": "aplomar y clavar una ~estaca~, en cada dirección",
    "accuracy.error_line": "seguir un ~hilo~, hacia los lados",
    "accuracy.error_angle": "girar un ángulo",
    "bias.slope": (
        "Medidas ~a nivel~ tomadas con la ~cinta~ en la ~pendiente~: hasta {miss} en {at}. Use las medidas en "
        "~pendiente~, o sostenga la ~cinta~ ~a nivel~."
    ),
    "bias.sag": "~Cinta~ colgada libre con 15 lb (67 N) de tensión: hasta {miss} en {at}. Acuéstela o apóyela.",
    "bias.wind": (
        "Viento cruzado de 10 mph (16 km/h) en los ~hilos~: hasta {miss} en {at}. Fije los ~hilos~ largos cada 25 "
        "ft (8 m)."
    ),
}
