"""Questions as the page asks them, for tests without a browser."""

from __future__ import annotations

import json
from typing import Any

from bowstring.page.calls import handle


def ask(call: str, **question: Any) -> dict[str, Any]:
    answered: dict[str, Any] = json.loads(handle(call, json.dumps(question)))
    return answered


def numbers(fields: dict[str, str]) -> dict[str, Any]:
    return ask("numbers", fields=fields)


def face(fields: dict[str, str], name: str) -> dict[str, Any]:
    return ask("face", fields=fields, face=name, card=None, panel="", address="")
