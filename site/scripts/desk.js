// The desk: the jobs kept on this device, the link to the present one, files, and the page saved with its job.

import { copyHolds } from "./copy.js";
import { at } from "./document.js";
import { nameOf } from "./form.js";
import { handing } from "./handing.js";
import { isSaved, savedPage } from "./packed.js";
import { sizes } from "./sizes.js";

const MOST_OUT = 5; // jobs that are offered as files at a time where storage is full
const MOST_BYTES = 4 * sizes.text; // of a job file: no character takes more than four

export function desk({ keep, words, ask, open, present, remove, show }) {
  let link = "";
  const looked = () => !at("panel-jobs").hidden;

  // --- kept jobs

  function list() {
    if (!looked()) return; // made when somebody looks: every keystroke comes by here
    const jobs = keep.list();
    const rows = jobs.map((job) => row(job));
    at("job-list").replaceChildren(...rows);
    called(jobs, rows);
    at("jobs-none").hidden = jobs.length > 0;
  }

  // A job without a title is called by its numbers, as Python shows them; until Python is up, as they were typed.
  async function called(jobs, rows) {
    const untitled = jobs.map((job, place) => ({ job, place })).filter(({ job }) => job.fields && !job.fields.title?.trim());
    if (!untitled.length) return;
    const { names } = await ask("called", { jobs: untitled.map(({ job }) => job.fields) }).catch(() => ({ names: [] }));
    for (const [nth, name] of names.entries()) {
      const { job, place } = untitled[nth];
      const there = rows[place];
      if (name && there.isConnected && !there.contains(document.activeElement)) there.replaceWith(row(job, name));
    }
  }

  function row({ id, fields, edited }, name = "") {
    const item = document.createElement("li");
    const title = fields ? name || nameOf(fields, words.untitled) : words.unreadable;
    const when = edited
      ? new Date(edited).toLocaleString(document.documentElement.lang, { dateStyle: "medium", timeStyle: "short" })
      : "";
    const from = fields?.received ? words.received : fields?.parent ? words.copy : "";
    const opener = button([title, from, when].filter(Boolean).join(" · "), () => open(fields, id));
    opener.disabled = !fields;
    if (id === present().id) opener.setAttribute("aria-current", "true");
    const remover = button(words.remove, () => remove(id));
    remover.setAttribute("aria-label", `${words.remove}: ${title}`);
    item.append(opener, remover);
    return item;
  }

  function button(text, pressed) {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = text;
    made.addEventListener("click", pressed);
    return made;
  }

  // --- opening what comes from elsewhere: a link's text, a file's

  function wrong(text) {
    at("open-wrong").textContent = text;
    if (!text) return;
    if (!looked()) show();
    at("open-wrong").scrollIntoView({ block: "center" }); // the button that was pressed may be far below
  }

  function failing(reason) {
    wrong(`${words.open_failed} ${reason?.message ?? reason}`);
  }

  // `taken` is told the text once its job is open, or somebody has chosen to stay with theirs.
  async function openText(call, text, taken = () => {}) {
    wrong("");
    offer(null);
    let result;
    let own = {}; // the link of the job in the fields: the one on the page may not be made yet
    try {
      result = await ask(call, { text });
      if (!present().untouched) own = await ask("link", { fields: present().fields, address: address() });
    } catch (reason) {
      return failing(reason);
    }
    if (result.error) return wrong(result.error);
    if (call === "open_link") result.fields.received = result.parent; // as it was sent, as long as nothing of it is changed
    if (result.link && result.link === own.link) {
      taken(text);
      return wrong(words.open_already);
    }
    if (!present().untouched) return offer({ ...result, taken: () => taken(text) });
    open(result.fields, result.id);
    taken(text);
  }

  let offered = null;
  function offer(result) {
    offered = result;
    at("offer").hidden = !result;
    at("offer-title").textContent = result ? result.title || words.untitled : "";
    if (result) at("offer-open").focus();
  }

  at("offer-open").addEventListener("click", () => {
    const { fields, id, taken } = offered;
    offer(null);
    open(fields, id);
    taken();
  });
  at("offer-leave").addEventListener("click", () => {
    offered.taken();
    offer(null);
  });

  at("link-open").addEventListener("click", () => openText("open_link", at("link-in").value));
  at("file-in").addEventListener("change", async (event) => {
    const [file] = event.target.files;
    event.target.value = "";
    if (!file) return;
    wrong(""); // what was said of an earlier file isn't said of this one
    if (file.size > MOST_BYTES) return wrong(words.file_large);
    try {
      openText("open_file", await file.text());
    } catch (reason) {
      failing(reason); // it was moved away, or can't be read
    }
  });

  // --- giving away

  async function giveFile(call, type, fields = present().fields) {
    let result;
    try {
      result = await ask(call, { fields });
    } catch (reason) {
      result = { error: `${words.ask_failed} ${reason?.message ?? reason}` };
    }
    wrong(result.error ?? "");
    if (!result.error) download(new Blob([result.text], { type }), result.name);
    return result.error;
  }
  at("file-out").addEventListener("click", () => giveFile("job_file", "application/json"));

  at("save-page").addEventListener("click", async () => {
    at("save-said").textContent = words.saving;
    try {
      const page = await savedPage(fileAddresses(), present().untouched ? "" : link, address());
      download(new Blob([page], { type: "text/html" }), "bowstring.html");
      at("save-said").textContent = words.saved;
    } catch (reason) {
      at("save-said").textContent = `${words.save_failed} ${reason?.message ?? reason}`;
    }
  });

  // `shown`: where the text stands, to be copied by hand where the device lets no page do it.
  async function copy(text, shown) {
    try {
      await navigator.clipboard.writeText(text);
      at("link-said").textContent = words.copied;
    } catch {
      getSelection().selectAllChildren(shown);
      shown.select?.();
      at("link-said").textContent = words.copy_by_hand;
    }
  }
  at("link-copy").addEventListener("click", () => copy(at("link-text").value, at("link-text")));
  const question = () => ({ fields: present().fields, address: address() });
  const hand = handing({ ask, question, copy, give: download, wrong, words });

  const shared = () => ({ title: at("title").value, [address() ? "url" : "text"]: at("link-text").value });
  const share = () => navigator.share(shared()).catch(() => {}); // closing the list of ways is no fault
  at("link-share").hidden = !navigator.share;
  at("link-share").addEventListener("click", share);
  at("send").addEventListener("click", () => (navigator.share && link ? share() : show()));

  // Where storage is full: the oldest jobs as files, before any of them is removed.
  at("full-out").addEventListener("click", async () => {
    const jobs = keep.list().filter(({ id, fields }) => fields && id !== present().id);
    const wrongs = [];
    for (const { fields } of jobs.slice(-MOST_OUT)) {
      const error = await giveFile("job_file", "application/json", fields);
      if (error) wrongs.push(`${nameOf(fields, words.untitled)}: ${error}`); // nobody removes a job that isn't out
    }
    wrong(wrongs.join(" "));
  });

  return {
    list,
    openText,
    wrong,
    linked(result) {
      this.showLink(result.link ?? "", result.link_note);
      copyHolds(present().untouched ? "" : (result.link ?? ""), address());
    },
    // Show the link of the job that the sheet answers; none while there is no sheet, or too much in it.
    showLink(text, whyNone = "") {
      link = text;
      if (!text) hand.stale(); // what was handed over is another job's by now
      at("link-text").value = text && `${address()}#${text}`;
      at("link-said").textContent = text && !address() ? words.no_address : whyNone;
      for (const id of ["link-copy", "link-share"]) at(id).disabled = !text;
      at("save-page").disabled = !text && !present().untouched; // without a job it's saved for the ones to come
    },
  };
}

// The page's own address, or in a saved page the one that it was saved from.
export function address() {
  const given = document.querySelector("meta[name=bowstring-address]")?.content ?? "";
  if (given || isSaved()) return given;
  return location.href.split("#")[0];
}

// Where the parts of a saved page lie on the site; a saved page has them in itself.
function fileAddresses() {
  return JSON.parse(at("files")?.textContent ?? "{}");
}

function download(blob, name) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(blob);
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}
