"""How to call the terminal door, and what can be wrong with a call."""

_CALL = "python3 -m bowstring JOB [--method NAME] [--all | --json | --link | --csv | --messages]"
_REMEDY = f"Call it as: {_CALL}. JOB is the path of a job file, a link, or - for standard input."

MESSAGES = {
    "usage.call": _CALL,
    "usage.no_job.wrong": "No job is given.",
    "usage.no_job.remedy": _REMEDY,
    "usage.not_known.wrong": "{word} is one word too many, or no option here.",
    "usage.not_known.remedy": _REMEDY,
    "usage.one_of_two.wrong": "More than one of --all, --json, --link, --csv and --messages is given.",
    "usage.one_of_two.remedy": _REMEDY,
    "usage.not_readable.wrong": "This call can't be read.",
    "usage.not_readable.remedy": _REMEDY,
}
