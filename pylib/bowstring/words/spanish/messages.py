"""The sheet as plain text for messages, in Spanish as on US sites: every sign counts, so these are short.

An accent that text messages lack is dropped when a message is made; here each word has its own.
"""

# Held against the 811 campaign's notices in Spanish: the call before any digging. Everything else is from memory.

MESSAGES = {
    "messages.head": "{number}/{count} {title} {code}: ",
    "messages.head_stop": "{number}/{count} {title} {code} ALTO: ",
    "messages.stop": "No construya nada con esto.",
    "messages.ends": "A: {first}. B: {second}.",
    "messages.ends_off": "A va separado de {first}. B va separado de {second}.",
    "messages.no_landmark": "donde está marcado",
    "messages.hand": "En A, mirando a B: curva a su {hand}, dobla a la {turn}.",
    "messages.hand_open": "En A, mirando a B: ¿de qué lado queda la curva? PREGUNTE.",
    "messages.services": "¿Servicios marcados? Antes llame al 811 (EE. UU.).",
    "messages.sentence": "{told}.",
    "messages.square": "~A escuadra~ si las ~cuerdas cortas~ dan igual; mida otra vez la ~distancia a escuadra~.",
    "messages.half": "~punto medio~",
    "messages.half_chord": "~cuerdas cortas~",
    "messages.first_string": "{stake} ({head} {cell})",
    "messages.string": "{stake} ({cell})",
    "messages.cell": "{head} {cell}",
    "messages.stakes": "{stakes}: {cells}.",
    "messages.check": "~Revisión~ {what}: {reads} +-{limit}.",
    "messages.check_blunt": "~Revisión~ {what}: {reads} (no alcanza a juzgar).",
}
