"""Faces that the page has already: found again by the whole question, and by nothing less."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path

from builder import npm, website

ASKING = """
import { remembering } from "./answers.mjs";
let asked = 0;
let fails = false;
const ask = remembering(async (call, payload) => {
  asked += 1;
  if (fails) throw new Error("made to fail");
  return { call, asked, payload };
});
const face = (fields, more = {}) => ask("face", { fields, face: "stakes", card: 2, ...more });
const told = [];
const count = async (...questions) => {
  const before = asked;
  for (const question of questions) await question();
  told.push(asked - before);
};
"""


def told_by(script: str, folder: Path) -> list[int]:
    """Run a script that asks some questions; return how often each ``count`` of it came to Python."""
    shutil.copy(website.SCRIPTS / "answers.js", folder / "answers.mjs")
    (folder / "asking.mjs").write_text(f"{ASKING}{script}\nconsole.log(JSON.stringify(told));\n")
    done = subprocess.run([npm.node(), folder / "asking.mjs"], check=True, capture_output=True, text=True)
    found: list[int] = json.loads(done.stdout)
    return found


def test_a_face_is_made_once_for_its_question_and_anew_for_any_other(tmp_path: Path) -> None:
    script = """
const fields = { chord: "38 ft", done: "1" };
await count(() => face(fields));
await count(() => face({ done: "1", chord: "38 ft" }));  // in another order
const others = [{ ...fields, chord: "39 ft" }, { chord: "38 ft" }, { ...fields, done: "1 2" }, { ...fields, more: "" }];
for (const other of others) await count(() => face(other));
const besides = [{ card: 3 }, { face: "why" }, { panel: "got" }, { got: { m0: "5'" } }, { address: "x" }, { on: "" }];
for (const more of besides) await count(() => face(fields, more));
await count(() => face(fields));
"""
    assert told_by(script, tmp_path) == [1, 0, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 0]


def test_what_is_no_face_is_asked_each_time(tmp_path: Path) -> None:
    script = """
for (const call of ["numbers", "link", "sheet"]) {
  const again = () => ask(call, { fields: {} });
  await count(again, again);
}
"""
    assert told_by(script, tmp_path) == [2, 2, 2]


def test_a_question_that_failed_is_asked_again(tmp_path: Path) -> None:
    script = """
fails = true;
await count(() => face({}).then(() => told.push(-1), () => {}));
fails = false;
await count(() => face({}));
await count(() => face({}));
"""
    assert told_by(script, tmp_path) == [1, 1, 0]


def test_only_the_last_dozen_is_kept(tmp_path: Path) -> None:
    script = """
const nth = (card) => () => face({}, { card });
await count(...Array.from({ length: 12 }, (_one, card) => nth(card)));
await count(nth(0), nth(12), nth(0));
await count(nth(1));
"""
    assert told_by(script, tmp_path) == [12, 1, 1]
