"""Handing a job over: its code, its messages, its files."""

MESSAGES = {
    "hand_over.qr_title": "QR code of this job's link",
    "hand_over.qr_how": "Point the other phone's camera at it. Turn this screen up to full brightness.",
    "hand_over.qr_low": "A long job: its code is fine. Hold both phones still, and out of the glare.",
    "hand_over.qr_long": "This job is too long for a code that a phone can read. Send the link or a file instead.",
    "hand_over.qr_no_address": "This copy doesn't know the page's address. The code holds the job alone: scan it into the page.",
    "hand_over.no_link": "There is no link yet: the job's numbers don't make a sheet.",
    "hand_over.messages_how": "Send these as texts, one after the other. Each tells its numbers without the page.",
    "hand_over.messages_many": "{count} texts, {signs} characters in all.",
    "hand_over.copy": "Copy",
    "hand_over.copy_one": "Copy text {number}",
}
