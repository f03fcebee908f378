"""How to call the terminal door, and what can be wrong with a call, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

_CALL = "python3 -m bowstring TRABAJO [--method NOMBRE] [--all | --json | --link | --csv | --messages]"
_REMEDY = f"Llámelo así: {_CALL}. TRABAJO es la ruta de un archivo de trabajo, un enlace, o - para la entrada estándar."

MESSAGES = {
    "usage.call": _CALL,
    "usage.no_job.wrong": "No se dio ningún trabajo.",
    "usage.no_job.remedy": _REMEDY,
    "usage.not_known.wrong": "{word} sobra, o no es una opción de aquí.",
    "usage.not_known.remedy": _REMEDY,
    "usage.one_of_two.wrong": "Se dio más de una de --all, --json, --link, --csv y --messages.",
    "usage.one_of_two.remedy": _REMEDY,
    "usage.not_readable.wrong": "Esta llamada no se puede leer.",
    "usage.not_readable.remedy": _REMEDY,
}
