"""What the page says when its site doesn't send what a start needs, in Spanish as on US sites.

Each sentence but the last two ends in a file's name.
"""
# No safety sentence of an agency stands here; everything is from memory.

MESSAGES = {
    "host.missing": (
        "A este sitio le falta un archivo de la página, así que aquí no se pueden calcular sus números. Avise a "
        "quien administra el sitio y vuelva a cargar la página. El archivo, y lo que contestó el sitio:"
    ),
    "host.type": (
        "Este sitio manda un archivo de la página con el tipo equivocado, así que el navegador no lo corre. Aquí "
        "no se pueden calcular sus números. Avise a quien administra el sitio y vuelva a cargar la página. El "
        "archivo y su tipo:"
    ),
    "host.damaged": (
        "Un archivo de la página llega dañado, así que aquí no se pueden calcular sus números. Avise a quien "
        "administra el sitio y vuelva a cargar la página. El archivo:"
    ),
    "host.unreachable": (
        "No se puede traer un archivo de la página, así que aquí no se pueden calcular sus números. Revise la "
        "conexión y vuelva a cargar la página. El archivo:"
    ),
    "host.late": (
        "El sitio no ha mandado toda la página, así que no construya con lo que está aquí. Espere un momento. Si "
        "nada cambia, revise la conexión y vuelva a cargar la página."
    ),
    "host.copy": (
        "Un navegador guardó esta copia por su cuenta, y no puede calcular números. Abra el trabajo en su sitio y "
        "toque ahí \u201cGuardar la página como archivo\u201d. El sitio:"
    ),
}
