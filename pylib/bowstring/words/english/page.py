"""What the page says around the form and the sheet."""

MESSAGES = {
    "page.title": "Bowstring: an arc from its numbers to the stakes",
    "page.description": "From a drawing's arc to tape-ready stakes, when the center can't be reached: exact halving, checks and drawings.",
    "page.name": "Bowstring",
    "page.lead": "An arc on the ground from its chord, when its center can't be reached.",
    "page.to_numbers": "Numbers",
    "page.to_sheet": "Sheet",
    "page.numbers": "Your numbers",
    "page.sheet": "Field sheet",
    "page.example_in_form": "The fields hold an example. Clear them all before you type your own job.",
    "page.clear": "Clear the form for a new job",
    "page.restore": "Bring back what was cleared",
    "page.keys": "Signs for feet and inches",
    "page.key_feet": "feet",
    "page.key_inches": "inches",
    "page.key_space": "space",
    "page.key_dash": "dash",
    "page.key_slash": "slash",
    "page.key_letters": "abc: letters or numbers",
    "page.print": "Print the sheet",
    "page.unit_changed": "The unit is now {unit}; it was {before}. Nothing was converted, so these numbers mean something else:",
    "page.unit_row": "{label} {typed}: now {now}, before {then}.",
    "page.unit_unread": "not readable",
    "page.mark_other": "{mark} isn't on a tape in this unit: {used} is used.",
    "page.unit_keep": "They are right in this unit",
    "page.unit_back": "Put the unit back",
    "page.parts": "One part at a time",
    "page.parts_previous": "Back",
    "page.parts_next": "Next",
    "page.parts_close": "Whole sheet",
    "page.parts_of": "Parts of the sheet",
    "page.version": "Version {version}",
    "page.no_script": (
        "This page needs scripts to work out your numbers. Without them, only the example sheet is here: don't build from it."
    ),
    "page.example": (
        "This is an example: an invented place with invented numbers. It becomes your sheet once the numbers are yours."
    ),
    "page.leftovers": "Parts of the example are still in the form: {labels}. Change or clear what isn't yours before you build.",
    "page.leftover_joint": ", ",
    "page.stale": "Out of date: your numbers are being worked out. Don't use this sheet yet.",
    "page.refused": "No sheet yet",
    "page.refused_why": "These numbers don't work yet. Nothing you typed is lost.",
    "page.error": "{label}: {text}",
    "page.error_text": "{wrong} {remedy}",
    "page.status_starting": "Example: starting.",
    "page.status_last": "From last time: checking.",
    "page.status_waiting": "Working.",
    "page.status_computed": "Up to date.",
    "page.status_example": "Example.",
    "page.status_stop": "Don't build yet.",
    "page.status_refused": "No sheet.",
    "page.status_failed": "Not working.",
    "page.live_computed": "Sheet updated.",
    "page.live_stop": "Sheet updated. Don't build from it yet.",
    "page.live_refused": "No sheet: these numbers don't work yet.",
    "page.trouble_start": (
        "The part that computes didn't start, so your numbers can't be worked out here. Reload the page. If that doesn't help, "
        "try another browser, or use another device. What the browser said:"
    ),
    "page.trouble_slow_start": (
        "The part that computes hasn't started after a minute; it is still trying. If nothing changes, check the connection and "
        "reload the page, or try another browser."
    ),
    "page.trouble_slow": (
        "Your numbers have taken over a minute. Try fewer rounds or a wider spacing; if that doesn't help, reload the page."
    ),
    "page.trouble_fault": (
        "Something went wrong while working out your numbers, so there is no sheet. That is this tool's fault, not yours. "
        "Change a number or reload the page. The error was:"
    ),
}
