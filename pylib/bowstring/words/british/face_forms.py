"""The form sheet on paper, where Britain says something else."""

MESSAGES = {
    "forms.form_stakes": "{count} form stakes, plus one a strut",
    "forms.elevation": "level",
    "forms.rod": "staff",
    "forms.sign_services": "Services, clearances",
    "forms.call": "Ring the plant ({where})",
    "forms.safe_line": "Line and level again right before the pour. Have services located and marked; cap steel.",
    "forms.safe_governs": (
        "The drawing, the specification and the local regulations govern. The mix is the specification's and the "
        "plant's."
    ),
    "forms.back_title": "{title}: levels and pour",
    "forms.sign_booked": "Form inspection booked, for",
    "forms.sign_slopes": "Running inside; crossfall, {level} level",
    "forms.sign_base": "Sub-base under top: av., least",
    "forms.sign_edge": "Thick edge: sub-base depth; width",
    "forms.diagonals_wall": "*Check:* both diagonals from stake to stake must read *{shown}*.",
    "forms.diagonals": (
        "*Check:* both diagonals from stake to stake must read *{shown}*. If one differs, a stake has slid along the "
        "curve."
    ),
    "forms.dig": "Dig {past} past each edge. Set pegs outside the dig first.",
    "forms.diagonals_each": "*Check:* the diagonals from stake to stake: {told}.",
    "forms.dig_deep": "Dig {past} past each edge, *{deep}* under the tops. Set pegs outside the dig first.",
    "forms.dig_apron": (
        "Dig {past} past each edge, *{deep}* under the tops, *{apron}* in the apron. Set pegs outside the dig first."
    ),
}
