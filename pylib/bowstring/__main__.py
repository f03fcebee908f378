"""``python3 -m bowstring``: see ``bowstring.terminal``."""

import sys

from bowstring.terminal import main

sys.exit(main())
