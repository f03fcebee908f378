"""The arc's measures by name, and why givens make none, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "measure.radius": "~radio~",
    "measure.diameter": "diámetro",
    "measure.degree": "grado de curva",
    "measure.chord": "~cuerda del arco~",
    "measure.sagitta": "~flecha~",
    "measure.arc_length": "largo del ~arco~",
    "measure.central_angle": "ángulo central",
    "measure.tangent_length": "largo de la ~tangente~",
    "measure.external": "externa",
    "measure.points": "punto de en medio",
    "measure.three_sides": "tres lados medidos",
    "and": "{first} y {second}",
    "arc.nothing": "nada",
    "arc.missing.wrong": "El trabajo no tiene ~arco~.",
    "arc.missing.remedy": (
        "Dé dos de estos: ~radio~, ~cuerda del arco~, ~flecha~, largo del ~arco~, ángulo central, largo de la "
        "~tangente~ o externa. También sirven tres puntos o tres lados medidos."
    ),
    "arc.too_few.wrong": "Esto solo no fija un ~arco~: {fields}.",
    "arc.too_few.remedy": "Dé uno más de estos: {others}.",
    "arc.full_circle.wrong": "Un ángulo central de 360° o más no tiene dos extremos.",
    "arc.full_circle.remedy": "Dé un ángulo menor de 360°, como medio círculo a la vez.",
    "arc.beside_points.wrong": "Tres puntos ya fijan el ~arco~.",
    "arc.beside_points.remedy": "Dé los puntos o las medidas, no los dos.",
    "arc.beside_sides.wrong": "Tres lados medidos ya fijan el ~arco~.",
    "arc.beside_sides.remedy": "Dé los tres lados o las otras medidas, no los dos.",
    "arc.sides_open.wrong": "Estas tres distancias no hacen triángulo: una es más larga que las otras dos sumadas.",
    "arc.sides_open.remedy": "Delas en este orden: A a C, C a B, A a B. C va sobre el ~arco~, entre los extremos.",
    "arc.sides_straight.wrong": "Por estas tres distancias, C está en línea con A y B.",
    "arc.sides_straight.remedy": "Mídalas otra vez, con C bien separado del ~hilo~ de A a B.",
    "arc.twice.wrong": "Una misma medida se dio dos veces, como {one} y como {other}.",
    "arc.twice.remedy": "Dela una vez.",
    "arc.letters.wrong": "Las letras {letters} significan {other}, y aquí va {own}.",
    "arc.letters.remedy": "Dé el número donde va, o sin sus letras si es {own}.",
    "arc.degree_by_alone.wrong": "Esto dice cómo se cuenta el grado de curva, y no se dio ningún grado.",
    "arc.degree_by_alone.remedy": "Dé el grado de curva, o quite esto.",
    "arc.degree_by_chord.wrong": "Ninguna ~cuerda del arco~ de 100 ft abarca más de 180°.",
    "arc.degree_by_chord.remedy": "Revise el grado de curva. Si el ángulo es de todo el ~arco~, es el ángulo central.",
    "arc.points_same.wrong": "Dos de los tres puntos son el mismo.",
    "arc.points_same.remedy": "Dé tres puntos distintos: un extremo, cualquier punto entre los dos, el otro extremo.",
    "arc.points_straight.wrong": "Los tres puntos están en línea recta.",
    "arc.points_straight.remedy": "Dé un punto de en medio fuera de la línea de extremo a extremo.",
    "pair.chord_over_diameter.wrong": (
        "La ~cuerda del arco~ pasa del diámetro ({limit}): no cabe en un círculo de ese ~radio~."
    ),
    "pair.chord_over_diameter.remedy": (
        "Revise que el ~radio~ no esté corto, y que la ~cuerda del arco~ no sea el largo del ~arco~."
    ),
    "pair.sagitta_over_diameter.wrong": (
        "La ~flecha~ mide tanto como el diámetro ({limit}) o más: eso es un círculo completo."
    ),
    "pair.sagitta_over_diameter.remedy": (
        "Una ~flecha~ mide menos de dos veces el ~radio~; revise los dos números y sus unidades."
    ),
    "pair.arc_over_circle.wrong": "El largo del ~arco~ es un círculo completo de este ~radio~ ({limit}) o más.",
    "pair.arc_over_circle.remedy": (
        "Revise los dos números y sus unidades, y si un diámetro se partió a la mitad dos veces."
    ),
    "pair.arc_under_chord.wrong": "El largo del ~arco~ no pasa de la ~cuerda del arco~ ({limit}): no hay curva.",
    "pair.arc_under_chord.remedy": (
        "Un ~arco~ siempre es más largo que su ~cuerda del arco~; revise si están cambiados uno por otro."
    ),
    "pair.chord_over_tangents.wrong": (
        "La ~cuerda del arco~ es tan larga como las dos ~tangentes~ sumadas ({limit}) o más."
    ),
    "pair.chord_over_tangents.remedy": (
        "La ~cuerda del arco~ mide menos de dos veces el largo de la ~tangente~; revise los dos números."
    ),
    "pair.sagitta_over_arc.wrong": "La ~flecha~ es muy grande para este largo del ~arco~: a lo más {limit}.",
    "pair.sagitta_over_arc.remedy": "Revise los dos números y sus unidades.",
    "pair.sagitta_over_tangent.wrong": "La ~flecha~ es muy grande para este largo de la ~tangente~: a lo más {limit}.",
    "pair.sagitta_over_tangent.remedy": "Revise los dos números y sus unidades.",
    "pair.sagitta_over_external.wrong": (
        "La ~flecha~ mide tanto como la externa ({limit}) o más; la ~flecha~ siempre es la menor."
    ),
    "pair.sagitta_over_external.remedy": (
        "Revise si están cambiadas la ~flecha~ (de ~cuerda del arco~ a ~arco~) y la externa (de esquina a ~arco~)."
    ),
    "pair.arc_over_tangents.wrong": (
        "El largo del ~arco~ mide tanto como las dos ~tangentes~ sumadas ({limit}) o más."
    ),
    "pair.arc_over_tangents.remedy": "Un ~arco~ es más corto que dar la vuelta por la esquina; revise los dos números.",
    "pair.no_corner.wrong": (
        "Desde 180° las ~tangentes~ no se juntan del lado de la curva: no hay largo de ~tangente~ ni externa."
    ),
    "pair.no_corner.remedy": "Revise el ángulo, o dé mejor ~radio~, ~cuerda del arco~, ~flecha~ o largo del ~arco~.",
    "pair.external_over_tangent.wrong": (
        "La externa mide tanto como la ~tangente~ ({limit}) o más; la externa siempre es la menor."
    ),
    "pair.external_over_tangent.remedy": (
        "Revise si están cambiados el largo de la ~tangente~ (de esquina a extremo) y la externa (de esquina a ~arco~)."
    ),
}
