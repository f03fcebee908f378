"""What is said about lengths, angles and tape marks: how they were read, or why not, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

_LENGTH_EXAMPLE = "una longitud con su unidad, como 40' 6-1/2\", 40.54 ft, 12.35 m o 12350 mm"
_ANGLE_EXAMPLE = "grados, como 45.5, o grados, minutos y segundos, como 45°40'12\""
_DIGITS = "Use los dígitos 0 a 9 con punto decimal"

_LENGTHS: dict[str, tuple[str, str]] = {
    "kind": ("Esto es {kind}, no una longitud.", f"Escriba {_LENGTH_EXAMPLE}."),
    "empty": ("Esto está en blanco.", f"Escriba {_LENGTH_EXAMPLE}."),
    "long": ("{typed} pasa de {limit} letras y signos.", f"Escriba {_LENGTH_EXAMPLE}."),
    "giant": ("Este número es mucho más grande que cualquier longitud.", f"Escriba {_LENGTH_EXAMPLE}."),
    "not_finite": ("Esto no es un número finito.", f"Escriba {_LENGTH_EXAMPLE}."),
    "character": ("{typed} trae {sign}, que no va en una longitud.", f"Escriba {_LENGTH_EXAMPLE}."),
    "exponent": ("{typed} trae un exponente.", "Escriba el número completo, como 0.001 m."),
    "no_number": ("{typed} no trae ningún número.", f"Escriba {_LENGTH_EXAMPLE}."),
    "clinging": (
        "En {typed} un punto o una coma toca una unidad: puede cerrar la unidad o empezar el número.",
        "Deje un espacio después de la unidad, y escriba con su cero un número menor que uno, como 40' 0.5\".",
    ),
    "unreadable": ("{typed} no es una longitud.", f"Escriba {_LENGTH_EXAMPLE}."),
    "grouping": (
        "En {typed} los puntos o comas no están donde van en un número.",
        f"{_DIGITS}, como 1234.5 ft.",
    ),
    "comma": (
        "En {typed} la coma puede ser decimal o separar miles.",
        "Escriba {readings}.",
    ),
    "zero_below": ("{typed} trae una fracción sobre cero.", "Escriba una fracción como 1/2 o 3/8."),
    "mixed_decimal": (
        "En {typed} una fracción sigue a un número que no es de puros dígitos.",
        "Use decimales o una fracción, no los dos, como 6.5 in o 6-1/2 in.",
    ),
    "improper": (
        "En {typed} la fracción después del entero vale uno o más.",
        "Corrija la fracción, o si eso quiere decir, escriba {readings}.",
    ),
    "sign": ("{typed} trae signo de más o menos, y un tamaño no lo lleva.", "Escríbalo sin el signo."),
    "zero": ("{typed} no es una longitud.", "Escriba una longitud mayor que cero."),
    "size": (
        "{typed} es muy chico o muy grande para un ~trazo~.",
        "Quédese entre {smallest} m y {largest} m, y revise la unidad.",
    ),
    "unit": (
        "{typed} trae la unidad {unit}, que aquí no se conoce.",
        "Use ft, in, m, cm o mm, o los signos ' para pies y \" para pulgadas.",
    ),
    "bare": ("{typed} no trae unidad, y podrían ser pies o pulgadas.", "Escriba {readings}."),
    "bare_fraction": ("{typed} es una fracción sin unidad.", "Escriba {readings}."),
    "bare_comma": (
        "En {typed} la coma puede ser decimal o separar pies y pulgadas.{apart}",
        "Escriba {readings}.",
    ),
    "broken_feet": (
        "{typed} trae una fracción de pie, y también pulgadas.",
        "Escriba pies enteros con pulgadas, como 40' 6\", o solo pies decimales, como 40.5 ft.",
    ),
    "feet_fraction": ("En {typed} la parte después de los pies no trae unidad.{apart}", "Escriba {readings}."),
    "twelve": (
        "{typed} trae doce pulgadas o más después de los pies.",
        "Corrija las pulgadas, o si eso quiere decir, escriba {readings}.",
    ),
    "apart": ("{typed} trae más de un número, y no todos con su unidad.{apart}", "Escriba {readings}."),
    "mixed_units": (
        "{typed} trae varios números en unidades que no se combinan.",
        "Use una sola unidad, como 12.35 m, o pies y pulgadas, como 40' 6\".",
    ),
    "repeated": ("{typed} trae dos veces la misma unidad.", "Escriba una sola longitud, como 40' 6-1/2\"."),
    "order": ("{typed} trae las unidades en desorden.", "Escriba primero los pies, luego las pulgadas."),
}

_ANGLES: dict[str, tuple[str, str]] = {
    "kind": ("Esto es {kind}, no un ángulo.", f"Escriba {_ANGLE_EXAMPLE}."),
    "empty": ("Esto está en blanco.", f"Escriba {_ANGLE_EXAMPLE}."),
    "long": ("{typed} pasa de {limit} letras y signos.", f"Escriba {_ANGLE_EXAMPLE}."),
    "giant": ("Este número es mucho más grande que cualquier ángulo.", f"Escriba {_ANGLE_EXAMPLE}."),
    "not_finite": ("Esto no es un número finito.", f"Escriba {_ANGLE_EXAMPLE}."),
    "character": ("{typed} trae {sign}, que no va en un ángulo.", f"Escriba {_ANGLE_EXAMPLE}."),
    "exponent": ("{typed} trae un exponente.", "Escriba el número completo, como 0.25."),
    "no_number": ("{typed} no trae ningún número.", f"Escriba {_ANGLE_EXAMPLE}."),
    "clinging": (
        "En {typed} un punto o una coma toca un signo o palabra: puede cerrarlo o empezar el número.",
        f"Escriba {_ANGLE_EXAMPLE}.",
    ),
    "unreadable": ("{typed} no es un ángulo.", f"Escriba {_ANGLE_EXAMPLE}."),
    "grouping": (
        "En {typed} los puntos o comas no están donde van en un número.",
        f"Escriba {_ANGLE_EXAMPLE}.",
    ),
    "comma": ("En {typed} la coma puede ser decimal o separar miles.", "Escriba {readings}."),
    "zero_below": ("{typed} trae una fracción sobre cero.", "Escriba una fracción como 1/2 o 1/4."),
    "mixed_decimal": (
        "En {typed} una fracción sigue a un número que no es de puros dígitos.",
        "Use decimales o una fracción, no los dos, como 6.5° o 6-1/2°.",
    ),
    "improper": (
        "En {typed} la fracción después del entero vale uno o más.",
        "Corrija la fracción, o si eso quiere decir, escriba {readings}.",
    ),
    "sign": ("{typed} trae signo de más o menos, y el tamaño de un ángulo no lo lleva.", "Escríbalo sin el signo."),
    "zero": ("{typed} no es un ángulo.", "Escriba un ángulo mayor que cero."),
    "size": (
        "{typed} es muy chico o muy grande para un ~trazo~.",
        "Quédese entre {smallest} y {largest} grados.",
    ),
    "unit": (
        "{typed} trae la unidad {unit}, que aquí no se conoce.",
        f"Escriba {_ANGLE_EXAMPLE}.",
    ),
    "other_unit": (
        "{typed} está en {unit}, no en grados.",
        f"Páselo a grados y escriba {_ANGLE_EXAMPLE}.",
    ),
    "bare_fraction": ("{typed} es una fracción sin signo de grados.", "Escriba {readings}."),
    "no_degrees": (
        "{typed} trae minutos o segundos pero no grados, y también podría ser una longitud.",
        "Escriba también los grados, como 0°40'.",
    ),
    "apart": (
        "{typed} trae más de un número, y no todos con su signo.",
        "Escriba {readings}.",
    ),
    "order": (
        "{typed} no va de grados a minutos a segundos, cada uno una vez.",
        "Escriba grados, luego minutos, luego segundos, sin saltar ninguno, como 45°00'12\".",
    ),
    "broken_part": (
        "{typed} trae decimales o una fracción antes de una parte menor.",
        "Solo la última parte puede llevar decimales, como 45°40.2'.",
    ),
    "sixty": (
        "{typed} trae sesenta minutos o segundos, o más.",
        "Páselos arriba: 60 segundos son un minuto, 60 minutos un grado.",
    ),
}

MESSAGES: dict[str, str] = {
    "length.or": "{one} o {other}",
    "length.example": _LENGTH_EXAMPLE,
    "length.differ": " Entre una lectura y otra hay {apart} {unit}.",
    "length.kind_nothing": "un dato vacío",
    "length.kind_truth": "un true o false",
    "length.kind_list": "una lista",
    "length.kind_group": "un grupo de valores",
    "length.kind_thing": "otra cosa",
    "angle.example": _ANGLE_EXAMPLE,
    "angle.both": "{decimal} = {dms}",
    "angle.reading": "{reading} (= {other})",
    "angle.reading_about": "{reading} (cerca de {other})",
    "tape.both_exact": "{inches} = {feet}",
    "tape.both_about": "cerca de {inches} = {feet}",
    "tape.metric": "{first} = {other}",
    "tape.metric_about": "cerca de {first} = {other}",
    "tape.with_inches": "{metric} ({inches})",
    "tape.with_inches_about": "{metric} (cerca de {inches})",
    "tape.less_than": "menos de {least}",
    "tape.inches": "{inches} in",
    "tape.sized": "{number} {unit}",
    "tape.marks": "Escriba {marks}.",
    "tape.no_mark.wrong": "{typed} no es una marca de la ~cinta~ de esta unidad.",
    "tape.no_mark.remedy": "Escriba {marks}.",
}
for _topic, _refusals in (("length", _LENGTHS), ("angle", _ANGLES)):
    for _name, (_wrong, _remedy) in _refusals.items():
        MESSAGES[f"{_topic}.{_name}.wrong"] = _wrong
        MESSAGES[f"{_topic}.{_name}.remedy"] = _remedy
