"""A wall and its footing, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "walled.asked": "{thickness} de espesor: ¿es un muro?",
    "walled.asked_more": "sin eso no hay pedido",
    "walled.first": "¿Losa o muro?",
    "walled.is_wall": "Un muro, {thickness} de alto",
    "walled.is_slab": "Una losa, {thickness} de espesor",
    "walled.told": "{thickness} de espesor: ¿es un muro?|¿O están cambiados espesor y ancho?",
    "walled.line": "El muro: {width} de espesor, {height} de alto",
    "walled.line_footing": "zapata de {width} x {depth}",
    "walled.blank": "?",
    "walled.swapped": "{width} de espesor y {height} de alto|¿Están cambiados los dos?",
    "walled.narrow": "Zapata de {footing}, muro de {width}|La zapata es más angosta que el muro que carga.",
}
