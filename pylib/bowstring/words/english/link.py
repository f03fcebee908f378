"""What can be wrong with a link."""

MESSAGES = {
    "link.not_one.wrong": "This isn't one of this tool's links.",
    "link.not_one.remedy": "Copy the whole link again, from its first letter to its last.",
    "link.newer.wrong": "This link was written by a newer version of this tool.",
    "link.newer.remedy": "Update this page, then open the link again.",
    "link.several.wrong": "This text holds {count} links to different jobs.",
    "link.several.remedy": "Paste the one that you want to open.",
    "link.too_long.wrong": (
        "This job is too large for a link: it would be {count} characters long, and {limit} is the most."
    ),
    "link.too_long.remedy": "Save the job as a file and send that.",
    "link.cut.wrong": "The link isn't whole: part of it is missing or was added.",
    "link.cut.remedy": "Ask for it again, or copy all of it: messages sometimes cut links.",
    "link.damaged.wrong": "The link was changed on its way: its check doesn't fit.",
    "link.damaged.remedy": "Ask for it again, and open it instead of typing it.",
}
