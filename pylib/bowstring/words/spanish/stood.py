"""~Estacas~ puestas con números anteriores: qué se regresó por ellas, y qué dice de ellas cada cara."""

MESSAGES = {
    "stood.set_back": "Se regresó: {what}.",
    "stood.set_back_none": "Regresaron los números anteriores.",
    "stood.from_to": "{label} de {before} a {after}",
    "stood.got": "lo que le dio en {stake}",
    "stood.more": "{names} y {count} más",
    "stood.state": "Números de antes: {names}",
    "stood.state_more": "Números de antes: {names} +{count}",
    "stood.arc": "~arco~ {number}",
    "stood.of_arc": "~Arco~ {number}. {told}",
    "stood.on_side": "{told}. Los de aquí son más nuevos: no construya con esas ~estacas~.",
    "stood.told": "{told} Los números de aquí son más nuevos.",
}
