"""What the page says about kept jobs, links, files, working offline and starting."""

MESSAGES = {
    "page.desk": "Jobs, links and files",
    "page.jobs": "Jobs on this device",
    "page.jobs_none": "None yet. A job is kept as you type.",
    "page.file_out": "Save the job as a file",
    "page.file_in": "Open a job file",
    "page.hand_over": "Hand it over",
    "page.hand_qr": "QR code",
    "page.hand_messages": "Text for messages",
    "page.hand_files": "Files",
    "page.link_help": "The job's numbers are in the link, stored nowhere else. Ticks and readings stay on this phone.",
    "page.link_label": "Link",
    "page.link_copy": "Copy the link",
    "page.link_share": "Share",
    "page.link_in": "Open a link you were sent",
    "page.link_open": "Open",
    "page.language": "Language",
    "page.save": "Self-contained copy",
    "page.save_help": (
        "One file with the whole page and this job in it. It opens without a network, and it is the only copy that no browser "
        "deletes. Some browsers delete what a page keeps after a week without use."
    ),
    "page.save_page": "Save the page as a file",
    "page.offer": "The link or file holds another job:",
    "page.offer_open": "Open it (yours stays in the list)",
    "page.offer_leave": "Keep mine",
    "page.update": "A newer version of this page is ready. Your work is kept when you update.",
    "page.update_take": "Update now",
    "page.update_later": "Later",
    "page.elsewhere_both": "This was changed here and in another window. Which one do you keep?",
    "page.elsewhere_gone": "This job was deleted in another window.",
    "page.elsewhere_keep": "Keep it",
    "page.elsewhere_leave": "Let it go",
    "page.sent": "Sent to you: read it first. Change a number, and it becomes your copy.",
    "page.sent_read": "Read it",
    "page.copied": "This is your copy now. The job as it was sent stays under Jobs.",
    "page.desk_received": "as sent",
    "page.desk_copy": "your copy",
    "page.other_part": "One field",
    "page.nothing": "nothing",
    "page.files": "Job file",
    "page.example_show": "Show an example",
    "page.full": "This device has no room left for the page. Save your oldest jobs as files, then delete them here.",
    "page.full_out": "Save the oldest as files",
    "page.not_started": (
        "The page's script hasn't started. It needs a browser from 2023 or later with scripts allowed. Until it "
        "starts, nothing is computed here: don't build from it."
    ),
    "page.trouble_no_wasm": (
        "This browser blocks WebAssembly, which the page needs, so your numbers can't be worked out here. Try another browser, "
        "or turn off its strictest protection for this page. What the browser said:"
    ),
    "page.trouble_old": (
        "This browser can't run the page's script. The page needs a browser from 2023 or later. Nothing is computed "
        "here: don't build from it."
    ),
    "page.lacked": (
        "A part of Python was missing from this page's own copy and was fetched. Everything works, but only with a network. Missing:"
    ),
    "page.kept_kept": "Kept on this device:",
    "page.kept_full": (
        "NOT kept: this device's storage for the page is full. Delete jobs below, or save the job as a file."
    ),
    "page.kept_none": (
        "NOT kept: this browser keeps nothing for this page. Save the job as a file, or copy its link, before you close it."
    ),
    "page.offline_fetching": "Saving the page on this device, so it works without a network: stay online for a moment.",
    "page.offline_ready": (
        "The whole page is on this device: it works without a network. A browser may delete it after a while unused; "
        "a saved copy stays."
    ),
    "page.offline_saved": "This is a saved copy: it works without a network, and no browser deletes it.",
    "page.offline_never": (
        "This browser can't keep the page for use without a network. Save the page as a file instead."
    ),
    "page.offline_failed": (
        "The page couldn't be saved on this device (no network, or no room), so it needs a network. Reload it to try again, or "
        "save the page as a file."
    ),
    "page.offline_dead": "The page can't work out numbers here yet, so it doesn't work without a network either.",
    "page.desk_ask_failed": "That couldn't be worked out, and your work is unchanged:",
    "page.desk_untitled": "Job without a title",
    "page.desk_unreadable": "A job that can't be read",
    "page.desk_remove": "Delete",
    "page.desk_file_large": "That file is too large to be a job file. Nothing was opened.",
    "page.desk_open_already": "That job is already in the fields.",
    "page.desk_open_failed": "That couldn't be opened, and your work is unchanged:",
    "page.desk_copied": "Copied.",
    "page.desk_copy_by_hand": "Couldn't copy. The text is selected: copy it yourself.",
    "page.desk_saving": "Packing the page.",
    "page.desk_saved": "Saved to your downloads, with this job in it.",
    "page.desk_save_failed": "The page couldn't be packed:",
    "page.desk_no_address": (
        "This copy doesn't know the page's address. Whoever gets this text opens it in their own copy, in the field below."
    ),
}
