"""What stands in files for other programs, in Spanish as on US sites: the stakes as values, the layout as a drawing."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "csv.stake": "~estaca~",
    "csv.along": "a lo largo del ~arco~ desde A ({unit})",
    "csv.x": "a lo largo del ~hilo~ A a B ({unit})",
    "csv.y": "~a escuadra~ de él, {hand} ({unit})",
    "csv.across": "desviación estándar a través ({unit})",
    "csv.along_off": "desviación estándar a lo largo ({unit})",
    "csv.beside": "{name} ({unit})",
    "csv.stopped": "TODAVÍA NO CONSTRUYA CON ESTE CUADRO. {why}",
    "csv.status": "estado",
    "csv.status_stop": "no construya",
    "csv.status_ready": "listo",
    "csv.reading": "lectura {number}",
    "csv.name": "nombre",
    "csv.axis_northing": "norte {unit}",
    "csv.axis_easting": "este {unit}",
    "csv.axis_x": "x {unit}",
    "csv.axis_y": "y {unit}",
    "csv.told": "{name}: {shown}",
    # a drawing for other programs
    "dxf.made": "Hecho con Bowstring",
    "dxf.units": "Unidades: {unit}.",
    "dxf.unit_ft": "pies (1 pie = 0.3048 m)",
    "dxf.unit_m": "metros",
    "dxf.offset": "El ~arco~ de las ~estacas~ no es el del ~plano~: capa DRAWN. {told}",
    "dxf.frame": "A está en 0, 0; B queda sobre x; y va a la izquierda de A a B.",
    "dxf.frame_drawn": "Las coordenadas son las del ~plano~: x es este, y es norte.",
}
