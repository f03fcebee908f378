"""Hubs outside the dig of a line of several pieces, in Spanish as on US sites."""

MESSAGES = {
    "lined.hubs_first": "Antes de excavar, ~trompos~ a *{off}* de cada ~estaca~ y punta de tramo.",
    "lined.hubs_square": (
        "Los ~trompos~ van ~a escuadra~ con la línea. En un ~arco~, hacia su ~centro~ o alejándose de él."
    ),
    "lined.hubs_kink": "En un quiebre el ~trompo~ va ~a escuadra~ con el ~arco~; si no, con el tramo anterior.",
    "lined.hubs_prove": "De ~trompo~ a ~trompo~ debe dar lo de la lista: ningún paso lo midió.",
    "lined.hubs_straight": (
        "Antes de excavar, ponga una ~estaca~ igual de lejos de la línea también aquí: {places}. Ninguna tarjeta de "
        "~arco~ lo hace."
    ),
    "lined.hubs_no_room": "*{place}:* no cabe un ~trompo~. Amarre esa marca a dos que se queden.",
    "lined.hubs_table": "~Trompos~ fuera de la excavación",
    "lined.head_where": "Dónde",
    "lined.head_hub": "~Trompo~",
    "lined.head_next": "Al siguiente ~trompo~",
    "lined.hub_start": "el inicio",
    "lined.hub_none": "no cabe",
    "lined.hub_no_tape": "-",
    "lined.hubs_except": "Menos: {places}.",
    "lined.hub_off": "{place}, *{off}*",
    "lined.hub_off_but": "{place}, *{off}* (su A: *{other}*, ~a escuadra~ con {piece})",
    "lined.hubs_arcs": "Trace todos los ~arcos~ y clave sus ~trompos~ antes de excavar.",
    "lined.head_hub_to_hub": "Entre ~trompos~",
}
