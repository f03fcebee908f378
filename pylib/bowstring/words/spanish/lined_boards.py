"""The form boards along a line of several pieces, in Spanish as on US sites."""

# From memory, all of it.

MESSAGES = {
    "lined.fails": "{edge}: R {radius}",
    "lined.edge_of_left": "{piece}, borde izquierdo",
    "lined.edge_of_right": "{piece}, borde derecho",
    "lined.fails_also": "Tampoco se dobla aquí: {edges}.",
    "lined.tightest": "Lo más cerrado: {edge}, R {radius}. En las rectas no hay que doblar.",
    "lined.cut_from_start": "En este orden desde el inicio. Corte la última a la medida.",
    "lined.cut_past": (
        "En este orden; la primera empieza {past} antes del inicio de la línea. Corte la última a la medida."
    ),
    "lined.cut_at_kinks": (
        "En cada quiebre acaba la ~tabla~. La que sigue va a tope en la esquina, con una ~estaca~ en cada punta."
    ),
    "lined.broken_quarter": "{count} empalmes caen a menos de {length} de una punta o de un cuarto de ~arco~.",
    "lined.broken_quarter_one": "Un empalme cae a menos de {length} de una punta o de un cuarto de ~arco~.",
    "lined.broken_join": "{count} empalmes caen a menos de {length} de un cambio de tramo.",
    "lined.broken_join_one": "Un empalme cae a menos de {length} de un cambio de tramo.",
    "lined.broken_stake": "{count} empalmes caen a menos de {length} de un cambio de tramo o ~estaca~ de ~trazo~.",
    "lined.broken_stake_one": "Un empalme cae a menos de {length} de un cambio de tramo o ~estaca~ de ~trazo~.",
    "lined.splices_head": "Empalmes, por el borde desde el inicio",
    "lined.form_left": "~Forma~ izquierda",
    "lined.form_right": "~Forma~ derecha",
    "lined.form_left_run": "~Forma~ izquierda, parte {number}",
    "lined.form_right_run": "~Forma~ derecha, parte {number}",
    "lined.gaps": "{gaps} x {gap}",
    "lined.runs_flat": (
        "Si la ~tabla~ acaba en el ~arco~ más cerrado, sus últimos {gap} van rectos: se salen hasta {miss}."
    ),
    "lined.carry_past": "Extienda las ~tablas~ {past} pasando {ends} y fíjelas rectas.",
    "lined.no_overrun": "Sus ~tablas~ acaban en {ends}. Páselas {past}, rectas, para corregirlo.",
    "lined.pulls_off": "Por fuera de la curva la ~tabla~ se despega de sus ~estacas~: ponga ahí dos tornillos.",
    "lined.try_selected": "Tiras escogidas, rectas y sin nudos, sí aguantan con las dos puntas sujetas.",
    "lined.kerfs": "O ranure la ~tabla~ {board} ({edge}): {count} cortes de {depth} de hondo, cada {apart}.",
    "lined.loose_ends": "Si nada pasa de los extremos, las tiras escogidas cuentan como madera sin nudos.",
    "lined.taken_overrun": "Las ~tablas~ pasan {past} más allá de los dos extremos de la línea.",
}
