"""The terminal's own words, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "terminal.what": "La hoja de campo de un ~arco~, de los números del ~plano~ a las ~estacas~.",
    "terminal.job": "la ruta de un archivo de trabajo, - para la entrada estándar, o un enlace",
    "terminal.all": "imprime todas las partes de la hoja, no la corta",
    "terminal.json": "la respuesta como un solo objeto JSON",
    "terminal.link": "el texto del enlace del trabajo, la parte después de #",
    "terminal.not_utf8": "no es texto UTF-8",
    "terminal.method": "hace el ~trazo~ con este método, diga lo que diga el trabajo: {methods}",
    "terminal.csv": "imprime las ~estacas~ como valores separados por comas",
    "terminal.messages": "la hoja como mensajes de texto de 160 caracteres o menos",
}
