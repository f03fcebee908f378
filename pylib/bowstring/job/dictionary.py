"""What a link's text is likely to hold: the dictionaries that its form is squeezed with, and the order of a job's keys.

Each dictionary is a part of its form, whatever becomes of the keys in it: never to be changed, or links that somebody
kept could no longer be read. A test holds their hashes.
"""

from __future__ import annotations

DICTIONARY_1 = (
    b'"half_chords":["stake":"got":["sure":true"hold":"directions"arc_length"radius"tape":"ground"level"fall":"'
    b'"found":{"chord":["distance":"ties":{"A":[{"to":"start":"neither"corner"one-end"driven":"hub"pin"board"'
    b'"drawn_to":"unsure"back"centre"face"greater":true"points":[[0,"external":"tangent_length":"degree":'
    b'"central_angle":"arc_length":"radius":"note":"title":"unit":"mm"m"ft"mark":"1/16 in""side":"right"'
    b'"toward":"outside"centre","offset":"1-1/2 in","spacing":"4 ft","levels":3,"ends":{"A":"","B":""},'
    b'"tolerance":"1/4 in","arc":{"sagitta":"\' 0-1/2\\"","chord":"\' 0\\""},{"arc":{"chord":"'
)
"""Of form 1, likeliest last."""

DICTIONARY_2 = (
    b'"unit":"ft-in""bowstring":1,wall"diameter":""external":""kind":"string""hold":"arc_length""delta":"'
    b'"halve_first":2"flow line""hold":"directions""string":"alternate""degree_by":"chord""tangent_from":"B"'
    b'"mark":"1/32 in""line":[{"straight":""outside":""greater":true"tapes_from":["B","A"]"measures":[{"from":"'
    b'"control":{"marks":[{"mark":"A","n":"middle_ordinate":""tangent_from":"both""done":["mid_ordinate":"'
    b'"tolerance":"1/2 in""method":"rule""mark":"0.1 ft""mark":"1/8 in""value":""slope":""mark":"0.01 m"'
    b'"board":{"length":""kind":"points""mark":"1 mm""side":"right""method":"centre","centre":"reachable"}'
    b'"grade":{"from":""mark":"0.01 ft""fair":"1/8 in""read":[{"check":""class":"III""errors":{"read":"'
    b'"method":"produced""values":[{"stake":""kind":"gaps""room":{"behind":""],"diameter":"manhole","distance":"'
    b'"kind":"ordinates""line":""half_chords":[""slab":{"thickness":"4 in","waste":10}"degree_by":"arc"'
    b'"ground":[{"name":"oak"mark":"10 mm""rise":""driven":"board","offset":"1-1/2 in","toward":"centre""parent":"'
    b'"start":"one-end""degree":""edge":"left""central_angle":"90""inside":""mark":"0.005 m""percent":'
    b'"driven":"marked""ties":{"A":[{"to":""kink":"scale":0.000","stops":"tape","outline":[[""kind":"two_tapes"'
    b'"tape":{"length":"50 ft","class":"II"}"first_gap":""width":"1.5 m""found":{"chord":[""from_A":"'
    b'"mark":"1/16 in""drawn_to":"unsure""axes":"x-y""method":"angles""spacing":"1 m""three_sides":["'
    b'"method":"coordinates""by":"Curb"start":"neither""turn":"left""levels":3"mark":"5 mm""class":"I""lip"'
    b'"fall":{"along":"20 m""mark":"1/2 in"Driveway"ordinate":""fix":[{"mark":""unit":"ft""sure":true}"30 m"'
    b'"mark":"0.001 m"tree"mark":"1/4 in""unit":"mm""from_B":"center","stops":"feet""parallel":"-'
    b'"drawn_to":"centre""tape":"level""drawn_to":"back","across":"arc_length":""stations":[""width":"5 ft"'
    b'"hold":"radius""edge":"right""tangent_length":""sigma":"1/8 in"}"method":"tapes""radius":"'
    b'"measured":[{"kind":"{"x":"","y":""known":[{"name":"Patio"axes":"n-e"}"tolerance":"5 mm""method":"tangent"'
    b'"points":[["0","0"],[""spacing":"4 ft""start":"corner""],[""}],"B":[{"to":"corner of house","distance":"'
    b'"angle":"tape":"ground","fall":""driven":"hub","offset":"2 ft","toward":"outside""note":""overrun":"2 ft"'
    b']]},{"name":""edge":"centre""joints":{"every":"","at":[""method":"ordinates", arc pond"date":"20'
    b'\' 0\\"","sagitta":""tangent_from":"A""turn":"right","e":"got":[{"stake":"M","sagitta":""unit":"m"planter'
    b'"},"side":"left","drawn_to":"face","driven":"pin","tolerance":"1/4 in","levels":3,"method":"halving"}'
    b'"hands":3"chord":"{"title":"Walk ft","central_angle":"","chord":"1/2\\"","sagitta":"\' 6\\""},"ends":{"A":"'
    b'","B":"","arc":{"radius":"'
)
"""Of form 2, likeliest last: every key and every word that a job may have, those that are planned too."""

ORDER = (
    "title", "note", "unit", "mark", "arc", "radius", "diameter", "degree", "degree_by", "chord", "sagitta",
    "arc_length", "central_angle", "tangent_length", "external", "points", "three_sides", "greater", "line",
    "straight", "kink", "ends", "A", "B", "side", "turn", "drawn_to", "driven", "offset", "toward", "width",
    "edge", "tolerance", "fair", "spacing", "levels", "method", "centre", "parallel", "halve_first",
    "first_gap", "stations", "tangent_from", "tapes_from", "start", "ties", "to", "distance", "name", "stops",
    "at", "outline", "x", "y", "n", "e", "sigma", "found",
)  # fmt: skip
"""The order in which a link writes an object's keys: the dictionary's, so that it serves. Others stand after them."""
