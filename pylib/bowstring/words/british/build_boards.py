"""The form boards, where Britain says something else."""

MESSAGES: dict[str, str] = {
    "boards.more_near": "site timber stops at R {radius}",
    "boards.level_job": "Site timber",
    "boards.no_table": "No published table covers timber: these are workshop figures.",
    "boards.taken_level": "Site timber, as long as you say nothing better.",
    "boards.kickers": "Then the raking struts, and sight along the top.",
}
