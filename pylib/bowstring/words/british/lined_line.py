"""Where the concrete lies along a line, and where its pieces begin, where British English differs."""

MESSAGES = {
    "station.form.remedy": "Give it with its plus: 10+00 in feet, 0+100 in metres.",
    "station.feet.remedy": "Give it as 10+00, or set the job to metres.",
    "station.metres.wrong": "In metres a station has three digits after the plus, and {typed} hasn't.",
}
