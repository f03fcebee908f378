"""Handing a job over: its code, its messages, its files, in Spanish as on US sites."""

# No sentence here is a safety sentence of a published text; everything is from memory.

MESSAGES = {
    "hand_over.qr_title": "Código QR del enlace de este trabajo",
    "hand_over.qr_how": "Apúntele con la cámara del otro teléfono. Suba al máximo el brillo de esta pantalla.",
    "hand_over.qr_low": "Un trabajo largo da un código muy apretado. No mueva los teléfonos, y evite el reflejo.",
    "hand_over.qr_long": "Este trabajo es muy largo para un código. Mejor mande el enlace o un archivo.",
    "hand_over.qr_no_address": "Esta copia no conoce la dirección de la página; el código trae solo el trabajo.",
    "hand_over.messages_how": "Mande estos mensajes en orden: solo ~estacas~. Ancho, cantos, ~concreto~: el enlace.",
    "hand_over.copy": "Copiar",
    "hand_over.copy_one": "Copiar el mensaje {number}",
    "hand_over.stopped": "Este trabajo está detenido: no hay archivo para trazar hasta que eso quede resuelto.",
    "hand_over.people": "Las ~estacas~ con sus lecturas, para una hoja de cálculo:",
    "hand_over.file.people": "~Estacas~ como valores (CSV)",
    "hand_over.drawings": "El dibujo, y el ~trazo~ para programas de dibujo:",
    "hand_over.instrument": "Para un instrumento. ¿Qué columnas lee? A está en 0, 0, y B queda sobre x (este).",
    "hand_over.instrument_drawn": "Para un instrumento, en las coordenadas del ~plano~. ¿Qué columnas lee?",
    "hand_over.file.svg": "Dibujo (SVG)",
    "hand_over.file.png": "Imagen, 300 dpi (PNG)",
    "hand_over.file.dxf": "~Trazo~ (DXF)",
    "hand_over.file.instrument-n-e": "nombre, norte, este",
    "hand_over.file.instrument-x-y": "nombre, x, y",
}
