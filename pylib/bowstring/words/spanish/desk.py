"""What the page says about kept jobs, links, files, working offline and starting, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "page.desk": "Trabajos, enlaces y archivos",
    "page.jobs": "Trabajos en este dispositivo",
    "page.jobs_none": "Todavía ninguno. Un trabajo se guarda conforme usted escribe.",
    "page.file_out": "Guardar el trabajo como archivo",
    "page.file_in": "Abrir un archivo de trabajo",
    "page.hand_over": "Pasárselo a otro",
    "page.hand_qr": "Código QR",
    "page.hand_messages": "Texto para mensajes",
    "page.hand_files": "Archivos",
    "page.link_help": "Los números van en el enlace, en ningún otro lado. Lo marcado y leído queda en este teléfono.",
    "page.link_label": "Enlace",
    "page.link_copy": "Copiar el enlace",
    "page.link_share": "Compartir",
    "page.link_in": "Abrir un enlace que le enviaron",
    "page.link_open": "Abrir",
    "page.language": "Idioma",
    "page.save": "Copia completa en un archivo",
    "page.save_help": (
        "Un solo archivo con toda la página y este trabajo adentro. Abre sin internet, y es la única copia que ningún "
        "navegador borra. Algunos navegadores borran lo que guarda una página después de una semana sin usarla."
    ),
    "page.save_page": "Guardar la página como archivo",
    "page.offer": "El enlace o archivo trae otro trabajo:",
    "page.offer_open": "Abrirlo (el suyo sigue en la lista)",
    "page.offer_leave": "Quedarme con el mío",
    "page.update": "Hay lista una versión más nueva de esta página. Al actualizar, su trabajo se conserva.",
    "page.update_take": "Actualizar ahora",
    "page.update_later": "Después",
    "page.elsewhere_both": "Esto se cambió aquí y en otra ventana. ¿Con cuál se queda?",
    "page.elsewhere_gone": "Este trabajo se borró en otra ventana.",
    "page.elsewhere_keep": "Conservarlo",
    "page.elsewhere_leave": "No conservarlo",
    "page.sent": "Se lo mandaron: léalo primero. Si cambia un número, ya es su copia.",
    "page.sent_read": "Leerlo",
    "page.copied": "Esta ya es su copia. El trabajo como se lo mandaron sigue en Trabajos.",
    "page.desk_received": "como llegó",
    "page.desk_copy": "su copia",
    "page.other_part": "Un campo",
    "page.nothing": "nada",
    "page.files": "Archivo de trabajo",
    "page.example_show": "Mostrar un ejemplo",
    "page.full": (
        "A este dispositivo ya no le queda espacio para la página. Guarde sus trabajos más viejos como archivos, y "
        "luego bórrelos aquí."
    ),
    "page.full_out": "Guardar los más viejos como archivos",
    "page.not_started": (
        "El script de la página no ha arrancado. Necesita un navegador de 2023 o más nuevo, con los scripts "
        "permitidos. Mientras no arranque, aquí no se calcula nada: no construya con esto."
    ),
    "page.trouble_no_wasm": (
        "Este navegador bloquea WebAssembly, que la página necesita, así que aquí no se pueden calcular sus números. "
        "Pruebe otro navegador, o quite su protección más estricta para esta página. Lo que dijo el navegador:"
    ),
    "page.trouble_old": (
        "Este navegador no puede correr el script de la página. La página necesita un navegador de 2023 o más nuevo. "
        "Aquí no se calcula nada: no construya con esto."
    ),
    "page.lacked": (
        "A la copia de esta página le faltaba una parte de Python y se bajó de internet. Todo funciona, pero solo con "
        "internet. Faltaba:"
    ),
    "page.kept_kept": "Guardado en este dispositivo:",
    "page.kept_full": (
        "NO se guardó: el espacio de este dispositivo para la página está lleno. Borre trabajos aquí abajo, o guarde "
        "el trabajo como archivo."
    ),
    "page.kept_none": (
        "NO se guardó: este navegador no guarda nada de esta página. Guarde el trabajo como archivo, o copie su "
        "enlace, antes de cerrarla."
    ),
    "page.offline_fetching": (
        "Guardando la página en este dispositivo, para que funcione sin internet: siga conectado un momento."
    ),
    "page.offline_ready": (
        "Toda la página está en este dispositivo: funciona sin internet. Un navegador puede borrarla después de un "
        "tiempo sin uso; una copia guardada se queda."
    ),
    "page.offline_saved": "Esta es una copia guardada: funciona sin internet, y ningún navegador la borra.",
    "page.offline_never": (
        "Este navegador no puede guardar la página para usarla sin internet. Mejor guarde la página como archivo."
    ),
    "page.offline_failed": (
        "No se pudo guardar la página en este dispositivo (sin internet o sin espacio), así que necesita internet. "
        "Vuelva a cargarla para intentar otra vez, o guarde la página como archivo."
    ),
    "page.offline_dead": "Aquí la página todavía no puede calcular números, así que tampoco funciona sin internet.",
    "page.desk_ask_failed": "Eso no se pudo calcular, y su trabajo no cambió:",
    "page.desk_untitled": "Trabajo sin nombre",
    "page.desk_unreadable": "Un trabajo que no se puede leer",
    "page.desk_remove": "Borrar",
    "page.desk_file_large": "Ese archivo es demasiado grande para ser de un trabajo. No se abrió nada.",
    "page.desk_open_already": "Ese trabajo ya está en los campos.",
    "page.desk_open_failed": "Eso no se pudo abrir, y su trabajo no cambió:",
    "page.desk_copied": "Copiado.",
    "page.desk_copy_by_hand": "No se pudo copiar. El texto está seleccionado: cópielo usted mismo.",
    "page.desk_saving": "Empacando la página.",
    "page.desk_saved": "Se guardó en sus descargas, con este trabajo adentro.",
    "page.desk_save_failed": "No se pudo empacar la página:",
    "page.desk_no_address": (
        "Esta copia no conoce la dirección de la página. Quien reciba este texto lo abre en su propia copia, en el "
        "campo de abajo."
    ),
}
