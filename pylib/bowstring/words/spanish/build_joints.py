"""The joints, in Spanish as on US sites."""

# From memory, all of it; the silica sentence follows the manner of OSHA's Spanish leaflets.

MESSAGES = {
    "joints.title": "~Juntas~",
    "joints.open": "Falta el ancho",
    "joints.open_edge": "Falta de qué lado va la losa",
    "joints.open_more": "lo usual: no más de {most} con {thickness}",
    "joints.open_plain": "lo usual: no más de {most}",
    "joints.no_inner": "No hay losa: el ancho llega al ~centro~",
    "joints.too_many": "Más de {most} paneles: parta la línea",
    "joints.too_long": "Por fuera pasa de {most} con {thickness}",
    "joints.too_long_plain": "Por fuera pasa de {most}",
    "joints.one": "Un panel, {outside} por fuera",
    "joints.panels": "{count} paneles, {outside} por fuera",
    "joints.panels_upto": "{count} paneles, hasta {outside}",
    "joints.conclusion": "{count} paneles, {outside} por fuera,\n{inside} por dentro",
    "joints.conclusion_taper": "{count} paneles, hasta {outside} por fuera,\nhasta {inside} por dentro",
    "joints.conclusion_one": "Un panel, sin ~juntas~:\n{outside} por fuera, {inside} por dentro",
    "joints.stop_more": "paneles de {outside}: agregue una ~junta~",
    "joints.ratio_near": "{inside} por dentro: {ratio} a 1, límite 1.5",
    "joints.ratio_over": "{inside} por dentro: {ratio} a 1, pasa de 1.5",
    "joints.inside_only": "{inside} por dentro; sin ~juntas~",
    "joints.inside_depth": "{inside} por dentro; corte {depth} o más",
    "joints.inside_plain": "{inside} por dentro; falta el espesor",
    "joints.inside_wall": "{inside} por dentro; ~juntas~ según ~plano~",
    "joints.most_every": "Los paneles son de {most} cuando mucho sobre la ~forma~ exterior, como usted dijo.",
    "joints.most_count": "{count} paneles, como usted dijo. Lo usual es {limit} de largo cuando mucho.",
    "joints.count_taken": "Usted dijo {said} paneles. Con una ~junta~ en cada extremo del tramo grueso son {count}.",
    "joints.most_width": (
        "Los paneles no son más largos que el ancho de la losa: {most}. Lo usual es {limit} cuando mucho."
    ),
    "joints.most_width_taper": (
        "Los paneles no son más largos que el ancho de la losa a medio largo: {most}. Lo usual es {limit} cuando mucho."
    ),
    "joints.most_thickness": "Los paneles son de {most} cuando mucho, lo usual para {thickness}.",
    "joints.most_thickness_thin": (
        "Los paneles son de {most} cuando mucho, lo usual para {thickness}: no se dio el espesor."
    ),
    "joints.most_band": (
        "Tan angosto es ~guarnición~ o franja: no le van paneles tan largos como el ancho. "
        "Las ~juntas~ van a {most} cuando mucho."
    ),
    "joints.taped": (
        "Mida cada una desde A, nunca de marca a marca, sobre la *~cara del concreto~* de la ~tabla~. El respaldo de "
        "la ~tabla~ exterior mide {longer} más."
    ),
    "joints.joint": "~junta~",
    "joints.outer_form": "~forma~ exterior, desde A",
    "joints.inner_form": "~forma~ interior, desde A",
    "joints.at": "en {stake}",
    "joints.table": "~Juntas~: distancias corridas sobre las dos ~formas~",
    "joints.how_many": "Cuántos paneles",
    "joints.offer": "{count} paneles",
    "joints.offer_one": "1 panel",
    "joints.offer_more": "{outside} por fuera",
    "joints.offer_over": "{outside} por fuera, más de sus {most}",
    "joints.cut": "Córtelas",
    "joints.square": (
        "De marca a marca, recto: esa línea apunta al ~centro~. Queda ~a escuadra~ con los dos bordes, así que ninguna "
        "esquina es filosa."
    ),
    "joints.corners": (
        "De marca a marca, recto: esa línea apunta al ~centro~. El ancho cambia y las esquinas no quedan ~a escuadra~: "
        "{corner} o más. Con menos de 60° se quiebran."
    ),
    "joints.corners_sharp": (
        "De marca a marca, recto: esa línea apunta al ~centro~. El ancho cambia tan rápido que una esquina queda en "
        "{corner}. Con menos de 60° se quiebra: pregunte al proyectista."
    ),
    "joints.deep": "Corte *{depth} de hondo* cuando menos, un cuarto de {thickness}.",
    "joints.deep_short": "Corte *{depth} de hondo* cuando menos.",
    "joints.deep_wall": "El ~plano~ dice cómo van sus ~juntas~.",
    "joints.deep_open": "Corte cuando menos un cuarto del espesor de hondo.",
    "joints.shape": "Los paneles son de {ratio} a 1 cuando mucho; no pase de 1.5.",
    "joints.shape_never": (
        "Los paneles son de {ratio} a 1, más de 1.5. "
        "La curva es tan cerrada que ninguna cantidad de paneles lo arregla: pregunte al proyectista."
    ),
    "joints.shape_taper": "Hay paneles de {ratio} a 1, más de 1.5: pregunte al proyectista dónde van las ~juntas~.",
    "joints.shape_apron": (
        "El panel {number} queda de {ratio} a 1, más de 1.5: el tramo grueso termina muy cerca. Mueva ese "
        "extremo o pregunte al proyectista."
    ),
    "joints.shape_short": (
        "Los paneles {first} a {last} quedan de {ratio} a 1, más de 1.5: muy cortos para el ancho. "
        "Con {count} paneles, de hasta {outside}, quedan de {then} a 1."
    ),
    "joints.shape_short_ask": (
        "Los paneles {first} a {last} quedan de {ratio} a 1, más de 1.5: muy cortos para el ancho. "
        "Pregunte al proyectista."
    ),
    "joints.shape_wide": (
        "Los paneles son de {ratio} a 1, más de 1.5: muy anchos. "
        "Agregue una ~junta~ a lo largo por el medio, o pregunte al proyectista."
    ),
    "joints.shape_long": "Los paneles son de {ratio} a 1, más de 1.5: muy largos. Ponga más paneles.",
    "joints.isolation": (
        "*~Junta~ de aislamiento de {gap}* solo contra un edificio, una entrada o una losa vieja, o donde esté "
        "especificada."
    ),
    "joints.silica": "*Cortar ~concreto~ hace polvo de sílice.* Corte con agua; respirador si la norma lo exige.",
    "joints.stop_text": "Los paneles son de {outside} por fuera; lo usual es {most} cuando mucho. Ponga más paneles.",
    "joints.stop_many": "Aquí las ~juntas~ se marcan desde un solo extremo, {most} cuando mucho.",
}
