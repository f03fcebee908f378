"""How the page's script asks Python's worker, with workers and clocks that a test holds in its hand."""

from __future__ import annotations

from pathlib import Path

from in_node import run

# Workers that note what they are asked, and timers that run when a test says so.
HELD = """
globalThis.workers = [];
globalThis.Worker = class {
  constructor() { this.asked = []; workers.push(this); }
  postMessage(data) { if (data.call) this.asked.push(data.call); }
  terminate() {}
};
const timers = new Map();
globalThis.setTimeout = (run, _wait, ...more) => {
  timers.set(timers.size + 1, () => run(...more));
  return timers.size;
};
globalThis.clearTimeout = (id) => timers.delete(id);
const rest = async () => { for (let turn = 0; turn < 20; turn += 1) await null; };
const ring = async () => {
  const all = [...timers.values()];
  timers.clear();
  all.forEach((run) => run());
  await rest();
};
const says = async (worker, data) => { worker.onmessage({ type: "message", data }); await rest(); };
"""
START = """
const { startPython } = await page('python.js');
let failures = 0;
let starts = 0;
const { ask } = startPython({
  language: 'english', ready() {}, lacked() {}, replaced() {},
  failed: () => (failures += 1),
  mended: async () => (starts += 1) < 50,
});
await says(workers[0], { ready: true });
"""


def test_a_question_is_asked_once_of_a_worker_that_comes_up(tmp_path: Path) -> None:
    lines = """
    ask('numbers', {}).catch(() => {});
    await ring(); // no answer: another worker is started
    ask('face', {}).catch(() => {}); // while that one comes up
    await says(workers[1], { ready: true });
    told(workers.map(({ asked }) => asked.sort()));
    """
    assert run(tmp_path, HELD + START + lines) == [["numbers"], ["face", "numbers"]]


def test_a_worker_that_never_answers_is_given_up_whatever_it_says_before(tmp_path: Path) -> None:
    lines = """
    ask('face', {}).catch(() => {});
    for (let turn = 0; turn < 10; turn += 1) { // the rest of the library never comes
      await says(workers.at(-1), { failed: 'rest.bin' });
      await says(workers.at(-1), { ready: true });
    }
    told([starts, failures]);
    """
    assert run(tmp_path, HELD + START + lines) == [1, 1]


def test_after_an_answer_a_start_that_fails_is_tried_once_more(tmp_path: Path) -> None:
    lines = """
    for (let turn = 1; turn <= 3; turn += 1) {
      const answered = ask('face', {});
      await says(workers.at(-1), { failed: 'rest.bin' });
      await says(workers.at(-1), { ready: true });
      await says(workers.at(-1), { id: turn, result: '{}' });
      await answered;
    }
    told([starts, failures]);
    """
    assert run(tmp_path, HELD + START + lines) == [3, 0]


def test_a_language_that_never_comes_leaves_the_page_as_it_came(tmp_path: Path) -> None:
    lines = """
    Object.defineProperty(globalThis, 'navigator', { value: { languages: ['es-MX'] } });
    globalThis.localStorage = { getItem: () => null };
    globalThis.fetch = () => new Promise(() => {});
    const { dressed } = await page('dressed.js');
    const dressing = dressed(false);
    await rest();
    const waits = timers.size;
    await ring();
    told([waits, (await dressing).language]);
    """
    assert run(tmp_path, HELD + lines) == [1, "english"]


def test_what_was_typed_of_one_stake_is_not_another_s(tmp_path: Path) -> None:
    lines = """
    const { looking } = await page('looking.js');
    const place = { now: { face: 'stakes', card: 2, panel: 'got' } };
    const look = looking({ root: { dataset: {} }, place, address: () => '', steps: {}, job: {} });
    const typed = () => look.questions({}, false).next().value.payload().got;
    look.gotTyped('m0', '19 ft');
    const before = typed();
    const from = place.now;
    place.now = { face: 'stakes', card: 3, panel: 'got' };
    look.turned(place.now, from);
    told([before, typed()]);
    """
    assert run(tmp_path, HELD + lines) == [{"m0": "19 ft"}, {}]
