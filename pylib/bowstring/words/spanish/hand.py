"""On which hand the curve is, in Spanish as on US sites.

What stands in place of a hand is feminine, as the hands are: the sentences say "a la {hand}".
"""
# No safety sentence of an agency stands here; everything is from memory.

MESSAGES = {
    "hand.standing": "Parado en A, mirando a B: la curva le queda a la {hand}, y dobla a la {turn}.",
    "hand.walking": (
        "Caminando por la recta hacia el ~arco~: dobla a la {turn}. En A, mirando a B, la curva le queda a la {hand}."
    ),
    "hand.walking_arc": (
        "Caminando por la línea hacia este ~arco~: da vuelta a la {turn}. En A, mirando a B, la curva le queda a la "
        "{hand}."
    ),
    "hand.unknown": "Falta decir de qué lado de A-B va la curva. Pregunte antes de construir.",
    # in place of a hand that isn't known
    "hand.curve": "mano de la curva",
    "hand.away": "mano contraria a la curva",
    "hand.open": "mano que falta definir",
    "job.turn_and_side.wrong": (
        "Una curva que dobla a la {turn} queda a la {other} en A, mirando a B. El trabajo dice: {side}."
    ),
    "job.turn_and_side.remedy": (
        "Dé uno de los dos: el lado con los dos extremos, o la vuelta con un extremo y su recta."
    ),
}
