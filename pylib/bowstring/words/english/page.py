"""What the page says around the form and the sheet."""

MESSAGES = {
    "page.title": "Bowstring: an arc from its numbers to the stakes",
    "page.description": (
        "From a drawing's arc to tape-ready stakes, when the center can't be reached: exact halving, checks and "
        "drawings."
    ),
    "page.name": "Bowstring",
    "page.to_numbers": "Go to the numbers",
    "page.new_job": "New job",
    "page.called_line": "Line of {count} pieces",
    "page.called_points": "Three points",
    "page.faces": "Faces of this job",
    "page.face_numbers": "Numbers",
    "page.face_stakes": "Stakes",
    "page.face_checks": "Checks",
    "page.face_build": "Build",
    "page.face_paper": "Paper",
    "page.face_why": "Why",
    "page.panel_back": "Back",
    "page.aloud": "Read each step aloud",
    "page.send": "Send the link",
    "page.paper_wait": "The paper for these numbers is still being made. Print once more.",
    "page.appendix": "Everything, as one long sheet",
    "page.appendix_what": "All steps in words, tables and drawings. Open it, and it prints too.",
    "page.stop": "STOP",
    "page.not_yet": "Not yet",
    "page.two_first": "Give two numbers of the arc first.",
    "page.state_ready": "All answered",
    "page.state_stop": "Stopped",
    "page.state_out": "{count} checks out",
    "page.state_wait": "{count} checks wait",
    "page.state_wait_one": "{count} check waits",
    "page.state_out_one": "{count} check out",
    "page.state_refused": "Not yet",
    "page.stood": "Set by the old numbers: {names}.",
    "page.stood_one": "{names} is set by the old numbers.",
    "page.stood_more": "{names} and {count} more",
    "page.stood_keep": "Keep the old numbers",
    "page.stood_again_these": "Set {names} again",
    "page.stood_again": "Set the stakes again",
    "page.undo": "Undo",
    "page.undo_clear": "New job. The old one is kept in Jobs.",
    "page.undo_empty": "New job.",
    "page.undo_remove": "Deleted.",
    "page.undo_done": "Done.",
    "page.undo_again": "Set every stake again.",
    "page.status_starting": "Starting",
    "page.status_last": "From last time",
    "page.status_waiting": "Working",
    "page.clear": "New job",
    "page.print": "Print",
    "page.unit_changed": "Unit changed to {unit}, from {before}. Nothing was converted:",
    "page.unit_row": "{label} {typed}: now {now}, before {then}",
    "page.unit_unread": "not readable",
    "page.mark_other": "{mark} isn't on a tape in this unit: {used} is used.",
    "page.unit_open.wrong": "The unit was changed under these numbers.",
    "page.unit_open.remedy": "Say first which unit they are in.",
    "page.unit_first": "The unit was changed under these numbers. Say which unit they are in first.",
    "page.unit_keep": "They are right in this unit",
    "page.unit_back": "Put the unit back",
    "page.version": "Version {version}",
    "page.no_script": (
        "This page needs scripts to work out your numbers. Without them, nothing here is computed: don't build from it."
    ),
    "page.forget": "Forget {stakes}",
    "page.got_holds": "Holds {read}.",
    "page.got_read": "{start} to {end} {shown}",
    "page.error": "{label}: {text}",
    "page.error_text": "{wrong} {remedy}",
    "page.status_failed": "Not working",
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
