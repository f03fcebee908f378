"""What was got at a stake: where it stands and what changes after it, in Spanish as on US sites."""

# No sentence here is held against published text: everything is from memory.

MESSAGES = {
    "got.off_place": "a {off} de su lugar",
    "got.stands": "{stake} está {off}.",
    "got.along": "Está {along} más allá de su lugar, hacia {end}.",
    "got.over": "Se permite {tolerance}: mueva la ~estaca~, o pregunte.",
    "got.astray": "Nadie pone una marca tan fuera de lugar: mídalo otra vez.",
    "got.bump": "Con sus vecinas eso hace una panza o quiebre de {bump}.",
    "got.nothing_changes": "Ningún otro número cambia.",
    "got.allow": "Los siguientes números toman eso en cuenta.",
    "got.by_rule": "Los números que siguen se quedan como los da la regla práctica.",
    "got.back": "Los siguientes números regresan {stakes} al ~arco~.",
    "got.back_more": "Los siguientes números regresan {stakes} y lo demás al ~arco~.",
    "got.and": "{first}, {second}",
    "got.must": "Entonces {start} a {end} debe dar {now}.",
    "got.move_in": "Mueva {stake} hacia adentro {by}",
    "got.move_out": "Mueva {stake} hacia afuera {by}",
    "got.label.middle": "~punto medio~ del ~hilo~",
    "got.label.midpoint": "~punto medio~",
    "got.label.along": "a lo largo, desde {start}",
    "got.label.square_off": "~a escuadra~",
    "got.label.carry_on": "prolongar",
    "got.label.swing_in": "girar hacia adentro",
    "got.label.between": "{start} a {end}",
    "got.slip.foot_more": "{what}: 1 ft más. ¿Empezó en el 1 ft de la ~cinta~? Entonces réstelo.",
    "got.slip.foot_less": "{what}: 1 ft menos. ¿Se puso empezando en el 1 ft de la ~cinta~, o se leyó mal un pie?",
    "got.slip.inch_more": "{what}: 1 in más. ¿Empezó en la 1 in de la ~cinta~, o se leyó mal una pulgada?",
    "got.slip.inch_less": (
        "{what}: 1 in menos. ¿Se puso empezando en la 1 in de la ~cinta~, o se leyó mal una pulgada?"
    ),
    "got.slip.metre_more": "{what}: 1 m más. ¿Se leyó mal un metro?",
    "got.slip.metre_less": "{what}: 1 m menos. ¿Se leyó mal un metro?",
    "got.slip.decimetre_more": "{what}: 100 mm más. ¿Empezó en 100 mm (10 cm) de la ~cinta~? Entonces réstelos.",
    "got.slip.decimetre_less": "{what}: 100 mm menos. ¿Se puso empezando en 100 mm (10 cm) de la ~cinta~?",
    "got.slip.swapped": "{what}: {read} es {asked} con dos cifras cambiadas de lugar. Léalo otra vez.",
    "got.slip.six_nine": "{what}: {read} es {asked} con un 6 por un 9, o un 9 por un 6. Léalo otra vez.",
    "got.slip.fraction": "{what}: {read} es {asked} con la fracción leída en otras rayitas. Léalo otra vez.",
    "got.slip.other_end": "{what}: {read} es lo que da desde el otro extremo del ~hilo~. ¿Se midió desde ahí?",
    "got.slip.other_hand": "{what}: {read} es lo que da con la ~estaca~ del otro lado. ¿De qué lado está?",
    "got.slip.apart": "Las lecturas en {mark} difieren {apart}. Una está mal leída: mídalas todas otra vez.",
}
