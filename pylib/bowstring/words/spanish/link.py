"""What can be wrong with a link, in Spanish as on US sites."""
# No safety sentence stands here; everything is from memory.

MESSAGES = {
    "link.not_one.wrong": "Este no es un enlace de esta herramienta.",
    "link.not_one.remedy": "Copie otra vez todo el enlace, de la primera letra a la última.",
    "link.newer.wrong": "Este enlace se hizo con una versión más nueva de esta herramienta.",
    "link.newer.remedy": "Actualice esta página y abra el enlace otra vez.",
    "link.several.wrong": "Este texto trae {count} enlaces a trabajos distintos.",
    "link.several.remedy": "Pegue el que quiere abrir.",
    "link.too_long.wrong": (
        "Este trabajo es demasiado grande para un enlace: tendría {count} caracteres, y lo más que cabe es {limit}."
    ),
    "link.too_long.remedy": "Guarde el trabajo como archivo y mándelo así.",
    "link.cut.wrong": "El enlace no está completo: le falta una parte o le agregaron algo.",
    "link.cut.remedy": "Pídalo otra vez, o cópielo todo: a veces los mensajes cortan los enlaces.",
    "link.damaged.wrong": "El enlace cambió en el camino: no pasa su comprobación.",
    "link.damaged.remedy": "Pídalo otra vez, y ábralo en vez de escribirlo.",
}
