"""The table of the stakes as values, for a file, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "csv.stake": "~estaca~",
    "csv.along": "a lo largo del ~arco~ desde A (m)",
    "csv.x": "a lo largo del ~hilo~ A a B (m)",
    "csv.y": "~a escuadra~ de él (m)",
    "csv.across": "desviación estándar a través (m)",
    "csv.along_off": "desviación estándar a lo largo (m)",
    "csv.metres": "{name} (m)",
    "csv.stopped": "TODAVÍA NO CONSTRUYA CON ESTE CUADRO. {why}",
    "csv.status": "estado",
    "csv.status_stop": "no construya",
    "csv.status_ready": "listo",
    "csv.reading": "lectura {number}",
    "csv.told": "{name}: {shown}",
}
