"""How a line of several pieces is shown: its drawing, which arc is staked, its paper, in Spanish as on US sites."""

MESSAGES = {
    "lined.draw_title": "La línea y la losa a lo largo de ella",
    "lined.draw_start": "inicio",
    "lined.draw_end": "fin",
    "lined.draw_left": "borde izquierdo",
    "lined.draw_right": "borde derecho",
    "lined.staked": "~Arco~ {at} de {count} tramos: A está donde termina el tramo {before}.",
    "lined.staked_first": "~Arco~ {at} de {count} tramos: A está donde empieza la línea.",
    "lined.own_sheets": "Tienen su propia hoja: {arcs}.",
    "lined.stake_other": "Trazar ~arco~ {number}",
    "lined.other_arcs": "Los otros ~arcos~ de esta línea",
    "lined.how": "Cómo y por qué",
    "lined.front_title": "{title}: la línea",
    "lined.back_title": "{title}: nivel y colado",
    "lined.sign_line": "Línea: fin de tramo y medio ~arco~",
    "lined.sign_kinks": "Quiebres",
    "lined.sign_width": "Ancho al final de tramo",
    "lined.sign_tops": "Cantos: extremos y cada ~junta~",
    "lined.sign_slope": "Borde más empinado",
    "lined.most": "{slope}, máximo {limit}",
}
