"""What the page says when its site doesn't send what a start needs. Each sentence but the last two ends in a file's name."""

MESSAGES = {
    "host.missing": (
        "This site is missing a file of the page, so your numbers can't be worked out here. Tell whoever runs the site, then reload the "
        "page. The file, and what the site answered:"
    ),
    "host.type": (
        "This site sends a file of the page as the wrong type, so the browser won't run it. Your numbers can't be worked out here. Tell "
        "whoever runs the site, then reload the page. The file and its type:"
    ),
    "host.damaged": (
        "A file of the page arrives damaged, so your numbers can't be worked out here. Tell whoever runs the site, then reload the page. "
        "The file:"
    ),
    "host.unreachable": (
        "A file of the page can't be fetched, so your numbers can't be worked out here. Check the connection, then reload the page. The "
        "file:"
    ),
    "host.late": (
        "The site hasn't sent the whole page yet, so don't build from what stands here. Wait a moment. If nothing changes, check the "
        "connection and reload the page."
    ),
    "host.copy": (
        "A browser saved this copy by itself, and it can't work out numbers. Open the job on its site, and press \u201cSave the page as a "
        "file\u201d there. The site:"
    ),
}
