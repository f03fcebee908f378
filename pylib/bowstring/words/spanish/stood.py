"""~Estacas~ puestas con números anteriores: qué se regresó por ellas, y qué dice de ellas cada cara."""

MESSAGES = {
    "stood.set_back": "Se regresó: {what}.",
    "stood.set_back_none": "Regresaron los números anteriores.",
    "stood.from_to": "{label} de {before} a {after}",
    "stood.got": "lo que le dio en {stake}",
    "stood.more": "{names} y {count} más",
}
