"""The plan of the site that is drawn on, and what can be wrong with what is tapped, in Spanish as on US sites."""
# No safety sentence stands here; everything is from memory.

MESSAGES = {
    "siteplan.title": "Croquis de la obra, a escala",
    "siteplan.desc.tape": "{what} impide ~cinta~ y paso",
    "siteplan.desc.feet": "{what} impide solo el paso",
    "siteplan.key.tape": "impide ~cinta~ y paso",
    "siteplan.key.feet": "impide el paso; la ~cinta~ pasa por encima",
    "siteplan.no_centre": "El ~centro~ del ~arco~ está demasiado atrás de la ~cuerda del arco~ para mostrarlo.",
    "siteplan.centre": "~centro~ {mark}",
    "siteplan.more": "Y {count} más.",
    "siteplan.tapping.tape": "Muro: toque sus esquinas en orden, dándole la vuelta. Hasta ahora:",
    "siteplan.tapping.feet": "Estanque: toque sus esquinas en orden, dándole la vuelta. Hasta ahora:",
    "siteplan.tapping.round": "Árbol o poste: toque su ~centro~, luego su orilla. Hasta ahora:",
    "siteplan.round_taps": (
        "Algo redondo lleva dos toques: su ~centro~, luego su orilla. Deshaga los demás, o siga tocando."
    ),
    "siteplan.round_small": "Su orilla está casi en su ~centro~. Deshaga un toque, y toque más afuera.",
    "siteplan.name.round": "árbol",
    "siteplan.name.tape": "muro",
    "siteplan.name.feet": "estanque",
    "siteplan.few": "Un contorno lleva tres esquinas o más. Siga tocando.",
    "siteplan.many": "Un contorno lleva {most} esquinas cuando mucho. Deshaga algunas.",
    "siteplan.thin": (
        "No hay terreno entre estas esquinas. Deshaga algunas, o toque una a un lado: un muro tiene grueso."
    ),
    "siteplan.crossed": (
        "El contorno se cruza o se toca a sí mismo. Deshaga algunas, y toque las esquinas en el orden en que le da "
        "la vuelta."
    ),
    "siteplan.full": "Ya hay {most} obstáculos. Borre uno primero.",
    "siteplan.ways": "Todos los métodos lado a lado",
}
