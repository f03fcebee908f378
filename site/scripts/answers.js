// Faces that Python made already, each kept by the whole question that it answers: whoever turns back to one, or on to a card
// that was made ahead, doesn't wait. Nothing else tells what a face shows, so no answer can be an older job's.

const MOST = 12; // faces: the longest ago goes

export function remembering(ask) {
  const kept = new Map();

  function keep(question, answer) {
    kept.delete(question);
    kept.set(question, answer);
    if (kept.size > MOST) kept.delete(kept.keys().next().value);
    return answer;
  }

  return async (call, payload) => {
    if (call !== "face") return ask(call, payload);
    const question = told(payload);
    return keep(question, kept.get(question) ?? (await ask(call, payload)));
  };
}

// In one order: fields that were put in later stand elsewhere among the others.
function told({ fields, ...rest }) {
  return JSON.stringify([Object.entries(fields).sort(([one], [other]) => (one < other ? -1 : 1)), Object.entries(rest).sort()]);
}
