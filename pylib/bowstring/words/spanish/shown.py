"""The words for a job that is shown in another unit than its own, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "shown.in": "Se muestra en {shown}. El trabajo está en {own}.",
    "shown.coarser": "Redondeado a {mark}, más grueso que {own} del trabajo. Úselo solo donde eso alcance.",
    "shown.echo": "{own}; se muestra {shown}",
    "shown.label": "Mostrar medidas en",
    "shown.own": "la unidad del trabajo",
    "shown.unit_ft_in": "pies y pulgadas",
    "shown.unit_ft": "pies decimales",
    "shown.unit_m": "metros",
    "shown.unit_mm": "milímetros",
}
