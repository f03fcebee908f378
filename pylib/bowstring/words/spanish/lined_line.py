"""Where the concrete lies along a line, and where its pieces begin, in Spanish as on US sites."""

MESSAGES = {
    "lined.concrete_left": (
        "Caminando desde el inicio, el ~concreto~ queda a su *{hand}*: la línea es su borde izquierdo."
    ),
    "lined.concrete_right": (
        "Caminando desde el inicio, el ~concreto~ queda a su *{hand}*: la línea es su borde derecho."
    ),
    "lined.concrete_both": "Caminando desde el inicio, el ~concreto~ queda a *AMBOS lados*, {half} por lado.",
    "lined.concrete_middle": ("Caminando desde el inicio, el ~concreto~ queda a *AMBOS lados*: la línea es su mitad."),
    "lined.arc_outer": "Caminando de A a B, el ~concreto~ queda a su {hand}: {arc} es su borde EXTERIOR.",
    "lined.arc_inner": "Caminando de A a B, el ~concreto~ queda a su {hand}: {arc} es su borde INTERIOR.",
    "lined.arc_both": "Caminando de A a B, el ~concreto~ queda a AMBOS lados, {half} por lado: {arc} es su mitad.",
    "lined.this_arc": "este ~arco~",
    "lined.drawn_arc": "el ~arco~ del ~plano~",
    "lined.from_start": "Desde el inicio, a lo largo {first}",
    "lined.begins_at": "En",
    "lined.begins_station": "Estación",
    "lined.staked_stations": "Estaciones {first} a {last}.",
    "station.form.wrong": "Eso no es una estación.",
    "station.form.remedy": "Dela con su signo más: 10+00 en pies, 0+100 en metros.",
    "station.feet.wrong": "En pies una estación lleva dos cifras después del más, y {typed} no.",
    "station.feet.remedy": "Dela como 10+00, o ponga el trabajo en metros.",
    "station.metres.wrong": "En metros una estación lleva tres cifras después del más, y {typed} no.",
    "station.metres.remedy": "Dela como 0+100, o ponga el trabajo en pies.",
    "station.stakes": "*Estaciones:* {stations}.",
    "station.of": "{name} {station}",
    "station.card": "{name} está en la estación {station}.",
    "station.head": "estación",
}
