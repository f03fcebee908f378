"""What the page says around the form and the sheet, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "page.title": "Bowstring: un ~arco~, de sus números a las ~estacas~",
    "page.description": (
        "Del ~arco~ del ~plano~ a ~estacas~ listas para medir, sin alcanzar el ~centro~: por mitades exactas, "
        "~revisiones~ y dibujos."
    ),
    "page.name": "Bowstring",
    "page.to_numbers": "Ir a los números",
    "page.new_job": "Trabajo nuevo",
    "page.called_line": "Línea de {count} tramos",
    "page.called_points": "Tres puntos",
    "page.faces": "Vistas de este trabajo",
    "page.face_numbers": "Números",
    "page.face_stakes": "~Estacas~",
    "page.face_checks": "~Revisiones~",
    "page.face_build": "Obra",
    "page.face_paper": "Papel",
    "page.face_why": "Por qué",
    "page.panel_back": "Atrás",
    "page.aloud": "Leer cada paso en voz alta",
    "page.send": "Enviar el enlace",
    "page.paper_wait": "El papel de estos números todavía se está haciendo. Imprima otra vez.",
    "page.appendix": "Todo, en una sola hoja larga",
    "page.appendix_what": "Todos los pasos en palabras, tablas y dibujos. Ábrala, y también se imprime.",
    "page.stop": "ALTO",
    "page.not_yet": "Todavía no",
    "page.two_first": "Dé primero dos números del ~arco~.",
    "page.state_ready": "Todo contestado",
    "page.state_stop": "Detenido",
    "page.state_out": "{count} ~revisiones~ fuera",
    "page.state_wait": "{count} ~revisiones~ esperan",
    "page.state_wait_one": "{count} ~revisión~ espera",
    "page.state_out_one": "{count} ~revisión~ fuera",
    "page.state_refused": "Todavía no",
    "page.stood": "Con los números anteriores se pusieron: {names}.",
    "page.stood_one": "Con los números anteriores se puso {names}.",
    "page.stood_more": "{names} y {count} más",
    "page.stood_keep": "Conservar los números anteriores",
    "page.stood_again_these": "Poner {names} otra vez",
    "page.stood_again": "Poner las ~estacas~ otra vez",
    "page.undo": "Deshacer",
    "page.undo_clear": "Trabajo nuevo. El anterior queda en Trabajos.",
    "page.undo_empty": "Trabajo nuevo.",
    "page.undo_remove": "Se borró.",
    "page.undo_done": "Listo.",
    "page.undo_again": "Ponga otra vez cada ~estaca~.",
    "page.status_starting": "Arrancando",
    "page.status_last": "De la última vez",
    "page.status_waiting": "Calculando",
    "page.clear": "Trabajo nuevo",
    "page.print": "Imprimir",
    "page.unit_changed": "La unidad cambió a {unit}, antes {before}. Nada se convirtió:",
    "page.unit_row": "{label} {typed}: ahora {now}, antes {then}",
    "page.unit_unread": "no se puede leer",
    "page.mark_other": "{mark} no viene en una ~cinta~ de esta unidad: se usa {used}.",
    "page.unit_open.wrong": "Se cambió la unidad de estos números.",
    "page.unit_open.remedy": "Diga primero en qué unidad están.",
    "page.unit_first": "Se cambió la unidad de estos números. Diga primero en qué unidad están.",
    "page.unit_keep": "Están bien en esta unidad",
    "page.unit_back": "Regresar a la unidad anterior",
    "page.version": "Versión {version}",
    "page.no_script": (
        "Esta página necesita scripts para calcular sus números. Sin ellos, aquí no se calcula nada: no construya con "
        "esto."
    ),
    "page.forget": "Olvidar {stakes}",
    "page.got_holds": "Tiene {read}.",
    "page.got_read": "{start} a {end} {shown}",
    "page.error": "{label}: {text}",
    "page.error_text": "{wrong} {remedy}",
    "page.status_failed": "No funciona",
    "page.trouble_start": (
        "La parte que calcula no arrancó, así que aquí no se pueden calcular sus números. Vuelva a cargar la página. "
        "Si eso no ayuda, pruebe otro navegador u otro dispositivo. Lo que dijo el navegador:"
    ),
    "page.trouble_slow_start": (
        "La parte que calcula no ha arrancado después de un minuto; sigue intentando. Si nada cambia, revise la "
        "conexión y vuelva a cargar la página, o pruebe otro navegador."
    ),
    "page.trouble_slow": (
        "Sus números llevan más de un minuto. Pruebe con menos rondas o ~separaciones~ más grandes. Si eso no ayuda, "
        "vuelva a cargar la página."
    ),
    "page.trouble_fault": (
        "Algo salió mal al calcular sus números, así que no hay hoja. La culpa es de esta herramienta, no de usted. "
        "Cambie un número o vuelva a cargar la página. El error fue:"
    ),
}
