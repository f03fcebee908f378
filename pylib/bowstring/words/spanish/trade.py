"""The trade words of the Spanish sentences, each with the word that the crew uses: at first the same.

In a sentence a trade word stands between tildes, as in ``~banqueta~``. The word that is shown is looked up here.
To change one, change what stands after the colon, in the singular and in the plural. The words around it stay as they
are, so the new word keeps gender and number: ``banqueta`` may become ``acera`` ("la banqueta", "la acera"). A word of
the other gender breaks the sentences around it. Write it in lower case: at a sentence's start it gets its capital.
"""

TRADE = {
    # what is driven
    "estaca": "estaca",
    "estacas": "estacas",
    "estaca de acero": "estaca de acero",
    "estacas de acero": "estacas de acero",
    "trompo": "trompo",
    "trompos": "trompos",
    "tachuela": "tachuela",
    "tachuelas": "tachuelas",
    "clavo": "clavo",
    "clavos": "clavos",
    "tapón": "tapón",
    "tapones": "tapones",
    # forms
    "forma": "forma",  # elsewhere: cimbra
    "formas": "formas",  # elsewhere: cimbras; molde and moldes are masculine, so they don't fit "la forma"
    "tabla": "tabla",
    "tablas": "tablas",
    # tools
    "hilo": "hilo",
    "hilos": "hilos",
    "cinta": "cinta",
    "cintas": "cintas",
    "escuadra de carpintero": "escuadra de carpintero",
    "escuadras de carpintero": "escuadras de carpintero",
    "nivel de burbuja": "nivel de burbuja",
    "niveles de burbuja": "niveles de burbuja",
    "plomada": "plomada",
    "plomadas": "plomadas",
    # the arc and its measures; "cuerda" alone is a rope
    "arco": "arco",
    "arcos": "arcos",
    "cuerda del arco": "cuerda del arco",
    "cuerdas del arco": "cuerdas del arco",
    "cuerda corta": "cuerda corta",
    "cuerdas cortas": "cuerdas cortas",
    "media cuerda": "media cuerda",
    "medias cuerdas": "medias cuerdas",
    "flecha": "flecha",
    "flechas": "flechas",
    "radio": "radio",
    "radios": "radios",
    "centro": "centro",
    "centros": "centros",
    "punto medio": "punto medio",
    "puntos medios": "puntos medios",
    "tangente": "tangente",
    "tangentes": "tangentes",
    "ordenada": "ordenada",
    "ordenadas": "ordenadas",
    "distancia a escuadra": "distancia a escuadra",
    "distancias a escuadra": "distancias a escuadra",
    "separación": "separación",
    "separaciones": "separaciones",
    "medida de amarre": "medida de amarre",
    "medidas de amarre": "medidas de amarre",
    # how it is held
    "a escuadra": "a escuadra",
    "a nivel": "a nivel",
    "pendiente": "pendiente",
    "pendientes": "pendientes",
    # the work
    "concreto": "concreto",  # elsewhere: hormigón
    "concretos": "concretos",  # elsewhere: hormigones
    "cara del concreto": "cara del concreto",  # elsewhere: cara del hormigón
    "caras del concreto": "caras del concreto",  # elsewhere: caras del hormigón
    "guarnición": "guarnición",  # elsewhere: bordillo or cordón, which are masculine: they don't fit "la guarnición"
    "guarniciones": "guarniciones",
    "banqueta": "banqueta",  # elsewhere: acera
    "banquetas": "banquetas",  # elsewhere: aceras
    "línea de flujo": "línea de flujo",
    "líneas de flujo": "líneas de flujo",
    "labio": "labio",
    "labios": "labios",
    "junta": "junta",
    "juntas": "juntas",
    # the site, the paper and the people
    "referencia": "referencia",
    "referencias": "referencias",
    "punto conocido": "punto conocido",
    "puntos conocidos": "puntos conocidos",
    "tolerancia": "tolerancia",
    "tolerancias": "tolerancias",
    "revisión": "revisión",
    "revisiones": "revisiones",
    "trazo": "trazo",
    "trazos": "trazos",
    "plano": "plano",
    "planos": "planos",
    "cuadrilla": "cuadrilla",
    "cuadrillas": "cuadrillas",
    "mayordomo": "mayordomo",
    "mayordomos": "mayordomos",
    "inspector": "inspector",
    "inspectores": "inspectores",
}
"""The crew's word by the word that stands between tildes, both in lower case."""
